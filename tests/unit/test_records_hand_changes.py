"""A changed total is spread over fields soundly: nothing lost, nothing beyond what there is."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from twoshaft_grader.cohort.scores import TaskScore
from twoshaft_grader.marking.outcomes import share_out


@pytest.mark.parametrize(
    ("parts", "total", "expected"),
    [
        ([(3, 3), (1, 1)], 3, [2.25, 0.75]),  # taken off in proportion to what each had
        ([(0, 3), (1, 1)], 2.5, [1.5, 1]),  # added in proportion to what each lacks
        ([(1, 2), (0, 2)], 4, [2, 2]),
        ([(1, 2), (0, 2)], 0, [0, 0]),
        ([(0, 2), (0, 2)], 0, [0, 0]),
        ([(2, 2), (2, 2)], 4, [2, 2]),
        ([(1, 2), (0, 2)], 5, [2.5, 2.5]),  # beyond the maximum: extra credit
    ],
)
def test_worked_by_hand(parts, total, expected):
    assert share_out(parts, total) == pytest.approx(expected)


@given(
    st.lists(
        st.tuples(st.floats(0, 1), st.floats(0.1, 10)).map(lambda p: (p[0] * p[1], p[1])),
        min_size=1,
        max_size=6,
    ),
    st.floats(0, 1),
)
def test_sum_is_the_total_and_every_field_stays_within_its_maximum(parts, share):
    total = share * sum(maximum for _, maximum in parts)
    new = share_out(parts, total)
    assert sum(new) == pytest.approx(total)
    for points, (_, maximum) in zip(new, parts, strict=True):
        assert -1e-9 <= points <= maximum + 1e-9


@given(
    st.lists(st.tuples(st.floats(0, 5), st.floats(5, 10)), min_size=1, max_size=6),
    st.floats(0, 1),
)
def test_all_move_the_same_way(parts, share):
    had = sum(points for points, _ in parts)
    total = share * sum(maximum for _, maximum in parts)
    moves = [new - old for new, (old, _) in zip(share_out(parts, total), parts, strict=True)]
    assert all(move >= -1e-9 for move in moves) if total >= had else all(m <= 1e-9 for m in moves)


@pytest.mark.parametrize(
    ("auto", "manual", "extra", "by_hand", "score"),
    [
        (3.0, None, None, False, 3.0),
        (3.0, 3.0, None, False, 3.0),  # looked at and left
        (3.0, 0.0, None, True, 0.0),
        (3.0, 4.0, 1.0, True, 5.0),
        (3.0, None, 1.0, True, 4.0),
        (None, 2.0, None, True, 2.0),
    ],
)
def test_a_person_comes_before_the_marking(auto, manual, extra, by_hand, score):
    task = TaskScore(auto, manual, extra, look_again=False, comment="")
    assert task.by_hand is by_hand
    assert task.score == score
