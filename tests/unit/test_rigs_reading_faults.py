"""Fault board and own checks: what is taken down, what is shown, what is refused."""

import pytest

from twoshaft.errors import CourseError, OutOfRangeError
from twoshaft.models import faults
from twoshaft.readings import draw
from twoshaft.rigs import fault_board_rig, own_checks

FAILED = "lockout-fails-fifth-reverse"


@pytest.fixture
def board(unit):
    return fault_board_rig(unit)


def observe(board, check, shown):
    board.hear({"type": "observe", "check": check, "shown": shown})


def test_a_failed_lockout_leaves_three(unit, board):
    assert board.finding.startswith("No check is made yet: anything can be in the unit. Best")
    observe(board, "prove-lockout", FAILED)
    assert board.finding == (
        "3 assembly faults explain it, each alone. No check tells them apart: only taking apart shows "
        "which."
    )
    names = {one.id: one.name for one in unit.faults.misbuilds}
    wanted = {names[one] for one in ("spring-reversed", "plate-turned-over", "finger-pin-not-home")}
    assert {name for name, _ in board.view["left"]} == wanted
    assert board.view["spent"] == "Spent on checks so far: 3 min."
    assert board.view["ranked"] == []
    assert sum(chance for _, chance in board.left) == pytest.approx(1)


def test_one_is_enough_and_two_are_needed_only_where_one_does_not_do(board):
    observe(board, "pull-neutral", "none-pull-neutral")
    assert board.finding == "One assembly fault explains it."
    board.hear({"type": "clear"})
    observe(board, "watch-for-leaks", faults.PASSES)
    observe(board, "click-bolts", "turns-case-bolts-12")
    observe(board, "feel-detents", "not-held-fourth + not-held-third")
    assert board.finding == "No assembly fault alone explains it; one pair does."


def test_the_best_check_is_named_first_and_costs_its_minutes(unit, board):
    best = faults.next_check(unit, {"try-gears": faults.PASSES})[0]
    observe(board, "try-gears", faults.PASSES)
    assert board.view["ranked"][0][0] == best.check
    assert f"({best.minutes:g} min)" in board.finding
    assert board.finding.startswith("Nothing wrong was seen yet.")


def test_oil_that_nobody_noted_the_place_of(unit, board):
    observe(board, "watch-for-leaks", "something")
    shows = [one for one in unit.faults.misbuilds if not _dry(unit, one.id)]
    assert board.finding.startswith(
        f"{len(shows)} assembly faults explain it, each alone. Best next: "
    )
    assert {row[0] for row in board.view["ranked"]} == {"click-bolts", "watch-for-leaks"}
    observe(board, "click-bolts", "turns-oil-plugs-1")
    assert board.finding == "One assembly fault explains it."
    observe(board, "watch-for-leaks", faults.PASSES)
    assert "2 misbuilds" not in board.finding and board.vague == ()


def _dry(unit, misbuild):
    return faults.outcome_table(unit).outcome((misbuild,), "watch-for-leaks").passes


def test_taking_an_observation_back(board):
    observe(board, "prove-lockout", FAILED)
    observe(board, "prove-lockout", "")
    assert board.view["observed"] == {}
    observe(board, "feel-ring-gap", "ring-gap-small")
    board.hear({"type": "clear"})
    assert board.finding.startswith("No check is made yet")


def test_two_at_once_and_what_nothing_explains(unit):
    seen = {"click-bolts": "turns-case-bolts-12", "feel-ring-gap": "ring-gap-small"}
    board = fault_board_rig(unit, seen)
    assert board.finding.startswith("No assembly fault alone explains it; one pair does.")
    assert len(board.view["left"]) == 1
    observe(board, "count-speed-drive", "fewer-turns-speed-pinion")
    assert board.finding.startswith("Nothing here explains all of that")
    assert board.view["left"] == []


def test_what_the_board_does_not_offer_is_refused(unit, board):
    for check, shown in (("kick-it", FAILED), ("try-gears", FAILED), ("try-gears", 7)):
        with pytest.raises(CourseError):
            observe(board, check, shown)
    assert board.view["observed"] == {}
    with pytest.raises(OutOfRangeError):
        fault_board_rig(unit, {"try-gears": "smells"})


def test_the_plain_copy_says_the_same(board):
    observe(board, "prove-lockout", FAILED)
    copy = board.plain_copy()
    assert board.finding in copy and "The lockout plate" in copy and "<script" not in copy


def test_own_checks_show_what_was_made_and_no_more(unit):
    own = draw("reading-faults", unit, salt="s", learner="l", attempt=1).own
    rig = own_checks(own)
    assert rig.view["shown"] == {}
    sent = f"{rig.plan}{rig.view}"
    hidden = [row.words for row in own.record if row.key != faults.PASSES]
    assert hidden and not any(words in sent for words in hidden)
    for check, name, key, words in own.record:
        rig.hear({"type": "make", "check": check})
        assert rig.view["shown"][check] == [key == faults.PASSES, words]
        assert rig.finding.startswith(f"{name}: {words}")
    assert rig.minutes == sum(own.minutes.values())
    failed = len(hidden)
    assert f"12 of 12 checks made, {failed} not passed" in rig.finding
    rig.hear({"type": "make", "check": own.record[0].check})
    assert rig.minutes == sum(own.minutes.values())
    with pytest.raises(CourseError):
        rig.hear({"type": "make", "check": "kick-it"})


def test_own_checks_compute_no_diagnosis(unit):
    own = draw("reading-faults", unit, salt="s", learner="l", attempt=1).own
    rig = own_checks(own)
    for row in own.record:
        rig.hear({"type": "make", "check": row.check})
    told = f"{rig.plan}{rig.view}{rig.plain_copy()}"
    assert not any(one.name in told for one in own.suspects)
