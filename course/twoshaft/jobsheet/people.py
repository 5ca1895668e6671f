"""The people of a workplace and their sign-in words.

A sign-in word keeps two learners on one laptop from working in each other's folder by mistake.
It is no protection against somebody who means to: everybody on the laptop can open every folder.
"""

from __future__ import annotations

import hashlib
import hmac
import json
import secrets
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from twoshaft.errors import SheetError
from twoshaft.jobsheet.contents import load_json
from twoshaft.jobsheet.workplace import PEOPLE, Person
from twoshaft.stored.writing import write_file

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
    path = workplace / PEOPLE
    try:
        entries = load_json(path.read_text(encoding="utf-8-sig"), path.name)
    except FileNotFoundError:
        raise SheetError(
            "this folder has no list of people", mend="ask your instructor to take the roster in"
        ) from None
    except (OSError, UnicodeDecodeError):
        raise SheetError("it cannot be read", where=path.name, mend="ask your instructor") from None
    except SheetError as error:
        raise SheetError(error.what, where=error.where, mend="ask your instructor") from None
    if not isinstance(entries, list):
        raise SheetError("it is not a list of people", where=path.name, mend="ask your instructor")
    people = []
    for entry in entries:
        if not isinstance(entry, dict) or not isinstance(entry.get("id"), str) or not entry["id"]:
            raise SheetError("an entry names nobody", where=path.name, mend="ask your instructor")
        names = (str(entry.get(word) or "") for word in ("family_name", "given_name"))
        people.append(Listed(Person(entry["id"], *names), str(entry.get("word_check") or "")))
    return tuple(
        sorted(people, key=lambda p: (p.person.family_name, p.person.given_name, p.person.id))
    )


def write_people(workplace: Path, people: Iterable[Listed]) -> None:
    """Write the list of people, whole or not at all."""
    path = workplace / PEOPLE
    entries = [
        {
            "id": listed.person.id,
            "family_name": listed.person.family_name,
            "given_name": listed.person.given_name,
            "word_check": listed.word_check,
        }
        for listed in people
    ]
    write_file(path, json.dumps(entries, ensure_ascii=False, indent=1) + "\n")
