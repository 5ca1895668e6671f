"""Threaded joints: what the functions give and what they refuse."""

import math

import numpy as np
import pytest

from twoshaft.errors import OutOfRangeError, UnitFileError
from twoshaft.models import joint
from twoshaft.models.joint.clamp import lever_m
from twoshaft.units.quantities import Q

M8 = joint.Thread.named("M8")
SEAT = joint.Seat.hexagon(M8)
STEEL = joint.strength("8.8", Q(8, "mm"))
DRY = joint.STATES["dry"]


@pytest.mark.parametrize(
    "name, d, pitch, left",
    [("M8", 8, 1.25, False), ("M10x1.25", 10, 1.25, False), ("M18x1.5-LH", 18, 1.5, True)],
)
def test_a_thread_is_read_by_its_name_and_says_it_again(name, d, pitch, left):
    thread = joint.Thread.named(name)
    assert (thread.d_m, thread.pitch_m, thread.left_hand) == pytest.approx(
        (d / 1e3, pitch / 1e3, left)
    )
    assert thread.name == name


@pytest.mark.parametrize(
    "name", ["", "8", "M", "M8x", "M7", "M8x9", "M0.5x0.1", "M80x6", "UNF 3/4", "M8 fine"]
)
def test_no_thread_is_made_up(name):
    with pytest.raises(OutOfRangeError):
        joint.Thread.named(name)


@pytest.mark.parametrize("bad", [math.nan, -8e-3, 0.0, math.inf])
def test_bad_lengths_make_no_thread(bad):
    with pytest.raises(OutOfRangeError):
        joint.Thread(bad, 1.25e-3)
    with pytest.raises(OutOfRangeError):
        joint.Thread(8e-3, bad)


def test_a_seat_covers_its_hole():
    for outer, hole in ((9, 9), (8, 9), (math.nan, 9), (13, math.nan), (13, -1)):
        with pytest.raises(OutOfRangeError):
            joint.Seat.of(Q(outer, "mm"), Q(hole, "mm"))
    with pytest.raises(OutOfRangeError, match="hexagon"):
        joint.Seat.hexagon(joint.Thread.named("M9x1"))


@pytest.mark.parametrize("name, d", [("8.7", 8), ("9.8", 18), ("8.8", 52)])
def test_strength_only_where_the_standard_has_it(name, d):
    with pytest.raises(OutOfRangeError):
        joint.strength(name, Q(d, "mm"))


@pytest.mark.parametrize(
    "torque", [Q(20, "J"), Q(20, "N"), Q(-1, "N*m"), Q(math.nan, "N*m"), 20.0, Q(1e9, "N*m")]
)
def test_a_torque_must_be_a_torque(torque):
    with pytest.raises(OutOfRangeError, match="torque"):
        joint.clamp_short(torque, 0.2, Q(8, "mm"))


@pytest.mark.parametrize("mu", [0.0, -0.1, 0.9, math.nan])
def test_friction_outside_its_range_is_refused(mu):
    with pytest.raises(OutOfRangeError, match="friction"):
        joint.torque_long(Q(10, "kN"), M8, SEAT, mu, 0.12)
    with pytest.raises(OutOfRangeError, match="friction"):
        joint.torque_long(Q(10, "kN"), M8, SEAT, 0.12, mu)


def test_one_call_sweeps_a_slider():
    mu = np.linspace(0.08, 0.2, 50)
    torque = joint.torque_long(Q(15, "kN"), M8, SEAT, mu, mu)
    assert torque.magnitude.shape == (50,) and (np.diff(torque.magnitude) > 0).all()


def test_shares_of_the_torque_add_up():
    shares = joint.torque_shares(M8, SEAT, 0.12, 0.14)
    assert shares.pitch + shares.thread + shares.head == pytest.approx(1)


def test_reversed_friction_limits_are_refused():
    with pytest.raises(OutOfRangeError, match="rise"):
        joint.Friction("x", (0.2, 0.15, 0.1), (0.1, 0.15, 0.2))
    with pytest.raises(OutOfRangeError):
        joint.Friction("x", (0.1, math.nan, 0.2), (0.1, 0.15, 0.2))


def test_the_same_seed_gives_the_same_bolts():
    first, again, other = (
        joint.clamp_sample(Q(25, "N*m"), M8, SEAT, DRY, 0.04, count=50, seed=s) for s in (4, 4, 5)
    )
    assert (first.clamp_n == again.clamp_n).all() and (first.clamp_n != other.clamp_n).any()


def test_worst_use_is_not_at_the_largest_clamp_only():
    """High thread friction under a slippery head twists more than it clamps."""
    odd = joint.Friction("odd", (0.08, 0.2, 0.4), (0.04, 0.04, 0.04))
    torque = Q(20, "N*m")
    worst = joint.worst_utilisation(torque, M8, SEAT, STEEL, odd)
    corners = [
        joint.utilisation(Q(20 / lever_m(M8, SEAT, g, 0.04), "N"), M8, STEEL, g)
        for g in (0.08, 0.4)
    ]
    assert worst >= corners[0]
    assert worst == pytest.approx(max(corners))


def test_wrench_settings_and_what_they_apply():
    wrench = joint.TorqueWrench("wrench", 10, 90, 0.5, 0.39)
    assert wrench.usable_from_nm == 18 and wrench.tolerance == 0.04
    assert wrench.nearest_setting(Q(27.2, "N*m")).m_as("N*m") == pytest.approx(27.0)
    low, high = wrench.applied(Q(27, "N*m"))
    assert low.m_as("N*m") == pytest.approx(26.75 * 0.96)
    assert high.m_as("N*m") == pytest.approx(27.25 * 1.04)
    with pytest.raises(OutOfRangeError, match="wrench"):
        wrench.applied(Q(12, "N*m"))


@pytest.mark.parametrize(
    "change",
    [
        {"high_nm": 5},
        {"high_nm": 10},
        {"step_nm": 0},
        {"length_m": -1},
        {"tool_class": "Z"},
        {"low_nm": math.nan},
    ],
)
def test_no_impossible_wrench(change):
    given = {"name": "w", "low_nm": 10, "high_nm": 90, "step_nm": 0.5, "length_m": 0.39} | change
    with pytest.raises(OutOfRangeError):
        joint.TorqueWrench(**given)


@pytest.mark.parametrize(
    "length, reach, angle",
    [
        (0.4, -0.05, 0),
        (0.4, 0.3, 0),
        (0.0, 0.05, 0),
        (0.4, 0.05, 200),
        (0.4, 0.05, -10),
        (0.4, math.nan, 0),
    ],
)
def test_no_impossible_adapter(length, reach, angle):
    with pytest.raises(OutOfRangeError):
        joint.setting_with_adapter(Q(50, "N*m"), Q(length, "m"), Q(reach, "m"), Q(angle, "degree"))


def test_stripping_says_what_goes_first():
    strip = joint.strip_loads(M8, STEEL, Q(200, "MPa"), Q(8, "mm"))
    assert strip.first == "hole thread strips" and strip.holds_n == strip.hole_strips_n
    thin = joint.strip_loads(M8, STEEL, Q(200, "MPa"), Q(8, "mm"), boss=Q(12, "mm"))
    assert thin.hole_strips_n == pytest.approx(0.84 * strip.hole_strips_n)
    assert thin.bolt_strips_n == pytest.approx(0.84 * strip.bolt_strips_n)


def test_a_boss_thinner_than_the_method_knows_is_refused():
    with pytest.raises(OutOfRangeError, match="boss"):
        joint.strip_loads(M8, STEEL, Q(200, "MPa"), Q(12, "mm"), boss=Q(10, "mm"))
    for bad in (1, 40, math.nan, -12):
        with pytest.raises(OutOfRangeError, match="engagement"):
            joint.strip_loads(M8, STEEL, Q(200, "MPa"), Q(bad, "mm"))


def test_flanks_that_do_not_meet_are_refused():
    with pytest.raises(OutOfRangeError, match="pitch diameter"):
        joint.shear_area_hole(Q(10, "mm"), Q(1.25, "mm"), Q(8, "mm"), Q(9.2, "mm"))


HOLE = joint.BlindHole(25e-3, 19e-3, 18e-3)


def test_an_empty_blind_hole_does_not_lock():
    lock = joint.hydraulic_lock(HOLE, M8, SEAT, Q(0.1, "cm**3"), Q(27, "N*m"), 0.12)
    assert not lock.locks and lock.pressure_pa == 0 and not lock.splits and lock.lost_n == 0


def test_oil_in_a_blind_hole_locks_splits_and_takes_the_clamp():
    lock = joint.hydraulic_lock(HOLE, M8, SEAT, Q(0.5, "cm**3"), Q(27, "N*m"), 0.12)
    clamp = 27 / lever_m(M8, SEAT, 0.12, 0.12)
    assert lock.locks and lock.splits and lock.stand_off_m > 0
    # The wrench clicks on the oil: all the clamp it promises is missing.
    assert lock.lost_n == pytest.approx(clamp)
    # Thread alone takes the torque, so the push is far more than the clamp would have been.
    assert lock.pressure_pa * math.pi / 4 * M8.d2_m**2 > 1.5 * clamp
    assert lock.hoop_pa > lock.pressure_pa > 0


def test_a_trace_too_much_oil_is_squeezed_and_still_seats():
    room = math.pi / 4 * M8.d2_m**2 * 6e-3
    lock = joint.hydraulic_lock(HOLE, M8, SEAT, Q(room * 1.002, "m**3"), Q(27, "N*m"), 0.12)
    clamp = 27 / lever_m(M8, SEAT, 0.12, 0.12)
    assert lock.locks and lock.stand_off_m == pytest.approx(0, abs=1e-12)
    assert 0 < lock.lost_n < clamp


def test_blind_hole_refuses_nonsense():
    with pytest.raises(OutOfRangeError, match="oil"):
        joint.hydraulic_lock(HOLE, M8, SEAT, Q(9, "cm**3"), Q(27, "N*m"), 0.12)
    with pytest.raises(OutOfRangeError, match="reach"):
        joint.BlindHole(25e-3, 30e-3, 18e-3)
    with pytest.raises(OutOfRangeError, match="boss"):
        joint.hydraulic_lock(
            joint.BlindHole(25e-3, 19e-3, 8e-3), M8, SEAT, Q(0.5, "cm**3"), Q(27, "N*m"), 0.12
        )


def test_every_group_of_the_unit_can_be_computed(unit):
    for group in unit.fasteners.groups:
        fastening = joint.Fastening.of(unit, group.id)
        bounds = fastening.bounds()
        assert bounds.low_n < bounds.typical_n < bounds.high_n and bounds.scatter > 1
        assert fastening.least_clamp() < fastening.bounds().typical < fastening.most_clamp()
        sample = fastening.sample(200, 1)
        assert bounds.low_n <= sample.clamp_n.min() and sample.clamp_n.max() <= bounds.high_n
        assert (fastening.strip() is None) == (group.tapped is None)


def test_a_wet_thread_at_the_dry_torque_clamps_more(unit):
    bolts = joint.Fastening.of(unit, "case-bolts")
    assert bolts.bounds("oiled").typical > bolts.bounds().typical > bolts.bounds("dry").typical
    assert bolts.worst_use("oiled") > bolts.worst_use()


def test_the_adapter_lowers_the_setting(unit):
    plugs = joint.Fastening.of(unit, "detent-plugs")
    assert plugs.setting < plugs.torque
    assert (
        joint.Fastening.of(unit, "case-bolts").setting
        == joint.Fastening.of(unit, "case-bolts").torque
    )


def test_the_output_nut_is_left_handed(unit):
    assert joint.Fastening.of(unit, "output-nut").thread.left_hand
    assert not joint.Fastening.of(unit, "input-nut").thread.left_hand


def test_a_group_that_is_not_there_is_named(unit):
    with pytest.raises(UnitFileError, match="wheel-nuts"):
        joint.Fastening.of(unit, "wheel-nuts")
    with pytest.raises(UnitFileError, match="flange"):
        joint.Fastening.of(unit, "output-nut").face()


def test_case_bolts_stand_where_the_face_has_its_holes(unit):
    bolts = joint.Fastening.of(unit, "case-bolts")
    holes = unit.faces.face_by_id("case-joint").holes
    assert bolts.positions_m == pytest.approx(np.array([(h.x_mm, h.y_mm) for h in holes]) / 1e3)
    assert bolts.blind_hole().depth_m == pytest.approx(25e-3)
    assert joint.Fastening.of(unit, "idler-bolt").blind_hole() is None


def test_bolts_with_places_of_their_own_stand_there(unit):
    """The unit file gives them in millimetres."""
    own = [group for group in unit.fasteners.groups if group.positions_mm and group.face is None]
    assert own
    for group in own:
        bolts = joint.Fastening.of(unit, group.id)
        assert bolts.positions_m * 1e3 == pytest.approx(np.array(group.positions_mm, dtype=float))
