"""Supervised attempts: an assessor opens one for named learners in a room, and closes it.

Only what is handed in between counts as supervised. What waits in the exchange is looked at twice,
on opening and on closing: a hand-in must be new on closing, and its own time lie between the two.
The digest of its answers is then kept, and a mark is supervised if it is of these answers.

An answer that was saved before the opening was watched by nobody. What stands on the sheets is
looked at on opening; an answer handed in as it stood then, or with an earlier time, keeps the
outcome it belongs to from counting as supervised, and is told by number.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Mapping
from dataclasses import dataclass, field, replace
from datetime import datetime
from pathlib import Path
from typing import Any

from twoshaft.errors import CohortError, SheetError
from twoshaft.jobsheet.receipts import sheet_digest
from twoshaft.stored.job_sheet import FILE as SHEET
from twoshaft.stored.job_sheet import Answer, read_sheet
from twoshaft_grader.cohort.arrival import AHEAD, arrivals, moment_of
from twoshaft_grader.cohort.assessors import assessor_named
from twoshaft_grader.cohort.assign import Assigned, read_assigned
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marks import StoredMark
from twoshaft_grader.cohort.not_done import NotDone
from twoshaft_grader.cohort.one_line import one_line
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import alone
from twoshaft_grader.stored.sittings import SITTINGS, Sitting, Sittings


@dataclass(frozen=True)
class Closed:
    """A supervised attempt that was closed, and of whom nothing counts, and why."""

    sitting: Sitting
    left: tuple[NotDone, ...]


@dataclass(frozen=True)
class Watched:
    """Who watched the work that a mark is of.

    Attributes
    ----------
    by : str
        The assessor; empty for work that nobody watched.
    before : mapping of str to int
        By outcome, how many of its answers were saved before the supervised attempt was opened.
    """

    by: str = ""
    before: Mapping[str, int] = field(default_factory=dict)

    def of(self, outcome: str) -> str:
        """Who watched all that was answered of an outcome; empty if part of it nobody did."""
        return "" if self.before.get(outcome) else self.by

    @property
    def saved_before(self) -> int:
        """How many answers were saved before it was opened."""
        return sum(self.before.values())


NOT_WATCHED = Watched()
BEFORE = (
    "An outcome with such an answer does not count as supervised; "
    "a further attempt gives fresh readings and an empty sheet."
)
"""What it means that answers were saved before a supervised attempt was opened."""


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
    room = one_line("the room", room)
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
            waiting=waiting, saved=_standing_on_sheets(cohort, assigned, learners),
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
        known = sittings_of(cohort)
        one = next((one for one in known if one.number == number), None)
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
            handed_in, before_it, left = _between(cohort, one)
            closed = replace(
                one, closed_at=stamp(now()), closed_by=by, handed_in=handed_in, before=before_it,
                note=note.strip(),
            )  # fmt: skip
            kept = tuple(closed if sitting is one else sitting for sitting in known)
            SITTINGS.write(cohort.root / SITTINGS.file, Sittings(kept))
            told.after = f"handed in: {', '.join(handed_in) or 'nobody'}"
            if before_it:
                told.after += f"; saved before: {counted(before_it)}"
    return Closed(closed, tuple(left))


def counted(answers: Mapping[str, Collection[str]]) -> str:
    """How many answers of whom, in words: ``tb01 7 answers, tb02 1 answer``."""
    return ", ".join(
        f"{id} {len(names)} answer{'s' if len(names) > 1 else ''}"
        for id, names in answers.items()
        if names
    )


def _standing_on_sheets(
    cohort: Cohort, assigned: Assigned, learners: Collection[str]
) -> dict[str, dict[str, int]]:
    """What stands on the sheets in the learners' folders; nothing of one that cannot be read."""
    found = {}
    for id in learners:
        answers = _answers_in(cohort.place(id, assigned.name) / SHEET)
        if answers:
            found[id] = {name: answer.revision for name, answer in answers.items()}
    return found


def _answers_in(path: Path) -> dict[str, Answer]:
    """Answers of a sheet that say something, by field; none where it cannot be read."""
    try:
        answers = read_sheet(path).answers
    except SheetError:
        return {}
    return {name: one for name, one in answers.items() if _says_something(one.value)}


def _says_something(value: Any) -> bool:
    return any(one not in (None, "") for one in (value if isinstance(value, list) else [value]))


def _saved_before(sitting: Sitting, id: str, answers: Mapping[str, Answer]) -> tuple[str, ...]:
    """Answers of a hand-in that stood on the sheet at the opening, or say an earlier time."""
    stood = sitting.saved.get(id, {})
    # Another machine's clock may be behind: what says a little earlier was saved in the room.
    opened = stamp(datetime.fromisoformat(sitting.opened_at) - AHEAD)
    return tuple(
        name
        for name, one in answers.items()
        if stood.get(name) == one.revision or (one.saved and one.saved < opened)
    )


def _between(
    cohort: Cohort, sitting: Sitting
) -> tuple[dict[str, str], dict[str, tuple[str, ...]], list[NotDone]]:
    """What each learner handed in since the opening, by its digest; the last of it counts. Then
    which of its answers were saved before, and of whom nothing counts.
    """
    assigned = read_assigned(cohort, sitting.assignment)
    opened, latest = datetime.fromisoformat(sitting.opened_at), now() + AHEAD
    found: dict[str, tuple[datetime, str, Path]] = {}
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
        elif digest := sheet_digest(place := cohort.inbound / arrival.name / assigned.answers_in):
            found[id] = max(found.get(id, (moment, digest, place)), (moment, digest, place))
        else:
            why[id] = "handed something in that holds no answers"
    handed_in = {id: found[id][1] for id in sitting.learners if id in found}
    before = {id: _saved_before(sitting, id, _answers_in(found[id][2])) for id in handed_in}
    left = [NotDone(id, text) for id, text in why.items() if id not in found]
    return handed_in, {id: names for id, names in before.items() if names}, left


def watched_by(
    sittings: Collection[Sitting], assignment: str, learner: str, mark: StoredMark | None
) -> Watched:
    """Who watched the work that a mark is of, and what of it was saved before."""
    if mark is None or not mark.sheet_sha256:
        return NOT_WATCHED
    for one in sittings:
        if one.assignment == assignment and one.handed_in.get(learner) == mark.sheet_sha256:
            before, fields = one.before.get(learner, ()), mark.sheet.fields if mark.sheet else ()
            told = Counter(field.outcome for field in fields if field.name in before)
            return Watched(one.opened_by, dict(told))
    return NOT_WATCHED
