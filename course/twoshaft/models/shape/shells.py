"""Section of a case or cover: walls round its rooms, bosses added, bores taken out.

Of a case that is split along its shafts, each half keeps what lies on its side of the joint face.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from typing import Any

from twoshaft.models.shape.pieces import Outline, Piece, Role
from twoshaft.models.shape.typical import WALL_MM
from twoshaft.units.sections.shapes import Shell

_FAR_MM = 5000.0


def shell_pieces(
    shell: Shell, heights: Mapping[str, float], seen: Collection[str] | None = None
) -> list[Piece]:
    """What is cut of a shell, in the section through all its axes.

    Parameters
    ----------
    shell : Shell
    heights : mapping of str to float
        How far below the first axis of its view each axis lies [mm].
    seen : collection of str, optional
        The axes of the view, by default all; rooms and bosses on others are in space alone.

    Examples
    --------
    >>> from twoshaft.models.shape.axes import axis_heights
    >>> case = next(one for one in unit.shapes.solids if one.kind == "shell")
    >>> {piece.role.value for piece in shell_pieces(case, axis_heights(unit, unit.shapes))}
    {'cut'}
    """
    from shapely import box, union_all

    wall, seen = shell.wall_mm or WALL_MM, heights if seen is None else seen
    rooms = union_all(
        [
            box(room.z_mm[0], heights[room.axis] - room.radius_mm,
                room.z_mm[1], heights[room.axis] + room.radius_mm)
            for room in shell.rooms
            if room.axis in seen
        ]
    )  # fmt: skip
    metal = rooms.buffer(wall, join_style="mitre").difference(rooms)
    for flange in shell.flanges:
        rim = rooms.buffer(wall + flange.reach_mm, join_style="mitre").difference(rooms)
        metal = metal.union(rim.intersection(_slice(*flange.z_mm)))
    metal = metal.intersection(_slice(*shell.z_mm))
    bosses = [boss for boss in shell.bosses if boss.axis in seen]
    for boss in bosses:
        if boss.outside_mm is not None:
            metal = metal.union(_block(boss.z_mm, heights[boss.axis], boss.outside_mm))
    for boss in bosses:
        if boss.bore_mm is not None:
            metal = metal.difference(_block(boss.z_mm, heights[boss.axis], boss.bore_mm))
    if shell.half is not None:
        metal = metal.intersection(_side(heights[shell.half.axis], shell.half.side))
    return [Piece(Role.CUT, *outlines) for outlines in _outlines(metal)]


def _slice(z0: float, z1: float) -> Any:
    from shapely import box

    return box(z0, -_FAR_MM, z1, _FAR_MM)


def _side(height: float, side: str) -> Any:
    """All of a section above or below a height."""
    from shapely import box

    ends = (-_FAR_MM, height) if side == "above" else (height, _FAR_MM)
    return box(-_FAR_MM, ends[0], _FAR_MM, ends[1])


def _block(z: tuple[float, float], axis: float, diameter: float) -> Any:
    from shapely import box

    return box(z[0], axis - diameter / 2, z[1], axis + diameter / 2)


def _outlines(area: Any) -> list[tuple[Outline, tuple[Outline, ...]]]:
    """Outer outline and holes of each connected area."""
    areas = getattr(area, "geoms", [area])
    return [
        (tuple(one.exterior.coords)[:-1], tuple(tuple(hole.coords)[:-1] for hole in one.interiors))
        for one in areas
        if one.geom_type == "Polygon" and one.area > 0.01
    ]
