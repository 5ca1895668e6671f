"""A unit half built, in section: what can go in next, what before a step, what after another."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from itertools import permutations

from twoshaft.models.order import OrderTask, ready_steps, sensible_order
from twoshaft.models.order.masks import bits
from twoshaft.models.shape import fitted_after, parts_fitted, places_seen, section_of
from twoshaft.readings.keyed import Stream
from twoshaft.readings.order_of_work.given import HalfBuilt
from twoshaft.readings.order_of_work.lot import Lot, steps_of
from twoshaft.readings.scenes import SPOTS, scene_of
from twoshaft.units import Unit

OPEN, FEWEST_OPEN = 7, 6
"""How many of the letters stand where nothing is, and how many at least."""
RIGHT = 2
"""How many letters are right before a step, and how many after another one."""
MOST_MISSING = 4
"""So many parts at most are missing before these steps."""
NEXT = 4
"""After a step, parts of these many next ones get letters: what goes in last waits for all."""
TRIES = 6
"""Builds tried for a step that is to be ready."""


@dataclass(frozen=True)
class _Side:
    """What a view shows of a build.

    Attributes
    ----------
    view : str
    part : mapping of str to str
        The part at which a step can be pointed at, of steps that fit one that no other step fits.
    seen : frozenset of str
        All steps that leave something to see.
    """

    view: str
    part: Mapping[str, str]
    seen: frozenset[str]


def draw(lot: Lot) -> HalfBuilt | None:
    """A unit half built; None where it is not drawn, or too little of it shows."""
    task, unit, stream = lot.task, lot.unit, lot.stream.child("half built")
    if not section_of(unit).own:
        return None
    sides = [_side(unit, task, view.id) for view in section_of(unit).views]
    side = max(sides, key=lambda one: len(one.part))
    after_one = [step for step in side.part if _among(task, step, side.part)]
    for step in lot.in_turn("half built", after_one):
        for _ in range(TRIES):
            done = _built_up_to(task, side, step, stream)
            if done is None or (asked := _asked(task, side, step, done, stream)) is None:
                continue
            pair, letters = asked
            there = _standing(task, done)
            fitted = [part.id for part in unit.parts if part.id in there]
            spots = [side.part[one] for one in letters]
            scene = scene_of(unit, stream, side.view, fitted, spots)
            return HalfBuilt(tuple(done), scene, *steps_of(task, pair))
    return None


def _side(unit: Unit, task: OrderTask, view: str) -> _Side:
    places = places_seen(unit, view)
    fits = {step: parts_fitted(unit, task.members[task.number[step]]) for step in task.steps}
    every = [part for parts in fits.values() for part in parts]
    part = {step: next((one for one in parts if one in places and every.count(one) == 1), "")
            for step, parts in fits.items()}  # fmt: skip
    shown = {one.solid.part for each in section_of(unit).views if each.id == view
             for one in each.drawn}  # fmt: skip
    return _Side(
        view,
        {step: one for step, one in part.items() if one},
        frozenset(step for step, parts in fits.items() if shown & {*parts}),
    )


def _among(task: OrderTask, step: str, some: Collection[str]) -> list[str]:
    """Those of some steps that a step needs."""
    needed = (task.steps[i] for i in bits(task.before[task.number[step]]))
    return [one for one in needed if one in some]


def _built_up_to(task: OrderTask, side: _Side, step: str, stream: Stream) -> list[str] | None:
    """A build in which a step is ready, and all is done that leaves nothing to see, as far as it
    can be; None where something stands there on trial."""
    order = [*sensible_order(task, stream)]
    done = order[: order.index(step)]
    while more := [one for one in ready_steps(task, done) if one not in side.seen]:
        done.append(more[0])
    kept = {part.id for part in task.unit.parts if part.in_place}
    kept |= {part for one in done for part in _fitted(task, one)}
    return done if step in ready_steps(task, done) and _standing(task, done) == kept else None


def _fitted(task: OrderTask, step: str) -> tuple[str, ...]:
    return parts_fitted(task.unit, task.members[task.number[step]])


def _standing(task: OrderTask, done: Sequence[str]) -> frozenset[str]:
    """The parts that stand there after some steps."""
    return fitted_after(task.unit, [id for one in done for id in task.members[task.number[one]]])


def _asked(
    task: OrderTask, side: _Side, ready: str, done: Sequence[str], stream: Stream
) -> tuple[tuple[str, str], list[str]] | None:
    """Two steps that wait, and the steps whose parts get letters: of those that are ready the one
    alone, so many that go in before the first of the two, so many after the second. None where
    there are no such steps."""
    free = [step for step in side.part if step not in done]
    missing = {step: [one for one in _among(task, step, free) if one != step]
               for step in task.steps if step not in done}  # fmt: skip
    waits = sorted((step for step in free if missing[step]), key=lambda one: len(missing[one]))
    near = [step for step, some in missing.items() if 0 < len(some) <= MOST_MISSING]
    needs = {step: {*_among(task, step, missing)} for step in waits}
    after = {step: [one for one in waits if step in needs[one]] for step in near}

    def worth(pair: tuple[str, str]) -> tuple[bool, bool]:
        """Best where what is ready answers one line alone, and much waits for the second step."""
        first = missing[pair[0]]
        return ready in first, len({*after[pair[1]]} - {*first}) < NEXT

    for pair in sorted(permutations(stream.shuffled(near), 2), key=worth):
        first, later = missing[pair[0]], after[pair[1]]
        early = [ready] if ready in first else []
        early += stream.shuffled([one for one in waits if one in first and one not in later])
        late = [one for one in later if one not in first]
        if len(early) < RIGHT or len(late) < RIGHT:
            continue
        rest = [one for one in waits if one not in first and one not in later]
        own = [one for one in pair if one in rest]
        picked = [ready, *early[:RIGHT], *stream.shuffled(late[:NEXT])[:RIGHT]]
        letters = [*dict.fromkeys([*picked, *own, *stream.shuffled(rest)])][:OPEN]
        stand = _stand(task, side, (*pair, ready), done, stream)[: SPOTS - len(letters)]
        if len(letters) >= FEWEST_OPEN and len(letters) + len(stand) == SPOTS:
            return pair, [*letters, *stand]
    return None


def _stand(
    task: OrderTask, side: _Side, steps: Sequence[str], done: Sequence[str], stream: Stream
) -> list[str]:
    """Steps whose parts stand there; at first two that some steps did wait for."""
    needed = dict.fromkeys(one for step in steps for one in _among(task, step, side.part))
    two = stream.shuffled([one for one in needed if one in done])[:2]
    return [*two, *stream.shuffled([one for one in side.part if one in done and one not in two])]
