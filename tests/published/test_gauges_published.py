"""Measuring instruments against worked examples and tables from outside the project."""

import math

import pytest

from twoshaft.models import gauges
from twoshaft.models.shim import Measured, normal, propagate, resolution
from twoshaft.models.shim.uncertainty import Source
from twoshaft.units.quantities import Q


def mm(value):
    return Q(value, "mm")


def test_micrometer_of_a_maker_of_gauges():
    """Source: tresnainstrument.com, metric micrometers: sleeve 5.5 mm and line 28 (28.3) give
    5.783.
    """
    screw = gauges.Screw()
    turns, line = screw.marks(mm(5.783))
    assert (turns * 0.5, line) == (5.5, pytest.approx(28.3))
    assert screw.reading(11, 28).m_as("mm") == pytest.approx(5.78)


@pytest.mark.parametrize(
    "sleeve, line, total", [(3.0, 47, 3.47), (8.5, 3, 8.53), (12.5, 15, 12.65)]
)
def test_micrometer_worksheet(sleeve, line, total):
    """Source: Micrometer screw gauge worksheet with solution (a stored page of 18.231.191.110)."""
    screw = gauges.Screw()
    assert screw.reading(round(sleeve / 0.5), line).m_as("mm") == pytest.approx(total)
    turns, there = screw.marks(mm(total))
    assert (turns * 0.5, there) == (sleeve, pytest.approx(line))


def test_zero_error_worksheet():
    """Source: Micrometer screw gauge worksheet with solution (a stored page of 18.231.191.110):
    5.72 mm with a zero error of +0.04 is 5.68; with -0.04, 5.76.
    """
    assert gauges.corrected(mm(5.72), mm(0.04)).m_as("mm") == pytest.approx(5.68)
    assert gauges.corrected(mm(5.72), mm(-0.04)).m_as("mm") == pytest.approx(5.76)


def test_vernier_principle():
    """Source: scales of vernier callipers (from memory): twenty spaces in 19 mm read 0.05 mm, fifty in 49
    mm 0.02 mm.
    """
    coarse, fine = gauges.Vernier(1, 20), gauges.Vernier(1, 50)
    assert (coarse.step.m, fine.step.m) == pytest.approx((0.05, 0.02))
    assert 20 * coarse.space.m == pytest.approx(19) and 50 * fine.space.m == pytest.approx(49)
    assert coarse.marks(mm(23.35)) == (23, 7)
    assert min(range(20), key=lambda k: coarse.gap(mm(23.35), k).m) == 7
    assert coarse.reading(23, 7).m_as("mm") == pytest.approx(23.35)


def test_tilted_plunger_reads_too_much():
    """Source: organametrisis.gr, cosine error: about travel times (1 - cos), second order in
    the angle.
    """
    for degrees in (5, 10):
        more = gauges.plunger_travel(mm(1), Q(degrees, "degree")).m - 1
        assert more == pytest.approx(math.radians(degrees) ** 2 / 2, rel=0.03)


@pytest.mark.parametrize(
    "count, level, limit",
    [
        (3, 0.95, 1.1543),
        (5, 0.95, 1.7150),
        (6, 0.95, 1.8871),
        (10, 0.95, 2.2900),
        (10, 0.99, 2.4821),
    ],
)
def test_grubbs_table(count, level, limit):
    """Source: Table after Grubbs 1969 and Stefansky 1972 (Scribd 249116410)."""
    assert gauges.grubbs_limit(count, level) == pytest.approx(limit, abs=2e-4)


def test_a_stray_reading_of_the_nist_handbook():
    """Source: NIST e-Handbook 1.3.5.17.1 (from memory): 245.57 is out, G = 2.4688."""
    data = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57]
    mean, sd = gauges.spread(data)
    assert (data[-1] - mean) / sd == pytest.approx(2.468765, abs=1e-6)
    assert gauges.stray(data) == 7 and gauges.stray(data[:-1]) is None


def test_uncertainty_of_a_micrometer():
    """Source: talalspecialbolt page (French ISO 17025 guide): 0.00033, 0.001/sqrt12 and 0.00025
    give 0.00051 and U 0.0010 mm.
    """
    sources = (Source("repeat", 0.00033), resolution("step", 0.001), normal("block", 0.0005))
    budget = propagate(lambda x: x, [Measured("length", 21.5, sources)])
    assert budget.u == pytest.approx(0.00051, abs=1e-5)
    assert 2 * budget.u == pytest.approx(0.0010, abs=5e-5)
