"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TypeVar

from twoshaft.errors import UnitFileError
from twoshaft.readings.keyed import Stream
from twoshaft.units.sections.faces import Face, Sealant, SealantKind
from twoshaft.units.unit import Unit

T = TypeVar("T")


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
        """The lot of a learner. UnitFileError if the unit has no sealed faces."""
        if unit.faces is None:
            raise UnitFileError(
                f"unit {unit.identity.id!r} has no sealed faces",
                mend="describe its faces, or leave this module out",
            )
        streams = (Stream(salt, learner, module, n) for n in (attempt, -1))
        return cls(unit, *streams, attempt)

    def in_turn(self, name: str, pool: Sequence[T], count: int = 1) -> list[T]:
        """Some members of a pool, other ones at every attempt until all have had their turn."""
        mine = self.learner_stream.child(name).shuffled(pool)
        first = self.attempt * count % len(mine)
        return [mine[(first + k) % len(mine)] for k in range(count)]

    def face(self, name: str) -> Face:
        """A face of the unit that can be coated stretch by stretch."""
        faces = [
            face
            for face in self.unit.faces.faces
            if len(face.segments) >= 6 and len(face.holes) >= 6 and face.guides
        ]
        if not faces:
            raise self.too_small("a face with six stretches, six holes and an oil way")
        return self.in_turn(name, faces)[0]

    def sealant(self, kind: SealantKind) -> Sealant:
        """The unit's sealant of a kind."""
        for sealant in self.unit.faces.sealants:
            if sealant.kind is kind:
                return sealant
        raise self.too_small(f"a sealant of the kind {kind.value}")

    def too_small(self, what: str) -> UnitFileError:
        """The complaint that a unit does not hold enough for a task."""
        return UnitFileError(
            f"unit {self.unit.identity.id!r} lacks {what}",
            mend="add it to its faces, or leave this module out",
        )


def step(stream: Stream, low: float, high: float, size: float) -> float:
    """A figure from low to high in steps, both ends included."""
    count = round((high - low) / size)
    return round(low + size * stream.integer(count + 1), 6)
