"""Closing out in pictures: oils over temperature, pressure behind a breather, a leak test, causes.

Viscosity stands on the scale of ASTM D341, on which oils are straight lines.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from html import escape
from itertools import pairwise

from twoshaft.models.viscosity import walther
from twoshaft.plots import style
from twoshaft.plots.drawing import Drawing
from twoshaft.plots.driven_section import Sketch

WIDTH_PX = 600.0
MARKS = (5, 6, 7, 8, 9, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100, 150, 200, 300, 500, 1000, 2000)
UNSAID = (7, 9)
COLD_C, HOT_C, STEP_C = 0, 120, 10
_TALL, _LEFT, _RIGHT, _TOP, _FOOT = 520.0, 62.0, 40.0, 30.0, 46.0
_DASHES = ("none", "10 5", "3 4", "14 4 3 4")
_CSS = (
    f".tsc-grid{{stroke:color-mix(in srgb, {style.INK_NOW} 26%, {style.PAPER_NOW})}}"
    f".tsc-axis{{stroke:{style.INK_NOW};stroke-width:{style.THIN_PX};fill:none}}"
    f".tsc-line{{stroke:{style.INK_NOW};stroke-width:{style.THICK_PX};fill:none}}"
    f".tsc-limit{{stroke:{style.INK_NOW};stroke-width:3}}"
    f".tsc-air{{fill:{style.LIT_NOW};stroke:{style.INK_NOW}}}"
    f".tsc-disc{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW}}}"
)
_LIST_CSS = (
    ".tsc-causes{list-style:none;margin:0;padding:4px 0 4px 16px;columns:16em auto}"
    ".tsc-causes li{line-height:24px;break-inside:avoid}"
    f".tsc-out{{color:{style.QUIET_NOW}}}"
)
_APART_PX = 14.0  # between marks of a scale that are said


def _depth(v: float) -> float:
    """Where a viscosity lies on the scale, upwards."""
    return math.log10(math.log10(v + 0.7))


def _up(v: float, tall: float) -> float:
    low, high = _depth(MARKS[0]), _depth(MARKS[-1])
    return tall - _FOOT - (tall - _FOOT - _TOP) * (_depth(v) - low) / (high - low)


def _across(celsius: float) -> float:
    low, high = (math.log10(c + 273.15) for c in (COLD_C, HOT_C))
    return _LEFT + (WIDTH_PX - _LEFT - _RIGHT) * (math.log10(celsius + 273.15) - low) / (high - low)


def oil_chart(
    oils: Sequence[tuple[str, float, float]], at_c: float | None = None, tall: float = _TALL
) -> Sketch:
    """Draw oils over temperature, each a straight line with its letter.

    Parameters
    ----------
    oils : sequence of (letter, viscosity at 40 °C, viscosity at 100 °C) [mm²/s]
    at_c : float, optional
        A temperature that is marked [°C].
    tall : float
        Height of the picture [px].

    Returns
    -------
    Sketch
        Its words tell where each line crosses, by the marks beside it.
    """
    many = "one oil" if len(oils) == 1 else f"{len(oils)} oils"
    words = f"Viscosity of {many} over temperature, on the scale of ASTM D341."
    tell = " ".join(_crossings(*one) for one in oils)
    drawing = Drawing(WIDTH_PX, tall, words, tell)
    drawing.add(f"<style>{_CSS}</style>")
    bottom, top = _up(MARKS[0], tall), _up(MARKS[-1], tall)
    left, right = _across(COLD_C), _across(HOT_C)
    said = bottom + _APART_PX
    for mark in MARKS:
        y = _up(mark, tall)
        drawing.add(f'<path class="tsc-grid" d="M{left:.1f} {y:.1f}H{right:.1f}"/>')
        if mark not in UNSAID and said - y >= _APART_PX:
            said = y
            drawing.add(f'<text class="tsf-t" text-anchor="end" x="{left - 6:.1f}" '
                        f'y="{y + 4.5:.1f}">{mark}</text>')  # fmt: skip
    for celsius in range(COLD_C, HOT_C + 1, STEP_C):
        x = _across(celsius)
        drawing.add(f'<path class="tsc-grid" d="M{x:.1f} {top:.1f}V{bottom:.1f}"/>',
                    f'<text class="tsf-t" text-anchor="middle" x="{x:.1f}" '
                    f'y="{bottom + 18:.1f}">{celsius}</text>')  # fmt: skip
    drawing.add(f'<text class="tsf-t" x="4" y="{_TOP - 12}">mm²/s</text>',
                f'<text class="tsf-t" text-anchor="end" x="{WIDTH_PX - 4}" '
                f'y="{bottom + 38:.1f}">temperature of the oil, °C</text>',
                f'<rect class="tsc-axis" x="{left:.1f}" y="{top:.1f}" '
                f'width="{right - left:.1f}" height="{bottom - top:.1f}"/>')  # fmt: skip
    if at_c is not None and COLD_C <= at_c <= HOT_C:
        drawing.add(f'<path class="tsc-limit" d="M{_across(at_c):.1f} {top:.1f}V{bottom:.1f}"/>')
    for k, (letter, at_40, at_100) in enumerate(oils):
        dashes = _DASHES[k % len(_DASHES)]
        drawing.add(*_line(letter, at_40, at_100, dashes, 6 + 9 * k, tall))
    return Sketch(drawing.text(), words)


def _line(
    letter: str, at_40: float, at_100: float, dashes: str, at_c: float, tall: float
) -> Iterable[str]:
    """A straight line, cut off where the chart ends, with its letter at a temperature."""
    there = [
        (_across(c), _up(v, tall))
        for c in range(COLD_C, HOT_C + 1)
        if MARKS[0] <= (v := walther.plain(at_40, at_100, c)) <= MARKS[-1]
    ]
    (x, y), (last_x, last_y) = there[0], there[-1]
    yield (
        f'<path class="tsc-line" stroke-dasharray="{dashes}" '
        f'd="M{x:.1f} {y:.1f}L{last_x:.1f} {last_y:.1f}"/>'
    )
    at = max(0.0, min(1.0, (_across(at_c) - x) / (last_x - x)))
    x, y = x + at * (last_x - x), y + at * (last_y - y)
    yield (
        f'<circle class="tsc-disc" cx="{x:.1f}" cy="{y:.1f}" r="11"/><text class="tsf-h" '
        f'text-anchor="middle" x="{x:.1f}" y="{y + 5:.1f}">{escape(letter)}</text>'
    )


def _crossings(letter: str, at_40: float, at_100: float) -> str:
    """Where a line crosses, as tenths of the way between two marks."""
    said = []
    for celsius in range(COLD_C, HOT_C + 1, STEP_C):
        v = walther.plain(at_40, at_100, celsius)
        for low, high in pairwise(MARKS):
            if low <= v <= high:
                tenths = round(10 * (_depth(v) - _depth(low)) / (_depth(high) - _depth(low)))
                said.append(f"at {celsius} °C {tenths} tenths of the way from {low} to {high}")
                break
    return f"Line {letter}: {', '.join(said)}."


def pressure_picture(over_mbar: float, seal_mbar: float) -> Sketch:
    """Draw the pressure inside a closed unit beside what its seals hold, both over that outside.

    Parameters
    ----------
    over_mbar, seal_mbar : float
        [mbar]

    Returns
    -------
    Sketch
    """
    words = (
        f"Pressure inside over outside {over_mbar:.0f} mbar; the seals hold {seal_mbar:.0f} mbar."
    )
    low, high, tall = -300.0, 500.0, 150.0

    def x(mbar: float) -> float:
        return 20 + (WIDTH_PX - 40) * (min(high, max(low, mbar)) - low) / (high - low)

    drawing = Drawing(WIDTH_PX, tall, words, words)
    left, right = sorted((x(0), x(over_mbar)))
    drawing.add(
        f"<style>{_CSS}</style>",
        f'<rect class="tsc-air" x="{left:.1f}" y="52" width="{max(right - left, 2):.1f}" '
        'height="36"/>',
        f'<path class="tsc-axis" d="M20 100H{WIDTH_PX - 20}"/>',
    )
    for mbar in range(int(low), int(high) + 1, 100):
        drawing.add(f'<path class="tsc-axis" d="M{x(mbar):.1f} 96v8"/><text class="tsf-t" '
                    f'text-anchor="middle" x="{x(mbar):.1f}" y="120">{mbar}</text>')  # fmt: skip
    drawing.add(
        f'<path class="tsc-limit" d="M{x(seal_mbar):.1f} 40V100"/>',
        f'<text class="tsf-t" text-anchor="middle" x="{x(seal_mbar):.1f}" y="32">the seals hold'
        "</text>",
        f'<path class="tsc-axis" d="M{x(0):.1f} 44V100"/>',
        f'<text class="tsf-t" text-anchor="middle" x="{x(0):.1f}" y="32">as outside</text>',
        f'<text class="tsf-t" text-anchor="end" x="{WIDTH_PX - 20}" y="140">'
        "mbar over outside</text>",
    )
    return Sketch(drawing.text(), words)


def leak_picture(start_mbar: float, read_mbar: float, one_mbar: float, minutes: float) -> Sketch:
    """Draw a leak test: the gauge, and what it would show had the air kept its temperature.

    Parameters
    ----------
    start_mbar, read_mbar, one_mbar : float
        Gauge at the start, at the end, and at the end at one temperature [mbar].
    minutes : float
        [minutes]

    Returns
    -------
    Sketch
    """
    words = (
        f"Gauge {start_mbar:.1f} mbar at the start, {read_mbar:.1f} mbar after {minutes:g} "
        f"minutes; with air of one temperature it would be {one_mbar:.1f} mbar."
    )
    low, high = start_mbar - 26, start_mbar + 10
    tall = 250.0

    def y(mbar: float) -> float:
        return 206 - 180 * (min(high, max(low, mbar)) - low) / (high - low)

    drawing = Drawing(WIDTH_PX, tall, words, words)
    drawing.add(f"<style>{_CSS}</style>", '<path class="tsc-axis" d="M62 20V206H580"/>')
    first = math.ceil(low / 5) * 5
    for mbar in range(first, int(high) + 1, 5):
        drawing.add(f'<path class="tsc-grid" d="M62 {y(mbar):.1f}H580"/><text class="tsf-t" '
                    f'text-anchor="end" x="56" y="{y(mbar) + 4.5:.1f}">{mbar}</text>')  # fmt: skip
    ends = y(read_mbar), y(one_mbar)
    apart = max(0.0, (16 - abs(ends[0] - ends[1])) / 2) * (1 if ends[0] >= ends[1] else -1)
    for end, dashes, word, off in (
        (ends[0], "none", "gauge", apart),
        (ends[1], "8 5", "one temperature", -apart),
    ):
        drawing.add(
            f'<path class="tsc-line" stroke-dasharray="{dashes}" '
            f'd="M62 {y(start_mbar):.1f}L460 {end:.1f}"/>',
            f'<text class="tsf-t" x="468" y="{end + 4.5 + off:.1f}">{word}</text>',
        )
    drawing.add('<text class="tsf-t" x="8" y="14">mbar over outside</text>',
                f'<text class="tsf-t" text-anchor="end" x="580" y="228">'
                f"{minutes:g} minutes</text>")  # fmt: skip
    return Sketch(drawing.text(), words)


def causes_list(causes: Sequence[tuple[str, bool]]) -> Sketch:
    """List causes; those that are ruled out are struck through.

    Parameters
    ----------
    causes : sequence of (name, whether it is left)

    Returns
    -------
    Sketch
        A list in HTML, of one column where the page is narrow.
    """
    left = [name for name, there in causes if there]
    words = f"Left: {'; '.join(left)}." if left else "No single cause of the table explains it."
    lines = "".join(
        f"<li><strong>{escape(name)}</strong></li>"
        if there
        else f'<li class="tsc-out"><s>{escape(name)}</s>, ruled out</li>'
        for name, there in causes
    )
    return Sketch(f'<style>{_LIST_CSS}</style><ul class="tsc-causes">{lines}</ul>', words)
