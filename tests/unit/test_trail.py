"""The trail: what was done stands there, and what was done to it shows."""

import hashlib
import json
import os
import re
import signal
import threading
import time
from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest

from twoshaft.errors import CohortError
from twoshaft_grader.cohort import trail
from twoshaft_grader.cohort.clock import as_read, stamp
from twoshaft_grader.cohort.trail import (
    act,
    check_trail,
    head_of,
    keep_head,
    read_head,
    read_trail,
    redact,
)
from twoshaft_grader.stored.trail import CUT_SHORT


@pytest.fixture
def root(tmp_path):
    for number in range(1, 6):
        with act(tmp_path, "observe", f"a{number}", by="R. Holm", why="looked at it") as told:
            told.before, told.after = "not yet", "met"
    return tmp_path


def acts(root):
    return [line.act for line in read_trail(root)]


def lines(root):
    return (root / trail.FILE).read_text().splitlines()


def rewrite(root, changed):
    (root / trail.FILE).write_text("".join(f"{line}\n" for line in changed))


def test_an_act_says_who_did_what_to_what_from_what_to_what_and_why(root):
    first = acts(root)[0]
    assert (first.number, first.by, first.did, first.what) == (1, "R. Holm", "observe", "a1")
    assert (first.before, first.after, first.why) == ("not yet", "met", "looked at it")
    assert first.account == trail.account() and first.at.endswith("Z") and not first.ended
    assert json.loads(lines(root)[0])["format"] == 1
    assert not list((root / "log" / "under-way").iterdir())
    found = check_trail(root)
    assert (len(found.acts), found.faults, found.told) == (5, (), ())


def test_without_a_name_it_is_the_accounts(tmp_path):
    with act(tmp_path, "collect", by=" "):
        pass
    assert acts(tmp_path)[0].by == trail.account()


def test_what_is_refused_has_no_line_and_what_the_machine_stops_says_so(root):
    with pytest.raises(CohortError), act(root, "assign", "x"):
        raise CohortError("no such module")
    assert len(acts(root)) == 5
    with pytest.raises(OSError), act(root, "assign", "x"):
        raise OSError(28, "full")
    assert acts(root)[5].ended == "stopped: OSError"
    assert not check_trail(root).faults


@pytest.mark.parametrize(
    ("change", "says"),
    [
        (lambda t: t[:2] + t[3:], "an act was taken away"),
        (lambda t: [t[0], *t[3:]], "2 acts were taken away"),
        (lambda t: t[1:], "an act was taken away"),
        (lambda t: [t[0], t[2], t[1], *t[3:]], "an act was taken away"),
        (lambda t: [*t, t[3]], "lines were moved"),
        (lambda t: [t[0], t[1].replace("R. Holm", "K. Tam"), *t[2:]], "act 2 was changed"),
        (lambda t: [*t[:4], t[4].replace("met", "???")], "act 5 is not the one"),
        (lambda t: t[:4], "its end was cut off"),
        (lambda t: [], "its end was cut off"),
    ],
)
def test_a_line_taken_away_changed_moved_or_cut_off_is_found(root, change, says):
    rewrite(root, change(lines(root)))
    assert any(says in fault for fault in check_trail(root).faults)
    with act(root, "mark", "later"):  # and stays to be seen
        pass
    assert check_trail(root).faults


def test_who_cuts_off_the_end_and_the_head_is_found_by_an_export(root):
    given = keep_head(root)
    rewrite(root, lines(root)[:3])
    for name in (trail.HEAD_FILE, trail.EXPORTED):
        (root / name).unlink()
    kept = check_trail(root)
    assert any("would not show" in fault for fault in kept.faults)
    with act(root, "mark", "y"), act(root, "mark", "z"):
        pass
    assert not check_trail(root).faults  # a forged trail that is whole by itself
    assert any("not the one" in fault for fault in check_trail(root, read_head(str(given))).faults)


@pytest.mark.parametrize("text", ["", "5", "5:abc", "x:" + "a" * 64, "5:" + "g" * 64])
def test_what_is_no_head_is_refused_in_one_sentence(text):
    with pytest.raises(CohortError, match="is no head of a trail"):
        read_head(text)


def test_a_newer_line_is_refused_in_one_sentence(root):
    rewrite(root, [*lines(root), json.dumps(json.loads(lines(root)[0]) | {"format": 2})])
    with pytest.raises(CohortError, match="format '2' is not one"):
        check_trail(root)


@pytest.mark.skipif(os.name == "nt", reason="no such signal")
@pytest.mark.parametrize("moment", ["before", "torn", "headless"])
def test_what_is_killed_between_act_and_line_is_written_by_the_next(root, moment):
    child = os.fork()
    if child == 0:
        if moment != "before":
            real = trail.append_text

            def killed(path, texts):
                if moment == "torn":
                    real(path, [])
                    with open(path, "a") as stream:
                        stream.write(texts[0][:40])
                else:
                    real(path, texts)
                os.kill(os.getpid(), signal.SIGKILL)

            trail.append_text = killed
        with act(root, "give back", "b9", by="R. Holm"):
            if moment == "before":
                os.kill(os.getpid(), signal.SIGKILL)
        os._exit(0)
    assert os.WIFSIGNALED(os.waitpid(child, 0)[1])
    assert any("cut short" in sentence for sentence in check_trail(root).told)
    with act(root, "collect", "c1"):
        pass
    last = acts(root)
    assert [(one.did, one.ended) for one in last[-2:]] == [
        ("give back", CUT_SHORT),
        ("collect", ""),
    ]
    found = check_trail(root)
    assert not found.faults and head_of(root).number == len(last)
    assert not list((root / "log" / "under-way").iterdir())


@pytest.mark.skipif(os.name == "nt", reason="no such signal")
def test_taking_out_that_is_killed_at_its_very_end_has_said_what_is_redacted(root):
    with act(root, "observe", "a2 safe-order"):
        pass
    child = os.fork()
    if child == 0:
        with act(root, trail.TAKE_OUT) as told:
            told.after = redact(root, re.compile(r"\ba2\b"))
            told.keep()
            os.kill(os.getpid(), signal.SIGKILL)
        os._exit(0)
    assert os.WIFSIGNALED(os.waitpid(child, 0)[1])
    assert not check_trail(root).faults  # nor once the next act has written it down
    with act(root, "collect", "c1"):
        pass
    assert not check_trail(root).faults and acts(root)[-2].ended == CUT_SHORT


def test_an_act_that_is_under_way_is_left_alone(root):
    with act(root, "mark", "long"):
        with act(root, "observe", "short"):
            pass
        assert [one.what for one in acts(root)][-1] == "short"
        assert not check_trail(root).told
    assert [one.what for one in acts(root)][-2:] == ["short", "long"]
    assert not check_trail(root).faults


def test_two_at_once_both_stand_there(root):
    def work(name):
        for number in range(6):
            with act(root, "observe", f"{name}{number}"):
                time.sleep(0.001)

    both = [threading.Thread(target=work, args=(name,)) for name in "xy"]
    for one in both:
        one.start()
    for one in both:
        one.join()
    assert len(acts(root)) == 17 and not check_trail(root).faults


def test_a_clock_that_went_back_is_told_and_nothing_is_lost(root, monkeypatch):
    monkeypatch.setattr(trail, "stamp", lambda moment: "2001-01-01T00:00:00Z")
    with act(root, "mark", "early"):
        pass
    found = check_trail(root)
    assert not found.faults and "the clock went back" in found.told[0]


def test_any_text_stands_in_one_line(root):
    with act(root, "observe", "a\nb", by="Å\udce4 \x1b[1m", why='{"number": 9}\r\n'):
        pass
    last = acts(root)[-1]
    assert last.what == "a b" and last.by.startswith("Å?") and not check_trail(root).faults


def test_words_that_go_with_a_learner_leave_the_chain_whole(root):
    given = keep_head(root)
    with act(root, trail.TAKE_OUT) as told:
        told.after = redact(root, re.compile(r"\ba2\b"))
    assert '"a2"' not in (root / trail.FILE).read_text() and len(acts(root)) == 6
    found = check_trail(root, given)
    assert not found.faults and "1 lines of the trail redacted" in found.told[0]
    text = lines(root)
    blank = json.loads(text[1]) | {"number": 3, "previous": json.loads(text[2])["previous"]}
    hidden = hashlib.sha256(text[2].encode()).hexdigest()
    rewrite(root, [*text[:2], json.dumps(blank | {"digest": hidden}), *text[3:]])
    assert any("no act of taking a learner out says" in one for one in check_trail(root).faults)


def test_moments_in_what_changed_are_read_as_the_clock_on_the_wall_shows_them():
    zone = ZoneInfo("Europe/Dublin")
    told = as_read("until 2026-06-04T16:00:00Z, then 2026-12-04T16:00:00Z or 2026-12-04", zone)
    assert told == "until 2026-06-04 17:00, then 2026-12-04 16:00 or 2026-12-04"
    assert as_read(stamp(datetime(2026, 1, 2, 3, 4, 5, tzinfo=UTC)), UTC) == "2026-01-02 03:04"
