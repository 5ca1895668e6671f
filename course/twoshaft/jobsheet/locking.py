"""One at a time: a lock on a learner's file that several windows may change."""

from __future__ import annotations

import contextlib
import getpass
import hashlib
import tempfile
from collections.abc import Iterator
from pathlib import Path

from filelock import FileLock, Timeout

from twoshaft.errors import SheetError

LOCK_SECONDS = 10


@contextlib.contextmanager
def locked(path: Path, what: str) -> Iterator[None]:
    """Hold the lock of a file. It lies outside the file's folder, so that it is never handed in.

    Parameters
    ----------
    path : Path
        The file; need not be there.
    what : str
        What a person calls it, as ``job sheet``.

    Raises
    ------
    SheetError
        When another window holds it too long, or no lock can be made.
    """
    digest = hashlib.sha256(str(path.resolve()).encode()).hexdigest()[:24]
    folder = Path(tempfile.gettempdir()) / f"twoshaft-{_user()}"
    lock = FileLock(folder / f"{digest}.lock", timeout=LOCK_SECONDS)
    try:
        folder.mkdir(mode=0o700, exist_ok=True)
        lock.acquire()
    except Timeout:
        raise SheetError(
            f"another window has held this {what} for too long",
            where=path.name,
            mend="close the other window and try again",
        ) from None
    except OSError as error:
        reason = (error.strerror or "no reason given").lower()
        raise SheetError(f"the {what} cannot be locked ({reason})") from None
    try:
        yield
    finally:
        lock.release()


def _user() -> str:
    try:
        return hashlib.sha256(getpass.getuser().encode()).hexdigest()[:8]
    except (OSError, KeyError):
        return "user"
