"""What a job sheet's file holds, and reading it without trusting it.

A sheet that was handed in is data from outside: size, depth, types and numbers are all checked
before anything else looks at it, and nothing in it is ever run.
"""

from __future__ import annotations

import json
import math
import os
import re
import stat
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from twoshaft.errors import SheetError
from twoshaft.jobsheet.fields import well_named

FORMAT = 1
MAX_BYTES = 1_000_000
MAX_DEPTH = 12
MAX_FIELDS = 500
MAX_TEXT = 2_000
MAX_ITEMS = 2_000
HISTORY = 5

_STRINGS = re.compile(r'"(?:[^"\\]|\\.)*"')
_TIME = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z")
# Names that travel into folders and tables: letters, figures and a few marks, no separators.
_LABEL = re.compile(r"[A-Za-z0-9][A-Za-z0-9._+-]{0,79}")


@dataclass(frozen=True)
class Answer:
    """One stored answer.

    Parameters
    ----------
    value : str, int, float, list of str or None
        As stored; a field's ``read`` turns it into a value.
    revision : int
        Counts the savings of this field.
    saved : str
        When, ISO 8601 in UTC; empty if unknown.
    history : tuple
        The last few earlier ``(value, saved)``.
    """

    value: Any = None
    revision: int = 0
    saved: str = ""
    history: tuple[tuple[Any, str], ...] = ()


@dataclass(frozen=True)
class SheetData:
    """A job sheet as read from its file: answers, figures from the bench, where they come from."""

    learner: str = ""
    module: str = ""
    attempt: int = 0
    cohort: str = ""
    course_version: str = ""
    unit_id: str = ""
    unit_version: str = ""
    given_digest: str = ""
    answers: dict[str, Answer] = field(default_factory=dict)
    bench: dict[str, Answer] = field(default_factory=dict)

    def value(self, name: str) -> Any:
        """The stored value of a field; None if it was never answered."""
        return self.answers.get(name, Answer()).value

    def as_json(self) -> dict[str, Any]:
        """The sheet as it is written to its file."""
        sheet = {
            "format": FORMAT,
            "course_version": self.course_version,
            "unit": {"id": self.unit_id, "version": self.unit_version},
            "cohort": self.cohort,
            "learner": self.learner,
            "module": self.module,
            "attempt": self.attempt,
            "given_digest": self.given_digest,
            "fields": _entries(self.answers),
        }
        return sheet | ({"bench": _entries(self.bench)} if self.bench else {})


def _entries(answers: dict[str, Answer]) -> dict[str, Any]:
    return {
        name: {
            "value": answer.value,
            "revision": answer.revision,
            "saved": answer.saved,
            "history": [{"value": v, "saved": s} for v, s in answer.history],
        }
        for name, answer in answers.items()
    }


def read_sheet(path: str | os.PathLike[str]) -> SheetData:
    """Read a job sheet from a file that is not trusted.

    Parameters
    ----------
    path : path
        The file.

    Returns
    -------
    SheetData

    Raises
    ------
    SheetError
        With one sentence: no such file, not an ordinary file, too large, too deep, not JSON, a
        name twice, a number that is none, or a value of a type no field has.
    """
    return parse_sheet(_text(Path(path)), Path(path).name)


def parse_sheet(text: str, name: str = "jobsheet.json") -> SheetData:
    """Read a job sheet from text; see :func:`read_sheet`."""
    data = load_json(text, name)
    if not isinstance(data, dict):
        raise SheetError("this is not a job sheet", where=name)
    if data.get("format") != FORMAT or isinstance(data.get("format"), bool):
        raise SheetError(
            f"format {str(data.get('format'))[:20]!r} is not one this course version reads",
            where=name,
            mend=f"this version reads format {FORMAT}",
        )
    tables = {key: data.get(key, {}) for key in ("fields", "unit", "bench")}
    if not all(isinstance(table, dict) for table in tables.values()):
        raise SheetError("“fields”, “unit” and “bench” must each be a table of names", where=name)
    fields, unit, bench = tables.values()
    for table in (fields, bench):
        if len(table) > MAX_FIELDS:
            raise SheetError(f"{len(table)} fields, more than {MAX_FIELDS}", where=name)
    return SheetData(
        learner=_label(data, "learner", name),
        module=_label(data, "module", name),
        attempt=_count(data.get("attempt", 0), "attempt", name),
        cohort=_label(data, "cohort", name),
        course_version=_label(data, "course_version", name),
        unit_id=_label(unit, "id", name),
        unit_version=_label(unit, "version", name),
        given_digest=_label(data, "given_digest", name),
        answers={_field_name(key, name): _answer(fields[key], key, name) for key in fields},
        bench={_field_name(key, name): _answer(bench[key], key, name) for key in bench},
    )


def load_json(text: str, name: str) -> Any:
    """Parse JSON from outside: no name twice, no NaN, no endless depth or number.

    Raises
    ------
    SheetError
        With one sentence.
    """
    depth = deepest = 0
    for mark in re.findall(r"[\[\]{}]", _STRINGS.sub("", text)):
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


def check_value(value: Any, what: str, where: str = "") -> Any:
    """A value some field may hold, or SheetError.

    Text, a finite number, a list of texts, or nothing; all of limited length.
    """
    items = value if isinstance(value, list) else [value]
    if isinstance(value, list) and len(value) > MAX_ITEMS:
        raise SheetError(f"{what} has {len(value)} entries, more than {MAX_ITEMS}", where=where)
    for item in items:
        if item is None and not isinstance(value, list):
            continue
        if isinstance(item, bool) or not isinstance(item, str | int | float):
            raise SheetError(f"{what} is of a type no answer has", where=where)
        if not isinstance(item, str):
            if isinstance(value, list) or not math.isfinite(item):
                raise SheetError(f"{what} is of a type no answer has", where=where)
        elif len(item) > MAX_TEXT:
            raise SheetError(f"{what} is longer than {MAX_TEXT} characters", where=where)
        elif not _shown(item):
            raise SheetError(f"{what} holds characters that cannot be shown", where=where)
    return value


def _shown(text: str) -> bool:
    return all(c in "\n\t" or c.isprintable() or c in "\u00a0\u2009\u202f" for c in text)


def _text(path: Path) -> str:
    try:
        # A pipe or a link must not be opened: it may point anywhere, or never end.
        kind = os.lstat(path)
        if not stat.S_ISREG(kind.st_mode):
            raise SheetError("not an ordinary file", where=path.name)
        if kind.st_size > MAX_BYTES:
            raise SheetError(f"{kind.st_size} bytes, more than {MAX_BYTES}", where=path.name)
        with open(path, "rb") as file:
            raw = file.read(MAX_BYTES + 1)
    except FileNotFoundError:
        raise SheetError("there is no such job sheet", where=path.name) from None
    except OSError as error:
        reason = error.strerror or "cannot be read"
        raise SheetError(f"cannot be read ({reason.lower()})", where=path.name) from None
    if len(raw) > MAX_BYTES:
        raise SheetError(f"more than {MAX_BYTES} bytes", where=path.name)
    try:
        return raw.decode("utf-8-sig")
    except UnicodeDecodeError:
        raise SheetError("not text in UTF-8", where=path.name) from None


def _unique(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    table = dict(pairs)
    if len(table) != len(pairs):
        names = [key for key, _ in pairs]
        twice = next(key for key in names if names.count(key) > 1)
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


def _label(table: dict[str, Any], key: str, where: str) -> str:
    value = table.get(key, "")
    if value in ("", None):
        return ""
    if not isinstance(value, str) or not _LABEL.fullmatch(value):
        raise SheetError(f"“{key}” is not a plain name", where=where)
    return value


def _count(value: Any, what: str, where: str) -> int:
    if isinstance(value, bool) or not isinstance(value, int) or not 0 <= value < 10**9:
        raise SheetError(f"“{what}” is not a count", where=where)
    return value


def _field_name(key: str, where: str) -> str:
    if not well_named(key):
        raise SheetError(f"“{key[:40]}” is not a field name".replace("\n", " "), where=where)
    return key


def _answer(entry: Any, key: str, where: str) -> Answer:
    if not isinstance(entry, dict):
        raise SheetError(f"field {key} is not a table", where=where)
    saved = entry.get("saved") or ""
    if saved and (not isinstance(saved, str) or not _TIME.fullmatch(saved)):
        raise SheetError(f"field {key} has no readable time", where=where)
    history = entry.get("history") or []
    if not isinstance(history, list) or len(history) > 10 * HISTORY:
        raise SheetError(f"the history of field {key} is not a short list", where=where)
    past = []
    for old in history[-HISTORY:]:
        if not isinstance(old, dict):
            raise SheetError(f"the history of field {key} is not a list of answers", where=where)
        when = old.get("saved") or ""
        if when and (not isinstance(when, str) or not _TIME.fullmatch(when)):
            raise SheetError(f"field {key} has no readable time", where=where)
        past.append((check_value(old.get("value"), f"an earlier {key}", where), when))
    return Answer(
        value=check_value(entry.get("value"), f"field {key}", where),
        revision=_count(entry.get("revision", 0), f"revision of {key}", where),
        saved=saved,
        history=tuple(past),
    )
