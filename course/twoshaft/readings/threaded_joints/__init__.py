"""Readings of the module "Threaded joints": own bolts, tools, adapters, states and sequences."""

from __future__ import annotations

from twoshaft.readings.threaded_joints import card, faces, holes, nuts, questions, stakes
from twoshaft.readings.threaded_joints.faces import face_like
from twoshaft.readings.threaded_joints.given import Given
from twoshaft.readings.threaded_joints.lot import Lot
from twoshaft.readings.threaded_joints.own_figures import BENCH

__all__ = ["BENCH", "MODULE", "TASKS", "Given", "Lot", "face_like"]

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
    "stake": stakes.draw_stake,
    "asked": questions.draw_asked,
}
