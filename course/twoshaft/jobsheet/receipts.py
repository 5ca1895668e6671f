"""Receipts: a short code of exactly what was handed in, for the learner to keep."""

from __future__ import annotations

import hashlib
from dataclasses import asdict, dataclass
from pathlib import Path

from twoshaft.errors import SheetError
from twoshaft.jobsheet.workplace import read_table, write_table

RECEIPTS = "receipts.json"


@dataclass(frozen=True)
class Receipt:
    """What was handed in, and when.

    Parameters
    ----------
    assignment : str
        Name of the assignment.
    code : str
        The short code, as ``3F7A-91C2-04DE``.
    sha256 : str
        SHA-256 of the job sheet's file as handed in.
    handed_in : str
        When, ISO 8601 in UTC.
    answers : int
        How many answers it held.
    """

    assignment: str
    code: str
    sha256: str
    handed_in: str
    answers: int = 0


def sheet_digest(path: str | Path) -> str:
    """SHA-256 of a job sheet's file, 64 hexadecimal figures; empty if there is none."""
    try:
        return hashlib.sha256(Path(path).read_bytes()).hexdigest()
    except OSError:
        return ""


def receipt_code(digest: str) -> str:
    """The short code of a digest.

    >>> receipt_code("3f7a91c204de" + "0" * 52)
    '3F7A-91C2-04DE'
    """
    short = digest[:12].upper()
    return "-".join(short[at : at + 4] for at in range(0, 12, 4)) if len(short) == 12 else ""


def read_receipts(folder: Path) -> tuple[Receipt, ...]:
    """A learner's receipts, oldest first; none if the file is missing or damaged."""
    try:
        data = read_table(folder / RECEIPTS) or {}
        return tuple(Receipt(**entry) for entry in data.get("receipts", ()))
    except (SheetError, TypeError):
        return ()


def add_receipt(folder: Path, receipt: Receipt) -> None:
    """Keep a receipt with the learner's earlier ones."""
    entries = [asdict(entry) for entry in (*read_receipts(folder), receipt)]
    write_table(folder / RECEIPTS, {"format": 1, "receipts": entries})
