"""Ways square to the joint face of a case that is split along its shafts.

Into an open half parts are lowered from its open side; what is round is judged in space: it is
blocked by what lies further out and less far aside than both reach. Once both halves are there,
nothing gets into their rooms any more.
"""

from __future__ import annotations

import math
from collections.abc import Collection, Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise

from twoshaft.models.shape.axes import axis_heights, axis_places
from twoshaft.models.shape.forms import gear_radii
from twoshaft.models.shape.pieces import PRESSED_MM, Role
from twoshaft.models.shape.schematic import shapes_of
from twoshaft.models.shape.section import Drawn, section_of
from twoshaft.units.kept import kept
from twoshaft.units.sections.shapes import GearSolid, Half, Rod, Shell
from twoshaft.units.unit import Unit

_ROUND_KINDS = ("turned", "gear", "bearing", "ring")
_UNSEEN = (Role.BEHIND, Role.LINE, Role.PITCH, Role.COIL)
_SAME_MM = 1e-6

Vector = tuple[float, float]


@dataclass(frozen=True)
class RoundBody:
    """A round solid in space: where its axis lies, and how far it reaches from place to place.

    Attributes
    ----------
    drawn : Drawn
    at : tuple of float
        x and y of its axis, seen from the rear [mm].
    reach : tuple of (z0, z1, radius)
        Its outer radius between two places along the shafts [mm].

    Examples
    --------
    >>> round_bodies(unit)["output-nut"].reach[0]
    (155.0, 157.0, 16.5)
    """

    drawn: Drawn
    at: Vector
    reach: tuple[tuple[float, float, float], ...]


@kept()
def round_bodies(unit: Unit) -> dict[str, RoundBody]:
    """Every round solid of a unit whose axis lies along the shafts, by its id.

    Parameters
    ----------
    unit : Unit

    Examples
    --------
    >>> "clutch-housing" in round_bodies(unit)
    False
    """
    shapes = shapes_of(unit)
    places, heights = axis_places(unit, shapes), axis_heights(unit, shapes)
    return {
        one.solid.id: RoundBody(
            one, places[one.solid.axis], _reach(one, heights[one.solid.axis])
        )
        for view in section_of(unit).views
        for one in view.drawn
        if one.solid.kind in _ROUND_KINDS and not shapes.axis_by_id(one.solid.axis).square
    }  # fmt: skip


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
    halves = _halves(unit)
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


def lowered_onto(unit: Unit, moving: str, still: Collection[str]) -> Iterator[Drawn]:
    """What stands in the way of a round solid that is lowered into an open half of a case.

    Parameters
    ----------
    unit : Unit
    moving : str
        The solid.
    still : collection of str
        The parts that are there.

    Examples
    --------
    >>> list(lowered_onto(unit, "input-third", ["clutch-housing", "output-shaft"]))
    []
    """
    there = {part: half for part, half in _halves(unit).items() if part in still}
    one = round_bodies(unit).get(moving)
    if one is None or not there:
        return
    if len({half.side for half in there.values()}) > 1:
        yield from _closed_over(unit, one, there)
        return
    half = next(iter(there.values()))
    up = out_of_joint(half)
    sign = 1.0 if half.side == "below" else -1.0
    for other in round_bodies(unit).values():
        if other.drawn.solid.part in still and _over(unit, one, other, up, sign):
            yield other.drawn


def _halves(unit: Unit) -> dict[str, Half]:
    """The halves of the case, by the part."""
    return {
        solid.part: solid.half
        for solid in shapes_of(unit).solids
        if isinstance(solid, Shell) and solid.half is not None and solid.part is not None
    }


def _closed_over(unit: Unit, one: RoundBody, there: dict[str, Half]) -> Iterator[Drawn]:
    """The half that was fitted last, where the solid lies inside the walls."""
    z0, z1 = one.reach[0][0], one.reach[-1][1]
    last = [part.id for part in unit.parts if part.id in there and not part.in_place][-1:]
    for view in section_of(unit).views:
        for shell in view.drawn:
            if isinstance(shell.solid, Shell) and shell.solid.part in last:
                axes = {room.axis for room in shell.solid.rooms}
                low, high = shell.solid.z_mm
                if one.drawn.solid.axis in axes and low <= z0 and z1 <= high:
                    yield shell


def _over(unit: Unit, one: RoundBody, other: RoundBody, up: Vector, sign: float) -> bool:
    """Whether another solid lies over one on its way down."""
    dx, dy = other.at[0] - one.at[0], other.at[1] - one.at[1]
    further_out, aside = sign * (dx * up[0] + dy * up[1]), abs(dx * up[1] - dy * up[0])
    if further_out < _SAME_MM:
        return False
    less = _teeth(unit, one.drawn, other.drawn)
    return any(
        min(z1, w1) - max(z0, w0) > 2 * PRESSED_MM and aside < r + s - less - 2 * PRESSED_MM
        for z0, z1, r in one.reach
        for w0, w1, s in other.reach
    )


def _teeth(unit: Unit, one: Drawn, other: Drawn) -> float:
    """By how much the gears of a mesh run into each other: above the pitch line teeth pass."""
    gears = one.solid, other.solid
    if not all(isinstance(gear, GearSolid) for gear in gears):
        return 0.0
    radii = [gear_radii(unit, gear) for gear in gears if isinstance(gear, GearSolid)]
    return sum(tip - pitch for _, pitch, tip in radii)


def _reach(one: Drawn, axis: float) -> tuple[tuple[float, float, float], ...]:
    from shapely import LineString

    area, (_, low, _, high) = one.area, one.bounds
    ends = sorted({round(z, 6) for p in one.pieces if p.role not in _UNSEEN for z, _ in p.outline})
    found = []
    for z0, z1 in pairwise(ends):
        at = (z0 + z1) / 2
        cut = area.intersection(LineString([(at, low - 1), (at, high + 1)]))
        if not cut.is_empty:
            _, y0, _, y1 = cut.bounds
            found.append((z0, z1, round(max(axis - y0, y1 - axis), 6)))
    return tuple(found)
