"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from functools import cached_property
from typing import TypeVar

from twoshaft.models.order import OrderTask, Reason, plan_slip, sensible_order
from twoshaft.questions import bank_of
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import Lot as CommonLot
from twoshaft.records import Option

BANK = bank_of("order-of-work")
T = TypeVar("T")

HANDS = 4
"""Attempts over which a pool is dealt out."""


class Lot(CommonLot):
    """One learner's draw; ``task`` is the order of the whole unit."""

    LACKS = "is too small for the task"
    MEND = "give it more operations and rules, or leave this module out"

    @cached_property
    def task(self) -> OrderTask:
        """The order of the whole unit."""
        return OrderTask.from_unit(self.unit)

    def in_turn(self, name: str, pool: Sequence[T]) -> list[T]:
        """The pool in the learner's own order, dealt out over the attempts.

        Every fourth member belongs to an attempt and comes first in it, so a resit brings other
        members, even when the first one cannot be used.
        """
        mine = self.learner_stream.child(name).shuffled(pool)
        hand, turn = self.attempt % HANDS, self.attempt // HANDS
        dealt = mine[hand::HANDS]
        shift = turn % len(dealt) if dealt else 0
        rest = [item for k, item in enumerate(mine) if k % HANDS != hand]
        return dealt[shift:] + dealt[:shift] + rest

    def part(self, operations: Iterable[str]) -> OrderTask:
        """The order of some of the unit's steps."""
        return OrderTask.from_unit(self.unit, operations)


def steps_of(task: OrderTask, steps: Iterable[str]) -> tuple[Option, ...]:
    """Steps with their names, in the order given."""
    return tuple(Option(step, task.label(step)) for step in steps)


def windows(
    lot: Lot, stream: Stream, length: int, around: tuple[str, str], tries: int = 6
) -> Iterator[OrderTask]:
    """Parts of the build, ``length`` steps that follow each other, that hold two given steps.

    The task's ``start`` is the correct order from which the part was cut.
    """
    length = min(length, len(lot.task.steps))
    for _ in range(tries):
        base = sensible_order(lot.task, stream)
        first, last = sorted(base.index(step) for step in around)
        if last - first >= length:
            continue
        low, high = max(0, last - length + 1), min(first, len(base) - length)
        begin = low + stream.integer(high - low + 1)
        steps = base[begin : begin + length]
        yield lot.part(steps).starting_from(steps)


def with_one_slip(
    task: OrderTask, order: Sequence[str], stream: Stream, wanted: Callable[[Reason], bool]
) -> tuple[str, ...] | None:
    """An order with one step moved so that it breaks one rule, of the kind wanted, and no other.

    No clock runs out in it either.
    """
    moves = [(i, j) for i in range(len(order)) for j in range(len(order)) if i != j]
    for i, j in stream.shuffled(moves):
        moved = list(order)
        moved.insert(j, moved.pop(i))
        slip = plan_slip(task, moved)
        if slip.late or slip.size != 1 or len(slip.broken) != 1:
            continue
        if wanted(slip.broken[0]):
            return tuple(moved)
    return None
