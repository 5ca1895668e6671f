"""Blocks about the order of work: plan, holds, clocks, parts to renew, marks, the build record."""

from __future__ import annotations

from collections.abc import Iterable

from twoshaft.units import Unit
from twoshaft.units.sections.order import Operation
from twoshaft_grader.bench_sheets.content import Column, Table
from twoshaft_grader.bench_sheets.forms import with_notes

_BY_LETTERS = (
    "The steps stand by the letters, not in an order. Strike out what your unit has not, and add "
    "what it has."
)
_EXTRA_ROWS = 2


def plan(unit: Unit) -> tuple[Table, ...]:
    """The steps of every stage, to be numbered before anything is touched."""
    columns = (Column("Your number", 0.8), Column("Step", 4.2), Column("Waits for, and why", 3.0))
    return tuple(
        Table.begun(
            f"Your plan: {name}",
            columns,
            (("", step) for step, _ in rows),
            _BY_LETTERS if first else "",
            more=_EXTRA_ROWS,
        )
        for first, name, rows in _stages(unit)
    )


def build_record(unit: Unit) -> tuple[Table, ...]:
    """Every step, with who did it and when; holds and clocks are noted on the step."""
    columns = (
        Column("Your number", 0.8),
        Column("Step", 4.4),
        Column("Done", 0.6, tick=True),
        Column("By", 0.8),
        Column("Date, time", 1.2),
        Column("Checked", 0.9),
    )
    return tuple(
        Table.begun(
            f"Build record: {name}",
            columns,
            (("", with_notes(step, *notes)) for step, notes in rows),
            f"{_BY_LETTERS} Tick a step when it is done, not before." if first else "",
            more=_EXTRA_ROWS,
        )
        for first, name, rows in _stages(unit)
    )


def _stages(unit: Unit):
    """Whether it is the first, name, and steps with their notes by the letters, of each stage."""
    groups = {id: group for group in unit.together for id in group.operations}
    for number, stage in enumerate(unit.stages):
        rows: dict[str, tuple[str, ...]] = {}
        for id in unit.operations_of[stage.id]:
            operation = unit.operation_by_id[id]
            name = groups[id].name if id in groups else operation.name
            rows[name] = tuple(dict.fromkeys((*rows.get(name, ()), *_notes(unit, operation))))
        if rows:
            yield number == 0, stage.name, sorted(rows.items())


def _notes(unit: Unit, operation: Operation) -> tuple[str, ...]:
    """Orientation, caution, holds and clocks of a step."""
    notes = [operation.orientation] if operation.orientation else []
    notes += [f"Mind: {operation.caution}"] if operation.caution else []
    for hold in unit.holds:
        for ids, word in (
            (hold.given_by, "Begins"),
            (hold.needed_by, "Only while"),
            (hold.ended_by, "Ends"),
        ):
            notes += [f"{word}: {_small(hold.name)}."] if operation.id in ids else []
    for clock in unit.clocks:
        notes += [f"Clock starts: {_small(clock.name)}."] if clock.starts == operation.id else []
        notes += [f"Clock stops: {_small(clock.name)}."] if clock.ends == operation.id else []
    for wait in unit.waits:
        notes += [f"Wait before it: {_small(wait.name)}."] if wait.ends == operation.id else []
    return tuple(notes)


def _small(name: str) -> str:
    return name[:1].lower() + name[1:]


def holds(unit: Unit) -> tuple[Table, ...]:
    """Conditions that have to stand while something is done."""
    columns = (
        Column("Holds", 3.6),
        Column("On at", 0.9),
        Column("Off at", 0.9),
        Column("Tried before work went on", 1.2, tick=True),
        Column("Initials", 0.9),
    )
    rows = [(with_notes(one.name, one.reason),) for one in unit.holds]
    return (Table.begun("What has to hold meanwhile", columns, rows),) if rows else ()


def clocks(unit: Unit, ids: Iterable[str] | None = None) -> tuple[Table, ...]:
    """Clocks that run: the time allowed comes from the sheet or the manual."""
    wanted = set(ids) if ids is not None else None
    chosen = [one for one in unit.clocks if wanted is None or {one.starts, one.ends} & wanted]
    columns = (
        Column("Clock", 3.4),
        Column("Time allowed", 1.1),
        Column("Page or data sheet", 1.2),
        Column("Started at", 0.9),
        Column("Done at", 0.9),
        Column("In time", 0.7, tick=True),
    )
    rows = [(with_notes(one.name, one.reason),) for one in chosen]
    say = "Lay out everything before a clock starts. Out of time is no shame: stop and begin anew."
    return (Table.begun("Clocks", columns, rows, say),) if rows else ()


def renewed(unit: Unit, operations: Iterable[Operation] | None = None) -> tuple[Table, ...]:
    """Single-use parts, ticked when the new one is in and the old one is out of reach."""
    wanted = None if operations is None else {id for one in operations for id in one.parts}
    columns = (
        Column("Used once, always renewed", 3.2),
        Column("New one at hand", 0.9, tick=True),
        Column("Part number", 1.6),
        Column("Fitted new", 0.8, tick=True),
        Column("Old one cut up or thrown away", 1.1, tick=True),
        Column("Initials", 0.8),
    )
    rows = [
        (part.name,)
        for part in unit.parts
        if part.single_use and (wanted is None or part.id in wanted)
    ]
    return (Table.begun("Parts renewed", columns, rows),) if rows else ()


def marks(unit: Unit, operations: Iterable[Operation] | None = None) -> tuple[Table, ...]:
    """Which way round parts go in: looked at before they are out of sight."""
    wanted = None if operations is None else {id for one in operations for id in one.parts}
    columns = (
        Column("Part", 2.4),
        Column("Mark or side on the course's unit", 2.6),
        Column("On your unit, by the manual", 2.4),
        Column("Seen so", 0.7, tick=True),
        Column("Initials", 0.8),
    )
    if not unit.identity.invented:
        columns = (columns[0], Column("Mark or side", 2.6), *columns[2:])
    rows = [
        (part.name, part.orientation_mark)
        for part in unit.parts
        if part.orientation_mark and (wanted is None or part.id in wanted)
    ]
    say = "Look before the part is covered; sign for what you saw, not for what you think."
    return (Table.begun("Which way round", columns, rows, say),) if rows else ()


def consumables(unit: Unit) -> tuple[Table, ...]:
    """What is used up: product, batch, date."""
    columns = (
        Column("Consumable", 2.2),
        Column("Product and batch", 2.4),
        Column("Use by", 1.0),
        Column("Safety data sheet read", 1.0, tick=True),
        Column("Right for this unit, manual page", 1.6),
        Column("Initials", 0.8),
    )
    rows = [(one.name,) for one in unit.consumables]
    return (Table.begun("What is used up", columns, rows),) if rows else ()
