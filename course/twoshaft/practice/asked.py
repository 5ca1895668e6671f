"""The short questions of lessons, read from a text file a module.

A part ``[name]`` is one question: ``ask`` is the question, ``told`` says why the answer is so. One
of ``choice``, ``choices`` and ``order`` (options or steps by key), ``number`` (the unit) or
``kind`` with ``arguments`` says how it is answered, ``right`` what is so, in the form in which an
answer is stored, and ``near`` how far a number may be off, as a share. Where ``right`` is missing,
the lesson works it out on the unit that is on the bench. Questions with ``again`` stand by
themselves, so that they can be asked in later lessons too.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files
from typing import Any

from twoshaft.errors import AnswerError, CourseError
from twoshaft.jobsheet.kinds import Field, kind_named

NEAR = 0.05
_LISTS = {"choice": "options", "choices": "options", "order": "steps"}
_KNOWN = {"ask", "told", "right", "near", "again", "number", "kind", "arguments", *_LISTS}


@dataclass(frozen=True)
class Asked:
    """A question of a lesson, with what is so.

    Parameters
    ----------
    key : str
        ``module/name``.
    field : Field
        How it is answered.
    right : object
        The answer, as it is stored; None where only the lesson can work it out.
    told : str
        Why, in one or two sentences.
    near : float
        How far a number may be off, as a share of it.
    again : bool
        Whether later lessons ask it too.
    """

    key: str
    field: Field
    right: Any
    told: str
    near: float = NEAR
    again: bool = False

    def agrees(self, stored: Any) -> bool:
        """Whether an answer is what is so. AnswerError if it cannot be read."""
        read = self.field.read
        return self.field.agrees(read(stored), read(self.right), self.near)

    def reply(self, stored: Any) -> str:
        """What is said to an answer that can be read, with the answer beside it."""
        said, right = self.field.words(stored), self.field.words(self.right)
        if self.agrees(stored):
            return f"You said: {said}. That is right."
        return f"You said: {said}. It is: {right}."


def questions_of(module: str) -> Mapping[str, Mapping[str, Any]]:
    """The questions of a module as their file has them, by name; none where it has no file."""
    return _read(module)


def standing_alone(module: str) -> tuple[str, ...]:
    """Names of the questions of a module that can be asked without its lesson around them."""
    return tuple(name for name, part in questions_of(module).items() if part.get("again"))


def asked(module: str, name: str, **facts: Any) -> Asked:
    """A question of a module.

    Parameters
    ----------
    module, name : str
        Which.
    **facts : object
        What the lesson worked out on the unit: takes the place of the file's entries.

    Raises
    ------
    CourseError
        When there is no such question, or something of it is missing or unknown.
    """
    known = questions_of(module)
    where = f"{module}.toml, [{name}]"
    if name not in known:
        raise CourseError("there is no such question", where=where)
    part = {**known[name], **facts}
    try:
        return _made(module, name, part)
    except (KeyError, TypeError, ValueError, AnswerError) as error:
        raise CourseError(f"it cannot be asked ({error})", where=where) from error


def _made(module: str, name: str, part: Mapping[str, Any]) -> Asked:
    if strange := set(part) - _KNOWN:
        raise ValueError(f"unknown: {', '.join(sorted(strange))}")
    kind, arguments = _kind(part)
    field = kind_named(kind)(name, part["ask"], **arguments)
    right = part.get("right")
    if right is not None:
        right = field.store(right)
    again = bool(part.get("again")) and right is not None
    return Asked(f"{module}/{name}", field, right, part["told"], part.get("near", NEAR), again)


def _kind(part: Mapping[str, Any]) -> tuple[str, dict[str, Any]]:
    for kind, argument in _LISTS.items():
        if kind in part:
            return kind, {argument: tuple(part[kind].items())}
    if "number" in part:
        return "number", {"unit": part["number"]}
    return part["kind"], dict(part.get("arguments", {}))


@lru_cache(maxsize=16)
def _read(module: str) -> Mapping[str, Mapping[str, Any]]:
    path = files(__package__).joinpath("texts", f"{module}.toml")
    if not path.is_file():
        return {}
    try:
        return tomllib.loads(path.read_text("utf-8"))
    except tomllib.TOMLDecodeError as error:
        raise CourseError(
            f"it cannot be read ({error})",
            where=f"{module}.toml",
            mend="look at quotes and brackets there",
        ) from error
