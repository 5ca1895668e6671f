"""What lessons ask and tell at once: predictions. Nothing of it is marked."""

from twoshaft.practice.lesson import Lesson, open_lesson

__all__ = ["Lesson", "open_lesson"]
