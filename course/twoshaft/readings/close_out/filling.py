"""How much oil goes in, and where it stands."""

from __future__ import annotations

from twoshaft.readings.close_out.given import Fill, Level
from twoshaft.readings.close_out.lot import BANK, Lot
from twoshaft.readings.keyed import Stream

COLD_C, HOT_C = 40, 65
"""Up to the first a level is read; from the second on a level is drawn that is too hot."""


def draw_fill(lot: Lot) -> Fill:
    """An own filling, a level that was found short, and levels of other units."""
    stream, most = lot.stream.child("fill"), lot.section.level.below_most_mm
    ways = stream.shuffled(["leave", "up", "out", "again"])
    warm = [c for c in range(2, 37) if abs(c - lot.filling.reference_c) >= 8]
    return Fill(
        can_c=float(stream.choice(warm)),
        below_mm=float(round(most * stream.uniform(1.8, 4))),
        slope_deg=(4 + stream.integer(5)) / 2,
        others=tuple(
            _level(stream, letter, way, most) for letter, way in zip("abcd", ways, strict=True)
        ),
        answers=BANK.lists["fill_do"],
    )


def _level(stream: Stream, id: str, way: str, most: float) -> Level:
    below = {
        "leave": stream.integer(max(1, int(most))),
        "up": most + 2 + stream.integer(12),
        "out": -2 - stream.integer(9),
        "again": stream.integer(17) - 6,
    }[way]
    slope, oil = 0.0, 12 + stream.integer(22)
    if way == "again":
        if stream.integer(2):
            slope = (4 + stream.integer(6)) / 2
        else:
            oil = HOT_C + stream.integer(30)
    return Level(id, float(below), slope, float(oil))
