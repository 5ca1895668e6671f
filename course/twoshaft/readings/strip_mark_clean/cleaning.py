"""Marking, cleaning, what is thrown away, and dangers: scenes with figures of the learner's own."""

from __future__ import annotations

from twoshaft.readings.strip_mark_clean.lot import Lot
from twoshaft.records import Scenes


def draw_marks(lot: Lot) -> Scenes:
    """Parts about to come off, and what is done with each."""
    return lot.asked("marks")


def draw_clean(lot: Lot) -> Scenes:
    """Parts being cleaned, and whether to go on."""
    return lot.asked("clean")


def draw_discard(lot: Lot) -> Scenes:
    """Parts that came off, and whether they are used again."""
    return lot.asked("discard")


def draw_safe(lot: Lot) -> Scenes:
    """Situations while stripping, and what is done about each."""
    return lot.asked("safe")
