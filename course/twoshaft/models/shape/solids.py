"""The solids of a unit in space, as bodies that a browser revolves and extrudes; no mesh is kept.

Each solid has a frame: an origin, the direction along its axis and the one across, as the section
counts them. Bodies are told in it: `along`, `across`, and `out`, square to both.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from itertools import pairwise
from typing import Any

from twoshaft.models.shape.axes import axis_places
from twoshaft.models.shape.exploded import Exploded
from twoshaft.models.shape.forms import gear_radii
from twoshaft.models.shape.frames import frames
from twoshaft.models.shape.halves import joint, out_of_joint
from twoshaft.models.shape.pieces import Outline, Piece, Role
from twoshaft.models.shape.schematic import shapes_of
from twoshaft.models.shape.section import Drawn, section_of
from twoshaft.models.shape.typical import WALL_MM, head_height, head_width, slab_thickness
from twoshaft.units.kept import kept
from twoshaft.units.sections.shapes import (
    BearingSolid,
    GearSolid,
    Half,
    Rod,
    Shell,
    Slab,
    SpringSolid,
)
from twoshaft.units.unit import Unit

Body = dict[str, Any]

_CIRCLE = 64  # corners of a round outline
_TOOTH = 0.25, 0.36, 0.64, 0.75  # root, tip, tip, root: shares of a pitch
_TURNS = 7
_APART = 1.12  # rolling elements stand so far apart, in their diameters
_FAR_MM = 5000.0
_ROUND = 2


@kept()
def bodies_of(unit: Unit) -> dict[str, tuple[Body, ...]]:
    """The bodies of every solid, in its frame [mm]; empty for what has no form in space.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    dict
        By solid. A body has a kind: ``turned`` (outline of along and radius, revolved), ``slice``
        (outline of across and out, with holes, between two places along), ``slab`` (outline of
        along and across, with a thickness out), ``round`` (a frustum between two places), ``ball``
        and ``coil``; ``count`` of them stand round the axis.

    Examples
    --------
    >>> bodies_of(unit)["output-nut"][0]["kind"]
    'turned'
    """
    shapes = shapes_of(unit)
    hollow = {one.part for one in shapes.solids if isinstance(one, Shell)}
    heights = {axis: y for view in section_of(unit).views for axis, y in view.axes}
    found: dict[str, tuple[Body, ...]] = {}
    for view in section_of(unit).views:
        for one in view.drawn:
            # walls of a case that a section shows beside the shell are in the shell, unless they
            # say how thick they are
            extra = (
                one.solid.part in hollow and isinstance(one.solid, Slab) and not one.solid.thick_mm
            )
            made = () if extra else _bodies(unit, one, heights[one.solid.axis])
            found[one.solid.id] = tuple(_rounded(body) for body in made)
    return found


def _bodies(unit: Unit, one: Drawn, height: float) -> Iterable[Body]:
    solid = one.solid
    if isinstance(solid, Shell):
        return _shell(unit, solid)
    if isinstance(solid, GearSolid):
        return [_gear(unit, solid)]
    if isinstance(solid, Slab):
        thick = solid.thick_mm or slab_thickness(solid.outline_mm)
        return [{"kind": "slab", "outline": solid.outline_mm, "thick": thick}]
    if isinstance(solid, Rod):
        return _rod(solid)
    if isinstance(solid, SpringSolid):
        return [_spring(solid)]
    if solid.kind == "box":
        return []
    elements = isinstance(solid, BearingSolid)
    return list(_turned(one.pieces, height, elements))


def _turned(pieces: Sequence[Piece], height: float, elements: bool) -> Iterable[Body]:
    """Half sections above the axis revolved; rolling elements set round it."""
    for piece in pieces:
        if piece.role in (Role.BEHIND, Role.LINE, Role.PITCH, Role.COIL):
            continue
        local = [(z, height - y) for z, y in piece.outline]  # radius above the axis
        if min(r for _, r in local) < -1e-6:
            if max(r for _, r in local) <= 1e-6:
                continue  # the lower half
            upper = [(z, r) for z, r in local if r >= -1e-6]
            ends = [(upper[-1][0], 0.0), (upper[0][0], 0.0)]
            yield {"kind": "turned", "outline": upper + ends}
        elif max(r for _, r in local) <= 1e-6:
            continue
        elif elements and piece.role is Role.WHOLE:
            yield _element(local)
        else:
            yield {"kind": "turned", "outline": local}


def _element(outline: Sequence[tuple[float, float]]) -> Body:
    """A ball or roller from its section, with how many stand round the axis."""
    middle = [sum(c) / len(outline) for c in zip(*outline, strict=True)]
    if len(outline) > 4:
        radius = max(math.dist(middle, point) for point in outline)
        return {"kind": "ball", "at": (middle[0], -middle[1], 0.0), "radius": radius,
                "count": _count(middle[1], 2 * radius)}  # fmt: skip
    a, b, c, d = outline
    ends = ((a[0] + d[0]) / 2, (a[1] + d[1]) / 2), ((b[0] + c[0]) / 2, (b[1] + c[1]) / 2)
    radii = math.dist(a, d) / 2, math.dist(b, c) / 2
    return {"kind": "round", "from": (ends[0][0], -ends[0][1], 0.0),
            "to": (ends[1][0], -ends[1][1], 0.0), "radii": radii, "sides": 12,
            "count": _count(middle[1], 2 * max(radii))}  # fmt: skip


def _count(pitch_mm: float, diameter_mm: float) -> int:
    return max(3, int(2 * math.pi * pitch_mm / (_APART * diameter_mm)))


def _gear(unit: Unit, gear: GearSolid) -> Body:
    """Straight teeth of straight flanks; their number from the gear train."""
    root, _, tip = gear_radii(unit, gear)
    mesh = next(one for one in unit.gear_train.meshes if one.id == gear.mesh)
    teeth = getattr(mesh, gear.side).teeth
    outline = []
    for tooth in range(teeth):
        for share, r in zip(_TOOTH, (root, tip, tip, root), strict=True):
            turn = 2 * math.pi * (tooth + share) / teeth
            outline.append((r * math.cos(turn), r * math.sin(turn)))
    holes = [_circle(0.0, 0.0, gear.bore_mm / 2)] if gear.bore_mm / 2 < root else []
    return {"kind": "slice", "outline": outline, "holes": holes, "z": gear.z_mm}


def _circle(x: float, y: float, radius: float) -> Outline:
    turns = (2 * math.pi * k / _CIRCLE for k in range(_CIRCLE))
    return tuple((x + radius * math.cos(turn), y + radius * math.sin(turn)) for turn in turns)


def _rod(rod: Rod) -> Iterable[Body]:
    start, end = (*rod.from_mm, 0.0), (*rod.to_mm, 0.0)
    half = rod.diameter_mm / 2
    if rod.form == "ball":
        return [{"kind": "ball", "at": start, "radius": half}]
    shank = {"kind": "round", "from": start, "to": end, "radii": (half, half), "sides": 24}
    if rod.form not in ("bolt", "plug"):
        return [shank]
    long = math.dist(start, end)
    high = head_height(rod.diameter_mm)
    top = tuple(a - (b - a) / long * high for a, b in zip(start, end, strict=True))
    corner = (rod.head_mm or head_width(rod.diameter_mm)) / math.sqrt(3)
    head = {"kind": "round", "from": top, "to": start, "radii": (corner, corner), "sides": 6}
    return [shank, head]


def _spring(spring: SpringSolid) -> Body:
    wire = 0.12 * spring.coil_mm
    return {"kind": "coil", "from": (*spring.from_mm, 0.0), "to": (*spring.to_mm, 0.0),
            "radius": spring.coil_mm / 2 - wire / 2, "wire": wire / 2, "turns": _TURNS}  # fmt: skip


def _shell(unit: Unit, shell: Shell) -> Iterable[Body]:
    """A shell in slices along z: walls round its rooms, bosses added, bores taken out.

    Its outlines are in the frame of the whole unit, x and y.
    """
    from shapely import Point, Polygon, union_all

    places, wall = axis_places(unit, shapes_of(unit)), shell.wall_mm or WALL_MM

    def disc(axis: str, radius: float) -> Any:
        return Point(places[axis]).buffer(radius, quad_segs=_CIRCLE // 4)

    cuts = {*shell.z_mm}
    for room in shell.rooms:
        cuts |= {room.z_mm[0] - wall, *room.z_mm, room.z_mm[1] + wall}
    for span in (*(rim.z_mm for rim in shell.flanges), *(boss.z_mm for boss in shell.bosses)):
        cuts |= {*span}
    ends = sorted(cuts)
    for z0, z1 in pairwise(ends):
        z = (z0 + z1) / 2
        metal: Any = Polygon()
        rooms = [room for room in shell.rooms if room.z_mm[0] < z < room.z_mm[1]]
        if shell.z_mm[0] < z < shell.z_mm[1]:
            reach = max((f.reach_mm for f in shell.flanges if f.z_mm[0] < z < f.z_mm[1]), default=0)
            metal = union_all(
                [disc(room.axis, room.radius_mm + wall + (reach if room in rooms else 0))
                 for room in shell.rooms if room.z_mm[0] - wall < z < room.z_mm[1] + wall]
            )  # fmt: skip
            metal = metal.difference(union_all([disc(r.axis, r.radius_mm) for r in rooms]))
        here = [boss for boss in shell.bosses if boss.z_mm[0] < z < boss.z_mm[1]]
        for boss in here:
            if boss.outside_mm is not None:
                metal = metal.union(disc(boss.axis, boss.outside_mm / 2))
        for boss in here:
            if boss.bore_mm is not None:
                metal = metal.difference(disc(boss.axis, boss.bore_mm / 2))
        if shell.half is not None:
            metal = metal.intersection(_half_space(places[shell.half.axis], shell.half))
        for area in getattr(metal, "geoms", [metal]):
            if area.geom_type == "Polygon" and area.area > 0.01:
                yield {
                    "kind": "slice",
                    "outline": list(area.exterior.coords)[:-1],
                    "holes": [list(hole.coords)[:-1] for hole in area.interiors],
                    "z": (z0, z1),
                }


def _half_space(at: tuple[float, float], half: Half) -> Any:
    """All that lies on one side of a joint face, seen along the shafts."""
    from shapely import box
    from shapely.affinity import rotate

    x, y = at
    ends = (y, y + _FAR_MM) if half.side == "above" else (y - _FAR_MM, y)
    return rotate(box(x - _FAR_MM, ends[0], x + _FAR_MM, ends[1]), half.angle_deg, origin=at)


def _rounded(value: Any) -> Any:
    """Figures of a body, as many as the eye needs."""
    if isinstance(value, dict):
        return {key: _rounded(one) for key, one in value.items()}
    if isinstance(value, list | tuple):
        return [_rounded(one) for one in value]
    return round(value, _ROUND) if isinstance(value, float) else value


def space_of(unit: Unit, shown: Exploded) -> dict[str, Any]:
    """A stage in space: its solids with their frames and bodies, and how far each mover goes.

    Parameters
    ----------
    unit : Unit
    shown : Exploded

    Returns
    -------
    dict
        ``solids``, each with its part, mover, frame and bodies; ``movers``, each with its parent
        and its own shift [mm].

    Examples
    --------
    >>> from twoshaft.models.shape import exploded
    >>> space = space_of(unit, exploded(unit, "clutch-housing"))
    >>> space["movers"][0]["own"][2] > 0
    True
    """
    frame, bodies = frames(unit), bodies_of(unit)
    mover = {solid: k for k, one in enumerate(shown.movers) for solid in one.solids}
    whole = ((0.0, 0.0, 0.0), (0.0, 0.0, 1.0), (1.0, 0.0, 0.0))
    solids, axis_of = [], dict[tuple[int, str], str]()
    for view in section_of(unit).views:
        for one in view.drawn:
            k, solid = mover.get(one.solid.id), one.solid
            if k is not None:
                axis_of.setdefault((k, view.id), solid.axis)
            if bodies[solid.id] and (k is not None or solid.id in shown.still):
                own = whole if solid.kind == "shell" else frame[solid.axis]
                solids.append(
                    {"part": solid.part, "mover": k, "name": one.name,
                     "hollow": solid.kind == "shell", "frame": _rounded(own),
                     "bodies": list(bodies[solid.id])}
                )  # fmt: skip
    half = joint(unit)
    up = (0.0, 1.0) if half is None else out_of_joint(half)
    movers = []
    for k, moved in enumerate(shown.movers):
        goes = (0.0, 0.0, 0.0)
        for view_id, z, y in moved.own_mm:
            axis = axis_of.get((k, view_id))
            if axis is not None:  # what it does in one view it does in all
                _, along, across = frame[axis]
                if half is not None and moved.way == "outside":
                    across = (-up[0], -up[1], 0.0)  # square to the joint face, whatever it lies on
                x0, y0, z0 = (z * a + y * b for a, b in zip(along, across, strict=True))
                goes = x0, y0, z0
                break
        movers.append({"parent": moved.parent, "own": _rounded(goes)})
    return {"solids": solids, "movers": movers}
