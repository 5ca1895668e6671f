"""``people.json``: who can sign in to a workplace."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft.stored.definition import LearnersFile, Words
from twoshaft.stored.person import Person


@dataclass(frozen=True)
class Entry(Person):
    """One person with the check of their sign-in word."""

    word_check: Words = ""


PEOPLE: LearnersFile[tuple[Entry, ...]] = LearnersFile(
    file="people.json",
    record=tuple[Entry, ...],
    numbered=False,
    indent=1,
    fault=lambda found: (
        "an entry names nobody" if found[0]["loc"] else "it is not a list of people"
    ),
)
