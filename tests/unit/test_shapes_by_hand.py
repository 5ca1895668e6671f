"""Shapes against closed forms and the other sections of the unit file."""

import math

import pytest
from shapely import Polygon

from twoshaft.models.shape import axis_places, section_of
from twoshaft.models.shape.bearings import taper_pieces
from twoshaft.models.shape.pieces import Role, turned_pieces
from twoshaft.models.shape.shells import shell_pieces
from twoshaft.units import load_unit
from twoshaft.units.sections.bearings import TaperBearing
from twoshaft.units.sections.shapes import Shell


@pytest.fixture(scope="module")
def unit():
    return load_unit("tarnbeck-b5")


def volume(pieces):
    """Volume of the turned solid by the second theorem of Pappus: V = 2 pi r_c A, one side."""
    (one,) = [Polygon(p.outline) for p in pieces if p.role is not Role.BEHIND
              and min(y for _, y in p.outline) >= 0]  # fmt: skip
    return 2 * math.pi * one.centroid.y * one.area


@pytest.mark.parametrize(
    ("outside", "inside", "wanted"),
    [
        # closed forms: tube pi (R2 - r2) L; frustum pi h (R2 + R r + r2) / 3 less its small bore
        ([(0, 15), (20, 15)], [(0, 10), (20, 10)], 7853.982),
        ([(0, 20), (15, 12)], [(0, 1), (15, 1)], 12315.043 - math.pi * 15),
        # ring of 50 and 30, 30 long, with a groove 1.8 deep and 1.6 wide
        (
            [(0, 25), (10, 25), (10, 23.2), (11.6, 23.2), (11.6, 25), (30, 25)],
            [(0, 15), (30, 15)],
            37263.0085,
        ),
    ],
)
def test_turned_outlines_hold_the_volume_of_closed_forms(outside, inside, wanted):
    assert volume(turned_pieces(outside, inside, 0.0)) == pytest.approx(wanted, rel=1e-6)


def test_the_idler_meshes_with_both(unit):
    """Its axis lies where two centre distances meet: law of cosines."""
    at = axis_places(unit, unit.shapes)
    a, b, c = 43.75, 75.0, 78.75  # to the input, between the two, to the output
    turn = math.degrees(math.acos((a * a + b * b - c * c) / (2 * a * b)))
    assert abs(250 - 171.8) == pytest.approx(turn, abs=0.1)
    assert math.dist(at["idler"], at["output"]) == pytest.approx(c, abs=0.1)


@pytest.mark.parametrize("type_id", ["side-taper", "output-taper"])
@pytest.mark.parametrize("large_end", ["front", "rear"])
def test_a_taper_bearing_has_its_catalogue_sizes(unit, type_id, large_end):
    bearing = unit.bearings.type_by_id(type_id)
    assert isinstance(bearing, TaperBearing)
    pieces = [p for p in taper_pieces(bearing, 0.0, 0.0, large_end, "both") if p.closed]
    zs = [z for piece in pieces for z, _ in piece.outline]
    ys = [abs(y) for piece in pieces for _, y in piece.outline]
    assert (min(zs), max(zs)) == pytest.approx((0, bearing.stand_mm))
    assert (min(ys), max(ys)) == pytest.approx((bearing.bore_mm / 2, bearing.outside_mm / 2))
    rollers = [Polygon(p.outline) for p in pieces if p.role is Role.WHOLE]
    rings = [Polygon(p.outline) for p in pieces if p.role is Role.CUT]
    area = bearing.roller_length_mm * bearing.roller_diameter_mm
    assert [one.area for one in rollers] == pytest.approx([area] * 2, rel=1e-3)
    for roller in rollers:  # it rolls between its rings: touches both, lies in neither
        assert sum(roller.distance(ring) < 0.1 for ring in rings) >= 2
        assert all(roller.intersection(ring).area < 0.05 * area for ring in rings)


def test_supports_stand_as_far_apart_as_the_bearings_section_says(unit):
    """Seats of the outer rings, shoulders of the inner rings: one figure in two places."""
    for support in unit.bearings.supports[:2]:
        ends = [
            (one.solid.at_mm, one.solid.large_end)
            for view in section_of(unit).views
            for one in view.drawn
            if one.solid.kind == "bearing" and one.solid.type == support.left
        ]
        stand = unit.bearings.type_by_id(support.left).stand_mm
        front, rear = min(at for at, _ in ends), max(at for at, _ in ends)
        assert rear - (front + stand) == pytest.approx(support.shaft_span_mm, abs=0.05)
        shim = next(
            one.z_mm for one in unit.shapes.solids
            if one.kind == "ring" and one.form == "shim" and one.z_mm[0] == rear + stand
        )  # fmt: skip
        assert shim[1] - front == pytest.approx(support.case_span_mm, abs=0.15)


def test_a_shell_has_the_area_of_its_walls():
    """A room of 40 by 100 with walls of 5: three walls and two corners, open in front."""
    shell = Shell.model_validate(
        {"id": "case", "kind": "shell", "axis": "a", "z mm": [0, 60], "wall mm": 5,
         "rooms": [{"axis": "a", "z mm": [-10, 40], "radius mm": 50}],
         "bosses": [{"axis": "a", "z mm": [40, 52], "outside mm": 60},
                    {"axis": "a", "z mm": [40, 60], "bore mm": 30}]}
    )  # fmt: skip
    area = sum(Polygon(p.outline, p.holes).area for p in shell_pieces(shell, {"a": 7.0}))
    assert area == pytest.approx(2 * 45 * 5 + 100 * 5 + 7 * 60 - 30 * 12)
