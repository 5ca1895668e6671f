"""A part under the lamp: a bearing's track, a gear's tooth, the points of dog teeth.

Seen from above in one light. Marks come from ``models.inspect``; a scale in millimetres stands in
each picture. No picture names its damage.
"""

from __future__ import annotations

import math
import random
from collections.abc import Callable, Iterable, Sequence
from functools import cached_property
from html import escape

from twoshaft.models.inspect.damage import (
    LONG_MM,
    PITCH_MM,
    TOOTH_MM,
    TRACK_MM,
    WIDE_MM,
    MarkLike,
    Shape,
    felt,
)
from twoshaft.plots import style
from twoshaft.plots.driven_section import Sketch

PX_PER_MM = 8.0
_BELOW_PX = 30.0
_DARK = f"color-mix(in srgb, {style.INK_NOW} 78%, {style.PAPER_NOW})"
_MID = f"color-mix(in srgb, {style.INK_NOW} 42%, {style.PAPER_NOW})"
_METAL = f"color-mix(in srgb, {style.INK_NOW} 14%, {style.PAPER_NOW})"
_BRIGHT = f"color-mix(in srgb, {style.INK_NOW} 4%, {style.PAPER_NOW})"
_RUST = f"color-mix(in srgb, {style.OKABE_ITO['vermilion']} 55%, {_MID})"
_CSS = (
    f".tsd-metal{{fill:{_METAL};stroke:{style.INK_NOW}}}.tsd-bright{{fill:{_BRIGHT}}}"
    f".tsd-dull{{fill:{_MID}}}.tsd-deep{{fill:{_DARK}}}.tsd-rust{{fill:{_RUST};opacity:.55}}"
    f".tsd-line{{stroke:{_DARK};fill:none;stroke-width:1.2}}"
    f".tsd-edge{{stroke:{_DARK};fill:none;stroke-width:3}}"
    f".tsd-fine{{stroke:{_MID};fill:none;stroke-width:.8}}"
    f".tsd-lit{{stroke:{style.PAPER_NOW};fill:none;stroke-width:1.6}}"
    f".tsd-pitch{{stroke:{style.INK_NOW};stroke-width:1;stroke-dasharray:14 3 3 3}}"
    f".tsd-text{{font:{style.grown(style.SMALL_PX)} {style.FONT};fill:{style.INK_NOW}}}"
    f".tsd-ruler{{stroke:{style.INK_NOW};stroke-width:1}}"
)
TOOTH_WIDE_MM, POINT_MM, TEETH = 5.0, 2.6, 4
"""Base of a dog tooth, height of its point above its sides, how many are drawn."""
DOG_PX = 34.0
MARKS_PER_MM, SCALE_MARKS = 5, 13
_TALL_MM = 3.2


class Lit:
    """A picture to choose, drawn when it is asked for.

    Parameters
    ----------
    feels : str
        What a hand and a lens find.
    draw : callable
        Gives the picture as SVG.
    """

    def __init__(self, feels: str, draw: Callable[[], str]) -> None:
        self.feels, self._draw = feels, draw

    @cached_property
    def svg(self) -> str:
        """The picture as one SVG element."""
        return self._draw()

    @property
    def spots(self) -> tuple[tuple[str, str], ...]:
        """One place: the whole picture."""
        return (("", self.feels),)


def race_picture(marks: Sequence[MarkLike]) -> Lit:
    """A window of a bearing's track, unrolled; balls ran from left to right.

    Parameters
    ----------
    marks : sequence of Mark

    Returns
    -------
    Lit
    """
    return _whole(marks, _race)


def flank_picture(marks: Sequence[MarkLike]) -> Lit:
    """A gear's tooth seen on its flank: tip above, root below, pitch line between.

    Parameters
    ----------
    marks : sequence of Mark

    Returns
    -------
    Lit
    """
    return _whole(marks, _flank)


def _race(marks: Sequence[MarkLike]) -> str:
    dull = any(one.shape == Shape.GRIT for one in marks)
    low, high = (v * PX_PER_MM for v in TRACK_MM)
    track, wide = "tsd-dull" if dull else "tsd-bright", LONG_MM * PX_PER_MM
    parts = [f'<rect class="{track}" x="0" y="{low}" width="{wide}" height="{high - low}"/>']
    if dull:
        parts += [line(f"M0 {y}H{wide}", "tsd-line") for y in (low, high)]
    return "".join([*parts, *map(_mark, marks)])


def _flank(marks: Sequence[MarkLike]) -> str:
    root, tip = ((WIDE_MM - v) * PX_PER_MM for v in TOOTH_MM)
    pitch, wide = (WIDE_MM - PITCH_MM) * PX_PER_MM, LONG_MM * PX_PER_MM
    return "".join((
        f'<rect class="tsd-bright" x="0" y="{tip}" width="{wide}" height="{root - tip}"/>',
        line(f"M0 {root}H{wide}M0 {tip}H{wide}", "tsd-line"),
        *(_mark(one, turned=True) for one in marks),
        line(f"M0 {pitch}H{wide}", "tsd-pitch"),
        text(6, tip - 4, "tip"), text(6, root + 18, "root"),
    ))  # fmt: skip


def _whole(marks: Sequence[MarkLike], draw: Callable[[Sequence[MarkLike]], str]) -> Lit:
    words = felt(marks)
    return Lit(words, lambda: _framed(draw(marks), words))


def _framed(inside: str, words: str) -> str:
    """A window with its scale."""
    wide, tall = LONG_MM * PX_PER_MM, WIDE_MM * PX_PER_MM
    ticks = "".join(
        f"M{k * PX_PER_MM:g} {tall}v{10 if k % 10 == 0 else 7 if k % 5 == 0 else 4}"
        for k in range(int(LONG_MM) + 1)
    )
    numbers = millimetres(LONG_MM, 10, PX_PER_MM, tall + 24)
    body = f'<rect class="tsd-metal" x="0" y="0" width="{wide}" height="{tall}"/>{inside}'
    return drawn(wide, tall + _BELOW_PX, words, body + line(ticks, "tsd-ruler") + numbers)


def dog_picture(
    flats_mm: Sequence[float], chip_mm: Sequence[float], begins_mm: Sequence[float]
) -> Lit:
    """Points of dog teeth from the side, each with a scale along its flat.

    Parameters
    ----------
    flats_mm : sequence of float
        Width of the flat at the point of each tooth [mm].
    chip_mm : sequence of float
        How far a corner is broken off along the side of the point [mm]; 0 for none.
    begins_mm : sequence of float
        Where on its scale each flat begins [mm].

    Returns
    -------
    Lit
        Its words tell marks of the scale, no width.
    """
    wide, tall = TEETH * TOOTH_WIDE_MM * DOG_PX, (_TALL_MM + 2.4) * DOG_PX
    body, told = [], []
    for k, (flat, chip, begins) in enumerate(zip(flats_mm, chip_mm, begins_mm, strict=True)):
        left = k * TOOTH_WIDE_MM
        body.append(_tooth(left, flat, chip))
        body.append(_scale(left + TOOTH_WIDE_MM / 2 - flat / 2 - begins, _top(flat)))
        ends = ((begins, "begins"), ((begins + flat), "ends"))
        told.append(
            f"tooth {k + 1}: the flat "
            + " and ".join(f"{word} at mark {mm * MARKS_PER_MM:.1f}" for mm, word in ends)
            + (", and a corner beside it is broken off" if chip else "")
        )
    words = f"{'; '.join(told)}. {MARKS_PER_MM} marks of the scale are a millimetre"
    inside = "".join(body)
    name = "Points of dog teeth beside a scale"
    return Lit(words, lambda: drawn(wide, tall, name, inside, least=wide / 2))


def _top(flat: float) -> float:
    """Height of the flat below the picture's top [mm]."""
    half = TOOTH_WIDE_MM / 2 - 0.6
    return 2.0 + POINT_MM * (flat / 2) / half


def _tooth(left: float, flat: float, chip: float) -> str:
    half, mid, top = TOOTH_WIDE_MM / 2 - 0.6, left + TOOTH_WIDE_MM / 2, _top(flat)
    low = 2.0 + POINT_MM
    right = [(mid + flat / 2, top)]
    if chip:
        slope = POINT_MM / half
        end = min(chip, half - flat / 2 - 0.3)
        right = [
            (mid + flat / 2, top),
            (mid + flat / 2 + 0.1 * end, top + 0.75 * end * slope + 0.5),
            (mid + flat / 2 + 0.35 * end, top + 0.7 * end * slope + 0.9),
            (mid + flat / 2 + 0.6 * end, top + end * slope + 0.8),
            (mid + flat / 2 + end, top + end * slope),
        ]
    points = [(mid - half, _TALL_MM + 2.2), (mid - half, low), (mid - flat / 2, top), *right,
              (mid + half, low), (mid + half, _TALL_MM + 2.2)]  # fmt: skip
    outline = " ".join(f"{x * DOG_PX:.1f},{y * DOG_PX:.1f}" for x, y in points)
    broken = ""
    if chip:
        grains = random.Random(int(100 * chip))
        x0, y0 = right[1]
        broken = "".join(
            f'<circle class="tsd-deep" cx="{(x0 + grains.uniform(0, 0.5) * chip) * DOG_PX:.1f}" '
            f'cy="{(y0 + grains.uniform(0.3, 0.9)) * DOG_PX:.1f}" r="1.6"/>'
            for _ in range(16)
        )
    lit = line(
        f"M{(mid - flat / 2) * DOG_PX:.1f} {top * DOG_PX:.1f}h{flat * DOG_PX:.1f}", "tsd-edge"
    )
    return f'<polygon class="tsd-metal" points="{outline}"/>{broken}{lit}'


def _scale(start: float, top: float) -> str:
    """A scale above a tooth, zero at its left end."""
    y = (top - 0.15) * DOG_PX
    ticks, numbers = "", ""
    for k in range(SCALE_MARKS + 1):
        x = (start + k / MARKS_PER_MM) * DOG_PX
        ticks += f"M{x:.1f} {y:.1f}v{-14 if k % MARKS_PER_MM == 0 else -7}"
        if k % MARKS_PER_MM == 0:
            numbers += text(x - 4, y - 17, f"{k // MARKS_PER_MM}")
    return line(ticks, "tsd-ruler") + numbers


def _mark(mark: MarkLike, turned: bool = False) -> str:
    y = WIDE_MM - mark.y_mm if turned else mark.y_mm
    return _DRAWN[Shape(mark.shape)](
        mark.x_mm * PX_PER_MM, y * PX_PER_MM, mark.long_mm * PX_PER_MM, mark.wide_mm * PX_PER_MM
    )


def _rng(x: float, y: float) -> random.Random:
    return random.Random(int(10 * x) * 1009 + int(10 * y))


def _ragged(x: float, y: float, a: float, b: float, corners: int, least: float) -> str:
    rng = _rng(x, y)
    points = []
    for k in range(corners):
        turn = 2 * math.pi * k / corners
        # The ends of the long axis are kept: its length is read on the scale.
        part = 1.0 if k in (0, corners // 2) else rng.uniform(least, 1)
        points.append(f"{x + part * a / 2 * math.cos(turn):.1f},"
                      f"{y + part * b / 2 * math.sin(turn):.1f}")  # fmt: skip
    return " ".join(points)


def _crater(x: float, y: float, a: float, b: float) -> str:
    inner = "".join(
        f'<ellipse class="tsd-fine" cx="{x:.1f}" cy="{y:.1f}" rx="{a * k / 2:.1f}" '
        f'ry="{b * k / 2:.1f}"/>'
        for k in (0.3, 0.55)
    )
    crack = line(f"M{x + a / 2:.1f} {y:.1f}l5 -5l3 3M{x - a / 4:.1f} {y - b / 2:.1f}l-4 -6",
                  "tsd-line")  # fmt: skip
    return f'<polygon class="tsd-deep" points="{_ragged(x, y, a, b, 14, 0.6)}"/>{inner}{crack}'


def _smear(x: float, y: float, a: float, b: float) -> str:
    rng = _rng(x, y)
    lines = "".join(
        f"M{x - a / 2 + rng.uniform(0, a / 3):.1f} {y + b * rng.uniform(-0.5, 0.5):.1f}"
        f"h{a * rng.uniform(0.3, 0.65):.1f}"
        for _ in range(14)
    )
    return f'<polygon class="tsd-dull" points="{_ragged(x, y, a, b, 18, 0.4)}"/>' + line(
        lines, "tsd-line"
    )


def _grit(x: float, y: float, a: float, b: float) -> str:
    return line(f"M{x - a / 2:.1f} {y:.1f}h{a:.1f}", "tsd-line")


def _bar(x: float, y: float, a: float, b: float) -> str:
    return f'<rect class="tsd-dull" x="{x - a / 2:.1f}" y="{y - b / 2:.1f}" width="{a:.1f}" ' \
           f'height="{b:.1f}"/>'  # fmt: skip


def _stain(x: float, y: float, a: float, b: float) -> str:
    rng = _rng(x, y)
    holes = "".join(
        f'<circle class="tsd-deep" cx="{x + a * rng.uniform(-0.35, 0.35):.1f}" '
        f'cy="{y + b * rng.uniform(-0.35, 0.35):.1f}" r="{rng.uniform(0.8, 1.8):.1f}"/>'
        for _ in range(16)
    )
    return f'<polygon class="tsd-dull" points="{_ragged(x, y, a, b, 11, 0.45)}"/>{holes}'


def _hollow(x: float, y: float, a: float, b: float) -> str:
    halo = f'<ellipse class="tsd-rust" cx="{x:.1f}" cy="{y:.1f}" rx="{a * 0.95:.1f}" ' \
           f'ry="{b * 0.68:.1f}"/>'  # fmt: skip
    return f'{halo}<ellipse class="tsd-dull" cx="{x:.1f}" cy="{y:.1f}" rx="{a / 2:.1f}" ' \
           f'ry="{b / 2:.1f}"/>'  # fmt: skip


def _dent(x: float, y: float, a: float, b: float) -> str:
    rim = "".join(
        f'<ellipse class="{kind}" cx="{x:.1f}" cy="{y:.1f}" rx="{a / 2 + more:.1f}" '
        f'ry="{b / 2 + more:.1f}"/>'
        for kind, more in (("tsd-line", 2.6), ("tsd-lit", 1.2), ("tsd-line", 0.0))
    )
    shade = f'<ellipse class="tsd-metal" stroke="none" cx="{x:.1f}" cy="{y:.1f}" ' \
            f'rx="{a / 2:.1f}" ry="{b / 2:.1f}"/>'  # fmt: skip
    finish = line("".join(f"M{x - a / 3:.1f} {y + b * k:.1f}h{2 * a / 3:.1f}"
                           for k in (-0.25, -0.1, 0.05, 0.2)), "tsd-fine")  # fmt: skip
    return shade + (finish if b > 4 * PX_PER_MM else "") + rim


def _frost(x: float, y: float, a: float, b: float) -> str:
    return f'<circle class="tsd-dull" cx="{x:.1f}" cy="{y:.1f}" r="{a * 0.8:.1f}"/>'


def _score(x: float, y: float, a: float, b: float) -> str:
    return line(f"M{x:.1f} {y - b / 2:.1f}v{b:.1f}", "tsd-line")


def _gone(x: float, y: float, a: float, b: float, inside: str) -> str:
    top, root = y - b / 2, y + b / 2
    edge = f"M{x - a / 2:.1f} {top:.1f}Q{x - a / 3:.1f} {root:.1f} {x:.1f} {root:.1f}" \
           f"T{x + a / 2:.1f} {top:.1f}Z"  # fmt: skip
    return f'<path class="tsd-metal" d="{edge}"/>{inside}'


def _beach(x: float, y: float, a: float, b: float) -> str:
    root, lines = y + b / 2, ""
    for k in (0.06, 0.14, 0.24, 0.36, 0.5):
        # Each line begins and ends on the edge of the break, whose curve this is.
        part = math.sqrt(k)
        half, low = a * part * (2 / 3 - part / 6), root - b * k
        lines += (
            f"M{x - half:.1f} {low:.1f}Q{x:.1f} {low - 0.9 * b * k:.1f} {x + half:.1f} {low:.1f}"
        )
    return _gone(x, y, a, b, line(lines, "tsd-line"))


def _grain(x: float, y: float, a: float, b: float) -> str:
    rng = _rng(x, y)
    dots = "".join(
        f'<circle class="tsd-deep" cx="{x + a * (0.5 - 0.32 * deep) * rng.uniform(-0.9, 0.9):.1f}" '
        f'cy="{y - b / 2 + deep * b * 0.92:.1f}" r="{rng.uniform(0.9, 2.2):.1f}"/>'
        for deep in (rng.uniform(0.04, 0.98) for _ in range(170))
    )
    return _gone(x, y, a, b, dots)


_DRAWN = {
    Shape.CRATER: _crater, Shape.SMEAR: _smear, Shape.GRIT: _grit, Shape.BAR: _bar,
    Shape.STAIN: _stain, Shape.HOLLOW: _hollow, Shape.DENT: _dent, Shape.FROST: _frost,
    Shape.SCORE: _score, Shape.BEACH: _beach, Shape.GRAIN: _grain,
}  # fmt: skip


def line(d: str, kind: str) -> str:
    """A path of one of the kinds of this style."""
    return f'<path class="{kind}" d="{d}"/>'


def text(x: float, y: float, words: str) -> str:
    """Words beside a scale."""
    return f'<text class="tsd-text" x="{x:.1f}" y="{y:.1f}">{words}</text>'


def millimetres(long: float, step: int, px_per_mm: float, y: float) -> str:
    """The numbers of a scale; the last says the unit, where it has room in small pictures too."""
    marks = range(0, int(long - step) + 1, step)
    return "".join(
        text(mm * px_per_mm + 3, y, f"{mm} mm" if mm == marks[-1] else f"{mm}") for mm in marks
    )


def drawn(wide: float, tall: float, words: str, body: str, least: float = 0) -> str:
    """A picture in this style, with what a hand and a lens find as its label.

    least: width below which it is moved sideways rather than shown smaller [px].
    """
    return (
        '<svg xmlns="http://www.w3.org/2000/svg" class="twoshaft-figure" role="img" '
        f'data-grow="2.2" viewBox="0 0 {wide:g} {tall:g}" '
        f'style="width:100%;min-width:{least:g}px;max-width:{wide:g}px;height:auto" '
        f'aria-label="{escape(words)}"><style>{_CSS}</style>{body}</svg>'
    )


def lettered(pictures: Iterable[tuple[str, Lit]]) -> Sketch:
    """Pictures one below the other, each with its letter and what a hand would feel.

    Parameters
    ----------
    pictures : iterable of letter and Lit

    Returns
    -------
    Sketch
    """
    some = tuple(pictures)
    body = "".join(_under_letter(escape(letter), one.svg) for letter, one in some)
    return Sketch(body, " ".join(f"{letter}: {one.feels}." for letter, one in some))


def _under_letter(letter: str, svg: str) -> str:
    """A picture under its letter, which its label says as well."""
    labelled = svg.replace('aria-label="', f'aria-label="{letter}: ', 1)
    shown = f'<p aria-hidden="true"><b>{letter}</b></p>{labelled}'
    return f'<div style="margin-bottom:12px">{shown}</div>'
