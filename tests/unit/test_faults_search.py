"""What a search costs, what a check with two outcomes tells, and which sets are looked among."""

from itertools import permutations

import pytest

from twoshaft.errors import OutOfRangeError
from twoshaft.models import faults
from twoshaft.units.quantities import Q

SPRING, BALL = ("spring-left-out",), ("ball-left-out",)
SHIM, PLUG = ("output-shim-too-thin",), ("plug-loose",)
FOUR = (SPRING, BALL, SHIM, PLUG)
CHECKS = ("prove-lockout", "feel-detents", "pull-output")


def test_a_search_stops_when_one_suspect_is_left(unit):
    """3 min for the lockout, 3 for the detents, 4 for the pull, added by hand."""
    spent = {one: faults.minutes_spent(unit, CHECKS, FOUR, one).m_as("min") for one in FOUR}
    assert spent == {SPRING: 3, BALL: 6, SHIM: 10, PLUG: 10}
    assert faults.minutes_spent(unit, CHECKS, [PLUG], PLUG) == Q(0, "min")


def test_the_average_weighs_suspects_by_how_often_they_are_met(unit):
    """Met 4, 6, 9 and 5 times in 1000: (4 * 3 + 6 * 6 + 9 * 10 + 5 * 10) / 24, nearly."""
    average = faults.expected_minutes(unit, CHECKS, FOUR).m_as("min")
    assert average == pytest.approx((4 * 3 + 6 * 6 + 9 * 10 + 5 * 10) / 24, abs=0.02)


def test_the_quickest_plan_makes_the_largest_chance_a_minute_first(unit):
    """Known rule for looking into one box after the other: 9/4 before 6/3 before 4/3."""
    best = faults.quickest_plan(unit, CHECKS, FOUR)
    assert best == ("pull-output", "feel-detents", "prove-lockout")
    took = [faults.expected_minutes(unit, plan, FOUR) for plan in permutations(CHECKS)]
    assert faults.expected_minutes(unit, best, FOUR) == min(took)


def test_nothing_to_search_and_too_much_to_plan_are_refused(unit):
    with pytest.raises(OutOfRangeError, match="suspects"):
        faults.expected_minutes(unit, CHECKS, [])
    with pytest.raises(OutOfRangeError, match="at most 7"):
        faults.quickest_plan(unit, [one.id for one in unit.faults.checks], FOUR)
    with pytest.raises(OutOfRangeError, match="spring-reversed and spring-left-out"):
        faults.explain(unit, {}, among=[("spring-reversed", "spring-left-out")])


def test_explanations_among_some_sets_only(unit):
    found = faults.explain(unit, {"prove-lockout": faults.PASSES}, among=FOUR)
    assert set(found.sets) == {BALL, SHIM, PLUG} and sum(found.chances) == pytest.approx(1)
    telling = {one.check for one in faults.next_check(unit, {}, among=FOUR)}
    assert telling == {*CHECKS, "click-bolts", "watch-for-leaks"}
    assert faults.next_check(unit, {}, among=[PLUG]) == ()


def test_suspects_for_checks_each_fail_their_own_check_alone(unit):
    """The likeliest of each: 6, 6 and 9 times in 1000 in the unit file."""
    found = faults.suspects_for(unit, CHECKS)
    assert found == (("spring-reversed",), BALL, SHIM)
    table = faults.outcome_table(unit)
    for one, own in zip(found, CHECKS, strict=True):
        assert [check for check in CHECKS if not table.outcome(one, check).passes] == [own]
    with pytest.raises(OutOfRangeError, match="those that an assembly fault fails alone"):
        faults.suspects_for(unit, ["prove-lockout", "prove-lockout"])
    with pytest.raises(OutOfRangeError, match="prove-lockout"):
        faults.suspects_for(unit, ["no-such-check"])


def test_a_set_is_the_same_in_any_order(unit):
    table = faults.outcome_table(unit)
    assert table.row(("plug-loose", "ball-left-out")) == table.row(("ball-left-out", "plug-loose"))


def test_what_two_outcomes_tell():
    """Shannon 1948 (from memory): one bit where both are equally likely, none for a certain one."""
    assert faults.told(0.5) == 1
    assert faults.told(0.0) == faults.told(1.0) == 0
    assert faults.told(0.9) == pytest.approx(0.469, abs=5e-4)
    with pytest.raises(OutOfRangeError):
        faults.told(1.2)


def test_both_at_once_multiply(unit):
    assert faults.met_together(unit, ["ball-left-out", "plug-loose"]) == pytest.approx(30e-6)


def test_a_pull_is_judged_without_the_other_pair(unit):
    check = unit.faults.check_by_id("pull-neutral")
    verdicts = {}
    for one in ("diff-shim-too-thick", "diff-shim-left-out", "plug-loose"):
        built = faults.as_built(unit, [unit.faults.misbuild_by_id(one)])
        found = faults.pull(check, built)
        verdicts[one] = found.verdict
        assert found.rest_n == found.shown_n - found.alone_n
    assert verdicts == {
        "diff-shim-too-thick": "heavy",
        "diff-shim-left-out": "light",
        "plug-loose": "inside",
    }


def test_the_part_that_a_misbuild_belongs_to(unit):
    parts = {one.id: faults.part_of(unit, one.id) for one in unit.faults.misbuilds}
    assert parts["spring-reversed"] == "shift" and parts["diff-ring-not-home"] == "setting"
    assert parts["case-bolts-oiled"] == "joint" and parts["magnet-left-out"] == "order"
    assert parts["third-wheel-swapped"] == "train"


def test_slack_bolts_and_double_counting_read_less():
    """Which way a pull is false: what is added to the bearings reads more, what is missing less."""
    more = {key for key, one in faults.FALSE_PULLS.items() if one.seems == "more"}
    assert more == {"seals", "gear", "start"}
