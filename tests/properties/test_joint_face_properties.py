"""The bolted face: what must hold for any ring, order and number of rounds."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from twoshaft.models import joint
from twoshaft.models.joint.interaction import solve_forces
from twoshaft.units.quantities import Q


@st.composite
def faces(draw, warped=True):
    count = draw(st.integers(3, 10))
    angle = 2 * np.pi * (np.arange(count) + draw(st.floats(0, 0.2))) / count
    wide, high = draw(st.floats(0.05, 0.2)), draw(st.floats(0.05, 0.2))
    points = np.stack([wide * np.cos(angle), high * np.sin(angle)], axis=1)
    gap = np.array([draw(st.floats(0, 8e-5)) for _ in range(2 * count)]) if warped else None
    return joint.Face(
        points,
        draw(st.floats(8e-3, 30e-3)),
        draw(st.floats(4e-3, 20e-3)),
        draw(st.floats(5e7, 4e8)),
        10 ** draw(st.floats(9.3, 12)),
        gap,
    )


@settings(max_examples=40, deadline=None)
@given(faces(), st.randoms(use_true_random=False), st.integers(1, 3), st.floats(2e3, 30e3))
def test_any_sequence_obeys_the_rules(face, random, rounds, target):
    order = list(range(face.count))
    random.shuffle(order)
    got = joint.tighten(face, [joint.Round.of(order, Q(target, "N"))] * rounds)
    # the last one pulled sits at its target, or already had more
    assert got.pulls_n[-1][order[-1]] >= target * (1 - 1e-9)
    if got.turned[-1]:
        assert got.clamp_n[order[-1]] == pytest.approx(target, rel=1e-6)
    # every pull leaves its bolt at the target or more, and no force below zero
    for pull, j in zip(got.pulls_n, order * rounds, strict=True):
        assert pull[j] >= target * (1 - 1e-9)
    assert (got.pulls_n >= 0).all()
    # contact only pushes, and only where there is no gap; the joint carries all bolts
    assert (got.pressure_pa >= -1e-6).all() and (got.gap_m >= 0).all()
    carried = float((got.pressure_pa * face.width_m * face.share_m).sum())
    assert carried == pytest.approx(got.clamp_n.sum() + face.weight_n, rel=1e-6)
    # and every node of the beam is at rest by itself
    sunk = face.gap_at_nodes_m - got.gap_m + got.pressure_pa / face.joint_stiffness_n_m3
    pull = face.weight_n * face.share_m / face.length_m
    pull[face.bolt_nodes] += got.clamp_n
    push = got.pressure_pa * face.width_m * face.share_m
    rest = face.bending_n_m @ sunk + push - pull
    assert abs(rest).max() < 1e-4 * target


@settings(max_examples=25, deadline=None)
@given(faces(), st.floats(2e3, 30e3))
def test_rounds_bring_every_bolt_to_its_target(face, target):
    got = joint.tighten(face, [joint.Round.of(joint.clockwise(face.count), Q(target, "N"))] * 60)
    assert got.shortfall < 0.02


@settings(max_examples=25, deadline=None)
@given(faces(warped=False))
def test_compliance_is_symmetric_and_positive_definite(face):
    compliance = face.solution(np.ones(len(face.along_m), bool), 0.0)[0][face.bolt_nodes]
    assert compliance == pytest.approx(compliance.T, rel=1e-6, abs=1e-9 * compliance.max())
    assert np.linalg.eigvalsh((compliance + compliance.T) / 2).min() > 0


@settings(max_examples=25, deadline=None)
@given(faces(warped=False), st.floats(1.1, 5))
def test_a_flat_face_scales_with_its_loads(face, scale):
    """No gap: all forces are proportional to the target (the weight too)."""
    heavy = joint.Face(
        face.bolts_m,
        face.width_m,
        face.thickness_m,
        face.bolt_stiffness_n_m,
        face.joint_stiffness_n_m3,
        weight_n=face.weight_n * scale,
    )
    order = joint.crosswise(face.count)
    one = joint.tighten(face, [joint.Round.of(order, Q(5e3, "N"))] * 2)
    many = joint.tighten(heavy, [joint.Round.of(order, Q(5e3 * scale, "N"))] * 2)
    assert many.clamp_n == pytest.approx(one.clamp_n * scale, rel=1e-6)


@settings(max_examples=25, deadline=None)
@given(faces(warped=False), st.integers(0, 9))
def test_names_of_the_bolts_do_not_matter(face, shift):
    """The same ring read from another bolt on gives the same clamp, bolt for bolt."""
    count = face.count
    turned = joint.Face(
        np.roll(face.bolts_m, -shift, axis=0),
        face.width_m,
        face.thickness_m,
        face.bolt_stiffness_n_m,
        face.joint_stiffness_n_m3,
    )
    order = joint.crosswise(count)
    renamed = [(j - shift) % count for j in order]
    one = joint.tighten(face, [joint.Round.of(order, Q(8e3, "N"))])
    two = joint.tighten(turned, [joint.Round.of(renamed, Q(8e3, "N"))])
    assert np.roll(two.clamp_n, shift) == pytest.approx(one.clamp_n, rel=1e-6, abs=1e-3)


@pytest.mark.slow
@settings(max_examples=25, deadline=None)
@given(faces(), st.floats(2e-6, 1e-4), st.floats(2e3, 30e3))
def test_a_standing_film_hides_and_a_gone_one_costs(face, film, target):
    """While it stands the film lifts the flange by its thickness and changes no clamp; gone, it
    leaves every bolt with no more than it had."""
    order = joint.crosswise(face.count)
    dry = joint.tighten(face, [joint.Round.of(order, Q(target, "N"))])
    wet = joint.tighten(face, [joint.Round.of(order, Q(target, "N"), Q(film, "m"))])
    assert wet.rounds_n == pytest.approx(dry.rounds_n, rel=1e-6, abs=1e-3 * target)
    assert wet.clamp_n.sum() < wet.rounds_n[-1].sum()


@st.composite
def linear_joints(draw):
    count = draw(st.integers(2, 6))
    entries = [draw(st.floats(-1, 1)) for _ in range(count * count)]
    root = np.array(entries).reshape(count, count)
    return root @ root.T * 1e-9 + np.eye(count) * 1e-10


@settings(max_examples=60, deadline=None)
@given(linear_joints(), st.floats(1e7, 1e9), st.integers(0, 2**31))
def test_slack_bolts_are_the_right_ones(case, stiffness, seed):
    """The answer meets the conditions of one-sided springs, checked without the solver."""
    compliance = case
    count = len(compliance)
    rng = np.random.default_rng(seed)
    nut, base = rng.normal(0, 1e-5, count), rng.normal(0, 1e-5, count)
    give = np.full(count, 1 / stiffness)
    force = solve_forces(compliance, give, nut, base, np.ones(count, bool))
    stretch = nut - base - compliance @ force
    assert (force >= 0).all()
    assert stretch[force > 0] == pytest.approx(force[force > 0] / stiffness, rel=1e-6, abs=1e-12)
    assert (stretch[force == 0] <= 1e-12).all()
