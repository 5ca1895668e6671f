"""Convex bodies in space: whether two meet, and which of two lies further out.

A body is the hull of its corners. Of two that do not meet, one lies further out than the other
over all that a look along the way shows of both; so one line through both decides.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Spot = Sequence[float]

ROUND_CORNERS = 32
"""Corners of what is round: its skin is missed by half a hundredth of its radius at most."""
_SAME_MM = 1e-6


@dataclass(frozen=True, eq=False)
class Convex:
    """A convex body.

    Attributes
    ----------
    corners : array of (n, 3)
        x, y and z of its corners, and of nothing outside it [mm].
    bore : tuple of array, array, float, optional
        A round hole through it: a place on its axis, the direction of that, of length one, and
        its radius [mm].

    Examples
    --------
    >>> Convex(cylinder((0, 0, 0), (0, 0, 10), 5)).high.tolist()
    [5.0, 5.0, 10.0]
    """

    corners: Floats
    bore: tuple[Floats, Floats, float] | None = None

    @cached_property
    def filled(self) -> Convex:
        """It without its bore."""
        return Convex(self.corners) if self.bore else self

    @cached_property
    def low(self) -> Floats:
        """Least x, y and z [mm]."""
        return np.asarray(self.corners.min(axis=0))

    @cached_property
    def high(self) -> Floats:
        """Most x, y and z [mm]."""
        return np.asarray(self.corners.max(axis=0))

    @cached_property
    def faces(self) -> Floats:
        """Rows a, b, c, d: a x + b y + c z + d is below zero inside."""
        from scipy.spatial import ConvexHull  # takes long to load

        found: Floats = np.unique(ConvexHull(self.corners).equations.round(9), axis=0)
        return found


def cylinder(start: Spot, end: Spot, radius_mm: float, corners: int = ROUND_CORNERS) -> Floats:
    """Corners of a cylinder, two of them square to the shafts and its own axis.

    Parameters
    ----------
    start, end : sequences of float
        Middle of its ends, as x, y and z [mm].
    radius_mm : float
        Distance of its corners from its axis.
    corners : int, optional
        How many stand round each end.

    Examples
    --------
    >>> cylinder((0, 0, 0), (0, 0, 10), 5).shape
    (64, 3)
    """
    a, b = np.asarray(start, dtype=float), np.asarray(end, dtype=float)
    along = (b - a) / np.linalg.norm(b - a)
    beside = np.array([1.0, 0.0, 0.0]) if abs(along[2]) > 1 - 1e-9 else _unit(
        np.cross(along, (0.0, 0.0, 1.0))
    )  # fmt: skip
    other = np.cross(along, beside)
    turns = np.arange(corners) * 2 * math.pi / corners
    ring = radius_mm * (np.outer(np.cos(turns), beside) + np.outer(np.sin(turns), other))
    found: Floats = np.concatenate([a + ring, b + ring])
    return found


def ball(middle: Spot, radius_mm: float) -> Floats:
    """Corners of a ball.

    Parameters
    ----------
    middle : sequence of float
        x, y and z [mm].
    radius_mm : float

    Examples
    --------
    >>> ball((0, 0, 0), 4).max(axis=0).tolist()
    [4.0, 4.0, 4.0]
    """
    half = ROUND_CORNERS // 2
    steep = np.linspace(-math.pi / 2, math.pi / 2, half + 1)
    turns = np.arange(ROUND_CORNERS) * 2 * math.pi / ROUND_CORNERS
    up, turn = (grid.ravel() for grid in np.meshgrid(steep, turns))
    skin = np.stack([np.cos(up) * np.cos(turn), np.cos(up) * np.sin(turn), np.sin(up)], axis=1)
    found: Floats = np.asarray(middle, dtype=float) + radius_mm * skin
    return found


def meet(one: Convex, other: Convex) -> Floats | None:
    """What two bodies have in common, as its corners; None where that is nothing.

    Parameters
    ----------
    one, other : Convex
        What lies in the bore of the other does not meet it.

    Examples
    --------
    >>> pin, plate = (Convex(cylinder((0, 0, 0), (0, 0, long), 5)) for long in (10, 4))
    >>> round(float(meet(pin, plate)[:, 2].max()), 6)
    4.0
    """
    from scipy.optimize import linprog  # takes long to load
    from scipy.spatial import HalfspaceIntersection

    if (np.maximum(one.low, other.low) >= np.minimum(one.high, other.high)).any():
        return None
    faces = np.concatenate([one.faces, other.faces])
    # the place that lies deepest: as far inside every face as can be
    rows = np.concatenate([faces[:, :3], np.ones((len(faces), 1))], axis=1)
    found = linprog(
        (0, 0, 0, -1), A_ub=rows, b_ub=-faces[:, 3], bounds=[(None, None)] * 3 + [(None, 1000)]
    )
    if found.x is None or found.x[3] <= _SAME_MM:
        return None
    common: Floats = HalfspaceIntersection(faces, found.x[:3]).intersections
    if any(_within(common, body.bore) for body in (one, other)):
        return None
    return common


def _within(corners: Floats, bore: tuple[Floats, Floats, float] | None) -> bool:
    if bore is None:
        return False
    at, along, radius = bore
    off = corners - at
    off = off - np.outer(off @ along, along)
    return bool((np.linalg.norm(off, axis=1) <= radius).all())


def footprint(one: Convex, out: Spot) -> Any:
    """What a look along a way, square to the shafts, shows of a body: an area of z and sideways.

    Parameters
    ----------
    one : Convex
    out : sequence of float
        x and y of the way, of length one.

    Examples
    --------
    >>> round(footprint(Convex(cylinder((0, 0, 0), (0, 0, 10), 5)), (0, 1)).area)
    100
    """
    from shapely import MultiPoint

    x, y, z = one.corners.T
    return MultiPoint(np.stack([z, x * out[1] - y * out[0]], axis=1)).convex_hull


def further_out(one: Convex, other: Convex, out: Spot, passes_mm: float = 0.0) -> bool:
    """Whether another body stands in the way of one that leaves along a way.

    Parameters
    ----------
    one, other : Convex
        The one that leaves, and the other; where they lie in each other their middles decide.
    out : sequence of float
        x and y of the way, square to the shafts and of length one.
    passes_mm : float, optional
        What they may run into each other on the way.

    Examples
    --------
    >>> low, high = (Convex(cylinder((0, y, 0), (0, y, 10), 5)) for y in (0, 20))
    >>> further_out(low, high, (0, 1)), further_out(high, low, (0, 1))
    (True, False)
    """
    common = footprint(one, out).intersection(footprint(other, out)).buffer(-passes_mm / 2)
    if common.area < _SAME_MM:
        return False
    at = common.representative_point()
    middles = [_middle(body, out, at.x, at.y) for body in (one, other)]
    return middles[1] - middles[0] > _SAME_MM


def _middle(one: Convex, out: Spot, z: float, side: float) -> float:
    """Where the middle of a body lies on a line along a way."""
    foot = np.array([side * out[1], -side * out[0], z])
    rises = one.faces[:, :2] @ np.asarray(out)
    left = -(one.faces[:, :3] @ foot + one.faces[:, 3])
    ends = [max(left[rises < -_SAME_MM] / rises[rises < -_SAME_MM]),
            min(left[rises > _SAME_MM] / rises[rises > _SAME_MM])]  # fmt: skip
    return float(sum(ends) / 2)


def _unit(one: Floats) -> Floats:
    return one / np.linalg.norm(one)
