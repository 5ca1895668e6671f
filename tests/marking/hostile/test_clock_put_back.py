"""A clock that was put back between handing in, collecting, marking and giving back: nothing that
was taken in is doubted for it, and where order can no longer be told, somebody is asked.
"""

import io
import json
import os
import re
import shutil
from contextlib import redirect_stderr, redirect_stdout
from datetime import UTC, datetime, timedelta

import pytest

from twoshaft.jobsheet.receipts import sheet_digest
from twoshaft.jobsheet.signin import _earlier
from twoshaft.stored.own_work import OWN_WORK
from twoshaft.stored.receipts import Receipt
from twoshaft_grader.cohort import clock
from twoshaft_grader.cohort.collect import kept
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.cohort.trail import check_trail
from twoshaft_grader.desk.commands import main

pytestmark = pytest.mark.skipif(os.name == "nt", reason="nbgrader's exchange")
WRONG = {"gap-size": "99 mm", "gap-first": "clean"}


@pytest.fixture
def put(monkeypatch):
    """Put the clock of the desk forward or back by hours."""

    def by(hours):
        class Clock(datetime):
            @classmethod
            def now(cls, tz=None):
                return datetime.now(tz) + timedelta(hours=hours)

        monkeypatch.setattr(clock, "datetime", Clock)

    return by


@pytest.fixture(scope="module")
def made(handed_out, tmp_path_factory):
    return handed_out(tmp_path_factory.mktemp("clock") / "live", ["a1", "b2"])


@pytest.fixture
def trial(made, tmp_path):
    shutil.copytree(made.base, tmp_path / "copy")
    return type(made)(tmp_path / "copy")


def run(trial, *words):
    out = io.StringIO()
    with redirect_stdout(out), redirect_stderr(out):
        code = main([*words, "--cohort", str(trial.cohort.root)])
    return code, " ".join(re.sub("[│┃]", " ", out.getvalue()).split())


def points(trial, learner="a1"):
    assert run(trial, "mark")[0] == 0
    return read_mark(trial.cohort.mark_file(learner, trial.name)).sheet.points


def test_what_was_collected_keeps_its_time_and_goes_on(trial, put):
    folder = trial.hand_in("a1", hours_ago=2)
    stated = (datetime.now(UTC) - timedelta(hours=2.01)).strftime("%Y-%m-%dT%H:%M:%SZ")
    own = {
        "learner": "a1", "assignment": trial.name, "statement": "mine", "stated": stated,
        "sheet": sheet_digest(folder / "jobsheet.json"),
    }  # fmt: skip
    (folder / OWN_WORK.file).write_text(json.dumps(own))
    assert run(trial, "collect")[0] == 0
    put(-5)
    code, said = run(trial, "collect")
    assert code == 0 and "still to come" not in said and "Placed by hand" not in said
    assert points(trial) == 4
    assert read_mark(trial.cohort.mark_file("a1", trial.name)).handed_in
    code, said = run(trial, "give-back")
    assert code == 0 and "returned to 1 of 2" in said
    released = list((trial.cohort.exchange / trial.cohort.id / "feedback").iterdir())
    (page,) = trial.cohort.feedback("a1", trial.name).glob("*.html")
    assert len(released) == 1 and stated[:10] in page.read_text()
    checked = check_trail(trial.cohort.root)
    assert not checked.faults and any("the clock went back" in one for one in checked.told)


def test_later_work_that_says_an_earlier_time_is_asked_about(trial):
    trial.hand_in("a1", hours_ago=1, answers=WRONG), trial.hand_in("b2")
    assert run(trial, "collect")[0] == 0
    before = points(trial)
    trial.hand_in("a1", hours_ago=3, tail="later")  # by a clock that was put back meanwhile
    for _ in range(2):
        code, said = run(trial, "collect")
        assert code == 1 and "says an earlier time: a clock was put back" in said
    assert points(trial) == before < 4
    code, said = run(trial, "collect", "--take", "a1")
    assert code == 0 and "1 newer" in said
    assert run(trial, "collect")[0] == 0 and points(trial) == 4  # and it stays so
    assert len(kept(trial.cohort, "a1", trial.name).versions) == 2
    trial.hand_in("a1", hours_ago=0.1, answers=WRONG, tail="last")  # the clock is right again
    assert run(trial, "collect")[0] == 0 and points(trial) == before


def test_work_of_a_time_to_come_replaces_no_work_handed_in_after_it(trial, put):
    for learner in ("a1", "b2"):
        trial.hand_in(learner, hours_ago=-2, answers=WRONG, tail="ahead")
    trial.hand_in("a1", hours_ago=0.1, tail="after")  # the clock is right again
    code, said = run(trial, "collect")
    assert code == 1 and said.count("is still to come") == 2 and points(trial) == 4
    put(3)
    code, said = run(trial, "collect")
    assert code == 1 and "was there already when that time was still to come" in said
    assert points(trial) == 4 and points(trial, "b2") < 4  # who handed in nothing else
    assert run(trial, "collect", "--take", "a1")[0] == 0 and points(trial) < 4


def test_feedback_on_the_last_hand_in_is_shown_as_that(tmp_path):
    moment = datetime.now(UTC).replace(microsecond=0)
    receipt = Receipt("x-1", "0000", "0", moment.isoformat(), 1)
    for hours, overtaken in ((0, False), (2, True)):  # of this hand-in, and of one before
        of = moment - timedelta(hours=hours)
        page = tmp_path / f"{of:%Y-%m-%d %H:%M:%S.%f} UTC" / "page.html"
        page.parent.mkdir()
        page.touch()
        os.utime(page, (moment.timestamp() - 3600,) * 2)  # written by a clock that was put back
        assert _earlier(page, receipt) == overtaken
    assert _earlier(page.rename(tmp_path / "page.html"), receipt)
