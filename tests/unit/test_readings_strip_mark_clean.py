"""What learners are given in the module Strip, mark, clean: own, equally hard, no answers."""

import json
from collections import Counter

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models import strip
from twoshaft.models.order import OrderTask, chance_r0
from twoshaft.readings import draw, given_in
from twoshaft.readings.strip_mark_clean import TASKS
from twoshaft.readings.strip_mark_clean.chips import SHARES
from twoshaft.records import to_json
from twoshaft.units.quantities import Q

LEARNERS = [f"a{i:03d}" for i in range(60)]
SCENES = ("marks", "clean", "discard", "safe")


def given_to(unit, learner, attempt=1):
    return draw("strip-mark-clean", unit, salt="salt", learner=learner, attempt=attempt)


@pytest.fixture(scope="module")
def whole(unit):
    return strip.strip_task(unit)


def test_plain_data_the_same_at_every_run(unit, drawn):
    stored = json.loads(json.dumps(to_json(given_to(unit, LEARNERS[0]))))
    assert given_in("strip-mark-clean", stored) == drawn[LEARNERS[0]]
    assert list(stored) == list(TASKS)


def test_learners_differ(drawn):
    for task in TASKS:
        kinds = {json.dumps(to_json(getattr(g, task)), sort_keys=True) for g in drawn.values()}
        assert len(kinds) >= 55, task


@pytest.mark.slow
def test_a_resit_changes_the_task_not_only_the_numbers(unit):
    one, two = given_to(unit, "a001", 1), given_to(unit, "a001", 2)
    assert set(one.apart.operations) != set(two.apart.operations)
    for task in SCENES:
        before, after = ({row.id for row in getattr(g, task).lines} for g in (one, two))
        assert not before & after, task


def test_orders_are_alike_hard_and_are_not_right_as_shown(unit, drawn):
    levels = []
    for given in list(drawn.values())[:12]:
        task = strip.strip_task(unit, given.apart.operations)
        levels.append(chance_r0(task))
        place = {row.id: i for i, row in enumerate(given.apart.start)}
        assert any(place[a] > place[b] for a, b in task.pairs)
    assert min(levels) >= 5 and max(levels) <= 8


def test_each_next_step_has_one_right_answer(unit, drawn):
    bare = OrderTask.from_unit(strip.strip_unit(unit, readings=False))
    rights = Counter()
    for given in drawn.values():
        blockers = {one.id for one in given.apart.answers} - {"now"}
        off = {step.id for step in given.apart.state if step.off}
        assert len(given.apart.lines) == 4 and len(blockers) == 3 and not blockers & off
        for line in given.apart.lines:
            waits = [one for one in blockers if (one, line.id) in bare.pairs]
            assert len(waits) <= 1
            rights[bool(waits)] += 1
    assert 0.2 < rights[False] / sum(rights.values()) < 0.6


def test_readings_are_now_covered_and_lost_in_every_state(unit, drawn, whole):
    seen = Counter()
    for given in drawn.values():
        off = {step.id for step in given.lost.state if step.off}
        states = Counter(strip.reading_state(whole, one.id, off) for one in given.lost.readings)
        assert max(states.values()) == 2 and len(states) == 3
        seen.update(states)
        # What bears on a reading stands in the table, done or not.
        shown = {step.id for step in given.lost.state}
        for one in given.lost.readings:
            assert shown >= {*strip.covered_by(whole, one.id), *strip.lost_with(whole, one.id)}
    assert min(seen.values()) > 0.25 * sum(seen.values())


def test_a_next_step_ends_one_reading_offered_at_most(drawn, whole):
    for given in drawn.values():
        offered = [one.id for one in given.lost.firsts if one.id != "nothing"]
        ends = [
            [r for r in offered if one.id in strip.lost_with(whole, r)] for one in given.lost.nexts
        ]
        assert max(map(len, ends)) == 1 and 0 < len(given.lost.taken) < len(offered)


def test_every_scene_comes_up_and_four_are_shown(drawn):
    for task in SCENES:
        shown = Counter(row.id for g in drawn.values() for row in getattr(g, task).lines)
        assert len(shown) in (12, 15) and min(shown.values()) > 5
        assert all(len(getattr(g, task).lines) == 4 for g in drawn.values())


def test_figures_decide_beyond_doubt(unit, drawn):
    unsure = unit.strip.oil.unsure_litre
    for given in drawn.values():
        for one in given.worked.others:
            beyond = max(one.mm - one.high_mm, one.low_mm - one.mm)
            assert abs(abs(beyond) - one.unsure_mm) > 0.004 or abs(beyond) <= one.unsure_mm
            assert one.mm > 0
        for one in given.oil.others:
            gap = abs(one.capacity_litre - one.stays_litre - one.drained_litre)
            assert gap < 0.75 * unsure or gap > 1.3 * unsure
        for one in given.chips.rested:
            whole = given.chips.known_minutes * (given.chips.known_um / one.size_um) ** 2
            share = one.minutes / whole
            assert share < 0.095 or 0.2 < share < 0.8 or share > 1.2
    assert set(SHARES) == {"floor", "both", "oil"}


def test_the_own_oil_is_short_or_over_by_more_than_is_unsure(unit, drawn):
    oil = unit.strip.oil
    for given in drawn.values():
        missing = strip.litres_missing(oil, Q(given.oil.jug_litre, "l"), Q(given.oil.jug_c, "degC"))
        assert abs(missing.m_as("l")) > 1.5 * oil.unsure_litre


def test_a_unit_without_the_section_is_told(unit):
    with pytest.raises(UnitFileError, match="no section 'strip'"):
        given_to(unit.with_sections(strip=None), "ann")
    few = unit.strip.model_copy(update={"readings": unit.strip.readings[:3]})
    with pytest.raises(UnitFileError, match="fewer than 6 readings"):
        given_to(unit.with_sections(strip=few), "ann")
