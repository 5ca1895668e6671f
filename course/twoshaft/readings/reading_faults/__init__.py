"""Readings of the module "Reading faults backwards": own suspects, records and figures."""

from __future__ import annotations

from twoshaft.readings.reading_faults import (
    bench,
    blinded,
    explaining,
    figures,
    hazards,
    searching,
    unseen,
)
from twoshaft.readings.reading_faults.given import Given
from twoshaft.readings.reading_faults.lot import Lot

__all__ = ["MODULE", "TASKS", "Given", "Lot"]

MODULE = "reading-faults"

TASKS = {
    "stop": hazards.draw,
    "explain": explaining.draw_explain,
    "two": explaining.draw_two,
    "next": searching.draw_next,
    "dead": searching.draw_dead,
    "plan": searching.draw_plan,
    "alike": unseen.draw_alike,
    "silent": unseen.draw_silent,
    "count": figures.draw_count,
    "cord": figures.draw_cord,
    "blind": blinded.draw,
    "own": bench.draw,
}
