"""Numbers of correct orders against listing and counting by hand."""

import pytest

from twoshaft.models.order import OrderTask, count_orders


@pytest.fixture
def count(make_unit):
    def of(size, pairs, **kwargs):
        return count_orders(OrderTask.from_unit(make_unit(size, pairs)), **kwargs)

    return of


@pytest.mark.parametrize(("n", "expected"), [(2, 6), (3, 48), (4, 720), (5, 17280)])
def test_crowns(count, n, expected):
    # Crown S_n: a_i before b_j for i != j; values by brute force over all permutations.
    pairs = [(i, n + j) for i in range(n) for j in range(n) if i != j]
    assert count(2 * n, pairs).value == expected


def test_two_chains(count):
    # C(7, 3) interleavings of chains of three and four.
    assert count(7, [(0, 1), (1, 2), (3, 4), (4, 5), (5, 6)]).value == 35


def test_the_n_shaped_order(count):
    # Five, by listing them.
    assert count(4, [(0, 2), (1, 2), (1, 3)]).value == 5
