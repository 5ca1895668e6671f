"""Threads in the case: their state, how much of them meets, and what is left in a blind hole."""

from __future__ import annotations

import math

from twoshaft.models.joint import Fastening
from twoshaft.readings.keyed import Stream
from twoshaft.readings.threaded_joints.given import Alloy, Blind, State, WrongState
from twoshaft.readings.threaded_joints.lot import Lot, about
from twoshaft.records import extended

CLEAR = 0.1
"""Least difference of K that makes a state a clear mistake."""
SAFE = 1.5
"""Strength of the hole's thread over the most clamp that the workshop of the tasks asks for."""
ALLOY_VERDICTS = ("fit", "longer", "insert")


def draw_state(lot: Lot) -> WrongState:
    """A bolt whose thread was found in another state than its torque is stated for."""
    stream = lot.stream.child("state")
    for fastening in lot.in_turn("state", lot.fastenings):
        bolt = about(fastening)
        found = [
            State(one.id, one.name)
            for one in bolt.factors
            if abs(one.k / bolt.k - 1) >= CLEAR and one.id != bolt.state.id
        ]
        if found:
            return extended(
                WrongState,
                bolt,
                torque_nm=fastening.group.torque_nm[1],
                found=stream.choice(found),
            )
    raise lot.too_small("state")


def draw_alloy(lot: Lot) -> Alloy:
    """A bolt measured against its hole: how much meets, how deep the thread is good."""
    stream = lot.stream.child("alloy")
    weak = min((f.metal.tensile_mpa for f in lot.fastenings if f.metal), default=0)
    pool = [f for f in lot.fastenings if f.metal and f.metal.tensile_mpa == weak]
    verdict = lot.in_turn("alloy-verdict", ALLOY_VERDICTS)[0]
    for fastening in lot.in_turn("alloy", pool):
        for _ in range(40):
            given = _alloy(fastening, verdict, stream)
            if given is not None:
                return given
    raise lot.too_small("alloy")


def _alloy(fastening: Fastening, verdict: str, stream: Stream) -> Alloy | None:
    strip = fastening.strip()
    if strip is None:
        return None
    full, pitch = fastening.tapped.engagement_mm, fastening.thread.pitch_m * 1e3
    per_mm = round(strip.hole_strips_n / full / 1e3, 2)
    most = round(fastening.most_clamp().m_as("kN"), 1)
    meets = round(stream.uniform(0.3, 1.1) * full * 2) / 2
    good = round(stream.uniform(0.3, 1.15) * full * 2) / 2
    turns = meets / pitch
    if good < meets + 1 or turns < 2.5:
        return None
    now, best = meets * per_mm / most, good * per_mm / most
    if any(abs(margin / SAFE - 1) < 0.08 for margin in (now, best)):
        return None
    found = "fit" if now >= SAFE else "longer" if best >= SAFE else "insert"
    if found != verdict:
        return None
    return extended(
        Alloy,
        about(fastening),
        metal=fastening.tapped_metal.name,
        pitch_mm=pitch,
        meets_mm=meets,
        good_mm=good,
        per_mm_kn=per_mm,
        most_kn=most,
        safe=SAFE,
    )


def draw_blind(lot: Lot) -> Blind:
    """A blind hole with oil in it, measured with a depth gauge and a dipped rod."""
    stream = lot.stream.child("blind")
    pool = [f for f in lot.fastenings if f.metal and 5.5e-3 < f.thread.d_m < 13e-3]
    for fastening in lot.in_turn("blind", pool):
        thread, tapped = fastening.thread, fastening.tapped
        boss = tapped.boss_mm
        if boss is not None and boss < 1.5 * thread.d_m * 1e3:
            continue
        reach = round(tapped.engagement_mm * 2) / 2
        for _ in range(40):
            depth = reach + round(stream.uniform(0.4, 1.1) * thread.d_m * 1e3 * 2) / 2
            turns = stream.uniform(0.7, 3.0)
            area = math.pi / 4 * (thread.d2_m * 1e3) ** 2
            room = area * (depth - reach) / 1e3
            oil = round(room + area * turns * thread.pitch_m, 2)
            if 0.5 < (oil - room) / area / thread.pitch_m < 3.5 and oil < 0.9 * area * depth / 1e3:
                return extended(
                    Blind,
                    about(fastening),
                    pitch_mm=thread.pitch_m * 1e3,
                    area_mm2=round(area, 1),
                    depth_mm=depth,
                    reach_mm=reach,
                    oil_ml=oil,
                    boss_mm=boss if boss else 3 * thread.d_m * 1e3,
                    torque_nm=fastening.torque.m_as("N*m"),
                )
    raise lot.too_small("blind")
