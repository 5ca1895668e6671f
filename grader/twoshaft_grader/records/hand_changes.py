"""Points that a person changed: in the Formgrader, or with ``twoshaft change-mark``."""

from __future__ import annotations

from nbgrader.api import MissingEntry

from twoshaft.errors import CohortError
from twoshaft_grader.cohort import backbone
from twoshaft_grader.cohort.assessors import assessor_named
from twoshaft_grader.cohort.assign import Assigned
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.scores import task_scores
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.stored.lines import CHANGES, Change

NO_NAME = "in the gradebook, which keeps no name"


def change_mark(
    cohort: Cohort,
    assigned: Assigned,
    learner: str,
    task: str,
    points: float,
    *,
    by: str,
    why: str,
) -> tuple[float, float]:
    """Put a person's score in the place of the marking's, with author and reason.

    Returns
    -------
    before, maximum : float

    Raises
    ------
    CohortError
        When there is no such mark, the points are outside the task's, or author or reason is
        missing.
    """
    by = assessor_named(cohort, by)
    if not why.strip():
        raise CohortError("the reason is missing", mend="say why")
    about = f"{learner} {assigned.name} {task}"
    with (
        act(cohort.root, "change a mark", about, by=by, why=why) as told,
        backbone.gradebook(cohort) as book,
    ):
        try:
            grade = book.find_grade(task, assigned.notebook_id, assigned.name, learner)
        except MissingEntry:
            known = ", ".join(task_scores(book, assigned).get(learner, ()))
            raise CohortError(
                f'{learner} has no mark for a task "{task}" in {assigned.name}',
                mend=f"choose one of these: {known}" if known else "mark it first",
            ) from None
        most = float(grade.cell.max_score)
        if not 0 <= points <= most:
            raise CohortError(
                f"{points:g} points for a task of {most:g}", mend=f"give 0 to {most:g}"
            )
        before = float(grade.score)
        grade.manual_score, grade.needs_manual_grade = points, False
        told.before, told.after = f"{before:g}", f"{points:g} of {most:g}"
        change = Change(
            at=stamp(now()),
            assignment=assigned.name,
            learner=learner,
            task=task,
            before=before,
            after=points,
            by=by,
            why=why.strip(),
        )
        # The name first: a score that a cut left without one would be nobody's.
        CHANGES.append(cohort.log("changes"), change)
        book.db.commit()
    return before, most


def change_log(cohort: Cohort) -> dict[tuple[str, str, str], Change]:
    """The last change of each (assignment, learner, task)'s points made with a name."""
    return {
        (line.assignment, line.learner, line.task): line
        for line in CHANGES.read(cohort.log("changes"))
        if line.kind == "points"
    }
