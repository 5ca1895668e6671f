"""Teeth and turns counted, gaps and play read on the real unit, and the limits of the manual."""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.geartrain import gap_says, right_washers, speed_drive_turns, with_wheel
from twoshaft.readings.gear_train_and_checks.paths import reverse_meshes
from twoshaft.readings.gear_train_and_checks.road import WIDEST
from twoshaft.readings.own_figure import BenchTask
from twoshaft.readings.own_figure import PlacedFigure as Figure
from twoshaft.units.quantities import Q
from twoshaft.units.sections.geartrain import GearTrain
from twoshaft.units.unit import Unit

TEETH = (6, 130)
CLEAR_MM = 0.005
BETWEEN = 0.35
"""A pinion's teeth worked out from a count are sure when they lie this near a whole number."""
GO_ON = "measure again, or go on with the drawn figures"


def as_counted(train: GearTrain, task: Mapping[str, Any]) -> GearTrain:
    """The gear train with the teeth that a task gives for its gear (and for reverse, if it does).

    Parameters
    ----------
    train : GearTrain
    task : mapping
        ``gear`` (id, name), ``wheels`` (words, driving, driven) along its path to the ring gear,
        and maybe ``reverse`` with ``back`` likewise.
    """
    gears = {gear.id: gear for gear in train.gears}
    rows = list(zip([*gears[task["gear"][0]].engages, train.final_drive], task["wheels"],
                    strict=True))  # fmt: skip
    if "back" in task:
        back = reverse_meshes(train, gears[task["reverse"][0]].engages)
        rows += zip([mesh.id for mesh in back], task["back"], strict=True)
    for mesh, (_, driving, driven) in rows:
        train = with_wheel(train, mesh, "driving", driving)
        train = with_wheel(train, mesh, "driven", driven)
    return train


def _teeth(rows: list, where: str) -> list[Figure]:
    return [
        Figure(f"{where}-{n + 1}-{side}", (where, n, at), f"{words}: {side}, teeth", "",
               *TEETH, whole=True)
        for n, (words, *_) in enumerate(rows)
        for at, side in ((1, "driving"), (2, "driven"))
    ]  # fmt: skip


def _path_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    back = _teeth(given["back"], "back")
    if _one_idler(unit, given):
        del back[2]
    return (*_teeth(given["wheels"], "wheels"), *back)


def _renew_path(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    if _one_idler(unit, given):
        given["back"][1][1] = given["back"][0][2]
    return given


def _one_idler(unit: Unit, given: Mapping[str, Any]) -> bool:
    """Whether the idler is driven and drives with the same teeth, which are then counted once."""
    reverse = next(gear for gear in unit.gear_train.gears if gear.id == given["reverse"][0])
    first, second = reverse_meshes(unit.gear_train, reverse.engages)
    return first.driven.teeth == second.driving.teeth


def _count_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    return (
        *_teeth(given["wheels"], "wheels"),
        Figure("left", ("left_turns",), "Turns of the left wheel, both free", "turn", 0.1, 60),
        Figure("right", ("right_turns",), "Turns of the right wheel, both free", "turn", 0.1, 60),
    )


def _renew_count(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    return given


def _speed_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    return (
        Figure("wheels", ("wheel_turns",), "Turns of both wheels together", "turn", 2, 100,
               whole=True),
        Figure("counted", ("counted_turns",), "Turns counted at the speed pinion", "turn", 0.5,
               1000),
    )  # fmt: skip


def _renew_speed(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    train = unit.gear_train
    way = Q(given["wheel_turns"] * 2 * math.pi * train.rolling_radius_mm, "mm")
    wanted = speed_drive_turns(train, way).m_as("turn")
    right = train.speed_drive.driven_teeth
    teeth = right * wanted / given["counted_turns"]
    if abs(round(teeth) - right) > WIDEST:
        raise CourseError(
            f"this count fits a pinion of {teeth:.1f} teeth, and none near {right}",
            mend="count again, both wheels together; here, go on with the drawn figures",
        )
    off = abs(given["counted_turns"] - wanted)
    if abs(teeth - round(teeth)) > BETWEEN or abs(off - given["step_turns"]) < 0.02:
        raise CourseError(
            "this count lies between two pinions, so it decides nothing",
            mend="count more turns, or go on with the drawn figures",
        )
    return given


def _gap_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    name = given["ring"]["name"]
    return (
        *(
            Figure(f"place-{n + 1}", ("readings_mm", n), f"{name}: gap at place {n + 1}",
                   "mm", 0.05, 5)
            for n in range(len(given["readings_mm"]))
        ),
        Figure("new", ("ring", "new_mm"), "Gap of a new ring", "mm", 0.2, 5, "manual limit"),
        Figure("least", ("ring", "least_mm"), "Least gap", "mm", 0.05, 5, "manual limit"),
    )  # fmt: skip


def _renew_gap(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    new, least, narrow = (
        given["ring"]["new_mm"],
        given["ring"]["least_mm"],
        min(given["readings_mm"]),
    )
    if not least < new:
        raise CourseError("the least gap is not below that of a new ring", mend="swap them")
    if abs(narrow - least) < CLEAR_MM:
        raise CourseError(
            "the narrowest place lies just on the least gap, so a hair decides", mend=GO_ON
        )
    if narrow >= new - CLEAR_MM:
        raise CourseError(
            "this ring has lost no gap, so there is no wear to work out",
            mend="take a ring that has run, or go on with the drawn figures",
        )
    ring = next(one for one in unit.gear_train.synchronisers if one.id == given["ring"]["id"])
    readings = [Q(mm, "mm") for mm in given["readings_mm"]]
    if gap_says(ring, readings, Q(given["blade_mm"], "mm")) == "tilted":
        raise CourseError(
            "the places differ so much that the ring stands askew on its cone",
            mend="press it on square and measure again",
        )
    return given


def _play_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    washers = unit.gear_train.differential.side_gear_play.washers_mm
    return (
        Figure("inwards", ("inwards_mm",), "Dial, gear pushed inwards", "mm", 0.01, 10),
        Figure("outwards", ("outwards_mm",), "Dial, gear pulled outwards", "mm", 0.01, 10),
        Figure("fitted", ("fitted_mm",), "Washer fitted", "mm", min(washers) / 2, 2 * max(washers)),
        Figure("least", ("limits_mm", 0), "Least play", "mm", 0, 2, "manual limit"),
        Figure("most", ("limits_mm", 1), "Most play", "mm", 0.02, 3, "manual limit"),
    )


def _renew_play(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    play = round(given["outwards_mm"] - given["inwards_mm"], 6)
    if play <= 0:
        raise CourseError(
            "the reading outwards is not above the one inwards, so no play is left",
            mend="zero the dial so that it rises as the gear is pulled outwards",
        )
    low, high = given["limits_mm"]
    if not low < high:
        raise CourseError("the least play is not below the most", mend="swap them")
    if min(abs(play - limit) for limit in (low, high)) < given["doubt_mm"]:
        raise CourseError("the play lies on a limit, nearer than it can be read", mend=GO_ON)
    section = unit.gear_train.differential.side_gear_play.model_copy(
        update={"play_mm": (low, high)}
    )
    doubt = Q(given["doubt_mm"], "mm")
    fits = right_washers(section, Q(play, "mm"), Q(given["fitted_mm"], "mm"), doubt)
    if not 0 < len(fits) < len(section.washers_mm):
        raise CourseError(
            "no washer of this unit's set, or every one, would do, so there is nothing to choose",
            mend=GO_ON,
        )
    return given


BENCH = {
    "path": BenchTask(_path_figures, _renew_path),
    "count": BenchTask(_count_figures, _renew_count),
    "play": BenchTask(_play_figures, _renew_play),
    "gap": BenchTask(_gap_figures, _renew_gap),
    "speed": BenchTask(_speed_figures, _renew_speed),
}
