"""Mark one submission: no gradebook and nothing else of nbgrader, so other processes start fast."""

from __future__ import annotations

import gc
import os
import threading
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import count
from multiprocessing import parent_process
from pathlib import Path

from twoshaft.errors import CourseError, SheetError
from twoshaft.jobsheet import SheetData, read_sheet
from twoshaft.models.order import take_chance_levels
from twoshaft.outcomes import load_rules
from twoshaft.units import Unit, load_unit
from twoshaft_grader.code_tasks.mark import CodeWork, blank_code, mark_code
from twoshaft_grader.cohort.limits import TooLong, limits
from twoshaft_grader.marking.reference import load_solution
from twoshaft_grader.marking.result import SheetMark
from twoshaft_grader.marking.task import mark_sheet
from twoshaft_grader.stored.issued import read_issued

LONGEST_S, MOST_BYTES = 60.0, 2 * 2**30
"""Of one submission: a whole one takes a tenth of a second and some megabytes. Our choice."""
TIDY_AFTER = 16
"""Sheets after which a worker lets go of what they held, megabytes each that refer in circles."""
_marked = count(1)


@dataclass(frozen=True)
class Work:
    """All that a worker process needs to mark one submission."""

    learner: str
    folder: str
    issued: str
    notebook: str
    unit: str | Path
    """The id of a shipped one, or a file."""
    rules: str
    code: CodeWork | None = None


@dataclass(frozen=True)
class Result:
    """A marked sheet, or the reason why there is none; with both, the sheet counts as blank."""

    learner: str
    sheet: SheetMark | None
    trouble: str = ""


@lru_cache(maxsize=4)
def _unit(unit: str | Path) -> Unit:
    return load_unit(unit)


def blank_mark(work: Work) -> SheetMark:
    """The mark of a sheet with nothing on it."""
    if work.code:
        return blank_code(work.code, work.learner, Path(work.notebook), Path(work.rules))
    return _mark(None, work)


def _mark(sheet: SheetData | None, work: Work) -> SheetMark:
    return mark_sheet(
        sheet,
        _issued(work),
        load_solution(Path(work.notebook)),
        unit=_unit(work.unit),
        rules=load_rules(work.rules),
    )


def _issued(work: Work) -> dict:
    return read_issued(Path(work.issued))


def begin_worker(levels: dict[str, float]) -> None:
    """In a worker process: know what the run has worked out of orders, and end when the run is
    gone, even if it was killed."""
    take_chance_levels(levels)
    parent = parent_process()
    if parent is None:
        return

    def watch() -> None:
        parent.join()
        os._exit(1)

    threading.Thread(target=watch, daemon=True).start()


def mark_one(work: Work) -> Result:
    """Mark one submission; whatever is wrong with it comes back as a sentence."""
    try:
        with limits(LONGEST_S, MOST_BYTES):
            return _mark_one(work)
    except TooLong:
        why = f"Could not be marked: it takes more than {LONGEST_S:g} s of computing."
    except MemoryError:
        why = f"Could not be marked: it takes more than {MOST_BYTES // 2**20} MB of memory."
    return Result(work.learner, None, why)


def mark_next(work: Work) -> Result:
    """Mark one of many submissions in a worker process."""
    result = mark_one(work)
    if next(_marked) % TIDY_AFTER == 0:
        gc.collect()
    return result


def _mark_one(work: Work) -> Result:
    try:
        if work.code:
            source = Path(work.notebook)
            written = Path(work.folder) / source.name
            marked, trouble = mark_code(work.code, work.learner, source, written, Path(work.rules))
            return Result(work.learner, marked, trouble)
        trouble = ""
        try:
            sheet = read_sheet(Path(work.folder) / "jobsheet.json")
        except SheetError as error:
            sheet, trouble = None, error.sentence
        marked = _mark(sheet, work)
        if trouble:
            marked = replace(marked, notes=(trouble,))
        return Result(work.learner, marked, trouble)
    except CourseError as error:
        return Result(work.learner, None, error.sentence)
    except MemoryError:
        raise
    except Exception as error:
        return Result(work.learner, None, f"Marking failed ({type(error).__name__}: {error}).")
