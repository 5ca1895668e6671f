"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TypeVar

from twoshaft.errors import UnitFileError
from twoshaft.readings.keyed import Stream
from twoshaft.units.unit import Unit

T = TypeVar("T")

TRIES = 400


@dataclass(frozen=True)
class Lot:
    """One learner's draw.

    Attributes
    ----------
    unit : Unit
    stream : Stream
        The learner's stream for this attempt.
    learner_stream : Stream
        The learner's stream whatever the attempt.
    attempt : int
    """

    unit: Unit
    stream: Stream
    learner_stream: Stream
    attempt: int

    @classmethod
    def of(cls, unit: Unit, module: str, salt: str, learner: str, attempt: int) -> Lot:
        """A learner's lot; UnitFileError when the unit names no torque wrenches."""
        if unit.fasteners is None:
            raise UnitFileError(
                f"unit {unit.identity.id!r} has no fasteners",
                mend="add the section 'fasteners', or leave this module out",
            )
        return cls(
            unit,
            Stream(salt, learner, module, attempt),
            Stream(salt, learner, module, -1),
            attempt,
        )

    def in_turn(self, name: str, pool: Sequence[T]) -> list[T]:
        """The pool in the learner's own order, a step further at each attempt."""
        mine = self.learner_stream.child(name).shuffled(pool)
        turn = self.attempt % len(mine)
        return mine[turn:] + mine[:turn]

    def too_small(self, what: str) -> UnitFileError:
        """The complaint that a unit does not hold enough for a task."""
        return UnitFileError(
            f"unit {self.unit.identity.id!r} has nothing that suits the task {what!r}",
            mend="give it more wrenches and bolts, or leave this module out",
        )
