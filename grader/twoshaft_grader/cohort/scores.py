"""What the gradebook says of learners' tasks: by the marking, and by a person."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from nbgrader.api import (
    Comment,
    Grade,
    Gradebook,
    MissingEntry,
    Notebook,
    SubmittedAssignment,
    SubmittedNotebook,
)

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


def task_scores(book: Gradebook, assigned: Assigned) -> dict[str, dict[str, TaskScore]]:
    """Scores of an assignment's tasks in the gradebook, by learner and task; two queries for all.

    A learner of whom there are none is not in it.
    """
    try:
        notebook = book.find_notebook(assigned.notebook_id, assigned.name)
    except MissingEntry:
        return {}
    cells = [*notebook.grade_cells, *notebook.task_cells]
    names = {cell.id: cell.name for cell in (*cells, *notebook.solution_cells)}
    counted = {cell.id for cell in cells if cell.max_score}
    grades, beyond = [], {}
    for learner, cell, *parts, score in _of_all(
        book, notebook, Grade, Grade.auto_score, Grade.manual_score, Grade.extra_credit,
        Grade.needs_manual_grade, Grade.score,
    ):  # fmt: skip
        if cell in counted:
            grades.append((learner, names[cell], parts))
        else:  # a task's text is a cell without points; what staff give there is extra credit
            beyond[learner, names[cell]] = score or 0.0
    comments = {
        (learner, names[cell]): text or ""
        for learner, cell, text in _of_all(book, notebook, Comment, Comment.manual_comment)
    }
    found: dict[str, dict[str, TaskScore]] = {}
    for learner, task, (auto, manual, extra, needed) in grades:
        about = learner, f"{task}-task"
        found.setdefault(learner, {})[task] = TaskScore(
            auto,
            manual,
            (extra or 0.0) + beyond.get(about, 0.0) or None,
            bool(needed and manual is not None),
            comments.get(about) or comments.get((learner, task)) or "",
        )
    return found


def _of_all(book: Gradebook, notebook: Notebook, table: Any, *columns: Any) -> Iterable[tuple]:
    """Columns of everybody's grades or comments in a notebook, after learner's and cell's ids."""
    return (
        book.db.query(SubmittedAssignment.student_id, table.cell_id, *columns)
        .join(SubmittedNotebook, SubmittedNotebook.id == table.notebook_id)
        .join(SubmittedAssignment, SubmittedAssignment.id == SubmittedNotebook.assignment_id)
        .filter(SubmittedNotebook.notebook_id == notebook.id)
    )
