"""Whether a pair of gears fits the distance of its shafts.

Involute geometry of cylindrical gears as in ISO 21771 (formulas from memory): the working centre
distance follows from the teeth, the module, the helix angle and the sum of the profile shifts.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from twoshaft.models.border import Depends, Each, Range, border
from twoshaft.units.quantities import Q
from twoshaft.units.sections.geartrain import GearTrain, Mesh

_SOURCE = "ISO 21771, from memory"
PRESSURE_ANGLE_RAD = math.radians(20.0)  # ISO 53 standard basic rack


@dataclass(frozen=True)
class CentreFit:
    """How a gear pair fits its shafts.

    Attributes
    ----------
    reference : pint.Quantity
        Centre distance without profile shift [mm].
    shift_sum : float
        Sum of the profile shift coefficients that brings the pair to the shafts' distance.
    working_angle : pint.Quantity
        Transverse working pressure angle [deg].

    Examples
    --------
    >>> fitted = centre_fit((20, 40), Q(2, "mm"), Q(60.5, "mm"))
    >>> f"{fitted.reference:.1f}", f"{fitted.shift_sum:.3f}", f"{fitted.working_angle:.1f}"
    ('60.0 millimeter', '0.258', '21.3 degree')
    """

    reference: Q
    shift_sum: float
    working_angle: Q


def _transverse_rad(helix_rad: float) -> float:
    """Transverse pressure angle [rad]."""
    return math.atan(math.tan(PRESSURE_ANGLE_RAD) / math.cos(helix_rad))


def _reference_mm(teeth: tuple[float, float], module_mm: float, helix_rad: float) -> float:
    """Centre distance without profile shift [mm]."""
    return module_mm * sum(teeth) / (2 * math.cos(helix_rad))


def _meshing(teeth: tuple[float, float], module_mm: float, helix_rad: float) -> Range:
    """Distances at which a pair can mesh: from where its base circles touch."""
    least_mm = _reference_mm(teeth, module_mm, helix_rad) * math.cos(_transverse_rad(helix_rad))
    return Range("centre distance", "mm", least_mm, math.inf, _SOURCE, above_zero=True)


@border(
    teeth=Each(Range("teeth", "", 6, 300, _SOURCE)),
    module=Range("module", "mm", 0.5, 10, _SOURCE),
    distance=Depends("mm", _meshing),
    helix=Range("helix angle", "rad", 0, math.pi / 4),
)
def centre_fit(
    teeth: tuple[float, float], module_mm: float, distance_mm: float, helix_rad: float = 0.0
) -> CentreFit:
    """Profile shift that a pair needs to run at a given centre distance.

    Parameters
    ----------
    teeth : tuple of int
        Teeth of the two gears.
    module : pint.Quantity
        Normal module [mm].
    distance : pint.Quantity
        Distance of the shafts [mm].
    helix : pint.Quantity, optional
        Helix angle [deg]; zero when left out.

    Raises
    ------
    OutOfRangeError
        Values out of range, or a distance at which involutes of this pair cannot mesh.

    Examples
    --------
    >>> centre_fit((20, 40), Q(2, "mm"), Q(60, "mm")).shift_sum  # m (z1 + z2) / 2: no shift needed
    0.0
    """
    transverse = _transverse_rad(helix_rad)
    reference_mm = _reference_mm(teeth, module_mm, helix_rad)
    working = math.acos(reference_mm * math.cos(transverse) / distance_mm)
    shift = sum(teeth) * (_inv(working) - _inv(transverse)) / (2 * math.tan(PRESSURE_ANGLE_RAD))
    return CentreFit(Q(reference_mm, "mm"), shift, Q(math.degrees(working), "degree"))


def centre_distances(
    teeth: tuple[float, float], module_mm: float, helix_rad: float, shift_sums: tuple[float, float]
) -> tuple[float, float]:
    """Centre distances that a pair can run at with such sums of profile shifts [mm].

    Parameters
    ----------
    teeth : tuple of int
        Teeth of the two gears.
    module_mm, helix_rad : float
        Normal module and helix angle.
    shift_sums : (float, float)
        Least and most.

    Examples
    --------
    >>> low, high = centre_distances((20, 40), 2.0, 0.0, (0.0, 0.258))
    >>> f"{low:.1f}, {high:.1f}"  # the other way round than the example of CentreFit
    '60.0, 60.5'
    """
    transverse = _transverse_rad(helix_rad)
    base_mm = _reference_mm(teeth, module_mm, helix_rad) * math.cos(transverse)

    def apart_mm(shift_sum: float) -> float:
        wanted = _inv(transverse) + 2 * math.tan(PRESSURE_ANGLE_RAD) * shift_sum / sum(teeth)
        low, high = 0.0, math.pi / 3
        for _ in range(60):  # halved: the involute grows with the angle
            middle = (low + high) / 2
            low, high = (middle, high) if _inv(middle) < wanted else (low, middle)
        return base_mm / math.cos(high)

    return apart_mm(shift_sums[0]), apart_mm(shift_sums[1])


def pitch_radii(train: GearTrain, mesh: Mesh) -> tuple[Q, Q]:
    """Radii of the circles on which the two gears of a mesh roll on each other.

    They share the distance of the shafts as the teeth do; where the unit gives no distance, it
    is that of a pair without profile shift.

    Parameters
    ----------
    train : GearTrain
    mesh : Mesh
        One of its meshes.

    Returns
    -------
    tuple of pint.Quantity
        Of the driving and the driven gear [mm].

    Examples
    --------
    >>> mesh = unit.gear_train.meshes[0]
    >>> small, large = pitch_radii(unit.gear_train, mesh)
    >>> f"{large.m_as('mm') / small.m_as('mm'):.3f}"
    '3.615'
    >>> f"{mesh.driven.teeth / mesh.driving.teeth:.3f}"
    '3.615'
    """
    teeth = (mesh.driving.teeth, mesh.driven.teeth)
    shafts = {mesh.driving.shaft, mesh.driven.shaft}
    apart_mm = next((d.mm for d in train.distances if set(d.between) == shafts), None)
    if apart_mm is None:
        apart_mm = mesh.drawn_module_mm * sum(teeth) / (2 * math.cos(math.radians(mesh.helix_deg)))
    driving, driven = (Q(apart_mm * z / sum(teeth), "mm") for z in teeth)
    return driving, driven


def _inv(angle_rad: float) -> float:
    """Involute of an angle."""
    return math.tan(angle_rad) - angle_rad
