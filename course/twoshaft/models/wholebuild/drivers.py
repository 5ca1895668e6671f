"""Where a driver pressed on a bearing that was pressed in, and what that did to it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from twoshaft.models.fit import BOTH, Ring, crosses_elements
from twoshaft.models.order import rework
from twoshaft.models.tooling import PressedBearing, pressed_bearings
from twoshaft.models.wholebuild.asks import Ask
from twoshaft.models.wholebuild.faults import Fault
from twoshaft.models.wholebuild.job import Job

RINGS = {"inner": frozenset([Ring.INNER]), "outer": frozenset([Ring.OUTER]), "both": BOTH}
"""The rings that each answer names."""


@dataclass(frozen=True)
class DriverResult:
    """A driver that pressed on rings of a bearing.

    Attributes
    ----------
    ask : Ask
    bearing : PressedBearing
    driven : frozenset of Ring
    minutes : float
        Minutes to take the bearing out at the end of the build and press a new one in [min].

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, asks_at
    >>> job = Job.of(unit)
    >>> ask = next(one for one in asks_at(job, "fit-input-front-bearing") if one.kind == "driver")
    >>> result = judge_driver(job, ask, {ask.id: "inner"}, ["fit-input-front-bearing"])
    >>> result.dented, result.fault(job).parts
    (True, ('input-front-bearing',))
    """

    ask: Ask
    bearing: PressedBearing
    driven: frozenset[Ring]
    minutes: float

    @property
    def dented(self) -> bool:
        """Whether the force went through what rolls."""
        return crosses_elements(self.driven, self.bearing.tight)

    def fault(self, job: Job) -> Fault:
        """The dents as a fault."""
        tight = _spoken(self.bearing.tight)
        grips = "grip" if len(self.bearing.tight) > 1 else "grips"
        words = (
            f"{self.ask.name}: the driver presses on {_spoken(self.driven)}, but {tight} {grips}. "
            f"Up to {self.bearing.most_force.m_as('kN'):.1f} kN went through the "
            f"{self.bearing.elements}, which dented the raceways: the bearing will rumble. "
            f"Press on {tight}. A new bearing, and {self.minutes:g} minutes to press it in."
        )
        parts = (self.bearing.part,)
        return Fault("driver", self.ask.step, self.ask.id, words, minutes=self.minutes, parts=parts)


def judge_driver(
    job: Job, ask: Ask, values: Mapping[str, Any], steps: Sequence[str]
) -> DriverResult | None:
    """What a driver did to a bearing; None where it was not decided.

    Parameters
    ----------
    job : Job
    ask : Ask
        Of kind ``driver``.
    values : mapping
        Values of its step, by field name.
    steps : sequence of str
        Steps that stand.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, asks_at
    >>> job = Job.of(unit)
    >>> ask = next(one for one in asks_at(job, "fit-input-front-bearing") if one.kind == "driver")
    >>> judge_driver(job, ask, {ask.id: "both"}, ["fit-input-front-bearing"]).dented
    False
    """
    chosen = RINGS.get(values.get(ask.id, ""))
    if chosen is None:
        return None
    (bearing, *_) = pressed_bearings(job.unit, [ask.about])
    task, number = job.task, job.task.number[ask.step]
    work = rework(task, steps, ask.step)
    minutes = work.minutes + task.minutes_undo[number] + task.minutes_do[number]
    return DriverResult(ask, bearing, chosen, minutes)


def _spoken(rings: frozenset[Ring]) -> str:
    return "both rings" if rings == BOTH else f"the {next(iter(rings)).value} ring"
