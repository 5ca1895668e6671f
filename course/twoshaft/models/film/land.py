"""A sealed face on a grid: what each cell is, and the gap that stays when the face is closed.

Rows rise with y, columns with x; a rim of outside cells surrounds the face. The gap is the form of
the two faces (a bow and a twist, scaled to their flatness) less what the clamp closes, over the
roughness that nothing closes. Each bolt presses a round patch, from its head through the flange at
45 degrees, hardest in the middle (from memory; common practice for pressure cones is 30 to 45).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import IntEnum
from functools import cached_property, lru_cache
from itertools import pairwise

import numpy as np

from twoshaft.errors import OutOfRangeError
from twoshaft.models.validity import in_range
from twoshaft.units.quantities import Q
from twoshaft.units.sections.faces import CavityKind, Face, Point

CELLS = (400, 300)
_RIM = 2


class Kind(IntEnum):
    """What a cell of the grid is.

    Examples
    --------
    >>> land = Land.of(unit.faces.face_by_id("end-cover"), (120, 90))
    >>> bool((land.kind == Kind.OIL).any())
    True
    """

    OUTSIDE = 0
    FACE = 1
    OIL = 2
    CLOSED = 3
    OPEN = 4


@dataclass(frozen=True, eq=False)
class Land:
    """A face on its grid.

    Attributes
    ----------
    face : Face
        From the unit file.
    pitch_m : float
        Side of a cell [m].
    x_m, y_m : numpy.ndarray
        Cell centres, shapes (nx,) and (ny,) [m].
    kind : numpy.ndarray of uint8
        `Kind` of each cell, shape (ny, nx).
    hole : numpy.ndarray of int16
        Index of the hole each cell lies in, -1 elsewhere, shape (ny, nx).

    Examples
    --------
    >>> land = Land.of(unit.faces.face_by_id("case-joint"), (120, 90))
    >>> land.kind.shape, f"{land.area:.0f}"
    ((90, 120), '123 centimeter ** 2')
    """

    face: Face
    pitch_m: float
    x_m: np.ndarray
    y_m: np.ndarray
    kind: np.ndarray
    hole: np.ndarray

    @classmethod
    def of(cls, face: Face, cells: tuple[int, int] = CELLS) -> Land:
        """Lay a grid over a face.

        Parameters
        ----------
        face : Face
        cells : tuple of int
            Cells along the face's longer and shorter side, 20 to 2000 each.

        Raises
        ------
        OutOfRangeError
            For a grid too coarse or too fine.
        """
        for count in cells:
            in_range("cells of the grid", count, 20, 2000, "", "size of the grid")
        cavities = tuple((cavity.kind, cavity.outline) for cavity in face.cavities)
        outlines = face.outline, cavities, face.islands, tuple(cells)
        pitch, x, y, kind = _without_holes(*outlines)
        circles = tuple((entry.x_mm, entry.y_mm, entry.diameter_mm) for entry in face.holes)
        hole = _in_holes(outlines, circles)
        sorts = np.array([Kind.OPEN if entry.open else Kind.CLOSED for entry in face.holes] + [0])
        kind = np.where(hole >= 0, sorts[hole], kind).astype(np.uint8)
        return cls(face, pitch, x, y, kind, hole)

    @cached_property
    def is_face(self) -> np.ndarray:
        """Cells that can carry a film, shape (ny, nx)."""
        return self.kind == Kind.FACE

    @property
    def cell_m2(self) -> float:
        """Area of a cell [m²]."""
        return self.pitch_m**2

    @cached_property
    def area(self) -> Q:
        """Area of the face [cm²]."""
        return Q(float(self.is_face.sum()) * self.cell_m2 * 1e4, "cm**2")

    @cached_property
    def form_m(self) -> np.ndarray:
        """Gap of the unclamped faces over their roughness [m], shape (ny, nx)."""
        form = self.face.form
        u, v = _unit_range(self.x_m), _unit_range(self.y_m)[:, None]
        shape = form.bow_x * (1 - u**2) + form.bow_y * (1 - v**2) + form.twist * u * v
        on_face = shape[self.is_face]
        span = np.ptp(on_face)
        if span == 0:
            return np.zeros_like(shape)
        return np.maximum(shape - on_face.min(), 0.0) / span * form.flatness_um * 1e-6

    @cached_property
    def scratch_m(self) -> np.ndarray:
        """Depth of the scratches [m], shape (ny, nx)."""
        depth = np.zeros(self.kind.shape)
        for scratch in self.face.scratches:
            line = np.asarray(scratch.points) / 1e3
            # A scratch narrower than a cell still cuts every cell it crosses.
            half = max(scratch.width_mm / 2e3, 0.75 * self.pitch_m)
            near = self.distance_m(line, half) <= half
            depth[near] = np.maximum(depth[near], scratch.depth_um * 1e-6)
        return depth

    def gap_m(self, clamps: dict[str, Q] | None = None) -> np.ndarray:
        """Gap of the closed face [m], shape (ny, nx).

        Parameters
        ----------
        clamps : dict of str to pint.Quantity, optional
            Clamp [N] by hole id, 0 N to 500 kN; the unit file's where absent.

        Raises
        ------
        OutOfRangeError
            Also for a hole that the face lacks.
        """
        forces = self.clamps_n(clamps)
        pressure = np.zeros(self.kind.shape)
        for hole in self.face.holes:
            if forces[hole.id]:
                rows, columns, patch = self._patch(hole)
                pressure[rows, columns] += forces[hole.id] * patch
        form = self.face.form
        left = np.maximum(self.form_m - pressure / (form.bed_n_per_mm3 * 1e9), 0.0)
        return left + self.scratch_m + form.roughness_um * 1e-6

    def clamps_n(self, clamps: dict[str, Q] | None = None) -> dict[str, float]:
        """Clamp [N] at every hole; parameters and errors as for `gap_m`."""
        forces = {hole.id: hole.clamp_n for hole in self.face.holes}
        for name, clamp in (clamps or {}).items():
            if name not in forces:
                raise OutOfRangeError("hole", name, ", ".join(sorted(forces)), self.face.name)
            forces[name] = in_range(f"clamp at {name}", clamp, 0.0, 5e5, "N", "bolts")
        return forces

    def distance_m(self, line_m: np.ndarray, reach_m: float) -> np.ndarray:
        """Distance of cells to a line of points [m], shape (ny, nx); infinite beyond the reach."""
        distance = np.full(self.kind.shape, np.inf)
        line = np.ascontiguousarray(line_m, dtype=float)
        rows, columns, near = _near(
            self.pitch_m, self.x_m.tobytes(), self.y_m.tobytes(), line.tobytes(), reach_m
        )
        distance[rows, columns] = near
        return distance

    def window(self, low_m, high_m, reach_m: float) -> tuple[slice, slice]:
        """Rows and columns of the cells within a reach [m] of a box."""
        return _window(self.pitch_m, self.x_m, self.y_m, low_m, high_m, reach_m)

    def points_mm(self, cells: np.ndarray) -> np.ndarray:
        """Coordinates [mm] of cells given as rows and columns, shape (k, 2) both."""
        cells = np.asarray(cells)
        return np.column_stack([self.x_m[cells[:, 1]], self.y_m[cells[:, 0]]]) * 1e3

    def _patch(self, hole) -> tuple[slice, slice, np.ndarray]:
        """Pressure under 1 N of a bolt [Pa] on the cells round it."""
        reach = max(hole.head_mm, hole.diameter_mm) / 2e3 + self.face.form.flange_mm / 1e3
        centre = np.array([hole.x_mm, hole.y_mm]) / 1e3
        rows, columns = self.window(centre, centre, reach)
        square = (self.x_m[columns] - centre[0]) ** 2 + (self.y_m[rows, None] - centre[1]) ** 2
        return rows, columns, 2 / (math.pi * reach**2) * np.maximum(1 - square / reach**2, 0.0)


def _window(
    pitch_m: float, x_m: np.ndarray, y_m: np.ndarray, low_m, high_m, reach_m: float
) -> tuple[slice, slice]:
    slices = []
    for axis, centres in ((1, y_m), (0, x_m)):
        first = math.floor((low_m[axis] - reach_m - centres[0]) / pitch_m)
        last = math.ceil((high_m[axis] + reach_m - centres[0]) / pitch_m)
        slices.append(slice(max(first, 0), max(min(last + 1, centres.size), 0)))
    return slices[0], slices[1]


# The same stretches are asked for by every learner; some ten kilobytes each.
@lru_cache(maxsize=256)
def _near(
    pitch_m: float, x: bytes, y: bytes, line: bytes, reach_m: float
) -> tuple[slice, slice, np.ndarray]:
    """Window round a line, and the distance of its cells to the line [m], as `distance_m`."""
    x_m, y_m, line_m = np.frombuffer(x), np.frombuffer(y), np.frombuffer(line).reshape(-1, 2)
    all_rows, all_columns = _window(
        pitch_m, x_m, y_m, line_m.min(axis=0), line_m.max(axis=0), reach_m
    )
    distance = np.full((y_m.size, x_m.size), np.inf)
    ends = pairwise(line_m) if len(line_m) > 1 else [(line_m[0],) * 2]
    for start, end in ends:
        rows, columns = _window(
            pitch_m, x_m, y_m, np.minimum(start, end), np.maximum(start, end), reach_m
        )
        x_from, y_from = x_m[columns] - start[0], y_m[rows, None] - start[1]
        along = end - start
        length2 = float(along @ along)
        part = np.clip((x_from * along[0] + y_from * along[1]) / length2, 0, 1) if length2 else 0.0
        away = np.hypot(x_from - part * along[0], y_from - part * along[1])
        np.minimum(distance[rows, columns], away, out=distance[rows, columns])
    near = distance[all_rows, all_columns].copy()
    near.flags.writeable = False
    return all_rows, all_columns, near


# Learners have faces of their own; what differs is form and holes, never the outlines.
@lru_cache(maxsize=16)
def _without_holes(
    outline: tuple[Point, ...],
    cavities: tuple[tuple[CavityKind, tuple[Point, ...]], ...],
    islands: tuple[tuple[Point, ...], ...],
    cells: tuple[int, int],
) -> tuple[float, np.ndarray, np.ndarray, np.ndarray]:
    """Pitch and centres [m] of a face's grid, and what each cell is but for the holes."""
    corners = np.asarray(outline, dtype=float) / 1e3
    (left, low), (right, high) = corners.min(axis=0), corners.max(axis=0)
    width, height = right - left, high - low
    nx, ny = sorted(cells, reverse=bool(width >= height))
    pitch = max(width / (nx - 2 * _RIM), height / (ny - 2 * _RIM))
    x = (left + right) / 2 + (np.arange(nx) - (nx - 1) / 2) * pitch
    y = (low + high) / 2 + (np.arange(ny) - (ny - 1) / 2) * pitch
    kind = np.where(fill_polygon(corners, x, y), Kind.FACE, Kind.OUTSIDE).astype(np.uint8)
    inside = {
        CavityKind.OIL: Kind.OIL,
        CavityKind.CLOSED: Kind.CLOSED,
        CavityKind.OPEN: Kind.OPEN,
    }
    for sort, edge in cavities:
        area = fill_polygon(np.asarray(edge) / 1e3, x, y)
        kind[area & (kind == Kind.FACE)] = inside[sort]
    for island in islands:
        kind[fill_polygon(np.asarray(island) / 1e3, x, y)] = Kind.FACE
    for array in (x, y, kind):
        array.flags.writeable = False
    return float(pitch), x, y, kind


@lru_cache(maxsize=16)
def _in_holes(outlines: tuple, circles: tuple[tuple[float, float, float], ...]) -> np.ndarray:
    """Index of the hole each cell lies in, -1 elsewhere, by each hole's place and diameter [mm]."""
    _, x, y, kind = _without_holes(*outlines)
    hole = np.full(kind.shape, -1, dtype=np.int16)
    for number, (x_mm, y_mm, diameter_mm) in enumerate(circles):
        square = (x - x_mm / 1e3) ** 2 + (y[:, None] - y_mm / 1e3) ** 2
        hole[(square <= (diameter_mm / 2e3) ** 2) & (kind != Kind.OUTSIDE)] = number
    hole.flags.writeable = False
    return hole


def grown(cells: np.ndarray) -> np.ndarray:
    """Cells and the eight beside each, shape (ny, nx).

    Parameters
    ----------
    cells : numpy.ndarray of bool

    Examples
    --------
    >>> grown(np.array([[True, False, False], [False] * 3, [False] * 3])).astype(int).tolist()
    [[1, 1, 0], [1, 1, 0], [0, 0, 0]]
    """
    wide = cells.copy()
    wide[1:] |= cells[:-1]
    wide[:-1] |= cells[1:]
    both = wide.copy()
    both[:, 1:] |= wide[:, :-1]
    both[:, :-1] |= wide[:, 1:]
    return both


def fill_polygon(polygon: np.ndarray, x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """Cells whose centre lies inside a polygon (even-odd rule), shape (ny, nx).

    Parameters
    ----------
    polygon : numpy.ndarray
        Corners, shape (n, 2), in the unit of ``x`` and ``y``; closed by itself.
    x, y : numpy.ndarray
        Evenly spaced cell centres, shapes (nx,) and (ny,).

    Examples
    --------
    >>> square = np.array([(0, 0), (2, 0), (2, 2), (0, 2)])
    >>> fill_polygon(square, np.array([0.5, 1.5, 2.5]), np.array([0.5, 1.5])).tolist()
    [[True, True, False], [True, True, False]]
    """
    flips = np.zeros((y.size, x.size + 1), dtype=bool)
    for (x0, y0), (x1, y1) in zip(polygon, np.roll(polygon, -1, axis=0), strict=True):
        rows = np.nonzero((y0 <= y) != (y1 <= y))[0]
        if rows.size:
            crossing = x0 + (y[rows] - y0) * (x1 - x0) / (y1 - y0)
            flips[rows, np.searchsorted(x, crossing)] ^= True
    return np.logical_xor.accumulate(flips, axis=1)[:, :-1]


def _unit_range(centres: np.ndarray) -> np.ndarray:
    """Map cell centres to -1 ... 1."""
    return (2 * centres - centres[0] - centres[-1]) / (centres[-1] - centres[0])
