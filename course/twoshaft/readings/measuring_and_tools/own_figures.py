"""Repeat readings of one size that may come from the real bench."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.gauges import spread, stray
from twoshaft.readings.measuring_and_tools.spread import labelled
from twoshaft.readings.own_figure import BenchTask
from twoshaft.readings.own_figure import PlacedFigure as Figure
from twoshaft.units.unit import Unit

CLOSE_MM = 2.0
"""Repeat readings of one size that are further apart than this are of different sizes."""


def _figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    return tuple(
        Figure(f"reading-{n + 1}", ("readings_mm", n), f"Reading {n + 1}", "mm", 0.1, 300)
        for n in range(len(given["readings_mm"]))
    )


def _renew(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    readings = given["readings_mm"]
    if max(readings) - min(readings) > CLOSE_MM:
        raise CourseError(
            f"these readings lie more than {CLOSE_MM:g} mm apart, so they are not of one size",
            mend="look for a slip of the pen, or measure one size several times",
        )
    odd = stray(readings)
    kept = [mm for place, mm in enumerate(readings) if place != odd]
    if spread(kept)[1] <= 0:
        raise CourseError(
            "these readings do not scatter at all, so there is no spread to work out",
            mend="read to the tool's finest mark, or go on with the drawn figures",
        )
    return given | {"options": labelled(readings)}


BENCH = {"repeats": BenchTask(_figures, _renew)}
