"""Order one sub-assembly: the same number of steps and the same difficulty for everyone."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft.models.order import OrderTask, chance_r0, quick_order, starting_order
from twoshaft.models.order.mark import LEAST_R0
from twoshaft.readings.keyed import Stream
from twoshaft.readings.order_of_work import given
from twoshaft.readings.order_of_work.lot import Lot, steps_of
from twoshaft.units.kept import kept
from twoshaft.units.unit import Unit

LENGTHS = (9, 8, 7, 10)
"""Numbers of steps, the best first."""
BAND = 0.9
"""Width of the band in which the r0 of all sub-assemblies of a pool lies."""
MOST_OF_A_STAGE = 6
"""Sub-assemblies kept from one stage, so that no stage crowds out the others."""


@dataclass(frozen=True)
class SubAssembly:
    """A member of the pool."""

    stage: str
    steps: tuple[str, ...]
    r0: float
    kinds: int


@kept()
def pool(unit: Unit) -> tuple[SubAssembly, ...]:
    """Sub-assemblies of a unit that are equally hard.

    Each is a closed part of one stage: nothing of the build has to come between its steps. All
    have the same number of steps and an r0 within a band; those with at least three kinds of
    rules are preferred, then the number of stages, then the number of sub-assemblies.
    """
    task = OrderTask.from_unit(unit)
    best: tuple[tuple[int, int, int], tuple[SubAssembly, ...]] = ((0, 0, 0), ())
    for length in LENGTHS:
        found = [
            member
            for stage in unit.stages
            for member in _of_stage(unit, task, stage.id, length)
            if member.r0 >= LEAST_R0
        ]
        for fewest in (3, 2, 1):
            rich = [member for member in found if member.kinds >= fewest]
            for low in sorted({member.r0 for member in rich}):
                band = tuple(m for m in rich if low <= m.r0 <= low + BAND)
                stages = len({m.stage for m in band})
                worth = (min(stages, 3), fewest, stages)
                if worth > best[0]:
                    best = (worth, band)
        if best[0][:2] >= (3, 3):
            break
    return best[1]


def _of_stage(unit: Unit, task: OrderTask, stage: str, length: int) -> list[SubAssembly]:
    steps = [step for step in task.steps if task.stage(step) == stage]
    if len(steps) < length:
        return []
    # The pool is the same for everyone: its stream belongs to the unit, not to a learner.
    stream = Stream("pool", unit.identity.id, unit.identity.version, 0).child(stage)
    part = OrderTask.from_unit(unit, steps)
    sets: dict[frozenset[str], None] = {}
    for _ in range(1 if len(steps) == length else 30):
        order = quick_order(part, stream)
        for begin in range(len(order) - length + 1):
            sets.setdefault(frozenset(order[begin : begin + length]))
    members: list[SubAssembly] = []
    for chosen in sets:
        if len(members) == MOST_OF_A_STAGE:
            break
        candidate = OrderTask.from_unit(unit, chosen)
        mask = sum(1 << task.number[step] for step in chosen)
        between = any(
            task.before[i] & mask and task.after[i] & mask
            for i in range(len(task.steps))
            if not mask >> i & 1
        )
        if between:
            continue
        kinds = {bond.reason.kind for bond in candidate.bonds}
        members.append(SubAssembly(stage, candidate.steps, chance_r0(candidate), len(kinds)))
    return members


def draw(lot: Lot) -> given.SubAssembly:
    """One of the pool, in an order that earns nothing."""
    members = pool(lot.unit)
    if not members:
        raise lot.too_small("sub_assembly")
    stages = sorted({member.stage for member in members})
    stage = lot.in_turn("sub_assembly", stages)[0]
    member = lot.stream.child("sub_assembly").choice([m for m in members if m.stage == stage])
    part = lot.part(member.steps)
    start = starting_order(part, lot.stream.child("sub_assembly start"))
    names = {stage.id: stage.name for stage in lot.unit.stages}
    return given.SubAssembly(
        stage=names[stage],
        operations=part.steps,
        start=steps_of(part, start),
    )
