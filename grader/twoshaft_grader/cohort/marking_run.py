"""Mark everything that was collected: once, whole, and whatever happens in between.

Marking is pure and may run in several processes; one writer puts the results into the gradebook,
some at a time, and then stores each mark, which is what says that a submission is done. A run that
is cut short is finished by the next: what is stored stays, what is not is done again and written
over.
"""

from __future__ import annotations

import gc
import os
import sys
import time
from collections import Counter
from collections.abc import Callable, Collection, Iterable, Iterator
from concurrent.futures import ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from dataclasses import dataclass, replace
from multiprocessing import get_context
from pathlib import Path

import twoshaft
from twoshaft.jobsheet.receipts import sheet_digest
from twoshaft.models.order import chance_levels
from twoshaft.outcomes import load_rules
from twoshaft_grader.code_tasks.mark import CodeWork
from twoshaft_grader.code_tasks.sandbox import check_sandbox
from twoshaft_grader.cohort import backbone, files
from twoshaft_grader.cohort.arrival import hand_in_time
from twoshaft_grader.cohort.assign import Assigned, unit_of_assigned
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.collect import check_collected
from twoshaft_grader.cohort.due import gradebook_time
from twoshaft_grader.cohort.extensions import extension_of
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.marks import MARKED, UNREADABLE, StoredMark, read_mark, write_mark
from twoshaft_grader.cohort.not_done import NotDone, going_on
from twoshaft_grader.cohort.one_sheet import (
    Result,
    Work,
    begin_worker,
    blank_mark,
    mark_next,
    mark_one,
)
from twoshaft_grader.cohort.order_levels import order_levels
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.trail import account, act
from twoshaft_grader.cohort.turn import turn
from twoshaft_grader.marking.gradebook import Recorder
from twoshaft_grader.marking.result import SheetMark, differences
from twoshaft_grader.marking.scores import entered_learners
from twoshaft_grader.stored.lines import MARK_LINES, MarkLine
from twoshaft_grader.stored.mark import Earlier

AS_BEFORE = "as before"
NOT_HANDED_IN = "not handed in"
NOT_DONE = "could not be marked"
MARKED_AGAIN = "marked again"
TOGETHER = 50
TOGETHER_S = 1.0
"""So many results are stored together, or those of so long: a cut loses no more than that."""
Marking = Callable[[list[Work]], Iterator[Result]]
# Forked where that is safe: what the sheets marked so far have loaded and worked out of the unit is
# shared, in time and memory. Elsewhere every process begins anew.
_WAY = "fork" if sys.platform == "linux" else "spawn"
ALONE_S = 2.0  # mark in this process for so long before other processes are worth their start


@dataclass(frozen=True)
class Done:
    """What a run did with one learner, and in short what mark stands now.

    Attributes
    ----------
    learner : str
    state : str
        ``MARKED``, ``UNREADABLE``, ``AS_BEFORE``, ``NOT_HANDED_IN`` or ``NOT_DONE``.
    points, maximum, met
        Of the mark; None where there is none.
    reason : str
        Why it cannot be read or marked.
    """

    learner: str
    state: str
    points: float | None = None
    maximum: float | None = None
    met: bool | None = None
    reason: str = ""

    @classmethod
    def of(cls, learner: str, state: str, mark: StoredMark | None) -> Done:
        """From the stored mark. That itself is let go: it is large, and there are many."""
        reason = mark.reason if mark else ""
        if mark is None or mark.sheet is None:
            return cls(learner, state, reason=reason)
        sheet = mark.sheet
        return cls(learner, state, sheet.points, sheet.maximum, sheet.met, reason)


def mark_assignment(
    cohort: Cohort,
    assigned: Assigned,
    learners: Iterable[Learner],
    *,
    again: bool = False,
    workers: int = 0,
    marked: Marking | None = None,
    step: Callable[[], None] = lambda: None,
    by: str = "",
) -> list[Done]:
    """Mark all collected work of an assignment.

    Parameters
    ----------
    learners : iterable of Learner
        Whose work; others in ``submitted/`` are left alone.
    again : bool
        Mark unchanged work too.
    workers : int
        Processes at most; 0 takes as many as the machine has, 1 only this one.
    marked : callable, optional
        Marks elsewhere, in place of processes of this machine: works in, results out, in any order.
    step : callable
        Called when one learner is done.
    by : str
        Who, for the trail; the account's name where empty.

    Returns
    -------
    list of Done
        In the order of the learners.

    Raises
    ------
    CohortError
        When another run is under way, or the cohort's own files are damaged.
    """

    def here(waiting: list[Work]) -> Iterator[Result]:
        return mark_here(waiting, workers)

    did = "mark again" if again else "mark"
    with act(cohort.root, did, assigned.name, by=by) as told, turn(cohort), order_levels(cohort):
        people = list(learners)
        mend_audit(cohort, assigned, people)
        done = mark_alone(
            cohort, assigned, people, again=again, marked=marked or here, step=step, by=by,
            why=MARKED_AGAIN,
        )  # fmt: skip
        counts = Counter(one.state for one in done)
        told.after = ", ".join(f"{count} {state}" for state, count in counts.items())
    return done


def mark_alone(
    cohort: Cohort,
    assigned: Assigned,
    learners: list[Learner],
    *,
    again: bool,
    marked: Marking,
    step: Callable[[], None],
    by: str,
    why: str,
) -> list[Done]:
    """Mark, within a turn, an act and the order levels of the caller; see :func:`mark_assignment`.

    ``by`` and ``why`` are kept with a mark of the same work that changes.
    """
    load_rules(cohort.rules)  # a slip in it is told once, before anybody is marked
    done: dict[str, Done] = {}
    waiting: list[Work] = []
    digests: dict[str, str] = {}
    with backbone.gradebook(cohort) as book:
        entered = entered_learners(book, assigned.name, assigned.notebook_id)
        for learner in learners:
            left: list[NotDone] = []
            with going_on(learner.id, left):
                folder = cohort.submitted(learner.id, assigned.name)
                stored = read_mark(cohort.mark_file(learner.id, assigned.name))
                if not folder.is_dir():
                    done[learner.id] = Done.of(learner.id, NOT_HANDED_IN, stored)
                    step()
                    continue
                digest = digests[learner.id] = files.folder_digest(folder)
                check_collected(cohort, learner.id, assigned.name, digest)
                if not again and _stands(stored, digest, entered):
                    done[learner.id] = Done.of(learner.id, AS_BEFORE, stored)
                    step()
                    continue
                waiting.append(work_of(cohort, assigned, learner.id))
            for trouble in left:
                done[learner.id] = Done(learner.id, NOT_DONE, reason=trouble.why)
                step()
        if waiting:
            if assigned.code_outcome:
                check_sandbox()  # told once, before anybody is marked
            recorder = Recorder(book, cohort.root, assigned.name)
            for results in _batches(marked(waiting)):
                for one in _store(
                    cohort, assigned, recorder, results, digests, (by or account(), why)
                ):
                    done[one.learner] = one
                    step()
    return [done[learner.id] for learner in learners]


def blank_sheet(cohort: Cohort, assigned: Assigned, learner: str) -> SheetMark:
    """The mark of a sheet with nothing on it: what could have been earned."""
    return blank_mark(work_of(cohort, assigned, learner))


def work_of(cohort: Cohort, assigned: Assigned, learner: str, notebook: Path | None = None) -> Work:
    """What marking a learner needs; with another notebook in the place of the solution in use."""
    source = cohort.source(assigned.name)
    return Work(
        learner,
        str(cohort.submitted(learner, assigned.name)),
        str(cohort.issued(learner, assigned.name)),
        str(notebook or source / assigned.notebook),
        unit_of_assigned(cohort, assigned),
        str(cohort.rules),
        _code(assigned),
    )


def _code(assigned: Assigned) -> CodeWork | None:
    """What marking by running code must know; None where answers are given in forms."""
    if not assigned.code_outcome:
        return None
    return CodeWork(
        module=assigned.module,
        attempt=assigned.attempt,
        outcome=assigned.code_outcome,
        course_version=assigned.course_version,
        unit=assigned.unit,
        unit_version=assigned.unit_version,
    )


def _stands(stored: StoredMark | None, digest: str, entered: Collection[str]) -> bool:
    """Whether a stored mark is of this very work, and the gradebook has it."""
    return (
        stored is not None
        and stored.state == MARKED
        and stored.submission == digest
        and stored.learner in entered
    )


def mark_here(waiting: list[Work], workers: int = 0) -> Iterator[Result]:
    """Mark here at first; where much is left, in several processes."""
    workers = workers or os.cpu_count() or 1
    start = time.monotonic()
    for index, work in enumerate(waiting):
        spent = time.monotonic() - start
        left = len(waiting) - index
        if index and workers > 1 and spent > ALONE_S and spent / index * left > ALONE_S:
            yield from _in_processes(waiting[index:], workers)
            return
        yield mark_one(work)


def marked_apart(waiting: list[Work]) -> Iterator[Result]:
    """Mark in new processes alone: for a program with threads, which must not be forked and in
    which no limit of time or memory holds for one sheet.
    """
    yield from _in_processes(waiting, os.cpu_count() or 1, way="spawn")


def _in_processes(waiting: list[Work], workers: int, way: str = _WAY) -> Iterator[Result]:
    finished = set()
    try:
        with _pool(min(workers, len(waiting)), way) as pool:
            for result in pool.map(mark_next, waiting):
                finished.add(result.learner)
                yield result
    except BrokenProcessPool:
        # Something made a process end: find out which, one process for each that is left.
        for work in waiting:
            if work.learner in finished:
                continue
            try:
                with _pool(1, way) as pool:
                    yield pool.submit(mark_one, work).result()
            except BrokenProcessPool:
                yield Result(work.learner, None, "Marking it makes the program end.")


def _pool(workers: int, way: str) -> ProcessPoolExecutor:
    gc.freeze()  # collecting garbage would write to, and so copy, what is shared
    return ProcessPoolExecutor(
        workers,
        mp_context=get_context(way),
        initializer=begin_worker,
        initargs=(chance_levels(),),
    )


def _batches(results: Iterable[Result]) -> Iterator[list[Result]]:
    """Results that are stored together."""
    batch, start = [], time.monotonic()
    for result in results:
        batch.append(result)
        if len(batch) >= TOGETHER or time.monotonic() - start > TOGETHER_S:
            yield batch
            batch, start = [], time.monotonic()
    if batch:
        yield batch


def _store(
    cohort: Cohort,
    assigned: Assigned,
    recorder: Recorder,
    results: list[Result],
    digests: dict[str, str],
    word: tuple[str, str],
) -> list[Done]:
    """Put results into the gradebook at once, then store each mark; the log comes last."""
    marks, unchanged = [], []
    left: list[NotDone] = []
    for result in results:
        with going_on(result.learner, left):
            mark, before = _mark_of(cohort, assigned, result, digests[result.learner], word)
            # The same trouble as last time; another mark within the same second counts.
            if before is not None and (before.id, before.sheet) == (mark.id, mark.sheet):
                unchanged.append(before)
                continue
            if mark.sheet is not None and not mark.earlier:
                moment = hand_in_time(cohort, mark.learner, assigned.name)
                recorder.record(
                    mark.learner,
                    mark.sheet,
                    timestamp=gradebook_time(moment) if moment else None,
                    extension=extension_of(cohort, assigned, mark.learner),
                )
            marks.append(mark)
    recorder.commit()
    stored = []
    for mark in marks:
        with going_on(mark.learner, left):
            # From here on it counts as marked.
            write_mark(cohort.mark_file(mark.learner, assigned.name), mark)
            stored.append(mark)
    _audit(cohort, stored)
    done = [Done.of(mark.learner, mark.state, mark) for mark in (*stored, *unchanged)]
    return done + [Done(one.learner, NOT_DONE, reason=one.why) for one in left]


def _mark_of(
    cohort: Cohort, assigned: Assigned, result: Result, digest: str, word: tuple[str, str]
) -> tuple[StoredMark, StoredMark | None]:
    """The mark to store for a result, and the one that is stored; ``word`` is by whom and why."""
    before = read_mark(cohort.mark_file(result.learner, assigned.name))
    if result.trouble and before is not None and (before.state == MARKED or before.earlier):
        # Nobody loses a mark by handing in a damaged file after a good one.
        mark = replace(
            before, state=UNREADABLE, submission=digest, reason=result.trouble, earlier=True
        )
        return mark, before
    moment = hand_in_time(cohort, result.learner, assigned.name)
    mark = StoredMark(
        learner=result.learner,
        assignment=assigned.name,
        state=UNREADABLE if result.trouble else MARKED,
        submission=digest,
        handed_in=stamp(moment) if moment else "",
        marked_at=stamp(now()),
        marked_by=f"twoshaft {twoshaft.__version__}",
        reason=result.trouble,
        sheet_sha256=sheet_digest(
            cohort.submitted(result.learner, assigned.name) / assigned.answers_in
        ),
        sheet=result.sheet,
        before=_before(before, result.sheet, digest, word),
    )
    return mark, before


def _before(
    stored: StoredMark | None, sheet: SheetMark | None, digest: str, word: tuple[str, str]
) -> tuple[Earlier, ...]:
    """The marks that the same work had before, and now has no more."""
    if stored is None:
        return ()
    if sheet is None or stored.sheet is None or stored.submission != digest:
        return stored.before
    words = differences(stored.sheet, sheet)
    if not words:
        return stored.before
    by, why = word
    gone = Earlier(
        submission=stored.submission, marked_at=stored.marked_at, marked_by=stored.marked_by,
        until=stamp(now()), by=by, why=why, words=words, sheet=stored.sheet,
    )  # fmt: skip
    return (*stored.before, gone)


def _audit(cohort: Cohort, marks: Iterable[StoredMark]) -> None:
    MARK_LINES.append(
        cohort.log("marks"),
        *(
            MarkLine(
                id=mark.id,
                at=stamp(now()),
                marked_at=mark.marked_at,
                who=account(),
                version=mark.marked_by,
                assignment=mark.assignment,
                learner=mark.learner,
                state=mark.state,
                submission=mark.submission,
                sheet=mark.sheet_sha256,
                solution=mark.sheet.solution_digest if mark.sheet else "",
                mark=mark.sheet.points if mark.sheet else None,
                maximum=mark.sheet.maximum if mark.sheet else None,
            )
            for mark in marks
        ),
    )


def mend_audit(cohort: Cohort, assigned: Assigned, learners: list[Learner]) -> None:
    """Add the line that a cut between storing a mark and logging it has left out."""
    logged = {line.id for line in MARK_LINES.read(cohort.log("marks"))}
    missing = []
    for learner in learners:
        with going_on(learner.id, []):  # told where the learner's turn comes
            mark = read_mark(cohort.mark_file(learner.id, assigned.name))
            if mark is not None and mark.id not in logged:
                missing.append(mark)
    _audit(cohort, missing)
