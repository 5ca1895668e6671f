"""At the bench: what comes after a change of shim, and what could hurt somebody."""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.shims_and_preload.given import Bench
from twoshaft.readings.shims_and_preload.lot import BANK, Lot

SCENES = 4
BORES_MM = (25, 30, 35, 40, 45)


def draw(lot: Lot) -> Bench:
    """Some benches after a change of shim, and some with a danger or without one."""
    stream = lot.stream.child("bench")
    return Bench(
        changed=lot.scenes("changed", BANK, SCENES, lambda: _readings(stream)),
        steps=BANK.lists["steps"],
        cautions=lot.scenes("cautions", BANK, SCENES, lambda: _surroundings(stream)),
        safety=BANK.lists["safety"],
    )


def _readings(stream: Stream) -> dict[str, str]:
    """Floats [mm], each larger than the one before; pulls [N] likewise; turns of the shaft."""
    low = 3 + stream.integer(5)
    inside = low + 2 + stream.integer(3)
    weak = 40 + stream.integer(30)
    middle = weak + 15 + stream.integer(15)
    return {
        "low": f"{low / 100:.2f}",
        "inside": f"{inside / 100:.2f}",
        "high": f"{(inside + 3 + stream.integer(5)) / 100:.2f}",
        "weak": f"{weak / 10:.1f}",
        "middle": f"{middle / 10:.1f}",
        "strong": f"{(middle + 15 + stream.integer(15)) / 10:.1f}",
        "turns": str(20 + stream.integer(20)),
    }


def _surroundings(stream: Stream) -> dict[str, int]:
    """A bore [mm], air [bar], heat [degC], minutes, the press's load [t] and a pull [N]."""
    return {
        "bore": stream.choice(BORES_MM),
        "bar": 1 + stream.integer(5),
        "hot": 85 + stream.integer(26),
        "minutes": 2 + stream.integer(8),
        "ton": 1 + stream.integer(4),
        "newton": 5 + stream.integer(20),
    }
