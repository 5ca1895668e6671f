"""Repeat readings of one size that may come from the real bench."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.gauges import spread, stray
from twoshaft.readings.measuring_and_tools.given import Repeats
from twoshaft.readings.measuring_and_tools.spread import labelled
from twoshaft.readings.own_figure import BenchTask, Figure
from twoshaft.records import changed
from twoshaft.units.unit import Unit

CLOSE_MM = 2.0
"""Repeat readings of one size that are further apart than this are of different sizes."""


def _figures(unit: Unit, given: Repeats) -> tuple[Figure, ...]:
    return tuple(
        Figure(f"reading-{n}", f"Reading {n}", "mm", 0.1, 300, drawn=mm)
        for n, mm in enumerate(given.readings_mm, 1)
    )


def _renew(unit: Unit, given: Repeats, own: Mapping[str, Any]) -> Repeats:
    readings = [own[f"reading-{n}"] for n, _ in enumerate(given.readings_mm, 1)]
    if max(readings) - min(readings) > CLOSE_MM:
        raise CourseError(
            f"these readings lie more than {CLOSE_MM:g} mm apart, so they are not of one size",
            mend="look for a writing mistake, or measure one size several times",
        )
    odd = stray(readings)
    kept = [mm for place, mm in enumerate(readings) if place != odd]
    if spread(kept)[1] <= 0:
        raise CourseError(
            "these readings do not scatter at all, so there is no spread to work out",
            mend="read to the tool's finest mark, or go on with the drawn figures",
        )
    return changed(given, readings_mm=tuple(readings), options=labelled(readings))


BENCH = {"repeats": BenchTask(_figures, _renew)}
