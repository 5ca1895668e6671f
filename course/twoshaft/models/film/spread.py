"""Where the paste goes when the gap closes.

Each cell can hold as much as its gap. What is too much moves on to the nearest room: first to
neighbouring cells that are not yet full, and where all is full, over the nearest free edge. The
end state follows from one field, the amount that has passed each cell, u: it is the smallest
u >= 0 with thickness + (sum of neighbours' u - 4 u) <= gap everywhere and u = 0 beyond the edges,
with equality wherever u > 0. That is the obstacle problem of Hele-Shaw flow (the spreading of a
fluid squeezed between plates) and of the divisible sandpile (Levine and Peres): the result does not
depend on the order in which cells spill. Volume is conserved however far the solution is taken,
since every cell loses exactly what its neighbours gain.

A paste with a yield stress needs a clamp large enough to get there (closing.py).
"""

from __future__ import annotations

from dataclasses import dataclass
from weakref import WeakKeyDictionary

import numpy as np

from twoshaft.models.film.land import Land

# Over-relaxation, and how near to full is full enough.
_OMEGA, _TOLERANCE, _MOST_SWEEPS, _LOOK_EVERY = 1.8, 2e-3, 2000, 10


@dataclass(frozen=True)
class Spread:
    """The film after closing.

    Attributes
    ----------
    thickness_m : numpy.ndarray
        In each cell of the face, shape (ny, nx) [m].
    over_m : numpy.ndarray
        What came over the edge into each cell beside the face, as a thickness [m], shape (ny, nx).
    """

    thickness_m: np.ndarray
    over_m: np.ndarray


@dataclass(frozen=True)
class _Net:
    """Cells of the face in a row, black ones after red ones, and their four neighbours.

    A neighbour beyond the edge is the last entry, whose u stays zero.
    """

    cells: np.ndarray
    reds: int
    around: np.ndarray
    edge_from: np.ndarray
    edge_to: np.ndarray


_NETS: WeakKeyDictionary[Land, _Net] = WeakKeyDictionary()


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
    """
    net = _net(land)
    laid = thickness_m.ravel()[net.cells]
    room = gap_m.ravel()[net.cells]
    passed = _passed(net, laid - room, room)
    over = np.zeros(land.kind.size)
    after = np.zeros(land.kind.size)
    after[net.cells] = laid + passed[net.around].sum(axis=1) - 4 * passed[:-1]
    np.add.at(over, net.edge_to, passed[net.edge_from])
    shape = land.kind.shape
    return Spread(after.reshape(shape), over.reshape(shape))


def _passed(net: _Net, surplus: np.ndarray, room: np.ndarray) -> np.ndarray:
    """Amount that has passed each cell [m], by projected successive over-relaxation."""
    passed = np.zeros(surplus.size + 1)
    if not (surplus > 0).any():
        return passed
    halves = (slice(0, net.reds), slice(net.reds, surplus.size))
    around = [np.ascontiguousarray(net.around[half].T) for half in halves]
    for sweep in range(_MOST_SWEEPS):
        for half, near in zip(halves, around, strict=True):
            flow = passed[near[0]] + passed[near[1]] + passed[near[2]] + passed[near[3]]
            old = passed[half]
            new = old + _OMEGA * ((flow + surplus[half]) / 4 - old)
            passed[half] = np.maximum(new, 0.0)
        if sweep % _LOOK_EVERY == _LOOK_EVERY - 1:
            left = surplus + passed[net.around].sum(axis=1) - 4 * passed[:-1]
            wrong = np.where(passed[:-1] > 0, np.abs(left), np.maximum(left, 0.0))
            if (wrong <= _TOLERANCE * room).all():
                break
    return passed


def _net(land: Land) -> _Net:
    """The face's net, made once."""
    net = _NETS.get(land)
    if net is None:
        net = _NETS[land] = _make_net(land)
    return net


def _make_net(land: Land) -> _Net:
    ny, nx = land.kind.shape
    flat = np.nonzero(land.is_face.ravel())[0]
    red = (flat // nx + flat % nx) % 2 == 0
    cells = np.concatenate([flat[red], flat[~red]])
    place = np.full(ny * nx, cells.size)
    place[cells] = np.arange(cells.size)
    beside = cells[:, None] + np.array([1, -1, nx, -nx])
    around = place[beside]
    edge_from, side = np.nonzero(around == cells.size)
    return _Net(cells, int(red.sum()), around, edge_from, beside[edge_from, side])
