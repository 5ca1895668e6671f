"""What learners are given in the module Order of work: their own, equally hard, without answers."""

import json
from collections import Counter

import pytest

from twoshaft.errors import CourseError, UnitFileError
from twoshaft.models.order import (
    OrderTask,
    broken_safety,
    buried_steps,
    mark,
    mended,
    model_order,
    moved,
    new_parts,
    plan_slip,
    ready_steps,
    reasons_between,
    replay,
    rework,
    window,
    with_many_hands,
    zero_mark_slip,
)
from twoshaft.models.shape import parts_fitted, step_parts, view_of
from twoshaft.readings import draw, issue_record, whole_units
from twoshaft.records import to_json
from twoshaft.units.loader import load_unit

LEARNERS = [f"a{i:03d}" for i in range(60)]
TASKS = [
    "sub_assembly",
    "whole_unit",
    "next_steps",
    "buried",
    "repair",
    "clock",
    "new_parts",
    "why",
    "several_hands",
    "safe",
]


def ids(pairs):
    return [pair.id for pair in pairs]


def given_to(unit, learner, attempt=1, salt="salt"):
    return draw("order-of-work", unit, salt=salt, learner=learner, attempt=attempt)


@pytest.fixture(scope="module")
def whole(unit):
    return OrderTask.from_unit(unit)


def test_plain_data_the_same_at_every_run(unit, drawn):
    again = json.loads(json.dumps(to_json(given_to(unit, LEARNERS[0]))))
    assert again == to_json(drawn[LEARNERS[0]])
    assert list(again) == TASKS


@pytest.mark.parametrize("task", TASKS)
def test_every_learner_has_another_task(drawn, task):
    different = {
        json.dumps(to_json(getattr(given, task)), sort_keys=True) for given in drawn.values()
    }
    assert len(different) > 0.9 * len(LEARNERS)


@pytest.mark.slow
@pytest.mark.parametrize("salt", ["salt", "another"])
def test_a_resit_changes_the_task_not_only_the_numbers(unit, salt):
    for learner in LEARNERS[:8]:
        first, second = (given_to(unit, learner, attempt, salt) for attempt in (1, 2))
        assert set(first.sub_assembly.operations) != set(second.sub_assembly.operations)
        assert first.sub_assembly.stage != second.sub_assembly.stage
        assert first.clock.clock != second.clock.clock
        assert first.repair.late != second.repair.late
        assert first.buried.operations != second.buried.operations
        assert first.new_parts.stripped != second.new_parts.stripped
        assert first.next_steps.done != second.next_steps.done
        assert first.safe.operations != second.safe.operations
        pairs = [{(p.earlier.id, p.later.id) for p in g.why.pairs} for g in (first, second)]
        assert pairs[0] != pairs[1]


def test_sub_assemblies_are_equally_hard(unit, drawn):
    tasks = []
    for given in drawn.values():
        one = given.sub_assembly
        task = OrderTask.from_unit(unit, one.operations, start=ids(one.start))
        assert sorted(ids(one.start)) == sorted(task.steps)
        assert mark(task, ids(one.start)) == 0
        assert mark(task, model_order(task)) == 1
        tasks.append(task)
    assert {len(task.steps) for task in tasks} == {9}
    r0 = [zero_mark_slip(task) for task in tasks]
    assert 3 <= min(r0) <= max(r0) <= min(r0) + 0.9
    assert min(len({bond.reason.kind for bond in task.bonds}) for task in tasks) >= 3
    assert len({given.sub_assembly.stage for given in drawn.values()}) >= 3


def test_a_sub_assembly_has_nothing_of_the_build_between_its_steps(whole, drawn):
    for given in drawn.values():
        inside = set(given.sub_assembly.operations)
        for step in set(whole.steps) - inside:
            after_one = any((one, step) in whole.pairs for one in inside)
            before_one = any((step, one) in whole.pairs for one in inside)
            assert not (after_one and before_one)


def test_whole_unit_starts_seven_steps_out_with_one_safety_rule_broken(unit, drawn):
    for given in list(drawn.values())[:60]:
        one = given.whole_unit
        task = OrderTask.from_unit(unit, one.operations, start=ids(one.start))
        start = ids(one.start)
        slip = plan_slip(task, start)
        assert slip.size == zero_mark_slip(task) == 7
        assert not (slip.missing or slip.doubled or slip.foreign)
        assert len(slip.broken_safety) == 1
        assert mark(task, start) == 0
        put_right = mended(task, start)
        assert plan_slip(task, put_right).size == 0
        assert moved(start, put_right) <= one.most_moves == 14
        grouped = [step for group in one.groups for step in group.steps]
        assert sorted(grouped) == sorted(task.steps)


def test_next_steps_have_ready_and_waiting_ones(whole, drawn):
    for given in drawn.values():
        one = given.next_steps
        assert replay(whole, ids(one.done)).stopped_at is None
        options = ids(one.options)
        assert len(set(options)) == 6
        ready = ready_steps(whole, ids(one.done))
        assert sum(step in ready for step in options) == 2
        now, *first = ids(one.answers)
        there = set(first) & set(ids(one.done))
        assert now == "now" and len(first) == 9 and len(there) == 5
        for earlier in there:  # done already, though one of the steps did wait for it
            at = whole.number[earlier]
            assert any(whole.before[whole.number[step]] >> at & 1 for step in options)
        for step in set(options) - set(ready):  # what it waits for is among the answers
            assert any((earlier, step) in whole.pairs for earlier in first)


def test_a_build_half_done_shows_what_is_ready_what_comes_before_and_what_after(unit, drawn, whole):
    fits = {s: parts_fitted(unit, whole.members[whole.number[s]]) for s in whole.steps}
    seen = {one.solid.part for one in view_of(unit, "shafts").drawn}
    ready, named = Counter(), Counter()
    for given in drawn.values():
        one = given.next_steps.half
        assert replay(whole, one.done).stopped_at is None and one.scene.view == "shafts"
        stands = {lie.part for lie in one.scene.lies}
        done = {part for step in one.done for part in fits[step]}
        assert stands == seen & {*done, *(part.id for part in unit.parts if part.in_place)}
        can = ready_steps(whole, one.done)  # nothing is left that the picture could not show
        assert all(seen & {*fits[step]} for step in can)
        step_at = {spot.text: s for spot in one.scene.spots for s in fits if spot.text in fits[s]}
        assert len(step_at) == len(set(step_at.values())) == 10
        free = {step for part, step in step_at.items() if part not in stands}
        now = free & {*can}
        before = {step for step in free if (step, one.waits.id) in whole.pairs}
        after = {step for step in free if (one.first.id, step) in whole.pairs}
        assert (len(now), len(before), len(after)) == (1, 2, 2) and 6 <= len(free) <= 7
        assert not after & (now | before)  # no letter is right for all three
        for step in free - now:  # whatever else is open waits for a part that would be seen
            missing = {s for s in whole.steps if (s, step) in whole.pairs} - {*one.done}
            assert any(seen & {*fits[s]} for s in missing)
        ready[min(now)] += 1
        named[one.waits.id] += 1
        named[one.first.id] += 1
    assert max(ready.values()) < len(drawn) / 4 and max(named.values()) < len(drawn) / 4


def test_where_the_unit_is_not_drawn_no_build_is_shown(unit):
    asked = given_to(unit.with_sections(shapes=None), LEARNERS[0]).next_steps
    assert asked.half is None and len(asked.options) == 6


def test_one_step_is_buried_and_no_other_rule_broken(unit, drawn):
    for given in drawn.values():
        one = given.buried
        task = OrderTask.from_unit(unit, one.operations)
        sequence = ids(one.sequence)
        slip = plan_slip(task, sequence)
        assert len(sequence) == 11
        assert slip.size == len(slip.broken) == 1
        ((buried, burying),) = buried_steps(task, sequence)
        assert 1 <= sequence.index(buried) - sequence.index(burying) <= 4
        stands = {lie.part for lie in one.scene.lies}
        letters = {spot.text for spot in one.scene.spots}
        mine, other = (
            set(step_parts(unit, task.members[task.number[step]])) & letters
            for step in (buried, burying)
        )
        assert mine and other and not mine & other and len(letters) >= 6
        if unit.operation_by_id.get(burying) and unit.operation_by_id[burying].kind == "fit":
            assert other <= stands  # what closes it off is there to be seen


def test_repairs_take_two_or_three_steps_off(unit, drawn):
    for given in drawn.values():
        one = given.repair
        task = OrderTask.from_unit(unit, one.operations)
        built, late = ids(one.built), one.late.id
        found = rework(task, built, late, undo=one.undo, do=one.do)
        options = ids(one.options)
        assert late not in built
        assert one.found_at.id == built[-1]
        assert len(found.off) in (2, 3)
        assert set(found.off) < set(options) <= set(built)
        assert len(options) == 8
        assert set(one.undo) == set(one.do) == set(built)
        assert found.minutes > 0
        # The whole unit says the same as the part of it that is shown.
        assert set(rework(OrderTask.from_unit(unit), built, late).off) == set(found.off)


def test_clocks_leave_some_steps_and_half_a_minute_never_decides(whole, drawn):
    for given in drawn.values():
        one = given.clock
        found = window(whole, one.clock, minutes=one.takes, allowed=one.minutes)
        options = ids(one.options)
        right = [step for step in options if step in found.inside + found.fits]
        assert len(set(options)) == 6
        assert len(right) in (2, 3)
        assert 1 <= found.minutes_left <= 6
        shown = {step.id: step.minutes for step in one.steps}
        assert shown == one.takes
        assert {*options, *found.inside, one.ends.id} <= set(shown)
        assert all(shown[step] != found.minutes_left for step in found.optional if step in shown)


def test_new_parts_are_among_the_options(whole, drawn):
    for given in drawn.values():
        one = given.new_parts
        must = new_parts(whole, ids(one.stripped))
        options = ids(one.options)
        loose = {part for s in ids(one.stripped) for part in whole.parts[whole.number[s]]}
        assert set(must) < set(options)
        assert sum(part in loose for part in options) == len(must) + 2
        assert len(must) in (2, 3)
        assert len(set(options)) == 7


def test_one_reason_fits_each_pair(whole, drawn):
    for given in drawn.values():
        kinds = []
        for pair in given.why.pairs:
            (reason,) = reasons_between(whole, pair.earlier.id, pair.later.id)
            assert ids(given.why.reasons).count(reason.rules[0]) == 1
            for rule in whole.unit.rules:
                if rule.id in ids(given.why.reasons) and rule.id != reason.rules[0]:
                    assert rule.later not in (pair.earlier.id, pair.later.id)
            kinds.append(reason.kind)
        assert len({option.text for option in given.why.reasons}) == 6
        assert len(set(kinds)) == 3
        assert ids(given.why.kinds) == ["cannot", "buries", "harms", "blinds"]


def test_one_plan_works_one_costs_and_one_or_two_are_dangerous(unit, drawn):
    counts = []
    for given in drawn.values():
        one = given.safe
        task = OrderTask.from_unit(unit, one.operations)
        slips = [plan_slip(task, ids(order.steps)) for order in one.orders]
        assert sorted(slip.size for slip in slips) == [0, 1, 1, 1]
        broken = [r for o in one.orders for r in broken_safety(task, ids(o.steps))]
        counts.append(len(broken))
        assert {reason.rules[0] for reason in broken} <= set(ids(one.options))
        assert ids(one.options)[:2] == ["works", "cost"]
        assert len({option.text for option in one.options}) == 5
    assert set(counts) == {1, 2}


def test_the_dangerous_order_stands_at_every_letter(unit, drawn):
    letters = []
    for given in drawn.values():
        one = given.safe
        task = OrderTask.from_unit(unit, one.operations)
        letters += [o.letter for o in one.orders if broken_safety(task, ids(o.steps))]
    for letter in "ABCD":
        assert letters.count(letter) > len(letters) / 8


@pytest.mark.slow
def test_record_of_what_was_issued(unit):
    record = issue_record("order-of-work", unit, salt="salt", learner="a000", attempt=1)
    assert {key: record[key] for key in ("format", "learner", "module", "attempt", "unit")} == {
        "format": 1,
        "learner": "a000",
        "module": "order-of-work",
        "attempt": 1,
        "unit": "tarnbeck-b5",
    }
    assert record["unit_version"] == unit.identity.version
    assert record["given"] == to_json(given_to(unit, "a000"))
    assert json.loads(json.dumps(record)) == record


@pytest.mark.slow
def test_a_practice_copy_can_be_drawn(unit):
    given = draw("order-of-work", unit, salt="practice", learner="practice", attempt=0)
    assert list(to_json(given)) == TASKS


@pytest.mark.slow
@pytest.mark.parametrize("shipped", whole_units())
def test_every_shipped_unit_holds_enough_for_every_task(shipped):
    unit = load_unit(shipped)
    for learner in LEARNERS[:5]:
        given = given_to(unit, learner)
        assert list(to_json(given)) == TASKS
        one = given.sub_assembly
        task = OrderTask.from_unit(unit, one.operations, start=ids(one.start))
        assert zero_mark_slip(task) >= 3


def test_unknown_module_and_too_small_unit_are_refused_in_a_sentence(unit, make_unit):
    with pytest.raises(CourseError, match="no module 'film'"):
        draw("film", unit, salt="s", learner="a", attempt=1)
    little = make_unit(3, [(0, 1)])
    with pytest.raises(UnitFileError, match="too small for the task 'sub_assembly'"):
        draw("order-of-work", little, salt="s", learner="a", attempt=1)


def test_sharing_is_equally_hard(unit, drawn):
    for given in drawn.values():
        shared = given.several_hands
        part = OrderTask.from_unit(unit, shared.operations)
        plan = with_many_hands(part, shared.takes)
        assert len(shared.rows) == 7
        assert 3 <= len(plan.no_spare) <= 5 and plan.minutes <= 0.8 * plan.alone
