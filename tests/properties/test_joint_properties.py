"""Threaded joints: what must hold whatever the figures."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from twoshaft.errors import OutOfRangeError
from twoshaft.models import joint
from twoshaft.models.joint.clamp import lever_m
from twoshaft.models.joint.threads import COARSE_PITCH_MM
from twoshaft.units.quantities import Q

# a busy machine must not look like a wrong result
SLOW_MACHINE = settings(deadline=None, max_examples=60)

SIZES = st.sampled_from([d for d in COARSE_PITCH_MM if d in (6, 8, 10, 12, 14, 16, 18, 20)])
FRICTION = st.floats(0.05, 0.4)
CLAMP = st.floats(100, 200e3)


def bolt(size):
    thread = joint.Thread.named(f"M{size}")
    return thread, joint.Seat.hexagon(thread), joint.strength("8.8", Q(size, "mm"))


@SLOW_MACHINE
@given(SIZES, CLAMP, FRICTION, FRICTION)
def test_long_form_both_ways(size, clamp, mu_g, mu_k):
    thread, seat, _ = bolt(size)
    torque = joint.torque_long(Q(clamp, "N"), thread, seat, mu_g, mu_k)
    k = joint.nut_factor(thread, seat, mu_g, mu_k)
    assert joint.clamp_short(torque, k, Q(size, "mm")).m_as("N") == pytest.approx(clamp)


@SLOW_MACHINE
@given(SIZES, FRICTION, FRICTION, st.floats(0.01, 0.1))
def test_more_friction_less_clamp(size, mu_g, mu_k, more):
    thread, seat, steel = bolt(size)
    clamp = Q(10, "kN")
    torque = joint.torque_long(clamp, thread, seat, mu_g, mu_k)
    assert joint.torque_long(clamp, thread, seat, mu_g + more, mu_k) > torque
    assert joint.torque_long(clamp, thread, seat, mu_g, mu_k + more) > torque
    assert joint.assembly_preload(thread, steel, mu_g + more) < joint.assembly_preload(
        thread, steel, mu_g
    )


@SLOW_MACHINE
@given(SIZES, FRICTION, st.floats(0.1, 1))
def test_assembly_preload_uses_what_it_says(size, mu, nu):
    thread, _, steel = bolt(size)
    clamp = joint.assembly_preload(thread, steel, mu, nu)
    assert joint.utilisation(clamp, thread, steel, mu) == pytest.approx(nu)
    # Twist takes a share, so the clamp stays below the same share of plain yield.
    assert clamp.m_as("N") < nu * steel.yield_pa * thread.stress_area_m2


@SLOW_MACHINE
@given(st.floats(0.5, 3), FRICTION, FRICTION)
def test_torque_grows_with_the_cube_of_size(scale, mu_g, mu_k):
    """All lengths times s at one stress: clamp times s², torque times s³."""
    small = joint.Thread(8e-3, 1.25e-3)
    large = joint.Thread(8e-3 * scale, 1.25e-3 * scale)
    seat = joint.Seat(13e-3, 9e-3)
    wide = joint.Seat(13e-3 * scale, 9e-3 * scale)
    first = joint.torque_long(Q(10, "kN"), small, seat, mu_g, mu_k).m_as("N*m")
    second = joint.torque_long(Q(10 * scale**2, "kN"), large, wide, mu_g, mu_k).m_as("N*m")
    assert second == pytest.approx(first * scale**3, rel=1e-9)


@SLOW_MACHINE
@given(SIZES, FRICTION)
def test_units_of_the_input_do_not_matter(size, mu):
    thread, seat, _ = bolt(size)
    metric = joint.torque_long(Q(20, "kN"), thread, seat, mu, mu)
    inch = joint.torque_long(Q(20, "kN").to("lbf"), thread, seat, mu, mu)
    assert inch.m_as("N*m") == pytest.approx(metric.m_as("N*m"))
    k = joint.nut_factor(thread, seat, mu, mu)
    at_m8 = joint.clamp_short(metric.to("lbf*ft"), k, Q(8, "mm").to("inch"))
    assert at_m8.m_as("N") == pytest.approx(joint.clamp_short(metric, k, Q(8, "mm")).m_as("N"))


@SLOW_MACHINE
@given(st.sampled_from(["J", "N", "m", "kg", "N/m", "Pa", ""]))
def test_wrong_dimensions_never_pass(unit):
    thread, seat, _ = bolt(8)
    with pytest.raises(OutOfRangeError):
        joint.clamp_short(Q(1, unit), 0.2, Q(8, "mm"))
    if unit != "N":
        with pytest.raises(OutOfRangeError):
            joint.torque_long(Q(1, unit), thread, seat, 0.12, 0.12)
    if unit != "m":
        with pytest.raises(OutOfRangeError):
            joint.clamp_short(Q(1, "N*m"), 0.2, Q(1, unit))


THREE = st.lists(st.floats(0.05, 0.4), min_size=3, max_size=3).map(lambda v: tuple(sorted(v)))


@SLOW_MACHINE
@given(THREE, THREE, st.floats(0, 0.1), st.integers(0, 2**31))
def test_every_sample_lies_within_the_bounds(thread_mu, head_mu, tolerance, seed):
    thread, seat, _ = bolt(8)
    state = joint.Friction("any", thread_mu, head_mu)
    args = (Q(25, "N*m"), thread, seat, state, tolerance)
    bounds = joint.clamp_bounds(*args)
    sample = joint.clamp_sample(*args, count=300, seed=seed)
    slack = 1e-9 * bounds.high_n
    assert (
        bounds.low_n - slack
        <= sample.clamp_n.min()
        <= sample.clamp_n.max()
        <= bounds.high_n + slack
    )


@SLOW_MACHINE
@given(st.floats(1, 100), st.floats(0.2, 1), st.floats(0, 0.5), st.floats(0, 180))
def test_adapter_both_ways_and_even_in_angle(torque, length, share, angle):
    args = (Q(length, "m"), Q(share * length * 0.999, "m"), Q(angle, "degree"))
    setting = joint.setting_with_adapter(Q(torque, "N*m"), *args)
    assert joint.torque_at_bolt(setting, *args).m_as("N*m") == pytest.approx(torque)
    if angle < 89 and share > 0.01:
        assert setting.m_as("N*m") < torque
    if angle > 91 and share > 0.01:
        assert setting.m_as("N*m") > torque


@SLOW_MACHINE
@given(SIZES, st.floats(0.6, 3), st.floats(60, 800), st.floats(1.41, 4))
def test_stripping_grows_with_engagement_metal_and_boss(size, deep, tensile, boss):
    thread, _, steel = bolt(size)
    args = (thread, steel)
    strip = joint.strip_loads(*args, Q(tensile, "MPa"), Q(deep * size, "mm"), Q(boss * size, "mm"))
    longer = joint.strip_loads(
        *args, Q(tensile, "MPa"), Q(deep * size * 1.2, "mm"), Q(boss * size, "mm")
    )
    thicker = joint.strip_loads(
        *args, Q(tensile, "MPa"), Q(deep * size, "mm"), Q(boss * size + 1, "mm")
    )
    assert longer.hole_strips_n == pytest.approx(1.2 * strip.hole_strips_n)
    assert thicker.hole_strips_n >= strip.hole_strips_n * (1 - 1e-12)
    assert strip.holds_n == min(strip.bolt_breaks_n, strip.bolt_strips_n, strip.hole_strips_n)
    weaker = joint.strip_loads(
        *args, Q(tensile * 0.95, "MPa"), Q(deep * size, "mm"), Q(boss * size, "mm")
    )
    assert weaker.hole_strips_n < strip.hole_strips_n


@SLOW_MACHINE
@given(SIZES, st.floats(0.6, 3))
def test_tolerances_only_weaken(size, deep):
    thread, _, steel = bolt(size)
    basic = joint.strip_loads(thread, steel, Q(210, "MPa"), Q(deep * size, "mm"))
    loose = joint.strip_loads(
        thread, steel, Q(210, "MPa"), Q(deep * size, "mm"), limits=joint.limits_6g6h(thread)
    )
    assert loose.hole_strips_n < basic.hole_strips_n * 1.02
    assert loose.bolt_strips_n < basic.bolt_strips_n


@SLOW_MACHINE
@given(st.floats(0, 0.999), st.floats(2, 40), FRICTION)
def test_oil_and_torque_only_raise_the_pressure(oil, torque, mu):
    thread, seat, _ = bolt(8)
    hole = joint.BlindHole(25e-3, 19e-3, 20e-3)
    full = np.pi / 4 * thread.d2_m**2 * hole.depth_m

    def lock(share, nm):
        return joint.hydraulic_lock(hole, thread, seat, Q(share * full, "m**3"), Q(nm, "N*m"), mu)

    one, more, harder = lock(oil, torque), lock(min(oil * 1.05, 1), torque), lock(oil, torque * 1.2)
    assert more.pressure_pa >= one.pressure_pa * (1 - 1e-9)
    assert harder.pressure_pa >= one.pressure_pa * (1 - 1e-9)
    clamp = torque / lever_m(thread, seat, mu, mu)
    assert 0 <= one.lost_n <= clamp * (1 + 1e-9)
    assert one.stand_off_m <= one.short_m * (1 + 1e-9)
    if one.stand_off_m > 0:  # the head never came down: all the clamp is missing
        assert one.lost_n == pytest.approx(clamp)
