"""Drawings of a bolted face: its outline with the bolts to scale, and the clamp of each bolt."""

from __future__ import annotations

from collections.abc import Collection, Sequence

import numpy as np

from twoshaft.models.joint import Fastening
from twoshaft.plots import style
from twoshaft.plots.bolts_pointed import EDGE_PX, ROOM_PX, band_of, extent_mm, width_mm
from twoshaft.plots.drawing import Drawing
from twoshaft.units.unit import Unit

_LEAST_PX = 9.0  # a smaller bolt would hide its number
_ROW_PX = 24
_BAR_PX = 230
_LEFT_PX = 30


def face_drawing(
    unit: Unit,
    fastening: Fastening,
    title: str,
    description: str,
    pulled: Collection[int] = (),
    live: bool = False,
) -> str:
    """Draw a face seen from the heads of its bolts.

    Parameters
    ----------
    unit, fastening : Unit, Fastening
    title, description : str
    pulled : collection of int
        Bolts from 0 that are shown as tight.
    live : bool
        Whether each bolt is to be a button.

    Returns
    -------
    str
        One SVG element; bolt k is the group with ``data-bolt="k"``.
    """
    rings, low, high = extent_mm(unit, fastening)
    scale = min((ROOM_PX - 2 * EDGE_PX) / max(high - low), 3.2)
    width, height = (high - low) * scale + 2 * EDGE_PX
    role = "group" if live else "img"
    drawing = Drawing(width, height + 20, title, description, grow=1.8)
    for ring in rings:
        path = " ".join(f"{x:.1f},{y:.1f}" for x, y in _placed(ring, low, high, scale))
        drawing.add(
            f'<polygon points="{path}" fill="none" stroke="{style.INK_NOW}" '
            f'stroke-width="{style.THICK_PX}" stroke-linejoin="round"/>'
        )
    if not rings:
        drawing.add(*_band(fastening, low, high, scale))
    drawing.add(*_centre_lines(fastening, low, high, scale))
    for k, (x, y) in enumerate(_placed(fastening.positions_m * 1e3, low, high, scale)):
        radius = max(fastening.group.head_mm / 2 * scale, _LEAST_PX)
        drawing.add(_bolt(k, x, y, radius, k in pulled, live))
    drawing.add(
        f'<text class="tsf-t" x="{EDGE_PX}" y="{height + 14:.0f}">To scale, '
        f"{high[0] - low[0]:.0f} mm wide</text>"
    )
    return drawing.text().replace('role="img"', f'role="{role}"', 1)


def _band(fastening: Fastening, low, high, scale: float) -> list[str]:
    """The flange as the band through its bolts."""
    points = _placed(fastening.positions_m * 1e3, low, high, scale)
    return band_of(points, width_mm(fastening) * scale)


def _placed(points, low, high, scale: float) -> np.ndarray:
    points = np.asarray(points, float)
    x = (points[:, 0] - low[0]) * scale + EDGE_PX
    y = (high[1] - points[:, 1]) * scale + EDGE_PX
    return np.stack([x, y], axis=1)


def _centre_lines(fastening: Fastening, low, high, scale: float) -> list[str]:
    """A dash-dot cross through each bolt, as a drafter sets it."""
    arm = max(fastening.group.head_mm / 2 * scale, _LEAST_PX) + 7
    lines = []
    for x, y in _placed(fastening.positions_m * 1e3, low, high, scale):
        for dx, dy in ((arm, 0), (0, arm)):
            lines.append(
                f'<line x1="{x - dx:.1f}" y1="{y - dy:.1f}" x2="{x + dx:.1f}" y2="{y + dy:.1f}" '
                f'stroke="{style.QUIET_NOW}" stroke-width="0.7" stroke-dasharray="6 2 1 2"/>'
            )
    return lines


def _bolt(k: int, x: float, y: float, radius: float, tight: bool, live: bool) -> str:
    state = " tsj-tight" if tight else ""
    keys = f' role="button" tabindex="{0 if k == 0 else -1}"' if live else ""
    ground = style.INK_NOW if tight else style.PAPER_NOW
    ink = style.PAPER_NOW if tight else style.INK_NOW
    size = style.grown(style.SMALL_PX)
    return (
        f'<g class="tsj-bolt{state}" data-bolt="{k}"{keys}>'
        f'<circle cx="{x:.1f}" cy="{y:.1f}" r="{radius:.1f}" fill="{ground}" '
        f'stroke="{style.INK_NOW}" stroke-width="1.5"/>'
        f'<text x="{x:.1f}" y="{y:.1f}" text-anchor="middle" dominant-baseline="central" '
        f'fill="{ink}" style="font-size:{size};font-weight:600">{k + 1}</text></g>'
    )


def clamp_bars(
    clamp_kn: Sequence[float],
    tight: Sequence[bool],
    target_kn: float,
    need_kn: float,
    title: str,
    last: int | None = None,
) -> str:
    """Draw the clamp of every bolt as a bar with its figure, and the clamps aimed at and needed.

    Parameters
    ----------
    clamp_kn : sequence of float
    tight : sequence of bool
        Whether the bolt has been pulled at all.
    target_kn, need_kn : float
    title : str
        The finding.
    last : int, optional
        The bolt that was pulled last.

    Returns
    -------
    str
        One SVG element.
    """
    top = max([target_kn * 1.15, *clamp_kn])
    per = _BAR_PX / top
    foot = 18 + _ROW_PX * len(clamp_kn)
    said = ", ".join(f"bolt {k} {v:.1f} kN" for k, v in enumerate(clamp_kn, 1))
    drawing = Drawing(_LEFT_PX + _BAR_PX + 120, foot + 40, title, said)
    for k, value in enumerate(clamp_kn):
        y = 18 + _ROW_PX * k
        mark = "▸" if k == last else ""
        drawing.add(
            f'<text class="tsf-t" x="0" y="{y + 16}">{mark}</text>'
            f'<text class="tsf-t" text-anchor="end" x="{_LEFT_PX - 5}" y="{y + 16}">{k + 1}</text>'
            f'<rect x="{_LEFT_PX}" y="{y + 4}" width="{value * per:.1f}" height="{_ROW_PX - 9}" '
            f'fill="{style.OKABE_ITO["sky"]}" stroke="{style.INK_NOW}" stroke-width="1"/>'
            f'<text class="tsf-t" x="{_LEFT_PX + _BAR_PX + 8}" y="{y + 16}">'
            f"{f'{value:.1f} kN' if tight[k] else 'not pulled'}</text>"
        )
    lines = ((target_kn, "aimed at", "", 15), (need_kn, "needed", "6 3", 31))
    for value, text, dashes, drop in lines:
        x = _LEFT_PX + value * per
        drawing.add(
            f'<line x1="{x:.1f}" x2="{x:.1f}" y1="14" y2="{foot + 4}" stroke="{style.INK_NOW}" '
            f'stroke-width="{style.THICK_PX}" stroke-dasharray="{dashes or "none"}"/>'
            f'<text class="tsf-t" text-anchor="middle" x="{x:.1f}" y="{foot + drop + 3}">'
            f"{text} {value:.1f} kN</text>"
        )
    return drawing.text()
