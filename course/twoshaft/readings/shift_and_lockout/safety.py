"""What to do before a detent plug is undone."""

from __future__ import annotations

from twoshaft.readings.shift_and_lockout.given import Safe
from twoshaft.readings.shift_and_lockout.lot import BANK, Lot


def draw(lot: Lot) -> Safe:
    """Three things to tick that belong there, eye protection always, and three that do not."""
    stream, (eyes, *others) = lot.stream.child("safe"), BANK.lists["careful"]
    right = [eyes, *lot.in_turn("safe right", others)[:2]]
    wrong = lot.in_turn("safe wrong", BANK.lists["danger"])[:3]
    return Safe(options=tuple(stream.shuffled([*right, *wrong])))
