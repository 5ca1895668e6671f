"""A circlip in its groove in half section, with the way in which the part beside it pushes."""

from __future__ import annotations

from functools import cached_property
from html import escape

from twoshaft.models.fit import SeatedClipLike
from twoshaft.plots import style

WIDE_PX, TALL_PX = 320.0, 200.0
PX_PER_MM = 30.0
_FACE, _DEPTH, _HIGH = 118.0, 42.0, 92.0  # the face of shaft or bore, its groove, the clip
_LEFT, _RIGHT, _PLAY, _ROUND = 138.0, 182.0, 5.0, 13.0
_PART = 92.0
_METAL = f"color-mix(in srgb, {style.INK_NOW} 16%, {style.PAPER_NOW})"
_STEEL = f"color-mix(in srgb, {style.INK_NOW} 40%, {style.PAPER_NOW})"
_CSS = (
    f".tsc-body{{fill:{_METAL};stroke:{style.INK_NOW};stroke-width:{style.THICK_PX}}}"
    f".tsc-clip{{fill:{_STEEL};stroke:{style.INK_NOW};stroke-width:{style.THICK_PX}}}"
    f".tsc-part{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW};stroke-width:{style.THICK_PX}}}"
    f".tsc-way{{stroke:{style.INK_NOW};stroke-width:4;fill:none}}"
    f".tsc-head{{fill:{style.INK_NOW}}}"
    f".tsc-t{{font:{style.grown(style.SMALL_PX)} {style.FONT};fill:{style.INK_NOW};"
    "text-anchor:middle}"
)


class ClipPicture:
    """A picture that is drawn when it is asked for.

    Parameters
    ----------
    clip : SeatedClipLike
    """

    def __init__(self, clip: SeatedClipLike) -> None:
        self._clip = clip

    @property
    def spots(self) -> tuple[tuple[str, str], ...]:
        """One place, the whole picture: what a nail and a feeler find."""
        return (("", self.felt),)

    @property
    def felt(self) -> str:
        """Which rim catches the nail, which way the push goes, how it lies; no word of right."""
        clip = self._clip
        where = "in a bore" if clip.bore else "on a shaft"
        push, sharp = ("left" if one else "right" for one in (clip.push_left, clip.sharp_left))
        lies = f"{clip.off_mm:.1f} mm off" if clip.off_mm else "on"
        return (
            f"a circlip {where}; the part beside it pushes to the {push}; a nail catches on the "
            f"{sharp} rim of the clip and slides over the other; it lies {lies} the floor of its "
            "groove"
        )

    @cached_property
    def svg(self) -> str:
        """The picture as one SVG element."""
        over = f' transform="translate(0 {TALL_PX - 24:g}) scale(1 -1)"'
        turned, where = (over, "in a bore") if self._clip.bore else ("", "on a shaft")
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" class="twoshaft-figure" role="img" '
            f'data-grow="2" viewBox="0 0 {WIDE_PX:g} {TALL_PX:g}" '
            f'style="width:100%;max-width:{WIDE_PX:g}px;height:auto" '
            f'aria-label="{escape(self.felt)}"><style>{_CSS}</style>'
            f"<g{turned}>{''.join(self._shaft())}</g>"
            f'<text class="tsc-t" x="{WIDE_PX / 2}" y="{TALL_PX - 6}">{where}</text></svg>'
        )

    def _shaft(self) -> list[str]:
        """As on a shaft; what lies in a bore is this turned over."""
        clip = self._clip
        foot = _FACE + _DEPTH
        body = f"M20 {_FACE}H{_LEFT}V{foot}H{_RIGHT}V{_FACE}H{WIDE_PX - 20}V{TALL_PX - 28}H20Z"
        side = _RIGHT if clip.push_left else _LEFT - _PART
        low, high = foot - clip.off_mm * PX_PER_MM, foot - clip.off_mm * PX_PER_MM - _HIGH
        parts = [
            f'<path class="tsc-body" d="{body}"/>',
            f'<rect class="tsc-part" x="{side + (2 if clip.push_left else -2)}" '
            f'y="{_FACE - 74}" width="{_PART}" height="72"/>',
            f'<path class="tsc-clip" d="{self._outline(low, high)}"/>',
        ]
        return [*parts, self._push(side)]

    def _outline(self, low: float, high: float) -> str:
        """The clip's section: square corners at its sharp edge, round ones at the other."""
        play = _PLAY / 2
        sharp, soft = _LEFT + play, _RIGHT - play
        if not self._clip.sharp_left:
            sharp, soft = soft, sharp
        to = 1 if soft > sharp else -1
        sweep = 1 if to > 0 else 0
        return (
            f"M{sharp} {high:.1f}H{soft - to * _ROUND}"
            f"A{_ROUND} {_ROUND} 0 0 {sweep} {soft} {high + _ROUND:.1f}V{low - _ROUND:.1f}"
            f"A{_ROUND} {_ROUND} 0 0 {sweep} {soft - to * _ROUND} {low:.1f}H{sharp}Z"
        )

    def _push(self, side: float) -> str:
        y, sign = _FACE - 38, -1 if self._clip.push_left else 1
        middle = side + _PART / 2
        tail, tip = middle - sign * 30, middle + sign * 30
        return (
            f'<path class="tsc-way" d="M{tail} {y}H{tip - sign * 12}"/>'
            f'<path class="tsc-head" d="M{tip} {y}l{-14 * sign} -9v18Z"/>'
        )
