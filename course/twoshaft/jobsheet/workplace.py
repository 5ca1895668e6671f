"""Where a notebook stands: whose folder, which assignment, or a practice copy."""

from __future__ import annotations

import json
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from twoshaft import DEFAULT_UNIT
from twoshaft.errors import SheetError
from twoshaft.jobsheet.contents import MAX_BYTES, load_json
from twoshaft.jobsheet.fields import well_named
from twoshaft.stored.writing import write_file

ASSIGNMENT, LEARNER, SHEET = "assignment.json", "learner.json", "jobsheet.json"
PEOPLE, WORKPLACE, UNIT = "people.json", "workplace.json", "unit.yaml"
EXTENSIONS = "extensions.json"


@dataclass(frozen=True)
class Person:
    """A learner."""

    id: str
    family_name: str = ""
    given_name: str = ""

    @property
    def name(self) -> str:
        """Given and family name, or the id where no name is known."""
        return f"{self.given_name} {self.family_name}".strip() or self.id


@dataclass(frozen=True)
class Assignment:
    """What the instructor set: a module, an attempt, a unit, a date.

    Parameters
    ----------
    name : str
        ``<module>-<attempt>``.
    due : str
        ISO 8601; empty if there is no date.
    bench_readings : bool
        Whether figures from the bench may take the place of drawn ones.
    fields : int
        How many answers the exercise asks for; 0 if nobody knows.
    """

    name: str
    module: str
    attempt: int
    cohort: str = ""
    salt: str = ""
    unit: str = DEFAULT_UNIT
    unit_version: str = ""
    course_version: str = ""
    due: str = ""
    bench_readings: bool = False
    fields: int = 0


@dataclass(frozen=True)
class Place:
    """Where a notebook stands.

    Parameters
    ----------
    folder : Path
        The notebook's folder.
    learner : Person or None
        Who works here; None in folders that are marked and in practice copies.
    assignment : Assignment or None
        None in a practice copy.
    """

    folder: Path
    learner: Person | None
    assignment: Assignment | None

    @property
    def practice(self) -> bool:
        """Whether nothing here is marked."""
        return self.assignment is None

    @property
    def shared(self) -> bool:
        """Whether several learners use this folder: the lessons of a workplace."""
        return self.practice and (self.folder.absolute().parent / PEOPLE).exists()

    @property
    def read_only(self) -> bool:
        """Whether the sheet here is for reading: an assignment in nobody's folder."""
        return self.assignment is not None and self.learner is None


def find_place(folder: str | Path | None = None) -> Place:
    """Where a notebook in this folder stands.

    Parameters
    ----------
    folder : path, optional
        The notebook's folder; the working folder if not given.

    Raises
    ------
    SheetError
        If ``assignment.json`` or ``learner.json`` is there but cannot be used.
    """
    folder = Path(folder) if folder is not None else Path.cwd()
    assignment = read_assignment(folder / ASSIGNMENT)
    learner = read_person(folder.absolute().parent / LEARNER) if assignment else None
    return Place(folder, learner, assignment)


def read_assignment(path: Path) -> Assignment | None:
    """The assignment described in a file; None if there is no such file.

    Raises
    ------
    SheetError
        If the file cannot be used.
    """
    mend = "get the assignment again from start-here, or ask your instructor"
    data = read_table(path, mend)
    if data is None:
        return None
    module, attempt = data.get("module"), data.get("attempt")
    if not well_named(module) or isinstance(attempt, bool) or not isinstance(attempt, int):
        raise SheetError("module or attempt is missing", where=path.name, mend=mend)
    words = ("cohort", "salt", "unit", "unit_version", "course_version", "due")
    given = {word: str(data[word]) for word in words if data.get(word)}
    fields = data.get("fields")
    return Assignment(
        str(data.get("assignment") or f"{module}-{attempt}"),
        module,
        attempt,
        **given,
        bench_readings=data.get("bench_readings") is True,
        fields=fields if type(fields) is int and fields > 0 else 0,
    )


def read_person(path: Path) -> Person | None:
    """The person described in a file; None if there is no such file.

    Raises
    ------
    SheetError
        If the file cannot be used.
    """
    data = read_table(path)
    if data is None:
        return None
    if not isinstance(data.get("id"), str) or not data["id"]:
        raise SheetError("it names nobody", where=path.name, mend="ask your instructor")
    names = (str(data.get(word) or "") for word in ("family_name", "given_name"))
    return Person(data["id"], *names)


def read_table(path: Path, mend: str = "ask your instructor") -> dict[str, Any] | None:
    """A small JSON file with a table of names; None if there is no such file.

    Raises
    ------
    SheetError
        If the file cannot be read.
    """
    try:
        if path.stat().st_size > MAX_BYTES:
            raise SheetError("it is too large", where=path.name, mend=mend)
        text = path.read_text(encoding="utf-8-sig")
    except FileNotFoundError:
        return None
    except (OSError, UnicodeDecodeError):
        raise SheetError("it cannot be read", where=path.name, mend=mend) from None
    try:
        data = load_json(text, path.name)
    except SheetError as error:
        raise SheetError(error.what, where=error.where, mend=mend) from None
    if not isinstance(data, dict):
        raise SheetError("it holds no table of names", where=path.name, mend=mend)
    return data


def write_table(path: Path, data: Any) -> None:
    """Write a small JSON file whole or not at all."""
    write_file(path, json.dumps(data, ensure_ascii=False, indent=1) + "\n")
