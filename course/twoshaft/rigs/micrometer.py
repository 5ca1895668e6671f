"""Micrometer: close it on itself or on a part, and read sleeve and thimble."""

from __future__ import annotations

import math
from typing import Any

from twoshaft.models.gauges import Screw
from twoshaft.models.validity import in_range
from twoshaft.rigs.instrument import Instrument, one_of, within
from twoshaft.units.quantities import Q

BETWEEN = [["nothing", "nothing: closed on itself"], ["part", "the part"]]
HANDS = [["ratchet", "by the ratchet"], ["force", "by force, at the thimble"]]
SPRINGS_MM = 0.02
"""How far the frame springs open under a firm hand; invented."""


class Micrometer(Instrument):
    """A micrometer of 0 to 25 mm.

    Parameters
    ----------
    part_mm : float
        True size of the part.
    zero_mm : float
        What it shows when it is closed on itself.
    readings_only : bool
        True in marked work: nothing is said of the value.
    """

    screen = "micrometer"
    name = "Micrometer, 0 to 25 mm"

    def __init__(self, part_mm: float, zero_mm: float = 0.0, readings_only: bool = False) -> None:
        self.screw = Screw()
        top = self.screw.high_mm
        self.part_mm = in_range("size of the part", Q(part_mm, "mm"), 0.5, top - 1, "mm", self.name)
        self.zero_mm = in_range("zero of the tool", Q(zero_mm, "mm"), -0.2, 0.2, "mm", self.name)
        self.readings_only = readings_only
        super().__init__(
            {
                "between": BETWEEN,
                "hands": [] if readings_only else HANDS,
                "pitch": self.screw.pitch_mm,
                "lines": self.screw.lines,
                "top": top,
                "readingsOnly": readings_only,
            },
            {"between": "part", "hand": "ratchet", "open": top},
        )

    def look(self, state: dict[str, Any]) -> dict[str, Any]:
        """Where sleeve and thimble stand."""
        part = one_of(state, "between", BETWEEN) == "part"
        forced = not self.readings_only and one_of(state, "hand", HANDS) == "force"
        stop = (self.part_mm if part else 0.0) + self.zero_mm
        opened = within(state, "open", -1, self.screw.high_mm)
        rests = opened <= stop + 1e-9
        shown = stop - SPRINGS_MM * forced if rests else opened
        turns, line = self.screw.marks(Q(shown, "mm"))
        return {
            "mm": round(shown, 4),
            "line": round(line, 3),
            "words": thimble_words(turns, line, self.screw.lines),
            "finding": self._finding(rests, part, forced),
        }

    def _finding(self, rests: bool, part: bool, forced: bool) -> str:
        if not rests:
            return "The spindle is open. Close it until it rests."
        where = "the part" if part else "the anvil"
        if forced:
            return (
                f"The spindle is forced on to {where}. The frame springs, and the thimble goes "
                f"{round(SPRINGS_MM / self.screw.step.m_as('mm'))} lines too far."
            )
        if self.readings_only:
            return f"The ratchet slips: the spindle rests on {where}."
        if part:
            return "The spindle rests on the part. Read it, then close it on itself and read again."
        return "Closed on itself. What it shows now is its zero error; take it off every reading."


def thimble_words(turns: int, line: float, lines: int) -> str:
    """Where sleeve and thimble of a half-millimetre screw stand.

    >>> thimble_words(11, 28.3, 50)
    'Last line open above the datum: 5. A line below it is open too. Thimble just past line 28.'
    >>> thimble_words(-1, 48.0, 50)
    'No line of the sleeve is open. Thimble on line 48.'
    """
    whole, half = divmod(turns, 2)
    sleeve = (
        "No line of the sleeve is open."
        if turns < 0
        else f"Last line open above the datum: {whole}. "
        + ("A line below it is open too." if half else "No line below the datum after it.")
    )
    near = round(line)
    if abs(line - near) < 0.25:
        return f"{sleeve} Thimble on line {near % lines}."
    low = math.floor(line)
    word = "just past line" if line - low < 0.5 else "just before line"
    return f"{sleeve} Thimble {word} {low if line - low < 0.5 else (low + 1) % lines}."


def micrometer(part_mm: float, *, zero_mm: float = 0.0, readings_only: bool = False) -> Micrometer:
    """A micrometer to be closed and read.

    Parameters
    ----------
    part_mm, zero_mm, readings_only
        As for `Micrometer`.

    Returns
    -------
    Micrometer
        Something a notebook displays.

    Raises
    ------
    OutOfRangeError
        A part or a zero error that the tool cannot show.
    """
    return Micrometer(part_mm, zero_mm, readings_only)
