"""Job sheets that no form of ours writes, as a table: what is in each, and what must come of it.

Each is marked as the commands mark it, and its feedback page and its rows of the export are looked
at: nothing is gained beyond what its answers are worth, nothing is run, read or written, and no
page or table holds anything live.
"""

import builtins
import json
import os
import re
import socket
import subprocess
import time
from dataclasses import replace

import pytest

from twoshaft_grader.cohort.assign import read_assigned
from twoshaft_grader.cohort.marking_run import work_of
from twoshaft_grader.cohort.one_sheet import mark_one
from twoshaft_grader.marking.feedback import Handed, feedback_page
from twoshaft_grader.marking.gradebook import task_comment, task_html
from twoshaft_grader.records.cells import cell

ALL, SIZE, FIRST = 4.0, 3.0, 1.0  # points: of both answers, of the figure, of the choice
REFUSED = None  # the sheet cannot be read: it counts as blank, and says why
LONGEST_S = 3.0  # of computing; a whole sheet takes some thousandths


def sheet(**changes):
    plain = {
        "format": 1, "course_version": "", "unit": {"id": "", "version": ""}, "cohort": "trial",
        "learner": "a1", "module": "measuring-and-tools", "attempt": 1, "given_digest": "",
        "fields": {"gap-size": entry("12.5 mm"), "gap-first": entry("clean")},
    }  # fmt: skip
    return json.dumps(plain | changes)


def entry(value, **more):
    return {"value": value, "revision": 1, "saved": "", "history": []} | more


def size(value):
    """The figure is something else, the choice is right."""
    return sheet(fields={"gap-size": entry(value), "gap-first": entry("clean")})


def first(value):
    return sheet(fields={"gap-size": entry("12.5 mm"), "gap-first": entry(value)})


def more(name, value="x"):
    both = {"gap-size": entry("12.5 mm"), "gap-first": entry("clean")}
    return sheet(fields=both | {name: entry(value)})


SCRIPT = "<script>alert(1)</script>"
PYTHON = "__import__('os').system('touch gained')"
SHEETS = {
    # not a sheet
    "nothing": ("", REFUSED),
    "spaces": (" " * 1000, REFUSED),
    "null": ("null", REFUSED),
    "true": ("true", REFUSED),
    "a number": ("1", REFUSED),
    "a text": ('"x"', REFUSED),
    "a list": ("[]", REFUSED),
    "an empty table": ("{}", REFUSED),
    "half of it": (sheet()[:150], REFUSED),
    "two of them": (sheet() * 2, REFUSED),
    "a comment": ("// x\n" + sheet(), REFUSED),
    "a comma too many": (sheet()[:-1] + ",}", REFUSED),
    "single quotes": (sheet().replace('"', "'"), REFUSED),
    "Python": (PYTHON, REFUSED),
    "a pickle": (b"cos\nsystem\n(S'touch gained'\ntR.", REFUSED),
    "YAML with a call": ("!!python/object/apply:os.system ['touch gained']", REFUSED),
    "XML with an outside entity": ('<!DOCTYPE x [<!ENTITY y SYSTEM "/etc/passwd">]><x>&y;</x>', REFUSED),
    "a zip": (b"PK\x03\x04" + b"\0" * 100, REFUSED),
    "gzip": (b"\x1f\x8b" + b"\0" * 100, REFUSED),
    "zero bytes": (b"\0" * 500, REFUSED),
    "UTF-16": (sheet().encode("utf-16"), REFUSED),
    "UTF-32": (sheet().encode("utf-32"), REFUSED),
    "Latin-1": (size("12.5 mm é").encode().decode("unicode_escape").encode("latin-1"), REFUSED),
    "half a letter": (b'{"a":"\xc3"}', REFUSED),
    "a byte order mark": (b"\xef\xbb\xbf" + sheet().encode(), ALL),
    # too much
    "1 MB of open quotes": ('"' + '\\"' * 499_000, REFUSED),
    "1 MB of quotes": ('"' * 999_999, REFUSED),
    "1 MB of brackets": ("[" * 999_999, REFUSED),
    "1 MB of tables": ('{"a":' * 199_999, REFUSED),
    "1 MB of backslashes": ('"' + "\\" * 999_990, REFUSED),
    "1 MB of minus": ("-" * 999_999, REFUSED),
    "more than 1 MB": (sheet() + " " * 1_000_000, REFUSED),
    "13 lists within lists": (size([[[[[[[[[[[[["x"]]]]]]]]]]]]]), REFUSED),
    "600 fields": (sheet(fields={f"f{n}": entry("x") for n in range(600)}), REFUSED),
    "600 figures from the bench": (sheet(bench={f"f{n}": entry("x") for n in range(600)}), REFUSED),
    "an answer of 3000 letters": (size("9" * 3000), REFUSED),
    "an answer of 3000 parts": (first(["clean"] * 3000), REFUSED),
    "a history of 1000": (sheet(fields={"gap-size": entry("1 mm", history=[{"value": "x"}] * 1000)}), REFUSED),
    "a name of 1000 letters": (more("n" * 1000), REFUSED),
    # numbers
    "NaN": (sheet().replace('"revision": 1', '"revision": NaN'), REFUSED),
    "endless": (sheet().replace('"revision": 1', '"revision": Infinity'), REFUSED),
    "a number beyond all": (sheet().replace('"revision": 1', '"revision": 1e999'), REFUSED),
    "400,000 figures": (sheet().replace('"revision": 1', '"revision": ' + "9" * 400_000), REFUSED),
    "a revision below nothing": (sheet().replace('"revision": 1', '"revision": -1'), REFUSED),
    "a revision of 1.5": (sheet().replace('"revision": 1', '"revision": 1.5'), REFUSED),
    "an attempt that is a text": (sheet(attempt="1"), REFUSED),
    "an attempt that is true": (sheet(attempt=True), REFUSED),
    "a format that is true": (sheet(format=True), REFUSED),
    "a format to come": (sheet(format=99), REFUSED),
    "no format": (sheet(format=None), REFUSED),
    # the same twice, the wrong kind
    "a format twice": ('{"format":1,' + sheet()[1:], REFUSED),
    "a field twice": (sheet().replace('"gap-first": {', '"gap-size": {'), REFUSED),
    "fields that are a list": (sheet(fields=[]), REFUSED),
    "fields that are nothing": (sheet(fields=None), REFUSED),
    "a unit that is a text": (sheet(unit="x"), REFUSED),
    "a bench that is a list": (sheet(bench=[1]), REFUSED),
    "a field that is a text": (sheet(fields={"gap-size": "12.5 mm"}), REFUSED),
    "a field that is nothing": (sheet(fields={"gap-size": None}), REFUSED),
    "an answer that is a table": (size({"value": "12.5 mm"}), REFUSED),
    "an answer that is true": (size(True), REFUSED),
    "a list of numbers": (size([12.5]), REFUSED),
    "a list with nothing in it": (size([None]), REFUSED),
    "a history that is a text": (sheet(fields={"gap-size": entry("1", history="x")}), REFUSED),
    "a time that is a text": (sheet(fields={"gap-size": entry("1", saved="yesterday")}), REFUSED),
    # names
    "a name that leads up": (more("../../x"), REFUSED),
    "a name from the root": (more("/etc/passwd"), REFUSED),
    "a name of Python's": (more("__class__"), REFUSED),
    "a name with a zero": (more("a\0b"), REFUSED),
    "a name that steers a terminal": (more("\x1b[2J"), REFUSED),
    "no name": (more(""), REFUSED),
    "a learner that leads up": (sheet(learner="../b2"), REFUSED),
    "a learner that is a list": (sheet(learner=["a1"]), REFUSED),
    "a learner that is a script": (sheet(learner=SCRIPT), REFUSED),
    "a cohort that leads up": (sheet(cohort="../../x"), REFUSED),
    "a version that is Python": (sheet(course_version=PYTHON), REFUSED),
    # signs
    "an answer that steers a terminal": (size("\x1b[2J12.5 mm"), REFUSED),
    "an answer with a zero": (size("12.5 mm\0"), REFUSED),
    "half a sign": (size("\ud800"), REFUSED),
    "writing turned round": (size("\u202e mm 5.21"), REFUSED),
    "a sign of no width": (size("12.5\u200b mm"), REFUSED),
    # more is said than was asked: it counts for nothing
    "points of one's own": (sheet(points=1000, score=1000, mark=1000), ALL),
    "points in a field": (sheet(fields={"gap-size": entry("1 mm", points=3, share=1.0, verdict="right")}), 0.0),
    "a maximum of one's own": (sheet(maximum=0.0, fields={}), 0.0),
    "outcomes of one's own": (sheet(outcomes={"read-scales": True}, fields={}), 0.0),
    "a reference of one's own": (sheet(fields={"gap-size": entry("1 mm", reference="1 mm", tolerance=99)}), 0.0),
    "readings of one's own": (sheet(given={"gap": 1}, issued={}, fields={}), 0.0),
    "a field that is none": (more("gap-third", "12.5 mm"), ALL),
    "the task as a field": (more("gap", "4"), ALL),
    "200 fields that are none": (sheet(fields={f"f{n}": entry("clean") for n in range(200)}), 0.0),
    "the right answers in the history": (
        sheet(fields={"gap-size": entry("1 mm", history=[{"value": "12.5 mm", "saved": ""}])}), 0.0),
    "figures from the bench, not allowed": (sheet(bench={"gap": entry("1 mm")}), ALL),
    "another's name": (sheet(learner="b2"), ALL),
    "another module": (sheet(module="order-of-work"), ALL),
    "another attempt": (sheet(attempt=7), ALL),
    "another digest": (sheet(given_digest="0" * 64), ALL),
    "a revision of a thousand million": (sheet().replace('"revision": 1', '"revision": 999999999'), ALL),
    # answers that try to be more than an answer
    "all options at once": (first(["clean", "close"]), SIZE),
    "the right option twice": (first(["clean", "clean"]), SIZE),
    "an option that is none": (first("both"), SIZE),
    "an option with another's words": (first("Clean it"), SIZE),
    "a choice that is a number": (first(0), SIZE),
    "Python as a choice": (first(PYTHON), SIZE),
    "Python as a figure": (size(PYTHON), FIRST),
    "a power of powers": (size("9**9**9 mm"), FIRST),
    "a sum": (size("12+0.5 mm"), FIRST),
    "a range": (size("0 mm to 99 mm"), FIRST),
    "two figures": (size("12.5 mm 13 mm"), FIRST),
    "two figures with or": (size("12.5 mm or 1 mm"), FIRST),
    "every figure": (size("1 2 3 4 5 6 7 8 9 10 11 12 12.5 mm"), FIRST),
    "a list of figures": (size(["12.5 mm", "13 mm"]), FIRST),
    "not a number": (size("nan mm"), FIRST),
    "an endless figure": (size("inf mm"), FIRST),
    "a figure beyond all": (size("1e999 mm"), FIRST),
    "a figure of 2000 signs": (size("0" * 1990 + "12.5 mm"), FIRST),
    "a unit of another kind": (size("12.5 kg"), FIRST),
    "a unit to a power": (size("12.5 mm^99999999"), FIRST),
    "units of units": (size("12.5 " + "mm*" * 600), FIRST),
    "brackets": (size("(" * 1900), FIRST),
    "a colour of a terminal in words": (size("[bold red]12.5 mm[/]"), FIRST),
    "a script": (size(SCRIPT), FIRST),
    "a script in a picture": (size('<img src=x onerror="alert(1)">'), FIRST),
    "a link that runs": (size('<a href="javascript:alert(1)">12.5 mm</a>'), FIRST),
    "an end of the page": (size("</td></table></body>"), FIRST),
    "a template": (size("{{ 7*7 }}{% for x in ().__class__.__mro__ %}{% endfor %}"), FIRST),
    "a format": (size("{0.__class__} %s %n ${PATH}"), FIRST),
    "a formula of a spreadsheet": (size("=HYPERLINK(\"http://x\")"), FIRST),
    "a formula with a plus": (size("+12.5 mm|cmd"), FIRST),
    "a command": (size("; touch gained; $(touch gained) `touch gained`"), FIRST),
    "a query": (size("'; DROP TABLE grade; --"), FIRST),
    "a path": (size("../../../etc/passwd"), FIRST),
    "an address": (size("file:///etc/passwd http://127.0.0.1:1/"), FIRST),
    "mathematics of a page": (size("$\\input{/etc/passwd}$"), FIRST),
    "markdown": (size("![x](http://127.0.0.1:1/x.png)"), FIRST),
}  # fmt: skip


@pytest.fixture(scope="module")
def one(handed_out, tmp_path_factory):
    """What marks one sheet, as the commands do."""
    base = tmp_path_factory.mktemp("sheets")
    trial = handed_out(base / "cohort", ["a1", "b2"])
    assigned = read_assigned(trial.cohort, trial.name)
    work = work_of(trial.cohort, assigned, "a1")
    folder = base / "sheet"
    folder.mkdir()
    work = replace(work, folder=str(folder))

    def mark(text):
        (folder / "jobsheet.json").write_bytes(text if isinstance(text, bytes) else text.encode())
        return mark_one(work)

    assert mark(sheet()).sheet.points == ALL  # all is loaded, once
    return mark, base


def test_there_are_a_hundred_and_more():
    assert len(SHEETS) >= 130
    assert len({text for text, _ in SHEETS.values()}) == len(SHEETS)


@pytest.mark.parametrize("what", SHEETS)
def test_a_hostile_sheet_gains_reads_and_harms_nothing(one, what, monkeypatch):
    mark, base = one
    text, points = SHEETS[what]
    before = sorted(path for path in base.rglob("*"))
    monkeypatch.chdir(base)
    ours, opened = builtins.open, []

    def watched(file, *rest, **more):
        opened.append(str(file))
        return ours(file, *rest, **more)

    def never(*words, **more):
        raise AssertionError(f"a sheet reached out: {words}")

    for place, name in ((os, "system"), (subprocess, "Popen"), (socket, "socket")):
        monkeypatch.setattr(place, name, never)
    monkeypatch.setattr(builtins, "open", watched)
    begun = time.process_time()
    try:
        result = mark(text)
    finally:
        took = time.process_time() - begun
        monkeypatch.setattr(builtins, "open", ours)
    assert took < LONGEST_S
    assert not [path for path in opened if "passwd" in path]
    assert result.sheet is not None and result.sheet.maximum == ALL
    if points is REFUSED:
        assert result.trouble and result.sheet.points == 0 and "\n" not in result.trouble
        assert result.trouble.isprintable()
    else:
        assert not result.trouble and result.sheet.points == points, result.sheet.fields
    assert sorted(path for path in base.rglob("*")) == before
    assert_nothing_is_live(result)


def assert_nothing_is_live(result):
    handed = Handed(
        learner="A", college="", cohort="c", handed_in="", due="", late=False, receipt="",
        supervised_by="", observed={},
    )  # fmt: skip
    page = feedback_page(result.sheet, handed, outcomes={}, staff={}, next_step=result.trouble)
    for task in result.sheet.tasks:
        page += task_html(task)
        for line in task_comment(task).splitlines():
            assert line.isprintable()
    for live in ("<script>alert", "<img src=x", 'href="javascript', "</td></table></body>", ">49<"):
        assert live not in page
    assert not re.search(r"[\x00-\x08\x1b\u202e]", page)
    for field in result.sheet.fields:
        assert not cell(field.answer).startswith(("=", "+", "-", "@"))
