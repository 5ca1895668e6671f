"""Film volumes and the time to press a strip out, against geometry and integration."""

import math

import numpy as np
import pytest

from twoshaft.models.film import Film, Land, Stroke, bead_to_film, spread, squeeze_time_strip
from twoshaft.units.quantities import Q

MU, CLAMP = Q(100, "Pa*s"), Q(1000, "N")
START, END = Q(1, "mm"), Q(0.1, "mm")


def closing_by_steps(resistance_m3):
    """Integrate dh/dt = -F h^3 / resistance from 1 mm to 0.1 mm [s]."""
    from scipy.integrate import solve_ivp

    def until(_, h):
        return h[0] - 1e-4

    until.terminal = True
    run = solve_ivp(
        lambda _, h: [-1000 * h[0] ** 3 / resistance_m3],
        (0, 10),
        [1e-3],
        events=until,
        rtol=1e-10,
        atol=1e-14,
    )
    return run.t_events[0][0]


@pytest.fixture
def wide_face(frame):
    """A face of 200 x 150 mm that is all land but for a small oil room in a corner."""
    corner = [(190, 140), (195, 140), (195, 145)]
    return frame(
        outline=[(0, 0), (200, 0), (200, 150), (0, 150)],
        cavities=[{"id": "oil", "name": "Oil", "kind": "oil", "outline": corner}],
    )


def test_strip():
    # Long strip 100 x 10 mm (Reynolds; recomputed): 0.49500 s.
    time = squeeze_time_strip(MU, Q(100, "mm"), Q(10, "mm"), CLAMP, START, END).m_as("s")
    assert time == pytest.approx(0.49500, rel=1e-4)
    assert time == pytest.approx(closing_by_steps(100 * 0.1 * 0.01**3), rel=1e-6)


@pytest.mark.parametrize(
    ("diameter", "width", "film"),
    # pi d^2 / 4 over the width, recomputed (mm).
    [(2, 12, 0.262), (3, 20, 0.353)],
)
def test_bead_to_film(diameter, width, film):
    assert bead_to_film(Q(diameter, "mm"), Q(width, "mm")).m_as("mm") == pytest.approx(
        film, abs=5e-4
    )


def test_volumes_as_laid(wide_face):
    # Solid geometry: a dab is a ball, a bead a cylinder, a roller stroke a plate with round ends.
    bare = Film.bare(Land.of(wide_face))
    line = Q([(40.0, 75.0), (140.0, 75.0)], "mm")
    dab = bare.lay(Stroke.bead(Q([(50.0, 37.0)], "mm"), diameter=Q(6, "mm")))
    assert dab.laid_m3 * 1e9 == pytest.approx(math.pi / 6 * 6**3, rel=1e-9)
    bead = bare.lay(Stroke.bead(line, diameter=Q(3, "mm")))
    assert bead.volume_m3 * 1e9 == pytest.approx(math.pi / 4 * 3**2 * 100, rel=1e-9)
    roller = bare.lay(Stroke.roller(line, width=Q(12, "mm"), thickness=Q(0.2, "mm")))
    plate = (12 * 100 + math.pi / 4 * 12**2) * 0.2
    assert roller.volume_m3 * 1e9 == pytest.approx(plate, rel=2e-3)


def test_a_bead_spreads_to_its_film_width(wide_face):
    # A long bead of d 2 mm in a gap of 0.262 mm becomes 12 mm wide (volume, as above): the land.
    land = Land.of(wide_face)
    film = Film.bare(land).lay(
        Stroke.bead(Q([(20.0, 75.0), (180.0, 75.0)], "mm"), diameter=Q(2, "mm"))
    )
    gap = np.full(land.kind.shape, 0.262e-3)
    after = spread(land, film.thickness_m, gap).thickness_m
    middle = np.argmin(np.abs(land.x_m - 0.1))
    wet = (after[:, middle] > 0.5 * 0.262e-3).sum() * land.pitch_m
    assert wet == pytest.approx(12e-3, abs=2 * land.pitch_m)


@pytest.mark.slow
@pytest.mark.parametrize("diameter", [4.0, 6.0, 7.3])
def test_a_dab_is_as_thick_as_a_ball(wide_face, diameter):
    """2 sqrt(r² - s²) at the distance s from its middle, to all sides alike."""
    land = Land.of(wide_face)
    x, y = land.x_m[120] * 1e3, land.y_m[90] * 1e3
    film = Film.bare(land).lay(Stroke.bead(Q([(x, y)], "mm"), diameter=Q(diameter, "mm")))
    away_mm = np.hypot(land.x_m * 1e3 - x, land.y_m[:, None] * 1e3 - y)
    ball_mm = 2 * np.sqrt(np.maximum((diameter / 2) ** 2 - away_mm**2, 0))
    assert film.thickness_m * 1e3 == pytest.approx(ball_mm, rel=0.03, abs=1e-9)
