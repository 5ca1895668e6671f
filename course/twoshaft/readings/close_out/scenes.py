"""Joining unit and vehicle, records, hand-overs, dangers: scenes with own figures."""

from __future__ import annotations

from twoshaft.readings.close_out.lot import Lot
from twoshaft.records import Scenes


def draw_joined(lot: Lot) -> Scenes:
    """What is done when the unit goes back into the vehicle."""
    return lot.asked("joined")


def draw_record(lot: Lot) -> Scenes:
    """Lines of a record, and whether the next mechanic can trust them."""
    return lot.asked("record")


def draw_hand(lot: Lot) -> Scenes:
    """What is known before the unit is handed over."""
    return lot.asked("hand")


def draw_safe(lot: Lot) -> Scenes:
    """Situations while a unit is closed out, and what is done about each."""
    return lot.asked("safe")
