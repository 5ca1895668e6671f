"""Where a notebook stands: whose folder, which assignment, or a practice copy."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from twoshaft.stored.assignment import ASSIGNMENT, Assignment
from twoshaft.stored.people import PEOPLE
from twoshaft.stored.person import PERSON, Person


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
        return self.practice and (self.folder.absolute().parent / PEOPLE.file).exists()

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
    assignment = ASSIGNMENT.read(folder / ASSIGNMENT.file)
    learner = PERSON.read(folder.absolute().parent / PERSON.file) if assignment else None
    return Place(folder, learner, assignment)
