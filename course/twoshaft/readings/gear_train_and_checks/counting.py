"""Which gear is in, and what a count cannot tell."""

from __future__ import annotations

from fractions import Fraction
from itertools import combinations
from typing import get_args

from twoshaft.models.geartrain import count_turns, fewest_turns, mistaken, ratio, with_wheel
from twoshaft.models.geartrain.turning import Counted
from twoshaft.readings.gear_train_and_checks.given import (
    Apart,
    AskedPair,
    Named,
    OddGear,
    Teeth,
    Total,
    Turns,
    Which,
)
from twoshaft.readings.gear_train_and_checks.lot import Lot, options
from twoshaft.records import Option

LEAST_COUNTS = {0.25: "a quarter of a turn", 0.5: "half a turn", 1.0: "a whole turn"}
PAIRS = 7
CLEAR = 0.04
"""How far a number of turns must lie from the next whole one, so that rounding decides nothing."""


def draw_which(lot: Lot) -> Which:
    """A closed unit with one gear in: what the input turns for turns of the ring gear."""
    stream = lot.stream.child("which")
    gear = lot.in_turn("which", lot.train.gears)[0]
    total = ratio(lot.train, gear.id)
    return Which(
        inside=Total(total.numerator, total.denominator),
        gears=tuple(Option(gear.id, gear.name) for gear in lot.train.gears),
        wheels=tuple(
            Teeth(gear.name, "; ".join(_teeth(lot, mesh) for mesh in gear.engages))
            for gear in lot.forward
        ),
        ways=options(stream, "count_ways"),
    )


def _teeth(lot: Lot, id: str) -> str:
    mesh = lot.mesh(id)
    return f"{mesh.driving.teeth} drives {mesh.driven.teeth}"


def draw_apart(lot: Lot) -> Apart:
    """A coarse count that mistakes one to three pairs; a wheel with a tooth too many or few."""
    stream = lot.stream.child("apart")
    exact = {
        counted: [count_turns(lot.train, gear.id, 1, counted).exact for gear in lot.train.gears]
        for counted in get_args(Counted)
    }
    cases = [
        (turns, step, counted)
        for turns in (1, 2, 3)
        for step in LEAST_COUNTS
        for counted, counts in exact.items()
        if _mistakes(counts, step, turns) and _clear(counts, step, turns)
    ]
    wheels = [
        (gear, teeth)
        for gear in lot.forward
        for teeth in (-1, 1)
        if len(gear.engages) == 1 and _wheel_clear(lot, gear.engages[0], gear.id, teeth)
    ]
    if not cases or not wheels:
        raise lot.too_small("apart")
    turns, step, counted = lot.in_turn("apart", cases)[0]
    wrong = list(mistaken(lot.train, turns, counted, step))
    others = [
        pair for pair in combinations([g.id for g in lot.train.gears], 2) if pair not in wrong
    ]
    names = lot.names()
    shown = stream.shuffled([*wrong, *stream.shuffled(others)[: PAIRS - len(wrong)]])
    one, other = stream.choice(wrong)
    gear, more = lot.in_turn("wheels", wheels)[0]
    mesh = lot.mesh(gear.engages[0])
    return Apart(
        turns=turns,
        step_turns=step,
        step_words=LEAST_COUNTS[step],
        counted=counted,
        totals=tuple(
            Turns(gear.name, round(abs(float(ratio(lot.train, gear.id))), 3))
            for gear in lot.train.gears
        ),
        pairs=tuple(Option(f"{a}-and-{b}", f"{names[a]} and {names[b].lower()}") for a, b in shown),
        keys={f"{a}-and-{b}": (a, b) for a, b in shown},
        asked=AskedPair(one, other, f"{names[one]} and {names[other].lower()}"),
        odd=OddGear(
            gear=Named(gear.id, gear.name),
            mesh=mesh.id,
            driving=mesh.driving.teeth,
            driven=mesh.driven.teeth,
            fitted=mesh.driven.teeth + more,
        ),
        surer=options(stream, "surer"),
    )


def _mistakes(counts: list[Fraction], step: float, turns: int) -> bool:
    """Whether one to three pairs are mistaken for each other."""
    return 1 <= sum(fewest_turns(a, b, step) > turns for a, b in combinations(counts, 2)) <= 3


def _clear(counts: list[Fraction], step: float, turns: int) -> bool:
    """Whether no pair's number of turns lies near the whole one at which the verdict flips."""
    needs = [2 * step / abs(float(a - b)) for a, b in combinations(counts, 2) if (a > 0) == (b > 0)]
    return all(abs(need - round(need)) > CLEAR for need in needs if need < turns + 2)


def _wheel_clear(lot: Lot, mesh: str, gear: str, more: int) -> bool:
    driven = lot.mesh(mesh).driven.teeth
    swapped = with_wheel(lot.train, mesh, "driven", driven + more)
    one, other = (
        count_turns(train, gear, 1, get_args(Counted)[0]).exact for train in (lot.train, swapped)
    )
    need = 2 * lot.train.least_count_turns / abs(float(one - other))
    few = fewest_turns(one, other, lot.train.least_count_turns)
    return 2 <= few <= 8 and abs(need - round(need)) > CLEAR
