"""A shaft that runs out under a dial indicator."""

from __future__ import annotations

from twoshaft.models.set_ups import BY_HAND
from twoshaft.readings.keyed import Stream
from twoshaft.readings.measuring_and_tools.given import Dial, DialSet, Total
from twoshaft.readings.measuring_and_tools.lot import BANK, Lot
from twoshaft.readings.scenes import LETTERS

DOUBT_MM, OTHERS = 0.015, 3
WRONG = ((), ("set",), ("drive",), *3 * (("set", "drive"),))
UNSET, DRIVEN = ("tilt", "touch", "cover", "edge"), ("drill", "motor")
"""What is wrong with each of the pictures, and in which ways."""
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
        set_ups=tuple(
            _set_up(stream, letter, "set" in wrong, "drive" in wrong)
            for letter, wrong in zip(LETTERS, stream.shuffled(WRONG), strict=False)
        ),
        asked=tuple(stream.shuffled(BANK.lists["set_ups"])),
        verdicts=BANK.lists["verdicts"],
        others=tuple(_total(stream) for _ in range(OTHERS)),
    )


def _set_up(stream: Stream, letter: str, unset: bool, driven: bool) -> DialSet:
    """A set-up that is right, or wrong in how it stands or in what turns the shaft."""
    moves = (10 + stream.integer(30)) / 100
    pressed = moves + (40 + stream.integer(60)) / 100
    off, thick, rests = stream.integer(4), 20 + 5 * stream.integer(6), 1.0
    how = stream.choice(UNSET) if unset else ""
    if how == "tilt":
        off = 20 + stream.integer(14)
    elif how == "touch":
        pressed = moves - (4 + stream.integer(4)) / 100
    elif how == "cover":
        thick = 1 + stream.integer(2)
    elif how == "edge":
        rests = (4 + stream.integer(3)) / 10
    return DialSet(
        letter=letter,
        at_deg=stream.choice((90, 105, 120)),
        off_deg=stream.choice((-1, 1)) * off,
        pressed_mm=round(pressed, 2),
        moves_mm=moves,
        thick_mm=thick,
        rests=rests,
        by=stream.choice(DRIVEN if driven else BY_HAND),
    )


def _total(stream: Stream) -> Total:
    """Another shaft: clear of its limit on either side, or nearer to it than the uncertainty."""
    limit, doubt = 0.05 + 0.01 * stream.integer(20), 0.01 + 0.005 * stream.integer(4)
    apart = stream.choice((-1, 1, 0)) * stream.uniform(1.4, 2.6) or stream.uniform(-0.6, 0.6)
    total = 0.005 * round((limit + apart * doubt) / 0.005)
    return Total(round(total, 3), round(limit, 2), round(doubt, 3))
