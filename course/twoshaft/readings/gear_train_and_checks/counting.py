"""Which gear is in, and what a count cannot tell."""

from __future__ import annotations

from fractions import Fraction
from itertools import combinations, product

from twoshaft.models.geartrain import count_turns, fewest_turns, mistaken, ratio
from twoshaft.models.geartrain.turning import ways_of_counting
from twoshaft.models.shape import section_of
from twoshaft.readings.gear_train_and_checks.given import (
    Apart,
    AskedPair,
    Reading,
    Teeth,
    Total,
    Turns,
    Where,
    Which,
)
from twoshaft.readings.gear_train_and_checks.lot import BANK, Lot, options
from twoshaft.readings.keyed import Stream
from twoshaft.readings.scenes import near_scene
from twoshaft.records import Option
from twoshaft.units.sections.shapes import GearSolid

LEAST_COUNTS = {0.25: "a quarter of a turn", 0.5: "half a turn", 1.0: "a whole turn"}
MOST_TURNS = (1, 2, 3)
READINGS = 4
WHEELS = 3
SIDES = {"driving": "that drives", "driven": "that is driven"}
"""How many wheels are pointed at, and what each side of a mesh is called."""
READ_TURNS, READ_STEPS = range(1, 9), (0.125, *LEAST_COUNTS)
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
        where=_where(lot, stream.child("where")),
    )


def _where(lot: Lot, stream: Stream) -> Where | None:
    """Wheels of forward gears, each of another gear, to be pointed at; None where not drawn."""
    for view in section_of(lot.unit).views:
        wheels: dict[tuple[str, str], str] = {
            (one.solid.mesh, one.solid.side): one.solid.id
            for one in view.drawn
            if isinstance(one.solid, GearSolid)
        }
        pool = [gear for gear in lot.forward
                if all((gear.engages[0], side) in wheels for side in SIDES)]  # fmt: skip
        if len(pool) < WHEELS:
            continue
        sides = stream.shuffled([*SIDES, stream.choice(list(SIDES))])
        asked = list(zip(stream.shuffled(pool), sides, strict=False))
        wanted = [wheels[gear.engages[0], side] for gear, side in asked]
        near = near_scene(lot.unit, stream, view.id, wanted, sorted(wheels.values()))
        if near is not None:
            lines = [Option(f"{gear.id}-{side}", f"{gear.name}: the gear {SIDES[side]}")
                     for gear, side in asked]  # fmt: skip
            return Where(near, tuple(lines))
    return None


def _teeth(lot: Lot, id: str) -> str:
    mesh = lot.mesh(id)
    return f"{mesh.driving.teeth} drives {mesh.driven.teeth}"


def draw_apart(lot: Lot) -> Apart:
    """A coarse count that mistakes one to three pairs; readings of counts to be judged."""
    stream = lot.stream.child("apart")
    exact = {
        counted: [count_turns(lot.train, gear.id, 1, counted).exact for gear in lot.train.gears]
        for counted in ways_of_counting(lot.train)
    }
    cases = [
        (turns, step, counted)
        for turns in MOST_TURNS
        for step in LEAST_COUNTS
        for counted, counts in exact.items()
        if _mistakes(counts, step, turns) and _clear(counts, step, turns)
    ]
    if not cases:
        raise lot.too_small("apart")
    turns, step, counted = lot.in_turn("apart", cases)[0]
    wrong = list(mistaken(lot.train, turns, counted, step))
    names = lot.names()
    one, other = stream.choice(wrong)
    return Apart(
        turns=turns,
        step_turns=step,
        step_words=LEAST_COUNTS[step],
        counted=counted,
        totals=tuple(
            Turns(gear.name, round(abs(float(ratio(lot.train, gear.id))), 3))
            for gear in lot.train.gears
        ),
        asked=AskedPair(one, other, f"{names[one]} and {names[other].lower()}"),
        readings=_readings(lot, stream, exact[counted]),
        answers=(
            *(Option(gear.id, gear.name) for gear in lot.train.gears),
            *BANK.lists["unsure"],
        ),
    )


def _readings(lot: Lot, stream: Stream, counts: list[Fraction]) -> tuple[Reading, ...]:
    """Readings that one gear fits, or several, or none; none hangs on the last figure."""
    found: dict[int, list[tuple[int, float, float]]] = {0: [], 1: [], 2: []}
    for turns, step, one in product(READ_TURNS, READ_STEPS, counts):
        for off in (-2, -1, 0, 1, 2):
            read = (round(float(one) * turns / step) + off) * step
            near = [abs(float(each) * turns - read) for each in counts if (each > 0) == (read > 0)]
            if read and all(abs(miss - step) > CLEAR for miss in near):
                fit = sum(miss < step for miss in near)
                found[min(fit, 2)].append((turns, read, step))
    kinds = [fit for fit, those in found.items() if those]
    if 1 not in kinds:
        raise lot.too_small("apart")
    shown = stream.shuffled([1, *kinds, stream.choice(kinds)])[:READINGS]
    return tuple(
        Reading(f"count-{number}", *stream.choice(found[fit]))
        for number, fit in enumerate(shown, 1)
    )


def _mistakes(counts: list[Fraction], step: float, turns: int) -> bool:
    """Whether one to three pairs are mistaken for each other."""
    return 1 <= sum(fewest_turns(a, b, step) > turns for a, b in combinations(counts, 2)) <= 3


def _clear(counts: list[Fraction], step: float, turns: int) -> bool:
    """Whether no pair's number of turns lies near the whole one at which the verdict flips."""
    needs = [2 * step / abs(float(a - b)) for a, b in combinations(counts, 2) if (a > 0) == (b > 0)]
    return all(abs(need - round(need)) > CLEAR for need in needs if need < turns + 2)
