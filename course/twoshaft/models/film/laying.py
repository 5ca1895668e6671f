"""Laying the film: strokes of a roller or a nozzle, smears of oil and dirt, and wiping off.

A roller leaves a film of one thickness over its width. A nozzle leaves a bead, round in section,
that settles where it lies. What misses the face (holes, edges) is lost and counted, so that the
volume laid is at all times the volume on the face, beside it and on the cloth.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from enum import StrEnum

import numpy as np

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Range, border
from twoshaft.models.film.land import Land
from twoshaft.units.quantities import Q
from twoshaft.units.sections.faces import Face

_HAND = "sealant laid by hand"
_POINTS = Range("points of the stroke", "mm", -2e3, 2e3, "the bench")
_WIDTH = Range("width of the stroke", "mm", 0.5, 60.0, _HAND)
_MINUTE = Range("minute of the stroke", "", 0.0, math.inf, "clock of the work")


class Tool(StrEnum):
    """What a stroke does.

    Examples
    --------
    >>> line = Q([[0, 0], [50, 0]], "mm")
    >>> Stroke.bead(line, diameter=Q(1.5, "mm")).tool is Tool.BEAD
    True
    """

    ROLLER = "roller"
    BEAD = "bead"
    OIL = "oil"
    DIRT = "dirt"
    WIPE = "wipe"


@dataclass(frozen=True, eq=False)
class Stroke:
    """One stroke along a line of points.

    Attributes
    ----------
    tool : Tool
    line_m : numpy.ndarray
        Points, shape (n, 2) [m]; one point is a dab.
    width_m : float
        Width of a roller, smear or cloth, diameter of a bead [m].
    thickness_m : float
        Thickness that a roller leaves [m]; 0 for the rest.
    minute : float
        When it was done, from the start of the work [min].

    Examples
    --------
    >>> line = Q([[0, 0], [50, 0]], "mm")
    >>> laid = Stroke.roller(line, width=Q(12, "mm"), thickness=Q(0.1, "mm"))
    >>> round(laid.length_m * 1e3), laid.tool.value
    (50, 'roller')
    """

    tool: Tool
    line_m: np.ndarray
    width_m: float
    thickness_m: float = 0.0
    minute: float = 0.0

    @classmethod
    @border(
        points=_POINTS,
        width=_WIDTH,
        thickness=Range("thickness of the film", "mm", 0.005, 5.0, _HAND),
        minute=_MINUTE,
    )
    def roller(
        cls, points_mm: np.ndarray, *, width_mm: float, thickness_mm: float, minute: float = 0.0
    ) -> Stroke:
        """A film laid with a roller; width and thickness are what it leaves.

        Parameters
        ----------
        points : pint.Quantity
            Shape (n, 2), in the face's plane.
        width : pint.Quantity
            0.5 to 60 mm.
        thickness : pint.Quantity
            0.005 to 5 mm.
        minute : float
            0 and above.
        """
        return cls(Tool.ROLLER, _line_m(points_mm), width_mm / 1e3, thickness_mm / 1e3, minute)

    @classmethod
    @border(
        points=_POINTS,
        diameter=Range("diameter of the bead", "mm", 0.5, 10.0, _HAND),
        minute=_MINUTE,
    )
    def bead(cls, points_mm: np.ndarray, *, diameter_mm: float, minute: float = 0.0) -> Stroke:
        """A bead from a nozzle, diameter 0.5 to 10 mm; the rest as for `roller`."""
        return cls(Tool.BEAD, _line_m(points_mm), diameter_mm / 1e3, 0.0, minute)

    @classmethod
    @border(points=_POINTS, width=_WIDTH)
    def smear(cls, points_mm: np.ndarray, *, width_mm: float, what: str = "oil") -> Stroke:
        """Oil or dirt on the face or on the film, width as for `roller`."""
        if what not in (Tool.OIL, Tool.DIRT):
            raise OutOfRangeError("smear", repr(what), "oil or dirt", _HAND)
        return cls(Tool(what), _line_m(points_mm), width_mm / 1e3)

    @classmethod
    @border(points=_POINTS, width=_WIDTH)
    def wipe(cls, points_mm: np.ndarray, *, width_mm: float) -> Stroke:
        """Wipe film, oil and dirt off with a clean cloth, width as for `roller`."""
        return cls(Tool.WIPE, _line_m(points_mm), width_mm / 1e3)

    @property
    def length_m(self) -> float:
        """Length of the line [m]."""
        return float(np.hypot(*np.diff(self.line_m, axis=0).T).sum())


@dataclass(frozen=True, eq=False)
class Film:
    """The film on a face, before closing; every change gives a new film.

    Attributes
    ----------
    land : Land
    thickness_m : numpy.ndarray
        As laid, shape (ny, nx) [m]; zero off the face.
    minute : numpy.ndarray
        When each cell was last coated, shape (ny, nx) [min]; minus infinity if never.
    oily, dirty : numpy.ndarray of bool
        Shape (ny, nx).
    laid_m3, lost_m3, wiped_m3 : float
        Volume laid in all, fallen beside the face, and taken off with a cloth [m³].
    beside_m : numpy.ndarray, optional
        What a slid face has dragged over the edges, shape (ny, nx) [m]; None if it was not slid.

    Examples
    --------
    >>> face = unit.faces.face_by_id("end-cover")
    >>> bare = Film.bare(Land.of(face, (120, 90)))
    >>> bare.covered, round(bare.lay(*good_strokes(face)).covered, 2)
    (0.0, 0.75)
    """

    land: Land
    thickness_m: np.ndarray
    minute: np.ndarray
    oily: np.ndarray
    dirty: np.ndarray
    laid_m3: float = 0.0
    lost_m3: float = 0.0
    wiped_m3: float = 0.0
    beside_m: np.ndarray | None = None

    @classmethod
    def bare(cls, land: Land) -> Film:
        """A clean, dry face without any film."""
        shape = land.kind.shape
        return cls(
            land,
            np.zeros(shape),
            np.full(shape, -np.inf),
            np.zeros(shape, dtype=bool),
            np.zeros(shape, dtype=bool),
        )

    @property
    def volume_m3(self) -> float:
        """Volume on the face [m³]."""
        return float(self.thickness_m.sum()) * self.land.cell_m2

    @property
    def covered(self) -> float:
        """Part of the face that carries any film, 0 to 1."""
        return float((self.thickness_m > 0).sum() / self.land.is_face.sum())

    def lay(self, *strokes: Stroke) -> Film:
        """Film after one or more strokes."""
        film = self
        for stroke in strokes:
            film = film._after(stroke)
        return film

    def _after(self, stroke: Stroke) -> Film:
        if stroke.tool is Tool.BEAD:
            return self._coated(_bead_m(self.land, stroke), stroke.minute)
        half = stroke.width_m / 2
        reach = half + self.land.pitch_m
        distance = self.land.distance_m(stroke.line_m, reach)
        if stroke.tool is Tool.ROLLER:
            # A cell on the edge of the stroke takes the part of the film that lies on it.
            part = np.clip(0.5 + (half - distance) / self.land.pitch_m, 0.0, 1.0)
            return self._coated(part * stroke.thickness_m, stroke.minute)
        touched = (distance <= max(half, 0.5 * self.land.pitch_m)) & self.land.is_face
        if stroke.tool is Tool.OIL:
            return replace(self, oily=self.oily | touched)
        if stroke.tool is Tool.DIRT:
            return replace(self, dirty=self.dirty | touched)
        off_m3 = float(self.thickness_m[touched].sum()) * self.land.cell_m2
        return replace(
            self,
            thickness_m=np.where(touched, 0.0, self.thickness_m),
            minute=np.where(touched, -np.inf, self.minute),
            oily=self.oily & ~touched,
            dirty=self.dirty & ~touched,
            wiped_m3=self.wiped_m3 + off_m3,
        )

    def _coated(self, added_m: np.ndarray, minute: float) -> Film:
        on_face = np.where(self.land.is_face, added_m, 0.0)
        laid = float(added_m.sum()) * self.land.cell_m2
        kept = float(on_face.sum()) * self.land.cell_m2
        return replace(
            self,
            thickness_m=self.thickness_m + on_face,
            minute=np.where(on_face > 0, np.maximum(self.minute, minute), self.minute),
            laid_m3=self.laid_m3 + laid,
            lost_m3=self.lost_m3 + laid - kept,
        )


def good_strokes(face: Face) -> tuple[Stroke, ...]:
    """Strokes that lay the film as the unit file wants it, segment by segment.

    Examples
    --------
    >>> strokes = good_strokes(unit.faces.face_by_id("end-cover"))
    >>> len(strokes), strokes[0].tool.value, f"{strokes[0].thickness_m * 1e3:.2f} mm"
    (8, 'roller', '0.10 mm')
    """
    return tuple(
        Stroke.roller(
            Q(np.asarray(segment.points, dtype=float), "mm"),
            width=Q(face.film_width_mm, "mm"),
            thickness=Q(face.film_mm, "mm"),
        )
        for segment in face.segments
    )


def _bead_m(land: Land, stroke: Stroke) -> np.ndarray:
    """Thickness that a bead adds [m], shape (ny, nx): round in section, exact in volume.

    Cells outside the grid take none, their part is given to the cells inside.
    """
    radius = stroke.width_m / 2
    line, length = stroke.line_m, stroke.length_m
    if length == 0:
        centres = line[:1]
        volume = 4 / 3 * math.pi * radius**3
    else:
        count = max(2, math.ceil(2 * length / land.pitch_m))
        steps = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(line, axis=0).T))])
        at = (np.arange(count) + 0.5) / count * length
        centres = np.column_stack([np.interp(at, steps, line[:, k]) for k in (0, 1)])
        volume = math.pi * radius**2 * length
    # A bead thinner than a cell still wets the cell it lies in.
    reach = max(radius, 0.8 * land.pitch_m)
    spread = np.arange(-math.ceil(reach / land.pitch_m), math.ceil(reach / land.pitch_m) + 1)
    column = np.rint((centres[:, 0] - land.x_m[0]) / land.pitch_m).astype(int)[:, None] + spread
    row = np.rint((centres[:, 1] - land.y_m[0]) / land.pitch_m).astype(int)[:, None] + spread
    dx = land.x_m[0] + column * land.pitch_m - centres[:, :1]
    dy = land.y_m[0] + row * land.pitch_m - centres[:, 1:]
    weight = np.sqrt(np.maximum(reach**2 - dy[:, :, None] ** 2 - dx[:, None, :] ** 2, 0.0))
    ny, nx = land.kind.shape
    inside = ((row >= 0) & (row < ny))[:, :, None] & ((column >= 0) & (column < nx))[:, None, :]
    weight = np.where(inside, weight, 0.0)
    total = weight.sum()
    if total == 0:
        return np.zeros((ny, nx))
    flat = np.clip(row, 0, ny - 1)[:, :, None] * nx + np.clip(column, 0, nx - 1)[:, None, :]
    sums = np.bincount(flat.ravel(), weights=weight.ravel(), minlength=ny * nx)
    return sums.reshape(ny, nx) * (volume / total / land.cell_m2)


def _line_m(points_mm: np.ndarray) -> np.ndarray:
    line = np.atleast_2d(points_mm)
    if line.ndim != 2 or line.shape[1] != 2:
        shape = " by ".join(str(n) for n in line.shape)
        raise OutOfRangeError("points of the stroke", shape, "n by 2", "points in a plane")
    return line / 1e3
