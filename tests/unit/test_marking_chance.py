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
    count_from,
    field_spread,
    guess_line,
    sheet_spread,
)
from twoshaft_grader.marking.kinds import Reference, Slip, judge


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


def test_a_measured_figure_leaves_little_to_chance():
    slips = [Slip(Q(1.5, "mm"), 0.5, "Nearly."), Slip(Q(3, "mm"), 0.5, "Too far to be guessed.")]
    spread = dict(field_spread(Number("f", "?", "mm"), reference(Q(1, "mm"), slips)))
    # Three figures: 0.005 either way in 0 to 2 mm, for either pass; of the slip once.
    assert spread == pytest.approx({0.0: 0.985, 0.5: 0.005, 1.0: 0.01})
    assert field_spread(Number("f", "?", "mm"), reference(Q(0, "mm"))) == ((0.0, 1.0),)


def spread_of(asked, value):
    return field_spread(asked, reference(value))


FOUR = ((0.0, 0.75), (1.0, 0.25))


def test_no_line_where_guesses_earn_little():
    assert guess_line([], 10.0) == 0.0
    assert guess_line([(1.0, FOUR)], 10.0) == 0.0  # 2.5 % on average
    nothing = spread_of(Number("f", "?", "mm"), Q(1, "mm"))
    assert guess_line([(10.0, nothing)], 10.0) == 0.0


def above(share, line):
    return max(0.0, (share - line) / (1 - line))


def test_the_line_is_the_lowest_that_keeps_guessing_low():
    parts = [(1.0, FOUR)] * 10
    line = guess_line(parts, 10.0)
    # Ten choices of four: binomial, by counting.
    chances = [comb(10, k) * 0.25**k * 0.75 ** (10 - k) for k in range(11)]

    def mean(at):
        return sum(p * above(k / 10, at) for k, p in enumerate(chances))

    assert mean(line) == pytest.approx(GUESSED, abs=1e-4)
    assert mean(line - 0.01) > GUESSED


def test_the_fewer_guesses_the_lower_the_line():
    lines = [guess_line([(1.0, FOUR)] * count, 40.0) for count in (6, 8, 12, 20, 40)]
    assert lines[0] == 0 and lines == sorted(lines) and lines[-1] > 0.15


def test_the_spread_of_a_sheet_keeps_probability_and_mean():
    several = spread_of(Choices("f", "?", options(6)), {"k0", "k1", "k2"})
    parts = [(3.0, several), (2.0, FOUR), (5.0, ((0.0, 0.9), (1.0, 0.1)))]
    chances = sheet_spread(parts)
    assert chances.sum() == pytest.approx(1)
    mean = sum(points * share * chance for points, spread in parts for share, chance in spread)
    assert chances @ np.linspace(0, 10, len(chances)) == pytest.approx(mean)


tasks = st.lists(
    st.tuples(st.floats(0, 1), st.floats(0, 1), st.floats(0.5, 20)).map(
        lambda t: (t[0] * t[1] * t[2], t[1] * t[2])
    ),
    min_size=1,
    max_size=8,
)


@given(tasks, st.floats(0, 0.5))
def test_counting_from_the_line(tasks, line):
    earned, answered = [e for e, _ in tasks], [a for _, a in tasks]
    counted = count_from(line, earned, answered)
    left = max(0.0, (sum(earned) - line * sum(answered)) / (1 - line))
    assert sum(counted) == pytest.approx(left, abs=1e-6)
    for before, after in zip(earned, counted, strict=True):
        assert -1e-9 <= after <= before + 1e-9


@pytest.mark.slow
@given(tasks, st.floats(0, 0.5), st.data())
def test_a_better_answer_never_lowers_the_sum_and_a_full_sheet_keeps_all(tasks, line, data):
    earned, answered = [e for e, _ in tasks], [a for _, a in tasks]
    i = data.draw(st.integers(0, len(tasks) - 1))
    better = [*earned]
    better[i] = data.draw(st.floats(earned[i], answered[i]))
    before, after = count_from(line, earned, answered), count_from(line, better, answered)
    assert sum(after) >= sum(before) - 1e-9
    assert count_from(line, answered, answered) == pytest.approx(answered)


def test_each_task_pays_for_its_own_slips():
    one = count_from(0.1, [9.0, 5.0], [10.0, 10.0])
    other = count_from(0.1, [10.0, 5.0], [10.0, 10.0])
    assert one[1] == other[1] == pytest.approx(5 - 5 / 9)


def test_answering_one_more_field_rightly_never_costs():
    parts = [(1.0, FOUR)] * 10
    before = sum(count_from(guess_line(parts[:6], 12.0), [3.0], [6.0]))
    after = sum(count_from(guess_line(parts[:7], 12.0), [4.0], [7.0]))
    assert after > before
