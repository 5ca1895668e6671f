"""A case that is split along its shafts: its halves, and which way leads out of the joint."""

from __future__ import annotations

import math
from collections.abc import Iterable

from twoshaft.models.shape.schematic import shapes_of
from twoshaft.models.shape.section import Drawn
from twoshaft.units.sections.shapes import Half, Rod, Shell
from twoshaft.units.unit import Unit

Vector = tuple[float, float]


def halves_of(unit: Unit) -> dict[str, Half]:
    """The halves of a case that is split along its shafts, by the part.

    Parameters
    ----------
    unit : Unit

    Examples
    --------
    >>> halves_of(unit)
    {}
    """
    return {
        solid.part: solid.half
        for solid in shapes_of(unit).solids
        if isinstance(solid, Shell) and solid.half is not None and solid.part is not None
    }


def joint(unit: Unit) -> Half | None:
    """The half of a case split along its shafts that is built up; None where none is split.

    Parameters
    ----------
    unit : Unit

    Examples
    --------
    >>> joint(unit) is None
    True
    """
    halves = halves_of(unit)
    there = [part.id for part in unit.parts if part.in_place and part.id in halves]
    return next((halves[part] for part in (*there, *halves)), None)


def out_of_joint(half: Half) -> Vector:
    """Direction square to a joint face, to the side above it: x and y, seen from the rear.

    Examples
    --------
    >>> from twoshaft.units.sections.shapes import Half
    >>> out_of_joint(Half(axis="input", side="below"))
    (-0.0, 1.0)
    """
    turn = math.radians(half.angle_deg)
    return -math.sin(turn), math.cos(turn)


def open_side(unit: Unit, solids: Iterable[Drawn]) -> int:
    """Which way solids leave a case that is split along its shafts: -1 up, 1 down, 0 either.

    Parameters
    ----------
    unit : Unit
    solids : iterable of Drawn
        What leaves as one; bolts and plugs whose heads all lie below leave downwards.

    Examples
    --------
    >>> open_side(unit, [])
    0
    """
    half, heads = joint(unit), [_head_side(one) for one in solids]
    if half is None:
        return 0
    if heads and min(heads) > 0:
        return 1
    return -1 if half.side == "below" else 1


def _head_side(one: Drawn) -> float:
    """Where the head of a bolt or plug lies: above zero below it; zero for anything else."""
    solid = one.solid
    if isinstance(solid, Rod) and solid.form in ("bolt", "plug"):
        return solid.from_mm[1] - solid.to_mm[1]
    return 0.0
