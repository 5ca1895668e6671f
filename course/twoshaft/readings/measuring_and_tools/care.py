"""What could hurt somebody, and what spoils a tool."""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.measuring_and_tools.given import Care
from twoshaft.readings.measuring_and_tools.lot import BANK, Lot

SCENES = 4
BOLTS_MM = (8, 10, 12, 14)


def draw(lot: Lot) -> Care:
    """Some situations, with a danger or without one, and torque wrenches in some state."""
    stream = lot.stream.child("care")
    return Care(
        dangers=lot.scenes("dangers", BANK, SCENES, lambda: _surroundings(stream)),
        safety=BANK.lists["safety"],
        kept=lot.scenes_asked("kept", BANK, SCENES, lambda: _surroundings(stream)),
    )


def _surroundings(stream: Stream) -> dict[str, int]:
    """A shaft and a bolt [mm], a torque [N m], a speed [turns a minute], a height, and months."""
    return {
        "dia": 20 + stream.integer(26),
        "size": stream.choice(BOLTS_MM),
        "nm": 20 + 5 * stream.integer(17),
        "rpm": 20 + 5 * stream.integer(13),
        "cm": 40 + 10 * stream.integer(9),
        "months": 2 + stream.integer(8),
    }
