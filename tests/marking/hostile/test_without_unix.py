"""A whole round where nothing of Unix is there: its modules and calls are made absent, names that
Windows refuses are refused, and files in use cannot be replaced.
"""

import builtins
import errno
import io
import os
import re
import signal
import subprocess
import sys
from contextlib import redirect_stderr, redirect_stdout
from pathlib import Path, PurePosixPath, PureWindowsPath

import pytest

from twoshaft import system
from twoshaft.jobsheet import plain_exchange
from twoshaft.jobsheet.signin import SignIn
from twoshaft.stored.writing import write_file
from twoshaft_grader.cohort import files, limits, restore
from twoshaft_grader.cohort.arrival import moment_of
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.cohort.workplace import sign_in_words
from twoshaft_grader.desk.commands import main

ROOT = Path(__file__).resolve().parents[3]
MODULES = {"fcntl", "grp", "posix", "pwd", "resource", "syslog", "termios", "tty"}
CALLS = ("chown", "fchmod", "fork", "forkpty", "getegid", "geteuid", "getgid", "getgroups",
         "getppid", "getuid", "killpg", "lchown", "mkfifo", "setsid")  # fmt: skip
REFUSED = re.compile(r'[<>:"|?*\x00-\x1f]|[. ]$')

HOOK = f"""
import builtins, importlib, pkgutil, sys
real = builtins.__import__
def hooked(name, globals=None, *rest, **more):
    who = (globals or {{}}).get("__name__", "")
    if name in {sorted(MODULES)!r} and who.startswith("twoshaft"):
        raise ImportError(name)
    return real(name, globals, *rest, **more)
builtins.__import__ = hooked
import os, asyncio, subprocess, tempfile, shutil, signal, socket, multiprocessing, ctypes
import twoshaft.system
twoshaft.system.WINDOWS = True
import twoshaft, twoshaft_grader
for package in (twoshaft, twoshaft_grader):
    for one in pkgutil.walk_packages(package.__path__, package.__name__ + "."):
        if not one.name.endswith("__main__"):
            importlib.import_module(one.name)
print("all")
"""


def test_every_module_is_imported_without_those_that_only_unix_has():
    done = subprocess.run(
        [sys.executable, "-c", HOOK], capture_output=True, text=True, cwd=ROOT, check=False
    )
    assert done.stdout.strip().endswith("all"), done.stderr


def run(*arguments):
    out = io.StringIO()
    with redirect_stdout(out), redirect_stderr(out):
        code = main([str(argument) for argument in arguments])
    return code, " ".join(re.sub("[│┃]", " ", out.getvalue()).split())


@pytest.fixture
def without_unix(monkeypatch):
    """This process, as far as ours goes, on a system that is none of Unix's."""
    import nbgrader.utils

    real = builtins.__import__

    def hooked(name, names=None, *rest, **more):
        if name in MODULES and (names or {}).get("__name__", "").startswith("twoshaft"):
            raise ImportError(name)
        return real(name, names, *rest, **more)

    monkeypatch.setattr(builtins, "__import__", hooked)
    monkeypatch.setenv("USERNAME", "R. Holm")
    monkeypatch.setattr(system, "WINDOWS", True)
    monkeypatch.setattr(limits, "resource", None)
    monkeypatch.setattr(nbgrader.utils, "pwd", None)
    monkeypatch.setattr(os, "supports_dir_fd", set())
    monkeypatch.setattr(os, "supports_fd", set())
    monkeypatch.setattr(files.os, "supports_fd", set())
    monkeypatch.setattr("twoshaft_grader.cohort.copy_in._HERE", False)
    for name in CALLS:
        monkeypatch.delattr(os, name, raising=False)
    for name in ("O_NOFOLLOW", "O_DIRECTORY"):
        monkeypatch.delattr(os, name, raising=False)
    for name in ("SIGKILL", "SIGPROF", "setitimer"):
        monkeypatch.delattr(signal, name, raising=False)
    for name, place in (("mkdir", 0), ("rename", 1), ("replace", 1), ("symlink", 1), ("open", 0)):
        monkeypatch.setattr(os, name, picky(getattr(os, name), place, name))


def picky(real, place, name):
    def call(*words, **more):
        made = name != "open" or words[1] & os.O_CREAT
        if made and REFUSED.search(os.path.basename(os.fspath(words[place]))):
            raise OSError(errno.EINVAL, "The filename is incorrect", str(words[place]))
        if name == "symlink":
            raise OSError(errno.EPERM, "a privilege is not held", str(words[place]))
        return real(*words, **more)

    return call


def test_a_round_from_the_roster_to_the_export(handed_out, tmp_path, without_unix):
    trial = handed_out(tmp_path / "C drive", ["a1", "b2"])
    cohort, at = trial.cohort, ("--cohort", trial.cohort.root)
    desk = SignIn(cohort.workplace)
    desk.sign_in("a1", sign_in_words(cohort)["a1"])
    desk.get(trial.name)
    folder = cohort.place("a1", trial.name)
    write_file(folder / "jobsheet.json", trial.sheet("a1"))
    receipt = desk.hand_in(trial.name)
    (arrived,) = cohort.inbound.iterdir()
    assert not REFUSED.search(arrived.name)
    assert run("collect", *at)[1].startswith(f"{trial.name}: 1 new, 0 newer.")
    code, said = run("mark", "--workers", "1", *at)
    assert code == 0, said
    mark = read_mark(cohort.mark_file("a1", trial.name))
    assert mark.sheet.points == 4 and mark.receipt == receipt.code and mark.handed_in
    code, said = run("give-back", *at)
    assert code == 0 and "returned to 1 of 2" in said, said
    assert len(list((cohort.exchange / cohort.id / "feedback").glob("*.html"))) == 1
    before = list((folder / "feedback").rglob("*.html"))
    desk.look_for_feedback()
    pages = list((folder / "feedback").rglob("*.html"))
    assert len(pages) == 1 and pages == before
    desk.hand_in(trial.name)
    assert "1 newer" in run("collect", *at)[1] or len(list(cohort.inbound.iterdir())) == 2
    assert run("export", *at)[0] == run("progress", *at)[0] == 0
    kept, again = tmp_path / "kept.zip", tmp_path / "again"
    assert run("cohort", "back-up", kept, *at)[0] == run("cohort", "restore", kept, again)[0] == 0
    module, second = trial.name[:-2], f"{trial.name[:-1]}2"
    stick = tmp_path / "stick"
    (stick / "b2").mkdir(parents=True)
    (stick / "b2/jobsheet.json").write_text(trial.sheet("b2"))
    for words in (
        ("roster", "move", "a1", "b2", "--group", "A"),
        ("roster", "rename", "b2", "--family-name", "Osei"),
        ("roster", "withdraw", "b2"), ("roster", "bring-back", "b2"), ("roster", "slips"),
        ("module", "due", trial.name, "2099-01-01"),
        ("module", "due", trial.name, "2099-02-01", "--group", "A"),
        ("module", "assign", module, "--attempt", "2", "--to", "a1"),
        ("module", "give", second, "--to", "b2"), ("module", "take-back", second),
        ("collect", "--from", stick, "--take", "a1"), ("mark", "--workers", "1", "--again"), ("give-back",),
        ("assessor", "add", "rh", "R. Holm"),
        ("observe", "a1", trial.outcome, "--by", "rh", "--met"),
        ("change-mark", "a1", trial.name, "gap", "2", "--by", "rh", "--why", "seen"),
        ("moderate", "draw", "--seed", "x", "--by", "rh"),
        ("matrix", "--page", tmp_path / "matrix.html"), ("how-it-goes", trial.name),
        ("hand-over", "workbook"), ("hand-over", "oneroster"), ("hand-over", "records"),
        ("hand-over", "evidence", tmp_path / "evidence"), ("trail",), ("verify",),
    ):  # fmt: skip
        code, said = run(*words, *at)
        assert code == 0 or words[0] == "moderate", (words, said)
    assert read_mark(cohort.mark_file("b2", trial.name)).sheet.points == 4
    assert run("roster", "take-out", "b2", "--yes", *at)[0] == 0
    assert run("cohort", "renew", *at) == (0, "There was nothing to renew.")
    code, said = run("cohort", "make", tmp_path / "other", "--shared", tmp_path / "srv")
    assert code == 2 and "need the rights of Linux or macOS" in said


def test_nbgraders_own_commands_use_our_exchange_there(monkeypatch):
    from nbgrader.exchange import ExchangeFactory
    from traitlets.config import Config

    from twoshaft_grader.cohort.release import exchange_classes

    stock = ExchangeFactory(config=Config({"ExchangeFactory": exchange_classes()}))
    assert not issubclass(stock.submit, plain_exchange.WithoutRights)
    monkeypatch.setattr(system, "WINDOWS", True)
    ours = ExchangeFactory(config=Config({"ExchangeFactory": exchange_classes()}))
    for name in ("fetch_assignment", "fetch_feedback", "submit", "list", "collect",
                 "release_assignment", "release_feedback"):  # fmt: skip
        assert issubclass(getattr(ours, name), plain_exchange.WithoutRights)


@pytest.mark.parametrize(
    ("text", "reads"),
    [
        ("2026-11-29 12h50m33.123456s UTC", "2026-11-29 12:50:33.123456+00:00"),
        ("2026-11-29 12:50:33.123456 UTC", "2026-11-29 12:50:33.123456+00:00"),
        ("2026-11-29 12h50.33 UTC", ""),
    ],
)
def test_a_time_without_colons_is_the_same_time(text, reads):
    moment, _ = moment_of(text)
    assert (str(moment) if moment else "") == reads


class InUse:
    """Another program that has a file open, for so many tries."""

    def __init__(self, real, times):
        self.real, self.left = real, times

    def __call__(self, *words, **more):
        if self.left > 0:
            self.left -= 1
            raise PermissionError(errno.EACCES, "Access is denied", str(words[1]))
        return self.real(*words, **more)


def test_a_file_in_use_is_waited_for(monkeypatch, tmp_path):
    monkeypatch.setattr(system, "WINDOWS", True)
    monkeypatch.setattr(os, "replace", InUse(os.replace, 3))
    write_file(tmp_path / "x", "new")
    assert (tmp_path / "x").read_text() == "new"
    (tmp_path / "a").mkdir(), (tmp_path / "b").mkdir()
    monkeypatch.setattr(os, "rename", InUse(os.rename, 3))
    files.move_into_place(tmp_path / "a", tmp_path / "b")
    assert not (tmp_path / "a").exists()


def test_a_file_that_stays_in_use_is_one_sentence_and_nothing_is_lost(monkeypatch, tmp_path):
    from twoshaft_grader.desk.errors import run_quietly

    (tmp_path / "x").write_text("old")
    monkeypatch.setattr(system, "WINDOWS", True)
    monkeypatch.setattr(system, "PATIENCE_S", 0.1)
    monkeypatch.setattr(os, "replace", InUse(os.replace, 10**6))
    err = io.StringIO()
    with redirect_stderr(err):
        assert run_quietly(lambda: write_file(tmp_path / "x", "new"), trace=False) == 2
    assert err.getvalue() == (
        f"{tmp_path / 'x'}: another program has it open; close it there, then run the same "
        "command again, which goes on where this one ended.\n"
    )
    assert [path.name for path in tmp_path.iterdir()] == ["x"]
    assert (tmp_path / "x").read_text() == "old"


def test_elsewhere_a_refusal_is_not_waited_for(monkeypatch, tmp_path):
    refusing = InUse(os.replace, 2)
    monkeypatch.setattr(os, "replace", refusing)
    with pytest.raises(PermissionError):
        write_file(tmp_path / "x", "new")
    assert refusing.left == 1


@pytest.mark.parametrize(
    "name", ["cohort/C:x", "cohort/x:stream", "cohort/a\\b", "C:\\x", "cohort/con?", 'cohort/"x"']
)
def test_names_that_windows_reads_otherwise_are_refused_in_a_back_up(monkeypatch, name):
    monkeypatch.setattr(system, "WINDOWS", True)
    assert not restore._plain(name)


def test_paths_with_drive_letters_and_backslashes_stay_what_they_are():
    drive = PureWindowsPath(r"C:\Users\R. Holm\evening group")
    # what goes into files that move between machines is written with plain strokes
    assert (
        drive / "gradebook.db"
    ).as_uri() == "file:///C:/Users/R.%20Holm/evening%20group/gradebook.db"
    assert drive.relative_to(PureWindowsPath("C:/Users")).as_posix() == "R. Holm/evening group"
    assert (
        PurePosixPath("shared/workplace/a1").parts == PureWindowsPath(r"shared\workplace\a1").parts
    )


@pytest.mark.parametrize(
    "path", ["course/start/start.cmd", "grader/twoshaft_grader/kit/files/start.cmd"]
)
def test_the_start_command_is_one_that_windows_reads(path):
    text = (ROOT / path).read_bytes()
    assert text.startswith(b"@echo off\r\n") and b"py -3" in text
    assert text.count(b"\n") == text.count(b"\r\n") and text.isascii()
