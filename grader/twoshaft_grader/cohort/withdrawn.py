"""Who was withdrawn: on no list and able to come back; their work and marks stay where they are."""

from __future__ import annotations

from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.roster import Learner, read_roster, roster_text

FILE = "withdrawn.csv"


def withdrawn_of(cohort: Cohort) -> list[Learner]:
    """Everybody who was withdrawn, by id.

    Raises
    ------
    RosterError
        When the file was damaged.
    """
    path = cohort.root / FILE
    return read_roster(path) if path.exists() else []


def write_withdrawn(cohort: Cohort, people: list[Learner]) -> None:
    """Write the list; there is no file where there is nobody."""
    path = cohort.root / FILE
    if people:
        files.write_whole(path, roster_text(sorted(people, key=lambda one: one.id)))
    else:
        files.remove(path)
