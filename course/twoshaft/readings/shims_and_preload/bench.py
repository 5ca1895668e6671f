"""At the bench: a shim that works the wrong way, and what could hurt somebody."""

from __future__ import annotations

from twoshaft.readings.shims_and_preload.given import Bench, Caution
from twoshaft.readings.shims_and_preload.lot import BANK, Lot


def draw(lot: Lot) -> Bench:
    """A situation with a wrong sign, and two with a danger."""
    stream = lot.stream.child("bench")
    dangers = BANK.questions["cautions"]
    return Bench(
        wrong_way=lot.in_turn("wrong-way", BANK.lists["wrong_way"])[0].text,
        steps=tuple(stream.shuffled(BANK.lists["steps"])),
        cautions=tuple(
            Caution(id, dangers[id].story, tuple(stream.shuffled(dangers[id].options)))
            for id in lot.in_turn("cautions", sorted(dangers))[:2]
        ),
    )
