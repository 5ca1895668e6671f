"""What is written down and signed, and what is done with a finding: common practice, no source."""

from __future__ import annotations

from collections.abc import Callable

from twoshaft.questions import bank_of
from twoshaft.readings.whole_build.given import Felt, Notes
from twoshaft.readings.whole_build.lot import Lot
from twoshaft.records import Option

BANK = bank_of("whole-build")
SCENES = 4


def draw(lot: Lot) -> Notes:
    """Lines for the record, checks with who may sign, and cases with what may be done."""
    stream, lists = lot.stream.child("notes"), BANK.lists
    lines = [*lot.in_turn("lines", lists["lines"])[:4], *lot.in_turn("idle", lists["idle"])[:3]]
    return Notes(
        lines=tuple(stream.shuffled(lines)),
        signed=lot.scenes_asked("signed", BANK, SCENES, _figures(lot, "signed")),
        scenes=_scenes(lot, "scene"),
        do=tuple(stream.shuffled(lists["do"])),
    )


def draw_felt(lot: Lot) -> Felt:
    """What proofs of a lockout showed, and what may be made of them."""
    says = lot.stream.child("felt").shuffled(BANK.lists["says"])
    return Felt(scenes=_scenes(lot, "felt"), says=tuple(says))


def _scenes(lot: Lot, name: str) -> tuple[Option, ...]:
    """Scenes of a list of the bank, others at every attempt, with figures of their own."""
    return lot.scenes(name, BANK, SCENES, _figures(lot, name))


def _figures(lot: Lot, name: str) -> Callable[[], dict[str, int]]:
    stream = lot.stream.child(f"{name} scenes")
    return lambda: {"n": 4 + stream.integer(12), "hour": 8 + stream.integer(9)}
