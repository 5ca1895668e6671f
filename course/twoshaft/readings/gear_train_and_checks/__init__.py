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
from twoshaft.readings.gear_train_and_checks.lot import Lot
from twoshaft.units.unit import Unit

__all__ = ["MODULE", "TASKS", "draw"]

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


def draw(unit: Unit, *, salt: str, learner: str, attempt: int) -> dict:
    """Draw every task of the module.

    Parameters
    ----------
    unit : Unit
        The unit on the bench.
    salt, learner : str
        The cohort's salt and the learner's id.
    attempt : int
        Number of the attempt.

    Returns
    -------
    dict
        By task name. The unit of a figure stands in its name. Nothing in it is an answer: the
        models find those from it.

    Raises
    ------
    UnitFileError
        When the unit has no gear train, or too little of it for a task.
    """
    lot = Lot.of(unit, MODULE, salt, learner, attempt)
    return {name: task(lot) for name, task in TASKS.items()}
