"""What learners are given in the module Reading faults backwards: own, equally hard, no answers."""

import json
from collections import Counter

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models import faults
from twoshaft.models.order import OrderTask, plan_slip
from twoshaft.readings import draw, given_in
from twoshaft.readings.reading_faults import TASKS
from twoshaft.records import labels, to_json

LEARNERS = [f"a{i:03d}" for i in range(120)]


def given_to(unit, learner, attempt=1):
    return draw("reading-faults", unit, salt="salt", learner=learner, attempt=attempt)


def observed(record):
    return {row.check: row.key for row in record}


def test_plain_data_the_same_at_every_run(unit, drawn):
    stored = json.loads(json.dumps(to_json(given_to(unit, LEARNERS[0]))))
    assert given_in("reading-faults", stored) == drawn[LEARNERS[0]]
    assert list(stored) == list(TASKS)


def test_learners_differ(drawn):
    for task in TASKS:
        kinds = {
            json.dumps(to_json(getattr(given, task)), sort_keys=True) for given in drawn.values()
        }
        assert len(kinds) >= 80, task


@pytest.mark.slow
def test_a_resit_changes_the_task_not_only_the_numbers(unit):
    for learner in LEARNERS[:4]:
        one, two = given_to(unit, learner, 1), given_to(unit, learner, 2)
        assert one.stop.found[0] != two.stop.found[0]
        for name in ("cases", "found"):
            ids = [{row.id for row in getattr(given.stop, name)[-3:]} for given in (one, two)]
            assert not ids[0] & ids[1], name
        assert observed(one.explain.record) != observed(two.explain.record)
        for task in ("next", "dead", "plan"):
            ids = [{row.id for row in getattr(given, task).suspects} for given in (one, two)]
            assert ids[0] != ids[1], task
        assert one.count.gear != two.count.gear
        assert one.cord.false != two.cord.false
        assert set(labels(one.blind.steps)) != set(labels(two.blind.steps))


def test_two_or_three_of_seven_explain_the_record(unit, drawn):
    rights = Counter()
    for given in drawn.values():
        task = given.explain
        offered = {key for key, _ in task.options}
        right = set(faults.explain(unit, observed(task.record)).singles)
        assert right <= offered and len(offered) == 7 and len(right) in (2, 3)
        rights[len(right)] += 1
    assert min(rights.values()) > 30


def test_one_pair_only_explains_two_failed_checks(unit, drawn):
    for given in drawn.values():
        task = given.two
        found = faults.explain(unit, observed(task.record))
        offered = {tuple(key.split("+")) for key, _ in task.pairs}
        assert not found.singles
        assert len(offered & set(found.doubles)) == 1 and len(offered) == 6
        assert {row.id for row in task.often}.isdisjoint(found.doubles[0])


def test_the_best_check_leads_clearly(unit, drawn):
    for given in drawn.values():
        task = given.next
        five = [(row.id,) for row in task.suspects]
        first, second = faults.next_check(unit, {}, among=five)[:2]
        assert first.bits_per_minute >= 1.3 * second.bits_per_minute
        offered = {row.id for row in task.checks}
        assert first.check in offered and task.asked_check in offered and len(offered) == 6


def test_three_of_seven_checks_tell_something(unit, drawn):
    for given in drawn.values():
        task = given.dead
        left = [(key,) for key, _ in task.suspects]
        telling = {one.check for one in faults.next_check(unit, {}, among=left)}
        assert len(telling & {key for key, _ in task.checks}) == 3
        assert len(task.checks) == 7


def test_the_quickest_plan_is_quickest_by_more_than_rounding(unit, drawn):
    for given in list(drawn.values())[:25]:
        task = given.plan
        four = [(row.id,) for row in task.suspects]
        took = {
            key: faults.expected_minutes(unit, key.split("+"), four).m_as("min")
            for key, _ in task.options
        }
        best, second = sorted(took.values())[:2]
        assert len(took) == 6 and second - best >= 0.6
        assert abs(took[task.plans[0].id] - took[task.plans[1].id]) >= 0.6


def test_one_pair_is_alike_and_one_misbuild_silent(unit, drawn):
    groups = faults.indistinguishable(unit)
    for given in drawn.values():
        pairs = [set(key.split("+")) for key, _ in given.alike.pairs]
        assert len(pairs) == 6
        assert sum(any(pair <= set(g.misbuilds) for g in groups) for pair in pairs) == 1
        silent = {one for g in groups if g.silent for one in g.misbuilds}
        offered = {key for key, _ in given.silent.options}
        assert len(offered & silent) == 1 and len(offered) == 6


def test_decisions_come_up_evenly_and_lie_clear(drawn):
    pulls, own = Counter(), Counter()
    for given in drawn.values():
        c = given.cord
        rest = c.shown_n - c.alone_n
        low, high, doubt = c.low_n, c.high_n, c.doubt_n
        assert min(abs(rest - low), abs(rest - high)) >= 2 * doubt
        pulls["light" if rest < low else "heavy" if rest > high else "inside"] += 1
        own[sum(row.key != faults.PASSES for row in given.own.record)] += 1
    assert len(pulls) == 3 and min(pulls.values()) > 20
    assert own[1] and own[2]


def test_own_units_are_explained_within_the_options(unit, drawn):
    kinds = Counter()
    for given in drawn.values():
        found = faults.explain(unit, observed(given.own.record))
        offered = {key for key, _ in given.own.options}
        fewest = min(len(one) for one in found.least)
        least = [one for one in found.least if len(one) == fewest]
        assert len(offered) == 8 and {one for s in least for one in s} <= offered
        kinds[fewest, len(least) > 1] += 1
    assert set(kinds) == {(1, False), (1, True), (2, False)} and min(kinds.values()) > 20


def test_one_rule_is_broken_in_the_record(unit, drawn):
    for given in list(drawn.values())[:25]:
        steps = [step for step, _ in given.blind.steps]
        broken = plan_slip(OrderTask.from_unit(unit, steps), steps).broken
        assert len({(reason.earlier, reason.later) for reason in broken}) == 1
        assert len(steps) == 6 and len(given.blind.reasons) == 5


def test_a_unit_without_faults_is_told(unit):
    with pytest.raises(UnitFileError, match="no section 'faults'"):
        given_to(unit.with_sections(faults=None), "a")


def test_a_unit_with_too_few_misbuilds_is_told(unit):
    few = unit.faults.model_copy(update={"misbuilds": unit.faults.misbuilds[:2]})
    with pytest.raises(UnitFileError, match="too few misbuilds or checks"):
        given_to(unit.with_sections(faults=few), "a")
