"""Orders in which the bolts of a face may be tightened.

They are names for sequences, nothing more: what a sequence does to the clamp, the face model says.
"""

from __future__ import annotations

import numpy as np

from twoshaft.models.validity import in_range


def clockwise(count: int) -> tuple[int, ...]:
    """One after the other round the ring."""
    return tuple(range(_count(count)))


def crosswise(count: int) -> tuple[int, ...]:
    """Each next bolt as far round the ring as can be from those done; ties to the lower number."""
    count = _count(count)
    order, left = [0], set(range(1, count))
    while left:
        nxt = max(left, key=lambda i: (_least_distance(i, order, count), -i))
        order.append(nxt)
        left.remove(nxt)
    return tuple(order)


def middle_outwards(points) -> tuple[int, ...]:
    """From the middle of the pattern outwards, by distance from the centroid.

    Parameters
    ----------
    points : (n, 2) array
        Positions in any one unit.
    """
    points = np.asarray(points, float)
    distance = np.hypot(*(points - points.mean(axis=0)).T)
    return tuple(int(i) for i in np.lexsort((np.arange(len(points)), np.round(distance, 9))))


def _count(count: int) -> int:
    return int(in_range("number of bolts", count, 1, 60, "", "one face"))


def _least_distance(i: int, done: list[int], count: int) -> int:
    return min(min(abs(i - j), count - abs(i - j)) for j in done)
