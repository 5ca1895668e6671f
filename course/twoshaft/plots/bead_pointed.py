"""A bead laid round a face, with letters at bolt holes that can be pointed at."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from html import escape
from typing import Any, Protocol

import numpy as np

from twoshaft.models.film import Side, bead_lines_mm
from twoshaft.plots import style
from twoshaft.plots.bolts_pointed import EDGE_PX
from twoshaft.plots.drawing import Drawing
from twoshaft.units.unit import Unit

_ROOM_PX, _MOST = (600.0, 470.0), 4.0
_SPOT_PX, _AWAY_PX = 13.0, 30.0
_PASSES = {
    Side.INSIDE: "the bead runs between it and the oil",
    Side.OUTSIDE: "the bead runs between it and the outer edge",
    Side.MIDDLE: "the bead runs straight across it",
    Side.ROUND: "the bead splits and runs on both sides of it",
}


class BeadSeen(Protocol):
    """A bead on a face as a learner is given it: ``Holes`` of the readings says what each is."""

    @property
    def face(self) -> str:
        """Its id."""

    @property
    def turned_deg(self) -> int:
        """By how much the face is turned."""

    @property
    def open_holes(self) -> Sequence[str]:
        """Ids of the holes that lead out."""

    @property
    def sides(self) -> Mapping[str, str]:
        """Side of the bead at every hole."""

    @property
    def pressed_mm(self) -> float:
        """Width of the bead, pressed."""

    @property
    def rows(self) -> Sequence[Any]:
        """Letters, and the holes at them."""


class BeadPicture:
    """The face from the side that is coated, turned, with a learner's own letters.

    Parameters
    ----------
    unit : Unit
    given : BeadSeen
    """

    def __init__(self, unit: Unit, given: BeadSeen) -> None:
        face = unit.faces.face_by_id(given.face)
        outline, turn = np.asarray(face.outline), np.deg2rad(given.turned_deg)
        middle = (outline.min(axis=0) + outline.max(axis=0)) / 2
        matrix = np.array([[np.cos(turn), -np.sin(turn)], [np.sin(turn), np.cos(turn)]])

        def here(points: Any) -> np.ndarray:
            return (np.asarray(points, float) - middle) @ matrix.T

        self._sides = {id: Side(side) for id, side in given.sides.items()}
        self._outline = here(outline)
        self._cavities = [here(one.outline) for one in face.cavities]
        self._islands = [here(one) for one in face.islands]
        self._lines = [here(line) for line in bead_lines_mm(face, self._sides)]
        self._holes = {one.id: (here((one.x_mm, one.y_mm)), one.diameter_mm) for one in face.holes}
        self._half = np.abs(self._outline).max(axis=0)
        self._open, self._wide = set(given.open_holes), given.pressed_mm
        self._letters = {row.letter: row.id for row in given.rows}

    @property
    def svg(self) -> str:
        """The face."""
        return self.marked({})

    @property
    def spots(self) -> tuple[tuple[str, str], ...]:
        """Each letter with what eye and wire find there."""
        return tuple(sorted((letter, self._felt(id)) for letter, id in self._letters.items()))

    def marked(self, marks: Mapping[str, str]) -> str:
        """The face with words at some letters, as in feedback."""
        self._scale = min(*(_ROOM_PX / (2 * self._half)), _MOST)
        self._room = _AWAY_PX + _SPOT_PX + EDGE_PX
        width, height = 2 * self._half * self._scale + 2 * self._room
        drawing = Drawing(width, height + 36, "A face, from the side that is coated", "")
        for ring in (self._outline, *self._cavities, *self._islands):
            drawing.add(_loop(self._px(ring)))
        for ring in self._cavities:
            x, y = self._px(ring).mean(axis=0)
            drawing.add(_words(x, y, "oil"))
        discs = [self._disc(id) for id in self._holes]
        drawing.add(*(fill for fill, _ in discs))
        wide = self._wide * self._scale
        for colour, more in ((style.INK_NOW, 2.0), (style.OKABE_ITO["sky"], 0.0)):
            drawing.add(*(_stroke(self._px(line), colour, wide + more) for line in self._lines))
        drawing.add(*(edge for _, edge in discs))
        drawing.add(*(self._letter(letter, marks.get(letter, "")) for letter in self._letters))
        told = "filled: closed at its end", "open: leads out under the bolt's head"
        drawing.add(*(_words(width / 2, height + 24 * k, line) for k, line in enumerate(told)))
        return drawing.text()

    def _px(self, points: np.ndarray) -> np.ndarray:
        x = (points[..., 0] + self._half[0]) * self._scale + self._room
        y = (self._half[1] - points[..., 1]) * self._scale + self._room
        return np.stack([x, y], axis=-1)

    def _disc(self, id: str) -> tuple[str, str]:
        """A hole, filled where it is closed, and its rim, which shows on the bead as well."""
        at, diameter = self._holes[id]
        (x, y), radius = self._px(at), diameter / 2 * self._scale
        ground = style.PAPER_NOW if id in self._open else style.INK_NOW
        spot = f'<circle cx="{x:.1f}" cy="{y:.1f}"'
        inner = f'{spot} r="{0.6 * radius:.1f}" style="fill:{ground}"/>'
        rim = f'fill="none" stroke="{style.INK_NOW}" stroke-width="{style.THICK_PX}"/>'
        return (
            f'{spot} r="{radius:.1f}" style="fill:{ground}"/>',
            f'{inner}{spot} r="{radius:.1f}" {rim}',
        )

    def _letter(self, letter: str, word: str) -> str:
        """A letter outside the face, with a line to its hole."""
        at, diameter = self._holes[self._letters[letter]]
        near = _nearest(self._outline, at)
        out = near - at
        out = out / max(float(np.hypot(*out)), 1e-9)
        foot, edge = self._px(at + out * diameter / 2), self._px(near)
        way = np.array([out[0], -out[1]])
        x, y = edge + way * (_AWAY_PX - _SPOT_PX)
        size = style.grown(style.SMALL_PX)
        stroke, width = (style.ACTION_NOW, 3) if word else (style.INK_NOW, 1.5)
        said = (
            f'<text class="tsf-t" x="{x:.1f}" y="{y - _SPOT_PX - 4:.1f}" text-anchor="middle">'
            f"{escape(word)}</text>"
        ) if word else ""  # fmt: skip
        return (
            f'<g class="tss-mark" data-spot="{letter}" data-mark="{letter}">'
            f'<path d="M{foot[0]:.1f} {foot[1]:.1f}L{x:.1f} {y:.1f}" fill="none" '
            f'stroke="{style.INK_NOW}" stroke-width="{style.THIN_PX}"/>'
            f'<circle class="tss-dot" cx="{x:.1f}" cy="{y:.1f}" r="0"/>'
            f'<circle class="tss-ring" cx="{x:.1f}" cy="{y:.1f}" r="{_SPOT_PX}" '
            f'fill="{style.PAPER_NOW}" stroke="{stroke}" stroke-width="{width}"/>'
            f'<text class="tss-letter" x="{x:.1f}" y="{y + 0.36 * style.SMALL_PX:.1f}" '
            f'text-anchor="middle" dominant-baseline="auto" fill="{style.INK_NOW}" '
            f'style="font:600 {size} {style.FONT}">{letter}</text>{said}</g>'
        )

    def _felt(self, id: str) -> str:
        (x, y), diameter = self._holes[id]
        hour = round((np.degrees(np.arctan2(x, y)) % 360) / 15) / 2 % 12 or 12
        said = f"{hour:g}".replace(".5", " and a half")
        end = "that leads out under its bolt's head" if id in self._open else "closed at its end"
        return f"a hole of {diameter:g} mm at {said} o'clock, {end}; {_PASSES[self._sides[id]]}"


def _nearest(outline: np.ndarray, at: np.ndarray) -> np.ndarray:
    """The place of a closed outline that lies nearest to another."""
    starts, ways = outline, np.roll(outline, -1, axis=0) - outline
    long = np.maximum((ways**2).sum(axis=1), 1e-9)
    along = np.clip(((at - starts) * ways).sum(axis=1) / long, 0, 1)
    spots = starts + along[:, None] * ways
    return np.asarray(spots[np.hypot(*(spots - at).T).argmin()])


def _loop(points: np.ndarray) -> str:
    way = " ".join(f"{x:.1f},{y:.1f}" for x, y in points)
    return (
        f'<polygon points="{way}" fill="none" stroke="{style.INK_NOW}" '
        f'stroke-width="{style.THICK_PX}" stroke-linejoin="round"/>'
    )


def _stroke(points: np.ndarray, colour: str, wide: float) -> str:
    way = " ".join(f"{x:.1f},{y:.1f}" for x, y in points)
    return (
        f'<polyline points="{way}" fill="none" stroke="{colour}" stroke-width="{wide:.1f}" '
        'stroke-linejoin="round" stroke-linecap="round"/>'
    )


def _words(x: float, y: float, text: str) -> str:
    return f'<text class="tsf-t" x="{x:.1f}" y="{y:.1f}" text-anchor="middle">{escape(text)}</text>'
