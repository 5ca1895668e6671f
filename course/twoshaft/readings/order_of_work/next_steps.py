"""What can be done next: the unit built up to a point, some steps to choose from."""

from __future__ import annotations

from twoshaft.models.order import OrderTask, ready_steps, sensible_order
from twoshaft.models.order.masks import bits
from twoshaft.readings.keyed import Stream
from twoshaft.readings.order_of_work.given import NextSteps
from twoshaft.readings.order_of_work.lot import BANK, Lot, steps_of
from twoshaft.records import Option

OPTIONS = 6
READY = (2, 3)
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
        near = [task.steps[i] for missing, i in waiting if 1 <= missing <= 4][: 2 * wrong]
        if len(ready) < right or len(near) < wrong:
            continue
        late = stream.shuffled(near)[:wrong]
        options = stream.shuffled(ready)[:right] + late
        first = dict.fromkeys(_missing(task, step, mask, stream) for step in late)
        return NextSteps(
            operations=task.steps,
            done=steps_of(task, done),
            options=steps_of(task, stream.shuffled(options)),
            answers=(
                *BANK.lists["ready"],
                *(
                    Option(step, f"It waits for “{task.label(step)}”")
                    for step in stream.shuffled([*first])
                ),
            ),
        )
    raise lot.too_small("next_steps")


def _missing(task: OrderTask, step: str, done: int, stream: Stream) -> str:
    """One of the steps that a step still waits for."""
    return task.steps[stream.choice([*bits(task.before[task.number[step]] & ~done)])]
