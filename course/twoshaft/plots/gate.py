"""The selector mechanism in section: jaws, lockout and interlock, to scale, as it stands now."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from html import escape

from twoshaft.models.shift.handwork import passive_places, say_gears
from twoshaft.models.shift.mechanism import Mechanism, State
from twoshaft.plots import style
from twoshaft.plots.drawing import Drawing, note, note_lines, note_room
from twoshaft.units.sections.shift import Axis, Body, Drive, Follows, Interlock, Passive, Shift

PX_PER_MM = 5.6
MARGIN_MM = 2.0
GUTTER_MM = 3.0
HEAD_PX = 42
FOOT_PX = 8
NOTE = "5 mm. Across: the shaft slides. Up, down: it turns."
NAME_MM = 2.2  # names of neighbours stand on two lines
RAIL_MM = 9.0  # width of a rail's bar in the interlock panel
PIN_HALF_MM = 1.4
TITLES = {
    "jaws": "Finger in the jaws",
    "lockout": "Peg and lockout plate",
}
CLASSES = (
    f".tsg-hand{{fill:{style.ACCENT};fill-opacity:.28;stroke:var(--ts-accent,{style.ACCENT});"
    f"stroke-width:{style.THICK_PX}}}"
    f".tsg-body{{fill:url(#tsg-hatch);stroke:{style.INK_NOW};stroke-width:{style.THICK_PX}}}"
    f".tsg-pin{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW};stroke-width:{style.THICK_PX}}}"
    f".tsg-frame{{fill:none;stroke:{style.QUIET_NOW};stroke-width:{style.THIN_PX}}}"
    f".tsg-mid{{fill:none;stroke:{style.QUIET_NOW};stroke-width:{style.THIN_PX};"
    "stroke-dasharray:12 3 2 3}"
    f".tsg-hatch{{stroke:{style.INK_NOW};stroke-width:.8}}"
    f".tsg-gear{{font:600 {style.grown(style.SMALL_PX)} {style.FONT};fill:{style.INK_NOW};"
    f"paint-order:stroke;stroke:{style.PAPER_NOW};stroke-width:5px}}"
    f".tsg-halo{{paint-order:stroke;stroke:{style.PAPER_NOW};stroke-width:5px}}"
    ".tsg-in{text-decoration:underline;font-weight:800}"
    ".tsg-up{opacity:.55}.tsg-up polygon{stroke-dasharray:7 4}"
    ".tsg-said{visibility:hidden}.tsg-said.tsg-up{visibility:visible;opacity:1}"
)


def mechanism_figure(machine: Mechanism, state: State) -> str:
    """The mechanism as one SVG; what moves is a group with ``data-body`` and its id.

    Parameters
    ----------
    machine : Mechanism
    state : State
    """
    shift = machine.shift
    panels, x = [], 0.0
    for layer in _layers(shift):
        low, high = _extent(shift, layer, Axis.TRAVEL)
        panels.append((layer, x - low, high - low))
        x += high - low + GUTTER_MM
    lock_at, lock_wide = x, _interlock_width(shift)
    wide = x + lock_wide if shift.interlocks else x - GUTTER_MM
    down, up = _height(shift)
    tall = up - down
    beside = 5 * PX_PER_MM + 12
    said = note_lines(NOTE, wide * PX_PER_MM - beside)
    drawing = Drawing(
        width=wide * PX_PER_MM + 4,
        height=tall * PX_PER_MM + HEAD_PX + FOOT_PX + note_room(said),
        title=figure_title(machine, state),
        description="Sections to scale: what the hand carries, the jaws of the rails, the lockout "
        "plate and its peg, the interlock pins between the rails.",
    )
    drawing.add(f"<style>{CLASSES}</style>", _hatch())
    moved = transforms(machine, state)
    for layer, origin, width in panels:
        drawing.add(_panel(shift, layer, origin, width, (down, up), moved, machine.up(state)))
    if shift.interlocks:
        drawing.add(_interlock_panel(shift, lock_at, lock_wide, (down, up), moved))
    bar = (
        f'<path class="tsg-frame" style="stroke-width:2" d="M2 {drawing.height - 12:.0f}h'
        f'{5 * PX_PER_MM:.1f}"/>'
    )
    drawing.add(bar, note(beside, drawing.height - 8, said))
    return drawing.text()


def figure_title(machine: Mechanism, state: State) -> str:
    """Where the hand is and what is in, as the title of the figure."""
    travel, turn = machine.travel_mm[state[0]], machine.turn_mm[state[1]]
    gears = say_gears(machine.engaged(state))
    up = f"; {machine.shift.lift_name} lifted" if machine.up(state) else ""
    return f"{gears[:1].upper()}{gears[1:]}; slide {travel:g} mm, turn {turn:g} mm{up}"


def transforms(machine: Mechanism, state: State) -> dict[str, list[float]]:
    """By how much every moving part is off its drawn place, in px: right and down."""
    shift = machine.shift
    hand = (float(machine.travel_mm[state[0]]), float(machine.turn_mm[state[1]]))
    carried = {
        Follows.HAND: hand,
        Follows.TRAVEL: (hand[0], 0.0),
        Follows.TURN: (0.0, hand[1]),
        Follows.FIXED: (0.0, 0.0),
    }
    places = passive_places(machine, state)
    moved = {body.id: carried[body.follows] for body in shift.bodies}
    for body in shift.passive:
        q = places[body.id]
        moved[body.id] = (q, 0.0) if body.axis is Axis.TRAVEL else (0.0, q)
    moved |= {f"bar-{rail.body}": (0.0, places[rail.body]) for rail in shift.rails}
    for pin in shift.interlocks:
        flank = math.tan(math.radians(pin.ramp_deg))
        room = [max(0.0, pin.notch_mm - flank * abs(places[rail])) for rail in _by_gate(shift, pin)]
        # the pin lies in the middle of the way it has
        moved[pin.id] = ((room[1] - room[0]) / 2, 0.0)
    return {id: [x * PX_PER_MM, -y * PX_PER_MM] for id, (x, y) in moved.items()}


def _layers(shift: Shift) -> list[str]:
    return list(dict.fromkeys(body.layer for body in _moving(shift)))


def _moving(shift: Shift) -> tuple[Body | Passive, ...]:
    return (*shift.bodies, *shift.passive)


def _extent(shift: Shift, layer: str, axis: Axis) -> tuple[float, float]:
    """How far bodies of a layer reach along an axis, wherever they are [mm]."""
    index = 0 if axis is Axis.TRAVEL else 1
    ways = {Axis.TRAVEL: shift.travel_mm, Axis.TURN: shift.turn_mm}
    ends = list(ways[axis])  # where the hand goes is shown whatever is missing
    for body in _moving(shift):
        if body.layer != layer:
            continue
        corners = [corner[index] for piece in body.pieces for corner in piece]
        if isinstance(body, Passive):
            way = body.range_mm if body.axis is axis else (0.0, 0.0)
        else:
            moves = body.follows in (Follows.HAND, Follows(axis.value))
            way = ways[axis] if moves else (0.0, 0.0)
        ends += [min(corners) + way[0], max(corners) + way[1]]
    return min(ends) - MARGIN_MM, max(ends) + MARGIN_MM


def _height(shift: Shift) -> tuple[float, float]:
    extents = [_extent(shift, layer, Axis.TURN) for layer in _layers(shift)]
    room = NAME_MM  # for the names of the gears
    return min(low for low, _ in extents) - room, max(high for _, high in extents) + room


def _hatch() -> str:
    return (
        '<defs><pattern id="tsg-hatch" width="6" height="6" patternUnits="userSpaceOnUse" '
        f'patternTransform="rotate(45)"><rect width="6" height="6" fill="{style.PAPER_NOW}"/>'
        '<path class="tsg-hatch" d="M0 0V6"/></pattern></defs>'
    )


def _panel(shift, layer, origin, width, height, moved, lifted) -> str:
    """One layer; ``origin`` is where travel 0 lies [mm from the left]."""
    state = " tsg-up" if lifted else ""
    down, up = height
    x0, y0 = origin * PX_PER_MM + 2, up * PX_PER_MM + HEAD_PX - 14
    left = x0 + (_extent(shift, layer, Axis.TRAVEL)[0]) * PX_PER_MM
    parts = [_frame(left, width, height, _title(shift, layer))]
    for gate in shift.gates:
        x = x0 + gate.at_mm * PX_PER_MM
        parts.append(
            f'<path class="tsg-mid" d="M{x:.1f} {y0 - up * PX_PER_MM:.1f}v'
            f'{(up - down) * PX_PER_MM:.1f}"/>'
        )
    parts.append(f'<path class="tsg-mid" d="M{left:.1f} {y0:.1f}h{width * PX_PER_MM:.1f}"/>')
    passive = [body for body in shift.passive if body.layer == layer]
    for body in passive:
        parts.append(_group(body.id, body.name, body.pieces, (x0, y0), "tsg-body", moved))
    for body in shift.bodies:
        if body.layer == layer:
            kind = "tsg-body" if body.follows is Follows.FIXED else "tsg-hand"
            group = _group(body.id, body.name, body.pieces, (x0, y0), kind, moved)
            parts.append(
                group.replace("<g ", f'<g data-lifts class="{state}" ', 1) if body.lifts else group
            )
    if any(body.lifts for body in shift.bodies if body.layer == layer):
        parts.append(
            f'<g data-lifts class="tsg-said{state}"><text class="tsf-t tsg-halo" '
            f'x="{left + 6:.1f}" y="{y0 - up * PX_PER_MM + 15:.1f}">'
            "lifted: it passes above</text></g>"
        )
    rails = {rail.body: rail for rail in shift.rails}
    at = {gate.id: gate.at_mm for gate in shift.gates}
    named = sorted(
        ((at[rail.gate], rail) for body in passive if (rail := rails.get(body.id))),
        key=lambda one: one[0],
    )
    for k, (travel, rail) in enumerate(named):
        x = x0 + travel * PX_PER_MM
        for gear, y, lines in (
            (rail.high, y0 - up * PX_PER_MM + 4, 1.0 + k % 2),
            (rail.low, y0 - down * PX_PER_MM - 5, -(k % 2)),
        ):
            if gear:
                parts.append(_gear(gear, x, y, 1.05 * lines))
    for n, words in enumerate(_drives(passive)):
        y = y0 - down * PX_PER_MM - 6 - 16 * n
        parts.append(
            f'<text class="tsf-t tsg-halo" x="{left + 6:.1f}" y="{y:.1f}">{escape(words)}</text>'
        )
    corner = f'data-x="{x0:.2f}" data-y="{y0:.2f}" data-scale="{PX_PER_MM}"'
    return f'<g class="tsg-panel" data-layer="{layer}" {corner}>{"".join(parts)}</g>'


def _title(shift: Shift, layer: str) -> str:
    """What a panel shows: its usual name, or what stops the hand in it."""
    still = (b for b in _moving(shift) if isinstance(b, Passive) or b.follows is Follows.FIXED)
    stop = next((body.name for body in still if body.layer == layer), layer)
    return TITLES.get(layer, stop)


def _drives(bodies) -> list[str]:
    """What moves the bodies of a layer that no notch holds, in words."""
    ways = {
        (Axis.TRAVEL, Drive.LOW): "to the left",
        (Axis.TRAVEL, Drive.HIGH): "to the right",
        (Axis.TURN, Drive.LOW): "down",
        (Axis.TURN, Drive.HIGH): "up",
    }
    said = []
    for body in bodies:
        name = body.name[:1].lower() + body.name[1:]
        if body.drive is Drive.STAYS and not body.notches_mm:
            said.append(f"No spring on the {name}")
        elif way := ways.get((body.axis, body.drive)):
            said.append(f"Spring pushes {way}")
        if body.gives_at_n:
            said.append(f"Gives way at {body.gives_at_n:g} N")
    return said


def _frame(left: float, width_mm: float, height, title: str) -> str:
    down, up = height
    return (
        f'<text class="tsf-h" x="{left + 2:.1f}" y="20">{escape(title)}</text>'
        f'<rect class="tsg-frame" x="{left:.1f}" y="{HEAD_PX - 14}" '
        f'width="{width_mm * PX_PER_MM:.1f}" height="{(up - down) * PX_PER_MM:.1f}"/>'
    )


def _gear(gear: str, x: float, y: float, lines: float) -> str:
    """A gear's name, so many of its lines below a height."""
    return (
        f'<text class="tsg-gear" data-gear="{gear}" text-anchor="middle" '
        f'x="{x:.1f}" y="{y:.1f}" dy="{lines:g}em">{escape(gear)}</text>'
    )


def _group(
    id: str,
    name: str,
    pieces: Iterable,
    origin: tuple[float, float],
    kind: str,
    moved: Mapping[str, list[float]],
) -> str:
    x0, y0 = origin
    shapes = "".join(
        '<polygon points="'
        + " ".join(f"{x0 + x * PX_PER_MM:.1f},{y0 - y * PX_PER_MM:.1f}" for x, y in piece)
        + f'" class="{kind}"/>'
        for piece in pieces
    )
    dx, dy = moved.get(id, (0.0, 0.0))
    return (
        f'<g data-body="{id}" transform="translate({dx:.2f} {dy:.2f})">'
        f"<title>{escape(name)}</title>{shapes}</g>"
    )


# the interlock, seen along the rails


def _rails_in_order(shift: Shift) -> list:
    at = {gate.id: gate.at_mm for gate in shift.gates}
    return sorted(shift.rails, key=lambda rail: at[rail.gate])


def _by_gate(shift: Shift, pin) -> list[str]:
    """The two rails of a pin, left one first."""
    return [rail.body for rail in _rails_in_order(shift) if rail.body in pin.rails]


def _between(shift: Shift) -> dict[frozenset[str], Interlock]:
    return {frozenset(pin.rails): pin for pin in shift.interlocks}


def _bars(shift: Shift) -> tuple[dict[str, float], float]:
    """Left edge of every rail's bar [mm], and the width of all."""
    pins, x, edges, before = _between(shift), MARGIN_MM, {}, None
    for rail in _rails_in_order(shift):
        if before is not None:
            pin = pins.get(frozenset((before, rail.body)))
            x += RAIL_MM + (pin.gap_mm if pin else RAIL_MM)
        edges[rail.body] = x
        before = rail.body
    return edges, x + RAIL_MM + MARGIN_MM


def _interlock_width(shift: Shift) -> float:
    return _bars(shift)[1]


def _interlock_panel(shift, at_mm, width, height, moved) -> str:
    down, up = height
    left, y0 = at_mm * PX_PER_MM + 2, up * PX_PER_MM + HEAD_PX - 14
    parts = [_frame(left, width, height, "Interlock between the rails")]
    edges, _ = _bars(shift)
    pins = _between(shift)
    rails = [rail.body for rail in _rails_in_order(shift)]
    names = {body.id: body.name for body in shift.passive}
    reach = min(up, -down) - NAME_MM - 9.0
    for k, rail in enumerate(rails):
        neighbours = [
            pins.get(frozenset((rail, rails[n]))) if 0 <= n < len(rails) else None
            for n in (k - 1, k + 1)
        ]
        piece = _notched(edges[rail], reach, *neighbours)
        parts.append(_group(f"bar-{rail}", names[rail], [piece], (left, y0), "tsg-body", moved))
    for pin in shift.interlocks:
        ends = sorted(edges[rail] for rail in pin.rails)
        gap = ends[1] - ends[0] - RAIL_MM
        if abs(gap - pin.gap_mm) < 1e-9:  # between neighbours: to scale
            middle, half = (ends[0] + RAIL_MM + ends[1]) / 2, pin.length_mm / 2
            piece = _pointed(middle, half, math.tan(math.radians(pin.ramp_deg)))
            parts.append(_group(pin.id, pin.name, [piece], (left, y0), "tsg-pin", moved))
        else:  # through the rail in the middle, drawn as a mark only
            inside = next(r for r in rails if ends[0] < edges[r] < ends[1])
            x = edges[inside]
            piece = [(x, -0.6), (x + RAIL_MM, -0.6), (x + RAIL_MM, 0.6), (x, 0.6)]
            ride = {pin.id: moved[f"bar-{inside}"]}
            group = _group(pin.id, pin.name, [piece], (left, y0), "tsg-pin", ride)
            parts.append(group.replace("<g ", f'<g data-rides="bar-{inside}" ', 1))
    return f'<g class="tsg-interlock">{"".join(parts)}</g>'


def _pointed(middle: float, half: float, flank: float) -> list[tuple[float, float]]:
    """A pin with ends that fit the notches."""
    body = half - PIN_HALF_MM * flank
    return [
        (middle - half, 0.0),
        *((middle - body, -PIN_HALF_MM), (middle + body, -PIN_HALF_MM)),
        (middle + half, 0.0),
        *((middle + body, PIN_HALF_MM), (middle - body, PIN_HALF_MM)),
    ]


def _notched(x: float, reach: float, left, right) -> list[tuple[float, float]]:
    """A rail's bar with a V notch on each side that has a pin."""
    points = [(x, -reach)]
    if left:
        half = left.notch_mm / math.tan(math.radians(left.ramp_deg))
        points += [(x, -half), (x + left.notch_mm, 0.0), (x, half)]
    points += [(x, reach), (x + RAIL_MM, reach)]
    if right:
        half = right.notch_mm / math.tan(math.radians(right.ramp_deg))
        edge = x + RAIL_MM
        points += [(edge, half), (edge - right.notch_mm, 0.0), (edge, -half)]
    return [*points, (x + RAIL_MM, -reach)]
