"""``evidence.json`` in a sealed evidence folder: what it holds, and by which versions."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft_grader.stored.definition import StaffFile


@dataclass(frozen=True, kw_only=True)
class Evidence:
    """What a sealed evidence folder says of itself.

    Parameters
    ----------
    cohort, name, college, made : str
        Of whom, and when it was made (ISO 8601 in UTC).
    people : str
        That the people are invented, where they are.
    versions : dict of str to str
        Of the course, Python, and the libraries that marking rests on.
    trail : str
        Head of the trail when it was made.
    sheets : list of (learner, assignment)
        Whose marked work is in it.
    files : dict of str to str
        SHA-256 of every file but this one, by its place.
    """

    cohort: str
    name: str
    college: str
    made: str
    people: str
    versions: dict[str, str]
    trail: str
    sheets: list[tuple[str, str]]
    files: dict[str, str]


EVIDENCE: StaffFile[Evidence] = StaffFile(
    file="evidence.json",
    record=Evidence,
    fault="this is no list of what an evidence folder holds",
    mend="take it from the folder as it was handed over",
)
