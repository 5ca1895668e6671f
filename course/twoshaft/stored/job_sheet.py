"""``jobsheet.json``: a learner's answers, and reading them without trusting them.

A sheet that was handed in is data from outside: size, depth, types and numbers are all checked
before anything else looks at it, and nothing in it is ever run.
"""

from __future__ import annotations

import json
import math
import os
import re
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Any, NoReturn

from pydantic import (
    AliasPath,
    Field,
    PlainValidator,
    StrictInt,
    TypeAdapter,
    ValidationError,
)
from pydantic_core import PydanticCustomError

from twoshaft.errors import SheetError
from twoshaft.stored.hostile import MAX_BYTES, NotOrdinary, load_json, read_bytes
from twoshaft.stored.names import well_named

if TYPE_CHECKING:
    from pydantic_core import ErrorDetails

FILE = "jobsheet.json"
FORMAT = 1
MAX_FIELDS = 500
MAX_TEXT = 2_000
MAX_ITEMS = 2_000
HISTORY = 5

_TABLES = ("fields", "bench")

_TIME = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z")
# Names that travel into folders and tables: letters, figures and a few marks, no separators.
_LABEL = re.compile(r"[A-Za-z0-9][A-Za-z0-9._+-]{0,79}")


def check_value(value: Any, what: str, where: str = "") -> Any:
    """A value some field may hold, or SheetError.

    Text, a finite number, a list of texts, or nothing; all of limited length.
    """
    if fault := _fault(value):
        raise SheetError(f"{what} {fault}", where=where)
    return value


def _fault(value: Any) -> str:
    """Why a value cannot be an answer, to stand after its name; empty if it can."""
    items = value if isinstance(value, list) else [value]
    if isinstance(value, list) and len(value) > MAX_ITEMS:
        return f"has {len(value)} entries, more than {MAX_ITEMS}"
    for item in items:
        if item is None and not isinstance(value, list):
            continue
        if isinstance(item, bool) or not isinstance(item, str | int | float):
            return "is of a type no answer has"
        if not isinstance(item, str):
            if isinstance(value, list) or not math.isfinite(item):
                return "is of a type no answer has"
        elif len(item) > MAX_TEXT:
            return f"is longer than {MAX_TEXT} characters"
        elif not _shown(item):
            return "holds characters that cannot be shown"
    return ""


def _shown(text: str) -> bool:
    return text.isprintable() or all(
        c in "\n\t" or c.isprintable() or c in "\u00a0\u2009\u202f" for c in text
    )


def _no(says: str) -> NoReturn:
    """Refuse; ``{name}`` in the sentence becomes the name of the entry it is about."""
    raise PydanticCustomError("sheet", says)  # type: ignore[arg-type, unused-ignore]


def _value(value: Any) -> Any:
    if fault := _fault(value):
        _no(f"field {{name}} {fault}")
    return value


def _moment(value: Any) -> str:
    value = value or ""
    if value and (not isinstance(value, str) or not _TIME.fullmatch(value)):
        _no("field {name} has no readable time")
    return value


def _label(value: Any) -> str:
    if value in ("", None):
        return ""
    if not isinstance(value, str) or not _LABEL.fullmatch(value):
        _no("“{name}” is not a plain name")
    return value


def _field_name(key: str) -> str:
    if not well_named(key):
        _no("“{name}” is not a field name")
    return key


def _past(value: Any) -> tuple[tuple[Any, str], ...]:
    """The last few earlier answers; a longer list than the sheet ever keeps is refused."""
    value = value or []
    if not isinstance(value, list) or len(value) > 10 * HISTORY:
        _no("the history of field {name} is not a short list")
    past = []
    for old in value[-HISTORY:]:
        if not isinstance(old, dict):
            _no("the history of field {name} is not a list of answers")
        if fault := _fault(old.get("value")):
            _no(f"an earlier {{name}} {fault}")
        past.append((old.get("value"), _moment(old.get("saved"))))
    return tuple(past)


Moment = Annotated[str, PlainValidator(_moment)]
Label = Annotated[str, PlainValidator(_label)]
Count = Annotated[StrictInt, Field(ge=0, lt=10**9)]
FieldName = Annotated[str, PlainValidator(_field_name)]


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

    value: Annotated[Any, PlainValidator(_value)] = None
    revision: Count = 0
    saved: Moment = ""
    history: Annotated[tuple[tuple[Any, str], ...], PlainValidator(_past)] = ()


Answers = dict[FieldName, Answer]


@dataclass(frozen=True)
class SheetData:
    """A job sheet as read from its file: answers, figures from the bench, where they come from."""

    learner: Label = ""
    module: Label = ""
    attempt: Count = 0
    cohort: Label = ""
    course_version: Label = ""
    unit_id: Annotated[Label, Field(validation_alias=AliasPath("unit", "id"))] = ""
    unit_version: Annotated[Label, Field(validation_alias=AliasPath("unit", "version"))] = ""
    given_digest: Label = ""
    answers: Annotated[Answers, Field(validation_alias="fields")] = field(default_factory=dict)
    bench: Answers = field(default_factory=dict)

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


def sheet_text(sheet: SheetData) -> str:
    """A sheet as the text of its file."""
    return json.dumps(sheet.as_json(), ensure_ascii=False, indent=1) + "\n"


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
    return parse_sheet(text_of(Path(path)), Path(path).name)


def parse_sheet(text: str, name: str = FILE) -> SheetData:
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
    tables = [data.get(key, {}) for key in ("unit", *_TABLES)]
    if not all(isinstance(table, dict) for table in tables):
        raise SheetError("“fields”, “unit” and “bench” must each be a table of names", where=name)
    for table in tables[1:]:
        if len(table) > MAX_FIELDS:
            raise SheetError(f"{len(table)} fields, more than {MAX_FIELDS}", where=name)
    try:
        return _definition().validate_python(data)
    except ValidationError as trouble:
        first = trouble.errors(include_url=False, include_context=False, include_input=False)[0]
        raise SheetError(_sentence(first), where=name) from None


@cache
def _definition() -> TypeAdapter[SheetData]:
    return TypeAdapter(SheetData)


def _sentence(found: ErrorDetails) -> str:
    """What was found in a sheet, in our words."""
    place = [str(part) for part in found["loc"]]
    name = place[1] if place[0] in _TABLES else place[-1]
    if not well_named(name):
        name = "".join(sign if sign.isprintable() else "?" for sign in name[:40])
    if found["type"] == "sheet":
        return found["msg"].replace("{name}", name)
    if place[-1] in ("attempt", "revision"):
        return f"“{name if len(place) == 1 else f'revision of {name}'}” is not a count"
    return f"field {name} is not a table"


def text_of(path: Path) -> str:
    """The text of a job sheet's file, which is not trusted.

    Raises
    ------
    SheetError
        When it is not there, no ordinary file, too large or no text.
    """
    try:
        raw = read_bytes(path)
    except FileNotFoundError:
        raise SheetError("there is no such job sheet", where=path.name) from None
    except NotOrdinary:
        raise SheetError("not an ordinary file", where=path.name) from None
    except OSError as error:
        reason = error.strerror or "cannot be read"
        raise SheetError(f"cannot be read ({reason.lower()})", where=path.name) from None
    if len(raw) > MAX_BYTES:
        raise SheetError(f"more than {MAX_BYTES} bytes", where=path.name)
    try:
        return raw.decode("utf-8-sig")
    except UnicodeDecodeError:
        raise SheetError("not text in UTF-8", where=path.name) from None
