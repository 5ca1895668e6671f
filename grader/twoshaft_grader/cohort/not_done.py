"""Who could not be done, and why: one line each, while the work goes on for everybody else."""

from __future__ import annotations

import contextlib
import errno
from collections.abc import Iterator
from dataclasses import dataclass

from twoshaft.errors import CourseError

# Of the machine, not of one learner's work: everybody else would meet the same.
_OF_ALL = {errno.ENOSPC, errno.EROFS, errno.EDQUOT, errno.EFBIG, errno.EIO, errno.EMFILE}


@dataclass(frozen=True)
class NotDone:
    """A learner (or what a folder says is one), and the reason in one sentence."""

    learner: str
    why: str


@contextlib.contextmanager
def going_on(learner: str, left: list[NotDone]) -> Iterator[None]:
    """Note what is wrong with one learner's work, and go on.

    Raises
    ------
    OSError
        When it is the machine's: the disk is full, the place read-only.
    """
    try:
        yield
    except CourseError as error:
        left.append(NotDone(learner, error.sentence))
    except OSError as error:
        if error.errno in _OF_ALL:
            raise
        where = f"{error.filename}: " if error.filename else ""
        left.append(NotDone(learner, f"{where}{(error.strerror or str(error)).lower()}."))
