"""Reading JSON without trusting it: limits on size, depth and numbers, and no name twice."""

from __future__ import annotations

import errno
import json
import math
import os
import re
import stat
from pathlib import Path
from typing import Any

from twoshaft.errors import SheetError

MAX_BYTES = 1_000_000
MAX_DEPTH = 12

# Possessive, and an open string ends with the text: no input makes it begin again.
_STRINGS = re.compile(r'"(?:[^"\\]++|\\.)*+(?:"|\\?\Z)', re.DOTALL)
_BRACKETS = re.compile(r"[\[\]{}]")


def load_json(text: str, name: str) -> Any:
    """Parse JSON from outside: no name twice, no NaN, no endless depth or number.

    Raises
    ------
    SheetError
        With one sentence.
    """
    depth = deepest = 0
    for mark in _BRACKETS.findall(_STRINGS.sub("", text)):
        depth += 1 if mark in "[{" else -1
        deepest = max(deepest, depth)
    if deepest > MAX_DEPTH:
        raise SheetError("lists within lists, deeper than any job sheet", where=name)
    try:
        return json.loads(
            text,
            object_pairs_hook=_unique,
            parse_constant=_no_constant,
            parse_int=_int,
            parse_float=_float,
        )
    except SheetError as error:
        raise SheetError(error.what, where=name) from None
    except json.JSONDecodeError as error:
        raise SheetError("not readable as JSON", where=f"{name}, line {error.lineno}") from None
    except (ValueError, RecursionError):
        raise SheetError("not readable as JSON", where=name) from None


def read_bytes(
    path: str | os.PathLike[str], most: int = MAX_BYTES, *, links: bool = False
) -> bytes:
    """At most one byte more than ``most`` of an ordinary file, or of one that a link leads to.

    Raises
    ------
    NotOrdinary
        When it is a folder, a pipe or a device; a link, if those are not followed.
    OSError
        When it cannot be read, or is not there.
    """
    _ordinary(os.stat(path, follow_symlinks=links), path)
    # Between the look and the opening it may have been replaced: a pipe must not hold us up.
    more = getattr(os, "O_NONBLOCK", 0) | (0 if links else getattr(os, "O_NOFOLLOW", 0))
    with open(path, "rb", opener=lambda name, flags: os.open(name, flags | more)) as stream:
        _ordinary(os.fstat(stream.fileno()), path)
        return stream.read(most + 1)


def _ordinary(about: os.stat_result, path: str | os.PathLike[str]) -> None:
    if not stat.S_ISREG(about.st_mode):
        raise NotOrdinary(errno.EINVAL, "not an ordinary file", os.fspath(path))


class NotOrdinary(OSError):
    """A link, folder, pipe or device where a file belongs."""


def read_data(path: Path, *, mend: str) -> Any:
    """The data in a small JSON file; None if there is no such file.

    Raises
    ------
    SheetError
        If the file cannot be read.
    """
    try:
        raw = read_bytes(path, links=True)
        if len(raw) > MAX_BYTES:
            raise SheetError("it is too large", where=path.name, mend=mend)
        text = raw.decode("utf-8-sig")
    except FileNotFoundError:
        return None
    except (OSError, ValueError):
        raise SheetError("it cannot be read", where=path.name, mend=mend) from None
    try:
        data = load_json(text, path.name)
    except SheetError as error:
        raise SheetError(error.what, where=error.where, mend=mend) from None
    if data is None:
        raise SheetError("it holds nothing", where=path.name, mend=mend)
    return data


def _unique(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    table = dict(pairs)
    if len(table) != len(pairs):
        seen: set[str] = set()
        for twice, _ in pairs:
            if twice in seen:
                break
            seen.add(twice)
        raise SheetError(f"“{twice[:40]}” stands there twice")
    return table


def _no_constant(text: str) -> Any:
    raise SheetError(f"{text} is not a number")


def _int(text: str) -> int:
    if len(text) > 18:
        raise SheetError("a number with more than 18 figures")
    return int(text)


def _float(text: str) -> float:
    value = float(text) if len(text) <= 60 else math.inf
    if not math.isfinite(value):
        raise SheetError("a number beyond any workshop")
    return value
