"""A made-up module of three tasks, so that marking is tested without the course's own."""

import json
import logging
import random
import shutil
from pathlib import Path
from types import SimpleNamespace

import pytest
from nbgrader.api import Gradebook
from nbgrader.converters import GenerateAssignment
from nbgrader.coursedir import CourseDirectory
from traitlets.config import Config

from twoshaft.jobsheet import Answer, SheetData
from twoshaft.units import load_unit
from twoshaft_grader.environment import tools_on_path
from twoshaft_grader.marking import load_solution, mark_sheet, solve
from twoshaft_grader.notebooks import RELEASE_PREPROCESSORS
from twoshaft_grader.notebooks.text import build_notebook, notebook_text

collect_ignore_glob = ["tiny/*"]

TINY = Path(__file__).parent / "tiny"
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
