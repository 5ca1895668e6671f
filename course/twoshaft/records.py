"""Records of what a learner is given: names instead of keys and positions.

A task's draw makes a :class:`Record`; what was rows in a list of lists are :class:`Row`. As JSON a
record is an object and a row is a list, members in the order in which the class names them, so a
stored issued record stays what it is to the byte. Numbers keep their kind: where some are whole
and some are not, the member is ``int | float``.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any, TypeVar

import msgspec

from twoshaft.errors import CourseError

G = TypeVar("G")


class Record(msgspec.Struct, frozen=True, forbid_unknown_fields=True, omit_defaults=True):
    """What one task gives; an object in JSON. Lists are tuples. Never changed: see ``changed``."""


class BenchRecord(Record, frozen=True, kw_only=True):
    """A task's record whose figures may come from the real bench.

    Attributes
    ----------
    source : str
        Where they come from, in words that the task's tables show; empty as drawn.
    """

    source: str = ""


class Row(msgspec.Struct, frozen=True, forbid_unknown_fields=True, array_like=True):
    """One row of a table; a list in JSON. It unpacks into its members, in their order."""

    def __iter__(self) -> Iterator[Any]:
        return (getattr(self, name) for name in self.__struct_fields__)


class Option(Row, frozen=True):
    """What a question offers.

    Attributes
    ----------
    id : str
        What the job sheet stores.
    text : str
        What the learner reads.
    """

    id: str
    text: str


class Question(Record, frozen=True):
    """A question with its options, as a learner gets it.

    Attributes
    ----------
    id : str
        Which of the bank's versions it is.
    story : str
        What is asked.
    options : tuple of Option
    """

    id: str
    story: str
    options: tuple[Option, ...]


class Scenes(Record, frozen=True):
    """Scenes of the bench, and the answers that each of them offers."""

    lines: tuple[Option, ...]
    answers: tuple[Option, ...]


changed = msgspec.structs.replace
"""``changed(record, name=value, …)``: the record with other members."""


def extended(kind: type[G], record: Record, **more: Any) -> G:
    """A record of another kind, with all that this one holds and more."""
    return kind(**msgspec.structs.asdict(record), **more)


def labels(options: tuple[Option, ...]) -> dict[str, str]:
    """Text of each option, by id."""
    return {option.id: option.text for option in options}


def to_json(record: Any) -> Any:
    """Plain data as it is stored; plain data itself comes back as it is."""
    if not isinstance(record, msgspec.Struct):
        return record
    return msgspec.json.decode(msgspec.json.encode(record, enc_hook=_plain))


def from_json(kind: type[G], data: Any, what: str) -> G:
    """Plain data as the record that it was.

    Parameters
    ----------
    kind : type
        The record to make.
    data : object
        What ``to_json`` gave, or what a file held.
    what : str
        What is being read, for the complaint.

    Raises
    ------
    CourseError
        When something is missing, unknown or of another kind; says where it stands.
    """
    try:
        return msgspec.convert(data, kind)
    except msgspec.ValidationError as error:
        wrong, _, place = str(error).partition(" - at ")
        raise CourseError(
            f"{what} does not fit this version of the course: {_words(wrong)}",
            where=_place(place),
            mend="use the version that it was issued with, or issue it again",
        ) from error


def _plain(value: Any) -> float:
    """A number of numpy's as Python's own; nothing else is stored."""
    if isinstance(value, float):
        return float(value)
    raise TypeError(f"{type(value).__name__} cannot be stored in what is given")


_WORDS = (
    (r"Object missing required field (`.*`)", r"it lacks \1"),
    (r"Object contains unknown field (`.*`)", r"it holds \1, which is not known"),
    (r"Expected `array`(?: of)? (?:at least |at most )?length (\d+), got (\d+)",
     r"a row has \2 members where \1 are known"),
    (r"Expected (.*), got (.*)", r"it holds \2 where \1 belongs"),
)  # fmt: skip


def _words(wrong: str) -> str:
    for pattern, words in _WORDS:
        if match := re.fullmatch(pattern, wrong):
            return match.expand(words).replace("`", "“", 1).replace("`", "”", 1)
    return wrong


def _place(path: str) -> str:
    """``task stack, rows, 3`` of the path ``$.stack.rows[2]``."""
    steps = re.findall(r"\.([^.\[\]`]+)|\[(\d+)\]", path)
    words = [name or f"{int(number) + 1}" for name, number in steps]
    return f"task {', '.join(words)}" if words else ""
