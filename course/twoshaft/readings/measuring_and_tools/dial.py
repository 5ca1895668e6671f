"""A shaft that runs out under a dial indicator."""

from __future__ import annotations

from twoshaft.readings.measuring_and_tools.given import Dial
from twoshaft.readings.measuring_and_tools.lot import BANK, Lot

DOUBT_MM = 0.015
STATES = {"inside": (0.035, 0.06), "outside": (-0.06, -0.035), "unsure": (-0.003, 0.004)}


def draw(lot: Lot) -> Dial:
    """A shaft under the dial, its limit, and what may be said of it."""
    stream = lot.stream.child("dial")
    off = round(0.07 + stream.integer(13) * 0.005, 3)
    state = lot.in_turn("dial", sorted(STATES))[0]
    return Dial(
        off_mm=off,
        high_at_deg=20.0 + 5 * stream.integer(60),
        limit_mm=round(2 * off + stream.uniform(*STATES[state]), 2),
        doubt_mm=DOUBT_MM,
        before=tuple(stream.shuffled(BANK.lists["before"])),
        verdicts=tuple(stream.shuffled(BANK.lists["verdicts"])),
    )
