"""The drained oil: how much was in the own unit, and in others."""

from __future__ import annotations

from twoshaft.models.strip import litres_at
from twoshaft.readings.keyed import Stream
from twoshaft.readings.strip_mark_clean.given import Drained, OilGiven
from twoshaft.readings.strip_mark_clean.lot import BANK, Lot
from twoshaft.units.quantities import Q

JUG_LITRE = 0.01
"""Least count of the jug: common practice, no source."""


def draw(lot: Lot) -> OilGiven:
    """What the jug shows; other units whose oil was measured cold."""
    stream, oil = lot.stream.child("oil"), lot.oil
    warm = 30 + stream.integer(19)
    # Always short or over by more than is unsure: there is something to find.
    off = oil.unsure_litre * (2 + stream.uniform(0, 4)) * (1 if stream.integer(3) else -1)
    cold = oil.capacity_litre - oil.stays_litre - off
    larger = litres_at(oil, Q(1, "l"), Q(warm, "degC")).m_as("l")
    kinds = ["short", "right", "over", stream.choice(["short", "right", "over"])]
    return OilGiven(
        jug_litre=round(cold / larger, 2),
        jug_c=float(warm),
        others=tuple(
            _drained(stream, letter, kind, oil.unsure_litre)
            for letter, kind in zip("abcd", stream.shuffled(kinds), strict=True)
        ),
        levels=BANK.lists["levels"],
    )


def _drained(stream: Stream, id: str, kind: str, unsure: float) -> Drained:
    holds = round(1.6 + 0.05 * stream.integer(24), 2)
    stays = round(0.06 + 0.01 * stream.integer(10), 2)
    missing = {
        "short": unsure * (1.5 + stream.uniform(0, 4)),
        "right": unsure * stream.uniform(-0.6, 0.6),
        "over": -unsure * (1.5 + stream.uniform(0, 4)),
    }[kind]
    return Drained(id, holds, stays, round(holds - stays - missing, 2))
