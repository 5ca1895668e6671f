"""What is still missing on a job sheet, and what of it cannot be read: task by task, in words."""

from __future__ import annotations

import json
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from twoshaft.errors import SheetError
from twoshaft.stored.asked import ASKED, Asked
from twoshaft.stored.job_sheet import FILE as SHEET
from twoshaft.stored.job_sheet import read_sheet


@dataclass(frozen=True)
class TaskGap:
    """What one task still lacks.

    Parameters
    ----------
    task : str
        Its heading.
    missing, asked : int
        Answers not given, and answers asked for.
    unread : tuple of tuple
        (question, why it cannot be read) of each such answer.
    """

    task: str
    missing: int
    asked: int
    unread: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True, kw_only=True)
class Filled:
    """How far a job sheet is filled.

    Parameters
    ----------
    answered, unread : int
        Answers that can be read and are whole, and answers that cannot be read.
    last : str
        When the last of them was saved, ISO 8601 in UTC; empty if none is.
    """

    answered: int = 0
    unread: int = 0
    last: str = ""

    @property
    def begun(self) -> bool:
        """Whether anything was answered, be it in part."""
        return bool(self.last or self.answered or self.unread)


@dataclass(frozen=True, kw_only=True)
class Gaps(Filled):
    """How far a job sheet is filled, and what it lacks.

    Parameters
    ----------
    tasks : tuple of TaskGap
        Tasks that lack something, in order; empty where the forms were never shown.
    """

    tasks: tuple[TaskGap, ...] = ()


@dataclass(frozen=True)
class _Answers:
    """Names of what was begun (with when it was saved), and of what is whole; why not, if not."""

    begun: dict[str, str]
    given: frozenset[str]
    unread: dict[str, str]
    asked: Asked

    @property
    def counts(self) -> dict[str, Any]:
        """As members of `Filled`."""
        return {
            "answered": len(self.given) - len(self.unread),
            "unread": len(self.unread),
            "last": max(self.begun.values(), default=""),
        }


def count_answers(folder: Path) -> Filled | None:
    """How far the job sheet in an assignment's folder is filled; None if it cannot be read."""
    found = _read(folder)
    return None if found is None else Filled(**found.counts)


def find_gaps(folder: Path) -> Gaps | None:
    """As `count_answers`, with what is missing in each task."""
    answers = _read(folder)
    if answers is None:
        return None
    given, unread = answers.given, answers.unread
    found = [
        TaskGap(
            task,
            sum(name not in given for name in questions),
            len(questions),
            tuple((words, unread[name]) for name, words in questions.items() if name in unread),
        )
        for task, questions in answers.asked.tasks.items()
    ]
    found = [gap for gap in found if gap.missing or gap.unread]
    headings = task_headings(folder) if found else {}
    tasks = (replace(gap, task=headings.get(gap.task, gap.task)) for gap in found)
    return Gaps(**answers.counts, tasks=tuple(tasks))


def _read(folder: Path) -> _Answers | None:
    answers = {}
    if (folder / SHEET).exists():
        try:
            answers = read_sheet(folder / SHEET).answers
        except SheetError:
            return None
    begun = {n: one.saved for n, one in answers.items() if one.value not in (None, "", [])}
    try:
        asked = ASKED.read(folder / ASKED.file) or Asked()
    except SheetError:
        asked = Asked()
    given = frozenset(begun).difference(asked.short)
    unread = {name: why for name, why in asked.unread.items() if name in given}
    return _Answers(begun, given, unread, asked)


def task_headings(folder: Path) -> dict[str, str]:
    """The heading of each task, by its id, from the notebooks in a folder; as far as there are."""
    found: dict[str, str] = {}
    for path in sorted(folder.glob("*.ipynb")):
        try:
            for cell in json.loads(path.read_bytes())["cells"]:
                if "task" not in cell["metadata"].get("tags", ()):
                    continue
                task = str(cell["metadata"]["nbgrader"]["grade_id"]).removesuffix("-task")
                lines = "".join(cell["source"]).splitlines()
                heading = next((line for line in lines if line.startswith("#")), "")
                if heading.strip("# "):
                    found[task] = heading.strip("# ")
        except (OSError, ValueError, KeyError, TypeError, AttributeError, RecursionError):
            continue
    return found
