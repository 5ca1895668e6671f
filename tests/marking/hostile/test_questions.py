"""A later hand-in that holds far less, comes from another account or was made after feedback is
kept and asked about; it counts when somebody says so, and every hand-in stays.
"""

import io
import os
import re
import shutil
from contextlib import redirect_stderr, redirect_stdout

import pytest

from twoshaft_grader.cohort.collect import kept
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.desk.commands import main

pytestmark = pytest.mark.skipif(os.name == "nt", reason="nbgrader's exchange and accounts of Unix")


def run(*arguments):
    """Exit code, and what was said on one line without the frames of tables."""
    out = io.StringIO()
    with redirect_stdout(out), redirect_stderr(out):
        code = main([str(argument) for argument in arguments])
    return code, " ".join(re.sub("[│┃]", " ", out.getvalue()).split())


@pytest.fixture(scope="module")
def collected(handed_out, tmp_path_factory):
    """Two learners with whole work, collected."""
    trial = handed_out(tmp_path_factory.mktemp("questions") / "live", ["a1", "b2"])
    trial.hand_in("a1", hours_ago=3), trial.hand_in("b2", hours_ago=3)
    assert run("collect", "--cohort", trial.cohort.root)[0] == 0
    return trial


@pytest.fixture
def trial(collected, tmp_path):
    shutil.copytree(collected.base, tmp_path / "copy")
    return type(collected)(tmp_path / "copy")


def points(trial, learner="a1"):
    assert run("mark", "--cohort", trial.cohort.root)[0] == 0
    return read_mark(trial.cohort.mark_file(learner, trial.name)).sheet.points


def of_another_account(trial):
    if os.geteuid() != 0:
        pytest.skip("only root can give a folder to another account")
    folder = trial.hand_in("a1", hours_ago=1, answers={"gap-size": "99 mm", "gap-first": "close"})
    os.chown(folder, 54321, 54321)


def mended_after_feedback(trial):
    """Handed in an hour ago by the time that it bears, after feedback of just now."""
    for words in ("mark", "give-back"):
        assert run(words, "--cohort", trial.cohort.root)[0] == 0
    trial.hand_in("a1", hours_ago=1, answers={"gap-size": "99 mm", "gap-first": "close"})


QUESTIONS = {
    "far less": (
        lambda trial: trial.hand_in("a1", hours_ago=1, answers={}),
        "holds 0 answers, the one before 2.", 0,
    ),
    "another account": (
        of_another_account, f"comes from account 54321 of this system, earlier work from "
        f"{os.geteuid() if os.name == 'posix' else 0}.", 0,
    ),
    "mended after feedback": (
        mended_after_feedback, "was taken in after feedback had been given back", 0,
    ),
}  # fmt: skip


@pytest.mark.parametrize("what", QUESTIONS)
def test_it_is_asked_about_kept_and_taken_on_a_word(trial, what):
    hand_in, asks, later = QUESTIONS[what]
    hand_in(trial)
    at = ("--cohort", trial.cohort.root)
    for _ in range(2):  # asked again for as long as nothing is decided
        code, said = run("collect", *at)
        assert code == 1 and asks in said and "Kept, and not taken unless you say --take ID" in said
    assert points(trial) == 4
    code, said = run("collect", "--take", "b2", *at)  # a word for another is none for this one
    assert code == 1 and asks in said
    code, said = run("collect", "--take", "a1", *at)
    assert code == 0 and "1 newer" in said and asks not in said
    assert run("collect", *at)[0] == 0  # once said, it stays so
    assert points(trial) == later and points(trial, "b2") == 4
    versions = kept(trial.cohort, "a1", trial.name).versions
    folder = trial.cohort.collected("a1", trial.name)
    assert len(versions) == 2 and all((folder / one.key).is_dir() for one in versions)


def test_somewhat_less_is_taken_without_a_question(trial):
    trial.hand_in("a1", hours_ago=1, answers={"gap-size": "12.5 mm"})  # half of it
    code, said = run("collect", "--cohort", trial.cohort.root)
    assert code == 0 and "1 newer" in said


def test_whole_work_after_what_was_asked_about_ends_the_question(trial):
    trial.hand_in("a1", hours_ago=2, answers={})
    assert run("collect", "--cohort", trial.cohort.root)[0] == 1
    trial.hand_in("a1", hours_ago=1)
    code, said = run("collect", "--cohort", trial.cohort.root)
    assert code == 0 and "1 newer" in said
    assert len(kept(trial.cohort, "a1", trial.name).versions) == 3


def test_a_word_for_nobody_is_one_sentence(trial):
    code, said = run("collect", "--take", "c3", "--cohort", trial.cohort.root)
    assert code == 2 and said == 'nobody on the roster has the id "c3"; check the id.'
