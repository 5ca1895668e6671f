"""The people of a workplace and their sign-in words.

A sign-in word keeps two learners on one laptop from working in each other's folder by mistake.
It is no protection against somebody who means to: whoever works in the same account of the laptop
can open every folder.
"""

from __future__ import annotations

import hashlib
import hmac
import secrets
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from twoshaft.errors import SheetError
from twoshaft.stored.people import PEOPLE, Entry
from twoshaft.stored.person import Person
from twoshaft.stored.writing import FOR_ALL

_ROUNDS = 20_000


@dataclass(frozen=True)
class Listed:
    """A person on the list, with the check of their word."""

    person: Person
    word_check: str = ""


def word_check(word: str) -> str:
    """What is kept of a sign-in word: a salted PBKDF2 hash.

    >>> check = word_check("copper-heron")
    >>> word_fits(" Copper heron ", check), word_fits("copper-hero", check)
    (True, False)
    """
    salt = secrets.token_hex(8)
    return f"pbkdf2${_ROUNDS}${salt}${_hash(word, salt, _ROUNDS)}"


def word_fits(word: str, check: str) -> bool:
    """Whether a typed word is the one a check was made from; case and joints do not count."""
    parts = check.split("$")
    if len(parts) != 4 or parts[0] != "pbkdf2" or not parts[1].isdecimal() or len(word) > 80:
        return False
    rounds = int(parts[1])
    if not 1 <= rounds <= 10**6:
        return False
    return hmac.compare_digest(_hash(word, parts[2], rounds), parts[3])


def _hash(word: str, salt: str, rounds: int) -> str:
    plain = "".join(c for c in word.casefold() if c.isalnum())
    return hashlib.pbkdf2_hmac("sha256", plain.encode(), salt.encode(), rounds).hex()


def read_people(workplace: Path) -> tuple[Listed, ...]:
    """The people of a workplace, by family name.

    Raises
    ------
    SheetError
        If there is no list, or it cannot be used.
    """
    entries = PEOPLE.read(workplace / PEOPLE.file)
    if entries is None:
        raise SheetError(
            "this folder has no list of people", mend="ask your instructor to take the roster in"
        )
    people = (
        Listed(Person(one.id, one.family_name, one.given_name), one.word_check) for one in entries
    )
    return tuple(
        sorted(people, key=lambda p: (p.person.family_name, p.person.given_name, p.person.id))
    )


def write_people(workplace: Path, people: Iterable[Listed]) -> None:
    """Write the list of people, whole or not at all."""
    entries = tuple(
        Entry(one.person.id, one.person.family_name, one.person.given_name, one.word_check)
        for one in people
    )
    PEOPLE.write(workplace / PEOPLE.file, entries, mode=FOR_ALL)
