"""Teeth and turns counted, gaps and play read on the real unit, and the limits of the manual."""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.geartrain import gap_says, right_washers, speed_drive_turns, with_wheel
from twoshaft.readings.gear_train_and_checks.given import (
    Count,
    Gap,
    MeshTeeth,
    Path,
    Play,
    Speed,
)
from twoshaft.readings.gear_train_and_checks.paths import reverse_meshes
from twoshaft.readings.gear_train_and_checks.road import WIDEST
from twoshaft.readings.own_figure import BenchTask, Figure
from twoshaft.records import changed
from twoshaft.units.quantities import Q
from twoshaft.units.sections.geartrain import GearTrain
from twoshaft.units.unit import Unit

TEETH = (6, 130)
CLEAR_MM = 0.005
BETWEEN = 0.35
"""A pinion's teeth worked out from a count are sure when they lie this near a whole number."""
GO_ON = "measure again, or go on with the drawn figures"


def as_counted(train: GearTrain, task: Path | Count) -> GearTrain:
    """The gear train with the teeth that a task gives for its gear (and for reverse, if it does).

    Parameters
    ----------
    train : GearTrain
    task : Path or Count
    """
    gears = {gear.id: gear for gear in train.gears}
    rows = list(
        zip(
            [*gears[task.gear.id].engages, *filter(None, [train.final_drive])],
            task.wheels,
            strict=True,
        )
    )
    if isinstance(task, Path):
        back = reverse_meshes(train, gears[task.reverse.id].engages)
        rows += zip([mesh.id for mesh in back], task.back, strict=True)
    for mesh, teeth in rows:
        train = with_wheel(train, mesh, "driving", teeth.driving)
        train = with_wheel(train, mesh, "driven", teeth.driven)
    return train


def _teeth(rows: tuple[MeshTeeth, ...], where: str) -> list[Figure]:
    return [
        Figure(f"{where}-{n}-{side}", f"{row.words}: {side}, teeth", "", *TEETH, whole=True,
               drawn=drawn)
        for n, row in enumerate(rows, 1)
        for side, drawn in (("driving", row.driving), ("driven", row.driven))
    ]  # fmt: skip


def _counted(
    rows: tuple[MeshTeeth, ...], where: str, own: Mapping[str, Any]
) -> tuple[MeshTeeth, ...]:
    """The rows with the teeth that were counted; what was not asked for stays."""
    return tuple(
        changed(
            row,
            driving=own.get(f"{where}-{n}-driving", row.driving),
            driven=own.get(f"{where}-{n}-driven", row.driven),
        )
        for n, row in enumerate(rows, 1)
    )


def _path_figures(unit: Unit, given: Path) -> tuple[Figure, ...]:
    back = _teeth(given.back, "back")
    if _one_idler(unit, given):
        del back[2]
    return (*_teeth(given.wheels, "wheels"), *back)


def _renew_path(unit: Unit, given: Path, own: Mapping[str, Any]) -> Path:
    first, second = _counted(given.back, "back", own)
    if _one_idler(unit, given):
        second = changed(second, driving=first.driven)
    return changed(given, wheels=_counted(given.wheels, "wheels", own), back=(first, second))


def _one_idler(unit: Unit, given: Path) -> bool:
    """Whether the idler is driven and drives with the same teeth, which are then counted once."""
    reverse = next(gear for gear in unit.gear_train.gears if gear.id == given.reverse.id)
    first, second = reverse_meshes(unit.gear_train, reverse.engages)
    return first.driven.teeth == second.driving.teeth


def _count_figures(unit: Unit, given: Count) -> tuple[Figure, ...]:
    return (
        *_teeth(given.wheels, "wheels"),
        Figure("left", "Turns of the left wheel, both free", "turn", 0.1, 60,
               drawn=given.left_turns),
        Figure("right", "Turns of the right wheel, both free", "turn", 0.1, 60,
               drawn=given.right_turns),
    )  # fmt: skip


def _renew_count(unit: Unit, given: Count, own: Mapping[str, Any]) -> Count:
    return changed(
        given,
        wheels=_counted(given.wheels, "wheels", own),
        left_turns=own["left"],
        right_turns=own["right"],
    )


def _speed_figures(unit: Unit, given: Speed) -> tuple[Figure, ...]:
    return (
        Figure("wheels", "Turns of both wheels together", "turn", 2, 100, whole=True,
               drawn=given.wheel_turns),
        Figure("counted", "Turns counted at the speed pinion", "turn", 0.5, 1000,
               drawn=given.counted_turns),
    )  # fmt: skip


def _renew_speed(unit: Unit, given: Speed, own: Mapping[str, Any]) -> Speed:
    turns, counted = own["wheels"], own["counted"]
    train = unit.gear_train
    way = Q(turns * 2 * math.pi * train.rolling_radius_mm, "mm")
    wanted = speed_drive_turns(train, way).m_as("turn")
    right = train.needed_speed_drive().driven_teeth
    teeth = right * wanted / counted
    if abs(round(teeth) - right) > WIDEST:
        raise CourseError(
            f"this count fits a pinion of {teeth:.1f} teeth, and none near {right}",
            mend="count again, both wheels together; here, go on with the drawn figures",
        )
    off = abs(counted - wanted)
    if abs(teeth - round(teeth)) > BETWEEN or abs(off - given.step_turns) < 0.02:
        raise CourseError(
            "this count lies between two pinions, so it decides nothing",
            mend="count more turns, or go on with the drawn figures",
        )
    return changed(given, wheel_turns=turns, counted_turns=counted)


def _gap_figures(unit: Unit, given: Gap) -> tuple[Figure, ...]:
    ring = given.ring
    return (
        *(
            Figure(f"place-{n}", f"{ring.name}: gap at place {n}", "mm", 0.05, 5, drawn=drawn)
            for n, drawn in enumerate(given.readings_mm, 1)
        ),
        Figure("new", "Gap of a new ring", "mm", 0.2, 5, "manual limit", drawn=ring.new_mm),
        Figure("least", "Least gap", "mm", 0.05, 5, "manual limit", drawn=ring.least_mm),
    )


def _renew_gap(unit: Unit, given: Gap, own: Mapping[str, Any]) -> Gap:
    places = tuple(own[f"place-{n}"] for n, _ in enumerate(given.readings_mm, 1))
    new, least, narrow = own["new"], own["least"], min(places)
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
    ring = next(one for one in unit.gear_train.synchronisers if one.id == given.ring.id)
    if gap_says(ring, [Q(mm, "mm") for mm in places], Q(given.blade_mm, "mm")) == "tilted":
        raise CourseError(
            "the places differ so much that the ring stands askew on its cone",
            mend="press it on square and measure again",
        )
    judged = changed(given.ring, new_mm=new, least_mm=least)
    return changed(given, ring=judged, readings_mm=places)


def _play_figures(unit: Unit, given: Play) -> tuple[Figure, ...]:
    washers = unit.gear_train.needed_side_gear_play().washers_mm
    low, high = given.limits_mm
    return (
        Figure("inwards", "Dial, gear pushed inwards", "mm", 0.01, 10, drawn=given.inwards_mm),
        Figure("outwards", "Dial, gear pulled outwards", "mm", 0.01, 10, drawn=given.outwards_mm),
        Figure("fitted", "Washer fitted", "mm", min(washers) / 2, 2 * max(washers),
               drawn=given.fitted_mm),
        Figure("least", "Least play", "mm", 0, 2, "manual limit", drawn=low),
        Figure("most", "Most play", "mm", 0.02, 3, "manual limit", drawn=high),
    )  # fmt: skip


def _renew_play(unit: Unit, given: Play, own: Mapping[str, Any]) -> Play:
    inwards, outwards, fitted = own["inwards"], own["outwards"], own["fitted"]
    play = round(outwards - inwards, 6)
    if play <= 0:
        raise CourseError(
            "the reading outwards is not above the one inwards, so no play is left",
            mend="zero the dial so that it rises as the gear is pulled outwards",
        )
    low, high = own["least"], own["most"]
    if not low < high:
        raise CourseError("the least play is not below the most", mend="swap them")
    if min(abs(play - limit) for limit in (low, high)) < given.doubt_mm:
        raise CourseError("the play lies on a limit, nearer than it can be read", mend=GO_ON)
    section = unit.gear_train.needed_side_gear_play().model_copy(update={"play_mm": (low, high)})
    doubt = Q(given.doubt_mm, "mm")
    fits = right_washers(section, Q(play, "mm"), Q(fitted, "mm"), doubt)
    if not 0 < len(fits) < len(section.washers_mm):
        raise CourseError(
            "no washer of this unit's set, or every one, would do, so there is nothing to choose",
            mend=GO_ON,
        )
    return changed(
        given, inwards_mm=inwards, outwards_mm=outwards, fitted_mm=fitted, limits_mm=(low, high)
    )


BENCH = {
    "path": BenchTask(_path_figures, _renew_path),
    "count": BenchTask(_count_figures, _renew_count),
    "play": BenchTask(_play_figures, _renew_play),
    "gap": BenchTask(_gap_figures, _renew_gap),
    "speed": BenchTask(_speed_figures, _renew_speed),
}
