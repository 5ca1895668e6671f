"""Ways square to the joint face of a case that is split along its shafts.

Into an open half parts are lowered from its open side, and judged in space. Of two that are round
along the shafts, one is in the way if it lies further out and less far aside than both reach; of
all others, if what a look along the way shows of both has a place in common, and it lies further
out there. Once both halves are there, nothing gets into their rooms any more.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator

import numpy as np

from twoshaft.models.shape.convex import further_out, meet
from twoshaft.models.shape.halves import Vector, halves_of, joint, open_side, out_of_joint
from twoshaft.models.shape.pieces import PRESSED_MM
from twoshaft.models.shape.placed import RoundBody, convex_bodies, round_bodies, teeth_between
from twoshaft.models.shape.section import Drawn, section_of
from twoshaft.units.kept import kept
from twoshaft.units.sections.shapes import Half, Rod, Shell, SpringSolid
from twoshaft.units.unit import Unit

_SAME_MM = 1e-6


def lowered_onto(
    unit: Unit, moving: str, still: Collection[str], passes_mm: float = 0.0
) -> Iterator[Drawn]:
    """What stands in the way of a solid that is lowered into an open half of a case.

    Parameters
    ----------
    unit : Unit
    moving : str
        The solid.
    still : collection of str
        The parts that are there.
    passes_mm : float, optional
        By how much it gives way to what it passes, as a fork that is tilted over its sleeve.

    Returns
    -------
    iterator of Drawn
        What it meets. What a rod or spring lies in at rest has a hole for it, and is not in its
        way, nor is it in the way of that; bolts and plugs have theirs in the walls of a case.

    Examples
    --------
    >>> list(lowered_onto(unit, "input-third", ["clutch-housing", "output-shaft"]))
    []
    """
    there = {part: half for part, half in halves_of(unit).items() if part in still}
    one = next((d for view in section_of(unit).views for d in view.drawn
                if d.solid.id == moving), None)  # fmt: skip
    if one is None or not there:
        return
    if len({half.side for half in there.values()}) > 1:
        closed = tuple(_closed_over(unit, one, there))
        if closed:
            yield from closed
            return
    half = next(iter(there.values())) if len(there) == 1 else joint(unit)
    assert half is not None  # there is one
    drawn = [other for view in section_of(unit).views for other in view.drawn
             if other.solid.part in still]  # fmt: skip
    holed = {other.solid.part for other in drawn if _in_a_hole(unit, one, other)}
    if isinstance(one.solid, Rod) and one.solid.form in ("bolt", "plug"):
        holed |= halves_of(unit).keys()
    for other in drawn:
        if other.solid.part not in holed and _over(unit, one, other, half, passes_mm):
            yield other


def _along(unit: Unit) -> dict[str, RoundBody]:
    """What is round about an axis along the shafts."""
    return {id: body for id, body in round_bodies(unit).items() if body.along}


def _closed_over(unit: Unit, one: Drawn, there: dict[str, Half]) -> Iterator[Drawn]:
    """The half that was fitted last, where the solid lies inside the walls."""
    z0, _, z1, _ = one.bounds
    last = [part.id for part in unit.parts if part.id in there and not part.in_place][-1:]
    for view in section_of(unit).views:
        axis = dict(view.axes).get(one.solid.axis, 0.0)
        reach = max(axis - one.bounds[1], one.bounds[3] - axis)
        for shell in view.drawn:
            if isinstance(shell.solid, Shell) and shell.solid.part in last:
                rooms = [room for room in shell.solid.rooms if room.axis == one.solid.axis]
                low, high = shell.solid.z_mm
                loose = one.solid.id not in round_bodies(unit)
                within = not loose or reach <= max((r.radius_mm for r in rooms), default=0.0)
                if rooms and within and low <= z0 and z1 <= high:
                    yield shell


def _in_a_hole(unit: Unit, one: Drawn, other: Drawn) -> bool:
    """Whether one of two lies in the other, and is of those that make their holes."""
    if not any(isinstance(d.solid, Rod | SpringSolid) for d in (one, other)):
        return False
    return _meet_at_rest(unit, *sorted((one.solid.id, other.solid.id)))


@kept()
def _meet_at_rest(unit: Unit, one: str, other: str) -> bool:
    bodies = convex_bodies(unit)
    return any(meet(a.filled, b.filled) is not None for a in bodies[one] for b in bodies[other])


def _over(unit: Unit, one: Drawn, other: Drawn, half: Half, passes_mm: float) -> bool:
    """Whether another solid lies over one on its way down, or under one that comes from below."""
    sign = 1.0 if half.side == "below" else -1.0
    if open_side(unit, [one]) != open_side(unit, []):
        sign = -sign  # a bolt or plug from the other side
    up = out_of_joint(half)
    out = sign * up[0], sign * up[1]
    along = _along(unit)
    if one.solid.id in along and other.solid.id in along:
        return _over_round(unit, along[one.solid.id], along[other.solid.id], out, passes_mm)
    return _over_any(unit, one.solid.id, other.solid.id, out, passes_mm)


def _over_round(
    unit: Unit, one: RoundBody, other: RoundBody, out: Vector, passes_mm: float
) -> bool:
    dx, dy = other.at[0] - one.at[0], other.at[1] - one.at[1]
    further, aside = dx * out[0] + dy * out[1], abs(dx * out[1] - dy * out[0])
    if further < _SAME_MM:
        return False
    less = teeth_between(unit, one.drawn, other.drawn)
    skin = 2 * PRESSED_MM + passes_mm
    return any(
        min(z1, w1) - max(z0, w0) > skin and aside < r + s - less - skin
        for z0, z1, _, r in one.reach
        for w0, w1, _, s in other.reach
    )


@kept()
def _over_any(unit: Unit, one: str, other: str, out: Vector, passes_mm: float) -> bool:
    bodies, way = convex_bodies(unit), np.array([*out, 0.0])
    for a in bodies[one]:
        least = (a.corners @ way).min()
        for b in bodies[other]:
            beside = a.low[2] >= b.high[2] or b.low[2] >= a.high[2]
            if beside or (b.corners @ way).max() <= least:
                continue
            if further_out(a, b, out, passes_mm):
                return True
    return False
