"""Uncertainty against published budgets."""

import math

import pytest

from twoshaft.models.shim import (
    Measured,
    Source,
    normal,
    propagate,
    rectangular,
    repeated,
    resolution,
)


def end_gauge():
    """GUM (JCGM 100:2008) annex H.1: the end gauge of 50 mm; inputs from memory, lengths in nm."""
    length = Measured("standard", 50_000_623.0, (Source("standard", 25.0, 18),))
    difference = Measured(
        "difference",
        215.0,
        (Source("repeats", 5.8, 24), Source("random", 3.9, 5), Source("systematic", 6.7, 8)),
    )
    alpha = Measured("expansion", 11.5e-6, (rectangular("expansion", 2e-6),))
    d_alpha = Measured("d-expansion", 0.0, (rectangular("d-expansion", 1e-6, 50),))
    theta = Measured(
        "temperature", -0.1, (Source("mean", 0.2), Source("cycle", 0.5 / math.sqrt(2)))
    )
    d_theta = Measured("d-temperature", 0.0, (rectangular("d-temperature", 0.05, 2),))

    def gauge(ls, d, a, da, t, dt):
        return ls + d - ls * (da * t + a * dt)

    return propagate(gauge, [length, difference, alpha, d_alpha, theta, d_theta])


def test_gum_h1_end_gauge():
    """Source: GUM (JCGM 100:2008), H.1 (values from memory; first order recomputed with another
    package, GTC: 31.66, 16.75).
    """
    budget = end_gauge()
    assert budget.value == pytest.approx(50_000_838, abs=0.5)
    assert budget.u == pytest.approx(32, rel=0.015)
    assert budget.u == pytest.approx(31.66, abs=0.01)
    assert budget.dof == pytest.approx(16.75, abs=0.02)
    assert budget.coverage_factor(0.99) == pytest.approx(2.92, abs=0.005)
    assert budget.expanded(0.99) == pytest.approx(93, rel=0.015)


def test_gum_h1_shares():
    """Source: GUM (JCGM 100:2008), H.1 (from memory); the order of the budget recomputed with
    GTC (nm).
    """
    shares = end_gauge().shares
    assert list(shares)[:2] == ["standard", "d-temperature"]
    for name, nm in {
        "standard": 25.0,
        "d-temperature": 16.6,
        "systematic": 6.7,
        "repeats": 5.8,
        "random": 3.9,
        "d-expansion": 2.9,
    }.items():
        assert shares[name] == pytest.approx(nm, abs=0.06)
    assert shares["expansion"] == pytest.approx(0.0, abs=1e-9)


def test_micrometer():
    """Source: talalspecialbolt page (French ISO 17025 guide): micrometer at 21.5 mm, in mm."""
    reading = Measured(
        "reading",
        21.5,
        (
            Source("repeatability", 0.00033),
            resolution("resolution", 0.001),
            Source("block", 0.00025),
        ),
    )
    budget = propagate(lambda x: x, [reading])
    assert budget.u == pytest.approx(0.000506, abs=2e-6)
    assert 2 * budget.u == pytest.approx(0.0010, abs=2e-5)


def test_quotient():
    """Source: GTC's page on PyPI, its own example: 0.1(0.001) V / 15e-3(0.5e-3) A = 6.67(23)
    ohm.
    """
    volts = Measured("volts", 0.1, (Source("volts", 0.001),))
    amps = Measured("amps", 15e-3, (Source("amps", 0.5e-3),))
    budget = propagate(lambda v, i: v / i, [volts, amps])
    assert budget.value == pytest.approx(6.67, abs=0.005)
    assert budget.u == pytest.approx(0.23, abs=0.005)


@pytest.mark.parametrize(
    ("dof", "level", "k"),
    [
        (1, 0.95, 12.71),
        (5, 0.95, 2.57),
        (10, 0.95, 2.23),
        (16, 0.99, 2.92),
        (50, 0.95, 2.01),
        (math.inf, 0.95, 1.960),
        (math.inf, 0.99, 2.576),
        (math.inf, 0.9545, 2.000),
    ],
)
def test_coverage_factor(dof, level, k):
    """Source: GUM (JCGM 100:2008), table G.2, Student's t."""
    budget = propagate(lambda x: x, [Measured("x", 1.0, (Source("x", 0.1, dof),))])
    assert budget.coverage_factor(level) == pytest.approx(k, abs=0.006)


def test_certificate():
    """Source: GUM (JCGM 100:2008), 4.3.3: U = 240 µg at k = 3 is u = 80 µg."""
    assert normal("mass", 240.0, 3).u == 80.0


def test_repeat_readings():
    """Source: NIST StRD NumAcc1: mean 10000002 and sd 1 (certified) for three values; here u =
    sd/sqrt 3.
    """
    mean, source = repeated("numacc1", [10000001, 10000003, 10000002])
    assert mean == 10000002
    assert source.u == pytest.approx(1 / math.sqrt(3), rel=1e-12)
    assert source.dof == 2
