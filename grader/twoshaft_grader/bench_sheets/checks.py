"""Blocks about the checks of the finished unit, and about reading faults backwards."""

from __future__ import annotations

from twoshaft.units import Unit
from twoshaft_grader.bench_sheets.content import Block, Column, Table
from twoshaft_grader.bench_sheets.forms import blank, checks, tool_name

_WITHOUT_SECTION = (
    "Turns freely by hand in neutral",
    "Every gear goes in, stays in and comes out",
    "Turns counted in every gear, reverse the other way round",
    "The lockout is proved both ways",
    "End play or turning torque by the manual",
    "No leak, filled and turned through",
    "Speed drive and switches work",
)


def final_checks(unit: Unit) -> Table:
    """The checks of the finished unit."""
    faults = unit.faults_if_any
    names = [one.name for one in faults.checks] if faults else list(_WITHOUT_SECTION)
    say = "What has to come out stands in the manual. A check that was not made is not ticked."
    return checks("Final checks", names, say)


def complaint() -> tuple[Block, ...]:
    """What the unit is brought in with, before anybody turns a screw."""
    return (
        Table(
            "What is complained of",
            (Column("Asked", 2.6), Column("Answered", 5.4)),
            tuple(
                (question, "")
                for question in (
                    "What does it do, in the owner's words",
                    "Since when, and what was done to it before",
                    "In which gear, cold or warm, driving or coasting",
                    "What you hear, feel, smell or see yourself",
                    "Safe to turn and to try? Who said so",
                )
            ),
        ),
        blank(
            "What could be behind it",
            [
                ("Built wrongly, or worn", 3.2),
                ("It would explain", 2.4),
                ("It would not explain", 2.4),
                ("Happens often or seldom", 1.2),
            ],
            6,
            "Write down all that you can think of before the first check, also two at once.",
        ),
    )


def search(unit: Unit) -> tuple[Block, ...]:
    """The checks that can be made, and the search as it went."""
    every = unit.faults.checks if unit.faults_if_any else ()
    columns = (
        Column("Check", 3.0),
        Column("Tool", 1.6),
        Column("Opens or spoils anything", 1.6),
        Column("Would tell apart", 2.6),
        Column("Your number", 0.8),
    )
    return (
        Table.begun(
            "Checks at hand",
            columns,
            ((one.name, tool_name(unit, one.tool)) for one in every),
            "Number them: the check that splits your list best, for the least work, comes first.",
            empty=10,
        ),
        blank(
            "The search",
            [
                ("Check made", 2.2),
                ("What was found", 2.4),
                ("Struck off the list by it", 2.2),
                ("Still possible", 2.2),
                ("Time", 0.8),
                ("By", 0.7),
            ],
            8,
        ),
        Table(
            "What it was",
            (Column("Line", 2.6), Column("In your words", 5.4)),
            tuple(
                (line, "")
                for line in (
                    "Fault or faults found, and how you know",
                    "What no check could tell apart",
                    "What had to come off, and what was renewed",
                    "What was done so that it does not come back",
                    "Checks made again after the repair, and what they showed",
                    "Told to the owner or the instructor",
                )
            ),
        ),
    )
