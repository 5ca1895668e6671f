"""A part of a unit as it stands before somebody: what is fitted, and how each part lies."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator
from dataclasses import dataclass, replace

from twoshaft.errors import UnitFileError
from twoshaft.models.shape.pieces import Outline, Piece, Point, Role
from twoshaft.models.shape.section import Drawn, ViewSection, section_of
from twoshaft.units.kept import kept
from twoshaft.units.unit import Unit

_SAME_MM = 1e-3
_EVEN = 0.03  # a part whose middle is nearer than this part of its width is alike both ways


@dataclass(frozen=True)
class Lie:
    """How a part lies in its view: no word of whether that is right.

    Attributes
    ----------
    part : str
        Its id; or that of one solid, of a part whose solids lie apart from each other.
    heavy : str
        The end at which there is more of it, ``front`` or ``rear``; empty where both are alike.
    z_mm : tuple of float
        Its front and rear end.
    reach_mm : float
        How far it stands out from its axis.

    Examples
    --------
    >>> lie_of(unit, "shafts", "input-seal").heavy
    'front'
    """

    part: str
    heavy: str
    z_mm: tuple[float, float]
    reach_mm: float


def view_of(unit: Unit, view: str) -> ViewSection:
    """A view by its id.

    Raises
    ------
    UnitFileError
        When there is none.

    Examples
    --------
    >>> view_of(unit, "gate").axes[0][0]
    'selector'
    """
    found = next((one for one in section_of(unit).views if one.id == view), None)
    if found is None:
        raise UnitFileError(f"there is no view {view!r}", mend="name one of the views")
    return found


@kept()
def views_of_parts(unit: Unit) -> dict[str, tuple[str, ...]]:
    """The views that show each part.

    Examples
    --------
    >>> views_of_parts(unit)["magnet"]
    ('shafts',)
    """
    found: dict[str, tuple[str, ...]] = {}
    for view in section_of(unit).views:
        for part in dict.fromkeys(one.solid.part for one in view.drawn if one.solid.part):
            found[part] = (*found.get(part, ()), view.id)
    return found


@kept()
def lie_of(unit: Unit, view: str, part: str) -> Lie:
    """How a part lies in a view of the unit when it is where it belongs.

    Raises
    ------
    UnitFileError
        When the view does not show it.

    Examples
    --------
    >>> lie_of(unit, "shafts", "magnet").part
    'magnet'
    """
    own = solids_of(unit, view, part)
    if not own:
        raise UnitFileError(
            f"view {view!r} does not show the part {part!r}", mend="name a part that it shows"
        )
    z0, _, z1, _ = around(own)
    middle = _middle(own)
    off = (middle - (z0 + z1) / 2) / (z1 - z0)
    heavy = "" if abs(off) < _EVEN else "rear" if off > 0 else "front"
    return Lie(part, heavy, (z0, z1), _reach(unit, view, own))


def lying(unit: Unit, view: str, lies: Iterable[Lie]) -> dict[str, tuple[Drawn, ...]]:
    """The solids of some parts as they lie.

    Parameters
    ----------
    unit : Unit
    view : str
        The view in which they are seen.
    lies : iterable of Lie
        Where each part lies, which way round, and how far it reaches.

    Returns
    -------
    dict
        By part, solids whose pieces were moved, turned and made larger.

    Examples
    --------
    >>> seal = lie_of(unit, "shafts", "input-seal")
    >>> turned = replace(seal, heavy="rear")
    >>> lying(unit, "shafts", [seal])["input-seal"] == lying(unit, "shafts", [turned])["input-seal"]
    False
    """
    heights = dict(view_of(unit, view).axes)
    found = {}
    for lie in lies:
        home = lie_of(unit, view, lie.part)
        own = solids_of(unit, view, lie.part)
        if _alike(lie, home):
            found[lie.part] = own
            continue
        turned = bool(lie.heavy and home.heavy and lie.heavy != home.heavy)
        wide = (lie.z_mm[1] - lie.z_mm[0]) / (home.z_mm[1] - home.z_mm[0])
        tall = lie.reach_mm / home.reach_mm

        def place(point: Point, axis: float, both: float, lie=lie, home=home, turned=turned,
                  wide=wide, tall=tall) -> Point:  # fmt: skip
            along = (both - point[0] if turned else point[0]) - home.z_mm[0]
            return lie.z_mm[0] + along * wide, axis + (point[1] - axis) * tall

        ends = {one.solid.axis: around([other for other in own
                                        if other.solid.axis == one.solid.axis])
                for one in own}  # fmt: skip
        found[lie.part] = tuple(
            _moved(one, heights[axis], ends[axis][0] + ends[axis][2], place)
            for one in own
            for axis in [one.solid.axis]
        )
    return found


@kept()
def solids_of(unit: Unit, view: str, part: str) -> tuple[Drawn, ...]:
    """The solids of a part in a view, or the one solid of that id; empty where it shows neither.

    Examples
    --------
    >>> len(solids_of(unit, "shafts", "diff-bearings"))
    2
    """
    drawn = view_of(unit, view).drawn
    own = tuple(one for one in drawn if one.solid.part == part)
    return own or tuple(one for one in drawn if one.solid.id == part and one.solid.part)


def without_way(view: ViewSection, parts: Collection[str]) -> ViewSection:
    """A view in which some parts are drawn as the room they take up: no way round shows.

    Parameters
    ----------
    view : ViewSection
    parts : collection of str

    Examples
    --------
    >>> plain = without_way(view_of(unit, "shafts"), ["input-seal"])
    >>> [len(one.pieces) for one in plain.drawn if one.solid.part == "input-seal"]
    [2]
    """
    heights = dict(view.axes)
    drawn = []
    for one in view.drawn:
        if one.solid.part in parts:
            axis, (z0, _, z1, _) = heights[one.solid.axis], one.bounds
            drawn.append(replace(one, pieces=tuple(_room(one, axis, z0, z1))))
        else:
            drawn.append(one)
    return replace(view, drawn=tuple(drawn))


def _room(one: Drawn, axis: float, z0: float, z1: float) -> Iterator[Piece]:
    """Oblongs round what a solid has above its axis, below it and across it."""
    sides: dict[int, list[float]] = {}
    for piece in one.pieces:
        if piece.role in (Role.BEHIND, Role.PITCH):
            continue
        ys = [y for _, y in piece.outline]
        side = (min(ys) > axis - _SAME_MM) - (max(ys) < axis + _SAME_MM)
        sides.setdefault(side, []).extend(ys)
    for ys in sides.values():
        low, high = min(ys), max(ys)
        yield Piece(Role.WHOLE, ((z0, low), (z1, low), (z1, high), (z0, high)))


def around(some: Iterable[Drawn]) -> tuple[float, float, float, float]:
    """What several solids take up: least z and height, most z and height [mm].

    Examples
    --------
    >>> around(view_of(unit, "gate").drawn)[0] < 0
    True
    """
    corners = [one.bounds for one in some]
    low = [min(corner[k] for corner in corners) for k in (0, 1)]
    high = [max(corner[k] for corner in corners) for k in (2, 3)]
    return low[0], low[1], high[0], high[1]


def _alike(lie: Lie, home: Lie) -> bool:
    figures = zip((*lie.z_mm, lie.reach_mm), (*home.z_mm, home.reach_mm), strict=True)
    return lie.heavy == home.heavy and all(abs(one - other) < _SAME_MM for one, other in figures)


def _middle(own: Iterable[Drawn]) -> float:
    """z of the middle of all that is cut or whole."""
    from shapely import Polygon

    areas = [
        Polygon(piece.outline, piece.holes)
        for one in own
        for piece in one.pieces
        if piece.closed and piece.role is not Role.BEHIND
    ]
    weight = sum(area.area for area in areas)
    if not weight:  # a coil alone
        z0, _, z1, _ = around(own)
        return (z0 + z1) / 2
    return float(sum(area.area * area.centroid.x for area in areas) / weight)


def _reach(unit: Unit, view: str, own: Iterable[Drawn]) -> float:
    heights = dict(view_of(unit, view).axes)
    return max(
        abs(y - heights[one.solid.axis])
        for one in own
        for piece in one.pieces
        for _, y in piece.outline
    )


def _moved(
    one: Drawn, axis: float, both: float, place: Callable[[Point, float, float], Point]
) -> Drawn:
    """A solid moved; ``both`` ends of what lies on its axis, added, turn it about their middle."""

    def line(points: Outline) -> Outline:
        return tuple(place(point, axis, both) for point in points)

    pieces = tuple(
        Piece(piece.role, line(piece.outline), tuple(line(hole) for hole in piece.holes))
        for piece in one.pieces
    )
    return replace(one, pieces=pieces)
