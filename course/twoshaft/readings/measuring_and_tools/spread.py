"""Six readings of one size, of which one does not belong to the others."""

from __future__ import annotations

from twoshaft.models.gauges import stray
from twoshaft.readings.lots import TRIES
from twoshaft.readings.measuring_and_tools.lot import Lot

COUNT = 6
DO = [
    ["cause", "Look for the cause, mend it, and take the whole set again"],
    ["strike", "Strike it out and say nothing"],
    ["average", "Average it in; that is what averages are for"],
    ["middle", "Replace it by the mean of the others"],
    ["safe", "Take it as the size, to be on the safe side"],
    ["once", "Measure that one again until it fits"],
]
MEANS = [
    ["mean-better", "Five good readings settle the mean better than one; an error of the tool "
     "itself stays in all of them"],
    ["exact", "Five good readings take away every error, also the tool's"],
    ["no-gain", "Five readings are no better than one; each has the same error"],
    ["worse", "Five readings add up five errors"],
    ["largest", "The largest of five is the true one; the others were not tight"],
]  # fmt: skip


def draw(lot: Lot) -> dict:
    """``readings_mm`` with their keys in ``options``, ``do`` and ``means``."""
    stream = lot.stream.child("repeats")
    for _ in range(TRIES):
        base = 10 + stream.integer(3000) / 100
        good = [base + stream.integer(4) / 100 for _ in range(COUNT - 1)]
        far = stream.choice((-1, 1)) * (0.07 + stream.integer(6) / 100)
        place = stream.integer(COUNT)
        readings = [*good[:place], base + far, *good[place:]]
        readings = [round(mm, 2) for mm in readings]
        if (
            len(set(good)) >= 3
            and stray(readings) == place
            and stray(_without(readings, place)) is None
        ):
            break
    else:
        raise lot.too_small("repeats")
    return {
        "readings_mm": readings,
        "options": labelled(readings),
        "do": stream.shuffled(DO),
        "means": stream.shuffled(MEANS),
    }


def labelled(readings: list[float]) -> list[list[str]]:
    """The readings to choose from, by key, and that none of them is odd."""
    options = [
        [f"reading-{k}", f"reading {k}: {max(f'{mm:.2f}', f'{mm:g}', key=len)} mm"]
        for k, mm in enumerate(readings, 1)
    ]
    return [*options, ["none", "none: they all belong together"]]


def _without(readings: list[float], place: int) -> list[float]:
    return readings[:place] + readings[place + 1 :]
