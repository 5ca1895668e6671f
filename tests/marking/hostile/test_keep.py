"""Back-up and restore, taking a learner out, a copy for study: all of it, nothing of them, equal
marks; and archives that nobody's back-up made.
"""

import csv
import hashlib
import io
import json
import os
import random
import re
import shutil
import signal
import stat
import time
import zipfile
from contextlib import redirect_stderr, redirect_stdout
from datetime import datetime

import pytest

from twoshaft_grader.cohort import back_up as keeping
from twoshaft_grader.cohort import restore as restoring
from twoshaft_grader.cohort.folder import open_cohort
from twoshaft_grader.cohort.intake import take_in
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.desk.commands import main

pytestmark = pytest.mark.skipif(os.name == "nt", reason="forks and rights of Unix")
KILLS = int(os.environ.get("TWOSHAFT_KILLS", "2"))
PEOPLE = ("qx1", "qx2", "qx3")
WHO = {id: Learner(id, f"Zuckmantel{n}", f"Ottilie{n}", "Nachtkurs") for n, id in enumerate(PEOPLE)}
# Of each of them alone: what must not be left, wherever it stands.
WORDS = {id: (id, one.family_name, one.given_name) for id, one in WHO.items()}


def run(*arguments):
    out = io.StringIO()
    with redirect_stdout(out), redirect_stderr(out):
        code = main([str(argument) for argument in arguments])
    text = out.getvalue()
    assert "Traceback" not in text and "did not expect" not in text, text
    return code, " ".join(re.sub("[│┃]", " ", text).split())


def forked(*arguments):
    child = os.fork()
    if child == 0:
        code = 99
        try:
            code = run(*arguments)[0]
        finally:
            os._exit(code)
    return child


def ended(child):
    return os.waitstatus_to_exitcode(os.waitpid(child, 0)[1])


@pytest.fixture(scope="module")
def worked(handed_out, tmp_path_factory):
    """A cohort that has been through everything; one has handed in again what is not yet marked."""
    trial = handed_out(tmp_path_factory.mktemp("keep") / "live", list(PEOPLE))
    cohort, at = trial.cohort, ("--cohort", trial.cohort.root)
    take_in(cohort, list(WHO.values()))
    for hours in (4.0, 3.0):
        for learner in PEOPLE:
            trial.hand_in(learner, hours_ago=hours, tail=f"{learner}{hours:g}")
            folder = cohort.place(learner, trial.name)
            folder.mkdir(parents=True, exist_ok=True)
            (folder / "jobsheet.json").write_text(trial.sheet(learner))
    answers = {"gap-size": f"{WHO['qx3'].family_name} 12 mm", "gap-first": "clean"}
    trial.hand_in("qx3", hours_ago=2.5, tail="words", answers=answers)
    for command in ("collect", "mark"):
        assert run(command, *at)[0] == 0
    run(
        "change-mark",
        "qx2",
        trial.name,
        "gap",
        2,
        "--by",
        "R. Holm",
        "--why",
        "Ottilie1 said so",
        *at,
    )
    run("observe", "qx1", trial.outcome, "--by", "R. Holm", "--met", "--note", "seen", *at)
    run("observe", "qx2", trial.outcome, "--by", "R. Holm", "--met", "--note", "with Ottilie0", *at)
    assert run("module", "due", trial.name, "2099-01-01", *at)[0] == 0
    assert run("module", "due", trial.name, "2099-02-01", "--learner", "qx1", *at)[0] == 0
    for command in ("give-back", "export"):
        assert run(command, *at)[0] == 0
    assert len(list((cohort.exchange / cohort.id / "feedback").iterdir())) == 3
    trial.hand_in("qx2", hours_ago=1, tail="last")
    return trial


@pytest.fixture
def trial(worked, tmp_path):
    shutil.copytree(worked.base, tmp_path / "copy", symlinks=True)
    return type(worked)(tmp_path / "copy")


def rows(cohort, *without):
    path = cohort.root / "exports/again.csv"
    assert run("export", "--to", path, "--cohort", cohort.root)[0] == 0
    found = list(csv.DictReader(io.StringIO(path.read_text())))
    return [{k: v for k, v in row.items() if k not in without} for row in found]


def tree(root):
    return {
        path.relative_to(root).as_posix(): path.read_bytes()
        for path in sorted(root.rglob("*"))
        if path.is_file()
        and not path.name.endswith((".lock", ".db"))
        and path.name != "cohort.yaml"
    }


def holding(root, words):
    """Files below a folder in whose name or bytes a word stands."""
    found = []
    for path in sorted(root.rglob("*")):
        name = path.relative_to(root).as_posix()
        text = path.read_bytes() if path.is_file() else b""
        found += [(name, word) for word in words if word in name or word.encode() in text]
    return found


def test_what_was_backed_up_is_restored_whole_and_goes_on(trial, tmp_path):
    kept, again = tmp_path / "kept.zip", tmp_path / "elsewhere" / "again"
    again.parent.mkdir()
    code, said = run("cohort", "back-up", kept, "--cohort", trial.cohort.root)
    assert code == 0, said
    assert stat.S_IMODE(kept.stat().st_mode) == 0o600 and list(tmp_path.glob(".*")) == []
    before = rows(trial.cohort)
    code, said = run("cohort", "restore", kept, again)
    assert code == 0 and "source/" not in said.split("Look")[0]
    made = open_cohort(again)
    assert made.shared == again.with_name("again-shared") and made.id == trial.cohort.id
    assert stat.S_IMODE(again.stat().st_mode) == stat.S_IMODE(made.shared.stat().st_mode) == 0o700
    assert rows(made) == before
    was, is_ = tree(trial.cohort.root), tree(again)
    differ = {name for name in was.keys() | is_.keys() if was.get(name) != is_.get(name)}
    # people.json lies apart; the log of back-ups was written after the back-up, as was the trail of
    # both exports, which may fall into different seconds
    later = {
        "log/back-ups.jsonl",
        "log/trail.jsonl",
        "log/trail-head.json",
        "exports/trail-head.json",
    }
    assert differ <= later | {n for n in differ if n.startswith("kept/")}
    trails = [one["log/trail.jsonl"].splitlines() for one in (was, is_)]
    assert trails[0][:-1] == trails[1][:-1] and len(trails[0]) > 3
    assert tree(trial.cohort.workplace).keys() <= tree(made.workplace).keys()  # lessons come along
    sheet = made.place("qx1", trial.name) / "jobsheet.json"
    assert sheet.read_text() == trial.sheet("qx1")
    # it came after feedback
    steps = (
        (("collect", "--take", "qx2"), "1 newer"),
        (("mark",), "1 marked"),
        (("give-back",), "3 of 3"),
    )
    for words, says in steps:
        code, said = run(*words, "--cohort", again)
        assert code == 0 and says in said, said
    assert {
        run("cohort", "restore", kept, again)[0],
        run("cohort", "back-up", kept, "--cohort", again)[0],
    } == {2}
    assert run("cohort", "back-up", again / "x.zip", "--cohort", again)[0] == 2


def test_a_back_up_while_marking_runs_is_whole(trial, tmp_path):
    at = ("--cohort", trial.cohort.root)
    assert run("collect", "--take", "qx2", *at)[0] == 0
    for number in range(2):
        child = forked("mark", "--again", "--workers", "1", *at)
        time.sleep(0.05 * number)
        kept, again = tmp_path / f"{number}.zip", tmp_path / f"again{number}"
        assert run("cohort", "back-up", kept, *at)[0] == 0
        assert ended(child) == 0
        assert run("cohort", "restore", kept, again)[0] == 0
        assert run("mark", "--cohort", again)[0] == 0
        mark = read_mark(open_cohort(again).mark_file("qx2", trial.name))
        assert mark.sheet.points == 4


def test_a_gradebook_in_use_is_backed_up_or_said_to_be(trial, tmp_path, monkeypatch):
    import sqlite3

    monkeypatch.setattr(keeping, "LONGEST_WAIT_S", 0.3)
    book = trial.cohort.root / "gradebook.db"
    other = sqlite3.connect(book)
    other.execute("BEGIN EXCLUSIVE")
    code, said = run("cohort", "back-up", tmp_path / "kept.zip", "--cohort", trial.cohort.root)
    other.close()
    assert code == 2 and "another program has the gradebook" in said
    assert not list(tmp_path.glob("*kept*")) and not list(tmp_path.glob(".*"))


def test_what_learners_leave_in_their_folders_does_no_harm_to_a_back_up(trial, tmp_path):
    own = trial.cohort.place("qx1", trial.name)
    (own / "out").symlink_to("/etc")
    os.mkfifo(own / "pipe")
    with open(own / "film.mp4", "wb") as stream:
        stream.truncate(10**11)
    with open(os.fsencode(own) + b"/a\xff", "wb"):
        pass
    kept = tmp_path / "kept.zip"
    code, said = run("cohort", "back-up", kept, "--cohort", trial.cohort.root)
    assert code == 1 and all(word in said for word in ("film.mp4", "pipe", "no name for a file"))
    with zipfile.ZipFile(kept) as made:
        assert not [name for name in made.namelist() if name.endswith("/out") or "film" in name]
    assert run("cohort", "restore", kept, tmp_path / "again")[0] == 0


@pytest.fixture(scope="module")
def kept(worked, tmp_path_factory):
    path = tmp_path_factory.mktemp("archive") / "kept.zip"
    assert run("cohort", "back-up", path, "--cohort", worked.cohort.root)[0] == 0
    return path


def remade(kept, target, change):
    """The archive again, after a change to its files and its list of them."""
    with zipfile.ZipFile(kept) as old:
        files = {name: old.read(name) for name in old.namelist()}
    manifest = json.loads(files.pop("manifest.json"))
    infos = {}
    change(files, manifest, infos)
    with zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED) as new:
        for name, data in files.items():
            info = infos.get(name) or zipfile.ZipInfo(name)
            info.compress_type = zipfile.ZIP_DEFLATED
            new.writestr(info, data)
        new.writestr("manifest.json", json.dumps(manifest))


def add(name, data=b"x"):
    def change(files, manifest, infos):
        files[name] = data
        manifest["files"][name] = {
            "size": len(data), "sha256": hashlib.sha256(data).hexdigest(), "mode": 0o777, "written": 0,
        }  # fmt: skip

    return change


def link(name, to):
    def change(files, manifest, infos):
        add(name, to.encode())(files, manifest, infos)
        infos[name] = zipfile.ZipInfo(name)
        infos[name].external_attr = (stat.S_IFLNK | 0o777) << 16

    return change


def entry(name, value):
    def change(files, manifest, infos):
        text = re.sub(
            rf"(?m)^{name}: .*$", f"{name}: {value}", files["cohort/cohort.yaml"].decode()
        )
        add("cohort/cohort.yaml", text.encode())(files, manifest, infos)

    return change


def _not_listed(files, manifest, infos):
    files["cohort/more"] = b"x"


def _changed(files, manifest, infos):
    name = next(name for name in files if name.startswith("cohort/marks/"))
    files[name] = files[name][:-2] + b"9\n"


def _gone(files, manifest, infos):
    files.pop(next(name for name in files if name.startswith("cohort/marks/")))


def _file_and_folder(files, manifest, infos):
    add("cohort/x")(files, manifest, infos), add("cohort/x/y")(files, manifest, infos)


def _says_less(files, manifest, infos):
    add("cohort/big", b"0" * 10**6)(files, manifest, infos)
    manifest["files"]["cohort/big"]["size"] = 10


HOSTILE = {
    "a name that leads up": (add("cohort/../../x"), "the name"),
    "a name that leads up from shared": (add("shared/../x"), "the name"),
    "a name from the root": (add("/etc/x"), "the name"),
    "a name of another place": (add("elsewhere/x"), "the name"),
    "a drive": (add("C:\\x"), "the name"),
    "backslashes": (add("cohort/..\\..\\x"), "the name"),
    "an empty part": (add("cohort//x"), "the name"),
    "a name that steers a terminal": (add("cohort/\x1b[2J"), "the name"),
    "a name of 2000 letters": (add("cohort/" + "n" * 2000), "the name"),
    "40 folders deep": (add("cohort/" + "d/" * 40 + "x"), "the name"),
    "a link": (link("cohort/marks/x", "/etc/passwd"), "no ordinary file"),
    "a link in the place of a folder": (link("shared/workplace/qx1", "/etc"), "a file and a folder"),
    "a file that is not in the list": (_not_listed, "not in both"),
    "a file that is gone": (_gone, "not in both"),
    "a file that has changed": (_changed, "not what it was"),
    "a file and a folder of one name": (_file_and_folder, "a file and a folder"),
    "a file larger than its list says": (_says_less, "another size"),
    "an id that leads up": (entry("id", "../../x"), "will not do"),
    "a unit from elsewhere": (entry("unit", "/etc/passwd"), "unit lies outside"),
    "a unit above": (entry("unit", "../../x.yaml"), "unit lies outside"),
}  # fmt: skip


@pytest.mark.parametrize("what", HOSTILE)
def test_a_hostile_archive_is_refused_and_leaves_nothing(kept, tmp_path, what):
    change, why = HOSTILE[what]
    bad, at = tmp_path / "bad.zip", tmp_path / "in"
    at.mkdir()
    remade(kept, bad, change)
    code, said = run("cohort", "restore", bad, at / "again")
    assert code == 2 and why in said, said
    assert list(at.iterdir()) == [] and sorted(p.name for p in tmp_path.iterdir()) == [
        "bad.zip",
        "in",
    ]


RUBBISH = {
    "no archive": lambda kept: b"x" * 1000,
    "nothing": lambda kept: b"",
    "cut in the middle": lambda kept: kept[: len(kept) // 2],
    "an archive of something else": lambda kept: _zipped({"x": b"y"}),
    "a list that is rubbish": lambda kept: _zipped({"manifest.json": b"["}),
    "a list of nested lists": lambda kept: _zipped({"manifest.json": b"[" * 10**5}),
    "a byte turned over": lambda kept: kept[:5000] + bytes([kept[5000] ^ 1]) + kept[5001:],
    "packed in a way that it is not": lambda kept: _said_to_be(kept, zipfile.ZIP_BZIP2),
    "packed in another way that it is not": lambda kept: _said_to_be(kept, zipfile.ZIP_LZMA),
    "a place before its beginning": lambda kept: kept[:-6] + b"\xff\xff\xff\x7f" + kept[-2:],
}


def _said_to_be(kept, way):
    """An archive of which every entry says that it is packed in this way."""
    data = bytearray(kept)
    for mark, at in ((b"PK\x03\x04", 8), (b"PK\x01\x02", 10)):
        for found in re.finditer(re.escape(mark), kept):
            data[found.start() + at : found.start() + at + 2] = way.to_bytes(2, "little")
    return bytes(data)


def _zipped(files):
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as made:
        for name, data in files.items():
            made.writestr(name, data)
    return out.getvalue()


@pytest.mark.parametrize("what", RUBBISH)
def test_what_is_no_back_up_is_one_sentence(kept, tmp_path, what):
    bad, at = tmp_path / "bad.zip", tmp_path / "in"
    at.mkdir()
    bad.write_bytes(RUBBISH[what](kept.read_bytes()))
    code, said = run("cohort", "restore", bad, at / "again")
    assert code == 2 and "no whole back-up" in said and list(at.iterdir()) == []


def test_more_than_the_disk_has_and_more_than_any_cohort_is_refused(kept, tmp_path, monkeypatch):
    monkeypatch.setattr(restoring, "LARGEST", 1000)
    code, said = run("cohort", "restore", kept, tmp_path / "again")
    assert code == 2 and "would hold" in said
    monkeypatch.undo()
    few = shutil.disk_usage(tmp_path)._replace(free=1000)
    monkeypatch.setattr(restoring.shutil, "disk_usage", lambda where: few)
    code, said = run("cohort", "restore", kept, tmp_path / "again")
    assert code == 2 and "make room first" in said and list(tmp_path.iterdir()) == []


def test_nothing_that_would_be_run_comes_from_the_archive(kept, tmp_path):
    def change(files, manifest, infos):
        add("cohort/nbgrader_config.py", b"open('/tmp/gotcha', 'w')\n")(files, manifest, infos)
        add("shared/open-course", b"#!/bin/sh\nrm -r ~\n")(files, manifest, infos)
        add("shared/workplace/start-here.ipynb", b"{}")(files, manifest, infos)

    bad, again = tmp_path / "bad.zip", tmp_path / "again"
    remade(kept, bad, change)
    code, said = run("cohort", "restore", bad, again)
    assert code == 0 and "nbgrader_config.py was another one" in said
    assert "Look at their solutions" in said  # the trial's notebook is none of this course's
    assert "gotcha" not in (again / "nbgrader_config.py").read_text()
    shared = open_cohort(again).shared
    assert not (shared / "open-course").exists()
    assert len((shared / "workplace/start-here.ipynb").read_text()) > 100


def test_nothing_is_left_of_who_was_taken_out(trial, tmp_path):
    cohort, at = trial.cohort, ("--cohort", trial.cohort.root)
    assert run("cohort", "back-up", tmp_path / "kept.zip", *at)[0] == 0
    rows_before = [row for row in rows(cohort) if row["learner"] != "qx1"]
    settings = cohort.root / "settings/apprentice/workspaces"
    settings.mkdir(parents=True)
    (settings / "w.json").write_text('{"path": "qx1/x"}')
    code, said = run("roster", "take-out", "qx1", "--yes", *at)
    assert code == 0 and "qx1 is taken out" in said and "kept.zip" in said
    left = {name.split("/", 1)[1] for name, _ in holding(cohort.root.parent, WORDS["qx1"])}
    # what somebody typed about another: told, and theirs to change
    assert left == {
        "log/trail.jsonl", "observations/qx2.json", "workplace/qx2/standing.json",
        "exports/outcomes.csv", "exports/again.csv",
    }  # fmt: skip
    assert all(name in said.replace(" ", "") for name in left)
    assert (tmp_path / "kept.zip").exists()
    assert rows(cohort) == rows_before
    pages = list((cohort.exchange / cohort.id / "feedback").iterdir())
    assert len(pages) == 2
    for words in (("collect", "--take", "qx2"), ("mark",), ("give-back",), ("progress",)):
        code, text = run(*words, *at)
        assert code == 0 and "qx1" not in text, text
    code, said = run("roster", "take-out", "qx1", "--yes", *at)
    assert code == 2 and "nobody on the roster" in said
    for learner in ("qx2", "qx3"):
        assert run("roster", "take-out", learner, "--yes", *at)[0] == 0
    assert run("roster", "list", *at) == (0, "")
    assert holding(cohort.root.parent, (*WORDS["qx2"], *WORDS["qx3"])) == []


def test_taking_out_that_is_killed_is_finished_by_the_same_command(worked, tmp_path):
    whole = tmp_path / "whole"
    shutil.copytree(worked.base, whole, symlinks=True)
    begun = time.monotonic()
    assert ended(forked("roster", "take-out", "qx1", "--yes", "--cohort", whole / "desk")) == 0
    takes, draw = time.monotonic() - begun, random.Random(f"take-out-{KILLS}")
    wanted = holding(whole, WORDS["qx1"])
    for number in range(KILLS):
        base = tmp_path / f"{number}"
        shutil.copytree(worked.base, base, symlinks=True)
        words = ("roster", "take-out", "qx1", "--yes", "--cohort", base / "desk")
        child = forked(*words)
        time.sleep(draw.uniform(0.02, 1.0) * takes)
        os.kill(child, signal.SIGKILL)
        os.waitpid(child, 0)
        assert run(*words)[0] in (0, 2)
        assert holding(base, WORDS["qx1"]) == wanted
        assert run("export", "--cohort", base / "desk")[0] == 0
        shutil.rmtree(base)


SECRET = ("cohort", "learner", "family_name", "given_name", "group", "due", "handed_in", "marked_at",
          "submission_sha256", "receipt", "note", "changed_by", "observed_by", "observed_at",
          "observed_note")  # fmt: skip


def test_a_copy_for_study_names_nobody_and_has_equal_marks(trial, tmp_path):
    cohort, study = trial.cohort, tmp_path / "study"
    code, said = run("cohort", "anonymous", study, "--cohort", cohort.root)
    assert code == 0 and "3 learners" in said, said
    made = open_cohort(study)
    every = [word for words in WORDS.values() for word in words]
    every += ["Nachtkurs", "R. Holm", "said so", "Ottilie", "Zuckmantel", cohort.salt]
    found = holding(study, every) + holding(made.shared, every)
    # A unit file speaks of a trial fit, and holds nothing of a group.
    assert [one for one in found if (one[0].split("/")[-1], one[1]) != ("unit.yaml", "trial")] == []
    assert cohort.salt == "trial"
    years = f"({datetime.now().year}|2099)"  # of hand-ins and due dates; moved by a year or more
    day = re.compile(rf"{years}-[0-9]{{2}}-[0-9]{{2}}".encode())
    times = [p for p in study.rglob("*") if p.is_file() and day.search(p.read_bytes())]
    assert [p for p in times if p.name not in ("cohort.yaml",)] == []
    mine, theirs = rows(cohort, *SECRET), rows(made, *SECRET)
    key = lambda row: sorted(row.items())  # noqa: E731
    assert sorted(theirs, key=key) == sorted(mine, key=key)
    assert {row["learner"] for row in rows(made)} == {"person-001", "person-002", "person-003"}
    assert run("cohort", "anonymous", study, "--cohort", cohort.root)[0] == 2
    assert list(tmp_path.glob(".*")) == []
