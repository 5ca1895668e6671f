"""Blocks about the shift mechanism: the proof by hand, which follows from the unit's gate."""

from __future__ import annotations

from itertools import combinations

from twoshaft.units import Unit
from twoshaft.units.sections.order import Operation
from twoshaft.units.sections.shift import Rail, Shift
from twoshaft_grader.bench_sheets.content import Block, Column, Table
from twoshaft_grader.bench_sheets.forms import blank, operations_of

MUST, MUST_NOT = "must be possible", "must not be possible"


def proving(unit: Unit) -> tuple[Operation, ...]:
    """Steps of the build that prove the mechanism."""
    kinds = {"gears-go-in", "gears-held", "two-at-once", "lockout"}
    every = unit.faults.checks if unit.faults_if_any else ()
    return operations_of(unit, (id for c in every if c.kind in kinds for id in c.operations))


def movements(unit: Unit) -> list[tuple[str, str]]:
    """Movements of the proof by hand, and whether they must be possible; none without a shift."""
    if unit.shift_if_any is None:
        return []
    shift = unit.shift
    gears = gears_of(shift)
    rows = [(f"From neutral into {gear}, and back", MUST) for gear in gears]
    rows += [(f"{gear[:1].upper()}{gear[1:]} stays in when you let go", MUST) for gear in gears]
    for block in shift.must_block:
        first, then = block.earlier, block.later
        rows += [
            (f"From {first} straight into {then}, in the gate plane all the way", MUST_NOT),
            (f"From {first} to neutral, out of the gate plane, back, then {then}", MUST),
        ]
    rows += [
        (f"With {_either(one)} in: {_either(other)} as well", MUST_NOT)
        for one, other in combinations(shift.rails, 2)
    ]
    return rows


def gears_of(shift: Shift) -> list[str]:
    """Gears of all rails, in the order of the gates."""
    place = {gate.id: gate.at_mm for gate in shift.gates}
    rails = sorted(shift.rails, key=lambda rail: place[rail.gate])
    return [gear for rail in rails for gear in (rail.high, rail.low) if gear]


def _either(rail: Rail) -> str:
    return " or ".join(gear for gear in (rail.high, rail.low) if gear)


def proof(unit: Unit) -> Table:
    """The proof by hand."""
    columns = (
        Column("Movement", 3.4),
        Column("On the course's unit" if unit.identity.invented else "Asked for", 1.5),
        Column("By your manual", 1.3),
        Column("Went", 0.6, tick=True),
        Column("Was stopped", 0.9, tick=True),
        Column("What you felt", 1.8),
        Column("Initials", 0.8),
    )
    say = (
        "Turn a shaft a little while you try. A lockout is proved by both halves: stopped the "
        "direct way, and free the long way round. Fingers out of forks and gears."
    )
    return Table.begun("Proof by hand", columns, movements(unit), say, empty=12)


def small_parts(unit: Unit) -> tuple[Block, ...]:
    """What cannot be seen or felt any more once the mechanism is closed."""
    names, rails = [], []
    if unit.shift_if_any:
        names = [pin.name for pin in unit.shift.interlocks]
        rails = [body.name for body in unit.shift.passive if _is_rail(unit.shift, body.id)]
    columns = (
        Column("Part", 3.0),
        Column("There", 0.7, tick=True),
        Column("Not worn", 0.7, tick=True),
        Column("Moves freely, oiled", 0.8, tick=True),
        Column("Remark", 2.2),
        Column("Seen by", 1.0),
    )
    names += [f"Ball and spring of the {name[:1].lower()}{name[1:]}" for name in rails]
    return (
        Table.begun(
            "Seen while it could be seen",
            columns,
            ((name,) for name in names),
            "No test by hand shows a part that is left out but not yet missed. Have a second "
            "person look.",
            empty=8,
        ),
        blank(
            "If a movement is not as it must be",
            [
                ("Movement", 2.2),
                ("What it did", 2.2),
                ("What could be built wrongly", 2.6),
                ("Found and repaired", 2.2),
            ],
            4,
        ),
    )


def _is_rail(shift: Shift, body: str) -> bool:
    return any(rail.body == body for rail in shift.rails)
