"""Believable job sheets: full answers from the solution, spoiled the way people spoil them."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime, timedelta
from typing import Any

from twoshaft.jobsheet import Answer, Field, SheetData
from twoshaft.jobsheet.sheet import given_digest
from twoshaft.readings import Stream
from twoshaft.stored.job_sheet import sheet_text as in_file
from twoshaft.units import Unit
from twoshaft_grader.cohort.clock import stamp
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.desk.demo_people import Way
from twoshaft_grader.marking import run_clean, solve
from twoshaft_grader.marking.kinds import judge_of
from twoshaft_grader.marking.reference import Solution

# Of every ten fields, how many go wrong.
_SPOILED = {Way.NEARLY: 1, Way.LATE: 1, Way.RENAMED: 2, Way.SLIPS: 5, Way.DAMAGED: 3}


def demo_answers(
    way: Way, solution: Solution, issued: Mapping[str, Any], unit: Unit
) -> dict[str, Any]:
    """Stored answers of one invented apprentice, by field name; the same at every run."""
    stream = Stream("demo", issued["learner"], issued["module"], issued["attempt"])
    asked = run_clean(solution, issued, unit)
    answers = solve(solution, issued, unit)
    if way == Way.RIGHT:
        return answers
    if way in (Way.UNFINISHED, Way.BEGUN):
        tasks = list(asked.tasks.values())
        kept = tasks[: len(tasks) // 2 if way == Way.UNFINISHED else 1]
        done = [name for names in kept for name in names]
        answers = {name: answers[name] for name in done}
        return _spoil_some(answers, asked.fields, stream, 2)
    if way == Way.ODD_UNITS:
        some = _spoil_some(answers, asked.fields, stream, 2)
        return {name: _mistyped(asked.fields[name], some[name], stream) for name in some}
    return _spoil_some(answers, asked.fields, stream, _SPOILED[way])


def sheet_text(
    answers: Mapping[str, Any],
    issued: Mapping[str, Any],
    cohort: Cohort,
    last: datetime,
    each: timedelta = timedelta(minutes=4),
) -> str:
    """A job sheet with these answers, saved one after the other until ``last``."""
    saved = {
        name: stamp(last - each * (len(answers) - number)) for number, name in enumerate(answers, 1)
    }
    sheet = SheetData(
        learner=issued["learner"],
        module=issued["module"],
        attempt=issued["attempt"],
        cohort=cohort.id,
        course_version=issued["course_version"],
        unit_id=issued["unit"],
        unit_version=str(issued["unit_version"]),
        given_digest=given_digest(issued["given"]),
        answers={name: Answer(value, 1, saved[name]) for name, value in answers.items()},
    )
    return in_file(sheet)


def _mistyped(field: Field, value: Any, stream: Stream) -> Any:
    return judge_of(field).mistype(field, value, stream.child(field.name))


def _spoil_some(
    answers: dict[str, Any], fields: Mapping[str, Field], stream: Stream, of_ten: int
) -> dict[str, Any]:
    count = max(1, round(len(answers) * of_ten / 10))
    chosen = set(stream.child("which").shuffled(sorted(answers))[:count])
    return {
        name: judge_of(fields[name]).spoil(fields[name], value, stream.child(name))
        if name in chosen
        else value
        for name, value in answers.items()
    }
