"""Files of a cohort folder: whole or not at all, and logs that survive a cut."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Iterator
from pathlib import Path

from twoshaft.errors import CohortError
from twoshaft.stored.writing import append_text, write_file


def write_whole(path: Path, content: str | bytes, *, sync: bool = True) -> None:
    """Write a file, and its folder if it is not there; see :func:`write_file`."""
    path.parent.mkdir(parents=True, exist_ok=True)
    write_file(path, content, sync=sync)


def read_json(path: Path, *, mend: str = "put the file back from a copy") -> dict:
    """Read a JSON object.

    Raises
    ------
    CohortError
        When the file is missing or is not a JSON object.
    """
    try:
        content = json.loads(path.read_text(encoding="utf-8"))
    except FileNotFoundError:
        raise CohortError("the file is not there", where=str(path), mend=mend) from None
    except json.JSONDecodeError as error:
        raise CohortError(
            "the file is not whole JSON", where=f"{path}, line {error.lineno}", mend=mend
        ) from None
    except UnicodeDecodeError:
        raise CohortError("the file is not UTF-8 text", where=str(path), mend=mend) from None
    if not isinstance(content, dict):
        raise CohortError("the file holds no JSON object", where=str(path), mend=mend)
    return content


def append_line(path: Path, content: dict) -> None:
    """Append one JSON line; see :func:`append_lines`."""
    append_lines(path, [content])


def append_lines(path: Path, contents: Iterable[dict]) -> None:
    """Append JSON lines in one write; a line torn by an earlier cut is closed first."""
    path.parent.mkdir(parents=True, exist_ok=True)
    append_text(path, [json.dumps(content, ensure_ascii=False) for content in contents])


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


def folder_digest(folder: Path) -> str:
    """Digest (SHA-256, hexadecimal) over the names and bytes of a folder's files.

    Checkpoints and returned feedback are left out: they are not part of what was handed in.
    """
    digest = hashlib.sha256()
    for path in sorted(folder.rglob("*")):
        parts = path.relative_to(folder).parts
        if (
            path.is_symlink()
            or not path.is_file()
            or {".ipynb_checkpoints", "feedback"} & set(parts)
        ):
            continue
        data = path.read_bytes()
        digest.update(f"{'/'.join(parts)}\0{len(data)}\0".encode())
        digest.update(data)
    return digest.hexdigest()
