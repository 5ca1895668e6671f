"""A face at the bench: passes, the clock, bolt holes, surplus, and what closing finds."""

from dataclasses import replace

import numpy as np
import pytest

from twoshaft.errors import OutOfRangeError
from twoshaft.models.film import (
    Bar,
    Hand,
    Land,
    Pass,
    Side,
    State,
    Work,
    bars,
    half_round,
    leaking_holes,
    line_mm,
    nearest_stretch,
    surplus,
)
from twoshaft.units.quantities import Q

FACES = ["case-joint", "end-cover"]
OIL = {"what": "oil", "points": [[76, 125], [76, 109]], "width_mm": 9}


@pytest.fixture(scope="module", params=FACES)
def work(unit, request):
    return Work.of(unit, {"face": request.param})


def test_a_pass_keeps_clear_of_the_holes_it_swings_round(work):
    for hole in work.face.holes:
        centre = np.array([hole.x_mm, hole.y_mm])
        for side in (Side.INSIDE, Side.OUTSIDE):
            for segment in work.face.segments:
                line = line_mm(work.face, Pass(Hand.BEAD, 1.0, side, segment.id))
                assert np.hypot(*(line - centre).T).min() > hole.diameter_mm / 2 + 1


def test_inside_is_nearer_the_middle_of_the_oil(work):
    middle = np.mean(work.face.cavities[0].outline, axis=0)
    for segment in work.face.segments:
        away = {
            side: np.hypot(*(line_mm(work.face, Pass(Hand.BEAD, 1, side, segment.id))[0] - middle))
            for side in (Side.INSIDE, Side.MIDDLE, Side.OUTSIDE)
        }
        assert away[Side.INSIDE] < away[Side.MIDDLE] < away[Side.OUTSIDE]


def test_unknown_places_are_refused(work):
    with pytest.raises(OutOfRangeError):
        line_mm(work.face, Pass(Hand.FILM, 0.1, Side.MIDDLE, "nowhere"))
    with pytest.raises(OutOfRangeError):
        line_mm(work.face, Pass(Hand.FILM, 0.1, Side.ROUND, "from-1-to-2"))


def test_the_nearest_stretch_to_its_own_middle(work):
    for segment in work.face.segments:
        assert nearest_stretch(work.face, *segment.points[len(segment.points) // 2]) == segment.id


def test_the_clock_starts_with_the_first_sealant(work):
    wiped = work.everywhere(Hand.WIPE, 0.0)
    laid = work.everywhere(Hand.FILM, 0.1)
    assert work.clock([*wiped, *laid])[: len(wiped) + 1] == [0.0] * (len(wiped) + 1)
    expected = work.length_mm / 100 * work.pace.film + work.pace.close
    assert work.minutes_taken([*wiped, *laid]) == pytest.approx(expected)
    assert work.minutes_taken([]) == work.pace.close


def test_a_film_of_a_fifth_more_than_the_gap_is_good_and_finds_itself(work):
    passes = work.good_passes()
    assert work.close(passes).good
    assert {done.hand for done in passes} == {Hand.FILM}


def test_too_thin_leaks_where_the_gap_is_wide_and_too_fat_endangers(work):
    thin = work.close(work.everywhere(Hand.FILM, 0.02))
    assert thin.leaks and {reason for _, reason in thin.leaks} == {State.EMPTY}
    fat = work.close(work.everywhere(Hand.BEAD, 3.0))
    assert not fat.leaks and fat.endangered and fat.flooded and not fat.good
    for near, place in fat.endangered:
        assert place == nearest_stretch(work.face, near.guide.x_mm, near.guide.y_mm)


def test_a_blind_hole_takes_its_limit_and_no_more(work):
    bead = work.everywhere(Hand.BEAD, 3.0)
    id, most = max(work.close(bead).flooded, key=lambda one: one[1])
    assert replace(work, blind_mm3=most).close(bead).flooded == ()
    assert replace(work, blind_mm3=np.nextafter(most, 0)).close(bead).flooded == ((id, most),)


def test_a_bare_stretch_is_named(work):
    for segment in work.face.segments[::3]:
        laid = [p for p in work.everywhere(Hand.FILM, 0.1) if p.place != segment.id]
        assert segment.id in dict(work.close(laid).leaks)


def test_oil_leaks_until_it_is_wiped(unit):
    work = Work.of(unit, {"face": "end-cover", "spots": [OIL]})
    film = work.everywhere(Hand.FILM, 0.1)
    assert work.spoilt == ("from-3-to-4",)
    assert work.close(film).leaks == (("from-3-to-4", State.OILY),)
    assert work.close([*work.wiping, *film]).good
    # Wiping afterwards takes the film off too.
    assert work.close([*film, *work.wiping]).leaks == (("from-3-to-4", State.EMPTY),)


def test_too_slow_a_film_is_skinned_and_a_bead_is_chosen(unit):
    slow = {"face": "case-joint", "minutes": 12, "pace": {"film": 2.0, "bead": 0.2, "close": 4}}
    work = Work.of(unit, slow)
    late = work.close(work.everywhere(Hand.FILM, 0.1))
    assert {reason for _, reason in late.leaks} == {State.SKINNED}
    assert {done.hand for done in work.good_passes()} == {Hand.BEAD}


@pytest.mark.slow
@pytest.mark.parametrize("size", [0.03, 0.1, 0.4])
def test_a_finer_grid_finds_the_same(unit, work, size):
    fine = Work(work.face, work.sealant, cells=(400, 300))
    coarse, finer = (w.close(w.everywhere(Hand.FILM, size)) for w in (work, fine))
    assert bool(coarse.leaks) == bool(finer.leaks)
    assert {n.guide.id for n, _ in coarse.endangered} == {n.guide.id for n, _ in finer.endangered}


@pytest.mark.parametrize("face", FACES)
def test_where_a_bead_leaks_at_the_bolts(unit, face):
    ids = [hole.id for hole in unit.faces.face_by_id(face).holes]
    shut = Land.of(unit.faces.face_by_id(face))
    out = Land.of(Work.of(unit, {"face": face, "open_holes": ids}).face)
    for side, (closed, opened) in {
        Side.INSIDE: ([], []),
        Side.OUTSIDE: ([], ids),
        Side.MIDDLE: (ids, ids),
        Side.ROUND: ([], []),
    }.items():
        passed = dict.fromkeys(ids, side)
        assert leaking_holes(shut, passed, Q(4, "mm")) == tuple(closed)
        assert leaking_holes(out, passed, Q(4, "mm")) == tuple(opened)
    one = dict.fromkeys(ids, Side.INSIDE) | {ids[2]: Side.OUTSIDE}
    assert leaking_holes(out, one, Q(4, "mm")) == (ids[2],)


def test_surplus_and_the_half_round_keep_the_volume():
    over = surplus(Q(0.3, "mm"), Q(0.06, "mm"), Q(12, "mm"), Q(100, "mm"))
    assert over.m_as("mm**3") == pytest.approx(288)
    radius = half_round(over / 2, Q(100, "mm")).m_as("mm")
    assert np.pi * radius**2 / 2 * 100 == pytest.approx(144)
    assert surplus(Q(50, "um"), Q(0.06, "mm"), Q(12, "mm"), Q(100, "mm")).m == 0
    with pytest.raises(OutOfRangeError):
        half_round(Q(1, "mm**2"), Q(1, "mm"))


@pytest.mark.parametrize(
    ("gap", "minutes", "rigid", "slow", "quick"),
    [
        (0.1, 10, True, (), ()),
        (0.5, 10, True, (Bar.GAP,), ()),
        (0.1, 10, False, (Bar.FLEXES,), ()),
        (0.1, 30, True, (), (Bar.TIME,)),
        (1.5, 60, True, (Bar.GAP, Bar.TIME), (Bar.GAP, Bar.TIME)),
    ],
)
def test_what_bars_a_sealant(unit, gap, minutes, rigid, slow, quick):
    anaerobic = unit.faces.sealant_by_id("metal-face-sealant")
    moisture = unit.faces.sealant_by_id("case-sealant")
    asked = {"gap": Q(gap, "mm"), "minutes": minutes, "rigid": rigid}
    assert bars(anaerobic, **asked) == slow
    assert bars(moisture, **asked) == quick
