"""From the torque on a wrench to the clamp load in a bolt, and back.

Short form: T = K F d. Long form (VDI 2230, Kellermann and Klein):
T = F [P/(2 pi) + mu_G d2/(2 cos 30°) + mu_K DKm/2]; the first part stretches the bolt, the second
is thread friction, the third friction under the head.

Assembly at a utilisation nu of the yield strength takes the twist of tightening into account:
F = nu Rp A0 / sqrt(1 + 3 [3/2 (d2/d0) (P/(pi d2) + mu_G/cos 30°)]^2), with d0 = (d2 + d3)/2.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from twoshaft.models.border import Above, Range, border
from twoshaft.models.joint.threads import Seat, Strength, Thread

COS_FLANK = math.cos(math.radians(30))
MU_LOW, MU_HIGH = 0.03, 0.6
_MU_SOURCE = "VDI 2230 friction classes A to E, widened for rusted threads"
_LOAD_SOURCE = "no bolt of this course carries more"
_MAX_CLAMP_N, _MAX_TORQUE_NM = 5e6, 1e5
CLAMP = Range("clamp load", "N", 0, _MAX_CLAMP_N, _LOAD_SOURCE)
TORQUE = Range("torque", "N*m", 0, _MAX_TORQUE_NM, _LOAD_SOURCE)
MU_THREAD = Range("thread friction", "", MU_LOW, MU_HIGH, _MU_SOURCE)
MU_HEAD = Range("head friction", "", MU_LOW, MU_HIGH, _MU_SOURCE)


def thread_lever_m(thread: Thread, mu_thread):
    """Torque per newton that the thread alone takes [m]. No checks: for inner loops.

    Examples
    --------
    >>> f"{thread_lever_m(Thread.named('M8'), 0.12) * 1e3:.2f} mm"
    '0.70 mm'
    """
    return thread.pitch_m / (2 * math.pi) + mu_thread * thread.d2_m / (2 * COS_FLANK)


def lever_m(thread: Thread, seat: Seat, mu_thread, mu_head):
    """Torque per newton of clamp [m]; friction may be arrays. No checks: for inner loops.

    Examples
    --------
    >>> m8 = Thread.named("M8")
    >>> f"{18e3 * lever_m(m8, Seat.hexagon(m8), 0.12, 0.12):.1f} N·m for 18 kN"
    '23.7 N·m for 18 kN'
    """
    return thread_lever_m(thread, mu_thread) + mu_head * seat.friction_diameter_m / 2


@border(
    "kN",
    torque=TORQUE,
    nut_factor=Range("nut factor", "", 0.05, 1, "Shigley table 8-15 from 0.09, widened"),
    diameter=Above("thread diameter", "m"),
)
def clamp_short(torque_nm, nut_factor, diameter_m):
    """Give the clamp load by the short form F = T/(K d) [kN].

    Parameters
    ----------
    torque : torque
    nut_factor : float
        K, 0.05 to 1.
    diameter : length
        Nominal diameter of the bolt.

    Raises
    ------
    OutOfRangeError
        For any quantity outside its range or of the wrong kind.

    Examples
    --------
    Shigley, 9th ed., example 8-3: 3750 lbf·in on a 3/4 inch bolt with K 0.2 make 25 kip.

    >>> from twoshaft.units.quantities import Q
    >>> clamp = clamp_short(Q(3750, "lbf*inch"), 0.2, Q(0.75, "inch"))
    >>> f"{clamp.m_as('kip'):.2f}"
    '25.00'
    """
    return torque_nm / (nut_factor * diameter_m) / 1e3


@border("N*m", clamp=CLAMP, mu_thread=MU_THREAD, mu_head=MU_HEAD)
def torque_long(clamp_n, thread: Thread, seat: Seat, mu_thread, mu_head):
    """Give the torque by the long form [N·m].

    Parameters
    ----------
    clamp : force, scalar or array
    thread, seat : Thread, Seat
    mu_thread, mu_head : float or array
        Friction in the thread and under the head, 0.03 to 0.6.

    Raises
    ------
    OutOfRangeError
        For any quantity outside its range or of the wrong kind.

    Examples
    --------
    VDI 2230 prints 84 N·m for M12 8.8 at 43.0 kN and friction 0.12; its seat differs a little.

    >>> from twoshaft.units.quantities import Q
    >>> m12 = Thread.named("M12")
    >>> f"{torque_long(Q(43.0, 'kN'), m12, Seat.hexagon(m12), 0.12, 0.12).m_as('N*m'):.0f}"
    '83'
    """
    return clamp_n * lever_m(thread, seat, mu_thread, mu_head)


@border(mu_thread=MU_THREAD, mu_head=MU_HEAD)
def nut_factor(thread: Thread, seat: Seat, mu_thread, mu_head):
    """Give the K of the short form that equals the long form for these frictions.

    Examples
    --------
    >>> m10 = Thread.named("M10")
    >>> f"{nut_factor(m10, Seat.hexagon(m10), 0.14, 0.14):.2f}"  # 0.2 is the usual figure (Shigley)
    '0.19'
    """
    return lever_m(thread, seat, mu_thread, mu_head) / thread.d_m


@dataclass(frozen=True)
class TorqueShares:
    """Where the torque goes, each a share of one: pitch (useful), thread and head friction.

    Examples
    --------
    >>> TorqueShares(pitch=0.10, thread=0.40, head=0.50).pitch  # what stretches the bolt
    0.1
    """

    pitch: float
    thread: float
    head: float


@border(mu_thread=MU_THREAD, mu_head=MU_HEAD)
def torque_shares(thread: Thread, seat: Seat, mu_thread: float, mu_head: float) -> TorqueShares:
    """Split a tightening torque into its useful part and the two frictions.

    Examples
    --------
    >>> m10 = Thread.named("M10")
    >>> shares = torque_shares(m10, Seat.hexagon(m10), 0.12, 0.12)
    >>> f"{shares.pitch:.0%} stretch, {shares.thread:.0%} thread, {shares.head:.0%} head"
    '15% stretch, 38% thread, 47% head'
    """
    whole = lever_m(thread, seat, mu_thread, mu_head)
    pitch = thread.pitch_m / (2 * math.pi) / whole
    head = mu_head * seat.friction_diameter_m / 2 / whole
    return TorqueShares(pitch, 1 - pitch - head, head)


def twist_factor(thread: Thread, mu_thread):
    """Equivalent over tensile stress while tightening, von Mises; no checks, for inner loops.

    Examples
    --------
    >>> f"{twist_factor(Thread.named('M10'), 0.12):.2f}"
    '1.13'
    """
    d0, d2 = thread.stress_diameter_m, thread.d2_m
    shear = 1.5 * (d2 / d0) * (thread.pitch_m / (math.pi * d2) + mu_thread / COS_FLANK)
    return np.sqrt(1 + 3 * shear**2)


@border("kN", mu_thread=MU_THREAD, utilisation=Range("utilisation", "", 1e-6, 1, "VDI 2230"))
def assembly_preload(thread: Thread, steel: Strength, mu_thread, utilisation=0.9):
    """Give the clamp load at which tightening uses a share of the yield strength [kN].

    Parameters
    ----------
    thread, steel : Thread, Strength
    mu_thread : float or array
    utilisation : float
        Share nu of the minimum yield strength, above 0 to 1; VDI 2230 tables take 0.9.

    Raises
    ------
    OutOfRangeError
        Friction or utilisation out of range.

    Examples
    --------
    VDI 2230 prints 41.9 kN for M12 8.8 and a thread friction of 0.14; from rounded sizes.

    >>> from twoshaft.models.joint.threads import strength
    >>> from twoshaft.units.quantities import Q
    >>> m12, steel = Thread.named("M12"), strength("8.8", Q(12, "mm"))
    >>> f"{assembly_preload(m12, steel, 0.14).m_as('kN'):.1f}"
    '42.0'
    """
    factor = twist_factor(thread, mu_thread)
    return utilisation * steel.yield_pa * thread.stress_area_m2 / factor / 1e3


@border(clamp=CLAMP, mu_thread=MU_THREAD)
def utilisation(clamp_n, thread: Thread, steel: Strength, mu_thread):
    """Give the share of yield used while tightening to a clamp load (above 1 it yields).

    Examples
    --------
    >>> from twoshaft.models.joint.threads import strength
    >>> f"{utilisation(Q(18, 'kN'), Thread.named('M8'), strength('8.8', Q(8, 'mm')), 0.12):.2f}"
    '0.87'
    """
    factor = twist_factor(thread, mu_thread)
    return clamp_n * factor / (steel.yield_pa * thread.stress_area_m2)
