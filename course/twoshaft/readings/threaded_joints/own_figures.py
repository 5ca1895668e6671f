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
    strength,
    strip_loads,
    torque_at_bolt,
)
from twoshaft.models.joint.blind import BlindHole
from twoshaft.readings.own_figure import BenchTask, Figure
from twoshaft.readings.staked import BENCH_STAKE
from twoshaft.readings.threaded_joints.card import YIELD_GUARD
from twoshaft.readings.threaded_joints.given import Alloy, Blind, Found, Nut, State
from twoshaft.readings.threaded_joints.lot import factors
from twoshaft.records import changed
from twoshaft.units.quantities import Q
from twoshaft.units.unit import Unit

Own = Mapping[str, Any]
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


def _found_figures(unit: Unit, given: Found) -> tuple[Figure, ...]:
    return (
        Figure.chosen("thread", "Thread, with its pitch gauge",
                      _pairs(THREADS, given.thread), given.thread),
        Figure.chosen("class", "Class on the head",
                      _pairs(CLASS_NAMES, given.strength), given.strength),
        Figure.chosen("state", "Thread and head are",
                      [(one.id, one.name) for one in given.factors], given.state.id),
        Figure("setting", "The wrench is set to", "N·m", 0.5, 1000, drawn=given.setting_nm),
        Figure("length", "Wrench, square drive to mid grip", "mm", 60, 1500,
               drawn=given.length_mm),
        Figure("reach", "Reach of the adapter; 0 without one", "mm", 0, 400, drawn=given.reach_mm),
        Figure("angle", "Angle of the adapter to the wrench", "°", 0, 90, drawn=given.angle_deg),
        Figure("least", "Least torque", "N·m", 0.5, 1000, "manual limit",
               drawn=given.window_nm[0]),
        Figure("most", "Most torque", "N·m", 0.5, 1000, "manual limit", drawn=given.window_nm[1]),
    )  # fmt: skip


def _renew_found(unit: Unit, given: Found, own: Own) -> Found:
    fastening = Fastening.of(unit, given.group)
    thread, key = Thread.named(own["thread"]), own["state"]
    seat, friction = _seat(fastening, thread), fastening.states[key]
    steel = strength(own["class"], Q(thread.d_m, "m"))
    low, high = own["least"], own["most"]
    if not low < high:
        raise CourseError("the least torque is not below the most", mend="swap them")
    yields = round(float(assembly_preload(thread, steel, friction.thread[1], 1.0).m_as("kN")), 1)
    renewed = changed(
        given,
        thread=thread.name,
        diameter_mm=thread.d_m * 1e3,
        strength=own["class"],
        state=State(key, friction.name),
        factors=factors(fastening, thread, seat),
        setting_nm=own["setting"],
        length_mm=own["length"],
        reach_mm=own["reach"],
        angle_deg=own["angle"],
        yields_kn=yields,
        window_nm=(low, high),
    )
    torque = torque_at_bolt(
        Q(own["setting"], "N*m"),
        Q(own["length"], "mm"),
        Q(own["reach"], "mm"),
        Q(own["angle"], "degree"),
    )
    clamp = clamp_short(torque, renewed.k, Q(thread.d_m, "m"))
    use, nm = clamp.m_as("kN") / yields, torque.m_as("N*m")
    if use > 1.6:
        raise CourseError(
            f"{nm:.0f} N·m is far too much for a bolt {thread.name} of class {own['class']}",
            mend="look at thread, class and setting again, or go on with the drawn figures",
        )
    if abs(use / YIELD_GUARD - 1) < CLEAR or any(abs(nm / end - 1) < CLEAR for end in (low, high)):
        raise CourseError(
            "what the bolt got lies so near a limit that reading the scale decides", mend=GO_ON
        )
    return renewed


def _alloy_figures(unit: Unit, given: Alloy) -> tuple[Figure, ...]:
    return (
        Figure.chosen("thread", "Thread, with its pitch gauge",
                      _pairs(THREADS, given.thread), given.thread),
        Figure("meets", "Thread of bolt and hole that meets", "mm", 2, 80, drawn=given.meets_mm),
        Figure("good", "Good thread in the hole, to its end", "mm", 2, 120, drawn=given.good_mm),
        Figure("tolerance", "The wrench may be off by, either way", "%", 0, 20),
        Figure("torque", "Most torque", "N·m", 0.5, 1000, "manual limit"),
    )  # fmt: skip


def _renew_alloy(unit: Unit, given: Alloy, own: Own) -> Alloy:
    fastening = Fastening.of(unit, given.group)
    thread = Thread.named(own["thread"])
    seat = _seat(fastening, thread)
    meets, good = own["meets"], own["good"]
    if good < meets:
        raise CourseError(
            "more thread meets than is good in the hole",
            mend="measure the hole to its last whole thread",
        )
    full = thread.d_m * 1e3
    strip = strip_loads(
        thread,
        fastening.steel,
        Q(fastening.tapped_metal.tensile_mpa, "MPa"),
        Q(full, "mm"),
        limits=limits_6g6h(thread),
    )
    torque, share = Q(own["torque"], "N*m"), own["tolerance"] / 100
    most = clamp_bounds(torque, thread, seat, fastening.friction, share).high.m_as("kN")
    per_mm = round(strip.hole_strips_n / full / 1e3, 2)
    if most < 0.05:
        raise CourseError("so small a torque leaves no clamp to speak of", mend=GO_ON)
    margins = [mm * per_mm / most for mm in (meets, good)]
    if any(abs(margin / given.safe - 1) < CLEAR for margin in margins):
        raise CourseError(
            "the hold lies so near what the rule asks that the gauge's reading decides", mend=GO_ON
        )
    return changed(
        given,
        thread=thread.name,
        diameter_mm=full,
        pitch_mm=thread.pitch_m * 1e3,
        meets_mm=meets,
        good_mm=good,
        per_mm_kn=per_mm,
        most_kn=round(most, 1),
    )


def _blind_figures(unit: Unit, given: Blind) -> tuple[Figure, ...]:
    return (
        Figure("depth", "Full depth of the hole", "mm", 5, 120, drawn=given.depth_mm),
        Figure("reach", "Tip of the bolt in the hole, head down", "mm", 3, 100,
               drawn=given.reach_mm),
        Figure("liquid", "Liquid drawn out of the hole", "mL", 0.05, 20, drawn=given.oil_ml),
        Figure("torque", "Torque", "N·m", 0.5, 1000, "manual limit", drawn=given.torque_nm),
    )  # fmt: skip


def _renew_blind(unit: Unit, given: Blind, own: Own) -> Blind:
    fastening = Fastening.of(unit, given.group)
    depth, reach, oil = own["depth"], own["reach"], own["liquid"]
    if reach >= depth:
        raise CourseError(
            "the bolt reaches to the bottom of the hole, so no room is left for anything",
            mend="measure both from the same face; a bolt that bottoms is too long",
        )
    if oil * 1e3 > given.area_mm2 * depth:
        raise CourseError("more liquid than the hole holds", mend="look for a writing mistake")
    turns = (oil - given.area_mm2 * (depth - reach) / 1e3) * 1e3
    turns /= given.area_mm2 * fastening.thread.pitch_m * 1e3
    if turns < 0.1:
        raise CourseError(
            "this liquid has room under the tip, so the bolt never meets it",
            mend="dry the hole all the same; here, go on with the drawn figures",
        )
    if turns > reach / (fastening.thread.pitch_m * 1e3):
        raise CourseError("the bolt would meet the liquid before its first thread", mend=GO_ON)
    hydraulic_lock(
        BlindHole(depth / 1e3, reach / 1e3, given.boss_mm / 1e3),
        fastening.thread,
        fastening.seat,
        Q(oil, "mL"),
        Q(own["torque"], "N*m"),
        fastening.friction.thread[1],
    )
    return changed(given, depth_mm=depth, reach_mm=reach, oil_ml=oil, torque_nm=own["torque"])


def _nut_figures(unit: Unit, given: Nut) -> tuple[Figure, ...]:
    return (
        Figure.chosen("thread", "Thread of the nut, as marked",
                      _pairs(NUTS, given.thread), given.thread),
        Figure("length", "Wrench, square drive to mid grip", "mm", 100, 2000,
               drawn=given.length_mm),
        Figure("torque", "Torque", "N·m", 5, 1000, "manual limit", drawn=given.torque_nm),
    )  # fmt: skip


def _renew_nut(unit: Unit, given: Nut, own: Own) -> Nut:
    pull_n = own["torque"] / own["length"] * 1e3
    if not math.isfinite(pull_n) or pull_n > 1500:
        raise CourseError(
            "that pull is beyond what two people give",
            mend="take a longer wrench, or look for a writing mistake",
        )
    thread = Thread.named(own["thread"])
    return changed(
        given,
        thread=thread.name,
        diameter_mm=thread.d_m * 1e3,
        torque_nm=own["torque"],
        length_mm=own["length"],
    )


BENCH = {
    "found": BenchTask(_found_figures, _renew_found),
    "alloy": BenchTask(_alloy_figures, _renew_alloy),
    "blind": BenchTask(_blind_figures, _renew_blind),
    "nut": BenchTask(_nut_figures, _renew_nut),
    "stake": BENCH_STAKE,
}
