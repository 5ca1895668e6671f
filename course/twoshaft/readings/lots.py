"""One learner's lot in one attempt: what every module's tasks are drawn from."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import ClassVar, Self, TypeVar

from twoshaft.errors import UnitFileError
from twoshaft.questions import Bank
from twoshaft.readings.keyed import Stream
from twoshaft.records import Option, Question, Scenes, changed
from twoshaft.units.unit import Unit

T = TypeVar("T")

SLEEVES = ((1, 2), (3, 4), (5,))
"""Forward gears of an invented bench by the sleeve that engages them: two of one sleeve are never
in at once."""
TRIES = 400
"""How often a figure may be drawn anew before the unit is called too small for its task."""


@dataclass(frozen=True)
class Lot:
    """One learner's lot.

    A module adds to it what its tasks share, says in ``NEEDS`` which sections of the unit file it
    cannot do without, and in ``LACKS`` and ``MEND`` how it complains of a unit that holds too
    little.

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

    NEEDS: ClassVar[tuple[str, ...]] = ()
    LACKS: ClassVar[str] = "has nothing that suits the task"
    MEND: ClassVar[str] = "describe more of it in its file, or leave this module out"

    @classmethod
    def of(cls, unit: Unit, module: str, salt: str, learner: str, attempt: int) -> Self:
        """A learner's lot. UnitFileError when the unit lacks a section that the module needs."""
        cls.need(unit)
        now, ever = (Stream(salt, learner, module, turn) for turn in (attempt, -1))
        lot = cls(unit, now, ever, attempt)
        lot.check()
        return lot

    @classmethod
    def need(cls, unit: Unit) -> None:
        """Raise UnitFileError when the unit lacks a section that the module needs."""
        for section in cls.NEEDS:
            if not unit.has(section):
                raise UnitFileError(
                    f"unit {unit.identity.id!r} has no section {section.replace('_', ' ')!r}",
                    mend="add it, or leave this module out",
                )

    def check(self) -> None:
        """Raise UnitFileError when the unit lacks what a module needs beyond whole sections."""

    def in_turn(self, name: str, pool: Sequence[T]) -> list[T]:
        """The pool in the learner's own order, begun one further with every attempt."""
        mine = self.learner_stream.child(name).shuffled(pool)
        turn = self.attempt % len(mine) if mine else 0
        return mine[turn:] + mine[:turn]

    def next_ones(self, name: str, pool: Sequence[T], count: int, more: int = 0) -> list[T]:
        """So many of the pool, others at every attempt for as long as the pool lasts.

        The pool lies in a ring in the learner's own order. ``more`` adds the ones after them.
        """
        ring = self.learner_stream.child(name).shuffled(pool)
        start = self.attempt * count % len(ring)
        return [ring[(start + k) % len(ring)] for k in range(count + more)]

    def ask(self, name: str, bank: Bank) -> Question:
        """One version of a question, another at every attempt, its options in an own order."""
        version = self.in_turn(name, list(bank.questions[name].values()))[0]
        return changed(version, options=tuple(self.stream.child(name).shuffled(version.options)))

    def scenes(
        self, name: str, bank: Bank, count: int, figures: Callable[[], Mapping[str, object]]
    ) -> tuple[Option, ...]:
        """So many scenes of a list of the bank, others at every attempt, with own figures."""
        drawn = self.next_ones(name, bank.lists[name], count)
        return tuple(Option(one.id, one.text.format(**figures())) for one in drawn)

    def scenes_asked(
        self, name: str, bank: Bank, count: int, figures: Callable[[], Mapping[str, object]]
    ) -> Scenes:
        """Scenes of a list of the bank, with the answers that each of them offers."""
        return Scenes(self.scenes(name, bank, count, figures), bank.lists[f"{name}_answers"])

    def too_small(self, what: str) -> UnitFileError:
        """The complaint that a unit does not hold enough for a task."""
        return UnitFileError(
            f"unit {self.unit.identity.id!r} {self.LACKS} {what!r}", mend=self.MEND
        )
