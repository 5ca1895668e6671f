"""What is written down and signed, and what is done with a finding: common practice, no source."""

from __future__ import annotations

from collections.abc import Callable

from twoshaft.questions import bank_of
from twoshaft.readings.whole_build.given import Felt, Notes, Others
from twoshaft.readings.whole_build.lot import Lot
from twoshaft.records import Option

BANK = bank_of("whole-build")
SCENES = 4


def draw(lot: Lot) -> Notes:
    """Lines of a record, checks with who may sign, and cases with what may be done."""
    stream, lists = lot.stream.child("notes"), BANK.lists
    return Notes(
        record=lot.scenes_asked("record", BANK, SCENES, _figures(lot, "record")),
        signed=lot.scenes_asked("signed", BANK, SCENES, _figures(lot, "signed")),
        scenes=_scenes(lot, "scene"),
        do=tuple(stream.shuffled(lists["do"])),
    )


def draw_felt(lot: Lot) -> Felt:
    """What proofs of a lockout showed, and what may be made of them."""
    says = lot.stream.child("felt").shuffled(BANK.lists["says"])
    return Felt(scenes=_scenes(lot, "felt"), says=tuple(says))


def draw_others(lot: Lot) -> Others:
    """Flanges and checks of others, with what comes next."""
    return Others(
        flange=lot.scenes_asked("flange", BANK, SCENES, _figures(lot, "flange")),
        made=lot.scenes_asked("made", BANK, SCENES, _figures(lot, "made")),
    )


def _scenes(lot: Lot, name: str) -> tuple[Option, ...]:
    """Scenes of a list of the bank, others at every attempt, with figures of their own."""
    return lot.scenes(name, BANK, SCENES, _figures(lot, name))


def _figures(lot: Lot, name: str) -> Callable[[], dict[str, object]]:
    stream = lot.stream.child(f"{name} scenes")

    def figures() -> dict[str, object]:
        n, nm, turns = 4 + stream.integer(12), 15 + stream.integer(30), 30 + stream.integer(60)
        hundredths = 60 + 5 * stream.integer(20)
        return {
            "n": n,
            "hour": 8 + stream.integer(9),
            "few": 2 + stream.integer(2),
            "bolt": 1 + stream.integer(n),
            "deg": 5 * (2 + stream.integer(8)),
            "nm": nm,
            "more": nm + 2 + stream.integer(6),
            "mm": f"{hundredths / 100:.2f}",
            "other": f"{(hundredths + 5) / 100:.2f}",
            "due": f"{turns / 5:g}",
            "half": f"{turns / 10:g}",
            "off": f"{(turns + 4 + stream.integer(8)) / 5:g}",
        }

    return figures
