"""Numbers of correct orders against published sequences and formulas."""

import math

import pytest

from twoshaft.models.order import OrderTask, count_orders


@pytest.fixture
def count(make_unit):
    def of(size, pairs, **kwargs):
        return count_orders(OrderTask.from_unit(make_unit(size, pairs)), **kwargs)

    return of


def boolean(n):
    size = 2**n
    return size, [(s, s | 1 << k) for s in range(size) for k in range(n) if not s >> k & 1]


def grid(rows, columns):
    across = [
        (i * columns + j, i * columns + j + 1) for i in range(rows) for j in range(columns - 1)
    ]
    down = [
        (i * columns + j, (i + 1) * columns + j) for i in range(rows - 1) for j in range(columns)
    ]
    return rows * columns, across + down


def fence(n):
    return n, [(i, i + 1) if i % 2 == 0 else (i + 1, i) for i in range(n - 1)]


@pytest.mark.parametrize(("n", "expected"), list(enumerate([1, 1, 2, 48, 1680384])))
def test_boolean_lattices(count, n, expected):
    """Source: OEIS A046873 (oeis.org/A046873); 48 and 1680384 also by brute force.

    One circulating web page prints 46 for n = 3; OEIS and brute force say 48.
    """
    result = count(*boolean(n))
    assert result.exact
    assert result.value == expected


def test_boolean_lattice_of_five(count):
    """Source: OEIS A046873, a(5), from memory.

    The lattice has 7581 down-sets (Dedekind number, OEIS A000372, from memory), well within the
    budget.
    """
    assert count(*boolean(5)).value == 14807804035657359360


@pytest.mark.parametrize(
    ("n", "expected"),
    list(enumerate([1, 1, 1, 2, 5, 16, 61, 272, 1385, 7936, 50521, 353792, 2702765])),
)
def test_fences(count, n, expected):
    """Source: OEIS A000111, zig-zag numbers; also sympy.functions.andre."""
    if n:
        assert count(*fence(n)).value == expected


@pytest.mark.parametrize("n", range(1, 12))
def test_two_by_n_grids_are_catalan(count, n):
    """Source: OEIS A000108: C(2n, n) / (n + 1)."""
    assert count(*grid(2, n)).value == math.comb(2 * n, n) // (n + 1)


@pytest.mark.parametrize(("rows", "columns", "expected"), [(3, 3, 42), (3, 4, 462), (4, 4, 24024)])
def test_grids_are_standard_young_tableaux(count, rows, columns, expected):
    """Source: Hook-length formula for rectangular Young tableaux (Frame, Robinson, Thrall 1954,
    from memory); the values also by brute force.
    """
    assert count(*grid(rows, columns)).value == expected


def test_complete_binary_tree(count):
    """Source: Hook formula for forests, n! / product of hooks (Knuth 1973, from memory):
    7!/(7*3*3) = 80.
    """
    assert count(7, [(0, 1), (0, 2), (1, 3), (1, 4), (2, 5), (2, 6)]).value == 80


@pytest.mark.parametrize("seed", range(12))
def test_forests_by_the_hook_formula(count, seed):
    """Source: Hook formula for forests, n! / product of hooks (Knuth 1973, from memory); the
    forest's parents come from a fixed recurrence.
    """
    n = 9 + seed % 5
    parents = [None if i == 0 else (seed * 7 + i * i * 5) % (i + 1) for i in range(n)]
    pairs = [(p, i) for i, p in enumerate(parents) if p is not None and p != i]
    hooks = [1] * n
    for child in range(n - 1, 0, -1):
        if parents[child] not in (None, child):
            hooks[parents[child]] += hooks[child]
    assert count(n, pairs).value == math.factorial(n) // math.prod(hooks)


@pytest.mark.parametrize("shape", [boolean(4), grid(4, 4), fence(12)])
def test_an_estimate_is_labelled_and_its_interval_holds_the_truth(count, shape):
    """Source: OEIS A046873 and A000111, and the hook-length formula (Frame, Robinson, Thrall
    1954), as the values above; the estimate's interval holds them.
    """
    exact = count(*shape)
    estimate = count(*shape, budget=10)
    assert exact.exact and not estimate.exact
    assert estimate.low <= exact.value <= estimate.high
    assert "estimate" in str(estimate)
