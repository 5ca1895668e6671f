"""What holds for every gear train."""

from fractions import Fraction
from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from twoshaft.models import geartrain
from twoshaft.units.quantities import Q
from twoshaft.units.sections.geartrain import GearTrain

teeth = st.integers(9, 90)
pairs = st.lists(st.tuples(teeth, teeth), min_size=2, max_size=5)


def train(forward, final):
    names = [f"g{i}" for i in range(len(forward))]
    return GearTrain.model_validate(
        {
            "input": "in",
            "shafts": ["in", "out", "case", "left", "right"],
            "meshes": [
                {
                    "id": name, "driving": {"shaft": "in", "teeth": a},
                    "driven": {"shaft": "out", "teeth": b}, "loose": "in" if i % 2 else "out",
                    "module_mm": 2,
                }
                for i, (name, (a, b)) in enumerate(zip(names, forward, strict=True))
            ]
            + [
                {
                    "id": "final", "driving": {"shaft": "out", "teeth": final[0]},
                    "driven": {"shaft": "case", "teeth": final[1]}, "module_mm": 2,
                }
            ],
            "final_drive": "final",
            "gears": [{"id": n, "name": f"gear {n}", "engages": [n]} for n in names],
            "differential": {
                "case": "case", "left": "left", "right": "right",
                "side_teeth": 14, "pinion_teeth": 10,
            },
        }
    )  # fmt: skip


@given(pairs, st.tuples(teeth, teeth))
def test_ratio_is_the_product_of_its_meshes(forward, final):
    unit = train(forward, final)
    for i, (a, b) in enumerate(forward):
        assert geartrain.ratio(unit, f"g{i}") == Fraction(b, a) * Fraction(final[1], final[0])


@given(pairs, st.tuples(teeth, teeth))
def test_two_gears_lock_unless_their_ratios_are_equal(forward, final):
    unit = train(forward, final)
    for i, j in combinations(range(len(forward)), 2):
        found = geartrain.freedom(unit, (f"g{i}", f"g{j}"))
        equal = forward[i][0] * forward[j][1] == forward[j][0] * forward[i][1]
        assert ({"in", "case"} <= found.free) == equal
        assert ({"in", "case"} <= found.locked) != equal
        assert {"left", "right"} <= found.free


@given(pairs, st.tuples(teeth, teeth), st.integers(1, 40))
def test_the_count_stays_within_half_a_least_count(forward, final, output):
    count = geartrain.count_turns(train(forward, final), "g0", output, "both outputs, averaged")
    assert abs(count.seen - float(count.exact)) <= 0.0625 + 1e-9


@given(st.integers(10, 60), st.integers(10, 60), st.floats(0.6, 6), st.floats(1.0, 1.03))
def test_shift_grows_with_the_distance(z1, z2, module, wider):
    reference = geartrain.centre_fit((z1, z2), Q(module, "mm"), Q(module * (z1 + z2) / 2, "mm"))
    moved = geartrain.centre_fit((z1, z2), Q(module, "mm"), Q(module * (z1 + z2) / 2 * wider, "mm"))
    assert reference.shift_sum == pytest.approx(0, abs=1e-6)
    assert moved.shift_sum >= reference.shift_sum - 1e-9


@given(st.floats(1, 2000), st.floats(0.02, 0.5), st.floats(3, 15))
def test_cone_torque_grows_with_force_and_falls_with_angle(force, friction, angle):
    now = geartrain.cone_torque(Q(force, "N"), friction, Q(70, "mm"), Q(angle, "degree"))
    more = geartrain.cone_torque(Q(2 * force, "N"), friction, Q(70, "mm"), Q(angle, "degree"))
    flat = geartrain.cone_torque(Q(force, "N"), friction, Q(70, "mm"), Q(angle + 1, "degree"))
    assert more.magnitude == pytest.approx(2 * now.magnitude)
    assert flat < now


@given(pairs, st.tuples(teeth, teeth), st.sampled_from([0.125, 0.25, 0.5, 1.0]))
def test_turns_that_tell_apart_are_enough_and_one_fewer_is_not(forward, final, step):
    """Two counts, each off by half a least count towards the other, still keep one between."""
    unit = train(forward, final)
    both = "both outputs, averaged"
    for i, j in combinations(range(len(forward)), 2):
        gap = abs(geartrain.ratio(unit, f"g{i}") - geartrain.ratio(unit, f"g{j}"))
        turns = geartrain.tells_apart(unit, f"g{i}", f"g{j}", both, step)
        if gap == 0:
            assert turns == float("inf")
            continue
        assert turns * gap - Fraction(step) >= Fraction(step) * (1 - Fraction(1, 10**9))
        assert turns == 1 or (turns - 1) * gap - Fraction(step) < Fraction(step)
