"""Bores, shafts and temperatures of the real bench, and the limits of fit of the manual."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.fit import Pressed, press_force, pressure, warm_to_assemble
from twoshaft.readings.own_figure import BenchTask, Figure
from twoshaft.readings.pressed_and_driven.given import Heat, Limits, Press, Zone
from twoshaft.readings.staked import BENCH_STAKE
from twoshaft.records import changed
from twoshaft.units.quantities import Q
from twoshaft.units.unit import Unit

Own = Mapping[str, Any]
FAR_MM = 0.5
"""A bore or shaft is plausible within this of its nominal size."""
CLEAR_UM, CLEAR_K = 1.0, 2.0
LEAST_UM = 5.0
"""Less grip than this is what measuring tools may be off by: common practice, no source."""
GO_ON = "measure again, or go on with the drawn figures"


def _limits_figures(unit: Unit, given: Limits) -> tuple[Figure, ...]:
    asked = (
        ("nominal", "Nominal size", given.size_mm),
        ("hole-least", "Hole, smallest", None),
        ("hole-most", "Hole, largest", None),
        ("shaft-least", "Shaft, smallest", None),
        ("shaft-most", "Shaft, largest", None),
    )
    return tuple(Figure(name, words, "mm", 3, 250, "manual limit", drawn=drawn)
                 for name, words, drawn in asked)  # fmt: skip


def _renew_limits(unit: Unit, given: Limits, own: Own) -> Limits:
    size, zones = own["nominal"], []
    for part in ("hole", "shaft"):
        low, high = (own[f"{part}-{end}"] - size for end in ("least", "most"))
        if low > high:
            raise CourseError(f"the smallest {part} is above the largest", mend="swap them")
        if max(abs(low), abs(high)) > FAR_MM:
            raise CourseError(
                f"a limit of the {part} lies more than {FAR_MM:g} mm from the nominal size",
                mend="look for a writing mistake",
            )
        zones.append(Zone(part, round(low * 1e3, 1), round(high * 1e3, 1)))
    hole, shaft = zones
    if min(abs(shaft.upper_um - hole.lower_um), abs(shaft.lower_um - hole.upper_um)) < CLEAR_UM:
        raise CourseError(
            "the tightest or the loosest pair has neither grip nor play, so a hair decides",
            mend="go on with the drawn figures",
        )
    return changed(given, size_mm=size, codes="hole/shaft", zones=tuple(zones))


def _pair_figures(given: Press | Heat) -> tuple[Figure, ...]:
    low, high = round(given.size_mm - FAR_MM, 3), round(given.size_mm + FAR_MM, 3)
    return (
        Figure("hole", "Hole, measured", "mm", low, high, drawn=given.hole_mm),
        Figure("shaft", "Part inside it, measured", "mm", low, high, drawn=given.shaft_mm),
    )


def _grip_um(own: Own) -> float:
    grip = round(1e3 * (own["shaft"] - own["hole"]), 1)
    if grip < LEAST_UM:
        raise CourseError(
            f"the part inside is not {LEAST_UM:g} µm larger than the hole, so there is no grip to "
            "work with",
            mend="look whether hole and part were swapped, or measure again",
        )
    return grip


def _press_figures(unit: Unit, given: Press) -> tuple[Figure, ...]:
    return (
        *_pair_figures(given),
        Figure("length", "Length of the seat", "mm", 2, 150, drawn=given.length_mm),
        Figure("least", "Least interference", "µm", 0, 500, "manual limit", drawn=given.least_um),
        Figure("most", "Most interference", "µm", 0, 500, "manual limit", drawn=given.most_um),
    )


def _renew_press(unit: Unit, given: Press, own: Own) -> Press:
    seat, grip = Pressed.of(unit, given.press), _grip_um(own)
    least, most = own["least"], own["most"]
    if not least < most:
        raise CourseError("the least interference is not below the most", mend="swap them")
    if not least - CLEAR_UM <= grip <= most + CLEAR_UM:
        raise CourseError(
            f"this pair has {grip:g} µm of interference, which the manual's limits do not allow, "
            "so it does not go under the press",
            mend="measure both again, or look whether it is the right part",
        )
    length, highest = Q(own["length"], "mm"), given.friction[1]
    force = press_force(Q(grip, "um"), seat.pair, length, highest).m_as("kN")
    if force > seat.entry.press_kn:
        raise CourseError(
            f"it would take {force:.0f} kN, more than this press gives",
            mend="look for a writing mistake, or go on with the drawn figures",
        )
    per_um = (pressure(Q(grip, "um"), seat.pair) / Q(grip, "um")).m_as("MPa/um")
    return changed(
        given,
        length_mm=own["length"],
        hole_mm=own["hole"],
        shaft_mm=own["shaft"],
        mpa_per_um=float(f"{per_um:.3g}"),
        least_um=least,
        most_um=most,
    )


def _heat_figures(unit: Unit, given: Heat) -> tuple[Figure, ...]:
    return (
        *_pair_figures(given),
        Figure("room", "Temperature of the room", "°C", -10, 45, drawn=given.room_c),
        Figure("oven", "Oven, by the thermometer in it", "°C", 30, 250, drawn=given.oven_c),
        Figure("limit", "Hottest that the part may get", "°C", 40, 250, "manual limit",
               drawn=given.limit_c),
    )  # fmt: skip


def _renew_heat(unit: Unit, given: Heat, own: Own) -> Heat:
    grip, limit, room, oven = _grip_um(own), own["limit"], own["room"], own["oven"]
    if oven > limit:
        raise CourseError(
            f"the oven stands at {oven:g} °C, hotter than the part may get",
            mend="turn it down and read it again before anything goes in",
        )
    if oven <= room:
        raise CourseError("the oven is no warmer than the room", mend="read both again")
    warming = warm_to_assemble(
        Q(grip, "um"),
        Q(float(given.size_mm), "mm"),
        Q(given.outer.growth_um * 1e-6, "1/K"),
        Q(limit, "degC"),
        room=Q(room, "degC"),
        handling=Q(given.handling_k, "delta_degC"),
    )
    if abs(warming.heat_to_c - limit) < CLEAR_K:
        raise CourseError(
            "the temperature that it takes lies so near the limit that the thermometer decides",
            mend=GO_ON,
        )
    return changed(
        given,
        grip_um=grip,
        room_c=room,
        limit_c=limit,
        hole_mm=own["hole"],
        shaft_mm=own["shaft"],
        oven_c=oven,
    )


BENCH = {
    "limits": BenchTask(_limits_figures, _renew_limits),
    "press": BenchTask(_press_figures, _renew_press),
    "heat": BenchTask(_heat_figures, _renew_heat),
    "locks": BENCH_STAKE,
}
