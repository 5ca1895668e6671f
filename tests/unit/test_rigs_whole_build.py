"""The simulated bench, message by message: what it tells, what it keeps, what it keeps back."""

import json

import pytest

from twoshaft.jobsheet import open_sheet
from twoshaft.models import order
from twoshaft.models.shape import listed_misbuilds
from twoshaft.models.tooling import drives, tools_standing
from twoshaft.models.wholebuild import (
    ORDER,
    RINGS,
    Do,
    Job,
    asks_at,
    asks_of,
    right_decisions,
    sheet_fields,
    ways_of,
)
from twoshaft.plots.bench_tools import tool_outline
from twoshaft.plots.unit_section import unit_picture
from twoshaft.plots.whole_build import record_html
from twoshaft.readings import issue_record
from twoshaft.rigs import whole_build
from twoshaft.units import load_unit

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


@pytest.mark.slow
def test_a_right_build_ends_with_nothing_wrong(job, right, play):
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


def test_practice_tells_a_wrong_choice_at_once(job, play):
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


def test_a_decision_of_a_step_that_stands_is_changed_by_taking_it_out(job, play):
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


def test_marked_work_tells_readings_only_and_keeps_every_decision(job, right, sheet, play):
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


def test_marked_work_refuses_nothing_and_takes_out_one_step_alone(job, right, sheet, play):
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


def test_marked_work_comes_back_from_the_sheet(job, right, sheet, tmp_path, play):
    rig = whole_build(job, sheet)
    play(rig, right[:12])
    rig.hear({"type": "out", "step": right[11].step})
    again = whole_build(job, open_sheet("order-of-work", tmp_path))
    assert again.decisions == right[:11]
    assert again.view["done"] == [d.step for d in right[:11]]


def test_a_bench_run_before_the_forms_lends_them_its_fields(job, sheet, play):
    rig = whole_build(job, sheet)
    wrong = next(key for key, way in ways_of(job, "fit-lockout").items() if way)
    play(rig, [Do("fit-lockout", {"way-fit-lockout": wrong})])
    (ask,) = (one for one in asks_of(job) if one.id == "way-fit-lockout")
    for _ in range(2):
        sheet.form("ways", *sheet.ask_all(ask.fields))
        assert sheet.value("way-fit-lockout") == wrong
        assert whole_build(job, sheet).view["done"] == ["fit-lockout"]
    assert sheet.tasks["ways"] == ("way-fit-lockout",)
    assert "way-fit-lockout" not in sheet.tasks["bench"] and ORDER in sheet.tasks["bench"]
    with pytest.raises(ValueError, match="two fields"):
        sheet.form("other", *sheet.ask_all(ask.fields))


def test_readings_come_when_a_step_is_done_and_its_verdict_after_them(job, right, play):
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
    page = record_html(build_record(job, right_decisions(job)))
    assert "Tarnbeck College" in page
    assert "<script" not in page


def test_a_decision_is_kept_as_a_line_of_the_sheets_answer(unit, tmp_path):
    given = issue_record("whole-build", unit, salt="t", learner="ann", attempt=1)["given"]
    job = Job.of(unit, given["bench"])
    sheet = open_sheet("whole-build", tmp_path)
    sheet.form("ways", *sheet.ask_all(sheet_fields(job, "way", "joint", "check")))
    steps = {
        ask.fields[0].name: (step, ask.fields[0])
        for step in job.task.steps
        for ask in asks_at(job, step)
        if ask.fields[0].together == "ways"
    }
    rig = whole_build(job, sheet)
    kept = {}
    for name, (step, spec) in list(steps.items())[:3]:
        rig.hear({"type": "take", "step": step})
        kept[name] = spec.arguments["options"][0][0]
        rig.hear({"type": "set", "name": name, "value": kept[name]})
        assert rig.view["told"] == []
        assert sheet.fields["ways"].read(sheet.value("ways")) == kept
    name, (step, _) = next(iter(steps.items()))
    rig.hear({"type": "take", "step": step})
    rig.hear({"type": "set", "name": name, "value": ""})
    del kept[name]
    assert sheet.fields["ways"].read(sheet.value("ways")) == kept


# ---- the picture


@pytest.fixture(scope="module")
def drawn_way(job):
    """A way round of the job that the section shows, and its answers, the right one first."""
    seen = {one.id for one in listed_misbuilds(job.unit) if one.how == "turned"}
    ways = ways_of(job, "fit-lockout")
    (wrong,) = (key for key, way in ways.items() if way and f"fit-lockout/{way.id}" in seen)
    (right,) = (key for key, way in ways.items() if way is None)
    return "way-fit-lockout", right, wrong


def test_a_part_put_in_its_place_is_the_step_done(job, play):
    by_hand, by_keys = whole_build(job), whole_build(job)
    (magnet,) = (s for s in job.task.steps if s == "start-idler-bolt")
    for rig, message in (
        (by_hand, {"type": "put", "part": "idler-bolt"}),
        (by_keys, {"type": "do"}),
    ):
        play(rig, [Do("clean-faces"), Do("turn-keeper-aside")])
        rig.hear({"type": "take", "step": magnet})
        rig.hear({**message, "step": magnet})
    assert by_hand.decisions == by_keys.decisions
    assert by_hand.view == by_keys.view


def test_a_part_put_elsewhere_is_not_done_and_what_belongs_there_is_named(job):
    rig = whole_build(job)
    rig.hear({"type": "put", "step": "fit-lockout", "part": "breather"})
    assert rig.decisions == ()
    assert rig.hand["step"] == "fit-lockout"
    assert job.unit.part_by_id["breather"].name in rig.view["told"][0]
    rig.hear({"type": "put", "step": "fit-lockout", "part": ""})
    assert "Nothing has its place there" in rig.view["told"][0]
    rig.hear({"type": "put", "step": "no-step", "part": ""})
    assert rig.hand["step"] == "fit-lockout"


def test_a_part_put_in_the_wrong_way_round_stays_so_and_is_the_wrong_answer(job, drawn_way):
    name, right, wrong = drawn_way
    marks = {}
    for way in (right, wrong):
        rig = whole_build(job)
        rig.hear({"type": "take", "step": "fit-lockout"})
        assert rig.hand["held"]["field"] == name
        looks = rig.hand["held"]["looks"]
        assert looks[right] != looks[wrong]
        rig.hear({"type": "set", "name": name, "value": way})
        in_hand = rig.view["build"]["marks"]
        rig.hear({"type": "put", "step": "fit-lockout", "part": "lockout-plate"})
        assert rig.decisions == (Do("fit-lockout", {name: way}),)
        assert rig.view["build"]["looks"]["lockout-plate"] == "put"
        marks[way] = in_hand, rig.view["build"]["marks"]
        assert bool(rig.view["faults"]) is (way == wrong)
    assert marks[right][0] != marks[wrong][0] and marks[right][1] != marks[wrong][1]


def test_marked_work_draws_no_way_that_is_asked(job, drawn_way, tmp_path):
    name, right, wrong = drawn_way
    told = []
    for way in (right, wrong):
        rig = whole_build(job, open_sheet("order-of-work", tmp_path / way))
        rig.hear({"type": "take", "step": "fit-lockout"})
        assert rig.hand["held"] == {}
        rig.hear({"type": "set", "name": name, "value": way})
        rig.hear({"type": "do"})
        told.append([rig.picture, rig.view["build"], rig.plan["tray"]])
    assert told[0] == told[1]
    assert told[0][0]["svg"] != whole_build(Job.of(job.unit, {"asked": []})).picture["svg"]


def test_how_parts_lie_changes_nothing_of_the_picture_of_marked_work(unit, tmp_path):
    pictures = []
    for so in ("", "step-to-fifth"):
        lies = {"way": "step-to-fifth", "so": so, "seen": "It lies there"}
        job = Job.of(unit, {"lies": {"fit-lockout": lies}})
        rig = whole_build(job, open_sheet("order-of-work", tmp_path / f"lies-{so}"))
        rig.hear({"type": "take", "step": "fit-lockout"})
        pictures.append([rig.picture, rig.view["build"], rig.plan["tray"]])
    assert pictures[0] == pictures[1]


def test_tools_are_not_told_where_they_are_asked(job, sheet):
    rig = whole_build(job)
    rig.hear({"type": "take", "step": "tighten-case-bolts"})
    assert "orque wrench" not in json.dumps(rig.view["build"])
    rig.hear({"type": "take", "step": "fit-selector-seal"})
    assert "Seal driver" in rig.view["build"]["words"]
    marked = whole_build(job, sheet)
    marked.hear({"type": "take", "step": "fit-selector-seal"})
    assert "Seal driver" not in json.dumps(marked.view["build"])


@pytest.mark.parametrize("name", ["tarnbeck-b5", "tarnbeck-c4", "tarnbeck-k6"])
def test_every_step_shows_itself_in_the_picture_or_says_why_not(name):
    job = Job.of(load_unit(name))
    rig = whole_build(job)
    assert len(json.dumps(rig.picture)) < 300_000
    for step in job.task.steps:
        rig.hear({"type": "take", "step": step})
        build = rig.view["build"]
        if "lit" not in build["looks"].values():
            assert build["words"].startswith("Nothing to see in the picture. "), step


def test_what_a_job_leaves_out_before_it_stands_already(unit):
    rig = whole_build(Job.of(unit, {"operations": ["fit-breather", "fit-outer-lever"]}))
    looks = rig.view["build"]["looks"]
    assert looks["breather"] == looks["outer-lever"] == looks["guide-tube"] == "absent"
    assert "main-case" not in looks and "gate-cover" not in looks


def test_a_gauge_is_in_the_hand_and_stands_at_its_part_once_it_was_read(unit, play, tmp_path):
    for sheet in (None, open_sheet("order-of-work", tmp_path)):
        rig = whole_build(Job.of(unit, {"operations": ["read-side-gear-play"], "asked": []}), sheet)
        name, outline = rig.plan["tray"]["read-side-gear-play"]["tool"]
        assert name == "Dial indicator on a stand" and "<circle" in outline
        rig.hear({"type": "take", "step": "read-side-gear-play"})
        assert "tsu-tool" not in rig.view["build"]["marks"]
        rig.hear({"type": "put", "step": "read-side-gear-play", "part": "diff-gears"})
        assert rig.view["done"] == ["read-side-gear-play"]
        rig.hear({"type": "take", "step": "read-side-gear-play"})
        assert "<title>Dial indicator" in rig.view["build"]["marks"]


def test_the_wrench_stands_at_its_bolts_as_it_was_set_and_tells_no_more(job, sheet):
    for rig in (whole_build(job), whole_build(job, sheet)):
        rig.hear({"type": "take", "step": "tighten-case-bolts"})
        assert "tsu-tool" not in rig.view["build"]["marks"]
        tool = rig.hand["fields"][1]["options"][0][0]
        rig.hear({"type": "set", "name": "tool-case-bolts", "value": tool})
        assert "tsu-tool" in rig.view["build"]["marks"]
        rig.hear({"type": "set", "name": "torque-case-bolts", "value": "11 N m"})
        assert ">11 N·m<" in rig.view["build"]["marks"]


@pytest.mark.parametrize("name", ["tarnbeck-b5", "tarnbeck-c4", "tarnbeck-k6"])
def test_every_gauge_of_a_reading_has_a_form(name):
    unit = load_unit(name)
    forms = {tool.id: tool.looks for tool in unit.tools}
    readings = [o for o in unit.operations if o.kind.value == "measure" and o.tools]
    assert readings
    for one in readings:
        assert any(tool_outline(forms[tool]) for tool in one.tools), one.id


# ---- tools in their places

PRESSED = "fit-input-front-bearing"


@pytest.fixture
def bearing(unit):
    """A bench with a bearing to press in, and its rings in the picture [px]."""
    rig = whole_build(Job.of(unit, {"operations": ["fit-magnet", PRESSED]}))
    rig.hear({"type": "take", "step": PRESSED})
    (view,) = (one for one in unit_picture(unit).placed if one.view.id == "shafts")
    (tool,) = tools_standing(unit, [PRESSED], [], rings=RINGS["inner"])
    touch = tool.touches[0]
    return rig, view.px(touch.z_mm, touch.height_mm)


def test_a_driver_is_in_the_hand_until_its_ring_is_chosen_and_then_stands_on_it(bearing):
    rig, _ = bearing
    name, outline = rig.plan["tray"][PRESSED]["tool"]
    assert name == "Press sleeves for bearings" and outline
    assert "tsu-tool" not in rig.view["build"]["marks"]
    seen = {}
    for ring in RINGS:
        rig.hear({"type": "set", "name": f"driver-{PRESSED}", "value": ring})
        build = rig.view["build"]
        seen[ring] = build["marks"]
        assert build["marks"].count("tsu-tool") == 1
        assert ("inner ring" in build["words"]) is (ring != "outer")
    assert len(set(seen.values())) == 3


def test_a_driver_set_down_on_a_ring_bears_on_that_ring(bearing):
    by_hand, at = bearing
    by_hand.hear({"type": "bear", "step": PRESSED, "at": list(at)})
    assert by_hand.view["states"][f"driver-{PRESSED}"]["value"] == "inner"
    by_hand.hear({"type": "bear", "step": PRESSED, "at": [0, 0]})
    assert "on no ring" in by_hand.view["told"][0]
    for wrong in (None, "here", [1], ["a", "b"]):
        by_hand.hear({"type": "bear", "step": PRESSED, "at": wrong})
        assert "no driver" in by_hand.view["told"][0]
    by_hand.hear({"type": "bear", "step": "fit-magnet", "at": list(at)})
    assert "no driver" in by_hand.view["told"][0]


def test_a_driver_on_the_wrong_ring_is_told_in_practice(bearing):
    rig, _ = bearing
    (way,) = (f["name"] for f in rig.hand["fields"] if f["name"].startswith("way-"))
    right = next(key for key, one in ways_of(rig.job, PRESSED).items() if one is None)
    rig.hear({"type": "do"})
    assert "which way round" in rig.view["told"][0]
    rig.hear({"type": "set", "name": way, "value": right})
    rig.hear({"type": "do"})
    assert "where does the driver press" in rig.view["told"][0]
    rig.hear({"type": "set", "name": f"driver-{PRESSED}", "value": "inner"})
    rig.hear({"type": "do"})
    assert "dented the raceways" in rig.view["told"][1]
    rig.hear({"type": "record", "open": True})
    assert "On the inner ring" in rig.view["record"]


def test_what_was_put_at_a_wrong_place_stands_in_the_record_of_practice_alone(unit, sheet):
    for kept in (None, sheet):
        rig = whole_build(Job.of(unit, {"operations": ["fit-magnet", PRESSED]}), kept)
        for _ in range(2):
            rig.hear({"type": "put", "step": "fit-magnet", "part": "breather"})
        rig.hear({"type": "record", "open": True})
        assert ("Put at a wrong place:</b> 2 times" in rig.view["record"]) is (kept is None)
        assert kept is None or kept.value(ORDER) in (None, [])


@pytest.mark.parametrize("name", ["tarnbeck-b5", "tarnbeck-k6"])
def test_marked_work_shows_the_tool_in_its_place_and_tells_nothing_that_is_asked(name, tmp_path):
    unit = load_unit(name)
    given = issue_record("whole-build", unit, salt="t", learner="ann", attempt=1)["given"]["bench"]
    job = Job.of(unit, given)
    assert not [ask for ask in asks_of(job) if ask.kind == "driver"]
    shown = 0
    for step, members in job.members.items():
        if not drives(unit, members):
            continue
        seen = []
        fields = [ask.fields[0] for ask in asks_at(job, step) if ask.kind == "way"]
        answers = [key for key, _ in fields[0].arguments["options"]] if fields else [None]
        for k, answer in enumerate(answers):
            rig = whole_build(job, open_sheet("order-of-work", tmp_path / f"{step}-{k}"))
            rig.hear({"type": "take", "step": step})
            if answer:
                rig.hear({"type": "set", "name": fields[0].name, "value": answer})
            build = rig.view["build"]
            seen.append(build)
            assert "no straight way" not in build["words"] and "afterwards" not in build["words"]
            assert not [tool.name for tool in unit.tools if tool.name in json.dumps(build)]
        assert seen == seen[:1] * len(seen)
        shown += "tsu-tool" in seen[0]["marks"]
    assert shown >= 10
