"""Gauges as somebody set them: what is wrong, and pictures that show it and do not say it."""

import re
from dataclasses import replace

import pytest

from twoshaft.models.set_ups import SetDepth, SetDial, depth_set_faults, dial_set_faults
from twoshaft.plots.depth_set import DepthSetPicture
from twoshaft.plots.dial_set import DialSetPicture
from twoshaft.readings import draw
from twoshaft.units import load_unit

FLAT = SetDepth(left_mm=0, right_mm=0, short_mm=0, aside_mm=10, round_mm=4, eye_deg=0)
FIRM = SetDial(off_deg=0, pressed_mm=0.6, moves_mm=0.2, thick_mm=40, rests=1, by="crank")
VERDICTS = r"wrong|right\b(?! end)|correct|seat|set-up|square on|keep|\bread\b|stop"


@pytest.mark.parametrize("eye", range(-45, 46, 5))
def test_an_eye_is_off_where_the_vernier_seems_moved_by_half_its_step(eye):
    assert depth_set_faults(replace(FLAT, eye_deg=eye)) == (() if eye == 0 else ("eye",))
    assert depth_set_faults(replace(FLAT, eye_deg=4)) == ()


@pytest.mark.parametrize(
    "off", [{"left_mm": 0.1}, {"right_mm": 1.2}, {"left_mm": 1, "right_mm": 1}, {"short_mm": 1},
            {"aside_mm": 3.9}]
)  # fmt: skip
def test_foot_and_rod_are_seated_or_not_whatever_the_eye(off):
    assert depth_set_faults(replace(FLAT, **off)) == ("set",)
    assert depth_set_faults(replace(FLAT, eye_deg=30, **off)) == ("eye", "set")


@pytest.mark.parametrize(
    ("off", "faults"),
    [({"off_deg": 8}, ()), ({"off_deg": -9}, ("set",)), ({"pressed_mm": 0.2}, ("set",)),
     ({"thick_mm": 1.5}, ("set",)), ({"rests": 0.6}, ("set",)), ({"by": "hand wheel"}, ()),
     ({"by": "drill"}, ("drive",)), ({"by": "motor", "off_deg": 25}, ("set", "drive"))],
)  # fmt: skip
def test_a_dial_points_at_the_middle_stands_firm_and_is_turned_by_hand(off, faults):
    assert dial_set_faults(replace(FIRM, **off)) == faults


def given(n, attempt=1):
    unit = load_unit("tarnbeck-b5")
    return draw("measuring-and-tools", unit, salt="s", learner=f"a{n}", attempt=attempt)


CASES = {
    "depth": (lambda one: one.depth.looks, lambda one: one.depth.asked, depth_set_faults,
              DepthSetPicture, {"keep", "eye", "set"}),
    "dial": (lambda one: one.dial.set_ups, lambda one: one.dial.asked, dial_set_faults,
             DialSetPicture, {"read", "set", "drive"}),
}  # fmt: skip


@pytest.mark.slow
@pytest.mark.parametrize("task", CASES)
def test_of_six_one_is_right_one_wrong_in_each_way_and_the_letters_are_ones_own(task):
    seen, asked, faults, _, lines = CASES[task]
    letters = set()
    for n in range(40):
        one = given(n)
        found = [faults(row) for row in seen(one)]
        assert sorted(map(len, found)) == [0, 1, 1, 2, 2, 2]
        assert len({kind for kind in found if len(kind) == 1}) == 2
        assert [row.letter for row in seen(one)] == list("ABCDEF")
        assert {line.id for line in asked(one)} == lines
        letters.add(tuple(found.index(kind) for kind in sorted(set(found))))
        assert seen(one) != seen(given(n, attempt=2))
    assert len(letters) > 20


@pytest.mark.parametrize("task", CASES)
def test_pictures_differ_to_eye_and_hand_and_say_no_verdict(task):
    seen, _, faults, picture, _ = CASES[task]
    for n in range(12):
        shown = [picture(row) for row in seen(given(n))]
        felt = [one.felt for one in shown]
        assert len(set(felt)) == len({one.svg for one in shown}) == 6
        for one, row in zip(shown, seen(given(n)), strict=True):
            assert not re.search(VERDICTS, one.felt), one.felt
            assert not any(f">{word}<" in one.svg for word in faults(row))
            assert len(one.svg) < 6500 and one.spots == (("", one.felt),)
