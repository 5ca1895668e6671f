"""Steps of a thread repair; parts and dangers: scenes with figures of the learner's own."""

from __future__ import annotations

from twoshaft.models.inspect import load_repairs
from twoshaft.models.order import OrderTask, chance_r0, plan_slip
from twoshaft.models.order.mark import LEAST_R0
from twoshaft.readings.inspect_and_decide.given import Parts, Thread
from twoshaft.readings.inspect_and_decide.looks import WORN_NAMES, draw_worn
from twoshaft.readings.inspect_and_decide.lot import BANK, Lot
from twoshaft.records import Option, Scenes, extended

STEPS, OUT_OF_PLACE = 11, 5
TRIES = 200


def draw_thread(lot: Lot) -> Thread:
    """Most of the repair, with enough of its steps out of place."""
    repairs, stream = load_repairs(), lot.stream.child("thread")
    steps = [one.id for one in repairs.operations]
    for _ in range(TRIES):
        chosen = set(stream.shuffled(steps)[:STEPS])
        task = OrderTask.from_unit(repairs, [one for one in steps if one in chosen])
        start = stream.shuffled(task.steps)
        if chance_r0(task) >= LEAST_R0 and plan_slip(task, start).size >= OUT_OF_PLACE:
            return Thread(task.steps, tuple(Option(one, task.label(one)) for one in start))
    raise lot.too_small("thread")


def draw_parts(lot: Lot) -> Parts:
    """Parts on the bench, in words and in pictures, and what becomes of each."""
    pictures = draw_worn(lot.stream.child("worn"))
    return extended(
        Parts,
        lot.asked("parts"),
        pictures=pictures,
        drawn=tuple(
            Option(one.letter, f"Picture {one.letter}: {WORN_NAMES[one.part]}") for one in pictures
        ),
        drawn_answers=BANK.lists["worn_do"],
    )


def draw_safe(lot: Lot) -> Scenes:
    """Situations while parts are inspected, and what is done about each."""
    return lot.asked("safe")
