"""A shaft seal as fitted, against the rule for its place.

What must be so: the main lip towards what it keeps in, the seal driven to its depth and square to
the shaft, grease in the lip (and between two lips), the lip led over splines and threads by a
sleeve. The rules are trade practice (from memory); figures come from the unit file.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

import numpy as np

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Each, Range, border
from twoshaft.models.validity import in_range, ordered
from twoshaft.units.quantities import Q


class Side(StrEnum):
    """What the open side of the main lip looks at.

    Examples
    --------
    >>> SealFitted(Side("air"), (0.002,) * 4, greased=True, sleeve_used=True).lip_towards
    <Side.AIR: 'air'>
    """

    OIL = "oil"
    AIR = "air"


_COUNT = Range("number of depth readings", "", 3, 100, "a plane needs three points")


@dataclass(frozen=True)
class SealRule:
    """How one seal must sit.

    Parameters
    ----------
    lip_towards : Side
    depth_m : (low, high)
        Of the seal's outer face below the face of its housing, flush is 0 [m].
    tilt_m : float
        Most the depth may differ across the seal [m].
    outer_m : float
        Outer diameter of the seal [m].
    grease : bool
        Whether the lip is greased (a lip that runs dry burns before oil reaches it).
    sleeve : bool
        Whether the lip passes splines, threads or a groove and needs a sleeve.

    Examples
    --------
    >>> rule = SealRule(Side.OIL, depth_m=(0.001, 0.002), tilt_m=0.0003, outer_m=0.042)
    >>> deep = SealFitted(Side.OIL, (0.0025,) * 4, greased=True, sleeve_used=True)
    >>> [fault.key for fault in seal_faults(rule, deep)]
    ['depth']
    """

    lip_towards: Side
    depth_m: tuple[float, float]
    tilt_m: float
    outer_m: float
    grease: bool = True
    sleeve: bool = False

    def __post_init__(self) -> None:
        limits = tuple(Q(value, "m") for value in self.depth_m)
        ordered("depth of the seal", limits, -5, 50, "mm", "housings")
        in_range("outer diameter of the seal", Q(self.outer_m, "m"), 8, 300, "mm", "shaft seals")
        in_range("tilt of the seal", Q(self.tilt_m, "m"), 0.01, 2, "mm", "practice")
        object.__setattr__(self, "lip_towards", Side(self.lip_towards))


@dataclass(frozen=True)
class SealFitted:
    """A seal as it was fitted.

    ``depths_m`` are depths measured at even steps round the seal, 3 or more [m].

    Examples
    --------
    >>> from twoshaft.models.fit import seal_of
    >>> depths_m = (0.0005, 0.001, 0.002, 0.001)  # askew
    >>> askew = SealFitted(Side.OIL, depths_m, greased=True, sleeve_used=True)
    >>> [fault.key for fault in seal_faults(seal_of(unit, "input-seal"), askew)]
    ['square']
    """

    lip_towards: Side
    depths_m: tuple[float, ...]
    greased: bool
    sleeve_used: bool


@dataclass(frozen=True)
class SealFault:
    """One thing that is wrong, and what comes of it; ``key`` names it.

    Examples
    --------
    >>> from twoshaft.models.fit import seal_of
    >>> rule = seal_of(unit, "input-seal")
    >>> depth = sum(rule.depth_m) / 2
    >>> fault = seal_faults(rule, SealFitted(Side.AIR, (depth,) * 4, True, True))[0]
    >>> fault.key, fault.what
    ('lip', 'the lip looks towards the air, not the oil')
    """

    key: str
    what: str
    consequence: str


@border("mm", depths=Each(Range("depth reading", "mm", -5, 50, "housings")))
def tilt(depths_mm: Sequence[float]) -> float:
    """Give how much deeper the seal is on one side than on the opposite one [mm].

    The plane that fits depths read at even steps round the seal: twice the amplitude of the first
    wave, so that one slip of reading does not pass for tilt.

    Raises
    ------
    OutOfRangeError
        Fewer than 3 readings, or one outside -5 to 50 mm.

    Examples
    --------
    >>> f"{tilt([Q(0.6, 'mm'), Q(0.5, 'mm'), Q(0.4, 'mm'), Q(0.5, 'mm')]):.1f}"
    '0.2 millimeter'
    """
    _COUNT.plain(len(depths_mm))
    read = np.array(depths_mm)
    angle = 2 * np.pi * np.arange(len(read)) / len(read)
    wave = 2 / len(read) * (read @ np.exp(1j * angle))
    return 2 * abs(wave)


def seal_faults(rule: SealRule, fitted: SealFitted) -> tuple[SealFault, ...]:
    """Give everything that is wrong with a fitted seal, empty if nothing is.

    Raises
    ------
    OutOfRangeError
        If the depth readings are too few or out of range.

    Examples
    --------
    >>> rule = SealRule(Side.OIL, depth_m=(0.003, 0.004), tilt_m=0.0003, outer_m=0.040)
    >>> fitted = SealFitted(Side.OIL, (0.0035,) * 4, greased=False, sleeve_used=False)
    >>> [fault.what for fault in seal_faults(rule, fitted)]
    ['the lip is dry']
    """
    faults = []
    if Side(fitted.lip_towards) is not rule.lip_towards:
        faults.append(
            SealFault(
                "lip",
                f"the lip looks towards the {fitted.lip_towards}, not the {rule.lip_towards}",
                "oil pressure lifts the lip off the shaft and the seal leaks from the first drive",
            )
        )
    leaning = tilt([Q(d, "m") for d in fitted.depths_m]).m_as("m")
    mean = math.fsum(fitted.depths_m) / len(fitted.depths_m)
    low, high = rule.depth_m
    if not low <= mean <= high:
        faults.append(
            SealFault(
                "depth",
                f"the seal sits {mean * 1e3:.2f} mm deep, not {low * 1e3:g} to {high * 1e3:g} mm",
                "the lip runs on the worn track, or the drain hole behind the seal is closed"
                if mean > high
                else "the seal stands proud and the next part pushes it out of square",
            )
        )
    if leaning > rule.tilt_m:
        faults.append(
            SealFault(
                "square",
                f"the seal leans {leaning * 1e3:.2f} mm across, over {rule.tilt_m * 1e3:g} mm",
                "the lip wipes to and fro over the shaft and pumps oil out",
            )
        )
    if rule.grease and not fitted.greased:
        faults.append(SealFault("grease", "the lip is dry", "the lip burns before oil reaches it"))
    if rule.sleeve and not fitted.sleeve_used:
        faults.append(
            SealFault(
                "sleeve",
                "the lip went over the splines without a sleeve",
                "a spline has cut the lip",
            )
        )
    return tuple(faults)


@border(
    depth=Range("depth of the seal", "mm", -5, 50, "housings"),
    lean=Range("lean of the seal", "mm", 0, 5, "housings"),
    count=Range("number of depth readings", "", 3, 100, "a plane"),
)
def seal_readings(
    depth_mm: float, lean_mm: float, count: float = 4, towards: float = 0.0
) -> tuple[Q, ...]:
    """Give the depths that a leaning seal shows at even steps round it [mm].

    Parameters
    ----------
    depth, lean : length
        Mean depth, and how much deeper one side is than the opposite one.
    count : int
        3 to 100 readings.
    towards : float
        Angle of the deepest side from the first reading [rad].

    Examples
    --------
    >>> [f"{read:.1f}" for read in seal_readings(Q(0.5, "mm"), Q(0.2, "mm"))][:2]
    ['0.6 millimeter', '0.5 millimeter']
    """
    count = int(count)
    half = lean_mm / 2
    if not math.isfinite(towards):
        raise OutOfRangeError("direction of the lean", f"{towards}", "angles", "geometry")
    return tuple(
        Q(depth_mm + half * math.cos(2 * math.pi * i / count - towards), "mm") for i in range(count)
    )
