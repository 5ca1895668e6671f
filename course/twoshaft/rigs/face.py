"""Bolted face: tighten it bolt by bolt, in any order and any number of rounds."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from html import escape
from typing import Any

import numpy as np
import traitlets

from twoshaft.errors import CourseError
from twoshaft.jobsheet.screen import Screen
from twoshaft.models import joint
from twoshaft.rigs.face_drawing import clamp_bars, face_drawing
from twoshaft.units.quantities import Q
from twoshaft.units.unit import Unit

FILMS_UM = (0, 20, 40, 80)
_MOST_PULLS = 400
_SEED = 3


@dataclass(frozen=True)
class Pull:
    """One pull of the wrench: the bolt, what the wrench is set to, the film that still stands."""

    bolt: int
    torque_nm: float
    film_um: float


class FaceTightening(Screen):
    """A face with its bolts, a torque wrench, and the clamp that every bolt keeps.

    Parameters
    ----------
    unit : Unit
    fastening : joint.Fastening
        A group with a flange.
    face : joint.Face
        The flange; the group's own, or one like it.
    torque_nm : float
        What the job asks for [N·m].
    readings_only : bool
        True where the work is marked: the clamps are shown, what follows from them is not.
    """

    screen = "face"

    plan = traitlets.Dict().tag(sync=True)
    view = traitlets.Dict().tag(sync=True)

    def __init__(
        self,
        unit: Unit,
        fastening: joint.Fastening,
        face: joint.Face,
        torque_nm: float,
        readings_only: bool = False,
    ) -> None:
        self.fastening, self.face, self.torque_nm = fastening, face, torque_nm
        self.readings_only = readings_only
        typical = fastening.bounds(torque=Q(torque_nm, "N*m")).typical_n
        self.newton_per_nm = typical / torque_nm
        self.target_n = typical
        sample = fastening.sample(face.count, _SEED, torque=Q(torque_nm, "N*m"))
        self.scatter = sample.clamp_n / typical
        self.scattered, self.film_um = False, 0
        self.started: list[int] = []
        self.pulls: list[Pull] = []
        self.waited = False
        self.result = _Result.at_rest(face)
        self.sentence = "Start every bolt by hand, then set the wrench and choose a bolt."
        self.unit = unit
        super().__init__(
            plan={
                "drawing": self._drawn(live=True),
                "count": face.count,
                "name": fastening.group.name,
                "torque": torque_nm,
                "step": fastening.wrench.step_nm,
                "films": [] if readings_only else list(FILMS_UM),
                "rounds": []
                if readings_only
                else [["clockwise", "round the ring"], ["crosswise", "crosswise"]],
                "readingsOnly": readings_only,
            },
            view={},
        )
        self.view = self._view(None)

    def _drawn(self, live: bool) -> str:
        return face_drawing(
            self.unit,
            self.fastening,
            f"{self.fastening.group.name}, seen from their heads",
            f"{self.face.count} bolts, numbered in the order in which the flange passes them",
            self.result.pulled,
            live,
        )

    def hear(self, message: dict[str, Any]) -> None:
        """Do what the browser asks; a refused pull leaves everything as it was."""
        what = message.get("type")
        if what == "pull":
            self._pull([int(message["bolt"])], float(message["torque"]))
        elif what == "round":
            patterns = {"clockwise": joint.clockwise, "crosswise": joint.crosswise}
            self._pull(patterns[message["pattern"]](self.face.count), float(message["torque"]))
        elif what == "start":
            self._start(range(self.face.count))
        elif what == "undo":
            self._undo()
        elif what == "again":
            self._again()
        elif what == "wait":
            self._wait()
        elif what == "set":
            self._set(message)
        self.view = self._view(message.get("turn"))

    def _start(self, bolts: Sequence[int]) -> None:
        fresh = [bolt for bolt in bolts if bolt not in self.started]
        self.started += fresh
        if len(fresh) == 1:
            self.sentence = f"Bolt {fresh[0] + 1} is started by hand: two turns, no resistance."
        elif fresh:
            self.sentence = f"All {self.face.count} bolts are started by hand; none is tight yet."

    def _pull(self, bolts: Sequence[int], torque_nm: float) -> None:
        if len(bolts) == 1 and bolts[0] not in self.started:
            self._start(bolts)
            return
        missing = self.face.count - len(self.started)
        if missing:
            self.sentence = (
                f"{missing} of the bolts {'is' if missing == 1 else 'are'} not started yet. Start "
                "every bolt by hand first: once one is tight the cover cannot shift any more, and "
                "a bolt that no longer meets its hole cuts across the thread."
            )
            return
        if len(self.pulls) + len(bolts) > _MOST_PULLS:
            raise CourseError(f"that is more than {_MOST_PULLS} pulls", mend="start again")
        before = self.result.clamp_n
        film = 0 if self.waited else self.film_um
        pulls = [Pull(int(bolt), torque_nm, film) for bolt in bolts]
        self.result = self._solved([*self.pulls, *pulls])
        self.pulls += pulls
        self.sentence = self._what_happened(pulls, before)

    def _what_happened(self, pulls: list[Pull], before: np.ndarray) -> str:
        now, last = self.result.clamp_n, pulls[-1].bolt
        turned = self.result.turned[-len(pulls) :]
        if len(pulls) > 1:
            idle = len(pulls) - int(np.sum(turned))
            done = f"One round at {pulls[0].torque_nm:g} N·m."
            return done + (f" The wrench clicked at once on {idle} of the bolts." if idle else "")
        if not turned[-1]:
            return (
                f"Bolt {last + 1}: the wrench clicked at once and turned nothing. It holds "
                f"{now[last] / 1e3:.1f} kN, and a wrench never loosens."
            )
        change = now - before
        change[last] = 0
        said = f"Bolt {last + 1} now holds {now[last] / 1e3:.1f} kN."
        worst = int(np.argmin(change))
        if change[worst] < -0.02 * self.target_n:
            said += f" Bolt {worst + 1} lost {-change[worst] / 1e3:.1f} kN by it."
        return said

    def _undo(self) -> None:
        if self.pulls:
            self.pulls.pop()
            self.waited = False
            self.result = self._solved(self.pulls)
            self.sentence = "The last pull is taken back."

    def _again(self) -> None:
        self.started, self.pulls, self.waited = [], [], False
        self.result = _Result.at_rest(self.face)
        self.sentence = "All bolts are out again, and the faces are clean."

    def _wait(self) -> None:
        before = self.result.clamp_n
        self.waited = True
        self.result = self._solved(self.pulls)
        lost = float(np.max(before - self.result.clamp_n, initial=0.0))
        self.sentence = f"The film has run out; the bolts lost up to {lost / 1e3:.1f} kN by it."

    def _set(self, message: dict[str, Any]) -> None:
        if "scattered" in message:
            self.scattered = bool(message["scattered"])
        if message.get("film") in FILMS_UM:
            self.film_um = message["film"]
        if self.pulls:
            self._again()
            self.sentence = "Another face, so all bolts are out again."

    def _solved(self, pulls: Sequence[Pull]) -> _Result:
        """The face after all pulls; a round ends where a bolt comes again or the film changes."""
        if not pulls:
            return _Result.at_rest(self.face)
        rounds: list[joint.Round] = []
        order: list[int] = []
        target = np.full(self.face.count, self.target_n)
        for number, pull in enumerate(pulls):
            order.append(pull.bolt)
            target[pull.bolt] = pull.torque_nm * self.newton_per_nm
            if self.scattered:
                target[pull.bolt] *= self.scatter[pull.bolt]
            after = pulls[number + 1] if number + 1 < len(pulls) else None
            if after is None or after.bolt in order or after.film_um != pull.film_um:
                rounds.append(joint.Round(tuple(order), target.copy(), pull.film_um * 1e-6))
                order = []
        done = joint.tighten(self.face, rounds)
        standing = self.film_um > 0 and not self.waited
        clamp = done.rounds_n[-1] if standing else done.clamp_n
        pulled = {pull.bolt for pull in pulls}
        return _Result(clamp, frozenset(pulled), done.turned, done.gap_m, standing)

    @property
    def clamp_kn(self) -> np.ndarray:
        """Clamp of every bolt now [kN]."""
        return self.result.clamp_n / 1e3

    @property
    def spread(self) -> float:
        """Largest less smallest clamp, over the one aimed at."""
        return joint.spread(self.result.clamp_n, self.target_n)

    @property
    def finding(self) -> str:
        """What the face shows, as a sentence."""
        count, tight = self.face.count, len(self.result.pulled)
        if not tight:
            return f"{len(self.started)} of {count} bolts are started; none is tight."
        if self.readings_only:
            return f"{tight} of {count} bolts have been pulled."
        if tight < count:
            return f"{tight} of {count} bolts have been pulled. {self._gap()}"
        low, high = self.clamp_kn.min(), self.clamp_kn.max()
        limit = self.fastening.group.spread
        word = "within" if self.spread <= limit else "beyond"
        need = self.fastening.group.clamp_kn
        loose = int(np.sum(self.clamp_kn < need))
        said = (
            f"The bolts hold {low:.1f} to {high:.1f} kN, {self.target_n / 1e3:.1f} kN were aimed "
            f"at. Spread {self.spread:.0%}, {word} the {limit:.0%} that this joint allows."
        )
        if loose:
            said += (
                f" {loose} {'holds' if loose == 1 else 'hold'} less than the {need:g} kN needed."
            )
        return said

    def _gap(self) -> str:
        widest = int(np.argmax(self.result.gap_m))
        gap_mm = self.result.gap_m[widest] * 1e3
        if gap_mm < 0.01:
            return "The faces touch all round."
        along = np.abs(self.face.along_m[self.face.bolt_nodes] - self.face.along_m[widest])
        near = int(np.argmin(np.minimum(along, self.face.length_m - along)))
        return f"The faces are still {gap_mm:.2f} mm apart near bolt {near + 1}."

    def _view(self, turn: Any) -> dict[str, Any]:
        tight = [k in self.result.pulled for k in range(self.face.count)]
        last = self.pulls[-1].bolt if self.pulls else None
        return {
            "turn": turn,
            "finding": self.finding,
            "happened": self.sentence,
            "clamps": [round(float(value), 1) for value in self.clamp_kn],
            "tight": tight,
            "started": [k in self.started for k in range(self.face.count)],
            "last": last,
            "pulls": len(self.pulls),
            "film": self.film_um,
            "standing": bool(self.result.standing and self.pulls),
            "scattered": self.scattered,
            "bars": clamp_bars(
                list(self.clamp_kn),
                tight,
                self.target_n / 1e3,
                self.fastening.group.clamp_kn,
                f"Clamp of each bolt. {self.finding}",
                last,
            ),
        }

    def plain_copy(self) -> str:
        """The face and the clamps as HTML."""
        drawn = self._drawn(live=False)
        return f"<p><b>{escape(self.finding)}</b></p>{drawn}{self.view['bars']}"


@dataclass(frozen=True)
class _Result:
    """What the pulls so far have left."""

    clamp_n: np.ndarray
    pulled: frozenset[int]
    turned: np.ndarray
    gap_m: np.ndarray
    standing: bool

    @classmethod
    def at_rest(cls, face: joint.Face) -> _Result:
        """No bolt pulled."""
        nothing = np.zeros(face.count)
        return cls(nothing, frozenset(), np.zeros(0, bool), np.zeros(len(face.along_m)), False)


def face_tightening(
    unit: Unit,
    group: str,
    *,
    torque: Q | None = None,
    joint_share: float = 1.0,
    readings_only: bool = False,
) -> FaceTightening:
    """A bolted face to tighten.

    Parameters
    ----------
    unit : Unit
        The unit on the bench.
    group : str
        Id of a fastener group with a flange.
    torque : torque, optional
        What the job asks for; the group's own by default.
    joint_share : float
        Stiffness of what lies between the faces, as a share of the unit file's.
    readings_only : bool
        True in marked work.

    Returns
    -------
    FaceTightening
        Something a notebook displays.

    Raises
    ------
    UnitFileError
        When the unit has no such group, or the group no flange.
    OutOfRangeError
        When torque or stiffness are out of range.
    """
    fastening = joint.Fastening.of(unit, group)
    face = fastening.face()
    face = replace(face, joint_stiffness_n_m3=face.joint_stiffness_n_m3 * joint_share)
    wanted = fastening.torque if torque is None else torque
    return FaceTightening(unit, fastening, face, wanted.m_as("N*m"), readings_only)
