"""A learner's mark in the cohort folder; what it holds is defined in ``stored/mark.py``."""

from __future__ import annotations

from pathlib import Path

from twoshaft_grader.stored.mark import MARK, MARKED, UNREADABLE, StoredMark

__all__ = ["MARKED", "UNREADABLE", "StoredMark", "read_mark", "write_mark"]


def write_mark(path: Path, mark: StoredMark) -> None:
    """Store a mark, whole or not at all."""
    MARK.write(path, mark)


def read_mark(path: Path) -> StoredMark | None:
    """Read a stored mark; None if there is none.

    Raises
    ------
    CohortError
        When the file is damaged.
    """
    return MARK.read_if_any(path)
