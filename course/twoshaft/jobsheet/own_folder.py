"""A learner's own folder of the workplace, and whose account it belongs to.

With one account for all, the folder is there from the beginning. Where each learner works in an
account of their own, ``workplace/<learner>`` leads to a place at which the learner's account makes
the folder, on first signing in: it is then closed to all others but the instructor's account.
"""

from __future__ import annotations

import hashlib
import os
import stat
from pathlib import Path

from twoshaft import system
from twoshaft.errors import SheetError
from twoshaft.stored.person import PERSON, Person
from twoshaft.stored.writing import NOT_FOR_OTHERS, write_file

PROOF = ".signed-in"
_ROUNDS = 20_000


def is_apart(own: Path) -> bool:
    """Whether a learner's folder belongs to an account of the learner's own."""
    return own.is_symlink()


def proof_of(word: str, learner: str, account: int) -> str:
    """What shows that somebody who knew a learner's word signed in from an account."""
    plain = "".join(sign for sign in word.casefold() if sign.isalnum())
    salt = f"{learner}:{account}"
    return hashlib.pbkdf2_hmac("sha256", plain.encode(), salt.encode(), _ROUNDS).hex()


def enter(own: Path, person: Person, word: str = "") -> None:
    """See that a learner's folder is there, and this account's where each has one. With the word
    that was typed, staff can tell that it is the learner's account.

    Raises
    ------
    SheetError
        When it is not there, cannot be made, or belongs to another account.
    """
    if not is_apart(own):
        if not own.is_dir():
            raise SheetError(f"there is no folder for {person.name}", mend="ask your instructor")
        return
    place = Path(os.path.realpath(own))
    try:
        make_for_staff_too(place)
        about = os.lstat(place)
    except OSError as error:
        reason = (error.strerror or "no reason given").lower()
        raise SheetError(
            f"the folder of {person.name} cannot be made ({reason})", mend="ask your instructor"
        ) from None
    if not stat.S_ISDIR(about.st_mode) or about.st_uid != system.account():
        raise SheetError(
            f"the folder of {person.name} belongs to another account of this machine",
            mend="work in the account in which you began, or ask your instructor",
        )
    if word:
        write_file(place / PROOF, proof_of(word, person.id, about.st_uid))
    if not (place / PERSON.file).exists():
        PERSON.write(place / PERSON.file, person)


def make_for_staff_too(folder: Path) -> None:
    """Make a folder that its owner and its group may use, if it is not there; its group is that of
    the folder around it.
    """
    before = os.umask(NOT_FOR_OTHERS)  # a later chmod would let folders below have another group
    try:
        folder.mkdir(exist_ok=True)
    except FileExistsError:
        pass  # something else has the name
    finally:
        os.umask(before)
