"""The kernel's side of the order rigs, driven by the messages a browser sends."""

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models.order import model_order
from twoshaft.rigs import build_simulator, order_bench, rule_picture


@pytest.fixture
def unit(make_unit):
    """0 before 1 (cannot), 1 buried by 2, 3 harmed without 0, 4 a check blinded without 1."""
    pairs = [(0, 1, "cannot"), (1, 2, "buries"), (0, 3, "harms"), (1, 4, "blinds")]
    return make_unit(5, pairs, stages=2, minutes=(2.0,))


def say(widget, **message):
    widget.sent = []
    widget.send = lambda content, buffers=None: widget.sent.append(content)
    widget._handle_custom_msg(message, [])
    return widget.sent


def test_bench_says_what_each_place_brings_about(unit):
    bench = order_bench(unit, start=["s02", "s03", "s04", "s01", "s00"])
    kinds = {step: [n["kind"] for n in notes] for step, notes in bench.judged["notes"].items()}
    assert kinds == {
        "s02": ["buries"],
        "s03": ["harmed"],
        "s04": ["blinded"],
        "s01": ["blocked", "buried"],
    }
    assert bench.finding == (
        "3 of 5 steps are in trouble: 1 cannot be done where it stands; 1 does harm; "
        "1 makes a check worthless."
    )
    assert all(note["shape"] and note["word"] for n in bench.judged["notes"].values() for note in n)
    blocked = bench.judged["notes"]["s01"][0]["text"]
    assert blocked == "Needs “Step 0” first. step 0 is needed first."


def test_harm_to_a_person_is_not_called_harm_to_a_part(make_unit):
    rule = {"id": "r", "kind": "harms", "earlier": "s00", "later": "s01", "reason": "it drops"}
    for safety, word in ((True, "Can hurt somebody."), (False, "Does harm.")):
        bench = order_bench(make_unit(2, rules=[{**rule, "safety": safety}]), start=["s01", "s00"])
        assert bench.judged["notes"]["s01"][0]["word"] == word


def test_bench_follows_the_browser(unit):
    bench = order_bench(unit, start=["s02", "s03", "s04", "s01", "s00"])
    assert say(bench, type="order", order=["s00", "s01", "s02", "s03", "s04"]) == []
    assert bench.judged["notes"] == {}
    assert bench.finding == "This order works: all 5 steps can be done where they stand."
    assert "10 minutes planned" in bench.judged["cost"]
    assert "Step 4" in bench.plain_copy()


def test_bench_starts_shuffled_and_the_same_way_each_time(unit):
    first, second = order_bench(unit), order_bench(unit)
    assert first.order == second.order != tuple(first.task.steps)


def test_bench_shows_its_own_faults(unit, monkeypatch):
    bench = order_bench(unit)

    def broken(*_):
        raise ZeroDivisionError("division by zero")

    monkeypatch.setattr("twoshaft.rigs.bench.consequences", broken)
    (told,) = say(bench, type="order", order=["s00"])
    assert told["type"] == "trouble" and "division by zero" in told["reason"]


@pytest.mark.parametrize("start", [["s00"], ["s00", "s01", "s02", "s03", "s03"], ["x"] * 5])
def test_bench_refuses_a_start_that_is_no_order(unit, start):
    with pytest.raises(UnitFileError, match="every step once"):
        order_bench(unit, start=start)


def test_simulator_steps_on_and_back_and_jumps(unit):
    rig = build_simulator(unit)
    assert rig.view["position"] == 0 and "nothing is done yet" in rig.view["happened"]
    say(rig, type="go", position=2)
    assert rig.finding.startswith("2 of 5 steps are done in 4 minutes")
    say(rig, type="go", position=-4)
    assert rig.view["position"] == 0
    say(rig, type="go", position=99)
    assert rig.view["position"] == 5
    assert rig.finding == "The unit is built in 10 minutes, and nothing had to wait."


def test_simulator_knows_how_the_unit_stands_a_step_back_and_a_step_on(unit):
    rig = build_simulator(unit, ["s01", "s00", "s02", "s03", "s04"])
    assert list(rig.near) == ["1"]
    for by in (1, 1, 1, 1, 1, -1, -1):
        before = rig.near
        say(rig, type="move", by=by)
        assert rig.view["build"] == before[str(rig.view["position"])]
    say(rig, type="go", position=5)
    assert list(rig.near) == ["4"]
    say(rig, type="go", position=1)
    say(rig, type="take", step="s00")
    before = rig.near["3"]
    say(rig, type="move", by=1)
    assert rig.view["position"] == 3 and rig.view["build"] == before


def test_simulator_refuses_what_cannot_be_done(unit):
    rig = build_simulator(unit, ["s01", "s00", "s02", "s03", "s04"])
    say(rig, type="go", position=1)
    assert "Cannot be done here." in rig.view["happened"]
    assert "“Step 0”" in rig.view["happened"]
    assert rig.done == ()


def test_simulator_tells_what_is_buried(unit):
    rig = build_simulator(unit, ["s00", "s02", "s01", "s03", "s04"])
    say(rig, type="go", position=2)
    assert ["Out of reach", "“Step 1”, under “Step 2”."] in rig.view["facts"]
    say(rig, type="go", position=3)
    assert "Out of reach here. “Step 2” is in the way." in rig.view["happened"]
    assert rig.done == ("s00", "s02")


def test_simulator_takes_another_step_next_and_tries_a_refused_one_again(unit):
    rig = build_simulator(unit, ["s01", "s00", "s02", "s03", "s04"])
    say(rig, type="go", position=1)
    say(rig, type="take", step="s00")
    say(rig, type="take", step="s01")
    assert rig.done == ("s00", "s01")
    assert sorted(rig.sequence) == sorted(rig.task.steps)
    assert rig.view["position"] == 2


def test_simulator_shows_faults_and_ignores_nonsense(unit):
    rig = build_simulator(unit)
    (told,) = say(rig, type="go", position="far")
    assert told["type"] == "trouble"
    assert say(rig, type="take", step="unknown") == [{"type": "trouble", "reason": ""}]


def test_simulator_refuses_a_step_that_stands_twice(unit):
    with pytest.raises(UnitFileError, match="twice"):
        build_simulator(unit, ["s00", "s01", "s00"])


def test_simulator_runs_the_clock(make_unit):
    clock = {
        "id": "film", "name": "The film skins over", "starts": "s00", "ends": "s02",
        "minutes": 5, "reason": "A skin does not seal", "loses": ["p00"],
    }  # fmt: skip
    unit = make_unit(3, [(0, 2)], minutes=(3.0,), clocks=[clock])
    rig = build_simulator(unit, ["s00", "s01", "s02"])
    say(rig, type="go", position=2)
    line = "The film skins over: 3 of 5 minutes used, running."
    assert ["Clock", line] in rig.view["facts"]
    say(rig, type="go", position=3)
    assert ["Clock", "The film skins over: 6 of 5 minutes used, too late."] in rig.view["facts"]
    assert ["Lost", "Part 0."] in rig.view["facts"]


def test_simulator_shows_holds(make_unit):
    hold = {
        "id": "lock", "name": "Both shafts are locked", "given_by": ["s00"], "ended_by": ["s02"],
        "needed_by": ["s01"], "reason": "A free shaft only turns",
    }  # fmt: skip
    rig = build_simulator(make_unit(3, holds=[hold]), ["s00", "s01", "s02"])
    say(rig, type="go", position=1)
    assert ["Holds", "Both shafts are locked."] in rig.view["facts"]
    say(rig, type="go", position=3)
    assert not any(word == "Holds" for word, _ in rig.view["facts"])


def test_rule_picture_shows_the_rules_around_a_step(unit):
    rig = rule_picture(unit)
    assert rig.near["step"] == "s00"
    say(rig, type="choose", step="s01")
    assert "1 step comes before it and 2 after it" in rig.near["words"]
    assert rig.near["sentences"][0].startswith("Before it: Step 0 (cannot)")
    assert any(one.startswith("After it: Step 2 (buries)") for one in rig.near["sentences"])
    assert 'data-step="s00"' in rig.near["figure"] and 'data-step="s02"' in rig.near["figure"]
    say(rig, type="choose", step="nothing")
    assert rig.near["step"] == "s01"
    assert "Step 2" in rig.plain_copy()


def test_rule_picture_refuses_an_unknown_focus(unit):
    with pytest.raises(UnitFileError, match="no step 's09'"):
        rule_picture(unit, focus="s09")


def test_every_thing_that_can_be_lost_has_a_name():
    from twoshaft.models.order import OrderTask
    from twoshaft.rigs.words import part_names
    from twoshaft.units import load_unit

    unit = load_unit("tarnbeck-b5")
    lost = {one for entry in (*unit.rules, *unit.clocks) for one in entry.loses}
    assert len(part_names(OrderTask.from_unit(unit), lost).split(", ")) >= len(lost) > 3


@pytest.mark.slow
def test_a_shuffled_shipped_unit_can_be_judged_and_stepped_through():
    import random

    from twoshaft.units import load_unit

    unit = load_unit("tarnbeck-b5")
    bench, rng = order_bench(unit), random.Random(4)
    for _ in range(20):
        order = list(bench.task.steps)
        rng.shuffle(order)
        assert say(bench, type="order", order=order) == []
        rig = build_simulator(unit, order)
        for place in range(0, len(order) + 1, 9):
            assert say(rig, type="go", position=place) == []
            assert rig.plain_copy()


def test_all_rigs_take_the_shipped_unit_whole():
    from twoshaft.units import load_unit

    unit = load_unit("tarnbeck-b5")
    bench, rig = order_bench(unit), build_simulator(unit)
    say(bench, type="order", order=list(model_order(bench.task)))
    assert bench.finding.startswith("This order works")
    say(rig, type="go", position=len(rig.sequence))
    assert rig.finding.startswith("The unit is built")
    assert rule_picture(unit).finding.startswith(f"{len(rig.task.steps)} steps")
