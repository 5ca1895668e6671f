"""Steps of taking apart to put in order, and what can come off next of a unit half apart."""

from __future__ import annotations

from twoshaft.models.order import OrderTask, chance_r0, ready_steps, sensible_order, starting_order
from twoshaft.models.order.mark import LEAST_R0
from twoshaft.models.order.masks import bits
from twoshaft.models.shape import (
    fitted_after,
    places_seen,
    section_of,
    step_parts,
    views_of_parts,
)
from twoshaft.models.strip import covered_by, lost_with, strip_task
from twoshaft.readings.keyed import Stream
from twoshaft.readings.scenes import SPOTS, scene_of
from twoshaft.readings.strip_mark_clean.given import Apart, Half, Step
from twoshaft.readings.strip_mark_clean.lot import BANK, Lot
from twoshaft.records import Option

STEPS, READINGS = 12, 3
HALF_TRIES = 20
USUAL_R0, BAND, TRIES, OWN_TRIES = 6.5, 1.2, 24, 8
"""What lists of this length mostly have; the nearest to it is taken, so all are alike hard."""
LINES, BLOCKERS, OFF_SHOWN = 4, 3, 4
MOST_MISSING = 4
HALF_LINES, FEWEST_SPOTS, MOST_RIGHT = 3, 8, 3
"""Steps that are asked about in the picture, its letters, and how many may be right for a step."""


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
        half=_half(lot),
    )


def _half(lot: Lot) -> Half | None:
    """A unit half apart, letters at parts that still stand, and steps that wait for some."""
    unit, task, stream = lot.unit, lot.bare, lot.stream.child("half")
    shown = views_of_parts(unit) if section_of(unit).own else {}
    members = {step: task.members[task.number[step]] for step in task.steps}
    parts = {step: step_parts(unit, some) for step, some in members.items()}
    fits = {step for step, some in members.items()
            if any(unit.operation_by_id[one].parts for one in some)}  # fmt: skip
    for _ in range(HALF_TRIES if shown else 0):
        order = sensible_order(task, stream)
        count = len(order) // 6 + stream.integer(len(order) // 2)
        on = [step for step in task.steps if step not in order[:count]]
        still = {one for step in on for one in members[step]}
        fitted = fitted_after(unit, [one.id for one in unit.operations if one.id in still])
        for view in dict.fromkeys(view for step in on for part in parts[step]
                                  for view in shown.get(part, ())):  # fmt: skip
            seen = places_seen(unit, view)
            own = {step: [p for p in parts[step] if p in fitted and p in seen] for step in on}
            drawn = _asked_in(task, [step for step in on if own[step]], own, fits, stream)
            if drawn is not None:
                lines, spots = drawn
                there = [part.id for part in unit.parts if part.id in fitted]
                return Half(
                    scene_of(unit, stream, view, there, spots),
                    tuple(Option(one, f"“{task.label(one)}”") for one in lines),
                )
    return None


def _asked_in(
    task: OrderTask, on: list[str], own: dict[str, list[str]], fits: set[str], stream: Stream
) -> tuple[list[str], list[str]] | None:
    """Steps that wait, and the parts that get letters; None where too few wait."""
    lines: list[str] = []
    spots: dict[str, None] = {}
    for step in stream.shuffled([one for one in on if one in fits]):
        first = [task.steps[i] for i in bits(task.before[task.number[step]])]
        holding = [part for one in first for part in own.get(one, ()) if part not in own[step]]
        if len(lines) < HALF_LINES and 0 < len(set(holding)) <= MOST_RIGHT:
            lines.append(step)
            spots |= dict.fromkeys([*holding, own[step][0]])
    if len(lines) < HALF_LINES or len(spots) > SPOTS:
        return None
    rest = [part for step in stream.shuffled(on) for part in own[step][:1] if part not in spots]
    spots |= dict.fromkeys(rest[: SPOTS - len(spots)])
    return (lines, [*spots]) if len(spots) >= FEWEST_SPOTS else None


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
