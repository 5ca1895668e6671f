"""The shapes of a unit: every part has a place, every step shows, and what is wrong is said."""

import re
import xml.etree.ElementTree as ET

import pytest
import yaml

from twoshaft.errors import UnitFileError
from twoshaft.models.audit import audit_shapes
from twoshaft.models.order import OrderTask, model_order
from twoshaft.models.shape import build_shown, draft, in_the_way, section_of, shapes_of
from twoshaft.models.shape.pieces import Role
from twoshaft.plots.style import TEXT_PX
from twoshaft.plots.unit_section import part_look, step_marks, unit_figure, unit_picture
from twoshaft.readings import whole_units
from twoshaft.units import load_unit
from twoshaft.units.sections.shapes import MOST_SOLIDS, Shapes

UNITS = (*whole_units(), "tarnbeck-k6", "tarnbeck-c4")
COUNTED_FROM = {"tarnbeck-c4": "the front of the case"}
LARGEST = 300_000  # bytes of a picture


def changed(unit, **entries):
    """The unit with members of its shapes replaced by id: ``solids={"id": {...}}``."""
    given = unit.shapes.model_dump(by_alias=True, exclude_unset=True)
    for name, changes in entries.items():
        given[name] = [{**one, **changes.get(one["id"], {})} for one in given[name]]
    return unit.with_sections(shapes=Shapes.model_validate(given))


def workable(unit):
    task = OrderTask.from_unit(unit)
    members = dict(zip(task.steps, task.members, strict=True))
    return [id for step in model_order(task) for id in members[step]]


@pytest.fixture(scope="module", params=UNITS)
def unit(request):
    return load_unit(request.param)


@pytest.fixture(scope="module")
def late():
    return load_unit("tarnbeck-b5")


def test_every_part_has_a_shape_of_its_own(unit):
    drawn = {
        one.solid.part: one.solid.kind for view in section_of(unit).views for one in view.drawn
    }
    assert drawn.keys() >= {part.id for part in unit.parts}
    assert "box" not in drawn.values()


def test_nothing_is_wrong_with_the_shipped_shapes(unit):
    assert audit_shapes(unit) == ()


def test_every_step_changes_the_picture_or_says_why_not(unit):
    order, before, same = workable(unit), None, []
    for k, id in enumerate(order):
        shown = build_shown(unit, order[:k], id)
        looks = {part.id: part_look(shown, part.id) for part in unit.parts}
        picture = (looks, step_marks(unit, shown))
        if shown.step.unseen is None:
            assert "lit" in looks.values(), id
            assert picture[1], id
        if picture == before:
            same.append(id)
        before = picture
    # one after the other at the same part, with the same tool: words say the difference
    assert len(same) <= 2, same


def test_what_is_fitted_is_drawn_and_the_rest_an_outline(late):
    order = workable(late)
    k = order.index("lower-case")
    shown = build_shown(late, order[:k], "lower-case")
    assert part_look(shown, "main-case") == "lit"
    assert part_look(shown, "input-shaft") == "fitted"
    assert part_look(shown, "diff-shim") == "bench"
    assert part_look(shown, "end-cover") == "absent"
    assert "goes in from the rear" in shown.words


def test_at_the_end_everything_is_fitted(unit):
    shown = build_shown(unit, workable(unit))
    assert shown.fitted == {part.id for part in unit.parts}
    assert shown.bench == frozenset()


def test_the_picture_is_small_and_tells_each_part(unit):
    text = unit_figure(unit, "The unit in section")
    assert len(text.encode()) < LARGEST
    root = ET.fromstring(text)
    space = "{http://www.w3.org/2000/svg}"
    told = {
        group.get("data-part")
        for group in root.iter(f"{space}g")
        if group.find(f"{space}title") is not None
    }
    assert told >= {part.id for part in unit.parts}
    for solid in root.iter(f"{space}g"):
        if solid.get("data-solid"):
            assert solid.find(f"{space}title").text
            assert (
                COUNTED_FROM.get(unit.identity.id, "the joint face")
                in solid.find(f"{space}desc").text
            )
    words = root.find(f"{space}desc").text
    missing = [p.name for p in unit.parts if p.name not in text]
    assert not missing
    assert "On the output shaft, from front to rear" in words


def test_colours_come_from_the_one_style(unit):
    from twoshaft.plots import style

    colours = set(re.findall(r"#[0-9a-f]{6}", unit_figure(unit, "The unit")))
    assert colours <= {style.INK, style.PAPER, style.ACCENT}


def test_neighbours_are_hatched_differently(late):
    text = unit_figure(late, "The unit")
    hatch = {
        solid: set(re.findall(r"url\(#([^)]*)\)", inside))
        for solid, inside in re.findall(r'data-solid="([^"]*)">(.*?)</g>', text)
    }
    for one, other in (
        ("main-case", "clutch-housing"), ("ring-gear-body", "diff-carrier"),
        ("output-hub", "output-first"), ("output-third", "output-spacer"),
        ("rear-plate", "main-case"),
    ):  # fmt: skip
        assert hatch[one] and hatch[one].isdisjoint(hatch[other]), (one, other)


def test_shafts_pins_bolts_and_rolling_elements_are_not_cut(late):
    for view in section_of(late).views:
        for one in view.drawn:
            roles = {piece.role for piece in one.pieces}
            if one.solid.kind == "rod" or one.solid.id in ("input-shaft", "output-shaft"):
                assert Role.CUT not in roles, one.solid.id
            if one.solid.kind == "bearing" and one.solid.ring != "outer":
                assert Role.WHOLE in roles, one.solid.id
                assert roles & {Role.CUT, Role.THIN}, one.solid.id


# without shapes


def test_a_unit_without_shapes_gets_a_schematic_of_every_part(late):
    bare = late.with_sections(shapes=None)
    drawn = {solid.part for solid in shapes_of(bare).solids}
    assert drawn >= {part.id for part in bare.parts}
    assert "A schematic by usual proportions" in unit_figure(bare, "The unit")


def test_a_unit_without_any_physics_gets_boxes(late):
    bare = late.with_sections(shapes=None, gear_train=None, bearings=None)
    assert {solid.kind for solid in shapes_of(bare).solids} == {"box"}


def test_a_part_that_the_section_forgets_gets_a_box(late):
    given = late.shapes.model_dump(by_alias=True, exclude_unset=True)
    given["solids"] = [one for one in given["solids"] if one["part"] != "breather"]
    unit = late.with_sections(shapes=Shapes.model_validate(given))
    (box,) = [one for one in shapes_of(unit).solids if one.part == "breather"]
    assert box.kind == "box"


@pytest.mark.slow
@pytest.mark.parametrize("bare", [False, True])
def test_the_draft_read_again_is_the_same_section(late, bare):
    unit = late.with_sections(shapes=None) if bare else late
    again = Shapes.model_validate(yaml.safe_load(draft(unit))["shapes"])
    assert again == shapes_of(unit)


# what is wrong


@pytest.mark.slow
@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"solids": {"breather": {"part": "braether"}}}, "which is not in parts"),
        ({"steps": {"fit-magnet": {"id": "fit-magnets"}}}, "is not an operation"),
        ({"steps": {"fit-magnet": {"on": "main-cases"}}}, "which is not in parts"),
        ({"axes": {"input": {"shaft": "input"}}}, "which the gear train lacks"),
        (
            {"solids": {"input-nut": {"outside mm": [[166, 15], [177, 15], [168, 15], [168, 9.5]]}}},
            "crosses itself",
        ),
        ({"solids": {"gate-cover-left": {"outline mm": [[0, 0], [9, 9], [9, 0], [0, 9]]}}}, "crosses"),
        ({"solids": {"output-first": {"mesh": "mesh-sixth"}}}, "not in the gear train"),
        ({"solids": {"diff-rear-ring": {"type": "side"}}}, "not in bearings"),
        ({"axes": {"output": {"distance mm": 78}}}, "its gears meet at 75.00 mm"),
        ({"axes": {"idler": {"angle deg": 160}}}, "its gears meet at 78.75 mm"),
        ({"solids": {"output-first": {"z mm": [-40, -34.5]}}}, "do not face each other"),
        (
            {"solids": {"reverse-idler": {"z mm": [-30, -20]}}},
            "must slide more than 31 mm to face 'input-reverse' and 'output-reverse', and the rail "
            "of reverse moves 7 mm",
        ),
        (
            {"solids": {"output-reverse": {"z mm": [33, 41]}}},
            "slides for reverse, and at no place does it face 'input-reverse' and 'output-reverse'",
        ),
        ({"solids": {"output-pinion": {"z mm": [40, 50]}}}, "'mesh-final' do not face each other"),
        ({"solids": {"output-first": {"axis": "input"}}}, "but turns with 'output-shaft'"),
        ({"solids": {"output-nut": {"outside mm": [[150, 15], [167, 15]],
                                    "inside mm": [[150, 10], [167, 10]]}}}, "lies in"),
        ({"steps": {"fit-left-seal": {"way": "rear"}}}, "cannot get where it belongs"),
        ({"steps": {"lower-output-shaft": {"passes mm": 0}}}, "'ring-gear' is in its way"),
    ],
)  # fmt: skip
def test_what_is_wrong_is_said_with_its_line(late, changes, said):
    found = audit_shapes(changed(late, **changes))
    assert any(said in finding.sentence for finding in found), [f.sentence for f in found]
    assert all(finding.where.startswith("tarnbeck-b5.yaml, line") for finding in found)
    assert all(finding.mend for finding in found)


def test_a_gear_without_synchroniser_that_faces_its_mate_all_the_time_has_dogs(late):
    dogs = changed(late, solids={"reverse-idler": {"z mm": [11, 19.5]}})
    assert not [f for f in audit_shapes(dogs) if "slide" in f.what]


def test_a_distance_that_rests_on_a_usual_module_is_held_against_no_axis(late):
    train = late.gear_train
    unknown = train.model_copy(
        update={
            "distances": (),
            "meshes": tuple(mesh.model_copy(update={"module_mm": None}) for mesh in train.meshes),
        }
    )
    axes = {"output": {"distance mm": 78}}
    found = audit_shapes(changed(late.with_sections(gear_train=unknown), axes=axes))
    assert not [f for f in found if "gears meet at" in f.what]


@pytest.mark.parametrize(
    ("solid", "said"),
    [
        ({"kind": "turned", "outside mm": [[0, -4], [9, 4]]}, "greater than or equal to 0"),
        ({"kind": "ring", "form": "shim", "z mm": [4, 1], "bore mm": 2, "outside mm": 9}, "front"),
        ({"kind": "ring", "form": "shim", "z mm": [0, 1], "bore mm": 9, "outside mm": 2}, "swap"),
        ({"kind": "bearing", "at mm": 0, "bore mm": 20}, "name a type"),
        (
            {"kind": "rod", "form": "pin", "from mm": [0, 0], "to mm": [0, 0], "diameter mm": 4},
            "length",
        ),
        ({"kind": "turned"}, "required"),
        ({"kind": "gear", "mesh": "mesh-first"}, "required"),
        ({"kind": "wedge"}, "wedge"),
    ],
)
def test_half_a_solid_is_refused(late, solid, said):
    given = late.shapes.model_dump(by_alias=True, exclude_unset=True)
    given["solids"] = [*given["solids"], {"id": "new", "axis": "input", **solid}]
    with pytest.raises(ValueError, match=said):
        Shapes.model_validate(given)


@pytest.mark.slow
@pytest.mark.parametrize(
    ("count", "said"), [(MOST_SOLIDS, str(MOST_SOLIDS)), (10_000, "too many values")]
)
def test_too_many_solids_are_refused_in_one_sentence(tmp_path, count, said):
    lines = [f"      - {{id: pin-{k}, kind: rod, form: pin, axis: input, from mm: [0, 0], "
             f"to mm: [9, 0], diameter mm: 2}}" for k in range(count)]  # fmt: skip
    file = tmp_path / "many.yaml"
    head = "variant of: tarnbeck-b5\nidentity:\n  id: many\nshapes:\n  solids:\n    add:\n"
    file.write_text(head + "\n".join(lines) + "\n", encoding="utf-8")
    with pytest.raises(UnitFileError) as caught:
        load_unit(file)
    assert len(str(caught.value).splitlines()) == 1
    assert said in str(caught.value)


# ways


def test_a_seal_behind_its_bearing_is_blocked(late):
    assert in_the_way(late, "fit-input-seal", []) == ()
    met = in_the_way(late, "fit-input-seal", ["fit-input-front-bearing"])
    assert {one.other.solid.part for one in met} == {"input-front-bearing"}


def test_what_goes_on_a_part_on_the_bench_meets_only_what_is_there(late):
    assert in_the_way(late, "fit-diff-shim", ["fit-diff-front-ring", "fit-left-seal"]) == ()
    on_top = in_the_way(late, "fit-speed-gear", ["press-diff-bearings"])
    assert {one.other.solid.id for one in on_top} == {"diff-rear-cone"}


@pytest.mark.parametrize(
    ("ring", "step"),
    [("diff-front-ring", "set-differential"), ("output-rear-ring", "seat-output-ring")],
)
def test_a_ball_bearing_comes_apart_towards_its_open_side_alone(ring, step):
    unit = load_unit("tarnbeck-k6")
    (solid,) = [one for one in unit.shapes.solids if one.id == ring]
    other_way = {"front": "rear", "rear": "front"}[solid.large_end]
    over = changed(unit, solids={ring: {"large end": other_way}})
    order = workable(unit)
    before = order[: order.index(step)]
    assert in_the_way(unit, step, before) == ()
    met = in_the_way(over, step, before)
    assert ring in {id for one in met for id in (one.one.solid.id, one.other.solid.id)}


def test_names_of_views_end_within_the_picture_and_lines_of_words_keep_apart(unit):
    picture = unit_picture(unit)
    for anchor, x, name in re.findall(
        r'<text class="tsu-v tsu-on"( text-anchor="end")? x="(\d+)"[^>]*>([^<]+)<', picture.body
    ):
        # As large as letters are shown (1.7 times), 0.6 of their size wide.
        wide = 0.6 * 1.7 * TEXT_PX * len(name)
        assert (float(x) if anchor else float(x) + wide) <= picture.width
