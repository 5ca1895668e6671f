"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

from twoshaft.models.shift import (
    Mechanism,
    direct_moves,
    fitted,
    follow,
    hand_moves,
    lockout_moves,
    mirrored,
    proof_with,
    symptoms,
)
from twoshaft.models.shift.handwork import Done
from twoshaft.questions import bank_of
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import SLEEVES
from twoshaft.readings.lots import Lot as CommonLot
from twoshaft.readings.shift_and_lockout.given import Named
from twoshaft.records import Option, Scenes
from twoshaft.units.kept import kept
from twoshaft.units.sections.shift import Shift
from twoshaft.units.unit import Unit

BANK = bank_of("shift-and-lockout")

SCENES = 4
MIRRORS = ((), ("travel",), ("turn",), ("travel", "turn"))


@dataclass(frozen=True)
class Bench:
    """A unit's mechanism, one way round: the same for everybody who has it so.

    Attributes
    ----------
    shift : Shift
        The unit's mechanism as its file has it.
    mirror : tuple of str
        What is turned round.
    """

    shift: Shift
    mirror: tuple[str, ...]

    @cached_property
    def own(self) -> Shift:
        """The mechanism as it should be, this way round."""
        return mirrored(self.shift, *self.mirror)

    def fitted(self, *misbuilds: str) -> Mechanism:
        """The mechanism with some misbuilds in it."""
        return fitted(self.shift, misbuilds, self.mirror)

    @property
    def proof(self) -> tuple[str, ...]:
        """Moves that prove the lockout; none where the unit has none."""
        blocks = self.shift.must_block[:1]
        return tuple(m for one in blocks for m in lockout_moves(self.own, one.earlier, one.later))

    @property
    def direct(self) -> tuple[str, ...]:
        """The moves of the proof that make the direct shift; none where there is no lockout."""
        blocks = self.shift.must_block[:1]
        return tuple(m for one in blocks for m in direct_moves(self.own, one.earlier, one.later))

    @property
    def moves(self) -> tuple[Option, ...]:
        """Moves of the hand."""
        return tuple(Option(move.code, move.label) for move in hand_moves(self.own))

    @property
    def misbuild_ids(self) -> list[str]:
        """Ids of the unit's misbuilds, in its order."""
        return [misbuild.id for misbuild in self.shift.misbuilds]

    def kinds(self, misbuild: str) -> frozenset[str]:
        """Kinds of symptom that a misbuild shows."""
        return symptoms(proof_with(self.shift, misbuild))

    def made(self, misbuilds: Sequence[str], moves: Sequence[str]) -> tuple[Done, ...]:
        """Moves made on the mechanism with some misbuilds in it."""
        return follow(self.fitted(*misbuilds), moves)


@kept()
def bench_of(unit: Unit, mirror: tuple[str, ...]) -> Bench:
    """A unit's mechanism one way round; what is worked out of it is kept with it."""
    return Bench(unit.shift, mirror)


class Lot(CommonLot):
    """One learner's draw."""

    NEEDS = ("shift",)
    LACKS = "has too plain a shift mechanism for the task"
    MEND = "give it more assembly faults or detents, or leave this module out"

    @property
    def shift(self) -> Shift:
        """The unit's mechanism."""
        return self.unit.shift

    @cached_property
    def mirror(self) -> tuple[str, ...]:
        """Which way round this learner's gate is."""
        return self.in_turn("mirror", MIRRORS)[0]

    @property
    def bench(self) -> Bench:
        """The mechanism with this learner's gate."""
        return bench_of(self.unit, self.mirror)

    def named(self, ids: Sequence[str]) -> tuple[Named, ...]:
        """Misbuilds with their names."""
        names = {misbuild.id: misbuild.name for misbuild in self.shift.misbuilds}
        return tuple(Named(id, names[id]) for id in ids)

    def offered(self, ids: Sequence[str]) -> tuple[Option, ...]:
        """Misbuilds as options."""
        return tuple(Option(*one) for one in self.named(ids))

    def asked(self, name: str, count: int = SCENES) -> Scenes:
        """So many scenes of a list of the bank, with the answers that each of them offers."""
        stream = self.stream.child(name)
        return self.scenes_asked(name, BANK, count, lambda: _figures(stream))


def _figures(stream: Stream) -> dict[str, object]:
    """What scenes are filled with: gears, speeds, lengths, counts, times, forces, air."""
    pair = [stream.choice(sleeve) for sleeve in stream.shuffled(SLEEVES)]
    pins = 3 + stream.integer(4)
    return {
        "a": pair[0],
        "b": pair[1],
        "speed": 20 + 5 * stream.integer(13),
        "rpm": 900 + 100 * stream.integer(25),
        "tenths": 2 + stream.integer(8),
        "pins": pins,
        "before": pins - 1,
        "minutes": 4 + stream.integer(26),
        "times": 2 + stream.integer(5),
        "turns": 2 + stream.integer(9),
        "m": 2 + stream.integer(7),
        "cm": 15 + 5 * stream.integer(8),
        "mm": 5 + stream.integer(5),
        "n": 60 + 5 * stream.integer(30),
        "bar": 2 + stream.integer(5),
    }


def options(stream: Stream, name: str) -> tuple[Option, ...]:
    """A list of the bank in random order."""
    return tuple(stream.shuffled(BANK.lists[name]))
