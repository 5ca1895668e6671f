"""``workplace.json``: whose workplace this is, its unit, and where work is handed in."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft.stored.definition import LearnersFile, TextOrNone, Words


@dataclass(frozen=True, kw_only=True)
class Workplace:
    """What a workplace says of itself.

    Parameters
    ----------
    cohort : str
        As people call it.
    course_id : str
        As nbgrader calls it.
    exchange : str
        nbgrader's exchange, from this folder; empty where nothing is handed in.
    unit : str
        Id of a shipped unit; empty for the default one, or where ``unit.yaml`` lies beside it.
    """

    cohort: TextOrNone = ""
    course_id: TextOrNone = ""
    exchange: TextOrNone = ""
    unit: Words = ""


WORKPLACE: LearnersFile[Workplace] = LearnersFile(
    file="workplace.json",
    record=Workplace,
    sparse=("cohort", "course_id", "exchange"),
    fault=lambda found: (
        "course_id or exchange is missing" if found[0]["loc"] else "it holds no table of names"
    ),
)
