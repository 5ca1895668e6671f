"""Readings of the module "Order of work": own sub-assemblies, start orders and slips."""

from __future__ import annotations

from twoshaft.models.order import OrderTask
from twoshaft.readings.keyed import Stream
from twoshaft.readings.order_of_work import (
    clock,
    new_parts,
    next_steps,
    slips,
    sub_assembly,
    whole_unit,
    why,
)
from twoshaft.readings.order_of_work.lot import Lot
from twoshaft.units.unit import Unit

MODULE = "order-of-work"

TASKS = {
    "sub_assembly": sub_assembly.draw,
    "whole_unit": whole_unit.draw,
    "next_steps": next_steps.draw,
    "buried": slips.draw_buried,
    "repair": slips.draw_repair,
    "clock": clock.draw,
    "new_parts": new_parts.draw,
    "why": why.draw,
    "safe": slips.draw_safe,
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
        By task name. Steps, parts and reasons are ``[id, name]`` pairs in the order shown;
        minutes are in minutes. Nothing in it is an answer: the models find those from it.

    Raises
    ------
    UnitFileError
        When the unit is too small for a task.
    """
    lot = Lot(
        unit=unit,
        task=OrderTask.from_unit(unit),
        stream=Stream(salt, learner, MODULE, attempt),
        learner_stream=Stream(salt, learner, MODULE, -1),
        attempt=attempt,
    )
    return {name: task(lot) for name, task in TASKS.items()}
