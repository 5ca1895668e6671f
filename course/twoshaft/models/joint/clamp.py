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

from twoshaft.models.joint.threads import Seat, Strength, Thread
from twoshaft.models.validity import in_range, positive
from twoshaft.units.quantities import Q

COS_FLANK = math.cos(math.radians(30))
MU_LOW, MU_HIGH = 0.03, 0.6
_MU_SOURCE = "VDI 2230 friction classes A to E, widened for rusted threads"
_K_SOURCE = "Shigley table 8-15 from 0.09, widened"
_LOAD_SOURCE = "no bolt of this course carries more"
_MAX_CLAMP_N, _MAX_TORQUE_NM = 5e6, 1e5


def clamp_in(clamp) -> float | np.ndarray:
    """Check a clamp load, give newtons."""
    return in_range("clamp load", clamp, 0, _MAX_CLAMP_N, "N", _LOAD_SOURCE)


def torque_in(torque) -> float | np.ndarray:
    """Check a torque, give newton metres."""
    return in_range("torque", torque, 0, _MAX_TORQUE_NM, "N*m", _LOAD_SOURCE)


def friction_in(name: str, mu) -> float | np.ndarray:
    """Check a friction coefficient."""
    return in_range(name, mu, MU_LOW, MU_HIGH, "", _MU_SOURCE)


def thread_lever_m(thread: Thread, mu_thread):
    """Torque per newton that the thread alone takes [m]. No checks: for inner loops."""
    return thread.pitch_m / (2 * math.pi) + mu_thread * thread.d2_m / (2 * COS_FLANK)


def lever_m(thread: Thread, seat: Seat, mu_thread, mu_head):
    """Torque per newton of clamp [m]; friction may be arrays. No checks: for inner loops."""
    return thread_lever_m(thread, mu_thread) + mu_head * seat.friction_diameter_m / 2


def clamp_short(torque: Q, nut_factor, diameter: Q) -> Q:
    """Give the clamp load by the short form F = T/(K d) [kN]; errors as `torque_short`."""
    k = in_range("nut factor", nut_factor, 0.05, 1, "", _K_SOURCE)
    return Q(torque_in(torque) / (k * positive("thread diameter", diameter, "m")) / 1e3, "kN")


def torque_long(clamp: Q, thread: Thread, seat: Seat, mu_thread, mu_head) -> Q:
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
    """
    lever = _checked_lever(thread, seat, mu_thread, mu_head)
    return Q(clamp_in(clamp) * lever, "N*m")


def nut_factor(thread: Thread, seat: Seat, mu_thread, mu_head):
    """Give the K of the short form that equals the long form for these frictions."""
    return _checked_lever(thread, seat, mu_thread, mu_head) / thread.d_m


@dataclass(frozen=True)
class TorqueShares:
    """Where the torque goes, each a share of one: pitch (useful), thread and head friction."""

    pitch: float
    thread: float
    head: float


def torque_shares(thread: Thread, seat: Seat, mu_thread: float, mu_head: float) -> TorqueShares:
    """Split a tightening torque into its useful part and the two frictions."""
    whole = _checked_lever(thread, seat, mu_thread, mu_head)
    pitch = thread.pitch_m / (2 * math.pi) / whole
    head = mu_head * seat.friction_diameter_m / 2 / whole
    return TorqueShares(pitch, 1 - pitch - head, head)


def twist_factor(thread: Thread, mu_thread):
    """Equivalent over tensile stress while tightening, von Mises; no checks, for inner loops."""
    d0, d2 = thread.stress_diameter_m, thread.d2_m
    shear = 1.5 * (d2 / d0) * (thread.pitch_m / (math.pi * d2) + mu_thread / COS_FLANK)
    return np.sqrt(1 + 3 * shear**2)


def assembly_preload(thread: Thread, steel: Strength, mu_thread, utilisation=0.9) -> Q:
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
    """
    nu = in_range("utilisation", utilisation, 1e-6, 1, "", "VDI 2230")
    factor = twist_factor(thread, friction_in("thread friction", mu_thread))
    return Q(nu * steel.yield_pa * thread.stress_area_m2 / factor / 1e3, "kN")


def utilisation(clamp: Q, thread: Thread, steel: Strength, mu_thread):
    """Give the share of yield used while tightening to a clamp load (above 1 it yields)."""
    factor = twist_factor(thread, friction_in("thread friction", mu_thread))
    return clamp_in(clamp) * factor / (steel.yield_pa * thread.stress_area_m2)


def _checked_lever(thread, seat, mu_thread, mu_head):
    mu_g, mu_k = friction_in("thread friction", mu_thread), friction_in("head friction", mu_head)
    return lever_m(thread, seat, mu_g, mu_k)
