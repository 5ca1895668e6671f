"""``appeals.json``: every appeal against a mark, and what became of it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from twoshaft_grader.stored.definition import StaffFile

Ruling = Literal["", "upheld", "not upheld"]


@dataclass(frozen=True, kw_only=True)
class Appeal:
    """One appeal; times are ISO 8601 in UTC.

    Parameters
    ----------
    number : int
        Counts from 1 in the cohort.
    about : str
        Task, must-pass item or outcome; empty where it is the whole mark.
    why : str
        The learner's reason.
    at, entered_by : str
        When it was entered, and by whom.
    ruling, ruled_at, ruled_by, reason : str
        Empty while it is open.
    """

    number: int
    learner: str
    assignment: str
    about: str = ""
    why: str
    at: str
    entered_by: str
    ruling: Ruling = ""
    ruled_at: str = ""
    ruled_by: str = ""
    reason: str = ""


@dataclass(frozen=True)
class Appeals:
    """All appeals of a cohort, by number."""

    appeals: tuple[Appeal, ...] = ()


APPEALS: StaffFile[Appeals] = StaffFile(
    file="appeals.json", record=Appeals, fault="this holds no appeals"
)
