"""Compiling a unit's rules: groups, holds, choices, and tasks of some of the steps."""

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models.order import OrderTask, model_order, plan_slip, ready_steps
from twoshaft.units.sections.order import RuleKind


def hold(given_by, ended_by, needed_by):
    return {
        "id": "held",
        "name": "Held fast",
        "given_by": given_by,
        "ended_by": ended_by,
        "needed_by": needed_by,
        "reason": "it turns unless it is held",
    }


def any_of(ways, later, kind="cannot"):
    reason = "one of them has to be there"
    return {"id": "any-way", "kind": kind, "any_of": ways, "later": later, "reason": reason}


def never(later, kind="blinds"):
    reason = "worth nothing while it is held"
    return {"id": "never", "kind": kind, "not_during": "held", "later": later, "reason": reason}


def test_a_group_is_one_step(make_unit):
    group = {"id": "pair", "name": "The pair", "operations": ["s01", "s02"], "reason": "meshed"}
    task = OrderTask.from_unit(make_unit(4, [(0, 1), (2, 3)], minutes=(1, 2), together=[group]))
    assert task.steps == ("s00", "pair", "s03")
    assert task.label("pair") == "The pair"
    assert task.minutes("pair") == 3
    assert ("s00", "s03") in task.pairs
    assert plan_slip(task, ["s00", "s01", "s03"]).size == 0  # a member stands for its group
    assert OrderTask.from_unit(task.unit, ["s02", "s03"]).steps == ("pair", "s03")


def test_order_through_steps_left_out_is_kept_with_its_chain_of_rules(make_unit):
    unit = make_unit(4, [(0, 1, "buries"), (1, 2, "cannot"), (2, 3, "harms")])
    task = OrderTask.from_unit(unit, ["s03", "s00"])
    assert task.steps == ("s00", "s03")
    assert task.pairs == {("s00", "s03")}
    (bond,) = task.bonds
    assert bond.reason.rules == ("r-00-01-0", "r-01-02-1", "r-02-03-2")
    assert bond.reason.kind is RuleKind.BURIES  # the steps left out are done in time
    assert plan_slip(task, ["s03", "s00"]).broken == (bond.reason,)


def test_a_hold_with_one_giver_and_one_ender_becomes_order(make_unit):
    task = OrderTask.from_unit(make_unit(3, holds=[hold(["s00"], ["s02"], ["s01"])]))
    assert not task.choices
    assert task.pairs == {("s00", "s01"), ("s01", "s02"), ("s00", "s02")}
    assert [r.kind for r in plan_slip(task, ["s00", "s02", "s01"]).broken] == [RuleKind.BURIES]


def test_any_of_counts_in_the_way_that_costs_least(make_unit):
    task = OrderTask.from_unit(make_unit(4, rules=[any_of(["s00", "s01"], "s02")]))
    assert plan_slip(task, ["s01", "s02", "s00", "s03"]).size == 0
    slip = plan_slip(task, ["s02", "s03", "s00", "s01"])
    assert slip.size == 1
    assert slip.broken[0].earlier == ("s00", "s01")
    assert ready_steps(task, ["s03"]) == ("s00", "s01")


def test_not_during_a_hold(make_unit):
    unit = make_unit(4, holds=[hold(["s00"], ["s02"], ["s01"])], rules=[never("s03")])
    task = OrderTask.from_unit(unit)
    for order in ("s03 s00 s01 s02", "s00 s01 s02 s03"):
        assert plan_slip(task, order.split()).size == 0
    slip = plan_slip(task, ["s00", "s03", "s01", "s02"])
    assert slip.size == 1
    assert slip.broken[0].rules == ("never",)
    assert "s03" not in ready_steps(task, ["s00"])


def test_a_window_opened_twice(make_unit):
    # s00 and s03 each hold it, s02 lets go; s01 and s04 need it held.
    held = hold(["s00", "s03"], ["s02"], ["s01", "s04"])
    task = OrderTask.from_unit(make_unit(5, holds=[held]))
    good = ["s00", "s01", "s02", "s03", "s04"]
    assert plan_slip(task, good).size == 0
    assert plan_slip(task, ["s00", "s01", "s04", "s02", "s03"]).size == 0
    slip = plan_slip(task, ["s00", "s01", "s02", "s04", "s03"])
    assert slip.size == 1
    assert {r.later for r in slip.broken} == {"s04"}
    assert plan_slip(task, model_order(task)).size == 0


def test_a_rule_whose_other_way_may_already_be_done_is_dropped(make_unit):
    unit = make_unit(4, rules=[any_of(["s00", "s01"], "s02")])
    assert not OrderTask.from_unit(unit, ["s00", "s02", "s03"]).choices
    # Unless the way left out comes after the step anyway.
    unit = make_unit(4, [(2, 1)], rules=[any_of(["s00", "s01"], "s02")])
    (choice,) = OrderTask.from_unit(unit, ["s00", "s02", "s03"]).choices
    assert len(choice.options) == 1


def test_rules_in_a_circle_and_unknown_ids_are_refused(make_unit):
    with pytest.raises(UnitFileError, match="circle"):
        OrderTask.from_unit(make_unit(3, [(0, 1), (1, 2), (2, 0)]))
    with pytest.raises(UnitFileError, match="s77"):
        OrderTask.from_unit(make_unit(3), ["s00", "s77"])


def test_choices_that_contradict_each_other_are_refused(make_unit):
    unit = make_unit(
        4, [(0, 2)], holds=[hold(["s00", "s02"], ["s01"], ["s03"])], rules=[never("s03", "cannot")]
    )
    with pytest.raises(UnitFileError, match="contradict"):
        OrderTask.from_unit(unit)


@pytest.fixture
def staged(make_unit):
    """Twelve steps in three stages, one chain."""
    return OrderTask.from_unit(make_unit(12, [(i, i + 1) for i in range(11)], stages=3))


def test_a_named_block_misplaced_as_one_costs_once(staged):
    one, two, three = staged.steps[:4], staged.steps[4:8], staged.steps[8:]
    slip = plan_slip(staged, [*two, *one, *three])
    assert slip.size == 1
    assert slip.blocks in (("g0",), ("g1",))
    assert slip.redo == ()
    assert plan_slip(staged, [*three, *two, *one]).size == 2


def test_a_slip_inside_a_moved_block_is_counted_as_well(staged):
    one, two, three = staged.steps[:4], staged.steps[4:8], staged.steps[8:]
    assert plan_slip(staged, [*two, one[1], one[0], *one[2:], *three]).size == 2
    stray = [*two[:2], three[0], *two[2:], *one, *three[1:]]
    assert plan_slip(staged, stray).size == 2


def test_a_block_torn_apart_costs_step_by_step(staged):
    one, two, three = staged.steps[:4], staged.steps[4:8], staged.steps[8:]
    assert (
        plan_slip(staged, [two[0], one[0], two[1], one[1], two[2], *one[2:], two[3], *three]).size
        == 3
    )


def test_a_block_with_something_between_its_steps_is_no_block(make_unit):
    task = OrderTask.from_unit(make_unit(6, [(0, 3), (3, 1)], stages=2))
    assert [block.id for block in task.blocks] == ["g1"]


def test_broken_safety_is_reported_even_when_the_earlier_step_is_missing(make_unit):
    rule = {
        "id": "guard",
        "kind": "harms",
        "earlier": "s00",
        "later": "s01",
        "reason": "it flies out",
        "safety": True,
        "loses": ["p01"],
    }
    task = OrderTask.from_unit(make_unit(3, rules=[rule]))
    for order in (["s01", "s00", "s02"], ["s01", "s02"], ["s01", "s00", "s01", "s02"]):
        assert [r.rules for r in plan_slip(task, order).broken_safety] == [("guard",)]
    assert plan_slip(task, ["s02", "s00"]).broken_safety == ()


def test_model_order_keeps_the_clocks(make_unit):
    clock = {
        "id": "skin",
        "name": "It skins over",
        "starts": "s00",
        "ends": "s03",
        "minutes": 4,
        "reason": "it no longer seals",
    }
    # In the order of the file the clock would run out; s01 and s02 can come before.
    task = OrderTask.from_unit(make_unit(4, [(0, 3), (1, 3)], minutes=(3,), clocks=[clock]))
    order = model_order(task)
    place = order.index
    assert sorted(order) == sorted(task.steps)
    assert place("s03") == place("s00") + 1 and place("s01") < place("s03")
