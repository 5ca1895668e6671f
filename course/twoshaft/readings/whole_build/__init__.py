"""Readings of the module "The whole build": an own unit on the bench, and figures around it."""

from __future__ import annotations

from twoshaft.readings.whole_build import bench, clock, figures, late, notes, parts
from twoshaft.readings.whole_build.given import Given
from twoshaft.readings.whole_build.lot import Lot

__all__ = ["MODULE", "NEEDS", "TASKS", "Given", "Lot"]

MODULE = "whole-build"

TASKS = {
    "bench": bench.draw,
    "plan": bench.draw_plan,
    "ways": bench.draw_ways,
    "parts": parts.draw,
    "clock": clock.draw,
    "turns": figures.draw_turns,
    "late": late.draw,
    "notes": notes.draw,
    "felt": notes.draw_felt,
    "others": notes.draw_others,
}

NEEDS = {"turns": ("differential",)}
