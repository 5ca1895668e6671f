"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import TypeVar

from twoshaft.errors import UnitFileError
from twoshaft.models.joint import Fastening, nut_factor
from twoshaft.readings.keyed import Stream
from twoshaft.units.unit import Unit

T = TypeVar("T")

HANDS = 4
"""Attempts over which a pool is dealt out."""


@dataclass(frozen=True)
class Lot:
    """One learner's draw.

    Attributes
    ----------
    unit : Unit
    fastenings : tuple of Fastening
        Every group of the unit.
    stream : Stream
        The learner's stream for this attempt.
    learner_stream : Stream
        The learner's stream whatever the attempt.
    attempt : int
    """

    unit: Unit
    fastenings: tuple[Fastening, ...]
    stream: Stream
    learner_stream: Stream
    attempt: int

    @classmethod
    def of(cls, unit: Unit, module: str, salt: str, learner: str, attempt: int) -> Lot:
        """A learner's lot; UnitFileError when the unit says nothing of its fasteners."""
        if unit.fasteners is None:
            raise UnitFileError(
                f"unit {unit.identity.id!r} has no fasteners",
                mend="add the section 'fasteners', or leave this module out",
            )
        return cls(
            unit,
            _fastenings_of(unit),
            Stream(salt, learner, module, attempt),
            Stream(salt, learner, module, -1),
            attempt,
        )

    def in_turn(self, name: str, pool: Sequence[T]) -> list[T]:
        """The pool in the learner's own order, its first member another one at each resit."""
        mine = self.learner_stream.child(name).shuffled(pool)
        turn = self.attempt % len(mine) if mine else 0
        return mine[turn:] + mine[:turn]

    def too_small(self, what: str) -> UnitFileError:
        """The complaint that a unit does not hold enough for a task."""
        return UnitFileError(
            f"unit {self.unit.identity.id!r} has no fastener that suits the task {what!r}",
            mend="give it more groups of fasteners, or leave this module out",
        )


@lru_cache(maxsize=8)
def _fastenings_of(unit: Unit) -> tuple[Fastening, ...]:
    return tuple(Fastening.of(unit, group.id) for group in unit.fasteners.groups)


def factors(fastening: Fastening) -> list[list]:
    """The factor K of T = K F d for each state: id, name, K to three places."""
    return [
        [
            key,
            state.name,
            round(
                float(nut_factor(fastening.thread, fastening.seat, state.thread[1], state.head[1])),
                3,
            ),
        ]
        for key, state in fastening.states.items()
    ]


def about(fastening: Fastening) -> dict:
    """What a job card says of a bolt: names, thread, state."""
    group = fastening.group
    return {
        "group": group.id,
        "name": group.name,
        "thread": fastening.thread.name,
        "diameter_mm": fastening.thread.d_m * 1e3,
        "strength": group.strength,
        "state": [group.state, fastening.friction.name],
        "factors": factors(fastening),
    }
