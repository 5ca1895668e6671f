"""The lamp and the reading beside its limit: what they show follows the models."""

import re
import xml.etree.ElementTree as ET
from itertools import combinations

import pytest

from twoshaft.errors import CourseError
from twoshaft.models.inspect import (
    FLANK,
    NAMES,
    RACE,
    WEAR_MM,
    WEARS,
    chance_beyond,
    felt,
    flank_damage,
    found_on,
    guard_band,
    judged,
    marks_of,
    race_damage,
    ways_cost,
    worn_of,
)
from twoshaft.models.inspect.worn import WIDE_MM
from twoshaft.rigs import guard_rig, lamp
from twoshaft.rigs.inspect import AGAIN_H, LIMIT_MM, LOOK_H, RENEW_H
from twoshaft.units.quantities import Q

PARTS = {"race": (RACE, race_damage), "flank": (FLANK, flank_damage)}
EVERY = [(part, damage) for part, (kinds, _) in PARTS.items() for damage in kinds]


def set_to(rig, **change):
    rig.hear({"type": "set", "state": {**rig.shown["state"], **change}, "turn": "t"})
    return rig.shown


def drawn(part, damage):
    """What is drawn of a kind of damage, without any colour of its own."""
    picture = set_to(lamp(part), damage=damage)["drawing"]
    body = re.sub(r"<style>.*?</style>", "", picture).replace("tsd-rust", "tsd-dull")
    return re.sub(r' aria-label="[^"]*"', "", body)


@pytest.mark.parametrize(("part", "damage"), EVERY)
def test_each_kind_is_drawn_named_and_said(part, damage):
    shown = set_to(lamp(part), damage=damage, size=3.4, at=22)
    marks = marks_of(damage, 3.4, 22, seed=7)
    assert PARTS[part][1](marks) == damage  # the signs are those by which it is told
    assert shown["finding"] == f"{NAMES[damage]}: {felt(marks)}."
    picture = ET.fromstring(shown["drawing"])
    assert picture.get("aria-label") == shown["words"] == felt(marks)
    assert NAMES[damage] not in shown["drawing"]  # no picture names its damage
    assert shown["turn"] == "t"


@pytest.mark.parametrize("part", PARTS)
def test_kinds_are_told_apart_without_colour(part):
    kinds = PARTS[part][0]
    pictures = {damage: drawn(part, damage) for damage in kinds}
    shapes = {damage: {one.shape for one in marks_of(damage, 3, 30, seed=7)} for damage in kinds}
    for one, other in combinations(kinds, 2):
        assert pictures[one] != pictures[other]
        # where two are of the same shapes, their places or sizes tell: the hand finds another thing
        if shapes[one] == shapes[other]:
            words = [felt(marks_of(kind, 3, 30, seed=7)) for kind in (one, other)]
            assert words[0] != words[1], (one, other)


@pytest.mark.parametrize("part", PARTS)
def test_size_and_place_change_the_picture_and_stay_within_their_ends(part):
    rig = lamp(part)
    seen = {set_to(rig, size=size, at=at)["drawing"] for size in (1, 5) for at in (15, 45)}
    assert len(seen) == 4
    largest = set_to(rig, size=5, at=45)["drawing"]
    assert set_to(rig, size=500, at=900)["drawing"] == largest
    smallest = set_to(rig, size=1, at=15)["drawing"]
    assert set_to(rig, size=-500, at=-900)["drawing"] == smallest


def test_what_is_no_part_and_no_damage_is_refused():
    with pytest.raises(CourseError, match="no part 'shaft' lies under the lamp"):
        lamp("shaft")
    with pytest.raises(CourseError, match="damage"):
        set_to(lamp("race"), damage="scuffing")


def test_a_lamp_has_a_copy_in_words_for_paper():
    rig = lamp("flank")
    copy = rig.plain_copy()
    assert copy.startswith("<svg") and rig.shown["words"] in copy and NAMES["macropitting"] in copy


@pytest.mark.parametrize(
    ("reading", "said"), [(4.95, "proven bad"), (5.02, "not proven"), (5.05, "proven good")]
)
def test_the_verdict_follows_the_guard_band(reading, said):
    shown = set_to(guard_rig(), reading=reading, u=0.02)
    assert f"The part is {said}" in shown["finding"]
    band = guard_band(Q(0.02, "mm")).m_as("mm")
    assert f"guard band {band:.3f} mm" in shown["words"] and f"{reading:.3f}" in shown["words"]
    ET.fromstring(shown["drawing"])


def test_a_surer_reading_proves_what_an_unsure_one_does_not():
    rig = guard_rig()
    assert "not proven" in set_to(rig, reading=5.03, u=0.03)["finding"]
    assert "proven good" in set_to(rig, u=0.01)["finding"]


@pytest.mark.parametrize(
    ("state", "best", "chance"),
    [
        ({"reading": 5.1, "u": 0.01, "again": 40}, "use it", "less than 0.1 %"),
        ({"reading": 4.9, "u": 0.01, "again": 40}, "renew it", "more than 99.9 %"),
        ({"reading": 5.02, "u": 0.02, "again": 40}, "measure it surely first", "15.9 %"),
    ],
)
def test_the_cheapest_way_is_the_models(state, best, chance):
    shown = set_to(guard_rig(), **state)
    bad = chance_beyond(
        Q(state["reading"], "mm"), Q(LIMIT_MM, "mm"), Q(state["u"], "mm"), least=True
    )
    ways = ways_cost(bad, RENEW_H, state["again"], LOOK_H)
    assert shown["finding"].endswith(f": {best}.")
    assert f"the chance that it is bad is {chance}. " in shown["finding"]
    for hours in ways.values():
        assert f"{hours:.1f} h" in shown["finding"]


def test_sliders_of_the_guard_keep_their_ends():
    rig = guard_rig()
    assert set_to(rig, again=1e9)["finding"] == set_to(rig, again=AGAIN_H[1])["finding"]
    assert "Reading 5.100 mm" in set_to(rig, reading=99)["words"]
    assert "Reading 4.900 mm" in set_to(rig, reading=-99)["words"]


WORN = [(part, kind) for part, kinds in WEARS.items() for kind in kinds]


@pytest.mark.parametrize(("part", "kind"), WORN)
def test_a_worn_part_is_drawn_as_it_is_read_and_judged_by_it(part, kind):
    rig = lamp(part)
    seen = set()
    for step in range(int(10 * WEAR_MM[part]) + 1):
        shown = set_to(rig, kind=kind, wear=step / 10, at=1.3)
        worn = worn_of(part, kind, step / 10, 1.3)
        picture = ET.fromstring(shown["drawing"])
        assert picture.get("aria-label") == shown["words"] == found_on(worn)
        good, why = judged(worn)
        assert shown["finding"].endswith(f"{'Use it again' if good else 'Renew it'}: {why}.")
        seen.add((good, shown["drawing"]))
    assert {good for good, _ in seen} == {True, False}  # new it goes in, worn it does not
    assert len({drawing for _, drawing in seen}) > (2 if kind != "coil" else 1)


@pytest.mark.parametrize(("part", "kind"), WORN)
def test_what_is_drawn_of_a_worn_part_reaches_as_far_as_is_said(part, kind):
    """The edges that are read are corners of what is drawn, and move with the place."""
    worn = worn_of(part, kind, 0.4, 2.0)
    corners = {round(x, 6) for one in worn.outlines for x, _ in one}
    for name, low, high in worn.reaches:
        assert {round(low, 6), round(high, 6)} <= corners, name
    moved = worn_of(part, kind, 0.4, 0.5)
    assert moved.sizes_mm() == worn.sizes_mm()
    assert moved.reaches[0][1] == pytest.approx(worn.reaches[0][1] - 1.5)
    width = max(corners)
    assert width < WIDE_MM[part] and min(corners) > 0


@pytest.mark.parametrize(
    ("part", "kind", "last", "next_"),
    [
        ("sleeve", "points", 0.5, 0.51),
        ("sleeve", "side", 0.5, 0.51),
        ("hub", "notch", 0.2, 0.21),
        ("key", "ridge", 0.5, 0.51),
        ("fork", "pads", 1.0, 1.01),
        ("fork", "pad", 0.5, 0.51),
        ("spring", "length", 1.0, 1.01),
        ("spring", "coil", 0.0, 0.01),
        ("key", "end", 0.0, 0.01),
    ],
)
def test_a_worn_part_is_renewed_beyond_its_limit_and_not_before(part, kind, last, next_):
    assert judged(worn_of(part, kind, last, 1.0))[0]
    good, why = judged(worn_of(part, kind, next_, 1.0))
    assert not good and why


def test_worn_parts_are_told_apart_by_what_is_read():
    sentences = {
        judged(worn_of(part, kind, WEAR_MM[part], 1.0))[1]
        for part, kind in WORN
        if (part, kind) != ("sleeve", "side")
    }
    assert len(sentences) == len(WORN) - 1
    middle, side = (worn_of("sleeve", kind, 0.8, 1.0) for kind in ("points", "side"))
    assert middle.outlines != side.outlines and found_on(middle) != found_on(side)
