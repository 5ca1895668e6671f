"""Readings of the module "How the course works, and bench safety"."""

from __future__ import annotations

from twoshaft.readings.course_and_safety import figures, lifting, safety
from twoshaft.readings.course_and_safety.lot import Lot
from twoshaft.readings.keyed import Stream
from twoshaft.safety import load_safety
from twoshaft.units.unit import Unit

MODULE = "course-and-safety"

TASKS = {
    "course": safety.draw_course,
    "forms": figures.draw_forms,
    "figures": figures.draw_figures,
    "picture": safety.draw_picture,
    "acts": safety.draw_acts,
    "first": safety.draw_first,
    "eyes": safety.draw_eyes,
    "why": safety.draw_why,
    "lift": lifting.draw_lift,
}


def draw(unit: Unit, *, salt: str, learner: str, attempt: int) -> dict:
    """Draw every task of the module.

    Parameters
    ----------
    unit : Unit
        The unit on the bench. This module asks nothing about it.
    salt, learner : str
        The cohort's salt and the learner's id.
    attempt : int
        Number of the attempt.

    Returns
    -------
    dict
        By task name. Options are ``[key, text]`` pairs in the order shown. Nothing in it is an
        answer: the models and the safety data find those from it.
    """
    lot = Lot(
        safety=load_safety(),
        stream=Stream(salt, learner, MODULE, attempt),
        learner_stream=Stream(salt, learner, MODULE, -1),
        attempt=attempt,
    )
    return {name: task(lot) for name, task in TASKS.items()}
