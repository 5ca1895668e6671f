"""Why one step comes before another: true reasons to choose from, of which one fits."""

from __future__ import annotations

from collections import Counter

from twoshaft.models.order import Bond
from twoshaft.readings.order_of_work.given import Pair, Why
from twoshaft.readings.order_of_work.lot import BANK, Lot
from twoshaft.records import Option

PAIRS = 3
REASONS = 6


def draw(lot: Lot) -> Why:
    """Three pairs, six reasons of which one fits each, and the kinds of reason."""
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
            new_text = all(bond.reason.text != p.reason.text for p in picked)
            if len(picked) < PAIRS and apart and new_text and (new_kind or not fresh_kinds):
                picked.append(bond)
    if len(picked) < PAIRS:
        raise lot.too_small("why")
    own = {number for bond in picked for number in (bond.earlier, bond.later)}
    right = {bond.reason.text: bond.reason.rules[0] for bond in picked}
    stages = {task.stage(bond.reason.later) for bond in picked}
    others = [other for other in stream.shuffled(bonds) if not own & {other.earlier, other.later}]
    others.sort(key=lambda other: task.stage(other.reason.later) not in stages)
    texts = dict(right)
    for other in others:
        if len(texts) < REASONS and other.reason.text not in texts:
            texts[other.reason.text] = other.reason.rules[0]
    if len(right) < PAIRS or len(texts) < REASONS:
        raise lot.too_small("why")
    names = task.steps
    return Why(
        pairs=tuple(
            Pair(
                earlier=Option(names[bond.earlier], task.label(names[bond.earlier])),
                later=Option(names[bond.later], task.label(names[bond.later])),
            )
            for bond in picked
        ),
        reasons=tuple(stream.shuffled([Option(rule, text) for text, rule in texts.items()])),
        kinds=BANK.lists["kinds"],
    )
