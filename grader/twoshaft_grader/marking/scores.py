"""The entries of one assignment in nbgrader's gradebook, a learner at a time.

nbgrader's own functions ask for every score and comment by itself, and commit after each step; here
a learner's are read by three queries, and whole new ones are written together.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from nbgrader.api import (
    Assignment,
    Comment,
    Grade,
    Gradebook,
    GradeCell,
    MissingEntry,
    Notebook,
    SolutionCell,
    Student,
    SubmittedAssignment,
    SubmittedNotebook,
    TaskCell,
    new_uuid,
)

from twoshaft.errors import CohortError


@dataclass(frozen=True)
class Entry:
    """What the gradebook has of one learner's notebook: its submission, and grades and comments by
    the name of their cell."""

    assignment: str
    submission: SubmittedAssignment
    grades: dict[str, Grade]
    comments: dict[str, Comment]

    def grade(self, cell: str) -> Grade:
        """A cell's grade; CohortError when there is no such cell."""
        return self._known(self.grades, cell)

    def comment(self, cell: str) -> Comment:
        """The comment on a cell; CohortError when there is no such cell."""
        return self._known(self.comments, cell)

    def _known(self, entries: Mapping[str, Any], cell: str) -> Any:
        if cell not in entries:
            raise _not_as_released(self.assignment, f"no cell {cell}")
        return entries[cell]


class Scores:
    """The gradebook's entries of one notebook of an assignment.

    Raises
    ------
    CohortError
        When the assignment or the notebook is not in the gradebook.
    """

    def __init__(self, book: Gradebook, assignment: str, notebook: str) -> None:
        self._book, self._db, self._name = book, book.db, assignment
        # There is one writer, so what a commit has written needs not be read again.
        self._db().expire_on_commit = False
        try:
            self._assignment: Assignment = book.find_assignment(assignment)
            self._notebook: Notebook = book.find_notebook(notebook, assignment)
        except MissingEntry as error:
            raise _not_as_released(assignment, error) from error
        self._cells = {each.id: _Cells.of(each) for each in self._assignment.notebooks}
        self._students = {student for (student,) in self._db.query(Student.id)}
        self._submissions: dict[str, SubmittedAssignment] = {
            each.student_id: each
            for each in self._db.query(SubmittedAssignment).filter_by(
                assignment_id=self._assignment.id
            )
        }

    def of(self, learner: str) -> Entry:
        """A learner's entry; made, as nbgrader makes it, where there is none yet."""
        submission = self._submissions.get(learner)
        if submission is None:
            return self._new(learner)
        notebook = (
            self._db.query(SubmittedNotebook.id)
            .filter_by(assignment_id=submission.id, notebook_id=self._notebook.id)
            .scalar()
        )
        grades = self._db.query(Grade).filter_by(notebook_id=notebook)
        comments = self._db.query(Comment).filter_by(notebook_id=notebook)
        return self._entry(submission, grades, comments)

    def commit(self) -> None:
        """Write everything that was changed, at once."""
        try:
            self._db.commit()
        except BaseException:
            self._db.rollback()
            raise

    def _entry(
        self,
        submission: SubmittedAssignment,
        grades: Iterable[Grade],
        comments: Iterable[Comment],
    ) -> Entry:
        names = self._cells[self._notebook.id].names
        return Entry(
            self._name,
            submission,
            {names[grade.cell_id]: grade for grade in grades},
            {names[comment.cell_id]: comment for comment in comments},
        )

    def _new(self, learner: str) -> Entry:
        if learner not in self._students:
            self._book.add_student(learner)
            self._students.add(learner)
        submission = SubmittedAssignment(
            id=new_uuid(), assignment_id=self._assignment.id, student_id=learner
        )
        self._submissions[learner] = submission
        self._db.add(submission)
        mine: tuple[list[Grade], list[Comment]] = [], []
        for notebook, cells in self._cells.items():
            submitted = SubmittedNotebook(
                id=new_uuid(), notebook_id=notebook, assignment_id=submission.id
            )
            grades = [
                Grade(cell_id=cell, notebook_id=submitted.id, needs_manual_grade=True)
                for cell in cells.graded
            ]
            comments = [Comment(cell_id=cell, notebook_id=submitted.id) for cell in cells.commented]
            self._db.add_all([submitted, *grades, *comments])
            if notebook == self._notebook.id:
                mine = grades, comments
        return self._entry(submission, *mine)


@dataclass(frozen=True)
class _Cells:
    """Cells of a notebook, by their ids in the gradebook: names, and which have what."""

    names: dict[str, str]
    graded: tuple[str, ...]
    commented: tuple[str, ...]

    @classmethod
    def of(cls, notebook: Notebook) -> _Cells:
        grade: list[GradeCell] = notebook.grade_cells
        solution: list[SolutionCell] = notebook.solution_cells
        task: list[TaskCell] = notebook.task_cells
        return cls(
            {cell.id: cell.name for cell in (*grade, *solution, *task)},
            tuple(cell.id for cell in (*grade, *task)),
            tuple(cell.id for cell in (*solution, *task)),
        )


def entered_learners(book: Gradebook, assignment: str, notebook: str) -> set[str]:
    """Ids of the learners of whom the gradebook has an entry of a notebook."""
    found = (
        book.db.query(SubmittedAssignment.student_id)
        .join(Assignment, Assignment.id == SubmittedAssignment.assignment_id)
        .join(SubmittedNotebook, SubmittedNotebook.assignment_id == SubmittedAssignment.id)
        .join(Notebook, Notebook.id == SubmittedNotebook.notebook_id)
        .filter(Assignment.name == assignment, Notebook.name == notebook)
    )
    return {learner for (learner,) in found}


def _not_as_released(assignment: str, why: object) -> CohortError:
    return CohortError(
        f"{assignment} is not in the gradebook as it was released ({why})",
        mend="release the assignment again",
    )
