"""The simulated bench, message by message: what it tells, what it keeps, what it keeps back."""

import json

import numpy as np
import pytest

from twoshaft.jobsheet import open_sheet
from twoshaft.models import joint, order, shift, shim
from twoshaft.models.wholebuild import (
    ORDER,
    Do,
    Job,
    TakeOut,
    asks_of,
    consequences,
    right_decisions,
    ways_of,
)
from twoshaft.plots.whole_build import BuildRecord
from twoshaft.rigs import whole_build
from twoshaft.rigs.whole_build import WholeBuild
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q

STAGES = ("closing", "rear-end", "shift")


@pytest.fixture(scope="module")
def job(unit):
    return Job.of(unit, {"operations": [o.id for o in unit.operations if o.stage in STAGES]})


@pytest.fixture(scope="module")
def right(job):
    return right_decisions(job)


@pytest.fixture
def sheet(tmp_path):
    return open_sheet("order-of-work", tmp_path)


def play(rig: WholeBuild, decisions):
    """Send what hands at the keyboard would send."""
    for one in decisions:
        if isinstance(one, TakeOut):
            rig.hear({"type": "out", "step": one.step})
            continue
        rig.hear({"type": "take", "step": one.step})
        answers = {name: rig.fields[name].store(v) for name, v in one.choices.items()}
        for name, value in answers.items():
            if not name.startswith("verdict-"):
                rig.hear({"type": "set", "name": name, "value": value})
        rig.hear({"type": "do"})
        for name, value in answers.items():
            if name.startswith("verdict-"):
                rig.hear({"type": "set", "name": name, "value": value})


def test_a_right_build_ends_with_nothing_wrong(job, right):
    rig = whole_build(job)
    play(rig, right)
    rig.hear({"type": "over"})
    assert rig.decisions == right
    assert rig.view["faults"] == []
    assert "Nothing is wrong" in rig.view["told"][1]
    assert "Signatures" in rig.view["record"]
    assert "Build record" in rig.plain_copy()
    json.dumps([rig.plan, rig.hand, rig.view])


def test_the_next_ready_step_comes_to_hand_with_its_words(job):
    rig = whole_build(job)
    rig.hear({"type": "next"})
    assert rig.hand["step"] in rig.view["ready"]
    rig.hear({"type": "take", "step": "tighten-case-bolts"})
    assert rig.hand["card"][0][0] == "Card"
    assert [f["kind"] for f in rig.hand["fields"]][:3] == ["choice", "choice", "number"]


def test_a_step_asks_for_its_decisions_before_it_is_done(job):
    rig = whole_build(job)
    rig.hear({"type": "take", "step": "fit-lockout"})
    rig.hear({"type": "do"})
    assert "asks for a decision first" in rig.view["told"][0]
    assert rig.view["done"] == []


def test_practice_refuses_what_cannot_be_done_and_says_why(job):
    rig = whole_build(job)
    rig.hear({"type": "take", "step": "start-case-bolts"})
    rig.hear({"type": "do"})
    assert "cannot be done now" in rig.view["told"][0]
    assert "“Lower the main case" in " ".join(rig.view["told"])
    assert rig.decisions == ()


def test_practice_tells_a_wrong_choice_at_once(job):
    rig = whole_build(job)
    wrong = next(key for key, way in ways_of(job, "fit-lockout").items() if way)
    play(rig, [Do("fit-lockout", {"way-fit-lockout": wrong})])
    assert "wrong way round" in rig.view["told"][1]
    assert rig.view["faults"][0][0] == "way"


def test_a_number_is_read_as_people_write_it_or_asked_back(job):
    rig = whole_build(job)
    rig.hear({"type": "take", "step": "tighten-idler-bolt"})
    rig.hear({"type": "set", "name": "torque-idler-bolt", "value": "28 ft lb"})
    assert "lbf·ft" in rig.view["states"]["torque-idler-bolt"]["read"]
    rig.hear({"type": "set", "name": "torque-idler-bolt", "value": "38 mm"})
    assert rig.view["states"]["torque-idler-bolt"]["error"]


def test_a_decision_of_a_step_that_stands_is_changed_by_taking_it_out(job):
    rig = whole_build(job)
    keys = list(ways_of(job, "fit-lockout"))
    play(rig, [Do("fit-lockout", {"way-fit-lockout": keys[0]})])
    rig.hear({"type": "take", "step": "fit-lockout"})
    rig.hear({"type": "set", "name": "way-fit-lockout", "value": keys[1]})
    assert "take it out" in rig.view["told"][0]
    rig.hear({"type": "out", "step": "fit-lockout"})
    rig.hear({"type": "set", "name": "way-fit-lockout", "value": keys[1]})
    rig.hear({"type": "do"})
    assert rig.decisions[-1] == Do("fit-lockout", {"way-fit-lockout": keys[1]})


def test_marked_work_tells_readings_only_and_keeps_every_decision(job, right, sheet):
    rig = whole_build(job, sheet)
    wrong = next(key for key, way in ways_of(job, "fit-lockout").items() if way)
    play(rig, [Do("start-case-bolts"), Do("fit-lockout", {"way-fit-lockout": wrong})])
    assert rig.view["faults"] == rig.view["ready"] == rig.view["facts"] == []
    assert rig.view["done"] == ["start-case-bolts", "fit-lockout"]
    assert all("wrong" not in text and "cannot" not in text for text in rig.view["told"])
    assert sheet.value("way-fit-lockout") == wrong
    assert sheet.value(ORDER) == ["start-case-bolts", "fit-lockout"]
    assert not [f for f in json.dumps([rig.plan, rig.hand, rig.view]).split() if "misbuild" in f]


def test_marked_work_lists_its_steps_as_its_form_does(unit, sheet):
    rig = whole_build(Job.of(unit), sheet)
    listed = [step for _, _, steps in rig.plan["stages"] for step in steps]
    assert listed == [step for step, _ in sheet.fields[ORDER].steps]
    assert sorted(listed) == sorted(rig.job.task.steps)
    for _, _, steps in rig.plan["stages"]:
        assert steps != [step for step in rig.job.task.steps if step in steps]
    rig.hear({"type": "next"})
    assert rig.hand["step"] == listed[0]


def test_marked_work_refuses_nothing_and_takes_out_one_step_alone(job, right, sheet):
    rig = whole_build(job, sheet)
    play(rig, right)
    below = next(d.step for d in right if order.rework(job.task, rig.view["done"], d.step).off)
    rig.hear({"type": "out", "step": below})
    assert rig.view["done"] == [d.step for d in right if d.step != below]
    assert "nothing else" in rig.view["told"][0]
    rig.hear({"type": "do"})
    assert sheet.value(ORDER) == [*(d.step for d in right if d.step != below), below]
    rig.hear({"type": "out", "step": "no-step"})
    assert rig.view["done"][-1] == below


def test_marked_work_comes_back_from_the_sheet(job, right, sheet, tmp_path):
    rig = whole_build(job, sheet)
    play(rig, right[:12])
    rig.hear({"type": "out", "step": right[11].step})
    again = whole_build(job, open_sheet("order-of-work", tmp_path))
    assert again.decisions == right[:11]
    assert again.view["done"] == [d.step for d in right[:11]]


def test_a_bench_run_before_the_forms_lends_them_its_fields(job, sheet):
    rig = whole_build(job, sheet)
    wrong = next(key for key, way in ways_of(job, "fit-lockout").items() if way)
    play(rig, [Do("fit-lockout", {"way-fit-lockout": wrong})])
    (ask,) = (one for one in asks_of(job) if one.id == "way-fit-lockout")
    for _ in range(2):
        sheet.form("ways", *(spec.on(sheet) for spec in ask.fields))
        assert sheet.value("way-fit-lockout") == wrong
        assert whole_build(job, sheet).view["done"] == ["fit-lockout"]
    assert sheet.tasks["ways"] == ("way-fit-lockout",)
    assert "way-fit-lockout" not in sheet.tasks["bench"] and ORDER in sheet.tasks["bench"]
    with pytest.raises(ValueError, match="two fields"):
        sheet.form("other", *(spec.on(sheet) for spec in ask.fields))


def test_readings_come_when_a_step_is_done_and_its_verdict_after_them(job, right):
    rig = whole_build(job)
    at = [d.step for d in right].index("check-output-drag")
    play(rig, right[:at])
    rig.hear({"type": "take", "step": "check-output-drag"})
    assert rig.hand["names"] == []
    rig.hear({"type": "do"})
    assert rig.hand["read"][0][1].endswith(" N")
    assert rig.hand["names"] == ["verdict-check-output-drag"]
    rig.hear({"type": "set", "name": "verdict-check-output-drag", "value": "open"})
    assert "taken as wrong" in " ".join(rig.view["told"])


def test_trouble_is_told_as_a_sentence(job):
    rig = whole_build(job)
    rig.hear({"type": "out", "step": "fit-lockout"})
    assert rig.view["told"][0].endswith(".")


def test_a_record_shows_itself():
    unit = load_unit("tarnbeck-b5-early")
    from twoshaft.models.wholebuild import build_record

    job = Job.of(unit, {"operations": [o.id for o in unit.operations if o.stage == "shift"]})
    page = BuildRecord(build_record(job, right_decisions(job)))._repr_html_()
    assert "Tarnbeck College" in page
    assert "<script" not in page


def _spoilt(job, right, rng):
    """A build with some wrong decisions, some steps moved and one perhaps left out."""
    made = list(right)
    for _ in range(int(rng.integers(0, 3))):
        k = int(rng.integers(len(made)))
        made.insert(int(rng.integers(len(made))), made.pop(k))
    if rng.random() < 0.3:
        made.pop(int(rng.integers(len(made))))
    asks = asks_of(job)
    for _ in range(int(rng.integers(0, 4))):
        ask = asks[int(rng.integers(len(asks)))]
        spec = ask.fields[int(rng.integers(len(ask.fields)))]
        value = {
            "choice": lambda spec=spec: str(rng.choice([k for k, _ in spec.arguments["options"]])),
            "number": lambda spec=spec: Q(
                *((0.9, "mm") if spec.arguments["unit"] == "mm" else (33.0, "N*m"))
            ),
            "path": lambda spec=spec: (spec.arguments["moves"][0][0],),
            "film": lambda: None,
        }[spec.kind]()
        if value is not None:
            made = [
                Do(d.step, {**d.choices, spec.name: value}) if d.step == ask.step else d
                for d in made
            ]
    return made


@pytest.mark.parametrize("seed", range(20))
def test_the_bench_and_the_models_agree_on_random_builds(job, right, sheet, seed):
    made = _spoilt(job, right, np.random.default_rng(seed)) if seed else list(right)
    rig = whole_build(job, sheet)
    play(rig, made)
    assert rig.decisions == tuple(made)
    found = consequences(job, rig.decisions)
    choices = {name: value for one in made for name, value in one.choices.items()}
    assert found.order == order.replay(job.task, [one.step for one in made])
    told = [f.kind for f in found.faults if f.kind in {e.state for e in found.order.events}]
    assert sorted(told) == sorted(event.state for event in found.order.events)
    _shims_agree(job, found, choices)
    _joints_agree(job, found, choices)
    _proofs_agree(job, found, choices)
    assert seed or not found.faults


def _shims_agree(job, found, choices):
    for result in found.shims:
        support = job.support(result.ask.about)
        total = choices[f"shim-{support.id}"]
        setting = shim.Stack.from_support(support).interference(total)
        assert result.cold == setting
        low, high = shim.target_interference(support)
        bad = [f for f in found.faults if f.kind == "shim" and f.about == result.ask.id]
        if not low <= setting <= high:
            assert result.verdict == "misses"
            assert bad


def _joints_agree(job, found, choices):
    for result in found.joints:
        id = result.ask.about
        bolts = joint.Fastening.of(job.unit, id)
        if result.torque is None or choices[f"tool-{id}"] != bolts.group.wrench:
            continue
        torque = choices[f"torque-{id}"]
        if bolts.adapter is not None:
            reach = Q(bolts.adapter.reach_mm, "mm")
            torque = joint.torque_at_bolt(torque, Q(bolts.wrench.length_m, "m"), reach)
        clamp = bolts.bounds(choices[f"state-{id}"], torque)
        assert result.clamp.low_n == pytest.approx(clamp.low_n)
        kinds = {fault.kind for fault in found.faults if fault.about == result.ask.id}
        assert ("loose" in kinds) == (clamp.low_n < bolts.group.clamp_kn * 1e3)


def _proofs_agree(job, found, choices):
    for result in found.proofs:
        block = job.unit.shift.must_block[0]
        wrong = {way.way.misbuild for way in found.ways} - {None, "fifth-hub-turned"}
        ids = {"plate-turned-over": "lockout-plate-turned-over"}
        ids["spring-reversed"] = "lockout-spring-reversed"
        machine = shift.fitted(job.unit.shift, [ids[one] for one in wrong])
        work = shift.follow(machine, choices[result.ask.id])
        if "fit-lockout" in found.steps and found.steps.index("fit-lockout") < found.steps.index(
            "check-lockout"
        ):
            reading = shift.lockout_reading(job.unit.shift, work, block.earlier, block.later)
            assert result.reading == reading
