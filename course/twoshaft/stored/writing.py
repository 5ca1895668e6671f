"""The one way of writing a file: whole or not at all, and on the disk before it counts."""

from __future__ import annotations

import contextlib
import errno
import os
import secrets
import stat
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

from twoshaft import system

NOT_FOR_OTHERS = 0o007
"""Setting (umask) for what a learner's own account makes: for it and for its group, the staff's."""
FOR_ALL, FOR_ALL_FOLDER = 0o644, 0o755
"""Permissions of what other accounts read too: what is handed out, and a learner's own feedback."""
_NO_FOLDER = "a link or a file stands where a folder belongs"


def write_file(
    path: Path, content: str | bytes, *, mode: int | None = None, sync: bool = True
) -> None:
    """Write a file through a temporary one beside it: a cut leaves the old or the new.

    Parameters
    ----------
    path : Path
        The file; its folder must be there.
    content : str or bytes
        Text is written in UTF-8 with its own line ends.
    mode : int or None
        Permissions; None leaves them to the process's own setting (umask).
    sync : bool
        Wait until the disk has it. Without only for what is made again from other files, as a
        feedback page from a stored mark: waiting is most of the time that a small file takes.

    Raises
    ------
    OSError
        When it cannot be written; the old file is then untouched.
    """
    try:
        _write(path, content, mode, sync)
    except OSError as error:
        raise _named(error, path) from None
    if sync:
        _sync_folder(path.parent)


def write_inside(root: Path, place: str, content: str | bytes, *, sync: bool = True) -> None:
    """Write a file below a folder in which others may write: no link below it is followed. Others
    may read it, and go into the folders that are made for it.

    Parameters
    ----------
    root : Path
        The folder that is ours.
    place : str
        The file below it, its parts parted by ``/``; folders are made where there are none.

    Raises
    ------
    OSError
        With the file's name: also when a link or a file stands where a folder belongs.
    """
    *folders, name = place.split("/")
    path = root.joinpath(*folders, name)
    try:
        if os.open in os.supports_dir_fd:
            with _folder_inside(root, folders) as folder:
                _write(Path(name), content, FOR_ALL, sync, folder)
        else:
            for parent in reversed(path.parents[: len(folders)]):
                if parent.is_symlink():
                    raise OSError(errno.ENOTDIR, _NO_FOLDER)
                parent.mkdir(exist_ok=True)
            _write(path, content, FOR_ALL, sync)
    except OSError as error:
        raise _named(error, path) from None


@contextlib.contextmanager
def _folder_inside(root: Path, folders: Sequence[str]) -> Iterator[int]:
    """A folder below another, held open so that nothing can be put in its place."""
    handle = os.open(root, os.O_RDONLY | os.O_DIRECTORY)
    try:
        for part in folders:
            made = False
            with contextlib.suppress(FileExistsError):
                os.mkdir(part, dir_fd=handle)
                made = True
            try:
                flags = os.O_RDONLY | os.O_DIRECTORY | os.O_NOFOLLOW
                inner = os.open(part, flags, dir_fd=handle)
            except OSError as error:
                if error.errno in (errno.ENOTDIR, errno.ELOOP):
                    raise OSError(errno.ENOTDIR, _NO_FOLDER) from None
                raise
            if made:
                os.fchmod(inner, stat.S_IMODE(os.fstat(inner).st_mode) | FOR_ALL_FOLDER)
            os.close(handle)
            handle = inner
        yield handle
    finally:
        os.close(handle)


def _write(
    path: Path, content: str | bytes, mode: int | None, sync: bool, folder: int | None = None
) -> None:
    data = content.encode("utf-8") if isinstance(content, str) else content
    # The name begins with a point and ends in .part: such files are never handed in.
    temporary = path.with_name(f".{path.name[:40]}.{secrets.token_hex(6)}.part")
    at: dict[str, Any] = {} if folder is None else {"dir_fd": folder}
    both = {} if folder is None else {"src_dir_fd": folder, "dst_dir_fd": folder}
    flags = os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0)
    handle = os.open(temporary, flags, 0o666, **at)
    try:
        with os.fdopen(handle, "wb") as stream:
            stream.write(data)
            stream.flush()
            if sync:
                os.fsync(stream.fileno())
        if mode is not None:
            _give(temporary, mode, at)
        system.replace(temporary, path, **both)
    except BaseException:
        with contextlib.suppress(OSError):
            os.unlink(temporary, **at)
        raise


def _give(path: Path, mode: int, at: dict[str, Any]) -> None:
    if system.has_rights():
        os.chmod(path, mode, **at)


def _named(error: OSError, path: Path) -> OSError:
    """The error with the name of the file that was to be written, not of the temporary one."""
    return OSError(error.errno, error.strerror or str(error), str(path))


def append_text(path: Path, lines: Sequence[str]) -> None:
    """Append lines to a log in one write and wait for the disk; a line torn by a cut is closed
    first."""
    if not lines:
        return
    text = "".join(f"{line}\n" for line in lines)
    try:
        with open(path, "ab+") as stream:
            if stream.tell():
                stream.seek(-1, os.SEEK_END)
                if stream.read(1) != b"\n":
                    text = "\n" + text
            stream.write(text.encode("utf-8"))
            stream.flush()
            os.fsync(stream.fileno())
    except OSError as error:
        raise _named(error, path) from None


def _sync_folder(folder: Path) -> None:
    """Let the disk know the new name too, where the system can sync a folder."""
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)
