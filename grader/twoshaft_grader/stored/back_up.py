"""``manifest.json``, what a back-up holds; ``log/back-ups.jsonl``, where back-ups were put."""

from __future__ import annotations

from dataclasses import dataclass, field

from twoshaft_grader.stored.definition import Log, StaffFile


@dataclass(frozen=True, kw_only=True)
class KeptFile:
    """One file of a back-up.

    Parameters
    ----------
    size : int
        Bytes.
    sha256 : str
        Hexadecimal.
    mode : int
        Permissions as they were.
    written : float
        When it was last written, seconds since 1970.
    """

    size: int
    sha256: str
    mode: int
    written: float


@dataclass(frozen=True, kw_only=True)
class KeptFolder:
    """One folder of a back-up; the account that it belonged to counts for learners' own alone."""

    mode: int
    written: float
    account: int = 0
    group: int = 0


@dataclass(frozen=True, kw_only=True)
class Manifest:
    """What a back-up holds, by name below ``cohort/`` and ``shared/``.

    Parameters
    ----------
    cohort, name : str
        Id, and what people call it.
    made : str
        When, ISO 8601 in UTC.
    own_accounts : bool
        Whether each learner worked in an account of their own.
    accounts : dict of str to str
        What the accounts of the folders were called, by number.
    """

    cohort: str
    name: str
    made: str
    course_version: str
    own_accounts: bool
    files: dict[str, KeptFile]
    folders: dict[str, KeptFolder]
    accounts: dict[str, str] = field(default_factory=dict)


MANIFEST: StaffFile[Manifest] = StaffFile(
    file="manifest.json",
    record=Manifest,
    indent=1,
    fault="this is no list of what a back-up holds",
    mend="take another back-up",
)


@dataclass(frozen=True, kw_only=True)
class BackUpLine:
    """A back-up that was made, and where."""

    at: str
    file: str


BACK_UPS: Log[BackUpLine] = Log(record=BackUpLine, fault="a line cannot be read")
