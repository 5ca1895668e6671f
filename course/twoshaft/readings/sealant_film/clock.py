"""Is the face closed before the sealant is too old?"""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.sealant_film.given import Clock, Planned, Step
from twoshaft.readings.sealant_film.lot import Lot, step
from twoshaft.readings.sealant_film.questions import BANK
from twoshaft.records import changed

BEFORE = (("Cut the nozzle of the tube", 0.5, 2), ("Put on fresh gloves", 0.5, 1.5),
          ("Wipe the face a last time and let it dry", 2, 5))  # fmt: skip
BETWEEN = (("The telephone rings: nobody works on the face", 2, 6),
           ("Fetch a bolt that is missing", 1, 4), ("Wipe off a drip", 0.5, 2),
           ("Wait for somebody to help lift", 2, 6))  # fmt: skip
CLEAR_MINUTES = 1.5


def draw_clock(lot: Lot) -> Clock:
    """How the work went, clearly within the film's time or clearly not."""
    stream = lot.stream.child("clock")
    kind = lot.in_turn("clock", lot.kinds)[0]
    sealant = lot.sealant(kind)
    late = stream.choice((False, True))
    limit = sealant.open_minutes if sealant.skin_minutes is None else sealant.skin_minutes
    scale = limit / 20
    while True:
        between = stream.shuffled(BETWEEN)[:2]
        rows = [
            _row("before", *stream.choice(BEFORE), stream, 1),
            _row("lay", "Lay the film on the left half of the face", 2, 5, stream, scale),
            _row("between", *between[0], stream, scale),
            _row("lay", "Lay the film on the right half of the face", 2, 5, stream, scale),
            _row("between", *between[1], stream, scale),
            _row("down", "Guide the case down on its dowels", 1, 3, stream, 1),
            _row("bolts", "Run all bolts down by hand", 2, 5, stream, 1),
            _row("tighten", "Tighten in three rounds", 4, 8, stream, 1),
        ]
        clock = Clock(sealant.id, limit, tuple(rows), (), BANK.lists["aged"])
        over = clock.age_minutes - limit
        if (over > 0) == late and CLEAR_MINUTES <= abs(over) <= 0.4 * limit:
            return changed(clock, others=_others(stream))


def _others(stream: Stream) -> tuple[Planned, ...]:
    """A film that cannot be begun yet, one in time, and one that is late or cannot be begun."""
    kinds = [
        (False, True),
        (stream.choice((False, True)), False),
        (stream.choice((False, True, True)), True),
    ]
    return tuple(_planned(stream, laid, late) for laid, late in stream.shuffled(kinds))


def _planned(stream: Stream, laid: bool, late: bool) -> Planned:
    """A film laid or not, clearly late or in time; its break is about what it is late by."""
    while True:
        film = Planned(
            laid=laid,
            laying=step(stream, 6, 24, 1),
            idle=step(stream, 2, 6, 1),
            left=step(stream, 4, 14, 1),
            limit=step(stream, 12, 30, 1),
        )
        over = film.age_minutes - film.limit
        near = 2 <= over <= film.idle + 3 if late else 2 <= -over <= 7
        if near and film.idle < film.laying - 2:
            return film


def _row(kind: str, text: str, low: float, high: float, stream: Stream, scale: float) -> Step:
    least, most = (round(2 * minutes * scale) / 2 for minutes in (low, high))
    return Step(kind, text, step(stream, least, most, 0.5))
