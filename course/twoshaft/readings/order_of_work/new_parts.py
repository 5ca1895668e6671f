"""Which parts must be new after a strip-down."""

from __future__ import annotations

from itertools import chain

from twoshaft.models.order import new_parts, sensible_order
from twoshaft.readings.order_of_work.given import NewParts
from twoshaft.readings.order_of_work.lot import BANK, Lot, steps_of
from twoshaft.records import Option

STRIPPED = 6
OPTIONS = 7
NEW = (2, 3)
"""How many of the options must be new."""
AGAIN = 2
"""How many came out and are fitted again."""


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
        if len(must) not in NEW or len(kept) < AGAIN:
            continue
        stayed = [part for part in dict.fromkeys(chain(*task.parts)) if part not in parts]
        single = stream.shuffled([part for part in stayed if part in every_new])
        other = stream.shuffled([part for part in stayed if part not in every_new])
        wrong = stream.shuffled(kept)[:AGAIN] + single[:1] + other
        wrong = wrong[: OPTIONS - len(must)]
        if len(must) + len(wrong) < OPTIONS:
            continue
        return NewParts(
            operations=task.steps,
            stripped=steps_of(task, reversed(stripped)),
            options=tuple(Option(part, names[part]) for part in stream.shuffled([*must, *wrong])),
            answers=BANK.lists["parts"],
        )
    raise lot.too_small("new_parts")
