"""A driven spring pin: what is wrong with it, and a picture that shows it and does not say it."""

import re
from itertools import product

import pytest

from twoshaft.models.fit import PIN_WALL_MM, DrivenPin, driven_pin_faults
from twoshaft.plots.driven_pin import DrivenPinPicture
from twoshaft.readings import draw
from twoshaft.units import load_unit


@pytest.mark.parametrize("force", range(0, 360, 30))
def test_a_slot_lies_in_the_line_of_the_force_at_either_end(force):
    for turn in range(0, 360, 30):
        pin = DrivenPin(force, force + turn, 1, 1)
        assert driven_pin_faults(pin) == (() if turn in (0, 180) else ("slot",))


def test_nested_pins_have_their_weak_sides_apart():
    for outer, inner in product(range(0, 360, 30), repeat=2):
        right = outer in (90, 270) and abs(outer - inner) == 180
        assert driven_pin_faults(DrivenPin(90, outer, 1, 1, inner)) == (() if right else ("slot",))


@pytest.mark.parametrize(
    ("near", "far", "wrong"),
    [(0, 0, False), (2, 1, False), (-0.5, 1, True), (1, -2, True), (PIN_WALL_MM, 1, True),
     (1, PIN_WALL_MM + 2, True)],
)  # fmt: skip
def test_both_ends_lie_inside_and_both_walls_bear(near, far, wrong):
    assert driven_pin_faults(DrivenPin(0, 180, near, far)) == (("depth",) if wrong else ())


def test_a_picture_tells_directions_and_ends_and_no_verdict():
    pin = DrivenPin(force_deg=90, slot_deg=0, near_mm=1.2, far_mm=-0.8, inner_deg=180)
    picture = DrivenPinPicture(pin)
    ((_, felt),) = picture.spots
    assert "between 12 and 6 o'clock" in felt and "open at 3 o'clock" in felt
    assert "second pin in it at 9" in felt and "0.8 mm outside" in felt
    assert not re.search("wrong|right|slot-|depth|leave|renew", felt)
    assert picture.svg.count("tsq-head") == 3  # the style and two points of the arrow
    assert len(picture.svg) < 6000


@pytest.mark.slow
def test_of_six_pins_one_is_right_one_wrong_in_each_way_and_the_letters_are_ones_own():
    unit, letters = load_unit("tarnbeck-b5"), set()
    for n in range(60):
        given = draw("pressed-and-driven", unit, salt="s", learner=f"a{n}", attempt=1).spring
        found = [
            driven_pin_faults(
                DrivenPin(one.force_deg, one.slot_deg, one.near_mm, one.far_mm, one.inner_deg)
            )
            for one in given.fitted
        ]
        assert sorted(map(len, found)) == [0, 1, 1, 2, 2, 2]
        assert [one.letter for one in given.fitted] == list("ABCDEF")
        letters.add(tuple(found.index(one) for one in ((), ("slot",), ("depth",))))
        assert {one.id for one in given.asked} == {"leave", "slot", "depth"}
    assert len(letters) > 30
