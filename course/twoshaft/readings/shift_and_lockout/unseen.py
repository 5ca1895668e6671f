"""What no hand test shows, and what makes sure of it while it can be seen."""

from __future__ import annotations

from twoshaft.readings.shift_and_lockout.lot import Lot
from twoshaft.records import Scenes


def draw(lot: Lot) -> Scenes:
    """How far some units are, and what comes next."""
    return lot.asked("sure")
