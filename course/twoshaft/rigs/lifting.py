"""Lifting: what is left of the limit when reach, height, way and twist are changed."""

from __future__ import annotations

from html import escape
from math import cos, hypot, radians, sin
from typing import Any

import traitlets

from twoshaft.errors import CourseError
from twoshaft.jobsheet.screen import Screen
from twoshaft.models import lifting
from twoshaft.plots import style
from twoshaft.plots.drawing import Drawing, html_list
from twoshaft.units.quantities import Q

SLIDERS = {
    "mass_kg": ("Load", "kg", 2, 40, 1),
    "reach_cm": ("Reach, ankles to hands", "cm", 25, 63, 1),
    "height_cm": ("Height of the hands", "cm", 0, 140, 5),
    "travel_cm": ("Way up", "cm", 0, 120, 5),
    "twist_deg": ("Twist of the body", "°", 0, 135, 5),
}
"""Name, unit, lowest, highest and step of each slider."""
LEG, TRUNK, ARM, HEAD = 88.0, 50.0, 62.0, 11.0  # cm, of nobody in particular
_LEFT, _FLOOR, _SCALE = 92, 236, 1.1
_HALF = f"color-mix(in srgb, {style.INK_NOW} 55%, {style.PAPER_NOW})"
_WORDS = {
    "low": "Most healthy people can do this lift; with care it may be done by hand.",
    "raised": "Use the hoist or a lift table, or change the lift.",
    "high": "Leave it. Nobody lifts this by hand.",
}


class LiftingRig(Screen):
    """One lift with its sizes on sliders, the limit and the lifting index.

    Parameters
    ----------
    sizes : dict
        ``mass_kg``, ``reach_cm``, ``height_cm``, ``travel_cm``, ``twist_deg`` and ``grip``.
    """

    screen = "lifting"

    plan = traitlets.Dict().tag(sync=True)
    view = traitlets.Dict().tag(sync=True)

    def __init__(self, sizes: dict[str, Any]) -> None:
        self.sizes = dict(sizes)
        plan = {
            "sliders": [[key, *SLIDERS[key]] for key in SLIDERS],
            "grips": [[grip, grip] for grip in lifting.GRIP],
        }
        super().__init__(plan=plan, view=self._view(None))

    def hear(self, message: dict[str, Any]) -> None:
        """Change one size; a refused one leaves everything as it was."""
        if message.get("type") != "set":
            return
        key, value = message.get("name"), message.get("value")
        if key == "grip" and value in lifting.GRIP:
            self.sizes["grip"] = value
        elif key in SLIDERS and isinstance(value, int | float):
            low, high = SLIDERS[key][2:4]
            if not low <= value <= high:
                raise CourseError(
                    f"{SLIDERS[key][0]} is {value:g}", mend=f"set it from {low} to {high}"
                )
            self.sizes[key] = value
        self.view = self._view(message.get("turn"))

    @property
    def lift(self) -> lifting.Lift:
        """The lift as it is set."""
        return lifting.Lift.measured(self.sizes)

    @property
    def limit_kg(self) -> float:
        """The recommended weight limit [kg]."""
        return self.lift.limit().m_as("kg")

    @property
    def index(self) -> float:
        """The lifting index."""
        return lifting.lifting_index(Q(self.sizes["mass_kg"], "kg"), self.lift.limit())

    def _words(self) -> str:
        mass, index = self.sizes["mass_kg"], self.index
        return (
            f"Limit {self.limit_kg:.1f} kg, load {mass:g} kg: lifting index {index:.2f}. "
            f"{_WORDS[lifting.risk(index)]}"
        )

    @property
    def factors(self) -> list[str]:
        """The six multipliers as sentences."""
        return [f"{name} {value:.2f}" for name, value in self.lift.multipliers().items()]

    def _view(self, turn: Any) -> dict[str, Any]:
        return {
            "turn": turn,
            "sizes": dict(self.sizes),
            "finding": self._words(),
            "sum": f"23 kg × {' × '.join(f'{v:.2f}' for v in self.lift.multipliers().values())}"
            f" = {self.limit_kg:.1f} kg",
            "drawing": self.drawing(),
        }

    def drawing(self) -> str:
        """The lift from the side, and the multipliers as bars, as an SVG element."""
        drawn = Drawing(720, 270, self._words(), "; ".join(self.factors))
        drawn.add(*self._person(), *self._bars())
        return drawn.text()

    def _person(self) -> list[str]:
        reach, height = self.sizes["reach_cm"], self.sizes["height_cm"]
        up = height + self.sizes["travel_cm"]
        hip, shoulder = _stoop(reach, height)
        head = _along(shoulder, _angle(hip, shoulder), HEAD + 6)
        size = 26.0
        ink = f'fill="none" stroke="{style.INK_NOW}"'
        joints = " ".join(_at(*p) for p in ((0, 4), hip, shoulder, (reach, height)))
        x, y = _place(reach, height)
        x_up, y_up = _place(reach, up)
        half, tall = size * _SCALE / 2, size * _SCALE * 0.7
        return [
            f'<line {ink} stroke-width="2" x1="8" y1="{_FLOOR}" x2="330" y2="{_FLOOR}"/>',
            f'<rect {ink} stroke-dasharray="5 4" x="{x_up - half:.0f}" y="{y_up:.0f}" '
            f'width="{2 * half:.0f}" height="{tall:.0f}"/>',
            f'<line {ink} stroke-dasharray="5 4" x1="{x:.0f}" y1="{y:.0f}" x2="{x_up:.0f}" '
            f'y2="{y_up:.0f}"/>',
            f'<rect class="tsf-f" x="{x - half:.0f}" y="{y:.0f}" width="{2 * half:.0f}" '
            f'height="{tall:.0f}"/>',
            f'<polyline {ink} stroke-width="7" stroke-linecap="round" stroke-linejoin="round" '
            f'points="{joints}"/>',
            f'<circle class="tsf-f" cx="{_place(*head)[0]:.0f}" cy="{_place(*head)[1]:.0f}" '
            f'r="{HEAD * _SCALE:.0f}"/>',
            f'<path {ink} d="M{_LEFT} {_FLOOR + 6}v10M{x:.0f} {_FLOOR + 6}v10'
            f'M{_LEFT} {_FLOOR + 11}H{x:.0f}"/>',
            f'<text class="tsf-t" text-anchor="middle" x="{(_LEFT + x) / 2:.0f}" '
            f'y="{_FLOOR + 30}">{reach:g} cm</text>',
        ]

    def _bars(self) -> list[str]:
        parts, left, wide = [], 470, 200
        rows = [*self.lift.multipliers().items()]
        for k, (name, value) in enumerate(rows):
            y = 20 + 26 * k
            parts += [
                f'<text class="tsf-t" text-anchor="end" x="{left - 8}" y="{y + 13}">{name}</text>',
                f'<rect class="tsf-b" x="{left}" y="{y}" width="{wide}" height="17"/>',
                f'<rect fill="{_HALF}" x="{left}" y="{y}" width="{wide * value:.1f}" height="17"/>',
                f'<text class="tsf-t" x="{left + wide + 6}" y="{y + 13}">{value:.2f}</text>',
            ]
        top, per_kg = 196, wide / 40
        for k, (name, kg) in enumerate((("limit", self.limit_kg), ("load", self.sizes["mass_kg"]))):
            y, end = top + 26 * k, kg * per_kg
            parts += [
                f'<text class="tsf-h" text-anchor="end" x="{left - 8}" y="{y + 14}">{name}</text>',
                f'<rect class="tsf-b" x="{left}" y="{y}" width="{end:.1f}" height="17"/>',
                f'<text class="tsf-t" x="{left + end + 6:.0f}" y="{y + 13}">{kg:.1f} kg</text>',
            ]
        return parts

    def plain_copy(self) -> str:
        """The lift, its finding and its multipliers, as HTML."""
        return f"<p><b>{escape(self._words())}</b></p>{self.drawing()}{html_list(self.factors)}"


def _stoop(reach: float, height: float) -> tuple[tuple[float, float], tuple[float, float]]:
    """Hip and shoulder of somebody whose hands are there: stand up as straight as they allow."""
    for squat in range(0, 45, 3):
        hip = (-0.35 * squat - 4.0, LEG - squat)
        for lean in range(0, 80 if squat < 42 else 125, 3):
            shoulder = (hip[0] + TRUNK * sin(radians(lean)), hip[1] + TRUNK * cos(radians(lean)))
            if hypot(reach - shoulder[0], height - shoulder[1]) <= ARM:
                return hip, shoulder
    return hip, shoulder


def _angle(hip: tuple[float, float], shoulder: tuple[float, float]) -> tuple[float, float]:
    return ((shoulder[0] - hip[0]) / TRUNK, (shoulder[1] - hip[1]) / TRUNK)


def _along(point: tuple[float, float], way: tuple[float, float], far: float):
    return (point[0] + far * way[0], point[1] + far * way[1])


def _place(x_cm: float, y_cm: float) -> tuple[float, float]:
    return (_LEFT + _SCALE * x_cm, _FLOOR - _SCALE * y_cm)


def _at(x_cm: float, y_cm: float) -> str:
    x, y = _place(x_cm, y_cm)
    return f"{x:.1f},{y:.1f}"


def lifting_rig(
    *,
    mass_kg: float,
    reach_cm: float,
    height_cm: float,
    travel_cm: float,
    twist_deg: float = 0,
    grip: str = "fair",
) -> LiftingRig:
    """A lift to change.

    Parameters
    ----------
    mass_kg, reach_cm, height_cm, travel_cm, twist_deg : float
        Where it begins, in kg, cm and degrees.
    grip : str
        ``good``, ``fair`` or ``poor``.

    Returns
    -------
    LiftingRig
        Something a notebook displays.

    Raises
    ------
    OutOfRangeError
        When a size is outside the equation's validity.
    """
    return LiftingRig(
        {
            "mass_kg": mass_kg,
            "reach_cm": reach_cm,
            "height_cm": height_cm,
            "travel_cm": travel_cm,
            "twist_deg": twist_deg,
            "grip": grip,
        }
    )
