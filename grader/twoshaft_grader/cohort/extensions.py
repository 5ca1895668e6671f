"""Later due dates for single learners.

``extensions.json`` in the cohort folder is what counts; the learner's start page has a copy.
nbgrader keeps an extension with a submission, so it gets ours when the work is marked.
"""

from __future__ import annotations

from collections.abc import Collection
from datetime import datetime, timedelta

from twoshaft.errors import CohortError
from twoshaft.stored.extensions import OWN_EXTENSIONS
from twoshaft.stored.writing import write_inside
from twoshaft_grader.cohort.adjustments import adjustments_of
from twoshaft_grader.cohort.assign import Assigned
from twoshaft_grader.cohort.clock import stamp
from twoshaft_grader.cohort.first_come import is_theirs
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import dates_alone
from twoshaft_grader.stored.extensions import EXTENSIONS


def extend_due(
    cohort: Cohort,
    assigned: Assigned,
    learners: list[Learner],
    learner: str,
    due: datetime,
    *,
    by: str = "",
    why: str = "",
) -> None:
    """Give one learner a later due date.

    Raises
    ------
    CohortError
        When nobody has this id, or the date is not later than everybody's.
    """
    _check(assigned, learners, learner, due)
    with (
        act(cohort.root, "extend", f"{learner} {assigned.name}", by=by, why=why) as told,
        dates_alone(cohort),
    ):
        if before := due_for(cohort, assigned, learner):
            told.before = stamp(before)
        told.after = stamp(due)
        known = _read(cohort)
        known.setdefault(assigned.name, {})[learner] = due.isoformat()
        EXTENSIONS.write(cohort.root / EXTENSIONS.file, known)
        tell_extensions(cohort, learner)


def extend_all(
    cohort: Cohort,
    assigned: Assigned,
    learners: list[Learner],
    ids: Collection[str],
    due: datetime,
    *,
    by: str = "",
    why: str = "",
) -> None:
    """Give several learners a later due date, a line of the trail each; all or nobody.

    Raises
    ------
    CohortError
        As for one; nobody has a later date then.
    """
    for id in ids:
        _check(assigned, learners, id, due)
    for id in ids:
        extend_due(cohort, assigned, learners, id, due, by=by, why=why)


def forget_extensions(cohort: Cohort, assignment: str) -> None:
    """Take away all later dates of an assignment that was taken back."""
    with dates_alone(cohort):
        known = _read(cohort)
        if assignment not in known:
            return
        told = list(known.pop(assignment))
        EXTENSIONS.write(cohort.root / EXTENSIONS.file, known)
    for learner in told:
        tell_extensions(cohort, learner)


def tell_extensions(cohort: Cohort, learner: str) -> None:
    """Write a learner's later dates into their own folder, if it is there and there were any."""
    known = _read(cohort)
    mine = {name: dates[learner] for name, dates in known.items() if learner in dates}
    there = (cohort.work / learner / OWN_EXTENSIONS.file).exists()
    if (mine or there) and is_theirs(cohort, learner):
        write_inside(cohort.work, f"{learner}/{OWN_EXTENSIONS.file}", OWN_EXTENSIONS.text(mine))


def _check(assigned: Assigned, learners: list[Learner], learner: str, due: datetime) -> None:
    if learner not in {one.id for one in learners}:
        raise CohortError(f'nobody on the roster has the id "{learner}"', mend="check the id")
    if not assigned.is_for(learner):
        raise CohortError(f"{learner} does not have {assigned.name}", mend="hand it out to them")
    if assigned.due is None or due <= assigned.due:
        date = f"due {assigned.due:%Y-%m-%d %H:%M}" if assigned.due else "without a due date"
        raise CohortError(f"{assigned.name} is {date} for everybody", mend="give a later date")


def due_for(cohort: Cohort, assigned: Assigned, learner: str) -> datetime | None:
    """When a learner's work is due, with the time that is arranged for them; None if there is no
    date.
    """
    if assigned.due is None:
        return None
    arranged = adjustments_of(cohort).get(learner)
    due = assigned.due + timedelta(days=arranged.more_days if arranged else 0)
    own = _read(cohort).get(assigned.name, {}).get(learner)
    return max(due, datetime.fromisoformat(own)) if own else due


def extension_of(cohort: Cohort, assigned: Assigned, learner: str) -> timedelta | None:
    """How much longer than everybody a learner has; None if no longer."""
    due = due_for(cohort, assigned, learner)
    return (due - assigned.due if due and assigned.due else None) or None


def _read(cohort: Cohort) -> dict[str, dict[str, str]]:
    return EXTENSIONS.read_if_any(cohort.root / EXTENSIONS.file) or {}
