"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TypeVar

from twoshaft.errors import UnitFileError
from twoshaft.readings.keyed import Stream
from twoshaft.units.sections.geartrain import GearEngaged, GearTrain, Mesh
from twoshaft.units.unit import Unit

T = TypeVar("T")


@dataclass(frozen=True)
class Lot:
    """One learner's draw.

    Attributes
    ----------
    unit : Unit
    train : GearTrain
        The unit's gear train.
    stream : Stream
        The learner's stream for this attempt.
    learner_stream : Stream
        The learner's stream whatever the attempt.
    attempt : int
    """

    unit: Unit
    train: GearTrain
    stream: Stream
    learner_stream: Stream
    attempt: int

    @classmethod
    def of(cls, unit: Unit, module: str, salt: str, learner: str, attempt: int) -> Lot:
        """A learner's lot; UnitFileError when the unit says too little of its gear train."""
        train = unit.gear_train
        if train is None:
            raise UnitFileError(
                f"unit {unit.identity.id!r} has no gear train",
                mend="add the section 'gear train', or leave this module out",
            )
        missing = [
            words
            for words, there in (
                ("synchronisers", train.synchronisers),
                ("a speed drive", train.speed_drive),
                ("a reverse gear", [g for g in train.gears if g.reverse]),
                ("the play of its side gears", train.differential.side_gear_play),
            )
            if not there
        ]
        if missing:
            raise UnitFileError(
                f"the gear train of unit {unit.identity.id!r} lacks {missing[0]}",
                mend="add it to the section 'gear train', or leave this module out",
            )
        return cls(
            unit,
            train,
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
            f"unit {self.unit.identity.id!r} has too small a gear train for the task {what!r}",
            mend="give it more gears and synchronisers, or leave this module out",
        )

    @property
    def forward(self) -> list[GearEngaged]:
        """The forward gears."""
        return [gear for gear in self.train.gears if not gear.reverse]

    def mesh(self, id: str) -> Mesh:
        """A mesh by id."""
        return next(mesh for mesh in self.train.meshes if mesh.id == id)

    def names(self) -> dict[str, str]:
        """Gear names by id."""
        return {gear.id: gear.name for gear in self.train.gears}


def options(stream: Stream, texts: dict[str, str]) -> list[list[str]]:
    """Keys and texts in random order."""
    return [list(pair) for pair in stream.shuffled(list(texts.items()))]
