"""Instruments of length: how a true length becomes a reading, and what the reading is worth.

Sources: screw and vernier principle as in any text on workshop measuring (from memory; worked
examples are tested); tilt of a plunger and parallax are plain geometry; the test for a reading
that does not belong is Grubbs's (Technometrics 11, 1969, from memory; critical values tested).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Above, Depends, Range, border
from twoshaft.models.validity import in_range, positive
from twoshaft.units.quantities import Q

RULE_OF_TEN = 10.0
"""The tool should tell a tenth of the tolerance; common practice, no source."""
_SCREW = "the screw of the instrument"
_ARM, _SHAFTS = "arm's length", "shafts"
_MOVED = Range("movement", "mm", -100, 100, "dial indicators")
_TILT = Range("tilt", "radian", 0, math.radians(60), "beyond this a plunger bends")


@dataclass(frozen=True)
class Screw:
    """Sleeve and thimble of a micrometer.

    Parameters
    ----------
    pitch_mm : float
        Travel of one turn [mm].
    lines : int
        Lines round the thimble.
    high_mm : float
        Length of the scale [mm].

    Examples
    --------
    >>> f"{Screw().step:.2f}"
    '0.01 millimeter'
    """

    pitch_mm: float = 0.5
    lines: int = 50
    high_mm: float = 25.0

    def __post_init__(self) -> None:
        pitch = in_range("pitch", Q(self.pitch_mm, "mm"), 0.1, 2, "mm", "micrometers")
        in_range("lines of the thimble", self.lines, 10, 200, "", "micrometers")
        in_range("length of the scale", Q(self.high_mm, "mm"), pitch, 50, "mm", "micrometers")

    @property
    def step(self) -> Q:
        """What one line of the thimble is worth [mm]."""
        return Q(self.pitch_mm / self.lines, "mm")

    @border(
        shown=Depends(
            "mm", lambda self: Range("reading", "mm", -self.pitch_mm, self.high_mm, _SCREW)
        )
    )
    def marks(self, shown_mm: float) -> tuple[int, float]:
        """Whole turns that lie open on the sleeve, and the line of the thimble on the datum.

        Parameters
        ----------
        shown : length
            What the instrument shows; a little below zero where its zero is off.

        Examples
        --------
        >>> Screw().marks(Q(7.78, "mm"))
        (15, 28.0)
        """
        total = round(shown_mm / self.step.m_as("mm"), 6)
        turns = math.floor(total / self.lines)
        return turns, total - turns * self.lines

    @border(
        "mm",
        turns=Depends(
            "", lambda self: Range("turns", "", -1, self.high_mm / self.pitch_mm, _SCREW)
        ),
        line=Depends("", lambda self: Range("line of the thimble", "", 0, self.lines, _SCREW)),
    )
    def reading(self, turns: float, line: float) -> float:
        """Give the reading [mm] of open turns and a line of the thimble.

        Examples
        --------
        >>> f"{Screw().reading(15, 28):.2f}"
        '7.78 millimeter'
        """
        return turns * self.pitch_mm + line * (self.pitch_mm / self.lines)


@dataclass(frozen=True)
class Vernier:
    """A vernier beside a main scale: its ``lines`` spaces are one main space short of ``lines``.

    Parameters
    ----------
    main_mm : float
        One space of the main scale [mm].
    lines : int
        Spaces of the vernier.

    Examples
    --------
    >>> f"{Vernier().step:.2f}", f"{Vernier(lines=50).step:.2f}"
    ('0.05 millimeter', '0.02 millimeter')
    """

    main_mm: float = 1.0
    lines: int = 20

    def __post_init__(self) -> None:
        in_range("space of the main scale", Q(self.main_mm, "mm"), 0.1, 5, "mm", "verniers")
        in_range("lines of the vernier", self.lines, 5, 100, "", "verniers")

    @property
    def step(self) -> Q:
        """What one line of the vernier is worth [mm]."""
        return Q(self.main_mm / self.lines, "mm")

    @property
    def space(self) -> Q:
        """Distance from line to line of the vernier [mm]."""
        return Q(self.main_mm, "mm") - self.step

    @border(
        shown=Depends("mm", lambda self: Range("reading", "mm", -self.main_mm, 1000, "verniers"))
    )
    def marks(self, shown_mm: float) -> tuple[int, int]:
        """Main lines passed by the vernier's zero, and the vernier line that meets a main line.

        Examples
        --------
        >>> Vernier().marks(Q(23.35, "mm"))
        (23, 7)
        """
        total = math.floor(shown_mm / self.step.m_as("mm") + 0.5)
        return total // self.lines, total % self.lines

    @border(
        "mm",
        line=Depends(
            "", lambda self: Range("line of the vernier", "", 0, self.lines, "the vernier")
        ),
    )
    def reading(self, passed: int, line: float) -> float:
        """Give the reading [mm] of passed main lines and the vernier line that meets one.

        Examples
        --------
        >>> f"{Vernier().reading(23, 7):.2f}"
        '23.35 millimeter'
        """
        return passed * self.main_mm + line * (self.main_mm / self.lines)

    @border("mm", shown=Above("reading", "mm", zero=True))
    def gap(self, shown_mm: float, line: int) -> float:
        """How far a vernier line stands from the nearest main line [mm]."""
        place_mm = shown_mm + line * self.space.m_as("mm")
        return abs(place_mm - round(place_mm / self.main_mm) * self.main_mm)


@border(
    "mm",
    shown=Range("reading", "mm"),
    zero=Range("zero reading", "mm", -1, 1, "a tool in order"),
)
def corrected(shown_mm: float, zero_mm: float) -> float:
    """Give the length [mm]: what the tool shows, less what it shows at its zero.

    ``zero`` is above zero where the tool shows too much.

    Examples
    --------
    >>> f"{corrected(Q(12.43, 'mm'), Q(-0.02, 'mm')):.2f}"
    '12.45 millimeter'
    """
    return shown_mm - zero_mm


@border(
    "mm",
    gap=Above("height above the scale", "mm", zero=True),
    aside=Range("eye aside", "mm", -1000, 1000, _ARM),
    distance=Range("distance of the eye", "mm", 50, 2000, _ARM),
)
def parallax(gap_mm: float, aside_mm: float, distance_mm: float) -> float:
    """Give how far a line seems moved along the scale below it [mm].

    Parameters
    ----------
    gap : length
        Height of the upper line above the scale.
    aside : length
        How far the eye is off square, along the scale; below zero the other way.
    distance : length
        From the eye to the upper line.

    Examples
    --------
    Similar triangles: 0.3 mm seen from 130 mm aside, 260 mm away.

    >>> f"{parallax(Q(0.3, 'mm'), Q(130, 'mm'), Q(260, 'mm')):.2f}"
    '-0.15 millimeter'
    """
    return -gap_mm * aside_mm / distance_mm


@border("mm", moved=_MOVED, tilt=_TILT)
def plunger_travel(moved_mm: float, tilt_rad: float) -> float:
    """Give the travel [mm] of a dial indicator's plunger that stands at a tilt to the movement.

    A flat face that moves by ``moved`` along its own normal pushes a tilted plunger further, by
    1/cos(tilt): the dial reads too much.

    Examples
    --------
    >>> f"{plunger_travel(Q(1, 'mm'), Q(60, 'degree')):.2f}"
    '2.00 millimeter'
    """
    return moved_mm / math.cos(tilt_rad)


@border(
    "mm",
    pressed=Range("pressed in", "mm", 0, 10, "travel of the dial"),
    moved=_MOVED,
    tilt=_TILT,
)
def dial_reading(pressed_mm: float, moved_mm: float, tilt_rad: float) -> np.ndarray:
    """Give what a dial indicator shows [mm].

    Parameters
    ----------
    pressed : length
        How far the plunger was pressed in at the start.
    moved : length or array of lengths
        How far the face has come towards the dial since; below zero away from it.
    tilt : angle
        Of the plunger to the movement. A plunger that loses the face shows nothing more.

    Examples
    --------
    >>> pressed, moved, tilt = Q(1, "mm"), Q(0.2, "mm"), Q(0, "degree")
    >>> f"{dial_reading(pressed, moved, tilt):.2f}"
    '1.20 millimeter'
    """
    return np.maximum(0.0, pressed_mm + plunger_travel.plain(moved_mm, tilt_rad))


@border(
    "mm",
    eccentricity=Range("eccentricity", "mm", 0, 5, _SHAFTS),
    turned=Range("angle turned", "radian"),
    out_of_round=Range("oval", "mm", 0, 1, _SHAFTS),
)
def run_out(
    eccentricity_mm: float, turned_rad: float, out_of_round_mm: float | None = None
) -> np.ndarray:
    """Give how far a turning surface stands towards the dial [mm], from its mean.

    Parameters
    ----------
    eccentricity : length
        Distance from the middle of the surface to the axis it turns about.
    turned : angle or array of angles
    out_of_round : length, optional
        Largest less smallest diameter of an oval, as a micrometer finds them.

    Examples
    --------
    >>> f"{run_out(Q(0.05, 'mm'), Q(180, 'degree')) - run_out(Q(0.05, 'mm'), Q(0, 'degree')):.2f}"
    '-0.10 millimeter'
    """
    oval = 0.0 if out_of_round_mm is None else out_of_round_mm
    return eccentricity_mm * np.cos(turned_rad) + oval / 4 * np.cos(2 * turned_rad)


@border("mm", total=Above("total reading", "mm", zero=True))
def eccentricity(total_mm: float) -> float:
    """Give the eccentricity [mm] of a round surface: half the total reading.

    Examples
    --------
    >>> f"{eccentricity(Q(0.08, 'mm')):.2f}"
    '0.04 millimeter'
    """
    return total_mm / 2


def spread(readings: Sequence[float]) -> tuple[float, float]:
    """Give mean and standard deviation (n - 1) of repeat readings, in their unit.

    Raises
    ------
    OutOfRangeError
        For fewer than two readings: one says nothing about spread.

    Examples
    --------
    >>> spread([1.0, 2.0, 3.0])
    (2.0, 1.0)
    """
    values = np.asarray(readings, dtype=float)
    in_range("number of readings", values.size, 2, math.inf, "", "JCGM 100:2008")
    return float(values.mean()), float(values.std(ddof=1))


@border(
    count=Range("number of readings", "", 3, 1000, "Grubbs's test"),
    level=Range("level", "", 0.5, 0.9999, "Grubbs's test"),
)
def grubbs_limit(count: float, level: float = 0.95) -> float:
    """Give the largest distance from the mean, in standard deviations, that chance explains.

    Two-sided, of ``count`` readings, at a confidence level.

    Examples
    --------
    >>> f"{grubbs_limit(10):.2f}"  # tables of Grubbs's test
    '2.29'
    """
    from scipy.special import stdtrit

    n = count
    tail = (1 - level) / (2 * n)
    t = float(stdtrit(n - 2, 1 - tail))
    return (n - 1) / math.sqrt(n) * math.sqrt(t * t / (n - 2 + t * t))


def stray(readings: Sequence[float], level: float = 0.95) -> int | None:
    """Give the place of the reading that does not belong to the others, or None.

    A finding is a reason to look for the cause and to measure again, never to strike a reading.

    Examples
    --------
    >>> stray([5.01, 5.02, 5.00, 5.01, 5.02, 5.90, 5.01])
    5
    """
    values = np.asarray(readings, dtype=float)
    mean, sd = spread(readings)
    limit = grubbs_limit(values.size, level)
    far = np.abs(values - mean)
    return int(far.argmax()) if sd > 0 and far.max() / sd > limit else None


@border(
    step=Above("step of the tool", "mm"), tolerance=Above("tolerance", "mm"), ratio=Above("ratio")
)
def tells(step_mm: float, tolerance_mm: float, ratio: float = RULE_OF_TEN) -> bool:
    """Whether a tool's step is fine enough for a tolerance (its whole width).

    The default ratio of ten is common practice, no source.

    Examples
    --------
    >>> tells(Q(0.01, "mm"), Q(0.1, "mm")), tells(Q(0.05, "mm"), Q(0.1, "mm"))
    (True, False)
    """
    return step_mm * ratio <= tolerance_mm * (1 + 1e-9)


def verdict(value: Q, low: Q, high: Q, doubt: Q) -> str:
    """Say what a measured value allows: ``inside``, ``outside`` or ``unsure``.

    Inside or outside is claimed only where the value clears the limit by its doubt (ISO 14253-1).

    Raises
    ------
    OutOfRangeError
        Limits that are reversed, or a doubt below zero.

    Examples
    --------
    >>> verdict(Q(5.02, "mm"), Q(5.00, "mm"), Q(5.10, "mm"), doubt=Q(0.03, "mm"))
    'unsure'
    """
    unit = f"{value.units}"
    number = in_range("value", value, -math.inf, math.inf, unit)
    bottom = in_range("lower limit", low, -math.inf, math.inf, unit)
    top = in_range("upper limit", high, -math.inf, math.inf, unit)
    if top < bottom:
        raise OutOfRangeError("upper limit", f"{top:g}", f"above {bottom:g}", "limits")
    u = positive("doubt", doubt, unit, zero=True)
    if bottom + u <= number <= top - u:
        return "inside"
    return "outside" if number < bottom - u or number > top + u else "unsure"
