"""The tables that recur: readings, figures of the manual, steps, checks, signatures."""

from __future__ import annotations

from collections.abc import Iterable

from twoshaft.units import Unit
from twoshaft.units.sections.order import Operation
from twoshaft_grader.bench_sheets.content import Column, Table

FROM_MANUAL = (
    "Take every figure from the maker's manual. Two people sign for each: one enters, one checks."
)


def readings(heading: str, rows: Iterable[tuple[str, str]], say: str = "") -> Table:
    """What is measured and with what tool; room for three readings, their mean and the unit."""
    columns = (
        Column("What is measured", 3.2),
        Column("Tool and its number", 2.2),
        Column("First reading", 1.2),
        Column("Second reading", 1.2),
        Column("Third reading", 1.2),
        Column("Mean", 1.1),
        Column("Unit", 0.8),
    )
    return Table.begun(heading, columns, rows, say)


def figures(heading: str, rows: Iterable[str], say: str = FROM_MANUAL) -> Table:
    """Figures of the maker's manual: all of them blank."""
    columns = (
        Column("Figure", 3.4),
        Column("Manual page", 1.3),
        Column("Value", 1.6),
        Column("Entered by", 1.3),
        Column("Checked by", 1.3),
    )
    return Table.begun(heading, columns, ((row,) for row in rows), say)


def limits(heading: str, rows: Iterable[str], ends: Iterable[str]) -> Table:
    """Limits of the maker's manual, several to a line and all of them blank.

    ends: what they are called.
    """
    columns = (
        Column("Figure", 3.0),
        Column("Manual page", 1.1),
        *(Column(end, 1.3) for end in ends),
        Column("Entered by", 1.1),
        Column("Checked by", 1.1),
    )
    return Table.begun(heading, columns, ((row,) for row in rows), FROM_MANUAL)


def checks(heading: str, rows: Iterable[str], say: str = "") -> Table:
    """What must be so, with room for what was found."""
    columns = (
        Column("Check", 3.4),
        Column("As it must be", 0.9, tick=True),
        Column("Not so", 0.8, tick=True),
        Column("What was found", 2.4),
        Column("Initials", 0.9),
    )
    return Table.begun(heading, columns, ((row,) for row in rows), say)


def steps(heading: str, operations: Iterable[Operation], say: str = "") -> Table:
    """Steps by the letters, so that the sheet gives no order away."""
    columns = (
        Column("Your number", 0.9),
        Column("Step", 4.6),
        Column("Done", 0.7, tick=True),
        Column("By", 1.0),
        Column("Time", 0.9),
    )
    rows = [
        ("", with_notes(one.name, one.orientation, one.caution))
        for one in sorted(operations, key=lambda one: one.name)
    ]
    return Table.begun(heading, columns, rows, say)


def blank(heading: str, columns: Iterable[tuple[str, float]], rows: int, say: str = "") -> Table:
    """An empty table."""
    return Table.begun(heading, (Column(*column) for column in columns), (), say, empty=rows)


def with_notes(text: str, *notes: str | None) -> str:
    """A cell with small print below it."""
    return "\n".join([text, *(note for note in notes if note)])


def operations_of(unit: Unit, ids: Iterable[str | None]) -> tuple[Operation, ...]:
    """The unit's operations with these ids, each once; ids that are not there are passed over."""
    wanted = {id for id in ids if id}
    return tuple(one for one in unit.operations if one.id in wanted)


def tool_name(unit: Unit, id: str | None) -> str:
    """What the workshop calls a tool; empty for none."""
    return next((tool.name for tool in unit.tools if tool.id == id), "")
