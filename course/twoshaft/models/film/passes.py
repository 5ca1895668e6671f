"""Passes of the hand along a face: a stretch between two bolts, a ring round a hole, a free line.

A pass is how a mechanic says it ("a 1.5 mm bead from bolt 3 to bolt 4, on the oil side of the
bolts"); a stroke is where the paste then lies.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

import numpy as np

from twoshaft.errors import OutOfRangeError
from twoshaft.models.film.laying import Stroke
from twoshaft.units.kept import kept
from twoshaft.units.quantities import Q
from twoshaft.units.sections.faces import CavityKind, Face, Hole, Segment

# A bead keeps this far from a hole's edge, and swings out over this length (common practice).
BESIDE_HOLE_MM, SWING_MM, STEP_MM = 2.5, 14.0, 2.0


class Hand(StrEnum):
    """What the pass is done with.

    Examples
    --------
    >>> [hand.value for hand in Hand]
    ['film', 'bead', 'wipe']
    """

    FILM = "film"
    BEAD = "bead"
    WIPE = "wipe"


class Side(StrEnum):
    """Where a pass runs: along the land's middle, on either side of the bolts, round, or free.

    Examples
    --------
    >>> Pass(Hand.BEAD, 1.5, Side.ROUND, "bolt-3").entry
    'bead 1.5 round bolt-3'
    """

    MIDDLE = "middle"
    INSIDE = "inside"
    OUTSIDE = "outside"
    ROUND = "round"
    FREE = "at"


@dataclass(frozen=True)
class Pass:
    """One pass.

    Attributes
    ----------
    hand : Hand
    size_mm : float
        Thickness of a film or diameter of a bead; 0 for a cloth.
    side : Side
    place : str
        Segment or, for a ring, hole; empty for a free line.
    points : tuple of (float, float)
        Of a free line [mm]; empty otherwise.

    Examples
    --------
    >>> Pass(Hand.BEAD, 1.5, Side.INSIDE, "from-1-to-2").entry
    'bead 1.5 inside from-1-to-2'
    >>> Pass(Hand.WIPE, 0.0, Side.FREE, points=((0.0, 5.0), (20.0, 5.0))).entry
    'wipe at 0,5 20,5'
    """

    hand: Hand
    size_mm: float
    side: Side
    place: str = ""
    points: tuple[tuple[float, float], ...] = ()

    @property
    def entry(self) -> str:
        """The pass as a short text, as ``bead 1.5 inside from-1-to-2``."""
        size = "" if self.hand is Hand.WIPE else f" {round(self.size_mm, 3):g}"
        head = f"{self.hand.value}{size}"
        if self.side is Side.FREE:
            line = " ".join(f"{round(x, 1):g},{round(y, 1):g}" for x, y in self.points)
            return f"{head} at {line}"
        return f"{head} {self.side.value} {self.place}"


def line_mm(face: Face, done: Pass) -> np.ndarray:
    """Line of a pass, shape (n, 2) [mm].

    Raises
    ------
    OutOfRangeError
        For a segment or hole that the face lacks.

    Examples
    --------
    >>> face = unit.faces.face_by_id("end-cover")
    >>> line_mm(face, Pass(Hand.FILM, 0.1, Side.MIDDLE, "from-1-to-2"))[0].tolist()
    [3.0, 29.8]
    """
    if done.side is Side.FREE:
        return np.asarray(done.points, dtype=float)
    if done.side is Side.ROUND:
        return _ring(_one(face.holes, done.place, "hole", face))
    segment = _one(face.segments, done.place, "stretch", face)
    if done.side is Side.MIDDLE:
        return np.asarray(segment.points, dtype=float)
    return _beside_holes(segment, *_around(face), (done.side,) * len(face.holes))


def bead_lines_mm(face: Face, sides: Mapping[str, Side]) -> list[np.ndarray]:
    """Lines of one bead all the way round, on a chosen side of every bolt, each (n, 2) [mm].

    Parameters
    ----------
    face : Face
    sides : mapping of str to Side
        By hole; a hole left out, or one with `Side.MIDDLE`, is crossed. `Side.ROUND` splits the
        bead and goes round on both sides.

    Examples
    --------
    >>> face = unit.faces.face_by_id("end-cover")
    >>> first = face.holes[0].id
    >>> len(bead_lines_mm(face, {})), len(bead_lines_mm(face, {first: Side.ROUND}))
    (8, 9)
    """
    both = {id: Side.INSIDE if side is Side.ROUND else side for id, side in sides.items()}
    at_holes = tuple(both.get(hole.id, Side.MIDDLE) for hole in face.holes)
    around = _around(face)
    lines = [_beside_holes(segment, *around, at_holes) for segment in face.segments]
    return lines + [_ring(hole) for hole in face.holes if sides.get(hole.id) is Side.ROUND]


def stroke(face: Face, done: Pass, minute: float = 0.0) -> Stroke:
    """What a pass lays or takes off.

    Parameters
    ----------
    face : Face
    done : Pass
    minute : float
        When it was done [min].

    Raises
    ------
    OutOfRangeError
        For an unknown place or a size that no hand lays.

    Examples
    --------
    >>> face = unit.faces.face_by_id("end-cover")
    >>> laid = stroke(face, Pass(Hand.BEAD, 1.5, Side.MIDDLE, "from-1-to-2"))
    >>> laid.tool.value, f"{laid.width_m * 1e3:.1f} mm wide"
    ('bead', '1.5 mm wide')
    """
    points = Q(line_mm(face, done), "mm")
    width = Q(face.film_width_mm, "mm")
    if done.hand is Hand.BEAD:
        return Stroke.bead(points, diameter=Q(done.size_mm, "mm"), minute=minute)
    if done.hand is Hand.FILM:
        return Stroke.roller(points, width=width, thickness=Q(done.size_mm, "mm"), minute=minute)
    # A cloth reaches over both edges of the face.
    return Stroke.wipe(points, width=Q(min(2 * face.film_width_mm, 60.0), "mm"))


def nearest_stretch(face: Face, x_mm: float, y_mm: float) -> str:
    """Id of the stretch that runs nearest to a point.

    Examples
    --------
    >>> face = unit.faces.face_by_id("end-cover")
    >>> x_mm, y_mm = face.segments[2].points[0]
    >>> nearest_stretch(face, x_mm, y_mm) in [one.id for one in face.segments[1:3]]
    True
    """
    at = np.array([x_mm, y_mm])

    def away(segment) -> float:
        return float(np.hypot(*(_fine(np.asarray(segment.points, dtype=float)) - at).T).min())

    return min(face.segments, key=away).id


def _one(entries, id: str, what: str, face: Face):
    for entry in entries:
        if entry.id == id:
            return entry
    raise OutOfRangeError(what, id, ", ".join(entry.id for entry in entries), face.name)


def _ring(hole: Hole) -> np.ndarray:
    angle = np.linspace(0, 2 * np.pi, 25)
    radius = hole.diameter_mm / 2 + BESIDE_HOLE_MM
    return np.column_stack([hole.x_mm + radius * np.cos(angle), hole.y_mm + radius * np.sin(angle)])


def _fine(line: np.ndarray) -> np.ndarray:
    steps = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(line, axis=0).T))])
    at = np.linspace(0, steps[-1], max(2, int(np.ceil(steps[-1] / STEP_MM)) + 1))
    return np.column_stack([np.interp(at, steps, line[:, k]) for k in (0, 1)])


_SIGNS = {Side.INSIDE: 1, Side.OUTSIDE: -1}


_Points = tuple[tuple[float, float], ...]
_Holes = tuple[tuple[float, float, float], ...]


def _around(face: Face) -> tuple[_Holes, tuple[_Points, ...], float]:
    """What a line along the face has beside it: holes (place and diameter), rooms with oil, and
    how far off the oil is looked for [mm]."""
    return (
        tuple((hole.x_mm, hole.y_mm, hole.diameter_mm) for hole in face.holes),
        tuple(cavity.outline for cavity in face.cavities if cavity.kind is CavityKind.OIL),
        face.film_width_mm,
    )


# Kept with the stretch, not with the face: each learner's face is a copy with the same stretches.
@kept(most=64)
def _beside_holes(
    segment: Segment,
    holes: _Holes,
    rooms: tuple[_Points, ...],
    reach: float,
    sides: tuple[Side, ...],
) -> np.ndarray:
    """The line of a stretch, swung to one side of the holes that it would cross."""
    line, inwards = _line_and_inwards(segment, rooms, reach)
    out = np.zeros(len(line))
    for (x, y, diameter), side in zip(holes, sides, strict=True):
        away = np.hypot(line[:, 0] - x, line[:, 1] - y)
        near = np.clip(1 - away / SWING_MM, 0, 1)
        swing = (diameter / 2 + BESIDE_HOLE_MM) * near**2 * (3 - 2 * near)
        swing *= _SIGNS.get(side, 0)
        out = np.where(np.abs(swing) > np.abs(out), swing, out)
    return line + out[:, None] * inwards


@kept()
def _line_and_inwards(
    segment: Segment, rooms: tuple[_Points, ...], reach: float
) -> tuple[np.ndarray, np.ndarray]:
    """Points along a stretch, and the way to the oil at each."""
    line = _fine(np.asarray(segment.points, dtype=float))
    along = np.gradient(line, axis=0)
    along /= np.hypot(*along.T)[:, None]
    inwards = np.column_stack([-along[:, 1], along[:, 0]])
    return line, inwards if _towards_oil(rooms, reach, line, inwards) else -inwards


def _towards_oil(
    outlines: tuple[_Points, ...], reach: float, line: np.ndarray, inwards: np.ndarray
) -> bool:
    """Whether a set of normals points at the oil: the side on which more of it lies near."""
    rooms = [np.asarray(outline) for outline in outlines]
    # Away from its ends, where the land is widened by the bolts.
    some = [len(line) // 3, len(line) // 2, 2 * len(line) // 3]

    def hits(way: float) -> int:
        points = line[some] + way * inwards[some]
        return sum(_inside(room, point) for room in rooms for point in points)

    return hits(reach) >= hits(-reach)


def _inside(polygon: np.ndarray, point: np.ndarray) -> bool:
    (x0, y0), (x1, y1) = polygon.T, np.roll(polygon, -1, axis=0).T
    crosses = (y0 <= point[1]) != (y1 <= point[1])
    rise = np.where(y1 == y0, 1.0, y1 - y0)
    at = x0 + (point[1] - y0) * (x1 - x0) / rise
    return bool((crosses & (at > point[0])).sum() % 2)
