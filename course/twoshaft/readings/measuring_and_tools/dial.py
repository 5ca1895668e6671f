"""A shaft that runs out under a dial indicator."""

from __future__ import annotations

from twoshaft.readings.measuring_and_tools.lot import Lot

BEFORE = [
    ["press", "Press the plunger in by more than the movement"],
    ["square", "Set the plunger square to the shaft"],
    ["clamp", "Clamp the stand tight, on a clean face"],
    ["count", "Note the small pointer, so that whole turns are counted"],
    ["spin", "Run the shaft slowly under power, so that it turns evenly"],
    ["loose", "Leave the stand loose, so that it follows the shaft"],
    ["touch", "Let the plunger just touch, so that it does not push the shaft"],
    ["oil", "Oil the plunger, so that it moves freely"],
]
VERDICTS = [
    ["inside", "Inside the limit: it may be used"],
    ["outside", "Outside the limit: it may not be used"],
    ["unsure", "Not proved: it lies nearer to the limit than the doubt"],
    ["half", "Inside the limit: only half of the total counts against it"],
    ["never", "Nothing can be said: a dial shows no size"],
]
DOUBT_MM = 0.015
STATES = {"inside": (0.035, 0.06), "outside": (-0.06, -0.035), "unsure": (-0.003, 0.004)}


def draw(lot: Lot) -> dict:
    """``off_mm`` (what is really there), ``high_at_deg``, ``limit_mm``, ``doubt_mm``, options."""
    stream = lot.stream.child("dial")
    off = round(0.07 + stream.integer(13) * 0.005, 3)
    state = lot.in_turn("dial", sorted(STATES))[0]
    return {
        "off_mm": off,
        "high_at_deg": 20.0 + 5 * stream.integer(60),
        "limit_mm": round(2 * off + stream.uniform(*STATES[state]), 2),
        "doubt_mm": DOUBT_MM,
        "before": stream.shuffled(BEFORE),
        "verdicts": stream.shuffled(VERDICTS),
    }
