"""Decisions under uncertainty, against published figures."""

import pytest

from twoshaft.models.inspect import chance_beyond, guard_band, mean_uncertainty, shares_wrong
from twoshaft.units.quantities import Q


def mm(value):
    return Q(value, "mm")


@pytest.mark.parametrize("guard, risk", [(0, 0.5), (2, 0.02275)])
def test_the_worst_chance_of_a_wrong_acceptance(guard, risk):
    """Source: ILAC-G8:09/2019, table quoted by tla.sgs.com: without a guard band up to 50 %, with
    one of the expanded uncertainty (k = 2) up to 2.5 %; its exact figure is 2.275 %."""
    assert chance_beyond(mm(5 + 0.01 * guard), mm(5), mm(0.01), True) == pytest.approx(
        risk, abs=1e-4
    )


def test_the_guard_band_of_one_in_twenty():
    """Source: ISO 14253-1:2017 by ILAC-G8:09/2019 (from memory): 0.83 of the expanded uncertainty
    guards one side at 95 %; with k = 2 that is 1.66 standard uncertainties, rounded up."""
    assert guard_band(mm(0.01)).m_as("mm") == pytest.approx(0.83 * 0.02, rel=0.01)


@pytest.mark.parametrize(
    "reading, limit, u, least, conforms",
    [(5.40 + 0.07, 5.40, 0.05, True, 0.92), (509.7, 490, 8.6, True, 0.99)],
)
def test_conformance_probability_of_the_guide(reading, limit, u, least, conforms):
    """Source: JCGM 106:2012, 7.3.3, examples 1 and 2 (from memory): -5.47 against at most -5.40
    with 0.05, and 509.7 against at least 490 with 8.6, conform with 92 % and 99 %. The first is
    turned round here, since no size is below zero."""
    assert 1 - chance_beyond(mm(reading), mm(limit), mm(u), least) == pytest.approx(
        conforms, abs=5e-3
    )


@pytest.mark.parametrize(
    "ratio, accept, wrong, refused", [(4, 1, 0.008, 0.015), (2, 0.91, 0.008, 0.066)]
)
def test_global_risks_of_a_tolerance_on_both_sides(ratio, accept, wrong, refused):
    """Source: D. Deaver, "Managing calibration confidence in the real world", as kept in the tests
    of suncal (github.com/sandialabs/suncal, test/test_risk.py): limits of two standard deviations,
    uncertainty a quarter of one, or a half with acceptance at 0.91 of the limits."""
    sides = shares_wrong(mm(20), mm(1), mm(18), mm(1 / ratio), mm(2 - 2 * accept))
    # Both sides are alike, and no part is beyond both.
    assert 2 * sides[0] == pytest.approx(wrong, abs=5e-4)
    assert 2 * sides[1] == pytest.approx(refused, abs=1.5e-3)


def test_the_mean_of_repeated_readings():
    """Source: JCGM 100:2008, 4.4.3: 20 readings with a standard deviation of 1.489 give their mean
    a standard uncertainty of 0.333 (°C there, mm here)."""
    assert mean_uncertainty(mm(1.489), 20).m_as("mm") == pytest.approx(0.333, abs=5e-4)


def test_the_table_of_chances_in_the_exercise():
    """Source: table of the standard normal distribution, NIST/SEMATECH e-Handbook 1.3.6.7.1: areas
    0.19146, 0.34134, 0.43319 and 0.47725 from 0 to 0.5, 1, 1.5 and 2."""
    for times, area in ((0.5, 0.19146), (1, 0.34134), (1.5, 0.43319), (2, 0.47725)):
        found = chance_beyond(mm(5 + 0.01 * times), mm(5), mm(0.01), True)
        assert found == pytest.approx(0.5 - area, abs=1e-5)
