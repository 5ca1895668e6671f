"""Readings of the module "Inspect and decide"."""

from __future__ import annotations

from twoshaft.readings.inspect_and_decide import deciding, looks, measured, repair
from twoshaft.readings.inspect_and_decide.given import Given
from twoshaft.readings.inspect_and_decide.lot import Lot

__all__ = ["MODULE", "NEEDS", "TASKS", "Given", "Lot"]

MODULE = "inspect-and-decide"

TASKS = {
    "races": looks.draw_races,
    "flanks": looks.draw_flanks,
    "dogs": looks.draw_dogs,
    "guard": deciding.draw_guard,
    "cost": deciding.draw_cost,
    "clip": measured.draw_clip,
    "seats": measured.draw_seats,
    "seal": measured.draw_seal,
    "thread": repair.draw_thread,
    "parts": repair.draw_parts,
    "safe": repair.draw_safe,
}
"""Each task's draw, in the order of the exercise."""

NEEDS = {
    "dogs": ("dog-teeth",),
    "clip": ("selective-circlip",),
    "seats": ("ring-seat",),
    "seal": ("seal-track",),
}
"""What the unit has to have for a task."""
