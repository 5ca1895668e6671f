"""Readings of the module "Gear train and checks": own gears, counts, gaps, wheels and orders."""

from __future__ import annotations

from twoshaft.readings.gear_train_and_checks import (
    counting,
    final,
    hands,
    locking,
    paths,
    play,
    road,
    synchros,
)
from twoshaft.readings.gear_train_and_checks.given import Given
from twoshaft.readings.gear_train_and_checks.lot import Lot
from twoshaft.readings.gear_train_and_checks.own_figures import BENCH

__all__ = ["BENCH", "MODULE", "NEEDS", "TASKS", "Given", "Lot"]

MODULE = "gear-train-and-checks"

TASKS = {
    "path": paths.draw_path,
    "count": paths.draw_count,
    "which": counting.draw_which,
    "apart": counting.draw_apart,
    "lock": locking.draw,
    "play": play.draw,
    "gap": synchros.draw_gap,
    "cone": synchros.draw_cone,
    "speed": road.draw,
    "final": final.draw,
    "hands": hands.draw,
}

NEEDS = {
    "path": ("reverse",),
    "count": ("differential",),
    "play": ("side-gear-play",),
    "gap": ("synchroniser",),
    "cone": ("synchroniser",),
    "speed": ("speed-drive",),
}
