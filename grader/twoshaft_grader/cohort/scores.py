"""What the gradebook says of a learner's tasks: by the marking, and by a person."""

from __future__ import annotations

from dataclasses import dataclass

from nbgrader.api import Gradebook, MissingEntry

from twoshaft_grader.cohort.assign import Assigned


@dataclass(frozen=True)
class TaskScore:
    """A task's score in the gradebook: by the marking, by a person, and beyond the maximum."""

    auto: float | None
    manual: float | None
    extra: float | None
    look_again: bool
    comment: str

    @property
    def by_hand(self) -> bool:
        """Whether a person's score stands."""
        changed = self.manual is not None and self.manual != self.auto
        return changed or bool(self.extra)

    @property
    def score(self) -> float:
        """What counts, by nbgrader's rule: a person's score before the marking's."""
        base = self.manual if self.manual is not None else self.auto
        return (base or 0.0) + (self.extra or 0.0)


def task_scores(book: Gradebook, assigned: Assigned, learner: str) -> dict[str, TaskScore]:
    """Scores of a learner's tasks in the gradebook; empty if there are none."""
    try:
        notebook = book.find_submission_notebook(assigned.notebook_id, assigned.name, learner)
    except MissingEntry:
        return {}
    # A task's text is a cell of its own without points; what staff give there is extra credit.
    beyond = {g.name: g.score or 0.0 for g in notebook.grades if not g.cell.max_score}
    comments = {c.name: c.manual_comment or "" for c in notebook.comments}
    return {
        grade.name: TaskScore(
            grade.auto_score,
            grade.manual_score,
            (grade.extra_credit or 0.0) + beyond.get(f"{grade.name}-task", 0.0) or None,
            bool(grade.needs_manual_grade and grade.manual_score is not None),
            comments.get(f"{grade.name}-task") or comments.get(grade.name) or "",
        )
        for grade in notebook.grades
        if grade.cell.max_score
    }
