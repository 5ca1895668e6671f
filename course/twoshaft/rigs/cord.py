"""Cord bench: a cord round a drum on the shaft, pulled with a spring scale."""

from __future__ import annotations

from html import escape
from typing import Any

import traitlets

from twoshaft.errors import CourseError
from twoshaft.jobsheet.screen import Screen
from twoshaft.models.bearing import OFF_RIB, Pair, Pull, cord_pull, try_shim, turned
from twoshaft.models.bench_tools import SPRING_SCALES_N, scale_for
from twoshaft.models.shim import Stack
from twoshaft.rigs.pointers import scale_words
from twoshaft.rigs.shims import amount
from twoshaft.units.quantities import Q
from twoshaft.units.unit import Unit

KINDS = {"seal": "the seals", "mesh": "the meshing gears", "other-shaft": "the other shaft"}
HIGHEST_MM = 0.16


class CordBench(Screen):
    """A support whose turning torque is felt on a cord.

    Parameters
    ----------
    unit : Unit
    support : str
        Id of the support.
    setting_mm : float
        Interference of the pair, cold [mm].
    kinds : tuple of str
        What turns besides the bearings: any of the kinds of drag.
    radius_mm : float, optional
        Radius of the drum; the unit file's if absent.
    readings_only : bool
        True in marked work: nothing can be changed but the turns, and only the pointer is shown.
    """

    screen = "cord"

    about = traitlets.Dict().tag(sync=True)
    shown = traitlets.Dict().tag(sync=True)

    def __init__(
        self,
        unit: Unit,
        support: str,
        setting_mm: float = 0.06,
        kinds: tuple[str, ...] = (),
        radius_mm: float | None = None,
        readings_only: bool = False,
    ) -> None:
        self.bearings = unit.bearings
        self.support = unit.bearings.support_by_id(support)
        self.pair = Pair.from_support(self.support, self.bearings)
        self.readings_only = readings_only
        self._shares: dict[float, float] = {}
        radius = radius_mm or self.support.cord_radius_mm
        present = [k for k in KINDS if any(drag.kind == k for drag in self.support.drags)]
        state = {
            "setting": setting_mm,
            "radius": radius,
            "kinds": list(kinds),
            "turns": 0,
        }
        self.fixed = dict(state)
        super().__init__(
            about={
                "name": self.support.name,
                "kinds": [[k, KINDS[k]] for k in present],
                "radii": [0.5 * self.support.cord_radius_mm, 2 * self.support.cord_radius_mm],
                "highest": HIGHEST_MM,
                "readingsOnly": readings_only,
            },
            shown={},
        )
        self.show(state)

    def hear(self, message: dict[str, Any]) -> None:
        """Take the state that the browser asks for."""
        if message.get("type") == "set":
            self.show(message["state"], message.get("turn"))

    def pull(self, preload: Q, radius_mm: float, kinds: tuple[str, ...]) -> Pull:
        """Pull on the cord at a preload [N]."""
        what = turned(self.support, self.bearings, preload, kinds)
        return cord_pull(what, Q(radius_mm, "mm"))

    def show(self, state: dict[str, Any], turn: str | None = None) -> None:
        """Show the bench in a state: ``setting`` [mm], ``radius`` [mm], ``kinds``, ``turns``."""
        if self.readings_only:
            state = {**self.fixed, "turns": state["turns"]}
        share = self._share(float(state["turns"]))
        radius, kinds = float(state["radius"]), tuple(state["kinds"])
        preload = self.pair.preload(Q(float(state["setting"]), "mm"))
        pull = self.pull(preload * share, radius, kinds)
        force = float(pull.force.m_as("N"))
        # The scale that is taken from the drawer is the one for seated rollers.
        full = self.pull(preload, radius, kinds)
        scale = scale_for(full.force.m_as("N"), SPRING_SCALES_N)
        words = scale_words(min(force, scale.top), scale.mark, scale.per_figure)
        shown: dict[str, Any] = {
            "turn": turn,
            "state": state,
            "pull": round(force, 3),
            "pullWords": words if force <= scale.top else "The pointer stands at its stop.",
            "scale": {"top": scale.top, "mark": scale.mark, "perFigure": scale.per_figure},
            "what": pull.turned.name,
            "finding": f"The cord turns {pull.turned.name}. {_turns(state['turns'])}",
            "words": [],
        }
        if not self.readings_only:
            shown |= {
                "finding": self._finding(pull, share),
                "words": self._words(pull, preload, state),
            }
        self.shown = shown

    def _share(self, turns: float) -> float:
        """Part of the bearings' true torque that is felt after some turns."""
        if turns not in self._shares:
            bare = Stack.from_support(self.support).shim_for(Q(0.0, "mm"))
            self._shares[turns] = try_shim(
                self.support,
                self.bearings,
                max(bare, Q(0.0, "mm")),
                off_rib=OFF_RIB,
                turns=turns,
            ).torque_share
        return self._shares[turns]

    def _finding(self, pull: Pull, share: float) -> str:
        if share < 0.95:
            return (
                f"The rollers are not home: the bearings give {share:.0%} of their true torque. "
                "Turn the shaft first."
            )
        return f"{pull.sentence}."

    def _words(self, pull: Pull, preload: Q, state: dict[str, Any]) -> list[str]:
        words = [
            f"{part.name}: {part.felt_nm:.2f} N·m"
            + (f" ({part.torque_nm:g} N·m at {part.speed_ratio:g} times the speed)"
               if part.speed_ratio != 1 else "")
            for part in pull.turned.parts
        ]  # fmt: skip
        force = preload.m_as("N")
        if force <= 0:
            first = "There is end play, so no preload: the cord feels no torque of the bearings."
        else:
            first = f"{amount(float(state['setting']))}: the pair is pressed with {force:.0f} N."
        return [first, *words]

    @property
    def finding(self) -> str:
        """What the bench shows, as a sentence."""
        return self.shown["finding"]

    def plain_copy(self) -> str:
        """The bench as HTML."""
        items = "".join(f"<li>{escape(text)}</li>" for text in self.shown["words"])
        scale = self.shown["scale"]
        return (
            f"<p>{escape(self.support.name)}, cord on a radius of "
            f"{self.shown['state']['radius']:g} mm. Spring scale to {scale['top']:g} N, one mark "
            f"is {scale['mark']:g} N. {escape(self.shown['pullWords'])}</p>"
            f"<p><b>{escape(self.finding)}</b></p><ul>{items}</ul>"
        )


def _turns(turns: float) -> str:
    if not turns:
        return "The shaft has not been turned since the rings were fitted."
    return f"The shaft has been turned {int(turns)} times under hand load."


def cord_bench(
    unit: Unit,
    support: str,
    *,
    setting_mm: float = 0.06,
    kinds: tuple[str, ...] = (),
    radius_mm: float | None = None,
    readings_only: bool = False,
) -> CordBench:
    """A cord and a spring scale on a support.

    Parameters
    ----------
    unit, support, setting_mm, kinds, radius_mm, readings_only
        As for `CordBench`.

    Returns
    -------
    CordBench
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
    return CordBench(unit, support, setting_mm, kinds, radius_mm, readings_only)
