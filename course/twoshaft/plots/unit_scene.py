"""A part of a unit from a learner's own side, with letters at what can be pointed at.

Drawn as the whole unit is (``unit_section``), but no part is named: groups carry the letters of
their learner, and the words say what a hand would feel.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from html import escape
from typing import Any, Protocol

from twoshaft.models.shape import (
    Drawn,
    Lie,
    Piece,
    Role,
    along_felt,
    around,
    form_felt,
    lie_of,
    lying,
    place_felt,
    section_of,
    view_of,
    way_felt,
)
from twoshaft.plots import style
from twoshaft.plots.unit_section import SECTION_CSS, box_name, hatch_patterns, hatching
from twoshaft.units.kept import kept
from twoshaft.units.unit import Unit

WIDE_PX, TALL_PX = 700.0, 560.0
_SCALES = (0.8, 6.0)  # px for a millimetre, least and most
_ROUND_MM, _LEAST_MM = 16.0, (90.0, 60.0)
_SLIM = 0.9  # width to height, at least
_MARGIN_PX, _LETTER_PX, _WORD_PX, _GROWN = 44.0, 13.0, 7.2, 1.5
_SEE_MM2 = 0.5  # less of a part than this is not seen

_CSS = (
    SECTION_CSS + f".tss-lead{{stroke:{style.INK_NOW};stroke-width:{style.THIN_PX};fill:none}}"
    f".tss-dot{{fill:{style.INK_NOW};stroke:{style.PAPER_NOW};stroke-width:1}}"
    f".tss-ring{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW};stroke-width:1.5}}"
    f".tss-letter{{font:600 {style.grown(style.TEXT_PX)} {style.FONT};fill:{style.INK_NOW};"
    "text-anchor:middle;dominant-baseline:central}"
    f".tss-frame{{fill:none;stroke:{style.ABSENT_NOW}}}"
    f".tss-part.tsu-absent>*>*{{stroke:{style.QUIET_NOW}}}"  # an answer hangs on it
    f".tss-right .tss-ring{{stroke:{style.ACTION_NOW};stroke-width:3}}"
    f".tss-put path{{stroke:{style.ACTION_NOW}}}"
    f".tss-right .tss-lead{{stroke:{style.ACTION_NOW};stroke-width:2}}"
)


class SceneGiven(Protocol):
    """A picture as a learner is given it: ``readings.scenes.Scene`` says what each is."""

    @property
    def view(self) -> str:
        """The section that it is cut from."""

    @property
    def mirrored(self) -> bool:
        """Whether the rear lies on the left."""

    @property
    def upside(self) -> bool:
        """Whether it is seen from below."""

    @property
    def lies(self) -> Sequence[Any]:
        """What stands there, and how."""

    @property
    def spots(self) -> Sequence[Any]:
        """Letters, and the parts at them."""


class NearGiven(Protocol):
    """A picture and what of it is shown: ``readings.scenes.Near`` says what each is."""

    @property
    def scene(self) -> SceneGiven:
        """What stands there."""

    @property
    def window_mm(self) -> Sequence[float]:
        """What of the view is shown."""


class LookGiven(Protocol):
    """A picture to choose: ``readings.scenes.Look`` says what each is."""

    @property
    def letter(self) -> str:
        """Its letter."""

    @property
    def near(self) -> NearGiven:
        """The picture."""

    @property
    def told(self) -> Sequence[str]:
        """What is described."""


class HandGiven(Protocol):
    """Parts in hand and where they can go: ``readings.scenes.Hand`` says what each is."""

    @property
    def near(self) -> NearGiven:
        """The unit without them."""

    @property
    def places(self) -> Sequence[OpenGiven]:
        """Where they can be put."""

    @property
    def parts(self) -> Sequence[Any]:
        """Each as it is held."""

    @property
    def lines(self) -> Sequence[Any]:
        """The same, by id and name."""


class OpenGiven(Protocol):
    """A letter where nothing stands: ``readings.scenes.OpenPlace`` says what each is."""

    @property
    def letter(self) -> str:
        """The letter."""

    @property
    def z_mm(self) -> float:
        """Where it lies along the shafts."""

    @property
    def height_mm(self) -> float:
        """Where it lies across, in the view."""


@dataclass(frozen=True)
class _Frame:
    """Where a part of a section stands in the picture, and from which side it is seen."""

    window: tuple[float, float, float, float]
    scale: float
    mirrored: bool
    upside: bool

    @property
    def size(self) -> tuple[float, float]:
        """Width and height of the window [px]."""
        z0, y0, z1, y1 = self.window
        return (z1 - z0) * self.scale, (y1 - y0) * self.scale

    def px(self, z: float, y: float) -> tuple[float, float]:
        """A place of the section in pixels of the window."""
        z0, y0, z1, y1 = self.window
        along = z1 - z if self.mirrored else z - z0
        down = y1 - y if self.upside else y - y0
        return along * self.scale, down * self.scale


class ScenePicture:
    """A picture that is drawn when it is asked for.

    Parameters
    ----------
    unit : Unit
    given : Scene
        What stands there, and from which side it is seen.
    open_places : sequence of OpenPlace
        Letters where nothing stands.
    window_mm : sequence of float
        What of the view is shown; left out, it is cut out round what can be pointed at.
    """

    def __init__(
        self,
        unit: Unit,
        given: SceneGiven,
        open_places: Sequence[OpenGiven] = (),
        window_mm: Sequence[float] = (),
    ) -> None:
        self._unit, self._given, self._window = unit, given, tuple(window_mm)
        self._open = {one.letter: (one.z_mm, one.height_mm) for one in open_places}

    @cached_property
    def spots(self) -> tuple[tuple[str, str], ...]:
        """Each letter with what a hand would feel there, and where in the picture it lies."""
        felt = {spot.id: self._felt(spot.text) for spot in self._given.spots}
        felt |= {letter: self._felt_open(at) for letter, at in self._open.items()}
        return tuple(sorted(felt.items()) if self._open else felt.items())

    @cached_property
    def svg(self) -> str:
        """The picture."""
        return self.marked({})

    def with_pieces(self, pieces: Mapping[str, tuple[str, str, tuple[float, float]]]) -> str:
        """The picture with parts put in, as in feedback.

        Parameters
        ----------
        pieces : mapping of str to (str, str, (float, float))
            By letter: the name of the part, its SVG about its own middle, and where that lies.
        """
        put = "".join(
            f'<g class="tss-put" transform="translate({x} {y})">{svg}</g>'
            for _, svg, (x, y) in pieces.values()
        )
        drawn = self.marked({letter: name for letter, (name, _, _) in pieces.items()})
        return drawn.removesuffix("</svg>") + put + "</svg>"

    def pieces(self, part: str, lie: Lie) -> tuple[tuple[str, str], tuple[str, str]]:
        """A part in hand, as it lies and turned: what a hand would feel, and SVG about its middle.

        Parameters
        ----------
        part : str
        lie : Lie
            How it lies at first.
        """
        made = []
        view, left = self._given.view, "rear" if self._given.mirrored else "front"
        home, hatches = lie_of(self._unit, view, part), hatching(section_of(self._unit))
        other = {"front": "rear", "rear": "front"}.get(lie.heavy, "")
        for heavy in (lie.heavy, other):
            own = lying(self._unit, view, [replace(lie, heavy=heavy)])[part]
            z0, y0, z1, y1 = around(own)
            at = self._frame.px((z0 + z1) / 2, (y0 + y1) / 2)

            def px(z: float, y: float, at: tuple[float, float] = at) -> tuple[float, float]:
                x, down = self._frame.px(z, y)
                return x - at[0], down - at[1]

            svg = "".join(draw_piece(piece, hatches.get(one.solid.id), px)
                          for one in own for piece in one.pieces
                          if piece.role is not Role.BEHIND)  # fmt: skip
            half = max(z1 - z0, y1 - y0) * self._frame.scale / 2 + 6
            felt = [form_felt(self._unit, own), way_felt(self._unit, own, heavy, home.heavy, left)]
            made.append((", ".join(filter(None, felt)), f'<g data-half="{half:.1f}">{svg}</g>'))
        return made[0], made[1]

    def marked(self, marks: Mapping[str, str]) -> str:
        """The picture with words at some letters, as in feedback: *here*, *yours*.

        Parameters
        ----------
        marks : mapping of str to str
            Words by letter.
        """
        wide, tall = self._frame.size
        width, height = wide + 2, tall + 2 * _MARGIN_PX
        title = "A part of the unit in section"
        # words are for feedback, which is printed in columns: they have to be read there too
        grown = f'style="--ts-grown:{_GROWN:g}" ' if marks else ""
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" class="twoshaft-figure" role="img" {grown}'
            f'viewBox="0 0 {width:.0f} {height:.0f}" width="{width:.0f}" height="{height:.0f}" '
            f'aria-label="{title}"><style>{_CSS}</style>{hatch_patterns()}'
            f'<svg x="1" y="{_MARGIN_PX:.0f}" width="{wide:.1f}" height="{tall:.1f}">'
            f"{''.join(self._bodies())}</svg>"
            f'<rect class="tss-frame" x="1" y="{_MARGIN_PX:.0f}" width="{wide:.1f}" '
            f'height="{tall:.1f}"/>{"".join(self._letters(marks))}</svg>'
        )

    def places(self) -> dict[str, tuple[float, float]]:
        """Where the middle of each part with a letter belongs, in pixels of the picture."""
        found = {}
        for spot in self._given.spots:
            z0, y0, z1, y1 = around(self._outlined(spot.text))
            x, y = self._frame.px((z0 + z1) / 2, (y0 + y1) / 2)
            found[spot.id] = (round(x + 1, 1), round(y + _MARGIN_PX, 1))
        return found

    def middles(self) -> dict[str, tuple[float, float]]:
        """Where a ring put at each open place has its middle, in pixels of the picture."""
        axes = [height for _, height in view_of(self._unit, self._given.view).axes]
        found = {}
        for letter, (z, height) in self._open.items():
            x, y = self._frame.px(z, min(axes, key=lambda one: abs(one - height)))
            found[letter] = (round(x + 1, 1), round(y + _MARGIN_PX, 1))
        return found

    @cached_property
    def _there(self) -> dict[str, tuple[Drawn, ...]]:
        return lying(self._unit, self._given.view, [_lie(one) for one in self._given.lies])

    @cached_property
    def _letter(self) -> dict[str, str]:
        return {spot.text: spot.id for spot in self._given.spots}

    @cached_property
    def _rows(self) -> dict[str, int]:
        axes = [axis for axis, _ in view_of(self._unit, self._given.view).axes]
        return {axis: k for k, axis in enumerate(axes[::-1] if self._given.upside else axes, 1)}

    @cached_property
    def _frame(self) -> _Frame:
        some = [one for spot in self._given.spots for one in self._outlined(spot.text)]
        whole = view_of(self._unit, self._given.view).bounds
        z0, y0, z1, y1 = self._window or (around(some) if some else whole)
        y0, y1 = _span(y0, y1, _LEAST_MM[1], whole[1], whole[3])
        z0, z1 = _span(z0, z1, max(_LEAST_MM[0], _SLIM * (y1 - y0)), whole[0], whole[2])
        scale = min(WIDE_PX / (z1 - z0), TALL_PX / (y1 - y0))
        scale = min(max(scale, _SCALES[0]), _SCALES[1])
        return _Frame((z0, y0, z1, y1), scale, self._given.mirrored, self._given.upside)

    @kept()
    def _outlined(self, part: str) -> tuple[Drawn, ...]:
        """A part as it lies; where it belongs if it does not stand there."""
        given = self._given_lie(part)
        lie = _lie(given) if given else lie_of(self._unit, self._given.view, part)
        return lying(self._unit, self._given.view, [lie])[part]

    def _given_lie(self, part: str) -> Any:
        return next((one for one in self._given.lies if one.part == part), None)

    def _felt(self, part: str) -> str:
        own, view = self._outlined(part), self._given.view
        home = lie_of(self._unit, view, part)
        lie = self._given_lie(part)
        left = "rear" if self._given.mirrored else "front"
        z0, _, z1, _ = self._frame.window
        where = place_felt(own, self._rows, (z0, z1), self._given.mirrored)
        if lie is None:
            return f"an empty place for {form_felt(self._unit, own)}, {where}"
        way = way_felt(self._unit, own, lie.heavy, home.heavy, left)
        return ", ".join(filter(None, (form_felt(self._unit, own), way, where)))

    def _felt_open(self, at: tuple[float, float]) -> str:
        axes = view_of(self._unit, self._given.view).axes
        axis = min(axes, key=lambda one: abs(one[1] - at[1]))[0]
        z0, _, z1, _ = self._frame.window
        where = along_felt(self._rows[axis], at[0], (z0, z1), self._given.mirrored)
        if not self._given.spots:  # seats side by side
            along = z1 - at[0] if self._given.mirrored else at[0] - z0
            where += f", {along:.0f} mm from its left edge"
        return f"nothing that a finger meets, {where}"

    @cached_property
    def _order(self) -> list[tuple[str, Drawn, bool]]:
        """What is drawn, from back to front: the part, its solid, and whether it stands there."""
        layer = {
            one.solid.id: k for k, one in enumerate(view_of(self._unit, self._given.view).drawn)
        }
        drawn = [(part, one, True) for part, own in self._there.items() for one in own]
        for spot in self._given.spots:
            if spot.text not in self._there:
                drawn += [(spot.text, one, False) for one in self._outlined(spot.text)]
        drawn = [one for one in drawn if _meets(one[1].bounds, self._frame.window)]
        return sorted(drawn, key=lambda one: (not one[2], layer[one[1].solid.id]))

    def _bodies(self) -> list[str]:
        hatches = hatching(section_of(self._unit))
        made, drawn = [], self._order
        behind = [
            (part, replace(one, pieces=tuple(p for p in one.pieces if p.role is Role.BEHIND)))
            for part, one, there in drawn
            if there and any(p.role is Role.BEHIND for p in one.pieces)
        ]
        for part, one in sorted(behind, key=lambda pair: pair[1].bounds[1] - pair[1].bounds[3]):
            made.append(self._group(part, "", self._pieces(one.pieces, None)))
        for part, one, there in drawn:
            pieces = [p for p in one.pieces if p.role is not Role.BEHIND]
            look = "" if there else " tsu-absent"
            inside = self._pieces(pieces, hatches.get(one.solid.id))
            if one.solid.kind == "box":  # nothing of its form is known: its name is all there is
                inside += box_name(one, self._frame.px, self._frame.scale)
            inside = f"<g>{inside}</g>"
            made.append(self._group(part, look, inside))
        return made + self._axes()

    def _axes(self) -> list[str]:
        """The line of each axis along which something lies."""
        made = []
        for axis, height in view_of(self._unit, self._given.view).axes:
            along = [
                one.bounds
                for _, one, _ in self._order
                if one.solid.axis == axis and one.solid.kind not in ("shell", "box")
            ]
            if along:
                low, high = min(one[0] for one in along), max(one[2] for one in along)
                (x0, y), (x1, _) = self._frame.px(low - 5, height), self._frame.px(high + 5, height)
                made.append(f'<path class="tsu-axis" d="M{x0:.1f} {y:.1f}H{x1:.1f}"/>')
        return made

    def _group(self, part: str, look: str, inside: str) -> str:
        letter = self._letter.get(part)
        spot = f' data-spot="{letter}"' if letter else ""
        return f'<g class="tss-part{look}"{spot}>{inside}</g>'

    def _pieces(self, pieces: Iterable[Piece], hatch: str | None) -> str:
        return "".join(draw_piece(piece, hatch, self._frame.px) for piece in pieces)

    def _letters(self, marks: Mapping[str, str]) -> list[str]:
        """Each letter in a ring above or below the picture, with a line to its part."""
        anchors = {spot.id: self._anchor(spot.text) for spot in self._given.spots}
        anchors |= {letter: self._frame.px(*at) for letter, at in self._open.items()}
        _, tall = self._frame.size
        above = {k: at for k, at in anchors.items() if at[1] < tall / 2}
        below = {k: at for k, at in anchors.items() if k not in above}
        made = []
        for some, y in ((above, _MARGIN_PX / 2), (below, tall + 1.5 * _MARGIN_PX)):
            for letter, x in _apart(some, self._frame.size[0], marks).items():
                ax, ay = some[letter][0] + 1, some[letter][1] + _MARGIN_PX
                edge = y + (_LETTER_PX if y < ay else -_LETTER_PX)
                word = escape(marks.get(letter, ""))
                beside = (
                    f'<text class="tsu-t tsu-on" x="{x + _LETTER_PX + 4:.1f}" '
                    f'y="{y + 4 * _GROWN:.1f}">'
                    f"{word}</text>"
                ) if word else ""  # fmt: skip
                made.append(
                    f'<g class="tss-mark{" tss-right" if word else ""}" data-mark="{letter}">'
                    f'<path class="tss-lead" d="M{x:.1f} {edge:.1f}L{ax:.1f} {ay:.1f}"/>'
                    f'<circle class="tss-dot" cx="{ax:.1f}" cy="{ay:.1f}" r="3"/>'
                    f'<circle class="tss-ring" cx="{x:.1f}" cy="{y:.1f}" r="{_LETTER_PX:g}"/>'
                    f'<text class="tss-letter" x="{x:.1f}" y="{y:.1f}">{letter}</text>{beside}</g>'
                )
        return made

    def _anchor(self, part: str) -> tuple[float, float]:
        """A place in the part that nothing covers, in pixels of the window."""
        from shapely import box, union_all

        drawn, own = self._order, []
        for k, (one, solid, _) in enumerate(drawn):
            if one == part:
                over = [other.area for of, other, _ in drawn[k + 1 :]
                        if of != part and _meets(other.bounds, solid.bounds)]  # fmt: skip
                own.append(solid.area.difference(union_all(over)) if over else solid.area)
        seen = union_all(own).intersection(box(*self._frame.window))
        if part not in self._there:  # beside what stands there, where there is room
            bare = seen.difference(union_all([other.area for _, other, there in drawn if there]))
            seen = bare if bare.area >= _SEE_MM2 else seen
        pieces = list(getattr(seen, "geoms", [seen]))
        best = max(pieces, key=lambda one: one.area, default=seen)
        if best.area < _SEE_MM2:  # a coil, or all of it is covered
            z0, y0, z1, y1 = around(self._outlined(part))
            return self._frame.px((z0 + z1) / 2, (y0 + y1) / 2)
        inner = best.buffer(-0.4)
        point = (best if inner.is_empty else inner).representative_point()
        return self._frame.px(point.x, point.y)


class LookPicture(ScenePicture):
    """A picture to choose: no letter in it, and what a hand would feel of some parts.

    Parameters
    ----------
    unit : Unit
    look : Look
    """

    def __init__(self, unit: Unit, look: LookGiven) -> None:
        super().__init__(unit, look.near.scene, (), look.near.window_mm)
        self._told = look.told

    @cached_property
    def spots(self) -> tuple[tuple[str, str], ...]:
        """What a hand would feel of each part."""
        there = {one.part for one in self._given.lies}
        return tuple(("", self._felt(part)) for part in self._told if part in there)


def near_picture(unit: Unit, near: NearGiven) -> ScenePicture:
    """The unit round some parts, with letters."""
    return ScenePicture(unit, near.scene, (), near.window_mm)


def look_pictures(unit: Unit, looks: Sequence[LookGiven]) -> dict[str, LookPicture]:
    """Pictures to choose from, by letter."""
    return {look.letter: LookPicture(unit, look) for look in looks}


def put_in(unit: Unit, hand: HandGiven) -> dict[str, Any]:
    """What a field asks in which parts are put into the unit: ``sheet.put(…, **put_in(…))``."""
    picture = ScenePicture(unit, hand.near.scene, hand.places, hand.near.window_mm)
    pieces = {one.part: picture.pieces(one.part, _lie(one)) for one in hand.parts}
    return {"lines": hand.lines, "picture": picture, "pieces": pieces, "at": picture.middles()}


def draw_piece(piece: Piece, hatch: str | None, px: Any) -> str:
    """A piece of a section as an SVG path, its places given by ``px``."""
    path = ""
    for line in (piece.outline, *piece.holes):
        points = "L".join(f"{x:.1f} {y:.1f}" for x, y in (px(*point) for point in line))
        path += f"M{points}{'Z' if piece.closed else ''}"
    fill = f' fill="url(#{hatch})" fill-rule="evenodd"' if piece.role is Role.CUT else ""
    return f'<path class="tsu-{piece.role.value}"{fill} d="{path}"/>'


def _lie(one: Any) -> Lie:
    return Lie(one.part, one.heavy, (one.front_mm, one.rear_mm), one.reach_mm)


def _meets(one: Sequence[float], other: Sequence[float]) -> bool:
    return all(one[k] <= other[k + 2] and other[k] <= one[k + 2] for k in (0, 1))


def _span(low: float, high: float, least: float, first: float, last: float) -> tuple[float, float]:
    """A span with room round it, at least so long where the view is, and inside the view."""
    low, high = low - _ROUND_MM, high + _ROUND_MM
    short = max(0.0, least - (high - low)) / 2
    low, high, first, last = low - short, high + short, first - 2, last + 2
    low, high = low - max(0.0, high - last), high + max(0.0, first - low)
    return max(low, first), min(high, last)


def _apart(
    some: Mapping[str, tuple[float, float]], wide: float, words: Mapping[str, str]
) -> dict[str, float]:
    """Places for letters in a row, near their parts, none on another one or its words."""
    letters = sorted(some, key=lambda k: some[k][0])
    width = _GROWN * _WORD_PX
    takes = [2 * _LETTER_PX + 6 + width * len(words.get(letter, "")) for letter in letters]
    xs: list[float] = []
    for k, letter in enumerate(letters):
        xs.append(max(some[letter][0], xs[-1] + takes[k - 1] if xs else _LETTER_PX + 2))
    last = wide + _LETTER_PX + 4
    for k in range(len(xs) - 1, -1, -1):
        xs[k] = last = min(xs[k], last - takes[k])
    return dict(zip(letters, xs, strict=True))
