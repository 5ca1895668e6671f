"""What a list of decisions brings about: a record made of the models' own findings."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from twoshaft.models.faults import Outcome
from twoshaft.models.order import Event, Reason, Replay, replay
from twoshaft.models.order.snapshot import Snapshot, snapshot
from twoshaft.models.wholebuild.asks import asks_of
from twoshaft.models.wholebuild.checking import (
    CheckResult,
    ProofResult,
    Standing,
    WayResult,
    built_so,
    judge_check,
    judge_proof,
    judge_way,
    outcome_of,
    standing,
)
from twoshaft.models.wholebuild.decisions import Decision, Do, Taken, Walk, walk
from twoshaft.models.wholebuild.drivers import DriverResult, judge_driver
from twoshaft.models.wholebuild.faults import Fault, sentence
from twoshaft.models.wholebuild.films import FilmResult
from twoshaft.models.wholebuild.job import Job
from twoshaft.models.wholebuild.joints import JointResult, locked_fault
from twoshaft.models.wholebuild.settings import ShimResult
from twoshaft.units.sections.faults import FinalCheck


@dataclass(frozen=True, eq=False)
class Record:
    """A build and all that its decisions brought about.

    Attributes
    ----------
    job : Job
    decisions : tuple of Decision
    steps : tuple of str
        Steps that stand, in the order in which they were done.
    over : bool
        Whether the builder has put the tools down: only then what is missing counts.
    order : Replay or None
        The order of work built step by step (``models.order.replay``); None while it goes on.
    bench : Snapshot
        The bench as it stands (``models.order.snapshot``).
    taken : tuple of Taken
        What was taken out again.
    shims, joints, films, ways, drivers, proofs, checks : tuple
        Results of the decisions on steps that stand.
    shown : tuple of (FinalCheck, Outcome)
        What every check of the faults section shows on the finished unit; empty while it goes on.
    faults : tuple of Fault
        All that is wrong, in the order of the steps; nothing after a right build.
    minutes : float
        Minutes at the bench in all, with what must be done again [min].
    parts_lost : tuple of str
        Parts that did not survive.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import right_decisions
    >>> job = Job.of(unit, {"asked": ["shim-differential"]})
    >>> record = consequences(job, right_decisions(job))
    >>> record.minutes, record.parts_lost, record.faults, record.shims[0].verdict
    (345.5, (), (), 'safe')
    """

    job: Job
    decisions: tuple[Decision, ...]
    steps: tuple[str, ...]
    over: bool
    order: Replay | None
    bench: Snapshot
    taken: tuple[Taken, ...]
    shims: tuple[ShimResult, ...]
    joints: tuple[JointResult, ...]
    films: tuple[FilmResult, ...]
    ways: tuple[WayResult, ...]
    drivers: tuple[DriverResult, ...]
    proofs: tuple[ProofResult, ...]
    checks: tuple[CheckResult, ...]
    shown: tuple[tuple[FinalCheck, Outcome], ...]
    faults: tuple[Fault, ...]
    minutes: float
    parts_lost: tuple[str, ...]


def consequences(job: Job, decisions: Iterable[Decision], *, over: bool = True) -> Record:
    """Work out what a list of decisions brings about; every finding is a model's.

    Parameters
    ----------
    job : Job
    decisions : iterable of Decision
        In the order in which they were taken.
    over : bool
        Whether the build is over. If not, what has not been done yet is no fault, and the order
        is judged by the bench as it stands.

    Returns
    -------
    Record

    Raises
    ------
    OutOfRangeError
        A step that the job lacks, one taken out that does not stand, a figure outside its model.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import right_decisions
    >>> job = Job.of(unit, {"asked": ["shim-differential"]})
    >>> build = [one for one in right_decisions(job) if one.step != "fit-magnet"]
    >>> fault = consequences(job, build).faults[0]
    >>> fault.kind, fault.about, fault.minutes
    ('buried', 'magnet-under-ring-gear', 44.5)
    """
    decisions = tuple(decisions)
    walked = walk(job, decisions)
    steps = tuple(walked.doings)
    now = standing(job, walked.doings)
    played = replay(job.task, _submitted(job, decisions, walked)) if over else None
    bench = snapshot(job.task, steps)
    ways, drivers, proofs, checks, faults = [], [], [], [], []
    for ask in asks_of(job):
        if ask.step not in now.doings:
            continue
        # What a check shows is weighed after it was made, so it may wait while the build goes on.
        if (over or ask.kind != "check") and (missing := _undecided(ask, now)):
            faults.append(missing)
        if ask.kind == "way" and ask.about in now.ways:
            ways.append(judge_way(job, ask, now.ways[ask.about], steps))
            faults.append(ways[-1].fault(job))
        elif ask.kind == "driver":
            driver = judge_driver(job, ask, now.values[ask.step], steps)
            drivers += [driver] if driver is not None else []
        elif ask.kind in ("proof", "check"):
            then = _as_it_stood(job, decisions, ask.step)
            if ask.kind == "check":
                checks.append(judge_check(job, ask, then))
                faults += checks[-1].faults
            elif proof := judge_proof(job, ask, then):
                proofs.append(proof)
                faults += proof.faults
    dented = [one.fault(job) for one in drivers if one.dented]
    faults += dented
    faults += [fault for one in now.shims.values() for fault in one.faults]
    faults += [fault for one in now.joints.values() for fault in one.faults]
    faults += [fault for one in now.films.values() for fault in one.faults]
    faults += _locked(job, now)
    faults += _order_faults(job, played, bench, walked)
    place: dict[str | None, int] = {step: k for k, step in enumerate(steps)}
    faults.sort(key=lambda fault: place.get(fault.step, len(place)))
    extra = 0.0 if played is None else played.minutes_extra
    lost = [part for one in walked.taken for part in one.parts]
    lost += [part for fault in dented for part in fault.parts]
    lost += bench.parts_lost if played is None else played.parts_lost
    return Record(
        job=job,
        decisions=decisions,
        steps=steps,
        over=over,
        order=played,
        bench=bench,
        taken=tuple(walked.taken),
        shims=tuple(now.shims.values()),
        joints=tuple(now.joints.values()),
        films=tuple(now.films.values()),
        ways=tuple(ways),
        drivers=tuple(drivers),
        proofs=tuple(proofs),
        checks=tuple(checks),
        shown=_final(job, now) if over else (),
        faults=tuple(faults),
        minutes=walked.minutes + extra,
        parts_lost=tuple(dict.fromkeys(lost)),
    )


def _submitted(job: Job, decisions: tuple[Decision, ...], walked: Walk) -> list[str]:
    """The order that is replayed: the steps that stand, with those done twice at both places."""
    if not walked.repeated:
        return list(walked.doings)
    steps: list[str] = []
    for k, one in enumerate(decisions):
        if isinstance(one, Do):
            steps.append(one.step)
        else:
            standing_then = walk(job, decisions[: k + 1]).doings
            steps = [step for step in steps if step in standing_then]
    return steps


def _as_it_stood(job: Job, decisions: tuple[Decision, ...], step: str) -> Standing:
    """The bench when a step that still stands was done."""
    place = 0
    doings: set[str] = set()
    for k, one in enumerate(decisions):
        if isinstance(one, Do):
            if one.step == step and step not in doings:
                place = k
            doings.add(one.step)
        else:
            doings = set(walk(job, decisions[: k + 1]).doings)
    return standing(job, walk(job, decisions[: place + 1]).doings)


def _undecided(ask, now: Standing) -> Fault | None:
    values = now.values[ask.step]
    if all(values.get(spec.name) not in (None, (), []) for spec in ask.fields):
        return None
    return Fault("undecided", ask.step, ask.id, f"{ask.name}: it was done without deciding all.")


def _locked(job: Job, now: Standing) -> list[Fault]:
    found: list[Fault] = []
    for id, result in now.joints.items():
        film = now.films.get(job.unit.fasteners.group(id).face or "")
        if film is not None:
            seal = film.closed.seal
            holes = [hole.id for hole in film.closed.work.face.holes if hole.blind]
            volumes = {hole: seal.in_hole(hole).m_as("mm**3") for hole in holes}
            found += locked_fault(job, result, volumes)
    return found


def _final(job: Job, now: Standing) -> tuple[tuple[FinalCheck, Outcome], ...]:
    if job.unit.faults_if_any is None:
        return ()
    built = built_so(job, now)
    return tuple((check, outcome_of(check, built, now)) for check in job.unit.faults.checks)


def _order_faults(job: Job, played: Replay | None, bench: Snapshot, walked: Walk) -> list[Fault]:
    if played is not None:
        return [_event_fault(job, event) for event in played.events]
    task, found = job.task, []
    for one in bench.refused:
        for reason in one.reasons:
            words = _reason_words(job, one.state, reason)
            found.append(Fault(one.state, one.step, reason.rules[0], words, reason.safety))
    lost = {step for step, _ in bench.lost_reach}
    for reason in bench.broken:
        state = _STATE_OF[reason.kind.value]
        if state == "buried" and not lost & set(reason.earlier):
            continue
        words = _reason_words(job, state, reason)
        found.append(
            Fault(state, reason.later, reason.rules[0], words, reason.safety, parts=reason.loses)
        )
    for clock in bench.clocks:
        if clock.late:
            entry = next(c for c in task.clocks if c.id == clock.id)
            words = f"{clock.name}: {clock.used:g} of {clock.allowed:g} minutes went by. "
            words += sentence(entry.text)
            end = task.steps[entry.ends]
            found.append(
                Fault("late", end, clock.id, words, entry.reason.safety, parts=entry.loses)
            )
    for step in walked.repeated:
        words = f"“{task.label(step)}” was done a second time, for nothing."
        found.append(Fault("repeated", step, step, words, minutes=task.minutes(step)))
    return found


_STATE_OF = {"cannot": "blocked", "buries": "buried", "harms": "harmed", "blinds": "blinded"}
_WORDS = {
    "blocked": "it cannot be done yet",
    "buried": "it puts another step out of reach",
    "harmed": "it does harm",
    "blinded": "it makes a check worthless",
}


def _reason_words(job: Job, state: str, reason: Reason) -> str:
    task = job.task
    if state == "buried" and reason.earlier:
        first = f"“{task.label(reason.earlier[0])}” can no longer be reached"
        return f"{first} under “{task.label(reason.later)}”. {sentence(reason.text)}"
    words = f"“{task.label(reason.later)}”: {_WORDS[state]}"
    if reason.earlier:
        names = " or ".join(f"“{task.label(step)}”" for step in reason.earlier)
        words += f", {names} comes first"
    return f"{words}. {sentence(reason.text)}"


def _event_fault(job: Job, event: Event) -> Fault:
    task = job.task
    known = [f"“{task.label(step)}”" for step in event.steps if step in task.number]
    names = ", ".join(known[:3]) + (f" and {len(known) - 3} more" if len(known) > 3 else "")
    at = "at the end" if event.at is None else f"at “{task.label(event.at)}”"
    says = {
        "blocked": f"it goes no further {at} without {names}",
        "buried": f"{names} is missing {at} and has been built over",
        "harmed": f"harm is done {at}",
        "blinded": f"a check is worthless {at}",
        "late": f"too late {at}",
        "missing": f"{names} is missing {at}",
        "repeated": f"{names} was done a second time, for nothing",
        "foreign": "a step that does not belong to this build",
    }[event.state]
    reasons = " ".join(sentence(text) for text in dict.fromkeys(r.text for r in event.reasons))
    about = event.clock or (event.reasons[0].rules[0] if event.reasons else event.state)
    safety = any(reason.safety for reason in event.reasons)
    words = f"{sentence(says)} {reasons}".strip()
    return Fault(event.state, event.at, about, words, safety, event.minutes, event.parts)
