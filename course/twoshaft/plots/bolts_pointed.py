"""A bolted face whose bolts can be pointed at, and what its other drawings share."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from html import escape
from typing import Any, Protocol

import numpy as np

from twoshaft.models.joint import Fastening
from twoshaft.plots import style
from twoshaft.plots.drawing import Drawing
from twoshaft.units.unit import Unit

ROOM_PX, EDGE_PX = 440.0, 16.0
_SPOT_PX = 13.0  # a bolt with a letter


def width_mm(fastening: Fastening) -> float:
    """Width of the flange; 0 where the group has none."""
    return (fastening.width_m or 0.0) * 1e3


def extent_mm(unit: Unit, fastening: Fastening) -> tuple[list[np.ndarray], np.ndarray, np.ndarray]:
    """Closed outlines of the face's file entry [mm], none if it has no entry, and its corners."""
    points = fastening.positions_m * 1e3
    if fastening.group.face is None:
        half = width_mm(fastening) / 2
        return [], points.min(axis=0) - half, points.max(axis=0) + half
    face = next(one for one in unit.faces.faces if one.id == fastening.group.face)
    rings = [np.array(face.outline), *(np.array(one.outline) for one in face.cavities)]
    return rings, rings[0].min(axis=0), rings[0].max(axis=0)


def band_of(points: np.ndarray, wide: float) -> list[str]:
    """A band through some places [px]: one stroke of ink with one of paper on it."""
    path = " ".join(f"{x:.1f},{y:.1f}" for x, y in points)
    return [
        f'<polygon points="{path}" fill="none" stroke="{colour}" stroke-width="{width:.1f}" '
        'stroke-linejoin="round"/>'
        for colour, width in (
            (style.INK_NOW, wide),
            (style.PAPER_NOW, wide - 2 * style.THICK_PX),
        )
    ]


class FaceSeen(Protocol):
    """A face as a learner is given it: ``Seen`` of the readings says what each is."""

    @property
    def group(self) -> str:
        """Its group of bolts."""

    @property
    def turned_deg(self) -> int:
        """By how much it is turned."""

    @property
    def pulled(self) -> Sequence[int]:
        """Bolts that are tight, counted from 1."""

    @property
    def spots(self) -> Sequence[Any]:
        """Letters, and the bolts at them."""


class BoltsPicture:
    """A face whose bolts can be pointed at, turned, with a learner's own letters.

    Parameters
    ----------
    unit : Unit
    given : FaceSeen
    """

    def __init__(self, unit: Unit, given: FaceSeen) -> None:
        fastening = Fastening.of(unit, given.group)
        rings, low, high = extent_mm(unit, fastening)
        middle, turn = (low + high) / 2, np.deg2rad(given.turned_deg)
        matrix = np.array([[np.cos(turn), -np.sin(turn)], [np.sin(turn), np.cos(turn)]])
        self._rings = [(ring - middle) @ matrix.T for ring in rings]
        self._at = (fastening.positions_m * 1e3 - middle) @ matrix.T
        self._band = width_mm(fastening)
        self._half = np.abs((np.array([low, high]) - middle) @ matrix.T).max(axis=0)
        self._tight = {k - 1 for k in given.pulled}
        self._letters = {int(spot.text) - 1: spot.id for spot in given.spots}
        self._head = fastening.group.head_mm / 2

    @property
    def svg(self) -> str:
        """The face."""
        return self.marked({})

    @property
    def spots(self) -> tuple[tuple[str, str], ...]:
        """Each letter with what a hand would feel there, and where it lies."""
        return tuple(sorted((letter, self._felt(k)) for k, letter in self._letters.items()))

    def marked(self, marks: Mapping[str, str]) -> str:
        """The face with words at some letters, as in feedback."""
        scale = min(ROOM_PX / (2 * max(self._half)), 3.2)
        room = _SPOT_PX + 2 * EDGE_PX
        width, height = 2 * self._half * scale + 2 * room
        drawing = Drawing(width, height, "A bolted face, seen on the heads of its bolts", "")

        def px(points: np.ndarray) -> np.ndarray:
            x, y = (points[:, 0] + self._half[0]) * scale, (self._half[1] - points[:, 1]) * scale
            return np.stack([x + room, y + room], axis=1)

        for ring in self._rings:
            path = " ".join(f"{x:.1f},{y:.1f}" for x, y in px(ring))
            drawing.add(
                f'<polygon points="{path}" fill="none" stroke="{style.INK_NOW}" '
                f'stroke-width="{style.THICK_PX}" stroke-linejoin="round"/>'
            )
        if not self._rings:
            drawing.add(*band_of(px(self._at), self._band * scale))
        for k, (x, y) in enumerate(px(self._at)):
            drawing.add(self._bolt(k, x, y, scale, marks.get(self._letters[k], "")))
        return drawing.text()

    def _bolt(self, k: int, x: float, y: float, scale: float, word: str) -> str:
        letter, tight = self._letters[k], k in self._tight
        size, radius = style.grown(style.SMALL_PX), max(self._head * scale, _SPOT_PX)
        edge, width = (style.ACTION_NOW, 3) if word else (style.INK_NOW, 1.5)
        disc = (
            f'<circle cx="{x:.1f}" cy="{y:.1f}" r="{radius - 3:.1f}" style="fill:{style.INK_NOW}"/>'
        ) if tight else ""  # fmt: skip
        ink = (
            f'style="fill:{style.PAPER_NOW};'
            if tight
            else f'class="tss-letter" fill="{style.INK_NOW}" style="'
        )
        said = (
            f'<text class="tsf-t" x="{x:.1f}" y="{y - radius - 4:.1f}" text-anchor="middle">'
            f"{escape(word)}</text>"
        ) if word else ""  # fmt: skip
        return (
            f'<g class="tss-mark" data-spot="{letter}" data-mark="{letter}">'
            f'<circle class="tss-dot" cx="{x:.1f}" cy="{y:.1f}" r="0"/>'
            f'<circle class="tss-ring" cx="{x:.1f}" cy="{y:.1f}" r="{radius:.1f}" '
            f'fill="{style.PAPER_NOW}" stroke="{edge}" stroke-width="{width}"/>{disc}'
            f'<text x="{x:.1f}" y="{y:.1f}" text-anchor="middle" dominant-baseline="central" '
            f'{ink}font-size:{size};font-weight:600">{letter}</text>'
            f"{said}</g>"
        )

    def _felt(self, k: int) -> str:
        x, y = self._at[k]
        hour = round((np.degrees(np.arctan2(x, y)) % 360) / 15) / 2 % 12 or 12
        said = f"{hour:g}".replace(".5", " and a half")
        state = "a tight bolt" if k in self._tight else "a bolt that is only run in by hand"
        return f"{state}, at {said} o'clock, {np.hypot(x, y):.0f} mm from the middle"
