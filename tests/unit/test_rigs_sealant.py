"""The kernel's side of the sealant rig, driven by the messages a browser sends."""

import numpy as np
import pytest

from twoshaft.errors import AnswerError
from twoshaft.models.film import State
from twoshaft.rigs import sealant_rig

OIL = {"what": "oil", "points": [[76, 125], [76, 109]], "width_mm": 9}


@pytest.fixture
def stretches(unit):
    return [segment.id for segment in unit.faces.face_by_id("end-cover").segments]


def say(widget, **message):
    widget.sent = []
    widget.send = lambda content, buffers=None: widget.sent.append(content)
    widget._handle_custom_msg(message, [])
    return widget.sent


def film(stretches, size=0.1):
    return [f"film {size} middle {stretch}" for stretch in stretches]


def cells(rig):
    return np.frombuffer(rig.grid, dtype=np.uint8).reshape(rig.view["shape"])


def test_coat_and_close(unit, stretches):
    rig = sealant_rig(unit, "end-cover")
    assert rig.finding.startswith("0% of the face is coated, the face is clean and dry")
    assert say(rig, type="lay", entries=film(stretches), turn="t1") == []
    assert rig.view["turn"] == "t1" and len(rig.view["entries"]) == len(stretches)
    assert "45 minutes are left" in rig.finding
    say(rig, type="shut", closed=True)
    assert rig.finding.startswith("The face seals")
    assert set(np.unique(cells(rig))) == {State.NO_FACE, State.SEALED}
    assert rig.view["leaks"] == [] and rig.view["lumps"]


def test_oil_leaks_and_wiping_mends_it(unit, stretches):
    rig = sealant_rig(unit, "end-cover", start=film(stretches), spots=[OIL])
    assert "there is oil on it" in rig.finding and (cells(rig) & 16).any()
    say(rig, type="shut", closed=True)
    assert "sealant does not hold on oil" in rig.finding and "bolt 3 to bolt 4" in rig.finding
    assert len(rig.view["leaks"]) == 1
    say(rig, type="shut", closed=False)
    say(rig, type="lay", entries=["wipe middle from-3-to-4", "film 0.1 middle from-3-to-4"])
    say(rig, type="shut", closed=True)
    assert rig.finding.startswith("The face seals")


def test_minutes_pass_and_the_film_gets_too_old(unit, stretches):
    rig = sealant_rig(unit, "end-cover", start=film(stretches))
    for _ in range(10):
        say(rig, type="time", by=5)
    assert rig.view["minute"] == 50 and "5 minutes too old" in rig.finding
    say(rig, type="shut", closed=True)
    assert "too old when the face came on" in rig.finding


def test_the_same_film_on_faces_further_out_of_flat(unit, stretches):
    rig = sealant_rig(unit, "end-cover", start=film(stretches), closed=True)
    tight = rig.finding
    say(rig, type="flat", um=150)
    assert "the gap is not filled" in rig.finding and rig.view["flat"] == 150
    say(rig, type="flat", um=50)
    assert rig.finding == tight


def test_taking_back_equals_never_having_laid(unit, stretches):
    rig = sealant_rig(unit, "end-cover")
    say(rig, type="lay", entries=film(stretches[:2]))
    once = rig.grid
    say(rig, type="lay", entries=["bead 3 at 10,10 40,30"])
    assert rig.grid != once
    say(rig, type="remove", at=2)
    assert rig.grid == once
    say(rig, type="clear")
    assert rig.view["entries"] == [] and not (cells(rig) > 1).any()


@pytest.mark.parametrize(
    "message",
    [
        {"type": "lay", "entries": "film"},
        {"type": "lay", "entries": [None]},
        {"type": "lay", "entries": ["film 99 middle from-1-to-2"]},
        {"type": "lay"},
    ],
)
def test_what_is_no_pass_is_told_on_the_screen(unit, message):
    rig = sealant_rig(unit, "end-cover")
    before = rig.view
    (told,) = say(rig, **message)
    assert told["type"] == "trouble" and told["reason"]
    assert rig.view == before


@pytest.mark.parametrize(
    "message",
    [
        {"type": "time", "by": "soon"},
        {"type": "time", "by": -9},
        {"type": "time", "by": float("nan")},
        {"type": "flat", "um": None},
        {"type": "remove", "at": "x"},
        {"type": "remove", "at": 99},
        {"type": "dance"},
        {},
    ],
)
def test_odd_messages_do_no_harm(unit, message):
    rig = sealant_rig(unit, "end-cover")
    assert say(rig, **message) == []
    assert rig.view["minute"] == 0 and rig.view["entries"] == []


def test_nothing_is_laid_on_a_closed_face(unit):
    rig = sealant_rig(unit, "end-cover", closed=True)
    (told,) = say(rig, type="lay", entries=["film 0.1 middle from-1-to-2"])
    assert "closed" in told["reason"]
    with pytest.raises(AnswerError):
        sealant_rig(unit, "end-cover", start=["film"])


def test_words_for_every_state_and_the_plain_copy(unit, stretches):
    rig = sealant_rig(unit, "end-cover", start=film(stretches), closed=True)
    assert {code for code, *_ in rig.looks["closed"]} == set(State) - {State.NO_FACE}
    hatches = [hatch for *_, hatch in rig.looks["closed"]]
    assert len(set(hatches)) == len(hatches)
    copy = rig.plain_copy()
    assert rig.finding in copy and "film by roller 0.1 mm, From bolt 1 to bolt 2" in copy
    assert "<script" not in copy
