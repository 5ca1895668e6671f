"""A shaft that runs out under a dial indicator."""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.measuring_and_tools.given import Dial, Total
from twoshaft.readings.measuring_and_tools.lot import BANK, Lot

DOUBT_MM, SCENES, OTHERS = 0.015, 4, 3
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
        set_ups=lot.scenes_asked("set_ups", BANK, SCENES, lambda: _set_up(stream)),
        verdicts=BANK.lists["verdicts"],
        others=tuple(_total(stream) for _ in range(OTHERS)),
    )


def _set_up(stream: Stream) -> dict[str, object]:
    """A movement, how far a plunger is pressed in [mm], a tilt [degree], turns a minute."""
    moves = 10 + stream.integer(30)
    return {
        "moves": f"{moves / 100:.2f}",
        "deep": f"{(moves + 40 + stream.integer(60)) / 100:.2f}",
        "flat": f"{(moves - 5 - stream.integer(3)) / 100:.2f}",
        "tilt": 15 + stream.integer(25),
        "rpm": 20 + 5 * stream.integer(13),
    }


def _total(stream: Stream) -> Total:
    """Another shaft: clear of its limit on either side, or nearer to it than the uncertainty."""
    limit, doubt = 0.05 + 0.01 * stream.integer(20), 0.01 + 0.005 * stream.integer(4)
    apart = stream.choice((-1, 1, 0)) * stream.uniform(1.4, 2.6) or stream.uniform(-0.6, 0.6)
    total = 0.005 * round((limit + apart * doubt) / 0.005)
    return Total(round(total, 3), round(limit, 2), round(doubt, 3))
