"""Rolling elements of one bearing as a spring along the shaft.

A row of rollers yields as force to the 9/10, a row of balls as force to the 2/3. Both give the
axial displacement of the inner against the outer ring under a centred axial load.

Sources: rollers, Palmgren's line contact as printed in NSK catalogue E1102m, p. A134,
d = 7.7e-5 F^0.9 / (sin(a)^1.9 Z^0.9 L^0.8) in N and mm. Balls, the point contact beside it,
Q = F/(Z sin a), d = 4.4e-4 (Q^2/D)^(1/3) / sin a in N and mm (from memory; agrees with Harris,
Rolling Bearing Analysis, 4.36e-4).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np

from twoshaft.models.border import Above, Range, Size, border
from twoshaft.units.kept import kept
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import BallBearing, TaperBearing

_CATALOGUE = "NSK E1102m, sizes of a transaxle"
_LINE_MM, _POINT_MM = 7.7e-5, 4.4e-4


def _sizes(angle_deg: tuple[float, float], count: tuple[int, int]) -> dict[str, Size]:
    """What both kinds are built from; only angles and numbers differ."""
    return {
        "angle": Range("contact angle", "deg", *angle_deg, _CATALOGUE),
        "count": Range("number of rolling elements", "", *count, _CATALOGUE),
        "diameter": Range("element diameter", "mm", 2.0, 60.0, _CATALOGUE),
        "bore": Range("bore", "mm", 5.0, 300.0, _CATALOGUE),
        "outside": Range("outside diameter", "mm", 10.0, 400.0, _CATALOGUE),
        "stand": Range("stand", "mm", 3.0, 100.0, _CATALOGUE),
        "rating": Above("dynamic rating", "N", _CATALOGUE),
    }


def _plain(
    angle_deg: float,
    count: float,
    diameter_mm: float,
    bore_mm: float,
    outside_mm: float,
    stand_mm: float,
) -> dict[str, Any]:
    """The same in the units of a row."""
    return {
        "angle_rad": math.radians(angle_deg),
        "count": int(count),
        "element_m": diameter_mm / 1e3,
        "bore_m": bore_mm / 1e3,
        "outside_m": outside_mm / 1e3,
        "stand_m": stand_mm / 1e3,
    }


@dataclass(frozen=True)
class _Row:
    """What both kinds share; lengths in metres, angles in radians, capacity in newtons."""

    angle_rad: float
    count: int
    element_m: float
    bore_m: float
    outside_m: float
    stand_m: float
    capacity_n: float
    name: str = "bearing"

    # Displacement grows as force to this power.
    power = 1.0
    # Exponent of life, and of the load that the rows of life share (ISO 281).
    life_power = 3.0

    @property
    def pitch_m(self) -> float:
        """Diameter of the circle of element centres [m]."""
        return (self.bore_m + self.outside_m) / 2

    @property
    def outer_raceway_m(self) -> float:
        """Outer raceway's mean diameter [m]."""
        return self.pitch_m + self.element_m * math.cos(self.angle_rad)

    @property
    def inner_raceway_m(self) -> float:
        """Inner raceway's mean diameter [m]."""
        return self.pitch_m - self.element_m * math.cos(self.angle_rad)

    @property
    def element_spring(self) -> float:
        """Normal approach of one element under 1 N [m]; grows as force to `power`."""
        raise NotImplementedError

    @cached_property
    def axial_spring(self) -> float:
        """Axial displacement of the row under 1 N [m]; grows as force to `power`."""
        sine = math.sin(self.angle_rad)
        return self.element_spring / (self.count * sine) ** self.power / sine

    def axial_displacement_m(self, force_n):
        """Axial displacement [m] under an axial load [N], any shape."""
        return self.axial_spring * np.power(force_n, self.power)

    def axial_force_n(self, displacement_m):
        """Axial load [N] that a displacement [m] makes, any shape; none below zero."""
        return np.power(np.maximum(displacement_m, 0.0) / self.axial_spring, 1 / self.power)


@dataclass(frozen=True)
class Rollers(_Row):
    """A row of taper rollers: line contact, power 9/10.

    ``element_m`` is the mean roller diameter, ``length_m`` the effective length, ``half_angle_rad``
    half the roller's own taper and ``rib_arm_m`` the arm of the sliding contact on the rib.

    Examples
    --------
    >>> row = Rollers.of(angle=Q(15, "deg"), count=16, length=Q(12, "mm"))
    >>> row.name, row.power, f"{row.length_m * 1e3:.0f} mm"
    ('taper roller bearing', 0.9, '12 mm')
    """

    length_m: float = 0.0
    half_angle_rad: float = 0.0
    rib_arm_m: float = 0.0

    power = 0.9
    life_power = 10 / 3

    @property
    def element_spring(self) -> float:
        """Normal approach of one roller under 1 N [m]; grows as force to the 9/10."""
        return _LINE_MM * 1e-3 / (self.length_m * 1e3) ** 0.8

    @classmethod
    @border(
        **_sizes(angle_deg=(8, 35), count=(8, 60)),
        length=Range("roller length", "mm", 3.0, 60.0, _CATALOGUE),
        half_angle=Range("half angle of the roller", "deg", 0.5, 5.0, _CATALOGUE),
        rib_arm=Range("rib arm", "mm", 0.1, 10.0, _CATALOGUE),
    )
    def of(
        cls,
        *,
        angle_deg: float,
        count: float,
        length_mm: float,
        diameter_mm: float = 7.0,
        bore_mm: float = 30.0,
        outside_mm: float = 62.0,
        stand_mm: float = 17.25,
        half_angle_deg: float = 1.8,
        rib_arm_mm: float = 1.5,
        rating_n: float = 40e3,
        name: str = "taper roller bearing",
    ) -> Rollers:
        """Build from quantities; sizes that a calculation does not use may be left out.

        Raises
        ------
        OutOfRangeError
            Contact angle outside 8 to 35 deg, 8 to 60 rollers, 3 to 60 mm length, and lengths
            that no transaxle bearing has.

        Examples
        --------
        >>> row = Rollers.of(angle=Q(15, "deg"), count=16, length=Q(12, "mm"), bore=Q(3, "cm"))
        >>> f"{row.pitch_m * 1e3:.0f} mm"
        '46 mm'
        """
        return cls(
            **_plain(angle_deg, count, diameter_mm, bore_mm, outside_mm, stand_mm),
            capacity_n=rating_n,
            name=name,
            length_m=length_mm / 1e3,
            half_angle_rad=math.radians(half_angle_deg),
            rib_arm_m=rib_arm_mm / 1e3,
        )


@dataclass(frozen=True)
class Balls(_Row):
    """A row of balls: point contact, power 2/3; ``element_m`` is the ball diameter.

    Examples
    --------
    >>> row = Balls.of(angle=Q(30, "deg"), count=12, diameter=Q(9, "mm"))
    >>> row.name, row.life_power, f"{row.element_m * 1e3:.0f} mm"
    ('ball bearing', 3.0, '9 mm')
    """

    power = 2 / 3
    life_power = 3.0

    @property
    def element_spring(self) -> float:
        """Normal approach of one ball under 1 N [m]; grows as force to the 2/3."""
        return _POINT_MM * 1e-3 / (self.element_m * 1e3) ** (1 / 3)

    @classmethod
    @border(**_sizes(angle_deg=(5, 40), count=(5, 40)))
    def of(
        cls,
        *,
        angle_deg: float,
        count: float,
        diameter_mm: float,
        bore_mm: float = 30.0,
        outside_mm: float = 62.0,
        stand_mm: float = 16.0,
        rating_n: float = 20e3,
        name: str = "ball bearing",
    ) -> Balls:
        """Build from quantities; sizes that a calculation does not use may be left out.

        Raises
        ------
        OutOfRangeError
            Contact angle outside 5 to 40 deg, 5 to 40 balls, and lengths that no transaxle
            bearing has.

        Examples
        --------
        >>> row = Balls.of(angle=Q(25, "deg"), count=11, diameter=Q(9, "mm"), outside=Q(62, "mm"))
        >>> f"{row.pitch_m * 1e3:.0f} mm"
        '46 mm'
        """
        return cls(
            **_plain(angle_deg, count, diameter_mm, bore_mm, outside_mm, stand_mm),
            capacity_n=rating_n,
            name=name,
        )


@kept()
def elements(bearing: TaperBearing | BallBearing) -> Rollers | Balls:
    """Give the spring of a bearing of the unit file.

    Examples
    --------
    >>> row = elements(unit.bearings.types[0])
    >>> row.count, f"{math.degrees(row.angle_rad):.1f} deg"
    (22, '15.5 deg')
    """
    shared: dict[str, Any] = {
        "angle": Q(bearing.contact_angle_deg, "deg"),
        "bore": Q(bearing.bore_mm, "mm"),
        "outside": Q(bearing.outside_mm, "mm"),
        "stand": Q(bearing.stand_mm, "mm"),
        "rating": Q(bearing.dynamic_kn, "kN"),
        "name": bearing.name,
    }
    if isinstance(bearing, BallBearing):
        return Balls.of(count=bearing.balls, diameter=Q(bearing.ball_diameter_mm, "mm"), **shared)
    return Rollers.of(
        count=bearing.rollers,
        length=Q(bearing.roller_length_mm, "mm"),
        diameter=Q(bearing.roller_diameter_mm, "mm"),
        half_angle=Q(bearing.roller_half_angle_deg, "deg"),
        rib_arm=Q(bearing.rib_arm_mm, "mm"),
        **shared,
    )
