"""Opposed bearings: balance, monotony, and the sign of heat by arrangement."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from twoshaft.models.bearing import (
    Balls,
    Pair,
    Rollers,
    life_against_setting,
    load_zone,
)
from twoshaft.models.bearing.heat import RING_STEEL, Seats, Warm, setting_change
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Arrangement, Material

ALUMINIUM = Material(name="aluminium", expansion_per_k=22e-6, elastic_gpa=72, poisson=0.33)
STEEL = Material(name="steel", expansion_per_k=11.5e-6, elastic_gpa=207, poisson=0.3)

ROLLERS = st.builds(
    lambda angle, count, length: Rollers.of(
        angle=Q(angle, "deg"), count=count, length=Q(length, "mm")
    ),
    st.floats(10, 30),
    st.integers(12, 24),
    st.floats(8, 20),
)
BALLS = st.builds(
    lambda angle, count: Balls.of(angle=Q(angle, "deg"), count=count, diameter=Q(8, "mm")),
    st.floats(15, 40),
    st.integers(9, 16),
)
ROWS = st.one_of(ROLLERS, BALLS)
CASES = st.one_of(st.none(), st.floats(20, 500).map(lambda k: Q(k, "N/um")))


def evenly(rise):
    """All parts at one temperature."""
    return Warm.of(case=rise, shaft=rise, outer_ring=rise, inner_ring=rise)


@settings(deadline=None)
@given(ROLLERS, ROLLERS, CASES, st.floats(1, 8000))
def test_preload_and_interference_are_inverse(left, right, case, force):
    pair = Pair.of(left, right, case)
    setting = pair.interference(Q(force, "N"))
    assert pair.preload(setting).m_as("N") == pytest.approx(force, rel=1e-6)


@settings(deadline=None)
@given(ROWS, CASES, st.floats(-0.3, 0.05))
def test_end_play_has_no_preload(row, case, setting):
    preload = Pair.of(row, row, case).preload(Q(setting, "mm")).m_as("N")
    if abs(setting) > 1e-6:
        assert (preload > 0) == (setting > 0)


@settings(deadline=None)
@given(ROLLERS, ROLLERS, CASES, st.floats(0, 0.03), st.floats(-20000, 20000))
def test_loads_balance_and_close_the_loop(left, right, case, setting, axial):
    pair = Pair.of(left, right, case)
    at_left, at_right = (x.m_as("N") for x in pair.loads(Q(setting, "mm"), Q(axial, "N")))
    assert at_right - at_left == pytest.approx(axial, rel=1e-6, abs=1e-6)
    assert min(at_left, at_right) >= 0
    side_l, side_r = pair._side_m(left, at_left), pair._side_m(right, at_right)
    if min(at_left, at_right) > 0:
        assert side_l + side_r == pytest.approx(setting / 1e3, rel=1e-6)
    else:
        assert side_l + side_r >= setting / 1e3 * (1 - 1e-9)


def closed_loop(arrangement, row, span, setting, shim, case, fit):
    """Seats whose loop closes on an interference: stands + spans + shim by geometry."""
    inwards = 1 if arrangement is Arrangement.OUTER_TOGETHER else -1
    case_span = span + inwards * (2 * row.stand_m + shim - setting)
    return Seats(arrangement, case_span, span, shim, case, case, 0.01, fit, fit, rings=case)


@settings(deadline=None)
@given(
    st.sampled_from(list(Arrangement)),
    ROWS,
    st.floats(0.08, 0.3),
    st.floats(-1e-4, 1e-4),
    st.floats(0, 2e-3),
    st.floats(-60, 100),
    st.floats(0, 4e-5),
)
def test_one_material_at_one_temperature_only_scales(
    arrangement, row, span, setting, shim, rise, fit
):
    # Every length grows alike, so the setting grows by the same share: next to nothing.
    seats = closed_loop(arrangement, row, span, setting, shim, RING_STEEL, fit)
    change = setting_change(seats, row, row, evenly(Q(rise, "delta_degC")))
    scaled = setting * RING_STEEL.expansion_per_k * rise * 1e6
    assert change.total.m_as("um") == pytest.approx(scaled, abs=1e-6)


@settings(deadline=None)
@given(st.sampled_from(list(Arrangement)), ROLLERS, st.floats(0.1, 0.3), st.floats(5, 100))
def test_sign_of_heat_by_arrangement(arrangement, row, span, rise):
    # Along the shaft: an aluminium case loosens outer rings that it presses together, and the
    # other way round; cooling does the opposite. Across: both arrangements the same.
    seats = Seats(arrangement, span, span, 0.0, ALUMINIUM, STEEL, 0.01, 2e-5, 2e-5)
    warm = setting_change(seats, row, row, evenly(Q(rise, "delta_degC")))
    cold = setting_change(seats, row, row, evenly(Q(-rise, "delta_degC")))
    along = warm.case_um + warm.shaft_um
    assert (along < 0) == (arrangement is Arrangement.OUTER_TOGETHER)
    assert (cold.case_um + cold.shaft_um) == pytest.approx(-along)
    assert warm.outer_raceways_um < 0 < warm.inner_raceways_um
    assert warm.rollers_um > 0


@settings(deadline=None)
@given(ROLLERS, st.floats(5, 60))
def test_a_hotter_inner_ring_tightens(row, more):
    seats = Seats(Arrangement.OUTER_TOGETHER, 0.15, 0.15, 0.0, ALUMINIUM, STEEL, 0.01, 2e-5, 2e-5)
    base = {"case_k": 40.0, "shaft_k": 40.0, "outer_ring_k": 40.0}
    even = setting_change(seats, row, row, Warm(**base, inner_ring_k=40.0)).total
    hot = setting_change(seats, row, row, Warm(**base, inner_ring_k=40.0 + more)).total
    assert hot > even


@settings(deadline=None)
@given(ROLLERS, st.floats(5, 60), st.floats(5e-6, 6e-5))
def test_a_growing_bore_lets_the_ring_go(row, rise, fit):
    # The bore grows more than the ring: the ring springs out, at most by its whole fit.
    warm = Warm(case_k=rise, shaft_k=rise, outer_ring_k=rise, inner_ring_k=rise)
    at = [
        setting_change(
            Seats(Arrangement.OUTER_TOGETHER, 0.15, 0.15, 0.0, ALUMINIUM, STEEL, 0.01, f, 0.0),
            row,
            row,
            warm,
        ).outer_raceways_um
        for f in (-1e-5, 0.0, fit)
    ]
    assert at[0] == at[1]  # a loose ring has nothing to let go
    assert at[2] < at[1]
    most = 2 * fit * 1e6 / 2 / math.tan(row.angle_rad)
    assert at[1] - at[2] < most


@settings(deadline=None)
@given(ROWS, st.floats(50, 3000))
def test_load_zone_rises_with_the_setting(row, radial):
    zone = load_zone(row, Q(radial, "N"))
    assert (np.diff(zone.axial_shift_m) > 0).all()
    assert (np.diff(zone.axial_n) > 0).all()
    # The rows' elements carry at least the radial load between them.
    assert (zone.most_loaded_n * row.count * math.cos(row.angle_rad) > radial).all()
    half = np.interp(0.5, zone.share, zone.equivalent_n)
    assert half == pytest.approx(radial, rel=1e-6)


@settings(max_examples=25, deadline=None)
@given(ROLLERS, st.floats(500, 3000), st.floats(0, 1500))
def test_life_falls_off_on_both_sides(row, radial, axial):
    pair = Pair.of(row, row, Q(100, "N/um"))
    grid = Q(np.linspace(-0.2, 0.05, 51), "mm")
    loads = (Q(radial, "N"), Q(radial, "N"))
    curve = life_against_setting(pair, grid, loads, Q(axial, "N"), Q(1500, "rpm"))
    best = int(np.argmax(curve.both_h))
    assert (np.diff(curve.both_h[: best + 1]) >= -1e-6 * curve.both_h.max()).all()
    assert (np.diff(curve.both_h[best:]) <= 1e-6 * curve.both_h.max()).all()
    # With preload the bearing that the shaft is pushed on to lasts no longer than the other; with
    # end play it may, as the push widens its load zone.
    assert curve.right_h[-1] <= curve.left_h[-1] * (1 + 1e-6)
    mirrored = life_against_setting(pair, grid, loads, Q(-axial, "N"), Q(1500, "rpm"))
    assert mirrored.left_h == pytest.approx(curve.right_h, rel=1e-6)


@settings(deadline=None)
@given(ROLLERS, st.floats(5, 60), st.floats(5e-6, 6e-5))
def test_a_hot_inner_ring_springs_back_from_its_shaft(row, more, fit):
    # It grows away from the cooler shaft: what the fit stretched it by comes off its growth.
    warm = Warm(case_k=30.0, shaft_k=30.0, outer_ring_k=30.0, inner_ring_k=30.0 + more)
    at = [
        setting_change(
            Seats(Arrangement.OUTER_TOGETHER, 0.15, 0.15, 0.0, ALUMINIUM, RING_STEEL, 0.01, 0.0, f),
            row,
            row,
            warm,
        ).inner_raceways_um
        for f in (-1e-5, 0.0, fit)
    ]
    assert at[0] == at[1]  # a loose ring has nothing to spring back
    assert at[2] < at[1]
    leaves = row.bore_m * RING_STEEL.expansion_per_k * more
    most = 2 * min(leaves, fit) * 1e6 / 2 / math.tan(row.angle_rad)
    assert at[1] - at[2] < most
