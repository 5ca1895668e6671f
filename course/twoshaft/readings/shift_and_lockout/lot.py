"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import TypeVar

from twoshaft.errors import UnitFileError
from twoshaft.models.shift import (
    Mechanism,
    fitted,
    follow,
    hand_moves,
    mirrored,
    prove_by_hand,
    symptoms,
)
from twoshaft.models.shift.handwork import Done
from twoshaft.readings.keyed import Stream
from twoshaft.units.sections.shift import Shift
from twoshaft.units.unit import Unit

T = TypeVar("T")

MIRRORS = ((), ("travel",), ("turn",), ("travel", "turn"))


@dataclass(frozen=True)
class Lot:
    """One learner's draw.

    Attributes
    ----------
    unit : Unit
    shift : Shift
        The unit's mechanism.
    stream : Stream
        The learner's stream for this attempt.
    learner_stream : Stream
        The learner's stream whatever the attempt.
    attempt : int
    """

    unit: Unit
    shift: Shift
    stream: Stream
    learner_stream: Stream
    attempt: int

    def in_turn(self, name: str, pool: Sequence[T]) -> list[T]:
        """The pool in the learner's own order, begun one further with every attempt."""
        mine = self.learner_stream.child(name).shuffled(pool)
        at = self.attempt % len(mine) if mine else 0
        return mine[at:] + mine[:at]

    @cached_property
    def mirror(self) -> tuple[str, ...]:
        """Which way round this learner's gate is."""
        return self.in_turn("mirror", MIRRORS)[0]

    @cached_property
    def own(self) -> Shift:
        """The mechanism as it should be, with this learner's gate."""
        return mirrored(self.shift, *self.mirror)

    @cached_property
    def _fitted(self) -> dict[tuple[str, ...], Mechanism]:
        return {}

    def fitted(self, *misbuilds: str) -> Mechanism:
        """The learner's mechanism with some misbuilds in it."""
        if misbuilds not in self._fitted:
            self._fitted[misbuilds] = fitted(self.shift, misbuilds, self.mirror)
        return self._fitted[misbuilds]

    @property
    def moves(self) -> list[list[str]]:
        """Moves of the hand: code and words."""
        return [[move.code, move.label] for move in hand_moves(self.own)]

    @property
    def misbuild_ids(self) -> list[str]:
        """Ids of the unit's misbuilds, in its order."""
        return [misbuild.id for misbuild in self.shift.misbuilds]

    def named(self, ids: Sequence[str]) -> list[list[str]]:
        """Misbuilds as pairs of id and name."""
        names = {misbuild.id: misbuild.name for misbuild in self.shift.misbuilds}
        return [[id, names[id]] for id in ids]

    def kinds(self, misbuild: str) -> frozenset[str]:
        """Kinds of symptom that a misbuild shows."""
        return symptoms(prove_by_hand(self.fitted(misbuild)))

    def made(self, misbuilds: Sequence[str], moves: Sequence[str]) -> tuple[Done, ...]:
        """Moves made on the learner's mechanism with some misbuilds in it."""
        return follow(self.fitted(*misbuilds), moves)

    def too_plain(self, what: str) -> UnitFileError:
        """The complaint that a unit's mechanism does not hold enough for a task."""
        return UnitFileError(
            f"the shift mechanism of unit {self.unit.identity.id!r} is too plain for the task "
            f"{what!r}",
            mend="give it more misbuilds or detents, or leave this module out",
        )
