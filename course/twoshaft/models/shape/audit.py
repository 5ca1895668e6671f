"""What a shapes section gets wrong, found by building it."""

from __future__ import annotations

import math
from collections.abc import Iterator

from twoshaft.errors import UnitFileError
from twoshaft.models.shape.axes import (
    axis_heights,
    axis_places,
    centre_distance,
    distance_is_told,
)
from twoshaft.models.shape.blocking import in_the_way, overlaps
from twoshaft.models.shape.forms import solid_pieces
from twoshaft.models.shape.meeting import met_in_space
from twoshaft.models.shape.sliding import missed, slid
from twoshaft.units.findings import Finding
from twoshaft.units.sections.shapes import GearSolid, Shapes, Slab, Turned, WrongLook
from twoshaft.units.unit import Unit

_APART_MM = 0.3


def audit_shapes(unit: Unit) -> tuple[Finding, ...]:
    """Find solids that cannot be as they are told.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of Finding
        Names that the unit lacks; outlines that cross themselves; gears that do not meet at
        their centre distance, or slide past each other; parts that lie in each other, in a
        section or in space; parts that cannot get where they belong. Later ones are looked for
        only where nothing was found before.

    Examples
    --------
    >>> audit_shapes(unit)
    ()
    """
    shapes = unit.shapes_if_any
    if shapes is None:
        return ()
    for look in (_names, _outlines, _references, _meshes, _overlaps, _in_space, _ways):
        found = tuple(look(unit, shapes))
        if found:
            return found
    return ()


def _names(unit: Unit, shapes: Shapes) -> Iterator[Finding]:
    for solid in shapes.solids:
        if solid.part is not None and solid.part not in unit.part_by_id:
            yield Finding(
                unit.where("shapes", "solids", solid.id, "part"),
                f"solid '{solid.id}' belongs to '{solid.part}', which is not in parts",
                "name one of the parts, or leave it out",
            )
    for step in shapes.steps:
        if step.id not in unit.operation_by_id:
            yield Finding(
                unit.where("shapes", "steps", step.id),
                f"'{step.id}' is not an operation",
                "name one of the operations, or remove it",
            )
        for part in (*step.at, *([step.on] if step.on else [])):
            if part not in unit.part_by_id:
                yield Finding(
                    unit.where("shapes", "steps", step.id),
                    f"'{step.id}' names '{part}', which is not in parts",
                    "name one of the parts",
                )
    known = {solid.part for solid in shapes.solids} | {solid.id for solid in shapes.solids}
    for look in shapes.wrong:
        for found, what in _not_listed(unit, look, known):
            yield Finding(
                unit.where("shapes", "wrong", look.id),
                f"'{look.id}' names '{found}', which is not {what}",
                "correct the id, or remove the entry",
            )
    shafts = unit.gear_train_if_any.shafts if unit.gear_train_if_any else ()
    for axis in shapes.axes:
        if axis.shaft is not None and axis.shaft not in shafts:
            yield Finding(
                unit.where("shapes", "axes", axis.id, "shaft"),
                f"axis '{axis.id}' names the shaft '{axis.shaft}', which the gear train lacks",
                "correct the id, or leave it out",
            )


def _not_listed(unit: Unit, look: WrongLook, known: set[str | None]) -> Iterator[tuple[str, str]]:
    """What the look of something built wrongly names and nobody has."""
    operation = unit.operation_by_id.get(look.operation or "")
    ways = {way.id for way in operation.wrong_ways} if operation else set()
    if look.way and look.way not in ways:
        yield look.way, f"a wrong way of '{look.operation}'"
    misbuilds = {one.id for one in unit.faults.misbuilds} if unit.has("faults") else set()
    if look.misbuild and look.misbuild not in misbuilds:
        yield look.misbuild, "an assembly fault of the section faults"
    for part in (*look.turned, *look.missing, *look.off):
        if part not in known:
            yield part, "a part or a solid of the section"


def _outlines(unit: Unit, shapes: Shapes) -> Iterator[Finding]:
    from shapely import Polygon
    from shapely.validation import explain_validity

    for solid in shapes.solids:
        if isinstance(solid, Turned):
            inside = solid.inside_mm or ((solid.outside_mm[0][0], 0), (solid.outside_mm[-1][0], 0))
            outline = (*solid.outside_mm, *reversed(inside))
        elif isinstance(solid, Slab):
            outline = solid.outline_mm
        else:
            continue
        area = Polygon(outline)
        if not area.is_valid:
            place = explain_validity(area).partition("[")[2].rstrip("]").replace(" ", ", ")
            yield Finding(
                unit.where("shapes", "solids", solid.id),
                f"the outline of '{solid.id}' crosses itself near ({place})",
                "give its points in order round it, outside and bore from front to rear",
            )


def _references(unit: Unit, shapes: Shapes) -> Iterator[Finding]:
    try:
        heights = axis_heights(unit, shapes)
    except UnitFileError as trouble:
        yield Finding(trouble.where or "", trouble.what, trouble.mend or "")
        return
    for solid in shapes.solids:
        try:
            solid_pieces(unit, solid, heights)
        except UnitFileError as trouble:
            yield Finding(trouble.where or "", trouble.what, trouble.mend or "")


def _meshes(unit: Unit, shapes: Shapes) -> Iterator[Finding]:
    train = unit.gear_train_if_any
    if train is None:
        return
    places = axis_places(unit, shapes)
    gears: dict[tuple[str, str], GearSolid] = {
        (one.mesh, one.side): one for one in shapes.solids if isinstance(one, GearSolid)
    }
    for solid in gears.values():
        mesh = next(entry for entry in train.meshes if entry.id == solid.mesh)
        shaft, on = getattr(mesh, solid.side).shaft, shapes.axis_by_id(solid.axis).shaft
        if shaft != on:
            yield Finding(
                unit.where("shapes", "solids", solid.id, "axis"),
                f"gear '{solid.id}' lies on '{solid.axis}', but turns with '{shaft}'",
                f"put it on the axis of '{shaft}'",
            )
    sliding = [mesh for meshes in slid(train).values() for mesh in meshes]
    on_shaft = {axis.shaft: axis.id for axis in shapes.axes if axis.shaft is not None}
    for mesh in train.meshes:
        shafts = mesh.driving.shaft, mesh.driven.shaft
        ends = [on_shaft.get(shaft) for shaft in shafts]
        if ends[0] is not None and ends[1] is not None and distance_is_told(train, *shafts):
            wanted = centre_distance(train, *shafts)
            apart = math.dist(places[ends[0]], places[ends[1]])
            if wanted is not None and abs(apart - wanted) > _APART_MM:
                yield Finding(
                    unit.where("shapes", "axes", ends[1]),
                    f"the axes of mesh '{mesh.id}' lie {apart:.2f} mm apart, and its gears meet "
                    f"at {wanted:.2f} mm",
                    "leave out the distance, or correct it or the angle",
                )
        pair = [gears.get((mesh.id, side)) for side in ("driving", "driven")]
        if pair[0] is None or pair[1] is None or mesh in sliding:
            continue
        low = max(one.z_mm[0] for one in pair if one)
        high = min(one.z_mm[1] for one in pair if one)
        if low >= high:
            yield Finding(
                unit.where("shapes", "solids", pair[1].id, "z_mm"),
                f"the gears of mesh '{mesh.id}' do not face each other along the shafts",
                "give both the same z",
            )
    yield from missed(unit, gears)


def _overlaps(unit: Unit, shapes: Shapes) -> Iterator[Finding]:
    for met in overlaps(unit):
        yield Finding(
            unit.where("shapes", "solids", met.other.solid.id),
            f"'{met.other.solid.id}' lies in '{met.one.solid.id}' near z {met.near[0]:g} mm",
            "correct the size or place of one of the two",
        )


def _in_space(unit: Unit, shapes: Shapes) -> Iterator[Finding]:
    for met in met_in_space(unit):
        one, other = met.one.solid, met.other.solid
        yield Finding(
            unit.where("shapes", "solids", other.id),
            f"in space '{other.id}' lies in '{one.id}' near z {met.z_mm:g} mm, which the section "
            f"does not show",
            f"correct the angle or distance of axis '{other.axis}' or '{one.axis}', or the size of "
            "one of the two",
        )


def _ways(unit: Unit, shapes: Shapes) -> Iterator[Finding]:
    from twoshaft.models.order import OrderTask, model_order

    task = OrderTask.from_unit(unit)
    members = dict(zip(task.steps, task.members, strict=True))
    done: list[str] = []
    for step in model_order(task):
        together = {part for id in members[step] for part in unit.operation_by_id[id].parts}
        for id in members[step]:
            met = in_the_way(unit, id, done, together)
            if met:
                yield Finding(
                    unit.where("shapes", "steps", id),
                    f"'{met[0].one.solid.id}' cannot get where it belongs in '{id}': "
                    f"'{met[0].other.solid.id}' is in its way near z {met[0].near[0]:g} mm",
                    "correct the way of the step, or the form of one of the two",
                )
        done += members[step]
