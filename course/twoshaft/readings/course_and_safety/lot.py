"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TypeVar

from twoshaft.readings.keyed import Stream
from twoshaft.safety import Safety

T = TypeVar("T")


@dataclass(frozen=True)
class Lot:
    """One learner's draw.

    Attributes
    ----------
    safety : Safety
        Hazards and cautions.
    stream : Stream
        The learner's stream for this attempt.
    learner_stream : Stream
        The learner's stream whatever the attempt.
    attempt : int
        Number of the attempt.
    """

    safety: Safety
    stream: Stream
    learner_stream: Stream
    attempt: int

    def in_turn(self, name: str, pool: Sequence[T], count: int, more: int = 0) -> list[T]:
        """So many of the pool, moved on from one attempt to the next.

        The pool lies in a ring in the learner's own order; each attempt takes the next ones, so
        that a resit brings others for as long as the pool lasts. ``more`` adds the ones after them.
        """
        ring = self.learner_stream.child(name).shuffled(pool)
        start = self.attempt * count % len(ring)
        return [ring[(start + k) % len(ring)] for k in range(count + more)]
