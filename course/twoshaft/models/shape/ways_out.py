"""Which way each solid of a part comes out: as it says, by its head, else as its step does."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.models.shape.section import Drawn
from twoshaft.units.sections.shapes import Rod

WayOut = tuple[str, int]
"""A way, and of one across the side that is told: -1 up, 1 down, 0 where nothing tells it."""


def by_way(solids: Sequence[Drawn], way: str) -> dict[WayOut, list[Drawn]]:
    """Solids of a part by their way out.

    Parameters
    ----------
    solids : sequence of Drawn
    way : str
        The way of their step, for those that tell none.

    Returns
    -------
    dict
        What does not tell its side goes with the first that goes its way.

    Examples
    --------
    >>> from twoshaft.models.shape import section_of
    >>> drawn = section_of(unit).views[0].drawn
    >>> bearings = [one for one in drawn if one.solid.part == "diff-bearings"]
    >>> list(by_way(bearings, "rear"))
    [('front', 0), ('rear', 0)]
    """
    told = [(one, *_way_out(one, way)) for one in solids]
    sides: dict[str, int] = {}
    for _, out, side in told:
        sides[out] = sides.get(out) or side
    found: dict[WayOut, list[Drawn]] = {}
    for one, out, side in told:
        found.setdefault((out, side or sides[out]), []).append(one)
    return found


def _way_out(one: Drawn, way: str) -> WayOut:
    solid = one.solid
    if not isinstance(solid, Rod) or solid.form not in ("bolt", "plug") or solid.way:
        return solid.way or way, 0
    along, across = (a - b for a, b in zip(solid.from_mm, solid.to_mm, strict=True))
    if abs(along) > abs(across):
        return ("rear" if along > 0 else "front"), 0
    return "outside", 1 if across > 0 else -1
