"""The bench after some steps, against the other judgements of the same order."""

import random

from twoshaft.models.order import OrderTask, consequences, model_order, ready_steps, replay
from twoshaft.models.order.snapshot import snapshot
from twoshaft.units import load_unit


def test_a_correct_order_is_done_whole_and_breaks_nothing():
    task = OrderTask.from_unit(load_unit("tarnbeck-b5"))
    order = model_order(task)
    for k in range(len(order) + 1):
        bench = snapshot(task, order[:k])
        assert bench.done == tuple(order[:k])
        assert not bench.refused and not bench.broken and not bench.lost_reach
        assert k == len(order) or order[k] in bench.ready
    assert bench.minutes == replay(task, order).minutes
    assert not any(clock.late for clock in bench.clocks)


def test_the_first_refusal_is_the_first_trouble_of_the_order():
    task = OrderTask.from_unit(load_unit("tarnbeck-b5"))
    rng = random.Random(8)
    for _ in range(40):
        order = list(task.steps)
        rng.shuffle(order)
        bench = snapshot(task, order)
        first = bench.refused[0].step
        cut = order[: order.index(first) + 1]
        states = {one.step: one.state for one in consequences(task, cut)}
        assert states[first] in ("blocked", "buried")
        assert all(states[s] not in ("blocked", "buried") for s in cut[:-1])
        assert set(bench.done).isdisjoint(one.step for one in bench.refused)
        assert bench.ready == ready_steps(task, bench.done)


def test_harm_is_done_and_costs_its_part(make_unit):
    rule = {
        "id": "lip", "kind": "harms", "earlier": "s00", "later": "s01",
        "reason": "The bare splines cut the lip", "loses": ["p01"],
    }  # fmt: skip
    task = OrderTask.from_unit(make_unit(2, rules=[rule]))
    bench = snapshot(task, ["s01"])
    assert bench.done == ("s01",) and bench.parts_lost == ("p01",)
    assert [reason.rules for reason in bench.broken] == [("lip",)]
    assert snapshot(task, ["s00", "s01"]).parts_lost == ()


def test_covered_steps_are_hidden_when_done_and_lost_when_not(make_unit):
    task = OrderTask.from_unit(make_unit(3, [(0, 2, "buries"), (1, 2, "buries")]))
    bench = snapshot(task, ["s00", "s02"])
    assert bench.hidden == (("s00", "s02"),)
    assert bench.lost_reach == (("s01", "s02"),)


def test_a_hold_given_twice_is_on_between(make_unit):
    hold = {
        "id": "gears", "name": "Two gears are in", "given_by": ["s00", "s03"],
        "ended_by": ["s02", "s05"], "needed_by": ["s01", "s04"], "reason": "The shafts would turn",
    }  # fmt: skip
    task = OrderTask.from_unit(make_unit(6, holds=[hold]))
    steps = [f"s{i:02d}" for i in range(6)]
    on = [bool(snapshot(task, steps[:k]).holds) for k in range(7)]
    assert on == [False, True, True, False, True, True, False]
