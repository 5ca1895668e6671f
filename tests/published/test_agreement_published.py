"""Agreement of two lists of answers beside a published example and another library."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.stats import poisson_binom

from twoshaft_grader.records.agreement import at_least

# The example in gbt1.R of the R package CopyDetect (Zopluoglu), run there and again with scipy.
CHANCES = [0.9, 0.8, 0.6, 0.5, 0.4, 0.3]


def test_generalized_binomial_test():
    """Source: The example in gbt1.R of the R package CopyDetect (Zopluoglu), run there and
    again with scipy 1.17.
    """
    assert at_least(5, CHANCES) == pytest.approx(0.17784, abs=5e-6)
    exactly = [at_least(m, CHANCES) - at_least(m + 1, CHANCES) for m in range(7)]
    published = [0.00168, 0.02788, 0.1466, 0.3202, 0.3258, 0.15192, 0.02592]
    assert exactly == pytest.approx(published, abs=5e-6)


@pytest.mark.parametrize("seed", range(5))
def test_beside_scipy(seed):
    """Source: scipy 1.17, scipy.stats.poisson_binom, the same distribution worked out apart."""
    chances = np.random.default_rng(seed).random(30)
    for matches in (0, 1, 12, 25, 30):
        expected = poisson_binom(chances).sf(matches - 1)
        assert at_least(matches, chances) == pytest.approx(expected, rel=1e-9, abs=1e-12)
