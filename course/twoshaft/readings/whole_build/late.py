"""A part seen to be the wrong way round some steps later: what that costs, and what shows it."""

from __future__ import annotations

from twoshaft.models.order import rework, sensible_order
from twoshaft.readings.lots import TRIES
from twoshaft.readings.whole_build.given import Doing, Late
from twoshaft.readings.whole_build.lot import Lot
from twoshaft.records import Option

SINCE = (6, 10)
OFF = (2, 5)
SHOWN = 5
HANDS = 4


def draw(lot: Lot) -> Late:
    """A wrong way round, what was built since, and checks to choose from."""
    stream, task, unit = lot.stream.child("late"), lot.task, lot.unit
    # Every fourth belongs to an attempt, so that a resit brings another even when some do not suit.
    mine = lot.learner_stream.child("late").shuffled(lot.asks("way"))
    asks = mine[lot.attempt % HANDS :: HANDS]
    shows = bool(stream.integer(2))  # as often a way that some check shows as one that none does
    for n in range(TRIES):
        ask = asks[n % len(asks)]
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
        if bool(way.misbuild) != shows and n < TRIES // 2:
            continue
        if way.seal:  # how a seal leaks hangs on more than the final checks say
            continue
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
            shows=_checks(lot, stream, way.misbuild),
        )
    raise lot.too_small("late")


def _checks(lot: Lot, stream, misbuild) -> tuple[Option, ...]:
    """Final checks to choose from, with those that show the misbuild, and none of them."""
    from twoshaft.models.faults import as_built, run_check

    every, failing = lot.unit.faults.checks, []
    if misbuild is not None:
        built = as_built(lot.unit, [lot.unit.faults.misbuild_by_id(misbuild)])
        failing = [check for check in every if not run_check(check, built).passes]
    others = stream.shuffled([check for check in every if check not in failing])
    shown = stream.shuffled([*failing[:2], *others[: SHOWN - len(failing[:2])]])
    named = (Option(check.id, check.name) for check in shown)
    return (*named, Option("none", "None of the final checks"))
