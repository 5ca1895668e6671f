"""Synchroniser: cone torque, blocking, time, and the ring gap that shows wear.

Cone torque as for a cone clutch with uniform wear: Shigley, Mechanical Engineering Design, 9th
ed., eq. 16-45. Index (blocking) torque from memory.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from twoshaft.models.validity import in_range, positive
from twoshaft.units.quantities import Q
from twoshaft.units.sections.geartrain import Synchroniser

_SOURCE = "usual synchroniser cones, common practice, no source"


def _cone(friction: float, half_angle: Q) -> tuple[float, float]:
    mu = in_range("cone friction", friction, 0.01, 0.6, "", _SOURCE)
    return mu, in_range("cone half angle", half_angle, math.radians(2), math.radians(20), "rad")


def cone_torque(force: Q, friction: float, mean_diameter: Q, half_angle: Q, cones: int = 1) -> Q:
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
    """
    mu, angle = _cone(friction, half_angle)
    force_n = positive("axial force", force, "N", zero=True)
    diameter_m = positive("mean cone diameter", mean_diameter, "m")
    number = int(in_range("number of cones", cones, 1, 3, "", _SOURCE))
    return Q(number * force_n * mu * diameter_m / (2 * math.sin(angle)), "N*m")


def synchronising_time(inertia: Q, speed_change: Q, torque: Q, drag: Q | None = None) -> Q:
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
    """
    inertia_kgm2 = positive("inertia", inertia, "kg*m**2")
    change_rad_s = positive("change of speed", speed_change, "rad/s", zero=True)
    total_nm = positive("cone torque", torque, "N*m")
    if drag is not None:
        total_nm += positive("drag torque", drag, "N*m", zero=True)
    return Q(inertia_kgm2 * change_rad_s / total_nm, "s")


def gap_after_wear(gap_new: Q, wear: Q, half_angle: Q) -> Q:
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
    """
    angle = in_range("cone half angle", half_angle, math.radians(2), math.radians(20), "rad")
    gap_mm = positive("ring gap", gap_new, "mm")
    wear_mm = positive("wear", wear, "mm", zero=True)
    return Q(max(0.0, gap_mm - wear_mm / math.sin(angle)), "mm")


def wear_from_gap(gap_new: Q, gap: Q, half_angle: Q) -> Q:
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
    """
    angle = in_range("cone half angle", half_angle, math.radians(2), math.radians(20), "rad")
    lost_mm = positive("ring gap", gap_new, "mm") - positive("ring gap", gap, "mm", zero=True)
    return Q(max(0.0, lost_mm) * math.sin(angle), "mm")


TILT_MM = 0.3
"""Difference of the gaps round a ring from which it sits tilted: common practice, no source."""


def gap_says(section: Synchroniser, gaps: Sequence[Q], step: Q) -> str:
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
        ``"away"``: all are wider than new, so ring or hub stands off; else ``"good"``.
    """
    read_mm = [positive("ring gap", gap, "mm", zero=True) for gap in gaps]
    step_mm = positive("step of the blades", step, "mm")
    if max(read_mm) - min(read_mm) > TILT_MM + 1e-9:
        return "tilted"
    if min(read_mm) < section.ring_gap_least_mm - 1e-9:
        return "worn"
    return "away" if min(read_mm) > section.ring_gap_new_mm + step_mm + 1e-9 else "good"
