"""Where the axes of a unit lie: in space, and one below the other in a developed section."""

from __future__ import annotations

import math

from twoshaft.errors import UnitFileError
from twoshaft.units.sections.geartrain import GearTrain, Mesh
from twoshaft.units.sections.shapes import AxisLine, Shapes
from twoshaft.units.unit import Unit


def reference_radii(mesh: Mesh) -> tuple[float, float]:
    """Reference radii of both gears of a mesh [mm]: half the teeth times the transverse module.

    Formula of ISO 21771 (from memory).

    Examples
    --------
    >>> [round(r, 2) for r in reference_radii(unit.gear_train.meshes[0])]
    [16.01, 57.88]
    """
    module = mesh.drawn_module_mm / math.cos(math.radians(mesh.helix_deg))
    return module * mesh.driving.teeth / 2, module * mesh.driven.teeth / 2


def centre_distance(train: GearTrain, one: str, other: str) -> float | None:
    """Centre distance of two shafts that mesh [mm], as listed, else by their gears; None if none.

    Parameters
    ----------
    train : GearTrain
    one, other : str
        Ids of the shafts.

    Examples
    --------
    >>> centre_distance(unit.gear_train, "output-shaft", "input-shaft")
    75.0
    >>> centre_distance(unit.gear_train, "idler-shaft", "input-shaft")
    43.75
    """
    pair = {one, other}
    listed = (entry.mm for entry in train.distances if set(entry.between) == pair)
    meshes = [m for m in train.meshes if {m.driving.shaft, m.driven.shaft} == pair]
    meshes.sort(key=lambda mesh: mesh.module_mm is None)  # a usual module is the last resort
    return next(listed, next((sum(reference_radii(mesh)) for mesh in meshes), None))


def distance_is_told(train: GearTrain, one: str, other: str) -> bool:
    """Whether a unit says how far two of its shafts are apart, itself or by a module.

    Examples
    --------
    >>> distance_is_told(unit.gear_train, "idler-shaft", "input-shaft")
    True
    """
    pair = {one, other}
    return any(set(entry.between) == pair for entry in train.distances) or any(
        mesh.module_mm is not None and {mesh.driving.shaft, mesh.driven.shaft} == pair
        for mesh in train.meshes
    )


def working_radii(train: GearTrain, mesh: Mesh) -> tuple[float, float]:
    """Working pitch radii of both gears [mm]: they touch at the centre distance of their shafts.

    Examples
    --------
    >>> mesh = unit.gear_train.meshes[0]
    >>> [round(r, 2) for r in working_radii(unit.gear_train, mesh)]
    [16.25, 58.75]
    """
    distance = centre_distance(train, mesh.driving.shaft, mesh.driven.shaft)
    assert distance is not None  # they mesh
    teeth = mesh.driving.teeth, mesh.driven.teeth
    return distance * teeth[0] / sum(teeth), distance * teeth[1] / sum(teeth)


def axis_distance(unit: Unit, shapes: Shapes, axis: AxisLine) -> float:
    """Distance of an axis from the one it lies beside [mm].

    Raises
    ------
    UnitFileError
        Where neither the axis nor the gear train says it.

    Examples
    --------
    >>> axis_distance(unit, unit.shapes, unit.shapes.axis_by_id("output"))
    75.0
    """
    if axis.distance_mm is not None:
        return axis.distance_mm
    other = None if axis.beside is None else shapes.axis_by_id(axis.beside)
    if other is not None and axis.shaft and other.shaft and unit.has("gear_train"):
        known = centre_distance(unit.gear_train, axis.shaft, other.shaft)
        if known is not None:
            return known
    raise UnitFileError(
        f"nothing says how far axis {axis.id!r} lies from {axis.beside!r}",
        where=unit.where("shapes", "axes", axis.id),
        mend="give its distance mm, or name shafts that mesh",
    )


def axis_places(unit: Unit, shapes: Shapes) -> dict[str, tuple[float, float]]:
    """x and y of every axis [mm], seen from the rear; the first one lies at the origin.

    Examples
    --------
    >>> axis_places(unit, unit.shapes)["input"]
    (0.0, 0.0)
    """
    places: dict[str, tuple[float, float]] = {}
    for axis in shapes.axes:
        if axis.beside is None:
            places[axis.id] = (axis.distance_mm or 0.0, 0.0)
            continue
        x, y = places[axis.beside]
        away, turn = axis_distance(unit, shapes, axis), math.radians(axis.angle_deg)
        places[axis.id] = (x + away * math.cos(turn), y + away * math.sin(turn))
    return places


def axis_heights(unit: Unit, shapes: Shapes) -> dict[str, float]:
    """How far each axis lies below the first one of its view, the plane laid flat [mm].

    Neighbours of a view are as far apart as in the unit; others are not.

    Examples
    --------
    >>> heights = axis_heights(unit, unit.shapes)
    >>> heights["output"] - heights["input"]
    75.0
    """
    places, heights = axis_places(unit, shapes), {}
    for view in shapes.views:
        below = 0.0
        for k, axis in enumerate(view.axes):
            below += math.dist(places[view.axes[k - 1]], places[axis]) if k else 0.0
            heights[axis] = round(below, 6)
    return heights
