"""``learner.json``: whose folder this is."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from pydantic import Field

from twoshaft.stored.definition import LearnersFile, Words


@dataclass(frozen=True)
class Person:
    """A learner."""

    id: Annotated[str, Field(min_length=1)]
    family_name: Words = ""
    given_name: Words = ""

    @property
    def name(self) -> str:
        """Given and family name, or the id where no name is known."""
        return f"{self.given_name} {self.family_name}".strip() or self.id


PERSON: LearnersFile[Person] = LearnersFile(
    file="learner.json",
    record=Person,
    numbered=False,
    fault=lambda found: "it names nobody" if found[0]["loc"] else "it holds no table of names",
)
