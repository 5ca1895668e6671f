"""Change of setting with heat against handbook figures and maker's growth tables."""

import math

import pytest

from twoshaft.models.bearing.geometry import Rollers
from twoshaft.models.bearing.heat import (
    Seats,
    Warm,
    _outer_growth_m,
    _ring_squeeze,
    _ring_stretch,
    setting_change,
)
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Arrangement, Material

ALUMINIUM = Material(name="aluminium", expansion_per_k=23e-6, elastic_gpa=71, poisson=0.33)
STEEL = Material(name="steel", expansion_per_k=11.5e-6, elastic_gpa=207, poisson=0.3)


@pytest.mark.parametrize(
    ("arrangement", "sign"),
    [(Arrangement.OUTER_TOGETHER, -1), (Arrangement.INNER_TOGETHER, +1)],
)
def test_sign_along_the_shaft(arrangement, sign):
    """Source: SAE 910799 and EP 0448239 A3 (abstracts): outer rings held by an aluminium case
    loosen when warm and tighten when cold; the other way round is geometry.
    """
    row = Rollers.of(angle=Q(15, "deg"), count=17, length=Q(12, "mm"))
    seats = Seats(arrangement, 0.15, 0.15, 0.0, ALUMINIUM, STEEL, 0.01)
    warm = setting_change(seats, row, row, Warm(60, 60, 60, 60))
    assert warm.case_um + warm.shaft_um == pytest.approx(sign * 103.5, rel=1e-9)
    cold = setting_change(seats, row, row, Warm(-40, -40, -40, -40))
    assert cold.case_um + cold.shaft_um == pytest.approx(-sign * 69.0, rel=1e-9)


@pytest.mark.parametrize(
    ("bore", "hot", "growth"),
    [
        (25, 75, 0.0150),
        (25, 100, 0.0218),
        (25, 125, 0.0286),
        (25, 150, 0.0355),
        (100, 75, 0.0600),
        (100, 100, 0.0873),
        (100, 125, 0.1145),
        (100, 150, 0.1418),
    ],
)
def test_ring_growth(bore, hot, growth):
    """Source: Timken table of bore growth from 20 °C (Scribd 215986287).

    An inner ring that sits loosely grows freely, its raceway in the proportion of its bore;
    only the inner raceways of the two rows then change the setting, by growth / tan(contact
    angle).
    """
    row = Rollers.of(angle=Q(20, "deg"), count=17, length=Q(12, "mm"))
    seats = Seats(Arrangement.OUTER_TOGETHER, 0.1, 0.1, 0.0, STEEL, STEEL, 0.01)
    warm = Warm(case_k=0.0, shaft_k=0.0, outer_ring_k=0.0, inner_ring_k=float(hot - 20))
    raceways_mm = setting_change(seats, row, row, warm).inner_raceways_um / 1e3
    grown_mm = raceways_mm * math.tan(row.angle_rad) * bore / (row.inner_raceway_m * 1e3)
    assert grown_mm == pytest.approx(growth, rel=0.01)


def test_radial_counts_by_the_angle():
    """Source: powertransmission.com, 4 March 2015: 10 µm across is 27.4 µm along (angle of
    about 20.05°).
    """
    row = Rollers.of(angle=Q(20.05, "deg"), count=17, length=Q(12, "mm"))
    seats = Seats(Arrangement.OUTER_TOGETHER, 0.1, 0.1, 0.0, STEEL, STEEL, 0.01)
    warm = Warm(case_k=0.0, shaft_k=0.0, outer_ring_k=30.0, inner_ring_k=0.0)
    change = setting_change(seats, row, row, warm)
    radial_um = _outer_growth_m(seats, row, warm) / 2 * 1e6
    assert -change.outer_raceways_um / 2 / radial_um == pytest.approx(2.74, rel=0.01)


def test_ring_on_a_solid_shaft():
    """Source: Marks' Calculations for Machine Design, p. 136, example 6: R 50, outside 80 mm,
    10 µm on the radius, 207 GPa: p = 12.6 MPa. The outside of a ring under p grows by 2 p D d²
    / (E (D² - d²)).
    """
    d, outside, pressure, elastic = 0.100, 0.160, 12.6e6, 207e9
    grows = 2 * pressure * outside * d**2 / (elastic * (outside**2 - d**2))
    steel = Material(name="steel", expansion_per_k=11.5e-6, elastic_gpa=207, poisson=0.3)
    assert _ring_stretch(d, outside, steel, steel) * 20e-6 == pytest.approx(grows, rel=2e-3)


def test_ring_in_a_steel_case():
    """Source: Shigley, 9th ed., equation 3-57, for a ring and a case of one steel.

    p = I E (D² - d²)(Dc² - D²) / (2 D³ (Dc² - d²)); the bore shrinks by 2 p d D² / (E (D² -
    d²)).
    """
    d, fit, case = 0.05, 0.06, 0.08
    p_e = (fit**2 - d**2) * (case**2 - fit**2) / (2 * fit**3 * (case**2 - d**2))
    shrinks = 2 * p_e * d * fit**2 / (fit**2 - d**2)
    assert _ring_squeeze(d, fit, case, STEEL, STEEL) == pytest.approx(shrinks, rel=1e-12)
