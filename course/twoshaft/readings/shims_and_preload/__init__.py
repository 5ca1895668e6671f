"""Readings of the module "Shims, end play and preload": own lengths, shelves, gauges and heat."""

from __future__ import annotations

from twoshaft.readings.shims_and_preload import (
    bench,
    cord,
    doubt,
    life,
    shelf,
    signs,
    stack,
    trial,
    warm,
)
from twoshaft.readings.shims_and_preload.given import Given
from twoshaft.readings.shims_and_preload.lot import Lot
from twoshaft.readings.shims_and_preload.own_figures import BENCH

__all__ = ["BENCH", "MODULE", "NEEDS", "TASKS", "Given", "Lot"]

MODULE = "shims-and-preload"

TASKS = {
    "signs": signs.draw,
    "stack": stack.draw,
    "shelf": shelf.draw,
    "trial": trial.draw,
    "doubt": doubt.draw,
    "cord": cord.draw,
    "warm": warm.draw,
    "life": life.draw,
    "bench": bench.draw,
}

NEEDS = {"follow": ("preload",), "cord": ("preload",), "life": ("preload",)}
