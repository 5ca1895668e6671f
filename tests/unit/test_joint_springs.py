"""Bolts on a compliant joint against small cases worked by hand."""

import numpy as np
import pytest

from twoshaft.models import joint

RING = np.array([[1, 0.3, 0.1, 0.3], [0.3, 1, 0.3, 0.1], [0.1, 0.3, 1, 0.3], [0.3, 0.1, 0.3, 1]])


def tightened(compliance, bolt_n_m, order, target_n, rounds):
    """Forces [N] after each pull: each stops at the target unless its bolt has more already."""
    count = len(compliance)
    give, nut = np.full(count, 1 / bolt_n_m), np.zeros(count)
    tight, at_rest = np.zeros(count, bool), np.zeros(count)
    force, history = np.zeros(count), []
    for j in list(order) * rounds:
        tight[j] = True
        if force[j] < target_n * joint.interaction.CLICK:
            force = joint.interaction.solve_forces(
                compliance, give, nut, at_rest, tight, j, target_n
            )
            nut[j] = force[j] / bolt_n_m + compliance[j] @ force
        history.append(force)
    return np.array(history)


def test_two_bolts_exactly():
    """Derived: A12 = -C12/(1/k + C11) = -0.06; 18.80 kN, then 19.928, then 19.9957 kN."""
    compliance = np.array([[1, 0.3], [0.3, 1]]) * 1e-9
    got = tightened(compliance, 250e6, (0, 1), 20e3, rounds=2) / 1e3
    assert got == pytest.approx(
        np.array([[20, 0], [18.80, 20], [20, 19.928], [19.99568, 20]]), abs=1e-9
    )


@pytest.mark.parametrize(
    "order, forces, second",
    [
        ((0, 1, 2, 3), (17.31, 18.56, 18.84, 20), 0.62),
        ((0, 2, 1, 3), (17.26, 19.74, 17.66, 20), 0.41),
    ],
)
def test_ring_of_four(order, forces, second):
    """Derived: springs on a ring, self 1.0, next 0.3, opposite 0.1 µm/kN, bolts 250 kN/mm."""
    got = tightened(RING * 1e-9, 250e6, order, 20e3, rounds=2)
    assert got[3] / 1e3 == pytest.approx(forces, abs=6e-3)
    assert np.ptp(got[-1]) / 20e3 * 100 == pytest.approx(second, abs=0.01)


def test_one_star_pass_to_even_clamp_needs_uneven_targets():
    """Derived: targets 22.80, 20.26, 22.35, 20.00 kN (bolts 1 to 4) end at 20 kN each."""
    targets = np.array([22.80, 20.26, 22.35, 20.00])
    k, c = 250e6, RING * 1e-9  # N/m, m/N
    force, nut, tight = np.zeros(4), np.zeros(4), np.zeros(4, bool)
    for j in (0, 2, 1, 3):
        tight[j] = True
        force = joint.interaction.solve_forces(
            c, np.full(4, 1 / k), nut, np.zeros(4), tight, j, targets[j] * 1e3
        )
        nut[j] = force[j] / k + c[j] @ force
    assert force / 1e3 == pytest.approx([20] * 4, abs=6e-3)
