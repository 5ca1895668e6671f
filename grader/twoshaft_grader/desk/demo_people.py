"""Twelve invented apprentices and how each of them fares. Nobody here is a real person."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from twoshaft_grader.cohort.roster import Learner

COLLEGE = "Tarnbeck College (invented)"
COHORT = "Autumn group (invented)"


class Way(StrEnum):
    """How an apprentice fares with the assignment."""

    RIGHT = "everything right"
    NEARLY = "right but for one slip"
    SLIPS = "typical slips"
    UNFINISHED = "handed in half-way"
    ODD_UNITS = "wrong units and slips of ten"
    LATE = "good work, late"
    DAMAGED = "a damaged file"
    RENAMED = "a renamed notebook"
    BEGUN = "begun, not handed in"
    AWAY = "not fetched"


@dataclass(frozen=True)
class Apprentice:
    """An invented apprentice.

    Attributes
    ----------
    hours : float
        When the work was handed in, counted from the due time; negative is before it.
    """

    learner: Learner
    way: Way
    hours: float = 0.0


def _one(
    number: int, family: str, given: str, group: str, way: Way, hours: float = 0.0
) -> Apprentice:
    return Apprentice(Learner(f"tb{number:02}", family, given, group), way, hours)


APPRENTICES = (
    _one(1, "Kolawole", "Ade", "A", Way.RIGHT, -49.2),
    _one(2, "Brandt", "Lena", "A", Way.NEARLY, -26.5),
    _one(3, "Nguyen", "Minh", "A", Way.NEARLY, -5.1),
    _one(4, "O'Dowd", "Ciara", "A", Way.SLIPS, -22.8),
    _one(5, "Petrov", "Ilya", "A", Way.SLIPS, -1.4),
    _one(6, "Sharma", "Asha", "A", Way.UNFINISHED, -0.6),
    _one(7, "Müller", "Jonas", "B", Way.ODD_UNITS, -3.7),
    _one(8, "Haddad", "Omar", "B", Way.LATE, 2.7),
    _one(9, "Silva", "Bruna", "B", Way.DAMAGED, -7.9),
    _one(10, "Kowalska", "Zofia", "B", Way.RENAMED, -29.3),
    _one(11, "Tanaka", "Ren", "B", Way.BEGUN),
    _one(12, "Whitlock", "Sam", "B", Way.AWAY),
)
FREE = (Way.BEGUN, Way.AWAY)
"""Those who still work on it, with a later due date."""
