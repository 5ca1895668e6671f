"""Order the whole unit: a start order in which a few steps are misplaced."""

from __future__ import annotations

from twoshaft.models.order import plan_slip, sensible_order
from twoshaft.readings.order_of_work.lot import Lot

SLIPS = 7
"""Steps misplaced at the start; putting them all right earns the whole mark."""


def draw(lot: Lot) -> dict:
    """``operations``, the ``start`` order, and the ``groups`` on screen."""
    task, stream = lot.task, lot.stream.child("whole_unit")
    wanted = min(SLIPS, len(task.steps) // 3)
    if wanted < 3:
        raise lot.too_small("whole_unit")
    for _ in range(20):
        order, moved = list(sensible_order(task, stream)), set()
        for _ in range(60 * wanted):
            if len(moved) == wanted:
                return _given(lot, order)
            i, j = stream.integer(len(order)), stream.integer(len(order))
            if order[i] in moved:
                continue
            step = order[i]
            trial = order[:i] + order[i + 1 :]
            trial.insert(j, step)
            if plan_slip(task, trial).size == len(moved) + 1:
                order = trial
                moved.add(step)
    raise lot.too_small("whole_unit")


def _given(lot: Lot, order: list[str]) -> dict:
    task = lot.task
    return {
        "operations": list(task.steps),
        "start": task.labelled(order),
        "groups": [
            [stage.id, stage.name, [s for s in task.steps if task.stage(s) == stage.id]]
            for stage in lot.unit.stages
        ],
    }
