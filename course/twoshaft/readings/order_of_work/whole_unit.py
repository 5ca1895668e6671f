"""Order the whole unit: a start order in which a few steps are misplaced."""

from __future__ import annotations

from twoshaft.models.order import broken_safety, sensible_order
from twoshaft.models.order.slip import slip_size
from twoshaft.readings.keyed import Stream
from twoshaft.readings.order_of_work.given import Group, WholeUnit
from twoshaft.readings.order_of_work.lot import Lot, steps_of

SLIPS = 7
"""Steps misplaced at the start; putting them all right earns the whole mark."""
MOVES = 2
"""So many times as many steps may be moved at most: who moves more makes another plan."""


def draw(lot: Lot) -> WholeUnit:
    """The whole build with a few steps out of place.

    The start breaks one safety rule where the unit has any, so that everyone has one to put right.
    """
    task, stream = lot.task, lot.stream.child("whole_unit")
    wanted = min(SLIPS, len(task.steps) // 3)
    if wanted < 3:
        raise lot.too_small("whole_unit")
    last = None
    for _ in range(30):
        order = _misplaced(lot, stream, wanted)
        if order is None:
            continue
        last = order
        if len(broken_safety(task, order)) == 1:
            break
    if last is None:
        raise lot.too_small("whole_unit")
    return _given(lot, last, MOVES * wanted)


def _misplaced(lot: Lot, stream: Stream, wanted: int) -> list[str] | None:
    """A correct order with as many steps out of place as wanted."""
    task = lot.task
    order = list(sensible_order(task, stream))
    moved: set[str] = set()
    for _ in range(60 * wanted):
        i, j = stream.integer(len(order)), stream.integer(len(order))
        step = order[i]
        if step in moved:
            continue
        trial = order[:i] + order[i + 1 :]
        trial.insert(j, step)
        if slip_size(task, [task.number[s] for s in trial]) == len(moved) + 1:
            order = trial
            moved.add(step)
            if len(moved) == wanted:
                return order
    return None


def _given(lot: Lot, order: list[str], most_moves: int) -> WholeUnit:
    task = lot.task
    return WholeUnit(
        operations=task.steps,
        start=steps_of(task, order),
        groups=tuple(
            Group(stage.id, stage.name, tuple(s for s in task.steps if task.stage(s) == stage.id))
            for stage in lot.unit.stages
        ),
        most_moves=most_moves,
    )
