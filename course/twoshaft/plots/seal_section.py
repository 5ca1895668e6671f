"""A shaft seal in its bore in half section: which way the lip looks, and how deep it sits.

The principle, not to scale: depth and lean are drawn larger than they are.
"""

from __future__ import annotations

import math

from twoshaft.models.fit import Side
from twoshaft.plots import style
from twoshaft.plots.drawing import Drawing, word
from twoshaft.plots.driven_section import Sketch

WIDTH_PX, HEIGHT_PX = 420.0, 300.0
PX_PER_MM = 14.0
"""How far a millimetre of depth is drawn."""
_FACE, _BORE, _SHAFT, _AXIS = 250.0, 96.0, 190.0, 262.0
_WIDE = 52.0
_MOST_PX = 90.0
_CSS = (
    f".tsl-part{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW};stroke-width:{style.THICK_PX}}}"
    f".tsl-seal{{fill:{style.QUIET_NOW};stroke:{style.INK_NOW};stroke-width:{style.THICK_PX};"
    "stroke-linejoin:round}"
    f".tsl-thin{{stroke:{style.INK_NOW};stroke-width:{style.THIN_PX};fill:none}}"
    f".tsl-centre{{stroke:{style.INK_NOW};stroke-width:{style.THIN_PX};stroke-dasharray:14 3 3 3}}"
    f".tsl-spring{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW};stroke-width:{style.THICK_PX}}}"
)


def seal_section(lip: Side, depth_mm: float = 0.0, lean_mm: float = 0.0) -> Sketch:
    """Draw a seal in its bore; oil to the left, air to the right.

    Parameters
    ----------
    lip : Side
        What the open side of the lip looks at.
    depth_mm : float
        Of its outer face below the face of the housing [mm].
    lean_mm : float
        How much deeper one side is than the other [mm].

    Returns
    -------
    Sketch
    """
    lip = Side(lip)
    words = f"The lip looks towards the {lip}; oil is on the left, air on the right."
    drawing = Drawing(WIDTH_PX, HEIGHT_PX, words, f"{words} Depth and lean are not to scale.")
    drawing.add(f"<style>{_CSS}</style>", _case())
    drawing.add(
        f'<rect class="tsl-part" x="20" y="{_SHAFT}" width="370" height="{_AXIS - _SHAFT}"/>'
    )
    drawing.add(f'<path class="tsl-centre" d="M8 {_AXIS}H{WIDTH_PX - 8}"/>')
    drawing.add(f'<g class="tsl-moving" transform="{placed(depth_mm, lean_mm)}">{_seal(lip)}</g>')
    for x, text in ((70, "oil"), (350, "air")):
        drawing.add(f'<text class="tsf-h" text-anchor="middle" x="{x}" y="160">{text}</text>')
    for x, y, text in ((70, 232, "shaft"), (210, 290, "not to scale")):
        drawing.add(f'<text class="tsf-t" text-anchor="middle" x="{x}" y="{y}">{text}</text>')
    drawing.add(word(150, 65, "housing"))
    return Sketch(drawing.text(), words)


def placed(depth_mm: float, lean_mm: float) -> str:
    """The transform that puts the seal where it sits."""
    shift = max(-_MOST_PX, min(_MOST_PX, PX_PER_MM * depth_mm))
    turn = math.degrees(math.atan(min(lean_mm, 1.5) / 8))
    return f"translate({-shift:.1f} 0) rotate({turn:.2f} {_FACE - _WIDE / 2:.0f} {_BORE})"


def _case() -> str:
    lines = "".join(f"M{x} {_BORE}l-40 -62" for x in range(92, int(_FACE) + 1, 12))
    return (
        f'<path class="tsl-part" d="M50 34H{_FACE}V{_BORE}H50Z"/>'
        f'<path class="tsl-thin" d="{lines}"/>'
        f'<path class="tsl-thin" d="M{_FACE} {_BORE}V{_BORE + 14}"/>'
    )


def _seal(lip: Side) -> str:
    """The seal's section, its lip open to the left for oil, mirrored for air."""
    right, left = _FACE, _FACE - _WIDE
    body = (
        f"M{left} {_BORE}H{right}V{_SHAFT - 26}L{right - 18} {_SHAFT - 22}L{left + 16} {_SHAFT}"
        f"L{left + 4} {_SHAFT - 12}L{right - 16} {_SHAFT - 44}V{_BORE + 12}H{left}Z"
    )
    spring = f'<circle class="tsl-spring" cx="{left + 10}" cy="{_SHAFT - 20}" r="6"/>'
    drawn = f'<path class="tsl-seal" d="{body}"/>{spring}'
    if lip is Side.OIL:
        return drawn
    return f'<g transform="translate({left + right} 0) scale(-1 1)">{drawn}</g>'
