"""Long jobs in copies (fork) of this process: each has what was loaded and worked out before."""

from __future__ import annotations

import gc
import multiprocessing
import os
import signal
import sys
from collections import deque
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from multiprocessing.connection import Connection, wait
from multiprocessing.process import BaseProcess
from typing import Any, TypeVar

Job = TypeVar("Job")
Found = TypeVar("Found")

MOST = 4
"""Copies at most: each takes some 300 MB, at the largest unit up to 540 MB."""
COLLECT_AFTER = 500_000
"""New objects until a copy looks for what nobody needs any more: it works for a minute, and most
of what it has is needed to the end."""


def side_by_side(work: Callable[[Job], Found], jobs: Sequence[Job]) -> Iterator[Found | None]:
    """What each job comes to, in their order; None where its process ended before the job.

    Parameters
    ----------
    work : callable
        Takes a job; what it gives can be pickled.
    jobs : sequence
        Taken up in their order.
    """
    copies = min(MOST, _processors(), len(jobs))
    if copies < 2 or not hasattr(os, "fork"):
        yield from map(work, jobs)
        return
    gc.collect()
    gc.freeze()  # what is there now is shared by all copies, and collected by none
    waiting = deque(range(len(jobs)))
    done: dict[int, Found | None] = {}
    at_work = [_Copy.of(work, jobs) for _ in range(copies)]
    try:
        for copy in at_work:
            copy.take(waiting)
        for number in range(len(jobs)):
            while number not in done:
                for pipe in wait([copy.pipe for copy in at_work if copy.job is not None]):
                    copy = next(one for one in at_work if one.pipe is pipe)
                    try:
                        done[copy.job] = copy.pipe.recv()
                    except EOFError:
                        done[copy.job] = None
                        copy.end()
                        at_work.remove(copy)
                        at_work.append(copy := _Copy.of(work, jobs))
                    copy.take(waiting)
            yield done.pop(number)
    finally:
        for copy in at_work:
            copy.end()
        gc.unfreeze()


def _processors() -> int:
    return len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count() or 1


@dataclass
class _Copy:
    """A copy of this process, and the number of the job that it is at."""

    process: BaseProcess
    pipe: Connection
    job: Any = None

    @classmethod
    def of(cls, work: Callable[[Job], Found], jobs: Sequence[Job]) -> _Copy:
        here, there = multiprocessing.Pipe()
        process = multiprocessing.get_context("fork").Process(
            target=_work, args=(here, there, work, jobs)
        )
        process.start()
        there.close()
        return cls(process, here)

    def take(self, waiting: deque[int]) -> None:
        self.job = waiting.popleft() if waiting else None
        if self.job is not None:
            self.pipe.send(self.job)

    def end(self) -> None:
        self.pipe.close()
        self.process.terminate()
        self.process.join()


def _work(
    other_end: Connection, pipe: Connection, work: Callable[[Job], Found], jobs: Sequence[Job]
) -> None:
    other_end.close()
    gc.set_threshold(COLLECT_AFTER)
    signal.signal(signal.SIGTERM, lambda *_: sys.exit())  # ends what it has begun itself
    while True:
        try:
            number = pipe.recv()
        except EOFError:
            return
        pipe.send(work(jobs[number]))
