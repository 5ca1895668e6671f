"""The measuring tools that lie on the course's bench: what each can show.

A rig shows these tools and a reference reads them, so their figures stand here once. Sizes are
those of usual tools; all are invented, for teaching.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from twoshaft.models.fit.seals import seal_readings
from twoshaft.models.gauges import parallax
from twoshaft.units.quantities import Q


@dataclass(frozen=True)
class Scale:
    """A round scale with a pointer, in one unit throughout.

    Attributes
    ----------
    top : float
        Full scale.
    mark : float
        One mark.
    per_figure : int
        Marks from figure to figure.

    Examples
    --------
    >>> scale = Scale(top=50.0, mark=0.5, per_figure=10)
    >>> scale.mark * scale.per_figure  # from figure to figure
    5.0
    """

    top: float
    mark: float
    per_figure: int


SPRING_SCALES_N = tuple(
    Scale(top, mark, 10)
    for top, mark in ((20.0, 0.2), (50.0, 0.5), (100.0, 1.0), (200.0, 2.0), (500.0, 5.0))
)
"""Spring scales in the drawer [N]."""
PRESS_GAUGES_KN = (
    Scale(1.0, 0.02, 5),
    Scale(2.0, 0.05, 4),
    Scale(5.0, 0.1, 5),
    Scale(10.0, 0.2, 5),
    Scale(20.0, 0.5, 4),
    Scale(50.0, 1.0, 5),
)
"""Gauges of the press [kN]."""


def scale_for(value: float, scales: Sequence[Scale]) -> Scale:
    """The first of some scales, smallest first, that a value leaves some room on; else the last.

    Examples
    --------
    >>> scale_for(17.0, SPRING_SCALES_N).top, scale_for(19.0, SPRING_SCALES_N).top
    (20.0, 50.0)
    """
    return next((scale for scale in scales if value <= 0.9 * scale.top), scales[-1])


PLUNGERS_MM = (0.02, 0.50, 1.00)
"""How far the dial indicator's plunger can be pressed in, from just touching to one turn [mm]."""

EYE_ASIDE_MM = {"left": -130.0, "square": 0.0, "right": 130.0}
EYE_MM, EDGE_MM = 260.0, 0.3
"""Eye to scale, and thickness of the vernier's edge above the main scale [mm]."""


def vernier_seems_moved(eye: str) -> Q:
    """How far the depth gauge's vernier seems moved [mm]: ``left``, ``square`` or ``right``.

    Examples
    --------
    >>> f"{vernier_seems_moved('left'):.2f}"
    '0.15 millimeter'
    """
    return parallax(Q(EDGE_MM, "mm"), Q(EYE_ASIDE_MM[eye], "mm"), Q(EYE_MM, "mm"))


SEAL_BRIDGE_MM = 5.0
"""Thickness of the bridge over a seal's bore that the depth gauge stands on [mm]."""
SEAL_PLACES = 4
"""Places round a seal at which its depth is read, clockwise from 12 o'clock."""


def seal_depths(depth_mm: float, lean_mm: float, towards: int) -> tuple[Q, ...]:
    """The depths at the places round a seal [mm]; ``towards`` is the deepest place, from 0.

    Examples
    --------
    >>> [f"{depth.m_as('mm'):.2f}" for depth in seal_depths(1.0, 0.4, 1)]
    ['1.00', '1.20', '1.00', '0.80']
    """
    turn = 2 * math.pi * towards / SEAL_PLACES
    return seal_readings(Q(depth_mm, "mm"), Q(lean_mm, "mm"), SEAL_PLACES, turn)
