"""Where drivers, sleeves, presses, punches and hammers bear: on the ring that grips, never beside.

A driver for a ring bears on its face at the seat, one for a seal at the outer edge, a sleeve for a
gear or hub on its boss (common practice, no source). A press needs a sleeve where none is named.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from twoshaft.models.fit import Ring
from twoshaft.models.shape.pieces import Role
from twoshaft.models.shape.section import Drawn
from twoshaft.models.tooling.around import Around
from twoshaft.models.tooling.stands import (
    ToolStands,
    Touch,
    named,
    oblong,
    outlines_of,
    parts_of,
)
from twoshaft.units.sections.fits import DriveOn
from twoshaft.units.sections.shapes import BearingSolid, RingSolid, Rod
from twoshaft.units.sections.tool_forms import ToolForm
from twoshaft.units.unit import Unit

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

TUBES = (ToolForm.DRIVER, ToolForm.SLEEVE, ToolForm.INSTALLER, ToolForm.PRESS)
"""Forms that push along an axis on a face all round."""
SIDES = {"rear": 1, "front": -1}
_PLAY_MM = 0.5  # between a driver and the shaft or bore beside it
_LEAST_MM, _MOST_MM = 2.0, 5.0  # wall of a driver
_BACK_MM = 3.0  # a driver is so much thicker behind the end that bears
_ROOM_MM = 3.0  # wall where no face is known
_LONG_MM, _CAP_MM, _STEM_MM, _GRIP_MM = 24.0, 6.0, 5.0, 26.0
_FAR_MM = 400.0
_RINGS = {DriveOn.INNER: {Ring.INNER}, DriveOn.OUTER: {Ring.OUTER}, DriveOn.BOTH: set(Ring)}


@dataclass(frozen=True)
class Face:
    """A face, all round an axis, on which something can bear.

    Attributes
    ----------
    z_mm : float
    low_mm, high_mm : float
        Its radii [mm].
    solid : str
    what : str
        In words.
    rim : bool
        Whether it ends at the bore of a case, into which a driver must go; else at a shaft, over
        which it must go.

    Examples
    --------
    >>> Face(-35.0, 18.0, 20.0, "input-seal", "the seal", rim=True).high_mm
    20.0
    """

    z_mm: float
    low_mm: float
    high_mm: float
    solid: str
    what: str
    rim: bool


def ring_faces(one: Drawn, axis: float, side: int) -> dict[Ring, Face]:
    """The faces of a bearing's rings on one side.

    Parameters
    ----------
    one : Drawn
        A bearing, or a ring of one.
    axis : float
        Height of its axis [mm].
    side : int
        1 for the rear, -1 for the front.

    Examples
    --------
    >>> from twoshaft.models.shape import solids_of
    >>> bearing, = solids_of(unit, "shafts", "input-front-bearing")
    >>> faces = ring_faces(bearing, 43.75, 1)
    >>> faces[Ring.OUTER].z_mm, faces[Ring.OUTER].high_mm, faces[Ring.INNER].low_mm
    (-15.0, 26.0, 12.0)
    """
    halves = []
    for piece in one.pieces:
        radii = [(z, axis - y) for z, y in piece.outline]
        if piece.role in (Role.CUT, Role.THIN) and min(r for _, r in radii) > 0:
            halves.append(radii)
    halves.sort(key=lambda radii: min(r for _, r in radii))
    known = one.solid.ring if isinstance(one.solid, BearingSolid) else "both"
    names = [Ring.INNER, Ring.OUTER] if known == "both" else [Ring(known)]
    found = {}
    for ring, radii in zip(names, halves, strict=False):
        end = max(side * z for z, _ in radii)
        rs = [r for z, r in radii if side * z > end - 0.05]
        what = f"the {ring.value} ring"
        found[ring] = Face(side * end, min(rs), max(rs), one.solid.id, what, rim=ring is Ring.OUTER)
    return found


def driven(
    unit: Unit,
    here: Around,
    operations: Sequence[str],
    forms: Collection[ToolForm],
    rings: frozenset[Ring] | None = None,
    plain: Collection[str] = (),
) -> Iterator[ToolStands]:
    """What drives or presses the parts of a step in, in their places.

    Parameters
    ----------
    unit : Unit
    here : Around
    operations : sequence of str
        Operations of the step.
    forms : collection of ToolForm
        Those of its tools.
    rings : frozenset of Ring, optional
        Rings of a whole bearing on which the driver presses; those of its fit where left out.
    plain : collection of str
        Parts that are drawn as the room they take up: no face of theirs is told.

    Examples
    --------
    >>> from twoshaft.models.tooling.around import around_step
    >>> step = ["fit-output-front-ring"]
    >>> one, = driven(unit, *around_step(unit, step, []), step, [ToolForm.DRIVER])
    >>> one.on
    'on the rear face of the outer ring'
    """
    rods = [one for one in here.own if isinstance(one.solid, Rod)]
    blow = next((f for f in (ToolForm.PUNCH, ToolForm.HAMMER) if f in forms), None)
    if tubes := [form for form in TUBES if form in forms]:
        for one, faces, side in _borne(unit, here, operations, rings, plain):
            yield _tube(here, one, faces, side, tubes[0], press=ToolForm.PRESS in forms)
    elif rods and blow:
        for one in rods:
            yield _at_end(here, one, blow)
    elif blow:
        ends = [one for one in here.own if one.solid.kind in ("turned", "ring")]
        for part in dict.fromkeys(one.solid.part for one in ends):
            mine = [one for one in ends if one.solid.part == part]
            yield _blow(here, mine, blow)


def _borne(
    unit: Unit,
    here: Around,
    operations: Sequence[str],
    rings: frozenset[Ring] | None,
    plain: Collection[str],
) -> Iterator[tuple[Drawn, list[Face], int]]:
    """The solids that are pushed, the faces on which, and from which side."""
    fits, mine = unit.fits_if_any, set(operations)
    presses = [] if fits is None else [p for p in fits.presses if mine & set(p.operations)]
    pressed = {part for press in presses for part in press.parts}
    own = [one for one in here.own if here.ways[one.solid.id] in SIDES]
    if pressed & {one.solid.part for one in own}:
        own = [one for one in own if one.solid.part in pressed]
    on = {part: press.drive_on for press in presses for part in press.parts}
    seats = []  # sleeves, hubs and gears
    for one in own:
        axis, side = here.heights[one.solid.axis], SIDES[str(here.ways[one.solid.id])]
        part = one.solid.part or ""
        if part in plain:
            yield one, [_room_face(one, axis, side)], side
        elif isinstance(one.solid, BearingSolid) and not _beside_gears(own):
            faces = ring_faces(one, axis, side)
            known = _RINGS.get(on.get(part, DriveOn.PART)) or set(Ring)
            wanted = rings if rings is not None and one.solid.ring == "both" else known
            bears = [face for ring, face in faces.items() if ring in wanted]
            yield one, bears or list(faces.values()), side
        elif isinstance(one.solid, RingSolid) and one.solid.form == "seal":
            yield one, [_edge_face(one, axis, side)], side
        elif one.solid.kind == "turned":
            seats.append((one, axis, side))
    if seats:
        bores = [_bore(one, axis) for one, axis, _ in seats]
        tight = [seat for seat, bore in zip(seats, bores, strict=True) if bore < min(bores) + 0.3]
        one, axis, side = max(tight, key=lambda seat: max(seat[2] * z for z in _ends(seat[0])))
        yield one, [_boss_face(one, axis, side)], side


def _beside_gears(own: Sequence[Drawn]) -> bool:
    """Whether bearings are needles under gears that go on with them."""
    return any(one.solid.kind in ("gear", "turned") for one in own)


def _ends(one: Drawn) -> tuple[float, float]:
    return one.area.bounds[0], one.area.bounds[2]


def _bore(one: Drawn, axis: float) -> float:
    above = [axis - y for piece in one.pieces if piece.role in (Role.CUT, Role.THIN)
             for _, y in piece.outline]  # fmt: skip
    return min((r for r in above if r > 0), default=_FAR_MM)


def _room_face(one: Drawn, axis: float, side: int) -> Face:
    """At the outer edge of the room that a part takes up, of which no face is told."""
    outer = axis - one.area.bounds[1]
    z = max(side * end for end in _ends(one)) * side
    return Face(z, outer - _ROOM_MM, outer, one.solid.id, named(one), rim=True)


def _edge_face(one: Drawn, axis: float, side: int) -> Face:
    outer = axis - one.area.bounds[1]
    z = max(side * end for end in _ends(one)) * side
    what = f"{named(one)}, at its outer edge"
    return Face(z, outer - _ROOM_MM, outer, one.solid.id, what, rim=True)


def _boss_face(one: Drawn, axis: float, side: int) -> Face:
    """Round the bore, where a gear or hub sits on its shaft."""
    bore = _bore(one, axis)
    reach = one.area.intersection(oblong(*_ends(one), axis - bore - _MOST_MM, axis - bore))
    z0, y0, z1, _ = reach.bounds
    z = z1 if side > 0 else z0
    return Face(z, bore, min(axis - y0, bore + _MOST_MM), one.solid.id, named(one), rim=False)


def _tube(
    here: Around, one: Drawn, faces: Sequence[Face], side: int, form: ToolForm, *, press: bool
) -> ToolStands:
    """A tube on some faces of a solid, closed beyond all that it goes over."""
    axis = here.heights[one.solid.axis]
    walls = [_wall(face) for face in faces]
    z0 = max(side * face.z_mm for face in faces)
    hollow = min(low for low, _ in walls)
    beyond = [z0 + _LONG_MM]
    for body in here.placed:
        inside = body.area.intersection(
            oblong(side * z0, side * (z0 + _FAR_MM), axis - hollow + 1, axis + hollow - 1)
        )
        if body.row == list(here.heights).index(one.solid.axis) and not inside.is_empty:
            beyond.append(max(side * inside.bounds[0], side * inside.bounds[2]) + 2)
    cap = max(beyond)
    areas, reach = [], max(high for _, high in walls)
    for (low, high), face in zip(walls, faces, strict=True):
        for up in (-1, 1):
            areas.append(oblong(face.z_mm, side * cap, axis + up * low, axis + up * high))
            back = sorted((low, high, low - _BACK_MM if face.rim else high + _BACK_MM))
            begins = face.z_mm + side * _BACK_MM
            areas.append(oblong(begins, side * cap, axis + up * back[0], axis + up * back[-1]))
    areas.append(oblong(side * cap, side * (cap + _CAP_MM), axis - reach, axis + reach))
    top = cap + _CAP_MM
    stem = 2 * _STEM_MM if press else _STEM_MM
    areas.append(oblong(side * top, side * (top + _GRIP_MM), axis - stem, axis + stem))
    if press:  # the ram, which is thicker than its sleeve's stem
        areas.append(oblong(side * (top + 10), side * (top + _GRIP_MM), axis - 16, axis + 16))
    sides = "rear" if side > 0 else "front"
    on = " and ".join(dict.fromkeys(face.what for face in faces))
    touches = tuple(
        Touch(face.solid, face.z_mm, axis + up * (low + high) / 2)
        for (low, high), face in zip(walls, faces, strict=True)
        for up in (-1, 1)
    )
    return _stood(
        here, form, areas, touches, (side, 0), f"on the {sides} face of {on}", one.solid.axis
    )


def _wall(face: Face) -> tuple[float, float]:
    """Inner and outer radius of a tube that bears on a face [mm]."""
    thick = min(max(face.high_mm - face.low_mm - 2 * _PLAY_MM, _LEAST_MM), _MOST_MM)
    if face.rim:
        return face.high_mm - _PLAY_MM - thick, face.high_mm - _PLAY_MM
    return face.low_mm + _PLAY_MM, face.low_mm + _PLAY_MM + thick


def _stood(
    here: Around,
    form: ToolForm,
    areas: Sequence[BaseGeometry],
    touches: tuple[Touch, ...],
    way: tuple[float, float],
    on: str,
    axis: str,
    holed: Collection[str] = (),
) -> ToolStands:
    from shapely import union_all

    whole, touched = union_all(list(areas)), {touch.solid for touch in touches}
    meets = here.crossed(whole, axis, here.placed, {*touched, *holed})
    after = here.crossed(whole, axis, here.beside, {*touched, *holed})
    mine = {one.solid.part for one in here.own if one.solid.id in touched}
    return ToolStands(
        form,
        here.view,
        outlines_of(areas),
        touches,
        way,
        on,
        parts_of(meets),
        parts_of(body for body in after if body.part not in mine),
    )


def _at_end(here: Around, one: Drawn, form: ToolForm) -> ToolStands:
    """A punch or hammer on the end of a pin."""
    rod = one.solid
    assert isinstance(rod, Rod)
    axis = here.heights[rod.axis]
    ends = [(z, axis + y) for z, y in (rod.from_mm, rod.to_mm)]
    (za, ya), (zb, yb) = ends
    along = abs(zb - za) >= abs(yb - ya)
    if along:
        wish = SIDES.get(str(here.ways[rod.id]), 1)
        ways = [(wish, 0), (-wish, 0)]
    else:
        ways = [(0, -1), (0, 1)]
    stood = [_struck(here, one, way, ends, form) for way in ways]
    return next((tool for tool in stood if not tool.meets), stood[0])


def _struck(
    here: Around,
    one: Drawn,
    way: tuple[int, int],
    ends: Sequence[tuple[float, float]],
    form: ToolForm,
) -> ToolStands:
    z, y = max(ends, key=lambda end: end[0] * way[0] + end[1] * way[1])
    thick = one.solid.diameter_mm if isinstance(one.solid, Rod) else 2 * _STEM_MM
    areas = _tip(form, (z, y), way, thick)
    touch = Touch(one.solid.id, z, y)
    holed = {body.drawn.solid.id for body in (*here.placed, *here.beside)
             if body.area.intersects(one.area)}  # fmt: skip
    return _stood(
        here, form, areas, (touch,), way, f"on the end of {named(one)}", one.solid.axis, holed
    )


def _tip(
    form: ToolForm, at: tuple[float, float], way: tuple[int, int], thick: float
) -> list[BaseGeometry]:
    """A punch or a hammer's head with its tip at a place."""
    (z, y), (dz, dy) = at, way

    def part(near: float, far: float, half: float) -> BaseGeometry:
        return oblong(
            z + dz * near - abs(dy) * half,
            z + dz * far + abs(dy) * half,
            y + dy * near - abs(dz) * half,
            y + dy * far + abs(dz) * half,
        )

    if form is ToolForm.HAMMER:
        return [part(0, 12, max(0.8 * thick, 6)), part(12, 20, max(0.6 * thick, 4.5)),
                part(20, 28, max(0.8 * thick, 6))]  # fmt: skip
    return [part(0, 16, 0.42 * thick), part(16, 40, max(0.8 * thick, 4))]


def _blow(here: Around, mine: Sequence[Drawn], form: ToolForm) -> ToolStands:
    """A punch on the collar of a nut from outside, or a hammer on the end of what it drives."""
    side = SIDES.get(str(here.ways[mine[0].solid.id]), 0)
    stood = []
    one = max(mine, key=lambda one: (side or 1) * one.area.bounds[2 if (side or 1) > 0 else 0])
    axis, (z0, y0, z1, y1) = here.heights[one.solid.axis], one.area.bounds
    if side and form is ToolForm.HAMMER:
        return _on_face(here, one, side, form, 8.0)
    z = z1 - min(2.5, (z1 - z0) / 3)
    for up in (-1, 1):
        column = one.area.intersection(oblong(z - 1, z + 1, axis, axis + up * (y1 - y0)))
        y = column.bounds[1] if up < 0 else column.bounds[3]
        areas = _tip(form, (z, y), (0, up), 4.0)
        touch = (Touch(one.solid.id, z, y),)
        on = f"on the rim of {named(one)}, from outside"
        stood.append(_stood(here, form, areas, touch, (0, up), on, one.solid.axis))
    stood += [_on_face(here, one, side, form, 4.0) for side in (1, -1)]
    return next((tool for tool in stood if not tool.meets), stood[0])


def _on_face(here: Around, one: Drawn, side: int, form: ToolForm, half: float) -> ToolStands:
    """A hammer or punch on an end face, where nothing stands beside it."""
    axis, (z0, y0, z1, _) = here.heights[one.solid.axis], one.area.bounds
    bore, rim = _bore(one, axis), axis - y0
    stood = []
    for share in (0.5, 0.65, 0.8, 0.35, 0.2):
        y = axis - (bore + share * (rim - bore))
        under = one.area.intersection(oblong(z0, z1, y - half, y + half))
        z = under.bounds[2] if side > 0 else under.bounds[0]
        areas = _tip(form, (z, y), (side, 0), half)
        sides = "rear" if side > 0 else "front"
        on = f"on the {sides} face of {named(one)}"
        touch = (Touch(one.solid.id, z, y),)
        stood.append(_stood(here, form, areas, touch, (side, 0), on, one.solid.axis))
    return next((tool for tool in stood if not tool.meets), stood[0])
