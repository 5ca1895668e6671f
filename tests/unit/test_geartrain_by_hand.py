"""What one hand turns, side-gear play, worn rings, and counts that mistake gears."""

import math
from fractions import Fraction
from itertools import combinations

import pytest

from twoshaft.errors import OutOfRangeError
from twoshaft.models import geartrain
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q

ONE, BOTH = "one output, the other held", "both outputs, averaged"


@pytest.fixture(scope="module")
def train():
    return load_unit("tarnbeck-b5").gear_train


def test_turned_from_either_end_the_ratio_is_the_same(train):
    for gear in train.gears:
        there = geartrain.turns(train, [gear.id], ["right-output"])["left-output"]
        back = geartrain.turns(train, [gear.id], ["right-output"], by="left-output")["input-shaft"]
        assert there * back == 1


def test_what_nothing_drives_stands_still(train):
    found = geartrain.turned_by_hand(train, [])
    assert found.pop("input-shaft") == 1 and set(found.values()) == {0}
    found = geartrain.turned_by_hand(train, ["second", "fifth"], by="left-output")
    assert found["right-output"] == -1 and found["differential-case"] == 0


def test_a_locked_shaft_is_refused(train):
    with pytest.raises(OutOfRangeError, match="lets the input turn"):
        geartrain.turned_by_hand(train, ["second", "fifth"])
    with pytest.raises(OutOfRangeError, match="nowhere"):
        geartrain.turns(train, ["second"], by="nowhere")


def test_a_loose_gear_follows_its_mate(train):
    mesh = next(m for m in train.meshes if m.loose)
    still = dict.fromkeys(train.shafts, Fraction(0)) | {mesh.driving.shaft: Fraction(1)}
    one, other = geartrain.gear_turns(mesh, still)
    assert one * mesh.driving.teeth == -other * mesh.driven.teeth


def test_sleeves(train):
    assert geartrain.one_sleeve(train, ["first", "second"])
    assert not geartrain.one_sleeve(train, ["second", "fifth"])


def test_pitch_circles_share_the_distance_as_the_teeth_do(train):
    for mesh in train.meshes:
        one, other = (r.m_as("mm") for r in geartrain.pitch_radii(train, mesh))
        assert one / other == pytest.approx(mesh.driving.teeth / mesh.driven.teeth)
        shafts = {mesh.driving.shaft, mesh.driven.shaft}
        for distance in train.distances:
            if set(distance.between) == shafts:
                assert one + other == pytest.approx(distance.mm)


def test_wear_and_gap_are_each_other_the_other_way_round():
    new, angle = Q(1.2, "mm"), Q(6.5, "degree")
    for wear in (0.0, 0.03, 0.09):
        gap = geartrain.gap_after_wear(new, Q(wear, "mm"), angle)
        assert geartrain.wear_from_gap(new, gap, angle).m_as("mm") == pytest.approx(wear)
    # A cone that slides along its axis by 1 mm sinks by its sine, square to its face.
    worn = geartrain.wear_from_gap(Q(2, "mm"), Q(1, "mm"), angle)
    assert worn.m_as("mm") == pytest.approx(math.sin(math.radians(6.5)))


@pytest.mark.parametrize(
    ("readings", "said"),
    [
        ([1.1, 1.15, 1.1], "good"),
        ([0.55, 0.45, 0.5], "worn"),
        ([1.6, 1.65, 1.6], "away"),
        ([0.6, 1.05, 0.8], "tilted"),
        ([0.4, 0.9, 0.6], "tilted"),
        ([0.5, 0.5, 0.5], "good"),
    ],
)
def test_what_gaps_say(train, readings, said):
    ring = next(one for one in train.synchronisers if one.id == "hub-fifth")
    found = geartrain.gap_says(ring, [Q(mm, "mm") for mm in readings], Q(0.05, "mm"))
    assert found == said


def test_washers_that_are_right_whatever_the_doubt(train):
    section = train.differential.side_gear_play
    low, high = section.play_mm
    for play in (0.02, 0.2, 0.33):
        fits = geartrain.right_washers(section, Q(play, "mm"), Q(0.95, "mm"), Q(0.01, "mm"))
        for thick in section.washers_mm:
            worst = [play + off + 0.95 - thick for off in (-0.01, 0.01)]
            inside = all(low - 1e-9 <= one <= high + 1e-9 for one in worst)
            assert inside == (thick in fits)


def test_the_other_output():
    assert geartrain.other_output(Q(1, "turn"), Q(0, "turn")).m_as("turn") == 2
    assert geartrain.other_output(Q(0, "turn"), Q(90, "degree")).m_as("turn") == -0.25


@pytest.mark.parametrize("counted", [ONE, BOTH])
def test_mistaken_pairs_are_those_that_more_turns_tell_apart(train, counted):
    for turns, step in ((1, 0.25), (1, 0.5), (2, 0.5), (1, 1.0)):
        wrong = geartrain.mistaken(train, turns, counted, step)
        for pair in combinations([gear.id for gear in train.gears], 2):
            need = geartrain.tells_apart(train, *pair, counted, step)
            assert (pair in wrong) == (need > turns)


def test_the_nearest_gear_is_the_one_counted(train):
    for gear in train.gears:
        seen = geartrain.count_turns(train, gear.id, 2, ONE).seen
        assert geartrain.nearest_gear(train, seen, 2, ONE) == gear.id


def test_another_wheel_changes_one_ratio(train):
    other = geartrain.with_wheel(train, "mesh-third", "driven", 38)
    assert geartrain.ratio(other, "third", to="output-shaft") == Fraction(-38, 29)
    assert geartrain.ratio(other, "second") == geartrain.ratio(train, "second")
    with pytest.raises(OutOfRangeError, match="mesh-ninth"):
        geartrain.with_wheel(train, "mesh-ninth", "driven", 38)


@pytest.mark.parametrize("share", [Fraction(0), Fraction(1, 4), Fraction(1, 2), Fraction(1)])
def test_free_wheels_share_twice_the_turns_of_the_case(train, share):
    found = geartrain.turned_by_hand(train, ["first"], left_share=share)
    case, left, right = (
        found[shaft] for shaft in ("differential-case", "left-output", "right-output")
    )
    assert case != 0
    assert (left, right) == (2 * case * share, 2 * case * (1 - share))
