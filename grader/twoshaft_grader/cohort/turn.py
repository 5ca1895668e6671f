"""One command at a time changes a cohort's work and marks."""

from __future__ import annotations

import contextlib
from collections.abc import Iterator

from filelock import FileLock, Timeout

from twoshaft.errors import CohortError
from twoshaft_grader.cohort.folder import Cohort

LOCK = "marking.lock"


@contextlib.contextmanager
def turn(cohort: Cohort) -> Iterator[None]:
    """Work alone; the system ends the turn of a program that was killed.

    Raises
    ------
    CohortError
        When another command is at work.
    """
    lock = FileLock(cohort.root / "log" / LOCK)
    try:
        lock.acquire(timeout=0)
    except Timeout:
        raise CohortError(
            "another run is under way in this cohort", mend="wait until it has ended"
        ) from None
    try:
        yield
    finally:
        lock.release()
