"""Spring pins and taper pins in their holes: where they would shear, and which end is struck.

The principle, not to scale. Thick outlines, thin hatching and dash-dot centre lines as in ISO 128;
shafts and pins are not hatched. A place where a pin would shear is a heavy dashed line with its
number.
"""

from __future__ import annotations

import math
from html import escape

from twoshaft.models.fit import TaperPin
from twoshaft.plots import style
from twoshaft.plots.drawing import Drawing, word
from twoshaft.plots.driven_section import Sketch
from twoshaft.units.quantities import Q

WIDTH_PX, HEIGHT_PX = 560.0, 308.0
_CSS = (
    f".tsn-part{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW};stroke-width:{style.THICK_PX};"
    "stroke-linejoin:round}"
    f".tsn-cut{{fill:url(#tsn-hatch);stroke:{style.INK_NOW};stroke-width:{style.THICK_PX}}}"
    f".tsn-thin{{stroke:{style.INK_NOW};stroke-width:{style.THIN_PX};fill:none}}"
    f".tsn-centre{{stroke:{style.INK_NOW};stroke-width:{style.THIN_PX};stroke-dasharray:14 3 3 3;"
    "fill:none}"
    f".tsn-shear{{stroke:{style.OKABE_ITO['vermilion']};stroke-width:4;stroke-dasharray:8 4}}"
    f".tsn-way{{stroke:{style.OKABE_ITO['blue']};stroke-width:4;fill:none}}"
    f".tsn-head{{fill:{style.OKABE_ITO['blue']}}}"
)
_HATCH = (
    '<defs><pattern id="tsn-hatch" width="9" height="9" patternUnits="userSpaceOnUse" '
    f'patternTransform="rotate(45)"><rect width="9" height="9" style="fill:{style.PAPER_NOW}"/>'
    f'<path d="M0 0V9" style="stroke:{style.INK_NOW};stroke-width:{style.THIN_PX}"/></pattern>'
    "</defs>"
)
# The rail and the boss of the fork round it, then the pin across both.
_RAIL, _BOSS, _ENDS = (120.0, 196.0), (66.0, 250.0), (92.0, 228.0)
_PIN, _WALL = (150.0, 186.0), 9.0
_ROUND, _RADIUS = (430.0, 158.0), 62.0
_SLOT_DEG, _ROLL_PX = 22.0, 13.0
STEEPER = 5.0
"""How many times as steep a taper is drawn."""
_PX_PER_MM = 8.0


def spring_pin_section(*, planes: int = 2, nested: bool = False) -> Sketch:
    """Draw a spring pin that holds a fork on its rail.

    Parameters
    ----------
    planes : int
        Places where it would shear: 2 right through the boss, 1 in one side of it only.
    nested : bool
        Whether a second pin lies in the first.

    Returns
    -------
    Sketch
    """
    cut = "two planes: double" if planes == 2 else "one plane: single"
    words = (
        f"The pin would have to be cut at {cut} shear. Its slot points along the rail, in the line "
        "of the force."
    )
    if nested:
        words += " A second pin is nested in it, with its slot the other way."
    drawing = Drawing(WIDTH_PX, HEIGHT_PX, words, f"{words} Both ends are inside their hole.")
    drawing.add(f"<style>{_CSS}</style>", _HATCH)
    for top, bottom in ((_BOSS[0], _RAIL[0]), (_RAIL[1], _BOSS[1])):
        drawing.add(_rect(92, top, 244, bottom, "tsn-cut"))
    drawing.add(_rect(24, *_across(_RAIL), "tsn-part"))
    low = _ENDS[1] if planes == 2 else sum(_RAIL) / 2 + 14
    drawing.add(_rect(_PIN[0], _ENDS[0], _PIN[1], low, "tsn-part"))
    for x in (_PIN[0] + _WALL, _PIN[1] - _WALL):
        drawing.add(f'<path class="tsn-thin" d="M{x} {_ENDS[0]}V{low}"/>')
    middle = sum(_PIN) / 2
    drawing.add(f'<path class="tsn-centre" d="M10 {sum(_RAIL) / 2}H308M{middle} 50V266"/>')
    for number, y in enumerate(_RAIL[:planes], 1):
        drawing.add(f'<path class="tsn-shear" d="M{_PIN[0] - 10} {y}H{_PIN[1] + 10}"/>')
        drawing.add(word(_PIN[1] + 24, y, str(number)))
    drawing.add(_arrow((252, sum(_RAIL) / 2), (300, sum(_RAIL) / 2)))
    drawing.add(word(60, 140, "rail"), word(118, 92, "fork"), _label(276, 184, "force"))
    drawing.add(*_end_view(nested))
    drawing.add(_label(168, 290, "Along the pin"), _label(_ROUND[0], 290, "On the pin's end"))
    drawing.add(_label(WIDTH_PX / 2, 20, "Section, the principle, not to scale"))
    return Sketch(drawing.text(), words)


def _across(rail: tuple[float, float]) -> tuple[float, float, float]:
    return rail[0], 308, rail[1]


def _end_view(nested: bool) -> list[str]:
    x, y = _ROUND
    parts = [
        _rect(x - 100, y - 86, x + 100, y + 86, "tsn-cut"),
        f'<circle class="tsn-part" cx="{x}" cy="{y}" r="{_RADIUS}"/>',
        _roll(_RADIUS - 1, 0.0),
    ]
    if nested:
        parts.append(_roll(_RADIUS - _ROLL_PX - 3, 180.0))
    parts.append(f'<path class="tsn-centre" d="M{x - 112} {y}H{x + 112}M{x} {y - 98}V{y + 98}"/>')
    parts += [_arrow((x + 70, y), (x + 118, y)), word(x, y, "slot →")]
    return parts


def _roll(outer: float, towards_deg: float) -> str:
    """The rolled sheet of a pin, open where its slot points."""
    (x, y), inner = _ROUND, outer - _ROLL_PX
    start, end = (math.radians(towards_deg + sign * _SLOT_DEG) for sign in (1, -1))

    def spot(radius: float, angle: float) -> str:
        return f"{x + radius * math.cos(angle):.1f} {y + radius * math.sin(angle):.1f}"

    return (
        f'<path class="tsn-part" d="M{spot(outer, start)}A{outer} {outer} 0 1 1 {spot(outer, end)}'
        f'L{spot(inner, end)}A{inner} {inner} 0 1 0 {spot(inner, start)}Z"/>'
    )


def taper_pin_section(pin: TaperPin, hole: Q, boss: Q) -> Sketch:
    """Draw a taper pin home in its reamed hole, with the ends that it is struck on.

    Parameters
    ----------
    pin : TaperPin
    hole : length
        Diameter of the reamed hole at its wide end.
    boss : length
        Length of the hole.

    Returns
    -------
    Sketch
    """
    proud = pin.stands_proud(hole).m_as("mm")
    stands = (
        f"stands {proud:.1f} mm proud of the face" if proud >= 0 else f"has sunk {-proud:.1f} mm"
    )
    words = (
        f"The large end {stands}. The pin goes in by a blow on its large end and comes out by a "
        "blow on its small end."
    )
    drawing = Drawing(
        WIDTH_PX, HEIGHT_PX, words, f"{words} The taper is drawn {STEEPER:g} times as steep."
    )
    face, axis, length = 180.0, 160.0, pin.length_m * 1e3 * _PX_PER_MM
    back = face + boss.m_as("mm") * _PX_PER_MM
    large, small = (_half(pin, share) for share in (0.0, 1.0))
    slope = (large - small) / length
    end = face - proud * _PX_PER_MM
    wide, narrow = (large - slope * (x - end) for x in (face, back))
    drawing.add(f"<style>{_CSS}</style>", _HATCH)
    for sign in (-1, 1):
        drawing.add(
            f'<path class="tsn-cut" d="M{face} {axis + sign * 96}V{axis + sign * wide:.1f}'
            f'L{back:.1f} {axis + sign * narrow:.1f}V{axis + sign * 96}Z"/>'
        )
    centre, radius = (face + back) / 2, 0.31 * (back - face)
    drawing.add(
        f'<circle class="tsn-part" cx="{centre:.1f}" cy="{axis}" r="{radius:.1f}"/>',
        f'<path class="tsn-part" d="M{end:.1f} {axis - large:.1f}L{end + length:.1f} '
        f"{axis - small:.1f}V{axis + small:.1f}L{end:.1f} {axis + large:.1f}Z"
        '"/>',
        f'<path class="tsn-centre" d="M96 {axis}H{end + length + 40:.1f}"/>',
        _arrow((end - 76, axis), (end - 10, axis)),
        _arrow((end + length + 76, axis), (end + length + 10, axis)),
        _label(end - 58, axis - 14, "in: strike here"),
        _label(end + length + 64, axis - 14, "out: strike here"),
        word(face + 30, axis - 80, "hub"),
        word(centre, axis - 48, "shaft"),
        word(centre, axis, "pin"),
    )
    drawing.add(*_proud(end, face, axis + 118, proud))
    drawing.add(_label(WIDTH_PX / 2, 22, f"Section; taper drawn {STEEPER:g} times as steep"))
    return Sketch(drawing.text(), words)


def _half(pin: TaperPin, share: float) -> float:
    """Half the drawn height of the pin at a part of its length from the large end."""
    thick = pin.large.m_as("mm") - STEEPER * share * (pin.large.m_as("mm") - pin.small_m * 1e3)
    return max(4.0, thick / 2 * _PX_PER_MM * 1.3)


def _proud(end: float, face: float, y: float, proud: float) -> list[str]:
    """How far it stands proud, as a dimension below the drawing."""
    lines = "".join(f"M{x:.1f} {y - 70}V{y + 6}" for x in (end, face))
    return [
        f'<path class="tsn-thin" d="{lines}M{end - 26:.1f} {y}H{face + 26:.1f}"/>',
        _label(
            (end + face) / 2, y + 22, f"{'proud' if proud >= 0 else 'sunk'} by {abs(proud):.1f} mm"
        ),
    ]


def _rect(x0: float, y0: float, x1: float, y1: float, kind: str) -> str:
    return f'<rect class="{kind}" x="{x0}" y="{y0}" width="{x1 - x0}" height="{y1 - y0}"/>'


def _arrow(start: tuple[float, float], end: tuple[float, float]) -> str:
    """A level arrow."""
    (x0, y), (x1, _) = start, end
    sign = 1 if x1 > x0 else -1
    tip = f"M{x1} {y}l{-12 * sign} -8v16Z"
    return (
        f'<path class="tsn-way" d="M{x0} {y}H{x1 - 10 * sign}"/><path class="tsn-head" d="{tip}"/>'
    )


def _label(x: float, y: float, text: str) -> str:
    return f'<text class="tsf-t" text-anchor="middle" x="{x:.1f}" y="{y:.1f}">{escape(text)}</text>'
