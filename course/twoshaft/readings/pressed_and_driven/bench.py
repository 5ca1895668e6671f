"""At the bench: what could hurt somebody while parts are pressed, warmed and driven."""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.pressed_and_driven.given import Bench
from twoshaft.readings.pressed_and_driven.lot import BANK, Lot

SCENES = 4
BORES_MM = (25, 30, 35, 40, 45)
PINS_MM = (4, 5, 6, 8)


def draw(lot: Lot) -> Bench:
    """Some situations, with a danger or without one."""
    stream = lot.stream.child("bench")
    return Bench(
        cautions=lot.scenes("cautions", BANK, SCENES, lambda: _surroundings(stream)),
        safety=BANK.lists["safety"],
    )


def _surroundings(stream: Stream) -> dict[str, int]:
    """A bore and a pin [mm], a force [kN], heat [degC] and air [bar]."""
    return {
        "bore": stream.choice(BORES_MM),
        "pin": stream.choice(PINS_MM),
        "kn": 6 + stream.integer(20),
        "hot": 85 + stream.integer(26),
        "bar": 1 + stream.integer(5),
    }
