"""The lifting equation: what it refuses, and which way it moves."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from twoshaft.errors import OutOfRangeError
from twoshaft.models import lifting
from twoshaft.units.quantities import Q

GOOD = {"reach_cm": 40, "height_cm": 30, "travel_cm": 60, "twist_deg": 30, "grip": "fair"}


@pytest.mark.parametrize(
    ("size", "bad"),
    [
        ("reach", Q(64, "cm")),
        ("reach", Q(0, "cm")),
        ("reach", 40),
        ("height", Q(-1, "cm")),
        ("height", Q(176, "cm")),
        ("travel", Q(float("nan"), "cm")),
        ("travel", Q(40, "kg")),
        ("twist", Q(136, "degree")),
        ("twist", Q(30, "cm")),
    ],
)
def test_every_spoilt_size_is_refused_by_name(size, bad):
    function = getattr(lifting, f"{size}_multiplier")
    with pytest.raises(OutOfRangeError, match=size):
        function(bad)


def test_frequency_grip_multiplier_and_masses_are_refused():
    with pytest.raises(OutOfRangeError, match="lifts a minute"):
        lifting.frequency_multiplier(5.5)
    with pytest.raises(ValueError, match="use one of good, fair, poor"):
        lifting.grip_multiplier("slippery", Q(50, "cm"))
    for bad in (0.0, 1.2, Q(0.5, "kg")):
        with pytest.raises(OutOfRangeError, match="multiplier"):
            lifting.weight_limit(0.9, bad)
    with pytest.raises(OutOfRangeError, match="load"):
        lifting.lifting_index(Q(0, "kg"), Q(10, "kg"))
    with pytest.raises(OutOfRangeError, match="limit"):
        lifting.lifting_index(Q(10, "kg"), Q(10, "N"))


def test_units_mean_the_same():
    in_inches = lifting.reach_multiplier(Q(40, "cm").to("in"))
    assert in_inches == pytest.approx(lifting.reach_multiplier(Q(40, "cm")))
    assert lifting.lifting_index(Q(20, "lb"), Q(10, "lb")) == pytest.approx(2)


def test_frequency_takes_the_next_harder_row():
    assert lifting.frequency_multiplier(0.6) == lifting.frequency_multiplier(1)
    assert lifting.frequency_multiplier(0) == 1


@given(
    st.floats(25, 62), st.floats(0, 175), st.floats(25, 175), st.floats(0, 134), st.floats(1.01, 2)
)
def test_harder_never_raises_the_limit(reach, height, travel, twist, more):
    first = lifting.Lift(Q(reach, "cm"), Q(height, "cm"), Q(travel, "cm"), Q(twist, "degree"))
    limit = first.limit().m_as("kg")
    assert 0 < limit <= lifting.LOAD_CONSTANT_KG
    harder = [
        lifting.Lift(Q(min(63, reach * more), "cm"), first.height, first.travel, first.twist),
        lifting.Lift(first.reach, first.height, Q(min(175, travel * more), "cm"), first.twist),
        lifting.Lift(first.reach, first.height, first.travel, Q(min(135, twist * more), "degree")),
    ]
    assert all(lift.limit().m_as("kg") <= limit + 1e-9 for lift in harder)


def test_the_limit_is_the_product_of_its_multipliers():
    lift = lifting.Lift.measured(GOOD)
    product = 23.0
    for multiplier in lift.multipliers().values():
        product *= multiplier
    assert lift.limit().m_as("kg") == pytest.approx(product)
    assert list(lift.multipliers()) == ["reach", "height", "travel", "twist", "frequency", "grip"]


def test_plain_figures_give_the_same_limit():
    sizes = {**GOOD, "per_minute": 0.2}
    assert lifting.plain_limit_kg(sizes) == pytest.approx(
        lifting.Lift.measured(sizes).limit().m_as("kg")
    )
    assert lifting.plain_limit_kg(sizes, 1.0) == pytest.approx(
        lifting.plain_limit_kg(sizes) / lifting.GRIP["fair"][0]
    )
