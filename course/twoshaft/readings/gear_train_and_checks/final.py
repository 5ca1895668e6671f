"""The last checks in order, and why one comes before another step."""

from __future__ import annotations

from collections import Counter

from twoshaft.models.order import OrderTask, chance_r0, starting_order
from twoshaft.models.order.mark import LEAST_R0
from twoshaft.readings.gear_train_and_checks.given import Bond, Final, Named
from twoshaft.readings.gear_train_and_checks.lot import Lot
from twoshaft.records import Option
from twoshaft.units.sections.order import RuleKind

STEPS, MOST_CHECKS = 12, 6
REASONS = 4
CHECKS = ("check", "measure")
LAST_STAGES = 3
USUAL_R0, BAND, TRIES = 4.4, 0.9, 20
"""What lists of this length mostly have; the nearest to it is taken, so all are alike hard."""


def draw(lot: Lot) -> Final:
    """Steps and the order shown; a pair with four reasons, of which one fits."""
    stream = lot.stream.child("final")
    unit = lot.unit
    whole = OrderTask.from_unit(unit)
    stages = [stage.id for stage in unit.stages][-LAST_STAGES:]
    late = [o for o in unit.operations if o.stage in stages and o.id in whole.steps]
    checks = [o.id for o in late if o.kind in CHECKS]
    # What a check waits for or holds up stands beside it in the list.
    touching = {
        step
        for bond in whole.bonds
        for step, other in (
            (whole.steps[bond.earlier], whole.steps[bond.later]),
            (whole.steps[bond.later], whole.steps[bond.earlier]),
        )
        if other in checks
    }
    others = [o.id for o in late if o.id not in checks and o.id in touching]
    best: tuple[float, OrderTask] | None = None
    for _ in range(TRIES):
        chosen = set([*stream.shuffled(checks)[:MOST_CHECKS], *stream.shuffled(others)][:STEPS])
        part = OrderTask.from_unit(unit, [o.id for o in unit.operations if o.id in chosen])
        r0 = chance_r0(part)
        if len(part.steps) == STEPS and r0 >= LEAST_R0:
            off = abs(r0 - USUAL_R0)
            best = (off, part) if best is None or off < best[0] else best
            if off <= BAND / 2:
                break
    if best is None:
        raise lot.too_small("final")
    part = best[1]
    start = starting_order(part, lot.stream.child("final start"))
    return Final(
        operations=tuple(part.steps),
        start=tuple(Option(*one) for one in part.labelled(start)),
        pair=_pair(lot, whole, checks),
    )


def _pair(lot: Lot, whole: OrderTask, checks: list[str]) -> Bond:
    """A check, a step that it comes before or after, and true reasons of which one fits."""
    stream = lot.stream.child("final pair")
    rules = {rule.id for rule in lot.unit.rules}
    between = Counter((bond.earlier, bond.later) for bond in whole.bonds)
    bonds = [
        bond
        for bond in whole.bonds
        if between[bond.earlier, bond.later] == 1
        and bond.reason.rules[0] in rules
        and bond.reason.kind is not RuleKind.CANNOT
        and {whole.steps[bond.earlier], whole.steps[bond.later]} & set(checks)
    ]
    texts = {bond.reason.text: bond.reason.rules[0] for bond in bonds}
    if len(texts) < REASONS:
        raise lot.too_small("final")
    bond = lot.in_turn("final pair", bonds)[0]
    wrong = [
        Option(rule, text)
        for text, rule in stream.shuffled(list(texts.items()))
        if text != bond.reason.text
    ]
    earlier, later = whole.steps[bond.earlier], whole.steps[bond.later]
    fits = Option(bond.reason.rules[0], bond.reason.text)
    return Bond(
        earlier=Named(earlier, whole.label(earlier)),
        later=Named(later, whole.label(later)),
        options=tuple(stream.shuffled([fits, *wrong[: REASONS - 1]])),
    )
