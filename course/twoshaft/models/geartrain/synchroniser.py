"""Synchroniser: cone torque, blocking, time, and the ring gap that shows wear.

Cone torque as for a cone clutch with uniform wear: Shigley, Mechanical Engineering Design, 9th
ed., eq. 16-45. Index (blocking) torque from memory.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from twoshaft.models.border import Above, Each, Range, border
from twoshaft.units.sections.geartrain import Synchroniser

_SOURCE = "usual synchroniser cones, common practice, no source"


_HALF_ANGLE = Range("cone half angle", "rad", math.radians(2), math.radians(20))
_GAP, _WEAR = Above("ring gap", "mm"), Above("wear", "mm", zero=True)
_GAP_NOW = Above("ring gap", "mm", zero=True)


@border(
    "N*m",
    force=Above("axial force", "N", zero=True),
    friction=Range("cone friction", "", 0.01, 0.6, _SOURCE),
    mean_diameter=Above("mean cone diameter", "m"),
    half_angle=_HALF_ANGLE,
    cones=Range("number of cones", "", 1, 3, _SOURCE),
)
def cone_torque(
    force_n: float, friction: float, mean_diameter_m: float, half_angle_rad: float, cones: float = 1
) -> float:
    """Torque of a synchroniser's cones.

    Parameters
    ----------
    force : pint.Quantity
        Axial force on the ring [N].
    friction : float
        Coefficient at the cone.
    mean_diameter : pint.Quantity
        Mean cone diameter [mm].
    half_angle : pint.Quantity
        Half of the cone's angle [deg].
    cones : int
        Number of working cones.

    Returns
    -------
    pint.Quantity
        Torque [N*m].

    Raises
    ------
    OutOfRangeError

    Examples
    --------
    T = F mu d / (2 sin a): arithmetic.

    >>> from twoshaft.units.quantities import Q
    >>> f"{cone_torque(Q(600, 'N'), 0.1, Q(70, 'mm'), Q(7, 'degree')):.1f}"
    '17.2 meter * newton'
    """
    return int(cones) * force_n * friction * mean_diameter_m / (2 * math.sin(half_angle_rad))


@border(
    "s",
    inertia=Above("inertia", "kg*m**2"),
    speed_change=Above("change of speed", "rad/s", zero=True),
    torque=Above("cone torque", "N*m"),
    drag=Above("drag torque", "N*m", zero=True),
)
def synchronising_time(
    inertia_kgm2: float, speed_change_rad_s: float, torque_nm: float, drag_nm: float | None = None
) -> float:
    """Time to bring a gear to its shaft's speed.

    Parameters
    ----------
    inertia : pint.Quantity
        Moment of inertia that is changed in speed, at the cone [kg*m**2].
    speed_change : pint.Quantity
        Difference of speed [rad/s].
    torque : pint.Quantity
        Cone torque [N*m].
    drag : pint.Quantity, optional
        Drag torque that helps [N*m].

    Returns
    -------
    pint.Quantity
        Time [s].

    Examples
    --------
    >>> from twoshaft.units.quantities import Q
    >>> f"{synchronising_time(Q(0.012, 'kg*m**2'), Q(200, 'rad/s'), Q(12, 'N*m')):.1f}"
    '0.2 second'
    """
    total_nm = torque_nm if drag_nm is None else torque_nm + drag_nm
    return inertia_kgm2 * speed_change_rad_s / total_nm


@border("mm", gap_new=_GAP, wear=_WEAR, half_angle=_HALF_ANGLE)
def gap_after_wear(gap_new_mm: float, wear_mm: float, half_angle_rad: float) -> float:
    """Ring gap left when a cone has worn by ``wear`` at right angles to its face.

    The ring moves along its axis by wear / sin(half angle), so a little wear costs much gap.

    Parameters
    ----------
    gap_new, wear : pint.Quantity
        Gap when new and depth of wear [mm].
    half_angle : pint.Quantity
        Half of the cone's angle [deg].

    Returns
    -------
    pint.Quantity
        Gap [mm]; zero when the ring touches the gear.

    Examples
    --------
    >>> from twoshaft.units.quantities import Q
    >>> f"{gap_after_wear(Q(1.2, 'mm'), Q(0.05, 'mm'), Q(7, 'degree')):.2f}"
    '0.79 millimeter'
    """
    return max(0.0, gap_new_mm - wear_mm / math.sin(half_angle_rad))


@border("mm", gap_new=_GAP, gap=_GAP_NOW, half_angle=_HALF_ANGLE)
def wear_from_gap(gap_new_mm: float, gap_mm: float, half_angle_rad: float) -> float:
    """Wear of a cone, at right angles to its face, that has cost a ring its gap.

    The other way round than :func:`gap_after_wear`.

    Parameters
    ----------
    gap_new, gap : pint.Quantity
        Gap when new and gap now [mm].
    half_angle : pint.Quantity
        Half of the cone's angle [deg].

    Returns
    -------
    pint.Quantity
        Depth of wear [mm]; zero when nothing has worn.

    Examples
    --------
    >>> from twoshaft.units.quantities import Q
    >>> f"{wear_from_gap(Q(1.2, 'mm'), Q(0.79, 'mm'), Q(7, 'degree')):.2f}"
    '0.05 millimeter'
    """
    return max(0.0, gap_new_mm - gap_mm) * math.sin(half_angle_rad)


TILT_MM = 0.3
"""Difference of the gaps round a ring from which it sits tilted: common practice, no source."""


@border(gaps=Each(_GAP_NOW), step=Above("step of the blades", "mm"))
def gap_says(section: Synchroniser, gaps_mm: Sequence[float], step_mm: float) -> str:
    """What the gaps read round a ring say.

    Parameters
    ----------
    section : Synchroniser
        The unit's limits.
    gaps : sequence of pint.Quantity
        Thickest blade that goes in, at several places [mm].
    step : pint.Quantity
        Step of the blades [mm].

    Returns
    -------
    str
        ``"tilted"``: they differ too much; ``"worn"``: the narrowest is below the least gap;
        ``"away"``: all are wider than new, so the ring is kept off its cone; else ``"good"``.

    Examples
    --------
    >>> train = unit.gear_train
    >>> from twoshaft.units.quantities import Q
    >>> ring = train.synchronisers[0]  # at least 0.55 mm
    >>> gap_says(ring, [Q(mm, "mm") for mm in (0.50, 0.45, 0.50)], step=Q(0.05, "mm"))
    'worn'
    """
    if max(gaps_mm) - min(gaps_mm) > TILT_MM + 1e-9:
        return "tilted"
    if min(gaps_mm) < section.ring_gap_least_mm - 1e-9:
        return "worn"
    return "away" if min(gaps_mm) > section.ring_gap_new_mm + step_mm + 1e-9 else "good"
