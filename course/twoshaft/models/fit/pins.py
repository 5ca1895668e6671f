"""Spring pins against the force of a shift, and taper pins in their holes.

Sources: shear loads, sizes and holes of slotted spring pins ISO 8752 as printed by two makers;
taper pins ISO 2339 (1:50 on the diameter, nominal size at the small end).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from types import MappingProxyType
from typing import Protocol

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Above, Depends, Range, border
from twoshaft.models.validity import in_range
from twoshaft.units.quantities import Q


@dataclass(frozen=True)
class SpringPin:
    """A slotted spring pin ISO 8752 of spring steel.

    ``free_mm`` are the smallest and largest diameter before fitting, ``wall_mm`` the thickness of
    the sheet, ``double_shear_kn`` the least load in double shear, ``hole_mm`` the hole H12.

    Examples
    --------
    >>> pin = spring_pin(Q(6, "mm"))
    >>> pin.hole_mm, f"{pin.shear_load():.1f}", f"{pin.shear_load(planes=1):.1f}"
    ((6.0, 6.12), '26.0 kilonewton', '13.0 kilonewton')
    """

    nominal_mm: float
    free_mm: tuple[float, float]
    wall_mm: float
    double_shear_kn: float
    hole_mm: tuple[float, float]

    def shear_load(self, planes: int = 2) -> Q:
        """Least load for one or two shear planes [kN]."""
        if planes not in (1, 2):
            raise OutOfRangeError("shear planes", f"{planes}", "1 or 2", "ISO 8749")
        return Q(self.double_shear_kn * planes / 2, "kN")


SPRING_PINS = MappingProxyType(
    {
        pin.nominal_mm: pin
        for pin in (
            SpringPin(3, (3.3, 3.5), 0.6, 6.32, (3.0, 3.1)),
            SpringPin(3.5, (3.8, 4.0), 0.75, 9.06, (3.5, 3.62)),
            SpringPin(4, (4.4, 4.6), 0.8, 11.24, (4.0, 4.12)),
            SpringPin(4.5, (4.9, 5.1), 1.0, 15.36, (4.5, 4.62)),
            SpringPin(5, (5.4, 5.6), 1.0, 17.54, (5.0, 5.12)),
            SpringPin(6, (6.4, 6.7), 1.2, 26.04, (6.0, 6.12)),
            SpringPin(8, (8.5, 8.8), 1.5, 42.76, (8.0, 8.15)),
        )
    }
)
# Pins that nest in each other, both slots apart: a maker's pairs (outer, inner).
NESTED = ((8.0, 5.0), (6.0, 3.5), (5.0, 3.0))


@border(diameter=Above("pin diameter", "mm"))
def spring_pin(diameter_mm: float) -> SpringPin:
    """Give the pin of a nominal diameter.

    Raises
    ------
    OutOfRangeError
        If ISO 8752 has none among the sizes of this course.

    Examples
    --------
    >>> spring_pin(Q(5, "mm")).shear_load(planes=1)
    <Quantity(8.77, 'kilonewton')>
    """
    mm = round(diameter_mm, 6)
    if mm not in SPRING_PINS:
        listed = ", ".join(f"{size:g}" for size in SPRING_PINS)
        raise OutOfRangeError("pin diameter", f"{mm:g} mm", f"the sizes {listed} mm", "ISO 8752")
    return SPRING_PINS[mm]


SLOT_DEG = 15.0
"""How far the slot of a pin may lie off the line of the force (common practice, no source)."""
PIN_WALL_MM = 7.0
"""Wall on each side that a pin is drawn in."""


@dataclass(frozen=True)
class DrivenPin:
    """A spring pin as somebody drove it in.

    ``force_deg`` is a direction of the line in which the force acts, to and fro; ``slot_deg`` the
    side at which its slot is open, ``inner_deg`` that of a pin nested in it. ``near_mm`` and
    ``far_mm`` tell how far its ends lie inside the hole, below zero outside.

    Examples
    --------
    >>> driven_pin_faults(DrivenPin(force_deg=90, slot_deg=270, near_mm=1, far_mm=0.5))
    ()
    """

    force_deg: float
    slot_deg: float
    near_mm: float
    far_mm: float
    inner_deg: float | None = None


class DrivenPinLike(Protocol):
    """What tells of a driven pin, as ``DrivenPin`` does.

    Examples
    --------
    >>> DrivenPinLike.__name__
    'DrivenPinLike'
    """

    @property
    def force_deg(self) -> float:
        """Direction of the line of the force."""

    @property
    def slot_deg(self) -> float:
        """Side at which the slot is open."""

    @property
    def near_mm(self) -> float:
        """How far the near end lies inside."""

    @property
    def far_mm(self) -> float:
        """How far the far end lies inside."""

    @property
    def inner_deg(self) -> float | None:
        """Side at which the slot of a nested pin is open."""


def driven_pin_faults(pin: DrivenPinLike) -> tuple[str, ...]:
    """Give what is wrong with a driven pin: ``slot``, ``depth``, both or nothing.

    The slot lies in the line of the force, a nested pin's opposite it; both ends lie inside the
    hole and no deeper than half its wall, so that both walls bear (common practice, no source).

    Examples
    --------
    >>> driven_pin_faults(DrivenPin(force_deg=0, slot_deg=90, near_mm=1, far_mm=-0.8))
    ('slot', 'depth')
    >>> driven_pin_faults(DrivenPin(force_deg=0, slot_deg=0, near_mm=1, far_mm=1, inner_deg=0))
    ('slot',)
    """
    off = _apart(pin.slot_deg, pin.force_deg)
    slot = min(off, 180 - off) > SLOT_DEG
    if pin.inner_deg is not None:
        slot = slot or 180 - _apart(pin.slot_deg, pin.inner_deg) > SLOT_DEG
    depth = not all(0 <= end <= PIN_WALL_MM / 2 for end in (pin.near_mm, pin.far_mm))
    return ("slot",) * slot + ("depth",) * depth


def _apart(one_deg: float, other_deg: float) -> float:
    """How far two directions lie apart, 0 to 180 [degrees]."""
    off = abs(one_deg - other_deg) % 360
    return min(off, 360 - off)


@border(
    "kN",
    hand=Above("force of the hand", "N"),
    lever_ratio=Range("lever ratio", "", 1, 20, "shift linkages"),
)
def fork_pin_force(hand_n: float, lever_ratio: float) -> float:
    """Give the force along a rail that its fork's pin must pass on [kN].

    Parameters
    ----------
    hand : force
        At the knob.
    lever_ratio : float
        Travel of the hand over travel of the rail, 1 to 20.

    Examples
    --------
    >>> f"{fork_pin_force(Q(200, 'N'), 8):.1f}"
    '1.6 kilonewton'
    """
    return hand_n * lever_ratio / 1e3


@border(load=Above("load on the pin", "kN"))
def pin_margin(pin: SpringPin, load_kn: float, planes: int = 2) -> float:
    """Give how many times the load the pin bears in shear.

    Examples
    --------
    >>> f"{pin_margin(spring_pin(Q(5, 'mm')), Q(1.6, 'kN')):.1f}"  # 17.54 kN in double shear
    '11.0'
    """
    return float(pin.shear_load(planes).magnitude / load_kn)


TAPER = 1 / 50


@dataclass(frozen=True)
class TaperPin:
    """A taper pin ISO 2339, 1:50 on the diameter.

    Parameters
    ----------
    small_m : float
        Diameter of the small end, the nominal size [m].
    length_m : float
        Length [m].

    Raises
    ------
    OutOfRangeError
        Diameter outside 0.6 to 50 mm or length outside 2 to 400 mm.

    Examples
    --------
    >>> pin = TaperPin(small_m=0.006, length_m=0.040)
    >>> f"{pin.large:.2f}", f"{pin.half_angle:.2f}"
    ('6.80 millimeter', '0.57 degree')
    """

    small_m: float
    length_m: float

    def __post_init__(self) -> None:
        in_range("small end of the pin", Q(self.small_m, "m"), 0.6, 50, "mm", "ISO 2339")
        in_range("length of the pin", Q(self.length_m, "m"), 2, 400, "mm", "ISO 2339")

    @property
    def large(self) -> Q:
        """Diameter of the large end [mm]."""
        return Q((self.small_m + self.length_m * TAPER) * 1e3, "mm")

    @property
    def half_angle(self) -> Q:
        """Half the cone's angle [degrees]."""
        return Q(math.degrees(math.atan(TAPER / 2)), "degree")

    @border(
        "mm",
        reamed_large=Depends(
            "mm",
            lambda self: Range(
                "reamed hole at the large end",
                "mm",
                self.small_m * 1e3,
                self.large.magnitude + 0.2,
                "where this pin can seat",
            ),
        ),
    )
    def stands_proud(self, reamed_large_mm: float) -> float:
        """Give how far the large end stands out of a hole when the pin is home [mm].

        Parameters
        ----------
        reamed_large : length
            Diameter of the reamed hole at the face where the pin goes in. Each 0.02 mm more
            lets the pin 1 mm deeper; below zero it has sunk in.

        Raises
        ------
        OutOfRangeError
            A hole that the pin falls through or cannot enter.

        Examples
        --------
        >>> f"{TaperPin(small_m=0.005, length_m=0.030).stands_proud(Q(5.58, 'mm')):.1f}"
        '1.0 millimeter'
        """
        return (self.large.magnitude - reamed_large_mm) / TAPER


def drive_from(insert: bool) -> str:
    """Say from which end a taper pin is struck: in from the large end, out from the small end.

    Examples
    --------
    >>> drive_from(insert=False)
    'small end'
    """
    return "large end" if insert else "small end"
