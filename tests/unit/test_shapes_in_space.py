"""What lies in what in space, where no section shows it: found, with line and mend; the rest let be."""

import pytest

from twoshaft.models.audit import audit_shapes
from twoshaft.models.shape import overlaps, section_of
from twoshaft.models.shape.meeting import met_in_space
from twoshaft.readings import whole_units
from twoshaft.units import load_unit
from twoshaft.units.sections.shapes import Shapes

pytestmark = pytest.mark.slow
RAILS_IN_GEARS = {
    "rail-first-second": {"distance mm": 92, "angle deg": 205},
    "rail-third-fourth": {"angle deg": 295},
    "rail-fifth-reverse": {"angle deg": 295},
}


def changed(unit, axes=(), solids=()):
    """The unit with axes and solids changed by their ids; a solid that is not there is added."""
    given = unit.shapes.model_dump(by_alias=True, exclude_unset=True)
    axes, more = dict(axes), dict(solids)
    given["axes"] = [{**one, **axes.get(one["id"], {})} for one in given["axes"]]
    given["solids"] = [{**one, **more.pop(one["id"], {})} for one in given["solids"]]
    given["solids"] += [{"id": id, **one} for id, one in more.items()]
    return unit.with_sections(shapes=Shapes.model_validate(given))


def pairs(unit):
    return {(one.one.solid.id, one.other.solid.id) for one in met_in_space(unit)}


@pytest.fixture(scope="module")
def five():
    return load_unit("tarnbeck-b5")


@pytest.mark.parametrize(
    "name", [*whole_units(), "tarnbeck-b5-sender", "tarnbeck-k6", "tarnbeck-c4"]
)
def test_in_the_shipped_units_nothing_lies_in_anything(name):
    assert met_in_space(load_unit(name)) == ()


def test_rails_that_pass_through_a_gear_are_said_with_line_and_mend(five):
    unit = changed(five, axes=RAILS_IN_GEARS)
    assert overlaps(unit) == ()  # the section shows nothing of it
    found = audit_shapes(unit)
    rail = next(f for f in found if "'rail-fifth-reverse' lies in 'output-first'" in f.what)
    line = five.where("shapes", "solids", "rail-fifth-reverse")
    assert rail.where == line and line.startswith("tarnbeck-b5.yaml, line")
    assert rail.what == (
        "in space 'rail-fifth-reverse' lies in 'output-first' near z 27.5 mm, which the section "
        "does not show"
    )
    assert rail.mend == (
        "correct the angle or distance of axis 'rail-fifth-reverse' or 'output', or the size of "
        "one of the two"
    )
    assert {"ring-gear", "output-sleeve"} <= {one for one, _ in pairs(unit)}


def beside_output(unit, distance, **solid):
    """The unit with a solid on an axis of its own, in a view of its own, beside the output shaft."""
    given = unit.shapes.model_dump(by_alias=True, exclude_unset=True)
    given["axes"] = [*given["axes"], {"id": "new", "name": "a new axis", "beside": "output",
                                      "distance mm": distance, "angle deg": 0}]  # fmt: skip
    given["views"] = [*given["views"], {"id": "new", "name": "Beside it", "axes": ["new"]}]
    solid = {"id": "new-rod", "part": "magnet", "kind": "rod", "axis": "new", "form": "pin",
             "diameter mm": 8, **solid}  # fmt: skip
    given["solids"] = [*given["solids"], solid]
    return unit.with_sections(shapes=Shapes.model_validate(given))


@pytest.mark.parametrize(
    ("solid", "met"),
    [
        ({"from mm": [22, 0], "to mm": [33, 0]}, "output-first"),  # in the gear
        ({"from mm": [33, 0], "to mm": [22, 0]}, "output-first"),
        ({"from mm": [36, 0], "to mm": [47, 0]}, None),  # between two gears, outside the sleeve
        ({"from mm": [28, -20], "to mm": [28, 0]}, "output-first"),  # across the shafts
        ({"from mm": [28, -90], "to mm": [28, -60]}, None),
        ({"from mm": [28, 0], "to mm": [28, 0], "form": "ball"}, "output-first"),
        ({"from mm": [110, 0], "to mm": [118, 0]}, None),  # its hole in the case is made with it
        # its own section shows a rod in its hole
        ({"axis": "output", "from mm": [28, 40], "to mm": [28, 60]}, None),
        ({"axis": "input", "from mm": [28, 40], "to mm": [28, 60]}, None),
        ({"axis": "input", "from mm": [22, 40], "to mm": [33, 40]}, None),
        # but not beyond a fold of its plane
        ({"axis": "differential", "from mm": [83, -200], "to mm": [83, -170]}, "input-sleeve"),
        ({"axis": "differential", "from mm": [68, -200], "to mm": [68, -170]}, None),
    ],
)
def test_a_rod_that_another_view_shows_is_judged_in_space(five, solid, met):
    assert pairs(beside_output(five, 54, **solid)) == ({(met, "new-rod")} if met else set())


@pytest.mark.parametrize(("head", "met"), [(8, set()), (14, {("output-first", "new-rod")})])
def test_a_head_reaches_further_than_its_bolt(five, head, met):
    bolt = {"form": "bolt", "from mm": [28, 0], "to mm": [60, 0], "head mm": head}
    assert pairs(beside_output(five, 66, **bolt)) == met


def test_meshing_gears_pass_and_others_do_not(five):
    assert ("input-first", "output-first") not in pairs(five)
    wrong = changed(five, solids={"output-third": {"z mm": [62.5, 75]}})  # into the second gear's
    assert pairs(wrong) == set()  # its mate is the smaller one: it clears
    close = changed(five, solids={"input-third": {"z mm": [60.5, 75]}})
    assert pairs(close) == {("input-third", "output-second")}


def test_an_idler_that_two_meshes_share_passes_the_gears_of_both(five):
    slid = changed(five, solids={"reverse-idler": {"z mm": [10, 20]}, "idler-groove": {
        "outside mm": [[20, 11], [22, 11]], "inside mm": [[20, 8], [22, 8]]}})  # fmt: skip
    assert not {met for met in pairs(slid) if "reverse-idler" in met and "input-reverse" in met}
    assert not {met for met in pairs(slid) if "reverse-idler" in met and "output-reverse" in met}


@pytest.mark.parametrize(("outer", "met"), [(30, set()), (36, {("main-case", "new-ring")})])
def test_what_is_round_is_held_against_the_metal_of_a_case(five, outer, met):
    ring = {"part": "magnet", "kind": "turned", "axis": "differential",
            "outside mm": [[63, outer], [68, outer]], "inside mm": [[63, 20], [68, 20]]}  # fmt: skip
    assert pairs(changed(five, solids={"new-ring": ring})) == met


@pytest.mark.parametrize(("outer", "met"), [(29, set()), (34, {("main-case", "new-ring")})])
def test_a_room_round_an_axis_of_another_view_is_in_space_alone(five, outer, met):
    case = next(one for one in five.shapes.solids if one.id == "main-case")
    assert {room.axis for room in case.rooms} > {"rail-fifth-reverse"}
    less = changed(five, solids={"main-case": {"rooms": [
        room.model_dump(by_alias=True) for room in case.rooms if "rail" not in room.axis
    ]}})  # fmt: skip
    drawn = [
        next(d.pieces for d in section_of(unit).views[0].drawn if d.solid.id == "main-case")
        for unit in (five, less)
    ]
    assert drawn[0] == drawn[1]
    ring = {"part": "magnet", "kind": "turned", "axis": "rail-fifth-reverse",
            "outside mm": [[60, outer], [62, outer]], "inside mm": [[60, 27], [62, 27]]}  # fmt: skip
    found = {one for one in pairs(changed(five, solids={"new-ring": ring})) if "main-case" in one}
    assert found == met


def test_a_unit_without_shapes_is_judged_by_its_schematic(five):
    bare = five.with_sections(shapes=None)
    assert all(one.other.solid.kind != "box" for one in met_in_space(bare))
    assert audit_shapes(bare) == ()
