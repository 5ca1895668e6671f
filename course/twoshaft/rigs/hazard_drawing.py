"""The invented workshop in twelve pictures, each as it should be and with its hazards.

Every picture is 160 wide and 150 high, with the floor at 150 and the bench top at 110.
"""

from __future__ import annotations

from collections.abc import Mapping
from html import escape
from math import cos, pi, sin

from twoshaft.plots import style
from twoshaft.plots.drawing import Drawing
from twoshaft.safety import Safety

WIDE, HIGH, COLUMNS = 160, 192, 6
_SHORT = 14  # letters of a name that fit under their picture where words are shown larger
_FAINT = f"color-mix(in srgb, {style.INK_NOW} 12%, {style.PAPER_NOW})"
_HALF = f"color-mix(in srgb, {style.INK_NOW} 55%, {style.PAPER_NOW})"
_STYLE = (
    f"<style>.tsh-o{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW};stroke-width:{style.THICK_PX}}}"
    f".tsh-n{{fill:none;stroke:{style.INK_NOW};stroke-width:{style.THIN_PX}}}"
    f".tsh-w{{fill:none;stroke:{style.INK_NOW};stroke-width:{style.THICK_PX}}}"
    f".tsh-g{{fill:{_FAINT};stroke:{style.INK_NOW};stroke-width:{style.THIN_PX}}}"
    f".tsh-k{{fill:{_HALF};stroke:{style.INK_NOW};stroke-width:{style.THIN_PX}}}"
    f".tsh-limb{{fill:none;stroke:{style.INK_NOW};stroke-width:9;stroke-linecap:round;"
    f"stroke-linejoin:round}}"
    f".tsh-skin{{fill:none;stroke:{style.PAPER_NOW};stroke-width:5;stroke-linecap:round;"
    f"stroke-linejoin:round}}"
    ".tsh-hit{fill:transparent;stroke:none}</style>"
)


def _box(x, y, w, h, kind="o", round=1) -> str:
    return f'<rect class="tsh-{kind}" x="{x}" y="{y}" width="{w}" height="{h}" rx="{round}"/>'


def _ring(x, y, r, kind="o") -> str:
    return f'<circle class="tsh-{kind}" cx="{x}" cy="{y}" r="{r}"/>'


def _path(d, kind="w") -> str:
    return f'<path class="tsh-{kind}" d="{d}"/>'


def _words(x, y, text) -> str:
    return f'<text class="tsf-t" text-anchor="middle" x="{x}" y="{y}">{escape(text)}</text>'


def _label(name: str) -> str:
    """The name of a place; a long one in two lines, so that it leaves its neighbours' alone."""
    if len(name) <= _SHORT:
        return _words(WIDE / 2, 173, name)
    break_at = min(
        (at for at, letter in enumerate(name) if letter == " "),
        key=lambda at: abs(at - len(name) / 2),
        default=len(name),
    )
    lines = name[:break_at], name[break_at + 1 :]
    return "".join(_words(WIDE / 2, y, line) for y, line in zip((166, 183), lines, strict=True))


def _limb(d) -> str:
    return _path(d, "limb") + _path(d, "skin")


def _fist(x, y) -> str:
    return _ring(x, y, 7)


def _bench(x=8, w=144) -> str:
    return (
        _box(x, 110, w, 7) + _box(x + 8, 117, 7, 33, "o", 0) + _box(x + w - 15, 117, 7, 33, "o", 0)
    )


def _press(state: str) -> str:
    frame = (
        _box(36, 18, 8, 132)
        + _box(116, 18, 8, 132)
        + _box(30, 12, 100, 14)
        + _box(30, 108, 100, 10)
        + _box(72, 26, 16, 36, "g")
        + _box(56, 96, 12, 12)
        + _box(92, 96, 12, 12)
        + _box(52, 80, 56, 16)
        + _path("M68 80V96M92 80V96", "n")
        + _box(75, 62, 10, 30)
    )
    mesh = "".join(f"M48 {y}L112 {y - 14}M48 {y - 14}L112 {y}" for y in range(64, 108, 11))
    if state == "press-open":
        side = "".join(f"M128 {y}L144 {y - 8}M128 {y - 8}L144 {y}" for y in range(56, 106, 9))
        guard = _path("M126 44L146 38V108L126 102Z", "w") + _path(side, "n")
        return frame + guard + _limb("M4 142L26 112L50 90") + _fist(52, 88)
    return frame + _box(46, 46, 68, 62, "w") + _path(mesh, "n")


def _oven(state: str) -> str:
    oven = (
        _box(34, 52, 92, 82)
        + _box(40, 62, 56, 62)
        + _box(48, 70, 40, 34, "g")
        + _path("M48 114H88")
        + _ring(111, 78, 9)
        + _path("M111 78L116 72")
        + _words(111, 103, "120")
        + _box(38, 134, 8, 16, "o", 0)
        + _box(114, 134, 8, 16, "o", 0)
        + _path("M130 76q8 -2 8 6v20h-12v-12q-6 0 -4 -7l4 2v-5q0 -4 4 -4z", "o")
    )
    if state == "cleaner-on-oven":
        return (
            oven
            + _box(68, 24, 20, 28, "o", 3)
            + _box(74, 16, 8, 8)
            + _path("M68 32H88M68 44H88", "n")
            + _words(80, 11, "brake cleaner")
        )
    if state == "cloths-by-oven":
        heap = "M52 52q2 -12 10 -11q2 -12 14 -9q6 -8 14 0q10 -1 10 9q8 1 8 11z"
        return (
            oven + _path(heap, "g") + _path("M62 42q6 4 4 10M78 34q-4 9 2 18M94 38q-6 5 -2 14", "n")
        )
    return oven


def _vice(state: str) -> str:
    steel = state == "steel-on-hard"
    end = "M60 38l3 -5l4 4l3 -6l4 5V92H60z" if steel else "M60 34H74V92H60z"
    splines = _path("M64 40V62M67 40V62M70 40V62", "n")
    hammer = _box(104, 92, 50, 18) + _box(125, 44, 8, 48, "g", 3)
    return (
        _bench()
        + _box(36, 96, 62, 14)
        + _path(end, "o")
        + splines
        + _box(44, 68, 13, 30)
        + _box(77, 68, 13, 30)
        + _box(57, 68, 3, 24, "g", 0)
        + _box(74, 68, 3, 24, "g", 0)
        + hammer
        + _words(129, 105.5, "STEEL" if steel else "BRASS")
    )


def _circlip(state: str) -> str:
    off = state == "no-glasses"
    worker = (
        _path("M34 60q-24 14 -26 90h34l4 -56z", "o")
        + _ring(46, 42, 17)
        + _path("M30 36q6 -16 24 -10", "w")
        + _limb("M34 78L66 98L92 84")
    )
    if off:
        glasses = (
            _box(118, 100, 12, 9, "w", 3) + _box(134, 100, 12, 9, "w", 3) + _path("M130 103h4", "w")
        )
    else:
        glasses = (
            _box(53, 35, 13, 11, "g", 3) + _path("M53 39L38 37", "w") + _box(46, 35, 7, 9, "g")
        )
    clip = (
        _box(108, 72, 36, 14)
        + _path("M108 66a12 12 0 1 0 1 24", "w")
        + _path("M92 84L108 68M92 84L108 90", "w")
    )
    stand = _path("M124 86V110M136 86V110", "w")
    return _bench(78, 76) + stand + clip + worker + _fist(92, 84) + glasses


def _gun(x: float, y: float, turn: float) -> str:
    return (
        f'<g transform="translate({x} {y}) rotate({turn})">{_box(-4, -5, 30, 10, "g", 3)}'
        f"{_box(26, -2, 12, 4)}{_path('M2 5L-4 24H6L11 5', 'o')}</g>"
    )


def _air_line(state: str) -> str:
    reel = _box(8, 8, 32, 32, "o", 16) + _ring(24, 24, 7) + _path("M64 30v8h8")
    if state == "air-spins":
        return (
            reel
            + _path("M40 24q30 10 8 44", "w")
            + _gun(46, 62, 0)
            + _path("M88 60l12 -4M88 62h12M88 64l12 4", "n")
            + _limb("M156 112L140 76L118 68")
            + _ring(112, 66, 20)
            + _ring(112, 66, 8)
            + _path("M112 66h4", "w")
            + _path(
                "M112 38a28 28 0 0 1 26 18M112 94a28 28 0 0 1 -26 -18M117 34a32 32 0 0 1 24 14", "n"
            )
            + _limb("M18 112L32 96L46 76")
            + _bench()
        )
    if state == "air-at-sleeve":
        return (
            reel
            + _path("M40 24q40 -8 44 26", "w")
            + _gun(84, 46, 78)
            + _path("M90 86l-5 10M92 86v11M95 86l5 10", "n")
            + _limb("M12 106H120")
            + _path("M96 98V114M40 98V114", "n")
            + _fist(124, 106)
            + _limb("M150 84L120 66L80 56")
        )
    return (
        reel
        + _path("M40 24q16 -2 22 12", "w")
        + _gun(72, 34, 80)
        + _bench()
        + _path("M88 110q30 -7 60 0z", "g")
        + _box(102, 92, 34, 14)
        + _path("M102 96H136M102 102H136M119 92V106", "n")
    )


def _case(x: float, y: float) -> str:
    return (
        _path(f"M{x} {y}h56l6 26h-68z", "o")
        + _path(f"M{x - 6} {y + 26}h68v5h-68z", "g")
        + _path(f"M{x + 14} {y + 2}l-4 22M{x + 28} {y + 2}v22M{x + 42} {y + 2}l4 22", "n")
    )


def _hoist(state: str) -> str:
    high = state == "under-load"
    top = 46 if high else 90
    hook = top - 24
    parts = (
        _box(6, 8, 148, 8, "g")
        + _box(64, 16, 32, 9)
        + _path(f"M80 25V{hook}", "w")
        + _path(f"M80 {hook}q8 4 0 9q-7 0 -6 -5", "w")
        + _path(f"M80 {hook + 9}L58 {top}M80 {hook + 9}L102 {top}", "w")
        + _case(52, top)
    )
    if state == "frayed-sling":
        parts += _path(
            f"M90 {top - 7}l8 -7M93 {top - 6}l10 -3M88 {top - 9}l3 -9M95 {top - 5}l9 4", "w"
        )
    if high:
        return parts + (
            _path("M70 116q-18 6 -20 34h44q4 -20 -8 -32z", "o")
            + _ring(84, 106, 11)
            + _limb("M70 124L92 132L96 96")
            + _path("M88 96l3 -4", "w")
        )
    return parts + _box(40, 128, 80, 7) + _ring(54, 143, 6) + _ring(106, 143, 6)


def _gear(x: float, y: float, r: float, teeth: int, turn: float) -> str:
    points = []
    for tooth in range(teeth):
        for part, out in ((-0.27, -4), (-0.15, 4), (0.15, 4), (0.27, -4)):
            angle = 2 * pi * (tooth + part) / teeth + turn
            points.append(f"{x + (r + out) * cos(angle):.1f} {y + (r + out) * sin(angle):.1f}")
    return _path("M" + "L".join(points) + "Z", "o") + _ring(x, y, 7, "g")


def _gears(state: str) -> str:
    base = (
        _bench()
        + _path("M52 72V110M112 72V110", "w")
        + _gear(52, 72, 34, 17, 0.0)
        + _gear(112, 72, 26, 13, pi - pi / 13)
        + _path("M112 72L138 40", "limb")
        + _path("M112 72L138 40", "skin")
    )
    if state == "finger-in-mesh":
        return (
            base
            + _limb("M156 6L148 20L140 36")
            + _fist(139, 38)
            + _limb("M58 4L70 28")
            + _fist(73, 33)
            + _limb("M77 40L86 66")
        )
    return (
        base
        + _limb("M156 6L148 20L140 36")
        + _limb("M157 76L152 62L142 50")
        + _fist(139, 38)
        + _fist(141, 50)
    )


def _case_bolts(state: str) -> str:
    case = (
        _bench()
        + _box(30, 84, 100, 26)
        + _box(22, 78, 116, 8)
        + "".join(_box(x, 73, 9, 5) for x in (30, 52, 76, 98, 120))
        + _words(80, 102, "aluminium")
    )
    if state == "impact-on-alloy":
        return case + (
            _box(77, 58, 7, 15)
            + _box(69, 26, 24, 33, "g", 4)
            + _path("M93 32h30v14h-30z", "o")
            + _box(120, 26, 16, 28, "g", 3)
            + _words(84, 18, "impact driver")
        )
    return case + _box(78, 34, 6, 39) + _box(56, 28, 50, 8, "g", 4) + _words(81, 18, "hand driver")


def _wash_bench(state: str) -> str:
    tray = (
        _bench()
        + _path("M18 92L24 110H82L88 92", "w")
        + _path("M20 98H86", "n")
        + _path("M40 96L66 70l4 3L46 98", "o")
    )
    if state == "unlabelled-bottle":
        return tray + (
            _path("M112 64h12v10q10 4 10 12v24h-32V86q0 -8 10 -12z", "o")
            + _path("M102 90h32v20h-32z", "g")
            + _box(111, 58, 14, 6, "g")
        )
    return tray + (
        _box(104, 72, 34, 38)
        + _box(112, 62, 12, 10)
        + _path("M124 70h10v4", "w")
        + _box(108, 80, 26, 24, "g")
        + _path("M121 83l5 5l-5 5l-5 -5zM111 97H131M111 100H125", "n")
        + _box(92, 12, 40, 44)
        + _words(112, 28, "SDS")
        + _path("M98 34H126M98 40H126M98 46H118", "n")
        + _path("M86 110q-2 -10 4 -12h9l-1 4h3l-2 8z", "g")
    )


def _oil(state: str) -> str:
    unit = (
        _box(42, 30, 76, 44, "o", 6)
        + _path("M58 34V70M80 34V70M102 34V70", "n")
        + _box(76, 74, 8, 6, "g")
        + _path("M46 74L30 150M114 74L130 150", "w")
        + _path("M80 84v5M80 93v4", "n")
    )
    if state == "oil-on-floor":
        return unit + (
            _path("M46 126L52 148H108L114 126", "o")
            + _path("M49 134q8 -4 15 0t16 0t16 0t15 0", "w")
            + _path("M108 154q2 -9 16 -8q12 -5 22 0q12 0 10 7q-6 6 -22 5q-22 3 -26 -4z", "k")
            + _path("M122 152q2 -4 9 -3h10q4 1 3 4q-3 2 -8 1q-9 2 -14 -2z", "o")
        )
    return (
        unit
        + _path("M46 128L52 148H108L114 128", "o")
        + _box(42, 121, 76, 7, "g")
        + _box(72, 115, 16, 6)
    )


def _hot_part(state: str) -> str:
    glove = "q8 -2 8 6v16h-12v-10q-6 0 -4 -7l4 2v-3q0 -4 4 -4z"
    ring = _box(74, 94, 36, 16) + _path("M82 94V110M102 94V110M74 99H110", "n")
    oven = _box(4, 40, 40, 70)
    if state == "hot-unmarked":
        return (
            _bench()
            + oven
            + _box(10, 50, 28, 50, "g")
            + _path("M44 46L62 52V104L44 100Z", "o")
            + _path(f"M22 20{glove}", "o")
            + _path("M24 20V14", "n")
            + ring
        )
    return (
        _bench()
        + oven
        + _box(10, 50, 28, 50)
        + _path("M34 68V84", "w")
        + ring
        + _path("M114 110L118 80H156L152 110Z", "o")
        + _words(135, 100, "HOT")
        + _path("M48 110q-1 -9 5 -10h13q5 0 5 5t-5 5z", "g")
    )


def _lift(state: str) -> str:
    if state == "lift-with-back":
        return (
            _path("M28 76q-10 30 -6 74h22q2 -30 6 -58z", "o")
            + _path("M26 92q-2 -26 26 -30l28 8l-8 20l-24 4z", "o")
            + _ring(90, 66, 13)
            + _limb("M72 82L98 112L112 122")
            + _box(92, 124, 62, 26)
            + _path("M88 124h70v-5h-70z", "g")
            + _words(123, 142, "38 kg")
        )
    return (
        _ring(26, 34, 13)
        + _path("M14 50q-8 50 -4 100h26q4 -50 4 -98z", "o")
        + _limb("M30 64L46 88L60 82")
        + _box(62, 70, 62, 26)
        + _path("M58 70h70v-5h-70z", "g")
        + _words(93, 88, "38 kg")
        + _box(56, 97, 74, 6)
        + _path("M62 103L122 142M122 103L62 142", "w")
        + _box(56, 142, 74, 8)
        + _box(134, 96, 26, 7)
        + _box(148, 103, 7, 47, "o", 0)
    )


PICTURES = {
    "press": _press,
    "oven": _oven,
    "vice": _vice,
    "circlip": _circlip,
    "air-line": _air_line,
    "hoist": _hoist,
    "gears": _gears,
    "case-bolts": _case_bolts,
    "wash-bench": _wash_bench,
    "oil": _oil,
    "hot-part": _hot_part,
    "lift": _lift,
}
"""What draws each place, given the id of the hazard in it or an empty text."""


def workshop_drawing(safety: Safety, views: Mapping[str, int]) -> str:
    """The workshop as one SVG drawing, not to scale.

    Parameters
    ----------
    safety : Safety
        Places and hazards.
    views : mapping of str to int
        Number of the view shown at each place, in the order of the drawing.

    Returns
    -------
    str
        An SVG element. Each place is a group with ``data-place``. It says what stands where and
        nothing of what is wrong.
    """
    rows = -(-len(views) // COLUMNS)
    drawn = Drawing(
        WIDE * min(COLUMNS, len(views)),
        HIGH * rows + 16,
        f"{len(views)} places of an invented workshop",
        "; ".join(
            f"{n} {safety.place_by_id[place].name}: {safety.place_by_id[place].views()[view][0]}"
            for n, (place, view) in enumerate(views.items(), 1)
        ),
    )
    drawn.add(_STYLE)
    for row in range(rows):
        drawn.add(_path(f"M0 {row * HIGH + 150.5}H{drawn.width}", "w"))
    for n, (place, view) in enumerate(views.items()):
        x, y = WIDE * (n % COLUMNS), HIGH * (n // COLUMNS)
        hazard = safety.place_by_id[place].views()[view][1]
        drawn.add(
            f'<g class="tsh-place" data-place="{place}" transform="translate({x} {y})">'
            f'<rect class="tsh-hit" x="3" y="2" width="{WIDE - 6}" height="{HIGH - 8}" rx="4"/>'
            f"{PICTURES[place](hazard.id if hazard else '')}"
            f"{_label(f'{n + 1}  {safety.place_by_id[place].name}')}</g>"
        )
    drawn.add(
        f'<text class="tsf-t" x="4" y="{HIGH * rows + 11}">Invented workshop, not to scale</text>'
    )
    return drawn.text()
