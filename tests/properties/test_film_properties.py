"""The film: volume under any strokes, leaks by paths, what never makes it worse."""

from dataclasses import replace

import networkx as nx
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import ndimage

from twoshaft.models.film import Film, Kind, Land, State, Stroke, close, find_leaks, spread
from twoshaft.units.quantities import Q
from twoshaft.units.sections.faces import Face, Sealant

FACE = Face.model_validate(
    {
        "id": "frame",
        "name": "Frame",
        "outline": [(0, 0), (120, 0), (120, 60), (90, 90), (0, 90)],
        "cavities": [
            {
                "id": "oil",
                "name": "Oil",
                "kind": "oil",
                "outline": [(14, 14), (106, 14), (106, 54), (84, 76), (14, 76)],
            }
        ],
        "islands": [[(40, 40), (60, 40), (60, 50), (40, 50)]],
        "holes": [
            {"id": "a", "x_mm": 7, "y_mm": 45, "diameter_mm": 6, "clamp_n": 9000, "head_mm": 12},
            {"id": "b", "x_mm": 60, "y_mm": 7, "diameter_mm": 6, "clamp_n": 9000, "head_mm": 12},
            {"id": "c", "x_mm": 113, "y_mm": 30, "diameter_mm": 5, "open": True},
            {"id": "d", "x_mm": 50, "y_mm": 83, "diameter_mm": 5, "blind": True},
        ],
        "guides": [{"id": "g", "name": "Guide", "x_mm": 30, "y_mm": 30, "reach_mm": 20}],
        "scratches": [{"points": [(0, 20), (14, 22)], "width_mm": 0.3, "depth_um": 60}],
        "form": {
            "flatness_um": 40,
            "bow_x": 1,
            "twist": 0.5,
            "roughness_um": 10,
            "bed_n_per_mm3": 300,
            "flange_mm": 8,
        },
        "sealant": "paste",
        "film_mm": 0.15,
        "film_width_mm": 12,
    }
)
PASTE = Sealant(
    id="paste",
    name="Paste",
    kind="anaerobic",
    largest_gap_mm=0.25,
    open_minutes=30,
    viscosity_pa_s=60,
    yield_stress_pa=80,
    cure_hours=24,
)
LAND = Land.of(FACE, (120, 90))
SMALL = Land.of(FACE, (40, 30))

POINTS = st.lists(st.tuples(st.floats(-15, 135), st.floats(-15, 105)), min_size=1, max_size=5).map(
    lambda points: Q(np.array(points), "mm")
)
COATS = st.one_of(
    st.builds(
        lambda p, w, t: Stroke.roller(p, width=Q(w, "mm"), thickness=Q(t, "mm")),
        POINTS,
        st.floats(1, 20),
        st.floats(0.01, 2),
    ),
    st.builds(lambda p, d: Stroke.bead(p, diameter=Q(d, "mm")), POINTS, st.floats(0.5, 6)),
)
WIPES = st.builds(lambda p, w: Stroke.wipe(p, width=Q(w, "mm")), POINTS, st.floats(1, 20))
SMEARS = st.builds(
    lambda p, w, what: Stroke.smear(p, width=Q(w, "mm"), what=what),
    POINTS,
    st.floats(1, 10),
    st.sampled_from(["oil", "dirt"]),
)
STROKES = st.lists(st.one_of(COATS, COATS, WIPES, SMEARS), min_size=1, max_size=8)
AROUND = [(7, 7), (113, 7), (113, 57), (87, 83), (7, 83), (7, 7)]


def whole_film(land, thickness=0.15):
    return Film.bare(land).lay(
        Stroke.roller(
            Q(np.array(AROUND, dtype=float), "mm"), width=Q(18, "mm"), thickness=Q(thickness, "mm")
        )
    )


@pytest.mark.slow
@settings(deadline=None, max_examples=60)
@given(STROKES)
def test_volume_is_conserved(strokes):
    film = Film.bare(LAND).lay(*strokes)
    accounted = film.volume_m3 + film.lost_m3 + film.wiped_m3
    assert accounted == pytest.approx(film.laid_m3, rel=1e-9, abs=1e-18)
    assert (film.thickness_m >= 0).all()
    assert (film.thickness_m[~LAND.is_face] == 0).all()
    seal = close(film, PASTE, 1.0)
    after = float(seal.thickness_m.sum() + seal.over_m.sum()) * LAND.cell_m2
    assert after == pytest.approx(film.volume_m3, rel=1e-6, abs=1e-18)
    assert (seal.thickness_m >= -1e-12).all()
    assert (seal.over_m >= 0).all()
    assert (seal.thickness_m <= seal.gap_m * 1.005)[LAND.is_face].all()
    assert (seal.over_m[LAND.is_face] == 0).all()


@pytest.mark.slow
@settings(deadline=None, max_examples=40)
@given(STROKES)
def test_spreading_again_changes_nothing(strokes):
    film = Film.bare(LAND).lay(*strokes)
    gap = LAND.gap_m()
    once = spread(LAND, film.thickness_m, gap)
    full = np.minimum(once.thickness_m, gap)
    twice = spread(LAND, full, gap)
    assert twice.thickness_m == pytest.approx(full, abs=1e-9)
    assert twice.over_m.sum() == 0


@settings(deadline=None, max_examples=40)
@given(STROKES, COATS)
def test_more_paste_never_leaves_less(strokes, more):
    # Monotony of the obstacle problem: extra paste fills at least as much and spills at least as
    # much, within the solver's tolerance.
    gap = LAND.gap_m()
    less = Film.bare(LAND).lay(*[s for s in strokes if s.tool in ("roller", "bead")])
    first = spread(LAND, less.thickness_m, gap)
    second = spread(LAND, less.lay(more).thickness_m, gap)
    assert (second.thickness_m >= first.thickness_m - 0.01 * gap).all()
    assert second.over_m.sum() >= first.over_m.sum() - 1e-6


def has_way(land, sealed):
    """Ask a graph library for a way from oil to outside through all that does not seal."""
    graph = nx.Graph()
    cells = {tuple(cell) for cell in np.argwhere(~sealed)}
    graph.add_nodes_from(["oil", "out", *cells])
    for row, column in cells:
        graph.add_edges_from(
            ((row, column), (row + i, column + j))
            for i, j in ((0, 1), (1, 0), (1, 1), (1, -1))
            if (row + i, column + j) in cells
        )
        kind = land.kind[row, column]
        if kind == Kind.OIL:
            graph.add_edge("oil", (row, column))
        if kind in (Kind.OUTSIDE, Kind.OPEN):
            graph.add_edge("out", (row, column))
    return nx.has_path(graph, "oil", "out")


@pytest.mark.slow
@settings(deadline=None, max_examples=60)
@given(st.integers(0, 2**32 - 1), st.floats(0.3, 1.0))
def test_leak_iff_a_path(seed, density):
    rng = np.random.default_rng(seed)
    sealed = SMALL.is_face & (rng.random(SMALL.kind.shape) < density)
    assert bool(find_leaks(SMALL, sealed)) == has_way(SMALL, sealed)


@settings(deadline=None, max_examples=60)
@given(st.integers(0, 2**32 - 1), st.floats(0.5, 1.0), st.floats(0.85, 1.0))
def test_leak_iff_a_path_on_any_ground(seed, density, face):
    # Oil, holes and openings strewn anywhere, within a rim of outside.
    rng = np.random.default_rng(seed)
    rest = (1 - face) / 4
    kind = rng.choice(5, size=(14, 18), p=[rest, face, rest, rest, rest]).astype(np.uint8)
    kind[:2] = kind[-2:] = Kind.OUTSIDE
    kind[:, :2] = kind[:, -2:] = Kind.OUTSIDE
    ground = replace(SMALL, kind=kind, hole=np.full(kind.shape, -1, dtype=np.int16))
    ground = replace(ground, x_m=np.arange(18) * 1e-3, y_m=np.arange(14) * 1e-3)
    sealed = ground.is_face & (rng.random(kind.shape) < density)
    leaks = find_leaks(ground, sealed)
    assert bool(leaks) == has_way(ground, sealed)
    for leak in leaks:
        assert kind[tuple(leak.cells[0])] == Kind.OIL
        assert kind[tuple(leak.cells[-1])] in (Kind.OUTSIDE, Kind.OPEN)
        assert (np.abs(np.diff(leak.cells, axis=0)).max(axis=1) == 1).all()
        assert not sealed[tuple(leak.cells.T)].any()


@settings(deadline=None, max_examples=60)
@given(st.integers(0, 2**32 - 1), st.floats(0.5, 1.0))
def test_a_seal_is_joined_side_by_side(seed, density):
    # Duality in the plane: round one oil room without holes the face is tight exactly if a single
    # 4-joined piece of sealed cells is tight by itself.
    rng = np.random.default_rng(seed)
    kind = np.full((16, 20), Kind.OUTSIDE, dtype=np.uint8)
    kind[2:-2, 2:-2] = Kind.FACE
    kind[6:10, 6:14] = Kind.OIL
    ground = replace(SMALL, kind=kind, hole=np.full(kind.shape, -1, dtype=np.int16))
    ground = replace(ground, x_m=np.arange(20) * 1e-3, y_m=np.arange(16) * 1e-3)
    sealed = ground.is_face & (rng.random(kind.shape) < density)
    pieces, count = ndimage.label(sealed)
    alone = [not find_leaks(ground, pieces == n) for n in range(1, count + 1)]
    assert any(alone) == (not find_leaks(ground, sealed))


@pytest.mark.slow
@settings(deadline=None, max_examples=30)
@given(SMEARS)
def test_oil_and_dirt_never_help(smear):
    good = close(whole_film(LAND), PASTE, 1.0)
    spoilt = close(whole_film(LAND).lay(smear), PASTE, 1.0)
    assert good.tight
    assert spoilt.sealed_share <= good.sealed_share
    assert spoilt.thickness_m == pytest.approx(good.thickness_m)  # full, but it does not stick


@settings(deadline=None, max_examples=30)
@given(st.floats(0, 29.9), st.floats(30.1, 90))
def test_open_time(early, late):
    film = whole_film(LAND)
    assert close(film, PASTE, early).tight
    seal = close(film, PASTE, late)
    assert not seal.tight
    assert (seal.state == State.SKINNED).sum() > 0
    assert seal.sealed_share == 0


@settings(deadline=None, max_examples=30)
@given(st.floats(0, 40000), st.floats(0, 40000))
def test_more_clamp_closes_the_gap(one, two):
    low, high = sorted((one, two))
    gaps = [LAND.gap_m({"a": Q(n, "N"), "b": Q(n, "N")}) for n in (low, high)]
    assert (gaps[1] <= gaps[0] + 1e-15).all()
    assert (gaps[1] >= 10e-6 - 1e-15).all()


@settings(deadline=None, max_examples=30)
@given(
    st.floats(0.5, 6),
    st.lists(st.tuples(st.floats(10, 110), st.floats(10, 80)), min_size=2, max_size=6),
)
def test_bead_volume(diameter, points):
    stroke = Stroke.bead(Q(np.array(points), "mm"), diameter=Q(diameter, "mm"))
    film = Film.bare(LAND).lay(stroke)
    length = np.hypot(*np.diff(np.array(points), axis=0).T).sum()
    if length > 0:
        wanted = np.pi * diameter**2 / 4 * length * 1e-9
        assert film.laid_m3 == pytest.approx(wanted, rel=1e-9)
