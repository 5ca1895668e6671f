"""A spring pin as somebody drove it in: cut along it, and on its end with the line of the force."""

from __future__ import annotations

import math
from functools import cached_property
from html import escape

from twoshaft.models.fit import PIN_WALL_MM, DrivenPinLike
from twoshaft.plots import style

WIDE_PX, TALL_PX = 340.0, 230.0
_PX_PER_MM, _RAIL_MM = 5.0, 14.0
_TOP, _AXIS, _HALF, _SIDES = 48.0, 84.0, 15.0, (24.0, 144.0)
_ROUND, _HOLE, _SHEET, _ARROW = (246.0, 113.0), 48.0, 9.0, 84.0
_SLOT_DEG = 20.0
_METAL = f"color-mix(in srgb, {style.INK_NOW} 16%, {style.PAPER_NOW})"
_STEEL = f"color-mix(in srgb, {style.INK_NOW} 36%, {style.PAPER_NOW})"
_CSS = (
    f".tsq-pin{{fill:{_STEEL};stroke:{style.INK_NOW};stroke-width:{style.THICK_PX};"
    "stroke-linejoin:round}"
    f".tsq-cut{{fill:{_METAL};stroke:{style.INK_NOW};stroke-width:{style.THICK_PX}}}"
    f".tsq-part{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW};stroke-width:{style.THICK_PX};"
    "stroke-linejoin:round}"
    f".tsq-thin{{stroke:{style.INK_NOW};stroke-width:{style.THIN_PX};fill:none}}"
    f".tsq-centre{{stroke:{style.INK_NOW};stroke-width:{style.THIN_PX};stroke-dasharray:14 3 3 3;"
    "fill:none}"
    f".tsq-way{{stroke:{style.INK_NOW};stroke-width:4;fill:none}}"
    f".tsq-head{{fill:{style.INK_NOW}}}"
    f".tsq-t{{font:{style.grown(style.SMALL_PX)} {style.FONT};fill:{style.INK_NOW};"
    "text-anchor:middle}"
)


class DrivenPinPicture:
    """A picture that is drawn when it is asked for.

    Parameters
    ----------
    pin : DrivenPinLike
    """

    def __init__(self, pin: DrivenPinLike) -> None:
        self._pin = pin

    @property
    def spots(self) -> tuple[tuple[str, str], ...]:
        """One place, the whole picture: what a finger and a blade find."""
        return (("", self.felt),)

    @property
    def felt(self) -> str:
        """Directions as hours of a clock, ends as a depth gauge reads them; no word of right."""
        pin = self._pin
        force = " and ".join(_hour(pin.force_deg + turn) for turn in (0, 180))
        slots = f"the slot is open at {_hour(pin.slot_deg)} o'clock"
        if pin.inner_deg is not None:
            slots += f", that of a second pin in it at {_hour(pin.inner_deg)}"
        ends = "; ".join(
            f"the {name} end {abs(mm):.1f} mm {'inside' if mm >= 0 else 'outside'}"
            for name, mm in (("upper", pin.near_mm), ("lower", pin.far_mm))
        )
        return f"the force acts to and fro between {force} o'clock, {slots}; {ends}"

    @cached_property
    def svg(self) -> str:
        """The picture as one SVG element."""
        body = "".join((*self._along(), *self._end()))
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" class="twoshaft-figure" role="img" '
            f'data-grow="2" viewBox="0 0 {WIDE_PX:g} {TALL_PX:g}" '
            f'style="width:100%;max-width:{WIDE_PX:g}px;height:auto" '
            f'aria-label="{escape(self.felt)}"><style>{_CSS}</style>{body}</svg>'
        )

    def _along(self) -> list[str]:
        """Boss, rail and pin, cut along the pin."""
        (left, right), wall, rail = _SIDES, PIN_WALL_MM * _PX_PER_MM, _RAIL_MM * _PX_PER_MM
        middle, low = _TOP + wall, _TOP + wall + rail
        near = _TOP + self._pin.near_mm * _PX_PER_MM
        far = low + wall - self._pin.far_mm * _PX_PER_MM
        parts = [
            _rect(left, _TOP, right, middle, "tsq-cut"),
            _rect(left, low, right, low + wall, "tsq-cut"),
            _rect(left - 16, middle, right + 16, low, "tsq-part"),
            f'<path class="tsq-thin" d="M{_AXIS - _HALF} {_TOP}V{low + wall}'
            f'M{_AXIS + _HALF} {_TOP}V{low + wall}"/>',
            _rect(_AXIS - _HALF, _TOP, _AXIS + _HALF, low + wall, "tsq-part"),
            _rect(_AXIS - _HALF, near, _AXIS + _HALF, far, "tsq-pin"),
            f'<path class="tsq-thin" d="M{_AXIS - _HALF + 6} {near}V{far}'
            f'M{_AXIS + _HALF - 6} {near}V{far}"/>',
            f'<path class="tsq-centre" d="M{_AXIS} {_TOP - 18}V{low + wall + 18}"/>',
        ]
        return [*parts, _text(_AXIS, TALL_PX - 6, "along the pin")]

    def _end(self) -> list[str]:
        """The hole from above, the pin's sheet, and the line of the force."""
        x, y = _ROUND
        outer = _HOLE - 1
        parts = [
            _rect(x - 78, y - 78, x + 78, y + 78, "tsq-cut"),
            f'<circle class="tsq-part" cx="{x}" cy="{y}" r="{_HOLE}"/>',
            _sheet(outer, self._pin.slot_deg),
        ]
        if self._pin.inner_deg is not None:
            parts.append(_sheet(outer - _SHEET - 3, self._pin.inner_deg))
        return [*parts, self._force(), _text(x, TALL_PX - 6, "on its upper end")]

    def _force(self) -> str:
        (x, y), lines = _ROUND, []
        for turn in (0, 180):
            angle = math.radians(self._pin.force_deg + turn)
            along, over = (math.cos(angle), -math.sin(angle)), (math.sin(angle), math.cos(angle))
            foot, neck, tip = _HOLE + 6, _ARROW - 14, _ARROW
            a, b, c = ((x + r * along[0], y + r * along[1]) for r in (foot, neck, tip))
            sides = [(b[0] + s * 8 * over[0], b[1] + s * 8 * over[1]) for s in (1, -1)]
            head = "L".join(f"{p:.1f} {q:.1f}" for p, q in (c, *sides))
            lines.append(
                f'<path class="tsq-way" d="M{a[0]:.1f} {a[1]:.1f}L{b[0]:.1f} {b[1]:.1f}"/>'
                f'<path class="tsq-head" d="M{head}Z"/>'
            )
        return "".join(lines)


def _sheet(outer: float, towards_deg: float) -> str:
    """The rolled sheet of a pin, open where its slot points."""
    (x, y), inner = _ROUND, outer - _SHEET
    start, end = (math.radians(-towards_deg + sign * _SLOT_DEG) for sign in (1, -1))

    def spot(radius: float, angle: float) -> str:
        return f"{x + radius * math.cos(angle):.1f} {y + radius * math.sin(angle):.1f}"

    return (
        f'<path class="tsq-pin" d="M{spot(outer, start)}A{outer} {outer} 0 1 1 {spot(outer, end)}'
        f'L{spot(inner, end)}A{inner} {inner} 0 1 0 {spot(inner, start)}Z"/>'
    )


def _hour(deg: float) -> str:
    """A direction as an hour of a clock; 0 degrees is three o'clock, 90 is twelve."""
    return f"{round((90 - deg) / 30) % 12 or 12}"


def _rect(x0: float, y0: float, x1: float, y1: float, kind: str) -> str:
    return (
        f'<rect class="{kind}" x="{x0:.1f}" y="{y0:.1f}" width="{x1 - x0:.1f}" '
        f'height="{y1 - y0:.1f}"/>'
    )


def _text(x: float, y: float, text: str) -> str:
    return f'<text class="tsq-t" x="{x:.1f}" y="{y:.1f}">{escape(text)}</text>'
