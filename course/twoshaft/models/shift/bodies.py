"""Contact between bodies that only slide: a point against a grown body.

Two convex pieces that do not turn touch exactly where the difference of their places lies in
the Minkowski difference of their shapes (Lozano-Perez 1983, from memory), so one test of points
against half-planes serves whole grids at once.
"""

from __future__ import annotations

import numpy as np

Piece = tuple[tuple[float, float], ...]

TOUCH_MM = 1e-6  # touching is free; overlapping is not


def _half_planes(still: Piece, moving: Piece) -> np.ndarray:
    """Rows (a, b, c): a point (x, y) is inside where every a x + b y + c is below zero."""
    from scipy.spatial import ConvexHull

    corners = np.array([(x1 - x2, y1 - y2) for x1, y1 in still for x2, y2 in moving])
    return ConvexHull(corners).equations


def overlaps(
    still: tuple[Piece, ...], moving: tuple[Piece, ...], x_mm: np.ndarray, y_mm: np.ndarray
) -> np.ndarray:
    """Whether two bodies overlap, for many places of the moving one.

    Parameters
    ----------
    still, moving : tuple of pieces
        Convex pieces, corners in mm.
    x_mm, y_mm : ndarray
        Place of the moving body relative to the still one; any shapes that broadcast.

    Returns
    -------
    ndarray of bool

    Examples
    --------
    >>> square = (((0, 0), (10, 0), (10, 10), (0, 10)),)
    >>> overlaps(square, square, np.array([5, 10]), np.array([0, 0]))  # touching is free
    array([ True, False])
    """
    x_mm, y_mm = np.broadcast_arrays(x_mm, y_mm)
    result = np.zeros(x_mm.shape, dtype=bool)
    for a in still:
        for b in moving:
            inside = np.ones(x_mm.shape, dtype=bool)
            for nx, ny, offset in _half_planes(a, b):
                inside &= nx * x_mm + ny * y_mm + offset < -TOUCH_MM
            result |= inside
    return result
