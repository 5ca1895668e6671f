"""A pull on a cord, with a jerk at the start and a scale whose zero is off."""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.measuring_and_tools.given import Pull
from twoshaft.readings.measuring_and_tools.lot import BANK, Lot

SCENES = 4
NAMES = ("Output shaft alone", "Differential alone", "Practice hub", "Input shaft alone")


def draw(lot: Lot) -> Pull:
    """What the scale showed: a jerk and four steady readings."""
    stream = lot.stream.child("pull")
    zero = stream.choice((-3, -2, 2, 3))
    true = 18 + stream.integer(30)
    steady = [true + zero + step for step in stream.shuffled((-1, 0, 0, 1))]
    return Pull(
        name=lot.in_turn("pull", NAMES)[0],
        radius_mm=25 + 5 * stream.integer(8),
        zero_n=zero,
        jerk_n=round((true + zero) * stream.uniform(1.6, 2.0)),
        steady_n=tuple(steady),
        pulls=lot.scenes_asked("pulls", BANK, SCENES, lambda: _pulls(stream)),
    )


def _pulls(stream: Stream) -> dict[str, object]:
    """A pull and a harder one [N], a slant [degree], and seconds for a turn."""
    newton = 14 + stream.integer(40)
    return {
        "n": newton,
        "more": round(newton * stream.uniform(1.3, 1.9)),
        "slant": 15 + stream.integer(30),
        "slow": 4 + stream.integer(7),
    }
