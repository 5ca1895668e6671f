"""What drivers say, and which check comes first."""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.reading_faults.given import Driver
from twoshaft.readings.reading_faults.lot import BANK, Lot, small

CASES = 5


def draw(lot: Lot) -> Driver:
    """Complaints."""
    stream = lot.stream.child("driver")
    gears = [gear.name for gear in lot.unit.gear_train.gears if not gear.reverse]
    return Driver(
        first=lot.scenes_asked("first", BANK, CASES, lambda: _figures(stream, gears)),
    )


def _figures(stream: Stream, gears: list[str]) -> dict[str, str | int]:
    """A gear, how often, a way [km], speeds [r/min], a pull [N], tenths [mm] and two bolts."""
    gear, bolt = stream.choice(gears), 2 + stream.integer(9)
    return {
        "Gear": gear,
        "gear": small(gear),
        "few": 2 + stream.integer(4),
        "many": 8 + stream.integer(13),
        "km": 20 + 10 * stream.integer(30),
        "rpm": 150 + 10 * stream.integer(35),
        "pull": 4 + stream.integer(20),
        "tenths": 2 + stream.integer(5),
        "bolt": bolt,
        "next": bolt + 1,
    }
