import math
from fractions import Fraction

import numpy as np
import pytest

from twoshaft.errors import OutOfRangeError
from twoshaft.models import geartrain
from twoshaft.models.geartrain.motion import _kernel
from twoshaft.units.quantities import Q
from twoshaft.units.sections.geartrain import GearTrain

ONE, BOTH = "one output, the other held", "both outputs, averaged"


def mesh(name, driving, driven, loose=None, module=2.5):
    return {
        "id": name,
        "driving": {"shaft": driving[0], "teeth": driving[1]},
        "driven": {"shaft": driven[0], "teeth": driven[1]},
        "loose": loose,
        "module_mm": module,
    }


def train(**changes):
    data = {
        "input": "in",
        "shafts": ["in", "out", "idle", "case", "left", "right"],
        "meshes": [
            mesh("low", ("in", 12), ("out", 41), "out"),
            mesh("high", ("in", 30), ("out", 31), "out"),
            mesh("high-twin", ("in", 60), ("out", 62), "out"),
            mesh("back-in", ("in", 12), ("idle", 25), "idle"),
            mesh("back-out", ("idle", 25), ("out", 38)),
            mesh("final", ("out", 17), ("case", 70)),
        ],
        "final_drive": "final",
        "gears": [
            {"id": "low", "name": "low gear", "engages": ["low"]},
            {"id": "high", "name": "high gear", "engages": ["high"]},
            {"id": "twin", "name": "equal to high", "engages": ["high-twin"]},
            {"id": "back", "name": "reverse gear", "engages": ["back-in"], "reverse": True},
        ],
        "differential": {
            "case": "case", "left": "left", "right": "right", "side_teeth": 16, "pinion_teeth": 10,
        },
        "speed_drive": {"shaft": "case", "driving_teeth": 20, "driven_teeth": 19},
    }  # fmt: skip
    return GearTrain.model_validate(data | changes)


def test_one_mesh_turns_the_sign_and_an_idler_turns_it_back():
    assert geartrain.ratio(train(), "low", to="out") == Fraction(-41, 12)
    assert geartrain.ratio(train(), "back", to="out") == Fraction(38, 12)
    assert geartrain.ratio(train(), "low") == Fraction(41 * 70, 12 * 17)
    assert geartrain.ratio(train(), "back") < 0


def test_two_unequal_gears_lock_input_and_ring_gear_while_outputs_counter_rotate():
    found = geartrain.freedom(train(), ("low", "high"))
    assert {"in", "out", "case"} <= found.locked
    assert {"left", "right"} <= found.free
    held = geartrain.freedom(train(), ("low", "high"), held=("left",))
    assert held.degrees == 0 and not held.free


def test_equal_ratios_do_not_lock():
    assert {"in", "out", "case"} <= geartrain.freedom(train(), ("high", "twin")).free


def test_neutral_lets_input_and_wheels_turn_apart():
    found = geartrain.freedom(train())
    assert found.degrees == 3  # input; ring gear; one output against the other


def test_a_locked_train_cannot_be_counted():
    with pytest.raises(OutOfRangeError, match="lets the input turn"):
        geartrain.turns(train(), ("low", "high"))


def test_with_one_output_held_the_other_turns_twice():
    both = geartrain.count_turns(train(), "low", 4, BOTH).exact
    one = geartrain.count_turns(train(), "low", 4, ONE).exact
    assert both == 2 * one
    assert both == 4 * geartrain.ratio(train(), "low")


def test_count_is_read_to_the_least_count_and_keeps_its_sign():
    count = geartrain.count_turns(train(), "back", 1, BOTH, 0.25)
    assert count.exact == geartrain.ratio(train(), "back")
    assert count.seen == -13.0 and not count.same_way


def test_close_ratios_need_more_turns_to_tell_apart():
    assert geartrain.tells_apart(train(), "high", "twin", BOTH) == math.inf
    assert geartrain.tells_apart(train(), "low", "high", BOTH) == 1
    assert geartrain.tells_apart(train(), "high", "back", BOTH) == 1


def cone_with(cones):
    return geartrain.cone_torque(Q(600, "N"), 0.1, Q(70, "mm"), Q(7, "degree"), cones)


def test_each_working_cone_brakes_as_much_as_the_first():
    one = cone_with(1)
    assert one == geartrain.cone_torque(Q(600, "N"), 0.1, Q(70, "mm"), Q(7, "degree"))
    assert [cone_with(n).m for n in (2, 3)] == pytest.approx([2 * one.m, 3 * one.m])


@pytest.mark.parametrize(
    ("call", "what"),
    [
        (lambda: geartrain.ratio(train(), "sixth"), "gear is sixth"),
        (lambda: geartrain.ratio(train(), "low", to="idle2"), "shaft is idle2"),
        (lambda: geartrain.freedom(train(), held=("axle",)), "shaft is axle"),
        (lambda: geartrain.count_turns(train(), "low", -1, BOTH), "output turns"),
        (lambda: geartrain.count_turns(train(), "low", 1, "by ear"), "way of counting"),
        (lambda: geartrain.road_speed(train(), "low", Q(math.nan, "rpm")), "input speed"),
        (lambda: geartrain.cone_torque(Q(3, "J"), 0.1, Q(80, "mm"), Q(7, "degree")), "axial force"),
        (lambda: cone_with(0), "number of cones"),
        (lambda: cone_with(4), "number of cones"),
        (lambda: geartrain.speed_drive_turns(train(speed_drive=None), Q(1, "km")), "speed drive"),
        (
            lambda: geartrain.speed_drive_turns(
                train(speed_drive={"shaft": "in", "driving_teeth": 5, "driven_teeth": 9}),
                Q(1, "km"),
            ),
            "always turn alike",
        ),
        (lambda: geartrain.centre_fit((12, 41), Q(2.5, "mm"), Q(50, "mm")), "centre distance"),
    ],
)
def test_what_cannot_be_is_refused_in_one_sentence(call, what):
    with pytest.raises(OutOfRangeError, match=what):
        call()


def test_pair_at_its_reference_distance_needs_no_shift():
    fit = geartrain.centre_fit((20, 40), Q(2, "mm"), Q(60, "mm"))
    assert fit.shift_sum == pytest.approx(0, abs=1e-12)
    assert fit.working_angle.to("degree").magnitude == pytest.approx(20)


def test_wider_shafts_need_more_shift_and_a_helix_less():
    spur = geartrain.centre_fit((20, 40), Q(2, "mm"), Q(61, "mm"))
    helical = geartrain.centre_fit((20, 40), Q(2, "mm"), Q(61, "mm"), Q(10, "degree"))
    assert spur.shift_sum > helical.shift_sum > 0


def test_speed_drive_counts_the_axle_only_before_the_final_drive():
    on_case = geartrain.speed_drive_turns(train(), Q(1, "km"))
    drive = {"shaft": "out", "driving_teeth": 20, "driven_teeth": 19}
    on_output = geartrain.speed_drive_turns(train(speed_drive=drive), Q(1, "km"))
    assert (on_output / on_case).to("").magnitude == pytest.approx(70 / 17)


def test_worn_cone_costs_gap_by_one_over_the_sine():
    left = geartrain.gap_after_wear(Q(1.2, "mm"), Q(0.05, "mm"), Q(7, "degree"))
    assert left.to("mm").magnitude == pytest.approx(1.2 - 0.05 / math.sin(math.radians(7)))
    assert geartrain.gap_after_wear(Q(1.2, "mm"), Q(0.5, "mm"), Q(7, "degree")).magnitude == 0


def test_kernel_agrees_with_numpy_rank():
    rng = np.random.default_rng(4)
    for _ in range(200):
        matrix = rng.integers(-3, 4, size=(rng.integers(1, 7), 6))
        rows = [[Fraction(int(x)) for x in row] for row in matrix]
        basis = _kernel(rows, 6)
        assert len(basis) == 6 - np.linalg.matrix_rank(matrix)
        assert all(sum(a * b for a, b in zip(r, v, strict=True)) == 0 for r in rows for v in basis)


def test_section_refuses_what_does_not_hang_together():
    for changes, what in [
        ({"final_drive": "low"}, "final_drive"),
        ({"input": "clutch"}, "no shaft"),
        ({"gears": [{"id": "x", "name": "gear x", "engages": ["final"]}]}, "no loose mesh"),
    ]:
        with pytest.raises(ValueError, match=what):
            train(**changes)
