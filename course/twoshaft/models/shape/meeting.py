"""Solids that lie in each other in space, where no section through them can show it.

A developed section sets axes side by side that lie elsewhere in space; what lies on different axes
of it may meet all the same. Judged is what is round: solids about an axis, and rods, pins and
bolts; against the metal of a case, what lies on the axes of its rooms and bosses. What lies on one
axis, and a rod beside the next one, is left to the section; teeth of meshing gears pass each other
above their pitch lines; rods have made their holes in cases.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations, pairwise
from typing import Any

from twoshaft.models.shape.axes import axis_places
from twoshaft.models.shape.convex import meet
from twoshaft.models.shape.frames import frames
from twoshaft.models.shape.pieces import PRESSED_MM
from twoshaft.models.shape.placed import (
    Reach,
    convex_bodies,
    rod_reach,
    round_bodies,
    teeth_between,
)
from twoshaft.models.shape.schematic import shapes_of
from twoshaft.models.shape.section import Drawn, section_of
from twoshaft.models.shape.solids import bodies_of
from twoshaft.units.kept import kept
from twoshaft.units.sections.geartrain import Mesh
from twoshaft.units.sections.shapes import GearSolid, Rod, Shell
from twoshaft.units.unit import Unit

_STRAIGHT_MM = 0.01  # by so much a folded plane may be longer than a straight one


@dataclass(frozen=True)
class MetInSpace:
    """Two solids of different parts and axes that lie in each other.

    Attributes
    ----------
    one, other : Drawn
    z_mm : float
        A place along the shafts where they do [mm].

    Examples
    --------
    >>> met_in_space(unit)
    ()
    """

    one: Drawn
    other: Drawn
    z_mm: float


@dataclass(frozen=True)
class Along:
    """What is round about an axis along the shafts.

    Attributes
    ----------
    at : tuple of float
        x and y of its axis, seen from the rear [mm].
    reach : tuple of (z0, z1, inner, outer)
        Its inner and outer radius between two places along it [mm].

    Examples
    --------
    >>> Along((0.0, 0.0), ((0.0, 50.0, 0.0, 20.0),)).at
    (0.0, 0.0)
    """

    at: tuple[float, float]
    reach: tuple[Reach, ...]


@kept()
def met_in_space(unit: Unit) -> tuple[MetInSpace, ...]:
    """Every pair of round solids and rods that lie in each other in space.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of MetInSpace
        Of two solids the later one of the file is the other; a case comes first.

    Examples
    --------
    >>> met_in_space(unit)
    ()
    """
    rounds = round_bodies(unit)
    order = {solid.id: k for k, solid in enumerate(shapes_of(unit).solids)}
    drawn = sorted(
        (d for view in section_of(unit).views for d in view.drawn
         if d.solid.id in rounds or isinstance(d.solid, Rod)),
        key=lambda d: order[d.solid.id],
    )  # fmt: skip
    found = []
    for one, other in combinations(drawn, 2):
        if one.solid.part != other.solid.part and not _in_one_plane(unit, one, other):
            at = _met(unit, one, other)
            if at is not None:
                found.append(MetInSpace(one, other, round(at, 1)))
    return (*found, *_in_cases(unit, drawn))


def _in_cases(unit: Unit, drawn: Sequence[Drawn]) -> Iterator[MetInSpace]:
    """Round solids that lie in the metal of a case."""
    along, hollow = _along_shafts(unit), _hollow(unit)
    for view in section_of(unit).views:
        for case in view.drawn:
            if not isinstance(case.solid, Shell):
                continue
            known = {room.axis for room in case.solid.rooms}
            known |= {boss.axis for boss in case.solid.bosses}
            metal = _metal(unit, case.solid.id)
            for other in drawn:
                solid = other.solid
                if (
                    solid.axis in known
                    and solid.part not in hollow
                    and not isinstance(solid, Rod)
                    and solid.id in along
                ):
                    at = _in_metal(metal, along[solid.id])
                    if at is not None:
                        yield MetInSpace(case, other, round(at, 1))


def _metal(unit: Unit, case: str) -> list[tuple[float, float, Any]]:
    """Slices of a case: front and rear end, and the area."""
    from shapely import Polygon, prepare

    slices = []
    for body in bodies_of(unit)[case]:
        area = Polygon(body["outline"], body["holes"])
        prepare(area)
        slices.append((*body["z"], area))
    return slices


def _in_metal(metal: list[tuple[float, float, Any]], one: Along) -> float | None:
    from shapely import Point

    skin = 2 * PRESSED_MM  # its own and that of the case
    for z0, z1, inner, outer in one.reach:
        if outer - inner <= 2 * skin:
            continue
        ring: Any = Point(one.at).buffer(outer - skin)
        if inner:
            ring = ring.difference(Point(one.at).buffer(inner + skin))
        for w0, w1, area in metal:
            low, high = max(z0, w0), min(z1, w1)
            if high - low > 2 * PRESSED_MM and area.intersects(ring):
                return (low + high) / 2
    return None


def _in_one_plane(unit: Unit, one: Drawn, other: Drawn) -> bool:
    """Whether their section shows how two solids lie.

    It does on one axis, and between a rod and what lies on another axis as long as the plane is
    not folded between the two.
    """
    a, b = one.solid, other.solid
    if a.axis == b.axis:
        return True
    if not isinstance(a, Rod) and not isinstance(b, Rod):
        return False
    axes = next(view.axes for view in shapes_of(unit).views if a.axis in view.axes)
    if b.axis not in axes:
        return False
    low, high = sorted((axes.index(a.axis), axes.index(b.axis)))
    places = axis_places(unit, shapes_of(unit))
    along = [places[axis] for axis in axes[low : high + 1]]
    folds = sum(math.dist(*step) for step in pairwise(along)) - math.dist(along[0], along[-1])
    return folds < _STRAIGHT_MM


def _met(unit: Unit, one: Drawn, other: Drawn) -> float | None:
    """Where along the shafts two solids meet."""
    pair, hollow = (one, other), _hollow(unit)
    if any(isinstance(a.solid, Rod) and b.solid.part in hollow for a, b in (pair, pair[::-1])):
        return None
    along = _along_shafts(unit)
    if one.solid.id in along and other.solid.id in along:
        less = teeth_between(unit, one, other) if _mesh(unit, one, other) else 0.0
        return met_along(along[one.solid.id], along[other.solid.id], less)
    convex = convex_bodies(unit)
    found = (meet(a, b) for a in convex[one.solid.id] for b in convex[other.solid.id])
    return next((float(common[:, 2].mean()) for common in found if common is not None), None)


def met_along(one: Along, other: Along, less_mm: float = 0.0) -> float | None:
    """Where along the shafts two solids meet that are round about axes along them.

    Parameters
    ----------
    one, other : Along
    less_mm : float, optional
        What they may run into each other beside a press fit, as teeth do.

    Returns
    -------
    float or None
        z of the middle of the first place where they do [mm]; None where one passes the other, or
        lies in its bore.

    Examples
    --------
    >>> shaft, rail = Along((0, 0), ((0, 50, 0, 20),)), Along((25, 0), ((10, 30, 0, 7),))
    >>> met_along(shaft, rail)
    20.0
    """
    apart = math.dist(one.at, other.at)
    skin = PRESSED_MM
    for z0, z1, inner, outer in one.reach:
        for w0, w1, bore, far in other.reach:
            low, high = max(z0, w0), min(z1, w1)
            if (
                high - low > 2 * skin
                and min(outer - inner, far - bore) > 2 * skin
                and apart < outer + far - 2 * skin - less_mm
                and apart + outer - skin > bore + (skin if bore else 0)
                and apart + far - skin > inner + (skin if inner else 0)
            ):
                return (low + high) / 2
    return None


@kept()
def _along_shafts(unit: Unit) -> dict[str, Along]:
    found = {id: Along(b.at, b.reach) for id, b in round_bodies(unit).items() if b.along}
    frame = frames(unit)
    for solid in shapes_of(unit).solids:
        if isinstance(solid, Rod) and solid.form != "ball":
            (x, y, _), along, across = frame[solid.axis]
            off = solid.from_mm[1]
            if along == (0.0, 0.0, 1.0) and off == solid.to_mm[1]:
                at = x + off * across[0], y + off * across[1]
                found[solid.id] = Along(at, tuple(rod_reach(solid)))
    return found


@kept()
def _hollow(unit: Unit) -> frozenset[str | None]:
    return frozenset(s.part for s in shapes_of(unit).solids if isinstance(s, Shell))


def _mesh(unit: Unit, one: Drawn, other: Drawn) -> bool:
    """Whether two gears mesh; an idler that two meshes share has the solid of one of them."""
    if not isinstance(one.solid, GearSolid) or not isinstance(other.solid, GearSolid):
        return False
    train, shapes = unit.gear_train_if_any, shapes_of(unit)
    told = {(s.mesh, s.side) for s in shapes.solids if isinstance(s, GearSolid)}

    def stands_for(gear: GearSolid, mesh: Mesh, side: str) -> bool:
        if (mesh.id, side) in told:
            return (gear.mesh, gear.side) == (mesh.id, side)
        return shapes.axis_by_id(gear.axis).shaft == getattr(mesh, side).shaft

    return train is not None and any(
        stands_for(a, mesh, "driving") and stands_for(b, mesh, "driven")
        for mesh in train.meshes
        for a, b in ((one.solid, other.solid), (other.solid, one.solid))
    )
