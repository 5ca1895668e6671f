"""Where a torque wrench stands: its socket over the head of a bolt or plug, or over a nut."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from twoshaft.models.shape.section import Drawn
from twoshaft.models.shape.typical import head_height, head_width
from twoshaft.models.tooling.around import Around, around_step
from twoshaft.models.tooling.driving import SIDES
from twoshaft.models.tooling.stands import ToolStands, Touch, named, oblong, outlines_of, parts_of
from twoshaft.units.sections.shapes import Rod
from twoshaft.units.sections.tool_forms import ToolForm
from twoshaft.units.unit import Unit

_SOCKET_MM, _WALL_MM = 14.0, 2.0
_BAR_MM, _HANDLE_MM = 6.0, 62.0


def wrench_standing(
    unit: Unit, operations: Sequence[str], done: Collection[str]
) -> ToolStands | None:
    """The wrench on the first fastener of a step that the section shows, where its handle is free.

    Parameters
    ----------
    unit : Unit
    operations : sequence of str
        Operations of the step.
    done : collection of str
        Operations that are done, in their order.

    Examples
    --------
    >>> wrench_standing(unit, ["tighten-output-nut"], []).on
    'on the output-shaft nut'
    """
    stood = []
    for here in around_step(unit, operations, done):
        for one in here.own:
            for z, y, dz, dy, half in _heads(here, one):
                stood += [_on(here, one, (z, y), (dz, dy), half, turn) for turn in (-1, 1)]
    return next((tool for tool in stood if not tool.meets), stood[0] if stood else None)


def _heads(here: Around, one: Drawn) -> list[tuple[float, float, int, int, float]]:
    """Where heads lie that a socket goes over: place, the way out, half the width."""
    solid, axis = one.solid, here.heights[one.solid.axis]
    if isinstance(solid, Rod) and solid.form in ("bolt", "plug"):
        (za, ya), (zb, yb) = solid.from_mm, solid.to_mm
        wide = solid.head_mm or head_width(solid.diameter_mm)
        along = abs(za - zb) >= abs(ya - yb)
        dz, dy = (1 if za > zb else -1, 0) if along else (0, 1 if ya > yb else -1)
        tall = head_height(solid.diameter_mm)
        return [(za + dz * tall, axis + ya + dy * tall, dz, dy, wide / 2)]
    if solid.kind == "turned" and one.area.bounds[2] - one.area.bounds[0] < 30:
        side = SIDES.get(str(here.ways[solid.id]), 1)
        z = one.area.bounds[2] if side > 0 else one.area.bounds[0]
        return [(z, axis, side, 0, axis - one.area.bounds[1])]
    return []


def _on(
    here: Around,
    one: Drawn,
    at: tuple[float, float],
    way: tuple[int, int],
    half: float,
    turn: int,
) -> ToolStands:
    """A socket outwards from a head, and the handle square to it."""
    from shapely import union_all

    (z, y), (dz, dy), wide = at, way, half + _WALL_MM
    far = _SOCKET_MM + (0 if isinstance(one.solid, Rod) else 2 * _BAR_MM)
    socket = oblong(
        z - dz * 3 - abs(dy) * wide,
        z + dz * far + abs(dy) * wide,
        y - dy * 3 - abs(dz) * wide,
        y + dy * far + abs(dz) * wide,
    )
    handle = oblong(
        z + dz * far + dy * turn * -wide,
        z + dz * (far + _BAR_MM) + abs(dy) * turn * _HANDLE_MM,
        y + dy * far + dz * turn * -wide,
        y + dy * (far + _BAR_MM) + abs(dz) * turn * _HANDLE_MM,
    )
    meets = here.crossed(union_all([handle]), one.solid.axis, here.placed, {one.solid.id})
    return ToolStands(
        ToolForm.WRENCH,
        here.view,
        outlines_of([socket, handle]),
        (Touch(one.solid.id, z, y),),
        way,
        f"on {named(one)}",
        parts_of(meets),
    )
