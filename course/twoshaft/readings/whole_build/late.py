"""A part seen to be the wrong way round some steps later: what that costs; and what shows such."""

from __future__ import annotations

from itertools import chain, cycle, islice

from twoshaft.models.faults import as_built, run_check
from twoshaft.models.order import rework, sensible_order
from twoshaft.models.shape import listed_misbuilds, thin_rings
from twoshaft.questions import bank_of
from twoshaft.readings.lots import TRIES
from twoshaft.readings.scenes import Look, looks_in_turn
from twoshaft.readings.whole_build.bench import parts_asked
from twoshaft.readings.whole_build.given import Doing, Late, Seen
from twoshaft.readings.whole_build.lot import Lot
from twoshaft.records import Option
from twoshaft.units.kept import kept
from twoshaft.units.unit import Unit

SINCE = (6, 10)
OFF = (2, 5)
HANDS = 4
SHOWN, MISSED, SILENT = 2, 1, 2
"""Other parts: the check that shows it was made; another one was; no check shows it."""


def draw(lot: Lot) -> Late:
    """A wrong way round, what was built since, and other parts with checks that were made."""
    stream, task, unit = lot.stream.child("late"), lot.task, lot.unit
    # Every fourth belongs to an attempt, so that a resit brings another even when some do not suit.
    mine = lot.learner_stream.child("late").shuffled(lot.asks("way"))
    asks = mine[lot.attempt % HANDS :: HANDS]
    # Where none of those suits, any of the unit does.
    for ask in chain(islice(cycle(asks), TRIES), islice(cycle(mine), TRIES)):
        order = list(sensible_order(task, stream))
        at = order.index(ask.step)
        end = at + 1 + SINCE[0] + stream.integer(SINCE[1] - SINCE[0] + 1)
        if end > len(order):
            continue
        off = rework(task, order[:end], ask.step).off
        rows = order[at:end]
        if not OFF[0] <= len(off) <= OFF[1] or not set(off) <= set(rows):
            continue
        if len(rows) - 1 - len(off) < 3:
            continue
        way = stream.choice(unit.operation_by_id[ask.about].wrong_ways)
        return Late(
            ask=ask.id,
            way=way.id,
            name=ask.name,
            words=way.name.rstrip("."),
            done=tuple(order[:end]),
            rows=tuple(
                Doing(s, task.label(s), task.minutes_undo[task.number[s]], task.minutes(s))
                for s in rows
            ),
            options=tuple(Option(*one) for one in task.labelled(rows[1:])),
            others=_others(lot),
            shown=bank_of("whole-build").lists["shown"],
            looks=_looks(lot),
            built=bank_of("whole-build").lists["looks"],
        )
    raise lot.too_small("late")


def _others(lot: Lot) -> tuple[Seen, ...]:
    """Ways round that a check shows, with that check made or another, and ways that none shows."""
    stream = lot.stream.child("late others")
    names = {check.id: check.name for check in lot.unit.faults.checks}
    shown, ways = shown_by(lot.unit), _ways(lot.unit)
    telling = lot.in_turn("late telling", [pair for pair in ways if shown.get(pair)])
    silent = lot.next_ones("late silent", [pair for pair in ways if not shown.get(pair)], SILENT)
    if not telling:
        raise lot.too_small("late")
    drawn = [telling[n % len(telling)] for n in range(SHOWN + MISSED)]
    found = [(*pair, shown.get(pair, ())[:1]) for pair in (*drawn[:SHOWN], *silent)]
    found += [(*pair, ()) for pair in drawn[SHOWN:]]
    rows = []
    for n, (operation, way, telling_check) in enumerate(stream.shuffled(found), 1):
        others = [id for id in names if id not in shown.get((operation, way), ())]
        made = stream.shuffled([*telling_check, *stream.shuffled(others)[: 2 - len(telling_check)]])
        entry = lot.unit.operation_by_id[operation]
        name = next(one.name for one in entry.wrong_ways if one.id == way).rstrip(".")
        words = f"{name}. Made: {'; '.join(names[id][:1].lower() + names[id][1:] for id in made)}."
        rows.append(Seen(f"part-{n}", words, operation, way, tuple(made)))
    return tuple(rows)


def _looks(lot: Lot) -> tuple[Look, ...]:
    """Four units at a place chosen for a part of which the bench does not ask."""
    asked = parts_asked(lot)
    turned = [one for one in listed_misbuilds(lot.unit) if one.how == "turned"]
    firsts = lot.in_turn("looks", [one for one in turned if not asked & {*one.parts}])
    others = [*turned, *thin_rings(lot.unit)]
    return looks_in_turn(lot.unit, lot.stream.child("looks"), firsts, others) or ()


@kept()
def shown_by(unit: Unit) -> dict[tuple[str, str], tuple[str, ...]]:
    """Final checks that do not pass with a part the wrong way round, by operation and way."""
    found = {}
    for operation, way in _ways(unit):
        entry = next(one for one in unit.operation_by_id[operation].wrong_ways if one.id == way)
        if entry.misbuild:
            built = as_built(unit, [unit.faults.misbuild_by_id(entry.misbuild)])
            failing = (c.id for c in unit.faults.checks if not run_check(c, built).passes)
            found[operation, way] = tuple(failing)
    return found


def _ways(unit: Unit) -> list[tuple[str, str]]:
    """Each wrong way round; how a seal leaks hangs on more than the final checks say."""
    return [
        (operation.id, way.id)
        for operation in unit.operations
        for way in operation.wrong_ways
        if not way.seal
    ]
