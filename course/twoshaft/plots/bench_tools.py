"""Tools of the bench: as they look in the hand, and as they stand at the unit.

In the hand they are simple outlines, not to scale. At the unit they stand where the section says
(``models.tooling``); of a tool that it shows no place for, the outline stands at the part.
"""

from __future__ import annotations

from collections.abc import Mapping
from html import escape

from twoshaft.models.tooling import ToolStands
from twoshaft.plots.unit_section import Placed
from twoshaft.units.sections.order import Part
from twoshaft.units.sections.tool_forms import ToolForm

SIDE_PX = 96.0
TIP_PX = (48.0, 94.0)
"""Where a tool meets what it stands on."""

_OVER_MM = (20.0, 14.0)  # how far beyond its view a tool is drawn, along z and across
_FACE_MM = 13.0  # radius of a dial
_NEAR_MM, _LONG_MM = 4.0, 22.0  # from where a tool touches to the ends of its arrow

_ROD = '<path class="tsu-whole" d="M44 {0}H52V{1}H44Z"/>'
_DRIVER = _ROD.format(4, 62) + '<path class="tsu-whole" d="M20 62H76V78H68V94H28V78H20Z"/>'
_FORMS = {
    ToolForm.DIAL: '<circle class="tsu-whole" cx="48" cy="36" r="30"/><path class="tsu-coil" '
    'd="M48 36L64 18M48 6V14M78 36H70M48 66V58M18 36H26"/><path class="tsu-whole" '
    'd="M44 66H52V84L48 94L44 84Z"/>',
    ToolForm.DEPTH: _ROD.format(4, 94) + '<path class="tsu-whole" d="M12 52H84V66H12Z"/>'
    '<path class="tsu-line" d="M52 12H58M52 20H56M52 28H58M52 36H56M52 44H58"/>',
    ToolForm.WRENCH: '<path class="tsu-whole" d="M4 12L12 4L72 64L64 72Z"/>'
    '<path class="tsu-whole" d="M2 14L14 2L34 22L22 34Z"/>'
    '<circle class="tsu-whole" cx="68" cy="68" r="13"/><path class="tsu-whole" '
    'd="M60 76L48 94L66 84Z"/>',
    ToolForm.DRIVER: _DRIVER,
    ToolForm.SLEEVE: '<path class="tsu-whole" d="M24 20H72V94H62V30H34V94H24Z"/>',
    ToolForm.INSTALLER: _DRIVER + '<path class="tsu-line" d="M44 14L52 10M44 24L52 20M44 34L52 30'
    'M44 44L52 40M44 54L52 50"/>',
    ToolForm.PUNCH: '<path class="tsu-whole" d="M40 4H56V60L51 94H45L40 60Z"/>',
    ToolForm.SCALE: '<path class="tsu-whole" d="M36 14H60V66H36Z"/><path class="tsu-coil" '
    'd="M48 14V4M48 66V94M42 26H50M42 36H54M42 46H50"/>',
    ToolForm.STRAIGHTEDGE: '<path class="tsu-whole" d="M4 74H92V94H4Z"/>',
    ToolForm.FEELER: '<path class="tsu-whole" d="M20 74L84 26L88 32L24 80Z"/>'
    '<path class="tsu-line" d="M20 74L78 16L84 22L26 76"/>',
    ToolForm.PRESS: '<path class="tsu-whole" d="M8 4H88V18H8Z"/>' + _ROD.format(18, 78)
    + '<path class="tsu-whole" d="M30 78H66V94H30Z"/>',
    ToolForm.HAMMER: '<path class="tsu-whole" d="M8 66H60V94H8Z"/>'
    '<path class="tsu-whole" d="M44 66L80 4L90 10L54 72Z"/>',
}  # fmt: skip


def tool_outline(form: ToolForm) -> str | None:
    """A tool as SVG in a square of ``SIDE_PX``; None for a form that is not drawn.

    Parameters
    ----------
    form : ToolForm
    """
    return _FORMS.get(form)


def tool_standing(form: ToolForm, name: str, at: tuple[float, float], reads: str = "") -> str:
    """A tool with its tip at a place of a picture, as SVG, with what is set on it beside it.

    Parameters
    ----------
    form : ToolForm
        One that :func:`tool_outline` draws.
    name : str
        What the workshop calls it.
    at : (float, float)
        The place [px].
    reads : str, optional
        What is set on it.
    """
    x, y = at[0] - TIP_PX[0], at[1] - TIP_PX[1]
    words = (
        f'<text class="tsu-t tsu-on" x="{SIDE_PX + 4:g}" y="12">{escape(reads)}</text>'
        if reads else ""
    )  # fmt: skip
    return (
        f'<g class="tsu-tool" transform="translate({x:.0f} {y:.0f})"><title>{escape(name)}</title>'
        f"{tool_outline(form)}{words}</g>"
    )


def tool_in_place(
    stands: ToolStands, placed: Placed, name: str, *, push: bool = False, reads: str = ""
) -> str:
    """A tool where it stands in a view of the unit, as SVG; cut off where the picture ends.

    Parameters
    ----------
    stands : ToolStands
    placed : Placed
        Its view.
    name : str
        What it is called.
    push : bool, optional
        Whether an arrow says which way it pushes.
    reads : str, optional
        What is set on it.
    """
    from shapely import Polygon, box

    z0, y0, z1, y1 = placed.view.bounds
    over, under = _OVER_MM
    frame = box(z0 - over, y0 - under, z1 + over, y1 + under)
    made = []
    for outline in stands.outlines:
        seen = Polygon(outline).buffer(0).intersection(frame)
        for one in getattr(seen, "geoms", [seen]):
            if one.geom_type == "Polygon" and not one.is_empty:
                made.append(_path("tsu-aid", one.exterior.coords[:-1], placed.px, close=True))
    if stands.form is ToolForm.DIAL:
        made += _dial_face(stands, placed.px)
    if push:
        made.append(_arrow(stands, placed.px))
    if reads:
        x, y = placed.px(*_beyond(stands))
        made.append(f'<text class="tsu-t tsu-on" x="{x:.0f}" y="{y:.0f}">{escape(reads)}</text>')
    return f'<g class="tsu-tool"><title>{escape(name)}</title>{"".join(made)}</g>'


def standing_words(
    stands: ToolStands, name: str, parts: Mapping[str, Part], *, way: bool = True
) -> str:
    """Where a tool stands, as a sentence.

    Parameters
    ----------
    stands : ToolStands
    name : str
        What it is called.
    parts : mapping of str to Part
        By their ids.
    way : bool, optional
        Whether it is said what is in its way, or goes on after it.
    """
    said = f"{name}: {stands.on}."
    if way and stands.after:
        goes = "goes" if len(stands.after) == 1 else "go"
        after = " and ".join(parts[part].name for part in stands.after)
        said += f" {after} {goes} on afterwards."
    if way and stands.meets:
        between = f"the {_small(parts[stands.meets[0]].name)}"
        if more := len(stands.meets) - 1:
            between += f" and {more} more part{'s' * (more > 1)}"
        said += f" In this section no straight way leads to it, past {between}."
    return said


def _small(name: str) -> str:
    return f"{name[:1].lower()}{name[1:]}"


def _beyond(stands: ToolStands) -> tuple[float, float]:
    """A place beside the rear edge of a tool, half way up [mm]."""
    points = [point for outline in stands.outlines for point in outline]
    return max(z for z, _ in points) + 3, sum(y for _, y in points) / len(points)


def _arrow(stands: ToolStands, px) -> str:
    """The push, from the hand to what the tool bears on: within it where it is hollow."""
    dz, dy = stands.way
    tips = [(touch.z_mm, touch.height_mm) for touch in stands.touches]
    z, y = (sum(tip[k] for tip in tips) / len(tips) for k in (0, 1))
    (x1, y1), (x0, y0) = (
        px(z + dz * _NEAR_MM, y + dy * _NEAR_MM),
        px(z + dz * _LONG_MM, y + dy * _LONG_MM),
    )
    ux, uy = _sign(x1 - x0), _sign(y1 - y0)
    base = x1 - 12 * ux, y1 - 12 * uy
    head = ((x1, y1), (base[0] - 7 * uy, base[1] + 7 * ux), (base[0] + 7 * uy, base[1] - 7 * ux))
    points = " ".join(f"{x:.1f},{y:.1f}" for x, y in head)
    return (
        f'<path class="tsu-way" d="M{x0:.1f} {y0:.1f}L{base[0]:.1f} {base[1]:.1f}"/>'
        f'<polygon class="tsu-head" points="{points}"/>'
    )


def _sign(number: float) -> int:
    return (number > 0.5) - (number < -0.5)


def _dial_face(stands: ToolStands, px) -> list[str]:
    """Hand and marks of a dial."""
    dz, dy = stands.way
    points = [point for outline in stands.outlines for point in outline]
    z, y = max(points, key=lambda point: point[0] * dz + point[1] * dy)
    tip = stands.touches[0]
    middle = (z - dz * _FACE_MM, tip.height_mm) if dz else (tip.z_mm, y - dy * _FACE_MM)
    lines = [((0.0, 0.0), (0.45, -0.5))]
    lines += [((a * 0.7, b * 0.7), (a * 0.95, b * 0.95))
              for a, b in ((0, -1), (1, 0), (0, 1), (-1, 0))]  # fmt: skip
    return [
        _path(
            "tsu-line", [(middle[0] + a * _FACE_MM, middle[1] + b * _FACE_MM) for a, b in line], px
        )
        for line in lines
    ]


def _path(look: str, points, px, *, close: bool = False) -> str:
    spots = (px(z, y) for z, y in points)
    line = "L".join(f"{x:.1f} {y:.1f}" for x, y in spots)
    return f'<path class="{look}" d="M{line}{"Z" * close}"/>'
