"""Files of a cohort folder: whole or not at all, and logs that survive a cut."""

from __future__ import annotations

import hashlib
import json
import os
import shutil
from collections.abc import Iterable, Iterator
from pathlib import Path

from twoshaft import system
from twoshaft.errors import CohortError
from twoshaft.stored.hostile import read_bytes
from twoshaft.stored.writing import append_text, write_file

LARGEST, MOST, DEEPEST = 100_000_000, 5_000, 20
"""Bytes, files and folders, and depth of a folder of work; more is no work of a learner's."""
_NOT_HANDED_IN = {".ipynb_checkpoints", "feedback"}


def write_whole(
    path: Path, content: str | bytes, *, mode: int | None = None, sync: bool = True
) -> None:
    """Write a file, and its folder if it is not there; see :func:`write_file`."""
    path.parent.mkdir(parents=True, exist_ok=True)
    write_file(path, content, mode=mode, sync=sync)


def read_json(path: Path, *, mend: str = "put the file back from a copy") -> dict:
    """Read a JSON object.

    Raises
    ------
    CohortError
        When the file is missing or is not a JSON object.
    """
    try:
        text = path.read_bytes()
    except FileNotFoundError:
        raise CohortError("the file is not there", where=str(path), mend=mend) from None
    return parse_json(text, str(path), mend=mend)


def parse_json(text: bytes, where: str, *, mend: str = "") -> dict:
    """A JSON object from the bytes of a file; see :func:`read_json`."""
    try:
        content = json.loads(text.decode("utf-8"))
    except json.JSONDecodeError as error:
        raise CohortError(
            "the file is not whole JSON", where=f"{where}, line {error.lineno}", mend=mend
        ) from None
    except UnicodeDecodeError:
        raise CohortError("the file is not UTF-8 text", where=where, mend=mend) from None
    except RecursionError:
        raise CohortError("the file is not whole JSON", where=where, mend=mend) from None
    if not isinstance(content, dict):
        raise CohortError("the file holds no JSON object", where=where, mend=mend)
    return content


def append_line(path: Path, content: dict) -> None:
    """Append one JSON line; see :func:`append_lines`."""
    append_lines(path, [content])


def append_lines(path: Path, contents: Iterable[dict]) -> None:
    """Append JSON lines in one write; a line torn by an earlier cut is closed first."""
    path.parent.mkdir(parents=True, exist_ok=True)
    append_text(path, [json_line(content) for content in contents])


def json_line(content: dict) -> str:
    """A record as a line of a log, without its end."""
    return json.dumps(content, ensure_ascii=False)


def read_lines(path: Path) -> Iterator[dict]:
    """Read the whole JSON lines of a log; torn ones are passed over."""
    if not path.exists():
        return
    for line in path.read_text(encoding="utf-8", errors="replace").splitlines():
        try:
            content = json.loads(line)
        except json.JSONDecodeError:
            continue
        if isinstance(content, dict):
            yield content


def remove(path: Path) -> None:
    """Take away a file, a link or a whole folder of ours, if it is there."""
    if path.is_dir() and not path.is_symlink():
        shutil.rmtree(path)
    else:
        path.unlink(missing_ok=True)


def move_into_place(new: Path, target: Path) -> None:
    """Let a whole folder have its name; an older one of that name goes."""
    target.parent.mkdir(parents=True, exist_ok=True)
    if os.path.lexists(target):
        old = new.with_name(".old.part")
        remove(old)
        system.rename(target, old)
        system.rename(new, target)
        remove(old)
    else:
        system.rename(new, target)


def folder_digest(folder: Path) -> str:
    """Digest (SHA-256, hexadecimal) over the names and bytes of a folder's files.

    Checkpoints and returned feedback are left out: they are not part of what was handed in.

    Raises
    ------
    CohortError
        When it holds more than any hand-in, or something in it cannot be read.
    """
    digest, left = hashlib.sha256(), LARGEST
    try:
        for parts, size in _files_in(folder):
            left -= size
            if left < 0:
                raise CohortError(
                    f"it holds more than {LARGEST // 1_000_000} MB", where=str(folder)
                )
            data = read_bytes(folder.joinpath(*parts), LARGEST)
            digest.update(os.fsencode("/".join(parts)) + f"\0{len(data)}\0".encode())
            digest.update(data)
    except OSError as error:
        what = error.filename or folder
        raise CohortError((error.strerror or "cannot be read").lower(), where=str(what)) from None
    return digest.hexdigest()


def _files_in(folder: Path) -> list[tuple[tuple[str, ...], int]]:
    """Parts of the names of a folder's ordinary files, in order, and their sizes."""
    found: list[tuple[tuple[str, ...], int]] = []
    waiting: list[tuple[str, ...]] = [()]
    seen = 0
    while waiting:
        within = waiting.pop()
        with os.scandir(folder.joinpath(*within)) as entries:
            for entry in entries:
                seen += 1
                if seen > MOST or len(within) > DEEPEST:
                    raise CohortError("it holds more than any hand-in", where=str(folder))
                if entry.name in _NOT_HANDED_IN:
                    continue
                if entry.is_dir(follow_symlinks=False):
                    waiting.append((*within, entry.name))
                elif entry.is_file(follow_symlinks=False):
                    size = entry.stat(follow_symlinks=False).st_size
                    found.append(((*within, entry.name), size))
    return sorted(found)
