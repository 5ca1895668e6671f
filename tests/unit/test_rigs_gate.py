"""Gate rig: what the hand does to it, what it shows, what it says."""

import re

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.plots.gate import mechanism_figure, transforms
from twoshaft.rigs import gate_rig
from twoshaft.units import load_unit

FIFTH = "at:gate-fifth-reverse"


@pytest.fixture
def rig(unit):
    return gate_rig(unit)


def move(rig, *codes):
    for code in codes:
        rig.hear({"type": "move", "code": code})


def test_fifth_goes_in_and_the_direct_shift_is_stopped_by_the_plate(rig):
    move(rig, FIFTH, "turn:high")
    assert rig.finding == "Fifth is in."
    move(rig, "turn:low")
    assert "stopped by the lockout plate" in rig.view["happened"]
    assert rig.finding == "No gear is in."
    assert len(rig.view["log"]) == 3


def test_with_a_misbuild_it_goes_straight_through(rig):
    rig.hear({"type": "build", "build": "finger-pin-not-home"})
    move(rig, FIFTH, "turn:high", "turn:low")
    assert rig.finding == "Reverse is in."
    assert 'data-body="lock-peg"' not in rig.figure


def test_keys_move_the_hand_a_millimetre_and_say_what_stops_it(rig):
    rig.hear({"type": "nudge", "travel": 1, "turned": 0})
    assert rig.view["hand"] == [1.0, 0.0]
    for _ in range(20):
        rig.hear({"type": "nudge", "travel": 1, "turned": 0})
    assert rig.view["happened"] == "That is as far as the hand goes."
    rig.hear({"type": "reset"})
    for _ in range(9):
        rig.hear({"type": "nudge", "travel": 0, "turned": 1})
    assert rig.finding == "Third is in."
    for _ in range(6):
        rig.hear({"type": "nudge", "travel": -1, "turned": 0})
    assert "rail of first and second" in rig.view["happened"]


def test_pulling_follows_the_pointer(rig):
    rig.hear({"type": "pull", "travel_mm": 10.2, "turn_mm": 0.1})
    assert rig.view["hand"] == [10.0, 0.0]
    rig.hear({"type": "pull", "travel_mm": 10.0, "turn_mm": 8.0})
    assert rig.finding == "Fifth is in."
    rig.hear({"type": "pull", "travel_mm": 10.0, "turn_mm": -8.0})
    assert rig.view["happened"] == "Stopped by the lockout plate."


def test_every_moving_part_of_the_figure_is_told_where_it_is(rig, unit):
    for misbuild in (None, *(m.id for m in unit.shift.misbuilds)):
        rig.hear({"type": "build", "build": misbuild or "sound"})
        drawn = set(re.findall(r'data-body="([^"]+)"', rig.figure))
        ridden = set(re.findall(r'data-rides="([^"]+)"', rig.figure))
        assert drawn and drawn | ridden <= set(rig.view["moved"]), misbuild


def test_the_figure_is_to_scale(rig):
    """The finger's drawn width is its own in mm times the scale that the panel states."""
    scale = float(re.search(r'data-scale="([^"]+)"', rig.figure).group(1))
    group = re.search(r'data-body="finger".*?points="([^"]+)"', rig.figure, re.S).group(1)
    xs = [float(point.split(",")[0]) for point in group.split()]
    assert max(xs) - min(xs) == pytest.approx(6 * scale, abs=0.2)
    bar = re.search(r"h([\d.]+)\"/>", rig.figure.split('class="tsg-frame" style')[1]).group(1)
    assert float(bar) == pytest.approx(5 * scale)


def test_no_drawn_part_overlaps_another_of_its_layer(rig):
    """What is drawn is what was worked out: rail and finger never cross in the picture."""
    move(rig, FIFTH, "turn:high")
    moved = transforms(rig.machine, rig.state)
    boxes = {}
    panel = rig.figure.split('data-layer="jaws"')[1].split('data-layer="lockout"')[0]
    for id, body in re.findall(r'data-body="([^"]+)"(.*?)</g>', panel, re.S):
        for points in re.findall(r'points="([^"]+)"', body):
            corners = [tuple(map(float, p.split(","))) for p in points.split()]
            x, y = zip(*corners, strict=True)
            dx, dy = moved[id]
            boxes.setdefault(id, []).append((min(x) + dx, max(x) + dx, min(y) + dy, max(y) + dy))
    (finger,) = boxes.pop("finger")
    for pieces in boxes.values():
        for box in pieces:
            apart_x = finger[1] <= box[0] + 0.2 or box[1] <= finger[0] + 0.2
            apart_y = finger[3] <= box[2] + 0.2 or box[3] <= finger[2] + 0.2
            assert apart_x or apart_y


def test_a_full_test_is_told_as_sentences(rig):
    rig.hear({"type": "prove"})
    assert rig.view["proof"] == "The direct shift from fifth to reverse is stopped."


def test_a_part_without_its_spring_lies_elsewhere_each_time(rig):
    rig.hear({"type": "build", "build": "lockout-spring-missing"})
    first = rig.places_mm["lockout-plate"]
    rig.hear({"type": "reset"})
    assert rig.places_mm["lockout-plate"] != first
    assert "No spring on the lockout plate" in rig.figure


def test_plain_copy_tells_finding_log_and_build(rig):
    move(rig, FIFTH, "turn:high")
    copy = rig.plain_copy()
    assert "Fifth is in." in copy and "Assembled correctly" in copy and "<svg" in copy
    assert "Slide to the gate plane of fifth and reverse" in copy
    assert "<script" not in copy


def test_a_lifted_collar_is_seen_and_told():
    rig = gate_rig(load_unit("tarnbeck-k6"))
    assert rig.plain_copy().count("tsg-up") == rig.figure.count("tsg-up")  # in its styles alone
    rig.hear({"type": "move", "code": "lift"})
    assert rig.view["lifted"] and "the collar under the knob lifted" in rig.view["title"]
    copy = rig.plain_copy()
    assert 'class="tsg-said tsg-up"><text' in copy and "lifted: it passes above" in copy
    rig.hear({"type": "move", "code": "lower"})
    assert "tsg-said tsg-up" not in rig.plain_copy() and not rig.view["lifted"]


def test_unknown_misbuilds_are_told(unit):
    with pytest.raises(UnitFileError, match="no assembly fault 'x'"):
        gate_rig(unit, ["x"])


def test_nonsense_from_the_browser_is_no_move(rig):
    before = rig.view["hand"]
    rig.hear({"type": "nudge", "travel": 1, "turned": 1})
    rig.hear({"type": "build", "build": "nothing"})
    rig.hear({"type": "dance"})
    assert rig.view["hand"] == before


def test_figures_of_every_misbuild_have_a_title(unit, rig):
    assert 'role="img"' in mechanism_figure(rig.machine, rig.state)
    assert "No gear is in" in mechanism_figure(rig.machine, rig.state)
