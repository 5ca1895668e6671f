"""The gear-train rig: what it shows follows from the models, and a closed one tells nothing."""

from fractions import Fraction

import pytest

from twoshaft.errors import OutOfRangeError, UnitFileError
from twoshaft.models.geartrain import pitch_radii, ratio, turned_by_hand
from twoshaft.plots.gear_section import PX_PER_MM, gear_layout
from twoshaft.rigs import closed_gears, gear_rig
from twoshaft.rigs.gears import DRAG_SHARE


@pytest.fixture(scope="module")
def train(unit):
    return unit.gear_train


def turn(rig, shaft, turns):
    rig.hear({"type": "turn", "shaft": shaft, "turns": turns, "turn": 1})
    return {dial["shaft"]: dial for dial in rig.view["dials"]}


def turned(rig):
    return {dial["shaft"]: dial["angle"] / 360 for dial in rig.view["dials"]}


def test_every_gear_turns_as_the_model_says(unit, train):
    for gear in train.gears:
        rig = gear_rig(unit, [gear.id], held="right-output")
        turn(rig, "left-output", 2)
        total = float(ratio(train, gear.id))
        assert turned(rig)["input-shaft"] == pytest.approx(total, abs=1e-4)
        assert turned(rig)["right-output"] == 0
        assert f"{abs(total):.2f}" in rig.finding
        assert ("other way" in rig.finding) == gear.reverse


def test_free_wheels_share_unevenly_and_their_average_is_the_ring_gear(unit, train):
    rig = gear_rig(unit, ["second"])
    turn(rig, "input-shaft", float(ratio(train, "second")))
    left, right = (turned(rig)[s] for s in ("left-output", "right-output"))
    assert left == pytest.approx(2 * float(DRAG_SHARE), abs=1e-3) and left != right
    assert (left + right) / 2 == pytest.approx(1, abs=1e-3)


def test_two_gears_lock_the_input_but_not_the_wheels(unit):
    rig = gear_rig(unit, ["second", "fifth"])
    turn(rig, "input-shaft", 1)
    assert "locked" in rig.view["happened"] and set(turned(rig).values()) == {0}
    turn(rig, "left-output", 1)
    assert turned(rig) == {"input-shaft": 0, "left-output": 1, "right-output": -1}
    rig.hear({"type": "hold", "shaft": "right-output"})
    assert "nothing turns" in rig.finding
    turn(rig, "left-output", 1)
    assert turned(rig)["left-output"] == 1


def test_one_sleeve_is_in_one_gear_only(unit):
    rig = gear_rig(unit)
    assert "Neutral" in rig.finding
    for gear in ("first", "second"):
        rig.hear({"type": "gear", "gear": gear})
    assert rig.engaged == ("second",) and "One sleeve" in rig.view["happened"]
    rig.hear({"type": "gear", "gear": "second"})
    assert rig.engaged == ()


def test_in_neutral_the_input_turns_alone(unit):
    rig = gear_rig(unit)
    turn(rig, "input-shaft", 1)
    assert turned(rig) == {"input-shaft": 1, "left-output": 0, "right-output": 0}
    assert "on its own" in rig.view["happened"]


def test_a_held_wheel_does_not_turn_and_zero_wipes_the_marks(unit):
    rig = gear_rig(unit, ["third"], held="left-output")
    turn(rig, "left-output", 1)
    assert "is held" in rig.view["happened"] and turned(rig)["left-output"] == 0
    turn(rig, "right-output", 1)
    rig.hear({"type": "reset"})
    assert set(turned(rig).values()) == {0}


def test_what_cannot_be_is_ignored(unit):
    rig = gear_rig(unit, ["third"])
    before = turned(rig)
    for message in (
        {"type": "turn", "shaft": "no-shaft", "turns": 1},
        {"type": "turn", "shaft": "input-shaft", "turns": float("nan")},
        {"type": "turn", "shaft": "input-shaft", "turns": 1e9},
        {"type": "gear", "gear": "ninth"},
        {"type": "hold", "shaft": "input-shaft"},
        {"type": "dance"},
    ):
        rig.hear(message)
    assert turned(rig) == before and rig.engaged == ("third",) and rig.held == ""


def test_touching_gears_move_as_one_at_their_pitch_circles(unit, train):
    rig = gear_rig(unit, ["second"])
    turn(rig, "input-shaft", 0.37)
    for mesh in train.meshes:
        one, other = (r.m_as("mm") for r in pitch_radii(train, mesh))
        driving, driven = (rig.wheels[f"{mesh.id} {side}"] for side in ("driving", "driven"))
        assert one * driving == pytest.approx(-other * driven)


def test_the_drawing_is_to_scale(train):
    at = gear_layout(train)
    for distance in train.distances:
        a, b = (at.shafts[shaft] for shaft in distance.between)
        assert abs(a - b) == pytest.approx(distance.mm * PX_PER_MM)
    for mesh in train.meshes:
        sides = [at.wheels[f"{mesh.id} {side}"] for side in ("driving", "driven")]
        per_tooth = [w.radius / getattr(mesh, w.id.split()[-1]).teeth for w in sides]
        assert per_tooth[0] == pytest.approx(per_tooth[1])


def test_a_closed_one_shows_marks_and_no_figures(unit, train):
    total = ratio(train, "reverse")
    rig = closed_gears(unit, [total.numerator, total.denominator])
    assert rig.figure == "" and rig.plan["gears"] == [] and "other way" not in rig.finding
    rig.hear({"type": "gear", "gear": "first"})
    assert rig.engaged == ("reverse",)
    rig.hear({"type": "hold", "shaft": "right-output"})
    dials = turn(rig, "left-output", 1)
    assert dials["input-shaft"]["strokes"] == 6 and dials["input-shaft"]["way"] == -1
    assert "between graduations 6 and 7" in dials["input-shaft"]["words"]
    assert {dial["figure"] for dial in dials.values()} == {""}
    assert "Reverse" not in rig.plain_copy() and "reverse" not in rig.plain_copy()


def test_refusals_say_what_is_wrong(unit):
    with pytest.raises(OutOfRangeError, match="gear is ninth"):
        gear_rig(unit, ["ninth"])
    with pytest.raises(OutOfRangeError, match="those of one of its gears"):
        closed_gears(unit, [7, 2])
    with pytest.raises(UnitFileError, match="no gear train"):
        gear_rig(unit.with_sections(gear_train=None))


def test_the_plain_copy_says_what_the_screen_shows(unit):
    copy = gear_rig(unit, ["second", "fifth"]).plain_copy()
    assert "locked" in copy and "<svg" in copy and "Left wheel" in copy


def test_shares_add_up_whatever_the_drag(train):
    for share in (Fraction(0), Fraction(1, 3), Fraction(1)):
        found = turned_by_hand(train, ["fourth"], left_share=share)
        assert found["left-output"] + found["right-output"] == 2 * found["differential-case"]
