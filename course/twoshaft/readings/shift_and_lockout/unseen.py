"""What no hand test shows, and what makes sure of it while it can be seen."""

from __future__ import annotations

from twoshaft.models.shape import listed_misbuilds, thin_rings
from twoshaft.readings.scenes import looks_in_turn
from twoshaft.readings.shift_and_lockout.given import Unseen
from twoshaft.readings.shift_and_lockout.lot import BANK, Lot
from twoshaft.readings.shift_and_lockout.misbuilds import drawn_faults
from twoshaft.records import extended


def draw(lot: Lot) -> Unseen:
    """How far some units are, and what comes next; and selectors that are looked at."""
    listed = listed_misbuilds(lot.unit)
    views = {one.view for one in drawn_faults(lot.unit)}
    places = lot.in_turn("looks", [one for one in listed if one.view in views])
    others = [*listed, *thin_rings(lot.unit)]
    looks = looks_in_turn(lot.unit, lot.stream.child("looks"), places, others)
    return extended(Unseen, lot.asked("sure"), looks=looks or (), built=BANK.lists["looks"])
