"""Blocks about inspecting: sizes against limits, damage, what was decided, threads repaired."""

from __future__ import annotations

from twoshaft.models.inspect import load_repairs
from twoshaft.units import Unit
from twoshaft_grader.bench_sheets.content import Block, Table
from twoshaft_grader.bench_sheets.forms import blank, readings, steps


def sizes(unit: Unit) -> Table:
    """What is measured before it is used again."""
    section = unit.inspect if unit.has("inspect") else None
    names = []
    if section is not None:
        names = [
            *(one.name for one in section.limits),
            *(f"End float of {one.name}" for one in section.circlips),
            *(f"Bore and ring: {one.name}" for one in section.seats),
            *(["Depth of the groove where the seal ran"] if section.seal else []),
        ]
    return readings(
        "Sizes against their limits",
        [(name, "") for name in names],
        "Limit and uncertainty first, then the readings. Near the limit, measure better.",
    )


def decided() -> tuple[Block, ...]:
    """Damage found, and what became of each part."""
    return (
        blank(
            "Damage under the lamp",
            [("Part", 2.0), ("Where and how large", 2.4), ("Its standard name", 2.2),
             ("Cause to look for", 2.2)],
            8,
        ),
        blank(
            "Use, renew, dress or look again",
            [("Part", 2.2), ("Decision", 1.6), ("Why", 3.2), ("Initials", 0.8)],
            10,
        ),
        blank(
            "Case, faces and threads",
            [("Place", 2.2), ("Burr, crack or thread", 2.4), ("Dressed, repaired or renewed", 2.4),
             ("Initials", 0.8)],
            6,
        ),
    )  # fmt: skip


def thread() -> Table:
    """The repair of a thread, step by step."""
    return steps("Repair of a thread", load_repairs().operations, "Number the steps first.")
