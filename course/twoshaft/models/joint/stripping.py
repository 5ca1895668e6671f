"""Does the bolt break, or does a thread strip?

Alexander's method as in ISO/TR 16224: each thread shears on a cylinder, over the share of the
engagement that meets the other flank, at 0.6 times its tensile strength; a thin boss swells (C1)
and the weaker thread bends its partner's flanks away (C2, C3).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from twoshaft.models.border import Above, Depends, Range, Size, border
from twoshaft.models.joint.threads import Strength, Thread, ThreadLimits
from twoshaft.units.quantities import Q

SHEAR_SHARE = 0.6
_SOURCE = "ISO/TR 16224"
_BOSS_LOW, _BOSS_FULL = 1.4, 1.9
_RATIO_LOW, _RATIO_HIGH = 0.4, 2.2
_ENGAGED: dict[str, Size] = {
    "engagement": Above("engagement", "mm"),
    "pitch": Above("thread pitch", "mm"),
}


def _hole_flanks(bolt_major_mm: float, pitch_mm: float) -> Range:
    """Flanks meet while the bracket is above zero; below half of D it is no pitch diameter."""
    highest = bolt_major_mm + math.sqrt(3) / 2 * pitch_mm
    return Range("pitch diameter of the hole", "mm", bolt_major_mm / 2, highest, _SOURCE)


def _bolt_flanks(hole_minor_mm: float, pitch_mm: float) -> Range:
    """Flanks meet while the bracket is above zero; above twice D1 it is no pitch diameter."""
    lowest = hole_minor_mm - math.sqrt(3) / 2 * pitch_mm
    return Range("pitch diameter of the bolt", "mm", lowest, 2 * hole_minor_mm, _SOURCE)


@border(
    "mm**2",
    **_ENGAGED,
    bolt_major=Above("major diameter of the bolt", "mm"),
    hole_pitch_diameter=Depends("mm", _hole_flanks),
)
def shear_area_hole(
    engagement_mm: float, pitch_mm: float, bolt_major_mm: float, hole_pitch_diameter_mm: float
) -> float:
    """Give the area on which the hole's thread shears off [mm²].

    pi (LE/P) D [P/2 + (D - E)/sqrt 3], D the bolt's (smallest) major diameter, E the hole's
    (largest) pitch diameter.

    Raises
    ------
    OutOfRangeError
        A length not above zero, or diameters at which the flanks no longer meet.

    Examples
    --------
    M10, 10 mm engaged, basic profile: pi 10/1.5 10 (0.75 + 0.974/sqrt 3), arithmetic.

    >>> f"{shear_area_hole(Q(10, 'mm'), Q(1.5, 'mm'), Q(10, 'mm'), Q(9.026, 'mm')):.0f}"
    '275 millimeter ** 2'
    """
    flanks_mm = bolt_major_mm - hole_pitch_diameter_mm
    return _sheared_mm2(engagement_mm, pitch_mm, bolt_major_mm, flanks_mm)


@border(
    "mm**2",
    **_ENGAGED,
    hole_minor=Above("minor diameter of the hole", "mm"),
    bolt_pitch_diameter=Depends("mm", _bolt_flanks),
)
def shear_area_bolt(
    engagement_mm: float, pitch_mm: float, hole_minor_mm: float, bolt_pitch_diameter_mm: float
) -> float:
    """Give the area on which the bolt's thread shears off [mm²].

    pi (LE/P) D1 [P/2 + (d2 - D1)/sqrt 3], D1 the hole's (largest) minor diameter, d2 the bolt's
    (smallest) pitch diameter. Errors as `shear_area_hole`.

    Examples
    --------
    >>> f"{shear_area_bolt(Q(10, 'mm'), Q(1.5, 'mm'), Q(8.376, 'mm'), Q(9.026, 'mm')):.0f}"
    '197 millimeter ** 2'
    """
    flanks_mm = bolt_pitch_diameter_mm - hole_minor_mm
    return _sheared_mm2(engagement_mm, pitch_mm, hole_minor_mm, flanks_mm)


def _sheared_mm2(
    engagement_mm: float, pitch_mm: float, diameter_mm: float, flanks_mm: float
) -> float:
    """Area sheared off on a cylinder; ``flanks_mm`` is how far the flanks meet, on the diameter."""
    bracket_mm = pitch_mm / 2 + flanks_mm / math.sqrt(3)
    return math.pi * engagement_mm / pitch_mm * diameter_mm * bracket_mm


@border(ratio=Range("boss diameter over thread diameter", "", _BOSS_LOW, math.inf, _SOURCE))
def boss_factor(ratio: float) -> float:
    """C1: how much of the thread's strength a boss of outer over thread diameter ``ratio`` keeps.

    The constant is 2.61, as in VDI 2230 and with Alexander 1977 (both from memory): with it the
    curve reaches 1 at 1.9, where it ends; 2.6, as an open library has it, would pass 1 there.

    Raises
    ------
    OutOfRangeError
        Below 1.4 the method does not hold.

    Examples
    --------
    >>> f"{boss_factor(1.5):.2f}", f"{boss_factor(2.0):.2f}"
    ('0.84', '1.00')
    """
    return 1.0 if ratio >= _BOSS_FULL else -(ratio**2) + 3.8 * ratio - 2.61


@border(ratio=Above("strength ratio of the threads"))
def bending_factors(ratio: float) -> tuple[float, float]:
    """C2 (bolt) and C3 (hole) for the strength ratio Rs of hole thread over bolt thread.

    Outside 0.4 to 2.2 the ends of the range are used: the curves are flat or unknown there.

    Examples
    --------
    >>> [f"{factor:.3f}" for factor in bending_factors(0.5)]  # the hole's thread is the weak one
    ['0.897', '1.050']
    """
    rs = min(max(ratio, _RATIO_LOW), _RATIO_HIGH)
    if rs < 1:
        return 0.897, 0.728 + 1.769 * rs - 2.896 * rs**2 + 1.296 * rs**3
    return 5.594 - 13.682 * rs + 14.107 * rs**2 - 6.057 * rs**3 + 0.9353 * rs**4, 0.897


@dataclass(frozen=True)
class Strip:
    """What each way of failing takes [N], and which comes first.

    Examples
    --------
    >>> strip = Strip(bolt_breaks_n=29e3, bolt_strips_n=40e3, hole_strips_n=22e3)
    >>> strip.first, strip.holds_n
    ('hole thread strips', 22000.0)
    """

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


def _useful(thread: Thread) -> Range:
    d_mm = thread.d_m * 1e3
    return Range("engagement", "mm", 0.3 * d_mm, 4 * d_mm, "0.3 to 4 diameters")


@border(
    hole_tensile=Range("tensile strength of the tapped metal", "MPa", 50, 2000, "metals"),
    engagement=Depends("mm", _useful),
    boss=Above("boss diameter", "mm"),
)
def strip_loads(
    thread: Thread,
    steel: Strength,
    hole_tensile_mpa: float,
    engagement_mm: float,
    boss_mm: float | None = None,
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

    Examples
    --------
    An M8 8.8 in an aluminium of 200 MPa, engaged by one diameter.

    >>> from twoshaft.models.joint.threads import strength
    >>> m8, steel = Thread.named("M8"), strength("8.8", Q(8, "mm"))
    >>> strip_loads(m8, steel, Q(200, "MPa"), Q(8, "mm")).first
    'hole thread strips'
    """
    d_mm = thread.d_m * 1e3
    hole_pa = hole_tensile_mpa * 1e6
    c1 = 1.0 if boss_mm is None else boss_factor(boss_mm / d_mm)
    area_hole, area_bolt = _areas_m2(thread, engagement_mm / 1e3, limits)
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
