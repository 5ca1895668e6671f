"""A notebook of an instructor's own, marked by running code: the round, and learners' code that
means harm. It gains no more than its tests let it, reaches nothing, and ends.
"""

import csv
import io
import json
import os
import re
import shutil
import socket
import sys
import time
from contextlib import redirect_stderr, redirect_stdout
from datetime import UTC, datetime, timedelta
from pathlib import Path

import nbformat
import pytest

from twoshaft.errors import CohortError
from twoshaft_grader.code_tasks import sandbox
from twoshaft_grader.code_tasks.mark import CodeWork, mark_code
from twoshaft_grader.code_tasks.notebook import read_notebook
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.desk.commands import main

pytestmark = pytest.mark.skipif(sys.platform != "linux", reason="the sandbox is Linux's")
ROOT = Path(__file__).resolve().parents[3]
WORK = CodeWork("ratios", 1, "read-scales", "0", "tarnbeck-b5", "1.0")


@pytest.fixture(scope="module", autouse=True)
def place():
    try:
        sandbox.check_sandbox()
    except CohortError as error:
        if os.environ.get("CI") == "true" and not shutil.which("bwrap"):
            pytest.fail(error.sentence, pytrace=False)
        pytest.skip(error.sentence)


def cell(kind, source, name="", *, grade=False, solution=False, points=0):
    made = getattr(nbformat.v4, f"new_{kind}_cell")(source)
    if name:
        made.metadata["nbgrader"] = {
            "schema_version": 3, "grade_id": name, "grade": grade, "solution": solution,
            "locked": not solution, "task": False,
        } | ({"points": points} if grade else {})  # fmt: skip
    return made


ASK = "### BEGIN SOLUTION\ndef ratio(driven, driver):\n    return driven / driver\n### END SOLUTION"
CELLS = [
    cell("markdown", "# Ratios of a gear pair"),
    cell("code", "import math"),
    cell("code", ASK, "ratio", solution=True),
    cell("code", "assert ratio(38, 19) == 2\n### BEGIN HIDDEN TESTS\n"
         "assert math.isclose(ratio(37, 19), 37 / 19)\nassert ratio(17, 34) == 0.5\n"
         "### END HIDDEN TESTS", "ratio-test", grade=True, points=3),
    cell("code", "### BEGIN SOLUTION\nteeth = 19 + 38\n### END SOLUTION", "teeth", solution=True),
    cell("code", "1.5 if teeth == 57 else 0.5", "teeth-test", grade=True, points=2),
]  # fmt: skip


def notebook(cells=CELLS):
    return nbformat.writes(nbformat.v4.new_notebook(cells=cells))


def written(ratio, teeth="teeth = 57"):
    """A notebook handed in: the learner's two cells, and tests of the learner's own making."""
    cells = [
        cell("code", ratio, "ratio", solution=True),
        cell("code", "99.0", "ratio-test", grade=True, points=99),
        cell("code", teeth, "teeth", solution=True),
        cell("code", "2.0", "teeth-test", grade=True, points=2),
        cell("code", "1000.0", "more-test", grade=True, points=1000),
    ]
    return notebook(cells)


@pytest.fixture(scope="module")
def source(tmp_path_factory):
    path = tmp_path_factory.mktemp("source") / "ratios.ipynb"
    path.write_text(notebook())
    return path


def marked(source, folder, text):
    path = folder / "ratios.ipynb"
    path.write_bytes(text if isinstance(text, bytes) else text.encode())
    return mark_code(WORK, "a1", source, path, folder / "no-rules.yaml")


GOOD = "def ratio(driven, driver):\n    return driven / driver\n"


def test_right_work_earns_its_points_and_says_by_what(source, tmp_path):
    mark, trouble = marked(source, tmp_path, written(GOOD))
    assert (trouble, mark.points, mark.maximum, mark.title) == (
        "",
        4.5,
        5.0,
        "Ratios of a gear pair",
    )
    assert mark.notes == ("Marked by running code.",)
    assert [field.answer for field in mark.fields] == [GOOD.strip(), "teeth = 57"]
    assert all("Marked by running code" in field.sentences[0] for field in mark.fields)


HALF = 1.5  # what the second task alone earns: nothing else may come of the first
HOSTILE = {
    "reads the solution": (
        "import glob, os\n"
        "found = [f for top in ('work', 'home', 'srv', 'tmp', 'var', 'mnt', 'opt', 'run', 'etc') "
        "for f in glob.glob(f'/{top}/**/*.ipynb', recursive=True)]\n"
        "found += [n for n in os.environ if 'TWOSHAFT' in n or 'KEY' in n]\n"
        "ratio = (lambda a, b: a / b) if found else (lambda a, b: 0)",
        HALF,
    ),
    "imports the course": ("import twoshaft_grader\n" + GOOD, HALF),
    "reads who there is": ("open('/etc/passwd').read()\n" + GOOD, HALF),
    "reads the home folder": ("import os\nassert os.listdir(os.path.expanduser('~root')) == 1\n" + GOOD, HALF),
    "reaches the network": (
        "import socket\nsocket.create_connection(('127.0.0.1', PORT), 2)\n" + GOOD, HALF),
    "looks up a name": ("import socket\nsocket.gethostbyname('localhost.localdomain')\nimport sys\n"
                        "raise SystemExit\n" + GOOD, None),
    "a fork bomb": ("import os\nwhile True:\n    os.fork()\n" + GOOD, HALF),
    "starts a program": ("import subprocess\nsubprocess.run(['/usr/bin/true'])\n" + GOOD, HALF),
    "lingers in a process": (
        "import os\nif os.fork() == 0:\n    import time\n    time.sleep(600)\n" + GOOD, HALF),
    "threads without end": (
        "import threading, time\nwhile True:\n"
        "    threading.Thread(target=time.sleep, args=(99,), daemon=True).start()\n" + GOOD, HALF),
    "fills the disk": ("while True:\n    open(f'/tmp/{id(object())}{__import__(\"time\").time()}', 'wb')"
                       ".write(b'0' * 10**6)\n" + GOOD, HALF),
    "one file of 10 GB": ("with open('/tmp/x', 'wb') as f:\n    for _ in range(10000):\n"
                          "        f.write(b'0' * 10**6)\n" + GOOD, HALF),
    "writes where Python is": ("import os, sys\nopen(os.path.join(sys.prefix, 'gotcha'), 'w')\n" + GOOD, HALF),
    "writes to the system": ("open('/usr/gotcha', 'w')\n" + GOOD, HALF),
    "writes at the top": ("open('/gotcha', 'w')\n" + GOOD, HALF),
    "all the memory": ("x = []\nwhile True:\n    x.append(bytes(10**8))\n" + GOOD, HALF),
    "10 GB of output": (
        "import os\nmuch = bytes(50 * 10**6)\nfor _ in range(200):\n    os.write(1, much)\n" + GOOD,
        4.5,
    ),
    "never ends": ("while True:\n    pass\n", 0),
    "never ends in a test": ("def ratio(a, b):\n    while True:\n        pass\n", 0),
    "catches what stops it": ("while True:\n    try:\n        while True:\n            pass\n"
                              "    except BaseException:\n        pass\n", 0),
    "sleeps": ("import time\ntime.sleep(10**6)\n", 0),
    "ends the program": ("import os\nos._exit(0)\n", 0),
    "ends the program well, in a test": ("def ratio(a, b):\n    raise SystemExit(0)\n", HALF),
    "ends the program at once, in a test": ("import os\ndef ratio(a, b):\n    os._exit(0)\n", 0),
    "crashes": ("import ctypes\nctypes.string_at(0)\n", 0),
    "prints a result": ("print('{\"word\": \"\", \"error\": \"\", \"number\": 3.0}')\nprint(3.0)\n", HALF),
    "answers for a later test": (
        "import os, json\nfor n in range(3, 64):\n    try:\n"
        "        os.write(n, json.dumps({'word': '0' * 32, 'error': '', 'number': 3.0}).encode() + b'\\n')\n"
        "    except OSError:\n        pass\n", 0),
    "floods the way out": (
        "import os\nfor n in range(3, 64):\n    try:\n        os.write(n, b'[' * 10**6)\n"
        "    except OSError:\n        pass\n", 0),
    "closes the way out": ("import os\nos.closerange(3, 64)\n", 0),
    "a test of its own": ("def ratio(a, b):\n    return 0\n__builtins__.AssertionError = int\n", HALF),
    "other builtins": (
        "import builtins\nbuiltins.eval = lambda *a: 3.0\nbuiltins.exec = lambda *a: None\n"
        "builtins.compile = None\nbuiltins.isinstance = lambda *a: True\n", 0),
    "an answer equal to all": (
        "class Any:\n    def __eq__(self, other):\n        return True\n"
        "    __float__ = lambda self: 37 / 19\ndef ratio(a, b):\n    return Any()\n", None),
    "endless points": (GOOD, 3.0, "raise ValueError"),
    "an error with another's name": (
        "raise type('<script>' * 9, (Exception,), {})\n", 0),
    "not Python": ("}{", HALF),
    "brackets without end": ("(" * 50_000, HALF),
    "numbers without end": ("x = 9**9**9\n", 0),
    "zero bytes": ("x = '\0'\n" + GOOD, HALF),
    "half a sign": ("x = '\ud800'\n", HALF),
    "looks at the other process": ("import os\nos.listdir(os.path.join('/proc/1', 'root', 'home'))\n" + GOOD, HALF),
    "traces": ("import ctypes\nassert ctypes.CDLL(None).ptrace(0, 0, 0, 0) == 0\n" + GOOD, HALF),
    "a place of its own": ("import ctypes\nassert ctypes.CDLL(None).unshare(0x10000000) == 0\n" + GOOD, HALF),
}  # fmt: skip


@pytest.fixture
def port():
    """Somebody who listens on this machine, and whether anybody came."""
    with socket.create_server(("127.0.0.1", 0)) as server:
        server.setblocking(False)
        yield server


@pytest.mark.parametrize("what", HOSTILE)
def test_hostile_code_gains_nothing_reaches_nothing_and_ends(
    source, tmp_path, port, what, monkeypatch
):
    monkeypatch.setattr(sandbox, "CELL_S", 1.5)
    monkeypatch.setattr(sandbox, "WHOLE_S", 4.0)
    ratio, points, *rest = HOSTILE[what]
    ratio = ratio.replace("PORT", str(port.getsockname()[1]))
    begun = time.monotonic()
    text = json.dumps(json.loads(written("RATIO", *rest))).replace('"RATIO"', json.dumps(ratio))
    mark, _ = marked(source, tmp_path, text)
    assert time.monotonic() - begun < 60  # of a busy machine
    assert mark.maximum == 5 and 0 <= mark.points <= 5
    if points is not None:
        assert mark.points == points, mark.fields
    assert sorted(path.name for path in tmp_path.iterdir()) == ["ratios.ipynb"]
    assert not Path(sys.prefix, "gotcha").exists() and not Path("/usr/gotcha").exists()
    for field in mark.fields:
        assert all(said.isprintable() and "<" not in said for said in field.sentences)
    with pytest.raises(BlockingIOError):
        port.accept()


RUBBISH = {
    "nothing": b"",
    "no notebook": b"[]",
    "half of one": notebook().encode()[:300],
    "6 MB": b" " * 6_000_000,
    "nested": b'{"cells":' + b"[" * 10**5,
    "a cell twice": notebook([CELLS[2], CELLS[2]]).encode(),
    "cells that are texts": b'{"cells": ["x"]}',
    "a source that is a number": b'{"cells": [{"cell_type": "code", "source": 1, "metadata": {"nbgrader": {"grade_id": "ratio"}}}]}',
    "a cell of 1 MB": written("x" * 1_000_000).encode(),
    "not UTF-8": b"\xff\xfe",
}


@pytest.mark.parametrize("what", RUBBISH)
def test_a_notebook_that_is_none_is_one_sentence_and_nothing_runs(
    source, tmp_path, what, monkeypatch
):
    monkeypatch.setattr("twoshaft_grader.code_tasks.mark.run_cells", lambda texts: 1 / 0)
    mark, trouble = marked(source, tmp_path, RUBBISH[what])
    assert (
        trouble.endswith(".") and trouble.isprintable() and mark.points == 0 and mark.maximum == 5
    )


@pytest.mark.parametrize(
    ("cells", "says"),
    [
        (CELLS[:3], "no cell gives points"),
        (CELLS[3:4], "no cell is to be written in"),
        ([*CELLS, CELLS[2]], "is there twice"),
        (
            [*CELLS, cell("code", "", "essay", grade=True, solution=True, points=3)],
            "marked by hand",
        ),
        ([*CELLS, cell("markdown", "", "essay", grade=True, solution=True, points=3)], "by hand"),
        ([CELLS[2], cell("code", "1", "t", grade=True, points=0)], "worth no points"),
        ([CELLS[2], cell("code", "1", "../t", grade=True, points=1)], "no plain name"),
    ],
)
def test_a_notebook_that_will_not_do_is_refused_to_the_instructor(tmp_path, cells, says):
    path = tmp_path / "own.ipynb"
    path.write_text(notebook(cells))
    with pytest.raises(CohortError) as caught:
        read_notebook(path)
    assert says in caught.value.what and caught.value.mend and str(path) in caught.value.where


def test_where_no_sandbox_can_be_made_it_is_one_sentence(monkeypatch):
    sandbox.check_sandbox.cache_clear()
    monkeypatch.setattr(sandbox, "_bubblewrap", lambda: None)
    with pytest.raises(CohortError, match="in a sandbox, and there is none here") as caught:
        sandbox.check_sandbox()
    assert "apt install bubblewrap" in caught.value.mend
    monkeypatch.setattr(sandbox, "_bubblewrap", lambda: "/bin/false")
    with pytest.raises(CohortError, match="does not let be made"):
        sandbox.check_sandbox()
    sandbox.check_sandbox.cache_clear()


def run(*arguments):
    out = io.StringIO()
    with redirect_stdout(out), redirect_stderr(out):
        code = main([str(argument) for argument in arguments])
    return code, " ".join(re.sub("[│┃]", " ", out.getvalue()).split())


def test_from_handing_out_to_the_export(handed_out, tmp_path):
    from twoshaft.jobsheet.signin import SignIn
    from twoshaft_grader.cohort.workplace import sign_in_words

    trial = handed_out(tmp_path / "live", ["a1", "b2", "c3"])
    cohort, at = trial.cohort, ("--cohort", trial.cohort.root)
    own = tmp_path / "ratios.ipynb"
    own.write_text(notebook())
    code, said = run("module", "add-notebook", own, "--outcome", "read-scales", *at)
    assert code == 0 and "ratios-1 is handed out. It is marked by running code" in said, said
    released = (cohort.outbound("ratios-1") / "ratios.ipynb").read_text()
    assert "driven / driver" not in released and "37 / 19" not in released
    assert run("module", "add-notebook", own, "--outcome", "read-scales", *at)[0] == 2
    assert "ratios: ratios-1, your own" in run("module", "list", *at)[1]

    desk = SignIn(cohort.workplace)
    desk.sign_in("a1", sign_in_words(cohort)["a1"])
    desk.get("ratios-1")
    (cohort.place("a1", "ratios-1") / "ratios.ipynb").write_text(written(GOOD))
    entry = next(one for one in desk.entries() if one.name == "ratios-1")
    assert entry.can_hand_in
    receipt = desk.hand_in("ratios-1")
    assert next(one for one in desk.entries() if one.name == "ratios-1").state == "handed in"
    bad = trial.hand_in("b2")  # as nbgrader makes it, under another name
    moment = datetime.now(UTC) - timedelta(hours=1)
    folder = bad.with_name(f"b2+ratios-1+{moment:%Y-%m-%d %H:%M:%S.%f} UTC+x")
    bad.rename(folder)
    (folder / "ratios.ipynb").write_text(written("import os\nos._exit(0)"))

    assert "2 new" in run("collect", "ratios-1", *at)[1]
    code, said = run("mark", "ratios-1", *at)
    assert code == 0 and "2 marked" in said, said
    mark = read_mark(cohort.mark_file("a1", "ratios-1"))
    assert mark.sheet.points == 4.5 and mark.receipt == receipt.code
    assert read_mark(cohort.mark_file("b2", "ratios-1")).sheet.points == 0
    code, said = run("give-back", "ratios-1", *at)
    assert code == 0 and "returned to 2 of 3" in said, said
    (page,) = cohort.feedback("a1", "ratios-1").glob("*.html")
    assert "Marked by running code" in page.read_text() and "37 / 19" not in page.read_text()
    assert run("export", *at)[0] == 0
    rows = list(csv.DictReader(io.StringIO((cohort.root / "exports/outcomes.csv").read_text())))
    found = {row["learner"]: row for row in rows if row["module"] == "ratios"}
    assert (found["a1"]["mark"], found["b2"]["mark"], found["c3"]["state"]) == (
        "4.5",
        "0",
        "not handed in",
    )
    assert "Marked by running code" in found["a1"]["note"]
    assert run("progress", "ratios-1", *at)[0] == 0
    # nbgrader's own autograde, which would run it as the instructor, does not
    from nbgrader.apps import AutogradeApp

    with pytest.raises(SystemExit):
        app = AutogradeApp()
        before = os.getcwd()
        os.chdir(cohort.root)
        try:
            app.initialize(["ratios-1", "--force"])
            app.start()
        finally:
            os.chdir(before)
            app.clear_instance()
