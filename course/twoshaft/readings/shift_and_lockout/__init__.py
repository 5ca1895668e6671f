"""Readings of the module "Shift mechanism and lockout": own gates, misbuilds and figures."""

from __future__ import annotations

from twoshaft.errors import UnitFileError
from twoshaft.readings.keyed import Stream
from twoshaft.readings.shift_and_lockout import (
    build_order,
    detents,
    finger_pin,
    hand_tests,
    interlock,
    misbuilds,
    safety,
)
from twoshaft.readings.shift_and_lockout.lot import Lot
from twoshaft.units.unit import Unit

MODULE = "shift-and-lockout"

TASKS = {
    "gate": hand_tests.draw_gate,
    "detent": detents.draw_detent,
    "lever": detents.draw_lever,
    "interlock": interlock.draw,
    "lockout": hand_tests.draw_lockout,
    "reveal": hand_tests.draw_reveal,
    "symptoms": misbuilds.draw_symptoms,
    "one_test": hand_tests.draw_one_test,
    "explain": hand_tests.draw_explain,
    "unseen": misbuilds.draw_unseen,
    "order": build_order.draw,
    "pin": finger_pin.draw,
    "safe": safety.draw,
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
        By task name: misbuilds by id, records of hand tests as they were felt, figures with
        their unit in the name. Nothing in it is an answer: the models find those from it.

    Raises
    ------
    UnitFileError
        When the unit's shift mechanism is missing or too plain for a task.
    """
    if unit.shift is None or not unit.shift.must_block:
        raise UnitFileError(
            f"unit {unit.identity.id!r} has no shift mechanism with a lockout",
            mend="give it a section shift with must block, or leave this module out",
        )
    lot = Lot(
        unit=unit,
        shift=unit.shift,
        stream=Stream(salt, learner, MODULE, attempt),
        learner_stream=Stream(salt, learner, MODULE, -1),
        attempt=attempt,
    )
    return {name: task(lot) for name, task in TASKS.items()}
