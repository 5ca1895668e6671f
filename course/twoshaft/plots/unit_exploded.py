"""A stage of the build, or the whole unit, taken apart along the ways in.

Drawn by the renderer of the section, each solid as it is drawn there; groups of parts that move
together carry a number (ISO 6433: references in a list beside the drawing).
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from html import escape
from typing import Any

from twoshaft.models.shape import Drawn, Exploded, Mover, ViewSection, exploded, section_of
from twoshaft.plots.unit_section import (
    PX_PER_MM,
    SECTION_CSS,
    Placed,
    axis_lines,
    hatch_patterns,
    hatching,
    parts_in_order,
    view_name,
    view_solids,
)
from twoshaft.units.kept import kept
from twoshaft.units.unit import Unit

_EDGE_PX, _HEAD_PX, _FOOT_PX, _BETWEEN_PX = 34.0, 72.0, 34.0, 52.0
_LETTER_PX = 10.0  # a letter of a view's name is not wider
_NAME_MM = 8.0  # from a view up to its name: a number may stand between
_FRAME = 1120.0, 470.0  # what a picture is shown in [px]: the way its views stand follows from it
_SHEET_PX = 1260.0  # as wide as a unit in section
_ON_AXIS_MM = 1.0
_WAYS = {
    "rear": "from the rear",
    "front": "from the front",
    "outside": "from outside, across the shafts",
    "by-hand": "by hand, bent round what it passes",
}
Box = tuple[float, float, float, float]


@dataclass(frozen=True)
class ExplodedPicture:
    """A picture of parts that can be moved apart and together.

    Attributes
    ----------
    width, height : float
        Its size [px].
    body : str
        SVG parts, everything together; groups that move carry ``data-move`` and ``data-view``.
    movers : tuple of dict
        For each mover its part, its number, its parent and its own shift in each view [px].
    parts : tuple of (id, name, words)
        Every part that is shown, those that move first, in their order.
    words : str
        What goes in after what, and from where.
    """

    width: float
    height: float
    body: str
    movers: tuple[dict[str, Any], ...]
    parts: tuple[tuple[str, str, str], ...]
    words: str


@kept()
def exploded_picture(unit: Unit, stage: str | None = None) -> ExplodedPicture | None:
    """Draw a stage together, with what the browser needs to take it apart.

    Parameters
    ----------
    unit : Unit
    stage : str, optional
        The stage; by default the whole unit.

    Returns
    -------
    ExplodedPicture or None
        None where no part has a form.
    """
    shown = exploded(unit, stage)
    if not shown.movers:
        return None
    seen = [one for view in section_of(unit).views if (one := _Seen(view, shown)).moves]
    views = [one.view for one in seen]
    placed, width, height = _layout(seen)
    hatches = hatching(section_of(unit))
    number = numbers(shown)
    body = []
    for one, at in zip(seen, placed, strict=True):
        z0, top, _, _ = one.bounds
        body.append(view_name(at, z0, top - _NAME_MM))
        body.append(f'<g class="tsu-traces">{"".join(one.traces(at))}</g>')
        body += view_solids(unit, at, hatches, one.opening)
        body += axis_lines(at, one.ends())
        body += one.numbers(at, number)
    foot = "To scale. Pale: in place already."
    body.append(f'<text class="tsu-t" x="{_EDGE_PX:.0f}" y="{height - 9:.0f}">{foot}</text>')
    movers = tuple(
        {
            "part": mover.part,
            "number": number[mover.part],
            "words": _told(unit, mover, number),
            "parent": mover.parent,
            "own": {v: [round(z * PX_PER_MM, 1), round(y * PX_PER_MM, 1)]
                    for v, z, y in mover.own_mm if v in {view.id for view in views}},
        }
        for mover in shown.movers
    )  # fmt: skip
    return ExplodedPicture(
        width, height, hatch_patterns() + "".join(body), movers, tuple(_parts(unit, shown, seen)),
        _words(unit, shown, number),
    )  # fmt: skip


def exploded_figure(unit: Unit, title: str, stage: str | None = None, apart: bool = True) -> str:
    """A stage taken apart, or together, as one SVG element; empty where no part has a form.

    Parameters
    ----------
    unit : Unit
    title : str
        What the picture shows, as a sentence.
    stage : str, optional
        The stage; by default the whole unit.
    apart : bool, optional
        Whether the parts are apart.
    """
    picture = exploded_picture(unit, stage)
    if picture is None:
        return ""
    body, shown = picture.body, exploded(unit, stage)
    if apart:
        for k in range(len(shown.movers)):
            for view in section_of(unit).views:
                z, y = (PX_PER_MM * mm for mm in shown.shift(k, view.id))
                moves = moving(k, view.id)
                body = body.replace(moves, f'{moves} transform="translate({z:.1f} {y:.1f})"')
    # apart it is for paper, where nothing else makes its numbers as large as they are drawn
    grown = max(1.0, picture.width / _SHEET_PX) if apart else 1.0
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" class="twoshaft-figure" role="img" '
        f'style="--ts-grown:{grown:.2f}" viewBox="0 0 {picture.width:.0f} {picture.height:.0f}" '
        f'width="{picture.width:.0f}" height="{picture.height:.0f}" aria-label="{escape(title)}">'
        f"<title>{escape(title)}</title><desc>{escape(picture.words)}</desc>"
        f"<style>{SECTION_CSS}</style>{body}</svg>"
    )


def moving(mover: int, view: str) -> str:
    """How a group says which mover it belongs to, and in which view it is drawn."""
    return f'data-move="{mover}" data-view="{view}"'


def numbers(shown: Exploded) -> dict[str, int]:
    """The number of each part that moves, in the order in which they go in."""
    parts = dict.fromkeys(mover.part for mover in shown.movers)
    return {part: k for k, part in enumerate(parts, 1)}


class _Seen:
    """A view with what of it is shown, and how far that goes."""

    def __init__(self, view: ViewSection, shown: Exploded) -> None:
        self.mover = {solid: k for k, one in enumerate(shown.movers) for solid in one.solids}
        some = [one for one in view.drawn if one.solid.id in shown.still | self.mover.keys()]
        self.view = ViewSection(view.id, view.name, view.axes, tuple(some))
        self.shown = shown

    @property
    def moves(self) -> bool:
        """Whether something that it shows moves in it."""
        return any(self._shift(one) != (0.0, 0.0) for one in self.view.drawn)

    def apart(self, one: Drawn) -> Box:
        """Where a solid stands when all is apart."""
        z, y = self._shift(one)
        z0, y0, z1, y1 = one.bounds
        return z0 + z, y0 + y, z1 + z, y1 + y

    def _shift(self, one: Drawn) -> tuple[float, float]:
        k = self.mover.get(one.solid.id)
        return (0.0, 0.0) if k is None else self.shown.shift(k, self.view.id)

    @property
    def bounds(self) -> Box:
        """What the view takes up, together and apart."""
        return _around(box for one in self.view.drawn for box in (one.bounds, self.apart(one)))

    def ends(self) -> dict[str, tuple[float, float]]:
        """How far each axis goes that carries something."""
        found = {}
        for axis, height in self.view.axes:
            boxes = [box for one in self.view.drawn if one.solid.axis == axis
                     and one.solid.kind != "shell" and _middle(one.bounds)[1] == height
                     for box in (one.bounds, self.apart(one))]  # fmt: skip
            if boxes:
                found[axis] = min(box[0] for box in boxes), max(box[2] for box in boxes)
        return found

    def opening(self, one: Drawn) -> str:
        """How the group of a solid begins: its part, and what it moves with."""
        part, k = one.solid.part, self.mover.get(one.solid.id)
        named = f' data-part="{part}"' if part else ""
        if k is None:
            return f'<g class="tsu-part tsu-bench"{named}'
        return f'<g class="tsu-part"{named} {moving(k, self.view.id)}'

    def _movers(self) -> list[tuple[int, Box]]:
        """Movers of this view, and what the solid in the middle of each takes up together."""
        found: dict[int, list[Box]] = {}
        for one in self.view.drawn:
            k = self.mover.get(one.solid.id)
            if k is not None and one.solid.part == self.shown.movers[k].part:
                found.setdefault(k, []).append(one.bounds)
        return [(k, _central(boxes)) for k, boxes in sorted(found.items())]

    def traces(self, placed: Placed) -> list[str]:
        """The way of each mover off its axis, from where its parent goes to where it goes."""
        made = []
        heights = [height for _, height in self.view.axes]
        for k, box in self._movers():
            parent = self.shown.movers[k].parent
            z0, y0 = (0.0, 0.0) if parent is None else self.shown.shift(parent, self.view.id)
            z1, y1 = self.shown.shift(k, self.view.id)
            z, y = _middle(box)
            on_axis = y0 == y1 and any(abs(y + y0 - h) < _ON_AXIS_MM for h in heights)
            if (z0, y0) == (z1, y1) or on_axis:
                continue
            (xa, ya), (xb, yb) = placed.px(z + z0, y + y0), placed.px(z + z1, y + y1)
            made.append(f'<path class="tsu-axis" d="M{xa:.1f} {ya:.1f}L{xb:.1f} {yb:.1f}"/>')
        return made

    def numbers(self, placed: Placed, number: dict[str, int]) -> list[str]:
        """The number of each mover above it."""
        made = []
        for k, box in self._movers():
            x, _ = placed.px(_middle(box)[0], 0)
            _, y = placed.px(0, box[1])
            part = self.shown.movers[k].part
            made.append(
                f'<g class="tsu-number" {moving(k, self.view.id)}><text class="tsu-t tsu-on" '
                f'text-anchor="middle" x="{x:.1f}" y="{y - 5:.1f}">{number[part]}</text></g>'
            )
        return made


def _around(boxes: Iterable[Box]) -> Box:
    z0, y0, z1, y1 = zip(*boxes, strict=True)
    return min(z0), min(y0), max(z1), max(y1)


def _central(boxes: list[Box]) -> Box:
    """What all take up, if one of them lies in the middle of it, else the first."""
    whole = _around(boxes)
    z, y = _middle(whole)
    held = any(box[0] <= z <= box[2] and box[1] <= y <= box[3] for box in boxes)
    return whole if held else boxes[0]


def _middle(box: Box) -> tuple[float, float]:
    return (box[0] + box[2]) / 2, (box[1] + box[3]) / 2


def _layout(seen: list[_Seen]) -> tuple[list[Placed], float, float]:
    """Views side by side or one below the other, whichever is shown larger."""
    sizes = [
        (max((b[2] - b[0]) * PX_PER_MM, len(one.view.name) * _LETTER_PX), (b[3] - b[1]) * PX_PER_MM)
        for one in seen
        for b in [one.bounds]
    ]
    found = []
    for beside in (True, False):
        x, y, wide, tall, corners = _EDGE_PX, _HEAD_PX, 0.0, 0.0, []
        for width, height in sizes:
            corners.append((x, y))
            wide, tall = max(wide, x + width), max(tall, y + height)
            x, y = (x + width + _BETWEEN_PX, y) if beside else (x, y + height + _BETWEEN_PX)
        wide, tall = wide + _EDGE_PX, tall + _FOOT_PX
        found.append((min(_FRAME[0] / wide, _FRAME[1] / tall), corners, wide, tall))
    _, corners, wide, tall = max(found, key=lambda one: one[0])
    placed = [
        Placed(one.view, x - one.bounds[0] * PX_PER_MM, y - one.bounds[1] * PX_PER_MM)
        for one, (x, y) in zip(seen, corners, strict=True)
    ]
    return placed, wide, tall


def _parts(unit: Unit, shown: Exploded, seen: list[_Seen]) -> list[tuple[str, str, str]]:
    """Parts that are shown with name and words: those that move in their order, then the rest."""
    number = numbers(shown)
    there = {one.solid.part for view in seen for one in view.view.drawn}
    place = {part: (name, where) for part, name, where in parts_in_order(unit)}
    way: dict[str, list[str]] = {}
    for mover in shown.movers:
        way.setdefault(mover.part, []).append(_WAYS[mover.way])
    moved = [
        (part, f"{k} {place[part][0]}", f"Goes in {_and(way[part])}. {place[part][1]}")
        for part, k in number.items()
        if part in there
    ]
    rest = [
        (part, name, f"{_rest(shown, seen, part)} {where}")
        for part, (name, where) in place.items()
        if part in there and part not in number
    ]
    return moved + rest


def _rest(shown: Exploded, seen: list[_Seen], part: str) -> str:
    still = any(
        one.solid.id in shown.still for view in seen for one in view.view.drawn
        if one.solid.part == part
    )  # fmt: skip
    return "In place already." if still else "Goes in with what it stands on."


def _and(words: list[str]) -> str:
    return " and ".join(dict.fromkeys(words))


def _told(unit: Unit, mover: Mover, number: dict[str, int]) -> str:
    return f"{number[mover.part]} {unit.part_by_id[mover.part].name}, {_WAYS[mover.way]}"


def _words(unit: Unit, shown: Exploded, number: dict[str, int]) -> str:
    """What goes in after what, and from where."""
    told = dict.fromkeys(_told(unit, mover, number) for mover in shown.movers)
    return f"In the order in which they go in: {'; '.join(told)}."
