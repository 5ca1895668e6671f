"""What could hurt somebody, and what spoils a tool."""

from __future__ import annotations

from twoshaft.readings.measuring_and_tools.given import Care, Situation
from twoshaft.readings.measuring_and_tools.lot import BANK, Lot


def draw(lot: Lot) -> Care:
    """Two dangers and one way to spoil a tool, each with its options in an own order."""
    stream = lot.stream.child("care")

    def shown(name: str, count: int) -> tuple[Situation, ...]:
        asked = BANK.questions[name]
        return tuple(
            Situation(id, asked[id].story, tuple(stream.shuffled(asked[id].options)))
            for id in lot.in_turn(name, sorted(asked))[:count]
        )

    return Care(dangers=shown("dangers", 2), spoils=shown("spoils", 1))
