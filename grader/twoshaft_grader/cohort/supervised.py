"""Supervised attempts: an assessor opens one for named learners in a room, and closes it.

Only what is handed in between counts as supervised. What waits in the exchange is looked at twice,
on opening and on closing: a hand-in must be new on closing, and its own time lie between the two.
The digest of its answers is then kept, and a mark is supervised if it is of these answers.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, replace
from datetime import datetime

from twoshaft.errors import CohortError
from twoshaft.jobsheet.receipts import sheet_digest
from twoshaft_grader.cohort.arrival import AHEAD, arrivals, moment_of
from twoshaft_grader.cohort.assessors import assessor_named
from twoshaft_grader.cohort.assign import Assigned, read_assigned
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marks import StoredMark
from twoshaft_grader.cohort.not_done import NotDone
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import alone
from twoshaft_grader.stored.sittings import SITTINGS, Sitting, Sittings


@dataclass(frozen=True)
class Closed:
    """A supervised attempt that was closed, and of whom nothing counts, and why."""

    sitting: Sitting
    left: tuple[NotDone, ...]


def sittings_of(cohort: Cohort) -> tuple[Sitting, ...]:
    """Every supervised attempt, by number.

    Raises
    ------
    CohortError
        When the file is damaged.
    """
    found = SITTINGS.read_if_any(cohort.root / SITTINGS.file)
    return found.sittings if found else ()


def open_sitting(
    cohort: Cohort, assigned: Assigned, learners: Collection[str], *, room: str, by: str
) -> Sitting:
    """Open a supervised attempt.

    Parameters
    ----------
    learners : collection of str
        Ids of those who are in the room.
    by : str
        Somebody on the register of assessors.

    Raises
    ------
    CohortError
        When nobody or somebody unknown is named, one of them does not have the assignment or sits
        it already, the room is missing, or the assessor is not registered.
    """
    by = assessor_named(cohort, by, needed=True)
    room = " ".join(room.split())
    if not room:
        raise CohortError("the room is missing", mend="say where they sit")
    if not learners:
        raise CohortError("nobody is named", mend="say who is in the room")
    known = {one.id for one in roster_of(cohort)}
    for id in learners:
        if id not in known:
            raise CohortError(f'nobody on the roster has the id "{id}"', mend="check the id")
        if not assigned.is_for(id):
            raise CohortError(f"{id} does not have {assigned.name}", mend="hand it out to them")
    with (
        alone(cohort, "sittings", "supervised attempts"),
        act(cohort.root, "open a supervised attempt", assigned.name, by=by) as told,
    ):
        before = sittings_of(cohort)
        for one in before:
            both = sorted(set(one.learners) & set(learners))
            if both and not one.closed_at and one.assignment == assigned.name:
                raise CohortError(
                    f"supervised attempt {one.number} is open for {', '.join(both)}",
                    mend="close it first",
                )
        waiting: dict[str, tuple[str, ...]] = {id: () for id in learners}
        for arrival in sorted(arrivals(cohort, assigned.name), key=lambda one: one.name):
            if arrival.learner in waiting:
                waiting[arrival.learner] += (arrival.name,)
        opened = Sitting(
            number=max((one.number for one in before), default=0) + 1, assignment=assigned.name,
            room=room, learners=tuple(learners), opened_at=stamp(now()), opened_by=by,
            waiting=waiting,
        )  # fmt: skip
        SITTINGS.write(cohort.root / SITTINGS.file, Sittings((*before, opened)))
        told.after = f"number {opened.number}, in {room}, for {', '.join(learners)}"
    return opened


def close_sitting(cohort: Cohort, number: int, *, by: str, note: str = "") -> Closed:
    """Close a supervised attempt, and keep what was handed in between.

    Raises
    ------
    CohortError
        When there is none with this number, it is closed, or the assessor is not registered.
    """
    by = assessor_named(cohort, by, needed=True)
    with alone(cohort, "sittings", "supervised attempts"):
        before = sittings_of(cohort)
        one = next((one for one in before if one.number == number), None)
        if one is None:
            raise CohortError(
                f"there is no supervised attempt {number}", mend="look which are open"
            )
        if one.closed_at:
            raise CohortError(
                f"supervised attempt {number} was closed by {one.closed_by}", mend="open another"
            )
        what = f"{one.assignment}, number {number}"
        with act(cohort.root, "close a supervised attempt", what, by=by, why=note) as told:
            told.before = f"opened {one.opened_at} by {one.opened_by} in {one.room}"
            handed_in, left = _between(cohort, one)
            closed = replace(
                one, closed_at=stamp(now()), closed_by=by, handed_in=handed_in, note=note.strip()
            )
            kept = tuple(closed if sitting is one else sitting for sitting in before)
            SITTINGS.write(cohort.root / SITTINGS.file, Sittings(kept))
            told.after = f"handed in: {', '.join(handed_in) or 'nobody'}"
    return Closed(closed, tuple(left))


def _between(cohort: Cohort, sitting: Sitting) -> tuple[dict[str, str], list[NotDone]]:
    """What each learner handed in since the opening, by its digest; the last of it counts."""
    assigned = read_assigned(cohort, sitting.assignment)
    opened, latest = datetime.fromisoformat(sitting.opened_at), now() + AHEAD
    found: dict[str, tuple[datetime, str]] = {}
    why = dict.fromkeys(sitting.learners, "handed nothing in")
    for arrival in arrivals(cohort, sitting.assignment):
        id = arrival.learner
        if id not in why or arrival.name in sitting.waiting.get(id, ()):
            continue
        moment, trouble = moment_of(arrival.when)
        if moment is None:
            why[id] = f"handed something in, and {trouble}"
        elif not opened - AHEAD <= moment <= latest:
            why[id] = f"handed something in that says {moment:%Y-%m-%d %H:%M} UTC"
        elif digest := sheet_digest(cohort.inbound / arrival.name / assigned.answers_in):
            found[id] = max(found.get(id, (moment, digest)), (moment, digest))
        else:
            why[id] = "handed something in that holds no answers"
    handed_in = {id: found[id][1] for id in sitting.learners if id in found}
    return handed_in, [NotDone(id, text) for id, text in why.items() if id not in found]


def watched_by(
    sittings: Collection[Sitting], assignment: str, learner: str, mark: StoredMark | None
) -> str:
    """Who watched the work that a mark is of; empty for work that nobody did."""
    if mark is None or not mark.sheet_sha256:
        return ""
    for one in sittings:
        if one.assignment == assignment and one.handed_in.get(learner) == mark.sheet_sha256:
            return one.opened_by
    return ""
