"""Take in what was handed in.

Each hand-in is copied from nbgrader's exchange to ``collected/<assignment>/<learner>/<key>/`` and
renamed when it is whole; none is ever taken away. The one that counts is copied from there to
``submitted/``, and a list beside them says which it is, and its digest. So whatever stops a run,
the next one finds what is not whole and does it again.
"""

from __future__ import annotations

import hashlib
import os
from collections.abc import Collection, Iterable
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from pathlib import Path

from twoshaft.errors import CohortError, SheetError
from twoshaft.stored.job_sheet import FILE as SHEET
from twoshaft.stored.job_sheet import read_sheet
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.arrival import (
    Arrival,
    arrivals,
    collected_list,
    hand_in_time,
    moment_of,
)
from twoshaft_grader.cohort.assign import Assigned
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.copy_in import copy_in
from twoshaft_grader.cohort.first_come import strange_folder
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.newly_come import tell_newly_come
from twoshaft_grader.cohort.not_done import NotDone, going_on
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.standing import returned_to
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import turn
from twoshaft_grader.cohort.withdrawn import withdrawn_of
from twoshaft_grader.stored.collected import COLLECTED, Kept, Version
from twoshaft_grader.stored.handed_in import TIMESTAMP

FAR_LESS = 0.5
"""A later hand-in with less than this share of the answers is asked about: our choice."""
LATER = timedelta(minutes=10)
"""A folder written so long after the time in its name is told: our choice."""


@dataclass(frozen=True)
class Collected:
    """What a collection found for one assignment.

    ``new``, ``newer`` and ``placed`` are learner ids: first work, later work that replaces
    earlier, and work put into ``submitted/`` by hand. ``strangers`` are not on the roster.
    ``asked`` are later hand-ins that are kept but not taken until somebody says so, ``restored``
    learners whose collected work had changed and was put back, ``later`` hand-ins whose folder was
    written well after the time in its name. ``left`` could not be taken in.
    """

    assignment: str
    new: tuple[str, ...]
    newer: tuple[str, ...]
    placed: tuple[str, ...]
    missing: tuple[str, ...]
    strangers: tuple[str, ...]
    restored: tuple[str, ...]
    asked: tuple[NotDone, ...]
    later: tuple[NotDone, ...]
    left: tuple[NotDone, ...]


@dataclass
class _Run:
    """One collection under way."""

    cohort: Cohort
    assigned: Assigned
    take: Collection[str]
    restored: list[str] = field(default_factory=list)
    newer: list[str] = field(default_factory=list)
    asked: list[NotDone] = field(default_factory=list)
    later: list[NotDone] = field(default_factory=list)
    left: list[NotDone] = field(default_factory=list)


def collect(
    cohort: Cohort,
    assigned: Assigned,
    learners: Iterable[Learner],
    *,
    take: Collection[str] = (),
    by: str = "",
) -> Collected:
    """Collect one assignment from the exchange; later work replaces earlier, and what cannot be
    taken in holds up nobody else.

    Parameters
    ----------
    take : collection of str
        Learners whose last hand-in is taken even where it would be asked about.

    Raises
    ------
    CohortError
        When another run is under way.
    OSError
        When the disk is full or the place is read-only.
    """
    with act(cohort.root, "collect", assigned.name, by=by) as told, turn(cohort):
        result = _collect(_Run(cohort, assigned, take), [learner.id for learner in learners])
        told.after = "; ".join(
            f"{word}: {', '.join(ids)}"
            for word, ids in (("new", result.new), ("newer", result.newer), ("taken", take))
            if ids
        )
    return result


def _collect(run: _Run, roster: list[str]) -> Collected:
    cohort, assigned = run.cohort, run.assigned
    before = _handed_in(cohort, assigned.name)
    waiting: dict[str, list[Arrival]] = {}
    for arrival in arrivals(cohort, assigned.name):
        waiting.setdefault(arrival.learner, []).append(arrival)
    for learner in roster:
        with going_on(learner, run.left):
            _of_one(run, learner, waiting.get(learner, []))
            tell_newly_come(cohort, learner)
            if why := strange_folder(cohort, learner):
                run.left.append(NotDone(learner, why))
    after = _handed_in(cohort, assigned.name)
    strangers = (set(waiting) | after) - set(roster) - {one.id for one in withdrawn_of(cohort)}
    return Collected(
        assigned.name,
        new=tuple(sorted(after - before)),
        newer=tuple(sorted(id for id in run.newer if id in before)),
        placed=tuple(sorted(id for id in after if hand_in_time(cohort, id, assigned.name) is None)),
        missing=tuple(id for id in roster if id not in after),
        strangers=tuple(sorted(strangers)),
        restored=tuple(run.restored),
        asked=tuple(run.asked),
        later=tuple(run.later),
        left=tuple(run.left),
    )


def kept(cohort: Cohort, learner: str, assignment: str) -> Kept:
    """All hand-ins of a learner that were taken in.

    Raises
    ------
    CohortError
        When the list is damaged.
    """
    found = COLLECTED.read_if_any(collected_list(cohort, learner, assignment))
    return found or Kept(learner=learner, assignment=assignment)


def check_collected(cohort: Cohort, learner: str, assignment: str, digest: str) -> None:
    """See that the work in ``submitted/`` is what was collected; work placed by hand may be.

    Raises
    ------
    CohortError
        When it is not.
    """
    counts = kept(cohort, learner, assignment).counts
    if counts is not None and counts.digest != digest:
        raise CohortError(
            "the work in submitted/ is not what was collected",
            mend="collect again, which puts it back",
        )


def _of_one(run: _Run, learner: str, waiting: list[Arrival]) -> None:
    """Keep what one learner handed in, and put what counts into ``submitted/``."""
    cohort, name = run.cohort, run.assigned.name
    record = kept(cohort, learner, name)
    # The copies that a stopped run left are made again.
    files.remove(cohort.collected(learner, name) / _ASIDE)
    known = {version.arrived_as for version in record.versions}
    batch = 1 + max((version.batch for version in record.versions), default=0)
    turned_away = dict(record.refused)
    fresh: list[tuple[datetime, Arrival]] = []
    for arrival in waiting:
        if arrival.name in known:
            continue
        moment, why = moment_of(arrival.when)
        if moment is None:
            run.left.append(NotDone(learner, f"the hand-in is not taken: {why}."))
            turned_away.setdefault(_mark_of(arrival.name), batch)
        else:
            fresh.append((moment, arrival))
    refused: list[tuple[str, NotDone]] = []
    for moment, arrival in sorted(fresh, key=lambda one: (one[0], one[1].name)):
        left: list[NotDone] = []
        with going_on(learner, left):
            version = _keep(run, moment, arrival, batch)
            record = replace(
                record, versions=tuple(sorted((*record.versions, version), key=lambda v: v.key))
            )
        refused += [(_key(moment, arrival), one) for one in left]
    changed = bool(fresh) or turned_away != record.refused
    record = replace(record, refused=turned_away)
    taken = _which_counts(run, record)
    # One that was refused before a good one came is done with.
    run.left += [one for key, one in refused if key > taken]
    if changed or taken != record.taken:
        if record.taken and taken != record.taken:
            run.newer.append(learner)
        record = replace(record, taken=taken)
        COLLECTED.write(collected_list(cohort, learner, name), record)
    _put_in_place(run, record)


_ASIDE = ".part"


def _keep(run: _Run, moment: datetime, arrival: Arrival, batch: int) -> Version:
    """Copy a hand-in aside and rename it when it is whole."""
    folder = run.cohort.collected(arrival.learner, run.assigned.name)
    source = run.cohort.inbound / arrival.name
    key, about = _key(moment, arrival), os.lstat(source)
    aside = folder / _ASIDE
    files.remove(aside)
    try:
        copy_in(source, aside, without=frozenset((TIMESTAMP,)))
    except CohortError as error:
        files.remove(aside)
        raise CohortError(
            f"the hand-in of {moment:%Y-%m-%d %H:%M} UTC is not taken: {error.what}"
        ) from None
    # The time is what the exchange's folder shows: a file of the learner's own says nothing.
    files.write_whole(aside / TIMESTAMP, arrival.when, sync=False)
    files.move_into_place(aside, folder / key)
    written = datetime.fromtimestamp(about.st_mtime, moment.tzinfo)
    if written - moment > LATER:
        run.later.append(
            NotDone(
                arrival.learner,
                f"handed in at {moment:%Y-%m-%d %H:%M} UTC by the name of its folder, which was "
                f"last written at {written:%Y-%m-%d %H:%M} UTC.",
            )
        )
    return Version(
        key=key,
        arrived_as=arrival.name,
        arrived=stamp(moment),
        digest=files.folder_digest(folder / key),
        answers=_answers(folder / key),
        account=about.st_uid,
        batch=batch,
    )


def _key(moment: datetime, arrival: Arrival) -> str:
    return f"{moment:%Y%m%dT%H%M%S%f}-{_mark_of(arrival.name)[:8]}"


def _mark_of(name: str) -> str:
    return hashlib.sha256(os.fsencode(name)).hexdigest()[:16]


def _answers(folder: Path) -> int | None:
    """How many answers a job sheet holds; None if it cannot be read, 0 if there is none."""
    if not (folder / SHEET).exists():
        return 0
    try:
        sheet = read_sheet(folder / SHEET)
    except SheetError:
        return None
    return sum(answer.value not in (None, "", []) for answer in sheet.answers.values())


def _which_counts(run: _Run, record: Kept) -> str:
    """The key of the hand-in that counts; what is asked about is told."""
    counts = record.counts
    asked = None
    # What was taken in later is later work, whatever its time says: a clock may have been put back.
    for version in sorted(record.versions, key=_order):
        if counts is None or _order(version) > _order(counts):
            why = _question(run.cohort, record, counts, version)
            if not why or record.learner in run.take:
                counts, asked = version, None
            else:
                asked = NotDone(record.learner, why)
    if asked:
        run.asked.append(asked)
    return counts.key if counts else ""


def _order(version: Version) -> tuple[int, str]:
    return version.batch, version.key


def _question(cohort: Cohort, record: Kept, counts: Version | None, version: Version) -> str:
    """Why a hand-in is asked about; empty where it is taken."""
    when = f"the hand-in of {_shown(version.arrived)}"
    known = {counts.account} if counts else _accounts(cohort, record.learner)
    if known and version.account not in known:
        return (
            f"{when} comes from account {version.account} of this system, earlier work from "
            f"{', '.join(str(one) for one in sorted(known))}."
        )
    if counts is None:
        return ""
    if version.key < counts.key:
        return (
            f"{when} came in after that of {_shown(counts.arrived)} had been taken in, and says an "
            "earlier time: a clock was put back, or it was held up."
        )
    if counts.batch >= record.refused.get(_mark_of(version.arrived_as), counts.batch + 1):
        return (
            f"{when} was there already when that time was still to come, and other work has been "
            "taken in since: a clock was put back."
        )
    if told := returned_to(cohort, record.learner, record.assignment):
        # Not by the times that they bear: whoever hands in can write those.
        return (
            f"{when} was taken in after feedback had been given back "
            f"({_shown(told.given_back)}); a further attempt has fresh readings."
        )
    if version.answers is not None and version.answers < FAR_LESS * (counts.answers or 0):
        return f"{when} holds {version.answers} answers, the one before {counts.answers}."
    return ""


def _shown(stamped: str) -> str:
    return f"{stamped[:16].replace('T', ' ')} UTC"


def _accounts(cohort: Cohort, learner: str) -> set[int]:
    """Accounts of the system that a learner's work came from, in other assignments."""
    lists = (cohort.root / "collected").glob(f"*/{learner}.json")
    return {one.account for path in lists if (one := COLLECTED.read(path).counts)}


def _put_in_place(run: _Run, record: Kept) -> None:
    """Let ``submitted/`` hold what counts, and nothing else."""
    counts = record.counts
    if counts is None:
        return
    cohort, learner, name = run.cohort, record.learner, record.assignment
    target = cohort.submitted(learner, name)
    try:
        there = files.folder_digest(target) if os.path.lexists(target) else ""
    except CohortError:
        there = "not to be read"
    if there == counts.digest:
        return
    folder = cohort.collected(learner, name)
    if files.folder_digest(folder / counts.key) != counts.digest:
        raise CohortError(
            "the kept hand-in is not what was collected",
            where=str(folder / counts.key),
            mend="put the folder back from a copy",
        )
    if there and there not in {version.digest for version in record.versions}:
        # Whatever it is, somebody may want it: work placed by hand, or changed after collecting.
        run.restored.append(learner)
        files.move_into_place(target, folder / f"replaced-{stamp(now()).replace(':', '')}")
    aside = folder / _ASIDE
    copy_in(folder / counts.key, aside)
    files.move_into_place(aside, target)


def _handed_in(cohort: Cohort, assignment: str) -> set[str]:
    """Learner ids with work of this assignment."""
    found = (cohort.root / "submitted").glob(f"*/{assignment}")
    return {folder.parent.name for folder in found if folder.is_dir()}
