"""Readings of the module "Shift mechanism and lockout": own gates, misbuilds and figures."""

from __future__ import annotations

from twoshaft.readings.shift_and_lockout import (
    build_order,
    detents,
    finger_pin,
    hand_tests,
    interlock,
    misbuilds,
    safety,
    unseen,
)
from twoshaft.readings.shift_and_lockout.given import Given
from twoshaft.readings.shift_and_lockout.lot import Lot

__all__ = ["MODULE", "NEEDS", "TASKS", "Given", "Lot"]

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
    "unseen": unseen.draw,
    "order": build_order.draw,
    "pin": finger_pin.draw,
    "safe": safety.draw,
}

NEEDS = {"lockout": ("lockout",), "interlock": ("interlock",), "detent": ("detent",)}
