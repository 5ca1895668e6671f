"""What learners are given in Pressed and driven parts: own, equally hard, without answers."""

import json

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models import fit
from twoshaft.models.order import OrderTask, chance_r0
from twoshaft.readings import draw, whole_units
from twoshaft.readings.pressed_and_driven.driver import tight_in
from twoshaft.readings.pressed_and_driven.jobs import load_fitting_jobs
from twoshaft.records import to_json
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q

LEARNERS = [f"a{i:03d}" for i in range(200)]
TASKS = ["limits", "press", "heat", "driver", "seal", "spring", "taper", "locks", "order", "bench"]


def given_to(unit, learner, attempt=1):
    return draw("pressed-and-driven", unit, salt="salt", learner=learner, attempt=attempt)


@pytest.fixture(scope="module")
def drawn(unit):
    return [given_to(unit, learner) for learner in LEARNERS]


def test_plain_data_the_same_at_every_run(unit, drawn):
    again = json.loads(json.dumps(to_json(given_to(unit, LEARNERS[0]))))
    assert again == to_json(drawn[0]) and list(again) == TASKS


@pytest.mark.parametrize("task", ["limits", "press", "heat", "seal", "spring", "taper", "locks"])
def test_every_learner_has_another_task(drawn, task):
    assert len(
        {json.dumps(to_json(getattr(given, task)), sort_keys=True) for given in drawn}
    ) > 0.9 * len(drawn)


@pytest.mark.slow
def test_a_resit_changes_the_task_not_only_the_numbers(unit):
    for learner in LEARNERS[:10]:
        first, second = (given_to(unit, learner, attempt) for attempt in (1, 2))
        assert first.order.job != second.order.job
        shown = [{one.id for one in given.heat.how} for given in (first, second)]
        assert not shown[0] & shown[1]
        rings = [{one.id for one in given.driver.home.lines} for given in (first, second)]
        assert not rings[0] & rings[1]
        ids = [{one.id for one in given.bench.cautions} for given in (first, second)]
        assert ids[0] != ids[1]


@pytest.mark.parametrize("shipped", whole_units())
def test_every_unit_that_ships_gives_every_task(shipped):
    assert list(to_json(given_to(load_unit(shipped), "ann"))) == TASKS


def test_a_unit_without_fits_is_refused_in_words(unit):
    with pytest.raises(UnitFileError, match="no section 'fits'"):
        given_to(unit.with_sections(fits=None), "ann")


def test_every_kind_of_fit_comes_up_and_no_limit_is_near_nothing(drawn):
    kinds = []
    for given in drawn:
        made = fit.fit(Q(given.limits.size_mm, "mm"), given.limits.codes)
        assert min(abs(made.least_um), abs(made.most_um)) >= 3
        assert len(given.limits.zones) == 6
        kinds.append(made.kind)
    assert all(kinds.count(k) > 40 for k in ("interference", "transition", "clearance"))


def test_the_gauge_is_clear_of_the_workshops_rule(drawn):
    verdicts = []
    for given in drawn:
        low, high = given.press.friction
        true = given.press.true_friction
        assert true < 0.72 * low or 1.04 * low < true < 0.97 * high or true > 1.3 * high
        verdicts.append(0 if true < low else 1 if true <= high else 2)
        assert given.press.shaft_mm > given.press.hole_mm
    assert all(verdicts.count(k) > 40 for k in range(3))


def test_heat_is_clear_of_the_limit_both_ways(drawn):
    over = []
    for given in drawn:
        heat = given.heat
        rise = heat.grip_um / (heat.outer.growth_um * heat.size_mm / 1e3)
        need = heat.room_c + rise + heat.handling_k
        assert abs(need - heat.limit_c) > 7
        over.append(need > heat.limit_c)
    assert 60 < sum(over) < 140


def test_drivers_seals_pins_and_stakes_are_spread(drawn):
    cases = [len(tight_in(case)) for given in drawn for case in given.driver.cases]
    assert cases.count(0) > 60 and cases.count(2) > 60 and cases.count(1) > 400
    depths = [given.seal.depth_mm - given.seal.low_mm for given in drawn]
    assert sum(d < 0 for d in depths) > 20
    for given in drawn:
        proud = 50 * (given.taper.small_mm + given.taper.length_mm / 50 - given.taper.hole_mm)
        assert all(abs(proud - end) > 0.4 for end in (given.taper.low_mm, given.taper.high_mm))
        locks = given.locks
        holds = min(locks.shear_nm, locks.crush_nm_mm * locks.depth_mm)
        assert abs(holds / locks.drag_nm / locks.margin - 1) > 0.1


def test_what_other_parts_say_is_spread_and_clear_of_its_limit(drawn):
    found = {name: [] for name in ("fit", "press", "heat", "pin", "hole", "end", "nut")}
    for given in drawn:
        for pair in given.limits.others:
            ends = pair.shaft_mm[0] - pair.hole_mm[1], pair.shaft_mm[1] - pair.hole_mm[0]
            assert min(map(abs, ends)) > 0.0025
            found["fit"].append(sum(end > 0 for end in ends))
        for one in given.press.others:
            assert (
                one.shown_kn < 0.8 * one.low_kn
                or one.shown_kn > 1.2 * one.high_kn
                or (0.92 * one.low_kn < one.shown_kn < 1.08 * one.high_kn)
            )
            found["press"].append(
                (one.shown_kn > 0.9 * one.low_kn) + (one.shown_kn > 1.1 * one.high_kn)
            )
        for one in given.heat.others:
            needs = one.free_c + one.margin_k
            assert abs(needs - one.limit_c) >= 5 and one.now_c <= one.limit_c
            assert needs > one.limit_c or not needs - 5 < one.now_c < needs
            found["heat"].append(2 if needs > one.limit_c else int(one.now_c >= needs))
        for one in given.spring.others:
            bears = one.one_kn, one.one_kn + one.inner_kn
            times = [kn / one.force_kn / one.margin for kn in bears]
            assert all(abs(many - 1) > 0.03 for many in times)
            found["pin"].append(sum(many >= 1 for many in times))
        for one in given.taper.others:
            assert min(abs(one.stands_mm - end) for end in (one.low_mm, one.high_mm)) > 0.2
            found["hole"].append((one.stands_mm > one.low_mm) + (one.stands_mm > one.high_mm))
        for one in given.taper.pins:
            left, right = one.left_mm, one.right_mm
            open_ = left is None or right is None or left == right
            found["end"].append("open" if open_ else (left > right) == one.insert)
        for one in given.locks.others:
            times = one.holds_nm / one.drag_nm / one.margin
            assert abs(times - 1) > 0.1
            found["nut"].append((one.state == "whole", times > 1))
    for name, ends in found.items():
        shares = [ends.count(kind) / len(ends) for kind in set(ends)]
        assert len(shares) == 3 and 0.25 < min(shares) < max(shares) < 0.42, name


def test_the_fitting_jobs_are_equally_hard_to_order():
    jobs = load_fitting_jobs()
    tasks = [OrderTask.from_unit(jobs, jobs.operations_of[stage.id]) for stage in jobs.stages]
    hard = [chance_r0(task) for task in tasks]
    assert {len(task.steps) for task in tasks} == {10} and min(hard) > 4 and max(hard) < 5.5
