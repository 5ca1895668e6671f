"""What can be done next: the unit built up to a point, some steps to choose from."""

from __future__ import annotations

from twoshaft.models.order import ready_steps, sensible_order
from twoshaft.readings.order_of_work.given import NextSteps
from twoshaft.readings.order_of_work.lot import Lot, steps_of

OPTIONS = 7
READY = (3, 4)
"""How many of the options are ready."""
FEWEST_DONE = 4


def draw(lot: Lot) -> NextSteps:
    """A build as far as it has come, and steps of which some are ready."""
    task, stream = lot.task, lot.stream.child("next_steps")
    count = len(task.steps)
    for _ in range(200):
        base = sensible_order(task, stream)
        low, high = max(FEWEST_DONE, count // 5), count - max(OPTIONS, count // 5)
        if high < low:
            break
        done = base[: low + stream.integer(high - low + 1)]
        ready = ready_steps(task, done)
        mask = sum(1 << task.number[step] for step in done)
        # Near misses: few steps are missing before them.
        waiting = sorted(
            (
                (task.before[i] & ~mask).bit_count(),
                i,
            )
            for i, step in enumerate(task.steps)
            if not mask >> i & 1 and step not in ready
        )
        right = READY[stream.integer(len(READY))]
        wrong = OPTIONS - right
        near = [task.steps[i] for missing, i in waiting if missing <= 4][: 2 * wrong]
        if len(ready) < right or len(near) < wrong:
            continue
        options = stream.shuffled(ready)[:right] + stream.shuffled(near)[:wrong]
        return NextSteps(
            operations=task.steps,
            done=steps_of(task, done),
            options=steps_of(task, stream.shuffled(options)),
        )
    raise lot.too_small("next_steps")
