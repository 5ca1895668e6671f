"""Where solids are counted from in space: the frame of every axis."""

from __future__ import annotations

import math

from twoshaft.models.shape.axes import axis_places
from twoshaft.models.shape.schematic import shapes_of
from twoshaft.models.shape.section import section_of
from twoshaft.units.kept import kept
from twoshaft.units.sections.shapes import Shapes
from twoshaft.units.unit import Unit

Vector = tuple[float, float, float]


@kept()
def frames(unit: Unit) -> dict[str, tuple[Vector, Vector, Vector]]:
    """Origin, direction along and direction across of every axis.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    dict
        By axis. An axis square to the shafts lies where the middle of the one beside it is.

    Examples
    --------
    >>> frames(unit)["input"][1]
    (0.0, 0.0, 1.0)
    """
    shapes, found = shapes_of(unit), {}
    places = axis_places(unit, shapes)
    for view in shapes.views:
        for k, id in enumerate(view.axes):
            axis, here = shapes.axis_by_id(id), places[id]
            other = axis.beside if axis.square else (
                view.axes[k + 1] if k + 1 < len(view.axes) else view.axes[k - 1] if k else None
            )  # fmt: skip
            x, y = (0.0, -1.0) if other is None else _towards(here, places[other])
            if not axis.square and k and k + 1 == len(view.axes):
                x, y = -x, -y
            if axis.square:
                middle = _middle(unit, shapes, axis.beside)
                found[id] = ((*here, middle), (-y, x, 0.0), (x, y, 0.0))
            else:
                found[id] = ((*here, 0.0), (0.0, 0.0, 1.0), (x, y, 0.0))
    return found


def _towards(here: tuple[float, float], there: tuple[float, float]) -> tuple[float, float]:
    away = math.dist(here, there) or 1.0
    return (there[0] - here[0]) / away, (there[1] - here[1]) / away


def _middle(unit: Unit, shapes: Shapes, axis: str | None) -> float:
    """Middle of what lies on an axis, along it [mm]."""
    ends = [
        z
        for view in section_of(unit).views
        for one in view.drawn
        if one.solid.axis == axis and one.solid.kind != "shell"
        for z in (one.bounds[0], one.bounds[2])
    ]
    return (min(ends) + max(ends)) / 2 if ends else 0.0
