"""The questions of a module, read from its text file."""

from __future__ import annotations

import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files

from twoshaft.errors import CourseError
from twoshaft.records import Option, Question


@dataclass(frozen=True)
class Bank:
    """The questions of one module.

    Attributes
    ----------
    lists : mapping of str to tuple of Option
        Options that stand alone, by name.
    questions : mapping of str to mapping of str to Question
        By name and id of the version, in the order of the file.
    """

    lists: Mapping[str, tuple[Option, ...]]
    questions: Mapping[str, Mapping[str, Question]]

    def every_option(self) -> Iterator[tuple[str, Option]]:
        """Each option of the bank, with the name of the part that it stands in."""
        for name, options in self.lists.items():
            yield from ((name, option) for option in options)
        for name, versions in self.questions.items():
            for version in versions.values():
                yield from ((f"{name}.{version.id}", option) for option in version.options)


@lru_cache(maxsize=16)
def bank_of(module: str) -> Bank:
    """The bank of a module; read once. CourseError where its file cannot be used."""
    return read_bank(files(__package__).joinpath(f"{module}.toml").read_text("utf-8"), module)


def read_bank(text: str, module: str) -> Bank:
    """A bank out of the text of its file.

    Raises
    ------
    CourseError
        When the text is no TOML, or a part is neither a list nor a question.
    """
    where = f"{module}.toml"
    try:
        parts = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise CourseError(
            f"it cannot be read ({error})", where=where, mend="look at quotes and brackets there"
        ) from error
    lists, questions = {}, {}
    for name, part in parts.items():
        if isinstance(part, dict) and part and all(isinstance(t, str) for t in part.values()):
            lists[name] = _options(part)
        else:
            questions[name] = _versions(part, f"{where}, [{name}]")
    return Bank(lists, questions)


def _options(part: dict[str, str]) -> tuple[Option, ...]:
    return tuple(Option(id, text) for id, text in part.items())


def _well_formed(one: object) -> bool:
    if not isinstance(one, dict) or set(one) != {"story", "options"}:
        return False
    options = one["options"]
    if not isinstance(options, dict) or not options:
        return False
    return all(isinstance(text, str) and text for text in (one["story"], *options.values()))


def _versions(part: object, where: str) -> dict[str, Question]:
    versions = {}
    for id, one in part.items() if isinstance(part, dict) else ():
        if not _well_formed(one):
            raise CourseError(
                f"“{id}” is not a story with options that have a text each", where=where
            )
        versions[id] = Question(id, one["story"], _options(one["options"]))
    if not versions:
        raise CourseError("it holds nothing", where=where)
    return versions
