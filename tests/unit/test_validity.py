"""The border check shared by all physics models."""

import math

import numpy as np
import pytest

from twoshaft.errors import OutOfRangeError
from twoshaft.models.validity import in_range, ordered, positive, shown
from twoshaft.units.quantities import Q


def test_gives_the_plain_number_in_the_unit_asked_for():
    assert in_range("length", Q(1, "inch"), 0, 100, "mm", "test") == pytest.approx(25.4, rel=1e-12)
    assert in_range("friction", 0.12, 0.04, 0.5, "", "test") == 0.12
    assert in_range("ends", Q(100, "mm"), 0, 100, "mm", "test") == 100


def test_arrays_keep_their_shape():
    got = in_range("length", Q(np.array([[1.0, 2.0]]), "m"), 0, 3000, "mm", "test")
    assert got.shape == (1, 2) and got[0, 1] == 2000


def test_the_sentence_names_quantity_value_range_and_source():
    with pytest.raises(OutOfRangeError) as caught:
        in_range("clamp load", Q(5, "kN"), 0, 2000, "N", "ISO 898-1")
    text = caught.value.sentence
    assert "clamp load is 5 kN, outside 0 to 2000 N (ISO 898-1)" in text
    assert caught.value.source == "ISO 898-1" and caught.value.allowed == "0 to 2000 N"


@pytest.mark.parametrize("bad", [math.nan, math.inf, -math.inf, -1.0, 0.0])
def test_not_a_number_and_non_positive_never_pass(bad):
    with pytest.raises(OutOfRangeError):
        positive("diameter", Q(bad, "mm"), "mm")
    with pytest.raises(OutOfRangeError):
        positive("diameters", Q(np.array([1.0, bad]), "mm"), "mm")


def test_zero_passes_where_it_is_allowed():
    assert positive("gap", Q(0, "mm"), "m", zero=True) == 0


@pytest.mark.parametrize("bad", ["12", None, True, b"1", [1, "x"]])
def test_words_and_nothing_are_refused(bad):
    with pytest.raises(OutOfRangeError):
        in_range("friction", bad, 0, 1, "", "test")


def test_a_number_without_its_unit_is_refused():
    with pytest.raises(OutOfRangeError, match="without a unit"):
        in_range("length", 12.0, 0, 100, "mm", "test")


def test_a_wrong_dimension_is_refused():
    with pytest.raises(OutOfRangeError):
        in_range("length", Q(12, "kg"), 0, 100, "mm", "test")


@pytest.mark.parametrize("unit", ["N*m", "lbf*ft", "lbf*inch", "kgf*cm", "kN*mm", "foot_pound"])
def test_every_torque_spelling_is_a_torque_and_never_an_energy(unit):
    assert in_range("torque", Q(1, unit), 0, 1e6, "N*m", "test") > 0
    with pytest.raises(OutOfRangeError, match="a torque"):
        in_range("work", Q(1, unit), 0, 1e6, "J", "test")


@pytest.mark.parametrize("unit", ["J", "kJ", "cal", "W*hour", "kW*s", "british_thermal_unit"])
def test_every_energy_spelling_is_an_energy_and_never_a_torque(unit):
    assert in_range("work", Q(1, unit), 0, 1e9, "J", "test") > 0
    with pytest.raises(OutOfRangeError, match="an energy"):
        in_range("torque", Q(1, unit), 0, 1e9, "N*m", "test")


def test_base_units_say_neither():
    value = Q(1, "kg*m**2/s**2")
    for unit in ("N*m", "J"):
        with pytest.raises(OutOfRangeError, match="neither"):
            in_range("torque", value, 0, 10, unit, "test")


def test_a_temperature_is_no_temperature_difference():
    assert in_range("temperature", Q(300, "K"), -50, 200, "degC", "t") == pytest.approx(26.85)
    assert in_range("rise", Q(60, "delta_degC"), 0, 200, "delta_degC", "t") == 60
    with pytest.raises(OutOfRangeError):
        in_range("rise", Q(60, "degC"), 0, 200, "delta_degC", "t")
    with pytest.raises(OutOfRangeError):
        in_range("temperature", Q(60, "delta_degC"), 0, 200, "degC", "t")


def test_reversed_limits_never_pass():
    with pytest.raises(OutOfRangeError):
        ordered("limits", (Q(2, "mm"), Q(1, "mm")), 0, 10, "mm", "test")
    assert ordered("limits", (Q(1, "mm"), Q(1, "mm"), Q(2, "mm")), 0, 10, "mm", "t") == (1, 1, 2)
    with pytest.raises(ValueError, match="reversed"):
        in_range("length", Q(1, "mm"), 5, 1, "mm", "test")
    with pytest.raises(ValueError, match="not a number"):
        in_range("length", Q(1, "mm"), math.nan, 1, "mm", "test")


def test_a_torque_is_said_force_first():
    assert shown(Q(12.5, "N*m")) == "12.5 N·m" and shown(Q(20, "lbf*ft")) == "20 lbf·ft"
