"""Shapes against standards."""

import pytest

from twoshaft.models.shape import centre_distance, gear_radii, section_of
from twoshaft.models.shape.bearings import ball_pieces, roller_pieces
from twoshaft.models.shape.pieces import Role, ring_pieces
from twoshaft.models.shape.typical import head_height, head_width
from twoshaft.units import load_unit
from twoshaft.units.sections.shapes import GearSolid


@pytest.fixture(scope="module")
def unit():
    return load_unit("tarnbeck-b5")


def test_pitch_circles_touch_at_the_centre_distance(unit):
    """Source: ISO 21771-1:2007 (from memory): working pitch circles touch, in the ratio of the teeth."""
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
    """Source: ISO 53:1998, basic rack (from memory): addendum one module, dedendum 1.25."""
    for solid in unit.shapes.solids:
        if isinstance(solid, GearSolid):
            mesh = next(m for m in unit.gear_train.meshes if m.id == solid.mesh)
            root, _, tip = gear_radii(unit, solid)
            assert tip - root == pytest.approx(2.25 * mesh.module_mm)


@pytest.mark.parametrize(
    ("bore", "outside", "width"),
    [(25, 52, 15), (25, 62, 17), (30, 62, 16)],  # ISO 15: series 02, 03, 02
)
def test_other_bearings_have_their_sizes(bore, outside, width):
    """Source: ISO 15:2017 (from memory): boundary dimensions of 6205, 6305 and 6206."""
    for pieces in (
        ball_pieces(bore, outside, width, 0.3 * (outside - bore), 5.0, 100.0),
        roller_pieces(bore, outside, width, 5.0, 100.0, needles=False),
    ):
        ys = [y for piece in pieces if piece.closed for _, y in piece.outline]
        zs = [z for piece in pieces if piece.closed for z, _ in piece.outline]
        assert (min(ys), max(ys)) == pytest.approx((100 - outside / 2, 100 + outside / 2))
        assert (min(zs), max(zs)) == pytest.approx((5, 5 + width))


def test_heads_are_near_the_standard():
    """Source: ISO 4014 (from memory): across flats 10, 13, 16, 18 and height 4, 5.3, 6.4, 7.5 for M6 to M12."""
    for d, flats, high in ((6, 10, 4.0), (8, 13, 5.3), (10, 16, 6.4), (12, 18, 7.5)):
        assert head_width(d) == pytest.approx(flats, rel=0.07)
        assert head_height(d) == pytest.approx(high, rel=0.05)


def test_thin_rings_are_solid_and_thick_ones_hatched():
    """Source: ISO 128-3:2020 (from memory): thin parts may be drawn black."""
    assert Role.THIN in {p.role for p in ring_pieces((0, 0.6), 20, 30, 0.0)}
    assert Role.CUT in {p.role for p in ring_pieces((0, 6), 20, 30, 0.0)}
