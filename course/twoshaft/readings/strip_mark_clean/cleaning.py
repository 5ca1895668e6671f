"""Marking, cleaning, what is thrown away, and dangers: scenes with figures of the learner's own."""

from __future__ import annotations

from twoshaft.readings.strip_mark_clean.given import Marks
from twoshaft.readings.strip_mark_clean.lot import Lot
from twoshaft.readings.turned_parts import turned_parts_in_hand
from twoshaft.records import Scenes, extended

BACK = 3
"""How many parts are put back."""


def draw_marks(lot: Lot) -> Marks:
    """Parts about to come off, what is done with each, and parts that came out."""
    return extended(Marks, lot.asked("marks"), back=turned_parts_in_hand(lot, "back", BACK))


def draw_clean(lot: Lot) -> Scenes:
    """Parts being cleaned, and whether to go on."""
    return lot.asked("clean")


def draw_discard(lot: Lot) -> Scenes:
    """Parts that came off, and whether they are used again."""
    return lot.asked("discard")


def draw_safe(lot: Lot) -> Scenes:
    """Situations while stripping, and what is done about each."""
    return lot.asked("safe")
