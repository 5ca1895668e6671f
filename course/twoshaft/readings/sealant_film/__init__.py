"""Readings of the module "Sealant film": own faces, joints, clocks, films to lay and to judge."""

from __future__ import annotations

from twoshaft.readings.sealant_film import amounts, clock, faces, questions, shelf
from twoshaft.readings.sealant_film.given import Given
from twoshaft.readings.sealant_film.lot import Lot
from twoshaft.readings.sealant_film.own_figures import BENCH

__all__ = ["BENCH", "MODULE", "NEEDS", "TASKS", "Given", "Lot"]

MODULE = "sealant-film"

TASKS = {
    "prepare": questions.draw_prepare,
    "joints": shelf.draw_joints,
    "bead": amounts.draw_bead,
    "clock": clock.draw_clock,
    "lay": faces.draw_lay,
    "holes": faces.draw_holes,
    "fault": faces.draw_fault,
    "edge": amounts.draw_edge,
    "after": questions.draw_after,
}

NEEDS = {"joints": ("second-sealant",)}
