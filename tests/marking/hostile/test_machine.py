"""A gradebook that is in use and a disk that is full: one sentence that names the file, and the same
command finishes when the trouble is over."""

import contextlib
import errno
import io
import os
import shutil
import sqlite3
from contextlib import redirect_stderr, redirect_stdout

import pytest

from twoshaft.stored import writing
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.desk.commands import main

pytestmark = pytest.mark.skipif(os.name == "nt", reason="limits of Unix")


def run(*arguments):
    out, err = io.StringIO(), io.StringIO()
    with redirect_stdout(out), redirect_stderr(err):
        code = main([str(argument) for argument in arguments])
    return code, err.getvalue()


@pytest.fixture(scope="module")
def handed_in(handed_out, tmp_path_factory):
    base = tmp_path_factory.mktemp("machine")
    trial = handed_out(base / "live", ["a1", "b2"])
    trial.hand_in("a1"), trial.hand_in("b2")
    return trial


@pytest.fixture
def trial(handed_in, tmp_path):
    shutil.copytree(handed_in.base, tmp_path / "copy")
    return type(handed_in)(tmp_path / "copy")


def finishes(trial):
    for command in ("collect", "mark", "give-back", "export"):
        assert run(command, "--cohort", trial.cohort.root) == (0, "")
    for learner in ("a1", "b2"):
        assert read_mark(trial.cohort.mark_file(learner, trial.name)).sheet.points == 4
        assert any(trial.cohort.feedback(learner, trial.name).glob("*.html"))


def test_a_gradebook_in_use_is_one_sentence(trial):
    root = trial.cohort.root
    assert run("collect", "--cohort", root) == (0, "")
    other = sqlite3.connect(root / "gradebook.db")
    other.execute("BEGIN EXCLUSIVE")
    code, said = run("mark", "--cohort", root)
    other.close()
    assert code == 2 and said.count("\n") == 1
    assert said.startswith(f"{root / 'gradebook.db'}: another program has the gradebook; ")
    finishes(trial)


@pytest.mark.parametrize("command", ["collect", "mark", "give-back", "export"])
def test_a_disk_that_takes_no_more_is_one_sentence(trial, command):
    import resource

    root = trial.cohort.root
    for before in ("collect", "mark", "give-back", "export"):
        if before == command:
            break
        assert run(before, "--cohort", root) == (0, "")
    limits = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (300, limits[1]))
    try:
        code, said = run(command, "--cohort", root)
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, limits)
    assert code == 2 and said.count("\n") == 1 and str(trial.base) in said
    assert "make room, then run the same command again" in said and ".part" not in said
    finishes(trial)


def test_a_disk_that_is_really_full_loses_nothing(handed_in, small_disk):
    shutil.copytree(handed_in.base, small_disk / "copy")
    trial = type(handed_in)(small_disk / "copy")
    for command in ("collect", "mark", "give-back", "export"):
        filler = small_disk / "filler"
        with contextlib.suppress(OSError), open(filler, "wb", buffering=0) as stream:
            while stream.write(b"x" * 4096):
                pass
        code, said = run(command, "--cohort", trial.cohort.root)
        assert code == 2 and said.count("\n") == 1, (command, said)
        assert "make room" in said and ".part" not in said
        filler.unlink()
        assert run(command, "--cohort", trial.cohort.root) == (0, "")
    finishes(trial)


def test_a_back_up_for_which_there_is_no_room_names_its_place(handed_in, small_disk):
    target, filler, sentences = small_disk / "kept.zip", small_disk / "filler", set()
    words = ("cohort", "back-up", target, "--cohort", handed_in.cohort.root)
    for spare in range(0, 8_000_000, 20_480):  # it ends in every file in turn, and in the gradebook
        disk = os.statvfs(small_disk)
        filler.write_bytes(bytes(max(0, disk.f_bavail * disk.f_frsize - spare)))
        code, said = run(*words)
        filler.unlink()
        if code == 0:
            break
        sentences.add(said)
        assert code == 2 and [*small_disk.iterdir()] == []
    assert spare > 40_000 and target.is_file()
    assert len(sentences) == 1
    (said,) = sentences
    assert said.startswith(f"{target}: the disk is full; make room, then run the same command")


@pytest.mark.parametrize("command", ["collect", "mark", "give-back", "export"])
def test_a_place_that_is_read_only_is_one_sentence(trial, command, monkeypatch):
    root = trial.cohort.root
    for before in ("collect", "mark", "give-back", "export"):
        if before == command:
            break
        assert run(before, "--cohort", root) == (0, "")
    real = os.open

    def read_only(path, flags, *rest, **more):
        if flags & os.O_CREAT:
            raise OSError(errno.EROFS, os.strerror(errno.EROFS), path)
        return real(path, flags, *rest, **more)

    with monkeypatch.context() as patch:
        patch.setattr(writing.os, "open", read_only)
        code, said = run(command, "--cohort", root)
    assert code == 2 and said.count("\n") == 1 and str(trial.base) in said
    assert "this place is read-only; let it be written to, then run the same" in said
    assert ".part" not in said
    finishes(trial)
