"""Drawings for the thread chooser: the clamp band on its scale, and the bolt in its hole."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft.plots import style
from twoshaft.plots.drawing import Drawing

_WIDE = 600
_LEFT, _RIGHT = 12, 588
_LINE = 30  # for letters as large as they get where the drawing is small


@dataclass(frozen=True)
class Mark:
    """A load on the scale: its value [kN], its words, the dashes of its line."""

    value_kn: float
    words: str
    dashes: str = ""


def band_drawing(low: float, typical: float, high: float, marks: list[Mark], title: str) -> str:
    """Draw a clamp band [kN] with the loads that it is held against, as one SVG element."""
    top = 1.06 * max(high, *(mark.value_kn for mark in marks))
    per = (_RIGHT - _LEFT) / top
    marks = sorted(marks, key=lambda mark: mark.value_kn)
    foot = 74
    said = "; ".join(f"{mark.words} {mark.value_kn:.1f} kN" for mark in marks)
    drawing = Drawing(
        _WIDE,
        foot + 12 + _LINE * len(marks),
        title,
        f"{low:.1f} to {high:.1f} kN. {said}.",
        grow=2.5,
    )
    x = {name: _LEFT + value * per for name, value in (("low", low), ("high", high))}
    middle = _LEFT + typical * per
    drawing.add(
        f'<line x1="{_LEFT}" x2="{_RIGHT}" y1="{foot}" y2="{foot}" stroke="{style.INK_NOW}"/>',
        f'<rect x="{x["low"]:.1f}" y="34" width="{x["high"] - x["low"]:.1f}" height="26" '
        f'fill="{style.OKABE_ITO["sky"]}" stroke="{style.INK_NOW}" '
        f'stroke-width="{style.THICK_PX}"/>',
        f'<path d="M{middle:.1f} 38 l7 9 -7 9 -7 -9 z" fill="{style.PAPER_NOW}" '
        f'stroke="{style.INK_NOW}" stroke-width="1.5"/>',
        _words((x["low"] + x["high"]) / 2, 24, f"clamp {low:.1f} to {high:.1f} kN"),
    )
    for k, mark in enumerate(marks):
        at, y = _LEFT + mark.value_kn * per, foot + _LINE * (k + 1)
        drawing.add(
            f'<line x1="{at:.1f}" x2="{at:.1f}" y1="30" y2="{y - 24}" stroke="{style.INK_NOW}" '
            f'stroke-width="{style.THICK_PX}" stroke-dasharray="{mark.dashes or "none"}"/>',
            _words(at, y + 3, f"{mark.words} {mark.value_kn:.1f} kN"),
        )
    return drawing.text()


def _words(x: float, y: float, text: str) -> str:
    """Words centred at a place, but kept on the drawing."""
    half = 3.6 * len(text)
    x = min(max(x, half + 2), _WIDE - half - 2)
    return f'<text class="tsf-t" text-anchor="middle" x="{x:.1f}" y="{y}">{text}</text>'


def section_drawing(
    d_mm: float, minor_mm: float, head_mm: float, engagement_mm: float, metal: str, title: str
) -> str:
    """Draw a bolt in its tapped hole, cut along its axis, to scale, as one SVG element."""
    per = min(170 / (engagement_mm + 1.6 * d_mm), 9.0)
    middle, face = 120.0, 14 + 0.95 * d_mm * per
    drawing = Drawing(240, face + (engagement_mm + 0.55 * d_mm) * per + 24, title, title)
    r, root, head = d_mm / 2 * per, minor_mm / 2 * per, head_mm / 2 * per
    tip, deep = face + engagement_mm * per, face + (engagement_mm + 0.55 * d_mm) * per
    ink, thick = style.INK_NOW, style.THICK_PX
    drawing.add(
        *_hatch(20, middle - r, face, deep),
        *_hatch(middle + r, 220, face, deep),
        f'<path d="M20 {face:.1f} H{middle - r:.1f} V{deep:.1f} M{middle + r:.1f} {deep:.1f} '
        f'V{face:.1f} H220" fill="none" stroke="{ink}" stroke-width="{thick}"/>',
        f'<path d="M{middle - r:.1f} {face:.1f} V{tip - 2:.1f} l3 3 H{middle + r - 3:.1f} l3 -3 '
        f'V{face:.1f}" fill="{style.PAPER_NOW}" stroke="{ink}" stroke-width="{thick}"/>',
        f'<rect x="{middle - head:.1f}" y="{face - 0.62 * d_mm * per:.1f}" width="{2 * head:.1f}" '
        f'height="{0.62 * d_mm * per:.1f}" fill="{style.PAPER_NOW}" stroke="{ink}" '
        f'stroke-width="{thick}"/>',
        *(
            f'<line x1="{middle + side * root:.1f}" x2="{middle + side * root:.1f}" '
            f'y1="{face:.1f}" y2="{tip:.1f}" stroke="{ink}" stroke-width="0.7"/>'
            for side in (-1, 1)
        ),
        f'<line x1="{middle}" x2="{middle}" y1="4" y2="{deep:.1f}" stroke="{style.QUIET_NOW}" '
        'stroke-width="0.7" stroke-dasharray="10 3 2 3"/>',
        f'<path d="M{middle + r + 14:.1f} {face:.1f} V{tip:.1f} m-4 -7 l4 7 4 -7 M'
        f'{middle + r + 14:.1f} {face:.1f} m-4 7 l4 -7 4 7" fill="none" stroke="{ink}"/>',
        f'<rect x="{middle + r + 20:.1f}" y="{(face + tip) / 2 - 10:.1f}" width="56" height="19" '
        f'fill="{style.PAPER_NOW}"/><text class="tsf-t" x="{middle + r + 24:.1f}" '
        f'y="{(face + tip) / 2 + 4:.1f}">{engagement_mm:g} mm</text>',
        f'<text class="tsf-t" x="20" y="{deep + 16:.1f}">{metal}; to scale</text>',
    )
    return drawing.text()


def _hatch(left: float, right: float, top: float, bottom: float) -> list[str]:
    """Thin lines at 45 degrees across a rectangle of cut metal."""
    lines = []
    start = left - (bottom - top)
    start -= start % 10  # on one raster for every part of one piece
    while start < right:
        x1, x2 = max(start, left), min(start + bottom - top, right)
        if x1 < x2:
            y1, y2 = bottom - (x1 - start), bottom - (x2 - start)
            lines.append(
                f'<line x1="{x1:.1f}" y1="{y1:.1f}" x2="{x2:.1f}" y2="{y2:.1f}" '
                f'stroke="{style.INK_NOW}" stroke-width="0.7"/>'
            )
        start += 10
    return lines
