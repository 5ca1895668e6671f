"""Where the true size of a part may lie, beside its limit and the guard band."""

from __future__ import annotations

import math

from twoshaft.plots import style
from twoshaft.plots.drawing import Drawing
from twoshaft.plots.driven_section import Sketch

WIDTH_PX, HEIGHT_PX = 560.0, 250.0
_BASE, _TALL = 196.0, 150.0
_CSS = (
    f".tsg-sure{{fill:{style.LIT_NOW};stroke:{style.INK_NOW};stroke-width:{style.THIN_PX}}}"
    f".tsg-bad{{fill:{style.QUIET_NOW};stroke:none}}"
    f".tsg-axis{{stroke:{style.INK_NOW};stroke-width:{style.THIN_PX}}}"
    f".tsg-limit{{stroke:{style.INK_NOW};stroke-width:3}}"
    f".tsg-band{{stroke:{style.INK_NOW};stroke-width:1.5;stroke-dasharray:7 4}}"
)


def decision_picture(
    reading_mm: float, limit_mm: float, u_mm: float, guard_mm: float, ends_mm: tuple[float, float]
) -> Sketch:
    """Draw how likely each true size is, for a limit that is the smallest size allowed.

    Parameters
    ----------
    reading_mm, limit_mm, u_mm, guard_mm : float
        [mm]
    ends_mm : tuple of float
        What the axis shows [mm].

    Returns
    -------
    Sketch
    """
    low, high = ends_mm

    def x(mm: float) -> float:
        return 20 + (WIDTH_PX - 40) * (mm - low) / (high - low)

    def outline(start: float, end: float) -> str:
        sizes = [start + (end - start) * k / 80 for k in range(81)]
        heights = (math.exp(-0.5 * ((mm - reading_mm) / u_mm) ** 2) for mm in sizes)
        tops = " ".join(
            f"L{x(mm):.1f} {_BASE - _TALL * h:.1f}" for mm, h in zip(sizes, heights, strict=True)
        )
        return f"M{x(start):.1f} {_BASE}{tops}L{x(end):.1f} {_BASE}Z"

    words = (
        f"Reading {reading_mm:.3f} mm, smallest size allowed {limit_mm:.3f} mm, "
        f"guard band {guard_mm:.3f} mm on either side."
    )
    drawing = Drawing(WIDTH_PX, HEIGHT_PX, words, f"{words} Dark is the chance of a bad part.")
    drawing.add(f"<style>{_CSS}</style>", f'<path class="tsg-sure" d="{outline(low, high)}"/>')
    if low < limit_mm:
        drawing.add(f'<path class="tsg-bad" d="{outline(low, limit_mm)}"/>')
    drawing.add(f'<path class="tsg-axis" d="M20 {_BASE}H{WIDTH_PX - 20}"/>')
    for mm, kind, word, y in (
        (limit_mm, "limit", "limit", 18),
        (limit_mm - guard_mm, "band", "proven bad", 34),
        (limit_mm + guard_mm, "band", "proven good", 34),
    ):
        anchor = {"limit": "middle", "proven bad": "end", "proven good": "start"}[word]
        drawing.add(
            f'<path class="tsg-{kind}" d="M{x(mm):.1f} {y + 6}V{_BASE}"/>',
            f'<text class="tsf-t" text-anchor="{anchor}" x="{x(mm):.1f}" y="{y}">{word}</text>',
        )
    drawing.add(
        f'<path class="tsg-axis" d="M{x(reading_mm):.1f} {_BASE}v14"/>',
        f'<text class="tsf-h" text-anchor="middle" x="{x(reading_mm):.1f}" y="{_BASE + 32}">'
        "reading</text>",
    )
    return Sketch(drawing.text(), words)
