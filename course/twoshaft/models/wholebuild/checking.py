"""The unit as it was built so far, and what its checks then show: by the models of faults."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace

from twoshaft.models.faults import AsBuilt, Outcome, Sign, as_built, run_check
from twoshaft.models.faults.built import exclude
from twoshaft.models.fit import SealFault, SealFitted, Side, seal_faults, seal_of
from twoshaft.models.order import new_parts, rework
from twoshaft.models.shift import (
    Mechanism,
    follow,
    lockout_reading,
    mechanism,
    opening,
    prove_by_hand,
    say_opening,
)
from twoshaft.models.shift.handwork import Done
from twoshaft.models.wholebuild.asks import (
    GO_ON,
    OPEN,
    Ask,
    blocks_of,
    checks_at,
    every_ask,
    way_words,
    ways_of,
)
from twoshaft.models.wholebuild.decisions import Decision, Do, walk
from twoshaft.models.wholebuild.faults import Fault, sentence
from twoshaft.models.wholebuild.films import FilmResult, judge_film
from twoshaft.models.wholebuild.job import Job
from twoshaft.models.wholebuild.joints import JointResult, judge_joint
from twoshaft.models.wholebuild.right import filled
from twoshaft.models.wholebuild.settings import ShimResult, judge_shim, shim_change_mm
from twoshaft.units.sections.faults import BoltChange, FinalCheck, Misbuild, SettingChange
from twoshaft.units.sections.order import WrongWay

_MOST_SHARE = 5.0
_FARTHEST_MM = 1.0


@dataclass(frozen=True, eq=False)
class Standing:
    """What stands on the bench, judged decision by decision.

    Attributes
    ----------
    doings : dict of str to Do
        Of the steps that stand, in the order in which they were done.
    values : dict of str to dict
        Values by step and field, with what the job does not leave to the builder.
    shims, joints, films : dict
        Results by support, group and face, of what was decided and done.
    ways : dict of str to WrongWay
        Wrong ways round, by operation.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> job = Job.of(unit)
    >>> wrong = next(key for key, way in ways_of(job, "fit-input-seal").items() if way)
    >>> doings = {"fit-input-seal": Do("fit-input-seal", {"way-fit-input-seal": wrong})}
    >>> list(standing(job, doings).ways)
    ['fit-input-seal']
    """

    doings: Mapping[str, Do]
    values: Mapping[str, Mapping]
    shims: Mapping[str, ShimResult]
    joints: Mapping[str, JointResult]
    films: Mapping[str, FilmResult]
    ways: Mapping[str, WrongWay]


def standing(job: Job, doings: Mapping[str, Do], *, films: bool = True) -> Standing:
    """Judge every decision of the steps that stand.

    Parameters
    ----------
    job : Job
    doings : mapping of str to Do
    films : bool
        Close the faces too, which takes longest; without, no face counts as coated.

    Raises
    ------
    OutOfRangeError
        For a figure outside its model.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> choices = {"shim-differential": Q(1.2, "mm")}
    >>> now = standing(Job.of(unit), {"fit-diff-shim": Do("fit-diff-shim", choices)})
    >>> now.shims["differential"].verdict
    'meets'
    """
    values = {step: filled(job, doing) for step, doing in doings.items()}
    shims, joints, ways, coated = {}, {}, {}, {}
    asks = [ask for ask in every_ask(job) if ask.step in doings]
    for ask in asks:
        mine = values[ask.step]
        if ask.kind == "way" and (way := ways_of(job, ask.about).get(mine.get(ask.id, ""))):
            ways[ask.about] = way
        elif ask.kind == "shim" and (shim := judge_shim(job, ask, mine)):
            shims[ask.about] = shim
        elif ask.kind == "joint" and (joint := judge_joint(job, ask, mine)):
            joints[ask.about] = joint
    for ask in asks:
        if films and ask.kind == "film":
            film = _film(job, ask, values, list(doings), joints)
            if film:
                coated[ask.about] = film
    return Standing(doings, values, shims, joints, coated, ways)


def _film(job: Job, ask: Ask, values, steps: Sequence[str], joints) -> FilmResult | None:
    """The face on the build's own clock; None until it is closed on a film."""
    passes, face = values[ask.step].get(ask.id), job.unit.faces.face_by_id(ask.about)
    closing = job.step_of(face.close_operation)
    if passes is None or closing not in steps:
        return None
    laid, shut = steps.index(ask.step), steps.index(closing)
    if shut <= laid:
        return None
    waited = sum(job.task.minutes(step) for step in steps[laid + 1 : shut + 1])
    return judge_film(job, ask, passes, waited, _clamps_n(job, face, joints))


def _clamps_n(job: Job, face, joints: Mapping[str, JointResult]) -> dict[str, float] | None:
    holes = [hole.id for hole in face.holes if hole.clamp_n > 0]
    for id, done in joints.items():
        if job.unit.fasteners.group(id).face == face.id and done.kept_n is not None:
            return dict(zip(holes, (float(n) for n in done.kept_n), strict=True))
    return None


def built_so(job: Job, now: Standing) -> AsBuilt:
    """The unit as the decisions have built it: the inputs of the models behind the checks.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, right_decisions
    >>> job = Job.of(unit, {"asked": [], "worn": ["finger-peg-worn"]})
    >>> now = standing(job, {one.step: one for one in right_decisions(job)})
    >>> built_so(job, now).shift == unit.shift, sorted(built_so(job, now).left_out)
    (False, [])
    """
    unit = job.unit
    wrong = list(job.worn_misbuilds)
    for way in now.ways.values():
        if way.misbuild is not None:
            one = unit.faults.misbuild_by_id(way.misbuild)
            if not any(exclude(unit, one, other) for other in wrong):
                wrong.append(one)
    base = (
        as_built(unit, wrong) if wrong else AsBuilt(unit, unit.shift_if_any, unit.gear_train_if_any)
    )
    left = {
        operation
        for step, members in job.members.items()
        if step not in now.doings
        for operation in members
    }
    return replace(
        base,
        settings=(*base.settings, *_settings(job, now)),
        bolts=(*base.bolts, *_bolts(job, now)),
        left_out=base.left_out | left,
    )


def _settings(job: Job, now: Standing) -> Iterable[SettingChange]:
    for support, result in now.shims.items():
        off = max(-_FARTHEST_MM, min(_FARTHEST_MM, shim_change_mm(job, result)))
        if off:
            yield SettingChange(kind="setting", support=support, shim_mm=off)


def _bolts(job: Job, now: Standing) -> Iterable[BoltChange]:
    for group, done in now.joints.items():
        entry = job.unit.fasteners.group(group)
        if done.state != entry.state:
            yield BoltChange(kind="bolts", group=group, state=done.state)
        if done.torque is not None:
            share = min(_MOST_SHARE, done.torque.m_as("N*m") / entry.torque_nm[1])
            yield BoltChange(kind="bolts", group=group, torque_share=share)


def outcome_of(check: FinalCheck, built: AsBuilt, now: Standing) -> Outcome:
    """What a check shows; a face that was coated leaks where its own film lets it.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, right_decisions
    >>> job = Job.of(unit, {"asked": [], "worn": ["finger-peg-worn"]})
    >>> now = standing(job, {one.step: one for one in right_decisions(job)})
    >>> outcome_of(unit.faults.check_by_id("try-gears"), built_so(job, now), now).sentence
    'Reverse cannot be engaged.'
    """
    if check.kind != "leaks":
        return run_check(check, built)
    rest = check.model_copy(update={"faces": tuple(f for f in check.faces if f not in now.films)})
    signs = list(run_check(rest, built).signs)
    for id in check.faces:
        film = now.films.get(id)
        if film is None:
            continue
        for place, _ in film.closed.leaks:
            face = film.closed.work.face
            name = next(s.name for s in face.segments if s.id == place)
            where = f"{face.name[:1].lower()}{face.name[1:]}, {name.lower()}"
            signs.append(Sign(f"oil-{id}-{place}", f"oil comes out at the {where}"))
    return Outcome.of(*signs)


def outcomes_at(job: Job, decisions: Iterable[Decision], step: str) -> tuple[Outcome, ...]:
    """What the checks of a step show on the unit as it then stands.

    Parameters
    ----------
    job : Job
    decisions : iterable of Decision
        All up to the step, itself included.
    step : str

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, right_decisions
    >>> job = Job.of(unit, {"asked": [], "worn": ["finger-peg-worn"]})
    >>> [one.sentence for one in outcomes_at(job, right_decisions(job), "check-gears")]
    ['Reverse cannot be engaged.', 'As it should be.', 'Reverse cannot be counted.']
    """
    checks = checks_at(job, step)
    films = any(check.kind == "leaks" for check in checks)
    now = standing(job, walk(job, decisions).doings, films=films)
    built = built_so(job, now)
    return tuple(outcome_of(check, built, now) for check in checks)


@dataclass(frozen=True)
class WayResult:
    """Parts that went in the wrong way round.

    Attributes
    ----------
    ask : Ask
    way : WrongWay
    shows : tuple of (FinalCheck, Outcome)
        Final checks that it fails, where a misbuild is named.
    seal : tuple of SealFault
        What the seal model says, where a seal is named.
    minutes : float
        Minutes to turn it round at the end of the build [min].
    off : tuple of str
        Steps that come off for that.
    parts : tuple of str
        Parts that must then be new.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, asks_at
    >>> job = Job.of(unit)
    >>> ask = asks_at(job, "fit-input-seal")[0]
    >>> way = next(way for way in ways_of(job, ask.about).values() if way)
    >>> result = judge_way(job, ask, way, ["fit-input-seal"])
    >>> result.minutes, result.off, result.parts
    (6.0, (), ('input-seal',))
    """

    ask: Ask
    way: WrongWay
    shows: tuple[tuple[FinalCheck, Outcome], ...]
    seal: tuple[SealFault, ...]
    minutes: float
    off: tuple[str, ...]
    parts: tuple[str, ...]

    def fault(self, job: Job) -> Fault:
        """The same as a fault."""
        says = f"“{self.way.name.rstrip('.')}” is the wrong way round; "
        says += f"right is “{way_words(job, self.ask.about, None)}”. "
        if self.shows:
            check, outcome = self.shows[0]
            says += f"“{check.name}” shows it: {outcome.sentence} "
        elif self.seal:
            says += sentence(f"{self.seal[0].what}: {self.seal[0].consequence}") + " "
        else:
            says += "No check at the end shows it; only the mark does. "
        others = f"{len(self.off)} other step{'' if len(self.off) == 1 else 's'}"
        says += f"To turn it round costs {self.minutes:g} minutes and takes {others} off."
        says = says.replace("takes 0 other steps off", "takes nothing else off")
        step, id = self.ask.step, self.ask.id
        return Fault("way", step, id, says, minutes=self.minutes, parts=self.parts)


def judge_way(job: Job, ask: Ask, way: WrongWay, steps: Sequence[str]) -> WayResult:
    """What a wrong way round brings about, and what it costs to turn it round.

    Parameters
    ----------
    job : Job
    ask : Ask
        Of kind ``way``.
    way : WrongWay
    steps : sequence of str
        Steps that stand.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, asks_at
    >>> job = Job.of(unit)
    >>> ask = asks_at(job, "fit-input-seal")[0]
    >>> way = next(way for way in ways_of(job, ask.about).values() if way)
    >>> [fault.what for fault in judge_way(job, ask, way, job.task.steps).seal]
    ['the lip looks towards the air, not the oil']
    """
    task = job.task
    work = rework(task, steps, ask.step)
    number = task.number[ask.step]
    minutes = work.minutes + task.minutes_undo[number] + task.minutes_do[number]
    shows = (
        () if way.misbuild is None else _shown(job, job.unit.faults.misbuild_by_id(way.misbuild))
    )
    seal = () if way.seal is None else _lip_away(job, way.seal)
    parts = new_parts(task, (*work.off, ask.step))
    return WayResult(ask, way, shows, seal, minutes, work.off, parts)


def _shown(job: Job, misbuild: Misbuild) -> tuple[tuple[FinalCheck, Outcome], ...]:
    built = as_built(job.unit, [misbuild])
    shown = ((check, run_check(check, built)) for check in job.unit.faults.checks)
    return tuple(pair for pair in shown if not pair[1].passes)


def _lip_away(job: Job, seal: str) -> tuple[SealFault, ...]:
    rule = seal_of(job.unit, seal)
    away = Side.AIR if rule.lip_towards is Side.OIL else Side.OIL
    depth = sum(rule.depth_m) / 2
    return seal_faults(rule, SealFitted(away, (depth,) * 4, greased=True, sleeve_used=True))


@dataclass(frozen=True, eq=False)
class ProofResult:
    """What the moves of the hand showed.

    Attributes
    ----------
    ask : Ask
    moves : tuple of str
    work : tuple of Done
        What was felt, on the mechanism as it was built.
    reading : str
        ``proven``, ``fails``, ``half``, ``no-gear`` or ``not tried``, as ``lockout_reading``.
    truth : str
        What a full hand test finds of this lockout: ``holds``, ``fails``, ``unreliable`` or
        ``not tried``.
    opened : str
        What lets the later gear in, in words.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, consequences, right_decisions
    >>> job = Job.of(unit, {"asked": ["proof-fifth-reverse"]})
    >>> result = consequences(job, right_decisions(job)).proofs[0]
    >>> result.reading, result.truth, result.faults
    ('proven', 'holds', ())
    """

    ask: Ask
    moves: tuple[str, ...]
    work: tuple[Done, ...]
    reading: str
    truth: str
    opened: str

    @property
    def faults(self) -> tuple[Fault, ...]:
        """Moves that prove nothing, and a lockout that does not hold."""
        step, id, found = self.ask.step, self.ask.id, []
        says = {
            "not tried": "the direct shift was not tried, so nothing is proven",
            "half": f"it was stopped, but nobody showed that the later gear goes in {self.opened}; "
            "a stop that never lets go proves nothing",
            "no-gear": "the later gear does not go in at all, so the stop shows nothing",
        }
        if self.reading in says:
            words = f"{self.ask.name}: {says[self.reading]}."
            found.append(Fault("proof", step, id, words, safety=True))
        holds = {
            "fails": "the direct shift is not stopped",
            "unreliable": "the direct shift is stopped only sometimes",
            "not tried": "the earlier gear does not go in, so the lockout cannot be proven",
        }
        if self.truth in holds:
            words = f"{self.ask.name}: {holds[self.truth]}."
            found.append(Fault("lockout", step, id, words, safety=True))
        return tuple(found)


def machine_of(job: Job, now: Standing) -> Mechanism:
    """The shift mechanism as it was built.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> job = Job.of(unit, {"worn": ["finger-peg-worn"]})
    >>> prove_by_hand(machine_of(job, standing(job, {}))).cannot
    ('reverse',)
    """
    return mechanism(built_so(job, now).shift)


def judge_proof(job: Job, ask: Ask, now: Standing) -> ProofResult | None:
    """Follow the moves on the mechanism as it was built; None where none were made.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, asks_of, right_decisions
    >>> job = Job.of(unit, {"asked": ["proof-fifth-reverse"]})
    >>> now = standing(job, {one.step: one for one in right_decisions(job)})
    >>> judge_proof(job, asks_of(job)[0], now).reading
    'proven'
    """
    moves = now.values[ask.step].get(ask.id)
    if not moves:
        return None
    block, machine = blocks_of(job)[ask.about], machine_of(job, now)
    work = follow(machine, tuple(moves))
    locks = prove_by_hand(machine).locks
    truth = next(k.verdict for k in locks if (k.earlier, k.later) == (block.earlier, block.later))
    reading = lockout_reading(job.unit.shift, work, block.earlier, block.later)
    leaves = opening(job.unit.shift, block.earlier, block.later) == "leave"
    opened = (
        "after leaving the gate plane"
        if leaves
        else say_opening(job.unit.shift, block.earlier, block.later)
    )
    return ProofResult(ask, tuple(moves), work, reading, truth, opened)


@dataclass(frozen=True)
class CheckResult:
    """A check of the unit, when it was made.

    Attributes
    ----------
    ask : Ask
    outcomes : tuple of (FinalCheck, Outcome)
    answer : str or None
        What the builder made of it.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, consequences, right_decisions
    >>> job = Job.of(unit, {"asked": ["check-check-gears"]})
    >>> result = consequences(job, right_decisions(job)).checks[0]
    >>> result.ask.about, result.answer, result.passes
    ('check-gears', 'go-on', True)
    """

    ask: Ask
    outcomes: tuple[tuple[FinalCheck, Outcome], ...]
    answer: str | None

    @property
    def passes(self) -> bool:
        """Whether everything was as it should be."""
        return all(outcome.passes for _, outcome in self.outcomes)

    @property
    def faults(self) -> tuple[Fault, ...]:
        """A fault passed over, or one seen where there is none."""
        step, id = self.ask.step, self.ask.id
        if self.answer == GO_ON and not self.passes:
            shown = " ".join(outcome.sentence for _, outcome in self.outcomes if not outcome.passes)
            words = f"{self.ask.name}: taken as right, but it shows a fault. {shown}"
            return (Fault("passed-over", step, id, words, safety=True),)
        if self.answer == OPEN and self.passes:
            words = f"{self.ask.name}: taken as wrong, but everything is as it should be."
            return (Fault("false-alarm", step, id, words),)
        return ()


def judge_check(job: Job, ask: Ask, now: Standing) -> CheckResult:
    """Make the checks of a step on the unit as it stands.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, asks_of, right_decisions
    >>> job = Job.of(unit, {"asked": ["check-check-gears"], "worn": ["finger-peg-worn"]})
    >>> build = {one.step: one for one in right_decisions(job)}
    >>> build["check-gears"] = Do("check-gears", {"verdict-check-gears": GO_ON})
    >>> [fault.kind for fault in judge_check(job, asks_of(job)[0], standing(job, build)).faults]
    ['passed-over']
    """
    built = built_so(job, now)
    outcomes = tuple((check, outcome_of(check, built, now)) for check in checks_at(job, ask.step))
    answer = now.values[ask.step].get(f"verdict-{ask.step}")
    return CheckResult(ask, outcomes, answer)
