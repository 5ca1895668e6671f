"""The bench while the build goes on: what stands, what is told before and after a step."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from twoshaft.models.faults.built import AsBuilt
from twoshaft.models.faults.by_hand import drives, proof
from twoshaft.models.faults.running import interference_mm, pull
from twoshaft.models.geartrain import count_turns
from twoshaft.models.order.snapshot import Snapshot, snapshot
from twoshaft.models.shift import hand_moves, say_felt
from twoshaft.models.wholebuild.asks import Ask, asks_at, checks_at
from twoshaft.models.wholebuild.checking import (
    Standing,
    built_so,
    judge_proof,
    outcome_of,
    standing,
)
from twoshaft.models.wholebuild.decisions import Decision, Do, walk
from twoshaft.models.wholebuild.faults import capital
from twoshaft.models.wholebuild.job import Job
from twoshaft.units.sections.faults import CordCheck, FinalCheck, FloatCheck, TurnsCheck


@dataclass(frozen=True)
class Line:
    """Something that stands on a card or is read at the bench: what, and its value in words.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import right_decisions
    >>> job = Job.of(unit, {"asked": ["shim-differential"]})
    >>> readings(job, right_decisions(job)[:26], "read-diff-float")[0]
    Line(what='Case between the ring seats (depth micrometer)', value='121.20 mm')
    """

    what: str
    value: str


@dataclass(frozen=True, eq=False)
class Bench:
    """The bench after some decisions.

    Attributes
    ----------
    job : Job
    now : Snapshot
        What stands, is ready, hidden, held, and which clocks run (``models.order.snapshot``).
    doings : dict of str to Do
        Of the steps that stand, in the order in which they were done.
    left : tuple of str
        Steps not done, in the order of the unit file.
    minutes : float
        Minutes at the bench so far, all that was done and undone [min].
    repeated : tuple of str
        Steps done again while they stood.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import right_decisions
    >>> job = Job.of(unit, {"asked": ["shim-differential"]})
    >>> bench = look(job, right_decisions(job)[:3])
    >>> list(bench.doings), len(bench.left), bench.minutes, bench.finished
    (['stone-housing-face', 'wash-housing', 'warm-housing'], 77, 43.0, False)
    """

    job: Job
    now: Snapshot
    doings: dict[str, Do]
    left: tuple[str, ...]
    minutes: float
    repeated: tuple[str, ...]

    @property
    def finished(self) -> bool:
        """Whether no step is left."""
        return not self.left


def look(job: Job, decisions: Iterable[Decision]) -> Bench:
    """Look at the bench after some decisions.

    Raises
    ------
    OutOfRangeError
        A step that the job lacks, or one taken out that does not stand.

    Examples
    --------
    >>> job = Job.of(unit)
    >>> look(job, []).minutes, look(job, [Do("fit-magnet"), Do("fit-magnet")]).repeated
    (0.0, ('fit-magnet',))
    """
    walked = walk(job, decisions)
    doings = walked.doings
    left = tuple(step for step in job.task.steps if step not in doings)
    return Bench(
        job, snapshot(job.task, doings), doings, left, walked.minutes, tuple(walked.repeated)
    )


def card(job: Job, ask: Ask) -> tuple[Line, ...]:
    """What the job card says before a decision; nothing of what is right for these parts.

    Parameters
    ----------
    job : Job
    ask : Ask

    Examples
    --------
    >>> from twoshaft.models.wholebuild import asks_at
    >>> job = Job.of(unit)
    >>> for line in card(job, asks_at(job, "tighten-idler-bolt")[0]):
    ...     print(f"{line.what}: {line.value}")
    Card: 38 N·m (36 to 40), threads: as delivered with its dry film
    Pieces: 1 of M10, class 8.8
    Threads are found: as delivered with its dry film
    """
    unit, id = job.unit, ask.about
    if ask.kind == "shim":
        support = job.support(id)
        shelf = unit.bearings.shim_set_by_id(support.shim_set)
        target = support.target
        kind = target.kind.replace("-", " ")
        sizes = ", ".join(f"{mm:.2f}" for mm in shelf.thicknesses_mm)
        most = "one shim" if shelf.at_most == 1 else f"up to {shelf.at_most} shims"
        return (
            Line("Wanted", f"{target.low_mm:g} to {target.high_mm:g} mm of {kind}"),
            Line("Rings", support.arrangement.value.replace("-", " ")),
            Line("The shim sits", support.shim_place.value.replace("-", " ")),
            Line(shelf.name, f"{sizes} mm; {most}"),
        )
    if ask.kind == "joint":
        group = unit.fasteners.group(id)
        states = {state.id: state.name for state in unit.fasteners.states}
        low, aim, high = group.torque_nm
        said = job.cards.get(
            id, f"{aim:g} N·m ({low:g} to {high:g}), threads: {states[group.state].lower()}"
        )
        lines = [
            Line("Card", said),
            Line("Pieces", f"{group.count} of {group.thread}, class {group.strength}"),
        ]
        if id not in job.threads:
            lines.append(Line("Threads are found", states[job.found_state(id)].lower()))
        adapter = next((a for a in unit.fasteners.adapters if a.id == group.adapter), None)
        if adapter is not None:
            reach = f"{adapter.reach_mm:g} mm past the square drive"
            lengths = "; ".join(f"{w.name.lower()} {w.length_mm:g} mm" for w in _wrenches(job))
            lines += [
                Line(adapter.name, f"{reach}, at {adapter.angle_deg:g}°"),
                Line("Length of the wrench, drive to grip", lengths),
            ]
        return tuple(lines)
    if ask.kind == "film":
        work = job.work(id)
        gap = max(work.gap_mm.values())
        return (
            Line("Sealant", work.sealant.name),
            Line("Open for", f"{work.limit_minutes:g} minutes"),
            Line("Largest gap of the bolted face", f"{gap:.2f} mm"),
        )
    if ask.kind == "check":
        return tuple(line for check in checks_at(job, ask.step) for line in _expected(job, check))
    return ()


def _wrenches(job: Job):
    every = job.unit.fasteners.wrenches
    return [w for w in every if job.wrenches is None or w.id in job.wrenches]


def _expected(job: Job, check: FinalCheck) -> list[Line]:
    """Figures of the sound unit that a reading is held against."""
    unit = job.unit
    if check.kind == "turns":
        meshes = {mesh.id: mesh for mesh in unit.gear_train.meshes}
        lines = []
        for gear in unit.gear_train.gears:
            trains = [meshes[one] for one in gear.engages]
            teeth = ", ".join(f"{m.driving.teeth} drives {m.driven.teeth}" for m in trains)
            lines.append(Line(gear.name, f"teeth: {teeth}"))
        if final := unit.gear_train.final_mesh:
            lines.append(Line("Final drive", f"{final.driving.teeth} drives {final.driven.teeth}"))
        return lines
    if check.kind == "cord":
        sound = pull(check, built_so(job, standing(job, {})))
        words = f"{sound.low_n:.1f} to {sound.high_n:.1f} N for the {_name(job, check.support)}"
        return [Line("Wanted on the cord", words)]
    if check.kind == "end-float":
        target = job.support(check.support).target
        words = f"{target.low_mm:g} to {target.high_mm:g} mm of {target.kind.replace('-', ' ')}"
        return [Line("Wanted", words)]
    return []


def _name(job: Job, support: str) -> str:
    return job.support(support).name.lower()


def readings(job: Job, decisions: Iterable[Decision], step: str) -> tuple[Line, ...]:
    """What is read or seen at a step that was just done; readings only, never a verdict.

    Lengths of a stack where they are measured, and what the checks of the step show on the unit
    as it stands.

    Parameters
    ----------
    job : Job
    decisions : iterable of Decision
        All up to the step, itself included.
    step : str

    Examples
    --------
    >>> from twoshaft.models.wholebuild import right_decisions
    >>> job = Job.of(unit, {"asked": []})
    >>> build = right_decisions(job)
    >>> place = [one.step for one in build].index("check-gears")
    >>> for line in readings(job, build[: place + 1], "check-gears"):
    ...     print(f"{line.what}: {line.value}")
    Goes in: second, first, fourth, third, reverse, fifth
    Stays when you let go: second, first, fourth, third, reverse, fifth
    First gear: 73.25 input turns for 5 of the wheels, the same way
    Second gear: 41.5 input turns for 5 of the wheels, the same way
    Third gear: 27.25 input turns for 5 of the wheels, the same way
    Fourth gear: 19.75 input turns for 5 of the wheels, the same way
    Fifth gear: 15.375 input turns for 5 of the wheels, the same way
    Reverse gear: 67.625 input turns for 5 of the wheels, the other way
    """
    lines = [line for id in _measured_at(job, step) for line in _lengths(job, id)]
    if checks := checks_at(job, step):
        now = standing(job, walk(job, decisions).doings)
        for check in checks:
            lines += _seen(job, check, now, step)
    return tuple(lines)


def _measured_at(job: Job, step: str) -> list[str]:
    supports = () if job.unit.bearings_if_any is None else job.unit.bearings.supports
    return [s.id for s in supports if job.step_of(s.trial_operation) == step]


def _lengths(job: Job, support: str) -> list[Line]:
    entry, read = job.support(support), job.lengths_mm.get(support, {})
    return [
        Line(f"{term.name} ({term.tool})", f"{read.get(term.id, term.nominal_mm):.2f} mm")
        for term in entry.stack
    ]


def _seen(job: Job, check: FinalCheck, now: Standing, step: str) -> list[Line]:
    built = built_so(job, now)
    if check.kind == "lockout":
        return _felt(job, now, step)
    if check.kind in ("gears-go-in", "gears-held") and built.shift_if_any is not None:
        hand = proof(built.shift)
        went = list(hand.ways_mm)
        if check.kind == "gears-go-in":
            good, bad, words = went, hand.cannot, ("goes in", "does not go in")
        else:
            good = [gear for gear in went if gear not in hand.not_held]
            bad, words = hand.not_held, ("stays when you let go", "slides out when you let go")
        lines = [Line(capital(words[0]), ", ".join(good) or "none")]
        return lines + ([Line(capital(words[1]), ", ".join(bad))] if bad else [])
    if check.kind == "turns":
        return _counted(job, check, built)
    if check.kind == "cord":
        if not _set(check, now):
            return [Line(check.name, "nothing to read yet: there is no shim in it")]
        found = pull(check, built)
        rest = f", of which the second pair took {found.alone_n:g} N alone" if found.alone_n else ""
        return [Line(check.name, f"{found.shown_n:g} N{rest}")]
    if check.kind == "end-float":
        step_mm = check.resolution_mm
        float_mm = max(0.0, -interference_mm(built, job.support(check.support)))
        return [Line(check.name, f"{round(float_mm / step_mm) * step_mm:.2f} mm")]
    outcome = outcome_of(check, built, now)
    quiet = {"leaks": "no oil comes out", "click": "it clicks before anything turns"}
    seen = quiet.get(check.kind, "nothing to be seen") if outcome.passes else outcome.sentence
    return [Line(check.name, seen)]


def _set(check: CordCheck | FloatCheck, now: Standing) -> bool:
    pairs = [check.support]
    if isinstance(check, CordCheck) and check.and_support:
        pairs.append(check.and_support)
    return all(pair in now.shims for pair in pairs)


def _felt(job: Job, now: Standing, step: str) -> list[Line]:
    labels = {move.code: move.label for move in hand_moves(job.unit.shift)}
    asks = [ask for ask in asks_at(job, step) if ask.kind == "proof"]
    lines = []
    for ask in asks:
        result = judge_proof(job, ask, now)
        for one in () if result is None else result.work:
            lines.append(Line(labels[one.code], " or ".join(say_felt(felt) for felt in one.felt)))
    return lines


def _counted(job: Job, check: TurnsCheck, built: AsBuilt) -> list[Line]:
    cannot = () if built.shift_if_any is None else proof(built.shift).cannot
    lines = []
    for gear in built.train.gears:
        if gear.id in cannot:
            lines.append(Line(gear.name, "cannot be engaged"))
        elif not drives(built, gear.id):
            lines.append(Line(gear.name, "the lever is home, and nothing turns"))
        else:
            count = count_turns(built.train, gear.id, check.output_turns, check.counted)
            way = "the same way" if count.same_way else "the other way"
            turns = f"{abs(count.seen):g} input turns for {check.output_turns:g} of the wheels"
            lines.append(Line(gear.name, f"{turns}, {way}"))
    return lines
