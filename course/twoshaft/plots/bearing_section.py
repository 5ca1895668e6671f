"""A shaft on its pair of opposed bearings in half section, to scale, with the shim where it sits.

Thick outlines, thin hatching and dash-dot centre lines as in ISO 128; the shaft is not hatched,
since it is cut along its length. Places are in millimetres from the middle of the pair.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, field
from html import escape

from twoshaft.errors import CourseError
from twoshaft.plots import style
from twoshaft.plots.drawing import Drawing
from twoshaft.plots.style import css_variables
from twoshaft.units.sections.bearings import (
    Arrangement,
    BallBearing,
    Bearings,
    ShimPlace,
    Support,
    TaperBearing,
)

_LIP_MM, _HOLD_MM, _REACH_MM = 11.0, 4.5, 16.0
_HATCH_PX = 9.0
_TOP_PX, _FOOT_PX = 34.0, 34.0
# ISO 128 puts thin lines at half the width of thick ones.
_CSS = (
    f".tsb-thick{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW};stroke-width:{style.THICK_PX};"
    "stroke-linejoin:round}"
    f".tsb-thin{{fill:none;stroke:{style.INK_NOW};stroke-width:{style.THIN_PX}}}"
    f".tsb-centre{{fill:none;stroke:{style.INK_NOW};stroke-width:{style.THIN_PX};"
    "stroke-dasharray:14 3 3 3}"
    f".tsb-shim{{fill:{style.INK_NOW};stroke:{style.INK_NOW};stroke-width:{style.THIN_PX}}}"
)
_WORDS = {
    ShimPlace.BEHIND_OUTER: "behind an outer ring",
    ShimPlace.BEHIND_INNER: "behind an inner ring",
    ShimPlace.UNDER_COVER: "under the cover that holds an outer ring",
    ShimPlace.BETWEEN_OUTER: "between the outer rings",
    ShimPlace.BETWEEN_INNER: "between the inner rings",
}


@dataclass(frozen=True)
class Section:
    """A half section as SVG, with what a rig needs to draw beside it.

    ``scale_px`` is how many pixels a millimetre takes; ``axis_px`` the height of the centre line;
    ``end_px`` the right end of the shaft.
    """

    svg: str
    words: str
    width_px: float
    height_px: float
    scale_px: float
    axis_px: float
    end_px: float

    def _repr_html_(self) -> str:
        return beside([("", self)])._repr_html_()


@dataclass(frozen=True)
class Sections:
    """Half sections side by side, each under its heading."""

    shown: tuple[tuple[str, Section], ...]

    def _repr_html_(self) -> str:
        figures = "".join(
            '<figure style="margin:0 24px 8px 0">'
            f"{section.svg}<figcaption>{escape(_caption(heading, section))}</figcaption></figure>"
            for heading, section in self.shown
        )
        return (
            f'<style>{css_variables()}</style><div class="twoshaft" '
            f'style="display:flex;flex-wrap:wrap">{figures}</div>'
        )


def _caption(heading: str, section: Section) -> str:
    words = section.words if heading else section.words[0].upper() + section.words[1:]
    return f"{heading}: {words}." if heading else f"{words}."


@dataclass
class _Sheet:
    """Gathers shapes in millimetres and turns them into pixels at the end."""

    shapes: list[tuple[list[tuple[float, float]], str, float]] = field(default_factory=list)
    notes: list[tuple[str, tuple[float, float]]] = field(default_factory=list)

    def add(self, points, kind: str = "tsb-thick", hatch: float = 0.0) -> None:
        self.shapes.append((list(points), kind, hatch))

    def block(self, x0, x1, r0, r1, kind: str = "tsb-thick", hatch: float = 0.0) -> None:
        self.add([(x0, r0), (x1, r0), (x1, r1), (x0, r1)], kind, hatch)

    def note(self, text: str, x: float, r: float) -> None:
        self.notes.append((text, (x, r)))


def beside(shown: Iterable[tuple[str, Section]]) -> Sections:
    """Put sections side by side under their headings."""
    return Sections(tuple(shown))


def placed(arrangement: Arrangement, place: ShimPlace) -> str:
    """Arrangement and place of the shim in words."""
    rings = "outer" if Arrangement(arrangement) is Arrangement.OUTER_TOGETHER else "inner"
    return f"the {rings} rings are pressed together; the shim sits {_WORDS[ShimPlace(place)]}"


def bearing_section(
    support: Support,
    bearings: Bearings,
    *,
    shim_mm: float,
    arrangement: Arrangement | None = None,
    place: ShimPlace | None = None,
    to_scale: bool = True,
    width_px: float = 560.0,
) -> Section:
    """Draw a support in half section.

    Parameters
    ----------
    support : Support
    bearings : Bearings
    shim_mm : float
        Thickness of the shim as drawn [mm].
    arrangement, place : optional
        Another arrangement, or place of the shim, for a drawing of the principle.
    to_scale : bool
        Whether the shim is drawn with its own thickness; the drawing says so.
    width_px : float
        Width of the drawing.

    Raises
    ------
    CourseError
        For a shim under a cover where a nut presses the inner rings together.
    """
    arrangement = Arrangement(arrangement or support.arrangement)
    place = ShimPlace(place or support.shim_place)
    if (arrangement, place) == (Arrangement.INNER_TOGETHER, ShimPlace.UNDER_COVER):
        raise CourseError("no cover backs a ring where the inner rings are pressed together")
    left, right = (bearings.set_by_id(side) for side in (support.left, support.right))
    sheet = _Sheet()
    if arrangement is Arrangement.OUTER_TOGETHER:
        ends = _outer_together(sheet, support, left, right, place, shim_mm)
    else:
        ends = _inner_together(sheet, support, left, right, place, shim_mm)
    words = placed(arrangement, place)
    scale = "to scale" if to_scale else "not to scale"
    top_mm = max(left.outside_mm, right.outside_mm) / 2 + support.case_wall_mm
    k = width_px / (ends[1] - ends[0] + 8.0)
    axis_px = _TOP_PX + k * top_mm
    drawing = Drawing(
        width_px,
        axis_px + _FOOT_PX,
        f"{support.name} in half section, {scale}: {words}.",
        f"From left to right: case, left bearing, shaft, right bearing, case. {words}.",
    )
    drawing.add(f"<style>{_CSS}</style>")

    def px(point):
        return k * (point[0] - ends[0] + 4.0), axis_px - k * point[1]

    for points, kind, hatch in sheet.shapes:
        spots = [px(point) for point in points]
        drawing.add(f'<path class="{kind}" d="{_path(spots)}Z"/>')
        if hatch:
            drawing.add(f'<path class="tsb-thin" d="{_hatching(spots, hatch)}"/>')
    drawing.add(f'<path class="tsb-centre" d="M0 {axis_px:.1f}H{width_px:.0f}"/>')
    for k_note, (text, at) in enumerate(sheet.notes):
        x, y = px(at)
        anchor = min(max(x, 40.0), width_px - 40.0)
        row = 14.0 if k_note % 2 == 0 else 28.0
        drawing.add(
            f'<path class="tsb-thin" d="M{anchor:.1f} {row + 3:.1f}L{x:.1f} {y:.1f}"/>'
            f'<text class="tsf-t" text-anchor="middle" x="{anchor:.1f}" y="{row:.1f}">{text}</text>'
        )
    drawing.add(f'<text class="tsf-t" x="4" y="{axis_px + 26:.1f}">Half section, {scale}</text>')
    return Section(
        drawing.text(), words, width_px, axis_px + _FOOT_PX, k, axis_px, px((ends[1], 0.0))[0]
    )


def _outer_together(sheet, support, left, right, place, shim) -> tuple[float, float]:
    """The case, or a cover, presses the outer rings inwards; shoulders back the inner rings."""
    half = support.shaft_span_mm / 2
    inner = {-1: -half, 1: half}
    outer = {-1: -half - left.stand_mm, 1: half + right.stand_mm}
    if place is ShimPlace.BEHIND_INNER:
        half -= shim
    seat = outer[1] + (shim if place is ShimPlace.BEHIND_OUTER else 0.0)
    end = seat + _LIP_MM
    bore = max(left.outside_mm, right.outside_mm) / 2
    top, hold = bore + support.case_wall_mm, bore - _HOLD_MM
    start = outer[-1] - _LIP_MM
    if place is ShimPlace.UNDER_COVER:
        face = seat + 4.0
        end = face + shim + _LIP_MM
        sheet.add([(start, hold), (outer[-1], hold), (outer[-1], bore), (face, bore), (face, top),
                   (start, top)], hatch=45)  # fmt: skip
        sheet.add([(seat, hold), (end, hold), (end, top), (face + shim, top),
                   (face + shim, bore - 0.2), (seat, bore - 0.2)], hatch=-45)  # fmt: skip
        sheet.block(face, face + shim, bore, top, "tsb-shim")
        sheet.note("shim", face + shim / 2, top - 1)
        sheet.note("cover", end - 4, top - 3)
    else:
        sheet.add([(start, hold), (outer[-1], hold), (outer[-1], bore), (seat, bore), (seat, hold),
                   (end, hold), (end, top), (start, top)], hatch=45)  # fmt: skip
    sheet.note("case", 0.4 * half, top - 2)
    bore_r = min(left.bore_mm, right.bore_mm) / 2
    tips = (start - 2.0, end + _REACH_MM)
    sheet.block(tips[0], tips[1], 0.0, bore_r)
    if place is ShimPlace.BETWEEN_INNER:
        _sleeve(sheet, -half, half, bore_r, bore_r + 3.5, shim)
    else:
        sheet.block(-support.shaft_span_mm / 2, half, 0.0, bore_r + 4.0)
    _bearing(sheet, left, outer[-1], +1)
    _bearing(sheet, right, outer[1], -1)
    if place is ShimPlace.BEHIND_OUTER:
        sheet.block(outer[1], seat, hold, bore, "tsb-shim")
        sheet.note("shim", outer[1] + shim / 2, bore - 0.5)
    elif place is ShimPlace.BEHIND_INNER:
        sheet.block(half, inner[1], bore_r, bore_r + 4.0, "tsb-shim")
        sheet.note("shim", half + shim / 2, bore_r + 3.5)
    elif place is ShimPlace.BETWEEN_OUTER:
        left_front, right_front = _front(left, outer[-1], 1), _front(right, outer[1], -1)
        _sleeve(sheet, left_front, right_front, bore - 3.0, bore, shim)
    return tips


def _inner_together(sheet, support, left, right, place, shim) -> tuple[float, float]:
    """A nut presses the inner rings inwards; a land in the case backs the outer rings."""
    half = support.case_span_mm / 2
    outer = {-1: -half, 1: half}
    inner = {-1: -half - left.stand_mm, 1: half + right.stand_mm}
    bore = max(left.outside_mm, right.outside_mm) / 2
    bore_r = min(left.bore_mm, right.bore_mm) / 2
    top, hold = bore + support.case_wall_mm, bore - _HOLD_MM
    start, end = inner[-1] - 3.0, inner[1] + 3.0
    land = half - shim if place is ShimPlace.BEHIND_OUTER else half
    if place is ShimPlace.BETWEEN_OUTER:
        sheet.block(start, end, bore, top, hatch=45)
        _sleeve(sheet, -half, half, hold, bore, shim)
    else:
        sheet.add([(start, bore), (-half, bore), (-half, hold), (land, hold), (land, bore),
                   (end, bore), (end, top), (start, top)], hatch=45)  # fmt: skip
    sheet.note("case", 0.4 * half, top - 2)
    nut = inner[1] + (shim if place is ShimPlace.BEHIND_INNER else 0.0)
    tips = (inner[-1] - 12.0, nut + _REACH_MM + 6.0)
    sheet.block(tips[0], inner[-1], 0.0, bore_r + 4.0)
    sheet.block(inner[-1], tips[1], 0.0, bore_r)
    sheet.block(nut, nut + 8.0, bore_r, bore_r + 7.0)
    sheet.note("nut", nut + 4.0, bore_r + 6.0)
    _bearing(sheet, left, outer[-1], -1)
    _bearing(sheet, right, outer[1], +1)
    if place is ShimPlace.BEHIND_OUTER:
        sheet.block(land, half, hold, bore, "tsb-shim")
        sheet.note("shim", half - shim / 2, bore - 0.5)
    elif place is ShimPlace.BEHIND_INNER:
        sheet.block(inner[1], nut, bore_r, bore_r + 5.0, "tsb-shim")
        sheet.note("shim", inner[1] + shim / 2, bore_r + 4.5)
    elif place is ShimPlace.BETWEEN_INNER:
        _sleeve(sheet, -half, half, bore_r, bore_r + 3.5, shim)
    return tips


def _sleeve(sheet, x0, x1, r0, r1, shim) -> None:
    """A fixed spacer with the shim at its right end."""
    sheet.block(x0, x1 - shim, r0, r1, hatch=-45)
    sheet.block(x1 - shim, x1, r0, r1, "tsb-shim")
    sheet.note("shim", x1 - shim / 2, r1 - 0.5)
    sheet.note("fixed spacer", x0 + (x1 - x0) * 0.22, r1 - 0.5)


def _front(bearing, back: float, way: int) -> float:
    share = 0.82 if isinstance(bearing, TaperBearing) else 1.0
    return back + way * share * bearing.stand_mm


def _bearing(sheet: _Sheet, bearing, back: float, way: int) -> None:
    """Rings and one element; ``back`` is the outer ring's back, the bearing lies to ``way``."""
    if isinstance(bearing, BallBearing):
        _ball_bearing(sheet, bearing, back, way)
    else:
        _taper_bearing(sheet, bearing, back, way)


def _taper_bearing(sheet: _Sheet, bearing: TaperBearing, back: float, way: int) -> None:
    stand, slope = bearing.stand_mm, math.tan(math.radians(bearing.contact_angle_deg))
    pitch = (bearing.bore_mm + bearing.outside_mm) / 4
    half = bearing.roller_diameter_mm / 2
    away = half * math.hypot(1.0, slope)
    at = [back + way * stand * share for share in (0.0, 0.08, 0.82, 1.0)]

    def outer(x):
        return pitch + away + (way * (x - back) - stand / 2) * slope

    def inner(x):
        return pitch - away + (way * (x - back) - stand / 2) * slope

    long = min(bearing.roller_length_mm, 0.75 * stand) / 2
    rib = back + way * (stand / 2 + long / math.hypot(1.0, slope) + 0.4 * half * slope)
    sheet.add([(at[0], bearing.outside_mm / 2), (at[2], bearing.outside_mm / 2),
               (at[2], outer(at[2])), (at[0], outer(at[0]))], hatch=-45)  # fmt: skip
    sheet.add([(at[1], bearing.bore_mm / 2), (at[3], bearing.bore_mm / 2),
               (at[3], inner(at[3]) + half * 0.7), (rib, inner(rib) + half * 0.7),
               (rib, inner(rib)), (at[1], inner(at[1]))], hatch=45)  # fmt: skip
    along = (1 / math.hypot(1.0, slope), slope / math.hypot(1.0, slope))
    middle = back + way * stand / 2
    corners = ((-long, -half), (long, -half), (long, half), (-long, half))
    sheet.add([(middle + way * (u * along[0] - v * along[1]), pitch + u * along[1] + v * along[0])
               for u, v in corners])  # fmt: skip


def _ball_bearing(sheet: _Sheet, bearing: BallBearing, back: float, way: int) -> None:
    stand, half = bearing.stand_mm, bearing.ball_diameter_mm / 2
    pitch, far = (bearing.bore_mm + bearing.outside_mm) / 4, back + way * bearing.stand_mm
    x0, x1 = min(back, far), max(back, far)
    sheet.block(x0, x1, pitch + 0.5 * half, bearing.outside_mm / 2, hatch=-45)
    sheet.block(x0, x1, bearing.bore_mm / 2, pitch - 0.5 * half, hatch=45)
    middle = back + way * stand / 2
    turn = [math.tau * step / 40 for step in range(40)]
    sheet.add([(middle + half * math.cos(a), pitch + half * math.sin(a)) for a in turn])
    lean = math.radians(bearing.contact_angle_deg)
    dx, dr = -way * math.sin(lean) * half * 1.7, math.cos(lean) * half * 1.7
    sheet.add([(middle + dx, pitch + dr), (middle - dx, pitch - dr)], "tsb-centre")


def _path(spots) -> str:
    return "M" + "L".join(f"{x:.1f} {y:.1f}" for x, y in spots)


def _hatching(spots, angle: float) -> str:
    """Thin parallel lines at 45 degrees across a shape whose edges do not cross."""
    rise = math.copysign(1.0, angle)
    # Along each line, y + rise * x stays the same.
    heights = [y + rise * x for x, y in spots]
    parts, at = [], math.ceil(min(heights) / _HATCH_PX) * _HATCH_PX
    while at < max(heights):
        cuts = []
        for k, (x, y) in enumerate(spots):
            before, after = heights[k - 1] - at, heights[k] - at
            if (before < 0) != (after < 0):
                share = before / (before - after)
                x_0, y_0 = spots[k - 1]
                cuts.append((x_0 + share * (x - x_0), y_0 + share * (y - y_0)))
        cuts.sort()
        parts += [_path(pair) for pair in zip(cuts[::2], cuts[1::2], strict=False)]
        at += _HATCH_PX
    return "".join(parts)
