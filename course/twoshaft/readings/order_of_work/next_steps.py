"""What can be done next: the unit built up to a point, some steps to choose from."""

from __future__ import annotations

from twoshaft.models.order import OrderTask, ready_steps, sensible_order
from twoshaft.models.order.masks import bits
from twoshaft.readings.keyed import Stream
from twoshaft.readings.order_of_work.given import NextSteps
from twoshaft.readings.order_of_work.lot import BANK, Lot, steps_of
from twoshaft.records import Option

OPTIONS, READY = 6, 3
"""How many steps are shown, and how many of them are ready."""
FEWEST_DONE = 4


def draw(lot: Lot) -> NextSteps:
    """A build as far as it has come, and steps of which some are ready."""
    task, stream = lot.task, lot.stream.child("next_steps")
    count, second_best = len(task.steps), None
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
        wrong = OPTIONS - READY
        near = [task.steps[i] for missing, i in waiting if 1 <= missing <= 4][: 2 * wrong]
        if len(ready) < READY or len(near) < wrong:
            continue
        late = stream.shuffled(near)[:wrong]
        options = stream.shuffled(ready)[:READY] + late
        first = dict.fromkeys(_missing(task, step, mask, stream) for step in late)
        drawn = NextSteps(
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
        # As many answers for everybody, and one of them right for each step: equally hard.
        named = sum(1 << task.number[step] for step in first)
        waits = (task.before[task.number[step]] & ~mask & named for step in late)
        if len(first) == wrong and all(one.bit_count() == 1 for one in waits):
            return drawn
        second_best = second_best or drawn
    if second_best is None:
        raise lot.too_small("next_steps")
    return second_best


def _missing(task: OrderTask, step: str, done: int, stream: Stream) -> str:
    """One of the steps that a step still waits for."""
    return task.steps[stream.choice([*bits(task.before[task.number[step]] & ~done)])]
