"""Bolts, holes, nuts and wrenches of the real bench, and the torque window of the manual."""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.joint import (
    CLASS_NAMES,
    Fastening,
    Seat,
    Thread,
    assembly_preload,
    clamp_bounds,
    clamp_short,
    hydraulic_lock,
    limits_6g6h,
    nut_factor,
    strength,
    strip_loads,
    torque_at_bolt,
)
from twoshaft.models.joint.blind import BlindHole
from twoshaft.readings.own_figure import BenchTask, Figure
from twoshaft.readings.staked import BENCH_STAKE
from twoshaft.readings.threaded_joints.card import YIELD_GUARD
from twoshaft.units.quantities import Q
from twoshaft.units.unit import Unit

THREADS = ("M6", "M8", "M8x1", "M10", "M10x1.25", "M12", "M12x1.25", "M12x1.5", "M14", "M14x1.5",
           "M16", "M16x1.5")  # fmt: skip
"""Case bolts and plugs as they are met, ISO 261."""
NUTS = tuple(f"M{size}x1.5{hand}" for size in (16, 18, 20, 22, 24, 27, 30) for hand in ("", "-LH"))
CLEAR = 0.01
"""A share that lies nearer than this to its limit is decided by the last figure of a reading."""
GO_ON = "measure again, or go on with the drawn figures"


def _pairs(names, own: str) -> list[tuple[str, str]]:
    return [(name, name) for name in dict.fromkeys((own, *names))]


def _seat(fastening: Fastening, thread: Thread) -> Seat:
    """The head of the unit's bolt; a hexagon (ISO 4014) where the thread is another."""
    return fastening.seat if thread.name == fastening.thread.name else Seat.hexagon(thread)


def _found_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    return (
        Figure.chosen("thread", ("thread",), "Thread, with its pitch gauge",
                      _pairs(THREADS, given["thread"])),
        Figure.chosen("class", ("strength",), "Class on the head",
                      _pairs(CLASS_NAMES, given["strength"])),
        Figure.chosen("state", ("state", 0), "Thread and head are",
                      [(key, name) for key, name, _ in given["factors"]]),
        Figure("setting", ("setting_nm",), "The wrench is set to", "N·m", 0.5, 1000),
        Figure("length", ("length_mm",), "Wrench, square drive to mid grip", "mm", 60, 1500),
        Figure("reach", ("reach_mm",), "Reach of the adapter; 0 without one", "mm", 0, 400),
        Figure("angle", ("angle_deg",), "Angle of the adapter to the wrench", "°", 0, 90),
        Figure("least", ("window_nm", 0), "Least torque", "N·m", 0.5, 1000, "manual limit"),
        Figure("most", ("window_nm", 1), "Most torque", "N·m", 0.5, 1000, "manual limit"),
    )  # fmt: skip


def _renew_found(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    fastening = Fastening.of(unit, given["group"])
    thread, key = Thread.named(given["thread"]), given["state"][0]
    seat, friction = _seat(fastening, thread), fastening.states[key]
    steel = strength(given["strength"], Q(thread.d_m, "m"))
    low, high = given["window_nm"]
    if not low < high:
        raise CourseError("the least torque is not below the most", mend="swap them")
    factors = [
        [one, state.name, round(float(nut_factor(thread, seat, state.thread[1], state.head[1])), 3)]
        for one, state in fastening.states.items()
    ]
    yields = round(float(assembly_preload(thread, steel, friction.thread[1], 1.0).m_as("kN")), 1)
    torque = torque_at_bolt(*_tool(given))
    factor = next(k for one, _, k in factors if one == key)
    clamp = clamp_short(torque, factor, Q(thread.d_m, "m"))
    use, nm = clamp.m_as("kN") / yields, torque.m_as("N*m")
    if use > 1.6:
        raise CourseError(
            f"{nm:.0f} N·m is far beyond what a bolt {thread.name} of class {given['strength']} "
            "bears",
            mend="look at thread, class and setting again, or go on with the drawn figures",
        )
    if abs(use / YIELD_GUARD - 1) < CLEAR or any(abs(nm / end - 1) < CLEAR for end in (low, high)):
        raise CourseError(
            "what the bolt got lies so near a limit that reading the scale decides", mend=GO_ON
        )
    return given | {
        "diameter_mm": thread.d_m * 1e3,
        "state": [key, friction.name],
        "factors": factors,
        "yields_kn": yields,
    }


def _tool(given: Mapping[str, Any]) -> tuple[Q, Q, Q, Q]:
    return (
        Q(given["setting_nm"], "N*m"),
        Q(given["length_mm"], "mm"),
        Q(given["reach_mm"], "mm"),
        Q(given["angle_deg"], "degree"),
    )


def _alloy_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    return (
        Figure.chosen("thread", ("thread",), "Thread, with its pitch gauge",
                      _pairs(THREADS, given["thread"])),
        Figure("meets", ("meets_mm",), "Thread of bolt and hole that meets", "mm", 2, 80),
        Figure("good", ("good_mm",), "Good thread in the hole, to its end", "mm", 2, 120),
        Figure("tolerance", ("tolerance_percent",), "The wrench may be off by, either way",
               "%", 0, 20),
        Figure("torque", ("most_nm",), "Most torque", "N·m", 0.5, 1000, "manual limit"),
    )  # fmt: skip


def _renew_alloy(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    fastening = Fastening.of(unit, given["group"])
    thread = Thread.named(given["thread"])
    seat = _seat(fastening, thread)
    meets, good = given["meets_mm"], given["good_mm"]
    if good < meets:
        raise CourseError(
            "more thread meets than is good in the hole",
            mend="measure the hole to its last whole thread",
        )
    full = thread.d_m * 1e3
    strip = strip_loads(
        thread,
        fastening.steel,
        Q(fastening.metal.tensile_mpa, "MPa"),
        Q(full, "mm"),
        limits=limits_6g6h(thread),
    )
    torque, share = Q(given.pop("most_nm"), "N*m"), given.pop("tolerance_percent") / 100
    most = clamp_bounds(torque, thread, seat, fastening.friction, share).high.m_as("kN")
    per_mm = round(strip.hole_strips_n / full / 1e3, 2)
    if most < 0.05:
        raise CourseError("so small a torque leaves no clamp to speak of", mend=GO_ON)
    margins = [mm * per_mm / most for mm in (meets, good)]
    if any(abs(margin / given["safe"] - 1) < CLEAR for margin in margins):
        raise CourseError(
            "the hold lies so near what the rule asks that the gauge's reading decides", mend=GO_ON
        )
    return given | {
        "diameter_mm": full,
        "pitch_mm": thread.pitch_m * 1e3,
        "per_mm_kn": per_mm,
        "most_kn": round(most, 1),
    }


def _blind_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    return (
        Figure("depth", ("depth_mm",), "Full depth of the hole", "mm", 5, 120),
        Figure("reach", ("reach_mm",), "Tip of the bolt in the hole, head down", "mm", 3, 100),
        Figure("liquid", ("oil_ml",), "Liquid drawn out of the hole", "mL", 0.05, 20),
        Figure("torque", ("torque_nm",), "Torque", "N·m", 0.5, 1000, "manual limit"),
    )


def _renew_blind(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    fastening = Fastening.of(unit, given["group"])
    depth, reach, oil = given["depth_mm"], given["reach_mm"], given["oil_ml"]
    if reach >= depth:
        raise CourseError(
            "the bolt reaches to the bottom of the hole, so no room is left for anything",
            mend="measure both from the same face; a bolt that bottoms is too long",
        )
    if oil * 1e3 > given["area_mm2"] * depth:
        raise CourseError("more liquid than the hole holds", mend="look for a slip of the pen")
    turns = (oil - given["area_mm2"] * (depth - reach) / 1e3) * 1e3
    turns /= given["area_mm2"] * fastening.thread.pitch_m * 1e3
    if turns < 0.1:
        raise CourseError(
            "this liquid has room under the tip, so the bolt never meets it",
            mend="dry the hole all the same; here, go on with the drawn figures",
        )
    if turns > reach / (fastening.thread.pitch_m * 1e3):
        raise CourseError("the bolt would meet the liquid before its first thread", mend=GO_ON)
    hydraulic_lock(
        BlindHole(depth / 1e3, reach / 1e3, given["boss_mm"] / 1e3),
        fastening.thread,
        fastening.seat,
        Q(oil, "mL"),
        Q(given["torque_nm"], "N*m"),
        fastening.friction.thread[1],
    )
    return given


def _nut_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    return (
        Figure.chosen("thread", ("thread",), "Thread of the nut, as marked",
                      _pairs(NUTS, given["thread"])),
        Figure("length", ("length_mm",), "Wrench, square drive to mid grip", "mm", 100, 2000),
        Figure("torque", ("torque_nm",), "Torque", "N·m", 5, 1000, "manual limit"),
    )  # fmt: skip


def _renew_nut(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    pull_n = given["torque_nm"] / given["length_mm"] * 1e3
    if not math.isfinite(pull_n) or pull_n > 1500:
        raise CourseError(
            "that pull is beyond what two people give",
            mend="take a longer wrench, or look for a slip of the pen",
        )
    return given | {"diameter_mm": Thread.named(given["thread"]).d_m * 1e3}


BENCH = {
    "found": BenchTask(_found_figures, _renew_found),
    "alloy": BenchTask(_alloy_figures, _renew_alloy),
    "blind": BenchTask(_blind_figures, _renew_blind),
    "nut": BenchTask(_nut_figures, _renew_nut),
    "stake": BENCH_STAKE,
}
