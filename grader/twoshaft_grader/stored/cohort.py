"""``cohort.yaml``: who the cohort are, which unit, and the salt of their readings."""

from __future__ import annotations

import io
from dataclasses import asdict, dataclass, fields
from pathlib import Path
from typing import Any

from ruamel.yaml import YAML
from ruamel.yaml.error import YAMLError

from twoshaft.errors import CohortError
from twoshaft_grader.cohort import files

FILE = "cohort.yaml"
FORMAT = 2
HERE = "."
_NEEDED = ("id", "salt", "unit")


@dataclass(frozen=True, kw_only=True)
class CohortEntries:
    """The entries of the file.

    Parameters
    ----------
    id, name, college : str
        The id is also nbgrader's course id.
    unit : str
        Id of a shipped unit, or path of a unit file relative to the folder.
    salt : str
        Goes into every learner's readings; nothing depends on its being secret.
    timezone : str
        IANA name; due dates are meant in it.
    content : str
        Folder that holds ``solutions/``; empty: the source checkout this program runs from.
    shared : str
        Where the folder of ``workplace`` and ``exchange`` was when the cohort was made; a point:
        the cohort folder itself, as in format 1.
    gradebook : str
        URL of the gradebook on a PostgreSQL server, with no password in it; empty: the file in the
        cohort folder.
    """

    id: str
    name: str = ""
    college: str = ""
    unit: str
    salt: str
    timezone: str = "UTC"
    content: str = ""
    shared: str = HERE
    gradebook: str = ""


_KEYS = {"format", *(entry.name for entry in fields(CohortEntries))}


def write_cohort(path: Path, entries: CohortEntries) -> None:
    """Write the file, whole or not at all."""
    told: dict[str, Any] = {"format": FORMAT} | asdict(entries)
    for name in ("content", "gradebook"):  # most cohorts have neither
        if not told[name]:
            del told[name]
    text, yaml = io.StringIO(), YAML()
    yaml.width = 1000  # a long place stays on its line, where people find it
    yaml.dump(told, text)
    files.write_whole(path, text.getvalue())


def set_gradebook(path: Path, gradebook: str) -> None:
    """Change that entry alone; what people wrote beside the others stays."""
    yaml, text = YAML(), io.StringIO()
    yaml.width = 1000
    told = yaml.load(path.read_text(encoding="utf-8"))
    told.pop("gradebook", None)
    if gradebook:
        told["gradebook"] = gradebook
    yaml.dump(told, text)
    files.write_whole(path, text.getvalue())


def read_cohort(path: Path) -> CohortEntries:
    """Read the file, which people edit by hand.

    Raises
    ------
    CohortError
        When it is of a newer format, or has an entry that cannot be used.
    """
    try:
        entries = YAML(typ="safe").load(path.read_text(encoding="utf-8"))
    except (YAMLError, UnicodeDecodeError) as error:
        mark = getattr(error, "problem_mark", None)
        place = f", line {mark.line + 1}" if mark else ""
        raise CohortError(
            "this is not readable YAML in UTF-8", where=f"{path}{place}", mend="correct that line"
        ) from None
    if not isinstance(entries, dict):
        raise CohortError("no entries", where=str(path), mend="put the file back from a copy")
    number = entries.get("format", 1)
    if type(number) is not int or number not in range(1, FORMAT + 1):
        raise CohortError(
            f"format {str(number)[:20]!r} is not one this course version reads",
            where=str(path),
            mend=f"this version reads format {FORMAT}",
        )
    unknown = sorted(set(map(str, entries)) - _KEYS)
    if unknown:
        raise CohortError(
            f'unknown entry "{unknown[0]}"',
            where=str(path),
            mend=f"use only {', '.join(sorted(_KEYS))}",
        )
    values = {key: str(entries.get(key) or "") for key in _KEYS - {"format"}}
    for key in _NEEDED:
        if not values[key]:
            raise CohortError(f'the entry "{key}" is missing', where=str(path), mend="add it")
    if number == 1:
        values["shared"] = HERE
    elif not values["shared"]:
        raise CohortError('the entry "shared" is missing', where=str(path), mend="add it")
    return CohortEntries(**values | {"timezone": values["timezone"] or "UTC"})
