"""From a solid of the unit file to the pieces of its section."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from itertools import pairwise

from twoshaft.errors import UnitFileError
from twoshaft.models.shape.axes import working_radii
from twoshaft.models.shape.bearings import (
    ball_pieces,
    circle,
    open_ball_pieces,
    roller_pieces,
    taper_pieces,
)
from twoshaft.models.shape.pieces import (
    THIN_MM,
    Outline,
    Piece,
    Point,
    Role,
    both_sides,
    box_outline,
    ring_pieces,
    turned_pieces,
)
from twoshaft.models.shape.schematic import shapes_of
from twoshaft.models.shape.shells import shell_pieces
from twoshaft.models.shape.typical import head_height, head_width
from twoshaft.units.sections.bearings import BallBearing, TaperBearing
from twoshaft.units.sections.shapes import (
    AnySolid,
    BearingSolid,
    Box,
    GearSolid,
    RingSolid,
    Rod,
    Shell,
    Slab,
    SpringSolid,
    Turned,
)
from twoshaft.units.unit import Unit

ADDENDUM, DEDENDUM = 1.0, 1.25
"""Heights of a tooth above and below its pitch line, in modules (ISO 53)."""
_BODY_MM = 0.3  # a gear with less between bore and root is teeth alone
_THREAD_MM = 0.9  # depth at which the root of a thread or spline is drawn
_TURNS = 7  # of a drawn spring


def solid_pieces(unit: Unit, solid: AnySolid, heights: Mapping[str, float]) -> list[Piece]:
    """What a section through a solid shows.

    Parameters
    ----------
    unit : Unit
    solid : a solid of the shapes section
    heights : mapping of str to float
        How far below the first axis of its view each axis lies [mm].

    Raises
    ------
    UnitFileError
        Where it refers to something that the unit does not have.

    Examples
    --------
    >>> from twoshaft.models.shape.axes import axis_heights
    >>> nut = next(one for one in unit.shapes.solids if one.id == "output-nut")
    >>> len(solid_pieces(unit, nut, axis_heights(unit, unit.shapes)))
    3
    """
    return _FORMS[solid.kind](unit, solid, heights)


def gear_radii(unit: Unit, gear: GearSolid) -> tuple[float, float, float]:
    """Root, pitch and tip radius of a gear [mm], pitch lines touching at the centre distance.

    Examples
    --------
    >>> gear = next(one for one in unit.shapes.solids if one.kind == "gear")
    >>> root, pitch, tip = gear_radii(unit, gear)
    >>> root < pitch < tip
    True
    """
    where = unit.where("shapes", "solids", gear.id, "mesh")
    train = unit.gear_train_if_any
    mesh = next((m for m in train.meshes if m.id == gear.mesh), None) if train else None
    if train is None or mesh is None:
        raise UnitFileError(
            f"gear {gear.id!r} names the mesh {gear.mesh!r}, which is not in the gear train",
            where=where,
            mend="correct the id, or add the mesh",
        )
    pitch = working_radii(train, mesh)[gear.side == "driven"]
    return pitch - DEDENDUM * mesh.drawn_module_mm, pitch, pitch + ADDENDUM * mesh.drawn_module_mm


def _turned(unit: Unit, solid: Turned, heights: Mapping[str, float]) -> list[Piece]:
    axis = heights[solid.axis]
    pieces = turned_pieces(solid.outside_mm, solid.inside_mm, axis, solid.uncut)
    for z0, z1 in solid.threaded_mm:
        root = _radius_at((z0 + z1) / 2, solid.outside_mm) - _THREAD_MM
        pieces += [Piece(Role.LINE, side) for side in both_sides([(z0, root), (z1, root)], axis)]
    return pieces


def _radius_at(z: float, outline: Sequence[Point]) -> float:
    """Radius of a turned outline at a place along it."""
    for (z0, r0), (z1, r1) in pairwise(outline):
        if z0 <= z < z1:
            return r0 + (r1 - r0) * (z - z0) / (z1 - z0)
    return outline[-1][1]


def _gear(unit: Unit, solid: GearSolid, heights: Mapping[str, float]) -> list[Piece]:
    axis = heights[solid.axis]
    root, pitch, tip = gear_radii(unit, solid)
    z0, z1 = solid.z_mm
    teeth = [(z0, root), (z1, root), (z1, tip), (z0, tip)]
    line = [(z0 - 2, pitch), (z1 + 2, pitch)]
    bore = solid.bore_mm / 2
    # a body of its own, told apart, ends at the root
    body = ring_pieces((z0, z1), bore, root, axis) if root - bore > _BODY_MM else []
    return [
        *body,
        *(Piece(Role.WHOLE, side) for side in both_sides(teeth, axis)),
        *(Piece(Role.PITCH, side) for side in both_sides(line, axis)),
    ]


def _bearing(unit: Unit, solid: BearingSolid, heights: Mapping[str, float]) -> list[Piece]:
    axis, at = heights[solid.axis], solid.at_mm
    if solid.type is None:
        assert solid.bore_mm and solid.outside_mm and solid.width_mm  # the schema asks it
        sizes = solid.bore_mm, solid.outside_mm, solid.width_mm
        if solid.elements == "balls":
            ball = 0.6 * (solid.outside_mm - solid.bore_mm) / 2
            return _balls(solid, sizes, ball, axis)
        return roller_pieces(*sizes, at, axis, needles=solid.elements == "needles")
    types = unit.bearings_if_any.types if unit.bearings_if_any else ()
    known = next((one for one in types if one.id == solid.type), None)
    if known is None:
        raise UnitFileError(
            f"bearing {solid.id!r} names the type {solid.type!r}, which is not in bearings",
            where=unit.where("shapes", "solids", solid.id, "type"),
            mend="correct the id, or give bore, outside, width and elements",
        )
    if isinstance(known, TaperBearing):
        return taper_pieces(known, at, axis, solid.large_end, solid.ring)
    sizes = known.bore_mm, known.outside_mm, known.stand_mm
    if not isinstance(known, BallBearing):
        return roller_pieces(*sizes, at, axis, needles=known.kind == "needle")
    return _balls(solid, sizes, known.ball_diameter_mm, axis)


def _balls(
    solid: BearingSolid, sizes: tuple[float, float, float], ball_mm: float, axis: float
) -> list[Piece]:
    """A ball bearing; one whose rings are told apart is of the kind that comes apart."""
    if solid.ring == "both":
        return ball_pieces(*sizes, ball_mm, solid.at_mm, axis)
    return open_ball_pieces(*sizes, ball_mm, solid.at_mm, axis, solid.large_end, solid.ring)


def ring_radii(unit: Unit, ring: RingSolid) -> tuple[float, float]:
    """Inner and outer radius of a thin ring [mm]; a seal's from the fits section if not given.

    Raises
    ------
    UnitFileError
        Where neither says it.

    Examples
    --------
    >>> ring_radii(unit, next(one for one in unit.shapes.solids if one.id == "input-seal"))
    (12.0, 20.0)
    """
    listed = unit.fits_if_any.seals if unit.fits_if_any else ()
    seal = next((one for one in listed if ring.part is not None and ring.part in one.parts), None)
    bore = ring.bore_mm or (seal.shaft_mm if seal else None)
    outside = ring.outside_mm or (seal.outer_mm if seal else None)
    if bore is None or outside is None:
        raise UnitFileError(
            f"nothing gives the diameters of {ring.id!r}",
            where=unit.where("shapes", "solids", ring.id),
            mend="give its bore mm and outside mm",
        )
    return bore / 2, outside / 2


def _ring(unit: Unit, solid: RingSolid, heights: Mapping[str, float]) -> list[Piece]:
    axis = heights[solid.axis]
    bore, outer = ring_radii(unit, solid)
    if solid.form == "seal":
        return [Piece(Role.SOFT, side) for side in both_sides(_seal(solid, bore, outer), axis)]
    if solid.form == "o-ring":
        radius = (solid.z_mm[1] - solid.z_mm[0]) / 2
        middle = (solid.z_mm[0] + solid.z_mm[1]) / 2
        at = outer - radius
        return [Piece(Role.SOFT, circle((middle, axis + s * at), radius)) for s in (-1, 1)]
    pieces = ring_pieces(solid.z_mm, bore, outer, axis)
    if solid.form in ("circlip", "shim", "gasket"):
        return [p if p.role is Role.BEHIND else Piece(Role.THIN, p.outline) for p in pieces]
    return pieces


def _seal(solid: RingSolid, bore: float, outer: float) -> list[Point]:
    """A lip seal: band in the bore, web on the far side, lip towards the sealed side."""
    z0, z1 = solid.z_mm
    web, lip = (z0, z1) if solid.lip == "rear" else (z1, z0)
    way = 1 if lip > web else -1
    thick = 0.22 * (z1 - z0)
    throat = bore + 0.35 * (outer - bore)
    return [
        (web, outer), (lip, outer), (lip, outer - thick), (web + way * thick, outer - thick),
        (web + way * thick, throat + thick), (lip - way * thick, bore + 1.6 * thick),
        (lip - way * thick, bore), (web + way * 0.3 * (z1 - z0), throat - thick), (web, throat),
    ]  # fmt: skip


def _slab(unit: Unit, solid: Slab, heights: Mapping[str, float]) -> list[Piece]:
    axis = heights[solid.axis]
    outline = tuple((z, axis + across) for z, across in solid.outline_mm)
    zs, ys = zip(*outline, strict=True)
    thin = min(max(zs) - min(zs), max(ys) - min(ys)) < THIN_MM
    role = Role.WHOLE if solid.uncut else Role.THIN if thin else Role.CUT
    return [Piece(role, outline)]


def _shell(unit: Unit, solid: Shell, heights: Mapping[str, float]) -> list[Piece]:
    view = next(one for one in shapes_of(unit).views if solid.axis in one.axes)
    return shell_pieces(solid, heights, view.axes)


def _along(start: Point, end: Point, axis: float) -> Callable[[float, float], Point]:
    """Places by length along a rod and distance to its side."""
    z, y = end[0] - start[0], end[1] - start[1]
    length = math.hypot(z, y)
    uz, uy = z / length, y / length
    return lambda s, side: (
        start[0] + s * uz - side * uy,
        axis + start[1] + s * uy + side * uz,
    )


def _rod(unit: Unit, solid: Rod, heights: Mapping[str, float]) -> list[Piece]:
    axis, half = heights[solid.axis], solid.diameter_mm / 2
    if solid.form == "ball":
        middle = solid.from_mm[0], axis + solid.from_mm[1]
        return [Piece(Role.WHOLE, circle(middle, half))]
    place = _along(solid.from_mm, solid.to_mm, axis)
    length = math.dist(solid.from_mm, solid.to_mm)

    def block(s0: float, s1: float, wide: float) -> Outline:
        return place(s0, -wide), place(s1, -wide), place(s1, wide), place(s0, wide)

    if solid.form not in ("bolt", "plug"):
        return [Piece(Role.WHOLE, block(0, length, half))]
    head = (solid.head_mm or head_width(solid.diameter_mm)) / 2
    high, thread = head_height(solid.diameter_mm), 0.87 * half
    start = 0.45 * length if solid.form == "bolt" else 0.1 * length
    lines = [
        Piece(Role.LINE, (place(start, side), place(length, side))) for side in (-thread, thread)
    ]
    edges = [
        Piece(Role.LINE, (place(-high, side), place(0, side))) for side in (-head / 2, head / 2)
    ]
    return [
        Piece(Role.WHOLE, block(0, length, half)),
        Piece(Role.WHOLE, block(-high, 0, head)),
        *lines,
        *edges,
    ]


def _spring(unit: Unit, solid: SpringSolid, heights: Mapping[str, float]) -> list[Piece]:
    place = _along(solid.from_mm, solid.to_mm, heights[solid.axis])
    length, half = math.dist(solid.from_mm, solid.to_mm), solid.coil_mm / 2
    steps = 2 * _TURNS
    line = tuple(place(length * k / steps, half if k % 2 else -half) for k in range(steps + 1))
    return [Piece(Role.COIL, line)]


def _box(unit: Unit, solid: Box, heights: Mapping[str, float]) -> list[Piece]:
    axis = heights[solid.axis]
    across = [axis + one for one in solid.across_mm]
    return [Piece(Role.BOX, box_outline(*solid.z_mm, *across))]


_FORMS: dict[str, Callable[..., list[Piece]]] = {
    "turned": _turned, "gear": _gear, "bearing": _bearing, "ring": _ring, "slab": _slab,
    "shell": _shell, "rod": _rod, "spring": _spring, "box": _box,
}  # fmt: skip
