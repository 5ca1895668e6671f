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
from twoshaft.readings.shims_and_preload.lot import Lot
from twoshaft.units.unit import Unit

__all__ = ["MODULE", "TASKS", "draw"]

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
        When the unit has no bearings that suit a task.
    """
    lot = Lot.of(unit, MODULE, salt, learner, attempt)
    return {name: task(lot) for name, task in TASKS.items()}
