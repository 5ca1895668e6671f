"""Trying modules on a unit: does it hold what their lessons and exercises are made of?"""

from __future__ import annotations

import tempfile
from collections.abc import Iterator
from dataclasses import dataclass, replace
from pathlib import Path

import nbformat

from twoshaft.errors import CourseError
from twoshaft.jobsheet.people import write_people
from twoshaft.stored.assignment import UNIT
from twoshaft.stored.workplace import WORKPLACE, Workplace
from twoshaft.units import Unit, load_unit
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.content import Content
from twoshaft_grader.cohort.fit import Fit, fit
from twoshaft_grader.cohort.lesson_run import LessonRun
from twoshaft_grader.marking.reference import load_solution
from twoshaft_grader.notebooks.shrink import for_unit

LEARNERS = 24
"""How many made-up learners an exercise is tried with: as many as a cohort may have, so that every
support, group and face has its turn."""


@dataclass(frozen=True)
class Trial:
    """One module tried on a unit.

    module : str
    exercise, lesson : str
        Why it cannot be used with this unit, as one sentence; empty when it can.
    fits : Fit or None
        How it fits the unit, where it can be given.
    tasks : int
        How many tasks the module has.
    """

    module: str
    exercise: str
    lesson: str
    fits: Fit | None
    tasks: int


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
        before: tuple[Trial, LessonRun | None] | None = None
        for module, path in content.modules.items():
            lesson = next((one for one in content.lessons if one.name == path.name), None)
            fits, why = _exercise(path, module, unit)
            if before:  # its lesson ran while this exercise was worked out
                yield _whole(*before)
            run = _lesson(lesson, lessons, unit) if lesson and fits else None
            before = Trial(module, why, "", fits, len(load_solution(path).points)), run
        if before:
            yield _whole(*before)


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


def _exercise(path: Path, module: str, unit: Unit) -> tuple[Fit | None, str]:
    """How an exercise fits the unit, or why it does not."""
    learners = [f"trial-{number}" for number in range(LEARNERS)]
    try:
        return fit(path, module, unit, learners, salt="trial", attempt=1), ""
    except CourseError as error:
        return None, error.sentence


def _whole(trial: Trial, run: LessonRun | None) -> Trial:
    return replace(trial, lesson=run.first_error()) if run else trial


def _lesson(path: Path, folder: Path, unit: Unit) -> LessonRun:
    """Run a lesson as it would run in the folder."""
    notebook = nbformat.reads(for_unit(path.read_text(encoding="utf-8"), unit), as_version=4)
    return LessonRun(notebook, path.name, folder, unit)
