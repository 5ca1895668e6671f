"""A case that is split along its shafts: its halves, what is lowered into one, and how it comes apart."""

import math
import re
from itertools import pairwise

import pytest
import yaml
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import Point, Polygon

from twoshaft.models.audit import audit_shapes
from twoshaft.models.shape import (
    axis_places,
    bodies_of,
    build_shown,
    draft,
    exploded,
    in_the_way,
    open_side,
    section_of,
    space_of,
    stages_to_explode,
    step_shown,
    unnamed_blocks,
    witnessed,
)
from twoshaft.models.shape.frames import frames
from twoshaft.models.shape.halves import joint, out_of_joint
from twoshaft.models.shape.lowering import lowered_onto
from twoshaft.models.shape.pieces import PRESSED_MM
from twoshaft.models.shape.placed import convex_bodies
from twoshaft.models.shape.shells import shell_pieces
from twoshaft.plots.unit_section import step_marks, unit_figure
from twoshaft.units import load_unit
from twoshaft.units.sections.shapes import Half, Shapes, Shell

TRAIN = ["press-output-bearings", "press-input-bearings", "fit-select-circlip"]


@pytest.fixture(scope="module")
def unit():
    return load_unit("tarnbeck-c4")


def changed(unit, **solids):
    """The unit with solids of its shapes replaced by id, underscores for hyphens."""
    entries = unit.shapes.model_dump(by_alias=True, exclude_unset=True)
    more = {id.replace("_", "-"): one for id, one in solids.items()}
    entries["solids"] = [{**one, **more.pop(one["id"], {})} for one in entries["solids"]]
    entries["solids"] += [{"id": id, **one} for id, one in more.items()]
    return unit.with_sections(shapes=Shapes.model_validate(entries))


def without_rule(unit, earlier, later):
    kept = [one for one in unit.rules if (one.earlier, one.later) != (earlier, later)]
    assert len(kept) == len(unit.rules) - 1
    return unit.with_sections(rules=tuple(kept))


# the halves


def test_two_halves_make_the_whole_case_and_share_nothing():
    """A room of 40 by 100 with walls of 5, open in front, split 10 above its middle."""
    given = {"id": "case", "kind": "shell", "axis": "a", "z mm": [0, 60], "wall mm": 5,
             "rooms": [{"axis": "a", "z mm": [-10, 40], "radius mm": 50}]}  # fmt: skip
    areas = {}
    for side in ("above", "below", None):
        half = {"half": {"axis": "joint", "side": side}} if side else {}
        pieces = shell_pieces(Shell.model_validate(given | half), {"a": 7.0, "joint": -3.0})
        areas[side] = sum(Polygon(p.outline, p.holes).area for p in pieces)
    assert areas["above"] == pytest.approx(45 * 5 + 40 * 5)  # a wall, 40 of 100 of the floor
    assert areas["below"] == pytest.approx(45 * 5 + 60 * 5)
    assert areas["above"] + areas["below"] == pytest.approx(areas[None])


@pytest.mark.slow
def test_a_half_is_metal_in_space_where_its_section_is_cut_and_only_on_its_side(unit):
    places = axis_places(unit, unit.shapes)
    shafts = next(view for view in section_of(unit).views if view.id == "shafts")
    drawn = {one.solid.id: one for one in shafts.drawn}
    heights, seen = dict(shafts.axes), 0
    for half in ("lower-half", "top-half"):
        bodies = bodies_of(unit)[half]
        for body in bodies:
            ys = [y for _, y in body["outline"]]
            assert max(ys) <= 1e-6 if half == "lower-half" else min(ys) >= -1e-6
        for one, other in pairwise(heights):
            for share in (0.2, 0.35, 0.65, 0.8):
                at = [a + share * (b - a) for a, b in zip(places[one], places[other], strict=True)]
                y = heights[one] + share * (heights[other] - heights[one])
                for z in range(-1, 168, 3):
                    cut = drawn[half].area.buffer(-0.6).contains(Point(z + 0.3, y))
                    metal = any(
                        Polygon(body["outline"], body["holes"]).contains(Point(at))
                        for body in bodies
                        if body["z"][0] < z + 0.3 < body["z"][1]
                    )
                    seen += cut
                    assert metal or not cut, (half, one, other, share, z)
    assert seen > 20


@pytest.mark.parametrize(
    ("half", "said"),
    [
        ({"axis": "nowhere", "side": "above"}, "an axis in no view"),
        ({"axis": "output", "side": "above"}, "do not share one joint face"),
        ({"axis": "input", "side": "above", "angle deg": 5}, "do not share one joint face"),
        ({"axis": "input", "side": "below"}, "one the side above, the other the side below"),
    ],
)
def test_a_half_that_fits_no_other_is_refused(unit, half, said):
    with pytest.raises(ValueError, match=said):
        changed(unit, top_half={"half": half})


def test_the_draft_of_a_split_case_read_again_is_the_same(unit):
    assert Shapes.model_validate(yaml.safe_load(draft(unit))["shapes"]) == unit.shapes


def test_the_way_out_of_a_joint_is_square_to_it(unit):
    assert joint(unit).side == "below" and out_of_joint(joint(unit)) == pytest.approx((0, 1))
    assert joint(load_unit("tarnbeck-b5")) is None
    turned = out_of_joint(Half(axis="a", side="below", angle_deg=30))
    assert turned == pytest.approx((-0.5, math.sqrt(3) / 2))


def test_walls_beside_the_shell_are_in_space_where_they_say_how_thick_they_are(unit):
    (wall,) = bodies_of(unit)["lower-walls"]
    assert wall["kind"] == "slab" and wall["thick"] == 23  # the posts of the rails stand on it
    (bare,) = [one for one in load_unit("tarnbeck-b5").shapes.solids if one.id == "case-wall-front"]
    assert bare.thick_mm is None and not bodies_of(load_unit("tarnbeck-b5"))[bare.id]


# what is lowered


def test_shafts_that_lie_above_each_other_go_in_one_after_the_other(unit):
    assert in_the_way(unit, "lower-output", TRAIN) == ()
    met = in_the_way(unit, "lower-output", [*TRAIN, "lower-input"])
    assert {one.other.solid.part for one in met} == {"input-shaft"}
    assert in_the_way(unit, "lower-input", [*TRAIN, "lower-output"]) == ()


def test_nothing_goes_into_a_closed_case(unit):
    met = in_the_way(unit, "lower-input", [*TRAIN, "lower-output", "set-top-half"])
    assert {one.other.solid.id for one in met} == {"top-half"}
    assert in_the_way(unit, "fit-detents", [*TRAIN, "set-top-half"]) == ()


@pytest.mark.parametrize(
    ("step", "there", "met"),
    [
        # slabs: pads of forks, roof of the upper half, cover
        ("set-forks", ["set-top-half"], {("fork-reverse", "top-walls-front"),
                                         ("fork-low-below", "top-half")}),
        ("fit-idler", ["set-forks"], {("idler-shaft", "fork-reverse-pad")}),
        # pins, springs and plugs
        ("drop-interlocks", ["set-top-half"], {("interlock-front", "top-walls-front")}),
        ("drop-interlocks", ["set-forks"], set()),
        ("fit-detents", ["set-top-half", "slide-rails"], set()),  # through the holes of the roof
        ("fit-plunger", ["set-top-half"], set()),
        ("fit-plunger", ["set-top-half", "fit-top-cover"], {("plunger", "cover-rear"),
                                                            ("plunger-spring", "cover-rear")}),
        ("set-top-half", ["fit-detents"], {("top-roof", "detent-plug")}),
        # bolts have their holes in the walls, whichever half they are in
        ("bolt-forks", ["set-forks", "slide-rails"], set()),
        ("tighten-case-bolts", ["set-top-half"], set()),
        ("fill-oil", ["set-top-half", "fit-top-cover"], set()),
    ],
)  # fmt: skip
def test_slabs_rods_and_springs_are_judged_on_their_way_into_a_half(unit, step, there, met):
    found = {(one.one.solid.id, one.other.solid.id)
             for one in in_the_way(unit, step, [*TRAIN, *there])}  # fmt: skip
    assert found >= met and bool(found) == bool(met)


def test_a_fork_that_is_not_tilted_does_not_go_round_its_sleeve(unit):
    entries = unit.shapes.model_dump(by_alias=True, exclude_unset=True)
    for step in entries["steps"]:
        step.pop("passes mm", None)
    stiff = unit.with_sections(shapes=Shapes.model_validate(entries))
    before = [*TRAIN, "fit-hub-low", "lower-output"]
    assert in_the_way(unit, "set-forks", before) == ()
    met = in_the_way(stiff, "set-forks", before)
    assert {one.other.solid.id for one in met} == {"low-sleeve"}


def test_what_is_seen_behind_the_section_has_no_known_place_and_stops_nothing(unit):
    assert convex_bodies(unit)["idler-yoke"] == ()
    cut = changed(unit, idler_yoke={"uncut": False})
    met = in_the_way(cut, "set-forks", [*TRAIN, "fit-idler"])
    assert ("fork-reverse-pad", "idler-yoke") in {(m.one.solid.id, m.other.solid.id) for m in met}


@pytest.mark.slow
@pytest.mark.parametrize(
    ("earlier", "later"), [("lower-output", "lower-input"), ("lower-input", "fit-idler")]
)
def test_a_rule_of_the_split_case_that_is_taken_away_is_missed(unit, earlier, later):
    assert earlier not in dict(unnamed_blocks(unit))
    over = {"lower-output": "reverse-idler", "lower-input": "top-half"}  # the first one met
    assert dict(unnamed_blocks(without_rule(unit, earlier, later)))[earlier] == over[earlier]


@pytest.mark.slow
@pytest.mark.parametrize(
    ("earlier", "later", "kind", "by"),
    [
        ("lower-input", "fit-idler", "way blocked", "reverse-idler"),
        ("clip-hub-low", "fit-hub-high", "way blocked", "hub-high"),
        ("lower-output", "set-forks", "no seat", "hub-high"),  # it comes with the shaft
        ("drop-interlocks", "slide-rails", "covered", "rails"),
        ("bolt-forks", "set-top-half", "covered", "top-half"),
        ("check-lockout", "fit-top-cover", "covered", "top-cover"),
        ("stone-faces", "drive-dowels", None, None),  # a stroke of the stone
        ("spread-sealant", "set-top-half", None, None),  # a film is no part
        ("read-input-play", "lower-input", None, None),  # an open half covers nothing
    ],
)
def test_what_bears_a_rule_of_the_split_case_out(unit, earlier, later, kind, by):
    rule = next(one for one in unit.rules if (one.earlier, one.later) == (earlier, later))
    found = witnessed(unit)[rule.id]
    assert (found and found.kind, found and found.by) == (kind, by)


@pytest.mark.slow
def test_lugs_of_the_case_over_a_shaft_are_found(unit):
    yoke = {"idler_lug_front": {"part": "lower-half"}}
    (finding, *_) = audit_shapes(changed(unit, **yoke))
    assert "cannot get where it belongs in 'lower-" in finding.what
    assert "'idler-lug-front' is in its way" in finding.what


half = st.integers(0, 60).map(lambda n: n / 2)
disc = st.tuples(half, st.integers(4, 24), st.integers(-80, 80), st.integers(-80, 80),
                 st.integers(2, 60)).map(
    lambda given: (given[0], given[0] + given[1], float(given[2]), float(given[3]), given[4] / 2)
)  # fmt: skip


def collide(one, other, lift):
    """Whether two discs run into each other by more than a press fit, one of them lifted."""
    along = min(one[1], other[1]) - max(one[0], other[0])
    apart = math.hypot(one[2] - other[2], one[3] + lift - other[3])
    return along > 2 * PRESSED_MM and apart < one[4] + other[4] - 2 * PRESSED_MM


@settings(max_examples=60, deadline=None)
@given(moving=disc, still=disc)
def test_what_is_said_to_be_free_can_be_lifted_out_by_small_moves(moving, still):
    """Against a search of small moves, for two that do not run into each other at rest."""
    if collide(moving, still, 0.0):
        return
    bodies = {"output-shaft": moving, "input-shaft": still}
    axes = [{"id": "root", "name": "the root"}]
    solids = [{"id": "lower-half", "part": "lower-half", "kind": "shell", "axis": "root",
               "z mm": [-90, -80], "rooms": [{"axis": "root", "z mm": [-90, -80], "radius mm": 5}],
               "half": {"axis": "root", "side": "below"}}]  # fmt: skip
    for part, (z0, z1, x, y, r) in bodies.items():
        axes.append({"id": part, "name": part, "beside": "root",
                     "distance mm": max(math.hypot(x, y), 1e-9),
                     "angle deg": math.degrees(math.atan2(y, x))})  # fmt: skip
        solids.append({"id": part, "part": part, "kind": "turned", "axis": part,
                       "outside mm": [(z0, r), (z1, r)]})  # fmt: skip
    views = [{"id": "all", "name": "Discs", "axes": [axis["id"] for axis in axes]}]
    shapes = Shapes.model_validate({"axes": axes, "views": views, "solids": solids})
    two = load_unit("tarnbeck-c4").with_sections(shapes=shapes)
    blocked = bool(list(lowered_onto(two, "output-shaft", ["lower-half", "input-shaft"])))
    assert blocked == any(collide(moving, still, step / 8) for step in range(8 * 260))


# how it shows


def test_a_step_without_a_part_has_no_way_in(unit):
    for step in ("oil-train", "spread-sealant"):
        shown = step_shown(unit, step)
        assert shown.parts and shown.way is None and shown.unseen is None


def test_everything_leaves_by_the_open_side_and_a_plug_in_the_floor_below(unit):
    for stage in (*stages_to_explode(unit), None):
        for mover in exploded(unit, stage).movers:
            if mover.way == "outside":
                below = mover.part == "oil-plugs"
                assert all((y > 0) == below for _, _, y in mover.own_mm), mover


def test_the_arrow_of_a_step_comes_from_the_open_side(unit):
    lit = {"set-top-half": -1, "lower-input": -1, "fit-top-cover": -1}
    for step, side in lit.items():
        for found in re.findall(
            r'tsu-way" d="M[\d.]+ ([\d.]+)L[\d.]+ ([\d.]+)"',
            step_marks(unit, build_shown(unit, [], step)),
        ):
            start, end = map(float, found)
            assert (start - end) * side > 0, step
    drain = [one for view in section_of(unit).views for one in view.drawn
             if one.solid.id == "drain-plug"]  # fmt: skip
    assert open_side(unit, drain) == 1 and open_side(load_unit("tarnbeck-b5"), drain) == 0


def test_words_count_from_the_front_of_the_case_and_name_no_order_of_its_halves(unit):
    text = unit_figure(unit, "The unit")
    assert "from 138 mm behind the front of the case to 153 mm behind the front of the case" in text
    assert "Round it: Lower half of the case, Upper half of the case." in text
    assert "the joint face" not in text


def test_in_space_what_is_lowered_moves_square_to_the_joint(unit):
    shown = exploded(unit)
    space = space_of(unit, shown)
    for mover, moved in zip(shown.movers, space["movers"], strict=True):
        if mover.way == "outside":
            x, y, z = moved["own"]
            assert (x, z) == pytest.approx((0, 0)) and (y < 0) == (mover.part == "oil-plugs")
    _, _, across = frames(unit)["input"]
    assert abs(across[0]) > 0.9  # the developed plane lies nearly along the joint, and says nothing
