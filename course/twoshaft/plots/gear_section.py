"""The gear train in side view: shafts one above the other, pitch circles to scale.

Heights are to scale, widths are not. Each gear carries a painted mark that a screen moves.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from html import escape

from twoshaft.models.geartrain import Freedom, pitch_radii
from twoshaft.plots import style
from twoshaft.plots.drawing import Drawing, note, note_lines, note_room
from twoshaft.units.sections.geartrain import GearTrain, Mesh

PX_PER_MM = 0.72
LEFT_PX, COLUMN_PX, RIGHT_PX = 212, 74, 40
HEAD_PX, FOOT_PX = 56, 14
NEAR_PX = 48  # two lines of a shaft's name need so much
KEY = (
    "Heights to scale, widths not. Filled: drives now. Hatched: locked. "
    "Thick mark: in front, dashed: behind."
)
FACE_PX = 30
SHAFT_PX = 9
SLEEVE_PX = (16, 28)
WAY_PX = 9
CLASSES = (
    f".tsw-shaft{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW};stroke-width:{style.THIN_PX}}}"
    f".tsw-stopped{{fill:url(#tsw-hatch);stroke-width:{style.THICK_PX}}}"
    f".tsw-gear{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW};stroke-width:{style.THIN_PX}}}"
    f".tsw-works{{fill:{style.OKABE_ITO['sky']};fill-opacity:.45;"
    f"stroke:{style.INK_NOW};stroke-width:{style.THICK_PX}}}"
    f".tsw-mark{{stroke:{style.INK_NOW};stroke-width:3}}"
    f".tsw-behind{{stroke-width:1;stroke-dasharray:3 3}}"
    f".tsw-sleeve{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW};stroke-width:{style.THICK_PX}}}"
    f".tsw-in{{fill:{style.INK_NOW}}}"
    f".tsw-axis{{stroke:{style.QUIET_NOW};stroke-width:{style.THIN_PX};stroke-dasharray:12 3 2 3}}"
    f".tsw-mesh{{stroke:{style.QUIET_NOW};stroke-width:{style.THIN_PX};stroke-dasharray:3 3;"
    "fill:none}"
    f".tsw-hatch{{stroke:{style.INK_NOW};stroke-width:.8}}"
    ".tsw-strong{font-weight:700;text-decoration:underline}"
)


@dataclass(frozen=True)
class Wheel:
    """A gear as drawn.

    Attributes
    ----------
    id : str
        Mesh and side, as the screen moves its mark by it.
    x, y, radius : float
        Middle of its face and its pitch radius [px].
    """

    id: str
    x: float
    y: float
    radius: float


@dataclass(frozen=True)
class Layout:
    """Where everything stands [px].

    Attributes
    ----------
    columns : dict of str to float
        Middle of each mesh's column by mesh id.
    shafts : dict of str to float
        Height of each shaft.
    wheels : dict of str to Wheel
    width, height : float
    """

    columns: dict[str, float]
    shafts: dict[str, float]
    wheels: dict[str, Wheel]
    width: float
    height: float


def gear_layout(train: GearTrain) -> Layout:
    """Place shafts and gears: input above, differential below, others above the input.

    Parameters
    ----------
    train : GearTrain
    """
    radii = {
        mesh.id: [r.m_as("mm") * PX_PER_MM for r in pitch_radii(train, mesh)]
        for mesh in train.meshes
    }
    last, pinion = train.turned_last, train.driven_from
    y: dict[str, float] = {train.input: 0.0}
    down = {frozenset((train.input, pinion)), frozenset((pinion, last))}
    for _ in train.shafts:
        for mesh in train.meshes:
            ends = (mesh.driving.shaft, mesh.driven.shaft)
            for known, other in (ends, ends[::-1]):
                if known in y and other not in y:
                    way = 1 if frozenset(ends) in down else -1
                    y[other] = y[known] + way * sum(radii[mesh.id])
    y |= dict.fromkeys(train.outputs, y[last])
    main = {train.input, pinion, last}
    groups: dict[object, None] = {train.final_drive: None} if train.final_drive else {}
    for mesh in sorted(train.meshes, key=lambda m: {m.driving.shaft, m.driven.shaft} <= main):
        groups.setdefault(_group(mesh, main))
    place = {key: LEFT_PX + COLUMN_PX * (k + 0.5) for k, key in enumerate(groups)}
    columns = {mesh.id: place[_group(mesh, main)] for mesh in train.meshes}
    tops = [
        y[gear.shaft] - r
        for mesh in train.meshes
        for gear, r in zip((mesh.driving, mesh.driven), radii[mesh.id], strict=True)
    ]
    shift = HEAD_PX - min(tops)
    y = {shaft: at + shift for shaft, at in y.items()}
    wheels: dict[str, Wheel] = {}
    for mesh in train.meshes:
        for side, r in zip(("driving", "driven"), radii[mesh.id], strict=True):
            at = y[getattr(mesh, side).shaft]
            wheels[f"{mesh.id} {side}"] = Wheel(f"{mesh.id} {side}", columns[mesh.id], at, r)
    low = max(wheel.y + wheel.radius for wheel in wheels.values())
    width = LEFT_PX + COLUMN_PX * len(groups) + RIGHT_PX
    return Layout(columns, y, wheels, width, low + FOOT_PX + note_room(_key(width)))


def _key(width_px: float) -> list[str]:
    """What the drawing's marks mean, in lines that fit below it."""
    return note_lines(KEY, width_px - 16)


def train_figure(
    train: GearTrain, engaged: Collection[str], held: Collection[str], found: Freedom, title: str
) -> str:
    """The train as one SVG; what turns carries ``data-wheel`` and its id.

    Parameters
    ----------
    train : GearTrain
    engaged, held : collections of str
        Gears engaged and shafts held.
    found : Freedom
        What can still move.
    title : str
        The finding.
    """
    at = gear_layout(train)
    works = {mesh for gear in train.gears if gear.id in engaged for mesh in gear.engages}
    drawing = Drawing(at.width, at.height, title, _said(train, engaged, held, found))
    drawing.add(
        f"<style>{CLASSES}</style>",
        '<defs><pattern id="tsw-hatch" width="7" height="7" patternUnits="userSpaceOnUse" '
        f'patternTransform="rotate(45)"><rect width="7" height="7" fill="{style.PAPER_NOW}"/>'
        '<line class="tsw-hatch" x1="0" x2="0" y1="0" y2="7"/></pattern></defs>',
    )
    for shaft in train.shafts:
        drawing.add(*_shaft(train, at, shaft, shaft in found.locked))
    drawn: set[tuple[float, float]] = set()
    for mesh in train.meshes:
        used = mesh.id in works or (mesh.loose is None and _carries(train, mesh, works))
        for side in ("driving", "driven"):
            wheel, gear = at.wheels[f"{mesh.id} {side}"], getattr(mesh, side)
            if (wheel.x, wheel.y) in drawn:
                continue  # an idler is one gear in two meshes
            drawn.add((wheel.x, wheel.y))
            drawing.add(*_wheel(wheel, gear.teeth, used))
        one, other = at.wheels[f"{mesh.id} driving"], at.wheels[f"{mesh.id} driven"]
        if abs(abs(one.y - other.y) - one.radius - other.radius) > 1:
            x = one.x + FACE_PX / 2 + 6
            drawing.add(
                f'<path class="tsw-mesh" d="M{x - 6:.1f} {one.y:.1f} H{x + 4:.1f} '
                f'V{other.y:.1f} H{x - 6:.1f}"/>'
            )
    for synchroniser in train.synchronisers:
        drawing.add(_sleeve(train, at, synchroniser, engaged))
    drawing.add(*_heads(train, at, engaged, works))
    for shaft in train.shafts:
        drawing.add(_name(train, at, shaft, shaft in held, shaft in found.locked))
    drawing.add(note(8, at.height - 10, _key(at.width)))
    return drawing.text()


def _mesh(train: GearTrain, id: str) -> Mesh:
    return next(mesh for mesh in train.meshes if mesh.id == id)


def _group(mesh: Mesh, main: Collection[str]) -> object:
    """Meshes that share a column: those of one shaft beside the main ones."""
    beside = {mesh.driving.shaft, mesh.driven.shaft} - set(main)
    return frozenset(beside) if beside else mesh.id


def _carries(train: GearTrain, mesh: Mesh, works: Collection[str]) -> bool:
    """Whether a mesh of two fixed gears passes the drive on: the final drive, or after an idler."""
    if mesh.id == train.final_drive:
        return bool(works)
    main = {train.input, train.driven_from, train.turned_last}
    beside = {mesh.driving.shaft, mesh.driven.shaft} - main
    return any(beside & {m.driving.shaft, m.driven.shaft} for m in train.meshes if m.id in works)


def _ends(train: GearTrain, at: Layout, shaft: str) -> tuple[float, float]:
    """Where a shaft begins and stops along the drawing [px]."""
    if bevel := train.differential:
        middle = at.columns[train.final_drive or ""]
        if shaft == bevel.left:
            return LEFT_PX - 40, middle - FACE_PX / 2 - 4
        if shaft == bevel.right:
            return middle + FACE_PX / 2 + 34, middle + FACE_PX / 2 + 34 + 1.4 * COLUMN_PX
        if shaft == bevel.case:
            return middle - FACE_PX / 2 - 4, middle + FACE_PX / 2 + 34
    xs = [at.columns[m.id] for m in train.meshes if shaft in (m.driving.shaft, m.driven.shaft)]
    first = LEFT_PX - 40 if shaft == train.input else min(xs) - COLUMN_PX / 2 + 6
    return first, max(xs) + COLUMN_PX / 2 + (4 if len(set(xs)) > 1 else -6)


def _shaft(train: GearTrain, at: Layout, shaft: str, locked: bool) -> list[str]:
    left, right = _ends(train, at, shaft)
    y = at.shafts[shaft]
    tall = 36 if train.differential and shaft == train.differential.case else SHAFT_PX
    kind = "tsw-shaft tsw-stopped" if locked else "tsw-shaft"
    return [
        f'<line class="tsw-axis" x1="{left - 12:.1f}" x2="{right + 12:.1f}" y1="{y:.1f}" '
        f'y2="{y:.1f}"/>',
        f'<rect class="{kind}" x="{left:.1f}" y="{y - tall / 2:.1f}" '
        f'width="{right - left:.1f}" height="{tall}"/>',
    ]


def _wheel(wheel: Wheel, teeth: int, used: bool) -> list[str]:
    kind = "tsw-gear tsw-works" if used else "tsw-gear"
    left = wheel.x - FACE_PX / 2
    return [
        f'<rect class="{kind}" x="{left:.1f}" y="{wheel.y - wheel.radius:.1f}" '
        f'width="{FACE_PX}" height="{2 * wheel.radius:.1f}"/>',
        f'<line class="tsw-mark" data-wheel="{escape(wheel.id)}" data-reach="{wheel.radius:.1f}" '
        f'x1="{left + 2:.1f}" x2="{left + FACE_PX - 2:.1f}" y1="{wheel.y:.1f}" '
        f'y2="{wheel.y:.1f}"/>',
        f'<text class="tsf-t" text-anchor="middle" x="{wheel.x:.1f}" '
        f'y="{wheel.y + min(wheel.radius - 1, 20):.1f}" paint-order="stroke" '
        f'stroke="{style.PAPER_NOW}" stroke-width="3">{teeth}</text>',
    ]


def _sleeve(train: GearTrain, at: Layout, synchroniser, engaged: Collection[str]) -> str:
    meshes = [
        _mesh(train, mesh)
        for id in synchroniser.gears
        for gear in train.gears
        if gear.id == id
        for mesh in gear.engages[:1]
    ]
    columns = [at.columns[mesh.id] for mesh in meshes]
    x = sum(columns) / len(columns) if len(columns) > 1 else columns[0] - COLUMN_PX / 2
    is_in = next(
        (c for id, c in zip(synchroniser.gears, columns, strict=True) if id in engaged), None
    )
    if is_in is not None:
        x += WAY_PX if is_in > x else -WAY_PX
    wide, tall = SLEEVE_PX
    y = at.shafts[meshes[0].loose or ""]
    return (
        f'<rect class="tsw-sleeve{"" if is_in is None else " tsw-in"}" x="{x - wide / 2:.1f}" '
        f'y="{y - tall / 2:.1f}" width="{wide}" height="{tall}"><title>'
        f"{escape(synchroniser.name)}</title></rect>"
    )


def _heads(
    train: GearTrain, at: Layout, engaged: Collection[str], works: Collection[str]
) -> list[str]:
    heads = {}
    for gear in train.gears:
        heads[at.columns[gear.engages[0]]] = (short(gear.name), gear.id in engaged)
    if train.final_drive:
        heads[at.columns[train.final_drive]] = ("Final drive", False)
    return [_head(x, words, strong) for x, (words, strong) in heads.items()]


def _head(x: float, words: str, strong: bool) -> str:
    """A name over its column, a word to the line: two side by side would meet the next column's."""
    lines = escape(words).split(" ")
    said = "".join(
        f'<tspan x="{x:.1f}" dy="{1.2 if k else 1.2 * (1 - len(lines)):g}em">'
        f"{'● ' if strong and not k else ''}{line}</tspan>"
        for k, line in enumerate(lines)
    )
    kind = "tsf-t tsw-strong" if strong else "tsf-t"
    return f'<text class="{kind}" text-anchor="middle" y="{HEAD_PX - 18}">{said}</text>'


def _name(train: GearTrain, at: Layout, shaft: str, held: bool, locked: bool) -> str:
    bevel = train.differential
    y = at.shafts[shaft]
    left, right = _ends(train, at, shaft)
    state = ", held" if held else ", locked" if locked else ""
    words = escape(body_name(train, shaft) + state)
    strong = " tsw-strong" if state else ""
    if bevel and shaft == bevel.right:
        return f'<text class="tsf-t{strong}" x="{right + 18:.0f}" y="{y + 5:.0f}">{words}</text>'
    if bevel and shaft == bevel.case:
        x = right + 8
        return f'<text class="tsf-t{strong}" x="{x:.0f}" y="{y + 36:.0f}">{words}</text>'
    x = min(left, LEFT_PX - 40) - 16
    # A state takes a line of its own: beside a long name it would run over the drawing's edge. Of
    # two shafts that lie close the upper one's lines go up, and the lower one's down.
    name, _, after = words.partition(", ")
    lines = [f"{name},", after] if after else [name]
    gaps = [at.shafts[other] - y for other in train.shafts if other != shaft]
    is_under = any(-NEAR_PX < gap < 0 for gap in gaps)
    is_over = not is_under and any(0 < gap < NEAR_PX for gap in gaps)
    first = -1.2 * (len(lines) - 1) if is_over else 0.0
    down = 5 if is_over or is_under or not after else -3
    said = "".join(
        f'<tspan x="{x:.0f}" dy="{1.2 if k else first:g}em">{line}</tspan>'
        for k, line in enumerate(lines)
    )
    return f'<text class="tsf-t{strong}" text-anchor="end" y="{y + down:.0f}">{said}</text>'


def short(name: str) -> str:
    """A gear's name without the word gear.

    >>> short("Third gear")
    'Third'
    """
    return name.removesuffix(" gear")


def body_name(train: GearTrain, shaft: str) -> str:
    """What people call a shaft: outputs are wheels, the case carries the ring gear."""
    bevel = train.differential
    usual = {}
    if bevel:
        usual = {bevel.left: "Left wheel", bevel.right: "Right wheel", bevel.case: "Ring gear"}
    words = shaft.replace("-", " ")
    return usual.get(shaft, words[:1].upper() + words[1:])


def _said(train: GearTrain, engaged: Collection[str], held: Collection[str], found: Freedom) -> str:
    names = [gear.name for gear in train.gears if gear.id in engaged]
    parts = [f"Engaged: {', '.join(names) or 'nothing'}."]
    if held:
        parts.append(f"Held: {', '.join(body_name(train, s).lower() for s in sorted(held))}.")
    locked = [body_name(train, s).lower() for s in train.shafts if s in found.locked]
    parts.append(f"Cannot turn: {', '.join(locked) or 'nothing'}.")
    return " ".join(parts)
