"""Oil in a blind hole against Lamé's tube and the definition of the bulk modulus."""

import math

import pytest

from twoshaft.models import joint
from twoshaft.units.quantities import Q

M8 = joint.Thread.named("M8")
SEAT = joint.Seat.hexagon(M8)


@pytest.mark.parametrize("boss, elastic", [(18e-3, 70e9), (12e-3, 10e9)])
def test_a_little_too_much_oil(boss, elastic):
    """Derived: p = (dV/V)/(1/B + 2 (walls + nu)/E); the bore's growth is Lamé's (from memory)."""
    hole = joint.BlindHole(25e-3, 19e-3, boss, elastic_pa=elastic)
    room = math.pi / 4 * M8.d2_m**2 * 6e-3
    over = 2e-4
    lock = joint.hydraulic_lock(
        hole, M8, SEAT, Q(room * (1 + over), "m**3"), Q(27, "N*m"), 0.12, Q(1.5, "GPa")
    )
    walls = (boss**2 + 8e-3**2) / (boss**2 - 8e-3**2)
    gives = 1 / 1.5e9 + 2 / elastic * (walls + 0.33)
    assert lock.pressure_pa == pytest.approx(over / gives, rel=2e-3)
    assert lock.hoop_pa == pytest.approx(lock.pressure_pa * walls, rel=1e-12)
    assert lock.short_m == pytest.approx(6e-3 * over, rel=1e-9)
    assert lock.turns_short == pytest.approx(6e-3 * over / 1.25e-3, rel=1e-9)


def test_the_push_of_a_bolt_without_its_head():
    """Power screw (textbook): without collar friction T = F (P/2pi + mu d2/(2 cos 30°))."""
    hole = joint.BlindHole(25e-3, 19e-3, 18e-3)
    lock = joint.hydraulic_lock(hole, M8, SEAT, Q(0.9, "cm**3"), Q(27, "N*m"), 0.12)
    push = 27 / (1.25e-3 / (2 * math.pi) + 0.12 * M8.d2_m / (2 * math.cos(math.radians(30))))
    assert lock.stand_off_m > 0
    assert lock.pressure_pa == pytest.approx(push / (math.pi / 4 * M8.d2_m**2), rel=1e-12)
