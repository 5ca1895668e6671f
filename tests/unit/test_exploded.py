"""A stage taken apart: along the ways in, nothing in anything, and together as the section has it."""

import re

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models.shape import exploded, section_of, stages_to_explode
from twoshaft.plots.unit_exploded import exploded_figure, exploded_picture
from twoshaft.plots.unit_section import PX_PER_MM, unit_figure, unit_picture
from twoshaft.rigs import exploded_view
from twoshaft.rigs.exploded import WHOLE
from twoshaft.units import load_unit
from twoshaft.units.sections.order import OperationKind
from twoshaft.units.sections.shapes import Shapes

LARGEST = 300_000  # bytes of a picture
SHARED_MM = 0.5


@pytest.fixture(
    scope="module", params=["tarnbeck-b5", "tarnbeck-b5-early", "tarnbeck-k6", "tarnbeck-c4"]
)
def unit(request):
    return load_unit(request.param)


def looks(unit):
    return [exploded(unit, stage) for stage in (*stages_to_explode(unit), None)]


def apart(unit, shown):
    """Every solid that is shown with its box, view by view, when all is apart, and its mover."""
    of = {solid: k for k, one in enumerate(shown.movers) for solid in one.solids}
    for view in section_of(unit).views:
        for one in view.drawn:
            k = of.get(one.solid.id)
            if k is not None or one.solid.id in shown.still:
                z, y = (0, 0) if k is None else shown.shift(k, view.id)
                z0, y0, z1, y1 = one.bounds
                yield view, one, k, (z0 + z, y0 + y, z1 + z, y1 + y)


def share(a, b):
    return (
        min(a[2], b[2]) - max(a[0], b[0]) > SHARED_MM
        and min(a[3], b[3]) - max(a[1], b[1]) > SHARED_MM
    )


def test_parts_on_one_axis_stand_clear_of_each_other_when_apart(unit):
    for shown in looks(unit):
        boxes = [(view.id, one, k, box) for view, one, k, box in apart(unit, shown)
                 if k is not None]  # fmt: skip
        for n, (view, one, k, box) in enumerate(boxes):
            for seen, other, m, beside in boxes[:n]:
                if k != m and view == seen and one.solid.axis == other.solid.axis:
                    assert not share(box, beside), (shown, one.solid.id, other.solid.id)


def test_every_part_that_is_fitted_moves_and_only_along_its_way(unit):
    for shown in looks(unit):
        for mover in shown.movers:
            assert mover.own_mm
            for _, z, y in mover.own_mm:
                if mover.way == "outside":
                    assert z == 0 and y != 0
                else:
                    assert y == 0 and (z < 0) == (mover.way == "front") and z != 0
            if mover.parent is not None:
                assert 0 <= mover.parent < len(shown.movers)


def test_the_whole_unit_moves_every_part_that_is_fitted_and_has_a_form():
    unit = load_unit("tarnbeck-b5")
    fitted = {part for one in unit.operations if one.kind is OperationKind.FIT
              for part in one.parts}  # fmt: skip
    assert {mover.part for mover in exploded(unit).movers} == fitted
    solids = [solid for mover in exploded(unit).movers for solid in mover.solids]
    assert len(solids) == len(set(solids))


def test_what_is_fitted_on_the_bench_moves_with_what_it_is_fitted_to():
    unit = load_unit("tarnbeck-b5")
    shown = exploded(unit)
    number = {mover.part: k for k, mover in enumerate(shown.movers)}
    assert shown.movers[number["ring-gear"]].parent == number["diff-carrier"]
    assert shown.movers[number["diff-shim"]].parent == number["main-case"]
    later = exploded(unit, "gear-train").movers
    carrier = next(mover for mover in later if mover.part == "diff-carrier")
    assert {"ring-gear", "planet-pin", "diff-carrier"} <= carrier.solids


def with_solids(unit, *more):
    """The unit with solids added to its shapes, or in place of those with their ids."""
    given = unit.shapes.model_dump(by_alias=True, exclude_unset=True)
    ids = {one["id"] for one in more}
    given["solids"] = [one for one in given["solids"] if one["id"] not in ids] + list(more)
    return unit.with_sections(shapes=Shapes.model_validate(given))


def bolt(id, part, axis, start, end):
    return {"id": id, "part": part, "kind": "rod", "form": "bolt", "axis": axis,
            "from mm": start, "to mm": end, "diameter mm": 8}  # fmt: skip


def ways_of(shown, part):
    return {
        solid: (mover.way, *{(z > 0) - (z < 0) or (y > 0) - (y < 0) for _, z, y in mover.own_mm})
        for mover in shown.movers
        for solid in mover.solids
        if mover.part == part
    }


def test_bolts_from_both_ends_come_out_by_their_heads():
    unit = with_solids(
        load_unit("tarnbeck-b5"),
        bolt("case-bolt-long", "case-bolts", "differential", (-26, 112), (9, 112)),
    )
    assert ways_of(exploded(unit, "closing"), "case-bolts") == {
        "case-bolt": ("rear", 1),
        "case-bolt-long": ("front", -1),
    }


@pytest.mark.parametrize("head", [-1, 1])
def test_a_bolt_across_comes_out_by_its_head_and_takes_along_what_tells_no_side(head):
    unit = load_unit("tarnbeck-b5")
    rails = dict(axis="rail-third-fourth", part="inner-fork-pins", kind="rod")
    pins = [{"id": f"inner-fork-pin-{which}", "form": "pin", "from mm": (z, -12), "to mm": (z, 12),
             "diameter mm": 5, **rails} for which, z in (("first", 42), ("third", 83))]  # fmt: skip
    screw = bolt("fork-screw", "inner-fork-pins", "rail-third-fourth",
                 (60, head * 12), (60, -head * 12))  # fmt: skip
    found = ways_of(exploded(with_solids(unit, *pins, screw), "gear-train"), "inner-fork-pins")
    assert set(found.values()) == {("outside", head)} and len(found) == 3


def test_bolts_across_from_both_sides_come_out_on_both():
    unit = load_unit("tarnbeck-b5")
    pairs = [bolt(f"screw-{name}", "inner-fork-pins", "rail-third-fourth",
                  (60 + 9 * side, side * 12), (60 + 9 * side, -side * 12))
             for name, side in (("above", -1), ("below", 1))]  # fmt: skip
    shown = exploded(with_solids(unit, *pairs), "gear-train")
    found = ways_of(shown, "inner-fork-pins")
    assert found["screw-above"] == ("outside", -1) and found["screw-below"] == ("outside", 1)
    words = exploded_picture(with_solids(unit, *pairs), "gear-train").words
    assert words.count(unit.part_by_id["inner-fork-pins"].name) == 1


def test_seals_on_both_sides_go_each_the_way_that_its_solid_says():
    unit = load_unit("tarnbeck-b5")
    other = {"id": "other-seal", "part": "left-drive-seal", "kind": "ring", "form": "seal",
             "axis": "differential", "z mm": (78.5, 86.5), "lip": "front", "way": "rear"}  # fmt: skip
    shown = exploded(with_solids(unit, other))
    assert ways_of(shown, "left-drive-seal") == {
        "left-drive-seal": ("front", -1),
        "other-seal": ("rear", 1),
    }


def places(svg, solid):
    """Points of a solid in a picture."""
    group = re.search(rf'data-solid="{solid}">(.*?)</g>', svg).group(1)
    return [
        tuple(map(float, p.split()))
        for d in re.findall(r' d="([^"]+)"', group)
        for p in re.findall(r"[-\d.]+ [-\d.]+", d)
    ]


def test_together_every_part_stands_where_the_section_draws_it():
    unit = load_unit("tarnbeck-b5")
    section = unit_figure(unit, "x")
    for stage in (*stages_to_explode(unit), None):
        shown, together = exploded(unit, stage), exploded_figure(unit, "x", stage, apart=False)
        assert "translate" not in together
        for placed in unit_picture(unit).placed:
            offsets = set()
            for one in placed.view.drawn:
                drawn = any(one.solid.id in mover.solids for mover in shown.movers)
                if f'data-solid="{one.solid.id}"' in together and one.solid.kind != "spring":
                    assert drawn or one.solid.id in shown.still
                    here, there = places(together, one.solid.id), places(section, one.solid.id)
                    assert len(here) == len(there)
                    offsets |= {
                        (round(a - c), round(b - d))
                        for (a, b), (c, d) in zip(here, there, strict=True)
                    }
            # one and the same offset for a whole view, but for rounding
            for k in (0, 1):
                values = [offset[k] for offset in offsets]
                assert not values or max(values) - min(values) <= 1


def test_apart_each_group_is_shifted_by_what_the_model_says():
    unit = load_unit("tarnbeck-b5")
    shown, svg = exploded(unit, "rear-end"), exploded_figure(unit, "x", "rear-end")
    found = re.findall(r'data-move="(\d+)" data-view="(\w+)" transform="translate\((\S+) (\S+)\)"', svg)  # fmt: skip
    assert {int(k) for k, *_ in found} == set(range(len(shown.movers)))
    for k, view, x, y in found:
        z, across = shown.shift(int(k), view)
        assert (float(x), float(y)) == pytest.approx((PX_PER_MM * z, PX_PER_MM * across), abs=0.06)


def test_pictures_are_small_and_say_everything_in_words(unit):
    for stage in (*stages_to_explode(unit), None):
        picture = exploded_picture(unit, stage)
        figure = exploded_figure(unit, "Title", stage)
        assert len(figure) < LARGEST and figure.count("<svg") == 1
        for mover in picture.movers:
            assert f"{mover['number']} {unit.part_by_id[mover['part']].name}, " in picture.words
        assert len({part for part, _, _ in picture.parts}) == len(picture.parts)


def test_a_stage_that_is_not_there_is_refused_and_another_can_be_chosen():
    unit = load_unit("tarnbeck-b5")
    with pytest.raises(UnitFileError, match="'bodywork' has no part that can be drawn apart"):
        exploded_view(unit, "bodywork")
    rig = exploded_view(unit)
    assert rig.stage == "clutch-housing"
    rig.hear({"type": "stage", "stage": WHOLE})
    assert rig.stage == WHOLE and "The whole unit, apart: 68 parts" not in rig.finding
    assert len({mover["part"] for mover in rig.picture["movers"]}) == 67
    rig.hear({"type": "stage", "stage": "bodywork"})
    assert rig.stage == WHOLE
    assert "<svg" in rig.plain_copy()


def test_a_unit_without_shapes_says_so():
    bare = load_unit("tarnbeck-b5").with_sections(shapes=None, gear_train=None, shift=None)
    rig = exploded_view(bare)
    assert rig.finding.endswith("the unit file gives no shapes to draw apart.")
    assert rig.picture == {} and rig.stages == []
    assert "<svg" not in rig.plain_copy()
