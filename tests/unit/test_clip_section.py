"""A circlip in its groove: what is wrong with it, and a picture that shows it and does not say it."""

import re
from itertools import product

import pytest

from twoshaft.models.fit import SeatedClip, clip_faults
from twoshaft.plots.clip_section import ClipPicture
from twoshaft.readings import draw
from twoshaft.units import load_unit


@pytest.mark.parametrize(("bore", "push", "sharp"), list(product((True, False), repeat=3)))
def test_the_sharp_edge_faces_away_from_the_push(bore, push, sharp):
    wrong = () if push == sharp else ("edge",)
    assert clip_faults(SeatedClip(bore, push, sharp, 0)) == wrong
    assert clip_faults(SeatedClip(bore, push, sharp, 0.5)) == (*wrong, "seat")


def test_pictures_differ_by_each_thing_that_is_wrong_and_name_none():
    clips = [
        SeatedClip(*one) for one in product((True, False), (True, False), (True, False), (0, 0.9))
    ]
    assert len({ClipPicture(one).svg for one in clips}) == len(clips)
    for one in clips:
        ((_, felt),) = ClipPicture(one).spots
        assert not re.search("wrong|sharp|leave|renew|faces", felt)
        assert ("off the floor" in felt) == (one.off_mm > 0)
        assert f"on the {'left' if one.sharp_left else 'right'} rim" in felt


@pytest.mark.slow
def test_of_six_circlips_one_is_right_one_wrong_in_each_way_and_the_letters_are_ones_own():
    unit, letters = load_unit("tarnbeck-b5"), set()
    for n in range(60):
        given = draw("pressed-and-driven", unit, salt="s", learner=f"a{n}", attempt=1).locks
        found = [clip_faults(one) for one in given.clips]
        assert sorted(map(len, found)) == [0, 1, 1, 2, 2, 2]
        letters.add(tuple(found.index(one) for one in ((), ("edge",), ("seat",))))
        assert {one.id for one in given.asked} == {"leave", "turn", "renew"}
    assert len(letters) > 30
