"""Why one step comes before another: true reasons to choose from, of which one fits."""

from __future__ import annotations

from collections import Counter

from twoshaft.models.order import Bond
from twoshaft.questions import bank_of
from twoshaft.readings.order_of_work.given import Pair, Why
from twoshaft.readings.order_of_work.lot import Lot
from twoshaft.records import Option

PAIRS = 3
REASONS = 4
BANK = bank_of("order-of-work")


def draw(lot: Lot) -> Why:
    """Three pairs, each with four reasons, and the kinds of reason."""
    task, stream = lot.task, lot.stream.child("why")
    rules = {rule.id for rule in lot.unit.rules}
    between = Counter((bond.earlier, bond.later) for bond in task.bonds)
    bonds = [
        bond
        for bond in task.bonds
        if between[bond.earlier, bond.later] == 1 and bond.reason.rules[0] in rules
    ]
    mine = lot.in_turn("why", bonds)
    picked: list[Bond] = []
    for fresh_kinds in (True, False):
        for bond in mine:
            steps = {bond.earlier, bond.later}
            apart = all(not steps & {p.earlier, p.later} for p in picked)
            new_kind = all(bond.reason.kind is not p.reason.kind for p in picked)
            if len(picked) < PAIRS and apart and (new_kind or not fresh_kinds):
                picked.append(bond)
    pairs = []
    for bond in picked:
        own = {bond.earlier, bond.later}
        others = [
            other
            for other in stream.shuffled(bonds)
            if not own & {other.earlier, other.later} and other.reason.text != bond.reason.text
        ]
        stage = task.stage(bond.reason.later)
        others.sort(key=lambda other: task.stage(other.reason.later) != stage)
        texts = {other.reason.text: other.reason.rules[0] for other in reversed(others)}
        wrong = [Option(rule, text) for text, rule in reversed(texts.items())][: REASONS - 1]
        if len(wrong) < REASONS - 1:
            raise lot.too_small("why")
        earlier, later = task.steps[bond.earlier], task.steps[bond.later]
        options = [Option(bond.reason.rules[0], bond.reason.text), *wrong]
        pairs.append(
            Pair(
                earlier=Option(earlier, task.label(earlier)),
                later=Option(later, task.label(later)),
                options=tuple(stream.shuffled(options)),
            )
        )
    if len(pairs) < PAIRS:
        raise lot.too_small("why")
    return Why(pairs=tuple(pairs), kinds=BANK.lists["kinds"])
