"""Limits of computing time and memory for a piece of work, where the system has them (Unix)."""

from __future__ import annotations

import contextlib
import signal
import threading
from collections.abc import Iterator
from types import FrameType
from typing import NoReturn

import psutil

try:
    import resource
except ImportError:  # Windows
    resource = None  # type: ignore[assignment, unused-ignore]


class TooLong(BaseException):
    """The time is over. Not an ``Exception``: no handler of the work itself may keep it."""


@contextlib.contextmanager
def limits(seconds: float, more_bytes: int) -> Iterator[None]:
    """Stop what takes longer than so much computing or more memory than it has now and so much.

    Raises
    ------
    TooLong
        When the computing time is over.
    MemoryError
        When the memory is.
    """
    if resource is None or threading.current_thread() is not threading.main_thread():
        yield
        return
    soft, hard = resource.getrlimit(resource.RLIMIT_AS)
    most = psutil.Process().memory_info().vms + more_bytes
    if hard != resource.RLIM_INFINITY:
        most = min(most, hard)
    # Time of computing, not of the clock: on a busy machine nobody's work is stopped for that.
    before = signal.signal(signal.SIGPROF, _stop)
    try:
        with contextlib.suppress(ValueError, OSError):  # a system may know the limit and refuse it
            resource.setrlimit(resource.RLIMIT_AS, (most, hard))
        signal.setitimer(signal.ITIMER_PROF, seconds)
        yield
    finally:
        signal.setitimer(signal.ITIMER_PROF, 0)
        signal.signal(signal.SIGPROF, before)
        with contextlib.suppress(ValueError, OSError):
            resource.setrlimit(resource.RLIMIT_AS, (soft, hard))


def _stop(number: int, frame: FrameType | None) -> NoReturn:
    raise TooLong
