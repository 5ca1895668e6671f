"""Shapes against closed forms, standards and handbook figures."""

import math

import pytest
from shapely import Polygon

from twoshaft.models.shape import axis_places, centre_distance, gear_radii, section_of
from twoshaft.models.shape.bearings import ball_pieces, roller_pieces, taper_pieces
from twoshaft.models.shape.pieces import Role, ring_pieces, turned_pieces
from twoshaft.models.shape.shells import shell_pieces
from twoshaft.models.shape.typical import head_height, head_width
from twoshaft.units import load_unit
from twoshaft.units.sections.bearings import TaperBearing
from twoshaft.units.sections.shapes import GearSolid, Shell


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


def test_pitch_circles_touch_at_the_centre_distance(unit):
    """ISO 21771 (from memory): working pitch circles touch, in the ratio of the teeth."""
    gears = {
        (one.solid.mesh, one.solid.side): gear_radii(unit, one.solid)[1]
        for view in section_of(unit).views
        for one in view.drawn
        if isinstance(one.solid, GearSolid)
    }
    pairs = 0
    for mesh in unit.gear_train.meshes:
        one, other = gears.get((mesh.id, "driving")), gears.get((mesh.id, "driven"))
        if one is None or other is None:
            continue
        pairs += 1
        apart = centre_distance(unit.gear_train, mesh.driving.shaft, mesh.driven.shaft)
        assert one + other == pytest.approx(apart, abs=1e-9)
        assert one / other == pytest.approx(mesh.driving.teeth / mesh.driven.teeth, rel=1e-12)
    assert pairs >= 7


def test_teeth_have_the_height_of_the_standard_rack(unit):
    """ISO 53: addendum one module, dedendum 1.25."""
    for solid in unit.shapes.solids:
        if isinstance(solid, GearSolid):
            mesh = next(m for m in unit.gear_train.meshes if m.id == solid.mesh)
            root, _, tip = gear_radii(unit, solid)
            assert tip - root == pytest.approx(2.25 * mesh.module_mm)


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


@pytest.mark.parametrize(
    ("bore", "outside", "width"),
    [(25, 52, 15), (25, 62, 17), (30, 62, 16)],  # ISO 15: series 02, 03, 02
)
def test_other_bearings_have_their_sizes(bore, outside, width):
    for pieces in (
        ball_pieces(bore, outside, width, 0.3 * (outside - bore), 5.0, 100.0),
        roller_pieces(bore, outside, width, 5.0, 100.0, needles=False),
    ):
        ys = [y for piece in pieces if piece.closed for _, y in piece.outline]
        zs = [z for piece in pieces if piece.closed for z, _ in piece.outline]
        assert (min(ys), max(ys)) == pytest.approx((100 - outside / 2, 100 + outside / 2))
        assert (min(zs), max(zs)) == pytest.approx((5, 5 + width))


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


def test_heads_are_near_the_standard():
    """ISO 4014: across flats 10, 13, 16, 18 and height 4, 5.3, 6.4, 7.5 for M6, M8, M10, M12."""
    for d, flats, high in ((6, 10, 4.0), (8, 13, 5.3), (10, 16, 6.4), (12, 18, 7.5)):
        assert head_width(d) == pytest.approx(flats, rel=0.07)
        assert head_height(d) == pytest.approx(high, rel=0.05)


def test_thin_rings_are_solid_and_thick_ones_hatched():
    """ISO 128-3: thin parts may be drawn black."""
    assert Role.THIN in {p.role for p in ring_pieces((0, 0.6), 20, 30, 0.0)}
    assert Role.CUT in {p.role for p in ring_pieces((0, 6), 20, 30, 0.0)}
