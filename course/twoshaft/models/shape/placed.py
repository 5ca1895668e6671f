"""Solids where they lie in space: what is round by its reach, the rest as convex bodies.

Their skins are taken in by what a press fit may take, so that what touches does not meet.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from twoshaft.models.shape.axes import axis_heights, axis_places
from twoshaft.models.shape.convex import Convex, Floats, ball, cylinder
from twoshaft.models.shape.forms import gear_radii
from twoshaft.models.shape.frames import frames
from twoshaft.models.shape.pieces import PRESSED_MM, Point, Role
from twoshaft.models.shape.schematic import shapes_of
from twoshaft.models.shape.section import Drawn, section_of
from twoshaft.models.shape.typical import head_height, head_width, slab_thickness
from twoshaft.units.kept import kept
from twoshaft.units.sections.shapes import GearSolid, Rod, Shell, Slab, SpringSolid
from twoshaft.units.unit import Unit

ROUND_KINDS = ("turned", "gear", "bearing", "ring")
"""Solids that are round about their axis."""
Reach = tuple[float, float, float, float]
"""Front and rear end, inner and outer radius [mm]."""
_UNSEEN = (Role.BEHIND, Role.LINE, Role.PITCH, Role.COIL)


@dataclass(frozen=True)
class RoundBody:
    """A round solid in space: where its axis lies, and how far it reaches from place to place.

    Attributes
    ----------
    drawn : Drawn
    at : tuple of float
        x and y of its axis, seen from the rear [mm]; of one square to the shafts, of its middle.
    along : bool
        Its axis lies along the shafts.
    reach : tuple of (z0, z1, inner, outer)
        Its inner and outer radius between two places along its axis [mm].

    Examples
    --------
    >>> round_bodies(unit)["output-nut"].reach[0]
    (155.0, 157.0, 10.0, 16.5)
    """

    drawn: Drawn
    at: tuple[float, float]
    along: bool
    reach: tuple[Reach, ...]


@kept()
def round_bodies(unit: Unit) -> dict[str, RoundBody]:
    """Every round solid of a unit, by its id.

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
            one, places[one.solid.axis], not shapes.axis_by_id(one.solid.axis).square,
            _reach(one, heights[one.solid.axis]),
        )
        for view in section_of(unit).views
        for one in view.drawn
        if one.solid.kind in ROUND_KINDS
    }  # fmt: skip


def teeth_between(unit: Unit, one: Drawn, other: Drawn) -> float:
    """By how much two gears run into each other [mm]: above the pitch line teeth pass.

    Parameters
    ----------
    unit : Unit
    one, other : Drawn
        Zero where one of them is no gear.

    Examples
    --------
    >>> shafts = {one.solid.id: one for one in section_of(unit).views[0].drawn}
    >>> round(teeth_between(unit, shafts["input-first"], shafts["output-first"]), 2)
    4.5
    """
    gears = one.solid, other.solid
    if not all(isinstance(gear, GearSolid) for gear in gears):
        return 0.0
    radii = [gear_radii(unit, gear) for gear in gears if isinstance(gear, GearSolid)]
    return sum(tip - pitch for _, pitch, tip in radii)


def rod_reach(rod: Rod) -> Iterator[Reach]:
    """How far a rod that lies along the shafts reaches from its own axis, its head with it.

    Parameters
    ----------
    rod : Rod

    Examples
    --------
    >>> bolt = next(one for one in unit.shapes.solids if one.id == "guide-tube-bolt")
    >>> next(rod_reach(bolt))
    (-61.0, -43.0, 0.0, 3.0)
    """
    ends = sorted((rod.from_mm[0], rod.to_mm[0]))
    yield ends[0], ends[1], 0.0, rod.diameter_mm / 2
    if rod.form in ("bolt", "plug"):
        (top, _), corner = _head(rod)
        low, high = sorted((top, rod.from_mm[0]))
        yield low, high, 0.0, corner


@kept()
def convex_bodies(unit: Unit) -> dict[str, tuple[Convex, ...]]:
    """Every solid in space as convex bodies, by its id; what is round has its bore.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    dict
        Empty for shells and boxes, for what is no thicker than a press fit takes, and for what
        has no known place square to its section: what is seen whole behind it, and walls of a
        shell that do not say how thick they are.

    Examples
    --------
    >>> len(convex_bodies(unit)["case-bolt"])
    2
    """
    hollow = {one.part for one in shapes_of(unit).solids if isinstance(one, Shell)}
    frame, rounds = frames(unit), round_bodies(unit)
    found = {}
    for view in section_of(unit).views:
        for one in view.drawn:
            origin, along, across = (np.asarray(v, dtype=float) for v in frame[one.solid.axis])
            axes = np.stack([along, across, np.cross(along, across)])
            body = rounds.get(one.solid.id)
            if body is None:
                local = _local(one, one.solid.part in hollow)
                found[one.solid.id] = tuple(Convex(origin + corners @ axes) for corners in local)
                continue
            found[one.solid.id] = tuple(
                Convex(origin + corners @ axes, bore)
                for z0, z1, inner, outer in body.reach
                for bore in [(origin, along, inner + PRESSED_MM) if inner else None]
                if outer - inner > 2 * PRESSED_MM
                for corners in _pin((z0, 0.0), (z1, 0.0), outer)
            )
    return found


def _local(one: Drawn, hollow: bool) -> Iterable[Floats]:
    """Corners of the bodies of a solid, as along, across and out."""
    solid = one.solid
    if isinstance(solid, Slab):
        known = not solid.uncut and (solid.thick_mm or not hollow)
        return _slab(solid) if known else ()
    if isinstance(solid, SpringSolid):
        return _pin(solid.from_mm, solid.to_mm, solid.coil_mm / 2)
    return _rod(solid) if isinstance(solid, Rod) else ()


def _slab(slab: Slab) -> Iterator[Floats]:
    """Strips of its outline between the places where that turns: each is convex."""
    from shapely import Polygon, box

    out = (slab.thick_mm or slab_thickness(slab.outline_mm)) / 2 - PRESSED_MM
    area = Polygon(slab.outline_mm).buffer(-PRESSED_MM, join_style="mitre")
    if out <= 0 or area.is_empty:
        return
    _, low, _, high = area.bounds
    lines = [line for part in getattr(area, "geoms", [area])
             for line in (part.exterior, *part.interiors)]  # fmt: skip
    turns = sorted({round(z, 6) for line in lines for z, _ in line.coords})
    strips = [area] if _is_convex(area) else [
        area.intersection(box(z0, low, z1, high)) for z0, z1 in pairwise(turns)
    ]  # fmt: skip
    for strip in strips:
        for part in getattr(strip, "geoms", [strip]):
            if part.geom_type == "Polygon" and part.area > 1e-3:
                flat = np.asarray(part.exterior.coords[:-1])
                yield np.concatenate([np.insert(flat, 2, side, axis=1) for side in (-out, out)])


def _is_convex(area: object) -> bool:
    from shapely import Polygon

    return isinstance(area, Polygon) and area.convex_hull.area - area.area < 1e-6


def _rod(rod: Rod) -> Iterator[Floats]:
    half = rod.diameter_mm / 2
    if rod.form == "ball":
        if half > PRESSED_MM:
            yield ball((*rod.from_mm, 0.0), half - PRESSED_MM)
        return
    yield from _pin(rod.from_mm, rod.to_mm, half)
    if rod.form in ("bolt", "plug"):
        top, corner = _head(rod)
        yield from _pin(top, rod.from_mm, corner)


def _head(rod: Rod) -> tuple[Point, float]:
    """Top of a head, and how far its corners lie from its axis."""
    high, long = head_height(rod.diameter_mm), math.dist(rod.from_mm, rod.to_mm)
    (z0, y0), (z1, y1) = rod.from_mm, rod.to_mm
    top = z0 - (z1 - z0) / long * high, y0 - (y1 - y0) / long * high
    return top, (rod.head_mm or head_width(rod.diameter_mm)) / math.sqrt(3)


def _pin(start: Point, end: Point, radius: float) -> Iterator[Floats]:
    long = math.dist(start, end)
    if radius <= PRESSED_MM or long <= 2 * PRESSED_MM:
        return
    a, b = np.asarray((*start, 0.0)), np.asarray((*end, 0.0))
    less = (b - a) / long * PRESSED_MM
    yield cylinder(a + less, b - less, radius - PRESSED_MM)


def _reach(one: Drawn, axis: float) -> tuple[Reach, ...]:
    from shapely import LineString, Point

    area, (_, low, _, high) = one.area, one.bounds
    ends = sorted({round(z, 6) for p in one.pieces if p.role not in _UNSEEN for z, _ in p.outline})
    found = []
    for z0, z1 in pairwise(ends):
        at = (z0 + z1) / 2
        cut = area.intersection(LineString([(at, low - 1), (at, high + 1)]))
        if not cut.is_empty:
            _, y0, _, y1 = cut.bounds
            inner = cut.distance(Point(at, axis))
            found.append((z0, z1, round(inner, 6), round(max(axis - y0, y1 - axis), 6)))
    return tuple(found)
