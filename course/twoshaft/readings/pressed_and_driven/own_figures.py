"""Bores, shafts and temperatures of the real bench, and the limits of fit of the manual."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.fit import Pressed, press_force, pressure, warm_to_assemble
from twoshaft.readings.own_figure import BenchTask
from twoshaft.readings.own_figure import PlacedFigure as Figure
from twoshaft.readings.staked import BENCH_STAKE, StakedNut
from twoshaft.records import to_json
from twoshaft.units.quantities import Q
from twoshaft.units.unit import Unit

FAR_MM = 0.5
"""A bore or shaft is plausible within this of its nominal size."""
CLEAR_UM, CLEAR_K = 1.0, 2.0
LEAST_UM = 5.0
"""Less grip than this is what measuring tools may be off by: common practice, no source."""
GO_ON = "measure again, or go on with the drawn figures"


def _limits_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    asked = (
        ("nominal", "size_mm", "Nominal size"),
        ("hole-least", "hole_low_mm", "Hole, smallest"),
        ("hole-most", "hole_high_mm", "Hole, largest"),
        ("shaft-least", "shaft_low_mm", "Shaft, smallest"),
        ("shaft-most", "shaft_high_mm", "Shaft, largest"),
    )
    return tuple(Figure(name, (key,), words, "mm", 3, 250, "manual limit")
                 for name, key, words in asked)  # fmt: skip


def _renew_limits(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    size, zones = given["size_mm"], []
    for part in ("hole", "shaft"):
        low, high = (given.pop(f"{part}_{end}_mm") - size for end in ("low", "high"))
        if low > high:
            raise CourseError(f"the smallest {part} is above the largest", mend="swap them")
        if max(abs(low), abs(high)) > FAR_MM:
            raise CourseError(
                f"a limit of the {part} lies more than {FAR_MM:g} mm from the nominal size",
                mend="look for a slip of the pen",
            )
        zones.append([part, round(low * 1e3, 1), round(high * 1e3, 1)])
    (_, hole_low, hole_high), (_, shaft_low, shaft_high) = zones
    if min(abs(shaft_high - hole_low), abs(shaft_low - hole_high)) < CLEAR_UM:
        raise CourseError(
            "the tightest or the loosest pair has neither grip nor play, so a hair decides",
            mend="go on with the drawn figures",
        )
    return given | {"codes": "hole/shaft", "zones": zones}


def _pair_figures(given: Mapping[str, Any]) -> tuple[Figure, ...]:
    low, high = round(given["size_mm"] - FAR_MM, 3), round(given["size_mm"] + FAR_MM, 3)
    return (
        Figure("hole", ("hole_mm",), "Hole, measured", "mm", low, high),
        Figure("shaft", ("shaft_mm",), "Part inside it, measured", "mm", low, high),
    )


def _grip_um(given: Mapping[str, Any]) -> float:
    grip = round(1e3 * (given["shaft_mm"] - given["hole_mm"]), 1)
    if grip < LEAST_UM:
        raise CourseError(
            f"the part inside is not {LEAST_UM:g} µm larger than the hole, so there is no grip to "
            "work with",
            mend="look whether hole and part were swapped, or measure again",
        )
    return grip


def _press_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    return (
        *_pair_figures(given),
        Figure("length", ("length_mm",), "Length of the seat", "mm", 2, 150),
        Figure("least", ("least_um",), "Least interference", "µm", 0, 500, "manual limit"),
        Figure("most", ("most_um",), "Most interference", "µm", 0, 500, "manual limit"),
    )


def _renew_press(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    seat, grip = Pressed.of(unit, given["press"]), _grip_um(given)
    least, most = given["least_um"], given["most_um"]
    if not least < most:
        raise CourseError("the least interference is not below the most", mend="swap them")
    if not least - CLEAR_UM <= grip <= most + CLEAR_UM:
        raise CourseError(
            f"this pair has {grip:g} µm of interference, which the manual's limits do not allow, "
            "so it does not go under the press",
            mend="measure both again, or look whether it is the right part",
        )
    force = press_force(
        Q(grip, "um"), seat.pair, Q(given["length_mm"], "mm"), given["friction"][1]
    ).m_as("kN")
    if force > seat.entry.press_kn:
        raise CourseError(
            f"it would take {force:.0f} kN, more than this press gives",
            mend="look for a slip of the pen, or go on with the drawn figures",
        )
    per_um = (pressure(Q(grip, "um"), seat.pair) / Q(grip, "um")).m_as("MPa/um")
    return given | {"mpa_per_um": float(f"{per_um:.3g}")}


def _heat_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    return (
        *_pair_figures(given),
        Figure("room", ("room_c",), "Temperature of the room", "°C", -10, 45),
        Figure("oven", ("oven_c",), "Oven, by the thermometer in it", "°C", 30, 250),
        Figure("limit", ("limit_c",), "Hottest that the part may get", "°C", 40, 250,
               "manual limit"),
    )  # fmt: skip


def _renew_heat(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    grip, limit, room = _grip_um(given), given["limit_c"], given["room_c"]
    if given["oven_c"] > limit:
        raise CourseError(
            f"the oven stands at {given['oven_c']:g} °C, hotter than the part may get",
            mend="turn it down and read it again before anything goes in",
        )
    if given["oven_c"] <= room:
        raise CourseError("the oven is no warmer than the room", mend="read both again")
    warming = warm_to_assemble(
        Q(grip, "um"),
        Q(float(given["size_mm"]), "mm"),
        Q(given["outer"][1] * 1e-6, "1/K"),
        Q(limit, "degC"),
        room=Q(room, "degC"),
        handling=Q(given["handling_k"], "delta_degC"),
    )
    if abs(warming.heat_to_c - limit) < CLEAR_K:
        raise CourseError(
            "the temperature that it takes lies so near the limit that the thermometer decides",
            mend=GO_ON,
        )
    return given | {"grip_um": grip}


def _nut(given: Mapping[str, Any]) -> StakedNut:
    return StakedNut(**{name: given[name] for name in StakedNut.__struct_fields__[:-1]})


def _locks_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    return BENCH_STAKE.figures(unit, _nut(given))


def _renew_locks(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    nut = _nut(given)
    own = {figure.name: given.pop(figure.name) for figure in BENCH_STAKE.figures(unit, nut)}
    return given | to_json(BENCH_STAKE.renew(unit, nut, own))


BENCH = {
    "limits": BenchTask(_limits_figures, _renew_limits),
    "press": BenchTask(_press_figures, _renew_press),
    "heat": BenchTask(_heat_figures, _renew_heat),
    "locks": BenchTask(_locks_figures, _renew_locks),
}
