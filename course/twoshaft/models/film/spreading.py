"""Where the paste goes when the gap closes.

Each cell can hold as much as its gap. What is too much moves on to the nearest room: first to
neighbouring cells that are not yet full, and where all is full, over the nearest free edge. The
end state follows from one field, the amount that has passed each cell, u: it is the smallest
u >= 0 with thickness + (sum of neighbours' u - 4 u) <= gap everywhere and u = 0 beyond the edges,
with equality wherever u > 0. That is the obstacle problem of Hele-Shaw flow (the spreading of a
fluid squeezed between plates) and of the divisible sandpile (Levine and Peres): the result does not
depend on the order in which cells spill. Volume is conserved however far the solution is taken,
since every cell loses exactly what its neighbours gain.

The field is found by projected over-relaxation, first on coarser grids whose result is where the
finer one starts.

A paste with a yield stress needs a clamp large enough to get there (closing.py).
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property, lru_cache

import numpy as np

from twoshaft.models.film.land import Land

# Over-relaxation, and how near to full is full enough.
_OMEGA, _TOLERANCE, _MOST_SWEEPS, _LOOK_EVERY, _COARSEST = 1.8, 2e-3, 2000, 16, 24
_BILINEAR = np.array([9, 3, 3, 1]) / 16


@dataclass(frozen=True)
class Spread:
    """The film after closing.

    Attributes
    ----------
    thickness_m : numpy.ndarray
        In each cell of the face, shape (ny, nx) [m].
    over_m : numpy.ndarray
        What came over the edge into each cell beside the face, as a thickness [m], shape (ny, nx).

    Examples
    --------
    >>> land = Land.of(unit.faces.face_by_id("end-cover"), (60, 45))
    >>> closed = spread(land, np.where(land.is_face, 1e-4, 0.0), np.full(land.kind.shape, 5e-5))
    >>> f"{closed.thickness_m.max() * 1e3:.2f} mm", bool(closed.over_m.any())
    ('0.05 mm', True)
    """

    thickness_m: np.ndarray
    over_m: np.ndarray


@dataclass(frozen=True)
class _Net:
    """Cells of the face in a row, black ones after red ones, and their four neighbours.

    A neighbour beyond the edge is the last entry, whose u stays zero. ``blocks`` are the
    places in the next coarser net of each cell's block and of the three nearest to it.
    """

    cells: np.ndarray
    reds: int
    around: np.ndarray
    edge_from: np.ndarray
    edge_to: np.ndarray
    blocks: np.ndarray

    @cached_property
    def halves(self) -> tuple[tuple[slice, np.ndarray], ...]:
        """Where reds and blacks stand in the row, and their neighbours, shape (4, n)."""
        parts = slice(0, self.reds), slice(self.reds, self.cells.size)
        return tuple((half, np.ascontiguousarray(self.around[half].T)) for half in parts)


def spread(land: Land, thickness_m: np.ndarray, gap_m: np.ndarray) -> Spread:
    """Spread a film to a gap.

    Parameters
    ----------
    land : Land
    thickness_m : numpy.ndarray
        As laid, shape (ny, nx) [m]; zero off the face.
    gap_m : numpy.ndarray
        Of the closed face, shape (ny, nx) [m]; above zero on the face.

    Returns
    -------
    Spread
        Volume is conserved to rounding; no cell is over its gap by more than 0.2 %.

    Examples
    --------
    >>> land = Land.of(unit.faces.face_by_id("end-cover"), (60, 45))
    >>> thick = np.where(land.is_face, 1e-4, 0.0)
    >>> closed = spread(land, thick, np.full(land.kind.shape, 5e-5))
    >>> kept, over = closed.thickness_m.sum(), closed.over_m.sum()
    >>> f"{(kept + over) / thick.sum():.3f}"  # nothing is lost
    '1.000'
    """
    nets = _nets(land)
    net = nets[0]
    laid = thickness_m.ravel()[net.cells]
    room = gap_m.ravel()[net.cells]
    passed = _passed(nets, laid - room, room)
    after = np.zeros(land.kind.size)
    over = np.zeros(land.kind.size)
    after[net.cells] = laid + passed[net.around].sum(axis=1) - 4 * passed[:-1]
    np.add.at(over, net.edge_to, passed[net.edge_from])
    shape = land.kind.shape
    return Spread(after.reshape(shape), over.reshape(shape))


def _passed(nets: list[_Net], surplus: np.ndarray, room: np.ndarray) -> np.ndarray:
    """Amount that has passed each cell [m]; the last entry is beyond the edge."""
    if not (surplus > 0).any():
        return np.zeros(surplus.size + 1)
    net = nets[0]
    start = np.zeros(surplus.size + 1)
    if len(nets) > 1:
        # A block of four holds the sum of its cells and, twice as wide, feels a quarter as steep.
        coarse = nets[1]
        sums = [
            np.bincount(net.blocks[:, 0], weights=values, minlength=coarse.cells.size + 1)[:-1]
            for values in (surplus, room)
        ]
        start[:-1] = _passed(nets[1:], *sums)[net.blocks] @ _BILINEAR
    return _relaxed(net, surplus, room, start)


def _relaxed(net: _Net, surplus: np.ndarray, room: np.ndarray, passed: np.ndarray) -> np.ndarray:
    """Projected successive over-relaxation, reds and blacks in turn."""
    halves = [
        (passed[half], surplus[half], near, np.empty(near.shape), np.empty(near.shape[1]))
        for half, near in net.halves
    ]
    for sweep in range(_MOST_SWEEPS):
        for own, more, near, flow, total in halves:
            passed.take(near, out=flow, mode="clip")
            np.add.reduce(flow, axis=0, out=total)
            total += more
            total *= _OMEGA / 4
            own *= 1 - _OMEGA
            own += total
            np.maximum(own, 0.0, out=own)
        if sweep % _LOOK_EVERY == _LOOK_EVERY - 1 and _settled(net, surplus, room, passed):
            break
    return passed


def _settled(net: _Net, surplus: np.ndarray, room: np.ndarray, passed: np.ndarray) -> bool:
    """True if no cell is over its gap, nor short of it after paste has passed on."""
    inside = passed[:-1]
    left = np.empty_like(inside)
    for half, near in net.halves:
        np.add.reduce(passed.take(near, mode="clip"), axis=0, out=left[half])
    left += surplus
    left -= 4 * inside
    wrong = np.where(inside > 0, np.abs(left), left)
    return bool((wrong <= _TOLERANCE * room).all())


def _nets(land: Land) -> list[_Net]:
    """The face's nets from fine to coarse."""
    return _made_nets(land.is_face.shape, land.is_face.tobytes())


@lru_cache(maxsize=8)  # every learner's copy of a face has the same cells; megabytes each
def _made_nets(shape: tuple[int, int], cells: bytes) -> list[_Net]:
    nets: list[_Net] = []
    face = np.frombuffer(cells, dtype=bool).reshape(shape)
    while face.any() and (not nets or min(face.shape) >= _COARSEST):
        coarse = _halved(face)
        nets.append(_make_net(face, coarse))
        face = coarse
    return nets


def _halved(face: np.ndarray) -> np.ndarray:
    """Blocks of four that are at least half face, in a rim of others, about half the shape."""
    ny, nx = face.shape
    even = np.pad(face, ((0, ny % 2), (0, nx % 2)))
    count = even.reshape(even.shape[0] // 2, 2, even.shape[1] // 2, 2).sum(axis=(1, 3))
    return np.pad(count >= 2, 1)


def _make_net(face: np.ndarray, coarse: np.ndarray) -> _Net:
    nx = face.shape[1]
    flat = np.nonzero(face.ravel())[0]
    red = (flat // nx + flat % nx) % 2 == 0
    cells = np.concatenate([flat[red], flat[~red]])
    beside = cells[:, None] + np.array([1, -1, nx, -nx])
    around = _places(face).ravel()[beside]
    edge_from, side = np.nonzero(around == cells.size)
    row, column = np.divmod(cells, nx)
    # The block a cell lies in, and those it is nearest to: down or up, left or right.
    rows = np.column_stack([row // 2, row // 2 + 2 * (row % 2) - 1]) + 1
    columns = np.column_stack([column // 2, column // 2 + 2 * (column % 2) - 1]) + 1
    blocks = _places(coarse)[rows[:, [0, 0, 1, 1]], columns[:, [0, 1, 0, 1]]]
    return _Net(cells, int(red.sum()), around, edge_from, beside[edge_from, side], blocks)


def _places(face: np.ndarray) -> np.ndarray:
    """Place of each cell in its net's row, reds first; the number of cells for those off it."""
    red = np.add.outer(np.arange(face.shape[0]), np.arange(face.shape[1])) % 2 == 0
    places = np.full(face.shape, face.sum())
    reds = face & red
    places[reds] = np.arange(reds.sum())
    places[face & ~red] = reds.sum() + np.arange((face & ~red).sum())
    return places
