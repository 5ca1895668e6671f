"""What small pictures of the bench share that a learner chooses from: lines and frame."""

from __future__ import annotations

import math
from functools import cached_property
from html import escape

from twoshaft.plots import style

_METAL = f"color-mix(in srgb, {style.INK_NOW} 16%, {style.PAPER_NOW})"
_STEEL = f"color-mix(in srgb, {style.INK_NOW} 36%, {style.PAPER_NOW})"
_EDGE = f"stroke:{style.INK_NOW};stroke-width:{style.THICK_PX};stroke-linejoin:round"
_CSS = (
    f".tsv-cut{{fill:{_METAL};{_EDGE}}}"
    f".tsv-steel{{fill:{_STEEL};{_EDGE}}}"
    f".tsv-part{{fill:{style.PAPER_NOW};{_EDGE}}}"
    f".tsv-ink{{fill:{style.INK_NOW}}}"
    f".tsv-line{{fill:none;{_EDGE}}}"
    f".tsv-thin{{fill:none;stroke:{style.INK_NOW};stroke-width:{style.THIN_PX}}}"
    f".tsv-sight{{fill:none;stroke:{style.INK_NOW};stroke-width:1.5;stroke-dasharray:6 4}}"
    f".tsv-centre{{fill:none;stroke:{style.INK_NOW};stroke-width:{style.THIN_PX};"
    "stroke-dasharray:14 3 3 3}"
    f".tsv-bead{{fill:{style.OKABE_ITO['sky']};stroke:{style.INK_NOW};"
    f"stroke-width:{style.THIN_PX}}}"
    f".tsv-t{{font:{style.grown(style.SMALL_PX)} {style.FONT};fill:{style.INK_NOW};"
    "text-anchor:middle}"
)


class BenchView:
    """A picture that is drawn when it is asked for; what is made of it says what it shows."""

    wide_px, tall_px = 340.0, 230.0

    @property
    def spots(self) -> tuple[tuple[str, str], ...]:
        """One place, the whole picture."""
        return (("", self.felt),)

    @property
    def felt(self) -> str:
        """What hand, rule and blade find; no word of right or wrong."""
        raise NotImplementedError

    def drawn(self) -> list[str]:
        """Its parts, one on the other."""
        raise NotImplementedError

    @cached_property
    def svg(self) -> str:
        """The picture as one SVG element."""
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" class="twoshaft-figure" role="img" '
            f'data-grow="2" viewBox="0 0 {self.wide_px:g} {self.tall_px:g}" '
            f'style="width:100%;max-width:{self.wide_px:g}px;height:auto" '
            f'aria-label="{escape(self.felt)}"><style>{_CSS}</style>{"".join(self.drawn())}</svg>'
        )


def path(kind: str, *points: tuple[float, float], closed: bool = False) -> str:
    """Places joined by straight lines."""
    way = "L".join(f"{x:.1f} {y:.1f}" for x, y in points)
    return f'<path class="tsv-{kind}" d="M{way}{"Z" if closed else ""}"/>'


def rect(kind: str, x0: float, y0: float, x1: float, y1: float) -> str:
    """A box from corner to corner."""
    left, top = min(x0, x1), min(y0, y1)
    return (
        f'<rect class="tsv-{kind}" x="{left:.1f}" y="{top:.1f}" width="{abs(x1 - x0):.1f}" '
        f'height="{abs(y1 - y0):.1f}"/>'
    )


def circle(kind: str, x: float, y: float, radius: float) -> str:
    """A circle about a place."""
    return f'<circle class="tsv-{kind}" cx="{x:.1f}" cy="{y:.1f}" r="{radius:.1f}"/>'


def words(x: float, y: float, text: str) -> str:
    """Words with their middle at a place."""
    return f'<text class="tsv-t" x="{x:.1f}" y="{y:.1f}">{escape(text)}</text>'


def turned(at: tuple[float, float], deg: float, *parts: str) -> str:
    """Parts drawn about the origin, put at a place and turned clockwise."""
    return (
        f'<g transform="translate({at[0]:.1f} {at[1]:.1f}) rotate({deg:.1f})">{"".join(parts)}</g>'
    )


def way(deg: float) -> tuple[float, float]:
    """A direction on the screen; 0 is to the right, 90 up."""
    return math.cos(math.radians(deg)), -math.sin(math.radians(deg))


def hour(deg: float) -> str:
    """A direction as an hour of a clock; 0 degrees is three o'clock, 90 is twelve."""
    return f"{round((90 - deg) / 30) % 12 or 12}"
