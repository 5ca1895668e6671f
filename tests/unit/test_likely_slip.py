"""A wrong figure is explained by the one thing that fits, and by nothing where several do; the
working goes on with it where anything does."""

import math

import pytest
from hypothesis import given as drawn
from hypothesis import strategies as st

from twoshaft.jobsheet import Number
from twoshaft.records import Record, Row
from twoshaft.units.quantities import Q
from twoshaft_grader.marking.kinds import Reference, Seen, Slip, judge_of
from twoshaft_grader.marking.likely_slip import figures_of, likely_slip


class Part(Row, frozen=True):
    name: str
    height_mm: float


class Stack(Record, frozen=True):
    gap_mm: float
    zero_mm: float
    low_mm: float
    high_mm: float
    friction: float
    turns: int
    true_play_mm: float
    parts: tuple[Part, ...]


TASK = Stack(
    gap_mm=31.62, zero_mm=0.07, low_mm=0.11, high_mm=0.30, friction=0.13, turns=6,
    true_play_mm=0.555, parts=(Part("ring", 4.9), Part("hub", 17.2)),
)  # fmt: skip
RIGHT = Q(9.45, "mm")  # gap less zero less both parts


@pytest.mark.parametrize("own, says", [
    (Q(9.52, "mm"), "It fits if 0.07 mm of this task was left out, or counted twice."),
    (Q(9.59, "mm"), "It fits if 0.07 mm of this task was added where it is subtracted"),
    (Q(14350, "um"), "It fits if 4.9 mm of this task was left out"),
    (Q(9.64, "mm"), "It fits if the wrong end of a limit was used: 0.11 mm and 0.3 mm"),
    (Q(18.9, "mm"), "It is twice what it should be"),
    (Q(4.725, "mm"), "It is half of what it should be"),
    (Q(31.62, "mm"), "This is 31.62 mm as the task gives it"),
    (Q(1.2285, "mm"), "It fits if the figure 0.13 of this task was left out, or used twice."),
    (Q(2.5, "mm"), "This is the figure that another question asks for: “Pull”."),
    (Q(10.45, "mm"), "It fits if a one was not carried"),
    (Q(9.4, "mm"), "It fits if it was rounded too early"),
    (Q(9.6, "mm"), "It is very near, a little too large: look for rounding on the way."),
    (Q(10.3, "mm"), "It is a little too large."),
    (Q(7.1, "mm"), "It is clearly too small."),
    (Q(120.5, "mm"), "It is far too large."),
    (Q(10.005, "mm"), "It is a little too large."),  # what only the bench knew explains nothing
    (Q(9, "N"), ""),
    (Q(-2.1, "mm"), ""),
])  # fmt: skip
def test_what_explains_a_figure_is_told(own, says):
    others = {"Pull": Q(2.5, "mm"), "Force": Q(3, "N")}
    told = likely_slip(own, [RIGHT], TASK, others)
    assert told.startswith(says) and bool(told) == bool(says)


def test_where_two_things_fit_neither_is_told():
    class Two(Record, frozen=True):
        first_mm: float
        second_mm: float

    told = likely_slip(Q(9.65, "mm"), [RIGHT], Two(0.2, 0.1), {})
    assert told == "It is very near, a little too large: look for rounding on the way."


def test_a_count_that_is_twice_another_is_not_called_twice():
    assert "twice what" not in likely_slip(Q(4, ""), [Q(2, "")], TASK)


def test_a_count_may_be_one_off():
    assert (
        likely_slip(Q(8, ""), [Q(7, "")], TASK)
        == "It fits if one was counted too many, or one too few."
    )


@pytest.mark.parametrize("own, theirs", [
    (9.45, True), (9.462, True),  # right, and three tolerances away
    (9.47, False), (9.9, False),
    (94.5, True), (-9.45, True),  # the point, the sign
    (9.52, True), (18.9, True), (9.55, True),  # a reading left out, twice, a one carried
    (3.3, True), (3.4, False),  # a listed slip
])  # fmt: skip
def test_the_working_goes_on_with_what_can_come_of_ones_own_readings(own, theirs):
    asked = Number("gap", "How wide?", "mm")
    slips = (Slip(Q(3.3, "mm"), 0.25, "You took one part alone."),)
    reference = Reference("gap", RIGHT, "o", 1.0, Q(0.004, "mm"), False, slips, "")
    seen = Seen(TASK, {"Force": Q(3, "N")})
    assert judge_of(asked).plausible(asked, reference, Q(own, "mm"), seen) is theirs


def test_the_working_goes_on_with_nothing_of_another_kind_or_without_end():
    asked = Number("gap", "How wide?", "mm")
    reference = Reference("gap", RIGHT, "o", 1.0, None, False, (), "")
    for own in (Q(9.45, "N"), Q(math.inf, "mm"), Q(math.nan, "mm")):
        assert not judge_of(asked).plausible(asked, reference, own, Seen())


def test_degrees_and_nothing_at_all_are_met_calmly():
    assert likely_slip(Q(80, "degC"), [Q(60, "degC")], TASK) == "It is clearly too large."
    assert likely_slip(Q(80, "degC"), [Q(60, "delta_degC")], TASK) == ""
    assert likely_slip(Q(3, "mm"), [Q(0, "mm")], TASK) == ""


def test_figures_have_their_units_and_hidden_ones_are_left_out():
    found = {one.words for one in figures_of(TASK)}
    assert found == {"31.62 mm", "0.07 mm", "0.11 mm", "0.3 mm", "0.13", "4.9 mm", "17.2 mm"}


@drawn(st.floats(0.01, 500), st.floats(0.01, 500))
def test_it_never_fails_and_never_explains_what_is_right(own, right):
    told = likely_slip(Q(own, "mm"), [Q(right, "mm")], TASK)
    assert isinstance(told, str)
    same = likely_slip(Q(right, "mm"), [Q(right, "mm")], TASK)
    assert "fits if" not in same and "twice" not in same


def test_an_explanation_comes_before_how_far_it_is_off():
    """Nothing explains it beside the likelier of two right figures, its double beside the other."""
    assert likely_slip(Q(8.6, "mm"), [Q(7, "mm")], ()) == "It is clearly too large."
    told = likely_slip(Q(8.6, "mm"), [Q(7, "mm"), Q(4.3, "mm")], ())
    assert told.startswith("It is twice what it should be")
