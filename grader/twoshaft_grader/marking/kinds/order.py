"""Judges steps in an order."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Any

from twoshaft.jobsheet.kinds import Order
from twoshaft.models import order
from twoshaft.readings import Stream
from twoshaft.units import Unit
from twoshaft_grader.marking.kinds.judge import (
    Judge,
    Judgement,
    Reference,
    Seen,
    Slip,
    Spread,
    judges,
)
from twoshaft_grader.marking.order_picture import order_picture

MAX_RULES_TOLD = 6
"""Broken rules named at most, and never more than one for three steps: enough to learn from, too
few to read an order off."""
GUESSED: Spread = ((0.0, 0.8), (0.25, 0.2))
"""What a random order earns: 5 % on average by the order model, in a few small parts."""


@judges("order")
class OrderJudge(Judge):
    """Every order that keeps the rules is right; others by the steps to pull out and put back."""

    wanted = "an OrderTask over the steps that are shown"

    def accepts(self, asked: Order, value: Any) -> bool:
        """Whether the task has the very steps that are shown."""
        return isinstance(value, order.OrderTask) and set(value.steps) == set(asked.labels())

    def owns(self, value: Any) -> bool:
        """Whether it is an order task."""
        return isinstance(value, order.OrderTask)

    def clean(self, value: Any) -> Any:
        """One correct order."""
        return tuple(order.model_order(value))

    def plausible(self, asked: Order, reference: Reference, own: Any, seen: Seen) -> bool:
        """Whether each step stands there once."""
        return sorted(own) == sorted(reference.value.steps)

    def is_slip(self, reference: Reference, slip: Slip, value: Any) -> bool:
        """The very order."""
        return tuple(value) == tuple(slip.value)

    def slip_answer(self, value: Any) -> Any:
        """The steps in turn."""
        return tuple(value)

    def judge(self, asked: Order, reference: Reference, value: tuple[str, ...]) -> Judgement:
        """The mark by the plan, the cost by the bench."""
        task = reference.value
        if task.start is None:
            task = task.starting_from(key for key, _ in asked.steps)
        slip = order.plan_slip(task, value)
        if asked.most_moves and not (slip.missing or slip.doubled or slip.foreign):
            moves = order.moved([key for key, _ in asked.steps], value)
            if moves > asked.most_moves:
                far = f"{moves} steps were moved; at most {asked.most_moves} may be."
                return Judgement(0.0, (far,), safe=not slip.broken_safety)
        share = float(order.mark(task, value))
        safe = not (slip.broken_safety or slip.missing or slip.doubled or slip.foreign)
        cost = _bench_cost(task, value)
        if slip.size == 0:  # the order works; a clock may still run out in it
            late = tuple(f"The order works, but the time runs out. {r.text}" for r in slip.late[:1])
            return Judgement(1.0, late, cost=cost, safe=safe)
        told = sorted(slip.broken, key=lambda reason: not reason.safety)
        told = told[: max(1, min(MAX_RULES_TOLD, len(task.steps) // 3))]
        if tuple(value) == task.start:
            first = "This is the order that was shown at the start."
        else:
            first = _what_is_out(task, slip)
        return Judgement(
            share,
            (first, *([f"{_broken(task, told[0])}"] if told else [])),
            cost=cost,
            safe=safe,
            details=tuple(_broken(task, reason) for reason in told[1:]),
        )

    def drawn(self, asked: Order, reference: Reference, value: tuple[str, ...], unit: Unit) -> str:
        """The unit at the first step that something stands in the way of."""
        return order_picture(unit, reference.value, value)

    def solve(self, asked: Order, value: Any) -> Any:
        """One correct order, with few steps moved where that is asked."""
        if asked.most_moves:
            return asked.store(order.mended(value, [key for key, _ in asked.steps]))
        return asked.store(self.clean(value))

    def spread(self, asked: Order, reference: Reference) -> Spread:
        """As the order model sets it."""
        return GUESSED

    def mean_share(self, asked: Order, reference: Reference, skill: float) -> float:
        """Every step to put in its place is a step of the work."""
        task = reference.value
        if task.start is None:
            task = task.starting_from(key for key, _ in asked.steps)
        return order.mean_mark(task, skill)

    def guess(self, asked: Order, reference: Reference, source: Any) -> Any:
        """Any order."""
        keys = [key for key, _ in asked.steps]
        source.shuffle(keys)
        return keys

    def spoil(self, asked: Order, stored: Any, stream: Stream) -> Any:
        """One step forgotten at first and put in some places too late."""
        steps = list(stored)
        at = stream.integer(max(1, len(steps) - 1))
        step = steps.pop(at)
        steps.insert(min(len(steps), at + 1 + stream.integer(4)), step)
        return steps


def _what_is_out(task: order.OrderTask, slip: order.PlanSlip) -> str:
    """Say how many steps are out of place, and which one to look at first."""
    parts = []
    moved = len(slip.redo) + len(slip.blocks)
    if moved:
        first = task.label(slip.redo[0]) if slip.redo else _block(task, slip.blocks[0])
        steps = "step is" if moved == 1 else "steps are"
        parts.append(f"{moved} {steps} out of place; look first at “{first}”")
    if slip.missing:
        steps = "step is" if len(slip.missing) == 1 else "steps are"
        parts.append(f"{len(slip.missing)} {steps} left out, as “{task.label(slip.missing[0])}”")
    if slip.doubled:
        parts.append(f"“{task.label(slip.doubled[0])}” stands there more than once")
    if slip.foreign:
        parts.append(f"{len(slip.foreign)} of the entries belong to no step")
    text = "; ".join(parts) + "."
    return text[0].upper() + text[1:]


_LOOK_FIRST = re.compile("look first at “([^”]+)”")


def step_to_look_at(sentences: Iterable[str]) -> str:
    """The step that an order's sentences say to look at first; empty where they say none.

    >>> step_to_look_at(["2 steps are out of place; look first at “Fit the seal”."])
    'Fit the seal'
    """
    found = (_LOOK_FIRST.search(one) for one in sentences)
    return next((one[1] for one in found if one), "")


def _bench_cost(task: order.OrderTask, value: tuple[str, ...]) -> str:
    """Say what the order would cost at the bench: minutes, parts, where it shows first."""
    built = order.replay(task, value)
    if not built.events:
        return ""
    known = task.unit.part_by_id
    parts = [known[id].name for id in built.parts_lost if id in known]
    minutes = round(built.minutes_extra)
    said = []
    if minutes:
        unit = "minute" if minutes == 1 else "minutes"
        said.append(f"about {minutes} {unit} on top of {round(built.minutes_planned)}")
    if parts:
        more = f" and {len(parts) - 6} more" if len(parts) > 6 else ""
        said.append(f"lost: {', '.join(parts[:6])}{more}")
    if any(event.clock for event in built.events):
        said.append("a time limit runs out")
    if built.stopped_at:
        said.append(f"the build stops at “{task.label(built.stopped_at)}”")
    return f"At the bench: {'; '.join(said)}." if said else ""


def _block(task: order.OrderTask, id: str) -> str:
    return next(block.name for block in task.blocks if block.id == id)


def _broken(task: order.OrderTask, reason: order.Reason) -> str:
    """One broken rule as a sentence."""
    text = reason.text.rstrip(".")
    later = task.label(reason.later)
    if not reason.earlier:
        return f"“{later}”: {text}."
    earlier = " or ".join(f"“{task.label(step)}”" for step in reason.earlier)
    return f"“{later}” comes after {earlier}: {text}."
