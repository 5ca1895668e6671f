"""Files and folders that no learner of ours would make, each beside honest work: every command
goes on for everybody else, names who could not be done and why, and reads and writes nowhere else.
"""

import csv
import io
import os
import re
import socket
from contextlib import redirect_stderr, redirect_stdout
from types import SimpleNamespace

import pytest

from twoshaft.errors import CohortError
from twoshaft_grader.cohort import copy_in
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.desk.commands import main

pytestmark = pytest.mark.skipif(os.name == "nt", reason="links, pipes and rights of Unix")
HONEST = ("a1", "z9")
NOT_TAKEN, UNREADABLE, MARKED = "is not taken", "cannot be read", "marked"


def _sheet(text):
    def make(folder, trial):
        (folder / "jobsheet.json").write_bytes(text if isinstance(text, bytes) else text.encode())

    return make


def _instead(name, make):
    """Something else under the name of a file that belongs there."""

    def put(folder, trial):
        (folder / name).unlink()
        make(folder / name)

    return put


def _beside(name, data=b"x"):
    def put(folder, trial):
        with open(os.path.join(os.fsencode(folder), name), "wb") as stream:
            stream.write(data)

    return put


def _deep(folder, trial):
    inner = folder
    for _ in range(200):
        inner = inner / "d"
        inner.mkdir()


def _socket(path):
    here = os.getcwd()
    os.chdir(path.parent)  # a socket's name may have a hundred letters only
    try:
        with socket.socket(socket.AF_UNIX) as one:
            one.bind(path.name)
    finally:
        os.chdir(here)


def _whole_folder_a_link(folder, trial):
    folder.rename(folder.with_name("elsewhere"))
    folder.symlink_to("elsewhere")


def _huge_file(folder, trial):
    with open(folder / "film.mp4", "wb") as stream:
        stream.truncate(10**11)  # no bytes on the disk


def _holes(path, size):
    with open(path, "wb") as stream:
        stream.truncate(size)


def _many(folder, trial):
    for number in range(400):
        (folder / f"{number}.txt").touch()


def _time(when):
    def rename(folder, trial):
        learner, name, _, tail = folder.name.split("+")
        folder.rename(folder.with_name(f"{learner}+{name}+{when}+{tail}"))

    return rename


def _fields(text):
    return _sheet(
        '{"format":1,"course_version":"","unit":{"id":"","version":""},"cohort":"","learner":"x",'
        f'"module":"measuring-and-tools","attempt":1,"given_digest":"","fields":{text}}}'
    )


IN_THE_EXCHANGE = {
    # a name
    "a file name that is not UTF-8": (_beside(b"a\xff\xfe.txt"), NOT_TAKEN, "cannot be shown"),
    "a file name of 249 letters": (_beside(b"n" * 249), NOT_TAKEN, "longer than"),
    "a file name that steers a terminal": (_beside(b"\x1b[2J"), NOT_TAKEN, "cannot be shown"),
    "a file name with a line end": (_beside(b"a\nb"), NOT_TAKEN, "cannot be shown"),
    # not a file
    "a link to an endless device": (
        _instead("jobsheet.json", lambda p: p.symlink_to("/dev/zero")), NOT_TAKEN, "a link"),
    "a link to another's sheet": (
        _instead("jobsheet.json", lambda p: p.symlink_to(
            next(p.parent.parent.glob("a1+*")) / "jobsheet.json")), NOT_TAKEN, "a link"),
    "a link to nothing": (
        _instead("jobsheet.json", lambda p: p.symlink_to("nothing")), NOT_TAKEN, "a link"),
    "a folder that links back": (
        lambda f, t: (f / "more").symlink_to(".."), NOT_TAKEN, "a link"),
    "a notebook that is a link": (
        _instead("03-measuring-and-tools.ipynb", lambda p: p.symlink_to("/etc/passwd")),
        NOT_TAKEN, "a link"),
    "a pipe": (_instead("jobsheet.json", os.mkfifo), NOT_TAKEN, "a pipe"),
    "a pipe beside": (lambda f, t: os.mkfifo(f / "p"), NOT_TAKEN, "a pipe"),
    "a socket": (_instead("jobsheet.json", _socket), NOT_TAKEN, "a device or a socket"),
    "a hand-in that is a link": (_whole_folder_a_link, NOT_TAKEN, "not a folder"),
    "a hand-in that is a file": (
        lambda f, t: (f.rename(f.with_name("gone")), f.write_text("x")), NOT_TAKEN, "not a folder"),
    # too much
    "a file of 100 GB": (_huge_file, NOT_TAKEN, "more than 20 MB"),
    "400 files": (_many, NOT_TAKEN, "more than 300 files"),
    "200 folders deep": (_deep, NOT_TAKEN, "deeper"),
    # alike, but not the same
    "another's sheet by a second name of the file": (
        _instead("jobsheet.json", lambda p: os.link(
            next(p.parent.parent.glob("a1+*")) / "jobsheet.json", p)), MARKED, ""),
    "names that differ in capitals": (
        lambda f, t: [(f / one).write_text("x") for one in ("JOBSHEET.JSON", "Jobsheet.json")],
        MARKED, ""),
    "names that look alike": (
        lambda f, t: [(f / one).write_text("x") for one in ("caf\u00e9", "cafe\u0301")], MARKED, ""),
    "a name for an account's setting": (_beside(b".bash_profile"), MARKED, ""),
    "a notebook with 15 MB about itself": (
        _beside(b"03-measuring-and-tools.ipynb",
                b'{"cells": [], "metadata": {"x": "' + b"y" * 15_000_000 + b'"}}'), MARKED, ""),
    "a sheet with holes": (
        _instead("jobsheet.json", lambda p: _holes(p, 900_000)), UNREADABLE, "JSON"),
    "a sheet with holes, too large": (
        _instead("jobsheet.json", lambda p: _holes(p, 19_000_000)), UNREADABLE, "1000000"),
    # times
    "a time to come": (_time("2099-01-01 10:00:00.0 UTC"), NOT_TAKEN, "still to come"),
    "the year 999": (_time("0999-01-01 10:00:00.0 UTC"), NOT_TAKEN, "before any course"),
    "the year 9999": (_time("9999-12-31 23:59:59.9 -2359"), NOT_TAKEN, "time"),
    "no time": (_time("yesterday"), NOT_TAKEN, "time cannot be read"),
    "a time of 150 figures": (_time("1" * 150), NOT_TAKEN, "time cannot be read"),
    "a month 13": (_time("2026-13-01 10:00:00 UTC"), NOT_TAKEN, "time cannot be read"),
    # what nbgrader writes: the exchange's folder says when, so the work itself is good
    "a timestamp of 200,000 figures": (_beside(b"timestamp.txt", b"1" * 200_000), MARKED, ""),
    "a timestamp that is binary": (_beside(b"timestamp.txt", b"\x00\xff\xfe"), MARKED, ""),
    "a timestamp of the year 999": (_beside(b"timestamp.txt", b"0999-01-01 00:00"), MARKED, ""),
    "a timestamp to come": (_beside(b"timestamp.txt", b"2099-01-01 00:00:00 UTC"), MARKED, ""),
    "a timestamp that leads out": (_beside(b"timestamp.txt", b"../../../x"), MARKED, ""),
    "a timestamp that is a folder": (_instead("timestamp.txt", os.mkdir), MARKED, ""),
    "a timestamp that is a pipe": (_instead("timestamp.txt", os.mkfifo), MARKED, ""),
    "no timestamp": (lambda f, t: (f / "timestamp.txt").unlink(), MARKED, ""),
    "a secret of 1 MB": (_beside(b"submission_secret.txt", b"f" * 10**6), MARKED, ""),
    "a secret that is binary": (_beside(b"submission_secret.txt", b"\xff\x00"), MARKED, ""),
    "a secret that leads out": (_beside(b"submission_secret.txt", b"../../x"), MARKED, ""),
    "a secret that is a folder": (_instead("submission_secret.txt", os.mkdir), MARKED, ""),
    "no secret": (lambda f, t: (f / "submission_secret.txt").unlink(), MARKED, ""),
    "a feedback that is a file": (_beside(b"feedback"), MARKED, ""),
    "a feedback that is a link": (lambda f, t: (f / "feedback").symlink_to("/"), MARKED, ""),
    "a notebook that is rubbish": (_beside(b"03-measuring-and-tools.ipynb", b"\xff{"), MARKED, ""),
    "no notebook": (lambda f, t: (f / "03-measuring-and-tools.ipynb").unlink(), MARKED, ""),
    "a notebook beside": (_beside(b"other [bold]name.ipynb"), MARKED, ""),
    # the job sheet
    "a sheet that is a folder": (_instead("jobsheet.json", os.mkdir), UNREADABLE, "ordinary"),
    "a sheet of nothing": (_sheet(""), UNREADABLE, "JSON"),
    "a sheet of 1 MB of open quotes": (_sheet('"' + '\\"' * 499_000), UNREADABLE, "JSON"),
    "a sheet of 2 MB": (_sheet(" " * 2_000_000), UNREADABLE, "1000000"),
    "a sheet of brackets": (_sheet("[" * 500_000), UNREADABLE, "lists within lists"),
    "a sheet of UTF-16": (_sheet('{"a":1}'.encode("utf-16")), UNREADABLE, "UTF-8"),
    "a number of 400,000 figures": (
        _sheet('{"format":' + "9" * 400_000 + "}"), UNREADABLE, "18 figures"),
    "a number beyond all": (_sheet('{"format":1e999}'), UNREADABLE, "beyond any workshop"),
    "a name twice": (_sheet('{"format":1,"format":1}'), UNREADABLE, "twice"),
    "a field's name that steers a terminal": (
        _fields('{"\\u001b[2J":{}}'), UNREADABLE, "not a field name"),
    "an answer that steers a terminal": (
        _fields('{"gap-size":{"value":"\\u001b[2J"}}'), UNREADABLE, "cannot be shown"),
}  # fmt: skip


def _file_there(path):
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text("x")


def _link_out(path, trial):
    path.parent.mkdir(parents=True, exist_ok=True)
    path.symlink_to(trial.outside)


def _alter(path):
    path.chmod(0o644)
    path.write_text(path.read_text().replace("12.5 mm", "99 mm"))


# After collecting, in the cohort's own folders or the learner's: which command says what.
IN_THE_COHORT = {
    "work altered after collecting": (
        lambda c, h, n: _alter(c.submitted(h, n) / "jobsheet.json"), "mark", "not what was coll"),
    "a pipe put into collected work": (
        lambda c, h, n: (
            (c.submitted(h, n) / "jobsheet.json").unlink(),
            os.mkfifo(c.submitted(h, n) / "jobsheet.json")), "mark", "not what was collected"),
    "100 GB put into collected work": (
        lambda c, h, n: _huge_file(c.submitted(h, n), None), "mark", "more than 100 MB"),
    "folders without end in collected work": (
        lambda c, h, n: _deep(c.submitted(h, n), None), "mark", "more than any hand-in"),
    "a stored mark that is rubbish": (
        lambda c, h, n: _file_there(c.mark_file(h, n)), "mark", "JSON"),
    "readings that are rubbish": (
        lambda c, h, n: c.issued(h, n).write_text("x"), "mark", "JSON"),
    "autograded that is a file": (
        lambda c, h, n: _file_there(c.root / "autograded" / h), "mark", "autograded"),
    "the list of hand-ins that is rubbish": (
        lambda c, h, n: c.collected(h, n).with_name(f"{h}.json").write_text("[]"), "mark", "JSON"),
    "feedback that is a file": (
        lambda c, h, n: _file_there(c.root / "feedback" / h), "give-back", "feedback"),
    "a feedback page that is a folder": (
        lambda c, h, n: (c.feedback(h, n) / "03-measuring-and-tools.html").mkdir(parents=True),
        "give-back", "is a directory"),
    "the learner's feedback is a file": (
        lambda c, h, n: _file_there(c.place(h, n) / "feedback"), "give-back", "folder belongs"),
}  # fmt: skip
LINKS_OUT = {
    "the learner's feedback leads out": lambda c, h, n: c.place(h, n) / "feedback",
    "the learner's assignment leads out": lambda c, h, n: c.place(h, n),
}


def run(*arguments):
    out, err = io.StringIO(), io.StringIO()
    with redirect_stdout(out), redirect_stderr(err):
        code = main([str(argument) for argument in arguments])
    text = out.getvalue() + err.getvalue()
    assert "\x1b" not in text and "Traceback" not in text
    return SimpleNamespace(code=code, text=text, line=_line_of(text))


def _line_of(text):
    """What the table says of a learner, its lines put together again."""

    def line(learner):
        found = re.search(rf"^ *{learner}  +(\S.*(?:\n {{5,}}\S.*)*)", _tables(text), re.M)
        return " ".join(found[1].split()) if found else ""

    return line


def _tables(text):
    return "\n".join(text.split("Could not be", 1)[1:])


@pytest.fixture(scope="module")
def round_(handed_out, tmp_path_factory):
    """One round with every one of them, each under a learner of its own."""
    base = tmp_path_factory.mktemp("hostile")
    everything = [*IN_THE_EXCHANGE, *IN_THE_COHORT, *LINKS_OUT]
    who = {what: f"h{number:03}" for number, what in enumerate(everything)}
    trial = handed_out(base / "cohort", [*HONEST, *who.values()])
    cohort, name = trial.cohort, trial.name
    trial.who, trial.outside, trial.said = who, base / "outside", {}
    trial.outside.mkdir()
    for learner in (*HONEST, *who.values()):
        folder = trial.hand_in(learner)
        (cohort.place(learner, name)).mkdir(parents=True)
        for what, (make, _, _) in IN_THE_EXCHANGE.items():
            if who[what] == learner:
                make(folder, trial)
    trial.said["collect"] = run("collect", "--cohort", cohort.root)
    for what, (make, _, _) in IN_THE_COHORT.items():
        make(cohort, who[what], name)
    for what, place in LINKS_OUT.items():
        path = place(cohort, who[what], name)
        if path.is_dir():
            path.rmdir()
        _link_out(path, trial)
    for command in ("mark", "give-back", "export", "progress"):
        trial.said[command] = run(command, "--cohort", cohort.root)
    return trial


def test_every_command_ends_with_who_is_left_and_says_so_by_its_code(round_):
    assert {command: said.code for command, said in round_.said.items()} == {
        "collect": 1, "mark": 1, "give-back": 1, "export": 1, "progress": 1,
    }  # fmt: skip


def test_honest_work_is_collected_marked_returned_and_exported(round_):
    cohort = round_.cohort
    rows = list(csv.DictReader(io.StringIO((cohort.root / "exports/outcomes.csv").read_text())))
    for learner in HONEST:
        mark = read_mark(cohort.mark_file(learner, round_.name))
        assert mark.sheet.points == 4
        assert (cohort.feedback(learner, round_.name) / f"{round_.notebook}.html").is_file()
        assert sum(row["learner"] == learner and row["state"] == "marked" for row in rows) == 2


@pytest.mark.parametrize("what", IN_THE_EXCHANGE)
def test_what_arrived_is_refused_marked_or_unreadable_and_the_reason_told(round_, what):
    learner, (_, ends, why) = round_.who[what], IN_THE_EXCHANGE[what]
    collected = round_.said["collect"].line(learner)
    mark = None if ends == NOT_TAKEN else read_mark(round_.cohort.mark_file(learner, round_.name))
    if ends == NOT_TAKEN:
        assert NOT_TAKEN in collected and why in collected
        assert not round_.cohort.submitted(learner, round_.name).exists()
    else:
        assert collected == "" and mark.state == ends and why in mark.reason
        assert (mark.sheet.points == 4) == (ends == MARKED) and mark.handed_in
        if ends == UNREADABLE:
            assert why in round_.said["mark"].line(learner)
        page = round_.cohort.place(learner, round_.name) / "feedback"
        assert [path.name for path in page.rglob("*.html")] == [f"{round_.notebook}.html"]


@pytest.mark.parametrize("what", IN_THE_COHORT)
def test_what_is_damaged_later_is_one_line(round_, what):
    learner, (_, command, why) = round_.who[what], IN_THE_COHORT[what]
    assert why.lower() in round_.said[command].line(learner).lower()


@pytest.mark.parametrize("what", LINKS_OUT)
def test_nothing_is_written_through_a_link(round_, what):
    assert not any(round_.outside.rglob("*"))
    assert "folder belongs" in round_.said["give-back"].line(round_.who[what])


def test_nothing_of_another_is_read_through_a_link(round_):
    learner = round_.who["a link to another's sheet"]
    assert not round_.cohort.mark_file(learner, round_.name).exists()


def test_altered_work_is_put_back_by_collecting_and_then_marked(round_):
    learner = round_.who["work altered after collecting"]
    assert (
        learner
        in re.search("put back: (.*)", run("collect", "--cohort", round_.cohort.root).text)[1]
    )
    run("mark", "--cohort", round_.cohort.root)
    assert read_mark(round_.cohort.mark_file(learner, round_.name)).sheet.points == 4


def test_a_pipe_that_takes_a_files_place_after_the_look_is_not_read(tmp_path, monkeypatch):
    (tmp_path / "in").mkdir()
    (tmp_path / "in/jobsheet.json").write_text("{}")
    plain, held = os.open, []

    def swapped(path, flags, *rest, dir_fd=None, **more):
        if path == "jobsheet.json" and not held:
            os.unlink(path, dir_fd=dir_fd)
            os.mkfifo(path, dir_fd=dir_fd)
            held.append(plain(path, os.O_RDWR | os.O_NONBLOCK, dir_fd=dir_fd))  # it never ends
        return plain(path, flags, *rest, dir_fd=dir_fd, **more)

    monkeypatch.setattr(copy_in.os, "open", swapped)
    with pytest.raises(CohortError, match="was put in another's place meanwhile"):
        copy_in.copy_in(tmp_path / "in", tmp_path / "out")
    monkeypatch.undo()
    os.close(held[0])
    assert list((tmp_path / "out").iterdir()) == []
