"""A tool as it stands at the unit: outlines, what it touches, and what it would run into."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from twoshaft.models.shape.blocking import Body
from twoshaft.models.shape.pieces import Outline
from twoshaft.models.shape.section import Drawn
from twoshaft.units.sections.tool_forms import ToolForm

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry


@dataclass(frozen=True)
class Touch:
    """A place at which a tool touches a solid.

    Attributes
    ----------
    solid : str
    z_mm : float
    height_mm : float
        Below the first axis of the view [mm].

    Examples
    --------
    >>> Touch("input-seal", -35.0, 25.0).solid
    'input-seal'
    """

    solid: str
    z_mm: float
    height_mm: float


@dataclass(frozen=True)
class ToolStands:
    """A tool in its place.

    Attributes
    ----------
    form : ToolForm
    view : str
    outlines : tuple of outlines
        Closed, in millimetres of the view.
    touches : tuple of Touch
    way : tuple of float
        From where it touches outwards to the hand: along z and downwards, one of them 0.
    on : str
        Where it stands, in words.
    meets : tuple of str
        Parts that a straight tool would run into; empty where its way is free.
    after : tuple of str
        Parts of the same step that it would run into, and that so go on afterwards.

    Examples
    --------
    >>> from twoshaft.models.tooling import tools_standing
    >>> one, = tools_standing(unit, ["fit-input-seal"], [])
    >>> one.form.value, one.on, one.meets
    ('driver', 'on the rear face of the input-shaft oil seal, at its outer edge', ())
    """

    form: ToolForm
    view: str
    outlines: tuple[Outline, ...]
    touches: tuple[Touch, ...]
    way: tuple[float, float]
    on: str
    meets: tuple[str, ...] = ()
    after: tuple[str, ...] = ()


def oblong(z0: float, z1: float, y0: float, y1: float) -> BaseGeometry:
    """A rectangle as an area, whichever ends are given first.

    Parameters
    ----------
    z0, z1 : float
        Its ends [mm].
    y0, y1 : float
        Its edges [mm].

    Examples
    --------
    >>> oblong(2, 0, 0, 3).area
    6.0
    """
    from shapely import box  # takes long to load

    return box(min(z0, z1), min(y0, y1), max(z0, z1), max(y0, y1))


def outlines_of(areas: Iterable[BaseGeometry]) -> tuple[Outline, ...]:
    """The outer outlines of some areas, those that touch as one.

    Parameters
    ----------
    areas : iterable of shapely geometries

    Examples
    --------
    >>> len(outlines_of([oblong(0, 1, 0, 1), oblong(1, 2, 0, 1)]))
    1
    """
    from shapely import union_all

    whole = union_all(list(areas))
    return tuple(
        tuple((round(z, 3), round(y, 3)) for z, y in one.exterior.coords[:-1])
        for one in getattr(whole, "geoms", [whole])
        if one.geom_type == "Polygon"
    )


def named(one: Drawn) -> str:
    """A solid as it is called within a sentence.

    Parameters
    ----------
    one : Drawn

    Examples
    --------
    >>> from twoshaft.models.shape import solids_of
    >>> named(*solids_of(unit, "shafts", "input-seal"))
    'the input-shaft oil seal'
    """
    return f"the {one.name[:1].lower()}{one.name[1:]}"


def parts_of(bodies: Iterable[Body]) -> tuple[str, ...]:
    """The parts to which some bodies belong, each once.

    Parameters
    ----------
    bodies : iterable of Body

    Examples
    --------
    >>> from twoshaft.models.shape.blocking import bodies
    >>> "input-seal" in parts_of(bodies(unit))
    True
    """
    return tuple(dict.fromkeys(body.part for body in bodies if body.part))
