"""A record of steps in an order that makes one of its checks worthless."""

from __future__ import annotations

from twoshaft.models.order import OrderTask, model_order, plan_slip
from twoshaft.readings.reading_faults.given import Blind
from twoshaft.readings.reading_faults.lot import Lot
from twoshaft.records import Option
from twoshaft.units.sections.order import RuleKind

STEPS = 6
REASONS = 5


def draw(lot: Lot) -> Blind:
    """Steps as they were done, with one check blinded, and reasons."""
    stream, unit = lot.stream.child("blind"), lot.unit
    finals = {op for check in unit.faults.checks for op in check.operations}
    rules = [
        rule
        for rule in unit.rules
        if rule.kind is RuleKind.BLINDS
        and rule.earlier
        and len({rule.earlier, rule.later} & finals) == 1
    ]
    checks = sorted(finals)
    for rule in lot.in_turn("blind", rules):
        earlier = rule.earlier or ""
        more = [op for op in stream.shuffled(checks) if op not in (earlier, rule.later)]
        order = _swapped(lot, rule, [earlier, rule.later, *more[: STEPS - 2]])
        if order:
            break
    else:
        raise lot.too_small("blind")
    others = [other.reason for other in rules if other.reason != rule.reason]
    texts = [Option(rule.id, rule.reason)]
    for other in stream.shuffled(rules):
        if other.reason in others and other.reason not in [text for _, text in texts]:
            texts.append(Option(other.id, other.reason))
    return Blind(steps=order, reasons=tuple(stream.shuffled(texts[:REASONS])))


def _swapped(lot: Lot, rule, operations: list[str]) -> tuple[Option, ...]:
    """The operations in an order that breaks this rule and no other; nothing if none does."""
    task = OrderTask.from_unit(lot.unit, operations)
    right = list(model_order(task))
    if len(right) != len(operations) or len(right) < STEPS:
        return ()
    for moved in (rule.earlier, rule.later):
        rest = [step for step in right if step != moved]
        for at in range(len(rest) + 1):
            tried = [*rest[:at], moved, *rest[at:]]
            if tried.index(rule.later) > tried.index(rule.earlier):
                continue
            broken = {(e, r.later) for r in plan_slip(task, tried).broken for e in r.earlier}
            if broken == {(rule.earlier, rule.later)}:
                return tuple(Option(step, task.label(step)) for step in tried)
    return ()
