"""Blocks about threaded joints."""

from __future__ import annotations

from twoshaft.units import Unit
from twoshaft.units.sections.fasteners import FastenerGroup
from twoshaft.units.sections.order import Operation
from twoshaft_grader.bench_sheets.content import Column, Space, Table
from twoshaft_grader.bench_sheets.forms import limits, operations_of

_SEVERAL = 3  # from here on a pattern matters


def groups_of(unit: Unit) -> tuple[FastenerGroup, ...]:
    """The unit's groups of fasteners; none where it has no such section."""
    return unit.fasteners.groups if unit.fasteners_if_any else ()


def tightening(unit: Unit) -> tuple[Operation, ...]:
    """The steps that tighten something."""
    return operations_of(unit, (id for group in groups_of(unit) for id in group.operations))


def torques(unit: Unit) -> Table:
    """Every joint with its torque left blank."""
    names = [group.name for group in groups_of(unit)] or [""] * 8
    return limits("Torques", names, ("Least", "Most"))


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
        Column("Joint", 2.0),
        Column("Wrench, its number", 1.3),
        Column("May be off by", 0.9),
        Column("In its scale", 0.7, tick=True),
        Column("Drive to mid grip", 1.1),
        Column("Adapter: reach and angle", 1.5),
        Column("Setting worked out", 1.2),
        Column("Again by", 0.9),
        Column("Backed off after", 0.9, tick=True),
    )
    return Table.begun("Wrench and setting", columns, (), empty=4)


def bolt_and_hole() -> Table:
    """What is read of a bolt, its thread and its hole, as the job sheet asks for it."""
    columns = (
        Column("Joint", 2.0),
        Column("Thread, by the pitch gauge", 1.3),
        Column("Class on the head", 0.9),
        Column("Thread that meets", 1.0),
        Column("Good thread in the hole", 1.0),
        Column("Full depth of the hole", 1.0),
        Column("Tip in it, head down", 1.0),
        Column("Liquid drawn out", 0.9),
        Column("Read by", 0.9),
    )
    say = (
        "For the job sheet: a bolt laid beside its hole, a depth gauge, a dipped rod. Depths from "
        "the face that the head sits on."
    )
    return Table.begun("Bolt and hole, measured", columns, (), say, empty=4)


def stakes(unit: Unit) -> Table:
    """The tab of each staked nut, as the job sheet asks for it."""
    columns = (
        Column("Nut", 2.0),
        Column("Axis to mouth of the slot", 1.2),
        Column("Width of the slot", 1.1),
        Column("Length of the tab", 1.1),
        Column("Depth of the tab", 1.1),
        Column("Whole under the glass", 0.9, tick=True),
        Column("Cracked: new nut", 0.9, tick=True),
        Column("Read by", 0.9),
    )
    rows = [(nut.name,) for nut in (unit.fits.staked_nuts if unit.fits_if_any else ())]
    return Table.begun("Stakes, measured", columns, rows, empty=2)


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
    staked = {nut.fastener for nut in unit.fits.staked_nuts} if unit.fits_if_any else set()
    rows = [
        (group.name,)
        for group in groups_of(unit)
        if group.id in staked or (group.count == 1 and locked & set(group.operations))
    ]
    columns = (
        Column("Nut", 2.0),
        Column("New", 0.6, tick=True),
        Column("Thread, as marked", 1.1),
        Column("Tightens: left or right", 1.0),
        Column("Shafts locked by", 1.5),
        Column("Lock tried by hand", 0.8, tick=True),
        Column("Tightened by", 1.1),
        Column("Staked into the groove", 0.9, tick=True),
        Column("Checked by", 1.0),
    )
    say = (
        "Two gears lock the shafts. Try the lock by hand before anybody pulls; stand so that a "
        "wrench that slips hurts nobody."
    )
    return Table.begun("Shaft nuts", columns, rows, say, empty=2)
