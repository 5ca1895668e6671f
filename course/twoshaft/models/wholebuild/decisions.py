"""What the builder decided, in turn; and the way from decisions to answers and back.

An answer's value is what its field reads: a key, a quantity, moves of the hand, passes of the film.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any

from twoshaft.errors import OutOfRangeError
from twoshaft.models import joint, shim
from twoshaft.models.order import model_order
from twoshaft.models.shift.handtest import lockout_moves
from twoshaft.models.wholebuild.asks import (
    GO_ON,
    LOG,
    MOST_ROUNDS,
    OPEN,
    ORDER,
    OUT,
    PATTERNS,
    Ask,
    asks_at,
    asks_of,
    blocks_of,
    every_ask,
    pattern_order,
    ways_of,
)
from twoshaft.models.wholebuild.job import Job


@dataclass(frozen=True)
class Do:
    """A step is done.

    Attributes
    ----------
    step : str
    choices : mapping
        What was decided with it, by field name (see ``asks_at``); a field left out, or None, was
        not decided. Keys of choices as text, settings and shims as quantities, the proof as a
        tuple of move codes, the film as a tuple of passes.
    """

    step: str
    choices: Mapping[str, Any] = field(default_factory=dict)


@dataclass(frozen=True)
class TakeOut:
    """A step is taken apart again, with all that stands in its way."""

    step: str


Decision = Do | TakeOut


def decisions_from(job: Job, values: Mapping[str, Any]) -> tuple[Decision, ...]:
    """The decisions that a sheet's answers hold.

    Parameters
    ----------
    job : Job
    values : mapping
        Values by field name, as the fields read them; fields without an answer left out or None.
        The log tells what was done in turn; without one the order does. A step that is no step
        of the job is left out.

    Returns
    -------
    tuple of Decision
        Of a step that was done, taken out and done again, every doing carries the last choices.
    """
    log = values.get(LOG) or values.get(ORDER) or ()
    made: list[Decision] = []
    for code in log:
        out = code.startswith(OUT)
        step = job.step_of(code.removeprefix(OUT))
        if step is None:
            continue
        made.append(TakeOut(step) if out else Do(step, _choices(job, step, values)))
    return tuple(made)


def _choices(job: Job, step: str, values: Mapping[str, Any]) -> dict[str, Any]:
    names = (spec.name for ask in asks_at(job, step) for spec in ask.fields)
    return {name: values[name] for name in names if values.get(name) is not None}


def values_of(job: Job, decisions: Iterable[Decision]) -> dict[str, Any]:
    """The answers that hold some decisions: the way back of ``decisions_from``.

    Parameters
    ----------
    job : Job
    decisions : iterable of Decision

    Returns
    -------
    dict of str to object
        By field name; the choices of a step are those of its last doing.
    """
    decisions = tuple(decisions)
    values: dict[str, Any] = {
        ORDER: built(job, decisions),
        LOG: tuple(f"{OUT}{d.step}" if isinstance(d, TakeOut) else d.step for d in decisions),
    }
    for one in decisions:
        if isinstance(one, Do):
            values |= one.choices
    return values


def built(job: Job, decisions: Iterable[Decision]) -> tuple[str, ...]:
    """Steps that stand at the end, in the order in which they were done.

    What stands in the way of a step that is taken out comes off with it. A step done again while
    it stands stays where it was first done.
    """
    return tuple(walk(job, decisions).doings)


@dataclass(frozen=True)
class Taken:
    """A step that was taken out: what came off with it, minutes to take off [min], parts lost."""

    step: str
    off: tuple[str, ...]
    minutes: float
    parts: tuple[str, ...]


@dataclass
class Walk:
    """What decisions come to.

    Attributes
    ----------
    doings : dict of str to Do
        Of the steps that stand, in the order in which they were done.
    taken : list of Taken
    minutes : float
        Minutes at the bench so far, all that was done and undone [min].
    repeated : list of str
        Steps done again while they stood.
    """

    doings: dict[str, Do] = field(default_factory=dict)
    taken: list[Taken] = field(default_factory=list)
    minutes: float = 0.0
    repeated: list[str] = field(default_factory=list)


def walk(job: Job, decisions: Iterable[Decision]) -> Walk:
    """Go through decisions one by one.

    Raises
    ------
    OutOfRangeError
        A step that the job does not have, or one taken out that does not stand.
    """
    from twoshaft.models.order import new_parts, rework

    task, found = job.task, Walk()
    for one in decisions:
        if one.step not in task.number:
            raise OutOfRangeError("step", one.step, "the steps of the build", "the unit file")
        if isinstance(one, Do):
            found.minutes += task.minutes(one.step)
            if one.step in found.doings:
                found.repeated.append(one.step)
            else:
                found.doings[one.step] = one
            continue
        if one.step not in found.doings:
            raise OutOfRangeError("step taken out", one.step, "the steps done", "the bench")
        off = (*rework(task, found.doings, one.step).off, one.step)
        minutes = sum(task.minutes_undo[task.number[step]] for step in off)
        found.minutes += minutes
        found.taken.append(Taken(one.step, off, minutes, new_parts(task, off)))
        for step in off:
            del found.doings[step]
    return found


def right_values(job: Job, ask: Ask) -> dict[str, Any]:
    """A right decision, worked out by the models: values by field name.

    For a shim the one that ``shim.choose_for`` takes, for a joint the group's own wrench, state
    and setting with the first sequence and the fewest rounds that make the clamp even enough, for
    a film ``Work.good_passes``, for the proof ``lockout_moves``; of a check it is what the unit,
    built rightly with the parts of this job, shows.

    Parameters
    ----------
    job : Job
    ask : Ask
    """
    return dict(_right(job, ask))


@lru_cache(maxsize=2048)
def _right(job: Job, ask: Ask) -> dict[str, Any]:
    return {
        "way": _right_way,
        "shim": _right_shim,
        "joint": _right_joint,
        "film": _right_film,
        "proof": _right_proof,
        "check": _right_check,
    }[ask.kind](job, ask)


def _right_way(job: Job, ask: Ask) -> dict[str, Any]:
    return {ask.id: next(key for key, way in ways_of(job, ask.about).items() if way is None)}


def _right_shim(job: Job, ask: Ask) -> dict[str, Any]:
    support = job.support(ask.about)
    return {ask.id: shim.choose_for(support, job.unit.bearings, job.measured(support.id)).total}


def _right_joint(job: Job, ask: Ask) -> dict[str, Any]:
    bolts = joint.Fastening.of(job.unit, ask.about)
    id = ask.about
    values = {
        f"state-{id}": bolts.group.state,
        f"tool-{id}": bolts.group.wrench,
        f"torque-{id}": bolts.wrench.nearest_setting(bolts.setting),
    }
    if bolts.group.flange is None:
        return values
    fewest = {
        pattern: joint.rounds_needed(
            bolts.face(), pattern_order(job, id, pattern), bolts.bounds().typical,
            bolts.group.spread, MOST_ROUNDS,
        )
        for pattern in PATTERNS
    }  # fmt: skip
    good = {pattern: rounds for pattern, rounds in fewest.items() if rounds is not None}
    if not good:
        return values
    pattern = min(good, key=lambda one: (good[one], one != "crosswise"))
    return values | {f"pattern-{id}": pattern, f"rounds-{id}": str(good[pattern])}


def _right_film(job: Job, ask: Ask) -> dict[str, Any]:
    passes = job.work(ask.about).good_passes()
    return {} if passes is None else {ask.id: passes}


def _right_proof(job: Job, ask: Ask) -> dict[str, Any]:
    block = blocks_of(job)[ask.about]
    return {ask.id: lockout_moves(job.unit.shift, block.earlier, block.later)}


def _right_check(job: Job, ask: Ask) -> dict[str, Any]:
    from twoshaft.models.wholebuild.checking import outcomes_at

    plain = _unchecked(job)
    place = next(k for k, one in enumerate(plain) if one.step == ask.step)
    shown = outcomes_at(job, plain[: place + 1], ask.step)
    return {f"verdict-{ask.step}": GO_ON if all(one.passes for one in shown) else OPEN}


@lru_cache(maxsize=64)
def _unchecked(job: Job) -> tuple[Do, ...]:
    return right_decisions(job, checks=False)


def right_decisions(
    job: Job, order: Sequence[str] | None = None, *, checks: bool = True
) -> tuple[Do, ...]:
    """A right build from beginning to end.

    Parameters
    ----------
    job : Job
    order : sequence of str, optional
        Steps in a correct order; the model order if absent.
    checks : bool
        Whether what to do after each check is decided as well.
    """
    steps = model_order(job.task) if order is None else order
    asks = [ask for ask in asks_of(job) if checks or ask.kind != "check"]
    choices: dict[str, dict[str, Any]] = {step: {} for step in steps}
    for ask in asks:
        if ask.step in choices:
            choices[ask.step] |= right_values(job, ask)
    return tuple(Do(step, choices[step]) for step in steps)


def filled(job: Job, doing: Do) -> dict[str, Any]:
    """The choices of a doing, with what the job does not leave to the builder done rightly."""
    asked = {ask.id for ask in asks_of(job)}
    given: dict[str, Any] = {}
    for ask in every_ask(job):
        if ask.step == doing.step and ask.id not in asked and ask.kind != "check":
            given |= right_values(job, ask)
    return given | {name: value for name, value in doing.choices.items() if value is not None}
