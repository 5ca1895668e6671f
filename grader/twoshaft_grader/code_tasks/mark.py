"""Mark a notebook that runs code: run it in the sandbox, and look at what comes out as data."""

from __future__ import annotations

import hashlib
import math
from dataclasses import dataclass
from pathlib import Path

from twoshaft.outcomes import load_rules
from twoshaft_grader.code_tasks.notebook import Cell, CodeNotebook, read_notebook, read_written
from twoshaft_grader.code_tasks.sandbox import Ran, run_cells
from twoshaft_grader.marking.outcomes import outcome_marks, task_parts
from twoshaft_grader.marking.result import FieldMark, SheetMark, TaskMark, Verdict

BY_CODE = "Marked by running code"
SHOWN = 2_000
"""Signs of a learner's code that stand in the mark."""


@dataclass(frozen=True)
class CodeWork:
    """What the marking must know of the assignment."""

    module: str
    attempt: int
    outcome: str
    course_version: str
    unit: str
    unit_version: str


def mark_code(
    work: CodeWork, learner: str, source: Path, submitted: Path, rules: Path
) -> tuple[SheetMark, str]:
    """The mark of one notebook, and why it cannot be read if it cannot.

    Raises
    ------
    CohortError
        When no sandbox can be made here, or the instructor's notebook is damaged.
    """
    book = read_notebook(source)
    written, trouble = read_written(submitted, book)
    if trouble:
        return blank_code(work, learner, source, rules, note=f"{trouble}."), f"{trouble}."
    texts = [written.get(cell.name, "") if cell.written else cell.text for cell in book.cells]
    ran = run_cells(texts)
    return _sheet(work, learner, source, book, texts, ran, rules), ""


def blank_code(
    work: CodeWork, learner: str, source: Path, rules: Path, *, note: str = ""
) -> SheetMark:
    """The mark of a notebook that nothing is written in."""
    book = read_notebook(source)
    texts, ran = [""] * len(book.cells), [None] * len(book.cells)
    return _sheet(work, learner, source, book, texts, ran, rules, note=note)


def earned(ran: Ran, most: float) -> float:
    """Points of a test, by nbgrader's rule: none after an error, the number in which it ends, else
    all. A number that is none, or outside, earns nothing.
    """
    if ran.error:
        return 0.0
    points = most if ran.number is None else ran.number
    return round(points, 4) if math.isfinite(points) and 0 <= points <= most else 0.0


def _sheet(
    work: CodeWork,
    learner: str,
    source: Path,
    book: CodeNotebook,
    texts: list[str],
    ran: list[Ran] | list[None],
    rules: Path,
    note: str = "",
) -> SheetMark:
    tasks, since = [], ""
    for cell, text, one in zip(book.cells, texts, ran, strict=True):
        if cell.written:
            since += text + "\n"
        elif cell.points is not None:
            tasks.append(_task(work, cell, cell.points, since.strip()[:SHOWN], one))
            since = ""
    return SheetMark(
        learner=learner,
        module=work.module,
        attempt=work.attempt,
        title=book.title,
        course_version=work.course_version,
        unit=work.unit,
        unit_version=work.unit_version,
        line=0.0,
        tasks=tuple(tasks),
        outcomes=outcome_marks(
            (part for task in tasks for part in task_parts(task)), load_rules(rules)
        ),
        notes=(f"{BY_CODE}.", *([note] if note else [])),
        solution_digest=hashlib.sha256(source.read_bytes()).hexdigest(),
    )


def _task(work: CodeWork, cell: Cell, most: float, code: str, ran: Ran | None) -> TaskMark:
    points = earned(ran, most) if ran else 0.0
    if not ran or (not code and not points):
        verdict = Verdict.UNANSWERED
    else:
        verdict = {most: Verdict.RIGHT, 0.0: Verdict.WRONG}.get(points, Verdict.PARTLY)
    said = [f"{BY_CODE}: this test gives {points:g} of {most:g}."]
    if ran and ran.error not in ("", "AssertionError", "False"):
        said.append(f"It ended with: {ran.error}.")
    field = FieldMark(
        name=cell.name,
        task=cell.name,
        kind="code",
        prompt=f"Test {cell.name}",
        answer=code,
        verdict=verdict,
        share=points / most,
        weight=1.0,
        sentences=tuple(said),
        details=(),
        cost="",
        outcome=work.outcome,
        must_pass=False,
        passed=True,
        carried=False,
        lesson="",
    )
    return TaskMark(cell.name, f"Test {cell.name}", points, most, points, (field,))
