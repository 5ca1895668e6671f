"""Blocks about taking apart: steps, what is read before it is lost, marks, oil and finds."""

from __future__ import annotations

from twoshaft.models.strip import strip_unit
from twoshaft.units import Unit
from twoshaft.units.sections.order import Operation
from twoshaft_grader.bench_sheets.content import Block, Table
from twoshaft_grader.bench_sheets.forms import blank, readings, steps

_FIRST = (
    "Take each reading before the parts that it needs come off. What was not read is written down "
    "as not read."
)


def taken_apart(unit: Unit) -> tuple[Operation, ...]:
    """The steps of taking apart; without their names in the unit file, those of the build."""
    return strip_unit(unit, readings=False).operations if unit.has("strip") else unit.operations


def order(unit: Unit) -> Table:
    """Steps to be numbered before the first bolt is loosened."""
    return steps("Taking apart", taken_apart(unit), "Number the steps first, then tick them.")


def before_lost(unit: Unit) -> tuple[Block, ...]:
    """What is read while it can be read."""
    rows = [(one.name, "") for one in unit.strip.readings] if unit.has("strip") else []
    return (readings("Read before it is lost", rows, _FIRST),)


def found() -> tuple[Block, ...]:
    """Marks and places, the oil, magnet and film, what was scrapped."""
    return (
        blank(
            "Marks and places",
            [("Part", 2.2), ("Which way round it was", 2.6), ("Mark, bag or picture", 2.0),
             ("Shims at this place", 1.6)],
            8,
        ),
        blank(
            "Oil, magnet, pan and old film",
            [("Where", 1.8), ("What was found", 3.0), ("Held by a magnet", 1.2),
             ("What it says", 2.4)],
            6,
        ),
        blank(
            "Cleaned, measured or scrapped",
            [("Part", 2.2), ("Cleaned with", 2.0), ("Measured, scrapped or kept by its place", 2.8),
             ("Initials", 0.8)],
            8,
        ),
    )  # fmt: skip
