"""A shaft turned by hand under a dial indicator: preload of the plunger, tilt, total reading."""

from __future__ import annotations

from typing import Any

from twoshaft.models.gauges import dial_reading, run_out
from twoshaft.models.validity import in_range
from twoshaft.rigs.instrument import Instrument, one_of, within
from twoshaft.rigs.pointers import dial_words
from twoshaft.units.quantities import Q

PRESSED = [["0.02", "just touching"], ["0.50", "half a turn"], ["1.00", "one turn"]]
TILTS = [["0", "square to the shaft"], ["30", "tilted by 30°"], ["45", "tilted by 45°"]]


class RunOut(Instrument):
    """A shaft between centres under a dial indicator.

    Parameters
    ----------
    eccentricity_mm : float
        Of the surface under the plunger.
    high_at_deg : float
        Where its high side stands at the start.
    readings_only : bool
        True in marked work: nothing is said of what the set-up does to the reading.
    """

    screen = "runout"
    name = "Dial indicator on a shaft, one mark is 0.01 mm"

    def __init__(
        self, eccentricity_mm: float, high_at_deg: float = 0.0, readings_only: bool = False
    ) -> None:
        self.off_mm = in_range("eccentricity", Q(eccentricity_mm, "mm"), 0, 0.4, "mm", self.name)
        self.high_at_deg = high_at_deg
        self.readings_only = readings_only
        super().__init__(
            {"pressed": PRESSED, "tilts": TILTS, "readingsOnly": readings_only},
            {"angle": 0, "pressed": PRESSED[0][0], "tilt": TILTS[1][0]},
        )

    def look(self, state: dict[str, Any]) -> dict[str, Any]:
        """Where the pointers stand."""
        pressed = Q(float(one_of(state, "pressed", PRESSED)), "mm")
        tilt = Q(float(one_of(state, "tilt", TILTS)), "degree")
        angle = within(state, "angle", 0, 360)
        start = self._stands(0.0)
        reading = dial_reading(pressed, self._stands(angle) - start, tilt).m_as("mm")
        lowest = dial_reading(pressed, Q(-self.off_mm, "mm") - start, tilt).m_as("mm")
        return {
            "mm": round(float(reading), 4),
            "words": dial_words(reading),
            "finding": self._finding(state, reading, lowest),
        }

    def _stands(self, angle: float) -> Q:
        return run_out(Q(self.off_mm, "mm"), Q(angle + self.high_at_deg, "degree"))

    def _finding(self, state: dict[str, Any], reading: float, lowest: float) -> str:
        if self.readings_only:
            return f"The shaft stands at {float(state['angle']):.0f}°, turned by hand."
        if lowest <= 0:
            lost = (
                "The plunger has let go" if reading <= 0 else "The plunger lets go on the way round"
            )
            return f"{lost}: a dial that stands still may have lost the part. Press it in first."
        if float(state["tilt"]):
            return "The plunger stands at a tilt: the dial shows more than the shaft moves."
        return "Square and pressed in. Turn the shaft once round; largest less smallest counts."


def run_out_rig(
    eccentricity_mm: float, *, high_at_deg: float = 0.0, readings_only: bool = False
) -> RunOut:
    """A shaft to be turned by hand under a dial indicator.

    Parameters
    ----------
    eccentricity_mm, high_at_deg, readings_only
        As for `RunOut`.

    Returns
    -------
    RunOut
        Something a notebook displays.

    Raises
    ------
    OutOfRangeError
        An eccentricity that the dial cannot follow.
    """
    return RunOut(eccentricity_mm, high_at_deg, readings_only)
