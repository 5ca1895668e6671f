"""One command at a time changes a cohort's work and marks, its roster, or what is handed out."""

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
    with _patiently(cohort, "roster", "the roster, or what is handed out"):
        yield


@contextlib.contextmanager
def dates_alone(cohort: Cohort) -> Iterator[None]:
    """Change learners' own due dates while nobody else does.

    Raises
    ------
    CohortError
        When somebody else has been changing them for half a minute.
    """
    with _patiently(cohort, "extensions", "due dates"):
        yield


@contextlib.contextmanager
def _patiently(cohort: Cohort, log: str, what: str) -> Iterator[None]:
    lock = FileLock(cohort.log(log).with_suffix(".lock"))
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
