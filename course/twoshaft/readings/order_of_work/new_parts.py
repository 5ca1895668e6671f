"""Which parts must be new after a strip-down."""

from __future__ import annotations

from twoshaft.models.order import new_parts, sensible_order
from twoshaft.readings.order_of_work.given import NewParts
from twoshaft.readings.order_of_work.lot import Lot, steps_of
from twoshaft.records import Option

STRIPPED = 6
OPTIONS = 7
NEW = (2, 3)
"""How many of the options must be new."""


def draw(lot: Lot) -> NewParts:
    """Steps taken apart, in that order, and parts of which some must be new."""
    task, stream = lot.task, lot.stream.child("new_parts")
    length = min(STRIPPED, len(task.steps))
    names = {part.id: part.name for part in lot.unit.parts}
    every_new = new_parts(task, task.steps)
    starts = lot.in_turn("new_parts", range(len(task.steps) - length + 1))
    for begin in starts:
        base = sensible_order(task, stream)
        stripped = base[begin : begin + length]
        must = new_parts(task, stripped)
        parts = dict.fromkeys(p for s in stripped for p in task.parts[task.number[s]])
        kept = [part for part in parts if part not in must and part not in every_new]
        if len(must) not in NEW or len(kept) < 2:
            continue
        elsewhere = [part for part in every_new if part not in parts]
        wrong = stream.shuffled(kept)[: OPTIONS - len(must) - 1]
        wrong += stream.shuffled(elsewhere)[: OPTIONS - len(must) - len(wrong)]
        if len(must) + len(wrong) < OPTIONS:
            continue
        return NewParts(
            operations=task.steps,
            stripped=steps_of(task, reversed(stripped)),
            options=tuple(Option(part, names[part]) for part in stream.shuffled([*must, *wrong])),
        )
    raise lot.too_small("new_parts")
