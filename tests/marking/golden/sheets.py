"""Sheets whose marks must not change unless we mean it, and what is kept of each mark.

A learner's sheet is filled from the reference and spoiled as invented apprentices spoil theirs:
the same at every run. ``marks.jsonl`` holds one line a sheet; made anew by::

    .venv/bin/python tests/marking/golden/sheets.py

A line that changes belongs into DEVELOPERS.md, "Changes that can change a mark", with its reason.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Iterator
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path
from typing import Any, NamedTuple

from twoshaft.jobsheet import Answer, SheetData
from twoshaft.readings import MODULES, issue_record
from twoshaft.units import load_unit
from twoshaft_grader.desk.demo_answers import demo_answers
from twoshaft_grader.desk.demo_people import APPRENTICES, Way
from twoshaft_grader.marking import load_solution, mark_sheet

MARKS = Path(__file__).with_name("marks.jsonl")
SOLUTIONS = Path(__file__).parents[3] / "solutions"
LEARNERS = {"tarnbeck-b5": 50, "tarnbeck-b5-early": 5}
"""How many learners of each module, by shipped unit; beside them the demo cohort."""
WAYS = (Way.SLIPS, Way.ODD_UNITS, Way.NEARLY, Way.UNFINISHED, Way.DAMAGED, Way.RIGHT)


class Key(NamedTuple):
    """One sheet."""

    module: str
    unit: str
    learner: str
    salt: str
    attempt: int
    way: Way


def digest(data: Any) -> str:
    """A short mark of plain data: its JSON bytes in the order in which it was made."""
    text = json.dumps(data, ensure_ascii=False, separators=(",", ":"))
    return hashlib.sha256(text.encode()).hexdigest()[:16]


def line(key: Key) -> dict[str, Any]:
    """What is kept of one learner's sheet: what was given, answered, and each mark."""
    unit = load_unit(key.unit)
    solution = load_solution(next(SOLUTIONS.glob(f"*-{key.module}.ipynb")))
    issued = issue_record(key.module, unit, salt=key.salt, learner=key.learner, attempt=key.attempt)
    answers = demo_answers(key.way, solution, issued, unit)
    sheet = SheetData(
        learner=key.learner,
        module=key.module,
        attempt=key.attempt,
        answers={name: Answer(value, 1) for name, value in answers.items()},
    )
    mark = mark_sheet(sheet, issued, solution, unit=unit)
    return {
        "module": key.module,
        "unit": key.unit,
        "learner": key.learner,
        "given": digest(issued["given"]),
        "answers": digest(answers),
        "line": mark.line,
        "points": {task.id: [task.points, task.earned, task.maximum] for task in mark.tasks},
        "outcomes": {o.id: [o.points, o.maximum, o.met] for o in mark.outcomes},
        "fields": digest(
            [
                [f.name, f.verdict, f.share, f.weight, f.outcome, f.must_pass, f.passed, f.carried]
                for f in mark.fields
            ]
        ),
    }


def keys(most: int | None = None) -> Iterator[Key]:
    """Every sheet, or at most so many learners of a module and unit."""
    for unit, count in LEARNERS.items():
        for module in MODULES:
            for number in range(count if most is None else min(most, count)):
                way, attempt = WAYS[number % len(WAYS)], 1 + number % 3
                yield Key(module, unit, f"golden-{number}", "golden", attempt, way)
    for one in APPRENTICES:
        way = Way.RIGHT if one.way is Way.AWAY else one.way
        yield Key("order-of-work", "tarnbeck-b5", one.learner.id, "tarnbeck-demo", 1, way)


def kept() -> dict[tuple[str, str, str], dict[str, Any]]:
    """The lines of ``marks.jsonl`` by module, unit and learner."""
    lines = map(json.loads, MARKS.read_text(encoding="utf-8").splitlines())
    return {(each["module"], each["unit"], each["learner"]): each for each in lines}


def make(wanted: Iterable[Key]) -> Iterator[dict[str, Any]]:
    """Mark the sheets, one process a core."""
    with ProcessPoolExecutor() as pool:
        yield from pool.map(line, wanted, chunksize=5)


if __name__ == "__main__":
    MARKS.write_text(
        "".join(f"{json.dumps(each, ensure_ascii=False)}\n" for each in make(keys())),
        encoding="utf-8",
    )
