"""Readings of the module "Threaded joints": own bolts, tools, adapters, states and sequences."""

from __future__ import annotations

from twoshaft.readings.threaded_joints import card, faces, holes, jobs, nuts, questions
from twoshaft.readings.threaded_joints.faces import face_like
from twoshaft.readings.threaded_joints.lot import Lot
from twoshaft.units.unit import Unit

__all__ = ["MODULE", "TASKS", "draw", "face_like"]

MODULE = "threaded-joints"

TASKS = {
    "card": card.draw_card,
    "found": card.draw_found,
    "state": holes.draw_state,
    "alloy": holes.draw_alloy,
    "blind": holes.draw_blind,
    "face": faces.draw_face,
    "pattern": faces.draw_pattern,
    "nut": nuts.draw_nut,
    "asked": questions.draw_asked,
    "job": jobs.draw_job,
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
        By task name. The unit of a figure stands in its name; bolts are numbered from 1. Nothing
        in it is an answer: the models find those from it.

    Raises
    ------
    UnitFileError
        When the unit has no fasteners, or none that suits a task.
    """
    lot = Lot.of(unit, MODULE, salt, learner, attempt)
    return {name: task(lot) for name, task in TASKS.items()}
