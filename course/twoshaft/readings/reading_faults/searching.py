"""Which check next, which tells nothing, and what a plan of checks costs."""

from __future__ import annotations

from itertools import permutations

from twoshaft.models.faults import expected_minutes, next_check
from twoshaft.readings.lots import TRIES
from twoshaft.readings.reading_faults.given import Dead, Next, Numbered, Offered, Plan, Suspect
from twoshaft.readings.reading_faults.lot import Lot
from twoshaft.records import Option

SUSPECTS = 5
CHECKS = 6
LEAD = 1.3
"""How many times more the best check must tell in a minute than the second best."""
DEAD_SUSPECTS = 4
PLANNED = 3
GAIN_MIN = 0.6
"""By how much the quickest plan must beat the next one [min]: more than rounding decides."""


def draw_next(lot: Lot) -> Next:
    """Suspects, of which exactly one is in the unit, and checks to choose from."""
    stream = lot.stream.child("next")
    firsts = lot.in_turn("next", lot.told)
    for n in range(TRIES):
        first = firsts[n * SUSPECTS % len(firsts)]
        others = stream.shuffled([one for one in lot.told if one != first])[: SUSPECTS - 1]
        suspects = [one for one in lot.told if one in (first, *others)]
        ranked = next_check(lot.unit, {}, among=[(one,) for one in suspects])
        telling = [one.check for one in ranked]
        if len(telling) < 4 or ranked[0].bits_per_minute < LEAD * ranked[1].bits_per_minute:
            continue
        idle = stream.shuffled([c for c in lot.table.checks if c not in telling])
        shown = [*telling[:CHECKS], *idle][:CHECKS]
        asked = stream.choice(telling[:4])
        break
    else:
        raise lot.too_small("next")
    return Next(
        suspects=_lettered(lot, suspects),
        checks=tuple(
            Offered(c, name, lot.minutes(c), _splits(lot, c, suspects))
            for c, name in lot.checks(stream.shuffled(shown))
        ),
        asked=stream.choice(suspects),
        asked_check=asked,
    )


def draw_dead(lot: Lot) -> Dead:
    """Suspects left, and checks of which some tell nothing about them."""
    stream = lot.stream.child("dead")
    firsts = lot.in_turn("dead", lot.told)
    for n in range(TRIES):
        first = firsts[n * DEAD_SUSPECTS % len(firsts)]
        others = stream.shuffled([one for one in lot.told if one != first])[: DEAD_SUSPECTS - 1]
        suspects = [one for one in lot.told if one in (first, *others)]
        telling = [c.check for c in next_check(lot.unit, {}, among=[(one,) for one in suspects])]
        idle = [c for c in lot.table.checks if c not in telling]
        if len(telling) >= 3 and len(idle) >= 4:
            checks = [*stream.shuffled(telling)[:3], *stream.shuffled(idle)[:4]]
            break
    else:
        raise lot.too_small("dead")
    return Dead(suspects=lot.named(suspects), checks=lot.checks(stream.shuffled(checks)))


def draw_plan(lot: Lot) -> Plan:
    """Four suspects and three checks, each of which finds one of them; all orders of the checks."""
    stream = lot.stream.child("plan")
    firsts = lot.in_turn("plan", lot.apart)
    for n in range(TRIES):
        first = firsts[n * (PLANNED + 1) % len(firsts)]
        others = stream.shuffled([one for one in lot.apart if one != first])[:PLANNED]
        suspects = [one for one in lot.told if one in (first, *others)]
        finders = {}
        for c in lot.table.checks:
            shown = [one for one in suspects if c in lot.failed(one)]
            if len(shown) == 1 and shown[0] not in finders:
                finders[shown[0]] = c
        if len(finders) < PLANNED:
            continue
        checks = stream.shuffled(list(finders.values()))[:PLANNED]
        plans = stream.shuffled(list(permutations(checks)))
        sets = [(one,) for one in suspects]
        took = {p: expected_minutes(lot.unit, p, sets).m_as("min") for p in plans}
        best, second = sorted(took.values())[:2]
        if second - best >= GAIN_MIN and abs(took[plans[0]] - took[plans[1]]) >= GAIN_MIN:
            break
    else:
        raise lot.too_small("plan")
    numbers = {c: str(k) for k, c in enumerate(checks, 1)}
    return Plan(
        suspects=_lettered(lot, suspects),
        checks=tuple(
            Numbered(c, numbers[c], name, lot.minutes(c), _splits(lot, c, suspects))
            for c, name in lot.checks(checks)
        ),
        plans=(_plan(plans[0], numbers), _plan(plans[1], numbers)),
        options=tuple(_plan(p, numbers) for p in stream.shuffled(plans)),
    )


def _plan(plan, numbers) -> Option:
    return Option("+".join(plan), ", then ".join(f"check {numbers[c]}" for c in plan))


def _lettered(lot: Lot, suspects: list[str]) -> tuple[Suspect, ...]:
    return tuple(
        Suspect(one, _letter(k), name, lot.often(one))
        for k, (one, name) in enumerate(lot.named(suspects))
    )


def _letter(k: int) -> str:
    return "ABCDEFGH"[k]


def _splits(lot: Lot, check: str, suspects: list[str]) -> str:
    """Which suspects a check tells from the others, by their letters."""
    shown: dict[str, list[str]] = {}
    for k, one in enumerate(suspects):
        if not lot.table.outcome((one,), check).passes:
            shown.setdefault(lot.key(one, check), []).append(_letter(k))
    if not shown:
        return "passes with all"
    groups = [" and ".join(letters) for letters in shown.values()]
    text = ", ".join(f"fails with {group}" for group in groups)
    return text if len(groups) == 1 else f"{text}, each in another way"
