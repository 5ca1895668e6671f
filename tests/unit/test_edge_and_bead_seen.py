"""Pictures of sealant: what came out at an edge, and a bead round bolt holes."""

import re
from dataclasses import replace

import pytest

from twoshaft.models.film import Land, SeenEdge, Side, Work, edge_faults, leaking_holes
from twoshaft.plots.bead_pointed import BeadPicture
from twoshaft.plots.bolts_pointed import BoltsPicture
from twoshaft.plots.edge_seen import EdgePicture
from twoshaft.readings import draw
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q

UNIT = load_unit("tarnbeck-b5")
ALONG = SeenEdge(out_mm=((0, 120),), high_mm=0.5, bound_mm=0.8)


def given(n, attempt=1):
    return draw("sealant-film", UNIT, salt="s", learner=f"a{n}", attempt=attempt)


@pytest.fixture(scope="module")
def some():
    return [given(n) for n in range(6)]


@pytest.mark.parametrize(
    ("out", "bare"),
    [(((0, 120),), False), (((0, 60), (60, 120)), False), (((0, 60), (61, 120)), True),
     (((2, 120),), True), (((0, 118),), True), ((), True)],
)  # fmt: skip
def test_an_edge_is_bare_where_nothing_came_out(out, bare):
    assert edge_faults(replace(ALONG, out_mm=out)) == (("bare",) if bare else ())
    assert edge_faults(replace(ALONG, out_mm=out, high_mm=0.9))[-1:] == ("fat",)


@pytest.mark.slow
def test_of_six_edges_one_is_right_one_wrong_in_each_way_and_none_says_so(some):
    orders = set()
    for one in some:
        found = [edge_faults(edge) for edge in one.edge.seen]
        assert sorted(map(len, found)) == [0, 1, 1, 2, 2, 2]
        orders.add(tuple(found))
        shown = [EdgePicture(edge) for edge in one.edge.seen]
        assert len({picture.svg for picture in shown}) == len({p.felt for p in shown}) == 6
        for picture, edge in zip(shown, one.edge.seen, strict=True):
            assert not re.search("bare|fat|right|wrong|wipe|renew|less|more", picture.felt)
            assert abs(edge.high_mm / edge.bound_mm - 1) > 0.25  # read by the scale, never near
    assert len(orders) > 3


def test_a_bead_is_seen_with_a_letter_at_each_hole_and_no_key(some):
    turned, letters = set(), set()
    for one in some:
        holes, picture = one.holes, BeadPicture(UNIT, one.holes)
        felt = dict(picture.spots)
        assert sorted(felt) == list("ABCDEFGH") and len(set(felt.values())) == 8
        assert picture.svg.count("data-spot=") == 8
        assert not any(f'"{row.id}"' in picture.svg for row in holes.rows)
        assert not re.search("leak|tight|dry|gets out", picture.svg + str(felt))
        turned.add(holes.turned_deg)
        letters.add(tuple(row.letter for row in holes.rows))
        marked = picture.marked({"A": "right 1", "B": "yours 1"})
        assert "right 1" in marked and "yours 1" in marked
    assert len(turned) > 1 and len(letters) == len(some)


def test_letters_on_a_face_take_the_ink_of_the_page(some):
    """Letters without a colour of their own would be black on a dark page."""
    joints = draw("threaded-joints", UNIT, salt="s", learner="a1", attempt=1)
    for picture in (BeadPicture(UNIT, some[0].holes), BoltsPicture(UNIT, joints.pattern.seen)):
        letters = re.findall(r'<text[^>]*class="tss-letter"[^>]*>', picture.svg)
        assert letters and all("--jp-content-font-color1" in one for one in letters)


def test_each_kind_of_hole_is_there_to_be_pointed_at(some):
    for one in some:
        holes = one.holes
        sides = {id: Side(side) for id, side in holes.sides.items()}
        leaks = leaking_holes(Land.of(Work.of(UNIT, holes.job).face), sides, Q(4.0, "mm"))
        tight = [row.id for row in holes.rows if row.id not in leaks]
        stands = [id for id in tight if sides[id] is Side.OUTSIDE]
        kept = [id for id in tight if id not in stands and id in holes.open_holes]
        assert (len(leaks), len(stands), len(kept), len(tight)) == (3, 2, 2, 5)
        assert {line.id for line in holes.asked} == {"leaks", "stands", "kept", "dry"}
