"""What a stored file is: its record, its format number, and what is said where it does not fit.

A record is a frozen dataclass whose annotations pydantic checks on reading; the order of its
members is the order in the file. A file of an older number is renewed step by step before it is
read; a file of a newer one is refused in one sentence. A file without a number is of number 1.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from dataclasses import dataclass, fields
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Any, Generic, TypeVar

import msgspec
from pydantic import BeforeValidator, TypeAdapter, ValidationError

from twoshaft.errors import CourseError, SheetError
from twoshaft.stored.hostile import read_data
from twoshaft.stored.writing import write_file

if TYPE_CHECKING:
    from pydantic_core import ErrorDetails

T = TypeVar("T")
Says = Callable[["list[ErrorDetails]"], str]

Words = Annotated[str, BeforeValidator(lambda value: str(value or ""))]
"""Text for people: whatever stands there, as words; nothing as an empty text."""
TextOrNone = Annotated[str, BeforeValidator(lambda value: value or "")]
"""Text; nothing as an empty one, and anything else refused."""


@dataclass(frozen=True, kw_only=True)
class Definition(Generic[T]):
    """One stored file; :class:`LearnersFile` here and the staff's in the grader say how it is read.

    Parameters
    ----------
    file : str
        Its name; empty where each learner has one of their own name.
    record : type
        What it holds.
    fault : str or callable
        What is wrong with one that does not fit; a callable is told what was found.
    mend : str
        What to do about it.
    error : type of CourseError
        What is raised.
    format : int
        Number that is written and the highest that is read.
    numbered : bool
        Whether the number is written; files of the first version have none where it is not.
    older : mapping of int to callable
        For each lower number, what makes its data those of the next; None where nothing changes.
    sparse : tuple of str
        Members that are left out of the file where they stand at their default.
    indent : int
        Of the JSON text.
    """

    file: str = ""
    record: Any
    fault: str | Says
    mend: str
    error: type[CourseError]
    format: int = 1
    numbered: bool = True
    older: Mapping[int, Callable[[Any], Any] | None] | None = None
    sparse: tuple[str, ...] = ()
    indent: int = 2

    @cached_property
    def _adapter(self) -> TypeAdapter[Any]:
        return TypeAdapter(self.record)

    @cached_property
    def _defaults(self) -> dict[str, Any]:
        # As JSON has them, which knows no tuple.
        found = {member.name: member.default for member in fields(self.record)}
        return {key: [*one] if isinstance(one, tuple) else one for key, one in found.items()}

    def of(self, data: Any, where: str = "") -> T:
        """The record in a file's data.

        Raises
        ------
        CourseError
            Of the kind named, when the data are of a newer format or do not fit.
        """
        number = data.get("format", 1) if isinstance(data, dict) else 1
        older = self.older or {}
        if type(number) is not int or number not in (self.format, *older):
            raise self.error(
                f"format {str(number)[:20]!r} is not one this course version reads",
                where=where,
                mend=f"this version reads format {self.format}",
            )
        for step in range(number, self.format):
            renew = older[step]
            data = data if renew is None else renew(data)
        if isinstance(data, dict):
            data = {key: value for key, value in data.items() if key != "format"}
        try:
            return self._adapter.validate_python(data)
        except ValidationError as trouble:
            found = trouble.errors(include_url=False, include_context=False, include_input=False)
            says = self.fault if isinstance(self.fault, str) else self.fault(found)
            raise self.error(says, where=where, mend=self.mend) from None

    def plain(self, record: T) -> Any:
        """The record as data for JSON, with the format number first."""
        data = self._adapter.dump_python(record, mode="json", by_alias=True)
        if not isinstance(data, dict):
            return data
        for key in self.sparse:
            if data[key] == self._defaults[key]:
                del data[key]
        return {"format": self.format, **data} if self.numbered else data

    def text(self, record: T) -> str:
        """The record as the text of its file."""
        return indented(self.plain(record), self.indent) + "\n"

    def write(self, path: Path, record: T, *, mode: int | None = None, sync: bool = True) -> None:
        """Write the file, whole or not at all; its folder must be there. See :func:`write_file`."""
        write_file(path, self.text(record), mode=mode, sync=sync)


def indented(data: Any, indent: int) -> str:
    """JSON text as ``json.dumps(…, indent=…)`` writes it, ten times as quick."""
    # With an indent Python's own writer goes node by node in Python; without, it is in C.
    text = json.dumps(data, ensure_ascii=False)
    try:
        return msgspec.json.format(text, indent=indent)
    except (msgspec.DecodeError, UnicodeEncodeError):  # NaN, half a character: not JSON, but read
        return json.dumps(data, ensure_ascii=False, indent=indent)


@dataclass(frozen=True, kw_only=True)
class LearnersFile(Definition[T]):
    """A file that the learners' side reads: never trusted, small, named without its folder."""

    mend: str = "ask your instructor"
    error: type[CourseError] = SheetError

    def read(self, path: Path) -> T | None:
        """The record in a file; None if there is no such file.

        Raises
        ------
        SheetError
            With one sentence, when it cannot be read, is of a newer format or does not fit.
        """
        data = read_data(path, mend=self.mend)
        return None if data is None else self.of(data, path.name)
