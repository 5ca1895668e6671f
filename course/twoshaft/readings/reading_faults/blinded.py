"""Pairs of steps in an order in which both count, or in which one has to be made again."""

from __future__ import annotations

from twoshaft.readings.lots import TRIES
from twoshaft.readings.reading_faults.given import Blind, Done, Lettered
from twoshaft.readings.reading_faults.lot import BANK, LETTERS, Lot
from twoshaft.units.sections.order import RuleKind

DONE = 4
STATES = ("none", "first", "second")


def draw(lot: Lot) -> Blind:
    """Pairs of steps, each tied by a rule, in the order in which they were done."""
    stream, unit = lot.stream.child("blind"), lot.unit
    finals = {op for check in unit.faults.checks for op in check.operations}
    rules = [
        rule
        for rule in unit.rules
        if rule.kind is RuleKind.BLINDS
        and rule.earlier
        and len({rule.earlier, rule.later} & finals) == 1
    ]
    for _ in range(TRIES):
        states = [stream.choice(STATES) for _ in range(DONE)]
        mine = lot.next_ones("blind", rules, DONE) if len(rules) >= DONE else []
        can = [("none", "second" if rule.earlier in finals else "first") for rule in mine]
        if can and len(set(states)) > 1 and all(s in c for s, c in zip(states, can, strict=True)):
            break
    else:
        raise lot.too_small("blind")
    pairs = [
        (rule.earlier or "", rule.later) if state == "none" else (rule.later, rule.earlier or "")
        for rule, state in zip(mine, states, strict=True)
    ]
    steps = stream.shuffled(sorted({step for pair in pairs for step in pair}))
    letters = dict(zip(steps, LETTERS, strict=False))
    names = [unit.operation_by_id[step].name for step in steps]
    return Blind(
        steps=tuple(Lettered(s, letters[s], name) for s, name in zip(steps, names, strict=True)),
        done=tuple(
            Done(a, b, f"first {letters[a]}, then {letters[b]}") for a, b in stream.shuffled(pairs)
        ),
        again=BANK.lists["again"],
    )
