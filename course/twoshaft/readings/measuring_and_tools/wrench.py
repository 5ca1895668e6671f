"""A job card in another unit, a drawer of wrenches, an adapter at an angle, and a window."""

from __future__ import annotations

from twoshaft.errors import OutOfRangeError
from twoshaft.models.joint import TorqueWrench, setting_with_adapter, torque_at_bolt
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.measuring_and_tools.given import TorqueTool, Window, Wrench
from twoshaft.readings.measuring_and_tools.lot import BANK, Lot
from twoshaft.records import Option
from twoshaft.units.quantities import Q

UNITS = {
    "lbf·ft": ("force_pound * foot", 0.5),
    "lbf·in": ("force_pound * inch", 5),
    "kgf·cm": ("force_kilogram * cm", 5),
}
"""Unit on the card: for the registry, and the step that such a card is rounded to."""
ANGLES = (30, 45, 60, 120, 135, 150)
REACHES = (45, 50, 55, 60, 65, 70)
APART = 1.06
"""A wrench is clearly suited or clearly not: its limits lie at least this factor away."""
OTHERS = 3
NONE = Option("none", "None of them")
WINDOWS = {"sure": (1.5, 2.2), "unsure": (0.35, 0.65)}
"""Half width of the window, as a multiple of what the tool may be off."""


def tools_of(unit) -> dict[str, TorqueWrench]:
    """The unit's wrenches by id."""
    return {w.id: TorqueWrench.of(w) for w in unit.fasteners.wrenches}


def draw(lot: Lot) -> Wrench:
    """A card and an adapter for which one wrench is suited, and a window clear either way."""
    stream = lot.stream.child("wrench")
    tools = tools_of(lot.unit)
    groups = lot.in_turn("group", lot.unit.fasteners.groups)
    claim = lot.in_turn("claim", sorted(WINDOWS))[0]
    for attempt in range(TRIES):
        group = groups[attempt // 40 % len(groups)]
        unit = stream.choice(list(UNITS))
        pint, step = UNITS[unit]
        figure = round(Q(group.torque_nm[1], "N*m").m_as(pint) / step) * step
        reach, angle = stream.choice(REACHES), stream.choice(ANGLES)
        if figure < 4 * step:
            continue
        torque = Q(figure, pint).to("N*m")
        settings = {one: setting_of(tool, torque, reach, angle) for one, tool in tools.items()}
        suited = [
            (tools[one], setting)
            for one, setting in settings.items()
            if setting is not None and _suits(tools[one], torque, setting)
        ]
        if len(suited) != 1 or any(
            _unclear(tools[one], torque, s or torque) for one, s in settings.items()
        ):
            continue
        ((tool, setting),) = suited
        least, most = at_bolt(tool, setting, reach, angle)
        off = max(most - torque, torque - least).m_as("N*m")
        half = round(off * stream.uniform(*WINDOWS[claim]), 1)
        if half < 0.2:
            continue
        aim = round(torque.m, 1)
        return Wrench(
            name=group.name,
            figure=float(figure),
            unit=unit,
            reach_mm=float(reach),
            angle_deg=float(angle),
            low_nm=round(aim - half, 1),
            high_nm=round(aim + half, 1),
            wrenches=tuple(
                TorqueTool(w.id, w.name, w.low_nm, w.high_nm, w.step_nm, w.length_mm)
                for w in lot.unit.fasteners.wrenches
            ),
            others_nm=tuple(_wanted(list(tools.values()), stream) for _ in range(OTHERS)),
            none=NONE,
            claims=BANK.lists["window"],
            windows=tuple(_window(stream) for _ in range(OTHERS)),
        )
    raise lot.too_small("wrench")


def _wanted(tools: list[TorqueWrench], stream: Stream) -> float:
    """A torque [N m] that one of the wrenches suits, or none; clear of where their scales end."""
    reach = [(tool.usable_from_nm, tool.high_nm) for tool in tools]
    out = ((0.4, 0.9 * min(low for low, _ in reach)), (1.1 * max(high for _, high in reach),) * 2)
    for _ in range(TRIES):
        low, high = stream.choice([*reach, stream.choice(out)])
        torque = round(stream.uniform(low, 1.15 * high), 1)
        if torque > 0 and all(
            not 1 / APART < torque / end < APART for ends in reach for end in ends
        ):
            return torque
    return round(2 * max(high for _, high in reach), 1)


def _window(stream: Stream) -> Window:
    """What another bolt may get: inside its window, across an end of it, or beyond it."""
    aim = 12 + stream.integer(140)
    off = aim * stream.uniform(0.04, 0.06)
    half = off * stream.uniform(1.3, 2.2)
    shift = {
        "inside": stream.uniform(-0.15, 0.15) * off,
        "across": stream.choice((-1, 1)) * (half + stream.uniform(-0.7, 0.7) * off),
        "beyond": stream.choice((-1, 1)) * (half + off * stream.uniform(1.2, 1.8)),
    }[stream.choice(("inside", "across", "beyond"))]
    ends = (aim + shift - off, aim + shift + off, aim - half, aim + half)
    return Window(*(round(nm, 1) for nm in ends))


def setting_of(tool: TorqueWrench, torque: Q, reach_mm: float, angle_deg: float) -> Q | None:
    """What to set on a wrench, or None where the adapter is too long for it."""
    try:
        length = Q(tool.length_m, "m")
        return setting_with_adapter(torque, length, Q(reach_mm, "mm"), Q(angle_deg, "degree"))
    except OutOfRangeError:
        return None


def at_bolt(tool: TorqueWrench, setting: Q, reach_mm: float, angle_deg: float) -> tuple[Q, Q]:
    """Least and most that the bolt gets from the mark next to a setting [N·m]."""
    lever = (Q(tool.length_m, "m"), Q(reach_mm, "mm"), Q(angle_deg, "degree"))
    least, most = tool.applied(tool.nearest_setting(setting))
    return torque_at_bolt(least, *lever), torque_at_bolt(most, *lever)


def _suits(tool: TorqueWrench, torque: Q, setting: Q) -> bool:
    return tool.suits(setting) and tool.suits(torque)


def _unclear(tool: TorqueWrench, torque: Q, setting: Q) -> bool:
    """Whether a limit of the wrench's scale is near the torque or its setting."""
    limits = (tool.usable_from_nm, tool.high_nm)
    values = (torque.m_as("N*m"), setting.m_as("N*m"))
    return any(1 / APART < value / limit < APART for value in values for limit in limits)
