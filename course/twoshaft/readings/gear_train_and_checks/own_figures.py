"""Ring gaps and side-gear readings that may come from the real bench."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.geartrain import right_washers
from twoshaft.readings.own_bench import BenchTask, Figure
from twoshaft.units.quantities import Q
from twoshaft.units.unit import Unit


def _gap_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    name, most = given["ring"]["name"], round(given["ring"]["new_mm"], 3)
    return tuple(
        Figure(f"place-{n + 1}", ("readings_mm", n), f"{name}: gap at place {n + 1}",
               "mm", 0.05, most)
        for n in range(len(given["readings_mm"]))
    )  # fmt: skip


def _renew_gap(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    least, narrow = given["ring"]["least_mm"], min(given["readings_mm"])
    if abs(narrow - least) < 0.005:
        raise CourseError(
            "the narrowest place lies just on the least gap, so a hair decides",
            mend="measure again, or go on with the drawn figures",
        )
    if narrow >= given["ring"]["new_mm"] - 0.005:
        raise CourseError(
            "this ring has lost no gap, so there is no wear to work out",
            mend="take a ring that has run, or go on with the drawn figures",
        )
    return given


def _play_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    washers = unit.gear_train.differential.side_gear_play.washers_mm
    return (
        Figure("inwards", ("inwards_mm",), "Dial, gear pushed inwards", "mm", 0.01, 10),
        Figure("outwards", ("outwards_mm",), "Dial, gear pulled outwards", "mm", 0.01, 10),
        Figure("fitted", ("fitted_mm",), "Washer fitted", "mm", min(washers) / 2, 2 * max(washers)),
    )


def _renew_play(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    play = round(given["outwards_mm"] - given["inwards_mm"], 6)
    if play <= 0:
        raise CourseError(
            "the reading outwards is not above the one inwards, so no play is left",
            mend="zero the dial so that it rises as the gear is pulled outwards",
        )
    if min(abs(play - limit) for limit in given["limits_mm"]) < given["doubt_mm"]:
        raise CourseError(
            "the play lies on a limit, nearer than it can be read",
            mend="measure again, or go on with the drawn figures",
        )
    section = unit.gear_train.differential.side_gear_play
    doubt = Q(given["doubt_mm"], "mm")
    fits = right_washers(section, Q(play, "mm"), Q(given["fitted_mm"], "mm"), doubt)
    if not 0 < len(fits) < len(section.washers_mm):
        raise CourseError(
            "no washer of this unit's set, or every one, would do, so there is nothing to choose",
            mend="measure again, or go on with the drawn figures",
        )
    return given


BENCH = {
    "gap": BenchTask(_gap_figures, _renew_gap),
    "play": BenchTask(_play_figures, _renew_play),
}
