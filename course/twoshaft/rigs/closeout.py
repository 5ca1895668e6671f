"""Oils over temperature, a blocked breather, a leak test, and causes behind a complaint."""

from __future__ import annotations

from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.closeout import (
    GUARD,
    OUTSIDE_MBAR,
    causes_left,
    hot_grade,
    leak_rate,
    load_road,
    pressure_in,
    pressure_lost,
    uncertainty_of_loss,
)
from twoshaft.models.closeout.air import ZERO_K
from twoshaft.models.viscosity import walther
from twoshaft.plots.closing import causes_list, leak_picture, oil_chart, pressure_picture
from twoshaft.plots.driven_section import Sketch
from twoshaft.rigs.instrument import Instrument, one_of, within
from twoshaft.units.quantities import Q
from twoshaft.units.sections.closeout import LeakTest
from twoshaft.units.unit import Unit

AT_40, AT_100, AT_C = (20.0, 250.0), (4.0, 24.0), (0.0, 120.0)
HOT_C, CLOSED_C = (-10.0, 120.0), 20.0
LEAK, WARMER_K = (0.0, 20.0), (-2.0, 2.0)
ROOM_C, TALL_PX = 20.0, 380.0
TRIED = [["open", "not tried"], ["yes", "yes"], ["no", "no"]]
SUITS = "noise", "shift", "jump", "oil"


def _slider(key: str, label: str, ends: tuple[float, float], step: float, unit: str, places: int):
    return {
        "key": key, "label": label, "min": ends[0], "max": ends[1], "step": step, "unit": unit,
        "places": places,
    }  # fmt: skip


class Drawn(Instrument):
    """An instrument whose picture comes from the kernel."""

    screen = "sketch"

    def plain_copy(self) -> str:
        """The picture and its words as HTML."""
        return f"{self.shown['drawing']}{super().plain_copy()}"

    @staticmethod
    def shows(picture: Sketch, finding: str) -> dict[str, Any]:
        """What a state shows."""
        return {"drawing": picture.svg, "words": picture.words, "finding": finding}


class OilChart(Drawn):
    """An oil beside that of the unit, over temperature.

    Parameters
    ----------
    unit : Unit
    """

    name = "Oil over temperature"
    asks = "Which oil is thick enough, hot and cold?"

    def __init__(self, unit: Unit) -> None:
        self.own = unit.strip.oil.viscosity_mm2_per_s
        super().__init__(
            {
                "pickers": [],
                "sliders": [
                    _slider("at_40", "Viscosity at 40 °C", AT_40, 1, "mm²/s", 0),
                    _slider("at_100", "Viscosity at 100 °C", AT_100, 0.1, "mm²/s", 1),
                    _slider("at", "Temperature", AT_C, 5, "°C", 0),
                ],
            },
            {"at_40": 140.0, "at_100": 16.0, "at": 60.0},
        )

    def look(self, state: dict[str, Any]) -> dict[str, Any]:
        """The two lines, and both viscosities at a temperature."""
        at_40, at_100 = within(state, "at_40", *AT_40), within(state, "at_100", *AT_100)
        at = within(state, "at", *AT_C)
        if at_100 > 0.6 * at_40:
            raise CourseError("no oil keeps so much of its viscosity from 40 °C to 100 °C",
                              mend="raise the first figure or lower the second")  # fmt: skip
        mine, other = (
            walther(Q(cold, "mm**2/s"), Q(hot, "mm**2/s"), Q(at, "degC")).m
            for cold, hot in (self.own, (at_40, at_100))
        )
        return self.shows(
            oil_chart([("U", *self.own), ("O", at_40, at_100)], at, TALL_PX),
            f"At {at:.0f} °C the unit's own oil (U) has {_round(mine)} mm²/s, the other (O) "
            f"{_round(other)} mm²/s. By its figure at 100 °C the other is of grade SAE "
            f"{hot_grade(Q(at_100, 'mm**2/s'))}.",
        )


def _round(v: float) -> str:
    return f"{v:.1f}" if v < 20 else f"{v:.0f}"


class BreatherRig(Drawn):
    """Air and oil that warm in a unit, with the breather open or blocked.

    Parameters
    ----------
    unit : Unit
    """

    name = "The breather"
    asks = "What does a blocked breather do?"

    def __init__(self, unit: Unit) -> None:
        self.section, self.oil = unit.close_out.breather, unit.strip.oil
        self.states = [["blocked", "blocked"], ["open", "open"]]
        super().__init__(
            {
                "pickers": [{"key": "breather", "label": "Breather", "options": self.states}],
                "sliders": [_slider("now", "Temperature now", HOT_C, 1, "°C", 0)],
            },
            {"breather": "open", "now": 60.0},
        )

    def look(self, state: dict[str, Any]) -> dict[str, Any]:
        """The pressure, and what the seals do."""
        now, most = within(state, "now", *HOT_C), self.section.seal_most_mbar
        over = 0.0
        if one_of(state, "breather", self.states) == "blocked":
            grows = self.oil.capacity_litre * self.oil.expansion_per_k * (now - CLOSED_C)
            over = pressure_in(
                Q(OUTSIDE_MBAR, "mbar"), Q(CLOSED_C, "degC"), Q(now, "degC"),
                Q(self.section.air_litre, "l"), Q(grows, "l"),
            ).m  # fmt: skip
        does = (
            "it presses oil out past a lip"
            if over > most
            else "it draws in what is outside: air, water, dust"
            if over < -1
            else "the seals hold"
        )
        return self.shows(
            pressure_picture(over, most),
            f"From {CLOSED_C:.0f} °C to {now:.0f} °C the pressure changes by "
            f"{over:.0f} mbar: {does}.",
        )


class LeakRig(Drawn):
    """A leak test whose air may warm or cool.

    Parameters
    ----------
    unit : Unit
    """

    name = "The leak test"
    asks = "Is it a leak, or did the air cool?"

    def __init__(self, unit: Unit) -> None:
        self.test: LeakTest = unit.close_out.needed_leak_test()
        self.litres = unit.close_out.breather.air_litre + unit.strip.oil.capacity_litre
        super().__init__(
            {
                "pickers": [],
                "sliders": [
                    _slider("leak", "True leak", LEAK, 0.5, "mL/min", 1),
                    _slider("warmer", "Air warms by", WARMER_K, 0.1, "K", 1),
                    _slider("minutes", "Time", (1, 20), 1, "min", 0),
                ],
            },
            {"leak": 3.0, "warmer": -0.5, "minutes": float(self.test.minutes)},
        )

    def look(self, state: dict[str, Any]) -> dict[str, Any]:
        """The gauge, the leak worked out with and without the temperature, and what is proven."""
        leak, warmer = within(state, "leak", *LEAK), within(state, "warmer", *WARMER_K)
        minutes, test = within(state, "minutes", 1, 20), self.test
        start = OUTSIDE_MBAR + test.pressure_mbar
        lost = leak * minutes * OUTSIDE_MBAR / self.litres / 1000
        end = (start - lost) * (ROOM_C + ZERO_K + warmer) / (ROOM_C + ZERO_K)
        cold, warm = Q(ROOM_C, "degC"), Q(ROOM_C + warmer, "degC")
        inside, time, out = Q(self.litres, "l"), Q(minutes, "minute"), Q(OUTSIDE_MBAR, "mbar")
        u = uncertainty_of_loss(
            Q(test.gauge_mbar, "mbar"), Q(test.thermometer_k, "delta_degC"), Q(start, "mbar"), cold
        )
        raw, rate, unsure = (
            leak_rate(fall, inside, time, out).m
            for fall in (
                Q(start - end, "mbar"),
                pressure_lost(Q(start, "mbar"), Q(end, "mbar"), cold, warm),
                u,
            )
        )
        band = GUARD * unsure
        most = test.leak_most_ml_per_min
        proven = "tight" if rate <= most - band else "leaking" if rate >= most + band else "neither"
        return self.shows(
            leak_picture(
                test.pressure_mbar, end - OUTSIDE_MBAR, start - lost - OUTSIDE_MBAR, minutes
            ),
            f"By the gauge alone the leak is {raw:.1f} mL/min; with the temperature {rate:.1f} "
            f"mL/min. Allowed are {most:g} mL/min, the guard band is {band:.1f} mL/min: proven "
            f"{proven}.",
        )


class RoadRig(Drawn):
    """Causes behind a complaint, by what was tried on the road.

    Parameters
    ----------
    of : str
        What the driver complains of: ``noise``, ``shift``, ``jump`` or ``oil``.
    """

    name = "From complaint to cause"
    asks = "Which cause is left?"

    def __init__(self, of: str) -> None:
        road = load_road()
        self.causes = [cause for cause in road.causes if road.of[cause] == of]
        self.checks = [
            check for check in road.checks if any(check in road.finds[one] for one in self.causes)
        ]
        super().__init__(
            {
                "pickers": [
                    {"key": check, "label": road.checks[check], "options": TRIED}
                    for check in self.checks
                ],
                "sliders": [],
            },
            dict.fromkeys(self.checks, "open"),
        )

    def look(self, state: dict[str, Any]) -> dict[str, Any]:
        """The causes that are left."""
        said = {check: one_of(state, check, TRIED) for check in self.checks}
        left = causes_left({check: one == "yes" for check, one in said.items() if one != "open"})
        there = [cause for cause in self.causes if cause in left]
        names = load_road().causes
        tell = (
            f"One cause is left: {names[there[0]]}. Look there first."
            if len(there) == 1
            else f"{len(there)} causes are left. Try something that tells them apart."
            if there
            else "No single cause explains all of it. Try again, or think of two causes."
        )
        return self.shows(
            causes_list([(names[cause], cause in there) for cause in self.causes]), tell
        )


def oil_chart_rig(unit: Unit) -> OilChart:
    """An oil beside that of the unit, over temperature.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    OilChart
        Something a notebook displays.
    """
    return OilChart(unit)


def breather_rig(unit: Unit) -> BreatherRig:
    """A unit that warms, with its breather open or blocked.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    BreatherRig
        Something a notebook displays.
    """
    return BreatherRig(unit)


def leak_rig(unit: Unit) -> LeakRig:
    """A leak test whose air may warm or cool.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    LeakRig
        Something a notebook displays.
    """
    return LeakRig(unit)


def road_rig(of: str) -> RoadRig:
    """Causes behind a complaint, by what was tried on the road.

    Parameters
    ----------
    of : str
        What the driver complains of: ``noise``, ``shift``, ``jump`` or ``oil``.

    Returns
    -------
    RoadRig
        Something a notebook displays.

    Raises
    ------
    CourseError
        When there is no such complaint.
    """
    if of not in SUITS:
        raise CourseError(f"no driver complains of {of!r} here", mend=f"use one of: {SUITS}")
    return RoadRig(of)
