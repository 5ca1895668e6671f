"""Turning gears, locking and lifting: what to do in a few situations."""

from __future__ import annotations

from twoshaft.readings.gear_train_and_checks.lot import Lot
from twoshaft.records import Scenes


def draw(lot: Lot) -> Scenes:
    """Some situations, and what may be done in each."""
    return lot.asked("hands", lot.stream.child("hands"))
