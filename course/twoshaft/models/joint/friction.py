"""Friction states of a thread, and how clamp load scatters with them.

A state gives friction as three values (low, typical, high) for thread and head: nothing is known
for certain below the first and above the last. Between them a triangle is assumed. A wrench's
error is spread evenly over its tolerance (GUM type B). So every sample lies within the bounds.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from twoshaft.models.border import Above, Range, border
from twoshaft.models.joint.clamp import (
    MU_HIGH,
    MU_LOW,
    TORQUE,
    lever_m,
    torque_long,
    twist_factor,
)
from twoshaft.models.joint.threads import Seat, Strength, Thread
from twoshaft.models.validity import ordered
from twoshaft.units.quantities import Q

Three = tuple[float, float, float]
_TORQUE = Above("torque", "N*m")
_TOLERANCE = Range("tolerance of the tool", "", 0, 0.5, "ISO 6789")


@dataclass(frozen=True)
class Friction:
    """Friction of a thread and of the seat under the head, each low, typical, high.

    Raises
    ------
    OutOfRangeError
        A value outside 0.03 to 0.6, or limits that do not rise.

    Examples
    --------
    >>> STATES["oiled"].thread, STATES["dry"].thread
    ((0.08, 0.12, 0.16), (0.14, 0.17, 0.22))
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
    """Smallest, typical and largest clamp load [N].

    Examples
    --------
    >>> bounds = ClampBounds(low_n=8e3, typical_n=10e3, high_n=14e3)
    >>> bounds.scatter
    1.75
    """

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


@border(torque=_TORQUE, tolerance=_TOLERANCE)
def clamp_bounds(
    torque_nm: float, thread: Thread, seat: Seat, friction: Friction, tolerance: float = 0.0
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

    Examples
    --------
    >>> m8 = Thread.named("M8")
    >>> bounds = clamp_bounds(Q(25, "N*m"), m8, Seat.hexagon(m8), STATES["oiled"], 0.04)
    >>> f"{bounds.low_n / 1e3:.0f}, {bounds.typical_n / 1e3:.0f}, {bounds.high_n / 1e3:.0f} kN"
    '14, 19, 28 kN'
    """
    levers = [
        lever_m(thread, seat, mu_g, mu_k)
        for mu_g, mu_k in zip(friction.thread, friction.head, strict=True)
    ]
    return ClampBounds(
        torque_nm * (1 - tolerance) / levers[2],
        torque_nm / levers[1],
        torque_nm * (1 + tolerance) / levers[0],
    )


@dataclass(frozen=True)
class ClampSample:
    """Clamp loads of many like bolts [N], with the torque and friction behind each.

    Examples
    --------
    >>> m8 = Thread.named("M8")
    >>> got = clamp_sample(Q(25, "N*m"), m8, Seat.hexagon(m8), STATES["dry"], count=200, seed=1)
    >>> f"{got.clamp_n.min() / 1e3:.0f} to {got.clamp_n.max() / 1e3:.0f} kN at one torque"
    '12 to 16 kN at one torque'
    """

    clamp_n: np.ndarray
    torque_nm: np.ndarray
    mu_thread: np.ndarray
    mu_head: np.ndarray

    @property
    def mean_n(self) -> float:
        """Mean clamp load [N]."""
        return float(self.clamp_n.mean())


@border(
    torque=_TORQUE,
    tolerance=_TOLERANCE,
    count=Range("number of bolts", "", 1, 1_000_000, "memory"),
)
def clamp_sample(
    torque_nm: float,
    thread: Thread,
    seat: Seat,
    friction: Friction,
    tolerance: float = 0.0,
    *,
    count: float = 10_000,
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

    Examples
    --------
    >>> m8 = Thread.named("M8")
    >>> got = clamp_sample(Q(25, "N*m"), m8, Seat.hexagon(m8), STATES["oiled"], count=500, seed=1)
    >>> f"{got.mean_n / 1e3:.0f} kN"
    '19 kN'
    """
    rng = np.random.default_rng(seed)
    bolts = int(count)
    mu_g = _triangle(rng, friction.thread, bolts)
    mu_k = mu_g if alike else _triangle(rng, friction.head, bolts)
    torques = torque_nm * rng.uniform(1 - tolerance, 1 + tolerance, bolts)
    return ClampSample(torques / lever_m(thread, seat, mu_g, mu_k), torques, mu_g, mu_k)


@border(torque=TORQUE)
def torque_for_state(
    torque_nm: float, thread: Thread, seat: Seat, given_for: Friction, now: Friction
) -> Q:
    """Give the torque that keeps the typical clamp when the thread's state is another [N·m].

    A torque is good for the state it was stated for; this is T now = T K_now / K_then.

    Examples
    --------
    >>> m8, dry, oiled = Thread.named("M8"), STATES["dry"], STATES["oiled"]
    >>> f"{torque_for_state(Q(25, 'N*m'), m8, Seat.hexagon(m8), dry, oiled).m_as('N*m'):.0f} N·m"
    '18 N·m'
    """
    clamp_n = torque_nm / lever_m(thread, seat, given_for.thread[1], given_for.head[1])
    return torque_long(Q(clamp_n, "N"), thread, seat, now.thread[1], now.head[1])


MOST_USE = 0.9
"""Share of the least yield strength that may be used; VDI 2230 tables take it (from memory)."""


@border(torque=TORQUE, tolerance=_TOLERANCE)
def worst_utilisation(
    torque_nm: float,
    thread: Thread,
    seat: Seat,
    steel: Strength,
    friction: Friction,
    tolerance: float = 0.0,
) -> float:
    """Give the largest share of yield that any corner of friction and tool reading uses.

    Low friction under the head with high friction in the thread twists most, so all four corners
    are tried.

    Examples
    --------
    >>> from twoshaft.models.joint.threads import strength
    >>> m8, steel = Thread.named("M8"), strength("8.8", Q(8, "mm"))
    >>> f"{worst_utilisation(Q(25, 'N*m'), m8, Seat.hexagon(m8), steel, STATES['dry'], 0.04):.2f}"
    '0.86'
    """
    most_nm = torque_nm * (1 + tolerance)
    return max(
        float(most_nm / lever_m(thread, seat, mu_g, mu_k) * twist_factor(thread, mu_g))
        / (steel.yield_pa * thread.stress_area_m2)
        for mu_g in (friction.thread[0], friction.thread[2])
        for mu_k in (friction.head[0], friction.head[2])
    )


def _triangle(rng: np.random.Generator, three: Three, count: int) -> np.ndarray:
    low, typical, high = three
    if low == high:
        return np.full(count, low)
    return rng.triangular(low, typical, high, count)
