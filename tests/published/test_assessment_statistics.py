"""Item statistics and agreement against published examples; the source stands beside each."""

import numpy as np
import pytest

from twoshaft_grader.records.item_statistics import items_of, reliability
from twoshaft_grader.records.two_marks import kappa

# K. L. Wuensch, East Carolina University, StatHelp/KR20.txt: ten students, ten items.
KR20 = [
    [int(one) for one in row]
    for row in (
        "1111110110", "1011011101", "1111011001", "0010001000", "0000010010",
        "1110111111", "1101110111", "1111111101", "0101111101", "1101101110",
    )
]  # fmt: skip


def test_the_published_totals_are_these():
    """Source: K. L. Wuensch, East Carolina University, StatHelp/KR20.txt: ten students, ten items."""
    assert [sum(row) for row in KR20] == [8, 7, 7, 2, 2, 9, 8, 9, 7, 7]
    facility = [one.facility for one in items_of(KR20, [1] * 10)]
    assert facility == pytest.approx([0.7, 0.7, 0.6, 0.7, 0.6, 0.8, 0.7, 0.7, 0.5, 0.6])


def test_kr_20_is_alpha_of_right_and_wrong():
    """Source: K. L. Wuensch, StatHelp/KR20.txt; interval of pingouin 0.7 on the same data."""
    found = reliability(KR20)
    # sum of pq 2.18 and variance 5.84 are printed there; mixing n and n - 1 would give 0.7378
    assert found.value == pytest.approx(10 / 9 * (1 - 2.18 / 5.84), abs=1e-7)
    assert found.value == pytest.approx(0.6963470, abs=1e-7)
    # interval of pingouin 0.7 on the same data
    assert (found.low, found.high) == pytest.approx((0.309, 0.911), abs=5e-4)


def test_discrimination_leaves_the_item_out():
    """Source: girth's classical_test_statistics and scipy 1.17 pointbiserialr, on Wuensch's data."""
    expected = [0.7059, 0.7059, 0, 0.4736, 0.5839, 0.2861, -0.0274, 0.7059, -0.1236, 0.4759]
    found = items_of(KR20, [1] * 10)
    assert [one.discrimination.value for one in found] == pytest.approx(expected, abs=1e-4)
    # Fisher's z: atanh(r) +- 1.96 / sqrt(n - 3)
    first = found[0].discrimination
    z, spread = np.arctanh(first.value), 1.959964 / np.sqrt(7)
    assert (first.low, first.high) == pytest.approx(
        tuple(np.tanh([z - spread, z + spread])), abs=1e-6
    )


def test_alpha_of_a_covariance_matrix():
    """Source: StatsBase.jl 0.34, documentation of cronbachalpha: 0.8136 for this covariance matrix."""
    wanted = np.array([[10, 6, 6, 6], [6, 11, 6, 6], [6, 6, 12, 6], [6, 6, 6, 13.0]])
    source = np.random.default_rng(1).normal(size=(40, 4))
    source -= source.mean(axis=0)
    white = source @ np.linalg.inv(np.linalg.cholesky(np.cov(source.T))).T
    data = white @ np.linalg.cholesky(wanted).T
    assert np.cov(data.T) == pytest.approx(wanted)
    assert reliability(data).value == pytest.approx(0.8136, abs=5e-5)


def test_interval_of_alpha_of_the_papers_example():
    """Source: Feldt, Woodruff and Salih 1987: the F of a sample's (1 - alpha) has n - 1 and
    (n - 1)(k - 1) degrees of freedom; the coverage is tried on data whose alpha is known.
    """
    source, true, hits = np.random.default_rng(2), 0.8, 0
    spread = np.sqrt(5 * (1 - true) / true)  # of each item's own part, where the common one is 1
    for _ in range(400):
        common = source.normal(size=(24, 1))
        found = reliability(common + spread * source.normal(size=(24, 5)))
        hits += found.low <= true <= found.high
    assert 0.92 <= hits / 400 <= 0.975


@pytest.mark.parametrize(
    ("table", "weights", "value", "low", "high"),
    [
        # statsmodels' own test, from a SAS manual's table
        ([[0, 4, 1], [0, 8, 0], [0, 1, 5]], "", 0.4842, 0.2137, 0.7547),
        ([[0, 4, 1], [0, 8, 0], [0, 1, 5]], "linear", 0.4701, None, None),
        # Artstein and Poesio 2008, by scikit-learn's tests
        ([[20, 20], [10, 50]], "", 0.348, None, None),
        ([[20, 5], [10, 15]], "", 0.4, 0.151, 0.649),
        # Cohen 1968, as the psych package quotes it
        ([[88, 14, 18], [10, 40, 10], [2, 6, 12]], "", 0.492, 0.3916, 0.5915),
    ],
)  # fmt: skip
def test_kappa(table, weights, value, low, high):
    """Source: statsmodels' own test, from a SAS manual's table; Artstein and Poesio 2008, by
    scikit-learn's tests; Cohen 1968, as the psych package quotes it (each beside its table).
    """
    found = kappa(table, weights)
    assert found.value == pytest.approx(value, abs=6e-4)
    if low is not None:
        assert (found.low, found.high) == pytest.approx((low, high), abs=5e-4)


def test_quadratic_weights_by_hand():
    """Source: Cohen 1968: one less the weighted disagreement over that of chance."""
    table = np.array([[88, 14, 18], [10, 40, 10], [2, 6, 12.0]])
    cost = np.subtract.outer(range(3), range(3)) ** 2
    chance = np.outer(table.sum(axis=1), table.sum(axis=0)) / table.sum()
    wanted = 1 - (cost * table).sum() / (cost * chance).sum()
    assert kappa(table, "quadratic").value == pytest.approx(wanted)
