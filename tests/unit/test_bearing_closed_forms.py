"""Opposed bearings against the theory of springs, and lives over settings."""

import numpy as np
import pytest

from twoshaft.models.bearing import Balls, Pair, Rollers, life_against_setting
from twoshaft.models.bearing.life import life_h
from twoshaft.models.bearing.trial import try_shim
from twoshaft.units.quantities import Q


@pytest.fixture
def rollers():
    return Rollers.of(angle=Q(15, "deg"), count=17, length=Q(12, "mm"))


@pytest.fixture
def balls():
    return Balls.of(angle=Q(30, "deg"), count=13, diameter=Q(8.5, "mm"))


def test_life_of_a_catalogue_bearing():
    # C = 40.2 kN (30 x 62 x 17.25 of the rows), P = 5 kN, 1500 rpm: 11569 h (recomputed).
    row = Rollers.of(angle=Q(15, "deg"), count=16, length=Q(11, "mm"), rating=Q(40.2, "kN"))
    assert life_h(row, 5000.0, 1500.0) == pytest.approx(11569, rel=1e-3)


def test_life_over_setting():
    # Common practice, no source: a light preload is best; half the life is soon lost on either side.
    row = Rollers.of(angle=Q(15, "deg"), count=17, length=Q(12, "mm"))
    pair = Pair.of(row, row, Q(100, "N/um"))
    settings = Q(np.linspace(-0.2, 0.12, 65), "mm")
    curve = life_against_setting(
        pair, settings, (Q(3000, "N"), Q(3000, "N")), Q(0, "N"), Q(2000, "rpm")
    )
    assert 0.0 < curve.best_mm < 0.06
    assert curve.both_h[0] < curve.both_h.max() / 2
    assert curve.both_h[-1] < curve.both_h.max() / 2
    # Two equal bearings last 2^(-8/9) of one (Weibull slope 9/8, from memory).
    assert curve.both_h == pytest.approx(curve.left_h * 2 ** (-8 / 9), rel=1e-6)
    # Far from preload the catalogue's pair is one bearing under Fr, twice.
    one = life_h(row, 3000.0, 2000.0)
    assert curve.catalogue_h[0] == pytest.approx(one * 2 ** (-8 / 9), rel=1e-9)


@pytest.mark.parametrize(
    ("kind", "ratio"),
    # Theory of opposed springs: 2^(10/9) for lines (derived), 2^1.5 for points (from memory).
    [("rollers", 2 ** (10 / 9)), ("balls", 2**1.5)],
)
def test_unloading_force(kind, ratio, request):
    row = request.getfixturevalue(kind)
    pair = Pair.of(row, row)
    setting_m = pair.interference_m(800.0)
    assert pair.loads_n(setting_m, 800 * ratio * (1 - 1e-9))[0] > 0
    assert pair.loads_n(setting_m, 800 * ratio * (1 + 1e-9))[0] == 0


def test_unloading_force_in_a_soft_case(rollers):
    # With a very soft case the pair is a linear one: twice the preload (theory).
    soft = Pair.of(rollers, rollers, Q(0.05, "N/um"))
    setting_m = soft.interference_m(800.0)
    assert soft.loads_n(setting_m, 1600 * (1 - 2e-3))[0] > 0
    assert soft.loads_n(setting_m, 1600 * (1 + 2e-3))[0] == 0


def test_stiffness_of_a_pair(rollers):
    # Theory: 2 (10/9) F0 / d0 at no outer load; the slope of the balance, over a small push.
    pair = Pair.of(rollers, rollers)
    _, right_n = pair.loads_n(pair.interference_m(800.0), 0.8)
    moved_m = rollers.axial_displacement_m(right_n) - rollers.axial_displacement_m(800.0)
    wanted = 2 * (10 / 9) * 800 / rollers.axial_displacement_m(800.0)
    assert 0.8 / moved_m == pytest.approx(wanted, rel=1e-3)


def test_half_the_case_gives_way_on_each_side_of_a_trial(unit):
    """In a case far softer than its bearings a push meets two springs, each twice the case: P / (2 c)."""
    support = unit.bearings.support_by_id("differential")
    soft = support.model_copy(update={"case_stiffness_n_per_um": 0.5})
    trial = try_shim(soft, unit.bearings, Q(1.18, "mm"), push=Q(20, "N"))
    assert trial.setting.m_as("mm") == pytest.approx(0.1)
    assert trial.travel.m_as("um") == pytest.approx(20 / (2 * 0.5), rel=0.02)
