"""``marks/<assignment>/<learner>.json``: a learner's mark, with all that it was made from."""

from __future__ import annotations

import hashlib
import json
from dataclasses import dataclass
from typing import Any

from twoshaft.jobsheet.receipts import receipt_code
from twoshaft_grader.marking.result import SheetMark
from twoshaft_grader.stored.definition import StaffFile

MARKED, UNREADABLE = "marked", "cannot be read"


@dataclass(frozen=True, kw_only=True)
class Earlier:
    """A mark that the same work had, before the solution or the rules were corrected.

    Attributes
    ----------
    submission, marked_at, marked_by : str
        As in the mark.
    until : str
        When another took its place, ISO 8601.
    by, why : str
        Who marked again, and why.
    words : str
        What changed.
    sheet : SheetMark
    """

    submission: str
    marked_at: str
    marked_by: str
    until: str
    by: str
    why: str
    words: str
    sheet: SheetMark

    @property
    def sentence(self) -> str:
        """What became of it."""
        return f"Marked again by {self.by} on {self.until[:10]}: {self.words}. {self.why}"


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
    before : tuple of Earlier
        Marks that were given and hold no more, oldest first.
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
    earlier: bool = False
    sheet: SheetMark | None = None
    before: tuple[Earlier, ...] = ()

    @property
    def changed(self) -> tuple[Earlier, ...]:
        """Marks that this very work had before."""
        return tuple(one for one in self.before if one.submission == self.submission)

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


@dataclass(frozen=True, kw_only=True)
class MarkFile(StaffFile[StoredMark]):
    """A stored mark; its id and its points stand in it for people who read the file."""

    def plain(self, record: StoredMark) -> Any:
        """The mark as data for JSON."""
        data = super().plain(record)
        sheet = data.pop("sheet")
        if record.sheet:
            told = {"points": record.sheet.points, "maximum": record.sheet.maximum}
            sheet = {"format": self.format} | told | sheet
        return {"format": self.format, "id": record.id} | data | {"sheet": sheet}


MARK = MarkFile(
    record=StoredMark,
    sparse=("before",),
    fault="this is no mark",
    mend="take the file away and mark again",
    format=3,
    # 1 had no rules and no criteria: 60 % of the points were enough everywhere; 2 no pictures
    older={1: None, 2: None},
)
