"""A bolted face: a closed ring of beams on a compliant joint, with bolts as springs.

The flange is one closed beam (bending and shear, Timoshenko) through its bolts. It lies on the
joint: springs that push where the faces touch and never pull. Where the flange is not flat a gap
must close first. Bolts pull as in `interaction`: a nut stays where the wrench left it, and the
wrench never loosens.

Wet sealant carries no clamp. While it has not yet run out from under the face it holds the face up
by its thickness; when it has run out the face sinks and every bolt loses what that sinking takes.

What the model leaves out: twist of the flange, bending of the bolts, creep of a gasket. Bending is
carried round the corners of the ring as if it were straight.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import cached_property

import numpy as np

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Above, Depends, Range, border
from twoshaft.models.joint.interaction import CLICK, check_order, solve_forces
from twoshaft.models.joint.threads import Thread
from twoshaft.models.validity import in_range, positive
from twoshaft.units.kept import kept
from twoshaft.units.quantities import Q

STEEL_PA = 205e9
_NODES = 96
_KEPT = 4000  # solutions of one face kept at most
_SHEAR_SHARE = 5 / 6  # of a rectangular section
_POISSON = 0.33


def _grips(thread: Thread) -> Range:
    d = thread.d_m
    return Range("grip", "mm", 0.2 * d * 1e3, 20 * d * 1e3, "0.2 to 20 diameters")


@border("kN/mm", grip=Depends("mm", _grips))
def bolt_stiffness(thread: Thread, grip_mm: float) -> float:
    """Give the stiffness of a steel bolt in a tapped hole, threaded over its grip [kN/mm].

    VDI 2230 (from memory): head 0.5 d and tapped thread 0.33 d on the nominal section, grip and
    0.5 d of engaged thread on the root section.

    Raises
    ------
    OutOfRangeError
        A grip outside 0.2 to 20 diameters.

    Examples
    --------
    >>> f"{bolt_stiffness(Thread.named('M8'), Q(30, 'mm')).m_as('kN/mm'):.0f}"
    '176'
    """
    d, length = thread.d_m, grip_mm * 1e-3
    nominal, root = math.pi / 4 * d**2, math.pi / 4 * thread.d3_m**2
    give = ((0.5 + 0.33) * d / nominal + (length + 0.5 * d) / root) / STEEL_PA
    return 1 / give / 1e6


@dataclass(frozen=True, eq=False)
class Face:
    """A flange on its joint.

    Parameters
    ----------
    bolts_m : (n, 2) array
        Bolt centres in the order in which the flange passes them [m]; at least 3.
    width_m, thickness_m : float
        Section of the flange [m].
    bolt_stiffness_n_m : float
        Of one bolt [N/m], see `bolt_stiffness`.
    joint_stiffness_n_m3 : float
        Pressure per sinking of the joint [Pa/m]: bare machined faces some 1e11 and more, a paper
        gasket about 1e10 (orders of magnitude, common practice, no source).
    gap_m : (2 n,) array, optional
        Gap between flange and joint when it is laid on, at bolt 1, in the middle of the span to
        bolt 2, at bolt 2 and so on [m]; left out, the flange is flat.
    elastic_pa : float
        Of the flange [Pa].
    weight_n : float
        Presses the flange down evenly before any bolt is tight [N].

    Raises
    ------
    OutOfRangeError
        Fewer than 3 or more than 40 bolts, two bolts in one place, or any quantity out of range.

    Examples
    --------
    >>> from twoshaft.models.joint import Fastening
    >>> face = Fastening.of(unit, "case-bolts").face()
    >>> face.count, f"{face.length_m * 1e3:.0f} mm round"
    (14, '840 mm round')
    """

    bolts_m: np.ndarray
    width_m: float
    thickness_m: float
    bolt_stiffness_n_m: float
    joint_stiffness_n_m3: float
    gap_m: np.ndarray | None = None
    elastic_pa: float = 70e9
    weight_n: float = 30.0
    _solutions: dict = field(default_factory=dict, init=False, repr=False)
    _gap_m: np.ndarray = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        points = np.array(in_range("bolt position", Q(self.bolts_m, "m"), -5, 5, "m", "one face"))
        if points.ndim != 2 or points.shape[1] != 2 or not 3 <= len(points) <= 40:
            raise OutOfRangeError(
                "bolt positions", f"of shape {points.shape}", "3 to 40 pairs x, y", "one ring"
            )
        object.__setattr__(self, "bolts_m", points)
        positive("distance from bolt to bolt", Q(self._spans, "m"), "mm")
        in_range("width of the flange", Q(self.width_m, "m"), 3, 200, "mm", "case flanges")
        in_range("thickness of the flange", Q(self.thickness_m, "m"), 2, 100, "mm", "case flanges")
        in_range("bolt stiffness", Q(self.bolt_stiffness_n_m, "N/m"), 1e6, 1e10, "N/m", "bolts")
        in_range(
            "joint stiffness", Q(self.joint_stiffness_n_m3, "Pa/m"), 1e7, 1e14, "Pa/m", "joints"
        )
        in_range("elastic modulus", Q(self.elastic_pa, "Pa"), 1, 500, "GPa", "metals")
        in_range("weight on the joint", Q(self.weight_n, "N"), 0.1, 1e4, "N", "cases")
        gap = np.zeros(2 * len(points)) if self.gap_m is None else np.array(self.gap_m, float)
        in_range("gap under the flange", Q(gap, "m"), 0, 2, "mm", "beyond that it is bent")
        if gap.shape != (2 * len(points),):
            allowed = f"{2 * len(points)} values, at and between the bolts"
            raise OutOfRangeError(
                "gap under the flange", f"of shape {gap.shape}", allowed, "the ring"
            )
        object.__setattr__(self, "gap_m", gap)
        object.__setattr__(self, "_gap_m", gap)

    @property
    def count(self) -> int:
        """Number of bolts."""
        return len(self.bolts_m)

    @cached_property
    def _spans(self) -> np.ndarray:
        return np.hypot(*(np.roll(self.bolts_m, -1, axis=0) - self.bolts_m).T)

    @cached_property
    def length_m(self) -> float:
        """Length of the ring [m]."""
        return float(self._spans.sum())

    @cached_property
    def _parts(self) -> np.ndarray:
        """Even number of elements in each span, so that its middle is a node."""
        return 2 * np.maximum(1, np.round(_NODES / 2 * self._spans / self.length_m)).astype(int)

    @cached_property
    def bolt_nodes(self) -> np.ndarray:
        """Node of each bolt."""
        return np.concatenate([[0], np.cumsum(self._parts)[:-1]])

    @cached_property
    def elements_m(self) -> np.ndarray:
        """Length of each element [m]; element e joins node e to the next round the ring."""
        return np.repeat(self._spans / self._parts, self._parts)

    @cached_property
    def along_m(self) -> np.ndarray:
        """Place of each node along the ring from bolt 1 [m]."""
        return np.concatenate([[0.0], np.cumsum(self.elements_m)[:-1]])

    @cached_property
    def share_m(self) -> np.ndarray:
        """Length of ring that each node stands for [m]."""
        return (self.elements_m + np.roll(self.elements_m, 1)) / 2

    @cached_property
    def gap_at_nodes_m(self) -> np.ndarray:
        """Free gap at each node [m], a smooth wave between the given values."""
        knots = np.stack([self.bolt_nodes, self.bolt_nodes + self._parts // 2], axis=1).ravel()
        ends = np.append(knots[1:], len(self.along_m))
        gap = np.empty(len(self.along_m))
        for start, end, low, high in zip(
            knots, ends, self._gap_m, np.roll(self._gap_m, -1), strict=True
        ):
            turn = np.arange(end - start) / (end - start)
            gap[start:end] = low + (high - low) * (1 - np.cos(np.pi * turn)) / 2
        return gap

    @cached_property
    def bending_n_m(self) -> np.ndarray:
        """Stiffness of the free ring against sinking at its nodes, rotations condensed [N/m]."""
        nodes, length = len(self.elements_m), self.elements_m
        rigid = self.elastic_pa * self.width_m * self.thickness_m**3 / 12
        shear = _SHEAR_SHARE * self.elastic_pa / (2 * (1 + _POISSON))
        phi = 12 * rigid / (shear * self.width_m * self.thickness_m * length**2)
        one, half = np.ones(nodes), 6 * length
        a, b = (4 + phi) * length**2, (2 - phi) * length**2
        # rows and columns: sinking and rotation of the first end, then of the second
        part = np.array(
            [
                [12 * one, half, -12 * one, half],
                [half, a, -half, b],
                [-12 * one, -half, 12 * one, -half],
                [half, b, -half, a],
            ]
        )
        part = part * (rigid / (length**3 * (1 + phi)))
        first = np.arange(nodes)
        second = np.roll(first, -1)
        at = np.array([first, nodes + first, second, nodes + second])
        whole = np.zeros((2 * nodes, 2 * nodes))
        np.add.at(whole, (at[:, None], at[None, :]), part)
        sink, turn = slice(0, nodes), slice(nodes, None)
        condensed = whole[sink, sink] - whole[sink, turn] @ np.linalg.solve(
            whole[turn, turn], whole[turn, sink]
        )
        return (condensed + condensed.T) / 2

    @cached_property
    def joint_n_m(self) -> np.ndarray:
        """Stiffness of the joint under each node [N/m]."""
        return self.joint_stiffness_n_m3 * self.width_m * self.share_m

    def solution(self, touching: np.ndarray, film_m: float) -> tuple[np.ndarray, np.ndarray]:
        """Solve the ring for one set of nodes that touch; kept, since pulls come back to it.

        Parameters
        ----------
        touching : (nodes,) bool array
        film_m : float
            Wet film between the faces [m].

        Returns
        -------
        (nodes, n) array
            Sinking of the nodes per newton on each bolt [m/N].
        (nodes,) array
            Sinking without any bolt [m].
        """
        key = touching.tobytes(), film_m
        if key not in self._solutions:
            if len(self._solutions) >= _KEPT:
                self._solutions.clear()
            joint = self.joint_n_m * touching
            loads = np.zeros((len(touching), self.count + 1))
            loads[self.bolt_nodes, np.arange(self.count)] = 1.0
            loads[:, -1] = self.weight_n * self.share_m / self.length_m
            loads[:, -1] += joint * (self.gap_at_nodes_m - film_m)
            solved = np.linalg.solve(self.bending_n_m + np.diag(joint), loads)
            self._solutions[key] = solved[:, :-1], solved[:, -1]
        return self._solutions[key]


@dataclass(frozen=True)
class Round:
    """One round of tightening.

    Parameters
    ----------
    order : tuple of int
        Bolts from 0, each at most once; a bolt left out is not turned.
    target_n : float or (n,) array
        Clamp at which the wrench stops, for all or for each bolt [N].
    film_m : float
        Wet sealant still standing between the faces during this round [m].

    Examples
    --------
    >>> Round.of([0, 2, 1, 3], target=Q(10, "kN")).order
    (0, 2, 1, 3)
    """

    order: tuple[int, ...]
    target_n: float | np.ndarray
    film_m: float = 0.0

    @classmethod
    @border(target=Above("target clamp", "N"), film=Above("wet film", "m", zero=True))
    def of(
        cls, order: Sequence[int], target_n: float | np.ndarray, film_m: float | None = None
    ) -> Round:
        """Build a round from quantities: a force (or one for each bolt) and a length.

        Examples
        --------
        >>> Round.of([0, 2, 1], target=Q(10, "kN"))
        Round(order=(0, 2, 1), target_n=10000.0, film_m=0.0)
        """
        return cls(tuple(order), target_n, 0.0 if film_m is None else film_m)


@dataclass(frozen=True, eq=False)
class Tightening:
    """What a sequence of tightening left.

    Attributes
    ----------
    clamp_n : (n,) array
        Residual clamp of each bolt once all wet film has run out [N].
    rounds_n : (rounds, n) array
        Clamp at the end of each round, film still standing if there was one [N].
    pulls_n : (pulls, n) array
        Clamp after each pull of the wrench [N].
    turned : (pulls,) bool array
        False where the wrench clicked at once and turned nothing.
    gap_m, pressure_pa : (nodes,) arrays
        Gap left, and pressure of the joint, along the ring.
    target_n : (n,) array
        The last round's target.

    Examples
    --------
    >>> ring = np.array([(0, 0), (0.1, 0), (0.1, 0.1), (0, 0.1)])
    >>> soft = Face(ring, 0.012, 0.020, bolt_stiffness_n_m=200e6, joint_stiffness_n_m3=1e10)
    >>> left = tighten(soft, [Round.of(range(4), Q(10, "kN"))] * 2)
    >>> [f"{one:.2f}" for one in left.spreads]  # after each round
    ['0.30', '0.03']
    """

    face: Face
    clamp_n: np.ndarray
    rounds_n: np.ndarray
    pulls_n: np.ndarray
    turned: np.ndarray
    gap_m: np.ndarray
    pressure_pa: np.ndarray
    target_n: np.ndarray

    @property
    def clamp(self) -> Q:
        """Residual clamp of each bolt [kN]."""
        return Q(self.clamp_n / 1e3, "kN")

    @property
    def spread(self) -> float:
        """Largest less smallest residual clamp, over the mean target."""
        return spread(self.clamp_n, self.target_n)

    @property
    def spreads(self) -> np.ndarray:
        """The spread at the end of each round."""
        return np.array([spread(row, self.target_n) for row in self.rounds_n])

    @property
    def shortfall(self) -> float:
        """How far the loosest bolt stays below its target, as a share."""
        return float(np.max(1 - self.clamp_n / self.target_n))


def spread(clamp_n: np.ndarray, target_n) -> float:
    """Largest less smallest clamp over the mean target.

    Examples
    --------
    >>> spread(np.array([9e3, 10e3, 11e3]), 10e3)
    0.2
    """
    return float(np.ptp(clamp_n) / np.mean(target_n))


def tighten(face: Face, rounds: Sequence[Round]) -> Tightening:
    """Tighten a face by any sequence in any number of rounds.

    Parameters
    ----------
    face : Face
    rounds : sequence of Round
        1 to 100.

    Returns
    -------
    Tightening

    Raises
    ------
    OutOfRangeError
        No round, an order that names a bolt twice or one that is not there, a target not above
        zero, a film below zero or growing from round to round.

    Examples
    --------
    One round leaves the first bolts short: the later ones have sunk the flange under them.

    >>> ring = np.array([(0, 0), (0.1, 0), (0.1, 0.1), (0, 0.1)])
    >>> soft = Face(ring, 0.012, 0.020, bolt_stiffness_n_m=200e6, joint_stiffness_n_m3=1e10)
    >>> left = tighten(soft, [Round.of(range(4), Q(10, "kN"))])
    >>> bool(left.clamp_n[0] < left.clamp_n[3]), f"{left.clamp_n[3]:.0f}"
    (True, '10000')
    """
    in_range("number of rounds", len(rounds), 1, 100, "", "patience")
    if all(isinstance(one.target_n, float) for one in rounds):
        return _tightened(face, tuple(rounds))
    return _tighten(face, rounds)


@kept(most=512)  # a sequence and the target of a group come back from learner to learner
def _tightened(face: Face, rounds: tuple[Round, ...]) -> Tightening:
    return _tighten(face, rounds)


def _tighten(face: Face, rounds: Sequence[Round]) -> Tightening:
    state = _State(face)
    by_round, pulls, turned = [], [], []
    film = math.inf
    target = np.empty(face.count)
    for one in rounds:
        check_order(one.order, face.count)
        target = np.broadcast_to(positive("target clamp", Q(one.target_n, "N"), "N"), face.count)
        film = in_range("wet film", Q(one.film_m, "m"), 0, film, "m", "a film only gets thinner")
        state.settle(film)
        for j in one.order:
            turned.append(state.pull(j, float(target[j])))
            pulls.append(state.force.copy())
        by_round.append(state.force.copy())
    state.settle(0.0)
    left = face.gap_at_nodes_m - state.sunk
    gap = np.where(state.touching, 0.0, np.maximum(left, 0.0))
    pressure = np.where(state.touching, -left, 0.0) * face.joint_stiffness_n_m3
    return Tightening(
        face,
        state.force,
        np.array(by_round),
        np.array(pulls),
        np.array(turned),
        gap,
        pressure,
        np.array(target),
    )


@border(
    limit=Range("limit of the spread", "", 1e-6, 1, "shares"),
    most=Range("number of rounds", "", 1, 100, "patience"),
)
def rounds_needed(
    face: Face, order: Sequence[int], target: Q, limit: float, most: float = 20
) -> int | None:
    """Give how many rounds at full target bring the spread to a limit, or None if ``most`` do not.

    Parameters
    ----------
    face : Face
    order : sequence of int
        The same in every round.
    target : force
    limit : float
        Largest allowed spread (largest less smallest clamp over target), above 0 to 1.
    most : int
        1 to 100.

    Examples
    --------
    >>> ring = np.array([(0, 0), (0.1, 0), (0.1, 0.1), (0, 0.1)])
    >>> soft = Face(ring, 0.012, 0.020, bolt_stiffness_n_m=200e6, joint_stiffness_n_m3=1e10)
    >>> [rounds_needed(soft, range(4), Q(10, "kN"), limit) for limit in (0.9, 0.1)]
    [1, 2]
    """
    spreads = tighten(face, [Round.of(order, target)] * int(most)).spreads
    good = np.flatnonzero(spreads <= limit)
    return int(good[0]) + 1 if good.size and len(order) == face.count else None


class _State:
    """Nuts, forces and contact while a face is being tightened."""

    def __init__(self, face: Face) -> None:
        self.face = face
        self.bolt = np.full(face.count, 1 / face.bolt_stiffness_n_m)
        self.nut = np.zeros(face.count)
        self.tight = np.zeros(face.count, bool)
        self.force = np.zeros(face.count)
        self.touching = np.ones(len(face.along_m), bool)
        self.film = 0.0
        self.sunk = np.zeros(len(face.along_m))

    def settle(self, film_m: float) -> None:
        """Let the film run out to a thickness; the nuts stay."""
        self.film = film_m
        self._solve(-1, 0.0)

    def pull(self, j: int, target_n: float) -> bool:
        """Turn bolt j until the wrench clicks; give whether it turned at all."""
        if self.tight[j] and self.force[j] >= target_n * CLICK:
            return False
        self.tight[j] = True
        self._solve(j, target_n)
        self.nut[j] = self.bolt[j] * target_n + self.sunk[self.face.bolt_nodes[j]]
        return True

    def _solve(self, pulled: int, target_n: float) -> None:
        """Find forces and contact that agree, starting from the last contact."""
        face = self.face
        gap = face.gap_at_nodes_m - self.film
        touching, tried = self.touching, set()
        while True:
            key = touching.tobytes()
            lifted, base = face.solution(touching, self.film)
            force = solve_forces(
                lifted[face.bolt_nodes],
                self.bolt,
                self.nut,
                base[face.bolt_nodes],
                self.tight,
                pulled,
                target_n,
            )
            sunk = base + lifted @ force
            now = sunk > gap
            if (now == touching).all():
                break
            if key in tried:  # going in circles: flip only the node that is most wrong
                worst = np.argmax(np.where(now != touching, np.abs(sunk - gap), -1.0))
                now = touching.copy()
                now[worst] = not now[worst]
            tried.add(key)
            if len(tried) > 500:
                raise RuntimeError("no contact found that agrees with the bolt forces")
            touching = now if now.any() else touching & (sunk == sunk.max())
        self.touching, self.force, self.sunk = touching, force, sunk
