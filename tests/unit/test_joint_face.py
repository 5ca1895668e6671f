"""The bolted face: contact, wrench and film."""

import math

import numpy as np
import pytest

from twoshaft.errors import OutOfRangeError
from twoshaft.models import joint
from twoshaft.models.joint.interaction import solve_forces
from twoshaft.units.quantities import Q

COUNT = 8
ANGLE = 2 * np.pi * np.arange(COUNT) / COUNT
RING = np.stack([0.12 * np.cos(ANGLE), 0.08 * np.sin(ANGLE)], axis=1)
TARGET = Q(15, "kN")


def face(joint_stiffness=3e10, gap=None, points=RING, **more):
    return joint.Face(points, 0.015, 0.012, 1.7e8, joint_stiffness, gap, **more)


def test_head_and_engaged_thread_give_like_so_much_more_bolt():
    """M8 by hand: 0.83 d on the nominal section, grip and 0.5 d on the root section."""
    nominal, root = math.pi / 4 * 8.0**2, math.pi / 4 * 6.466**2
    for grip in (10.0, 30.0, 100.0):
        stiffness = 205 / (0.83 * 8.0 / nominal + (grip + 4.0) / root)
        got = joint.bolt_stiffness(joint.Thread.named("M8"), Q(grip, "mm")).m_as("kN/mm")
        assert got == pytest.approx(stiffness, rel=1e-3)


def rounds(order, count, target=TARGET, film=None):
    return [joint.Round.of(order, target, film)] * count


def test_forces_balance_the_joint():
    got = joint.tighten(face(), rounds(joint.crosswise(COUNT), 2))
    carried = (got.pressure_pa * 0.015 * got.face.share_m).sum()
    assert carried == pytest.approx(got.clamp_n.sum() + got.face.weight_n, rel=1e-9)


def test_a_gap_opens_where_nothing_pulls():
    got = joint.tighten(face(), [joint.Round.of((0,), TARGET)])
    node = len(got.gap_m) // 2
    assert got.gap_m.min() == 0 and got.pressure_pa[0] > 0
    assert got.clamp_n[1:] == pytest.approx(np.zeros(COUNT - 1))
    assert (got.pressure_pa >= 0).all() and (got.gap_m >= 0).all()
    assert ((got.pressure_pa > 0) & (got.gap_m > 0)).sum() == 0
    assert 0 < (got.gap_m > 0).sum() < len(got.gap_m) and node


def test_a_warped_flange_closes_under_its_bolts():
    gap = np.zeros(2 * COUNT)
    gap[4] = 60e-6
    loose = joint.tighten(face(1e11, gap), [joint.Round.of((0,), Q(1, "kN"))])
    tight = joint.tighten(face(1e11, gap), rounds(joint.clockwise(COUNT), 3))
    bolt = tight.face.bolt_nodes[2]
    assert loose.gap_m[bolt] > 0 and tight.gap_m[bolt] == 0


def test_a_second_round_finds_the_bolts_that_went_slack():
    got = joint.tighten(face(5e9), rounds(joint.clockwise(COUNT), 4))
    assert got.spreads[0] > 0.3 and got.spreads[3] < 0.05
    assert (got.rounds_n[0] < 15e3 * 0.95).any()
    assert got.shortfall < 0.02


def test_the_wrench_clicks_at_once_where_the_target_is_reached():
    got = joint.tighten(face(), [*rounds((0,), 1), *rounds((0,), 1), *rounds((0,), 1, Q(9, "kN"))])
    assert list(got.turned) == [True, False, False]
    assert got.clamp_n[0] == pytest.approx(15e3)


def test_each_bolt_may_have_its_own_target():
    targets = np.linspace(12e3, 16e3, COUNT)
    got = joint.tighten(face(), [joint.Round.of(joint.clockwise(COUNT), Q(targets, "N"))] * 12)
    assert got.clamp_n == pytest.approx(targets, rel=0.25) and got.clamp_n[-1] == pytest.approx(
        16e3
    )
    assert (got.clamp_n >= targets * 0.999).all()


def test_wet_film_carries_nothing_once_it_has_run_out():
    stiff = face(2e11)
    order = joint.crosswise(COUNT)
    dry = joint.tighten(stiff, rounds(order, 2))
    wet = joint.tighten(stiff, rounds(order, 2, film=Q(30, "um")))
    again = joint.tighten(stiff, [*rounds(order, 1, film=Q(30, "um")), *rounds(order, 2)])
    # While the film stands it looks as tight as the dry joint.
    assert wet.rounds_n[-1] == pytest.approx(dry.rounds_n[-1], rel=1e-6)
    lost = 1 - wet.clamp_n / dry.clamp_n
    assert (lost > 0.05).all()
    # Going round again once it has run out brings every bolt back to its target.
    assert again.shortfall < 0.001 and wet.shortfall > 0.05


def test_a_film_only_gets_thinner():
    with pytest.raises(OutOfRangeError, match="film"):
        joint.tighten(face(), [*rounds((0,), 1), *rounds((1,), 1, film=Q(10, "um"))])
    with pytest.raises(OutOfRangeError, match="film"):
        joint.Round.of((0,), TARGET, Q(-1, "um"))


def test_rounds_needed():
    soft, order = face(5e9), joint.crosswise(COUNT)
    needed = joint.rounds_needed(soft, order, TARGET, 0.1)
    spreads = joint.tighten(soft, rounds(order, needed)).spreads
    assert spreads[-1] <= 0.1 and (spreads[:-1] > 0.1).all() and needed > 1
    assert joint.rounds_needed(soft, order, TARGET, 0.1, most=needed - 1) is None
    assert joint.rounds_needed(soft, order[:-1], TARGET, 0.9) is None


def test_the_crosswise_pattern_is_no_cure_by_itself():
    """In this model the order changes which bolts end low, not that one round leaves them uneven."""
    one = {
        name: joint.tighten(face(5e9), rounds(order, 1)).spread
        for name, order in (("round", joint.clockwise(COUNT)), ("cross", joint.crosswise(COUNT)))
    }
    assert min(one.values()) > 0.2


@pytest.mark.parametrize("order", [(), (0, 0), (0, COUNT), (-1,)])
def test_an_order_names_bolts_that_are_there_once(order):
    with pytest.raises(OutOfRangeError, match="order"):
        joint.tighten(face(), [joint.Round(order, 1e4)])


@pytest.mark.parametrize(
    "change",
    [
        {"points": RING[:2]},
        {"points": np.zeros((4, 2))},
        {"points": RING * math.nan},
        {"joint_stiffness": -1e10},
        {"joint_stiffness": math.nan},
        {"gap": np.full(2 * COUNT, -1e-6)},
        {"gap": np.zeros(COUNT)},
        {"gap": np.full(2 * COUNT, math.nan)},
        {"weight_n": 0},
        {"elastic_pa": math.inf},
    ],
)
def test_no_impossible_face(change):
    with pytest.raises(OutOfRangeError):
        face(**change)


@pytest.mark.parametrize("bad", [0.0, -1.0, math.nan])
def test_no_impossible_target(bad):
    with pytest.raises(OutOfRangeError, match="target"):
        joint.tighten(face(), [joint.Round((0,), bad)])


def test_no_round_at_all_is_refused():
    with pytest.raises(OutOfRangeError, match="rounds"):
        joint.tighten(face(), [])


@pytest.mark.parametrize("count, order", [(4, (0, 2, 1, 3)), (6, (0, 3, 1, 4, 2, 5)), (1, (0,))])
def test_crosswise(count, order):
    assert joint.crosswise(count)[:2] == order[:2] and sorted(joint.crosswise(count)) == list(
        range(count)
    )
    if count == 4:
        assert joint.crosswise(count) == order


def test_middle_outwards():
    assert joint.middle_outwards([(0, 0), (10, 0), (5, 0), (4, 0)]) == (2, 3, 0, 1)


def test_bolts_never_push():
    c = np.array([[1.0, -0.9], [-0.9, 1.0]]) * 1e-9
    nut = np.array([0.0, 1e-6])
    force = solve_forces(c, np.full(2, 1e-10), nut, np.array([5e-6, 0.0]), np.ones(2, bool))
    assert (force >= 0).all() and force[0] == 0 and force[1] > 0
