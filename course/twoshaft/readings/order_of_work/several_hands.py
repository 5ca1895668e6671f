"""A part of the build shared out among several pairs of hands."""

from __future__ import annotations

from twoshaft.models.order import OrderTask, needs_directly, with_many_hands
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.order_of_work.given import SeveralHands, SharedStep
from twoshaft.readings.order_of_work.lot import Lot, windows
from twoshaft.records import Option

STEPS = 7
QUICKER = 0.8
"""Many hands take at most this share of the time of one pair."""
WAITS = (3, 5)
"""How many steps must not wait."""
CLEAR_MINUTES = 1.0
"""Every other step can wait at least this long."""


def draw(lot: Lot) -> SeveralHands:
    """A part of the build whose steps are worth sharing out."""
    stream = lot.stream.child("several hands")
    steps = lot.in_turn("several hands", lot.task.steps)
    for k in range(TRIES):
        middle = steps[k % len(steps)]
        for part in windows(lot, stream, STEPS, (middle, middle), tries=1):
            takes = {step: _minutes(stream) for step in part.steps}
            if _worth_planning(part, takes):
                return _given(part, takes, stream.shuffled(part.steps))
    raise lot.too_small("several_hands")


def _minutes(stream: Stream) -> int:
    return 2 + stream.integer(11)


def _worth_planning(part: OrderTask, takes: dict[str, int]) -> bool:
    if part.choices or part.clocks or len(part.steps) != STEPS:
        return False
    plan = with_many_hands(part, takes)
    if plan.minutes > QUICKER * plan.alone:
        return False
    if not WAITS[0] <= len(plan.no_spare) <= WAITS[1]:
        return False
    return not any(0 < spare < CLEAR_MINUTES for spare in plan.spare.values())


def _given(part: OrderTask, takes: dict[str, int], rows: list[str]) -> SeveralHands:
    letter = {step: chr(ord("A") + k) for k, step in enumerate(rows)}
    needs = needs_directly(part)

    def waits_for(step: str) -> str:
        return ", ".join(sorted(letter[need] for need in needs[step])) or "nothing"

    return SeveralHands(
        operations=part.steps,
        takes=takes,
        rows=tuple(
            SharedStep(letter[step], part.label(step), takes[step], waits_for(step))
            for step in rows
        ),
        options=tuple(Option(step, f"{letter[step]}: {part.label(step)}") for step in rows),
    )
