"""The right choice at each step, by the models; a check's verdict is in `right_build`."""

from __future__ import annotations

from typing import Any

from twoshaft.models import joint, shim
from twoshaft.models.fit import BOTH
from twoshaft.models.shift import lockout_moves
from twoshaft.models.tooling import pressed_bearings
from twoshaft.models.wholebuild.asks import (
    LEFT,
    MOST_ROUNDS,
    PATTERNS,
    Ask,
    asks_of,
    blocks_of,
    every_ask,
    pattern_of,
    state_after,
    treatments,
    ways_of,
)
from twoshaft.models.wholebuild.decisions import Do
from twoshaft.models.wholebuild.job import Job
from twoshaft.units.kept import kept
from twoshaft.units.unit import Unit


@kept()
def right_choice(job: Job, ask: Ask) -> dict[str, Any]:
    """A right choice, by field name; not to be changed.

    Parameters
    ----------
    job : Job
    ask : Ask
        Of any kind but ``check``: what a check shows hangs on the whole build.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> job = Job.of(unit, {"asked": ["joint-case-bolts"]})
    >>> choice = right_choice(job, asks_of(job)[0])
    >>> choice["pattern-case-bolts"], choice["rounds-case-bolts"]
    ('crosswise', '1')
    """
    return {
        "way": _right_way,
        "driver": _right_driver,
        "shim": _right_shim,
        "joint": _right_joint,
        "film": _right_film,
        "proof": _right_proof,
    }[ask.kind](job, ask)


def _right_way(job: Job, ask: Ask) -> dict[str, Any]:
    return {ask.id: next(key for key, way in ways_of(job, ask.about).items() if way is None)}


def _right_driver(job: Job, ask: Ask) -> dict[str, Any]:
    (bearing, *_) = pressed_bearings(job.unit, [ask.about])
    return {ask.id: "both" if bearing.tight == BOTH else next(iter(bearing.tight)).value}


def _right_shim(job: Job, ask: Ask) -> dict[str, Any]:
    support = job.support(ask.about)
    return {ask.id: shim.choose_for(support, job.unit.bearings, job.measured(support.id)).total}


def _right_joint(job: Job, ask: Ask) -> dict[str, Any]:
    return _right_joint_of(job.unit, ask.about) | {
        f"state-{ask.about}": right_threads(job, ask.about)
    }


def right_threads(job: Job, group: str) -> str:
    """What has to be done about the threads of a group, or their state where that is asked.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> job = Job.of(unit, {"found": {"idler-bolt": "dry"}, "threads": {"idler-bolt": "Dry"}})
    >>> right_threads(job, "idler-bolt"), right_threads(job, "case-bolts")
    ('new', 'as-delivered')
    """
    state = job.unit.fasteners.group(group).state
    if group not in job.threads:
        return state
    return LEFT if job.found_state(group) == state else treatments(job.unit)[state]


@kept()
def _right_joint_of(unit: Unit, id: str) -> dict[str, Any]:
    bolts = joint.Fastening.of(unit, id)
    values = {
        f"state-{id}": bolts.group.state,
        f"tool-{id}": bolts.group.wrench,
        f"torque-{id}": bolts.wrench.nearest_setting(bolts.setting),
    }
    if bolts.group.flange is None:
        return values
    fewest = {
        pattern: joint.rounds_needed(
            bolts.face(), pattern_of(unit, id, pattern), bolts.bounds().typical,
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


def filled(job: Job, doing: Do) -> dict[str, Any]:
    """The choices of a doing, with what the job does not leave to the builder done rightly.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> filled(Job.of(unit, {"asked": []}), Do("fit-diff-shim"))
    {'way-fit-diff-shim': 'way-1', 'shim-differential': <Quantity(1.15, 'millimeter')>}
    """
    chosen = {name: value for name, value in doing.choices.items() if value is not None}
    if not chosen:
        return dict(_left_alone(job, doing.step))
    return _with_states(job, _not_asked(job, doing.step) | chosen)


@kept()
def _left_alone(job: Job, step: str) -> dict[str, Any]:
    """The choices of a step at which the builder chooses nothing."""
    return _with_states(job, dict(_not_asked(job, step)))


def _with_states(job: Job, given: dict[str, Any]) -> dict[str, Any]:
    """Choices with the state that threads have once that was done to them."""
    for group in job.threads:
        if done := given.get(f"state-{group}"):
            given[f"state-{group}"] = state_after(job, group, done)
    return given


@kept()
def _not_asked(job: Job, step: str) -> dict[str, Any]:
    """What the job does not leave to the builder at a step, done rightly."""
    asked = {ask.id for ask in asks_of(job)}
    given: dict[str, Any] = {}
    for ask in every_ask(job):
        if ask.step == step and ask.id not in asked and ask.kind != "check":
            given |= right_choice(job, ask)
    return given
