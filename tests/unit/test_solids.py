"""Solids in space: volumes against closed forms and against areas by shapely; frames; movers."""

import math
from itertools import pairwise

import pytest
from shapely import Point, Polygon

from twoshaft.models.shape import (
    axis_places,
    bodies_of,
    exploded,
    frames,
    gear_radii,
    section_of,
    shapes_of,
    space_of,
    stages_to_explode,
)
from twoshaft.rigs import exploded_view
from twoshaft.units import load_unit
from twoshaft.units.sections.shapes import Shapes

ROUNDED = 2e-3  # share by which rounded figures and many-sided circles are off


@pytest.fixture(scope="module")
def unit():
    return load_unit("tarnbeck-b5")


def drawn(unit):
    return {
        one.solid.id: (one, dict(view.axes)[one.solid.axis])
        for view in section_of(unit).views
        for one in view.drawn
    }


def volume(body):
    """A body's volume by the sum over its outline."""
    if body["kind"] == "turned":
        ring = [*body["outline"], body["outline"][0]]
        parts = ((b[0] - a[0]) * (a[1] ** 2 + a[1] * b[1] + b[1] ** 2) for a, b in pairwise(ring))
        return abs(math.pi / 3 * sum(parts))
    if body["kind"] == "slice":
        area = Polygon(body["outline"], body["holes"]).area
        return area * (body["z"][1] - body["z"][0])
    long = math.dist(body["from"], body["to"])
    a, b = body["radii"]
    return math.pi * long / 3 * (a * a + a * b + b * b) * body.get("count", 1)


def test_what_is_turned_has_the_volume_that_pappus_gives_its_section(unit):
    seen = 0
    for solid, (one, height) in drawn(unit).items():
        plain = all(Polygon(piece.outline).is_valid for piece in one.pieces if piece.closed)
        if one.solid.kind not in ("turned", "ring") or not plain:
            continue
        upper = one.area.intersection(Polygon([(-999, -999), (999, -999), (999, height), (-999, height)]))  # fmt: skip
        pappus = upper.area * 2 * math.pi * (height - upper.centroid.y)
        assert sum(map(volume, bodies_of(unit)[solid])) == pytest.approx(pappus, rel=ROUNDED), solid
        seen += 1
    assert seen > 40


def test_a_gear_is_as_large_as_its_rings_of_body_and_teeth(unit):
    for solid, (one, _) in drawn(unit).items():
        if one.solid.kind == "gear":
            (body,) = bodies_of(unit)[solid]
            root, _, tip = gear_radii(unit, one.solid)
            bore = min(one.solid.bore_mm / 2, root)
            wide = one.solid.z_mm[1] - one.solid.z_mm[0]
            least, most = (math.pi * (r * r - bore * bore) * wide for r in (root, tip))
            assert 0.97 * least < volume(body) < most
            mesh = next(m for m in unit.gear_train.meshes if m.id == one.solid.mesh)
            assert len(body["outline"]) == 4 * getattr(mesh, one.solid.side).teeth


def test_a_plain_case_is_a_tube_with_a_floor():
    shapes = Shapes.model_validate(
        {
            "axes": [{"id": "one", "name": "the only axis"}],
            "views": [{"id": "all", "name": "A case", "axes": ["one"]}],
            "solids": [
                {"id": "case", "part": "main-case", "kind": "shell", "axis": "one",
                 "z mm": [-5, 60], "wall mm": 5, "rooms": [
                     {"axis": "one", "z mm": [0, 100], "radius mm": 40}],
                 "bosses": [{"axis": "one", "z mm": [-5, 0], "bore mm": 20}]}
            ],
        }
    )  # fmt: skip
    case = load_unit("tarnbeck-b5").with_sections(shapes=shapes)
    made = sum(map(volume, bodies_of(case)["case"]))
    tube, floor = math.pi * (45**2 - 40**2) * 60, math.pi * (45**2 - 10**2) * 5
    assert made == pytest.approx(tube + floor, rel=ROUNDED)


@pytest.mark.slow
def test_a_shell_is_metal_in_space_where_its_section_is_cut(unit):
    """Places on the plane through the axes, between two neighbours of a view."""
    places, own = axis_places(unit, shapes_of(unit)), drawn(unit)
    shafts = next(view for view in section_of(unit).views if view.id == "shafts")
    heights, seen = dict(shafts.axes), 0
    for shell in ("clutch-housing", "main-case", "end-cover"):
        area = own[shell][0].area
        for (one, _), (other, _) in pairwise(shafts.axes):
            for share in (0.2, 0.35, 0.65, 0.8):
                at = [a + share * (b - a) for a, b in zip(places[one], places[other], strict=True)]
                y = heights[one] + share * (heights[other] - heights[one])
                for z in range(-95, 190, 7):
                    cut = area.buffer(-0.6).contains(Point(z + 0.3, y))
                    metal = any(
                        Polygon(body["outline"], body["holes"]).contains(Point(at))
                        for body in bodies_of(unit)[shell]
                        if body["z"][0] < z + 0.3 < body["z"][1]
                    )
                    seen += cut
                    assert metal or not cut, (shell, one, other, share, z)
    assert seen > 30


def test_frames_stand_square_and_neighbours_see_each_other(unit):
    places = axis_places(unit, shapes_of(unit))
    for axis, (origin, along, across) in frames(unit).items():
        assert math.hypot(*along) == pytest.approx(1) and math.hypot(*across) == pytest.approx(1)
        assert sum(a * b for a, b in zip(along, across, strict=True)) == pytest.approx(0)
        assert origin[:2] == places[axis]
    (x, y, _), _, (dx, dy, _) = frames(unit)["input"]
    assert (x + 75 * dx, y + 75 * dy) == pytest.approx(places["output"])


@pytest.mark.slow
@pytest.mark.parametrize("name", ["tarnbeck-b5", "tarnbeck-b5-early", "tarnbeck-k6", "tarnbeck-c4"])
def test_every_stage_is_told_in_space(name):
    unit = load_unit(name)
    for stage in (*stages_to_explode(unit), None):
        shown = exploded(unit, stage)
        space = space_of(unit, shown)
        assert len(space["movers"]) == len(shown.movers)
        assert all(math.hypot(*one["own"]) > 1 for one in space["movers"])
        moving = {one["mover"] for one in space["solids"]} - {None}
        assert moving <= set(range(len(shown.movers)))
        assert all(one["bodies"] for one in space["solids"])


def test_the_rig_tells_space_only_when_it_is_asked(unit):
    rig = exploded_view(unit, "differential")
    assert rig.space == {}
    rig.hear({"type": "space"})
    assert rig.space["stage"] == "differential" and rig.space["solids"]
