"""No outcome rests on luck: the proof finds those that do."""

import pytest

from twoshaft.jobsheet.kinds import Choice, Each, Number
from twoshaft_grader.marking.kinds import Reference
from twoshaft_grader.marking.reference import Answered
from twoshaft_grader.notebooks import luck

COIN = ((0.0, 0.5), (1.0, 0.5))
PAIRS = [(id, id) for id in "abcde"]


def reference(name, value, shows, must_pass=False):
    return Reference(name, value, "share-the-work", 1.0, None, must_pass, (), "", shows, 1)


def found(*pairs):
    """Findings of some fields of one outcome, a point each."""
    clean = Answered(
        fields={asked.name: asked for asked, _ in pairs},
        references={one.name: one for _, one in pairs},
    )
    return list(luck.findings(clean, dict.fromkeys(clean.fields, 1.0), ["share-the-work"]))


def choice(name, shows, options=PAIRS, must_pass=False):
    return Choice(name, "", options=options), reference(name, "a", (shows,), must_pass)


def each(name, shows, lines=4, must_pass=False):
    right = {f"l{n}": "a" for n in range(lines)}
    asked = Each(name, "", lines=[(id, id) for id in right], options=PAIRS[:3])
    return asked, reference(name, right, (shows,), must_pass)


def test_two_of_three_coins_are_tossed_half_the_time():
    assert luck.reaches([(1.0, COIN, False)] * 3, 0.6) == pytest.approx(0.5)
    assert luck.reaches([(1.0, COIN, False)] * 3, 0.7) == pytest.approx(0.125)


def test_a_deciding_coin_must_fall_right_whatever_the_rest():
    assert luck.reaches([(1.0, COIN, True), (9.0, ((1.0, 1.0),), False)], 0.6) == 0.5
    assert luck.reaches([(1.0, COIN, True), (1.0, COIN, True)], 0.6) == 0.25


def test_an_outcome_on_one_choice_is_found():
    (single, by_luck) = found(choice("one", "shortest-time"))
    assert single.startswith("share-the-work rests on one alone")
    assert by_luck == "luck reaches share-the-work in 20 of 100 cases."


def test_a_criterion_on_a_coin_is_found_though_the_outcome_is_not_left_to_luck():
    (told,) = found(each("many", "shortest-time"), choice("coin", "not-late", PAIRS[:2]))
    assert told == "luck reaches not-late of share-the-work in 50 of 100 cases."


def test_several_lines_and_a_figure_are_no_luck():
    figure = Number("n", "", ""), reference("n", 250, ("not-late",))
    assert not found(each("many", "shortest-time", must_pass=True), figure)
    assert not found(each("many", "shortest-time"), each("more", "not-late"))
