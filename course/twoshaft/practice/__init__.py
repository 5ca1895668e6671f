"""What lessons ask and tell at once: predictions, earlier questions, calculations; all unmarked."""

from twoshaft.practice.lesson import Lesson, open_lesson

__all__ = ["Lesson", "open_lesson"]
