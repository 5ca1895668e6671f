"""The line above which a task's points count."""

from itertools import combinations
from math import comb

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from twoshaft.jobsheet import Choice, Choices, Number
from twoshaft.units.quantities import Q
from twoshaft_grader.marking.chance import (
    GUESSED,
    above_line,
    count_from,
    field_spread,
    guess_line,
    sheet_spread,
)
from twoshaft_grader.marking.compare import judge
from twoshaft_grader.marking.reference import Reference, Slip


def reference(value, slips=()):
    return Reference("f", value, "o", 1.0, None, False, tuple(slips), "")


def options(count):
    return [[f"k{i}", f"Option {i}"] for i in range(count)]


def test_a_choice_counts_every_option_and_its_slips():
    slips = [Slip("k1", 0.5, "Nearly.")]
    spread = field_spread(Choice("f", "?", options(4)), reference("k0", slips))
    assert spread == ((0.0, 0.5), (0.5, 0.25), (1.0, 0.25))


@pytest.mark.parametrize(("count", "right"), [(3, 1), (5, 2), (6, 3), (6, 6)])
def test_several_choices_by_counting_every_set_of_ticks(count, right):
    asked = Choices("f", "?", options(count))
    keys = [key for key, _ in asked.options]
    what = reference(set(keys[:right]))
    brute = {}
    for size in range(count + 1):
        for ticked in combinations(keys, size):
            share = judge(asked, what, ticked).share if ticked else 0.0
            brute[round(share, 9)] = brute.get(round(share, 9), 0) + 1 / 2**count
    spread = {}
    for share, chance in field_spread(asked, what):
        spread[round(share, 9)] = spread.get(round(share, 9), 0) + chance
    assert spread == pytest.approx(brute)


@pytest.mark.parametrize(("count", "chance"), [(0, 0.1), (3, 0.1), (10, 0.1), (40, 0.025)])
def test_a_count_can_be_guessed(count, chance):
    spread = field_spread(Number("f", "?", ""), reference(count))
    assert spread == ((0.0, 1 - chance), (1.0, chance))


def test_a_measured_figure_leaves_nothing_to_chance():
    assert field_spread(Number("f", "?", "mm"), reference(Q(1, "mm"))) == ((0.0, 1.0),)


def spread_of(asked, value):
    return field_spread(asked, reference(value))


FOUR = ((0.0, 0.75), (1.0, 0.25))


def test_no_line_where_guesses_earn_little():
    assert guess_line([], 10.0) == 0.0
    assert guess_line([(1.0, FOUR)], 10.0) == 0.0  # 2.5 % on average
    nothing = spread_of(Number("f", "?", "mm"), Q(1, "mm"))
    assert guess_line([(10.0, nothing)], 10.0) == 0.0


def test_the_line_is_the_lowest_that_keeps_guessing_low():
    parts = [(1.0, FOUR)] * 10
    line = guess_line(parts, 10.0)
    # Ten choices of four: binomial, by counting.
    chances = [comb(10, k) * 0.25**k * 0.75 ** (10 - k) for k in range(11)]

    def mean(at):
        return sum(p * above_line(k / 10, at) for k, p in enumerate(chances))

    assert mean(line) == pytest.approx(GUESSED, abs=1e-4)
    assert mean(line - 0.01) > GUESSED


def test_the_spread_of_a_sheet_keeps_probability_and_mean():
    several = spread_of(Choices("f", "?", options(6)), {"k0", "k1", "k2"})
    parts = [(3.0, several), (2.0, FOUR), (5.0, ((0.0, 0.9), (1.0, 0.1)))]
    chances = sheet_spread(parts, 12.0)
    assert chances.sum() == pytest.approx(1)
    mean = sum(points * share * chance for points, spread in parts for share, chance in spread)
    assert chances @ np.linspace(0, 12, len(chances)) == pytest.approx(mean)


@given(st.lists(st.tuples(st.floats(0, 1), st.floats(0.5, 20)), min_size=1, max_size=8), st.floats(0, 0.5))  # fmt: skip
def test_counting_from_the_line(tasks, line):
    maxima = [m for _, m in tasks]
    earned = [share * m for share, m in tasks]
    counted = count_from(line, earned, maxima)
    whole = sum(maxima)
    assert sum(counted) == pytest.approx(whole * above_line(sum(earned) / whole, line), abs=1e-6)
    for before, after in zip(earned, counted, strict=True):
        assert -1e-9 <= after <= before + 1e-9


def test_what_is_wholly_right_keeps_its_points_first():
    # 16 of 20 count as 20 x (0.8 - 0.1) / 0.9 = 15.56: 0.44 comes off.
    counted = count_from(0.1, [10.0, 2.0, 4.0], [10.0, 4.0, 6.0])
    assert counted == pytest.approx([10.0, 2 - 0.444 * 2 / 6, 4 - 0.444 * 4 / 6], abs=1e-3)
    only_full = count_from(0.1, [10.0, 0.0, 6.0], [10.0, 4.0, 6.0])
    assert only_full == pytest.approx([10 - 0.444 * 10 / 16, 0, 6 - 0.444 * 6 / 16], abs=1e-3)


def test_answering_one_more_field_rightly_never_costs():
    parts = [(1.0, FOUR)] * 10
    before = above_line(0.5, guess_line(parts[:6], 12.0))
    after = above_line(0.5 + 1 / 12, guess_line(parts[:7], 12.0))
    assert after > before
