"""``assessors.json``: who may observe, change marks and decide in this cohort."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft_grader.stored.definition import StaffFile


@dataclass(frozen=True, kw_only=True)
class Assessor:
    """Somebody on the register.

    Parameters
    ----------
    id, name : str
    role : str
        As the college calls it.
    since, until : str
        When entered and taken off, ISO 8601 in UTC; ``until`` is empty for those on it.
    """

    id: str
    name: str
    role: str = ""
    since: str
    until: str = ""


@dataclass(frozen=True)
class Register:
    """Everybody who is or was on it, in the order of entering."""

    people: tuple[Assessor, ...] = ()


ASSESSORS: StaffFile[Register] = StaffFile(
    file="assessors.json", record=Register, fault="this is no register of assessors"
)
