"""What stands in a part's way, from the solids of a section and the way in.

After Wilson and Latombe (1994), blocking by direction: a part's section, swept along its way,
meets what is already in place. The section is that of closed rings, so nothing escapes sideways;
teeth of meshing gears pass each other; bolts and pins have made their holes. Ways across the
shafts and by hand leave the plane of the section: of them a ring is judged that goes over
something from the side, and what is lowered into an open half of a case (``lowering.py``).
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations, pairwise
from typing import Any

from twoshaft.models.shape.lowering import lowered_onto
from twoshaft.models.shape.pieces import PRESSED_MM, Role
from twoshaft.models.shape.schematic import shapes_of
from twoshaft.models.shape.section import Drawn, section_of
from twoshaft.models.shape.state import fitted_after, on_the_bench, step_shown
from twoshaft.units.kept import kept
from twoshaft.units.sections.shapes import GearSolid
from twoshaft.units.unit import Unit

_AREAS = (Role.CUT, Role.WHOLE, Role.THIN, Role.SOFT)
_LOOSE = ("rod", "spring", "box")  # they make their holes, or are no true form


@dataclass(frozen=True)
class Body:
    """A solid with its areas in the plane of its view.

    Examples
    --------
    >>> bodies(unit)[0].part
    'clutch-housing'
    """

    drawn: Drawn
    view: str
    row: int
    """Place of its axis in the view, from the top."""
    area: Any

    @property
    def part(self) -> str | None:
        """The part it belongs to."""
        return self.drawn.solid.part


@dataclass(frozen=True)
class Meets:
    """Two solids that meet where they should not.

    Examples
    --------
    >>> overlaps(unit)
    ()
    """

    one: Drawn
    other: Drawn
    near: tuple[float, float]
    """A place in both: z and height in the view [mm]."""


@kept()
def bodies(unit: Unit) -> tuple[Body, ...]:
    """Every solid of a unit that can stand in a way, with its areas.

    Examples
    --------
    >>> len(bodies(unit)) > 80
    True
    """
    from shapely import Polygon, union_all

    found = []
    for view in section_of(unit).views:
        rows = {axis: k for k, (axis, _) in enumerate(view.axes)}
        for one in view.drawn:
            if one.solid.kind in _LOOSE or (one.solid.kind == "slab" and one.solid.uncut):
                continue
            areas = [Polygon(p.outline, p.holes) for p in one.pieces if p.role in _AREAS]
            if all(area.is_valid for area in areas):
                found.append(Body(one, view.id, rows[one.solid.axis], union_all(areas)))
    return tuple(found)


@kept()
def overlaps(unit: Unit) -> tuple[Meets, ...]:
    """Solids of different parts that lie in each other when everything is in place.

    Parameters
    ----------
    unit : Unit

    Examples
    --------
    >>> overlaps(unit)
    ()
    """
    found = []
    for one, other in combinations(bodies(unit), 2):
        if one.part != other.part and _comparable(one, other):
            common = _common(one.area, other.area)
            if common is not None:
                found.append(Meets(one.drawn, other.drawn, common))
    return tuple(found)


def in_the_way(
    unit: Unit, operation: str, before: Sequence[str], beside: Iterable[str] = ()
) -> tuple[Meets, ...]:
    """What stands in the way of the parts of an operation.

    Parameters
    ----------
    unit : Unit
    operation : str
        The operation that fits them.
    before : sequence of str
        Operations that are done, in their order.
    beside : iterable of str, optional
        Parts that go in with them and are in nobody's way.

    Returns
    -------
    tuple of Meets
        The moving solid, then the one it meets; empty where the way is free, or not judged.

    Examples
    --------
    >>> met = in_the_way(unit, "fit-input-seal", ["fit-input-front-bearing"])
    >>> met[0].other.solid.part
    'input-front-bearing'
    """
    shown = step_shown(unit, operation)
    if shown.way is None or shown.leaves:
        return ()
    said = shapes_of(unit).step_by_id(operation)
    passes = said.passes_mm if said else 0.0
    bench = on_the_bench(unit, before)
    own = {part for part, base in bench.items() if base in shown.parts}
    moving = set(shown.parts) | own
    if shown.on is not None and shown.on not in fitted_after(unit, before):
        still = {part for part, base in bench.items() if base == shown.on} | {shown.on}
    else:
        still = set(fitted_after(unit, before)) - set(bench)
    still -= moving | set(beside)
    found: list[Meets] = []
    for one in bodies(unit):
        if one.part not in moving:
            continue
        way = shown.way if one.part in own else one.drawn.solid.way or shown.way
        against = [
            other for other in bodies(unit) if other.part in still and _comparable(one, other)
        ]
        if against and way in ("rear", "front"):
            found += _meets(one, against, way, passes)
        elif way == "outside":
            found += _threads(one, against)
    if shown.on is None:
        for drawn in _drawn_of(unit, moving - own):
            if (drawn.solid.way or shown.way) == "outside":
                above = lowered_onto(unit, drawn.solid.id, still, passes)
                found += (Meets(drawn, other, _near(drawn)) for other in above)
    return tuple(found)


def _drawn_of(unit: Unit, parts: Collection[str]) -> list[Drawn]:
    return [d for view in section_of(unit).views for d in view.drawn if d.solid.part in parts]


def _near(one: Drawn) -> tuple[float, float]:
    z0, y0, z1, y1 = one.bounds
    return round((z0 + z1) / 2, 1), round((y0 + y1) / 2, 1)


def _threads(one: Body, against: list[Body]) -> Iterator[Meets]:
    """What passes through a closed ring that comes from the side."""
    from shapely import Polygon, union_all

    bore = union_all([Polygon(p.outline) for p in one.drawn.pieces if p.role is Role.BEHIND])
    for other in against:
        met = _common(bore, other.area) if one.row == other.row else None
        if met is not None:
            yield Meets(one.drawn, other.drawn, met)


def _meets(one: Body, against: list[Body], way: str, passes_mm: float) -> Iterator[Meets]:
    ends = [other.area.bounds for other in (one, *against)]
    reach = 1 + max(end[2] for end in ends) - min(end[0] for end in ends)
    path = _swept(one.area, reach if way == "rear" else -reach)
    for other in against:
        met = _common(path, other.area, passes_mm)
        if met is not None:
            yield Meets(one.drawn, other.drawn, met)


def _comparable(one: Body, other: Body) -> bool:
    """Whether the plane tells the truth about two solids: neighbours, and no meshing gears."""
    if one.view != other.view:
        return False
    if "shell" in (one.drawn.solid.kind, other.drawn.solid.kind):
        return True
    if (
        one.row != other.row
        and isinstance(one.drawn.solid, GearSolid)
        and isinstance(other.drawn.solid, GearSolid)
    ):
        return False
    return abs(one.row - other.row) <= 1


def _common(one: Any, other: Any, passes_mm: float = 0.0) -> tuple[float, float] | None:
    """A place that lies in both by more than a press fit; None if there is none."""
    if not one.intersects(other):
        return None
    common = one.intersection(other).buffer(-PRESSED_MM - passes_mm / 2)
    if common.is_empty:
        return None
    at = common.representative_point()
    return round(at.x, 1), round(at.y, 1)


def _swept(area: Any, reach: float) -> Any:
    """Everything that an area passes on its way along z."""
    from shapely import Polygon, union_all
    from shapely.affinity import translate

    swept = [area, translate(area, reach)]
    for part in getattr(area, "geoms", [area]):
        for line in (part.exterior, *part.interiors):
            points = list(line.coords)
            for (z0, y0), (z1, y1) in pairwise(points):
                if y0 != y1:
                    swept.append(Polygon([(z0, y0), (z1, y1), (z1 + reach, y1), (z0 + reach, y0)]))
    return union_all(swept)
