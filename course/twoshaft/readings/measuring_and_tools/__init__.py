"""Readings of the module "Measuring and tools": own parts, zeros, spreads, tools and limits."""

from __future__ import annotations

from twoshaft.readings.measuring_and_tools import (
    care,
    choosing,
    claims,
    dial,
    pull,
    scales,
    spread,
    wrench,
)
from twoshaft.readings.measuring_and_tools.lot import Lot
from twoshaft.units.unit import Unit

__all__ = ["MODULE", "TASKS", "draw"]

MODULE = "measuring-and-tools"

TASKS = {
    "micrometer": scales.draw_micrometer,
    "depth": scales.draw_depth,
    "repeats": spread.draw,
    "choose": choosing.draw,
    "dial": dial.draw,
    "pull": pull.draw,
    "wrench": wrench.draw,
    "claims": claims.draw,
    "care": care.draw,
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
        When the unit names no wrenches, or none suits.
    """
    lot = Lot.of(unit, MODULE, salt, learner, attempt)
    return {name: task(lot) for name, task in TASKS.items()}
