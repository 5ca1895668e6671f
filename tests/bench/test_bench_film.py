"""Film, shim and bearing calls that a slider drives, against a peer measured in the same run.

The peer is one distance transform of a 400 x 300 grid, compiled code of the same order of work.
Ratios are printed; nothing absolute is asserted.
"""

import statistics
import time

import numpy as np
import pytest
from scipy import ndimage

from twoshaft.models.bearing import Pair, cord_pull, life_against_setting
from twoshaft.models.bearing.drag import turned
from twoshaft.models.bearing.heat import support_change
from twoshaft.models.film import Film, Land, Stroke, close, good_strokes
from twoshaft.models.shim import Stack, choose, reach, stack_budget
from twoshaft.units.loader import load_unit
from twoshaft.units.quantities import Q

pytestmark = pytest.mark.bench


def seconds(call, repeats=15):
    call()
    times = []
    for _ in range(repeats):
        start = time.perf_counter()
        call()
        times.append(time.perf_counter() - start)
    return statistics.median(times)


@pytest.fixture(scope="module")
def unit():
    return load_unit("tarnbeck-b5")


@pytest.fixture(scope="module")
def peer():
    ground = np.zeros((300, 400), dtype=bool)
    ground[::7, ::5] = True
    return seconds(lambda: ndimage.distance_transform_edt(~ground))


def say(name, time_s, peer):
    print(f"\n{name:44s} {time_s * 1e3:8.2f} ms  {time_s / peer:6.2f} x the peer")


def test_film(unit, peer):
    for face in unit.faces.faces:
        land = Land.of(face)
        assert land.kind.size >= 400 * 300
        sealant = unit.faces.sealant_by_id(face.sealant)
        line = Q(np.array(face.segments[0].points), "mm")
        film = Film.bare(land).lay(*good_strokes(face))
        fat = Film.bare(land).lay(
            *[Stroke.bead(Q(np.array(s.points), "mm"), diameter=Q(5, "mm")) for s in face.segments]
        )
        roller = Stroke.roller(line, width=Q(10, "mm"), thickness=Q(0.1, "mm"))
        bead = Stroke.bead(line, diameter=Q(2, "mm"))
        calls = {
            "lay a roller stroke": lambda film=film, roller=roller: film.lay(roller),
            "lay a bead": lambda film=film, bead=bead: film.lay(bead),
            "close on a film": lambda film=film, sealant=sealant: close(film, sealant, 5.0),
            "close on fat beads": lambda fat=fat, sealant=sealant: close(fat, sealant, 5.0),
            "close on a skinned film": lambda film=film, sealant=sealant: close(film, sealant, 60),
        }
        for name, call in calls.items():
            took = seconds(call)
            say(f"{face.id}: {name}", took, peer)
            assert took > 0
        start = time.perf_counter()
        Land.of(face)
        say(f"{face.id}: make the grid", time.perf_counter() - start, peer)


def test_shim_and_bearing(unit, peer):
    support = unit.bearings.supports[0]
    bearings = unit.bearings
    pair = Pair.from_support(support, bearings)
    shelf = Q(list(bearings.shim_set_by_id(bearings.supports[1].shim_set).thicknesses_mm), "mm")
    window = (Q(0.67, "mm"), Q(0.73, "mm"))
    settings = Q(np.linspace(-0.15, 0.12, 121), "mm")
    radial = tuple(Q(n, "N") for n in support.radial_load_n)
    calls = {
        "setting of a stack": lambda: Stack.from_support(support).interference(Q(1.1, "mm")),
        "uncertainty of a stack": lambda: stack_budget(support).expanded(),
        "choose one or two shims": lambda: choose(shelf, window, Q(0.01, "mm"), 2),
        "reach of a set of pairs": lambda: reach(
            shelf, (Q(0.4, "mm"), Q(1.0, "mm")), Q(0.03, "mm"), at_most=2
        ),
        "preload over 121 settings": lambda: pair.preload(settings),
        "loads under an axial load": lambda: pair.loads(Q(0.05, "mm"), Q(500, "N")),
        "life over 121 settings": lambda: life_against_setting(
            pair, settings, radial, Q(500, "N"), Q(900, "rpm")
        ),
        "change with heat": lambda: support_change(support, bearings),
        "pull on a cord": lambda: cord_pull(
            turned(support, bearings, Q(2000, "N"), ("seal",)), Q(40, "mm")
        ),
    }
    for name, call in calls.items():
        took = seconds(call)
        say(name, took, peer)
        assert took > 0
