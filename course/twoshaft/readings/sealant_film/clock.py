"""Is the face closed before the sealant is too old?"""

from __future__ import annotations

from twoshaft.readings.sealant_film.lot import Lot, step
from twoshaft.units.sections.faces import SealantKind

BEFORE = (("Cut the nozzle of the tube", 0.5, 2), ("Put on fresh gloves", 0.5, 1.5),
          ("Wipe the face a last time and let it dry", 2, 5))  # fmt: skip
BETWEEN = (("The telephone rings: nobody works on the face", 2, 6),
           ("Fetch a bolt that is missing", 1, 4), ("Wipe off a drip", 0.5, 2),
           ("Wait for somebody to help lift", 2, 6))  # fmt: skip
CHOICES = [
    ["close", "The film is fresh enough: nothing needs to be done to it"],
    ["renew", "Open it again, wipe all of the film off both faces, clean them and lay a new one"],
    ["recoat", "Lift it a little and lay a fresh coat over the old one"],
    ["wet", "Lift it a little and wet the skin with solvent so that it sticks again"],
    ["harder", "Tighten the bolts a little more than the manual says"],
]
CLEAR_MINUTES = 1.5


def draw_clock(lot: Lot) -> dict:
    """``rows`` of (key, words, minutes) in order, ``limit_minutes``, ``sealant`` and options.

    Keys: before, lay, between, down, bolts, tighten.
    """
    stream = lot.stream.child("clock")
    kind = lot.in_turn("clock", list(SealantKind))[0]
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
        age = sum(minutes for key, _, minutes in rows if key not in ("before", "tighten"))
        over = age - limit
        if (over > 0) == late and CLEAR_MINUTES <= abs(over) <= 0.4 * limit:
            return {
                "sealant": sealant.id,
                "limit_minutes": limit,
                "rows": rows,
                "options": stream.shuffled(CHOICES),
            }


def _row(key: str, words: str, low: float, high: float, stream, scale: float) -> list:
    return [key, words, step(stream, round(2 * low * scale) / 2, round(2 * high * scale) / 2, 0.5)]
