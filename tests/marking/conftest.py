"""Modules to be marked: the course's own, and a made-up one of three tasks.

A test file of one module names it and asks for what it needs::

    MODULE = "05-shims-and-preload"          # the name of its text source in solutions/

    def test_a_slip(marked, clean, issued):  # all three are of one learner, "ann"
        gap = clean.references["stack-gap"].value
        fields, sheet = marked(stack_gap=f"{10 * gap.m_as('mm'):.2f} mm")
        assert fields["stack-gap"].share == 0 and not sheet.met

    def test_another(module, marked):
        for learner in ("bob", "cal"):
            fields, sheet = marked(learner, stack_gap=lambda given, right: right["stack-thin"])

``module`` has ``.unit``, ``.solution`` and gives ``.issue(learner, attempt)``, ``.clean(who)``,
``.right(who)`` (full answers) and ``.marked(who, **wrong)``, where who is a learner's id or an
issued record. Solutions are built, and readings drawn and worked out, once a session and learner;
the unit is Tarnbeck B5. A file may override ``issued`` to choose its learner.
"""

import copy
import hashlib
import json
import logging
import os
import random
import secrets
import shutil
import stat
import subprocess
import sys
import tempfile
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from types import SimpleNamespace

import psutil
import pytest
from jupyter_client.blocking import BlockingKernelClient
from jupyter_client.manager import AsyncKernelManager
from jupyter_core.utils import run_sync
from nbconvert.preprocessors import ExecutePreprocessor
from nbgrader.api import Gradebook
from nbgrader.converters import GenerateAssignment
from nbgrader.coursedir import CourseDirectory
from traitlets.config import Config

from twoshaft.jobsheet import Answer, SheetData
from twoshaft.readings import issue_record
from twoshaft.units import load_unit
from twoshaft_grader.cohort.assign import assign
from twoshaft_grader.cohort.content import Content
from twoshaft_grader.cohort.folder import make_cohort, open_cohort
from twoshaft_grader.cohort.intake import take_in
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.environment import tools_on_path
from twoshaft_grader.marking import load_solution, mark_sheet, run_clean, solve
from twoshaft_grader.notebooks import RELEASE_PREPROCESSORS
from twoshaft_grader.notebooks.text import build_notebook, notebook_text

collect_ignore_glob = ["tiny/*"]

ROOT = Path(__file__).resolve().parents[2]
SOLUTIONS = ROOT / "solutions"
TINY = Path(__file__).parent / "tiny"
PATIENCE = 240  # how long a kernel is waited for [s]; only a test that fails waits so long
PARTS = [["seal", "The seal"], ["ring", "The snap ring"], ["washer", "The plug's washer"],
         ["gear", "The gear"], ["shaft", "The shaft"], ["case", "The case half"]]  # fmt: skip
WHY = [["reach", "It is out of reach later"], ["weight", "It is heavy"], ["oil", "It needs oil"],
       ["look", "It looks better"], ["rule", "It is always so"]]  # fmt: skip


SMALL = """\
# %% [markdown]
# # Order of work

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet

sheet = open_sheet("order-of-work")
given, unit = sheet.given, sheet.unit

# %% [markdown] tags=["task"]
# Plan it.

# %% tags=["form"]
sheet.form(
    "plan",
    sheet.order("plan-order", "Order these", steps=given.sub_assembly.start),
    sheet.choice("plan-first", "First", options=[["clean", "Clean it"], ["close", "Close it"]]),
)

# %% tags=["reference"]
task = order.OrderTask.from_unit(unit, given.sub_assembly.operations)
ref("plan-order", task, outcome="plan-order", weight=3)
ref("plan-first", "clean", outcome="safe-order", must_pass=True)

# %% tags=["mark"] task="plan" points=4

# %% [markdown] tags=["task"]
# Measure it.

# %% tags=["form"]
sheet.form("gap", sheet.number("gap-size", "How wide", unit="mm"))

# %% tags=["reference"]
ref("gap-size", Q(12.5, "mm"), outcome="plan-order")

# %% tags=["mark"] task="gap" points=2
"""


@pytest.fixture(scope="session")
def small_solution():
    """Source text of a solution of two tasks, an order with a must-pass choice and a figure."""
    return SMALL


def _issued(learner, attempt=1):
    source = random.Random(f"{learner}-{attempt}")
    start = ["plug", "check", "screws", "case", "seal", "ring", "gear", "shaft", "bush"]
    parts = source.sample(PARTS, len(PARTS))
    return {
        "format": 1,
        "learner": learner,
        "module": "tiny",
        "attempt": attempt,
        "unit": "tiny",
        "unit_version": "1.0",
        "course_version": "0.1.0",
        "given": {
            "gap": {
                "case": round(source.uniform(2.5, 3.5), 2),
                "bearing": round(source.uniform(1.2, 1.9), 2),
            },
            "build": {"start": [[step, step] for step in start], "why": WHY},
            "new": {"parts": parts},
        },
    }


def _sheet(issued, answers, **changes):
    facts = {
        "learner": issued["learner"],
        "module": issued["module"],
        "attempt": issued["attempt"],
        "unit_id": issued["unit"],
        "unit_version": issued["unit_version"],
    } | changes
    return SheetData(answers={k: Answer(v, 1) for k, v in answers.items()}, **facts)


class CourseModule:
    """A module of the course: its solution on a unit, and what its learners earn."""

    def __init__(self, solution, unit):
        self.solution, self.unit = solution, unit
        self._known = {}

    def _once(self, what, issued, make):
        key = what, issued["learner"], issued["attempt"]
        if key not in self._known or self._known[key][0] != issued["given"]:
            self._known[key] = copy.deepcopy(issued["given"]), make()
        return self._known[key][1]

    def issue(self, learner="ann", attempt=1):
        """The record of what a learner was issued."""
        key = "issued", learner, attempt
        if key not in self._known:
            self._known[key] = issue_record(
                self.solution.module, self.unit, salt="test", learner=learner, attempt=attempt
            )
        return copy.deepcopy(self._known[key])

    def record(self, who):
        """An issued record, from itself or from a learner's id."""
        return self.issue(who) if isinstance(who, str) else who

    def clean(self, who="ann"):
        """The clean pass: every field with its reference."""
        issued = self.record(who)
        return self._once("clean", issued, lambda: run_clean(self.solution, issued, self.unit))

    def right(self, who="ann"):
        """A full-mark answer for every field, as a sheet stores it."""
        issued = self.record(who)
        found = self._once("right", issued, lambda: solve(self.solution, issued, self.unit))
        return copy.deepcopy(found)

    def mark(self, who, answers):
        """Mark a sheet that holds these answers."""
        issued = self.record(who)
        return mark_sheet(_sheet(issued, answers), issued, self.solution, unit=self.unit)

    def marked(self, who="ann", **wrong):
        """Mark full answers with some changed: the fields by name, and the sheet's mark.

        wrong: by field name, ``_`` for ``-``; an answer, or a function of the readings given and
        of the full answers.
        """
        issued = self.record(who)
        right = self.right(issued)
        wrong = {name.replace("_", "-"): answer for name, answer in wrong.items()}
        assert set(wrong) <= set(right), f"no such field: {sorted(set(wrong) - set(right))}"
        changed = {
            name: answer(issued["given"], right) if callable(answer) else answer
            for name, answer in wrong.items()
        }
        mark = self.mark(issued, right | changed)
        return {field.name: field for field in mark.fields}, mark


@pytest.fixture(scope="session")
def built_solution(tmp_path_factory):
    """Return the solution of a text source in solutions/, by name: built once a session."""
    folder, built = tmp_path_factory.mktemp("solutions"), {}

    def of(name):
        if name not in built:
            source = SOLUTIONS / f"{name}.py"
            nb = build_notebook(source.read_text(encoding="utf-8"), Path("solutions") / source.name)
            path = folder / f"{name}.ipynb"
            path.write_text(notebook_text(nb), encoding="utf-8")
            built[name] = load_solution(path)
        return built[name]

    return of


@pytest.fixture(scope="session")
def course_module(built_solution):
    """Return a module of the course by its text source's name, on a shipped unit."""
    made = {}

    def of(name, unit="tarnbeck-b5"):
        if (name, unit) not in made:
            made[name, unit] = CourseModule(built_solution(name), load_unit(unit))
        return made[name, unit]

    return of


@pytest.fixture(scope="module")
def module(request, course_module):
    """The module that the test file names in ``MODULE``."""
    return course_module(request.module.MODULE)


@pytest.fixture(scope="module")
def unit(module):
    """The unit on the bench."""
    return module.unit


@pytest.fixture(scope="module")
def issued(module):
    """What one learner was issued."""
    return module.issue("ann")


@pytest.fixture(scope="module")
def clean(module, issued):
    """That learner's clean pass."""
    return module.clean(issued)


@pytest.fixture(scope="module")
def marked(module, issued):
    """Mark that learner's, or another's, full answers with some changed."""

    def mark(who=issued, /, **wrong):
        return module.marked(who, **wrong)

    return mark


@pytest.fixture(scope="session")
def tiny(tmp_path_factory):
    """The made-up module, built: its unit, solution, and how to issue, fill and mark it."""
    source = TINY / "solutions/90-tiny.py"
    notebook = tmp_path_factory.mktemp("tiny") / source.with_suffix(".ipynb").name
    text = notebook_text(build_notebook(source.read_text(), Path("solutions/90-tiny.py")))
    notebook.write_text(text)
    unit, solution = load_unit(TINY / "unit.yaml"), load_solution(notebook)

    def mark(issued, answers, **changes):
        sheet = None if answers is None else _sheet(issued, answers, **changes)
        return mark_sheet(sheet, issued, solution, unit=unit)

    return SimpleNamespace(
        unit=unit,
        solution=solution,
        notebook=notebook,
        text=text,
        unit_file=TINY / "unit.yaml",
        source=source,
        issued=_issued,
        sheet=_sheet,
        mark=mark,
        solve=lambda issued: solve(solution, issued, unit),
    )


@pytest.fixture(scope="session")
def kernel():
    """A kernel that runs notebooks one after the other, each in a namespace and folder of its own.

    A kernel of their own, as nbgrader starts one, costs most of the time that they take.
    """
    manager = AsyncKernelManager(kernel_name="python3")
    run_sync(manager.start_kernel)(extra_arguments=["--HistoryManager.hist_file=:memory:"])

    def fresh(folder):
        client = BlockingKernelClient()
        client.load_connection_info(manager.get_connection_info())
        client.start_channels()
        try:
            client.wait_for_ready(timeout=PATIENCE)
            begin = f"get_ipython().reset(); import os; os.chdir({str(folder)!r}); del os"
            assert client.execute(begin, reply=True, timeout=PATIENCE)["content"]["status"] == "ok"
        finally:
            client.stop_channels()
        return manager

    yield fresh
    run_sync(manager.shutdown_kernel)(now=True)


@pytest.fixture
def one_kernel(kernel, monkeypatch):
    """Let whatever executes notebooks use the one kernel."""
    execute = ExecutePreprocessor.preprocess

    def in_the_kernel(self, nb, resources=None, km=None):
        manager = kernel(resources["metadata"]["path"])
        try:
            return execute(self, nb, resources, km=manager)
        finally:
            self.kc.stop_channels()

    monkeypatch.setattr(ExecutePreprocessor, "preprocess", in_the_kernel)


@pytest.fixture(scope="session")
def make_course(tmp_path_factory):
    """Return a maker of cohort folders: the least that nbgrader and marking both need."""

    def make(assignment, solution, unit_file=None):
        tools_on_path()
        root = tmp_path_factory.mktemp("cohort").resolve()
        (root / "cohort.yaml").write_text("id: test\n")
        source = root / "source" / assignment
        source.mkdir(parents=True)
        shutil.copyfile(solution, source / Path(solution).name)
        if unit_file:
            shutil.copyfile(unit_file, source / "unit.yaml")
        config = Config()
        config.CourseDirectory.root = str(root)
        config.CourseDirectory.course_id = "test"
        config.CourseDirectory.assignment_id = assignment
        config.GenerateAssignment.preprocessors = RELEASE_PREPROCESSORS
        config.Autograde.exclude_overwriting = {assignment: ["jobsheet.json"]}

        def run(kind, force=False, **traits):
            converter = kind(coursedir=CourseDirectory(config=config, **traits), config=config)
            converter.force = force
            converter.log = logging.getLogger("test-stock")
            converter.start()

        def book():
            return Gradebook(f"sqlite:///{root / 'gradebook.db'}", "test")

        def hand_in(issued, sheet_text):
            folder = root / "submitted" / issued["learner"] / assignment
            folder.mkdir(parents=True)
            name = Path(solution).name
            shutil.copyfile(root / "release" / assignment / name, folder / name)
            (folder / "timestamp.txt").write_text("2026-03-02 09:30:00.000000 UTC")
            if sheet_text is not None:
                (folder / "jobsheet.json").write_text(sheet_text)
            record = root / "issued" / assignment / f"{issued['learner']}.json"
            record.parent.mkdir(parents=True, exist_ok=True)
            record.write_text(json.dumps(issued))

        def scores(learner):
            with book() as gradebook:
                return {
                    grade.name: grade.score
                    for notebook in gradebook.find_submission(assignment, learner).notebooks
                    for grade in notebook.grades
                    if grade.max_score
                }

        run(GenerateAssignment)
        return SimpleNamespace(
            root=root,
            submitted=root / "submitted",
            run=run,
            book=book,
            hand_in=hand_in,
            scores=scores,
        )

    return make


SMALL_MODULE, SMALL_OUTCOME = (
    "measuring-and-tools",
    "read-scales",
)  # whose readings are drawn quickest
SMALL_DESK = "desk"
SMALL_NAME, SMALL_NOTEBOOK = f"{SMALL_MODULE}-1", f"03-{SMALL_MODULE}"
SMALL_SOLUTION = f"""\
# %% [markdown]
# # Measure it

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet

sheet = open_sheet("{SMALL_MODULE}")
given, unit = sheet.given, sheet.unit

# %% [markdown] tags=["task"]
# Measure it.

# %% tags=["form"]
sheet.form(
    "gap",
    sheet.number("gap-size", "How wide", unit="mm"),
    sheet.choice("gap-first", "First", options=[["clean", "Clean it"], ["close", "Close it"]]),
)

# %% tags=["reference"]
ref("gap-size", Q(12.5, "mm"), outcome="{SMALL_OUTCOME}", weight=3)
ref("gap-first", "clean", outcome="judge-repeats", must_pass=True)

# %% tags=["mark"] task="gap" points=4
"""
SMALL_ANSWERS = {"gap-size": "12.5 mm", "gap-first": "clean"}


class SmallCohort:
    """A small cohort, handed out, for trials: with the ways of handing in that no form of ours has.

    base: the folder that holds the cohort folder and its shared place, so that both can be copied.
    """

    name, notebook, outcome = SMALL_NAME, SMALL_NOTEBOOK, SMALL_OUTCOME

    def __init__(self, base):
        self.base, self.cohort = base, open_cohort(base / SMALL_DESK)

    def sheet(self, learner, answers=SMALL_ANSWERS):
        data = SheetData(
            learner=learner,
            module=SMALL_MODULE,
            attempt=1,
            answers={name: Answer(value, 1) for name, value in answers.items()},
        )
        return json.dumps(data.as_json())

    def hand_in(self, learner, *, hours_ago=2.0, answers=SMALL_ANSWERS, when="", tail="abc"):
        """A folder in the exchange as nbgrader's hand-in makes it."""
        moment = datetime.now(UTC) - timedelta(hours=hours_ago)
        when = when or f"{moment:%Y-%m-%d %H:%M:%S.%f} UTC"
        folder = self.cohort.inbound / f"{learner}+{SMALL_NAME}+{when}+{tail}"
        folder.mkdir()
        released = self.cohort.outbound(SMALL_NAME) / f"{SMALL_NOTEBOOK}.ipynb"
        shutil.copyfile(released, folder / released.name)
        (folder / "jobsheet.json").write_text(self.sheet(learner, answers))
        (folder / "timestamp.txt").write_text(when)
        secret = hashlib.sha512(folder.name.encode()).hexdigest()  # each has their own
        (folder / "submission_secret.txt").write_text(secret)
        return folder


@pytest.fixture(scope="session")
def handed_out(tmp_path_factory):
    """Make a cohort of the given learners and hand the assignment out; returns the trial."""
    content = tmp_path_factory.mktemp("hostile-content")
    (content / "solutions").mkdir()
    built = build_notebook(SMALL_SOLUTION, Path(f"solutions/{SMALL_NOTEBOOK}.py"))
    (content / "solutions" / f"{SMALL_NOTEBOOK}.ipynb").write_text(notebook_text(built))

    def make(base, learners, **more):
        cohort = make_cohort(
            base / SMALL_DESK,
            id="trial",
            timezone="UTC",
            salt="trial",
            content=str(content),
            **more,
        )
        people = [Learner(id, f"Family {id}", "Given") for id in learners]
        take_in(cohort, people)
        assign(cohort, Content(content), SMALL_MODULE, attempt=1, due=None, learners=people)
        return SmallCohort(base)

    return make


PATIENCE_S = 120
COMMANDS = """
import json, sys
from twoshaft_grader.desk.commands import main
sys.exit(max(main(words) for words in json.loads(sys.argv[1])))
"""


@dataclass
class Account:
    """An account of the system, and what is run in it."""

    name: str
    uid: int
    gid: int
    home: Path
    env: dict

    def start(self, *words, **more):
        return subprocess.Popen(
            [str(word) for word in words],
            user=self.uid, group=self.gid, extra_groups=[], cwd=self.home, env=self.env,
            text=True, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, **more,
        )  # fmt: skip

    def run(self, *words, **more):
        """Exit code, and what was said."""
        process = self.start(*words, **more)
        said, _ = process.communicate(timeout=10 * PATIENCE_S)
        return process.returncode, said

    def python(self, text, *words, **more):
        """Run Python; what it said. It must end well."""
        code, said = self.run(self.env["PYTHON"], "-c", text, *words, **more)
        assert code == 0, said
        return said

    def twoshaft(self, *commands):
        """Run commands of the desk one after the other, in one process: they take long to load."""
        as_text = json.dumps([[str(word) for word in words] for words in commands])
        return self.python(COMMANDS, as_text)

    def processes(self):
        """What runs in it."""
        return processes_of(self.uid)

    def can(self, test, path):
        """Whether the shell's test holds here: -r, -w, -x, -e."""
        return self.run("/usr/bin/test", test, path)[0] == 0


def processes_of(uid):
    """What runs in an account."""
    every = psutil.process_iter(["uids", "cmdline"])
    return [one for one in every if one.info["uids"] and one.info["uids"].real == uid]


def needed():
    """Why the test cannot be done here; empty where it can."""
    if os.name != "posix" or os.geteuid() != 0:
        return "only root can make accounts"
    return "" if shutil.which("useradd") and shutil.which("userdel") else "no useradd"


def open_to_all(path):
    return all(one.stat().st_mode & stat.S_IXOTH for one in (path, *path.parents))


@pytest.fixture(scope="module")
def place():
    """A folder that every account can reach, with a copy of the program in it."""
    if why := needed():
        if os.environ.get("CI") == "true":
            pytest.fail(f"{why}: in CI this must run", pytrace=False)
        pytest.skip(why)
    base = Path(tempfile.mkdtemp(prefix="twoshaft-accounts-"))
    base.chmod(0o755)
    program = base / "program"
    for name in ("course", "grader", "solutions", "exercises"):
        left_out = shutil.ignore_patterns("node_modules", "__pycache__")
        shutil.copytree(ROOT / name, program / name, ignore=left_out)
    (program / "tests").mkdir()
    shutil.copyfile(ROOT / "pyproject.toml", program / "pyproject.toml")
    yield base
    shutil.rmtree(base)


@pytest.fixture(scope="module")
def python(place):
    """A Python that every account can run, with what the course needs."""
    prefix = Path(sys.prefix)
    if not open_to_all(prefix):
        copied = place / "environment"
        if subprocess.run(["cp", "-al", prefix, copied], capture_output=True).returncode:
            shutil.rmtree(copied, ignore_errors=True)
            subprocess.run(["cp", "-a", prefix, copied], check=True)
        prefix = copied
    return prefix / "bin" / Path(sys.executable).name


@pytest.fixture(scope="module")
def accounts(place, python):
    made = {}

    def make(role):
        name, home = f"ts{role}{secrets.token_hex(3)}", place / f"home-{role}"
        subprocess.run(
            ["useradd", "--user-group", "--create-home", "--home-dir", home, name], check=True
        )
        home.chmod(0o700)
        about = home.stat()
        made[name] = about.st_uid
        env = {
            "HOME": str(home), "PATH": "/usr/bin:/bin", "LANG": "C.UTF-8", "PYTHON": str(python),
            "PYTHONPATH": f"{place / 'program/course'}:{place / 'program/grader'}",
            "OPENBLAS_NUM_THREADS": "1",
        }  # fmt: skip
        return Account(name, about.st_uid, about.st_gid, home, env)

    try:
        holm, ada, ben = make("i"), make("a"), make("b")
        subprocess.run(["chown", "-R", f"{holm.uid}:{holm.gid}", place / "program"], check=True)
        srv = place / "srv"
        srv.mkdir()
        srv.chmod(0o755)  # whatever is asked of new files here
        os.chown(srv, holm.uid, holm.gid)
        yield holm, ada, ben
    finally:
        for name, uid in made.items():
            left = processes_of(uid)
            for process in left:
                process.kill()
            psutil.wait_procs(left, timeout=PATIENCE_S)
            subprocess.run(["userdel", name], check=True, capture_output=True)
