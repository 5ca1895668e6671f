"""Fit steps into the time a clock allows."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.models.order import TaskClock, window
from twoshaft.readings.keyed import Stream
from twoshaft.readings.order_of_work.given import Clock, TimedStep
from twoshaft.readings.order_of_work.lot import BANK, Lot, steps_of
from twoshaft.records import Option

OPTIONS = 6
LEFT = (1, 6)
"""Minutes that the clock leaves for more than what must be done while it runs."""
RIGHT = (2, 3)
"""How many of the options can be done while the clock runs."""


def draw(lot: Lot) -> Clock:
    """A clock with the minutes this learner's steps take.

    A unit whose clocks leave more time than a choice can be made of gets one that runs out sooner.
    """
    task, stream = lot.task, lot.stream.child("clock")
    for sooner in (False, True):
        for clock in lot.in_turn("clock", task.clocks):
            for _ in range(60):
                given = _try(lot, clock, stream, sooner)
                if given is not None:
                    return given
    raise lot.too_small("clock")


def _try(lot: Lot, clock: TaskClock, stream: Stream, sooner: bool) -> Clock | None:
    task = lot.task
    start, end = task.steps[clock.starts], task.steps[clock.ends]
    takes = {
        step: max(0.5, round(2 * task.minutes(step)) / 2 + (stream.integer(5) - 2) / 2)
        for step in task.steps
    }
    allowed = float(max(1, round(clock.minutes) + stream.integer(3) - 1))
    found = window(task, clock.id, minutes=takes, allowed=allowed)
    if sooner and found.minutes_left > LEFT[1]:
        left = LEFT[0] + stream.integer(LEFT[1])
        allowed = float(round(allowed - found.minutes_left + left))
        found = window(task, clock.id, minutes=takes, allowed=allowed)
    # Equality is no trap for readers of a clock: half a minute either way decides.
    if not LEFT[0] <= found.minutes_left <= LEFT[1]:
        return None
    if any(takes[step] == found.minutes_left for step in found.optional):
        return None
    right = RIGHT[stream.integer(len(RIGHT))]
    inside = stream.shuffled(found.inside)[: right - 1]
    fits = _near(lot, clock, stream, found.fits)[: right - len(inside)]
    long = _near(lot, clock, stream, [s for s in found.optional if s not in found.fits])
    forbidden = _near(
        lot,
        clock,
        stream,
        [
            step
            for i, step in enumerate(task.steps)
            if takes[step] <= found.minutes_left
            and (task.before[clock.starts] >> i & 1 or task.after[clock.ends] >> i & 1)
        ],
    )
    wrong = OPTIONS - len(inside) - len(fits)
    if not long or len(inside) + len(fits) != right:
        return None
    chosen = long[: max(1, wrong // 2)]
    chosen += forbidden[: wrong - len(chosen)]
    chosen += [step for step in long if step not in chosen][: wrong - len(chosen)]
    if len(chosen) != wrong:
        return None
    options = stream.shuffled([*inside, *fits, *chosen])
    shown = {*options, *found.inside, end}
    return Clock(
        clock=clock.id,
        name=clock.name,
        reason=clock.reason.text,
        minutes=allowed,
        starts=Option(start, task.label(start)),
        ends=Option(end, task.label(end)),
        steps=tuple(TimedStep(s, task.label(s), takes[s]) for s in task.steps if s in shown),
        options=steps_of(task, options),
        answers=BANK.lists["inside"],
        takes={step: takes[step] for step in task.steps if step in shown},
    )


def _near(lot: Lot, clock: TaskClock, stream: Stream, steps: Sequence[str]) -> list[str]:
    """Steps in random order, those of the clock's own stage first."""
    stage = lot.task.stage(lot.task.steps[clock.starts])
    return sorted(stream.shuffled(steps), key=lambda step: lot.task.stage(step) != stage)
