"""Trying modules on a unit: does it hold what their lessons and exercises are made of?"""

from __future__ import annotations

import os
import subprocess
import tempfile
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import nbformat
from nbclient import NotebookClient
from nbclient.exceptions import CellTimeoutError, DeadKernelError

from twoshaft import errors
from twoshaft.errors import CourseError
from twoshaft.jobsheet.people import write_people
from twoshaft.practice.lesson import OPEN_ALL
from twoshaft.readings import issue_record
from twoshaft.stored.assignment import UNIT
from twoshaft.stored.workplace import WORKPLACE, Workplace
from twoshaft.units import Unit, load_unit
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.content import Content
from twoshaft_grader.marking.reference import Solution, load_solution, run_clean

LEARNERS = 3
"""How many made-up learners an exercise is tried with: readings differ."""

CELL_S = 300


@dataclass(frozen=True)
class Trial:
    """One module tried on a unit.

    module : str
    exercise, lesson : str
        Why it cannot be used with this unit, as one sentence; empty when it can.
    """

    module: str
    exercise: str
    lesson: str


def try_modules(unit: Unit, source: str | Path, content: Content) -> Iterator[Trial]:
    """Try every module on a unit, one after the other.

    Parameters
    ----------
    unit : Unit
    source : str or Path
        What it was loaded from: id of a shipped unit, or a unit file.
    content : Content

    Raises
    ------
    UnitFileError
        When its file does not stand without the files beside it.
    """
    with tempfile.TemporaryDirectory() as folder:
        lessons = _workplace(Path(folder), source, unit)
        for module, path in content.modules.items():
            lesson = next((one for one in content.lessons if one.name == path.name), None)
            yield Trial(
                module,
                _exercise(load_solution(path), unit),
                _lesson(lesson, lessons) if lesson else "",
            )


def answers_asked(solution: Solution, issued: dict, unit: Unit) -> int:
    """How many answers an exercise asks for; everybody is asked for as many.

    Raises
    ------
    CourseError
        When the reference does not run on this unit.
    """
    return len(run_clean(solution, issued, unit).fields)


def _workplace(root: Path, source: str | Path, unit: Unit) -> Path:
    """A workplace with this unit on the bench; returns the folder that lessons stand in."""
    own = Path(source)
    if own.is_file():
        files.write_whole(root / UNIT, own.read_bytes())
        load_unit(root / UNIT)  # it must stand without the files beside the original
    about = Workplace(unit="" if own.is_file() else unit.identity.id)
    WORKPLACE.write(root / WORKPLACE.file, about)
    write_people(root, [])
    (root / "lessons").mkdir()
    return root / "lessons"


def _exercise(solution: Solution, unit: Unit) -> str:
    for number in range(LEARNERS):
        try:
            issued = issue_record(
                solution.module, unit, salt="trial", learner=f"trial-{number}", attempt=1
            )
            answers_asked(solution, issued, unit)
        except CourseError as error:
            return error.sentence
    return ""


def _lesson(path: Path, folder: Path) -> str:
    """Run a lesson as it would run in the folder; the first thing that stops it."""
    notebook = nbformat.read(path, as_version=4)
    client = NotebookClient(
        notebook,
        timeout=CELL_S,
        kernel_name="python3",
        allow_errors=True,
        resources={"metadata": {"path": str(folder)}},
    )
    try:
        client.execute(stderr=subprocess.DEVNULL, env={**os.environ, OPEN_ALL: "1"})
    except (CellTimeoutError, DeadKernelError) as error:
        return f"{path.name}: {str(error).splitlines()[0].rstrip('.')}."
    for number, cell in enumerate(notebook.cells, 1):
        for output in cell.get("outputs", ()):
            if output.output_type == "error":
                known = hasattr(errors, output.ename)  # one of ours is a sentence already
                said = output.evalue if known else f"{output.ename}: {output.evalue}"
                return f"{path.name}, cell {number}: {said.rstrip('.')}."
    return ""
