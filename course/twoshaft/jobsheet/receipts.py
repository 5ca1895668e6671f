"""Receipts: a short code of exactly what was handed in, for the learner to keep."""

from __future__ import annotations

import hashlib
from pathlib import Path

from twoshaft.errors import SheetError
from twoshaft.stored.hostile import MAX_BYTES, read_bytes
from twoshaft.stored.receipts import RECEIPTS, Receipt, Receipts


def sheet_digest(path: str | Path) -> str:
    """SHA-256 of a job sheet's file, 64 hexadecimal figures; empty if it is none."""
    try:
        raw = read_bytes(path)
    except OSError:
        return ""
    return hashlib.sha256(raw).hexdigest() if len(raw) <= MAX_BYTES else ""


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
        found = RECEIPTS.read(folder / RECEIPTS.file)
    except SheetError:
        return ()
    return found.receipts if found else ()


def add_receipt(folder: Path, receipt: Receipt) -> None:
    """Keep a receipt with the learner's earlier ones."""
    RECEIPTS.write(folder / RECEIPTS.file, Receipts((*read_receipts(folder), receipt)))
