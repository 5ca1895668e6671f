"""At the bench: what could hurt somebody while parts are pressed, warmed and driven."""

from __future__ import annotations

from twoshaft.readings.pressed_and_driven.given import Bench, Caution
from twoshaft.readings.pressed_and_driven.lot import BANK, Lot

ASKED = 3


def draw(lot: Lot) -> Bench:
    """Three situations, each with its options in an own order."""
    stream = lot.stream.child("bench")
    asked = BANK.questions["cautions"]
    ids = lot.next_ones("cautions", sorted(asked), ASKED)
    return Bench(
        cautions=tuple(
            Caution(id, asked[id].story, tuple(stream.shuffled(asked[id].options))) for id in ids
        )
    )
