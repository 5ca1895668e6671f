"""What learners are given in the module Shift mechanism: their own, equally hard, no answers."""

import json
import statistics
from collections import Counter

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models import shift
from twoshaft.models.order import OrderTask
from twoshaft.models.order.mark import chance_r0
from twoshaft.questions import bank_of
from twoshaft.readings import draw, given_in
from twoshaft.readings.shift_and_lockout import TASKS
from twoshaft.records import to_json
from twoshaft.units.quantities import Q

LEARNERS = [f"a{i:03d}" for i in range(200)]


SCENES = {
    "two_at_once": lambda given: given.interlock.does,
    "sure": lambda given: given.unseen,
    "safe": lambda given: given.safe,
}


def ids(scenes):
    return {line.id for line in scenes.lines}


def given_to(unit, learner, attempt=1, salt="salt"):
    return draw("shift-and-lockout", unit, salt=salt, learner=learner, attempt=attempt)


def test_plain_data_the_same_at_every_run(unit, drawn):
    stored = json.loads(json.dumps(to_json(given_to(unit, LEARNERS[0]))))
    assert given_in("shift-and-lockout", stored) == drawn[LEARNERS[0]]
    assert list(stored) == list(TASKS)


def test_learners_differ(drawn):
    for task in TASKS:
        kinds = {
            json.dumps(to_json(getattr(given, task)), sort_keys=True) for given in drawn.values()
        }
        least = {"gate": 4, "reveal": 3}.get(task, 20)
        assert len(kinds) >= least, task
    whole = {json.dumps(to_json(given), sort_keys=True) for given in drawn.values()}
    assert len(whole) == len(LEARNERS)


@pytest.mark.slow
def test_a_resit_changes_the_task_not_only_the_numbers(unit):
    for learner in LEARNERS[:12]:
        one, two = given_to(unit, learner, 1), given_to(unit, learner, 2)
        assert one.gate.mirror != two.gate.mirror
        assert one.reveal.misbuild != two.reveal.misbuild
        assert one.symptoms.misbuilds != two.symptoms.misbuilds
        assert one.one_test.name != two.one_test.name
        assert one.order.operations != two.order.operations
        assert one.interlock.cases != two.interlock.cases
        for pick in SCENES.values():
            assert not ids(pick(one)) & ids(pick(two))


def test_records_are_what_the_mechanism_does(unit, drawn):
    """Every record fits some mechanism of the unit, made again from its plain data."""
    for given in list(drawn.values())[:40]:
        mirror = given.gate.mirror
        records = [given.one_test.record, given.explain.record, *given.lockout.records]
        for task in records:
            work = shift.read_record(task.lines)
            builds = [[], *([m.id] for m in unit.shift.misbuilds)]
            fitting = [
                b for b in builds if shift.explains(shift.fitted(unit.shift, b, mirror), work)
            ]
            assert fitting, task


def test_choices_have_as_many_options_and_a_right_one_for_everybody(unit, drawn):
    for task in ("one_test", "explain"):
        rights = Counter()
        for given in drawn.values():
            options = [id for id, _ in getattr(given, task).options]
            work = shift.read_record(getattr(given, task).record.lines)
            mirror = given.gate.mirror
            right = [
                id for id in options if shift.explains(shift.fitted(unit.shift, [id], mirror), work)
            ]
            assert len(options) == 7 and 1 <= len(right) <= 4
            rights[len(right)] += 1
        assert len(rights) > 1


def test_verdicts_come_up_evenly_and_lie_clear_of_their_limits(drawn):
    detents, pins, fingers = Counter(), Counter(), Counter()
    for given in drawn.values():
        d = given.detent
        spring = Q(d.rate_n_per_mm * (d.free_mm - d.fitted_mm), "N")
        force = shift.detent_force(spring, Q(d.ramp_deg, "deg"), d.friction).to_start.magnitude
        low, high = d.limits_n
        assert min(abs(force - low) / low, abs(force - high) / high) >= 0.06
        detents["weak" if force < low else "strong" if force > high else "fit"] += 1
        lock = given.interlock
        play = shift.pin_play(*(Q(mm, "mm") for mm in (lock.notch_mm, lock.gap_mm, lock.length_mm)))
        way = shift.free_movement(play, Q(lock.ramp_deg, "deg")).magnitude
        assert abs(way - lock.limit_mm) >= 0.12
        pins[way <= lock.limit_mm] += 1
        p = given.pin
        far = shift.other_end(*(Q(mm, "mm") for mm in (p.hub_mm, p.pin_mm, p.struck_mm))).magnitude
        ends = [p.struck_mm, far]
        assert min(abs(end - p.least_mm) for end in ends) >= 0.15
        fingers[tuple(end >= p.least_mm for end in ends)] += 1
    assert min(detents.values()) > 40 and len(detents) == 3
    assert min(pins.values()) > 60
    assert min(fingers.values()) > 40 and len(fingers) == 3


def test_readings_of_the_proof_come_up_evenly(unit, drawn):
    seen = Counter()
    for given in drawn.values():
        own = shift.mirrored(unit.shift, *given.gate.mirror)
        works = [shift.read_record(record.lines) for record in given.lockout.records]
        says = [shift.lockout_reading(own, work, "fifth", "reverse") for work in works]
        assert len(says) == 4 and len(set(says)) == 3
        seen.update(says)
    assert set(seen) == {"proven", "fails", "half", "no-gear"} and min(seen.values()) > 30


def test_the_three_symptoms_differ(unit, drawn):
    for given in list(drawn.values())[:60]:
        kinds = [
            shift.symptoms(shift.prove_by_hand(shift.fitted(unit.shift, [id])))
            for id, _ in given.symptoms.misbuilds
        ]
        assert len(set(kinds)) == 3


def test_the_order_is_equally_hard_for_all(unit, drawn):
    r0 = {
        chance_r0(OrderTask.from_unit(unit, operations))
        for operations in {tuple(given.order.operations) for given in drawn.values()}
    }
    assert min(r0) >= 3 and max(r0) - min(r0) <= 0.9


def test_one_rail_free_and_one_locked(unit, drawn):
    for given in drawn.values():
        assert len({(case.gear, case.missing.id) for case in given.interlock.cases}) == 2
        for case in given.interlock.cases:
            left = shift.without_pin(unit.shift, case.missing.id)
            assert len(shift.locked_rails(left, case.gear)) == 1


def test_what_is_beside_the_own_part_lies_clear_and_no_verdict_does_for_all(drawn):
    pins, ends, pulls = Counter(), Counter(), Counter()
    for given in drawn.values():
        for one in given.interlock.others:
            assert one.free_mm == one.gear_mm or abs(one.free_mm - one.limit_mm) >= 0.09
            pins[one.free_mm == one.gear_mm, one.free_mm <= one.limit_mm] += 1
        does = set()
        for one in given.pin.others:
            short = one.struck_mm + one.far_mm < 2 * one.least_mm
            found = [end >= one.least_mm for end in (one.struck_mm, one.far_mm)]
            does.add("shorter" if short else tuple(found))
        assert len(does) == 3
        ends.update(does)
        for one in given.detent.others:
            low, high = one.limits_n
            assert min(abs(pull - limit) for pull in one.pulls_n for limit in (low, high)) >= 2
            inside = {low <= pull <= high for pull in one.pulls_n}
            pulls["again" if len(inside) > 1 else "fit" if True in inside
                  else max(one.pulls_n) < low] += 1  # fmt: skip
    assert len(pins) == 3 and min(pins.values()) > 60
    assert len(ends) == 4 and min(ends.values()) > 60
    assert len(pulls) == 4 and min(pulls.values()) > 60


@pytest.mark.parametrize("name", SCENES)
def test_scenes_are_dealt_evenly_and_filled_with_figures_of_ones_own(drawn, name):
    counts = Counter()
    for given in drawn.values():
        scenes = SCENES[name](given)
        assert len(ids(scenes)) == 4 and not any("{" in line.text for line in scenes.lines)
        counts.update(ids(scenes))
    every = bank_of("shift-and-lockout").lists[name]
    assert set(counts) == {one.id for one in every}
    assert min(counts.values()) > 0.5 * statistics.mean(counts.values())


@pytest.mark.slow
def test_a_unit_without_a_shift_is_told_and_one_without_a_lockout_gets_less(unit):
    with pytest.raises(UnitFileError, match=r"no section 'shift'"):
        given_to(unit.with_sections(shift=None), "a")
    plain = unit.with_sections(shift=unit.shift.model_copy(update={"must_block": ()}))
    given = given_to(plain, "a")
    assert given.lockout is None and given.explain is not None
    assert not any(label.startswith("from ") for label, _ in given.explain.record.words)
