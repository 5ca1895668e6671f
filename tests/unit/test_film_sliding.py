"""A face slid into place on its film: volume, direction, and what it does to lumps."""

from dataclasses import replace

import numpy as np
import pytest

from twoshaft.errors import OutOfRangeError
from twoshaft.models.film import Film, Hand, Kind, Work, slide
from twoshaft.rigs import sealant_rig
from twoshaft.rigs.sealant import SLIDES
from twoshaft.units.quantities import Q

WAYS = [(6, 0), (-6, 0), (0, 6), (0, -6), (3, -4), (20, 20)]


@pytest.fixture(scope="module", params=["case-joint", "end-cover"])
def work(unit, request):
    return Work.of(unit, {"face": request.param})


def slid(film, way):
    return slide(film, Q(np.array(way, dtype=float), "mm"))


def coated(work, size=0.1):
    return work.lay(work.everywhere(Hand.FILM, size))


def middle_mm(film, amount):
    land = film.land
    x, y = np.meshgrid(land.x_m, land.y_m)
    return np.array([(x * amount).sum(), (y * amount).sum()]) / amount.sum() * 1e3


@pytest.mark.parametrize("way", WAYS)
def test_nothing_is_lost_and_nothing_is_made(work, way):
    before = coated(work)
    after = slid(before, way)
    assert (after.thickness_m >= 0).all() and not after.thickness_m[~work.land.is_face].any()
    assert not after.beside_m[work.land.is_face].any()
    beside = after.beside_m.sum() * work.land.cell_m2
    assert after.volume_m3 + beside == pytest.approx(before.volume_m3, rel=1e-12)
    closed = work.close_film(after, 20.0).seal
    over = sum(closed.overflow(kind).m_as("m**3") for kind in Kind)
    held = closed.thickness_m.sum() * work.land.cell_m2
    assert held + over == pytest.approx(before.volume_m3, rel=1e-9)


def test_no_way_changes_nothing(work):
    before = coated(work)
    after = slid(before, (0, 0))
    assert np.array_equal(after.thickness_m, before.thickness_m) and not after.beside_m.any()


def test_a_dab_in_the_middle_of_the_face_moves_half_the_way(unit):
    # Couette flow between a still and a moved plate: mean speed is half that of the moved one
    # (any textbook of fluid mechanics).
    work = Work.of(unit, {"face": "case-joint"})
    land = work.land
    bare = Film.bare(land)
    spots = [
        (r, c)
        for r, c in np.argwhere(land.is_face)
        if land.is_face[r - 2 : r + 3, c - 2 : c + 3].all()
    ]
    row, column = spots[len(spots) // 2]
    thickness = np.zeros(land.kind.shape)
    thickness[row, column] = 3e-4
    film = replace(bare, thickness_m=thickness, minute=np.where(thickness > 0, 0.0, -np.inf))
    way = np.array([1.1, -0.7]) * land.pitch_m * 1e3
    after = slid(film, way)
    assert not after.beside_m.any()
    moved = middle_mm(after, after.thickness_m) - middle_mm(film, film.thickness_m)
    assert moved == pytest.approx(way / 2, rel=1e-9)


def test_a_film_below_the_gap_of_the_loose_faces_is_not_touched(work):
    land = work.land
    loose = land.gap_m({hole.id: Q(0, "N") for hole in work.face.holes})
    low = np.where(land.is_face, 0.99 * loose, 0.0)
    before = replace(Film.bare(land), thickness_m=low, minute=np.zeros(low.shape))
    assert not np.array_equal(
        slid(replace(before, thickness_m=1.02 * low), (6, 0)).thickness_m, low
    )
    assert np.array_equal(slid(before, (6, 0)).thickness_m, before.thickness_m)


def test_lumps_grow_on_the_side_to_which_it_was_slid(work):
    before = coated(work, 0.15)

    def lump(way):
        return work.close_film(slid(before, way), 20.0).seal.guides[0].lump_mm

    lumps = {way: lump(way) for way in ((6, 0), (-6, 0), (0, 6), (0, -6))}
    straight = work.close_film(before, 20.0).seal.guides[0].lump_mm
    assert max(lumps.values()) > 1.1 * straight
    assert min(lumps.values()) < straight


def test_too_far_is_refused(work):
    with pytest.raises(OutOfRangeError, match="way of the slide"):
        slid(coated(work), (21, 0))


def test_the_rig_tells_what_sliding_did(unit):
    stretches = [segment.id for segment in unit.faces.face_by_id("end-cover").segments]
    rig = sealant_rig(unit, "end-cover", start=[f"film 0.15 middle {s}" for s in stretches])
    rig.hear({"type": "shut", "closed": True})
    assert "seals" in rig.finding and "too much" not in rig.finding
    assert ["The other face was", "placed straight down"] in rig.view["facts"]
    rig.hear({"type": "slide", "by": "left-6"})
    assert rig.view["slide"] == "left-6" and "too much of it near" in rig.finding
    assert "slid by 6 mm to the left: that alone dragged" in dict(rig.view["facts"]).get(
        "The other face was"
    )
    rig.hear({"type": "slide", "by": "nowhere"})
    assert rig.view["slide"] == "left-6" and set(dict(rig.view["slides"])) == set(SLIDES)
