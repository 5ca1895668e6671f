"""Marking, cleaning, what is thrown away, and dangers: scenes with figures of the learner's own."""

from __future__ import annotations

from twoshaft.models.shape import listed_misbuilds, outer_rings, thin_rings
from twoshaft.readings.scenes import Hand, hand_scene
from twoshaft.readings.strip_mark_clean.given import Marks
from twoshaft.readings.strip_mark_clean.lot import Lot
from twoshaft.records import Scenes, extended

BACK = 3
"""How many parts are put back."""


def draw_marks(lot: Lot) -> Marks:
    """Parts about to come off, what is done with each, and parts that came out."""
    return extended(Marks, lot.asked("marks"), back=_back(lot))


def _back(lot: Lot) -> Hand | None:
    """Parts that can lie the wrong way round, others at a resit; None where they are not drawn."""
    unit, stream = lot.unit, lot.stream.child("back")
    wrong = [one for one in listed_misbuilds(unit) if one.how == "turned"]
    rings = [*outer_rings(unit), *thin_rings(unit)]
    for view in dict.fromkeys(one.view for one in wrong):
        keys = dict.fromkeys(key for one in wrong if one.view == view for key in one.parts)
        turn = lot.in_turn(f"back {view}", list(keys))
        taken = [*turn, *(one.parts[0] for one in rings if one.view == view)]
        for first in range(len(turn) - BACK + 1):
            hand = hand_scene(unit, stream, view, turn[first : first + BACK], taken)
            if hand is not None:
                return hand
    return None


def draw_clean(lot: Lot) -> Scenes:
    """Parts being cleaned, and whether to go on."""
    return lot.asked("clean")


def draw_discard(lot: Lot) -> Scenes:
    """Parts that came off, and whether they are used again."""
    return lot.asked("discard")


def draw_safe(lot: Lot) -> Scenes:
    """Situations while stripping, and what is done about each."""
    return lot.asked("safe")
