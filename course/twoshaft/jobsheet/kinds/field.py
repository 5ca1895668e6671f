"""A field of a job sheet, and the register of the kinds of answer there are.

A kind is one class here and one judge beside the marking, both under the same name::

    @kind("number")
    @dataclass(frozen=True)
    class Number(Field): ...

From then on ``sheet.number(name, prompt, …)`` makes such a field wherever questions are asked.
"""

from __future__ import annotations

import html
import re
from abc import ABC, abstractmethod
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import partialmethod
from typing import Any, ClassVar, TypeVar

from twoshaft.errors import AnswerError, CourseError
from twoshaft.units.unit import Unit

NAME = re.compile(r"[a-z0-9]+(?:-[a-z0-9]+)*")
Pairs = tuple[tuple[str, str], ...]


def well_named(name: Any) -> bool:
    """Whether a field's or task's name is small letters, figures and single hyphens."""
    return isinstance(name, str) and len(name) <= 64 and bool(NAME.fullmatch(name))


@dataclass(frozen=True)
class Field(ABC):
    """One named answer.

    Parameters
    ----------
    name : str
        Small letters, figures and hyphens; unique on the sheet.
    prompt : str
        The question, as the learner reads it.
    """

    kind: ClassVar[str] = ""
    name: str
    prompt: str

    def __post_init__(self) -> None:
        if not well_named(self.name):
            raise ValueError(f"{self.name!r} is no field name: small letters, figures, hyphens")

    @classmethod
    def asked(cls, on: Asker, name: str, prompt: str, *args: Any, **arguments: Any) -> Field:
        """A field that is asked on a sheet, which knows the unit; as the class is called."""
        return cls(name, prompt, *args, **arguments)

    def is_blank(self, stored: Any) -> bool:
        """Whether nothing has been answered; a list of empty texts is an answer to this one."""
        return stored is None or (isinstance(stored, str) and not stored.strip()) or stored == []

    @abstractmethod
    def read(self, stored: Any) -> Any:
        """The stored answer as a value for marking. AnswerError if it cannot be read.

        A form keeps what its control sends as it is, so this meets whatever a hand can type.
        """

    def store(self, value: Any) -> Any:
        """A value given from code as it is stored. AnswerError if it cannot be an answer.

        A text, a number or a list of texts. Forms do not ask this: their control sends the same.
        """
        return value

    def shortfall(self, stored: Any) -> str:
        """What keeps the answer from being complete, as a sentence; empty if nothing."""
        return "not answered yet" if self.is_blank(stored) else self.unreadable(stored)

    def unreadable(self, stored: Any) -> str:
        """Why what was answered cannot be read, as a sentence; empty if it can, or is blank."""
        if self.is_blank(stored):
            return ""
        try:
            self.read(stored)
        except AnswerError as error:
            return error.sentence
        return ""

    def in_part(self, stored: Any) -> bool:
        """Whether it is answered, and can be read, but something of it is still open."""
        return not (self.is_blank(stored) or self.unreadable(stored)) and bool(
            self.shortfall(stored)
        )

    def agrees(self, value: Any, other: Any, near: float) -> bool:
        """Whether two values say the same in practice, figures within a share of the other one."""
        return bool(value == other)

    def words(self, stored: Any) -> str:
        """The stored answer as a person would say it, also where it cannot be read."""
        return "" if self.is_blank(stored) else str(stored)

    @abstractmethod
    def told(self) -> dict[str, Any]:
        """What the browser needs besides kind, name and prompt; nothing of any answer."""

    def read_as(self, value: Any) -> str:
        """How a value was read, where what was typed can be taken in several ways; else empty."""
        return ""

    def paper(self, stored: Any) -> str:
        """The stored answer as plain HTML, for paper and feedback pages."""
        return html.escape(self.words(stored))


KINDS: dict[str, type[Field]] = {}
"""The class of each kind of answer, by its name."""

F = TypeVar("F", bound=type[Field])


def kind(name: str) -> Callable[[F], F]:
    """Register a class of fields as a kind of answer. ValueError if the name is taken."""

    def register(field: F) -> F:
        if name in KINDS:
            raise ValueError(f"the kind of answer {name!r} is registered twice")
        field.kind = name
        KINDS[name] = field
        setattr(Asker, name, partialmethod(Asker.ask, name))
        return field

    return register


def kind_named(name: str) -> type[Field]:
    """The class of a kind of answer.

    Raises
    ------
    CourseError
        When no such kind is registered.
    """
    if name not in KINDS:
        raise CourseError(
            f"there is no kind of answer {name!r}", mend=f"use one of: {', '.join(sorted(KINDS))}"
        )
    return KINDS[name]


class Asker:
    """Whoever asks questions about a unit: ``asker.number(name, prompt, …)`` for every kind."""

    unit: Unit

    def ask(self, kind: str, name: str, prompt: str, *args: Any, **arguments: Any) -> Field:
        """A field of a kind by its name. CourseError when it cannot be asked so."""
        wanted = kind_named(kind)
        try:
            return wanted.asked(self, name, prompt, *args, **arguments)
        except TypeError as error:
            raise CourseError(f"the field {name!r} of the kind {kind!r}: {error}") from error

    def ask_all(self, questions: Iterable[Any]) -> list[Field]:
        """A field for each question of a model: kind, name, prompt and arguments, as plain data."""
        return [self.ask(one.kind, one.name, one.prompt, **one.arguments) for one in questions]


class UnitAsker(Asker):
    """Asks about a unit where there is no sheet."""

    def __init__(self, unit: Unit) -> None:
        self.unit = unit


def fields_by_name(fields: Iterable[Field]) -> dict[str, Field]:
    """Fields by name. ValueError if a name is used twice."""
    by_name: dict[str, Field] = {}
    for field in fields:
        if field.name in by_name:
            raise ValueError(f"two fields are named {field.name!r}")
        by_name[field.name] = field
    return by_name
