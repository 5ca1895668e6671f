"""A learner's own bench readings, put into what was issued where that is allowed.

Everything comes from the job sheet, so nothing of it is trusted: what is not allowed, half filled,
not plausible or refused by a model is left out, the issued figures stand, and staff are told.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.jobsheet import SheetData
from twoshaft.jobsheet.bench_readings import PAGE, READ_BY, BenchSet
from twoshaft.readings import given_in
from twoshaft.readings.own_bench import bench_tasks
from twoshaft.records import to_json
from twoshaft.units.unit import Unit
from twoshaft_grader.marking.result import BenchUse


@dataclass(frozen=True)
class Worked:
    """What a sheet is marked on.

    Attributes
    ----------
    issued : mapping
        The issued record, with the bench readings in it.
    uses : tuple of BenchUse
        Which figures are in it.
    notes : tuple of str
        For staff: what was left out, and why.
    """

    issued: Mapping[str, Any]
    uses: tuple[BenchUse, ...] = ()
    notes: tuple[str, ...] = ()


def with_bench(sheet: SheetData | None, issued: Mapping[str, Any], unit: Unit) -> Worked:
    """Put a sheet's bench readings into what was issued.

    Parameters
    ----------
    sheet : SheetData or None
    issued : mapping
        The issued record; its ``bench_readings`` says whether they are allowed.
    unit : Unit

    Returns
    -------
    Worked
    """
    if sheet is None or not sheet.bench:
        return Worked(issued)
    module = issued["module"]
    drawn = given_in(module, issued["given"])
    wanted = [
        one for one in BenchSet.all_of(module, unit, drawn, sheet.bench).values() if one.wanted
    ]
    if issued.get("bench_readings") is not True:
        return Worked(issued, notes=tuple(_not_allowed(one) for one in wanted))
    given, uses, notes = drawn, [], []
    for one in wanted:
        try:
            given = one.put_into(module, unit, given)
        except CourseError as error:
            notes.append(_left_out(one.task, error.sentence))
        except Exception as error:  # figures from outside must never stop the marking
            notes.append(_left_out(one.task, f"the models failed ({type(error).__name__})."))
        else:
            uses.append(_use(module, one))
    return Worked({**issued, "given": to_json(given)}, tuple(uses), tuple(notes))


def without_bench(worked: Worked, issued: Mapping[str, Any], reason: str) -> Worked:
    """Go back to what was issued, since the solution decides nothing on the bench readings."""
    notes = [_left_out(use.task, f"the solution decides nothing on them ({reason.rstrip('.')}).")
             for use in worked.uses]  # fmt: skip
    return Worked(issued, notes=(*worked.notes, *notes))


def _use(module: str, one: BenchSet) -> BenchUse:
    return BenchUse(
        task=one.task,
        tasks=(one.task, *bench_tasks(module)[one.task].also),
        figures=tuple((f.prompt, one.words(f), one.origin(f)) for f in one.figures),
        page=one.texts[PAGE] if one.asks_page else "",
        read_by=one.texts[READ_BY],
    )


def _not_allowed(one: BenchSet) -> str:
    return (
        f"Task {one.task}: figures from the bench were typed, which this assignment does not "
        "allow; it is marked on the issued ones."
    )


def _left_out(task: str, reason: str) -> str:
    return (
        f"Task {task}: the figures from the bench were left out, and it is marked on the issued "
        f"ones: {reason}"
    )
