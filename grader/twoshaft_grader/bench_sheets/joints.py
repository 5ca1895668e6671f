"""Blocks about threaded joints."""

from __future__ import annotations

from twoshaft.units import Unit
from twoshaft.units.sections.fasteners import FastenerGroup
from twoshaft.units.sections.order import Operation
from twoshaft_grader.bench_sheets.content import Column, Space, Table
from twoshaft_grader.bench_sheets.forms import figures, operations_of

_SEVERAL = 3  # from here on a pattern matters


def groups_of(unit: Unit) -> tuple[FastenerGroup, ...]:
    """The unit's groups of fasteners; none where it has no such section."""
    return unit.fasteners.groups if unit.fasteners else ()


def tightening(unit: Unit) -> tuple[Operation, ...]:
    """The steps that tighten something."""
    return operations_of(unit, (id for group in groups_of(unit) for id in group.operations))


def torques(unit: Unit) -> Table:
    """Every joint with its torque left blank."""
    names = [group.name for group in groups_of(unit)] or [""] * 8
    return figures("Torques", names)


def threads(unit: Unit) -> Table:
    """The state of every thread before its bolt goes in."""
    columns = (
        Column("Joint", 2.6),
        Column("Dry, oiled, locker or sealant, by the manual", 2.2),
        Column("Metal of the thread", 1.1),
        Column("Thread clean and whole", 0.9, tick=True),
        Column("Blind hole dry to the bottom", 0.9, tick=True),
        Column("All started by hand", 0.9, tick=True),
        Column("Initials", 0.8),
    )
    return Table.begun(
        "Threads made ready",
        columns,
        [(group.name,) for group in groups_of(unit)],
        "Where the hole is open at its end, strike the box of the blind hole out. No compressed "
        "air in a hole: soak the oil up.",
        empty=8,
    )


def wrenches() -> Table:
    """The wrench, its setting and what an adapter does to it, for every joint that needs one."""
    columns = (
        Column("Joint", 2.2),
        Column("Wrench, its number", 1.6),
        Column("In its scale", 0.8, tick=True),
        Column("Adapter: reach and angle", 1.6),
        Column("Setting worked out", 1.5),
        Column("Worked out again by", 1.2),
        Column("Backed off after", 0.8, tick=True),
    )
    return Table.begun("Wrench and setting", columns, (), empty=4)


def rounds(unit: Unit) -> Table:
    """Joints of several bolts, pulled in rounds."""
    columns = (
        Column("Joint", 2.8),
        Column("Dowels and all that belongs under it in place", 1.3, tick=True),
        Column("First round, by", 1.0),
        Column("Second round, by", 1.0),
        Column("Third round, by", 1.0),
        Column("Repeated until none turns", 1.2, tick=True),
    )
    rows = [(group.name,) for group in groups_of(unit) if group.count >= _SEVERAL]
    say = "Write the setting of each round beside your initials, as the manual gives it."
    return Table.begun("Tightened in rounds", columns, rows, say, empty=4)


def pattern() -> Space:
    """Room for the pattern."""
    return Space(
        "Your pattern",
        "Draw the face with its bolts and number them in the order in which you will pull them. "
        "Have it looked at before the first pull.",
        85,
    )


def shaft_nuts(unit: Unit) -> Table:
    """Nuts that are tightened while the shafts are locked, by the unit's holds and staked nuts."""
    locked = {id for hold in unit.holds for id in hold.needed_by}
    staked = {nut.fastener for nut in unit.fits.staked_nuts} if unit.fits else set()
    rows = [
        (group.name,)
        for group in groups_of(unit)
        if group.id in staked or (group.count == 1 and locked & set(group.operations))
    ]
    columns = (
        Column("Nut", 2.2),
        Column("New", 0.6, tick=True),
        Column("Tightens: left or right", 1.1),
        Column("Shafts locked by", 1.5),
        Column("Lock tried by hand", 0.8, tick=True),
        Column("Tightened by", 1.1),
        Column("Staked into the groove", 0.9, tick=True),
        Column("Checked by", 1.0),
    )
    say = (
        "Two gears lock the shafts. Try the lock by hand before anybody pulls; stand so that a "
        "slip costs nothing."
    )
    return Table.begun("Shaft nuts", columns, rows, say, empty=2)
