"""Springs, balls and hands: what to do in a few situations."""

from __future__ import annotations

from twoshaft.readings.shift_and_lockout.lot import Lot
from twoshaft.records import Scenes


def draw(lot: Lot) -> Scenes:
    """Some situations, and what may be done in each."""
    return lot.asked("safe")
