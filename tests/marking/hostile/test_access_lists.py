"""A folder that hands rights for other accounts on to all that is made in it (a default ACL): what a
cohort keeps is closed in it all the same.
"""

import os
import shutil
import stat
import subprocess
from contextlib import redirect_stdout

import pytest

from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.desk.commands import main

LISTS = {"system.posix_acl_access", "system.posix_acl_default"}


@pytest.fixture
def generous(tmp_path):
    """A folder that lets another account, and all others, into whatever is made in it."""
    if shutil.which("setfacl") is None:
        pytest.skip("setfacl is not installed here")
    place = tmp_path / "generous"
    place.mkdir()
    words = ["setfacl", "-m", "d:u:nobody:rwx,d:o::rwx", str(place)]
    done = subprocess.run(words, capture_output=True, text=True)
    if done.returncode:
        pytest.skip(f"this disk keeps no lists of accounts ({done.stderr.strip()})")
    (place / "probe").touch()
    assert stat.S_IMODE((place / "probe").stat().st_mode) & 0o007  # it does what is tried here
    return place


def run(*words):
    with open(os.devnull, "w") as out, redirect_stdout(out):
        return main([str(word) for word in words])


def listed(*roots):
    """What has a list, of all at and below some folders."""
    every = [path for root in roots for path in (root, *root.rglob("*"))]
    return [str(one) for one in every if LISTS & set(os.listxattr(one, follow_symlinks=False))]


def open_to_others(root):
    every = (root, *root.rglob("*"))
    return [str(one) for one in every if stat.S_IMODE(one.lstat().st_mode) & 0o077]


def test_a_cohort_in_such_a_folder_is_closed(handed_out, generous, tmp_path):
    before = os.umask(0o077)  # as every command has it
    try:
        trial = handed_out(generous / "live", ["a1"])
        trial.hand_in("a1")
        cohort, at = trial.cohort, ("--cohort", trial.cohort.root)
        for words in ("collect", "mark", "give-back", "export"):
            assert run(words, *at) == 0
        assert run("hand-over", "evidence", generous / "sealed", *at) == 0
        assert run("cohort", "back-up", generous / "kept.zip", *at) == 0
        assert run("cohort", "restore", generous / "kept.zip", generous / "again") == 0
    finally:
        os.umask(before)
    assert read_mark(cohort.mark_file("a1", trial.name)).sheet.points == 4
    assert stat.S_IMODE(cohort.shared.stat().st_mode) == 0o700
    assert listed(cohort.root, cohort.shared, generous / "sealed", generous / "again") == []
    closed = (cohort.root, generous / "sealed", generous / "again", generous / "kept.zip")
    assert [open_to_others(one) for one in closed] == [[], [], [], []]
