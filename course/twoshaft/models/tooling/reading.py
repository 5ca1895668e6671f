"""Where gauges stand: a tip on the face that is read, a foot or blade across what it rests on.

A gauge reads where its stem has a straight way out; of several such places it stands at the first,
rear before front, at the middle of the face. Forms and lengths of the tools are our own.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise, permutations, product
from typing import TYPE_CHECKING

from twoshaft.models.shape.bearings import circle
from twoshaft.models.shape.section import Drawn
from twoshaft.models.tooling.around import Around
from twoshaft.models.tooling.driving import SIDES
from twoshaft.models.tooling.stands import (
    ToolStands,
    Touch,
    named,
    oblong,
    outlines_of,
    parts_of,
)
from twoshaft.units.sections.tool_forms import ToolForm

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

_TIP_MM, _STEM_MM, _DIAL_MM = 1.2, 3.0, 13.0  # half widths, and the radius of a dial
_SHORT_MM, _LONG_MM = 8.0, 170.0
_EVEN_MM, _REST_MM = 0.3, 30.0
_OVER_MM, _BLADE_MM = 8.0, 7.0
_LEAF_MM, _GAP_MM = 34.0, 3.0
_FAR_MM = 400.0
_SOLID = ("turned", "gear", "bearing", "ring", "shell", "slab")


@dataclass(frozen=True)
class Spot:
    """A place that a straight stem reaches.

    Attributes
    ----------
    one : Drawn
    z_mm, height_mm : float
        The place [mm].
    side : int
        1 where it is reached from the rear, -1 from the front.

    Examples
    --------
    >>> from twoshaft.models.shape import solids_of
    >>> Spot(*solids_of(unit, "shafts", "input-seal"), -35.0, 30.0, 1).side
    1
    """

    one: Drawn
    z_mm: float
    height_mm: float
    side: int


def read_with(
    here: Around,
    form: ToolForm,
    *,
    across: bool = False,
    leaf: bool = False,
    between: Sequence[str] = (),
) -> ToolStands | None:
    """A gauge at what a step reads, where it can stand; None where no place is free.

    Parameters
    ----------
    here : Around
    form : ToolForm
    across : bool
        Whether the tip of a gauge stands across the axis, as for run-out.
    leaf : bool
        Whether a feeler is held under a straightedge.
    between : sequence of str
        The two solids between which a feeler goes, where the unit file names them.

    Examples
    --------
    >>> from twoshaft.models.tooling.around import around_step
    >>> read = read_with(*around_step(unit, ["read-diff-float"], []), ToolForm.DIAL)
    >>> read.on
    'on the rear end of the differential carrier, along its axis'
    """
    if form is ToolForm.DIAL:
        return _dial_across(here) if across else _dial_along(here)
    if form is ToolForm.DEPTH:
        return _depth(here)
    if form is ToolForm.STRAIGHTEDGE:
        return _straightedge(here, leaf=leaf)
    if form is ToolForm.FEELER:
        return _feeler(here, between)
    return _cord(here) if form is ToolForm.SCALE else None


def _bulky(here: Around) -> list[Drawn]:
    """Solids that a gauge can stand on, the first part's first, the longest of it before others."""
    parts = list(dict.fromkeys(one.solid.part for one in here.own))
    some = [one for one in here.own if one.solid.kind in _SOLID]
    return sorted(
        some, key=lambda one: (parts.index(one.solid.part), one.area.bounds[0] - one.area.bounds[2])
    )


def _spots(here: Around, half: float) -> Iterator[Spot]:
    """Places on end faces that a stem of a half width reaches straight from outside."""
    for one in _bulky(here):
        axis, (z0, y0, z1, _) = here.heights[one.solid.axis], one.area.bounds
        for side in (1, -1):
            end = z1 if side > 0 else z0
            rim = one.area.intersection(oblong(end, end - side * 0.5, y0, axis - half))
            if rim.is_empty:
                continue
            low, high = axis - rim.bounds[3], axis - rim.bounds[1]
            for share in (0.5, 0.7, 0.3, 0.85, 0.15):
                y = axis - (low + share * (high - low))
                if rim.intersection(oblong(end - 1, end + 1, y - _TIP_MM, y + _TIP_MM)).is_empty:
                    continue  # between two rings
                stem = oblong(end, side * _FAR_MM, y - half, y + half)
                others = (*here.placed, *here.beside)
                if not here.crossed(stem, one.solid.axis, others, {one.solid.id}):
                    yield Spot(one, end, y, side)


def _dial_along(here: Around) -> ToolStands | None:
    spot = next(_spots(here, _STEM_MM), None)
    if spot is None:
        return None
    side, axis = spot.side, spot.one.solid.axis
    others = (*here.placed, *here.beside)
    far, z, y = _SHORT_MM, spot.z_mm, spot.height_mm
    while far < _LONG_MM:  # the dial stands clear of what its stem goes through
        body = _disc((z + side * (far + _DIAL_MM), y))
        if not here.crossed(body, axis, others):
            break
        far += 2
    areas = [
        oblong(z, z + side * 5, y - _TIP_MM, y + _TIP_MM),
        oblong(z + side * 4, z + side * (far + 2), y - _STEM_MM, y + _STEM_MM),
        _disc((z + side * (far + _DIAL_MM), y)),
    ]
    return _read(here, ToolForm.DIAL, areas, (Touch(spot.one.solid.id, z, y),), (side, 0),
                 f"on the {_end(side)} end of {named(spot.one)}, along its axis",
                 axis)  # fmt: skip


def _dial_across(here: Around) -> ToolStands | None:
    spot = next(_rims(here, _STEM_MM), None)
    if spot is None:
        return None
    one, z, y, up = spot
    areas = [
        oblong(z - _TIP_MM, z + _TIP_MM, y, y + up * 5),
        oblong(z - _STEM_MM, z + _STEM_MM, y + up * 4, y + up * (_SHORT_MM + 2)),
        _disc((z, y + up * (_SHORT_MM + _DIAL_MM))),
    ]
    on = f"on the rim of {named(one)}, across its axis"
    touch = (Touch(one.solid.id, z, y),)
    return _read(here, ToolForm.DIAL, areas, touch, (0, up), on, one.solid.axis)


def _rims(here: Around, half: float) -> Iterator[tuple[Drawn, float, float, int]]:
    """Places on a round outside that are reached straight from above or below."""
    for one in _bulky(here):
        axis, (z0, _, z1, _) = here.heights[one.solid.axis], one.area.bounds
        steps = max(int((z1 - z0) / (2 * half)), 2)
        middle_last = sorted(range(1, steps), key=lambda k: -abs(k - steps / 2))
        for z in (z0 + (z1 - z0) * k / steps for k in middle_last):
            for up in (-1, 1):
                rim = one.area.intersection(oblong(z - half, z + half, axis, axis + up * _FAR_MM))
                if rim.is_empty:
                    continue
                y = rim.bounds[1] if up < 0 else rim.bounds[3]
                stem = oblong(z - half, z + half, y, y + up * (_SHORT_MM + 2 * _DIAL_MM))
                others = (*here.placed, *here.beside)
                if not here.crossed(stem, one.solid.axis, others, {one.solid.id}):
                    yield one, z, y, up


def _depth(here: Around) -> ToolStands | None:
    """A rod down to a face, its foot across the two sides of what the face lies in."""
    for spot in _spots(here, _TIP_MM):
        one, side = spot.one, spot.side
        axis = here.heights[one.solid.axis]
        rim = max(abs(axis - y) for y in (one.area.bounds[1], one.area.bounds[3]))
        rests = _rests(here, one, axis, rim, side)
        if rests is None:
            continue
        foot, z, y = side * max(side * rest.z_mm for rest in rests), spot.z_mm, spot.height_mm
        low = min(rest.height_mm for rest in rests) - _OVER_MM
        high = max(rest.height_mm for rest in rests) + _OVER_MM
        bar = oblong(foot, foot + side * _BLADE_MM, low, high)
        areas = [
            _beside_shafts(here, one, bar, axis),
            oblong(z, foot + side * 40, y - _TIP_MM, y + _TIP_MM),
            oblong(foot + side * _BLADE_MM, foot + side * 26, y - _STEM_MM, y + _STEM_MM),
        ]
        on = f"on the {_end(side)} face of {named(one)}, its foot across the bore"
        tip = Touch(one.solid.id, z, y)
        return _read(here, ToolForm.DEPTH, areas, (tip, *rests), (side, 0), on, one.solid.axis)
    return None


def _rests(
    here: Around, one: Drawn, axis: float, rim: float, side: int
) -> tuple[Touch, Touch] | None:
    """What stands out furthest beside a bore, above and below its axis, if both stand level."""
    found = []
    for up in (-1, 1):
        band = oblong(-_FAR_MM, _FAR_MM, axis + up * (rim + 1), axis + up * (rim + _REST_MM))
        tops = []
        for body in here.placed:
            if body.drawn.solid.kind not in ("shell", "slab", "turned"):
                continue
            part = body.area.intersection(band)
            if not part.is_empty:
                z0, _, z1, _ = part.bounds
                tops.append((side * (z1 if side > 0 else z0), body))
        if not tops:
            return None
        top, body = max(tops, key=lambda item: item[0])
        face = body.area.intersection(band).intersection(
            oblong(side * top, side * (top - 0.2), -_FAR_MM, 2 * _FAR_MM)
        )
        y = face.bounds[3] if up < 0 else face.bounds[1]  # the edge of the bore
        found.append(Touch(body.drawn.solid.id, side * top, y + up * 2))
    level = abs(found[0].z_mm - found[1].z_mm) < _EVEN_MM
    return (found[0], found[1]) if level else None


def _beside_shafts(here: Around, one: Drawn, bar: BaseGeometry, axis: float) -> BaseGeometry:
    """A foot or blade lies beside a shaft that stands out, and so behind it in the section."""
    for body in here.placed:
        if body.drawn.solid.axis == one.solid.axis and body.area.intersects(bar):
            z0, y0, z1, y1 = body.area.bounds
            if y0 < axis < y1:
                bar = bar.difference(oblong(z0 - 1, z1 + 1, y0 - 0.5, y1 + 0.5))
    return bar


def _straightedge(here: Around, *, leaf: bool) -> ToolStands | None:
    """A blade across a face, on the outermost of what stands level on both sides of its axis."""
    for one in _bulky(here):
        axis = here.heights[one.solid.axis]
        for side in (1, -1):
            end = one.area.bounds[2] if side > 0 else one.area.bounds[0]
            face = one.area.intersection(
                oblong(end, end - side * 0.2, one.area.bounds[1], one.area.bounds[3])
            )
            z, low, high = end, face.bounds[1], face.bounds[3]
            if high - low < 2 * _OVER_MM:
                continue
            bar = oblong(z, z + side * 2 * _BLADE_MM, low - _OVER_MM, high + _OVER_MM)
            areas = [_beside_shafts(here, one, bar, axis)]
            if leaf:
                middle = (low + high) / 2
                areas.append(oblong(z, z + side * 0.4, middle - 3, middle + 12))
            touches = (Touch(one.solid.id, z, low + 1), Touch(one.solid.id, z, high - 1))
            on = f"across the {_end(side)} face of {named(one)}, from edge to edge"
            made = _read(here, ToolForm.STRAIGHTEDGE, areas, touches, (side, 0), on, one.solid.axis)
            if not made.meets:
                return made
    return None


def _feeler(here: Around, between: Sequence[str]) -> ToolStands | None:
    """A leaf in the narrowest gap along the axis: between what is named, the step's own parts, or
    one of them and its neighbour.

    What of the step's own parts lies over the gap hides the leaf, which comes in beside it.
    """
    own, others = _bulky(here), [body.drawn for body in here.placed]
    beside = [pair for one in own for other in others for pair in ((one, other), (other, one))]
    named = [one for one in (*own, *others) if one.solid.id in between]
    for pairs in (list(permutations(named or own, 2)), [] if named else beside):
        gaps = []
        for one, other in pairs:
            apart = one.solid.part != other.solid.part or bool(between)
            if apart and one.solid.axis == other.solid.axis:
                found = _gap(one, other, here.heights[one.solid.axis])
                gaps += [(*found, one, other)] if found else []
        for _, z, low, top, one, other in sorted(gaps, key=lambda gap: gap[:4]):
            for up, aside in product((-1, 1), (0, 3, -3, 6, -6)):
                made = _leaf(here, (one, other), (z, low, top), up, aside)
                if not made.meets:
                    return made
    return None


def _leaf(
    here: Around,
    pair: tuple[Drawn, Drawn],
    gap: tuple[float, float, float],
    up: int,
    aside: float,
) -> ToolStands:
    """A leaf with its tip in a gap, bent aside before it goes on outwards."""
    (one, other), (z, low, top) = pair, gap
    axis = here.heights[one.solid.axis]
    tip, rim = axis + up * (top - min(4.0, (top - low) / 2)), axis + up * top
    areas = [
        oblong(z - 0.3, z + 0.3, tip, rim + up * 3),
        oblong(min(z, z + aside) - 0.3, max(z, z + aside) + 0.3, rim + up * 2, rim + up * 3),
        oblong(z + aside - 2, z + aside + 2, rim + up * 3, rim + up * _LEAF_MM),
    ]
    for body in here.beside:
        if body.drawn not in pair:
            areas = [area.difference(body.area) for area in areas]
    on = f"in the gap between {named(one)} and {named(other)}"
    touches = (Touch(one.solid.id, z, tip), Touch(other.solid.id, z, tip))
    return _read(here, ToolForm.FEELER, areas, touches, (0, up), on, one.solid.axis)


def _gap(one: Drawn, other: Drawn, axis: float) -> tuple[float, float, float, float] | None:
    """Width, place and radii of a gap between the rear of one solid and the front of another."""
    found = [
        (max(zb - za, 0.0), (za + zb) / 2, max(lowa, lowb), min(topa, topb))
        for za, lowa, topa in _steps(one, axis, 1)
        for zb, lowb, topb in _steps(other, axis, -1)
        if -_EVEN_MM <= zb - za <= _GAP_MM and min(topa, topb) - max(lowa, lowb) >= 1
    ]
    return min(found, default=None)


def _steps(one: Drawn, axis: float, side: int) -> list[tuple[float, float, float]]:
    """Faces of a solid that look to one side, above its axis: place, least and most radius."""
    from shapely import Point

    half, faces = one.area.intersection(oblong(-_FAR_MM, _FAR_MM, axis - _FAR_MM, axis)), []
    for piece in getattr(half, "geoms", [half]):
        for (za, ya), (zb, yb) in pairwise(getattr(piece, "exterior", piece).coords):
            middle, reach = (ya + yb) / 2, abs(ya - yb)
            if abs(za - zb) > 0.05 or reach < 0.5:
                continue
            inside, beyond = (half.contains(Point(za + by * side, middle)) for by in (-0.2, 0.2))
            if inside and not beyond:
                faces.append((za, axis - max(ya, yb), axis - min(ya, yb)))
    return faces


def _cord(here: Around) -> ToolStands | None:
    """A cord wound round a shaft, and the scale that pulls it."""
    for one, z, y, up in _rims(here, 4.0):
        turns = oblong(z - 4, z + 4, y, y + up * 1.5)
        cord = oblong(z - 0.6, z + 0.6, y + up * 1.5, y + up * 18)
        scale = oblong(z - 6, z + 6, y + up * 18, y + up * 40)
        touch = (Touch(one.solid.id, z, y),)
        on = f"on {named(one)}, by a cord"
        made = _read(here, ToolForm.SCALE, [turns, cord, scale], touch, (0, up), on,
                     one.solid.axis)  # fmt: skip
        if not made.meets and not made.after:
            return made
    return None


def _read(
    here: Around,
    form: ToolForm,
    areas: Sequence[BaseGeometry],
    touches: tuple[Touch, ...],
    way: tuple[float, float],
    on: str,
    axis: str,
) -> ToolStands:
    from shapely import union_all

    touched = {touch.solid for touch in touches}
    whole = union_all(list(areas))
    meets = here.crossed(whole, axis, here.placed, touched)
    after = here.crossed(whole, axis, here.beside, touched)
    return ToolStands(
        form,
        here.view,
        outlines_of(areas),
        touches,
        way,
        on,
        parts_of(meets),
        parts_of(after),
    )


def _disc(middle: tuple[float, float]) -> BaseGeometry:
    from shapely import Polygon

    return Polygon(circle(middle, _DIAL_MM))


def _end(side: int) -> str:
    return next(name for name, one in SIDES.items() if one == side)
