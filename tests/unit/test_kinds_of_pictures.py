"""Answers given in pictures of the unit: pointed at, chosen, put in; none of them gives a key away."""

import re
from dataclasses import replace

import pytest
from shapely import Point, Polygon

from twoshaft.errors import AnswerError
from twoshaft.jobsheet.kinds import UnitAsker
from twoshaft.models.shape import lie_of, lying, views_of_parts
from twoshaft.plots.unit_scene import ScenePicture
from twoshaft.readings import Stream
from twoshaft.readings.scenes import Scene, lies_row, scene_of
from twoshaft.records import from_json, to_json
from twoshaft.units import load_unit
from twoshaft_grader.marking import line_reasons
from twoshaft_grader.marking.kinds import Reference, judge, judge_of

UNIT = load_unit("tarnbeck-b5")
MARGIN_PX = 44  # above the picture, for letters
SPOTS = ("output-front-ring", "bore-plug", "input-seal", "diff-front-ring", "ring-gear")


def given(who="one", lies=None, spots=SPOTS, without=("bore-plug",)):
    there = [part.id for part in UNIT.parts if part.id not in without]
    return scene_of(UNIT, Stream("salt", who, "module", 1), "shafts", there, spots, lies)


def asked(kind, who="one", **arguments):
    return UnitAsker(UNIT).ask(kind, "where", "Where?", **arguments)


def pointed(who="one"):
    scene = given(who)
    lines = [("seat", "Where the plug belongs"), ("over", "What has no seat without it")]
    field = asked("point", picture=ScenePicture(UNIT, scene), lines=lines)
    right = {"seat": scene.letter("bore-plug"), "over": scene.letter("output-front-ring")}
    options = list(field.options)
    slips = line_reasons(
        lines, options, right, {}, {letter: "Look again." for letter, _ in options}
    )
    return field, Reference("where", right, "o", 1.0, None, True, tuple(slips), ""), scene


def test_a_place_is_read_told_and_judged_like_any_line():
    field, reference, _ = pointed()
    right = [f"{line}={letter}" for line, letter in reference.value.items()]
    assert judge(field, reference, field.read(right)).share == 1
    assert field.told()["svg"].startswith("<svg") and "picture" not in field.told()
    assert field.words(right).count(";") == 1
    for bad in ("seat=A", ["seat=Z"], ["roof=A"], [3], {"seat": "A"}):
        with pytest.raises(AnswerError):
            field.read(bad)
    assert list(judge_of(field).unexplained(field, reference)) == []


def test_luck_earns_little_and_a_friends_letters_are_others():
    field, reference, _ = pointed()
    spread = judge_of(field).spread(field, reference)
    assert sum(share * chance for share, chance in spread) <= 0.05
    keys = {tuple(pointed(str(n))[1].value.values()) for n in range(20)}
    assert len(keys) > 8
    sides = {(one.mirrored, one.upside) for one in (given(str(n)) for n in range(20))}
    assert len(sides) == 4


def test_neither_picture_nor_words_name_a_part():
    field, _, scene = pointed()
    told = str(field.told())
    for part in UNIT.parts:
        # box names aside, nothing of the unit file's own words is in what the browser gets
        assert part.name not in told
        assert not re.search(rf"\b{re.escape(part.id)}\b", told), part.id
    assert not re.search(r"wrong|turned over|should|belongs|mistake", str(field.options))
    assert set(re.findall(r'data-spot="(\w)"', field.told()["svg"])) == {s.id for s in scene.spots}


def test_words_say_what_a_hand_would_feel_from_the_learners_side():
    lie = lie_of(UNIT, "shafts", "input-seal")
    turned = replace(lie, heavy="rear")
    for who in map(str, range(4)):
        scene = given(who)
        as_is = dict(ScenePicture(UNIT, scene).spots)[scene.letter("input-seal")]
        scene = given(who, {"input-seal": turned})
        other = dict(ScenePicture(UNIT, scene).spots)[scene.letter("input-seal")]
        side = "left" if scene.mirrored else "right"  # the lip faces the gears, at the rear
        assert f"its lip to the {side}" in as_is and f"its lip to the {side}" not in other
        empty = dict(ScenePicture(UNIT, scene).spots)[scene.letter("bore-plug")]
        assert empty.startswith("an empty place for a turned disc")


def test_a_part_that_lies_otherwise_is_drawn_there():
    home = lie_of(UNIT, "shafts", "diff-front-ring")
    moved = replace(home, z_mm=(home.z_mm[0] + 3, home.z_mm[1] + 3))
    (one,), (other,) = (lying(UNIT, "shafts", [lie])["diff-front-ring"] for lie in (home, moved))
    assert other.bounds[0] == pytest.approx(one.bounds[0] + 3)
    turned = lying(UNIT, "shafts", [replace(home, heavy="rear")])["diff-front-ring"][0]
    assert turned.bounds == pytest.approx(one.bounds) and turned.pieces != one.pieces
    small = lying(UNIT, "shafts", [replace(home, reach_mm=home.reach_mm / 2)])["diff-front-ring"][0]
    assert small.bounds[3] - small.bounds[1] == pytest.approx((one.bounds[3] - one.bounds[1]) / 2)


def test_the_letter_of_an_empty_place_stands_beside_what_stands_there():
    inner = ("planet-pin-lock", "planet-pin", "diff-gears", "diff-bearings")
    for who in map(str, range(4)):
        scene = given(who, spots=("diff-carrier", *inner), without=("diff-carrier",))
        svg = ScenePicture(UNIT, scene).svg
        mark = re.search(rf'data-mark="{scene.letter("diff-carrier")}">.*?L([\d.]+) ([\d.]+)"', svg)
        at = Point(float(mark[1]) - 1, float(mark[2]) - MARGIN_PX)
        for part in inner:
            group = re.search(rf'data-spot="{scene.letter(part)}">(.*?)</g></g>', svg)[1]
            for line in re.findall(r"M([^MZ]+)Z", group):
                corners = [tuple(map(float, one.split())) for one in line.split("L")]
                assert not Polygon(corners).contains(at), (who, part)


def test_a_scene_is_stored_and_is_small():
    scene = given()
    assert from_json(Scene, to_json(scene), "scene") == scene
    assert len(ScenePicture(UNIT, scene).svg) < 300_000


def test_a_wrong_place_is_shown_beside_the_right_one():
    field, reference, scene = pointed()
    wrong = {**reference.value, "seat": scene.letter("ring-gear")}
    drawn = judge_of(field).drawn(field, reference, wrong, UNIT)
    assert ">yours 1<" in drawn and ">right 1<" in drawn and ">right 2<" in drawn


def test_one_of_several_pictures_is_chosen():
    lie = lie_of(UNIT, "shafts", "input-seal")
    scenes = {letter: given("x", {"input-seal": replace(lie, heavy=heavy)})
              for letter, heavy in (("P", "front"), ("Q", "rear"))}  # fmt: skip
    pictures = {letter: ScenePicture(UNIT, scene) for letter, scene in scenes.items()}
    field = asked("picture", pictures=pictures, lines=[("whole", "Fitted as it belongs")])
    reference = Reference("where", {"whole": "P"}, "o", 1.0, None, False, (), "")
    assert judge(field, reference, field.read(["whole=P"])).share == 1
    assert judge(field, reference, field.read(["whole=Q"])).share == 0
    assert set(field.told()["svgs"]) == {"P", "Q"}
    assert judge_of(field).drawn(field, reference, {"whole": "Q"}, UNIT) == pictures["P"].svg
    assert dict(field.options)["P"] != dict(field.options)["Q"]


def test_a_part_is_put_in_its_place_and_its_way_round():
    scene = given(without=("bore-plug", "input-seal"))
    picture = ScenePicture(UNIT, scene)
    lie = lie_of(UNIT, "shafts", "input-seal")
    pieces = {"seal": picture.pieces("input-seal", replace(lie, heavy="rear"))}
    field = asked("put", picture=picture, lines=[("seal", "The ring in hand")], pieces=pieces,
                  at=picture.places())  # fmt: skip
    letter = scene.letter("input-seal")
    reference = Reference("where", {"seal": f"{letter}-2"}, "o", 1.0, None, True, (), "")
    assert judge(field, reference, field.read([f"seal={letter}-2"])).share == 1
    assert judge(field, reference, field.read([f"seal={letter}-1"])).share == 0
    assert len(field.options) == 2 * len(SPOTS)
    drawn = judge_of(field).drawn(field, reference, {"seal": f"{letter}-1"}, UNIT)
    assert 'class="tss-put"' in drawn
    with pytest.raises(ValueError, match="both ways round"):
        asked("put", picture=picture, lines=[("seal", "x")], pieces={}, at={})


def test_a_schematic_has_places_too():
    bare = UNIT.with_sections(shapes=None)
    (view,) = views_of_parts(bare)["input-seal"]
    parts = [part.id for part in bare.parts]
    scene = scene_of(bare, Stream("s", "a", "m", 1), view, parts, SPOTS)
    picture = ScenePicture(bare, scene)
    assert len(picture.spots) == len(SPOTS) and len(picture.svg) < 300_000
    assert "Dished plug" in picture.svg  # a box has its name alone
    assert lies_row(lie_of(bare, view, "input-seal")).heavy == ""
