"""What a reading allows to say: the doubt of one tool, and parts near and far from the limits."""

from __future__ import annotations

import math

from twoshaft.readings.lots import TRIES
from twoshaft.readings.measuring_and_tools.given import Claims
from twoshaft.readings.measuring_and_tools.lot import BANK, Lot

PARTS = 4
PLACES = {
    "inside": ((0.3, 0.7), 0),
    "low": ((-2.2, -1.5), -1),
    "high": ((1.5, 2.2), 1),
    "unsure-low": ((-0.6, 0.6), -1),
    "unsure-high": ((-0.6, 0.6), 1),
}
"""Place of a reading: as a part of the limits, or in doubts from one of them."""


def draw(lot: Lot) -> Claims:
    """Parts inside their limits, outside, and some of which neither is proved."""
    stream = lot.stream.child("claims")
    for _ in range(TRIES):
        step, count = 0.01, stream.choice((4, 5, 9))
        certificate = round(stream.uniform(0.004, 0.010), 3)
        sd = round(stream.uniform(0.004, 0.012), 3)
        doubt = 2 * math.hypot(step / math.sqrt(12), certificate / 2, sd / math.sqrt(count))
        low = 12 + stream.integer(2000) / 100
        high = round(low + round(6 * doubt, 2), 2)
        low = round(low, 2)
        kinds = [stream.choice(list(PLACES)) for _ in range(PARTS)]
        means = [round(_place(kind, low, high, doubt, stream), 3) for kind in kinds]
        clear = all(
            abs(abs(mean - limit) - doubt) > 0.25 * doubt for mean in means for limit in (low, high)
        )
        if clear and len(set(means)) == PARTS:
            break
    else:
        raise lot.too_small("claims")
    return Claims(
        step_mm=step,
        certificate_mm=certificate,
        sd_mm=sd,
        count=count,
        low_mm=low,
        high_mm=high,
        means_mm=tuple(means),
        says=BANK.lists["says"],
    )


def _place(kind: str, low: float, high: float, doubt: float, stream) -> float:
    (near, far), side = PLACES[kind]
    share = stream.uniform(near, far)
    if side == 0:
        return low + share * (high - low)
    return (high if side > 0 else low) + share * doubt
