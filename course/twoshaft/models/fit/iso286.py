"""Limits and fits of ISO 286 for sizes up to 120 mm.

The tables are the standard's (ISO 286-1 and -2), grades 5 to 11, the positions that bearings,
bushes, seals and pins use. A hole's position follows from the shaft's by the rules of the
standard, delta of the fine grades included.
"""

from __future__ import annotations

import re
from bisect import bisect_left
from dataclasses import dataclass

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Range, border
from twoshaft.units.quantities import Q

_SOURCE = "ISO 286 table of this course"
# Upper end of each main range of sizes [mm]; "over, up to and including".
_RANGES_MM = (3, 6, 10, 18, 30, 50, 80, 120)
_GRADE_UM = {
    4: (3, 4, 4, 5, 6, 7, 8, 10),
    5: (4, 5, 6, 8, 9, 11, 13, 15),
    6: (6, 8, 9, 11, 13, 16, 19, 22),
    7: (10, 12, 15, 18, 21, 25, 30, 35),
    8: (14, 18, 22, 27, 33, 39, 46, 54),
    9: (25, 30, 36, 43, 52, 62, 74, 87),
    10: (40, 48, 58, 70, 84, 100, 120, 140),
    11: (60, 75, 90, 110, 130, 160, 190, 220),
    12: (100, 120, 150, 180, 210, 250, 300, 350),
}
# Shaft positions: upper deviation of c to h, lower deviation of k to u [um].
_ABOVE_UM = {
    "d": (-20, -30, -40, -50, -65, -80, -100, -120),
    "e": (-14, -20, -25, -32, -40, -50, -60, -72),
    "f": (-6, -10, -13, -16, -20, -25, -30, -36),
    "g": (-2, -4, -5, -6, -7, -9, -10, -12),
    "h": (0, 0, 0, 0, 0, 0, 0, 0),
}
_BELOW_UM = {
    "k": (0, 1, 1, 1, 2, 2, 2, 3),
    "m": (2, 4, 6, 7, 8, 9, 11, 13),
    "n": (4, 8, 10, 12, 15, 17, 20, 23),
    "p": (6, 12, 15, 18, 22, 26, 32, 37),
}
# Positions that change within a main range, by their own ranges [um].
_FINE_UP_TO_MM = (3, 6, 10, 18, 24, 30, 40, 50, 65, 80, 100, 120)
_FINE_UM = {
    "c": (-60, -70, -80, -95, -110, -110, -120, -130, -140, -150, -170, -180),
    "r": (10, 15, 19, 23, 28, 28, 34, 34, 41, 43, 51, 54),
    "s": (14, 19, 23, 28, 35, 35, 43, 43, 53, 59, 71, 79),
    "u": (18, 23, 28, 33, 41, 48, 60, 70, 87, 102, 124, 144),
}
_CODE = re.compile(r"([A-Za-z]{1,2})(\d{1,2})")
_LOOSE, _TIGHT = "cdefgh", "kmnprsu"


@dataclass(frozen=True)
class Zone:
    """A tolerance zone of one nominal size: lower and upper deviation [um].

    Examples
    --------
    >>> h7 = zone(Q(30, "mm"), "H7")
    >>> h7.lower_um, h7.upper_um, f"{h7.largest:.3f}"
    (0, 21, '30.021 millimeter')
    """

    name: str
    nominal_mm: float
    lower_um: float
    upper_um: float

    @property
    def smallest(self) -> Q:
        """Smallest size [mm]."""
        return Q(self.nominal_mm + self.lower_um / 1e3, "mm")

    @property
    def largest(self) -> Q:
        """Largest size [mm]."""
        return Q(self.nominal_mm + self.upper_um / 1e3, "mm")


@dataclass(frozen=True)
class Fit:
    """A hole and a shaft of one nominal size; interference is positive, play negative [um].

    Examples
    --------
    >>> press = fit(Q(30, "mm"), "H7/p6")
    >>> press.kind, press.least_um, press.most_um
    ('interference', 1, 35)
    """

    hole: Zone
    shaft: Zone

    @property
    def least_um(self) -> float:
        """Least interference (most play if negative) [um]."""
        return self.shaft.lower_um - self.hole.upper_um

    @property
    def most_um(self) -> float:
        """Most interference [um]."""
        return self.shaft.upper_um - self.hole.lower_um

    @property
    def kind(self) -> str:
        """``interference``, ``clearance`` or ``transition``."""
        if self.least_um > 0:
            return "interference"
        return "clearance" if self.most_um <= 0 else "transition"


_SIZE = Range("nominal size", "mm", 0, _RANGES_MM[-1], _SOURCE)
_GRADE = Range("tolerance grade", "", min(_GRADE_UM), max(_GRADE_UM), _SOURCE)


@border(size=_SIZE, grade=_GRADE)
def tolerance_um(size_mm: float, grade: float) -> int:
    """Give the standard tolerance of a grade [um].

    Parameters
    ----------
    size : length
        Nominal size, above 0 to 120 mm.
    grade : int
        4 to 12.

    Raises
    ------
    OutOfRangeError
        Size or grade outside the table.

    Examples
    --------
    >>> tolerance_um(Q(50, "mm"), 7)  # ISO 286-1
    25
    """
    mm = _size_mm(size_mm)
    if grade not in _GRADE_UM:
        raise OutOfRangeError("tolerance grade", f"{grade:g}", "whole numbers", _SOURCE)
    return _GRADE_UM[int(grade)][bisect_left(_RANGES_MM, mm)]


@border(size=_SIZE)
def zone(size_mm: float, code: str) -> Zone:
    """Give the limits of a tolerance zone, capital letters for holes: ``H7``, ``p6``, ``JS9``.

    Raises
    ------
    OutOfRangeError
        A size outside 0 to 120 mm, or a zone that the table does not hold.

    Examples
    --------
    >>> p6 = zone(Q(50, "mm"), "p6")  # ISO 286-2
    >>> p6.lower_um, p6.upper_um
    (26, 42)
    """
    mm = _size_mm(size_mm)
    match = _CODE.fullmatch(code.strip())
    if not match or not (match[1].isupper() or match[1].islower()):
        raise OutOfRangeError("tolerance zone", repr(code), "codes like H7 or p6", _SOURCE)
    letter, grade = match[1], int(match[2])
    wide = tolerance_um.plain(mm, _GRADE.plain(grade))
    if letter.lower() == "js":
        return Zone(code, mm, -wide / 2, wide / 2)
    if letter.islower():
        lower, upper = _shaft(mm, letter, grade, wide)
    else:
        lower, upper = _hole(mm, letter, grade, wide)
    return Zone(code, mm, lower, upper)


@border(size=_SIZE)
def fit(size_mm: float, codes: str) -> Fit:
    """Give a fit by its name, hole first: ``H7/p6``; errors as `zone`.

    Examples
    --------
    >>> fit(Q(50, "mm"), "H7/k6").kind
    'transition'
    """
    hole, _, shaft = codes.partition("/")
    if not hole.strip()[:1].isupper() or not shaft.strip()[:1].islower():
        raise OutOfRangeError("fit", repr(codes), "codes like H7/p6, the hole first", _SOURCE)
    return Fit(zone.plain(size_mm, hole), zone.plain(size_mm, shaft))


def _size_mm(size_mm: float) -> float:
    if size_mm == 0:
        raise OutOfRangeError("nominal size", "0 mm", "above 0 to 120 mm", _SOURCE)
    return round(size_mm, 6)  # 30 mm that went through inches stays in its range


def _deviation(mm: float, letter: str, grade: int) -> int:
    """Fundamental deviation of a shaft's position [um]."""
    if letter in _FINE_UM:
        return _FINE_UM[letter][bisect_left(_FINE_UP_TO_MM, mm)]
    index = bisect_left(_RANGES_MM, mm)
    if letter in _ABOVE_UM:
        return _ABOVE_UM[letter][index]
    if letter not in _BELOW_UM:
        letters = ", ".join(_LOOSE + _TIGHT)
        raise OutOfRangeError("tolerance position", repr(letter), f"js and {letters}", _SOURCE)
    if letter == "k" and grade > 7:
        return 0
    return _BELOW_UM[letter][index]


def _shaft(mm: float, letter: str, grade: int, wide: int) -> tuple[int, int]:
    start = _deviation(mm, letter, grade)
    return (start - wide, start) if letter in _LOOSE else (start, start + wide)


def _hole(mm: float, letter: str, grade: int, wide: int) -> tuple[int, int]:
    small = letter.lower()
    if small in _LOOSE:
        start = -_deviation(mm, small, grade)
        return start, start + wide
    # K, M, N up to grade 8 and P to U up to grade 7 are shifted up by the step to the finer grade,
    # so that H7/p6 and P7/h6 give the same fit.
    fine = grade <= (8 if small in "kmn" else 7)
    if not fine and small in "km":
        raise OutOfRangeError("tolerance zone", f"{letter}{grade}", "grades up to 8", _SOURCE)
    if small == "n" and not fine:
        return (-wide, 0) if mm > 3 else (-4 - wide, -4)
    index = bisect_left(_RANGES_MM, mm)
    delta = wide - _GRADE_UM[grade - 1][index] if fine and mm > 3 else 0
    upper = -_deviation(mm, small, 6 if small == "k" else grade) + delta
    return upper - wide, upper
