"""What came out at the edge of a closed face: whether it shows too little, too much, or enough."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Protocol

SHOWN_MM = 120.0
"""Length of edge that is looked at."""


@dataclass(frozen=True)
class SeenEdge:
    """The edge of a closed face from outside; about as much lies inside.

    ``out_mm`` names the stretches over which sealant came out, from where to where, in order;
    ``high_mm`` is the radius of its half round, ``bound_mm`` the largest that is safe inside.

    Examples
    --------
    >>> edge_faults(SeenEdge(out_mm=((0, 120),), high_mm=0.4, bound_mm=0.8))
    ()
    """

    out_mm: tuple[tuple[float, float], ...]
    high_mm: float
    bound_mm: float


class SeenEdgeLike(Protocol):
    """What tells of an edge, as ``SeenEdge`` does.

    Examples
    --------
    >>> SeenEdgeLike.__name__
    'SeenEdgeLike'
    """

    @property
    def out_mm(self) -> Sequence[Sequence[float]]:
        """Stretches over which sealant came out."""

    @property
    def high_mm(self) -> float:
        """Radius of its half round."""

    @property
    def bound_mm(self) -> float:
        """The largest that is safe inside."""


def edge_faults(edge: SeenEdgeLike) -> tuple[str, ...]:
    """Give what an edge shows: ``bare``, ``fat``, both or nothing.

    Where nothing came out nothing shows that the gap is full; as much as outside lies inside
    (common practice, no source).

    Examples
    --------
    >>> edge_faults(SeenEdge(out_mm=((0, 50), (80, 120)), high_mm=1.1, bound_mm=0.8))
    ('bare', 'fat')
    """
    reached = 0.0
    for start, end in edge.out_mm:
        if start > reached:
            break
        reached = max(reached, end)
    return ("bare",) * (reached < SHOWN_MM) + ("fat",) * (edge.high_mm > edge.bound_mm)
