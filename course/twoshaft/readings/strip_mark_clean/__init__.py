"""Readings of the module "Strip, mark, clean"."""

from __future__ import annotations

from twoshaft.readings.strip_mark_clean import (
    chips,
    cleaning,
    found,
    losing,
    oil,
    taking_apart,
    worked,
)
from twoshaft.readings.strip_mark_clean.given import Given
from twoshaft.readings.strip_mark_clean.lot import Lot

__all__ = ["MODULE", "TASKS", "Given", "Lot"]

MODULE = "strip-mark-clean"

TASKS = {
    "apart": taking_apart.draw,
    "lost": losing.draw,
    "worked": worked.draw,
    "oil": oil.draw,
    "chips": chips.draw,
    "found": found.draw,
    "marks": cleaning.draw_marks,
    "clean": cleaning.draw_clean,
    "discard": cleaning.draw_discard,
    "safe": cleaning.draw_safe,
}
"""Each task's draw, in the order of the exercise."""
