"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import Lot as CommonLot
from twoshaft.units.sections.faces import Face, Sealant, SealantKind


class Lot(CommonLot):
    """One learner's draw."""

    NEEDS = ("faces",)
    LACKS = "lacks"
    MEND = "add it to its faces, or leave this module out"

    def face(self, name: str) -> Face:
        """A face of the unit that can be coated stretch by stretch."""
        faces = [
            face
            for face in self.unit.faces.faces
            if len(face.segments) >= 6 and len(face.holes) >= 6 and face.guides
        ]
        if not faces:
            raise self.too_small("a face with six stretches, six holes and an oil gallery")
        return self.in_turn(name, faces)[0]

    @property
    def kinds(self) -> list[SealantKind]:
        """Kinds of sealant that the unit has."""
        there = {sealant.kind for sealant in self.unit.faces.sealants}
        return [kind for kind in SealantKind if kind in there]

    def sealant(self, kind: SealantKind) -> Sealant:
        """The unit's sealant of a kind."""
        for sealant in self.unit.faces.sealants:
            if sealant.kind is kind:
                return sealant
        raise self.too_small(f"a sealant of the kind {kind.value}")


def step(stream: Stream, low: float, high: float, size: float) -> float:
    """A figure from low to high in steps, both ends included."""
    count = round((high - low) / size)
    return round(low + size * stream.integer(count + 1), 6)
