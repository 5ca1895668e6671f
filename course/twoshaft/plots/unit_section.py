"""A whole unit in developed section, to scale, and the state of its build.

The plane of the section is folded through the shafts. Conventions: thick outlines, thin hatching,
chain lines for axes and pitch lines, shafts, bolts, pins and rolling elements not cut, thin parts
solid (ISO 128-2, -3); gears with their pitch line and teeth not hatched (ISO 2203); threads by a
thin line at the root (ISO 6410-1); springs by their line (ISO 2162-1).
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, replace
from html import escape
from itertools import groupby
from textwrap import wrap

from twoshaft.models.shape import (
    BuildShown,
    Drawn,
    Piece,
    Role,
    Section,
    ViewSection,
    by_way,
    joint,
    open_side,
    section_of,
    without_way,
)
from twoshaft.models.shape.schematic import shapes_of
from twoshaft.plots import style
from twoshaft.units.kept import kept
from twoshaft.units.unit import Unit

PX_PER_MM = 2.0
_EDGE_PX, _HEAD_PX, _FOOT_PX, _BETWEEN_PX = 44.0, 34.0, 30.0, 70.0
_OVER_MM = 7.0  # how far an axis stands out beyond its parts
_ARROW_MM, _OFF_MM = 24.0, 4.0
_TOUCH_MM = 0.7  # solids nearer than this are hatched differently
_SHELL_HATCHES = ((45, 13), (135, 13), (45, 10), (135, 10))
_HATCHES = ((135, 6), (45, 6), (135, 8.5), (45, 8.5), (135, 4.5), (45, 4.5))
_THICK, _THIN = 0.8 * style.THICK_PX, 0.4 * style.THICK_PX  # two to one, ISO 128-2
_ROUND = 1
_LABEL_LETTERS = 34  # a longer line would run into the neighbouring view
NO_TOOLS: Mapping[str, float] = {}
_MOST_WIDE = 1.05  # a letter shown as large as it gets, in sizes of its type


def _hatch_id(turn: float, gap: float) -> str:
    return f"tsu-h{turn:g}-{gap:g}".replace(".", "_")


SECTION_CSS = (
    # a whole unit apart is wider than any sheet
    "@media print{.twoshaft-figure{max-width:100%;max-height:80vh;height:auto}}"
    f".tsu-cut,.tsu-whole,.tsu-box{{stroke:{style.INK_NOW};stroke-width:{_THICK};"
    "stroke-linejoin:round}"
    f".tsu-whole,.tsu-box{{fill:{style.PAPER_NOW}}}"
    f".tsu-thin{{fill:{style.INK_NOW};stroke:{style.INK_NOW};stroke-width:{_THIN}}}"
    f".tsu-soft{{fill:{style.SOFT_NOW};stroke:{style.INK_NOW};stroke-width:{_THIN}}}"
    f".tsu-behind{{fill:{style.BEHIND_NOW};stroke:{style.INK_NOW};stroke-width:{_THIN}}}"
    f".tsu-line,.tsu-coil{{fill:none;stroke:{style.INK_NOW};stroke-width:{_THIN}}}"
    f".tsu-coil{{stroke-width:{_THICK}}}"
    f".tsu-pitch,.tsu-axis{{fill:none;stroke:{style.INK_NOW};stroke-width:{_THIN};"
    "stroke-dasharray:12 2.5 2 2.5}"
    f".tsu-hatch{{stroke:{style.INK_NOW};stroke-width:{_THIN}}}"
    f".tsu-ground{{fill:{style.PAPER_NOW}}}.tsu-metal{{fill:{style.CAST_NOW}}}"
    f".tsu-t{{font:{style.grown(style.SMALL_PX)} {style.FONT};fill:{style.INK_NOW}}}"
    f".tsu-v{{font:600 {style.grown(style.TEXT_PX)} {style.FONT};fill:{style.INK_NOW}}}"
    f".tsu-on{{paint-order:stroke;stroke:{style.PAPER_NOW};stroke-width:4;stroke-linejoin:round}}"
    f".tsu-absent>*>*{{fill:none;stroke:{style.ABSENT_NOW};stroke-width:{_THIN};"
    "stroke-dasharray:4 3}"
    ".tsu-absent .tsu-behind,.tsu-absent .tsu-pitch,.tsu-absent .tsu-line{stroke:none}"
    ".tsu-bench{opacity:.5}.tsu-put{display:none}"
    f".tsu-absent text{{stroke:none;fill:{style.QUIET_NOW}}}"
    f".tsu-lit .tsu-cut,.tsu-lit .tsu-whole,.tsu-lit .tsu-box,.tsu-lit .tsu-thin,"
    f".tsu-lit .tsu-soft{{fill:{style.LIT_NOW};stroke:{style.ACTION_NOW};"
    f"stroke-width:{1.5 * style.THICK_PX};stroke-dasharray:none}}"
    f".tsu-lit .tsu-coil,.tsu-lit .tsu-line{{stroke:{style.ACTION_NOW};"
    f"stroke-width:{style.THICK_PX};stroke-dasharray:none}}"
    f".tsu-aid{{fill:{style.TOOL_NOW};stroke:{style.INK_NOW};stroke-width:{_THICK};"
    "stroke-linejoin:round}"
    f".tsu-way{{fill:none;stroke:{style.ACTION_NOW};stroke-width:{2 * style.THICK_PX}}}"
    f".tsu-head{{fill:{style.ACTION_NOW};stroke:none}}"
)


@dataclass(frozen=True)
class Placed:
    """Where a view stands in the picture: its offset in pixels."""

    view: ViewSection
    x: float
    y: float

    def px(self, z: float, height: float) -> tuple[float, float]:
        """A place of the section in pixels of the picture."""
        return self.x + z * PX_PER_MM, self.y + height * PX_PER_MM


@dataclass(frozen=True)
class UnitPicture:
    """The picture of a unit, before any state of the build.

    Attributes
    ----------
    width, height : float
        Its size [px].
    placed : tuple of Placed
    body : str
        Everything but the state, as SVG parts.
    words : str
        What is where, as text.
    """

    width: float
    height: float
    placed: tuple[Placed, ...]
    body: str
    words: str


@kept()
def unit_picture(unit: Unit, no_way: frozenset[str] = frozenset()) -> UnitPicture:
    """Draw a unit once; what is fitted and in hand is marked on it by classes.

    Parameters
    ----------
    unit : Unit
    no_way : frozenset of str, optional
        Parts of which no way round is shown: they are drawn as the room they take up.
    """
    section = section_of(unit)
    placed, width, height = _layout(section)
    hatches = hatching(section)
    parts = []
    for one in placed:
        parts += _view(unit, replace(one, view=without_way(one.view, no_way)), hatches, width)
    foot = "Drawn to scale; distances of neighbouring shafts are true."
    if not section.own:
        foot = "A schematic by usual proportions: the unit file gives no shapes."
    parts.append(f'<text class="tsu-t" x="{_EDGE_PX:.0f}" y="{height - 9:.0f}">{foot}</text>')
    return UnitPicture(
        width, height, placed, hatch_patterns() + "".join(parts), _words(unit, section)
    )


def unit_figure(
    unit: Unit,
    title: str,
    shown: BuildShown | None = None,
    no_way: frozenset[str] = frozenset(),
) -> str:
    """A unit in section as one SVG element, each part a group with its name and place.

    Parameters
    ----------
    unit : Unit
    title : str
        What the picture shows, as a sentence.
    shown : BuildShown, optional
        The state of the build; by default everything is in its place.
    no_way : frozenset of str, optional
        Parts of which no way round is shown.

    Returns
    -------
    str
        Groups have the class ``tsu-part`` and the part in ``data-part``.
    """
    picture = unit_picture(unit, no_way)
    body, marks, told = picture.body, "", picture.words
    if shown is not None:
        for part in unit.parts:
            look = part_look(shown, part.id)
            if look != "fitted":
                body = body.replace(_opening(part.id), _opening(part.id, f"tsu-{look}"))
        marks, told = step_marks(unit, shown), f"{shown.words} {told}"
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" class="twoshaft-figure" role="img" '
        f'viewBox="0 0 {picture.width:.0f} {picture.height:.0f}" width="{picture.width:.0f}" '
        f'height="{picture.height:.0f}" aria-label="{escape(title)}">'
        f"<title>{escape(title)}</title><desc>{escape(told)}</desc><style>{SECTION_CSS}</style>"
        f'{body}<g class="tsu-marks">{marks}</g></svg>'
    )


def parts_in_order(unit: Unit) -> list[tuple[str, str, str]]:
    """Every part with its name and where it lies, view by view, from top and front.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    list of (id, name, place)
    """
    axes = {axis.id: axis.name for axis in shapes_of(unit).axes}
    names = {part.id: part.name for part in unit.parts}
    found: dict[str, tuple[str, str, str]] = {}
    for view in section_of(unit).views:
        rows = {axis: k for k, (axis, _) in enumerate(view.axes)}
        for one in sorted(view.drawn, key=lambda d: (rows[d.solid.axis], d.bounds[0])):
            part = one.solid.part
            if part in names and part not in found:
                found[part] = (part, names[part], _where(one, axes, _datum(unit)))
    return list(found.values())


def part_look(shown: BuildShown, part: str) -> str:
    """How a part looks in a state: ``lit``, ``fitted``, on the ``bench``, or ``absent``."""
    if shown.step is not None and part in shown.step.parts:
        return "lit"
    if part in shown.bench:
        return "bench"
    return "fitted" if part in shown.fitted else "absent"


def step_marks(
    unit: Unit,
    shown: BuildShown,
    tools: Mapping[str, float] = NO_TOOLS,
    *,
    arrows: bool = True,
) -> str:
    """Arrow and words of the step in hand, as SVG parts; empty where there is nothing to see.

    Parameters
    ----------
    unit : Unit
    shown : BuildShown
    tools : mapping of str to float, optional
        By view, the height of the upper edge of the tools that stand there: the words stand
        above it [mm].
    arrows : bool, optional
        Whether the way in is drawn; left out where tools show it.
    """
    step = shown.step
    if step is None or not step.parts:
        return ""
    marks: list[str] = []
    labelled = False
    picture = unit_picture(unit)
    for placed in picture.placed:
        lit = [one for one in placed.view.drawn if one.solid.part in step.parts]
        if not lit:
            continue
        ways = by_way(lit, step.way) if step.way else {(None, 0): lit}
        for (way, told), some in ways.items() if arrows else ():
            side = open_side(unit, some) or told
            marks.append(_arrow(placed, _around(some), way, step.leaves, side))
        if arrows and any(way == "outside" for way, _ in ways):
            # its arrow may lie over the view's name, which stays to be read
            marks.append(view_name(placed, *placed.view.bounds[:2], picture.width))
        if not labelled:
            over, words = tools.get(placed.view.id), _label_words(unit, shown)
            first = next(way for way, _ in ways)
            marks.append(_label(placed, _around(lit), first, words, over))
            labelled = True
    return "".join(marks)


def _layout(section: Section) -> tuple[tuple[Placed, ...], float, float]:
    """The first view on the left, the others one below the other on its right."""
    placed: list[Placed] = []
    left, top, width, height = _EDGE_PX, _HEAD_PX, 0.0, 0.0
    for k, view in enumerate(section.views):
        z0, y0, z1, y1 = view.bounds
        placed.append(Placed(view, left - z0 * PX_PER_MM, top - y0 * PX_PER_MM))
        wide, tall = (z1 - z0) * PX_PER_MM, (y1 - y0) * PX_PER_MM
        width, height = max(width, left + wide + _EDGE_PX), max(height, top + tall + _FOOT_PX)
        if k == 0:
            left += wide + _BETWEEN_PX
        else:
            top += tall + _HEAD_PX + GAP_PX
    return tuple(placed), width, height


GAP_PX = 3.0 * style.GRID_PX


@kept()
def hatching(section: Section) -> dict[str, str]:
    """Pattern of each solid that is cut, by the solid's id: neighbours differ."""
    from shapely import Polygon, STRtree, union_all

    hatches: dict[str, str] = {}
    for view in section.views:
        cut = [
            (one, union_all([Polygon(p.outline, p.holes).buffer(0) for p in one.pieces
                             if p.role is Role.CUT]))
            for one in view.drawn if any(p.role is Role.CUT for p in one.pieces)
        ]  # fmt: skip
        tree = STRtree([area for _, area in cut])
        number: dict[int, int] = {}
        for k, (one, area) in enumerate(cut):
            near = tree.query(area, predicate="dwithin", distance=_TOUCH_MM)
            taken = {number[j] for j in near if j in number}
            choice = _SHELL_HATCHES if one.solid.kind == "shell" else _HATCHES
            free = (n for n in range(len(choice)) if n not in taken)
            # a shell and what lies in it never share a hatch: they have kinds of their own
            number[k] = next(free, k % len(choice))
            hatches[one.solid.id] = _hatch_id(*choice[number[k]])
    return hatches


def hatch_patterns() -> str:
    """The hatches as patterns, for the figures that use :func:`hatching`."""
    made = []
    for ground, choice in (("tsu-metal", _SHELL_HATCHES), ("tsu-ground", _HATCHES)):
        for turn, gap in choice:
            made.append(
                f'<pattern id="{_hatch_id(turn, gap)}" width="{gap}" height="{gap}" '
                f'patternUnits="userSpaceOnUse" patternTransform="rotate({turn - 90})">'
                f'<rect class="{ground}" width="{gap}" height="{gap}"/>'
                f'<line class="tsu-hatch" x1="0" x2="{gap}" y1="{gap / 2}" y2="{gap / 2}"/>'
                "</pattern>"
            )
    return f"<defs>{''.join(made)}</defs>"


def _opening(part: str, look: str = "") -> str:
    return f'<g class="tsu-part{" " * bool(look)}{look}" data-part="{part}"'


def _open_part(one: Drawn) -> str:
    return "<g" if one.solid.part is None else _opening(one.solid.part)


def _view(unit: Unit, placed: Placed, hatches: dict[str, str], end: float) -> list[str]:
    view, ends = placed.view, dict[str, tuple[float, float]]()
    for axis, _ in view.axes:
        along = [one.bounds for one in view.drawn if one.solid.axis == axis
                 and one.solid.kind not in ("shell", "box")]  # fmt: skip
        if along:
            ends[axis] = min(one[0] for one in along), max(one[2] for one in along)
    return [
        view_name(placed, *view.bounds[:2], end),
        *view_solids(unit, placed, hatches, _open_part),
        *axis_lines(placed, ends),
    ]


def view_name(placed: Placed, z: float, height: float, end: float | None = None) -> str:
    """The name of a view above its upper left corner, as SVG.

    end: where the picture ends [px]; a name that would pass it, with letters as large as they can
    be shown, ends there.
    """
    x, top = placed.px(z, height)
    anchor = ""
    if end is not None and x + _MOST_WIDE * style.TEXT_PX * len(placed.view.name) > end:
        anchor, x = ' text-anchor="end"', end - _EDGE_PX
    name = escape(placed.view.name)
    return f'<text class="tsu-v tsu-on"{anchor} x="{x:.0f}" y="{top - 12:.0f}">{name}</text>'


def view_solids(
    unit: Unit, placed: Placed, hatches: dict[str, str], opening: Callable[[Drawn], str]
) -> list[str]:
    """The solids of a view as SVG groups, from back to front.

    Parameters
    ----------
    unit : Unit
    placed : Placed
    hatches : dict
        By solid, as :func:`hatching` gives it.
    opening : callable
        How the group begins in which a solid is drawn; neighbours that begin alike share one.
    """
    view, made = placed.view, list[str]()
    names, datum = {axis.id: axis.name for axis in shapes_of(unit).axes}, _datum(unit)
    # what is seen through bores lies behind every part, the narrower bore before the wider
    for one in sorted(view.drawn, key=_width, reverse=True):
        seen = "".join(_piece(placed, p, None) for p in one.pieces if p.role is Role.BEHIND)
        if seen:
            made.append(f"{opening(one)}><g>{seen}</g></g>")
    for begins, some in groupby(view.drawn, key=opening):
        group = list(some)
        part = group[0].solid.part
        inside = "".join(_solid(placed, one, names, hatches, datum) for one in group)
        name = unit.part_by_id[part].name if part in unit.part_by_id else part
        title = f"<title>{escape(name)}</title>" if name else ""
        made.append(f"{begins}>{title}{inside}</g>")
    return made


def axis_lines(placed: Placed, ends: Mapping[str, tuple[float, float]]) -> list[str]:
    """The axes of a view as SVG, each a little longer than what lies on it.

    Parameters
    ----------
    placed : Placed
    ends : mapping of str to pair
        Least and most z on each axis that has a line [mm].
    """
    made = []
    for axis, height in placed.view.axes:
        if axis in ends:
            z0, z1 = ends[axis]
            (x0, y), (x1, _) = placed.px(z0 - _OVER_MM, height), placed.px(z1 + _OVER_MM, height)
            made.append(f'<path class="tsu-axis" d="M{x0:.1f} {y:.1f}H{x1:.1f}"/>')
    return made


def _width(one: Drawn) -> float:
    """Height of what is seen behind a solid."""
    seen = [y for piece in one.pieces if piece.role is Role.BEHIND for _, y in piece.outline]
    return max(seen) - min(seen) if seen else 0.0


def _solid(
    placed: Placed, one: Drawn, axes: dict[str, str], hatches: dict[str, str], datum: str
) -> str:
    where = _where(one, axes, datum)
    drawn = "".join(
        _piece(placed, piece, hatches.get(one.solid.id))
        for piece in one.pieces
        if piece.role is not Role.BEHIND
    )
    if one.solid.kind == "box":
        drawn += box_name(one, placed.px, PX_PER_MM)
    return (
        f'<g data-solid="{one.solid.id}"><title>{escape(one.name)}</title>'
        f"<desc>{escape(where)}</desc>{drawn}</g>"
    )


def _piece(placed: Placed, piece: Piece, hatch: str | None) -> str:
    path = "".join(_path(placed, line, piece.closed) for line in (piece.outline, *piece.holes))
    fill = f' fill="url(#{hatch})" fill-rule="evenodd"' if piece.role is Role.CUT else ""
    return f'<path class="tsu-{piece.role.value}"{fill} d="{path}"/>'


def _path(placed: Placed, line: Iterable[tuple[float, float]], closed: bool) -> str:
    points = [placed.px(*point) for point in line]
    drawn = "L".join(f"{x:.{_ROUND}f} {y:.{_ROUND}f}" for x, y in points)
    return f"M{drawn}{'Z' if closed else ''}"


def box_name(one: Drawn, px: Callable[[float, float], tuple[float, float]], scale: float) -> str:
    """The name in a box, as SVG: places in pixels by ``px``, ``scale`` pixels for a millimetre."""
    from twoshaft.plots.drawing import fitted_lines

    z0, y0, z1, y1 = one.bounds
    x, y = px((z0 + z1) / 2, (y0 + y1) / 2)
    lines = fitted_lines(one.name, int((z1 - z0) * scale / 6.2), 2)
    return "".join(
        f'<text class="tsu-t" text-anchor="middle" x="{x:.1f}" y="{y + 4:.1f}" '
        f'dy="{1.2 * (k - (len(lines) - 1) / 2):.1f}em">{escape(line)}</text>'
        for k, line in enumerate(lines)
    )


def _arrow(
    placed: Placed, bounds: tuple[float, ...], way: str | None, leaves: bool, side: int
) -> str:
    """An arrow along the way in, outside the lit parts; nothing for what is worked at.

    side: where a way across comes from: -1 above, 1 below, 0 from the nearer edge of the view.
    """
    z0, y0, z1, y1 = bounds
    middle = (y0 + y1) / 2
    if way in ("rear", "by-hand"):
        ends = (z1 + _OFF_MM + _ARROW_MM, middle), (z1 + _OFF_MM, middle)
    elif way == "front":
        ends = (z0 - _OFF_MM - _ARROW_MM, middle), (z0 - _OFF_MM, middle)
    elif way == "outside":
        _, top, _, low = placed.view.bounds
        z = (z0 + z1) / 2
        above = side < 0 or (not side and y0 - top <= low - y1)
        near, far = (
            (y0 - _OFF_MM, y0 - _OFF_MM - _ARROW_MM)
            if above
            else (y1 + _OFF_MM, y1 + _OFF_MM + _ARROW_MM)
        )
        ends = (z, far), (z, near)
    else:
        return ""
    start, end = (placed.px(*one) for one in (ends[::-1] if leaves else ends))
    dx, dy = end[0] - start[0], end[1] - start[1]
    long = (dx * dx + dy * dy) ** 0.5
    ux, uy = dx / long, dy / long
    base = end[0] - 12 * ux, end[1] - 12 * uy
    head = (
        end,
        (base[0] - 7 * uy, base[1] + 7 * ux),
        (base[0] + 7 * uy, base[1] - 7 * ux),
    )
    points = " ".join(f"{x:.1f},{y:.1f}" for x, y in head)
    return (
        f'<path class="tsu-way" d="M{start[0]:.1f} {start[1]:.1f}L{base[0]:.1f} {base[1]:.1f}"/>'
        f'<polygon class="tsu-head" points="{points}"/>'
    )


def _around(some: list[Drawn]) -> tuple[float, float, float, float]:
    """What several solids take up: least z and height, most z and height [mm]."""
    corners = [one.bounds for one in some]
    low = [min(corner[k] for corner in corners) for k in (0, 1)]
    high = [max(corner[k] for corner in corners) for k in (2, 3)]
    return low[0], low[1], high[0], high[1]


def _label_words(unit: Unit, shown: BuildShown) -> list[str]:
    assert shown.step is not None
    step = shown.step
    names = [unit.part_by_id[part].name for part in step.parts]
    lines = [names[0] if len(names) == 1 else f"{names[0]} and {len(names) - 1} more"]
    if step.way == "by-hand":
        lines.append("bent by hand round what it passes")
    if step.with_what:
        lines += wrap(f"with {', '.join(step.with_what).lower()}", _LABEL_LETTERS)
    return lines


def _label(
    placed: Placed,
    bounds: tuple[float, ...],
    way: str | None,
    lines: list[str],
    over: float | None,
) -> str:
    """Words of the step near its parts, inside the picture; above a height, where one is given."""
    z0, y0, z1, y1 = bounds
    x, y = placed.px(z1 if way != "front" else z0, (y0 + y1) / 2)
    _, top = placed.px(0, placed.view.bounds[1])
    if over is not None:
        y = min(y - 26, placed.px(0, over)[1] - 10) + 26
    y = max(y - 26 - 16 * (len(lines) - 1), top + 12)
    left, right = (
        placed.px(placed.view.bounds[0], 0)[0],
        placed.px(placed.view.bounds[2], 0)[0],
    )
    if way == "front":
        anchor, x = "end", x - 10
        if x - left < 180:
            anchor, x = "start", left - 20
    else:
        anchor, x = "start", x + 10
        if right - x < 220:
            anchor, x = "end", right + 30
    # a line's height goes by the size of its letters, which grows where the picture is small
    told = "".join(
        f'<tspan x="{x:.0f}" dy="{1.25 if k else 0:g}em">{escape(line)}</tspan>'
        for k, line in enumerate(lines)
    )
    return (
        f'<text class="tsu-t tsu-on" text-anchor="{anchor}" x="{x:.0f}" y="{y:.0f}">{told}</text>'
    )


def _datum(unit: Unit) -> str:
    """What z is counted from: a joint face along the shafts has no place along them."""
    return "the joint face" if joint(unit) is None else "the front of the case"


def _where(one: Drawn, axes: dict[str, str], datum: str) -> str:
    z0, _, z1, _ = one.bounds
    if one.solid.kind == "box":
        return "Drawn as a box: nothing says its form."
    ends = (f"{abs(z):.0f} mm {'behind' if z >= 0 else 'before'} {datum}" for z in (z0, z1))
    return f"{axes[one.solid.axis].capitalize()}, from {' to '.join(ends)}."


def _words(unit: Unit, section: Section) -> str:
    """What is where, view by view and axis by axis, from front to rear."""
    names = {axis.id: axis.name for axis in shapes_of(unit).axes}
    told = []
    for view in section.views:
        told.append(f"{view.name}.")
        shells = [one.name for one in view.drawn if one.solid.kind == "shell"]
        if shells:
            order = "" if joint(unit) else ", from front to rear"
            told.append(f"Round it{order}: {', '.join(shells)}.")
        for axis, _ in view.axes:
            on = [one for one in view.drawn if one.solid.axis == axis
                  and one.solid.kind != "shell"]  # fmt: skip
            on.sort(key=lambda one: one.bounds[0])
            if on:
                listed = ", ".join(dict.fromkeys(one.name for one in on))
                told.append(f"On {names[axis]}, from front to rear: {listed}.")
    return " ".join(told)
