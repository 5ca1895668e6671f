"""Press and heat: choose the fit, where the driver bears and how warm the part is."""

from __future__ import annotations

from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.bench_tools import PRESS_GAUGES_KN, scale_for
from twoshaft.models.fit import (
    BEARING_LIMIT_C,
    BOTH,
    ROOM_C,
    Pressed,
    Ring,
    crosses_elements,
    growth,
    press_force,
    pressure,
    stresses,
)
from twoshaft.plots.driven_section import TRAVEL_PX, driven_section
from twoshaft.rigs.instrument import Instrument, one_of, within
from twoshaft.rigs.pointers import scale_words
from twoshaft.units.quantities import Q
from twoshaft.units.sections.fits import DriveOn
from twoshaft.units.unit import Unit

DRIVERS = [["outer", "the outer ring"], ["inner", "the inner ring"], ["both", "both rings"]]
SEATS = [["oiled", "oiled"], ["dry", "dry"]]
HOTTEST_C = 200
RINGS = {"outer": frozenset([Ring.OUTER]), "inner": frozenset([Ring.INNER]), "both": BOTH}


def tight_ring(pressed: Pressed) -> frozenset[Ring]:
    """The ring whose seat a fit of the unit is: the outer one where the part lies inside."""
    return RINGS["outer" if pressed.entry.drive_on is DriveOn.OUTER else "inner"]


class PressRig(Instrument):
    """A part on its seat under the press, cold or warm.

    Parameters
    ----------
    unit : Unit
    places : tuple of str
        Ids of the unit's press fits to choose from.
    grip_um : float, optional
        True interference; with it the rig gives readings only, for marked work.
    friction : float, optional
        True friction of the seat, with ``grip_um``.
    """

    screen = "press"
    name = "Press and heat"

    def __init__(
        self,
        unit: Unit,
        places: tuple[str, ...],
        grip_um: float | None = None,
        friction: float | None = None,
    ) -> None:
        self.fits = {place: Pressed.of(unit, place) for place in places}
        self.true = None if grip_um is None or friction is None else (grip_um, friction)
        self.readings_only = self.true is not None
        names = [[place, fit.entry.name] for place, fit in self.fits.items()]
        super().__init__(
            about={
                "places": names,
                "drivers": DRIVERS,
                "seats": SEATS,
                "readingsOnly": self.readings_only,
                "travelPx": TRAVEL_PX,
                "room": ROOM_C,
                "hottest": HOTTEST_C,
            },
            start={
                "place": places[0],
                "grip": 50,
                "seat": "oiled",
                "driver": "outer"
                if tight_ring(self.fits[places[0]]) == RINGS["outer"]
                else "inner",
                "warmth": ROOM_C,
                "travel": 0,
            },
        )

    def look(self, state: dict[str, Any]) -> dict[str, Any]:
        """What a state shows: section, gauge, figures and the finding."""
        place = one_of(state, "place", self.about["places"])
        pressed = self.fits[place]
        driven = RINGS[one_of(state, "driver", DRIVERS)]
        travel = within(state, "travel", 0, 100)
        if self.true is not None:
            grip, friction = self.true
        else:
            least, most = pressed.least.m_as("um"), pressed.most.m_as("um")
            grip = least + (most - least) * within(state, "grip", 0, 100) / 100
            low, high = pressed.entry.friction
            friction = low if one_of(state, "seat", SEATS) == "oiled" else high
        warmth = ROOM_C if self.readings_only else within(state, "warmth", ROOM_C, HOTTEST_C)
        size = Q(pressed.entry.size_mm, "mm")
        expansion = Q(pressed.pair.hub.expansion_per_k, "1/K")
        left = grip - growth(size, expansion, Q(warmth - ROOM_C, "delta_degC")).m_as("um")
        force = self._force(pressed, max(left, 0.0), friction, travel)
        whole = self._force(pressed, max(grip, 0.0), friction, 100)
        gauge = scale_for(whole, PRESS_GAUGES_KN)
        tight = tight_ring(pressed) if left > 0 else frozenset()
        shown = {
            "section": self._section(pressed, driven, tight),
            "drives": self._has_rings(pressed),
            "gauge": [gauge.top, gauge.mark, gauge.per_figure],
            "force": round(force, 4),
            "words": f"Gauge of the press, one mark is {gauge.mark:g} kN. "
            + scale_words(force, gauge.mark, gauge.per_figure),
            "finding": _how_far(travel),
        }
        if not self.readings_only:
            shown["finding"] = self._finding(pressed, driven, tight, left, warmth, whole)
            shown["facts"] = self._facts(pressed, grip, left, warmth, friction)
        return shown

    def _has_rings(self, pressed: Pressed) -> bool:
        return not self.readings_only and pressed.entry.drive_on is not DriveOn.PART

    def _section(self, pressed: Pressed, driven, tight) -> str:
        inside = tight_ring(pressed) == RINGS["outer"]
        way = not self.readings_only
        where = driven if self._has_rings(pressed) else tight_ring(pressed)
        return driven_section(where, tight, shaft=not inside, case=inside, way=way).svg

    @staticmethod
    def _force(pressed: Pressed, grip_um: float, friction: float, travel: float) -> float:
        if not travel or not grip_um:
            return 0.0
        length = Q(pressed.entry.length_mm * travel / 100, "mm")
        return float(press_force(Q(grip_um, "um"), pressed.pair, length, friction).m_as("kN"))

    def _finding(self, pressed: Pressed, driven, tight, left, warmth, whole) -> str:
        entry = pressed.entry
        limit = entry.warmest_c
        if limit is None:
            limit = BEARING_LIMIT_C if pressed.pair.hub.name == "Bearing steel" else None
        if limit is not None and warmth > limit:
            return (
                f"Too hot: this part may get {limit:g} °C at most. What it held is no longer sure."
            )
        if not tight:
            return (
                f"At {warmth:.0f} °C it has {-left:.0f} µm of play: it slides home by hand, "
                "and grips once it is cold."
            )
        if self._has_rings(pressed) and crosses_elements(driven, tight):
            return (
                f"{whole:.1f} kN would go through the balls or rollers before the part is home: "
                "the raceways get dents, and it will rumble. Bear on the ring that grips."
            )
        need = "This fit may have play" if pressed.fit.least_um < 0 else "This fit always grips"
        return (
            f"{need}; as set it takes {whole:.1f} kN cold to push it home. The force reaches the "
            "tight seat straight."
        )

    def _facts(self, pressed, grip, left, warmth, friction) -> list[list[str]]:
        now = max(left, 0.0)
        stress = stresses(Q(now, "um"), pressed.pair)
        hub = pressed.pair.hub
        share = 100 * stress.hub_equivalent_pa / hub.yield_pa
        fit = pressed.fit
        return [
            ["Fit", f"{fit.least_um:g} to {fit.most_um:g} µm of interference ({fit.kind})"],
            ["This pair", f"{grip:.0f} µm at {ROOM_C:g} °C; {_left(left)} at {warmth:.0f} °C"],
            ["Pressure", f"{pressure(Q(now, 'um'), pressed.pair).m_as('MPa'):.1f} MPa in the seat"],
            ["Outer part", f"{share:.0f} % of the yield strength of {hub.name.lower()}"],
            ["Force, whole seat", f"{self._force(pressed, now, friction, 100):.2f} kN, "
             f"friction {friction:g}"],
        ]  # fmt: skip

    def plain_copy(self) -> str:
        """The section, the words and the figures as HTML."""
        facts = "".join(f"<li>{name}: {text}</li>" for name, text in self.shown.get("facts", ()))
        return f"{self.shown['section']}{super().plain_copy()}<ul>{facts}</ul>"


def _how_far(travel: float) -> str:
    if not travel:
        return "The ring lies on its chamfer; nothing pushes yet."
    if travel < 100:
        return "The ring is on its way; the gauge climbs as more of the seat grips."
    return "The ring has just reached its shoulder. Read the gauge before the force jumps."


def _left(left_um: float) -> str:
    return f"{left_um:.0f} µm left" if left_um > 0 else f"{-left_um:.0f} µm of play"


def press_rig(
    unit: Unit,
    *places: str,
    grip_um: float | None = None,
    friction: float | None = None,
) -> PressRig:
    """A part on its seat under the press, cold or warm.

    Parameters
    ----------
    unit : Unit
    *places : str
        Ids of press fits to choose from; all of the unit's if none is named.
    grip_um, friction : float, optional
        As for `PressRig`; both or none.

    Returns
    -------
    PressRig
        Something a notebook displays.

    Raises
    ------
    CourseError
        When the unit has no press fit of this id, or only one of the two figures is given.
    """
    known = [] if unit.fits_if_any is None else [entry.id for entry in unit.fits.presses]
    for place in places or ("",)[: not known]:
        if place not in known:
            raise CourseError(
                f"the unit has no press fit {place!r}",
                mend=f"use one of: {', '.join(known)}" if known else "give it a fits section",
            )
    if (grip_um is None) != (friction is None):
        raise CourseError("read half of a measured pair", mend="give interference and friction")
    return PressRig(unit, places or tuple(known), grip_um, friction)
