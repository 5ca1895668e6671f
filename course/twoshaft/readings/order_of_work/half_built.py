"""A unit half built, in section: what can go in next, and what other steps wait for."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
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

OPEN, FEWEST_OPEN = 7, 5
"""How many of the letters stand where nothing is, and how many at least."""
RIGHT = (1, 2)
"""How many letters are right for each of the steps that wait."""
MOST_MISSING = 4
"""So many parts at most are missing before a step that is asked about."""
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
            lines, letters = asked
            there = _standing(task, done)
            fitted = [part.id for part in unit.parts if part.id in there]
            spots = [side.part[one] for one in letters]
            scene = scene_of(unit, stream, side.view, fitted, spots)
            return HalfBuilt(tuple(done), scene, steps_of(task, lines))
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


def _among(task: OrderTask, step: str, some: Mapping[str, str]) -> list[str]:
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
) -> tuple[list[str], list[str]] | None:
    """Steps that wait, and the steps whose parts get letters: of those that are ready the one
    alone. None where too few wait, or too little is open."""
    free = {step: part for step, part in side.part.items() if step not in done}
    missing = {step: {one for one in _among(task, step, free) if one != step}
               for step in task.steps if step not in done}  # fmt: skip
    near = [step for step, some in missing.items() if 0 < len(some) <= MOST_MISSING]
    for lines in permutations(stream.shuffled(near), len(RIGHT)):
        picked: dict[str, None] = {ready: None}
        for line, count in zip(lines, RIGHT, strict=True):
            have = len(missing[line] & picked.keys())
            more = stream.shuffled(sorted(missing[line] - picked.keys()))
            picked |= dict.fromkeys(more[: max(0, count - have)])
        counts = tuple(len(missing[line] & picked.keys()) for line in lines)
        # Of what can be seen to be ready there is one; whatever else has a letter waits.
        if counts != RIGHT or not all(one == ready or missing[one] for one in picked):
            continue
        banned = set().union(*(missing[line] for line in lines))
        rest = [step for step in free if step not in banned and missing[step]]
        own = [step for step in lines if step in rest]
        picked |= dict.fromkeys([*own, *stream.shuffled(rest)])
        letters = [*picked][:OPEN]
        if len(letters) < FEWEST_OPEN:
            continue
        needed = [one for line in (*lines, ready) for one in _among(task, line, side.part)]
        stands = [step for step in dict.fromkeys(stream.shuffled(needed)) if step in done]
        others = [step for step in side.part if step in done and step not in stands]
        letters += [*stands[:2], *stream.shuffled([*stands[2:], *others])][: SPOTS - len(letters)]
        if len(letters) == SPOTS:
            return stream.shuffled(lines), letters
    return None
