"""What the builder decided, in turn; and the way from decisions to answers and back.

An answer's value is what its field reads: a key, a quantity, moves of the hand, passes of the film.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from typing import Any

from twoshaft.errors import OutOfRangeError
from twoshaft.models.order import new_parts, rework
from twoshaft.models.wholebuild.asks import LOG, ORDER, OUT, apart, asks_at
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

    Examples
    --------
    >>> turned = Do("fit-diff-shim", {"way-fit-diff-shim": "way-1"})
    >>> values_of(Job.of(unit), [turned])["way-fit-diff-shim"]
    'way-1'
    """

    step: str
    choices: Mapping[str, Any] = field(default_factory=dict)


@dataclass(frozen=True)
class TakeOut:
    """A step is taken apart again, with all that stands in its way.

    Examples
    --------
    >>> built(Job.of(unit), [Do("wash-housing"), Do("fit-magnet"), TakeOut("fit-magnet")])
    ('wash-housing',)
    """

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

    Examples
    --------
    >>> decisions_from(Job.of(unit), {"build-log": ["fit-magnet", "out:fit-magnet"]})
    (Do(step='fit-magnet', choices={}), TakeOut(step='fit-magnet'))
    """
    values = apart(job, values)
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

    Examples
    --------
    >>> values_of(Job.of(unit), [Do("fit-magnet"), TakeOut("fit-magnet")])
    {'build-order': (), 'build-log': ('fit-magnet', 'out:fit-magnet')}
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

    Examples
    --------
    >>> built(Job.of(unit), [Do("fit-magnet"), Do("wash-housing"), Do("fit-magnet")])
    ('fit-magnet', 'wash-housing')
    """
    return tuple(walk(job, decisions).doings)


@dataclass(frozen=True)
class Taken:
    """A step that was taken out: what came off with it, minutes to take off [min], parts lost.

    Examples
    --------
    >>> walk(Job.of(unit), [Do("fit-input-seal"), TakeOut("fit-input-seal")]).taken[0]
    Taken(step='fit-input-seal', off=('fit-input-seal',), minutes=3.0, parts=('input-seal',))
    """

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

    Examples
    --------
    >>> walked = walk(Job.of(unit), [Do("fit-magnet"), Do("fit-magnet")])
    >>> list(walked.doings), walked.repeated
    (['fit-magnet'], ['fit-magnet'])
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

    Examples
    --------
    >>> walk(Job.of(unit), [Do("wash-housing"), Do("fit-magnet")]).minutes
    13.0
    """
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
