"""The line above which a task's points count."""

import random
from itertools import combinations

import pytest

from twoshaft.jobsheet import Choice, Choices, Number, Order
from twoshaft.units.quantities import Q
from twoshaft_grader.marking.chance import (
    ORDER_CHANCE,
    TASK_CHANCE,
    above_line,
    field_spread,
    guess_line,
    mean_above,
    task_chance,
    task_spread,
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


def test_the_line_is_the_lowest_that_keeps_guessing_low():
    four = field_spread(Choice("f", "?", options(4)), reference("k0"))
    spread = task_spread([(1, four)] * 4)
    line = guess_line(spread)
    assert mean_above(spread, line) == pytest.approx(TASK_CHANCE, abs=1e-6)
    assert mean_above(spread, line - 0.01) > TASK_CHANCE
    assert sum(chance for _, chance in spread) == pytest.approx(1)


def test_where_no_line_will_do_only_all_right_counts():
    four = field_spread(Choice("f", "?", options(4)), reference("k0"))
    assert guess_line(task_spread([(1, four)])) == 0.0
    pair = guess_line(task_spread([(1, four), (1, four)]))
    assert above_line(0.5, pair) == 0 and above_line(1.0, pair) == 1


def test_an_order_keeps_the_line_of_its_own_model():
    asked = Order("f", "?", options(6))
    alone = task_chance([(asked, reference(None))])
    assert (alone.line, alone.mean) == (0.0, ORDER_CHANCE)
    mixed = task_chance([(asked, reference(None)), (Choice("g", "?", options(5)), reference("k0"))])
    assert mixed.line > 0 and mixed.mean < ORDER_CHANCE


def test_numbers_alone_have_no_line():
    nothing = field_spread(Number("f", "?", "mm"), reference(Q(1, "mm")))
    assert guess_line(task_spread([(1, nothing), (3, nothing)])) == 0.0


def test_guesses_at_a_task_earn_what_the_line_promises():
    source = random.Random(11)
    asked = [Choice(f"f{i}", "?", options(5)) for i in range(3)]
    several = Choices("g", "?", options(6))
    spreads = [field_spread(a, reference("k0")) for a in asked]
    spreads.append(field_spread(several, reference({"k0", "k1", "k2"})))
    line = guess_line(task_spread([(1, spread) for spread in spreads]))
    earned = 0.0
    for _ in range(4000):
        shares = [float(source.randrange(5) == 0) for _ in asked]
        ticks = tuple(k for k, _ in several.options if source.random() < 0.5)
        shares.append(judge(several, reference({"k0", "k1", "k2"}), ticks).share)
        earned += above_line(sum(shares) / 4, line)
    assert earned / 4000 == pytest.approx(TASK_CHANCE, abs=0.01)
