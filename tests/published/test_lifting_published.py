"""The lifting equation against published figures."""

import pytest

from twoshaft.models import lifting
from twoshaft.units.quantities import Q


def cm(value):
    return Q(value, "cm")


def test_the_easiest_lift_is_the_load_constant_of_51_lb():
    """Source: NIOSH publication 94-110 (1994), the revised lifting equation: load constant 23
    kg, 51 lb (quoted in public texts and seen there).
    """
    easiest = lifting.Lift(cm(25), cm(75), cm(25), Q(0, "degree"), 0.2, "good")
    assert easiest.limit().m_as("kg") == pytest.approx(23.0)
    assert easiest.limit().m_as("lb") == pytest.approx(51, abs=0.5)  # printed as a whole pound


def test_reach_40_height_75_travel_25_leave_14_4_kg():
    """Source: NIOSH publication 94-110 (1994), the revised lifting equation; this limit from
    memory.
    """
    lift = lifting.Lift(cm(40), cm(75), cm(25), Q(0, "degree"), 0.2, "good")
    assert lift.limit().m_as("kg") == pytest.approx(14.4, abs=0.05)


@pytest.mark.parametrize(
    ("reach", "printed"), [(25, 1.00), (28, 0.89), (30, 0.83), (40, 0.63), (50, 0.50), (63, 0.40)]
)
def test_table_of_reach(reach, printed):
    """Source: NIOSH publication 94-110 (1994), the revised lifting equation, table 1 (from
    memory).
    """
    assert lifting.reach_multiplier(cm(reach)) == pytest.approx(printed, abs=0.0051)


@pytest.mark.parametrize(
    ("height", "printed"),
    [(0, 0.78), (30, 0.87), (50, 0.93), (75, 1.00), (100, 0.93), (150, 0.78), (175, 0.70)],
)
def test_table_of_height(height, printed):
    """Source: NIOSH publication 94-110 (1994), the revised lifting equation, table 2 (from
    memory).
    """
    assert lifting.height_multiplier(cm(height)) == pytest.approx(printed, abs=0.0051)


@pytest.mark.parametrize(
    ("travel", "printed"), [(25, 1.00), (40, 0.93), (70, 0.88), (100, 0.87), (175, 0.85)]
)
def test_table_of_travel(travel, printed):
    """Source: NIOSH publication 94-110 (1994), the revised lifting equation, table 3 (from
    memory).
    """
    assert lifting.travel_multiplier(cm(travel)) == pytest.approx(printed, abs=0.0051)


@pytest.mark.parametrize(
    ("twist", "printed"), [(0, 1.00), (15, 0.95), (30, 0.90), (60, 0.81), (90, 0.71), (135, 0.57)]
)
def test_table_of_twist(twist, printed):
    """Source: NIOSH publication 94-110 (1994), the revised lifting equation, table 4 (from
    memory).
    """
    assert lifting.twist_multiplier(Q(twist, "degree")) == pytest.approx(printed, abs=0.0051)


@pytest.mark.parametrize(
    ("rate", "printed"),
    [(0.2, 1.0), (0.5, 0.97), (1, 0.94), (2, 0.91), (3, 0.88), (4, 0.84), (5, 0.80)],
)
def test_table_of_frequency_for_an_hour_at_most(rate, printed):
    """Source: NIOSH publication 94-110 (1994), the revised lifting equation, table 5 (quoted in
    public texts and seen there).
    """
    assert lifting.frequency_multiplier(rate) == printed


def test_risk_rises_above_1_and_is_high_above_3():
    """Source: NIOSH publication 94-110 (1994), the revised lifting equation, on the lifting
    index 1 and 3 (quoted in public texts and seen there).
    """
    assert [lifting.risk(x) for x in (0.5, 1.0, 1.01, 3.0, 3.01)] == [
        "low",
        "low",
        "raised",
        "raised",
        "high",
    ]


@pytest.mark.parametrize(
    ("grip", "low", "high"), [("good", 1.00, 1.00), ("fair", 0.95, 1.00), ("poor", 0.90, 0.90)]
)
def test_table_of_grip(grip, low, high):
    """Source: NIOSH publication 94-110 (1994), the revised lifting equation, table 7 (from memory): one
    column below 75 cm, the other from 75 cm on.
    """
    at = [lifting.grip_multiplier(grip, cm(height)) for height in (0, 74.9, 75, 75.1, 175)]
    assert at == [low, low, high, high, high]
