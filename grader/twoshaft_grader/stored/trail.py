"""``log/trail.jsonl``: every act at the desk, each line holding the digest of the one before it."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft_grader.stored.definition import Log, StaffFile

CUT_SHORT, REDACTED = "cut short", "redacted"


@dataclass(frozen=True, kw_only=True)
class Act:
    """One act: who did what to what, when, from what to what, and why.

    Parameters
    ----------
    number : int
        Counts from 1.
    at : str
        When it was written down, ISO 8601 in UTC.
    by, account : str
        Who, as they say; and the account of the system that it was done from.
    did, what : str
        The act in a word or two, and what it was done to: a learner, an assignment, an outcome.
    before, after, why : str
        Empty where there is nothing to say.
    ended : str
        Empty where it was done; else how it ended.
    previous : str
        SHA-256 of the line before, as it was written; empty in the first.
    digest : str
        Of a line whose words were taken out with a learner: SHA-256 of the line as it was.
    """

    number: int = 0
    at: str
    by: str
    account: str
    did: str
    what: str = ""
    before: str = ""
    after: str = ""
    why: str = ""
    ended: str = ""
    previous: str = ""
    digest: str = ""


@dataclass(frozen=True)
class Head:
    """How far the trail had come: number and digest of its last line."""

    number: int
    digest: str

    def __str__(self) -> str:
        return f"{self.number}:{self.digest}"


TRAIL: Log[Act] = Log(
    record=Act, fault="a line of the trail cannot be read", numbered=True, sparse=("digest",)
)
UNDER_WAY: StaffFile[Act] = StaffFile(record=Act, fault="this is no act")
HEAD: StaffFile[Head] = StaffFile(record=Head, fault="this is no head of the trail")
