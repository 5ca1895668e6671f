"""Squeeze films, beads and leak search against formulas, integration and other packages."""

import math

import networkx as nx
import numpy as np
import pytest

from twoshaft.models.film import (
    Film,
    Kind,
    Land,
    Stroke,
    find_leaks,
    spread,
)
from twoshaft.models.film.land import fill_polygon
from twoshaft.units.quantities import Q


def test_surplus_of_a_dab_makes_a_disc(frame):
    """Source: Levine and Peres 2009: the divisible sandpile from a point fills a disc; so does
    Hele-Shaw flow, V = pi R² gap.
    """
    land = Land.of(
        frame(
            outline=[(0, 0), (100, 0), (100, 75), (0, 75)],
            cavities=[
                {
                    "id": "oil",
                    "name": "Oil",
                    "kind": "oil",
                    "outline": [(96, 71), (98, 71), (98, 73)],
                }
            ],
        )
    )
    film = Film.bare(land).lay(Stroke.bead(Q([(50.0, 37.0)], "mm"), diameter=Q(8, "mm")))
    gap = np.full(land.kind.shape, 0.2e-3)
    after = spread(land, film.thickness_m, gap).thickness_m
    radius = math.sqrt(film.volume_m3 / (math.pi * 0.2e-3))
    away = np.hypot(land.x_m - 0.050, land.y_m[:, None] - 0.037)
    assert (after[away < radius - 2 * land.pitch_m] > 0.99 * 0.2e-3).all()
    assert (after[away > radius + 2 * land.pitch_m] < 1e-9).all()


@pytest.mark.parametrize("density", [0.35, 0.5, 0.6, 0.7, 0.9])
def test_leak_search_against_a_graph_library(frame, density):
    """Source: networkx 3.6: a way exists iff the grid graph of what does not seal joins inside
    and outside.
    """
    land = Land.of(
        frame(
            holes=[
                {"id": "a", "x_mm": 6, "y_mm": 40, "diameter_mm": 6},
                {"id": "b", "x_mm": 50, "y_mm": 6, "diameter_mm": 6, "open": True},
                {"id": "c", "x_mm": 94, "y_mm": 40, "diameter_mm": 6},
            ]
        ),
        (44, 34),
    )
    rng = np.random.default_rng(int(density * 100))
    seen = set()
    for _ in range(25):
        sealed = land.is_face & (rng.random(land.kind.shape) < density)
        open_cells = ~sealed
        graph = nx.Graph()
        cells = {tuple(c) for c in np.argwhere(open_cells)}
        graph.add_nodes_from(cells)
        for row, column in cells:
            for step in ((0, 1), (1, 0), (1, 1), (1, -1)):
                other = (row + step[0], column + step[1])
                if other in cells:
                    graph.add_edge((row, column), other)
        oil = [tuple(c) for c in np.argwhere(land.kind == Kind.OIL)]
        out = [
            tuple(c) for c in np.argwhere((land.kind == Kind.OUTSIDE) | (land.kind == Kind.OPEN))
        ]
        graph.add_edges_from([("oil", c) for c in oil] + [("out", c) for c in out])
        leaks = find_leaks(land, sealed)
        assert bool(leaks) == nx.has_path(graph, "oil", "out")
        seen.add(bool(leaks))
        for leak in leaks:
            ends = [land.kind[tuple(leak.cells[k])] for k in (0, -1)]
            assert ends[0] == Kind.OIL
            assert ends[1] in (Kind.OUTSIDE, Kind.OPEN)
            assert (np.abs(np.diff(leak.cells, axis=0)).max(axis=1) == 1).all()
            assert open_cells[tuple(leak.cells.T)].all()
        if leaks:
            shortest = nx.shortest_path_length(graph, "oil", "out") - 1
            assert min(len(leak.cells) for leak in leaks) == shortest
    assert seen == ({True, False} if density == 0.9 else {True})


def test_polygon_fill_against_shapely():
    """Source: shapely 2.2, contains_xy on cell centres."""
    shapely = pytest.importorskip("shapely")
    polygon = np.array([(3.1, 2.2), (36.3, 5.1), (30.2, 28.4), (20.1, 14.3), (6.7, 27.2)])
    x, y = np.arange(41) * 1.0, np.arange(31) * 1.0
    ours = fill_polygon(polygon, x, y)
    shape = shapely.Polygon(polygon)
    theirs = shapely.contains_xy(shape, *np.meshgrid(x, y))
    assert (ours == theirs).all()
