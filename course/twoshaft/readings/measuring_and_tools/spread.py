"""Six readings of one size, of which one does not belong to the others."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.models.gauges import stray
from twoshaft.readings.lots import TRIES
from twoshaft.readings.measuring_and_tools.given import Repeats
from twoshaft.readings.measuring_and_tools.lot import BANK, Lot
from twoshaft.records import Option

COUNT = 6


def draw(lot: Lot) -> Repeats:
    """Six readings, and what may be done about the odd one."""
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
    return Repeats(
        readings_mm=tuple(readings),
        options=labelled(readings),
        do=tuple(stream.shuffled(BANK.lists["stray_do"])),
        means=tuple(stream.shuffled(BANK.lists["means"])),
    )


def labelled(readings: Sequence[float]) -> tuple[Option, ...]:
    """The readings to choose from, and that none of them is odd."""
    options = (
        Option(f"reading-{k}", f"reading {k}: {max(f'{mm:.2f}', f'{mm:g}', key=len)} mm")
        for k, mm in enumerate(readings, 1)
    )
    return (*options, Option("none", "none: they all belong together"))


def _without(readings: list[float], place: int) -> list[float]:
    return readings[:place] + readings[place + 1 :]
