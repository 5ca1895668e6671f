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
from twoshaft.readings.measuring_and_tools.given import Given
from twoshaft.readings.measuring_and_tools.lot import Lot
from twoshaft.readings.measuring_and_tools.own_figures import BENCH

__all__ = ["BENCH", "MODULE", "TASKS", "Given", "Lot"]

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
