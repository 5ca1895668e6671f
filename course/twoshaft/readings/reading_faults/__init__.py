"""Readings of the module "Reading faults backwards": own suspects, records and figures."""

from __future__ import annotations

from twoshaft.readings.reading_faults import (
    bench,
    blinded,
    driver,
    explaining,
    figures,
    hazards,
    opened,
    searching,
    unseen,
)
from twoshaft.readings.reading_faults.given import Given
from twoshaft.readings.reading_faults.lot import Lot

__all__ = ["MODULE", "NEEDS", "TASKS", "Given", "Lot"]

MODULE = "reading-faults"

TASKS = {
    "stop": hazards.draw,
    "driver": driver.draw,
    "explain": explaining.draw_explain,
    "search": searching.draw,
    "two": explaining.draw_two,
    "alike": unseen.draw,
    "count": figures.draw_count,
    "cord": figures.draw_cord,
    "own": bench.draw,
    "blind": blinded.draw,
    "opened": opened.draw,
}

NEEDS = {"opened": ("shapes",)}
