"""Parts of a unit that can lie the wrong way round, in hand to be put in."""

from __future__ import annotations

from collections.abc import Collection

from twoshaft.models.shape import listed_misbuilds, outer_rings, thin_rings
from twoshaft.readings.lots import Lot
from twoshaft.readings.scenes import Hand, hand_scene


def turned_parts_in_hand(
    lot: Lot, name: str, count: int, without: Collection[str] = ()
) -> Hand | None:
    """So many of them, others at a resit; None where no section shows them.

    Parameters
    ----------
    lot : Lot
    name : str
        Of the draw.
    count : int
        How many are in hand.
    without : collection of str
        Parts that are neither in hand nor shown.
    """
    unit, stream = lot.unit, lot.stream.child(name)
    wrong = [one for one in listed_misbuilds(unit) if one.how == "turned"]
    rings = [*outer_rings(unit), *thin_rings(unit)]
    for view in dict.fromkeys(one.view for one in wrong):
        keys = dict.fromkeys(key for one in wrong if one.view == view for key in one.parts)
        turn = lot.in_turn(f"{name} {view}", [key for key in keys if key not in without])
        taken = [*turn, *(one.parts[0] for one in rings if one.view == view)]
        for first in range(len(turn) - count + 1):
            hand = hand_scene(unit, stream, view, turn[first : first + count], taken, without)
            if hand is not None:
                return hand
    return None
