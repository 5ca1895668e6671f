"""Oils, air in closed cases and rings that slide, against published figures."""

import pytest

from twoshaft.models.closeout import (
    WINTER_C,
    hot_grade,
    kilograms_to_fill,
    leak_rate,
    litres_to_fill,
    pressure_in,
    pressure_lost,
)
from twoshaft.models.viscosity import walther
from twoshaft.units.quantities import Q
from twoshaft.units.sections.strip import StripOil

OIL = StripOil(
    capacity_litre=10, stays_litre=0.1, unsure_litre=0.05, reference_c=20,
    density_kg_per_litre=0.88, expansion_per_k=0.0007, viscosity_mm2_per_s=(32.0, 5.4),
    depth_mm=100, drain_below_c=50,
)  # fmt: skip


def thick(v):
    return Q(v, "mm**2/s")


def test_a_gear_oil_between_its_two_figures():
    """Source: olezol.com, page "Viscosity-temperature extrapolation, ASTM D341", example 1: SAE 140
    with 404 mm²/s at 40 °C and 28 at 100 °C has 132.126 at 60 °C."""
    assert walther(thick(404), thick(28), Q(60, "degC")).m == pytest.approx(132.126, abs=1e-3)


def test_an_oil_told_at_eighty_degrees():
    """Source: olezol.com, page "Viscosity-temperature extrapolation, ASTM D341", example 2: 68 mm²/s at 40 °C and 14.85 at 80 °C are 8.8 at 100 °C."""
    assert walther(thick(68), thick(8.8), Q(80, "degC")).m == pytest.approx(14.85, abs=0.06)


@pytest.mark.parametrize(
    "at_100, grade",
    [(3.8, "65"), (4.99, "65"), (5.0, "70"), (6.5, "75"), (8.49, "75"), (8.5, "80"), (10.99, "80"),
     (11.0, "85"), (13.5, "90"), (18.49, "90"), (18.5, "110"), (24.0, "140"), (32.5, "190"),
     (41.0, "250")],
)  # fmt: skip
def test_grades_change_where_the_standard_says(at_100, grade):
    """Source: SAE J306, February 2019, table printed at pmlubrication.com.au/charts."""
    assert hot_grade(thick(at_100)) == grade


def test_winter_grades_flow_at_their_temperatures():
    """Source: SAE J306, as at pmlubrication.com.au/charts and at matarama.com, sheet 211.0:
    150 000 mPa·s at most at -55, -40, -26 and -12 °C."""
    assert WINTER_C == {"70W": -55, "75W": -40, "80W": -26, "85W": -12}


def test_oil_that_is_filled_in_warm():
    """Source: engineeringtoolbox.com, page d_315, "Volumetric - Cubic - Thermal Expansion": 100 l
    of oil from 20 °C to 40 °C grow by 1.4 l with 0.0007 for each kelvin."""
    assert litres_to_fill(OIL, Q(40, "degC")).m_as("l") == pytest.approx(10.14, abs=1e-9)
    assert kilograms_to_fill(OIL) == pytest.approx(8.8)


def test_a_closed_cylinder_that_is_heated():
    """Source: chemistry.about.com, "Guy-Lussac Gas Law Example": 6 atm at 27 °C in a cylinder
    whose volume stays become 7 atm at 77 °C (with 273 K for 0 °C)."""
    six = Q(6, "atm").to("mbar")
    over = pressure_in(six, Q(27, "degC"), Q(77, "degC"), Q(20, "l"), Q(0, "l"))
    assert (six + over).m_as("atm") == pytest.approx(7, rel=1e-3)


def test_a_tight_cylinder_loses_nothing_as_it_cools():
    """Source: chemistry.about.com, "Guy-Lussac Gas Law Example", read backwards: from 7 atm at 77 °C to 6 atm at 27 °C no gas is
    lost."""
    lost = pressure_lost(
        Q(7, "atm").to("mbar"), Q(6, "atm").to("mbar"), Q(77, "degC"), Q(27, "degC")
    )
    assert lost.m_as("atm") == pytest.approx(0, abs=0.002)


def test_a_millibar_litre_a_second():
    """Source: liwo.com, page "Leak rate": 1 mbar l/s, a litre that loses 1 mbar in a second, is
    59.2 cm³/min at 1013 mbar."""
    rate = leak_rate(Q(1, "mbar"), Q(1, "l"), Q(1, "s"), Q(1013, "mbar"))
    assert rate.m_as("cm**3/minute") == pytest.approx(59.2, abs=0.05)


def test_a_tank_of_five_litres():
    """Source: costcalculator.calculator.city, "Leakage Rate Calculator (Pressure Decay)": 5 l lose
    2 mbar in 30 s: 0.333 mbar l/s; by the table of liwo.com that is 19.7 cm³/min."""
    rate = leak_rate(Q(2, "mbar"), Q(5, "l"), Q(30, "s"), Q(1013, "mbar"))
    assert rate.m_as("cm**3/minute") == pytest.approx(0.333 * 59.2, rel=2e-3)
