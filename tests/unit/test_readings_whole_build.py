"""What learners are given in the module The whole build: own, equally hard, no answers."""

import json
import re
from collections import Counter

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models import order, shim
from twoshaft.models.wholebuild import Job, asks_of
from twoshaft.readings import draw, given_in
from twoshaft.readings.whole_build import TASKS
from twoshaft.records import labels, to_json
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q

LEARNERS = [f"a{i:03d}" for i in range(20)]


def given_to(unit, learner, attempt=1):
    return draw("whole-build", unit, salt="salt", learner=learner, attempt=attempt)


def test_plain_data_the_same_at_every_run(unit, drawn):
    stored = json.loads(json.dumps(to_json(given_to(unit, LEARNERS[0]))))
    assert given_in("whole-build", stored) == drawn[LEARNERS[0]]
    assert list(stored) == list(TASKS)


def test_learners_differ(drawn):
    for task in ("bench", "plan", "parts", "clock", "late"):
        kinds = {
            json.dumps(to_json(getattr(given, task)), sort_keys=True) for given in drawn.values()
        }
        assert len(kinds) == 20, task


@pytest.mark.slow
def test_a_resit_changes_the_task_not_only_the_numbers(unit):
    for learner in LEARNERS[:2]:
        one, two = given_to(unit, learner, 1), given_to(unit, learner, 2)
        assert one.bench.worn != two.bench.worn
        assert one.bench.found != two.bench.found
        assert set(one.bench.asked) != set(two.bench.asked)
        assert one.clock.clock != two.clock.clock
        assert set(labels(one.parts.lines)) != set(labels(two.parts.lines))
        assert set(labels(one.notes.signed.lines)) != set(labels(two.notes.signed.lines))
        assert one.turns.gear != two.turns.gear
        assert one.late.ask != two.late.ask
        assert set(labels(one.notes.scenes)) != set(labels(two.notes.scenes))
        assert set(labels(one.felt.scenes)) != set(labels(two.felt.scenes))
        assert set(labels(one.others.flange.lines)) != set(labels(two.others.flange.lines))
        assert set(labels(one.others.made.lines)) != set(labels(two.others.made.lines))


def test_every_bench_asks_as_much(unit, drawn):
    counts = {
        tuple(sorted(Counter(ask.kind for ask in asks_of(Job.of(unit, to_json(g.bench)))).items()))
        for g in drawn.values()
    }
    assert len(counts) == 1
    ((asked),) = counts
    asked = dict(asked)
    assert (asked["way"], asked["shim"], asked["joint"], asked["proof"]) == (8, 2, 3, 1)


def test_the_shelf_has_a_safe_shim_and_none_on_an_edge(unit, drawn):
    for given in drawn.values():
        for id, lengths in given.bench.lengths_mm.items():
            support = unit.bearings.support_by_id(id)
            read = {term: Q(mm, "mm") for term, mm in lengths.items()}
            assert shim.choose_for(support, unit.bearings, read).verdict == "safe"


def test_nothing_or_something_came_wrong_and_more_than_one_check_has_its_turn(drawn):
    counts = Counter(len(given.bench.worn) for given in drawn.values())
    assert set(counts) == {0, 1, 2} and max(counts.values()) <= 14
    assert len({one for given in drawn.values() for one in given.bench.worn}) >= 3


def test_as_many_parts_lie_right_as_turned_and_none_by_its_mark(unit, drawn):
    turned = Counter()
    for given in drawn.values():
        assert len(given.bench.lies) == 8
        for operation, lies in given.bench.lies.items():
            entry = unit.operation_by_id[operation]
            turned[bool(lies.so)] += 1
            for mark in (entry.orientation, *(way.name for way in entry.wrong_ways)):
                assert mark.rstrip(".") not in lies.seen
    assert min(turned.values()) >= 0.35 * turned.total()


def test_threads_are_found_as_the_card_wants_them_about_as_often_as_not(unit, drawn):
    fine = Counter()
    for given in drawn.values():
        bench = given.bench
        assert set(bench.found) == set(bench.threads) and len(bench.threads) == 6
        assert {ask[6:] for ask in bench.asked if ask.startswith("joint-")} <= set(bench.threads)
        fine.update(state == unit.fasteners.group(id).state for id, state in bench.found.items())
    assert min(fine.values()) >= 0.35 * fine.total()


def test_parts_and_checks_need_every_answer_somewhere_and_their_figures_are_own(drawn):
    """No answer is right for all lines of all learners, and a figure says what its line means."""
    kinds = (
        [g.parts for g in drawn.values()],
        [g.notes.signed for g in drawn.values()],
        [g.notes.record for g in drawn.values()],
        [g.others.flange for g in drawn.values()],
        [g.others.made for g in drawn.values()],
    )
    for scenes in kinds:
        shown = Counter(id for one in scenes for id in labels(one.lines))
        assert len(shown) >= 12 and max(shown.values()) <= 0.75 * len(scenes)
        texts = [text for one in scenes for text in labels(one.lines).values()]
        assert len(set(texts)) >= 0.7 * len(texts) and not any("{" in text for text in texts)
        assert all(len(one.answers) == 3 for one in scenes)
    for given in drawn.values():
        for id, text in labels(given.parts.lines).items():
            figures = [float(one) for one in re.findall(r"\d\.\d\d", text)]
            if id in ("ring-wide", "washer-thick", "washer-scored"):
                assert figures[0] > figures[1], text
            elif id == "ring-narrow":
                assert figures[0] < figures[1], text


def test_of_a_build_begun_two_steps_stand_two_can_come_and_two_must_wait(unit, drawn):
    task = order.OrderTask.from_unit(unit)
    for given in drawn.values():
        plan = given.plan
        ready, shown = set(order.ready_steps(task, plan.done)), set(labels(plan.next))
        assert len(shown & set(plan.done)) == len(shown & ready) == 2 and len(shown) == 6


def test_two_or_three_steps_fit_into_the_clock_and_none_nearly(unit, drawn):
    task = order.OrderTask.from_unit(unit)
    for given in drawn.values():
        c = given.clock
        found = order.window(task, c.clock, minutes=c.takes, allowed=c.minutes)
        takes = [c.takes[step] for step in labels(c.options)]
        assert sum(t <= found.minutes_left for t in takes) in (2, 3) and len(takes) == 6
        assert min(abs(t - found.minutes_left) for t in takes) >= 0.5


def test_two_to_five_steps_come_off_late(unit, drawn):
    task = order.OrderTask.from_unit(unit)
    for given in drawn.values():
        late = given.late
        off = set(order.rework(task, late.done, late.rows[0].id).off)
        shown = set(labels(late.options))
        assert off < shown and 2 <= len(off) <= 5 and len(shown - off) >= 3


def test_steps_are_shown_stage_by_stage_but_not_in_order(unit, drawn):
    task = order.OrderTask.from_unit(unit)
    for given in list(drawn.values())[:2]:
        start = list(labels(given.plan.start))
        assert sorted(start) == sorted(task.steps)
        assert order.mark(task.starting_from(start), start) == 0


@pytest.mark.slow
def test_a_unit_closed_on_a_gasket_asks_for_no_film():
    early = load_unit("tarnbeck-b5-early")
    given = given_to(early, "a")
    assert not given.bench.faces
    assert not any(ask.startswith("film-") for ask in given.bench.asked)


def test_a_unit_without_a_section_is_told(unit):
    with pytest.raises(UnitFileError, match="no section 'fasteners'"):
        given_to(unit.with_sections(fasteners=None), "a")
