"""A pull on a cord: what is turned, what the bearings take of it, and what that says."""

from __future__ import annotations

from twoshaft.models.bearing import Pair, bearing_torque, cord_pull, elements, turned
from twoshaft.models.shim import target_interference
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.shims_and_preload.given import Cord, Other, Part
from twoshaft.readings.shims_and_preload.lot import BANK, Lot, sign_of
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Support

STATES = ("inside", "too-little", "too-much")
OTHERS = 3
SETTINGS_MM = (0.02, 0.16)
"""Settings as targets of this kind mostly have them; a support with others takes its own."""
BELOW, ABOVE = 0.3, 1.6
CLEAR = 0.12
"""How far a preload keeps from the limits, as a part of them: more than the scale's reading and
the arithmetic can be off."""


def draw(lot: Lot) -> Cord:
    """A support with a cord on it."""
    support, stream = lot.main, lot.stream.child("cord")
    state = lot.in_turn("cord", STATES)[0]
    pair = Pair.from_support(support, lot.bearings)
    limits = [float(pair.preload(limit).m_as("N")) for limit in target_interference(support)]
    kinds = sorted({drag.kind for drag in support.drags})
    rows = [elements(lot.bearings.set_by_id(side)) for side in (support.left, support.right)]
    for k in range(2 * TRIES):
        setting = round(stream.uniform(*(SETTINGS_MM if k < TRIES else _settings(support))), 4)
        preload = pair.preload(Q(setting, "mm")).m_as("N")
        if _state(preload, limits) != state:
            continue
        drum = round((0.8 + 0.05 * stream.integer(16)) * support.cord_radius_mm)
        pull = cord_pull(
            turned(support, lot.bearings, Q(preload, "N"), tuple(kinds)), Q(drum, "mm")
        )
        if pull.force.m_as("N") < 450:
            break
    else:
        raise lot.too_small("cord")
    return Cord(
        support=support.id,
        name=support.name,
        setting_mm=setting,
        drum_mm=drum,
        kinds=tuple(kinds),
        parts=tuple(Part(drag.name, drag.torque_nm, drag.speed_ratio) for drag in support.drags),
        torque_nm=round(sum(bearing_torque(row, Q(1000.0, "N")).m_as("N*m") for row in rows), 3),
        low_n=float(10 * round(limits[0] / 10)),
        high_n=float(10 * round(limits[1] / 10)),
        thicker="tightens" if sign_of(support) > 0 else "loosens",
        others=_others(stream.child("others"), limits),
        verdicts=BANK.lists["verdicts"],
    )


def _settings(support: Support) -> tuple[float, float]:
    """Settings [mm] from well below a support's own target to well above it."""
    return BELOW * support.target.low_mm, ABOVE * support.target.high_mm


def _others(stream: Stream, limits: list[float]) -> tuple[Other, ...]:
    """Preloads of other units, clear of the limits; not all of one kind."""
    for _ in range(TRIES):
        preloads = [
            float(10 * round(stream.uniform(0.3 * limits[0], 1.6 * limits[1]) / 10))
            for _ in range(OTHERS)
        ]
        states = [_state(preload, limits) for preload in preloads]
        if all(states) and len(set(states)) > 1:
            break
    return tuple(Other(f"unit-{n}", preload) for n, preload in enumerate(preloads, 1))


def _state(preload: float, limits: list[float]) -> str | None:
    if preload < (1 - CLEAR) * limits[0]:
        return "too-little" if preload > 0.3 * limits[0] else None
    if preload > (1 + CLEAR) * limits[1]:
        return "too-much" if preload < 1.6 * limits[1] else None
    inside = (1 + CLEAR) * limits[0] < preload < (1 - CLEAR) * limits[1]
    return "inside" if inside else None
