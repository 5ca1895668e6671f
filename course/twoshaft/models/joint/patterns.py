"""Orders in which the bolts of a face may be tightened.

They are names for sequences, nothing more: what a sequence does to the clamp, the face model says.
"""

from __future__ import annotations

import numpy as np

from twoshaft.models.border import Range, border

_COUNT = Range("number of bolts", "", 1, 60, "one face")


@border(count=_COUNT)
def clockwise(count: float) -> tuple[int, ...]:
    """One after the other round the ring.

    Examples
    --------
    >>> clockwise(4)
    (0, 1, 2, 3)
    """
    return tuple(range(int(count)))


@border(count=_COUNT)
def crosswise(count: float) -> tuple[int, ...]:
    """Each next bolt as far round the ring as can be from those done; ties to the lower number.

    Examples
    --------
    >>> crosswise(4)
    (0, 2, 1, 3)
    """
    bolts = int(count)
    order, left = [0], set(range(1, bolts))
    while left:
        nxt = max(left, key=lambda i: (_least_distance(i, order, bolts), -i))
        order.append(nxt)
        left.remove(nxt)
    return tuple(order)


def middle_outwards(points) -> tuple[int, ...]:
    """From the middle of the pattern outwards, by distance from the centroid.

    Parameters
    ----------
    points : (n, 2) array
        Positions in any one unit.

    Examples
    --------
    >>> middle_outwards([(0, 0), (1, 0), (3, 0)])
    (1, 0, 2)
    """
    points = np.asarray(points, float)
    distance = np.hypot(*(points - points.mean(axis=0)).T)
    return tuple(int(i) for i in np.lexsort((np.arange(len(points)), np.round(distance, 9))))


def _least_distance(i: int, done: list[int], count: int) -> int:
    return min(min(abs(i - j), count - abs(i - j)) for j in done)
