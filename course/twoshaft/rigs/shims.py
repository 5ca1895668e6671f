"""Shim bench: put shims into a support, seat the rollers, read a dial indicator, warm the unit."""

from __future__ import annotations

from html import escape
from typing import Any

import traitlets

from twoshaft.errors import CourseError
from twoshaft.jobsheet.screen import Screen
from twoshaft.models.bearing import OFF_RIB, Trial, dial_readings, try_shim
from twoshaft.models.bench_tools import PLUNGERS_MM
from twoshaft.models.shim import target_interference
from twoshaft.plots.bearing_section import bearing_section
from twoshaft.rigs.pointers import dial_words
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import TaperBearing
from twoshaft.units.unit import Unit

PLUNGERS = [
    [f"{mm:.2f}", words]
    for mm, words in zip(PLUNGERS_MM, ("just touching", "half a turn", "one turn"), strict=True)
]
"""How far the plunger is pressed in [mm], in words."""
SEATED_UM = 2.0
PINCHED_MM = 0.004
"""Less travel than this is no float: the pointer moves by less than half a mark."""


class ShimBench(Screen):
    """A support with a shim in it, under a dial indicator.

    Parameters
    ----------
    unit : Unit
    support : str
        Id of the support.
    trial : tuple of float, optional
        Shims in place at the start [mm]; the middle of the shelf if absent.
    measured : dict of str to float, optional
        True lengths [mm] by term id; nominal where absent.
    readings_only : bool
        True in marked work: the shim stays, and only the pointer is shown.
    """

    screen = "shims"

    about = traitlets.Dict().tag(sync=True)
    shown = traitlets.Dict().tag(sync=True)

    def __init__(
        self,
        unit: Unit,
        support: str,
        trial: tuple[float, ...] | None = None,
        measured: dict[str, float] | None = None,
        readings_only: bool = False,
    ) -> None:
        self.bearings = unit.bearings
        self.support = unit.bearings.support_by_id(support)
        self.shelf = unit.bearings.shim_set_by_id(self.support.shim_set)
        self.measured = {term: Q(mm, "mm") for term, mm in (measured or {}).items()}
        self.readings_only = readings_only
        self._last: tuple[tuple[str, ...], Trial] | None = None
        sizes = self.shelf.thicknesses_mm
        shims = tuple(trial or (sizes[len(sizes) // 2],))
        rows = (unit.bearings.set_by_id(s) for s in (self.support.left, self.support.right))
        self.rolls = any(isinstance(row, TaperBearing) for row in rows)
        section = bearing_section(self.support, self.bearings, shim_mm=sum(shims))
        low, high = (limit.m_as("mm") for limit in target_interference(self.support))
        super().__init__(
            about={
                "name": self.support.name,
                "section": section.svg,
                "shelf": [[f"{mm:.3f}", f"{mm:.2f} mm"] for mm in sizes],
                "second": self.shelf.at_most == 2,
                "plungers": PLUNGERS,
                "rolls": self.rolls,
                "readingsOnly": readings_only,
                "caseRise": self.support.running.case_k,
                "low": low,
                "high": high,
                "reach": 0.25,
            },
            shown={},
        )
        self.show(
            {
                "shims": [f"{mm:.3f}" for mm in shims],
                "warmth": 0,
                "turns": 0,
                "plunger": PLUNGERS[0][0],
                "side": "away",
            }
        )

    def hear(self, message: dict[str, Any]) -> None:
        """Take the state that the browser asks for."""
        if message.get("type") == "set":
            self.show(message["state"], message.get("turn"))

    def show(self, state: dict[str, Any], turn: str | None = None) -> None:
        """Show the bench in a state: ``shims``, ``warmth`` (0 to 100), ``turns``, ``plunger``,
        ``side``."""
        if self.readings_only:
            known = self.shown.get("state", state)
            state = {**state, "shims": known["shims"], "warmth": 0}
        shims = [float(mm) for mm in state["shims"] if mm]
        if not 1 <= len(shims) <= self.shelf.at_most:
            raise CourseError("read no shim, or too many", mend="choose what the shelf allows")
        now = self.trial(state)
        away, towards = dial_readings(now.travel, Q(float(state["plunger"]), "mm"))
        reading = (towards if state["side"] == "towards" else away).m_as("mm")
        shown: dict[str, Any] = {
            "turn": turn,
            "state": state,
            "dial": round(float(reading), 4),
            "dialWords": dial_words(reading),
            "finding": self._seating(now, state),
        }
        if not self.readings_only:
            cold = self._cold(tuple(state["shims"]))
            shown |= {
                "cold": round(float(cold.setting.m_as("mm")), 4),
                "warm": round(float(now.setting.m_as("mm")), 4),
                "finding": self._finding(cold, now, state),
                "words": self._words(cold, now, state, sum(shims)),
            }
        self.shown = shown

    def trial(self, state: dict[str, Any]) -> Trial:
        """The pair in a state of the bench."""
        return try_shim(
            self.support,
            self.bearings,
            Q(sum(float(mm) for mm in state["shims"] if mm), "mm"),
            measured=self.measured,
            warmth=float(state["warmth"]) / 100,
            off_rib=OFF_RIB,
            turns=float(state["turns"]),
        )

    def _cold(self, shims: tuple[str, ...]) -> Trial:
        """The pair at the bench with its rollers home; a slider asks for it again and again."""
        if self._last is None or self._last[0] != shims:
            self._last = shims, self.trial({"shims": shims, "warmth": 0, "turns": 1000})
        return self._last[1]

    def _seating(self, now: Trial, state: dict[str, Any]) -> str:
        if not self.rolls:
            return "These are ball bearings: nothing has to be turned home."
        turns = int(state["turns"])
        if not turns:
            return "The shaft has not been turned since the rings were fitted."
        return f"The shaft has been turned {turns} times under hand load."

    def _finding(self, cold: Trial, now: Trial, state: dict[str, Any]) -> str:
        """What the bench teaches now, in a sentence or two."""
        proud_um = (now.shown - now.setting).m_as("um")
        if proud_um > SEATED_UM:
            return (
                f"The rollers stand {proud_um:.0f} µm proud, so the pair seems tighter than it is. "
                "Turn the shaft before you believe the dial."
            )
        if float(state["plunger"]) < now.travel.m_as("mm") / 2:
            return (
                "The plunger leaves the shaft before the end of its way, so the total comes out "
                "short. Press the plunger in first."
            )
        if now.travel.m_as("mm") < PINCHED_MM:
            return (
                "The pointer moves by less than half a mark: no end play. How much preload there "
                "is the dial cannot tell; the cord can."
            )
        return "Read the dial pushed and pulled: the difference is the end play."

    def _words(self, cold: Trial, now: Trial, state: dict[str, Any], shim: float) -> list[str]:
        low, high = self.about["low"], self.about["high"]
        setting = cold.setting.m_as("mm")
        place = (
            "inside"
            if low <= setting <= high
            else f"{'looser' if setting < low else 'tighter'} than"
        )
        words = [
            f"Cold, rollers home, {shim:.2f} mm of shim gives {amount(setting)}: "
            f"{place} the target of {_target(self.support)}."
        ]
        if state["warmth"]:
            moved = (now.setting - cold.setting).m_as("um")
            rise = self.support.running.case_k * state["warmth"] / 100
            way = "tightens" if moved > 0 else "loosens"
            words.append(
                f"With the case {rise:.0f} K warmer the pair {way} by {abs(moved):.0f} µm and has "
                f"{amount(now.setting.m_as('mm'))}."
            )
        return words

    @property
    def finding(self) -> str:
        """What the bench shows, as a sentence."""
        return self.shown["finding"]

    def plain_copy(self) -> str:
        """The bench as HTML."""
        words = "".join(f"<p>{escape(text)}</p>" for text in self.shown.get("words", ()))
        return (
            f"{self.about['section']}<p>Dial indicator, one mark is 0.01 mm. "
            f"{escape(self.shown['dialWords'])}</p><p><b>{escape(self.finding)}</b></p>{words}"
        )


def amount(setting_mm: float) -> str:
    """A setting in words."""
    what = "preload" if setting_mm >= 0 else "end play"
    return f"{abs(setting_mm):.3f} mm of {what}"


def _target(support) -> str:
    kind = "preload" if support.target.kind == "preload" else "end play"
    return f"{support.target.low_mm:g} to {support.target.high_mm:g} mm of {kind}"


def shim_bench(
    unit: Unit,
    support: str,
    *,
    trial: tuple[float, ...] | None = None,
    measured: dict[str, float] | None = None,
    readings_only: bool = False,
) -> ShimBench:
    """A support with its shim under a dial indicator.

    Parameters
    ----------
    unit, support, trial, measured, readings_only
        As for `ShimBench`.

    Returns
    -------
    ShimBench
        Something a notebook displays.

    Raises
    ------
    CourseError
        When the unit has no bearings, or none of its supports has this id.
    """
    known = [] if unit.bearings_if_any is None else [s.id for s in unit.bearings.supports]
    if support not in known:
        raise CourseError(
            f"the unit has no support {support!r}",
            mend=f"use one of: {', '.join(known)}" if known else "give it a bearings section",
        )
    return ShimBench(unit, support, trial, measured, readings_only)
