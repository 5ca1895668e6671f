"""Whole sheets of a made-up module: full, blank, guessed, and everything in between."""

import json
import random
import statistics

import pytest

from twoshaft.jobsheet.sheet import given_digest
from twoshaft_grader.marking import Verdict
from twoshaft_grader.marking.task import SET_ASIDE
from twoshaft_grader.stored.mark import MARK, MARKED, StoredMark


def test_a_blank_sheet_earns_nothing(tiny):
    for answers in (None, {}):
        mark = tiny.mark(tiny.issued("ann"), answers)
        assert (mark.points, mark.maximum) == (0, 22)
        assert {field.verdict for field in mark.fields} == {Verdict.UNANSWERED}
        assert not mark.met


def test_a_solved_sheet_earns_everything_for_fifty_learners(tiny):
    for number in range(50):
        issued = tiny.issued(f"learner-{number}")
        mark = tiny.mark(issued, tiny.solve(issued))
        assert mark.points == mark.maximum == 22
        assert {field.verdict for field in mark.fields} == {Verdict.RIGHT}
        assert mark.met and mark.notes == ()


def test_guessing_earns_under_five_percent_on_average(tiny):
    source = random.Random(4)
    earned = []
    for number in range(300):
        issued = tiny.issued(f"guess-{number}")
        given = issued["given"]
        order = [key for key, _ in given["build"]["start"]]
        source.shuffle(order)
        answers = {
            "gap-depth": f"{source.uniform(0.3, 2.5):.2f} mm",
            "gap-shim": f"{source.uniform(0.3, 2.5):.2f} mm",
            "gap-shims": f"{source.randint(5, 40)}",
            "build-order": order,
            "build-why": source.choice(given["build"]["why"])[0],
            "new-parts": [key for key, _ in given["new"]["parts"] if source.random() < 0.5],
        }
        mark = tiny.mark(issued, answers)
        earned.append(mark.points / mark.maximum)
    assert statistics.mean(earned) < 0.05


def test_marking_twice_gives_the_same_data_and_survives_a_file(tiny):
    issued = tiny.issued("bea")
    answers = tiny.solve(issued) | {"gap-depth": "3 mm", "new-parts": ["seal", "gear"]}
    first, second = tiny.mark(issued, answers), tiny.mark(issued, answers)
    assert first == second
    stored = StoredMark("bea", "tiny-1", MARKED, "", "", "", "", sheet=first)
    assert MARK.of(json.loads(MARK.text(stored))) == stored


def test_an_early_slip_is_charged_once(tiny):
    issued = tiny.issued("cal")
    given = issued["given"]["gap"]
    wrong = given["case"] - given["bearing"] + 0.1  # a one carried too often
    answers = {
        "gap-depth": f"{wrong:.2f} mm",
        "gap-shim": f"{wrong - 0.1:.2f} mm",
        "gap-shims": f"{round((wrong - 0.1) / 0.05)}",
    }
    depth, shim, shims = tiny.mark(issued, answers).task("gap").fields
    assert depth.verdict == Verdict.WRONG
    assert shim.verdict == shims.verdict == Verdict.CARRIED
    assert shim.share == 1
    assert not shim.passed, "a must-pass is judged on the clean pass alone"


def test_the_right_answer_after_an_early_slip_is_right_too(tiny):
    issued = tiny.issued("cal")
    answers = tiny.solve(issued) | {"gap-depth": "0.9 mm"}
    _, shim, shims = tiny.mark(issued, answers).task("gap").fields
    assert shim.verdict == Verdict.RIGHT and shim.passed
    assert shims.verdict == Verdict.RIGHT


def test_figures_the_working_refuses_fall_back_to_the_clean_ones(tiny):
    issued = tiny.issued("dot")
    given = issued["given"]["gap"]
    tiny_gap = (given["case"] - given["bearing"]) / 100  # the point two places off
    answers = tiny.solve(issued) | {"gap-depth": f"{tiny_gap:.5f} mm", "gap-shim": "0 mm"}
    depth, shim, shims = tiny.mark(issued, answers).task("gap").fields
    assert depth.share == 0 and shim.share == 0
    assert any("No later figure can be worked out" in text for text in shim.sentences)
    assert shims.verdict == Verdict.RIGHT


@pytest.mark.parametrize("figure", ["99999999 mm", "-1e25 mm"])
def test_an_impossible_figure_is_not_carried_on(tiny, figure):
    issued = tiny.issued("dot")
    mark = tiny.mark(issued, tiny.solve(issued) | {"gap-depth": figure})
    assert [f.share for f in mark.task("gap").fields] == [0, 1, 1]


def test_a_figure_of_nobodys_readings_carries_nothing_and_says_so(tiny):
    issued = tiny.issued("cal")
    given = issued["given"]["gap"]
    foreign = given["case"] - given["bearing"] + 0.237
    answers = {
        "gap-depth": f"{foreign:.3f} mm",
        "gap-shim": f"{foreign - 0.1:.3f} mm",
        "gap-shims": f"{round((foreign - 0.1) / 0.05)}",
    }
    depth, *after = tiny.mark(issued, answers).task("gap").fields
    assert SET_ASIDE in depth.sentences[1]
    assert [field.share for field in after] == [0, 0]


def test_listed_wrong_answers_earn_their_stated_part(tiny):
    issued = tiny.issued("eve")
    case = issued["given"]["gap"]["case"]
    mark = tiny.mark(
        issued,
        tiny.solve(issued)
        | {"gap-depth": f"{case} mm", "build-why": "weight", "new-parts": ["seal", "gear"]},
    )
    fields = {field.name: field for field in mark.fields}
    assert fields["gap-depth"].share == 0.25
    assert fields["gap-depth"].sentences == ("You took the case alone.",)
    assert fields["build-why"].share == 0.5
    assert "A gear is looked over and used again." in fields["new-parts"].sentences


def test_safety_is_a_must_pass_whatever_the_mark(tiny):
    issued = tiny.issued("fay")
    order = ["bush", "shaft", "gear", "seal", "case", "ring", "screws", "check", "plug"]
    build = tiny.mark(issued, tiny.solve(issued) | {"build-order": order}).task("build").fields[0]
    assert 0 < build.share < 1 and not build.passed
    harmless = ["bush", "shaft", "seal", "case", "gear", "ring", "screws", "check", "plug"]
    mark = tiny.mark(issued, tiny.solve(issued) | {"build-order": harmless})
    assert not mark.task("build").fields[0].passed
    late_seal = ["bush", "shaft", "gear", "ring", "case", "screws", "check", "seal", "plug"]
    mark = tiny.mark(issued, tiny.solve(issued) | {"build-order": late_seal})
    assert mark.task("build").fields[0].passed, "a broken rule that guards no safety"
    plan = {outcome.id: outcome for outcome in mark.outcomes}["plan"]
    assert plan.must_pass_failed == ()


def test_the_order_shown_at_the_start_earns_nothing(tiny):
    issued = tiny.issued("gus")
    start = [key for key, _ in issued["given"]["build"]["start"]]
    build = tiny.mark(issued, {"build-order": start}).task("build").fields[0]
    assert build.share == 0
    assert build.sentences[0] == "This is the order that was shown at the start."


def test_outcomes_share_out_all_points(tiny):
    issued = tiny.issued("hal")
    mark = tiny.mark(issued, tiny.solve(issued) | {"gap-depth": "7 mm", "build-why": "oil"})
    assert sum(o.points for o in mark.outcomes) == pytest.approx(mark.points, abs=0.02)
    assert sum(o.maximum for o in mark.outcomes) == pytest.approx(mark.maximum, abs=0.02)


def test_staff_are_told_what_does_not_fit_together(tiny):
    issued = tiny.issued("ida")
    answers = tiny.solve(issued)

    def notes(extra=(), **facts):
        return tiny.mark(issued, answers | dict(extra), **facts).notes

    assert notes(given_digest=given_digest(issued["given"])) == ()
    assert "other readings" in notes(given_digest="0" * 64)[0]
    assert "names jon, not ida" in notes(learner="jon")[0]
    assert "attempt 3, not tiny, attempt 1" in notes(attempt=3)[0]
    assert "ignored: marks" in notes({"marks": "22"})[0]
    assert tiny.mark(issued, answers | {"marks": "22"}, given_digest="0" * 64).points == 22
