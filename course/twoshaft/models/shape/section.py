"""The sections of a unit: every part's pieces, view by view, in the order of drawing."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from twoshaft.models.shape.axes import axis_heights
from twoshaft.models.shape.forms import solid_pieces
from twoshaft.models.shape.pieces import Piece, Role
from twoshaft.models.shape.schematic import shapes_of
from twoshaft.units.kept import kept
from twoshaft.units.sections.shapes import AnySolid
from twoshaft.units.unit import Unit

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry


def _layer(solid: AnySolid) -> float:
    """Cases behind, then what is seen whole behind the cut, cut parts, shafts, pins and bolts."""
    if solid.kind == "turned":
        return 3 if solid.uncut and not solid.inside_mm else 2
    if solid.kind == "slab":
        return 1 if solid.uncut else 2.5
    return {"shell": 0, "box": 1, "rod": 4, "spring": 4}.get(solid.kind, 2)


@dataclass(frozen=True)
class Drawn:
    """A solid with the pieces of its section.

    Attributes
    ----------
    solid : a solid of the shapes section
    name : str
        What it is.
    pieces : tuple of Piece

    Examples
    --------
    >>> section_of(unit).views[0].drawn[0].solid.kind
    'shell'
    """

    solid: AnySolid
    name: str
    pieces: tuple[Piece, ...]

    @cached_property
    def bounds(self) -> tuple[float, float, float, float]:
        """Least z, least height, most z, most height [mm]."""
        zs, ys = zip(*(point for piece in self.pieces for point in piece.outline), strict=True)
        return min(zs), min(ys), max(zs), max(ys)

    @cached_property
    def area(self) -> BaseGeometry:
        """What its closed pieces cover [mm²], those that are seen behind a cut left out."""
        from shapely import Polygon, union_all  # takes long to load

        return union_all([
            Polygon(piece.outline, piece.holes).buffer(0)
            for piece in self.pieces
            if piece.closed and piece.role is not Role.BEHIND
        ])  # fmt: skip


@dataclass(frozen=True)
class ViewSection:
    """One view: its axes with their heights, and its solids from back to front.

    Examples
    --------
    >>> section_of(unit).views[0].id
    'shafts'
    """

    id: str
    name: str
    axes: tuple[tuple[str, float], ...]
    drawn: tuple[Drawn, ...]

    @cached_property
    def bounds(self) -> tuple[float, float, float, float]:
        """Least z, least height, most z, most height [mm]."""
        corners = [one.bounds for one in self.drawn]
        low = [min(corner[k] for corner in corners) for k in (0, 1)]
        high = [max(corner[k] for corner in corners) for k in (2, 3)]
        return low[0], low[1], high[0], high[1]


@dataclass(frozen=True)
class Section:
    """All views of a unit.

    Attributes
    ----------
    views : tuple of ViewSection
    own : bool
        Whether the unit file gives the shapes; else they are a schematic.

    Examples
    --------
    >>> section_of(unit).own
    True
    """

    views: tuple[ViewSection, ...]
    own: bool


@kept()
def section_of(unit: Unit) -> Section:
    """Every part of a unit in section: by its shapes, or as a schematic where it has none.

    Parameters
    ----------
    unit : Unit

    Raises
    ------
    UnitFileError
        Where a solid refers to something that the unit does not have.

    Examples
    --------
    >>> [view.id for view in section_of(unit).views]
    ['shafts', 'rails', 'gate']
    """
    shapes = shapes_of(unit)
    heights = axis_heights(unit, shapes)
    names = {part.id: part.name for part in unit.parts}
    views = []
    for view in shapes.views:
        drawn = []
        for solid in shapes.solids:
            if solid.axis in view.axes:
                pieces = tuple(solid_pieces(unit, solid, heights))
                name = solid.name or names.get(solid.part or "", solid.id)
                drawn.append(Drawn(solid, name, pieces))
        drawn.sort(key=lambda one: _layer(one.solid))
        if drawn:
            axes = tuple((axis, heights[axis]) for axis in view.axes)
            views.append(ViewSection(view.id, view.name, axes, tuple(drawn)))
    return Section(tuple(views), unit.has("shapes"))
