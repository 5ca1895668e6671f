"""A learner's mark as the cohort folder keeps it, with all that it was made from."""

from __future__ import annotations

import hashlib
import json
from dataclasses import dataclass
from pathlib import Path

from twoshaft.errors import CohortError
from twoshaft.jobsheet.receipts import receipt_code
from twoshaft_grader.cohort import files
from twoshaft_grader.marking.result import SheetMark

MARKED, UNREADABLE = "marked", "cannot be read"
_FORMAT = 1


@dataclass(frozen=True)
class StoredMark:
    """A mark and what it was made from.

    Attributes
    ----------
    state : str
        ``MARKED`` or ``UNREADABLE``; ``reason`` then says why.
    submission : str
        Digest (SHA-256) of the folder handed in.
    handed_in : str
        ISO 8601; empty where the work was placed by hand.
    sheet_sha256 : str
        SHA-256 of the job sheet's file as handed in: what the learner's receipt is made from;
        empty if there is no such file.
    marked_at, marked_by : str
        When (ISO 8601) and by which version.
    sheet : SheetMark or None
        The mark itself; None if the work cannot be marked at all.
    earlier : bool
        Whether the mark is of earlier work, since what came later cannot be read.
    """

    learner: str
    assignment: str
    state: str
    submission: str
    handed_in: str
    marked_at: str
    marked_by: str
    reason: str = ""
    sheet_sha256: str = ""
    sheet: SheetMark | None = None
    earlier: bool = False

    @property
    def receipt(self) -> str:
        """The receipt that the learner was shown."""
        return receipt_code(self.sheet_sha256)

    @property
    def id(self) -> str:
        """One for each mark given; the same work that cannot be read keeps its id."""
        when = self.marked_at if self.state == MARKED else self.reason
        text = json.dumps([self.assignment, self.learner, self.submission, when])
        return hashlib.sha256(text.encode()).hexdigest()[:16]


def write_mark(path: Path, mark: StoredMark) -> None:
    """Store a mark, whole or not at all."""
    plain = {name: getattr(mark, name) for name in mark.__dataclass_fields__ if name != "sheet"}
    sheet = mark.sheet.as_json() if mark.sheet else None
    files.write_json(path, {"format": _FORMAT, "id": mark.id} | plain | {"sheet": sheet})


def read_mark(path: Path) -> StoredMark | None:
    """Read a stored mark; None if there is none.

    Raises
    ------
    CohortError
        When the file is damaged.
    """
    if not path.exists():
        return None
    mend = "take the file away and mark again"
    entries = files.read_json(path, mend=mend)
    try:
        plain = {n: entries[n] for n in StoredMark.__dataclass_fields__ if n != "sheet"}
        sheet = SheetMark.from_json(entries["sheet"]) if entries["sheet"] else None
        return StoredMark(**plain, sheet=sheet)
    except (KeyError, TypeError, ValueError):
        raise CohortError("this is no mark", where=str(path), mend=mend) from None
