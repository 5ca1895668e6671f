"""Fits, press forces, heat and pins against standards, handbooks and makers' tables."""

import math

import pytest

from twoshaft.models import fit
from twoshaft.units.quantities import Q

# IT grades and shaft positions as in pressfit 0.1.0 and isofits 1.0 (two independent tables that
# agree): size in the range, IT5 to IT8, then ei of k m n p r s [µm].
ISO_286 = [
    (25, (9, 13, 21, 33), (2, 8, 15, 22, 28, 35)),
    (40, (11, 16, 25, 39), (2, 9, 17, 26, 34, 43)),
    (60, (13, 19, 30, 46), (2, 11, 20, 32, 41, 53)),
    (72, (13, 19, 30, 46), (2, 11, 20, 32, 43, 59)),
    (90, (15, 22, 35, 54), (3, 13, 23, 37, 51, 71)),
    (110, (15, 22, 35, 54), (3, 13, 23, 37, 54, 79)),
]


@pytest.mark.parametrize("size, grades, positions", ISO_286)
def test_grades_and_positions_iso_286(size, grades, positions):
    """Source: ISO 286 as in pressfit 0.1.0 and isofits 1.0, two independent tables that agree."""
    got = [fit.tolerance_um(Q(size, "mm"), g) for g in (5, 6, 7, 8)]
    assert got == list(grades)
    for letter, below in zip("kmnprs", positions, strict=True):
        assert fit.zone(Q(size, "mm"), f"{letter}6").lower_um == below, letter


@pytest.mark.parametrize(
    "size, code, upper, lower",
    [
        (60, "H7", 30, 0),  # melib docstring
        (60, "s6", 72, 53),
        (60, "f6", -30, -49),
        (110, "H7", 35, 0),
        (110, "s6", 101, 79),
        (50, "H7", 25, 0),  # the two tables above, and Shigley's way of writing fits
        (50, "p6", 42, 26),
        (50, "r6", 50, 34),
        (50, "k6", 18, 2),
        (72, "P7", -21, -51),
        (52, "M7", 0, -30),
        (34, "c11", -120, -280),  # Shigley p. 398: IT11 at 34 mm 160 µm, c11 es -120 µm
        (30, "K7", 6, -15),  # isofits
        (40, "N7", -8, -33),
        (35, "JS7", 12.5, -12.5),
        # ISO 286-2 from memory: holes with and without the step to the finer grade, to 3 mm and above.
        (50, "K6", 3, -13),
        (50, "K8", 12, -27),
        (50, "M8", 5, -34),
        (50, "N8", -3, -42),
        (50, "N9", 0, -62),
        (50, "P6", -21, -37),
        (50, "P8", -26, -65),
        (50, "R7", -25, -50),
        (3, "K7", 0, -10),
        (3, "M7", -2, -12),
        (3, "N9", -4, -29),
        (3, "P7", -6, -16),
        (6, "P7", -8, -20),
        (50, "k7", 27, 2),
        (50, "k8", 39, 0),
    ],
)
def test_limits_iso_286(size, code, upper, lower):
    """Source: ISO 286 as printed or coded elsewhere, by the mark at each row: melib's
    docstring, pressfit 0.1.0 and isofits 1.0, Shigley, 9th ed., p. 398.
    """
    zone = fit.zone(Q(size, "mm"), code)
    assert (zone.upper_um, zone.lower_um) == (upper, lower)


def test_fit_in_inches():
    """Source: Shigley, 9th ed., p. 398: 2 in H7/s6: hole 2.0000 to 2.0010, shaft 2.0017 to
    2.0023 in.

    The book takes 2 in from the range up to 50 mm and rounds to ten-thousandths.
    """
    got = fit.fit(Q(50, "mm"), "H7/s6")
    deviations = (got.hole.lower_um, got.hole.upper_um, got.shaft.lower_um, got.shaft.upper_um)
    expected = (0.0, 0.0010, 0.0017, 0.0023)
    assert [um / 25400 for um in deviations] == pytest.approx(expected, abs=5e-5)


def test_interference_of_50_h7_p6():
    """Source: ISO 286 limits of 50 H7, p6 and k6 in pressfit 0.1.0 and isofits 1.0."""
    got = fit.fit(Q(50, "mm"), "H7/p6")
    assert (got.least_um, got.most_um, got.kind) == (1, 42, "interference")
    assert fit.fit(Q(50, "mm"), "H7/k6").kind == "transition"


BOOK_STEEL = fit.Material("steel of the book", 207e9, 0.292, 11.5e-6, 400e6)


def test_lame_marks_calculations():
    """Source: Marks' Calculations for Machine Design, p. 136, example 6: solid shaft R 50, hub
    80 mm, radial 10 µm: 12.6 MPa.
    """
    pair = fit.Pair.of(Q(100, "mm"), Q(160, "mm"), hub=BOOK_STEEL, shaft=BOOK_STEEL)
    assert fit.pressure(Q(20, "um"), pair).m_as("MPa") == pytest.approx(12.6, rel=2e-3)


def test_lame_marks_calculations_us():
    """Source: Marks' Calculations for Machine Design, p. 136, example 6 in US units: 2 in, 3
    in, 0.0005 in, 30e6 psi: 2100 psi (0.56 rounded).
    """
    steel = fit.Material("steel", 30e6 * 6894.757, 0.3, 11.5e-6, 400e6)
    pair = fit.Pair.of(Q(4, "inch"), Q(6, "inch"), hub=steel, shaft=steel)
    assert fit.pressure(Q(0.001, "inch"), pair).m_as("psi") == pytest.approx(2100, rel=1e-2)


def test_lame_different_materials_by_compatibility():
    """Source: Shigley, 9th ed., equation 3-56: the radial moves of the two surfaces (worked
    apart) add up to delta/2.
    """
    pair = fit.Pair.of(Q(40, "mm"), Q(70, "mm"), Q(15, "mm"), fit.CAST_ALUMINIUM, fit.STEEL)
    p = fit.pressure(Q(50, "um"), pair).m_as("Pa")
    r, ro, ri = 0.020, 0.035, 0.0075
    hub, shaft = fit.CAST_ALUMINIUM, fit.STEEL
    hub_out = p * r / hub.elastic_pa * ((ro**2 + r**2) / (ro**2 - r**2) + hub.poisson)
    shaft_in = p * r / shaft.elastic_pa * ((r**2 + ri**2) / (r**2 - ri**2) - shaft.poisson)
    assert hub_out + shaft_in == pytest.approx(25e-6, rel=1e-12)


@pytest.mark.parametrize(
    "bore, rows", [(25, (15.0, 21.8, 28.6, 35.5)), (100, (60.0, 87.3, 114.5, 141.8))]
)
def test_bearing_bore_growth(bore, rows):
    """Source: Timken table (Scribd 215986287), from 20 °C to 75, 100, 125 and 150 °C [µm]."""
    alpha = Q(fit.BEARING_STEEL.expansion_per_k, "1/K")
    for celsius, um in zip((75, 100, 125, 150), rows, strict=True):
        got = fit.growth(Q(bore, "mm"), alpha, Q(celsius - 20, "delta_degC"))
        assert got.m_as("um") == pytest.approx(um, rel=1e-2)


def test_heating_of_a_120_mm_bearing():
    """Source: hchbearing's page on mounting: 120 mm, n6 up to 65 µm: room + 50 K, handled at +
    70 to 80.
    """
    got = fit.warm_to_assemble(
        Q(65, "um"), Q(120, "mm"), Q(11.5e-6, "1/K"), Q(120, "degC"), handling=Q(25, "delta_degC")
    )
    assert got.free_c - 20 == pytest.approx(50, rel=0.1)
    assert 70 * 0.97 <= got.heat_to_c - 20 <= 80 and got.possible


def test_cooled_shaft_formula():
    """Source: eng-calculations page: interference + play <= [(Ta - Ts) a_s + (Th - Ta) a_h] D."""
    d, a_s, a_h = 60.0, 11.5e-6, 21.5e-6
    got = fit.warm_to_assemble(
        Q(120, "um"),
        Q(d, "mm"),
        Q(a_h, "1/K"),
        Q(150, "degC"),
        shaft_at=Q(-40, "degC"),
        shaft_expansion=Q(a_s, "1/K"),
    )
    taken = ((20 - -40) * a_s + (got.heat_to_c - 20) * a_h) * d * 1e3
    assert taken == pytest.approx(120 + got.play_um, rel=1e-9)
    assert ((20 - -40) * a_s + (got.free_c - 20) * a_h) * d * 1e3 == pytest.approx(120, rel=1e-9)


# Nominal, free diameter, double shear of spring steel [kN], hole H12 (of 4.5 worked out).
ISO_8752 = [
    (3, 3.3, 3.5, 6.32, 3.1),
    (3.5, 3.8, 4.0, 9.06, 3.62),
    (4, 4.4, 4.6, 11.24, 4.12),
    (4.5, 4.9, 5.1, 15.36, 4.62),
    (5, 5.4, 5.6, 17.54, 5.12),
    (6, 6.4, 6.7, 26.04, 6.12),
    (8, 8.5, 8.8, 42.76, 8.15),
]


@pytest.mark.parametrize("size, low, high, shear, hole", ISO_8752)
def test_spring_pins_iso_8752(size, low, high, shear, hole):
    """Source: ISO 8752 as in the tables of vogelsang and torqbolt, which agree; holes in torqbolt's."""
    pin = fit.spring_pin(Q(size, "mm"))
    assert pin.free_mm == (low, high)
    assert pin.hole_mm == (size, hole)
    assert pin.shear_load().m_as("kN") == shear and pin.shear_load(1).m_as("kN") == shear / 2
    # The thinnest pin is still closed, by a twenty-fifth or more, in the widest hole.
    assert pin.free_mm[0] / pin.hole_mm[1] >= 1.04
    # The sheet metal shears at a plausible stress over its ring (hole closed): 500 to 1200 MPa.
    ring = math.pi * (size - pin.wall_mm) * pin.wall_mm
    assert 500 < shear * 1e3 / 2 / ring < 1200


def test_nested_pins_fit_in_each_other():
    """Source: torqbolt's pairs of ISO 8752 pins: the inner pin's nominal size is the outer's
    less its two walls.
    """
    for outer, inner in fit.NESTED:
        wall = fit.spring_pin(Q(outer, "mm")).wall_mm
        assert inner <= outer - 2 * wall + 0.1


def test_taper_pin_iso_2339():
    """Source: ISO 2339 (copy with IS 6688): 1:50, nominal size at the small end; 6 x 40 has 6.8
    mm; half angle 0.573°.
    """
    pin = fit.TaperPin(6e-3, 40e-3)
    assert pin.large.m_as("mm") == pytest.approx(6.8, abs=1e-12)
    assert pin.half_angle.m_as("degree") == pytest.approx(0.573, abs=5e-4)


# By upper end of the main ranges 3, 6, 10, 18, 30, 50, 80, 120 mm [µm].
WHOLE_GRADES = {
    5: (4, 5, 6, 8, 9, 11, 13, 15),
    6: (6, 8, 9, 11, 13, 16, 19, 22),
    7: (10, 12, 15, 18, 21, 25, 30, 35),
    8: (14, 18, 22, 27, 33, 39, 46, 54),
    9: (25, 30, 36, 43, 52, 62, 74, 87),
    10: (40, 48, 58, 70, 84, 100, 120, 140),
    11: (60, 75, 90, 110, 130, 160, 190, 220),
}
# Fundamental deviation: the upper one of c to h, the lower one of k to u, at each size [µm].
WHOLE_SIZES = (3, 6, 10, 18, 24, 30, 40, 50, 65, 80, 100, 120)
WHOLE_POSITIONS = {
    "c": (-60, -70, -80, -95, -110, -110, -120, -130, -140, -150, -170, -180),
    "d": (-20, -30, -40, -50, -65, -65, -80, -80, -100, -100, -120, -120),
    "e": (-14, -20, -25, -32, -40, -40, -50, -50, -60, -60, -72, -72),
    "f": (-6, -10, -13, -16, -20, -20, -25, -25, -30, -30, -36, -36),
    "g": (-2, -4, -5, -6, -7, -7, -9, -9, -10, -10, -12, -12),
    "h": (0,) * 12,
    "k": (0, 1, 1, 1, 2, 2, 2, 2, 2, 2, 3, 3),
    "m": (2, 4, 6, 7, 8, 8, 9, 9, 11, 11, 13, 13),
    "n": (4, 8, 10, 12, 15, 15, 17, 17, 20, 20, 23, 23),
    "p": (6, 12, 15, 18, 22, 22, 26, 26, 32, 32, 37, 37),
    "s": (14, 19, 23, 28, 35, 35, 43, 43, 53, 59, 71, 79),
    "u": (18, 23, 28, 33, 41, 48, 60, 70, 87, 102, 124, 144),
}


@pytest.mark.parametrize("grade", WHOLE_GRADES)
def test_whole_table_of_a_grade(grade):
    """Source: pressfit 0.1.0, tables.py (ISO 286-1, typed in there and checked against a second source)."""
    got = [fit.tolerance_um(Q(mm, "mm"), grade) for mm in (3, 6, 10, 18, 30, 50, 80, 120)]
    assert got == list(WHOLE_GRADES[grade])


@pytest.mark.parametrize("letter", WHOLE_POSITIONS)
def test_whole_table_of_a_position(letter):
    """Source: pressfit 0.1.0, tables.py (ISO 286-1, typed in there and checked against a second source)."""
    zones = [fit.zone(Q(mm, "mm"), f"{letter}6") for mm in WHOLE_SIZES]
    starts = [one.upper_um if letter < "k" else one.lower_um for one in zones]
    assert starts == list(WHOLE_POSITIONS[letter])
