"""Gate rig: work the selector by hand, see the parts in section, feel what a misbuild does."""

from __future__ import annotations

from collections.abc import Iterable
from html import escape
from typing import Any

import traitlets

from twoshaft.errors import UnitFileError
from twoshaft.jobsheet.screen import Screen
from twoshaft.models.shift import mechanism, prove_by_hand, with_misbuilds
from twoshaft.models.shift.handwork import (
    blocked_by,
    gate_plan,
    hand_moves,
    make_move,
    passive_places,
    pull,
    say_blocked,
    say_felt,
    say_gears,
    step,
)
from twoshaft.models.shift.mechanism import MOVES
from twoshaft.plots.drawing import html_list
from twoshaft.plots.gate import figure_title, mechanism_figure, transforms
from twoshaft.units.sections.shift import Shift
from twoshaft.units.unit import Unit

SOUND = "sound"
LOG_LINES = 40
STEPS_A_KEY = 2


class GateRig(Screen):
    """A selector that is moved by hand.

    Parameters
    ----------
    shift : Shift
        The mechanism as it should be.
    misbuilds : iterable of str
        Ids of misbuilds that can be chosen, beside the sound mechanism.
    """

    screen = "gate"

    figure = traitlets.Unicode().tag(sync=True)
    moves: traitlets.List[Any] = traitlets.List().tag(sync=True)
    plan = traitlets.Dict().tag(sync=True)
    builds: traitlets.List[Any] = traitlets.List().tag(sync=True)
    view = traitlets.Dict().tag(sync=True)

    def __init__(self, shift: Shift, misbuilds: Iterable[str]) -> None:
        self.shift = shift
        names = {misbuild.id: misbuild.name for misbuild in shift.misbuilds}
        self.build = SOUND
        self._resets = 0
        self._turn = 0
        self._put_together(SOUND)
        super().__init__(
            figure=mechanism_figure(self.machine, self.state),
            moves=[[move.code, move.label] for move in hand_moves(shift)],
            plan=gate_plan(shift),
            builds=[[SOUND, "Assembled correctly"], *([m, names[m]] for m in misbuilds)],
            view=self._look("Work the lever: nothing has been tried yet."),
        )

    def hear(self, message: dict[str, Any]) -> None:
        """Move the hand, or put the mechanism together another way."""
        self._turn = message.get("turn", self._turn)
        kind = message.get("type")
        if kind == "nudge":
            self._nudge((int(message.get("travel", 0)), int(message.get("turned", 0))))
        elif kind == "pull":
            self._pull(float(message["travel_mm"]), float(message["turn_mm"]))
        elif kind == "move":
            self._move(str(message.get("code")))
        elif kind == "reset":
            self._put_together(self.build)
            self.figure = mechanism_figure(self.machine, self.state)
            self.view = self._look("Back at the start, in neutral. The log is empty.")
        elif kind == "build" and message.get("build") in dict(self.builds):
            self._put_together(message["build"])
            self.figure = mechanism_figure(self.machine, self.state)
            self.view = self._look(f"{dict(self.builds)[self.build]}. The log is empty.")
        elif kind == "prove":
            found = " ".join(prove_by_hand(self.machine).sentences)
            self.view = self._look(self.view["happened"]) | {"proof": found}

    def _put_together(self, build: str) -> None:
        self.build = build
        wrong = [] if build == SOUND else [build]
        self.machine = mechanism(with_misbuilds(self.shift, wrong))
        starts = self.machine.starts()
        # A part that nothing drives lies somewhere else each time.
        self.state = starts[(self._resets * 7) % len(starts)]
        self._resets += 1
        self.tried: list[str] = []

    def _nudge(self, way: tuple[int, int]) -> None:
        move = next((m for m in MOVES if m == (_sign(way[0]), _sign(way[1]))), None)
        if move is None:
            return
        before = self.state
        for _ in range(STEPS_A_KEY):
            after = step(self.machine, self.state, move)
            if after is None:
                break
            self.state = after
        stopped = self.state == before
        self.view = self._look(self._blocked(move) if stopped else "")

    def _pull(self, travel_mm: float, turn_mm: float) -> None:
        self.state, there = pull(self.machine, self.state, (travel_mm, turn_mm))
        told = ""
        if not there:
            off = (
                travel_mm - self.machine.travel_mm[self.state[0]],
                turn_mm - self.machine.turn_mm[self.state[1]],
            )
            axis = 0 if abs(off[0]) > abs(off[1]) else 1
            told = self._blocked((_sign(off[0]), 0) if axis == 0 else (0, _sign(off[1])))
        self.view = self._look(told)

    def _blocked(self, move: tuple[int, int]) -> str:
        what = say_blocked(self.machine.shift, blocked_by(self.machine, self.state, move))
        return f"Stopped by {what}." if what else "That is as far as the hand goes."

    def _move(self, code: str) -> None:
        before = self.machine.engaged(self.state)
        ends, done = make_move(self.machine, (self.state,), code)
        self.state = ends[0]
        label = dict(map(tuple, self.moves))[code]
        told = say_felt(done.felt[0])
        if what := say_blocked(self.machine.shift, done.blocked_by):
            told = told.replace("it is stopped", f"stopped by {what}")
        self.tried.append(f"{label}: {told}.")
        del self.tried[:-LOG_LINES]
        changed = self.machine.engaged(self.state) != before
        self.view = self._look(f"{label}: {told}.") | {"changed": changed}

    def _look(self, happened: str) -> dict[str, Any]:
        gears = self.machine.engaged(self.state)
        return {
            "turn": self._turn,
            "title": figure_title(self.machine, self.state),
            "moved": transforms(self.machine, self.state),
            "gears": sorted(gears),
            "lifted": self.machine.up(self.state),
            "finding": _capital(say_gears(gears)) + ".",
            "happened": happened,
            "log": list(self.tried),
            "build": self.build,
            "proof": "",
            "hand": [
                float(self.machine.travel_mm[self.state[0]]),
                float(self.machine.turn_mm[self.state[1]]),
            ],
        }

    @property
    def finding(self) -> str:
        """Which gears are in, as a sentence."""
        return self.view["finding"]

    @property
    def places_mm(self) -> dict[str, float]:
        """Where every passive body is [mm]."""
        return passive_places(self.machine, self.state)

    def plain_copy(self) -> str:
        """The mechanism as it stands and what was tried, as HTML."""
        return (
            f"<p><b>{escape(self.finding)}</b> {escape(dict(self.builds)[self.build])}.</p>"
            f"{mechanism_figure(self.machine, self.state)}{html_list(self.tried)}"
        )


def _sign(number: float) -> int:
    return int(number > 0) - int(number < 0)


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def gate_rig(unit: Unit, misbuilds: Iterable[str] | None = None) -> GateRig:
    """The selector of a unit, to be worked by hand.

    Parameters
    ----------
    unit : Unit
        The unit on the bench.
    misbuilds : iterable of str, optional
        Misbuilds that can be chosen; all of the unit's by default.

    Returns
    -------
    GateRig
        Something a notebook displays.

    Raises
    ------
    UnitFileError
        When the unit has no shift mechanism, or no misbuild of that name.
    """
    if unit.shift_if_any is None:
        raise UnitFileError(
            f"unit {unit.identity.id!r} has no shift mechanism", mend="give it a section shift"
        )
    known = [misbuild.id for misbuild in unit.shift.misbuilds]
    chosen = known if misbuilds is None else list(misbuilds)
    strange = next((id for id in chosen if id not in known), None)
    if strange is not None:
        raise UnitFileError(
            f"the shift mechanism has no assembly fault {strange!r}",
            mend=f"use one of {', '.join(known)}",
        )
    return GateRig(unit.shift, chosen)
