"""The way of a direct shift: the gates of both gears, and what lies between them."""

from __future__ import annotations

from twoshaft.errors import OutOfRangeError
from twoshaft.units.sections.shift import Gate, MustBlock, Rail, Shift


def rail_of(shift: Shift, gear: str) -> Rail:
    """The rail that a gear is on.

    Examples
    --------
    >>> rail_of(unit.shift, "third").body
    'rail-third-fourth'
    """
    for rail in shift.rails:
        if gear in rail.gears:
            return rail
    gears = ", ".join(g for r in shift.rails for g in (r.high, r.low) if g)
    raise OutOfRangeError("gear", gear, gears, "the unit file")


def gate_of(shift: Shift, gear: str) -> Gate:
    """The gate that a gear lies in.

    Examples
    --------
    >>> gate_of(unit.shift, "reverse").id
    'gate-fifth-reverse'
    """
    rail = rail_of(shift, gear)
    return next(gate for gate in shift.gates if gate.id == rail.gate)


def block_of(shift: Shift, earlier: str, later: str) -> MustBlock:
    """What the unit file says about a direct shift; the plain way where it says nothing.

    Examples
    --------
    >>> block_of(unit.shift, "fifth", "reverse").through
    ()
    """
    for block in shift.must_block:
        if (block.earlier, block.later) == (earlier, later):
            return block
    return MustBlock(earlier=earlier, later=later)


def gates_of(shift: Shift, block: MustBlock) -> tuple[Gate, ...]:
    """The gates that a direct shift keeps among, in the order in which the hand meets them.

    Examples
    --------
    >>> [gate.id for gate in gates_of(unit.shift, block_of(unit.shift, "second", "third"))]
    ['gate-first-second', 'gate-third-fourth']
    """
    first, last = gate_of(shift, block.earlier), gate_of(shift, block.later)
    between = (gate for gate in shift.gates if gate.id in block.through)
    return tuple(dict.fromkeys((first, *between, last)))


def span_mm(shift: Shift, block: MustBlock) -> tuple[float, float]:
    """Travel that the hand does not leave in a direct shift [mm].

    Examples
    --------
    >>> span_mm(unit.shift, block_of(unit.shift, "fifth", "reverse"))
    (7.0, 13.0)
    """
    gates = gates_of(shift, block)
    low = min(gate.at_mm - gate.half_width_mm for gate in gates)
    return low, max(gate.at_mm + gate.half_width_mm for gate in gates)
