"""Fits: what must hold whatever the figures."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from twoshaft.errors import OutOfRangeError
from twoshaft.models import fit
from twoshaft.units.quantities import Q

# a busy machine must not look like a wrong result
SLOW_MACHINE = settings(deadline=None, max_examples=60)

SIZE = st.floats(0.5, 120)
GRADE = st.integers(5, 11)
LOOSE, TIGHT = st.sampled_from("defgh"), st.sampled_from("mnprsu")


@SLOW_MACHINE
@given(SIZE, GRADE)
def test_coarser_grades_are_wider(size, grade):
    size = Q(size, "mm")
    assert fit.tolerance_um(size, grade) < fit.tolerance_um(size, grade + 1)


@SLOW_MACHINE
@given(SIZE, LOOSE, GRADE, GRADE)
def test_basic_hole_and_basic_shaft_give_the_same_loose_fit(size, letter, hole, shaft):
    size = Q(size, "mm")
    one = fit.fit(size, f"H{hole}/{letter}{shaft}")
    two = fit.fit(size, f"{letter.upper()}{hole}/h{shaft}")
    assert (one.least_um, one.most_um) == (two.least_um, two.most_um)
    assert one.kind == "clearance"


@SLOW_MACHINE
@given(st.floats(3.001, 120), st.sampled_from("prsu"), st.integers(6, 7))
def test_basic_hole_and_basic_shaft_give_the_same_tight_fit(size, letter, grade):
    """ISO 286: H7/p6 and P7/h6 have the same limits; that is what delta is for."""
    size = Q(size, "mm")
    one = fit.fit(size, f"H{grade}/{letter}{grade - 1}")
    two = fit.fit(size, f"{letter.upper()}{grade}/h{grade - 1}")
    assert (one.least_um, one.most_um) == (two.least_um, two.most_um)


@SLOW_MACHINE
@given(SIZE, TIGHT)
def test_limits_are_in_order_and_as_wide_as_the_grade(size, letter):
    size = Q(size, "mm")
    for code in (f"{letter}6", f"{letter.upper()}7", "H8", "js7"):
        zone = fit.zone(size, code)
        assert zone.lower_um < zone.upper_um and zone.smallest < zone.largest
        assert zone.upper_um - zone.lower_um == fit.tolerance_um(size, int(code[-1]))


@st.composite
def pairs(draw):
    d = draw(st.floats(7, 200))  # 60 um is under 1 % of it
    outer, bore = d * draw(st.floats(1.05, 4)), d * draw(st.floats(0, 0.95))
    metals = st.sampled_from([fit.STEEL, fit.BEARING_STEEL, fit.CAST_ALUMINIUM, fit.BRONZE])
    return fit.Pair.of(Q(d, "mm"), Q(outer, "mm"), Q(bore, "mm"), draw(metals), draw(metals))


@SLOW_MACHINE
@given(pairs(), st.floats(0.1, 20), st.floats(1.1, 3))
def test_pressure_is_proportional_and_force_follows(pair, um, scale):
    one, two = fit.pressure(Q(um, "um"), pair), fit.pressure(Q(um * scale, "um"), pair)
    assert two.magnitude == pytest.approx(one.magnitude * scale)
    force = fit.press_force(Q(um, "um"), pair, Q(20, "mm"), 0.1).m_as("N")
    torque = fit.torque_capacity(Q(um, "um"), pair, Q(20, "mm"), 0.1).m_as("N*m")
    assert torque == pytest.approx(force * pair.diameter_m / 2)
    assert fit.press_force(Q(um, "um"), pair, Q(40, "mm"), 0.2).m_as("N") == pytest.approx(
        4 * force
    )


@SLOW_MACHINE
@given(pairs(), st.floats(0.2, 20))
def test_thicker_parts_grip_harder(pair, um):
    thicker = fit.Pair(pair.diameter_m, pair.outer_m * 1.1, pair.bore_m * 0.9, pair.hub, pair.shaft)
    assert fit.pressure(Q(um, "um"), thicker) > fit.pressure(Q(um, "um"), pair)


@SLOW_MACHINE
@given(pairs(), st.floats(0.2, 20), st.floats(0.3, 3))
def test_pressure_depends_on_shape_only(pair, um, scale):
    if not 0.5e-3 < pair.diameter_m * scale < 1:
        return
    scaled = fit.Pair(
        pair.diameter_m * scale, pair.outer_m * scale, pair.bore_m * scale, pair.hub, pair.shaft
    )
    assert fit.pressure(Q(um * scale, "um"), scaled).magnitude == pytest.approx(
        fit.pressure(Q(um, "um"), pair).magnitude
    )


@SLOW_MACHINE
@given(pairs(), st.floats(0.2, 20))
def test_both_surfaces_meet(pair, um):
    """Hub and shaft move by what the pressure asks, and together they close the interference."""
    p = fit.pressure(Q(um, "um"), pair).m_as("Pa")
    hub = p * pair.diameter_m * (pair.hub_ratio + pair.hub.poisson) / pair.hub.elastic_pa
    shaft = p * pair.diameter_m * (pair.shaft_ratio - pair.shaft.poisson) / pair.shaft.elastic_pa
    assert (hub + shaft) * 1e6 == pytest.approx(um)


@SLOW_MACHINE
@given(st.floats(1, 80), st.floats(20, 150), st.floats(9e-6, 24e-6), st.floats(5, 40))
def test_heat_gives_exactly_the_margin_as_play(um, size, alpha, margin):
    got = fit.warm_to_assemble(
        Q(um, "um"),
        Q(size, "mm"),
        Q(alpha, "1/K"),
        Q(400, "degC"),
        handling=Q(margin, "delta_degC"),
    )
    if got.possible:
        assert got.play_um == pytest.approx(alpha * size * 1e3 * margin)
    grown = fit.growth(Q(size, "mm"), Q(alpha, "1/K"), Q(min(got.free_c - 20, 380), "delta_degC"))
    if got.free_c - 20 <= 380:
        assert grown.m_as("um") == pytest.approx(um)


@SLOW_MACHINE
@given(st.floats(0, 5), st.integers(3, 12), st.floats(-6, 6), st.floats(0, 10))
def test_the_lean_of_a_seal_is_found_again(lean, count, towards, depth):
    readings = fit.seal_readings(Q(depth, "mm"), Q(lean, "mm"), count, towards)
    assert fit.tilt(readings).m_as("mm") == pytest.approx(lean, abs=1e-9)


@SLOW_MACHINE
@given(st.floats(1, 80), st.floats(-150, 19))
def test_a_colder_shaft_needs_less_heat(um, cold):
    args = (Q(um, "um"), Q(60, "mm"), Q(11e-6, "1/K"), Q(400, "degC"))
    plain = fit.warm_to_assemble(*args)
    helped = fit.warm_to_assemble(*args, shaft_at=Q(cold, "degC"), shaft_expansion=Q(11e-6, "1/K"))
    assert helped.free_c < plain.free_c or helped.free_c == 20


@SLOW_MACHINE
@given(st.floats(0.61, 49), st.floats(2.1, 399), st.floats(1e-6, 1))
def test_taper_pin_depth_and_diameter_are_one_to_fifty(small, length, share):
    pin = fit.TaperPin(small / 1e3, length / 1e3)
    reamed = small + share * (pin.large.m_as("mm") - small)
    proud = pin.stands_proud(Q(reamed, "mm")).m_as("mm")
    assert proud == pytest.approx((pin.large.m_as("mm") - reamed) * 50, abs=1e-6)
    assert -1e-6 <= proud <= length + 1e-6


@SLOW_MACHINE
@given(st.floats(0.5, 8), st.floats(0.3, 5), st.floats(0, 8), st.floats(200, 900))
def test_stake_grows_with_everything_that_holds(slot, tab, depth, yields):
    def hold(slot=slot, tab=tab, depth=depth):
        return fit.stake_hold(
            Q(10, "mm"), Q(slot, "mm"), Q(tab, "mm"), Q(depth, "mm"), Q(yields, "MPa")
        )

    one = hold()
    assert one.holds_nm == min(one.shear_nm, one.crush_nm)
    assert hold(depth=depth * 1.1).holds_nm >= one.holds_nm
    assert hold(tab=tab * 1.1).holds_nm >= one.holds_nm
    # Shear 0.577 of yield against crushing at 1.5: the metal does not matter, the shape does.
    assert (one.first == "crushes") == (depth < slot * 0.577 / 1.5) or depth == 0


@SLOW_MACHINE
@given(st.sampled_from(["J", "N*m", "kg", "m", ""]))
def test_wrong_dimensions_never_pass(unit):
    pair = fit.Pair.of(Q(50, "mm"), Q(100, "mm"))
    if unit != "m":
        with pytest.raises(OutOfRangeError):
            fit.pressure(Q(1e-5, unit), pair)
    with pytest.raises(OutOfRangeError):
        fit.fork_pin_force(Q(10, unit), 8)
    if unit != "N*m":
        with pytest.raises(OutOfRangeError):
            fit.stake_margin(fit.Stake(10, 10), Q(1, unit))
