"""How long chips take to sink, and where they are after a rest."""

from __future__ import annotations

from twoshaft.models.strip import settling_time
from twoshaft.readings.keyed import Stream
from twoshaft.readings.strip_mark_clean.given import Chips, Rested
from twoshaft.readings.strip_mark_clean.lot import BANK, Lot
from twoshaft.units.quantities import Q

KNOWN_UM = 100
SIZES = (20, 25, 30, 40, 50)
ASKED = (20, 25, 40, 50)
SHARES = {"floor": (1.3, 2.5), "both": (0.25, 0.75), "oil": (0.02, 0.07)}
"""Part of the sinking time at rest: nearly all float below a tenth, none above the whole."""


def draw(lot: Lot) -> Chips:
    """The time of one size, another size to work out, and oil that was at rest."""
    stream = lot.stream.child("chips")
    warm = 12 + stream.integer(12)
    time = settling_time(lot.oil, Q(KNOWN_UM, "um"), Q(warm, "degC")).m_as("minute")
    known = round(time, 1)
    kinds = [*SHARES, stream.choice([*SHARES])]
    sizes = stream.shuffled(SIZES)[: len(kinds)]
    return Chips(
        oil_c=float(warm),
        known_um=KNOWN_UM,
        known_minutes=known,
        asked_um=stream.choice(ASKED),
        rested=tuple(
            _rested(stream, letter, size, kind, known)
            for letter, size, kind in zip("abcd", sizes, stream.shuffled(kinds), strict=True)
        ),
        places=BANK.lists["places"],
    )


def _rested(stream: Stream, id: str, size: int, kind: str, known: float) -> Rested:
    whole = known * (KNOWN_UM / size) ** 2
    low, high = SHARES[kind]
    minutes = round(whole * stream.uniform(low, high))
    return Rested(id, size, max(1, minutes))
