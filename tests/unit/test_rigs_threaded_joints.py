"""The kernel's side of the rigs for threads and bolted faces, driven by a browser's messages."""

from html import unescape

import numpy as np
import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models import joint
from twoshaft.plots.bolts_pointed import BoltsPicture
from twoshaft.readings.threaded_joints.given import Seen
from twoshaft.records import Option
from twoshaft.rigs import face_tightening, thread_chooser
from twoshaft.units.quantities import Q

COVER = "gate-cover-bolts"


@pytest.fixture
def cover(unit):
    return face_tightening(unit, COVER)


def say(widget, **message):
    widget.sent = []
    widget.send = lambda content, buffers=None: widget.sent.append(content)
    widget._handle_custom_msg(message, [])
    return widget.sent


def test_no_wrench_before_every_bolt_is_started_by_hand(cover):
    say(cover, type="pull", bolt=1, torque=8.5)
    assert cover.view["started"] == [False, True, False, False, False, False]
    say(cover, type="pull", bolt=1, torque=8.5)
    assert "by hand first" in cover.sentence
    assert not cover.pulls
    assert cover.clamp_kn.max() == 0


def test_any_sequence_is_the_models(unit, cover):
    say(cover, type="start")
    for bolt, torque in ((0, 4.0), (3, 4.0), (0, 8.5), (1, 8.5), (4, 8.5), (3, 8.5)):
        assert say(cover, type="pull", bolt=bolt, torque=torque) == []
    fastening = joint.Fastening.of(unit, COVER)
    target = fastening.bounds().typical_n
    rounds = [joint.Round((0, 3), target * 4 / 8.5), joint.Round((0, 1, 4, 3), target)]
    want = joint.tighten(fastening.face(), rounds)
    assert cover.clamp_kn == pytest.approx(want.clamp_n / 1e3, rel=1e-9)
    assert cover.view["last"] == 3


def test_rounds_even_out_and_the_finding_says_so(cover):
    say(cover, type="start")
    say(cover, type="round", pattern="clockwise", torque=8.5)
    assert "beyond the 15%" in cover.finding
    assert "less than the 4.5 kN needed" in cover.finding
    first = cover.spread
    for _ in range(3):
        say(cover, type="round", pattern="clockwise", torque=8.5)
    assert "within the 15%" in cover.finding
    assert cover.spread < first / 5


def test_a_wrench_never_loosens(cover):
    say(cover, type="start")
    say(cover, type="round", pattern="crosswise", torque=8.5)
    before = cover.clamp_kn.copy()
    say(cover, type="pull", bolt=int(before.argmax()), torque=2.0)
    assert cover.clamp_kn == pytest.approx(before)
    assert "a wrench never loosens" in cover.sentence


def test_the_far_side_gapes_under_one_tight_bolt(cover):
    say(cover, type="start")
    say(cover, type="pull", bolt=0, torque=8.5)
    assert "mm apart near" in cover.finding
    assert "near bolt 4" in cover.finding


def test_a_film_that_runs_out_takes_clamp(cover):
    say(cover, type="set", film=40)
    say(cover, type="start")
    for _ in range(2):
        say(cover, type="round", pattern="crosswise", torque=8.5)
    wet = cover.clamp_kn.copy()
    assert cover.view["standing"]
    say(cover, type="wait")
    assert np.all(cover.clamp_kn < wet)
    assert not cover.view["standing"]
    assert "lost up to" in cover.sentence
    say(cover, type="round", pattern="crosswise", torque=8.5)
    assert cover.clamp_kn.min() > wet.min() * 0.9


def test_rounds_do_not_cure_friction(cover):
    say(cover, type="set", scattered=True)
    say(cover, type="start")
    for _ in range(8):
        say(cover, type="round", pattern="crosswise", torque=8.5)
    assert cover.spread > 0.08


def test_take_back_and_start_again(cover):
    say(cover, type="start")
    say(cover, type="pull", bolt=0, torque=8.5)
    one = cover.clamp_kn.copy()
    say(cover, type="pull", bolt=1, torque=8.5)
    say(cover, type="undo")
    assert cover.clamp_kn == pytest.approx(one)
    say(cover, type="again")
    assert cover.clamp_kn.max() == 0
    assert cover.view["started"] == [False] * 6


def test_in_marked_work_it_gives_readings_and_no_answer(unit):
    rig = face_tightening(unit, COVER, torque=Q(8.2, "N*m"), joint_share=1.2, readings_only=True)
    say(rig, type="start")
    for bolt in (2, 0, 4, 1, 5, 3):
        say(rig, type="pull", bolt=bolt, torque=8.2)
    shown = rig.finding + rig.sentence + rig.plain_copy()
    assert "pread" not in shown
    assert rig.plan["rounds"] == []
    assert f"{rig.clamp_kn.min():.1f} kN" in rig.view["bars"]


def test_a_group_without_a_flange_is_refused(unit):
    with pytest.raises(UnitFileError, match="no flange"):
        face_tightening(unit, "idler-bolt")


def test_a_bad_message_is_told_on_the_rig(cover):
    say(cover, type="start")
    (told,) = say(cover, type="pull", bolt=0, torque=-1.0)
    assert told["type"] == "trouble"
    assert told["reason"]
    assert not cover.pulls


def test_the_drawing_has_every_bolt_as_a_button(unit):
    for group in ("case-bolts", COVER):
        drawing = face_tightening(unit, group).plan["drawing"]
        count = joint.Fastening.of(unit, group).group.count
        assert drawing.count('role="button"') == count
        assert drawing.count("data-bolt=") == count


def test_bolts_are_pointed_at_by_letters_of_ones_own(unit):
    letters = "NMLKJIHGFEDCBA"
    spots = tuple(Option(letter, str(k)) for k, letter in enumerate(letters, 1))
    felt = {}
    for turned in (0, 90):
        picture = BoltsPicture(unit, Seen("case-bolts", turned, (3, 10), spots))
        assert picture.svg.count("data-mark=") == picture.svg.count("data-spot=") == len(letters)
        felt[turned] = dict(picture.spots)
        assert [k for k, text in felt[turned].items() if text.startswith("a tight")] == ["E", "L"]
        assert ">right</text>" in picture.marked({"A": "right"})
        assert "bolt 3" not in picture.svg
    assert felt[0] != felt[90]


def test_the_chooser_agrees_with_the_unit(unit):
    for group in ("case-bolts", "oil-plugs"):
        rig = thread_chooser(unit, group)
        fastening = joint.Fastening.of(unit, group)
        found, bounds = rig.judge(), fastening.bounds()
        assert found["low"] == pytest.approx(bounds.low_n / 1e3)
        assert found["high"] == pytest.approx(bounds.high_n / 1e3)
        assert found["holds"] == pytest.approx(fastening.strip().holds_n / 1e3)


def test_the_chooser_follows_every_control(unit):
    rig = thread_chooser(unit, "case-bolts")
    base = rig.judge()
    assert base["useful"] == pytest.approx(0.12, abs=0.02)
    say(rig, type="choose", chosen={"state": "oiled"})
    assert rig.judge()["high"] > base["high"]
    say(rig, type="choose", chosen={"state": "as-delivered", "tool": "feel"})
    assert rig.judge()["low"] < base["low"]
    say(rig, type="choose", chosen={"engagement_mm": 6.0})
    assert rig.judge()["first"] == "hole thread strips"
    assert "strip" in rig.finding
    say(rig, type="choose", chosen={"torque_nm": 10.0, "tool": "middle-wrench"})
    assert "can be loose" in rig.finding
    say(rig, type="choose", chosen={"thread": "M6", "torque_nm": 30.0})
    assert "yield" in rig.finding
    say(rig, type="choose", chosen={"group": "oil-plugs"})
    assert rig.chosen.thread == "M18x1.5"
    copy, facts = rig.plain_copy(), [text for _, text in rig.view["facts"]]
    assert rig.view["band"] in copy and rig.view["section"] in copy
    assert facts and [fact for fact in facts if fact not in unescape(copy)] == []


def test_the_chooser_keeps_its_place_when_the_model_refuses(unit):
    rig = thread_chooser(unit, "case-bolts")
    (told,) = say(rig, type="choose", chosen={"engagement_mm": 0.5}, turn="t1")
    assert told["type"] == "trouble"
    assert "engagement" in told["reason"]
    assert rig.chosen.engagement_mm == 19
    assert rig.view["turn"] == "t1"
