"""What several modules ask in pictures of the unit: put in, looked at, pointed at; own for each."""

from collections import Counter

import pytest

from twoshaft.jobsheet.kinds import UnitAsker
from twoshaft.models import shape
from twoshaft.models.shape.felt import form_felt, way_felt
from twoshaft.models.shape.scene import solids_of
from twoshaft.plots.unit_scene import look_pictures, near_picture, put_in
from twoshaft.readings import Stream, given_in, issue_record
from twoshaft.readings.scenes import hand_scene, held_in, lies_in, looks_in_turn
from twoshaft.units import load_unit
from twoshaft_grader.marking.kinds import Reference, judge_of

UNIT = load_unit("tarnbeck-b5")
RINGS = ("diff-rear-ring", "diff-shim", "input-seal")


def given(module, who, unit=UNIT):
    record = issue_record(module, unit, salt="pictures", learner=who, attempt=1)
    return given_in(module, record["given"])


def hand(who):
    taken = [one.parts[0] for one in (*shape.outer_rings(UNIT), *shape.thin_rings(UNIT))]
    return hand_scene(UNIT, Stream("salt", who, "module", 1), "shafts", RINGS, taken)


def looks(who):
    listed = shape.listed_misbuilds(UNIT)
    stream = Stream("salt", who, "module", 1)
    return looks_in_turn(UNIT, stream, listed, [*listed, *shape.thin_rings(UNIT)])


def where(one):
    places = {place.letter: (place.z_mm, place.height_mm) for place in one.places}
    view = one.near.scene.view
    return {part: shape.where_put(UNIT, view, lie, places) for part, lie in held_in(one).items()}


def test_parts_in_hand_have_one_place_each_and_a_way_that_differs_from_learner_to_learner():
    keys = Counter()
    for who in map(str, range(12)):
        right = where(hand(who))
        assert len({letter for letter, _ in right.values()}) == len(RINGS)
        assert right["diff-shim"][1] == "12" and right["input-seal"][1] in ("1", "2")
        keys[tuple(sorted(right.items()))] += 1
    assert max(keys.values()) == 1


def test_a_picture_to_put_into_shows_neither_part_nor_name_nor_way():
    one = hand("one")
    field = UnitAsker(UNIT).ask("put", "where", "Where?", **put_in(UNIT, one))
    told = field.told()
    assert set(told["at"]) == {letter for letter, _ in told["places"]}
    for part in (*one.parts, *one.near.scene.lies):
        assert f'"{part.part}"' not in told["svg"] and "tss-part tsu-absent" not in told["svg"]
    felt = dict(told["places"])
    assert len(set(felt.values())) == len(felt)  # a hand tells every seat from the others
    assert told["pieces"]["diff-shim"][0][0] == told["pieces"]["diff-shim"][1][0]


def test_luck_earns_little_where_rings_are_put_in():
    field = UnitAsker(UNIT).ask("put", "where", "Where?", **put_in(UNIT, hand("one")))
    right = {
        part: {f"{at}-{way}" for way in ways} for part, (at, ways) in where(hand("one")).items()
    }
    reference = Reference("where", right, "o", 1.0, None, True, (), "")
    spread = judge_of(field).spread(field, reference)
    assert sum(share * chance for share, chance in spread) <= 0.05


def test_four_looks_are_right_turned_twice_and_left_out_once():
    places = Counter()
    for who in map(str, range(8)):
        found = looks(who)
        how = [min(shape.what_is_wrong(UNIT, one.near.scene.view, lies_in(one.near.scene)).values(),
                   default="right") for one in found]  # fmt: skip
        assert Counter(how) == {"right": 1, "turned": 2, "missing": 1}
        places[tuple(how), found[0].near.scene.mirrored, found[0].near.scene.upside] += 1
        pictures = look_pictures(UNIT, found)
        assert len({one.svg for one in pictures.values()}) == 4
        assert len({str(sorted(one.spots)) for one in pictures.values()}) == 4  # felt too
    assert len(places) >= 5


def test_pictures_are_told_apart_by_how_they_are_built():
    found = looks("one")
    lies = {one.letter: (one.near.scene.view, lies_in(one.near.scene)) for one in found}
    built = shape.built_how(UNIT, lies)
    assert {how: len(letters) for how, letters in built.items()} == {
        "right": 1, "turned": 2, "missing": 1
    }  # fmt: skip
    assert set().union(*built.values()) == {one.letter for one in found}


def test_parts_that_are_left_out_altogether_have_neither_place_nor_letter():
    taken = [one.parts[0] for one in (*shape.outer_rings(UNIT), *shape.thin_rings(UNIT))]
    stream = Stream("salt", "one", "module", 1)
    bare = hand_scene(UNIT, stream, "shafts", RINGS, taken, without=["ring-gear", "speed-gear"])
    shown = {lie.part for lie in bare.near.scene.lies}
    assert not shown & {"ring-gear", "speed-gear"} and "input-shaft" in shown


@pytest.mark.slow
def test_the_bench_does_not_ask_what_its_pictures_show():
    for n in range(4):
        one = given("whole-build", str(n))
        asked = {id.removeprefix("way-") for id in one.bench.asked}
        ways = {two for two in shape.listed_misbuilds(UNIT) if two.id.partition("/")[0] in asked}
        parts = {part for two in ways for part in two.parts}
        held = {row.part for row in one.ways.into.parts}
        assert parts and not parts & (held | {lie.part for lie in one.ways.into.near.scene.lies})


def test_where_little_is_drawn_nothing_is_asked():
    assert hand_scene(UNIT, Stream("s", "a", "m", 1), "shafts", ("no-such",), ()) is None
    turned = [one for one in shape.listed_misbuilds(UNIT) if one.how == "turned"]
    assert looks_in_turn(UNIT, Stream("s", "a", "m", 1), turned[:1], turned) is None


CASES = {
    "order-of-work": lambda one: (one.next_steps.half, one.buried.scene),
    "shims-and-preload": lambda one: one.trial.into,
    "strip-mark-clean": lambda one: (one.apart.half, one.marks.back),
    "reading-faults": lambda one: one.alike.looks,
    "gear-train-and-checks": lambda one: (one.which.where, one.cone.looks),
    "shift-and-lockout": lambda one: (one.symptoms.where, one.unseen.looks),
    "close-out": lambda one: (one.leak.foam, one.road.looks),
    "threaded-joints": lambda one: (one.face.seen, one.pattern.seen),
    "measuring-and-tools": lambda one: (one.depth.looks, one.dial.set_ups),
    "sealant-film": lambda one: (one.holes.rows, one.edge.seen),
    "whole-build": lambda one: (one.ways.into, one.late.looks),
}


@pytest.mark.slow
@pytest.mark.parametrize("module", CASES)
def test_every_learner_is_asked_and_no_two_see_the_same(module):
    seen = [CASES[module](given(module, str(n))) for n in range(6)]
    assert all(all(one) if isinstance(one, tuple) else one for one in seen)
    assert len({str(one) for one in seen}) == 6


@pytest.mark.slow
@pytest.mark.parametrize("module", [one for one in CASES if one != "reading-faults"])
def test_a_unit_with_shapes_of_its_own_asks_in_pictures_every_learner(module):
    unit = load_unit("tarnbeck-k6")
    for n in range(5):
        seen = CASES[module](given(module, str(n), unit))
        assert all(seen) if isinstance(seen, tuple) else seen


def test_halves_of_a_ball_bearing_are_told_by_track_and_edge():
    unit = load_unit("tarnbeck-k6")
    for part, form, way in (
        ("output-rear-ring", "a ring with a round track that is open on one side", "left"),
        ("output-front-ring", "a ring with a round track that is open on one side", "right"),
        ("diff-rear-cone", "a ring with balls round it", "left"),
    ):
        own, home = solids_of(unit, "shafts", part), shape.lie_of(unit, "shafts", part).heavy
        edge = "thick edge of its ring" if part.endswith("cone") else "open side of its track"
        assert form_felt(unit, own) == form
        assert way_felt(unit, own, home, home, "front") == f"the {edge} to the {way}"
        turned = {"front": "rear", "rear": "front"}[home]
        assert way_felt(unit, own, turned, home, "rear") == f"the {edge} to the {way}"


@pytest.mark.slow
def test_wheels_are_pointed_at_on_a_schematic_too():
    unit = load_unit("tarnbeck-k6").with_sections(shapes=None)
    asked = given("gear-train-and-checks", "one", unit).which.where
    assert len(asked.lines) == 3 and near_picture(unit, asked.near).svg.count("data-mark=") >= 6
    assert given("shift-and-lockout", "one", unit).symptoms.where is None
