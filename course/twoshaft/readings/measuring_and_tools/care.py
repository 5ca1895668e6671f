"""What could hurt somebody, and what spoils a tool."""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.measuring_and_tools.given import Care, Situation
from twoshaft.readings.measuring_and_tools.lot import BANK, Lot

SCENES = 4
BOLTS_MM = (8, 10, 12, 14)


def draw(lot: Lot) -> Care:
    """Some situations, with a danger or without one, and one way to spoil a tool."""
    stream = lot.stream.child("care")
    asked = BANK.questions["spoils"]
    return Care(
        dangers=lot.scenes("dangers", BANK, SCENES, lambda: _surroundings(stream)),
        safety=BANK.lists["safety"],
        spoils=tuple(
            Situation(id, asked[id].story, tuple(stream.shuffled(asked[id].options)))
            for id in lot.in_turn("spoils", sorted(asked))[:1]
        ),
    )


def _surroundings(stream: Stream) -> dict[str, int]:
    """A shaft and a bolt [mm], a torque [N m], and a speed [turns a minute]."""
    return {
        "dia": 20 + stream.integer(26),
        "size": stream.choice(BOLTS_MM),
        "nm": 20 + 5 * stream.integer(17),
        "rpm": 20 + 5 * stream.integer(13),
    }
