"""What can be done next: a build up to a point, some steps to choose from, and one in a picture."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence

from twoshaft.models.order import OrderTask, ready_steps, sensible_order
from twoshaft.models.order.masks import bits
from twoshaft.readings.keyed import Stream
from twoshaft.readings.order_of_work import half_built
from twoshaft.readings.order_of_work.given import NextSteps
from twoshaft.readings.order_of_work.lot import BANK, Lot, steps_of
from twoshaft.records import Option, changed
from twoshaft.units import Unit
from twoshaft.units.kept import kept

OPTIONS, READY = 6, 2
"""How many steps are shown, and how many of them are ready."""
DONE = 5
"""How many of the answers name a step that is done already: others may have to wait for it."""
FEWEST_DONE = 4
MOST_RIGHT = 3 * (OPTIONS - READY)
"""So many answers are right for the waiting steps together, at most: more, and luck earns more."""
TRIED = 150
"""Builds half done that show how often a step is ready, and how often nearly."""


def draw(lot: Lot) -> NextSteps:
    """A build as far as it has come, and steps of which some are ready; another one in section."""
    return changed(_listed(lot), half=half_built.draw(lot))


def _listed(lot: Lot) -> NextSteps:
    task, stream = lot.task, lot.stream.child("next_steps")
    second_best, wrong = None, OPTIONS - READY
    often_ready, often_near = _how_often(lot.unit)
    for _ in range(200):
        done = _half_done(task, stream)
        if done is None:
            break
        mask = sum(1 << task.number[step] for step in done)
        ready, near = _roles(task, done, mask)
        if len(ready) < READY or len(near) < wrong:
            continue
        late = _evened(near, often_near, often_ready, stream)[:wrong]
        options = _evened(ready, often_ready, often_near, stream)[:READY] + late
        first = dict.fromkeys(_missing(task, step, mask, stream) for step in late)
        there = _lately_done(task, options, mask)[:DONE]
        drawn = NextSteps(
            operations=task.steps,
            done=steps_of(task, done),
            options=steps_of(task, stream.shuffled(options)),
            answers=(
                *BANK.lists["ready"],
                *(
                    Option(step, f"It waits for “{task.label(step)}”")
                    for step in stream.shuffled([*first, *there])
                ),
            ),
        )
        # As many answers for everybody, and not too many of them right: equally hard.
        named = sum(1 << task.number[step] for step in first)
        right = sum((task.before[task.number[step]] & ~mask & named).bit_count() for step in late)
        if len(first) == wrong and len(there) == DONE and right <= MOST_RIGHT:
            return drawn
        second_best = second_best or drawn
    if second_best is None:
        raise lot.too_small("next_steps")
    return second_best


def _half_done(task: OrderTask, stream: Stream) -> list[str] | None:
    """The steps of a build that has come some way; None where it has too few."""
    count = len(task.steps)
    low, high = max(FEWEST_DONE, count // 5), count - max(OPTIONS, count // 5)
    if high < low:
        return None
    order = sensible_order(task, stream)
    return list(order[: low + stream.integer(high - low + 1)])


def _roles(task: OrderTask, done: Sequence[str], mask: int) -> tuple[list[str], list[str]]:
    """Steps that are ready, and near misses: few steps are missing before them."""
    ready = list(ready_steps(task, done))
    waiting = sorted(
        ((task.before[i] & ~mask).bit_count(), i)
        for i, step in enumerate(task.steps)
        if not mask >> i & 1 and step not in ready
    )
    near = [task.steps[i] for missing, i in waiting if 1 <= missing <= 4]
    return ready, near[: 2 * (OPTIONS - READY)]


@kept()
def _how_often(unit: Unit) -> tuple[Counter[str], Counter[str]]:
    """How often each step of a unit is ready, and how often nearly, in builds half done."""
    task, stream = OrderTask.from_unit(unit), Stream("", "", "how-often", 1)
    ready: Counter[str] = Counter()
    near: Counter[str] = Counter()
    for _ in range(TRIED):
        done = _half_done(task, stream)
        if done is not None:
            mask = sum(1 << task.number[step] for step in done)
            for seen, steps in zip((ready, near), _roles(task, done, mask), strict=True):
                seen.update(steps)
    return ready, near


def _evened(
    steps: Iterable[str], here: Mapping[str, int], there: Mapping[str, int], stream: Stream
) -> list[str]:
    """Steps drawn so that each is shown as often ready as waiting: whoever knows what was right
    for others then knows nothing of this build.
    """
    chance = {step: min(here[step], there[step]) / max(here[step], 1) for step in steps}
    lots = {step: stream.uniform(0, 1) ** (1 / max(chance[step], 1e-3)) for step in chance}
    return sorted(lots, key=lambda step: -lots[step])


def _lately_done(task: OrderTask, steps: Iterable[str], done: int) -> list[str]:
    """For each of some steps one that it needed, the last done: where less was done, it waited."""
    found: list[str] = []
    for step in steps:
        needed = [task.steps[i] for i in bits(task.before[task.number[step]] & done)]
        found += [one for one in reversed(needed) if one not in found][:1]
    return found


def _missing(task: OrderTask, step: str, done: int, stream: Stream) -> str:
    """One of the steps that a step still waits for."""
    return task.steps[stream.choice([*bits(task.before[task.number[step]] & ~done)])]
