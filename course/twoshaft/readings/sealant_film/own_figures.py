"""Times at the face from the real bench, and the open time from the sealant's own sheet."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.readings.own_bench import BenchTask, Figure
from twoshaft.units.unit import Unit

NOT_COUNTED = ("before", "tighten")
CLEAR_MINUTES = 0.2


def _figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    steps = (
        Figure(f"step-{n + 1}", ("rows", n, 2), words, "min", 0.1, 240)
        for n, (_, words, _) in enumerate(given["rows"])
    )
    limit = Figure("open", ("limit_minutes",), "Time that the film may lie open, by its sheet",
                   "min", 1, 240, "manual limit")  # fmt: skip
    return (*steps, limit)


def _renew(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    age = sum(minutes for key, _, minutes in given["rows"] if key not in NOT_COUNTED)
    if abs(age - given["limit_minutes"]) < CLEAR_MINUTES:
        raise CourseError(
            "the film's age lies so near its limit that the clock's reading decides it",
            mend="treat such a film as too old at the bench; here, go on with the drawn figures",
        )
    return given


BENCH = {"clock": BenchTask(_figures, _renew)}
