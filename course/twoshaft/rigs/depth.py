"""Depth gauge with a vernier: set its foot down, push the rod home, look square, read."""

from __future__ import annotations

from typing import Any

from twoshaft.models.bench_tools import vernier_seems_moved
from twoshaft.models.gauges import Vernier
from twoshaft.models.validity import in_range
from twoshaft.rigs.instrument import Instrument, one_of, within
from twoshaft.units.quantities import Q

PLACES = [["plate", "on the surface plate"], ["hole", "over the depth to be measured"]]
EYES = [["left", "from the left"], ["square", "square on"], ["right", "from the right"]]
TOP_MM = 60.0


class DepthGauge(Instrument):
    """A depth gauge whose vernier reads 0.05 mm.

    Parameters
    ----------
    depth_mm : float
        True depth.
    zero_mm : float
        What it shows with foot and rod on a surface plate.
    eye : str
        Where the eye is at the start: ``left``, ``square`` or ``right``.
    readings_only : bool
        True in marked work: nothing is said of parallax.
    """

    screen = "depth"
    name = "Depth gauge, vernier of 20 lines in 19 mm"

    def __init__(
        self, depth_mm: float, zero_mm: float = 0.0, eye: str = "left", readings_only: bool = False
    ) -> None:
        self.vernier = Vernier()
        self.depth_mm = in_range("depth", Q(depth_mm, "mm"), 1, TOP_MM - 1, "mm", self.name)
        self.zero_mm = in_range("zero of the tool", Q(zero_mm, "mm"), -0.5, 0.5, "mm", self.name)
        self.readings_only = readings_only
        super().__init__(
            {
                "places": PLACES,
                "eyes": EYES,
                "lines": self.vernier.lines,
                "space": self.vernier.space.m_as("mm"),
                "top": TOP_MM,
                "readingsOnly": readings_only,
            },
            {"place": "hole", "eye": eye, "rod": 0.0},
        )

    def look(self, state: dict[str, Any]) -> dict[str, Any]:
        """Where main scale and vernier stand, as the eye sees them."""
        depth = self.depth_mm if one_of(state, "place", PLACES) == "hole" else 0.0
        rod = within(state, "rod", 0, TOP_MM)
        rests = rod >= depth - 1e-9
        true = min(rod, depth) + self.zero_mm
        eye = one_of(state, "eye", EYES)
        moved = vernier_seems_moved(eye).m_as("mm")
        passed, line = self.vernier.marks(Q(true + moved, "mm"))
        return {
            "mm": round(true + moved, 4),
            "words": vernier_words(passed, line, self.vernier.lines),
            "finding": self._finding(rests, eye, moved),
        }

    def _finding(self, rests: bool, eye: str, moved: float) -> str:
        home = "The rod rests." if rests else "The rod hangs free. Push it down until it rests."
        look = f"You look {dict(EYES)[eye]}."
        if self.readings_only or eye == "square":
            return f"{home} {look}"
        way = "much" if moved > 0 else "little"
        return f"{home} {look} The vernier seems to stand {abs(moved):.2f} mm too {way}."


def vernier_words(passed: int, line: int, lines: int) -> str:
    """Where a vernier stands.

    >>> vernier_words(23, 7, 20)
    'Zero of the vernier past line 23 of the main scale. Vernier line 7 of 20 meets a main line.'
    >>> vernier_words(-1, 18, 20)
    'Zero of the vernier just short of line 0. Vernier line 18 of 20 meets a main line.'
    """
    if passed < 0:
        where = "just short of line 0"
    elif line == 0:
        where = f"on line {passed} of the main scale"
    else:
        where = f"past line {passed} of the main scale"
    return f"Zero of the vernier {where}. Vernier line {line} of {lines} meets a main line."


def depth_gauge(
    depth_mm: float, *, zero_mm: float = 0.0, eye: str = "left", readings_only: bool = False
) -> DepthGauge:
    """A depth gauge to be set down and read.

    Parameters
    ----------
    depth_mm, zero_mm, eye, readings_only
        As for `DepthGauge`.

    Returns
    -------
    DepthGauge
        Something a notebook displays.

    Raises
    ------
    OutOfRangeError
        A depth or a zero error that the tool cannot show.
    """
    return DepthGauge(depth_mm, zero_mm, eye, readings_only)
