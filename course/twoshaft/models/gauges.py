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
from twoshaft.models.validity import in_range, positive
from twoshaft.units.quantities import Q

RULE_OF_TEN = 10.0
"""The tool should tell a tenth of the tolerance; common practice, no source."""
_SCREW, _TILT = "the screw of the instrument", "beyond this a plunger bends"


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

    def marks(self, shown: Q) -> tuple[int, float]:
        """Whole turns that lie open on the sleeve, and the line of the thimble on the datum.

        Parameters
        ----------
        shown : length
            What the instrument shows; a little below zero where its zero is off.
        """
        mm = in_range("reading", shown, -self.pitch_mm, self.high_mm, "mm", _SCREW)
        total = round(mm / self.step.m_as("mm"), 6)
        turns = math.floor(total / self.lines)
        return turns, total - turns * self.lines

    def reading(self, turns: int, line: float) -> Q:
        """Give the reading [mm] of open turns and a line of the thimble."""
        open_turns = in_range("turns", turns, -1, self.high_mm / self.pitch_mm, "", _SCREW)
        on_thimble = in_range("line of the thimble", line, 0, self.lines, "", _SCREW)
        return Q(open_turns * self.pitch_mm, "mm") + on_thimble * self.step


@dataclass(frozen=True)
class Vernier:
    """A vernier beside a main scale: its ``lines`` spaces are one main space short of ``lines``.

    Parameters
    ----------
    main_mm : float
        One space of the main scale [mm].
    lines : int
        Spaces of the vernier.
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

    def marks(self, shown: Q) -> tuple[int, int]:
        """Main lines passed by the vernier's zero, and the vernier line that meets a main line."""
        mm = in_range("reading", shown, -self.main_mm, 1000, "mm", "verniers")
        total = math.floor(mm / self.step.m_as("mm") + 0.5)
        return total // self.lines, total % self.lines

    def reading(self, passed: int, line: int) -> Q:
        """Give the reading [mm] of passed main lines and the vernier line that meets one."""
        on_vernier = in_range("line of the vernier", line, 0, self.lines, "", "the vernier")
        return Q(passed * self.main_mm, "mm") + on_vernier * self.step

    def gap(self, shown: Q, line: int) -> Q:
        """How far a vernier line stands from the nearest main line [mm]."""
        place = positive("reading", shown, "mm", zero=True) + line * self.space.m_as("mm")
        return Q(abs(place - round(place / self.main_mm) * self.main_mm), "mm")


def corrected(shown: Q, zero: Q) -> Q:
    """Give the length [mm]: what the tool shows, less what it shows at its zero.

    ``zero`` is above zero where the tool shows too much.
    """
    reading = in_range("reading", shown, -math.inf, math.inf, "mm")
    return Q(reading - in_range("zero reading", zero, -1, 1, "mm", "a tool in order"), "mm")


def parallax(gap: Q, aside: Q, distance: Q) -> Q:
    """Give how far a line seems moved along the scale below it [mm].

    Parameters
    ----------
    gap : length
        Height of the upper line above the scale.
    aside : length
        How far the eye is off square, along the scale; below zero the other way.
    distance : length
        From the eye to the upper line.
    """
    height = positive("height above the scale", gap, "mm", zero=True)
    off = in_range("eye aside", aside, -1000, 1000, "mm", "arm's length")
    away = in_range("distance of the eye", distance, 50, 2000, "mm", "arm's length")
    return Q(-height * off / away, "mm")


def plunger_travel(moved: Q, tilt: Q) -> Q:
    """Give the travel [mm] of a dial indicator's plunger that stands at a tilt to the movement.

    A flat face that moves by ``moved`` along its own normal pushes a tilted plunger further, by
    1/cos(tilt): the dial reads too much.
    """
    true = in_range("movement", moved, -100, 100, "mm", "dial indicators")
    angle = in_range("tilt", tilt, 0, math.radians(60), "radian", _TILT)
    return Q(true / math.cos(angle), "mm")


def dial_reading(pressed: Q, moved: Q, tilt: Q) -> Q:
    """Give what a dial indicator shows [mm].

    Parameters
    ----------
    pressed : length
        How far the plunger was pressed in at the start.
    moved : length or array of lengths
        How far the face has come towards the dial since; below zero away from it.
    tilt : angle
        Of the plunger to the movement. A plunger that loses the face shows nothing more.
    """
    start = in_range("pressed in", pressed, 0, 10, "mm", "travel of the dial")
    return Q(np.maximum(0.0, start + plunger_travel(moved, tilt).m_as("mm")), "mm")


def run_out(eccentricity: Q, turned: Q, out_of_round: Q | None = None) -> Q:
    """Give how far a turning surface stands towards the dial [mm], from its mean.

    Parameters
    ----------
    eccentricity : length
        Distance from the middle of the surface to the axis it turns about.
    turned : angle or array of angles
    out_of_round : length, optional
        Half the difference of largest and smallest diameter of an oval.
    """
    off = in_range("eccentricity", eccentricity, 0, 5, "mm", "shafts")
    angle = in_range("angle turned", turned, -math.inf, math.inf, "radian")
    oval = 0.0 if out_of_round is None else in_range("oval", out_of_round, 0, 1, "mm", "shafts")
    return Q(off * np.cos(angle) + oval / 2 * np.cos(2 * angle), "mm")


def eccentricity(total: Q) -> Q:
    """Give the eccentricity [mm] of a round surface: half the total reading."""
    return Q(positive("total reading", total, "mm", zero=True) / 2, "mm")


def spread(readings: Sequence[float]) -> tuple[float, float]:
    """Give mean and standard deviation (n - 1) of repeat readings, in their unit.

    Raises
    ------
    OutOfRangeError
        For fewer than two readings: one says nothing about spread.
    """
    values = np.asarray(readings, dtype=float)
    in_range("number of readings", values.size, 2, math.inf, "", "JCGM 100:2008")
    return float(values.mean()), float(values.std(ddof=1))


def grubbs_limit(count: int, level: float = 0.95) -> float:
    """Give the largest distance from the mean, in standard deviations, that chance explains.

    Two-sided, of ``count`` readings, at a confidence level.
    """
    from scipy.special import stdtrit

    n = in_range("number of readings", count, 3, 1000, "", "Grubbs's test")
    tail = (1 - in_range("level", level, 0.5, 0.9999, "", "Grubbs's test")) / (2 * n)
    t = float(stdtrit(n - 2, 1 - tail))
    return (n - 1) / math.sqrt(n) * math.sqrt(t * t / (n - 2 + t * t))


def stray(readings: Sequence[float], level: float = 0.95) -> int | None:
    """Give the place of the reading that does not belong to the others, or None.

    A finding is a reason to look for the cause and to measure again, never to strike a reading.
    """
    values = np.asarray(readings, dtype=float)
    mean, sd = spread(readings)
    limit = grubbs_limit(values.size, level)
    far = np.abs(values - mean)
    return int(far.argmax()) if sd > 0 and far.max() / sd > limit else None


def tells(step: Q, tolerance: Q, ratio: float = RULE_OF_TEN) -> bool:
    """Whether a tool's step is fine enough for a tolerance (its whole width).

    The default ratio of ten is common practice, no source.
    """
    fine = positive("step of the tool", step, "mm")
    width = positive("tolerance", tolerance, "mm")
    return fine * positive("ratio", ratio) <= width * (1 + 1e-9)


def verdict(value: Q, low: Q, high: Q, doubt: Q) -> str:
    """Say what a measured value allows: ``inside``, ``outside`` or ``unsure``.

    Inside or outside is claimed only where the value clears the limit by its doubt (ISO 14253-1).

    Raises
    ------
    OutOfRangeError
        Limits that are reversed, or a doubt below zero.
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
