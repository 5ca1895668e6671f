"""Six readings of one size, of which one does not belong to the others."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.models.gauges import stray
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.measuring_and_tools.given import Repeats
from twoshaft.readings.measuring_and_tools.lot import BANK, Lot
from twoshaft.records import Option

COUNT, SCENES = 6, 4


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
        strays=lot.scenes_asked("strays", BANK, SCENES, lambda: _sets(stream)),
        errors=lot.scenes_asked("errors", BANK, SCENES, lambda: _errors(stream)),
    )


def _sets(stream: Stream) -> dict[str, str]:
    """A size, how far readings lie apart, and the last one from them: near or far [mm]."""
    wide = 2 + stream.integer(3)
    return {
        "base": f"{8 + stream.integer(320) / 10:.1f}",
        "wide": f"{wide / 100:.2f}",
        "near": f"{(1 + stream.integer(2)) / 200:.3f}",
        "far": f"{(wide + 5 + stream.integer(12)) / 100:.2f}",
    }


def _errors(stream: Stream) -> dict[str, object]:
    """An error and a thickness [mm], a temperature [degC], a number of readings, and years."""
    return {
        "mm": f"{(2 + stream.integer(11)) / 200:.3f}",
        "warm": 28 + stream.integer(15),
        "n": 4 + stream.integer(17),
        "thick": f"{4 + stream.integer(400) / 100:.2f}",
        "years": 2 + stream.integer(7),
    }


def labelled(readings: Sequence[float]) -> tuple[Option, ...]:
    """The readings to choose from, and that none of them is odd."""
    options = (
        Option(f"reading-{k}", f"reading {k}: {max(f'{mm:.2f}', f'{mm:g}', key=len)} mm")
        for k, mm in enumerate(readings, 1)
    )
    return (*options, Option("none", "none: they all belong together"))


def _without(readings: list[float], place: int) -> list[float]:
    return readings[:place] + readings[place + 1 :]
