"""The film's own behaviour: strokes, pockets, guides, holes, refusals."""

import numpy as np
import pytest

from twoshaft.errors import OutOfRangeError
from twoshaft.models.film import (
    Film,
    Kind,
    Land,
    State,
    Stroke,
    close,
    good_strokes,
    ready_for_oil,
    squeeze_time_strip,
)
from twoshaft.units.loader import load_unit
from twoshaft.units.quantities import Q
from twoshaft.units.sections.faces import Face, Sealant, crossing_edges

FRAME = {
    "id": "frame",
    "name": "Frame",
    "outline": [(0, 0), (160, 0), (160, 120), (0, 120)],
    "cavities": [
        {
            "id": "oil",
            "name": "Oil",
            "kind": "oil",
            "outline": [(16, 16), (144, 16), (144, 104), (16, 104)],
        }
    ],
    "form": {"flatness_um": 0, "roughness_um": 100, "bed_n_per_mm3": 100, "flange_mm": 10},
    "sealant": "paste",
    "film_mm": 0.15,
    "film_width_mm": 14,
}
AROUND = np.array([(8, 8), (152, 8), (152, 112), (8, 112), (8, 8)], dtype=float)
PASTE = {
    "id": "paste",
    "name": "Paste",
    "kind": "moisture",
    "largest_gap_mm": 0.5,
    "open_minutes": 20,
    "skin_minutes": 15,
    "viscosity_pa_s": 60,
    "yield_stress_pa": 80,
    "cure_hours": 24,
}


@pytest.fixture
def paste():
    return Sealant.model_validate(PASTE)


def land(cells=(160, 120), **changes):
    return Land.of(Face.model_validate(FRAME | changes), cells)


def roller(points=AROUND, width=14.0, thickness=0.15, **kwargs):
    return Stroke.roller(
        Q(np.asarray(points, dtype=float), "mm"),
        width=Q(width, "mm"),
        thickness=Q(thickness, "mm"),
        **kwargs,
    )


def bead(points=AROUND, diameter=2.0, **kwargs):
    return Stroke.bead(
        Q(np.asarray(points, dtype=float), "mm"), diameter=Q(diameter, "mm"), **kwargs
    )


def test_shipped_faces_take_their_film():
    unit = load_unit("tarnbeck-b5")
    assert len(unit.faces.faces) >= 2
    for face in unit.faces.faces:
        ground = Land.of(face)
        assert ground.kind.shape[0] >= 300
        assert ground.kind.shape[1] >= 400
        seal = close(
            Film.bare(ground).lay(*good_strokes(face)), unit.faces.sealant_by_id(face.sealant), 1.0
        )
        assert seal.tight
        assert "no way is left" in seal.sentence
        assert not any(near.endangered for near in seal.guides)


def test_area_of_the_grid():
    ground = land((400, 300))
    wanted = (160 * 120 - 128 * 88) / 100
    assert ground.area.m_as("cm**2") == pytest.approx(wanted, rel=0.015)  # half a cell of edge


def test_a_film_seals_and_a_gap_in_it_leaks(paste):
    ground = land()
    assert close(Film.bare(ground).lay(roller()), paste, 1).tight
    cut = Film.bare(ground).lay(roller(AROUND[:4]), roller([(8, 100), (8, 112)]))
    seal = close(cut, paste, 1)
    assert len(seal.leaks) == 1
    way = seal.leaks[0]
    assert ground.kind[tuple(way.cells[0])] == Kind.OIL
    assert ground.kind[tuple(way.cells[-1])] == Kind.OUTSIDE
    assert (np.abs(np.diff(way.cells, axis=0)) <= 1).all()
    assert "one way is left for the oil: it comes out" in seal.sentence
    assert way.points_mm[:, 0].max() < 20  # on the left side, where the film is missing


def test_two_gaps_are_two_ways(paste):
    film = Film.bare(land()).lay(roller(AROUND[:2]), roller(AROUND[2:4]))
    seal = close(film, paste, 1)
    assert len(seal.leaks) == 2
    assert seal.leaks[0].area_mm2 >= seal.leaks[1].area_mm2


def test_a_diagonal_of_filled_cells_does_not_seal():
    # Eight neighbours for the oil: two filled cells that touch at a corner let it pass.
    from twoshaft.models.film import find_leaks

    ground = land((40, 30))
    sealed = ground.is_face.copy()
    rows, columns = np.nonzero(ground.is_face)
    row = int(np.median(rows))
    inner = columns[(rows == row)]
    inner = inner[inner < ground.kind.shape[1] // 2]
    for k, column in enumerate(inner):
        sealed[row + (k % 2), column] = False  # a zigzag, joined by corners only
    assert find_leaks(ground, sealed)


def test_a_hole_leaks_only_if_it_is_open(paste):
    for is_open in (False, True):
        hole = {"id": "h", "x_mm": 8, "y_mm": 60, "diameter_mm": 6, "open": is_open}
        ground = land(holes=[hole])
        # The film runs outside the hole only: oil reaches the hole, no further.
        film = (
            Film.bare(ground)
            .lay(roller(width=16))
            .lay(Stroke.wipe(Q(np.array([(16.0, 60.0), (9.0, 60.0)]), "mm"), width=Q(4, "mm")))
        )
        seal = close(film, paste, 1)
        assert seal.tight is not is_open
        if is_open:
            assert seal.leaks[0].through == ("h",)
            assert "through hole h" in seal.sentence


def test_a_closed_hole_can_be_part_of_a_way(paste):
    ground = land(holes=[{"id": "h", "x_mm": 8, "y_mm": 60, "diameter_mm": 6}])
    film = (
        Film.bare(ground)
        .lay(roller(width=16))
        .lay(Stroke.wipe(Q(np.array([(16.0, 60.0), (0.0, 60.0)]), "mm"), width=Q(4, "mm")))
    )
    seal = close(film, paste, 1)
    assert not seal.tight
    assert seal.leaks[0].through == ("h",)


def test_oily_and_dirty_cells_are_full_but_do_not_seal(paste):
    across = Q(np.array([(0.0, 60.0), (16.0, 60.0)]), "mm")
    for what, state in (("oil", State.OILY), ("dirt", State.DIRTY)):
        film = Film.bare(land()).lay(roller(), Stroke.smear(across, width=Q(3, "mm"), what=what))
        seal = close(film, paste, 1)
        assert not seal.tight
        spoilt = seal.state == state
        assert spoilt.any()
        assert (seal.thickness_m[spoilt] >= 0.98 * seal.gap_m[spoilt]).all()
        clean = film.lay(Stroke.wipe(across, width=Q(6, "mm"))).lay(
            roller([(8, 50), (8, 70)], width=16)
        )
        assert close(clean, paste, 1).tight


def test_a_skinned_film_does_not_seal(paste):
    film = Film.bare(land()).lay(roller(AROUND[:3]), roller(AROUND[2:], minute=10.0))
    assert close(film, paste, 14.9).tight
    seal = close(film, paste, 15.1)  # the first half is older than its skin time
    assert not seal.tight
    assert (seal.state == State.SKINNED).any()
    assert (seal.state == State.SEALED).any()
    with pytest.raises(OutOfRangeError, match="minute of closing"):
        close(film, paste, 5.0)


def test_paste_that_flows_is_as_old_as_where_it_came_from(paste):
    film = Film.bare(land()).lay(bead(diameter=3.0))
    seal = close(film, paste, 16.0)
    assert (seal.state == State.SEALED).sum() == 0


def test_a_gap_too_wide_for_the_sealant(paste):
    thin = Sealant.model_validate(PASTE | {"largest_gap_mm": 0.05})
    seal = close(Film.bare(land()).lay(roller()), thin, 1)
    assert not seal.tight
    assert (seal.state == State.TOO_WIDE).any()
    assert seal.sealed_share == 0


@pytest.mark.slow
def test_a_closed_bead_shuts_air_in(paste):
    ring = [(4, 40), (12, 40), (12, 80), (4, 80), (4, 40)]
    seal = close(Film.bare(land((400, 300))).lay(bead(ring, 1.5)), paste, 1)
    assert len(seal.pockets) == 1
    pocket = seal.pockets[0]
    assert pocket.centre_mm == pytest.approx((8, 60), abs=1)
    assert 6 * 38 < pocket.area_mm2 < 8 * 40
    assert (seal.state == State.AIR).any()
    # A ring with a mouth lets the air out.
    open_ring = close(Film.bare(land((400, 300))).lay(bead(ring[:4], 1.5)), paste, 1)
    assert open_ring.pockets == ()


@pytest.mark.parametrize(("blind", "pockets"), [(True, 1), (False, 0)])
def test_air_leaves_by_a_through_hole(paste, blind, pockets):
    ring = [(3, 50), (13, 50), (13, 70), (3, 70), (3, 50)]
    hole = {"id": "h", "x_mm": 8, "y_mm": 60, "diameter_mm": 5, "blind": blind}
    ground = land((400, 300), holes=[hole])
    seal = close(Film.bare(ground).lay(bead(ring, 1.5)), paste, 1)
    assert len(seal.pockets) == pockets


def test_surplus_goes_to_the_nearest_edge(paste):
    inner = [(14, 14), (146, 14), (146, 106), (14, 106), (14, 14)]
    outer = [(2, 2), (158, 2), (158, 118), (2, 118), (2, 2)]
    spilt = []
    for line in (inner, outer):
        seal = close(Film.bare(land()).lay(bead(line, 3.0)), paste, 1)
        spilt.append([seal.overflow(kind).m_as("mm**3") for kind in (Kind.OIL, Kind.OUTSIDE)])
    assert spilt[0][0] > 3 * spilt[0][1]
    assert spilt[1][1] > 3 * spilt[1][0]


def test_a_lump_near_a_guide(paste):
    guides = [{"id": "g", "name": "guide", "x_mm": 22, "y_mm": 60, "reach_mm": 12}]
    ground = land(guides=guides)
    thin, fat = (close(Film.bare(ground).lay(bead(diameter=d)), paste, 1) for d in (0.8, 5.0))
    assert not thin.guides[0].endangered
    assert thin.guides[0].volume_mm3 <= fat.guides[0].volume_mm3
    near = fat.guides[0]
    assert near.endangered
    assert near.distance_mm < 6
    assert "too much near the guide" in fat.sentence


def test_paste_in_a_blind_hole(paste):
    hole = {"id": "h", "x_mm": 8, "y_mm": 60, "diameter_mm": 6, "blind": True}
    seal = close(Film.bare(land(holes=[hole])).lay(bead(diameter=3.0)), paste, 1)
    inside = seal.in_hole("h").m_as("mm**3")
    assert inside > 0
    assert inside == pytest.approx(seal.overflow(Kind.CLOSED).m_as("mm**3"))
    with pytest.raises(OutOfRangeError, match="hole is z, outside h"):
        seal.in_hole("z")


@pytest.mark.slow
@pytest.mark.parametrize("skip", [0, 1])
def test_a_finer_grid_says_the_same(skip):
    unit = load_unit("tarnbeck-b5")
    face = unit.faces.faces[0]
    sealant = unit.faces.sealant_by_id(face.sealant)
    seals = [
        close(Film.bare(Land.of(face, cells)).lay(*good_strokes(face)[skip:]), sealant, 1.0)
        for cells in ((400, 300), (800, 600))
    ]
    assert [len(seal.leaks) for seal in seals] == [skip, skip]
    for measure in (
        lambda seal: seal.sealed_share,
        lambda seal: seal.overflow(Kind.OIL).m_as("mm**3"),
        lambda seal: seal.overflow(Kind.OUTSIDE).m_as("mm**3"),
        lambda seal: seal.film.volume_m3,
    ):
        assert measure(seals[0]) == pytest.approx(measure(seals[1]), rel=0.05)


def test_a_scratch_needs_a_thicker_film(paste):
    scratch = {"points": [(0, 60), (16, 60)], "width_mm": 0.2, "depth_um": 300}
    ground = land(scratches=[scratch])
    assert not close(Film.bare(ground).lay(roller(width=16, thickness=0.1)), paste, 1).tight
    assert close(Film.bare(ground).lay(roller(width=16, thickness=0.3)), paste, 1).tight


def test_clamp_by_hole():
    hole = {"id": "h", "x_mm": 80, "y_mm": 60, "diameter_mm": 6, "clamp_n": 5000, "head_mm": 12}
    form = FRAME["form"] | {"flatness_um": 60, "bow_y": 1, "bow_x": 0, "bed_n_per_mm3": 1000}
    ground = land((400, 300), holes=[hole], form=form)
    loose, given, tight = (
        ground.gap_m(clamps)[150, 200] for clamps in ({"h": Q(0, "N")}, None, {"h": Q(200, "kN")})
    )
    assert loose == pytest.approx(160e-6, rel=1e-3)
    # In the middle of a patch of radius 16 mm the pressure is twice the mean.
    assert given == pytest.approx(160e-6 - 2 * 5000 / (np.pi * 0.016**2) / 1e12, rel=1e-3)
    assert tight == pytest.approx(100e-6)
    _, _, patch = ground._patch(ground.face.holes[0])
    assert patch.sum() * ground.cell_m2 == pytest.approx(1, rel=1e-3)  # it carries the whole clamp
    with pytest.raises(OutOfRangeError, match="hole is z"):
        ground.gap_m({"z": Q(1, "N")})


def test_closing_time(paste):
    holes = [{"id": "h", "x_mm": 8, "y_mm": 60, "diameter_mm": 6, "clamp_n": 20000}]
    bare = Film.bare(land(holes=holes))
    assert close(bare, paste, 0).closing_time(paste).m_as("s") == 0
    thin = close(bare.lay(roller(thickness=0.15)), paste, 1)
    assert thin.closing_time(paste).m_as("s") > 0
    twice = close(bare.lay(roller(thickness=0.15)), paste, 1, {"h": Q(40, "kN")})
    half = thin.closing_time(paste).m_as("s") / 2
    assert twice.closing_time(paste).m_as("s") == pytest.approx(half)


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ({"width": Q(0.1, "mm")}, "width of the stroke is 0.1 mm"),
        ({"width": Q(float("nan"), "mm")}, "width of the stroke"),
        ({"width": Q(5, "N")}, "width of the stroke"),
        ({"thickness": Q(-1, "mm")}, "thickness of the film is -1 mm"),
        ({"minute": -1.0}, "minute of the stroke"),
        ({"points": Q(np.zeros((2, 3)), "mm")}, "points of the stroke is 2 by 3"),
        ({"points": Q(np.array([[0.0, np.inf]]), "mm")}, "points of the stroke"),
    ],
)
def test_strokes_refuse_nonsense(change, says):
    good = {"points": Q(AROUND, "mm"), "width": Q(5, "mm"), "thickness": Q(0.1, "mm")}
    with pytest.raises(OutOfRangeError, match=says):
        Stroke.roller(**(good | change))


def test_squeeze_refuses_nonsense():
    good = (Q(100, "Pa*s"), Q(50, "mm"), Q(10, "mm"), Q(1000, "N"), Q(1, "mm"), Q(0.1, "mm"))
    with pytest.raises(OutOfRangeError, match="gap at the end is 2 mm, outside 0 to 1 mm"):
        squeeze_time_strip(*good[:5], Q(2, "mm"))
    with pytest.raises(OutOfRangeError, match="clamp"):
        squeeze_time_strip(*good[:3], Q(1000, "J"), *good[4:])
    with pytest.raises(OutOfRangeError, match="length"):
        squeeze_time_strip(good[0], Q(10, "mm"), *good[2:])


def test_smears_are_oil_or_dirt():
    with pytest.raises(OutOfRangeError, match="smear is 'water'"):
        Stroke.smear(Q(AROUND, "mm"), width=Q(5, "mm"), what="water")


def test_grids_have_limits():
    with pytest.raises(OutOfRangeError, match="cells of the grid is 5"):
        land((5, 30))


def test_oil_waits_for_the_cure(paste):
    assert not ready_for_oil(paste, Q(23, "h"))
    assert ready_for_oil(paste, Q(1, "day"))
    with pytest.raises(OutOfRangeError, match="time waited is -1 h"):
        ready_for_oil(paste, Q(-1, "h"))


@pytest.mark.parametrize(
    ("polygon", "edges"),
    [
        ([(0, 0), (1, 0), (1, 1), (0, 1)], None),
        ([(0, 0), (1, 1), (1, 0), (0, 1)], (0, 2)),
        ([(0, 0), (2, 0), (1, 0), (1, 1)], (0, 1)),
        ([(0, 0), (2, 0), (2, 2), (1, 0), (0, 2)], (0, 2)),
        ([(0, 0), (0, 0), (1, 1)], (0, 0)),
    ],
)
def test_outlines_that_cross(polygon, edges):
    assert crossing_edges(tuple(polygon)) == edges


def test_a_face_refuses_a_crossed_outline():
    with pytest.raises(ValueError, match="outline crosses itself at its edges 1 and 3"):
        Face.model_validate(FRAME | {"outline": [(0, 0), (160, 120), (160, 0), (0, 120)]})


def test_skin_belongs_to_moisture():
    with pytest.raises(ValueError, match="skin_minutes"):
        Sealant.model_validate(PASTE | {"kind": "anaerobic"})


def test_a_hole_as_wide_as_the_face_leaks():
    from twoshaft.models.film import find_leaks

    hole = {"id": "wide", "x_mm": 8, "y_mm": 60, "diameter_mm": 20, "open": True}
    ground = land(holes=[hole])
    (way,) = find_leaks(ground, ground.is_face)
    assert way.through == ("wide",)
    assert way.area_mm2 == 0
    assert [ground.kind[tuple(cell)] for cell in way.cells] == [Kind.OIL, Kind.OPEN]
