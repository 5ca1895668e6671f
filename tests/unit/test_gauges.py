"""Measuring instruments: plain geometry, rules and refusals."""

import pytest

from twoshaft.errors import OutOfRangeError
from twoshaft.models import gauges
from twoshaft.units.quantities import Q


def mm(value):
    return Q(value, "mm")


def test_total_reading_is_twice_the_eccentricity():
    """Plain geometry: over a whole turn the surface goes from +e to -e."""
    turn = [gauges.run_out(mm(0.06), Q(a, "degree")).m_as("mm") for a in range(0, 361, 5)]
    assert max(turn) - min(turn) == pytest.approx(0.12)
    assert gauges.eccentricity(mm(max(turn) - min(turn))).m_as("mm") == pytest.approx(0.06)


def test_an_oval_shows_half_the_difference_of_its_diameters():
    """Plain geometry: between centres the dial goes from half the one diameter to half the other."""
    turn = [gauges.run_out(mm(0), Q(a, "degree"), mm(0.08)).m_as("mm") for a in range(0, 361, 5)]
    assert max(turn) - min(turn) == pytest.approx(0.04)


def test_parallax_is_similar_triangles():
    """An eye 100 mm aside at 250 mm moves a line 0.3 mm above the scale by 0.12 mm."""
    assert gauges.parallax(mm(0.3), mm(100), mm(250)).m_as("mm") == pytest.approx(-0.12)
    assert gauges.parallax(mm(0.3), mm(0), mm(250)).m == 0


def test_rule_of_ten_and_verdict():
    assert gauges.tells(mm(0.01), mm(0.1)) and not gauges.tells(mm(0.02), mm(0.1))
    limits = (mm(10.0), mm(10.1), mm(0.01))
    assert [gauges.verdict(mm(x), *limits) for x in (10.05, 10.095, 10.12, 9.995)] == [
        "inside", "unsure", "outside", "unsure"]  # fmt: skip
    with pytest.raises(OutOfRangeError):
        gauges.verdict(mm(1), mm(2), mm(1), mm(0.1))
    with pytest.raises(OutOfRangeError):
        gauges.spread([1.0])


def test_a_plunger_that_lets_go_shows_nothing():
    assert gauges.dial_reading(mm(0.02), mm(-0.05), Q(0, "degree")).m == 0
    assert gauges.dial_reading(mm(0.5), mm(-0.05), Q(0, "degree")).m == pytest.approx(0.45)
