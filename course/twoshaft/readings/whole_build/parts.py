"""Parts on the bench: used again, renewed, or looked at first. Common practice, no source."""

from __future__ import annotations

from twoshaft.questions import bank_of
from twoshaft.readings.whole_build.lot import Lot
from twoshaft.records import Scenes

BANK = bank_of("whole-build")
SCENES = 5


def draw(lot: Lot) -> Scenes:
    """Some parts with figures of their own (invented), and what may be done about each."""
    stream = lot.stream.child("parts")

    def figures() -> dict[str, object]:
        least = 55 + stream.integer(20)
        thin = 280 + stream.integer(40)
        return {
            "n": 5 + stream.integer(60),
            "long": 20 + 5 * stream.integer(9),
            "least": f"{least / 100:.2f}",
            "wide": f"{(least + 20 + stream.integer(40)) / 100:.2f}",
            "narrow": f"{(least - 10 - stream.integer(30)) / 100:.2f}",
            "thin": f"{thin / 100:.2f}",
            "thick": f"{(thin + 5 + stream.integer(25)) / 100:.2f}",
        }

    return lot.scenes_asked("part", BANK, SCENES, figures)
