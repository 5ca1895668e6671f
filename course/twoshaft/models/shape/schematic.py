"""A schematic of a unit that says nothing of its shapes, from gear train, bearings and stages."""

from __future__ import annotations

from typing import Any

from twoshaft.models.shape.axes import centre_distance, working_radii
from twoshaft.models.shape.typical import SHAFT_RADIUS_MM, gear_width
from twoshaft.units.sections.geartrain import GearTrain
from twoshaft.units.sections.shapes import Shapes
from twoshaft.units.unit import Unit

_GAP_MM, _END_MM = 8.0, 26.0
_BOX_MM, _ROW_MM, _IN_A_ROW = (46.0, 14.0), 20.0, 6
BOXES = "parts-without-shape"


def shapes_of(unit: Unit) -> Shapes:
    """The shapes of a unit, every part in them: as given, else a schematic; boxes for the rest.

    Parameters
    ----------
    unit : Unit

    Examples
    --------
    >>> bare = unit.with_sections(shapes=None)
    >>> {solid.part for solid in shapes_of(bare).solids} >= {part.id for part in bare.parts}
    True
    """
    shapes = unit.shapes_if_any
    if shapes is None:
        return schematic(unit)
    if {part.id for part in unit.parts} <= {solid.part for solid in shapes.solids}:
        return shapes
    return _with_boxes(unit, shapes.model_dump(exclude_unset=True))


def schematic(unit: Unit) -> Shapes:
    """Shafts, gears and bearings by usual proportions, and a labelled box for every other part.

    Parameters
    ----------
    unit : Unit

    Examples
    --------
    >>> sorted({solid.kind for solid in schematic(unit).solids})
    ['bearing', 'box', 'gear', 'turned']
    """
    given: dict[str, Any] = {"axes": [], "views": [], "solids": [], "steps": []}
    train = unit.gear_train_if_any
    if train is not None:
        order = _from_top(train)
        _axes(given, train, order)
        _shafts(given, unit, train, order)
        given["views"].append({"id": "shafts", "name": "Shafts, not to scale along", "axes": order})
    return _with_boxes(unit, given)


def _from_top(train: GearTrain) -> list[str]:
    """Shafts that carry gears: those beside, input, the one that drives the case, the case."""
    main = list(dict.fromkeys((train.input, train.driven_from, train.turned_last)))
    carrying = [side.shaft for mesh in train.meshes for side in (mesh.driving, mesh.driven)]
    return [*dict.fromkeys(s for s in carrying if s not in main), *main]


def _axes(given: dict[str, Any], train: GearTrain, order: list[str]) -> None:
    for k, shaft in enumerate(order):
        axis: dict[str, Any] = {"id": shaft, "name": shaft.replace("-", " "), "shaft": shaft}
        if k:
            known = centre_distance(train, order[k - 1], shaft)
            radii = [max(working_radii(train, m)) for m in train.meshes]
            axis |= {"beside": order[k - 1], "distance mm": round(known or 2 * max(radii), 3)}
        given["axes"].append(axis)


def _shafts(given: dict[str, Any], unit: Unit, train: GearTrain, order: list[str]) -> None:
    """Meshes side by side, the final drive first; shafts a little longer than their gears."""
    parts = {part.id for part in unit.parts}
    meshes = sorted(train.meshes, key=lambda mesh: mesh.id != train.final_drive)
    reach: dict[str, list[float]] = {}
    at, gears = _END_MM, list[dict[str, Any]]()
    for mesh in meshes:
        wide = gear_width(mesh.drawn_module_mm)
        for side, gear in (("driving", mesh.driving), ("driven", mesh.driven)):
            reach.setdefault(gear.shaft, []).extend((at, at + wide))
            part = {"part": gear.shaft} if gear.shaft in parts else {}
            name = f"Gear of {mesh.id.replace('-', ' ')}, {gear.teeth} teeth"
            least = min(working_radii(train, mesh)) - 2 * mesh.drawn_module_mm
            gears.append(
                {"id": f"{mesh.id}-{side}", **part, "name": name, "kind": "gear",
                 "axis": gear.shaft, "mesh": mesh.id, "side": side,
                 "z mm": [round(at, 2), round(at + wide, 2)],
                 "bore mm": round(2 * min(SHAFT_RADIUS_MM, 0.8 * least), 2)}
            )  # fmt: skip
        at += wide + _GAP_MM
    supports = unit.bearings_if_any.supports if unit.bearings_if_any else ()
    for shaft in order:
        low, high = min(reach[shaft]) - _END_MM, max(reach[shaft]) + _END_MM
        bores = [gear["bore mm"] for gear in gears if gear["axis"] == shaft]
        radius = min(bores) / 2
        part = {"part": shaft} if shaft in parts else {}
        support = next((one for one in supports if shaft.startswith(one.id)), None)
        given["solids"].append(
            {"id": f"{shaft}-body", **part, "name": shaft.replace("-", " ").capitalize(),
             "kind": "turned", "axis": shaft, "uncut": True,
             "outside mm": [[low, radius], [high, radius]]}
        )  # fmt: skip
        for end in ("left", "right") if support is not None else ():
            bearing = unit.bearings.type_by_id(getattr(support, end))
            place = low + 2 if end == "left" else high - 2 - bearing.stand_mm
            given["solids"].append(
                {"id": f"{shaft}-{end}-bearing", "name": bearing.name, "kind": "bearing",
                 "axis": shaft, "type": bearing.id, "at mm": round(place, 2),
                 "large end": "rear" if end == "left" else "front"}
            )  # fmt: skip
    given["solids"] += gears


def _with_boxes(unit: Unit, given: dict[str, Any]) -> Shapes:
    """The same with a box for every part that has no solid, stage by stage."""
    drawn = {solid.get("part") for solid in given["solids"]}
    stage_of = {
        part: operation.stage for operation in reversed(unit.operations) for part in operation.parts
    }
    rows: dict[str, list[str]] = {stage.id: [] for stage in unit.stages}
    for one in unit.parts:
        if one.id not in drawn:
            rows.setdefault(stage_of.get(one.id, unit.stages[0].id), []).append(one.id)
    boxes, y, wide = [], 0.0, _BOX_MM[0] + 4
    for members in rows.values():
        for k, part in enumerate(members):
            z = (k % _IN_A_ROW) * wide
            if k and k % _IN_A_ROW == 0:
                y += _ROW_MM
            boxes.append(
                {"id": f"box-{part}", "part": part, "kind": "box", "axis": BOXES,
                 "z mm": (z, z + _BOX_MM[0]), "across mm": (y, y + _BOX_MM[1])}
            )  # fmt: skip
        y += _ROW_MM if members else 0.0
    if not boxes:
        return Shapes.model_validate(given)
    name = "Parts without a shape" if drawn - {None} else "Parts, stage by stage"
    return Shapes.model_validate(
        {
            **given,
            "axes": [*given["axes"], {"id": BOXES, "name": "no axis"}],
            "views": [*given["views"], {"id": BOXES, "name": name, "axes": (BOXES,)}],
            "solids": [*given["solids"], *boxes],
        }
    )
