"""What learners are given in the module Shift mechanism: their own, equally hard, no answers."""

import json
from collections import Counter

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models import shift
from twoshaft.models.order import OrderTask
from twoshaft.models.order.mark import chance_r0
from twoshaft.readings import draw, given_in
from twoshaft.readings.shift_and_lockout import TASKS
from twoshaft.records import to_json
from twoshaft.units.quantities import Q

LEARNERS = [f"a{i:03d}" for i in range(200)]


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
        assert (one.interlock.gear, one.interlock.missing) != (
            two.interlock.gear,
            two.interlock.missing,
        )


def test_records_are_what_the_mechanism_does(unit, drawn):
    """Every record fits some mechanism of the unit, made again from its plain data."""
    for given in list(drawn.values())[:40]:
        mirror = given.gate.mirror
        for task in ("one_test", "explain", "lockout"):
            work = shift.read_record(getattr(given, task).record.lines)
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
        work = shift.read_record(given.lockout.record.lines)
        seen[shift.lockout_reading(own, work, "fifth", "reverse")] += 1
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
        lock = given.interlock
        left = shift.without_pin(unit.shift, lock.missing.id)
        assert len(shift.locked_rails(left, lock.gear)) == 1


def test_a_unit_without_a_lockout_is_told(unit):
    for plain in (
        unit.with_sections(shift=None),
        unit.with_sections(shift=unit.shift.model_copy(update={"must_block": ()})),
    ):
        with pytest.raises(
            UnitFileError, match=r"no section 'shift'|no shift mechanism with a lockout"
        ):
            given_to(plain, "a")
