"""Blocks about closing out: oil and level, leak test, joining, record, hand-over and road test."""

from __future__ import annotations

from twoshaft.models.closeout import load_road
from twoshaft.units import Unit
from twoshaft_grader.bench_sheets.content import Block, Table
from twoshaft_grader.bench_sheets.forms import blank, checks, figures, readings

_LEAK = ("pressure at the start", "time", "largest leak allowed", "largest pressure of the seals")


def oil() -> tuple[Block, ...]:
    """What the unit asks for, what went in, and where it stands."""
    return (
        figures(
            "Oil and level",
            ("Grade and service of the oil", "Right filling, and at which temperature",
             "Where the level is read, and at which temperature", "Torque of each plug"),
        ),
        readings(
            "Oil that went in",
            [("Temperature of the oil in the can", ""), ("Litres or kilograms filled in", ""),
             ("Level at the plug, cold and level", "")],
            "Write the label of the drum beside it.",
        ),
        checks(
            "Breather",
            ("Air goes through it both ways", "Its hose runs upwards and is clipped",
             "Its end lies above any water that is crossed"),
        ),
    )  # fmt: skip


def leak_test(unit: Unit) -> tuple[Block, ...]:
    """A test with air, for a unit that is tested so."""
    if not (unit.has("close_out") and unit.close_out.leak_test):
        return ()
    return (
        figures("Leak test", [f"Leak test: {one}" for one in _LEAK]),
        readings(
            "Leak test: readings",
            [("Pressure outside", ""), ("Gauge at the start", ""), ("Air at the start", ""),
             ("Gauge at the end", ""), ("Air at the end", ""), ("Time", "")],
            "Set valve and relief valve first. Let the air down before a plug is touched.",
        ),
    )  # fmt: skip


def handed_over() -> tuple[Block, ...]:
    """Joined to the vehicle, told to the owner."""
    return (
        blank(
            "Back into the vehicle, in the order of its manual",
            [("What was done", 3.2), ("Manual page", 1.1), ("Figure and tool", 2.2),
             ("Initials", 0.8)],
            10,
        ),
        blank(
            "Hand-over",
            [("What was found or done", 3.0), ("Told to the owner", 1.6), ("Written down", 1.2),
             ("Agreed by", 1.2)],
            6,
        ),
    )  # fmt: skip


def road() -> Table:
    """What is tried on the road before anything is opened."""
    return checks("Road test", load_road().checks.values(), "Tick what was so; say where and when.")
