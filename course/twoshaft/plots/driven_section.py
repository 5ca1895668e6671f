"""A rolling bearing between shaft and case in half section, with a driver and the way of its force.

The principle, not to scale. Thick outlines, thin hatching and dash-dot centre lines as in ISO 128;
the shaft and the ball are not hatched. A seat that grips is drawn as a heavy line with teeth.
"""

from __future__ import annotations

from dataclasses import dataclass
from html import escape

from twoshaft.models.fit import Ring, crosses_elements
from twoshaft.plots import style
from twoshaft.plots.drawing import Drawing, word
from twoshaft.plots.style import css_variables

WIDTH_PX, HEIGHT_PX = 440.0, 316.0
# Places in the drawing: the bearing's sides, then the edges of its rings from the axis upwards.
_LEFT, _RIGHT, _AXIS = 170.0, 240.0, 276.0
HOME_PX = 120.0
"""Where the shoulders stand; the bearing slides from ``_LEFT`` to here."""
TRAVEL_PX = _LEFT - HOME_PX
"""How far the group of class ``tsd-moving`` slides to the left until it is home."""
_SHAFT, _INNER, _OUTER, _CASE, _TOP = 200.0, 168.0, 112.0, 80.0, 34.0
_MIDDLE, _BALL = (_INNER + _OUTER) / 2, 34.0
_END, _STEM = 330.0, 372.0
SIDES = {Ring.INNER: (_SHAFT, _INNER), Ring.OUTER: (_OUTER, _CASE)}
_SEAT = {Ring.INNER: _SHAFT, Ring.OUTER: _CASE}
_CSS = (
    f".tsd-part{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW};stroke-width:{style.THICK_PX}}}"
    f".tsd-thin{{stroke:{style.INK_NOW};stroke-width:{style.THIN_PX};fill:none}}"
    f".tsd-centre{{stroke:{style.INK_NOW};stroke-width:{style.THIN_PX};stroke-dasharray:14 3 3 3}}"
    f".tsd-driver{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW};stroke-width:{style.THICK_PX}}}"
    f".tsd-grip{{stroke:{style.INK_NOW};stroke-width:{3 * style.THICK_PX}}}"
    f".tsd-good{{fill:none;stroke:{style.OKABE_ITO['green']};stroke-width:5}}"
    f".tsd-bad{{fill:none;stroke:{style.OKABE_ITO['vermilion']};stroke-width:5;"
    "stroke-dasharray:10 5}"
    f".tsd-goodhead{{fill:{style.OKABE_ITO['green']}}}"
    f".tsd-badhead{{fill:{style.OKABE_ITO['vermilion']}}}"
)


_LONG = 240  # letters; a longer description is folded away under its picture


@dataclass(frozen=True)
class Sketch:
    """A drawing as SVG, with the words that say what it shows."""

    svg: str
    words: str

    def _repr_html_(self) -> str:
        words = escape(self.words)
        width = 'style="max-width:var(--ts-width)"'
        told = f"<figcaption {width}>{words}</figcaption>"
        after = ""
        if len(self.words) > _LONG:  # outside: a figure is called by its caption
            summary = "<summary>What the picture shows, in words</summary>"
            told, after = "", f"<details {width}>{summary}{words}</details>"
        return (
            f'<style>{css_variables()}</style><div class="twoshaft"><figure '
            f'style="margin:0 24px 8px 0">{self.svg}{told}</figure>{after}</div>'
        )


def driven_section(
    driven: frozenset[Ring],
    tight: frozenset[Ring],
    *,
    shaft: bool = True,
    case: bool = True,
    way: bool = True,
) -> Sketch:
    """Draw a bearing that is being fitted.

    Parameters
    ----------
    driven : frozenset of Ring
        The rings that the driver presses on; empty for no driver.
    tight : frozenset of Ring
        The rings whose seats grip.
    shaft, case : bool
        Whether the mates are there.
    way : bool
        Whether to draw the way of the force; False where it is asked for.

    Returns
    -------
    Sketch
    """
    words = _words(driven, tight, way)
    drawing = Drawing(WIDTH_PX, HEIGHT_PX, f"A bearing being fitted: {words}", words)
    drawing.add(f"<style>{_CSS}</style>")
    if case:
        drawing.add(_part(70, _CASE, HOME_PX, _OUTER, 45), _part(70, _TOP, _RIGHT + 10, _CASE, 45))
        drawing.add(_label(95, 26, "case"))
    if shaft:
        drawing.add(_part(30, _SHAFT, _END - 20, _AXIS), _part(30, _INNER + 6, HOME_PX, _AXIS))
        drawing.add(_label(75, 256, "shaft"))
    moving = [_bearing(), _driver(driven), *(_grip(ring) for ring in sorted(tight))]
    if way and driven:
        moving += _ways(driven, tight)
    drawing.add(f'<g class="tsd-moving">{"".join(moving)}</g>')
    drawing.add(f'<path class="tsd-centre" d="M10 {_AXIS}H{WIDTH_PX - 10}"/>')
    drawing.add(_label(WIDTH_PX / 2, HEIGHT_PX - 8, "Half section, the principle, not to scale"))
    return Sketch(drawing.text(), words)


def _words(driven: frozenset[Ring], tight: frozenset[Ring], way: bool) -> str:
    grips = " and ".join(f"the {ring} ring" for ring in sorted(tight)) or "no ring"
    verb = "grip" if len(tight) > 1 else "grips"
    if not driven:
        return f"{grips} {verb}; there is no driver.".capitalize()
    where = "both rings" if len(driven) > 1 else f"the {next(iter(driven))} ring"
    told = f"{grips} {verb}; the driver presses on {where}"
    if way and tight:
        through = crosses_elements(driven, tight)
        told += (
            ", so force goes through the balls and dents the raceways"
            if through
            else f", so the force goes straight into the tight seat{'s' * (len(tight) > 1)}"
        )
    return f"{told}.".capitalize()


def _part(x0: float, y0: float, x1: float, y1: float, hatch: int = 0) -> str:
    rect = f'x="{x0:g}" y="{y0:g}" width="{x1 - x0:g}" height="{y1 - y0:g}"'
    return f'<rect class="tsd-part" {rect}/>{_hatch(x0, y0, x1, y1, hatch) if hatch else ""}'


def _hatch(x0: float, y0: float, x1: float, y1: float, angle: int, gap: float = 9.0) -> str:
    """Thin lines at 45° across a rectangle."""
    lines, wide, high = [], x1 - x0, y1 - y0
    for k in range(1, int((wide + high) / gap) + 1):
        a = k * gap
        start = (min(a, wide), max(0.0, a - wide))
        end = (max(0.0, a - high), min(a, high))
        spots = [(x if angle > 0 else wide - x, y) for x, y in (start, end)]
        (ax, ay), (bx, by) = spots
        lines.append(f"M{x0 + ax:.1f} {y0 + ay:.1f}L{x0 + bx:.1f} {y0 + by:.1f}")
    return f'<path class="tsd-thin" d="{"".join(lines)}"/>'


def _bearing() -> str:
    rings = [_part(_LEFT, y, _RIGHT, z, -45) for y, z in ((_INNER, _SHAFT), (_CASE, _OUTER))]
    middle = (_LEFT + _RIGHT) / 2
    ball = f'<circle class="tsd-part" cx="{middle}" cy="{_MIDDLE}" r="{_BALL}"/>'
    return "".join(rings) + ball


def _driver(driven: frozenset[Ring]) -> str:
    if not driven:
        return ""
    spans = [SIDES[ring] for ring in driven]
    spans = [(min(span) + 3, max(span) - 3) for span in spans]
    low, high = min(y for y, _ in spans), max(z for _, z in spans)
    body = "".join(_part(_RIGHT, y, _END, z) for y, z in spans)
    plate = _part(_END, low, _STEM, high)
    return f"{body}{plate}{_label(_STEM + 6, (low + high) / 2 + 4, 'driver', 'start')}"


def _grip(ring: Ring) -> str:
    y, way = _SEAT[ring], 1 if ring is Ring.INNER else -1
    teeth = "".join(f"M{x} {y}v{8 * way}" for x in range(int(_LEFT) + 6, int(_RIGHT), 12))
    place = y + (24 if way > 0 else -14)
    return (
        f'<path class="tsd-grip" d="M{_LEFT} {y}H{_RIGHT}"/><path class="tsd-thin" d="{teeth}"/>'
        f"{word((_LEFT + _RIGHT) / 2, place - 4, 'tight seat')}"
    )


def _ways(driven: frozenset[Ring], tight: frozenset[Ring]) -> list[str]:
    """From the driver to each tight seat: straight, or through the balls."""
    middle = (_LEFT + _RIGHT) / 2
    found = []
    for ring in sorted(tight):
        end = _SEAT[ring] + (-9 if ring is Ring.INNER else 9)
        if ring in driven:
            y = sum(SIDES[ring]) / 2
            found.append(_arrow([(_STEM - 8, y), (middle + 12, y), (middle, end)], "good"))
        else:
            y = sum(SIDES[next(iter(driven))]) / 2
            far = sum(SIDES[ring]) / 2
            path = [(_STEM - 8, y), (middle + 16, y), (middle - 10, far), (middle - 10, end)]
            found.append(_arrow(path, "bad"))
    return found


def _arrow(spots: list[tuple[float, float]], kind: str) -> str:
    (ax, ay), (bx, by) = spots[-2:]
    size = max(abs(bx - ax), abs(by - ay), 1e-9)
    ux, uy = (bx - ax) / size, (by - ay) / size
    head = (
        f"M{bx + 7 * ux:.1f} {by + 7 * uy:.1f}L{bx - 7 * uy - 4 * ux:.1f} "
        f"{by + 7 * ux - 4 * uy:.1f}L{bx + 7 * uy - 4 * ux:.1f} {by - 7 * ux - 4 * uy:.1f}Z"
    )
    line = "L".join(f"{x:.1f} {y:.1f}" for x, y in spots)
    return f'<path class="tsd-{kind}" d="M{line}"/><path class="tsd-{kind}head" d="{head}"/>'


def _label(x: float, y: float, text: str, anchor: str = "middle") -> str:
    return f'<text class="tsf-t" text-anchor="{anchor}" x="{x:g}" y="{y:g}">{escape(text)}</text>'
