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
import json
import logging
import random
import shutil
from pathlib import Path
from types import SimpleNamespace

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
from twoshaft_grader.environment import tools_on_path
from twoshaft_grader.marking import load_solution, mark_sheet, run_clean, solve
from twoshaft_grader.notebooks import RELEASE_PREPROCESSORS
from twoshaft_grader.notebooks.text import build_notebook, notebook_text

collect_ignore_glob = ["tiny/*"]

SOLUTIONS = Path(__file__).parents[2] / "solutions"
TINY = Path(__file__).parent / "tiny"
PATIENCE = 240  # how long a kernel is waited for [s]; only a test that fails waits so long
PARTS = [["seal", "The seal"], ["ring", "The snap ring"], ["washer", "The plug's washer"],
         ["gear", "The gear"], ["shaft", "The shaft"], ["case", "The case half"]]  # fmt: skip
WHY = [["reach", "It is out of reach later"], ["weight", "It is heavy"], ["oil", "It needs oil"],
       ["look", "It looks better"], ["rule", "It is always so"]]  # fmt: skip


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
