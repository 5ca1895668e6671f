"""The one way of writing a file: whole or not at all, and on the disk before it counts."""

from __future__ import annotations

import contextlib
import os
import secrets
from collections.abc import Sequence
from pathlib import Path

MODE = 0o644


def write_file(
    path: Path, content: str | bytes, *, mode: int | None = MODE, sync: bool = True
) -> None:
    """Write a file through a temporary one beside it: a cut leaves the old or the new.

    Parameters
    ----------
    path : Path
        The file; its folder must be there.
    content : str or bytes
        Text is written in UTF-8 with its own line ends.
    mode : int or None
        Permissions; None leaves them to the account's own setting (umask).
    sync : bool
        Wait until the disk has it. Without only for what is made again from other files, as a
        feedback page from a stored mark: waiting is most of the time that a small file takes.

    Raises
    ------
    OSError
        When it cannot be written; the old file is then untouched.
    """
    data = content.encode("utf-8") if isinstance(content, str) else content
    # The name begins with a point and ends in .part: such files are never handed in.
    temporary = path.with_name(f".{path.name}.{secrets.token_hex(6)}.part")
    flags = os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0)
    handle = os.open(temporary, flags, 0o666)
    try:
        with os.fdopen(handle, "wb") as stream:
            stream.write(data)
            stream.flush()
            if sync:
                os.fsync(stream.fileno())
        if mode is not None:
            os.chmod(temporary, mode)
        os.replace(temporary, path)
    except BaseException:
        with contextlib.suppress(OSError):
            os.unlink(temporary)
        raise
    if sync:
        _sync_folder(path.parent)


def append_text(path: Path, lines: Sequence[str]) -> None:
    """Append lines to a log in one write and wait for the disk; a line torn by a cut is closed
    first."""
    if not lines:
        return
    text = "".join(f"{line}\n" for line in lines)
    with open(path, "ab+") as stream:
        if stream.tell():
            stream.seek(-1, os.SEEK_END)
            if stream.read(1) != b"\n":
                text = "\n" + text
        stream.write(text.encode("utf-8"))
        stream.flush()
        os.fsync(stream.fileno())


def _sync_folder(folder: Path) -> None:
    """Let the disk know the new name too, where the system can sync a folder."""
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)
