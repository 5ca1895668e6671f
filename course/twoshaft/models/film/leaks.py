"""A way from the oil to the outside through cells that do not seal.

Oil creeps through corners, so a way may step to any of eight neighbours; a seal must therefore be
joined side by side, by four. (The two connectivities are each other's complement in the plane.)
Empty bolt holes and dry pockets let oil pass; a hole that is open under its bolt's head is itself
the outside.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from twoshaft.models.film.land import Kind, Land, grown

_EIGHT = np.ones((3, 3), dtype=bool)


@dataclass(frozen=True, eq=False)
class Leak:
    """One way through.

    Attributes
    ----------
    cells : numpy.ndarray
        Rows and columns from the oil to the outside, shape (k, 2), the shortest way in steps.
    points_mm : numpy.ndarray
        The same as coordinates, shape (k, 2) [mm].
    area_mm2 : float
        All that this way is joined to and does not seal [mm²].
    through : tuple of str
        Ids of the holes that it passes or ends in.

    Examples
    --------
    >>> land = Land.of(unit.faces.face_by_id("end-cover"), (120, 90))
    >>> leak = find_leaks(land, np.zeros(land.kind.shape, dtype=bool))[0]
    >>> leak.points_mm.shape == leak.cells.shape, leak.area_mm2 > 0
    (True, True)
    """

    cells: np.ndarray
    points_mm: np.ndarray
    area_mm2: float
    through: tuple[str, ...]


def find_leaks(land: Land, sealed: np.ndarray) -> tuple[Leak, ...]:
    """Find every separate way from the oil to the outside.

    Parameters
    ----------
    land : Land
    sealed : numpy.ndarray of bool
        Cells of the face that seal, shape (ny, nx).

    Returns
    -------
    tuple of Leak
        One per joined region that lets oil through, the largest first; empty if it is tight.

    Examples
    --------
    >>> land = Land.of(unit.faces.face_by_id("end-cover"), (120, 90))
    >>> find_leaks(land, land.is_face)  # sealed everywhere
    ()
    >>> len(find_leaks(land, np.zeros(land.kind.shape, dtype=bool)))
    1
    """
    from scipy import ndimage

    oil = land.kind == Kind.OIL
    weak = (land.is_face & ~sealed) | (land.kind == Kind.CLOSED)
    out = (land.kind == Kind.OUTSIDE) | (land.kind == Kind.OPEN)
    beside_out = grown(out)
    region, count = ndimage.label(weak, structure=_EIGHT)
    start = weak & grown(oil)
    end = weak & beside_out
    leaking = np.intersect1d(region[start], region[end])
    # Where no face is left between oil and outside, the oil is on its way out at once.
    bare, bare_count = ndimage.label(oil & beside_out, structure=_EIGHT)
    if leaking.size + bare_count == 0:
        return ()
    areas = np.bincount(region.ravel(), minlength=count + 1)
    areas[0] = 0
    ways = _shortest_ways(land, region, start, end, leaking, out)
    for number in range(1, bare_count + 1):
        ways[-number] = _one_step(np.argwhere(bare == number)[0], out)
    found = [
        Leak(
            cells,
            land.points_mm(cells),
            float(areas[max(number, 0)]) * land.cell_m2 * 1e6,
            _holes_on(land, cells),
        )
        for number, cells in ways.items()
    ]
    return tuple(sorted(found, key=lambda leak: -leak.area_mm2))


def _shortest_ways(land, region, start, end, leaking, out) -> dict[int, np.ndarray]:
    """Shortest way through each leaking region, as rows and columns, by growing rings."""
    ny, nx = region.shape
    steps = np.array([1, -1, nx, -nx, nx + 1, nx - 1, 1 - nx, -1 - nx])
    region_of, ends = region.ravel(), end.ravel()
    open_cells = np.isin(region_of, leaking)
    ring = np.full(ny * nx, -1)
    front = np.nonzero(start.ravel() & open_cells)[0]
    ring[front] = 0
    ways: dict[int, np.ndarray] = {}
    depth = 0
    while front.size and len(ways) < leaking.size:
        for cell in front[ends[front]]:
            number = int(region_of[cell])
            if number not in ways:
                ways[number] = _walk_back(ring, int(cell), steps, land, out)
                open_cells[region_of == number] = False
        depth += 1
        near = np.unique((front[:, None] + steps).ravel())
        front = near[open_cells[near] & (ring[near] < 0)]
        ring[front] = depth
    return ways


def _walk_back(ring, cell: int, steps, land: Land, out) -> np.ndarray:
    """Cells from the oil to ``cell`` and one step beyond, as rows and columns."""
    beyond = [near for near in cell + steps if out.ravel()[near]]
    way = [int(beyond[0]), cell] if beyond else [cell]
    while ring[way[-1]] > 0:
        near = way[-1] + steps
        way.append(int(near[ring[near] == ring[way[-1]] - 1][0]))
    oil = land.kind.ravel() == Kind.OIL
    way += [int(near) for near in way[-1] + steps if oil[near]][:1]
    nx = land.kind.shape[1]
    return np.array([divmod(step, nx) for step in reversed(way)])


def _one_step(cell: np.ndarray, out: np.ndarray) -> np.ndarray:
    """From a cell of oil to the outside beside it, as rows and columns."""
    row, column = cell
    around = out[row - 1 : row + 2, column - 1 : column + 2]
    return np.array([cell, cell + np.argwhere(around)[0] - 1])


def _holes_on(land: Land, cells: np.ndarray) -> tuple[str, ...]:
    numbers = land.hole[cells[:, 0], cells[:, 1]]
    return tuple(land.face.holes[n].id for n in dict.fromkeys(numbers[numbers >= 0].tolist()))
