"""ISO metric threads, the seat under a head, and strength classes.

Sources: basic profile ISO 68-1 and ISO 724; coarse pitches ISO 261; tolerances ISO 965-1;
strength ISO 898-1; widths across the bearing face ISO 4014; clearance holes ISO 273 (medium).
"""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from types import MappingProxyType

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Above, Range, border
from twoshaft.models.validity import in_range, positive
from twoshaft.units.quantities import Q

MM = 1e-3
MPA = 1e6


def _by_diameter(sizes: Mapping[int, float]) -> Mapping[float, float]:
    return MappingProxyType({float(d): size for d, size in sizes.items()})


# Coarse pitch by nominal diameter [mm], ISO 261.
COARSE_PITCH_MM = _by_diameter(
    {3: 0.5, 4: 0.7, 5: 0.8, 6: 1.0, 8: 1.25, 10: 1.5, 12: 1.75, 14: 2.0, 16: 2.0}
    | {18: 2.5, 20: 2.5, 22: 2.5, 24: 3.0, 27: 3.0, 30: 3.5, 33: 3.5, 36: 4.0, 39: 4.0}
)
# Outer diameter of the bearing face of a hexagon head [mm], ISO 4014 (from memory).
HEX_BEARING_MM = _by_diameter(
    {5: 6.88, 6: 8.88, 8: 11.63, 10: 14.63, 12: 16.63, 14: 19.37, 16: 22.49, 18: 25.34}
    | {20: 28.19, 22: 31.71, 24: 33.61}
)
# Clearance hole, medium [mm], ISO 273 (from memory).
MEDIUM_HOLE_MM = _by_diameter(
    {5: 5.5, 6: 6.6, 8: 9.0, 10: 11.0, 12: 13.5, 14: 15.5, 16: 17.5, 18: 20.0, 20: 22.0}
    | {22: 24.0, 24: 26.0}
)
_DESIGNATION = re.compile(r"M(\d+(?:\.\d+)?)(?:\s*[x×]\s*(\d+(?:\.\d+)?))?\s*(-?\s*LH)?", re.I)


@dataclass(frozen=True)
class Thread:
    """A single-start 60 degree thread of the ISO basic profile; unified threads share it.

    Parameters
    ----------
    d_m, pitch_m : float
        Nominal diameter and pitch [m].
    left_hand : bool
        True where it tightens anticlockwise.

    Raises
    ------
    OutOfRangeError
        Diameter outside 1.6 to 64 mm, pitch not above zero or above a quarter of the diameter
        (ISO 261 has no such thread).

    Examples
    --------
    >>> m8 = Thread.named("M8")
    >>> f"{m8.pitch_m * 1e3:.2f} mm pitch, {m8.stress_area_m2 * 1e6:.1f} mm²"  # ISO 898-1: 36.6
    '1.25 mm pitch, 36.6 mm²'
    """

    d_m: float
    pitch_m: float
    left_hand: bool = False

    def __post_init__(self) -> None:
        d = in_range("thread diameter", Q(self.d_m, "m"), 1.6, 64, "mm", "ISO 261")
        in_range("thread pitch", Q(self.pitch_m, "m"), 0.2, d / 4, "mm", "ISO 261")

    @classmethod
    @border(diameter=Above("thread diameter", "m"), pitch=Above("thread pitch", "m"))
    def of(cls, diameter_m: float, pitch_m: float, *, left_hand: bool = False) -> Thread:
        """Build a thread from nominal diameter and pitch, both lengths.

        Examples
        --------
        >>> Thread.of(Q(20, "mm"), pitch=Q(1.5, "mm"), left_hand=True).name
        'M20x1.5-LH'
        """
        return cls(diameter_m, pitch_m, left_hand)

    @classmethod
    def named(cls, designation: str) -> Thread:
        """Build a thread from its name: ``M8``, ``M10x1.25`` or ``M20x1.5-LH``.

        Raises
        ------
        OutOfRangeError
            If it is no such name, or the diameter without a pitch is none of ISO 261's.
        """
        match = _DESIGNATION.fullmatch(designation.strip())
        wanted = "names like M8, M10x1.25 or M20x1.5-LH"
        if not match:
            raise OutOfRangeError("thread name", repr(designation), wanted, "ISO 261")
        d = float(match[1])
        pitch = float(match[2]) if match[2] else COARSE_PITCH_MM.get(d)
        if pitch is None:
            raise OutOfRangeError(
                "thread name", f"{designation} without a pitch", wanted, "ISO 261"
            )
        return cls(d * MM, pitch * MM, bool(match[3]))

    @property
    def name(self) -> str:
        """The designation, pitch left out where it is the coarse one."""
        d, pitch = self.d_m / MM, self.pitch_m / MM
        coarse = COARSE_PITCH_MM.get(round(d, 6)) == round(pitch, 6)
        return f"M{d:g}{'' if coarse else f'x{pitch:g}'}{'-LH' if self.left_hand else ''}"

    @cached_property
    def height_m(self) -> float:
        """Height H of the sharp triangle [m]."""
        return math.sqrt(3) / 2 * self.pitch_m

    @cached_property
    def d2_m(self) -> float:
        """Pitch diameter d2 [m]."""
        return self.d_m - 2 * 3 / 8 * self.height_m

    @cached_property
    def d3_m(self) -> float:
        """Root diameter d3 of the bolt, with the rounded root of ISO 898-1 [m]."""
        return self.d_m - 2 * 17 / 24 * self.height_m

    @cached_property
    def minor_m(self) -> float:
        """Minor diameter D1 of the hole's thread [m]."""
        return self.d_m - 2 * 5 / 8 * self.height_m

    @cached_property
    def stress_diameter_m(self) -> float:
        """Diameter d0 = (d2 + d3)/2 of the circle with the stress area [m]."""
        return (self.d2_m + self.d3_m) / 2

    @cached_property
    def stress_area_m2(self) -> float:
        """Stress area As [m^2], ISO 898-1."""
        return math.pi / 4 * self.stress_diameter_m**2


@dataclass(frozen=True)
class ThreadLimits:
    """Limits that decide how much of the flanks meet [m].

    ``bolt_major_min_m`` and ``bolt_pitch_min_m`` belong to the bolt, ``hole_pitch_max_m`` and
    ``hole_minor_max_m`` to the tapped hole.

    Examples
    --------
    >>> limits = limits_6g6h(Thread.named("M8"))
    >>> f"{limits.bolt_major_min_m * 1e3:.3f}", f"{limits.hole_minor_max_m * 1e3:.3f}"
    ('7.760', '6.912')
    """

    bolt_major_min_m: float
    bolt_pitch_min_m: float
    hole_pitch_max_m: float
    hole_minor_max_m: float


# Pitch [mm]: gap g, bolt major 6, hole minor 6 [µm]; ISO 965-1 (from memory, see the tests).
_BY_PITCH_UM = MappingProxyType(
    {
        0.5: (20, 106, 140),
        0.7: (22, 140, 180),
        0.8: (24, 150, 200),
        1.0: (26, 180, 236),
        1.25: (28, 212, 265),
        1.5: (32, 236, 300),
        1.75: (34, 265, 335),
        2.0: (38, 280, 375),
        2.5: (42, 335, 450),
        3.0: (48, 375, 500),
    }
)
# Diameter over, up to [mm]: pitch [mm]: pitch diameter of bolt 6 and of hole 6 [µm]; ISO 965-1.
_PITCH_DIAMETER_UM = MappingProxyType(
    {
        (2.8, 5.6): {0.5: (75, 100), 0.7: (90, 118), 0.8: (95, 125)},
        (5.6, 11.2): {1.0: (112, 150), 1.25: (118, 160), 1.5: (132, 180)},
        (11.2, 22.4): {
            1.0: (118, 160),
            1.25: (132, 180),
            1.5: (140, 190),
            1.75: (150, 200),
            2.0: (160, 212),
            2.5: (170, 224),
        },
        (22.4, 45.0): {1.0: (125, 170), 1.5: (150, 200), 2.0: (170, 224), 3.0: (200, 265)},
    }
)


def limits_6g6h(thread: Thread) -> ThreadLimits:
    """Give the limits of a 6g bolt in a 6H hole of normal engagement length, ISO 965-1.

    Raises
    ------
    OutOfRangeError
        For a pair of diameter and pitch that the table does not hold.

    Examples
    --------
    >>> f"{limits_6g6h(Thread.named('M10')).bolt_major_min_m * 1e3:.3f} mm"  # ISO 965-2: 9.732
    '9.732 mm'
    """
    d, p = thread.d_m / MM, round(thread.pitch_m / MM, 6)
    row = next((r for (low, high), r in _PITCH_DIAMETER_UM.items() if low < d <= high), {})
    if p not in row:
        allowed = "threads of 3 to 39 mm with a standard pitch"
        raise OutOfRangeError("thread with tolerances", thread.name, allowed, "ISO 965-1")
    gap, bolt_major, hole_minor = (um * 1e-6 for um in _BY_PITCH_UM[p])
    bolt_pitch, hole_pitch = (um * 1e-6 for um in row[p])
    return ThreadLimits(
        bolt_major_min_m=thread.d_m - gap - bolt_major,
        bolt_pitch_min_m=thread.d2_m - gap - bolt_pitch,
        hole_pitch_max_m=thread.d2_m + hole_pitch,
        hole_minor_max_m=thread.minor_m + hole_minor,
    )


@dataclass(frozen=True)
class Seat:
    """The ring under a head or nut that rubs.

    Parameters
    ----------
    outer_m, hole_m : float
        Outer diameter of the bearing face and diameter of the hole it sits over [m].

    Examples
    --------
    >>> m8 = Thread.named("M8")
    >>> f"{Seat.hexagon(m8).friction_diameter_m * 1e3:.1f} mm"
    '10.3 mm'
    """

    outer_m: float
    hole_m: float

    def __post_init__(self) -> None:
        hole = positive("hole under the head", Q(self.hole_m, "m"), "mm")
        in_range("bearing face", Q(self.outer_m, "m"), hole, 200, "mm", "must cover its hole")
        if self.outer_m == self.hole_m:
            raise OutOfRangeError(
                "bearing face", f"{hole:g} mm", f"more than {hole:g} mm", "its hole"
            )

    @classmethod
    @border(outer=Above("bearing face", "m"), hole=Above("hole under the head", "m"))
    def of(cls, outer_m: float, hole_m: float) -> Seat:
        """Build a seat from its two diameters."""
        return cls(outer_m, hole_m)

    @classmethod
    def hexagon(cls, thread: Thread) -> Seat:
        """Give the seat of a hexagon head ISO 4014 over a medium hole ISO 273.

        Raises
        ------
        OutOfRangeError
            For a diameter without a listed head.
        """
        d = round(thread.d_m / MM, 6)
        if d not in HEX_BEARING_MM:
            listed = ", ".join(f"M{size:g}" for size in HEX_BEARING_MM)
            raise OutOfRangeError("hexagon head", f"for M{d:g}", f"the sizes {listed}", "ISO 4014")
        return cls(HEX_BEARING_MM[d] * MM, MEDIUM_HOLE_MM[d] * MM)

    @property
    def friction_diameter_m(self) -> float:
        """Mean diameter DKm on which the head friction acts [m]."""
        return (self.outer_m + self.hole_m) / 2

    @property
    def area_m2(self) -> float:
        """Bearing area [m^2]."""
        return math.pi / 4 * (self.outer_m**2 - self.hole_m**2)


@dataclass(frozen=True)
class Strength:
    """Minimum strengths of a bolt's class [Pa].

    Examples
    --------
    >>> steel = strength("8.8", Q(8, "mm"))
    >>> f"{steel.yield_pa / 1e6:.0f} MPa, {steel.tensile_pa / 1e6:.0f} MPa"
    '640 MPa, 800 MPa'
    """

    name: str
    proof_pa: float
    yield_pa: float
    tensile_pa: float


# Class: proof, yield (Rp0.2 or ReL), tensile [MPa], ISO 898-1. Classes below 8.8 from memory.
_CLASSES_MPA = {
    "4.6": (225, 240, 400),
    "5.6": (280, 300, 500),
    "5.8": (380, 420, 520),
    "6.8": (440, 480, 600),
    "8.8": (580, 640, 800),
    "9.8": (650, 720, 900),
    "10.9": (830, 940, 1040),
    "12.9": (970, 1100, 1220),
}
_LARGE_8_8_MPA = (600, 660, 830)
CLASS_NAMES = tuple(_CLASSES_MPA)


@border(diameter=Range("thread diameter", "mm", 1.6, 39, "ISO 898-1"))
def strength(class_name: str, diameter_mm: float) -> Strength:
    """Give the minimum strengths of a class for a bolt diameter.

    Parameters
    ----------
    class_name : str
        One of `CLASS_NAMES`.
    diameter : pint.Quantity
        Nominal diameter: class 8.8 is stronger above 16 mm, class 9.8 ends there.

    Raises
    ------
    OutOfRangeError
        Unknown class, or a diameter outside 1.6 to 39 mm (ISO 898-1).

    Examples
    --------
    >>> steel = strength("10.9", Q(10, "mm"))
    >>> steel.yield_pa / 1e6, steel.tensile_pa / 1e6
    (940.0, 1040.0)
    """
    if class_name not in _CLASSES_MPA:
        listed = ", ".join(CLASS_NAMES)
        raise OutOfRangeError(
            "strength class", repr(class_name), f"the classes {listed}", "ISO 898-1"
        )
    row = _CLASSES_MPA[class_name]
    # A tenth of a micrometre forgives 16 mm that went through inches.
    if diameter_mm > 16.0001 and class_name == "9.8":
        raise OutOfRangeError(
            "diameter of class 9.8", f"{diameter_mm:g} mm", "up to 16 mm", "ISO 898-1"
        )
    if diameter_mm > 16.0001 and class_name == "8.8":
        row = _LARGE_8_8_MPA
    return Strength(class_name, *(value * MPA for value in row))
