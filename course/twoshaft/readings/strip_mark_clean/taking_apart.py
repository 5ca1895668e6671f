"""Steps of taking apart to put in order, and what can come off next of a unit half apart."""

from __future__ import annotations

from twoshaft.models.order import OrderTask, chance_r0, ready_steps, sensible_order, starting_order
from twoshaft.models.order.mark import LEAST_R0
from twoshaft.models.order.masks import bits
from twoshaft.models.strip import covered_by, lost_with, strip_task
from twoshaft.readings.keyed import Stream
from twoshaft.readings.strip_mark_clean.given import Apart, Step
from twoshaft.readings.strip_mark_clean.lot import BANK, Lot
from twoshaft.records import Option

STEPS, READINGS = 12, 3
USUAL_R0, BAND, TRIES, OWN_TRIES = 6.5, 1.2, 24, 8
"""What lists of this length mostly have; the nearest to it is taken, so all are alike hard."""
LINES, BLOCKERS, OFF_SHOWN = 4, 3, 4
MOST_MISSING = 4


def draw(lot: Lot) -> Apart:
    """Steps and the order shown; a unit half apart, with steps of which some wait."""
    part = _steps_to_order(lot)
    start = starting_order(part, lot.stream.child("apart start"))
    state, lines, answers = _next(lot)
    return Apart(
        operations=part.steps,
        start=tuple(Option(*one) for one in part.labelled(start)),
        state=state,
        lines=lines,
        answers=answers,
    )


def _steps_to_order(lot: Lot) -> OrderTask:
    stream, whole = lot.stream.child("apart"), lot.whole
    mine = lot.next_ones("apart", lot.readings, READINGS)
    others = [step for step in whole.steps if step not in lot.readings]
    best: tuple[float, OrderTask] | None = None
    for turn in range(TRIES):
        # Some readings bind too little or too much, whatever else is in the list.
        readings = mine if turn < OWN_TRIES else stream.shuffled(lot.readings)[:READINGS]
        near = [
            step
            for reading in readings
            for step in (*covered_by(whole, reading), *lost_with(whole, reading))
        ]
        picked = dict.fromkeys([*readings, *stream.shuffled(near), *stream.shuffled(others)])
        part = strip_task(lot.unit, tuple(sorted([*picked][:STEPS], key=whole.number.__getitem__)))
        r0 = chance_r0(part)
        if len(part.steps) == STEPS and r0 >= LEAST_R0:
            off = abs(r0 - USUAL_R0)
            best = (off, part) if best is None or off < best[0] else best
            if off <= BAND / 2:
                break
    if best is None:
        raise lot.too_small("apart")
    return best[1]


def _next(lot: Lot) -> tuple[tuple[Step, ...], tuple[Option, ...], tuple[Option, ...]]:
    """A state, steps that may come next, and what they may wait for: one right answer each."""
    task, stream = lot.bare, lot.stream.child("next off")
    for _ in range(TRIES):
        order = sensible_order(task, stream)
        for count in stream.shuffled(range(LINES, len(order) - LINES)):
            drawn = _waiting(task, order[:count], stream)
            if drawn is not None:
                return drawn
    raise lot.too_small("apart")


def _waiting(task: OrderTask, off: tuple[str, ...], stream: Stream):
    mask = sum(1 << task.number[step] for step in off)
    ready = [*ready_steps(task, off)]
    count = 1 + stream.integer(2)
    missing = {
        step: [task.steps[i] for i in bits(task.before[task.number[step]] & ~mask)]
        for step in task.steps
        if step not in off and step not in ready
    }
    near = {step: some for step, some in missing.items() if 0 < len(some) <= MOST_MISSING}
    if len(ready) < count or len(near) < LINES - count:
        return None
    late = stream.shuffled([*near])[: LINES - count]
    blockers = [stream.choice(near[step]) for step in late]
    # Steps still on that none of the others waits for fill up the list.
    waited = {step for one in late for step in near[one]}
    spare = [s for s in task.steps if s not in off and s not in waited and s not in late]
    blockers += stream.shuffled(spare)[: BLOCKERS - len(blockers)]
    shown = {one: len(set(near[one]) & set(blockers)) for one in late}
    if len(set(blockers)) < BLOCKERS or any(one != 1 for one in shown.values()):
        return None
    free = [step for step in ready if step not in blockers]
    if len(free) < count:
        return None
    lines = stream.shuffled([*stream.shuffled(free)[:count], *late])
    bearing = {*blockers, *(s for one in lines for s in _directly(task, one))}
    bearing |= {*stream.shuffled(off)[:OFF_SHOWN]}
    rows = stream.shuffled([step for step in task.steps if step in bearing and step not in lines])
    return (
        tuple(Step(step, task.label(step), step in off) for step in rows),
        tuple(Option(step, task.label(step)) for step in lines),
        (
            *BANK.lists["at_once"],
            *(
                Option(step, f"It waits for “{task.label(step)}”")
                for step in stream.shuffled(blockers)
            ),
        ),
    )


def _directly(task: OrderTask, step: str) -> list[str]:
    return [task.steps[bond.earlier] for bond in task.bonds_into[task.number[step]]]
