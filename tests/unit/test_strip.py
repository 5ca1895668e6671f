"""Taking apart: rules read backwards by brute force, windows of readings, oil, findings."""

from itertools import permutations

import pytest

from twoshaft.errors import OutOfRangeError, UnitFileError
from twoshaft.models import strip
from twoshaft.models.order import OrderTask, model_order, plan_slip
from twoshaft.models.strip.backwards import STAYS
from twoshaft.rigs.strip import strip_simulator
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q
from twoshaft.units.sections.order import RuleKind

BLOCKS = (RuleKind.CANNOT, RuleKind.BURIES)


@pytest.fixture(scope="module", params=["tarnbeck-b5", "tarnbeck-b5-early"])
def unit(request):
    return load_unit(request.param)


def changed(unit, **parts):
    return unit.with_sections(strip=unit.strip.model_copy(update=parts))


def without_own_rules(unit):
    return changed(unit, rules=(), readings=())


def build_order_holds(unit, order):
    """Whether steps in this order of building keep each rule that blocks; by the rules' own text."""
    place = {step: i for i, step in enumerate(order)}
    return all(
        place[rule.earlier] < place[rule.later]
        for rule in unit.rules
        if rule.kind in BLOCKS and rule.earlier in place and rule.later in place
    )


@pytest.mark.parametrize("stage", ["differential", "shift", "rear-end"])
def test_an_order_of_taking_apart_is_right_if_and_only_if_it_builds_backwards(unit, stage):
    """Every order of six steps, against the rules of the build read one by one."""
    bare = without_own_rules(unit)
    grouped = {op for group in unit.together for op in group.operations}
    held = {op for hold in unit.holds for op in (*hold.given_by, *hold.ended_by, *hold.needed_by)}
    limited = {rule.later for rule in unit.rules if rule.not_during}
    steps = [
        one.id for one in unit.operations
        if one.stage == stage and one.kind in STAYS and one.id not in grouped | held | limited
    ][:6]  # fmt: skip
    assert len(steps) >= 4
    task = OrderTask.from_unit(strip.strip_unit(bare), steps)
    direct = {(task.steps[b.earlier], task.steps[b.later]) for b in task.bonds}
    rights = 0
    for order in permutations(steps):
        place = {step: i for i, step in enumerate(order)}
        right = all(place[a] < place[b] for a, b in direct if {a, b} <= {*steps})
        blocked = all(place[a] < place[b] for a, b in task.pairs)
        assert right == blocked == (plan_slip(task, order).size == 0)
        assert not right or build_order_holds(unit, order[::-1])
        rights += right
    assert 0 < rights < 720


def test_every_blocking_rule_between_parts_that_stay_is_turned(unit):
    apart = strip.strip_unit(unit)
    stays = {one.id for one in unit.operations if one.kind in STAYS}
    for rule in unit.rules:
        if rule.earlier in stays and rule.later in stays:
            turned = apart.rule_by_id.get(rule.id)
            assert (turned is not None) == (rule.kind in BLOCKS), rule.id
            if turned:
                assert (turned.earlier, turned.later) == (rule.later, rule.earlier)


def test_minutes_of_undoing_and_building_change_places_and_a_reading_has_nothing_to_undo(unit):
    readings = {one.id: one for one in unit.strip.readings}
    for step in strip.strip_unit(unit).operations:
        if step.id in readings:
            assert (step.minutes_do, step.minutes_undo) == (readings[step.id].minutes, 0)
        else:
            built = unit.operation_by_id[step.id]
            assert step.minutes_do == built.minutes_undo
            assert step.minutes_undo == built.minutes_do


def test_what_takes_no_time_to_undo_takes_half_a_minute_apart(unit):
    quick = [one.model_copy(update={"minutes_undo": 0.0}) for one in unit.operations]
    apart = strip.strip_unit(unit.model_copy(update={"operations": tuple(quick)}), readings=False)
    assert {step.minutes_do for step in apart.operations} == {0.5}


def test_a_hold_is_given_by_undoing_what_ended_it(unit):
    apart = {hold.id: hold for hold in strip.strip_unit(unit).holds}
    locked = apart["train-locked"]
    assert locked.given_by == ("unlock-train",) and locked.ended_by == ("lock-train",)
    assert "splines-covered" not in apart  # no step of it is named: nothing to protect


def test_the_whole_unit_comes_apart_and_the_build_reversed_is_one_way(unit):
    task = strip.strip_task(unit)
    assert plan_slip(task, model_order(task)).size == 0
    bare = OrderTask.from_unit(strip.strip_unit(without_own_rules(unit)))
    backwards = [
        step for step in reversed(model_order(OrderTask.from_unit(unit))) if step in bare.number
    ]
    assert plan_slip(bare, backwards).size == 0


def test_every_step_has_a_name_of_its_own(unit):
    task = strip.strip_task(unit)
    assert [step for step in task.steps if task.label(step).startswith("Undo:")] == []
    assert len({task.label(step) for step in task.steps}) == len(task.steps)


def test_a_reading_is_covered_then_open_then_lost_along_every_order(unit):
    """Along a workable order the state of a reading never goes back."""
    task = strip.strip_task(unit)
    rank = {strip.COVERED: 0, strip.NOW: 1, strip.LOST: 2}
    order = [step for step in model_order(task) if step not in {r.id for r in unit.strip.readings}]
    for reading in unit.strip.readings:
        states = [strip.reading_state(task, reading.id, order[:n]) for n in range(len(order) + 1)]
        ranks = [rank[state] for state in states]
        assert ranks == sorted(ranks) and ranks[-1] == 2 and 1 in ranks


def test_a_reading_taken_late_is_a_wrong_step(unit):
    task = strip.strip_task(unit)
    order = [*model_order(task)]
    order.remove("depth-output")
    assert plan_slip(task, [*order, "depth-output"]).size == 1


def test_half_the_size_takes_four_times_as_long_and_heat_makes_it_quick(unit):
    oil = unit.strip.oil
    times = [strip.settling_time(oil, Q(size, "um"), Q(20, "degC")).m for size in (40, 20)]
    assert times[1] == pytest.approx(4 * times[0])
    warm = strip.settling_time(oil, Q(40, "um"), Q(60, "degC")).m
    assert warm < times[0] / 4
    assert strip.still_floating(oil, Q(40, "um"), Q(20, "degC"), Q(0, "min")) == 1
    assert strip.still_floating(
        oil, Q(40, "um"), Q(20, "degC"), Q(times[0], "min")
    ) == pytest.approx(0)


def test_a_chip_that_sinks_too_fast_for_stokes_is_refused(unit):
    with pytest.raises(OutOfRangeError, match="Reynolds"):
        strip.settling_time(unit.strip.oil, Q(3, "mm"), Q(90, "degC"))


def test_the_shim_that_is_worked_out_gives_the_float_that_is_wanted():
    shim = strip.shim_from_float(Q(1.2, "mm"), Q(0.3, "mm"), Q(-0.05, "mm"))
    assert shim.m == pytest.approx(1.55)
    assert strip.shim_from_float(shim, Q(-0.05 + 0.05, "mm"), Q(0, "mm")).m == pytest.approx(1.55)


def test_a_section_that_names_what_is_not_there_is_told(unit):
    rule = unit.strip.rules[0].model_copy(update={"first": "no-such-step"})
    found = strip.audit_strip(changed(unit, rules=(rule,)))
    assert "names 'no-such-step'" in found[0].what
    twice = changed(unit, steps=(unit.strip.steps[0],) * 2)
    assert "stands twice in steps" in strip.audit_strip(twice)[0].what
    clash = unit.strip.readings[0].model_copy(update={"id": "fill-oil"})
    assert "id of a step" in strip.audit_strip(changed(unit, readings=(clash,)))[0].what


def test_rules_that_run_in_a_circle_are_told(unit):
    rule = unit.strip.rules[0].model_copy(
        update={"id": "turned-round", "kind": "cannot", "first": "fit-magnet", "then": "lower-case"}
    )
    found = strip.audit_strip(changed(unit, rules=(*unit.strip.rules, rule)))
    assert len(found) == 1 and "read backwards" in found[0].what


def test_a_reading_that_nothing_ends_is_told(unit):
    never = unit.strip.readings[-3].model_copy(update={"same_as": None, "needs": ("wash-housing",)})
    found = strip.audit_strip(changed(unit, readings=(never,)))
    assert any("nothing that comes off ends" in one.what for one in found)


def test_a_unit_without_the_section_is_refused_in_a_sentence(unit):
    with pytest.raises(UnitFileError, match="no section 'strip'"):
        strip.strip_unit(unit.with_sections(strip=None))


def test_what_comes_off_next_is_known_a_step_ahead(unit):
    rig = strip_simulator(unit)
    for by in (1, 1, 1, -1, 1, 1):
        before = rig.near
        rig.hear({"type": "move", "by": by})
        assert rig.view["build"] == before[str(rig.view["position"])]
