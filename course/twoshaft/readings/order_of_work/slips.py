"""Slips to find: a step that buries another, a repair, an order that must never be done."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.models.order import OrderTask, Reason, rework
from twoshaft.models.order.masks import bits
from twoshaft.models.shape import fitted_after, step_parts, views_of_parts
from twoshaft.readings.keyed import Stream
from twoshaft.readings.order_of_work.given import Buried, Plan, Repair, Safe
from twoshaft.readings.order_of_work.lot import BANK, Lot, steps_of, windows, with_one_slip
from twoshaft.readings.scenes import Scene, scene_of
from twoshaft.records import Option
from twoshaft.units.sections.order import RuleKind

BURIED_STEPS = 11
BURIED_PLACES = 6
"""Fewest places that can be pointed at."""
BURIED_GAP = 4
"""Most places by which the buried step stands behind the step that buries it."""
MORE_TRIES = 40
"""How often a pair is tried again on a unit on which a few tries gave nothing."""
REPAIR_STEPS = 14
REPAIR_OPTIONS = 8
REPAIR_OFF = (2, 3)
"""How many steps have to come off."""
SAFE_STEPS = 9
SAFE_ORDERS = ("A", "B", "C", "D")
SAFE_REASONS = 3
NEVER = "Never:"
"""Stands before the reason of a danger."""


def draw_buried(lot: Lot) -> Buried:
    """An order with one broken *buries* rule, both of whose steps show in one view."""
    rules = {rule.id for rule in lot.unit.rules}  # the end of a hold buries nothing
    bonds = [
        bond
        for bond in lot.task.bonds
        if bond.reason.kind is RuleKind.BURIES and bond.reason.rules[0] in rules
    ]
    stream = lot.stream.child("buried")
    steps = lot.task.steps
    mine = lot.in_turn("buried", bonds)
    for bond, tries in [(one, many) for many in (6, MORE_TRIES) for one in mine]:
        pair = steps[bond.earlier], steps[bond.later]
        if tries == MORE_TRIES and not all(
            step_parts(lot.unit, lot.task.members[lot.task.number[step]]) for step in pair
        ):
            continue  # a step without a part never shows in a view

        def wanted(reason: Reason, pair=pair) -> bool:
            return reason.kind is RuleKind.BURIES and (*reason.earlier, reason.later) == pair

        for part in windows(lot, stream, BURIED_STEPS, pair, tries):
            sequence = with_one_slip(part, part.shown, stream, wanted)
            if sequence is None:
                continue
            if sequence.index(pair[0]) - sequence.index(pair[1]) > BURIED_GAP:
                continue
            scene = _buried_scene(lot, stream, sequence, pair)
            if scene is not None:
                return Buried(part.steps, steps_of(part, sequence), scene)
    raise lot.too_small("buried")


def _buried_scene(
    lot: Lot, stream: Stream, sequence: Sequence[str], pair: tuple[str, str]
) -> Scene | None:
    """The build as the buried step's turn comes, with letters at one part of each step; None where
    too few of them show, or those of the pair are not two."""
    task, unit, shown = lot.task, lot.unit, views_of_parts(lot.unit)
    done = set(sequence[: sequence.index(pair[0])])
    earlier = {task.steps[i] for step in done for i in bits(task.before[task.number[step]])}
    done |= earlier - set(sequence)
    parts = {step: step_parts(unit, task.members[task.number[step]]) for step in sequence}
    operations = [id for step in task.steps if step in done
                  for id in task.members[task.number[step]]]  # fmt: skip
    fitted = [part.id for part in unit.parts if part.id in fitted_after(unit, operations)]
    both = set(parts[pair[0]]) & set(parts[pair[1]])  # a part of both would be right for either
    for view in dict.fromkeys(view for part in parts[pair[0]] for view in shown.get(part, ())):
        chosen: dict[str, str] = {}
        for step in (*pair, *sequence):
            free = [part for part in parts[step] if view in shown.get(part, ())
                    and part not in both and part not in chosen.values()]  # fmt: skip
            if free and step not in chosen:
                chosen[step] = free[0]
        if set(pair) <= chosen.keys() and len(chosen) >= BURIED_PLACES:
            return scene_of(unit, stream, view, fitted, chosen.values())
    return None


def draw_repair(lot: Lot) -> Repair:
    """A build in which one step is late, and steps of which some have to come off."""
    task, stream = lot.task, lot.stream.child("repair")
    candidates = [i for i, mask in enumerate(task.in_the_way) if mask]
    for i in lot.in_turn("repair", candidates):
        late = task.steps[i]
        for part in windows(lot, stream, REPAIR_STEPS, (late, late)):
            order = [step for step in part.shown if step != late]
            place = part.shown.index(late)
            lengths = range(place + min(REPAIR_OFF), len(order) + 1)
            for length in stream.shuffled(lengths):
                built = order[:length]
                off = rework(part, built, late).off
                rest = [step for step in built if step not in off]
                wrong = REPAIR_OPTIONS - len(off)
                if len(off) not in REPAIR_OFF or len(rest) < wrong:
                    continue
                near = stream.shuffled(rest[-(wrong + 2) :])[:wrong]
                undo = {s: _personal(part.minutes_undo[part.number[s]], stream) for s in built}
                do = {s: _personal(part.minutes(s), stream) for s in built}
                return Repair(
                    operations=part.steps,
                    built=steps_of(part, built),
                    late=Option(late, part.label(late)),
                    found_at=Option(built[-1], part.label(built[-1])),
                    options=steps_of(part, stream.shuffled([*off, *near])),
                    answers=BANK.lists["off"],
                    undo=undo,
                    do=do,
                )
    raise lot.too_small("repair")


def _personal(minutes: float, stream: Stream) -> float:
    """Minutes as one pair of hands takes them: the unit's, or half a minute to either side."""
    if minutes == 0:
        return 0.0
    return max(0.5, round(2 * minutes) / 2 + (stream.integer(3) - 1) / 2)


def draw_safe(lot: Lot) -> Safe:
    """Orders of the same steps: one that works, others with a slip, at least one of them grave."""
    task, stream = lot.task, lot.stream.child("safe")
    guards = [b for b in task.bonds if b.reason.safety and len(b.reason.rules) == 1]
    for bond in lot.in_turn("safe", guards):
        pair = task.steps[bond.earlier], task.steps[bond.later]

        def deadly(reason: Reason, bond=bond) -> bool:
            return reason.rules == bond.reason.rules

        def harmless(reason: Reason) -> bool:
            return not reason.safety

        for part in windows(lot, stream, SAFE_STEPS, pair):
            orders = [tuple(part.shown)]
            wanted = [deadly, harmless, stream.choice((deadly, harmless))]
            for kind in wanted:
                for _ in range(4):
                    order = with_one_slip(part, part.shown, stream, kind)
                    if order is None or order not in orders:
                        break
                if order is not None and order not in orders:
                    orders.append(order)
            if len(orders) == len(SAFE_ORDERS):
                return _safe(lot, part, stream.shuffled(orders), bond.reason)
    raise lot.too_small("safe")


def _safe(lot: Lot, part: OrderTask, orders: list[tuple[str, ...]], reason: Reason) -> Safe:
    stream = lot.stream.child("safe reasons")
    others = stream.shuffled([one for one in lot.unit.rules if one.id not in reason.rules])
    own = set(part.steps)
    others.sort(key=lambda one: (not one.safety, not _rule_steps(lot, one.id) & own))
    texts = {reason.text: reason.rules[0]}
    for rule in others:
        if len(texts) < SAFE_REASONS and rule.reason not in texts:
            texts[rule.reason] = rule.id
    if len(texts) < SAFE_REASONS:
        raise lot.too_small("safe")
    dangers = [Option(rule, f"{NEVER} {text}") for text, rule in texts.items()]
    return Safe(
        operations=part.steps,
        orders=tuple(
            Plan(letter, steps_of(part, order))
            for letter, order in zip(SAFE_ORDERS, orders, strict=True)
        ),
        options=(*BANK.lists["plans"], *stream.shuffled(dangers)),
    )


def _rule_steps(lot: Lot, rule_id: str) -> set[str]:
    rule = next(rule for rule in lot.unit.rules if rule.id == rule_id)
    ids = [rule.later, *rule.any_of, *([rule.earlier] if rule.earlier else [])]
    return {lot.task.step_of[op] for op in ids}
