"""A pull on a cord, with a jerk at the start and a scale whose zero is off."""

from __future__ import annotations

from twoshaft.readings.measuring_and_tools.lot import Lot

NAMES = ("Output shaft alone", "Differential alone", "Practice hub", "Input shaft alone")
WHY = [
    ["turning", "The steady pull while it turns, with the cord leaving the drum along it"],
    ["jerk", "The first jerk, since that is the most it needs"],
    ["fast", "A fast pull, so that the scale does not swing"],
    ["across", "A pull across the drum at a slant, so that the cord does not slip off"],
    ["stand", "The pull that just does not move it"],
]


def draw(lot: Lot) -> dict:
    """``radius_mm``, ``zero_n``, ``jerk_n``, four steady readings ``steady_n``, ``why``."""
    stream = lot.stream.child("pull")
    zero = stream.choice((-3, -2, 2, 3))
    true = 18 + stream.integer(30)
    steady = [true + zero + step for step in stream.shuffled((-1, 0, 0, 1))]
    return {
        "name": lot.in_turn("pull", NAMES)[0],
        "radius_mm": 25 + 5 * stream.integer(8),
        "zero_n": zero,
        "jerk_n": round((true + zero) * stream.uniform(1.6, 2.0)),
        "steady_n": steady,
        "why": stream.shuffled(WHY),
    }
