"""The learner's own unit on the bench, and the plan that the order is made from."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

import numpy as np

from twoshaft.errors import UnitFileError
from twoshaft.models.faults import Outcome, as_built, run_check
from twoshaft.models.faults.built import exclude
from twoshaft.models.film import Hand, Work
from twoshaft.models.order import OrderTask, quick_slip, ready_steps, sensible_order
from twoshaft.models.shape import listed_misbuilds
from twoshaft.models.shim import Stack, choose_for, stack_budget, target_interference
from twoshaft.models.wholebuild import Job, asks_of, right_values
from twoshaft.models.wholebuild.asks import treatments
from twoshaft.questions import bank_of
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.turned_parts import turned_parts_in_hand
from twoshaft.readings.wanted import wanted
from twoshaft.readings.whole_build.given import Bench, Face, Lies, Pace, Plan, Spot, Stands, Ways
from twoshaft.readings.whole_build.lot import Lot
from twoshaft.records import Option, to_json
from twoshaft.units.kept import kept
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Support
from twoshaft.units.sections.faults import Misbuild
from twoshaft.units.unit import Unit

WAYS, LEAST_WAYS, INTO = 8, 3, 3
JOINTS = 3
THREADS = 6
NEXT, FRONT = 6, 12
BANK = bank_of("whole-build")
PROVING = ("gears-go-in", "gears-held", "turns", "lockout")
"""Kinds of check of which the hand feels, or the eye counts, what came wrong with the parts."""
EDGE_MM = 0.0015
"""A total of shims nearer than this to an edge of its window is not asked about."""
SPARE_MIN = 1.5
STARTS, FROM_LEAST = 25, 4
"""Plans that are shuffled, and which of them is shown, counted from the one with the fewest steps
out of place. What is shown earns nothing and so sets the slip that earns nothing: whoever shuffles
on within the stages has as a rule more steps out of place, and earns nothing either. Out of many,
so that every learner's plan is as hard."""


def draw(lot: Lot) -> Bench:
    """The learner's own unit: what is asked of it, its lengths, and what came with its parts."""
    shims, joints = lot.asks("shim"), _joints(lot)
    lengths = {ask.about: _lengths(lot, ask.about) for ask in shims}
    ways, threads = _ways(lot), _threads(lot, joints)
    asked = {ask.id for ask in (*ways, *shims, *joints, *_checks(lot))}
    asked |= {ask.id for kind in ("film", "proof") for ask in lot.asks(kind)}
    return Bench(
        asked=tuple(ask.id for ask in asks_of(lot.job) if ask.id in asked),
        lengths_mm=lengths,
        found={group: state for group, (state, _) in threads.items()},
        faces={ask.about: _face(lot, ask) for ask in lot.asks("film")},
        lies={ask.about: _lies(lot, ask.about) for ask in ways},
        threads={group: seen for group, (_, seen) in threads.items()},
        worn=_worn(lot),
        seed=str(lot.stream.child("seed").integer(10**9)),
    )


def draw_ways(lot: Lot) -> Ways:
    """Parts to put in of which the bench does not ask."""
    return Ways(turned_parts_in_hand(lot, "into", INTO, parts_asked(lot)))


def parts_asked(lot: Lot) -> set[str]:
    """Parts of which the bench asks which way round they go in."""
    asked = {ask.about for ask in _ways(lot)}
    return {part for one in listed_misbuilds(lot.unit) if one.id.partition("/")[0] in asked
            for part in one.parts}  # fmt: skip


def draw_plan(lot: Lot) -> Plan:
    """Steps to put in order, stage by stage, those of a stage shuffled."""
    stream, task = lot.stream.child("plan"), lot.task
    names = {stage.id: stage.name for stage in lot.unit.stages}
    starts = [_shuffled(task, names, stream) for _ in range(STARTS)]
    start = sorted(starts, key=lambda steps: quick_slip(task, steps))[FROM_LEAST]
    done, coming = _begun(lot)
    return Plan(
        start=tuple(Option(*one) for one in task.labelled(start)),
        stages={step: names[task.stage(step)] for step in start},
        done=done,
        stands=_stands(task, names, done),
        next=tuple(Option(*one) for one in task.labelled(coming)),
    )


def _begun(lot: Lot) -> tuple[tuple[str, ...], list[str]]:
    """A build that somebody began, and steps: some stand, some can come next, some must wait."""
    stream, task = lot.stream.child("begun"), lot.task
    each = NEXT // 3
    for _ in range(TRIES):
        order = sensible_order(task, stream)
        at = len(order) // 6 + stream.integer(len(order) * 2 // 3)
        done, left = order[:at], order[at:]
        ready = set(ready_steps(task, done))
        # Those about whose turn it is: a little before, a little later, and either looks like now.
        can = [step for step in left[:FRONT] if step in ready]
        wait = [step for step in left[:FRONT] if step not in ready]
        if min(len(can), len(wait)) >= each:
            groups = (list(done[-FRONT:]), can, wait)
            chosen = [step for group in groups for step in stream.shuffled(group)[:each]]
            return tuple(done), stream.shuffled(chosen)
    raise lot.too_small("next")


def _stands(task: OrderTask, stages: Mapping[str, str], done: Sequence[str]) -> tuple[Stands, ...]:
    """What stands, stage by stage; by name where a stage is begun and not finished."""
    found = []
    for stage, name in stages.items():
        mine = [step for step in task.steps if task.stage(step) == stage]
        there = [step for step in done if step in mine]
        if mine:
            words = "; ".join(task.label(step) for step in there) or "nothing yet"
            found.append(Stands(name, "all of it" if len(there) == len(mine) else words))
    return tuple(found)


def _shuffled(task: OrderTask, stages: Iterable[str], stream: Stream) -> list[str]:
    """Every step of each stage, out of order, stage after stage."""
    found: list[str] = []
    for stage in stages:
        found += stream.shuffled([step for step in task.steps if task.stage(step) == stage])
    return found


def _ways(lot: Lot):
    """Ways round: all of which a misbuild is told, the others in turn."""
    every = lot.asks("way")
    by_id = lot.unit.operation_by_id
    telling = [a for a in every if any(w.misbuild for w in by_id[a.about].wrong_ways)]
    telling = lot.in_turn("telling ways", telling)[: WAYS // 2]
    others = [ask for ask in every if ask not in telling]
    if len(every) < LEAST_WAYS:
        raise lot.too_small("ways")
    more = min(WAYS - len(telling), len(others))
    return [*telling, *(lot.next_ones("ways", others, more) if more else ())]


def _joints(lot: Lot):
    """One group over an adapter, one on a flange that asks for rounds if there is one, one more."""
    every = _treatable(lot)
    group = lot.unit.fasteners.group
    over = [ask for ask in every if group(ask.about).adapter]
    round_ = [ask for ask in every if group(ask.about).flange is not None]
    plain = [ask for ask in every if ask not in over and ask not in round_]
    several = [ask for ask in round_ if ask.about in _in_rounds(lot.unit)]
    taken = [*lot.in_turn("over", over)[:1], *lot.in_turn("flange", several or round_)[:1]]
    taken += lot.in_turn("plain", plain)[: JOINTS - len(taken)]
    if len(taken) < JOINTS:
        raise lot.too_small("joints")
    return taken


def _treatable(lot: Lot):
    """Groups of which there is something that brings their threads into the state of the card."""
    group, treated = lot.unit.fasteners.group, treatments(lot.unit)
    return [ask for ask in lot.asks("joint") if group(ask.about).state in treated]


@kept()
def _in_rounds(unit: Unit) -> frozenset[str]:
    """Groups that one round of any sequence leaves too uneven."""
    job = Job.of(unit)
    joints = [ask for ask in asks_of(job) if ask.kind == "joint"]
    return frozenset(
        ask.about for ask in joints if right_values(job, ask).get(f"rounds-{ask.about}", "1") != "1"
    )


def _threads(lot: Lot, joints) -> dict[str, tuple[str, str]]:
    """How the threads of some groups are found, and in words; half of them as the card wants."""
    section, stream = lot.unit.fasteners, lot.stream.child("threads")
    names = {state.id: state.name.lower() for state in section.states}
    like = {state.id: state.known_as for state in section.states}
    groups = [ask.about for ask in joints]
    others = [ask.about for ask in _treatable(lot) if ask.about not in groups]
    groups += lot.next_ones("more threads", others, min(THREADS - len(groups), len(others)))
    found = {}
    for group in stream.shuffled(groups):
        wanted = section.group(group).state
        others = [state for state in names if state != wanted]
        state = wanted if stream.integer(2) else stream.choice(others)
        told = [one.text for one in BANK.lists["threads"] if one.id.startswith(f"{like[state]}-")]
        words = stream.choice(told or [f"the card wants {{wanted}}; found: {names[state]}"])
        found[group] = state, words.format(wanted=names[wanted])
    return found


def _lies(lot: Lot, operation: str) -> Lies:
    """How parts lie, told by another feature than the mark where the unit file has one."""
    stream, entry = lot.stream.child(f"lies {operation}"), lot.unit.operation_by_id[operation]
    wrong = stream.choice(entry.wrong_ways)
    turned = bool(stream.integer(2))
    since = stream.choice(BANK.lists["since"])
    looked = turned ^ (since.id == "once")
    seen = (wrong.seen_as if looked else entry.seen_as) or (
        (wrong.name if looked else entry.orientation or "").rstrip("."),
    )
    words = since.text.format(seen=stream.choice(seen))
    return Lies(way=wrong.id, so=wrong.id if turned else "", seen=words)


def _checks(lot: Lot):
    kinds = {check.id: check.kind for check in lot.unit.faults.checks}
    steps = {
        lot.job.step_of_any(check.operations)
        for check in lot.unit.faults.checks
        if kinds[check.id] in PROVING
    }
    return [ask for ask in lot.asks("check") if ask.step in steps]


def _lengths(lot: Lot, support: str) -> dict[str, float]:
    """Lengths as read on this unit [mm]: exactly one total of the shelf is safe, and clearly."""
    entry, stream = lot.job.support(support), lot.stream.child(f"lengths {support}")
    for _ in range(TRIES):
        read = {term.id: _read(term, stream) for term in entry.stack}
        if _clear(lot, entry, {id: Q(mm, "mm") for id, mm in read.items()}):
            return read
    raise lot.too_small(f"shims of {support}")


def _read(term, stream: Stream) -> float:
    true = term.nominal_mm + 0.9 * stream.uniform(-term.tolerance_mm, term.tolerance_mm)
    return round(round(true / term.resolution_mm) * term.resolution_mm, 4)


def _clear(lot: Lot, support: Support, read: dict[str, Q]) -> bool:
    """Whether the shelf has a safe total, and none lies on an edge of the guarded window."""
    thin, thick = Stack.from_support(support, read).window(*target_interference(support))
    guard = round(stack_budget(support, read).expanded(), 3)
    totals = shelf_totals(lot.unit.bearings.shim_set_by_id(support.shim_set))
    edges = (thin + guard, thick - guard, thin, thick)
    if any(abs(total - edge) < EDGE_MM for total in totals for edge in edges):
        return False
    chosen = choose_for(support, lot.unit.bearings, read)
    return chosen.verdict == "safe" and thin > min(totals)


def shelf_totals(shelf) -> list[float]:
    """Every total that the shims of a shelf make [mm]."""
    sizes = shelf.thicknesses_mm
    pairs = [a + b for a in sizes for b in sizes] if shelf.at_most == 2 else []
    return sorted({round(mm, 4) for mm in (*sizes, *pairs)})


def _worn(lot: Lot) -> tuple[str, ...]:
    """What came wrong with the parts: nothing, or what shows in one of the checks, or in both."""
    named = {way.misbuild for op in lot.unit.operations for way in op.wrong_ways}
    asked = {ask.step for ask in _checks(lot)}
    pool = [
        one
        for one in lot.unit.faults.misbuilds
        if one.id not in named
        and all(_comes_so(lot, change) for change in one.changes)
        and len(_shown(lot, one) & asked) == 1
    ]
    if not pool:
        raise lot.too_small("worn")
    by_check: dict[str | None, list[Misbuild]] = {}
    for one in lot.in_turn("which", pool):
        (step,) = _shown(lot, one) & asked
        by_check.setdefault(step, []).append(one)
    firsts = [mine[0] for mine in by_check.values()]
    cases = [(), *((one.id,) for one in firsts)]
    if len(firsts) > 1 and not exclude(lot.unit, *firsts[:2]):
        cases.append(tuple(one.id for one in firsts[:2]))
    return lot.in_turn("worn", cases)[0]


def _comes_so(lot: Lot, change) -> bool:
    """Whether a part can come so from the store: one that is there, and is not as it should be."""
    if change.kind != "shift":
        return change.kind == "wheel"
    misbuild = next(m for m in lot.unit.shift.misbuilds if m.id == change.misbuild)
    return not any(one.remove for one in misbuild.changes)


def _shown(lot: Lot, misbuild: Misbuild) -> set[str | None]:
    """Steps whose check a misbuild does not pass."""
    built = as_built(lot.unit, [misbuild])
    found: dict[str, Outcome] = {}
    for check in lot.unit.faults.checks:
        if check.kind in PROVING:
            found[check.id] = run_check(check, built)
    failed = [c for c in lot.unit.faults.checks if c.id in found and not found[c.id].passes]
    return {lot.job.step_of_any(check.operations) for check in failed}


def _face(lot: Lot, ask) -> Face:
    """What differs on a face: how fast the work goes, and what lies on the face."""
    stream, task = lot.stream.child(f"face {ask.about}"), lot.task
    face = lot.unit.faces.face_by_id(ask.about)
    steps = sensible_order(task, stream)
    laid, shut = steps.index(ask.step), steps.index(lot.job.step_of(face.close_operation))
    closing = round(sum(task.minutes(step) for step in steps[laid + 1 : shut + 1]), 1)
    plain = Work.of(lot.unit, {"face": face.id})
    for _ in range(TRIES):
        spare = 2 + stream.integer(5) / 2
        by_roller = stream.choice((True, False))
        needed = plain.limit_minutes - closing - spare * (1 if by_roller else -1)
        pace = Pace(
            film=round(100 * needed / plain.length_mm, 2),
            bead=round(0.15 + 0.01 * stream.integer(8), 2),
            wipe=0.4,
            close=closing,
        )
        spot = _spot(face, stream.choice(face.segments), stream.choice(("oil", "dirt")))
        made = Face(pace=pace, spots=(spot,))
        work = Work.of(lot.unit, {**to_json(made), "face": face.id})
        film = work.limit_minutes - work.minutes_taken(work.everywhere(Hand.FILM, 0.1))
        bead = work.limit_minutes - work.minutes_taken(work.everywhere(Hand.BEAD, 1.0))
        if (film > 0) == by_roller and min(abs(film), bead) >= SPARE_MIN and work.good_passes():
            return made
    raise UnitFileError(
        f"unit {lot.unit.identity.id!r} leaves no time to lay and close the film of {face.id!r}",
        mend=wanted("whole-build", "film"),
    )


def _spot(face, segment, what: str) -> Spot:
    """Oil or dirt right across the face, in the middle of a stretch."""
    line = np.asarray(segment.points)
    middle = len(line) // 2
    at, along = line[middle], line[min(middle + 1, len(line) - 1)] - line[middle - 1]
    across = np.array([-along[1], along[0]]) / np.hypot(*along) * face.film_width_mm
    ends = (at - across, at + across)
    points = tuple((round(float(x), 1), round(float(y), 1)) for x, y in ends)
    return Spot(what=what, points=points, width_mm=7.0)
