"""Readings of the module "Sealant film": own faces, joints, clocks, films to lay and to judge."""

from __future__ import annotations

from twoshaft.readings.sealant_film import amounts, clock, faces, questions, shelf
from twoshaft.readings.sealant_film.lot import Lot
from twoshaft.units.unit import Unit

__all__ = ["MODULE", "TASKS", "draw"]

MODULE = "sealant-film"

TASKS = {
    "prepare": questions.draw_prepare,
    "joints": shelf.draw_joints,
    "bead": amounts.draw_bead,
    "clock": clock.draw_clock,
    "lay": faces.draw_lay,
    "holes": faces.draw_holes,
    "fault": faces.draw_fault,
    "closing": amounts.draw_closing,
    "after": questions.draw_after,
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
        When the unit has no sealed faces, or none that suits a task.
    """
    lot = Lot.of(unit, MODULE, salt, learner, attempt)
    return {name: task(lot) for name, task in TASKS.items()}
