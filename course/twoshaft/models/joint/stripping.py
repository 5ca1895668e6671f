"""Does the bolt break, or does a thread strip?

Alexander's method as in ISO/TR 16224: each thread shears on a cylinder, over the share of the
engagement that meets the other flank, at 0.6 times its tensile strength; a thin boss swells (C1)
and the weaker thread bends its partner's flanks away (C2, C3).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from twoshaft.models.joint.threads import Strength, Thread, ThreadLimits
from twoshaft.models.validity import in_range, positive
from twoshaft.units.quantities import Q

SHEAR_SHARE = 0.6
_SOURCE = "ISO/TR 16224"
_BOSS_LOW, _BOSS_FULL = 1.4, 1.9
_RATIO_LOW, _RATIO_HIGH = 0.4, 2.2


def shear_area_hole(engagement: Q, pitch: Q, bolt_major: Q, hole_pitch_diameter: Q) -> Q:
    """Give the area on which the hole's thread shears off [mm²].

    pi (LE/P) D [P/2 + (D - E)/sqrt 3], D the bolt's (smallest) major diameter, E the hole's
    (largest) pitch diameter.

    Raises
    ------
    OutOfRangeError
        A length not above zero, or diameters at which the flanks no longer meet.
    """
    le, p = positive("engagement", engagement, "mm"), positive("thread pitch", pitch, "mm")
    major = positive("major diameter of the bolt", bolt_major, "mm")
    # Flanks meet while the bracket is above zero; above D itself it is no pitch diameter.
    highest = major + math.sqrt(3) / 2 * p
    e = in_range(
        "pitch diameter of the hole", hole_pitch_diameter, major / 2, highest, "mm", _SOURCE
    )
    return Q(math.pi * le / p * major * (p / 2 + (major - e) / math.sqrt(3)), "mm**2")


def shear_area_bolt(engagement: Q, pitch: Q, hole_minor: Q, bolt_pitch_diameter: Q) -> Q:
    """Give the area on which the bolt's thread shears off [mm²].

    pi (LE/P) D1 [P/2 + (d2 - D1)/sqrt 3], D1 the hole's (largest) minor diameter, d2 the bolt's
    (smallest) pitch diameter. Errors as `shear_area_hole`.
    """
    le, p = positive("engagement", engagement, "mm"), positive("thread pitch", pitch, "mm")
    minor = positive("minor diameter of the hole", hole_minor, "mm")
    lowest = minor - math.sqrt(3) / 2 * p
    d2 = in_range(
        "pitch diameter of the bolt", bolt_pitch_diameter, lowest, 2 * minor, "mm", _SOURCE
    )
    return Q(math.pi * le / p * minor * (p / 2 + (d2 - minor) / math.sqrt(3)), "mm**2")


def boss_factor(ratio: float) -> float:
    """C1: how much of the thread's strength a boss of outer over thread diameter ``ratio`` keeps.

    Raises
    ------
    OutOfRangeError
        Below 1.4 the method does not hold.
    """
    s = in_range("boss diameter over thread diameter", ratio, _BOSS_LOW, math.inf, "", _SOURCE)
    return 1.0 if s >= _BOSS_FULL else min(1.0, -(s**2) + 3.8 * s - 2.6)


def bending_factors(ratio: float) -> tuple[float, float]:
    """C2 (bolt) and C3 (hole) for the strength ratio Rs of hole thread over bolt thread.

    Outside 0.4 to 2.2 the ends of the range are used: the curves are flat or unknown there.
    """
    rs = min(max(positive("strength ratio of the threads", ratio), _RATIO_LOW), _RATIO_HIGH)
    if rs < 1:
        return 0.897, 0.728 + 1.769 * rs - 2.896 * rs**2 + 1.296 * rs**3
    return 5.594 - 13.682 * rs + 14.107 * rs**2 - 6.057 * rs**3 + 0.9353 * rs**4, 0.897


@dataclass(frozen=True)
class Strip:
    """What each way of failing takes [N], and which comes first."""

    bolt_breaks_n: float
    bolt_strips_n: float
    hole_strips_n: float

    @property
    def first(self) -> str:
        """``bolt breaks``, ``bolt thread strips`` or ``hole thread strips``."""
        return min(
            (self.bolt_breaks_n, "bolt breaks"),
            (self.bolt_strips_n, "bolt thread strips"),
            (self.hole_strips_n, "hole thread strips"),
        )[1]

    @property
    def holds_n(self) -> float:
        """The load that the weakest of the three carries [N]."""
        return min(self.bolt_breaks_n, self.bolt_strips_n, self.hole_strips_n)

    @property
    def holds(self) -> Q:
        """The load that the weakest of the three carries [kN]."""
        return Q(self.holds_n / 1e3, "kN")


def strip_loads(
    thread: Thread,
    steel: Strength,
    hole_tensile: Q,
    engagement: Q,
    boss: Q | None = None,
    limits: ThreadLimits | None = None,
) -> Strip:
    """Give the loads at which the bolt breaks and each thread strips.

    Parameters
    ----------
    thread, steel : Thread, Strength
    hole_tensile : stress
        Tensile strength of the metal that is tapped.
    engagement : length
        Length of full threads that meet, 0.3 to 4 diameters.
    boss : length, optional
        Outer diameter of the boss round the hole; left out, it is thick.
    limits : ThreadLimits, optional
        Limits of the two threads; left out, both have the basic profile.

    Raises
    ------
    OutOfRangeError
        Any quantity out of range; a boss thinner than 1.4 thread diameters.
    """
    d_mm = thread.d_m * 1e3
    le = in_range("engagement", engagement, 0.3 * d_mm, 4 * d_mm, "mm", "0.3 to 4 diameters")
    hole_pa = (
        in_range("tensile strength of the tapped metal", hole_tensile, 50, 2000, "MPa", "metals")
        * 1e6
    )
    c1 = 1.0 if boss is None else boss_factor(positive("boss diameter", boss, "mm") / d_mm)
    area_hole, area_bolt = _areas_m2(thread, le / 1e3, limits)
    c2, c3 = bending_factors(hole_pa * area_hole / (steel.tensile_pa * area_bolt))
    return Strip(
        bolt_breaks_n=thread.stress_area_m2 * steel.tensile_pa,
        bolt_strips_n=SHEAR_SHARE * steel.tensile_pa * area_bolt * c1 * c2,
        hole_strips_n=SHEAR_SHARE * hole_pa * area_hole * c1 * c3,
    )


def _areas_m2(
    thread: Thread, engagement_m: float, limits: ThreadLimits | None
) -> tuple[float, float]:
    if limits is None:
        limits = ThreadLimits(thread.d_m, thread.d2_m, thread.d2_m, thread.minor_m)
    le, p = Q(engagement_m, "m"), Q(thread.pitch_m, "m")
    hole = shear_area_hole(le, p, Q(limits.bolt_major_min_m, "m"), Q(limits.hole_pitch_max_m, "m"))
    bolt = shear_area_bolt(le, p, Q(limits.hole_minor_max_m, "m"), Q(limits.bolt_pitch_min_m, "m"))
    return hole.magnitude * 1e-6, bolt.magnitude * 1e-6
