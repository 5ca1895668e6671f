"""Friction states of a thread, and how clamp load scatters with them.

A state gives friction as three values (low, typical, high) for thread and head: nothing is known
for certain below the first and above the last. Between them a triangle is assumed. A wrench's
error is spread evenly over its tolerance (GUM type B). So every sample lies within the bounds.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from twoshaft.models.joint.clamp import (
    MU_HIGH,
    MU_LOW,
    TORQUE,
    lever_m,
    torque_long,
    twist_factor,
)
from twoshaft.models.joint.threads import Seat, Strength, Thread
from twoshaft.models.validity import in_range, ordered, positive
from twoshaft.units.quantities import Q

Three = tuple[float, float, float]


@dataclass(frozen=True)
class Friction:
    """Friction of a thread and of the seat under the head, each low, typical, high.

    Raises
    ------
    OutOfRangeError
        A value outside 0.03 to 0.6, or limits that do not rise.
    """

    name: str
    thread: Three
    head: Three
    source: str = ""

    def __post_init__(self) -> None:
        for what in ("thread", "head"):
            values = ordered(
                f"{what} friction ({self.name})",
                tuple(getattr(self, what)),
                MU_LOW,
                MU_HIGH,
                "",
                "VDI 2230 friction classes A to E, widened for rusted threads",
            )
            object.__setattr__(self, what, values)


# Bands of the VDI 2230 friction classes (from memory); locker: about 10 % more torque for the
# same clamp than dry where it glues. A unit file brings its own and wins over these.
STATES = {
    state.name: state
    for state in (
        Friction("dry", (0.14, 0.17, 0.22), (0.14, 0.17, 0.22), "VDI 2230 class C, from memory"),
        Friction("oiled", (0.08, 0.12, 0.16), (0.08, 0.12, 0.16), "VDI 2230 class B, from memory"),
        Friction("sealant", (0.09, 0.13, 0.18), (0.10, 0.15, 0.20), "common practice, no source"),
        Friction("locker", (0.12, 0.16, 0.22), (0.12, 0.16, 0.21), "common practice, no source"),
    )
}


@dataclass(frozen=True)
class ClampBounds:
    """Smallest, typical and largest clamp load [N]."""

    low_n: float
    typical_n: float
    high_n: float

    @property
    def scatter(self) -> float:
        """The tightening factor alpha_A = largest over smallest (VDI 2230)."""
        return self.high_n / self.low_n

    @property
    def low(self) -> Q:
        """Smallest clamp load [kN]."""
        return Q(self.low_n / 1e3, "kN")

    @property
    def typical(self) -> Q:
        """Typical clamp load [kN]."""
        return Q(self.typical_n / 1e3, "kN")

    @property
    def high(self) -> Q:
        """Largest clamp load [kN]."""
        return Q(self.high_n / 1e3, "kN")


def clamp_bounds(
    torque: Q, thread: Thread, seat: Seat, friction: Friction, tolerance: float = 0.0
) -> ClampBounds:
    """Give the clamp loads that one torque can leave.

    Parameters
    ----------
    torque : torque
        What the wrench is set to.
    tolerance : float
        The wrench may be off by plus or minus this share, 0 to 0.5.

    Raises
    ------
    OutOfRangeError
        Torque or tolerance out of range.
    """
    torque_nm = positive("torque", torque, "N*m")
    share = in_range("tolerance of the tool", tolerance, 0, 0.5, "", "ISO 6789")
    levers = [
        lever_m(thread, seat, mu_g, mu_k)
        for mu_g, mu_k in zip(friction.thread, friction.head, strict=True)
    ]
    return ClampBounds(
        torque_nm * (1 - share) / levers[2],
        torque_nm / levers[1],
        torque_nm * (1 + share) / levers[0],
    )


@dataclass(frozen=True)
class ClampSample:
    """Clamp loads of many like bolts [N], with the torque and friction behind each."""

    clamp_n: np.ndarray
    torque_nm: np.ndarray
    mu_thread: np.ndarray
    mu_head: np.ndarray

    @property
    def mean_n(self) -> float:
        """Mean clamp load [N]."""
        return float(self.clamp_n.mean())


def clamp_sample(
    torque: Q,
    thread: Thread,
    seat: Seat,
    friction: Friction,
    tolerance: float = 0.0,
    *,
    count: int = 10_000,
    seed: int,
    alike: bool = False,
) -> ClampSample:
    """Tighten many like bolts with one torque and see what clamp each gets.

    Parameters
    ----------
    torque, thread, seat, friction, tolerance
        As for `clamp_bounds`.
    count : int
        Number of bolts, 1 to 1 000 000.
    seed : int
        The same seed gives the same bolts.
    alike : bool
        True where one coefficient serves thread and head of a bolt (tests of total friction).

    Raises
    ------
    OutOfRangeError
        Torque, tolerance or count out of range.
    """
    torque_nm = positive("torque", torque, "N*m")
    share = in_range("tolerance of the tool", tolerance, 0, 0.5, "", "ISO 6789")
    count = int(in_range("number of bolts", count, 1, 1_000_000, "", "memory"))
    rng = np.random.default_rng(seed)
    mu_g = _triangle(rng, friction.thread, count)
    mu_k = mu_g if alike else _triangle(rng, friction.head, count)
    torques = torque_nm * rng.uniform(1 - share, 1 + share, count)
    return ClampSample(torques / lever_m(thread, seat, mu_g, mu_k), torques, mu_g, mu_k)


def torque_for_state(
    torque: Q, thread: Thread, seat: Seat, given_for: Friction, now: Friction
) -> Q:
    """Give the torque that keeps the typical clamp when the thread's state is another [N·m].

    A torque is good for the state it was stated for; this is T now = T K_now / K_then.
    """
    clamp_n = TORQUE.plain(torque) / lever_m(thread, seat, given_for.thread[1], given_for.head[1])
    return torque_long(Q(clamp_n, "N"), thread, seat, now.thread[1], now.head[1])


MOST_USE = 0.9
"""Share of the least yield strength that may be used; VDI 2230 tables take it (from memory)."""


def worst_utilisation(
    torque: Q,
    thread: Thread,
    seat: Seat,
    steel: Strength,
    friction: Friction,
    tolerance: float = 0.0,
) -> float:
    """Give the largest share of yield that any corner of friction and tool reading uses.

    Low friction under the head with high friction in the thread twists most, so all four corners
    are tried.
    """
    torque_nm = TORQUE.plain(torque) * (
        1 + in_range("tolerance of the tool", tolerance, 0, 0.5, "", "ISO 6789")
    )
    return max(
        float(torque_nm / lever_m(thread, seat, mu_g, mu_k) * twist_factor(thread, mu_g))
        / (steel.yield_pa * thread.stress_area_m2)
        for mu_g in (friction.thread[0], friction.thread[2])
        for mu_k in (friction.head[0], friction.head[2])
    )


def _triangle(rng: np.random.Generator, three: Three, count: int) -> np.ndarray:
    low, typical, high = three
    if low == high:
        return np.full(count, low)
    return rng.triangular(low, typical, high, count)
