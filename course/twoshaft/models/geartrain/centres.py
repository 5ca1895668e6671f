"""Whether a pair of gears fits the distance of its shafts.

Involute geometry of cylindrical gears as in ISO 21771 (formulas from memory): the working centre
distance follows from the teeth, the module, the helix angle and the sum of the profile shifts.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from twoshaft.models.validity import in_range, positive
from twoshaft.units.quantities import Q
from twoshaft.units.sections.geartrain import GearTrain, Mesh

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
    """

    reference: Q
    shift_sum: float
    working_angle: Q


def centre_fit(teeth: tuple[int, int], module: Q, distance: Q, helix: Q | None = None) -> CentreFit:
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
    """
    source = "ISO 21771, from memory"
    z1, z2 = (int(in_range("teeth", z, 6, 300, "", source)) for z in teeth)
    module_mm = in_range("module", module, 0.5, 10, "mm", source)
    distance_mm = positive("centre distance", distance, "mm", source)
    beta = in_range("helix angle", Q(0, "rad") if helix is None else helix, 0, math.pi / 4, "rad")
    transverse = math.atan(math.tan(PRESSURE_ANGLE_RAD) / math.cos(beta))
    reference_mm = module_mm * (z1 + z2) / (2 * math.cos(beta))
    least_mm = reference_mm * math.cos(transverse)  # the base circles touch
    in_range("centre distance", distance, least_mm, math.inf, "mm", source)
    working = math.acos(least_mm / distance_mm)
    shift = (z1 + z2) * (_inv(working) - _inv(transverse)) / (2 * math.tan(PRESSURE_ANGLE_RAD))
    return CentreFit(Q(reference_mm, "mm"), shift, Q(math.degrees(working), "degree"))


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
    """
    teeth = (mesh.driving.teeth, mesh.driven.teeth)
    shafts = {mesh.driving.shaft, mesh.driven.shaft}
    apart_mm = next((d.mm for d in train.distances if set(d.between) == shafts), None)
    if apart_mm is None:
        apart_mm = mesh.module_mm * sum(teeth) / (2 * math.cos(math.radians(mesh.helix_deg)))
    driving, driven = (Q(apart_mm * z / sum(teeth), "mm") for z in teeth)
    return driving, driven


def _inv(angle_rad: float) -> float:
    """Involute of an angle."""
    return math.tan(angle_rad) - angle_rad
