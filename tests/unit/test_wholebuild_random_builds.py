"""Twenty random builds, right and wrong, at the simulated bench and by the models called directly.

Every decision is sent to the bench as hands would send it. What the bench says came of them is then
worked out anew from the decisions and the unit file, by the models of each part alone: nothing here
calls on how the bench puts them together.
"""

from dataclasses import replace

import numpy as np
import pytest

from twoshaft.jobsheet import open_sheet
from twoshaft.models import film, fit, joint, order, shift, shim
from twoshaft.models.bearing.heat import support_change
from twoshaft.models.faults import as_built, run_check
from twoshaft.models.wholebuild import (
    Do,
    Job,
    TakeOut,
    asks_of,
    consequences,
    right_decisions,
    ways_of,
)
from twoshaft.rigs import whole_build
from twoshaft.units.quantities import Q
from twoshaft.units.sections.faults import BoltChange, LeftOut, Misbuild, SettingChange

STAGES = ("closing", "rear-end", "shift")
SEEDS = range(20)
FACE, GROUP = "case-joint", "case-bolts"
PASSES_OVER, OPENS = "go-on", "open"


class Draw:
    """Random numbers as the order model draws them."""

    def __init__(self, rng):
        self.rng = rng

    def integer(self, n):
        return int(self.rng.integers(n))


@pytest.fixture(scope="module")
def job(unit):
    return Job.of(unit, {"operations": [o.id for o in unit.operations if o.stage in STAGES]})


def wrong_value(spec, right, rng):
    """Another answer to one field: wrong as a rule, right by luck."""
    if spec.kind == "choice":
        return str(rng.choice([key for key, _ in spec.arguments["options"]]))
    if spec.kind == "number" and spec.arguments["unit"] == "mm":
        return Q(
            round(right.m_as("mm") + float(rng.choice([-0.3, -0.05, 0.05, 0.1, 0.3])), 2), "mm"
        )
    if spec.kind == "number":
        return Q(round(right.m_as("N*m") * float(rng.choice([0.5, 0.8, 1.25, 1.6]))), "N*m")
    if spec.kind == "path":
        return right[: int(rng.integers(1, len(right)))]
    return wrong_film(right, rng)


def wrong_film(right, rng):
    """A stretch left bare, a film too thin or laid too thick, or laid along the other side."""
    how = rng.choice(["bare", "thin", "thick", "outside"])
    if how == "bare":
        gone = int(rng.integers(len(right)))
        return right[:gone] + right[gone + 1 :]
    if how == "outside":
        return tuple(replace(one, side=film.Side.OUTSIDE) for one in right)
    factor = 0.2 if how == "thin" else 4.0
    return tuple(replace(one, size_mm=round(one.size_mm * factor, 2)) for one in right)


def drawn_build(job, seed):
    """A build: of even seeds in any order, of odd ones in a correct order with steps taken out."""
    rng = np.random.default_rng(seed)
    if seed % 2:
        made = list(right_decisions(job, order.sensible_order(job.task, Draw(rng))))
    else:
        made = list(right_decisions(job))
        for _ in range(int(rng.integers(0, 4)) if seed else 0):
            made.insert(int(rng.integers(len(made))), made.pop(int(rng.integers(len(made)))))
        if rng.random() < 0.4 and seed:
            made.pop(int(rng.integers(len(made))))
    for ask in asks_of(job) if seed else ():
        for spec in ask.fields:
            if rng.random() < (0.7 if spec.kind in ("film", "path") else 0.2):
                made = [
                    Do(
                        d.step,
                        d.choices | {spec.name: wrong_value(spec, d.choices[spec.name], rng)},
                    )
                    if d.step == ask.step
                    else d
                    for d in made
                ]
    while seed % 2:
        at = int(rng.integers(5, len(made)))
        done = [one.step for one in made[:at]]
        out = done[int(rng.integers(len(done)))]
        off = {out, *order.rework(job.task, done, out).off}
        again = [one for one in made[:at] if one.step in off]
        in_turn = [one for one in made[:at] if one.step not in off] + again + made[at:]
        if not order.replay(job.task, [one.step for one in in_turn]).events:
            made[at:at] = [TakeOut(out), *again]  # what came off can go straight back on
            break
    return tuple(made)


class Direct:
    """What the models say of a build: each asked by itself."""

    def __init__(self, job, decisions):
        self.job, self.unit, self.task = job, job.unit, job.task
        self.decisions = decisions
        self.standing, self.minutes, self.taken = {}, 0.0, []
        for one in decisions:
            number = self.task.number[one.step]
            if isinstance(one, Do):
                self.standing[one.step] = one
                self.minutes += self.task.minutes_do[number]
                continue
            off = {one.step, *order.rework(self.task, list(self.standing), one.step).off}
            self.minutes += sum(self.task.minutes_undo[self.task.number[s]] for s in off)
            self.taken.append((one.step, off, set(order.new_parts(self.task, sorted(off)))))
            for step in off:
                del self.standing[step]
        self.steps = list(self.standing)
        self.choices = {k: v for one in self.standing.values() for k, v in one.choices.items()}

    def at(self, step):
        """The build as it stood when a step was done, that step included."""
        place = max(k for k, one in enumerate(self.decisions) if one.step == step)
        return Direct(self.job, self.decisions[: place + 1])

    def wrong_ways(self):
        """Wrong ways round, by operation."""
        every = {step: ways_of(self.job, step) for step in self.steps}
        named = {step: ways.get(self.choices.get(f"way-{step}")) for step, ways in every.items()}
        return {step: way for step, way in named.items() if way is not None}

    def tightened(self, group):
        """Fastening, torque at the thread, clamp, and what the pattern leaves, of a group."""
        bolts = joint.Fastening.of(self.unit, group)
        entry = next(
            one for one in self.unit.fasteners.wrenches if one.id == self.choices[f"tool-{group}"]
        )
        setting = self.choices[f"torque-{group}"]
        if not entry.low_nm <= setting.m_as("N*m") <= entry.high_nm:
            return bolts, None, None, None
        torque = setting
        if bolts.adapter is not None:
            reach = Q(bolts.adapter.reach_mm, "mm")
            torque = joint.torque_at_bolt(setting, Q(entry.length_mm, "mm"), reach)
        bolts = replace(bolts, wrench=joint.TorqueWrench.of(entry))
        clamp = bolts.bounds(self.choices[f"state-{group}"], torque)
        pattern = self.choices.get(f"pattern-{group}")
        if pattern is None:
            return bolts, torque, clamp, None
        turn = {
            "clockwise": joint.clockwise(bolts.group.count),
            "crosswise": joint.crosswise(bolts.group.count),
            "middle-outwards": joint.middle_outwards(bolts.positions_m),
        }[pattern]
        rounds = [joint.Round.of(turn, clamp.typical)] * int(self.choices[f"rounds-{group}"])
        return bolts, torque, clamp, joint.tighten(bolts.face(), rounds)

    def closed(self):
        """The coated face as a mechanic finds it; None unless it was closed on its film."""
        face = self.unit.faces.face_by_id(FACE)
        places = [
            self.steps.index(step) if step in self.standing else None
            for step in (face.lay_operation, face.close_operation)
        ]
        passes = self.choices.get(f"film-{FACE}")
        if None in places or passes is None or places[1] <= places[0]:
            return None
        between = self.steps[places[0] + 1 : places[1] + 1]
        waited = sum(self.task.minutes_do[self.task.number[step]] for step in between)
        work = film.Work.of(self.unit, {"face": FACE})
        minute, clamps = work.minutes_wet(passes) + waited, None
        if f"tool-{GROUP}" in self.choices:
            kept = self.tightened(GROUP)[3]
            holes = [hole.id for hole in work.face.holes if hole.clamp_n > 0]
            if kept is not None:
                clamps = {h: Q(float(n), "N") for h, n in zip(holes, kept.clamp_n, strict=True)}
        seal = film.close(work.lay(passes), work.sealant, minute, clamps)
        return film.Closed(work, seal, minute)

    def as_built(self):
        """The unit with all that is wrong about it as one more misbuild of its faults section."""
        changes = [
            LeftOut(kind="left-out", operation=step)
            for step in self.task.steps
            if step not in self.standing
        ]
        for support in self.unit.bearings.supports:
            if (total := self.choices.get(f"shim-{support.id}")) is not None:
                low, high = shim.target_interference(support)
                wanted = self.job.stack(support.id).shim_for((low + high) / 2)
                off = float(np.clip((total - wanted).m_as("mm"), -1, 1))
                if off:
                    changes.append(SettingChange(kind="setting", support=support.id, shim_mm=off))
        for entry in self.unit.fasteners.groups:
            if f"tool-{entry.id}" not in self.choices:
                continue
            bolts, torque, _, _ = self.tightened(entry.id)
            state = self.choices[f"state-{entry.id}"]
            if state != bolts.group.state:
                changes.append(BoltChange(kind="bolts", group=entry.id, state=state))
            if torque is not None:
                share = min(5.0, torque.m_as("N*m") / entry.torque_nm[1])
                changes.append(BoltChange(kind="bolts", group=entry.id, torque_share=share))
        faults = self.unit.faults
        ways = {way.misbuild for way in self.wrong_ways().values()} - {None}
        mine = [faults.misbuild_by_id(id) for id in sorted(ways)]
        if changes:
            mine.append(
                Misbuild(
                    id="this-build", name="This build", changes=tuple(changes), often_per_1000=1
                )
            )
        every = (*faults.misbuilds, *(one for one in mine if one.id == "this-build"))
        unit = self.unit.with_sections(faults=faults.model_copy(update={"misbuilds": every}))
        return as_built(unit, mine)

    def shows(self, check, built):
        """Whether a check passes, and what it says where no coated face is looked at."""
        if check.kind != "leaks" or (face := self.closed()) is None:
            return run_check(check, built)
        dry = check.model_copy(update={"faces": tuple(f for f in check.faces if f != FACE)})
        found = run_check(dry, built)
        return found if not face.leaks else None


def of_kind(found, about, *kinds):
    return [fault for fault in found.faults if fault.about == about and fault.kind in kinds]


@pytest.mark.slow
@pytest.mark.parametrize("seed", SEEDS)
def test_the_bench_and_the_models_agree(job, seed, play, tmp_path):
    made = drawn_build(job, seed)
    rig = whole_build(job) if seed % 2 else whole_build(job, open_sheet("order-of-work", tmp_path))
    play(rig, made)
    assert rig.decisions == made
    found, direct = consequences(job, rig.decisions), Direct(job, made)
    assert list(found.steps) == direct.steps
    _order_agrees(found, direct)
    _ways_agree(found, direct)
    _shims_agree(found, direct)
    _joints_agree(found, direct)
    _film_agrees(found, direct)
    _proof_agrees(found, direct)
    _checks_agree(found, direct)
    assert seed or not found.faults


@pytest.mark.slow
def test_the_builds_hold_every_kind_of_slip(job):
    builds = [consequences(job, drawn_build(job, seed)) for seed in SEEDS]
    kinds = {fault.kind for found in builds for fault in found.faults}
    assert kinds >= {
        "way", "shim", "loose", "overstressed", "uneven", "leak", "lump", "proof", "passed-over",
        "false-alarm", "blocked", "late",
    }  # fmt: skip
    assert sum(len(found.taken) for found in builds) == len(SEEDS) // 2
    assert any(not outcome.passes for found in builds for _, outcome in found.shown)


def _order_agrees(found, direct):
    played = order.replay(direct.task, direct.steps)
    assert found.order == played
    told = [fault.kind for fault in found.faults if fault.kind in {e.state for e in played.events}]
    assert sorted(told) == sorted(event.state for event in played.events)
    taken = [(one.step, set(one.off), set(one.parts)) for one in found.taken]
    assert taken == direct.taken
    assert found.minutes == pytest.approx(direct.minutes + played.minutes_extra)
    lost = {part for _, _, parts in direct.taken for part in parts}
    assert set(found.parts_lost) == lost | set(played.parts_lost)


def _ways_agree(found, direct):
    wrong = direct.wrong_ways()
    assert {result.ask.about: result.way for result in found.ways} == wrong
    for result in found.ways:
        step, way = result.ask.step, result.way
        work = order.rework(direct.task, direct.steps, step)
        number = direct.task.number[step]
        turning = direct.task.minutes_undo[number] + direct.task.minutes_do[number]
        assert result.minutes == pytest.approx(work.minutes + turning)
        assert set(result.off) == set(work.off)
        built = None
        if way.misbuild is not None:
            misbuild = direct.unit.faults.misbuild_by_id(way.misbuild)
            built = as_built(direct.unit, [misbuild])
        checks = direct.unit.faults.checks if built else ()
        shown = [(check, run_check(check, built)) for check in checks]
        assert list(result.shows) == [pair for pair in shown if not pair[1].passes]
        if way.seal is not None:
            rule = fit.seal_of(direct.unit, way.seal)
            away = fit.Side.AIR if rule.lip_towards is fit.Side.OIL else fit.Side.OIL
            depths = (sum(rule.depth_m) / 2,) * 4
            fitted = fit.SealFitted(away, depths, greased=True, sleeve_used=True)
            assert result.seal == fit.seal_faults(rule, fitted)


def _shims_agree(found, direct):
    for result in found.shims:
        support = direct.job.support(result.ask.about)
        total = direct.choices[f"shim-{support.id}"]
        cold = shim.Stack.from_support(support).interference(total)
        warm = cold + support_change(support, direct.unit.bearings, shim=total).total
        assert result.cold == cold
        assert result.warm.m_as("mm") == pytest.approx(warm.m_as("mm"))
        low, high = shim.target_interference(support)
        if not low <= cold <= high:
            assert result.verdict == "misses"
            assert of_kind(found, result.ask.id, "shim")
    asked = {step for step in direct.steps if any(n.startswith("shim-") for n in
             direct.standing[step].choices)}  # fmt: skip
    assert {result.ask.step for result in found.shims} == asked


def _joints_agree(found, direct):
    for result in found.joints:
        bolts, torque, clamp, kept = direct.tightened(result.ask.about)
        told = {fault.kind for fault in found.faults if fault.about == result.ask.id}
        if torque is None:
            assert result.torque is None and "loose" in told
            continue
        assert result.torque.m_as("N*m") == pytest.approx(torque.m_as("N*m"))
        assert result.clamp.low_n == pytest.approx(clamp.low_n)
        assert ("loose" in told) == (clamp.low_n < bolts.group.clamp_kn * 1e3)
        use = bolts.worst_use(result.state, torque)
        assert ("overstressed" in told) == (use > joint.MOST_USE)
        strip = bolts.strip()
        assert ("stripped" in told) == (strip is not None and strip.holds_n < clamp.high_n)
        if kept is not None:
            assert result.kept_n == pytest.approx(kept.clamp_n)
            assert ("uneven" in told) == (kept.spread > bolts.group.spread)


def _film_agrees(found, direct):
    closed = direct.closed()
    assert [result.ask.about for result in found.films] == ([] if closed is None else [FACE])
    for result in found.films:
        assert result.minute == pytest.approx(closed.minute)
        assert result.closed.leaks == closed.leaks
        told = [len(of_kind(found, result.ask.id, kind)) for kind in ("leak", "lump", "flooded")]
        assert told == [len(closed.leaks), len(closed.endangered), len(closed.flooded)]


def _proof_agrees(found, direct):
    for result in found.proofs:
        then = direct.at(result.ask.step)
        built, block = then.as_built(), direct.unit.shift.must_block[0]
        work = shift.follow(shift.mechanism(built.shift), direct.choices[result.ask.id])
        reading = shift.lockout_reading(direct.unit.shift, work, block.earlier, block.later)
        assert result.reading == reading
        assert bool(of_kind(found, result.ask.id, "proof")) == (
            reading in ("not tried", "half", "no-gear")
        )


def _checks_agree(found, direct):
    built = direct.as_built()
    for check, outcome in found.shown:
        expected = direct.shows(check, built)
        assert outcome.passes == (expected is not None and expected.passes), check.id
        if expected is not None:
            assert outcome == expected, check.id
    for result in found.checks:
        then = direct.at(result.ask.step)
        for check, outcome in result.outcomes:
            expected = then.shows(check, then.as_built())
            assert outcome.passes == (expected is not None and expected.passes), check.id
        answer, passes = result.answer, all(outcome.passes for _, outcome in result.outcomes)
        assert bool(of_kind(found, result.ask.id, "passed-over")) == (
            answer == PASSES_OVER and not passes
        )
        assert bool(of_kind(found, result.ask.id, "false-alarm")) == (answer == OPENS and passes)
