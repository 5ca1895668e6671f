"""How measuring tools stand on the bench, and what is wrong with how somebody left them.

A reading is only as good as what foot, rod, plunger and stand rest on, and as the place from which
it is read. Rules: a foot lies flat, and a rod touches the bottom clear of the rounding in its
corner; an eye looks square on (parallax, plain geometry); a plunger points at the middle of the
shaft, so that it travels as the surface does (cosine, plain geometry), and is pressed in by more
than the surface moves; its stand has its whole foot on something thick; only a hand turns the shaft
(common practice, no source).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Protocol

from twoshaft.models.bench_tools import EDGE_MM
from twoshaft.models.gauges import Vernier

COSINE = 0.01
"""By so much, as a share, a plunger's tilt may lengthen its travel."""
THICK_MM = 10.0
"""So thick is what a magnet's foot holds on and does not bend (common practice, no source)."""
BY_HAND = ("crank", "hand wheel")
"""What turns a shaft and stops with the hand."""


@dataclass(frozen=True)
class SetDepth:
    """A depth gauge over a bore, and the eye that reads it.

    ``left_mm`` and ``right_mm`` tell how far the ends of its foot stand off the face, ``short_mm``
    how far the rod ends above the bottom, ``aside_mm`` how far it stands from the wall, and
    ``round_mm`` how far the rounding of the corner reaches in. ``eye_deg`` is how far the eye looks
    from above the square line, below zero from under it.

    Examples
    --------
    >>> depth_set_faults(SetDepth(0, 0, 0, aside_mm=9, round_mm=4, eye_deg=1))
    ()
    """

    left_mm: float
    right_mm: float
    short_mm: float
    aside_mm: float
    round_mm: float
    eye_deg: float


class SetDepthLike(Protocol):
    """What tells of a depth gauge, as ``SetDepth`` does.

    Examples
    --------
    >>> SetDepthLike.__name__
    'SetDepthLike'
    """

    @property
    def left_mm(self) -> float:
        """How far the left end of the foot stands off."""

    @property
    def right_mm(self) -> float:
        """How far its right end stands off."""

    @property
    def short_mm(self) -> float:
        """How far the rod ends above the bottom."""

    @property
    def aside_mm(self) -> float:
        """How far the rod stands from the wall."""

    @property
    def round_mm(self) -> float:
        """How far the rounding reaches in."""

    @property
    def eye_deg(self) -> float:
        """How far the eye looks from above the square line."""


def depth_set_faults(one: SetDepthLike) -> tuple[str, ...]:
    """Give what is wrong with a depth gauge: ``eye``, ``set``, both or nothing.

    An eye is off where the vernier seems moved by half its step or more.

    Examples
    --------
    >>> depth_set_faults(SetDepth(0, 1.5, 0, 9, 4, eye_deg=-25))
    ('eye', 'set')
    >>> depth_set_faults(SetDepth(0, 0, 0, aside_mm=2, round_mm=5, eye_deg=0))
    ('set',)
    """
    seems = EDGE_MM * math.tan(math.radians(abs(one.eye_deg)))
    eye = seems >= Vernier().step.m_as("mm") / 2
    seat = max(one.left_mm, one.right_mm, one.short_mm) > 0 or one.aside_mm < one.round_mm
    return ("eye",) * eye + ("set",) * seat


@dataclass(frozen=True)
class SetDial:
    """A dial indicator on a shaft, and what turns the shaft.

    ``off_deg`` tells how far the plunger's line turns from the one to the middle of the shaft,
    ``pressed_mm`` how far it is pressed in, ``moves_mm`` how far the surface moves, ``thick_mm``
    how thick it is what the stand stands on, ``rests`` what share of its foot lies on that.

    Examples
    --------
    >>> dial_set_faults(SetDial(2, pressed_mm=0.6, moves_mm=0.2, thick_mm=40, rests=1, by="crank"))
    ()
    """

    off_deg: float
    pressed_mm: float
    moves_mm: float
    thick_mm: float
    rests: float
    by: str


class SetDialLike(Protocol):
    """What tells of a dial indicator, as ``SetDial`` does.

    Examples
    --------
    >>> SetDialLike.__name__
    'SetDialLike'
    """

    @property
    def off_deg(self) -> float:
        """How far the plunger's line turns from the middle."""

    @property
    def pressed_mm(self) -> float:
        """How far the plunger is pressed in."""

    @property
    def moves_mm(self) -> float:
        """How far the surface moves."""

    @property
    def thick_mm(self) -> float:
        """How thick it is what the stand stands on."""

    @property
    def rests(self) -> float:
        """What share of the foot lies on it."""

    @property
    def by(self) -> str:
        """What turns the shaft."""


def dial_set_faults(one: SetDialLike) -> tuple[str, ...]:
    """Give what is wrong with a dial's set-up: ``set``, ``drive``, both or nothing.

    Examples
    --------
    >>> dial_set_faults(SetDial(30, 0.6, 0.2, 40, 1, by="drill"))
    ('set', 'drive')
    >>> dial_set_faults(SetDial(0, pressed_mm=0.1, moves_mm=0.2, thick_mm=40, rests=1, by="crank"))
    ('set',)
    """
    longer = 1 / math.cos(math.radians(one.off_deg)) - 1
    held = one.thick_mm >= THICK_MM and one.rests >= 1
    wrong = longer > COSINE or one.pressed_mm <= one.moves_mm or not held
    return ("set",) * wrong + ("drive",) * (one.by not in BY_HAND)
