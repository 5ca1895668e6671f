"""Life, rating factors and catalogue rows against what is printed."""

import math

import pytest

from twoshaft.models.bearing import Balls, Pair, Rollers, life_against_setting
from twoshaft.models.bearing.life import axial_factor, equivalent_n, life_h, limit_ratio
from twoshaft.units.quantities import Q

# bd-warehouse, single_row_tapered_roller_bearing_parameters.csv: all 27 rows of one catalogue.
# Bore, outside, stand [mm], dynamic rating [kN], e, Y.
CATALOGUE = [
    (15, 42, 14.25, 22.4, 0.28, 2.1),
    (17, 40, 13.25, 19, 0.35, 1.7),
    (17, 47, 15.25, 28.1, 0.28, 2.1),
    (17, 47, 20.25, 34.7, 0.28, 2.1),
    (20, 42, 15, 24.2, 0.37, 1.6),
    (20, 47, 15.25, 27.5, 0.35, 1.7),
    (20, 52, 16.25, 34.1, 0.3, 2),
    (20, 52, 22.25, 44, 0.3, 2),
    (22, 44, 15, 25.1, 0.4, 1.5),
    (25, 47, 15, 27, 0.43, 1.4),
    (25, 52, 16.25, 30.8, 0.37, 1.6),
    (25, 52, 19.25, 35.8, 0.57, 1.05),
    (25, 52, 22, 47.3, 0.35, 1.7),
    (25, 62, 18.25, 44.6, 0.3, 2),
    (25, 62, 25.25, 60.5, 0.3, 2),
    (28, 52, 16, 31.9, 0.43, 1.4),
    (28, 58, 17.25, 38, 0.37, 1.6),
    (28, 58, 20.25, 41.8, 0.57, 1.05),
    (30, 55, 17, 35.8, 0.43, 1.4),
    (30, 62, 17.25, 40.2, 0.37, 1.6),
    (30, 62, 21.25, 49.5, 0.57, 1.05),
    (30, 62, 21.25, 50.1, 0.37, 1.6),
    (30, 62, 25, 64.4, 0.35, 1.7),
    (30, 72, 20.75, 56.1, 0.31, 1.9),
    (30, 72, 28.75, 76.5, 0.31, 1.9),
    (32, 53, 14.5, 27, 0.33, 1.8),
    (32, 58, 17, 36.9, 0.46, 1.3),
]


@pytest.mark.parametrize(("bore", "outside", "stand", "rating", "e", "y"), CATALOGUE)
def test_catalogue_row(bore, outside, stand, rating, e, y):
    """Source: bd-warehouse, single_row_tapered_roller_bearing_parameters.csv: all 27 rows of
    one catalogue.

    By ISO 281 e = 1.5 tan a and Y = 0.4 cot a, so that e and Y of a row belong to one angle.
    """
    row = Rollers.of(
        angle=Q(math.degrees(math.atan(e / 1.5)), "deg"),
        count=16,
        length=Q(0.6 * stand, "mm"),
        diameter=Q(0.22 * (outside - bore), "mm"),
        bore=Q(bore, "mm"),
        outside=Q(outside, "mm"),
        stand=Q(stand, "mm"),
        rating=Q(rating, "kN"),
    )
    assert limit_ratio(row) == pytest.approx(e, rel=1e-12)
    assert axial_factor(row) == pytest.approx(y, abs=0.05)


@pytest.mark.parametrize(
    ("e", "angle", "y"),
    [(0.37, 13.86, 1.62), (0.43, 16.0, 1.40), (0.57, 20.8, 1.05)],
)
def test_angle_of_a_row(e, angle, y):
    """Source: e and Y of three rows of the same file of bd-warehouse, tapered roller bearings of one
    catalogue; the angle between them by ISO 281.
    """
    row = Rollers.of(angle=Q(angle, "deg"), count=16, length=Q(11, "mm"))
    assert limit_ratio(row) == pytest.approx(e, abs=2e-3)
    assert axial_factor(row) == pytest.approx(y, abs=6e-3)


def test_textbook_rating():
    """Source: Shigley, 9th ed., example 11-1 (SI), from memory: 5000 h at 1725 rpm under 2 kN,
    balls: 16.1 kN.

    Recomputed: 16.06 kN, and 13.04 kN for rollers.
    """
    balls = Balls.of(angle=Q(30, "deg"), count=9, diameter=Q(8, "mm"), rating=Q(16.06, "kN"))
    assert life_h(balls, 2000.0, 1725.0) == pytest.approx(5000, rel=2e-3)
    rollers = Rollers.of(angle=Q(15, "deg"), count=16, length=Q(11, "mm"), rating=Q(13.04, "kN"))
    assert life_h(rollers, 2000.0, 1725.0) == pytest.approx(5000, rel=2e-3)


def test_equivalent_load():
    """Source: wd-bearing page with a catalogue's text: P = Fr up to Fa/Fr = e, beyond it 0.4 Fr + Y Fa.

    e = 0.37 is an angle of 13.86°.
    """
    row = Rollers.of(angle=Q(13.86, "deg"), count=16, length=Q(11, "mm"))
    assert equivalent_n(row, 4000.0, 1400.0) == pytest.approx(4000)
    assert equivalent_n(row, 4000.0, 3000.0) == pytest.approx(400 * 4 + 1620 * 3, rel=2e-3)


def test_factors_meet_at_the_limit_ratio():
    """Source: ISO 281, X = 0.4 and Y = 0.4 cot a (from memory): both branches give Fr at
    Fa / Fr = e.
    """
    row = Rollers.of(angle=Q(15, "deg"), count=16, length=Q(11, "mm"))
    axial = limit_ratio(row) * 4000
    both = [equivalent_n(row, 4000.0, axial * part) for part in (0.999999, 1.000001)]
    assert both == pytest.approx([4000, 4000], rel=1e-5)


@pytest.mark.parametrize(
    ("pushed_n", "left_n", "right_n"),
    # 15 deg: e 0.402, Y 1.493, own thrusts 1005 and 2010 N; each P by hand from those.
    [
        (0.0, 0.4 * 3000 + 1.4928 * 2009.6, 6000.0),
        (1500.0, 3000.0, 0.4 * 6000 + 1.4928 * (1004.8 + 1500)),
        (-1500.0, 0.4 * 3000 + 1.4928 * (2009.6 + 1500), 6000.0),
    ],
)
def test_opposed_thrusts_of_a_loose_pair(pushed_n, left_n, right_n):
    """Source: bearing makers' catalogues on paired taper rollers (from memory): a radial load Fr makes a
    thrust Fr / (2 Y); the row that the sum pushes carries the other's thrust and the outer load, the
    other one its own.
    """
    row = Rollers.of(angle=Q(15, "deg"), count=16, length=Q(11, "mm"), rating=Q(40, "kN"))
    curve = life_against_setting(
        Pair.of(row, row),
        Q([-0.2], "mm"),
        (Q(3, "kN"), Q(6, "kN")),
        Q(pushed_n, "N"),
        Q(1000, "rpm"),
    )
    lives = [1e6 / 6e4 * (40e3 / load) ** (10 / 3) for load in (left_n, right_n)]
    both = sum(one ** (-9 / 8) for one in lives) ** (-8 / 9)
    assert curve.catalogue_h[0] == pytest.approx(both, rel=1e-3)
