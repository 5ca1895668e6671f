"""Detent forces against published forms; the source stands beside each check."""

import pytest

from twoshaft.models.shift import detent_force
from twoshaft.units.quantities import Q


@pytest.mark.parametrize(
    ("ramp", "free", "with_friction"), [(45, 60.0, 76.4), (30, 34.6, 45.0), (60, 103.9, 140.3)]
)
def test_ball_on_a_ramp(ramp, free, with_friction):
    """Source: firgelli's page on ball detents and the detent blocks in the documentation of two
    simulation libraries: N tan(ramp) without friction, N tan(ramp + rho) with it; the numbers,
    for N = 60 N and friction 0.12, are worked from it.
    """

    def start(mu):
        return detent_force(Q(60, "N"), Q(ramp, "degree"), mu).to_start.to("N").magnitude

    assert start(0.0) == pytest.approx(free, abs=0.06)
    assert start(0.12) == pytest.approx(with_friction, abs=0.1)
