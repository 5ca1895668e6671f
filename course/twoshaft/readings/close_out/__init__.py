"""Readings of the module "Close out"."""

from __future__ import annotations

from twoshaft.readings.close_out import air, filling, oils, road, scenes
from twoshaft.readings.close_out.given import Given
from twoshaft.readings.close_out.lot import Lot

__all__ = ["MODULE", "NEEDS", "TASKS", "Given", "Lot"]

MODULE = "close-out"

TASKS = {
    "oil": oils.draw_oil,
    "ring": oils.draw_ring,
    "fill": filling.draw_fill,
    "breather": air.draw_breather,
    "leak": air.draw_leak,
    "joined": scenes.draw_joined,
    "record": scenes.draw_record,
    "hand": scenes.draw_hand,
    "road": road.draw_road,
    "safe": scenes.draw_safe,
}
"""Each task's draw, in the order of the exercise."""

NEEDS = {
    "ring": ("synchroniser", "ring-work"),
    "leak": ("leak-test",),
}
"""What the unit has to have for a task."""
