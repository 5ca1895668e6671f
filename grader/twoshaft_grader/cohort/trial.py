"""Trying modules on a unit: does it hold what their lessons and exercises are made of?"""

from __future__ import annotations

import tempfile
from collections.abc import Collection, Iterator
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
from twoshaft_grader.cohort.fit import fit, lacking_lines
from twoshaft_grader.cohort.lesson_run import LessonRun, Stopped
from twoshaft_grader.cohort.side_by_side import side_by_side
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
    given, tasks : int
        How many of its tasks are given on this unit, and how many it has.
    lacking : tuple of str
        What it goes without, one sentence each.
    unexpected : bool
        Whether something stopped it that is no fault of the unit file.
    """

    module: str
    exercise: str
    lesson: str = ""
    given: int = 0
    tasks: int = 0
    lacking: tuple[str, ...] = ()
    unexpected: bool = False


def try_modules(
    unit: Unit, source: str | Path, content: Content, only: Collection[str] = ()
) -> Iterator[Trial]:
    """Try modules on a unit, several at once, and tell them in the course's order; past what
    stops one of them.

    Parameters
    ----------
    unit : Unit
    source : str or Path
        What it was loaded from: id of a shipped unit, or a unit file.
    content : Content
    only : collection of str
        Ids of the modules to try; all of them if empty.

    Raises
    ------
    UnitFileError
        When its file does not stand without the files beside it.
    CohortError
        When there is no such module.
    """
    chosen = {one: content.solution(one) for one in only}
    with tempfile.TemporaryDirectory() as folder:
        lessons = _workplace(Path(folder), source, unit)
        named = {path.name: path for path in content.lessons}
        jobs = [
            _Job(module, path, named.get(path.name), lessons, unit)
            for module, path in content.modules.items()
            if not chosen or module in chosen
        ]
        for job, trial in zip(jobs, side_by_side(_whole, jobs), strict=True):
            yield trial or Trial(
                job.module, "its process ended before it was tried.", unexpected=True
            )


@dataclass(frozen=True)
class _Job:
    """A module to be tried: its exercise, and its lesson in a workplace's folder."""

    module: str
    exercise: Path
    lesson: Path | None
    folder: Path
    unit: Unit


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


def _whole(job: _Job) -> Trial:
    trial = _exercise(job.exercise, job.module, job.unit)
    if trial.exercise or job.lesson is None:
        return trial
    run = _lesson(job.lesson, job.folder, job.unit)
    stopped = run if isinstance(run, Stopped) else run.stopped()
    return replace(trial, lesson=stopped.sentence, unexpected=stopped.unexpected)


def _exercise(path: Path, module: str, unit: Unit) -> Trial:
    """How an exercise fits the unit, or why it does not."""
    learners = [f"trial-{number}" for number in range(LEARNERS)]
    try:
        fits = fit(path, module, unit, learners, salt="trial", attempt=1)
    except CourseError as error:
        return Trial(module, error.sentence)
    except Exception as error:  # whatever it is, the other modules are tried
        return Trial(module, _not_expected(error), unexpected=True)
    return Trial(
        module,
        "",
        given=len(fits.solution.points),
        tasks=len(load_solution(path).points),
        lacking=lacking_lines(fits),
    )


def _lesson(path: Path, folder: Path, unit: Unit) -> LessonRun | Stopped:
    """Run a lesson as it would run in the folder; what stopped it where it cannot even begin."""
    try:
        notebook = nbformat.reads(for_unit(path.read_text(encoding="utf-8"), unit), as_version=4)
        return LessonRun(notebook, path.name, folder, unit)
    except Exception as error:
        return Stopped(f"{path.name}: {_not_expected(error)}", unexpected=True)


def _not_expected(error: Exception) -> str:
    said = " ".join(str(error).split()).rstrip(".")
    return f"the program did not expect this ({type(error).__name__}: {said})."
