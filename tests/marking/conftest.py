"""A made-up module of three tasks, so that marking is tested without the course's own."""

import random
from pathlib import Path
from types import SimpleNamespace

import pytest

from twoshaft.jobsheet import Answer, SheetData
from twoshaft.units import load_unit
from twoshaft_grader.marking import load_solution, mark_sheet, solve
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
