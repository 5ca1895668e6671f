"""The glossary's file, read and checked."""

from __future__ import annotations

import re
from collections import Counter
from functools import lru_cache
from pathlib import Path
from typing import Annotated

from pydantic import Field, ValidationError, field_validator

from twoshaft.units.complaints import findings_of
from twoshaft.units.findings import error_of
from twoshaft.units.sections.order import Id, Section, Text
from twoshaft.units.source import Node, read_nodes

SHIPPED = Path(__file__).with_name("terms.yaml")
_ENDS_INSIDE = re.compile(r"[.?!](?=\s)")


class Term(Section):
    """A term of the trade."""

    term: Text
    says: Text
    """What it means, in one sentence."""
    also: tuple[Text, ...] = ()
    """Other words for the same."""
    forms: tuple[Text, ...] = ()
    """Other forms in which the lessons have it."""
    module: Id
    """Where it is met first."""

    @field_validator("says")
    @classmethod
    def _one_sentence(cls, says: str) -> str:
        if not says.endswith(".") or _ENDS_INSIDE.search(says):
            raise ValueError("is not one sentence; write one, with a full stop at its end")
        return says

    @property
    def words(self) -> tuple[str, ...]:
        """The term, the other words for it, and their forms."""
        return (self.term, *self.also, *self.forms)


class Group(Section):
    """Terms that belong together."""

    id: Id
    name: Text
    terms: Annotated[tuple[Term, ...], Field(min_length=1)]


class _Glossary(Section):
    groups: Annotated[tuple[Group, ...], Field(min_length=1)]

    @field_validator("groups")
    @classmethod
    def _each_once(cls, groups: tuple[Group, ...]) -> tuple[Group, ...]:
        known = Counter(
            word for group in groups for term in group.terms for word in map(slug, term.words)
        )
        known.update(f"group {group.id}" for group in groups)
        if twice := [word for word, times in known.items() if times > 1]:
            raise ValueError(f"{twice[0]} stands there twice; keep one of them")
        return groups


def slug(word: str) -> str:
    """A term as it stands in a link.

    >>> slug("Tapered-head screw")
    'tapered-head-screw'
    """
    return re.sub(r"[^a-z0-9]+", "-", word.lower()).strip("-")


@lru_cache(maxsize=8)
def load_glossary(path: str | Path | None = None) -> tuple[Group, ...]:
    """Load the terms, by group.

    Parameters
    ----------
    path : str or Path, optional
        A file of terms; the shipped one by default.

    Returns
    -------
    tuple of Group

    Raises
    ------
    UnitFileError
        With one sentence (file, line, what, mend) for each thing that is wrong.
    """
    source = SHIPPED if path is None else Path(path)
    root: Node = read_nodes(source, source.name if path is None else str(path))
    try:
        return _Glossary.model_validate(root.plain()).groups
    except ValidationError as trouble:
        raise error_of(findings_of(trouble, root, _Glossary)) from None
