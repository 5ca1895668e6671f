"""Turning gears, locking and lifting: what to do in a situation. Every act has its own id."""

from __future__ import annotations

from twoshaft.readings.gear_train_and_checks.given import Hands, Scene
from twoshaft.readings.gear_train_and_checks.lot import BANK, Lot

SCENES = 2


def draw(lot: Lot) -> Hands:
    """Two situations, each with four acts."""
    stream = lot.stream.child("hands")
    picked = lot.in_turn("hands", list(BANK.questions["hands"].values()))[:SCENES]
    return Hands(
        scenes=tuple(
            Scene(one.id, one.story, tuple(stream.shuffled(one.options))) for one in picked
        )
    )
