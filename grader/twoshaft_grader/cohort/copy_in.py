"""Copy a folder that was handed in, without trusting it: plain files with plain names, of limited
number, size and depth. Nothing else is opened, and no link is followed.
"""

from __future__ import annotations

import os
import stat
from dataclasses import dataclass
from pathlib import Path

from twoshaft.errors import CohortError
from twoshaft.stored.writing import write_file

MOST_FILES, MOST_BYTES, MOST_FOLDERS_DEEP, LONGEST_NAME = 300, 20_000_000, 6, 120
"""A hand-in of ours has three files of together less than 1 MB: our choice, no source."""
_LEFT_OUT = {".ipynb_checkpoints", "__pycache__", "feedback"}
_HERE = os.open in os.supports_dir_fd and os.scandir in os.supports_fd


@dataclass
class _Room:
    """What may still be copied."""

    files: int = MOST_FILES
    bytes: int = MOST_BYTES

    def take(self, size: int) -> None:
        self.files, self.bytes = self.files - 1, self.bytes - size
        if self.files < 0:
            raise CohortError(f"it holds more than {MOST_FILES} files and folders")
        if self.bytes < 0:
            raise CohortError(f"it holds more than {MOST_BYTES // 1_000_000} MB")


def copy_in(source: Path, target: Path, *, without: frozenset[str] = frozenset()) -> None:
    """Copy a handed-in folder to a new one.

    Parameters
    ----------
    without : frozenset of str
        Names at its top that are not looked at.

    Raises
    ------
    CohortError
        When it holds what no hand-in holds: a link, a device, a name that cannot be shown, too
        much.
    OSError
        When something in it cannot be read, or the copy cannot be written.
    """
    target.mkdir(parents=True)
    if not stat.S_ISDIR(os.lstat(source).st_mode):
        raise CohortError("it is not a folder")
    if not _HERE:
        _copy(str(source), target, (), _Room(), without, None)
        return
    handle = os.open(source, os.O_RDONLY | os.O_DIRECTORY | os.O_NOFOLLOW)
    try:
        _copy(str(source), target, (), _Room(), without, handle)
    finally:
        os.close(handle)


def _copy(
    source: str,
    target: Path,
    within: tuple[str, ...],
    room: _Room,
    without: frozenset[str],
    handle: int | None,
) -> None:
    # Names are looked up in the folder that is open: none can be put in its place meanwhile.
    at = {} if handle is None else {"dir_fd": handle}
    with os.scandir(source if handle is None else handle) as found:
        names = sorted(entry.name for entry in found)
    for name in names:
        if name in without or name in _LEFT_OUT or name.endswith(".pyc"):
            continue
        shown = "/".join((*within, name))
        if not name.isprintable():
            raise CohortError(f"the file name {ascii(shown)[:60]} holds signs that cannot be shown")
        if len(os.fsencode(name)) > LONGEST_NAME:
            raise CohortError(f"the file name {shown[:40]}… is longer than {LONGEST_NAME} letters")
        path = name if at else os.path.join(source, name)
        about = os.stat(path, follow_symlinks=False, **at)
        room.take(about.st_size if stat.S_ISREG(about.st_mode) else 0)
        flags = os.O_RDONLY | getattr(os, "O_NOFOLLOW", 0) | getattr(os, "O_NONBLOCK", 0)
        if stat.S_ISDIR(about.st_mode):
            if len(within) >= MOST_FOLDERS_DEEP:
                raise CohortError("it holds folders within folders, deeper than any hand-in")
            (target / name).mkdir()
            inner = os.open(path, flags | os.O_DIRECTORY, **at) if at else None
            try:
                _copy(
                    os.path.join(source, name), target / name, (*within, name), room,
                    frozenset(), inner,
                )  # fmt: skip
            finally:
                if inner is not None:
                    os.close(inner)
        elif stat.S_ISREG(about.st_mode):
            opened = os.open(path, flags | getattr(os, "O_BINARY", 0), **at)
            with open(opened, "rb") as stream:
                if not stat.S_ISREG(os.fstat(opened).st_mode):
                    raise CohortError(f"{shown} was put in another's place meanwhile")
                data = stream.read(about.st_size + 1)
            if len(data) > about.st_size:
                raise CohortError(f"{shown} is still being written")
            write_file(target / name, data, sync=False)
        else:
            raise CohortError(f"{shown} is {_kind(about.st_mode)}, not an ordinary file")


def _kind(mode: int) -> str:
    if stat.S_ISLNK(mode):
        return "a link"
    return "a pipe" if stat.S_ISFIFO(mode) else "a device or a socket"
