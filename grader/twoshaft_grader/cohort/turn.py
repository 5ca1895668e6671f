"""One command at a time changes a cohort's work and marks, its roster, or another record."""

from __future__ import annotations

import contextlib
from collections.abc import Iterator

from filelock import FileLock, Timeout

from twoshaft.errors import CohortError
from twoshaft_grader.cohort.folder import Cohort

LOCK = "marking.lock"
_PATIENCE_S = 30


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


@contextlib.contextmanager
def roster_alone(cohort: Cohort) -> Iterator[None]:
    """Change the roster, or what is handed out to those on it, while nobody else does.

    Raises
    ------
    CohortError
        When somebody else has been changing it for half a minute.
    """
    with alone(cohort, "roster", "the roster, or what is handed out"):
        yield


@contextlib.contextmanager
def dates_alone(cohort: Cohort) -> Iterator[None]:
    """Change learners' own due dates while nobody else does.

    Raises
    ------
    CohortError
        When somebody else has been changing them for half a minute.
    """
    with alone(cohort, "extensions", "due dates"):
        yield


@contextlib.contextmanager
def alone(cohort: Cohort, name: str, what: str) -> Iterator[None]:
    """Change a record of the cohort while nobody else does.

    Parameters
    ----------
    name : str
        Of the record, which its lock is called after.
    what : str
        What is changed, for the sentence.

    Raises
    ------
    CohortError
        When somebody else has been changing it for half a minute.
    """
    lock = FileLock(cohort.log(name).with_suffix(".lock"))
    try:
        lock.acquire(timeout=_PATIENCE_S)
    except Timeout:
        raise CohortError(
            f"somebody else is changing {what}", mend="wait until they have ended"
        ) from None
    try:
        yield
    finally:
        lock.release()
