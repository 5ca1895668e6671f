"""Seal seat: turn a shaft seal, drive it in, and read its depth all round."""

from __future__ import annotations

from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.bench_tools import SEAL_BRIDGE_MM, seal_depths
from twoshaft.models.fit import SealFitted, Side, seal_faults, seal_of
from twoshaft.plots.seal_section import placed, seal_section
from twoshaft.readings.pressed_and_driven.given import Seal
from twoshaft.rigs.instrument import Instrument, one_of, within
from twoshaft.rigs.pointers import dial_words
from twoshaft.units.quantities import Q
from twoshaft.units.unit import Unit

PLACES = [["0", "12 o'clock"], ["1", "3 o'clock"], ["2", "6 o'clock"], ["3", "9 o'clock"]]
"""Where the depth is read, clockwise."""
SIDES = [["oil", "the oil"], ["air", "the air"]]
GREASE = [["yes", "greased"], ["no", "dry"]]
SLEEVE = [["yes", "over a sleeve"], ["no", "over the bare splines"]]
LEAST_MM, MOST_MM, MOST_LEAN_MM = -2.0, 8.0, 1.2


class SealSeat(Instrument):
    """A seal of the unit in its bore, under a depth gauge.

    Parameters
    ----------
    unit : Unit
    seal : str
        Id of the seal.
    fitted : Seal, optional
        How it really sits. With it the rig gives readings only, for marked work.
    """

    screen = "seat"
    name = "Seal seat"

    def __init__(self, unit: Unit, seal: str, fitted: Seal | None = None) -> None:
        self.rule = seal_of(unit, seal)
        self.fitted = fitted
        low, high = (1e3 * depth for depth in self.rule.depth_m)
        super().__init__(
            about={
                "places": PLACES,
                "sides": SIDES,
                "greases": GREASE,
                "sleeves": SLEEVE if self.rule.sleeve else [],
                "least": LEAST_MM,
                "most": MOST_MM,
                "mostLean": MOST_LEAN_MM,
                "readingsOnly": fitted is not None,
                "bridge": SEAL_BRIDGE_MM,
                "rule": f"Depth {low:g} to {high:g} mm, "
                f"lean at most {1e3 * self.rule.tilt_m:g} mm, "
                f"lip towards the {self.rule.lip_towards}.",
            },
            start={
                "place": "0",
                "lip": str(self.rule.lip_towards),
                "depth": round((low + high) / 2, 2),
                "lean": 0.0,
                "grease": "no",
                "sleeve": "no",
            },
        )

    def look(self, state: dict[str, Any]) -> dict[str, Any]:
        """What a state shows: section, gauge at a place, and the finding."""
        place = int(one_of(state, "place", PLACES))
        if self.fitted is not None:
            lip, depth, lean = self.fitted.lip, self.fitted.depth_mm, self.fitted.lean_mm
            towards = self.fitted.towards
        else:
            lip = one_of(state, "lip", SIDES)
            depth = within(state, "depth", LEAST_MM, MOST_MM)
            lean, towards = within(state, "lean", 0, MOST_LEAN_MM), 0
        depths = seal_depths(depth, lean, towards)
        reading = SEAL_BRIDGE_MM + depths[place].m_as("mm")
        shown = {
            "section": seal_section(Side(lip)).svg,
            "placed": placed(depth, lean if self.fitted is None else 0.0),
            "dial": round(reading, 3),
            "words": f"At {PLACES[place][1]}. {dial_words(reading)}",
            "finding": f"Reading at {PLACES[place][1]}, over the bridge of {SEAL_BRIDGE_MM:g} mm. "
            "Take the bridge off the reading.",
        }
        if self.fitted is None:
            shown["finding"] = self._finding(state, Side(lip), depths)
        return shown

    def _finding(self, state: dict[str, Any], lip: Side, depths: tuple[Q, ...]) -> str:
        sleeve = self.rule.sleeve and one_of(state, "sleeve", SLEEVE) == "yes"
        fitted = SealFitted(
            lip_towards=lip,
            depths_m=tuple(depth.m_as("m") for depth in depths),
            greased=one_of(state, "grease", GREASE) == "yes",
            sleeve_used=sleeve,
        )
        faults = seal_faults(self.rule, fitted)
        if not faults:
            return "This seal sits as it should: lip, depth, square, grease and sleeve."
        told = "; ".join(f"{fault.what}: {fault.consequence}" for fault in faults)
        return f"{told[0].upper()}{told[1:]}."

    def plain_copy(self) -> str:
        """The section and the words as HTML."""
        return f"{self.shown['section']}<p>{self.about['rule']}</p>{super().plain_copy()}"


def seal_seat(unit: Unit, seal: str, *, fitted: Seal | None = None) -> SealSeat:
    """A seal of the unit in its bore, under a depth gauge.

    Parameters
    ----------
    unit, seal, fitted
        As for `SealSeat`.

    Returns
    -------
    SealSeat
        Something a notebook displays.

    Raises
    ------
    CourseError
        When the unit has no seal of this id.
    """
    known = [] if unit.fits_if_any is None else [entry.id for entry in unit.fits.seals]
    if seal not in known:
        raise CourseError(
            f"the unit has no seal {seal!r}",
            mend=f"use one of: {', '.join(known)}" if known else "give it a fits section",
        )
    return SealSeat(unit, seal, fitted)
