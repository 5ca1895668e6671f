"""Springs of rollers and balls, and of opposed pairs, against catalogues and other packages."""

import math

import numpy as np
import pytest

from twoshaft.models.bearing import Balls, Rollers, bearing_torque, load_zone
from twoshaft.models.bearing.life import axial_factor
from twoshaft.units.quantities import Q


@pytest.fixture
def rollers():
    return Rollers.of(angle=Q(15, "deg"), count=17, length=Q(12, "mm"))


@pytest.fixture
def balls():
    return Balls.of(angle=Q(30, "deg"), count=13, diameter=Q(8.5, "mm"))


def test_catalogue_axial_displacement(rollers):
    """Source: NSK catalogue E1102m, p. A134: the formula, recomputed for this sample: 5.383 µm;
    twice the load, x 2^0.9.
    """
    one = rollers.axial_displacement_m(1000.0) * 1e6
    assert one == pytest.approx(5.383, rel=1e-3)
    two = rollers.axial_displacement_m(2000.0) * 1e6
    assert two / one == pytest.approx(1.866, abs=5e-4)


def test_palmgren_is_the_same(rollers):
    """Source: Palmgren's line contact, dn = 7.7e-5 Q^0.9 / L^0.8 (from memory), with Q = F / (Z
    sin a) and d = dn / sin a.
    """
    sine = math.sin(math.radians(15))
    normal = 7.7e-5 * (1000 / (17 * sine)) ** 0.9 / 12**0.8
    assert rollers.axial_displacement_m(1000.0) * 1e3 == pytest.approx(normal / sine)


def test_iso_16281_spring(rollers):
    """Source: ISO/TS 16281 as in the package tribology 0.5.16: Q = 35948 L^(8/9) d^(10/9); 3 %
    from Palmgren.
    """
    load_n = 1000 / (17 * math.sin(math.radians(15)))  # 227 N
    iso_mm = (load_n / (35948 * 12 ** (8 / 9))) ** 0.9
    ours_mm = rollers.element_spring * load_n**0.9 * 1e3
    assert iso_mm * 1e3 == pytest.approx(1.437, abs=1e-3)
    assert ours_mm * 1e3 == pytest.approx(1.393, abs=1e-3)
    assert ours_mm == pytest.approx(iso_mm, rel=0.035)


def radial_stiffness_n_m(row, load_n):
    """Radial stiffness with half the row loaded, from the spring of one element.

    The most loaded element carries 4.08 F/(Z cos a) on rollers and 4.37 F/(Z cos a) on balls
    (NSK E728g, sec. 5).
    """
    share = 4.08 if isinstance(row, Rollers) else 4.37
    cosine = math.cos(row.angle_rad)
    most_n = share * load_n / (row.count * cosine)
    return load_n * cosine / (row.element_spring * most_n**row.power) / row.power


def test_roller_radial_stiffness():
    """Source: ross-rotordynamics 2.3, test of its roller bearing: 8 rollers of 30 mm, 30°, 500
    N.
    """
    row = Rollers.of(angle=Q(30, "deg"), count=8, length=Q(30, "mm"))
    ours = radial_stiffness_n_m(row, 500.0)
    assert ours == pytest.approx(5.56779444e8, rel=0.03)


def test_ball_radial_stiffness():
    """Source: ross-rotordynamics 2.3, test of its ball bearing: 8 balls of 30 mm, 30°, 500 N."""
    row = Balls.of(angle=Q(30, "deg"), count=8, diameter=Q(30, "mm"))
    ours = radial_stiffness_n_m(row, 500.0)
    assert ours == pytest.approx(1.00906269e8, rel=0.03)


@pytest.mark.parametrize(
    ("quantity", "power"), [("count", 0.9), ("length", 0.8), ("load", 0.1), ("angle", 1.9)]
)
def test_roller_stiffness_powers(quantity, power):
    """Source: ross-rotordynamics 2.3, its form K = 1e9 n^0.9 l^0.8 F^0.1 cos(a)^1.9."""

    def stiffness(count=16, length=15.0, load=500.0, angle=20.0):
        row = Rollers.of(angle=Q(angle, "deg"), count=count, length=Q(length, "mm"))
        return radial_stiffness_n_m(row, load)

    if quantity == "angle":
        ratio = math.cos(math.radians(20)) / math.cos(math.radians(30))
        seen = stiffness() / stiffness(angle=30.0)
    else:
        ratio = 2.0
        seen = stiffness(**{quantity: {"count": 32, "length": 30.0, "load": 1000.0}[quantity]})
        seen /= stiffness()
    assert seen == pytest.approx(ratio**power, rel=1e-9)


@pytest.mark.parametrize(
    ("kind", "axial", "most"),
    [("rollers", 1.260, 4.08), ("balls", 1.216, 4.37)],
)
def test_half_loaded_row(kind, axial, most, request):
    """Source: NSK E728g, section 5, table 1: half the row loaded."""
    row = request.getfixturevalue(kind)
    zone = load_zone(row, Q(1000, "N"))
    force = np.interp(0.5, zone.share, zone.axial_n)
    assert force / (1000 * math.tan(row.angle_rad)) == pytest.approx(axial, rel=3e-3)
    element = np.interp(0.5, zone.share, zone.most_loaded_n)
    share = element * row.count * math.cos(row.angle_rad) / 1000
    assert share == pytest.approx(most, rel=3e-3)


def test_pure_axial_load_is_shared_evenly(rollers):
    """Source: NSK E728g, section 5, equation 6: Q = Fa / (Z sin a)."""
    zone = load_zone(rollers, Q(100, "N"))
    even = zone.axial_n[-1] / (rollers.count * math.sin(rollers.angle_rad))
    assert zone.most_loaded_n[-1] == pytest.approx(even, rel=6e-3)


@pytest.mark.parametrize("angle", [11.0, 14.0, 20.0])
def test_load_zone_agrees_with_the_axial_factor(angle):
    """Source: ISO 281 (from memory), under axial load P = Y Fa with Y = 0.4 cot a; the load zone gives
    it within 7 %.
    """
    row = Rollers.of(angle=Q(angle, "deg"), count=17, length=Q(12, "mm"))
    zone = load_zone(row, Q(100, "N"))
    assert zone.equivalent_n[-1] / zone.axial_n[-1] == pytest.approx(axial_factor(row), rel=0.07)


def test_catalogue_turning_torque(rollers):
    """Source: NSK catalogue E1102m, pp. A134-A135: M = e mu F cos(b), mu = 0.20; proportional
    to the preload.
    """
    torque = bearing_torque(rollers, Q(1000, "N")).m_as("N*mm")
    arm, half_angle = rollers.rib_arm_m * 1e3, rollers.half_angle_rad
    assert torque == pytest.approx(arm * 0.20 * 1000 * math.cos(half_angle), rel=1e-12)
    assert torque == pytest.approx(299.85, abs=0.01)  # 1.5 mm, 1.8 deg (derived)
    doubled = bearing_torque(rollers, Q(2000, "N")).m_as("N*mm")
    assert doubled == pytest.approx(2 * torque)
