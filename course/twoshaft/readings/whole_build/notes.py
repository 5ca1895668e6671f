"""What is written down and signed, and what is done with a finding: common practice, no source."""

from __future__ import annotations

from twoshaft.questions import bank_of
from twoshaft.readings.whole_build.given import Notes
from twoshaft.readings.whole_build.lot import Lot

BANK = bank_of("whole-build")


def draw(lot: Lot) -> Notes:
    """Lines for the record, who may sign, and a case with what may be done."""
    stream, lists = lot.stream.child("notes"), BANK.lists
    scene = lot.in_turn("scene", lists["scene"])[0]
    lines = [*lot.in_turn("lines", lists["lines"])[:4], *lot.in_turn("idle", lists["idle"])[:3]]
    return Notes(
        lines=tuple(stream.shuffled(lines)),
        signs=tuple(stream.shuffled(lists["signs"])),
        scene=scene,
        do=tuple(stream.shuffled(lists["do"])),
    )
