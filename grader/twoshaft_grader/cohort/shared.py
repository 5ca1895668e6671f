"""The shared place: what learners may reach, apart from the cohort folder, which is closed.

::

    workplace/      start page, lessons, and a folder for each learner
    exchange/       where work is handed out and in
    work/           only where each learner has an account: their folders, made by their accounts
    open-course     only there: the one command with which they open the course
    shared.json     whose shared place this is

With one account for all, the place is closed to every other account, and learners' folders lie in
``workplace``. Where each learner has an account, the place is open to be read; a learner's folder
belongs to the learner's account and is open to it and to the instructor's, through the group of
``work``, which has the instructor alone in it. ``workplace/<learner>`` leads there.
"""

from __future__ import annotations

import compileall
import hashlib
import os
import shlex
import stat
import sys
from pathlib import Path

import psutil

import twoshaft
from twoshaft import system
from twoshaft.errors import CohortError
from twoshaft.stored.writing import FOR_ALL_FOLDER
from twoshaft_grader.cohort import files
from twoshaft_grader.stored.cohort import HERE
from twoshaft_grader.stored.shared import SHARED, Shared

CLOSED = 0o700
OPENER = "open-course"
WORK = "work"
# Nobody can list it; whoever makes a folder in it owns that, and nobody else can take it away.
_WORK_MODE = stat.S_ISGID | stat.S_ISVTX | 0o773
_EXCHANGE_MODE = stat.S_ISVTX | 0o777  # nbgrader wants to be able to write there
# As nbgrader makes them; made at once, since whoever makes a folder owns it.
_COURSE_MODES = {
    ".": FOR_ALL_FOLDER, "outbound": FOR_ALL_FOLDER, "feedback": 0o711,
    "inbound": stat.S_ISGID | 0o733,
}  # fmt: skip
_KEYS = ("solutions", "tests", ".git")
"""Folders of the course's source that hold answers."""

_OPENER = """\
#!/bin/sh
# Opens the course; each learner runs it from an account of their own.
exec {python} -P -m twoshaft.jupyter "$(dirname "$0")" "$@"
"""


def make_shared(
    place: Path, *, cohort: str, salt: str, own_accounts: bool, owner: int | None = None
) -> None:
    """Make a cohort's shared place.

    Parameters
    ----------
    own_accounts : bool
        Whether each learner works in an account of their own.
    owner : int, optional
        Whose it is to be: the instructor's account, where that is not this one.

    Raises
    ------
    CohortError
        When the place is in use or, with accounts of their own, they could not get to it.
    """
    if place.exists() and (not place.is_dir() or any(place.iterdir())):
        raise CohortError(f"{place} is not empty", mend="name a new folder for the shared place")
    group = _check_accounts(place, owner) if own_accounts else -1
    place.mkdir(parents=True, exist_ok=True)
    system.make_closed(place, FOR_ALL_FOLDER if own_accounts else CLOSED)
    _folders(place, cohort)
    if own_accounts:
        _folder(place / WORK, CLOSED)
        os.chown(place / WORK, -1, group)
        (place / WORK).chmod(_WORK_MODE)
    SHARED.write(place / SHARED.file, Shared(cohort=cohort, mark=_mark(cohort, salt)))


def move_apart(root: Path, place: Path, *, cohort: str, salt: str) -> None:
    """Move what learners reach out of a cohort folder of the first format; a move that was cut
    short is finished by the next.

    Raises
    ------
    CohortError
        When the place is in use.
    """
    for name in ("workplace", "exchange"):
        old, new = root / name, place / name
        if old.exists() and new.exists():
            raise CohortError(f"{new} is there already", mend="move it out of the way")
    place.mkdir(exist_ok=True)
    system.make_closed(place, CLOSED)
    for name in ("workplace", "exchange"):
        if (root / name).exists():
            system.rename(root / name, place / name)
    _folders(place, cohort)
    SHARED.write(place / SHARED.file, Shared(cohort=cohort, mark=_mark(cohort, salt)))


def find_shared(root: Path, written: str, *, cohort: str, salt: str) -> Path:
    """The shared place of a cohort folder: beside it under the name that it had, or where it was.

    Raises
    ------
    CohortError
        When it is at neither place.
    """
    if written == HERE:
        return root
    wanted = Shared(cohort=cohort, mark=_mark(cohort, salt))
    was = root / written
    for place in (root.parent / was.name, was):
        if SHARED.read_if_any(place / SHARED.file) == wanted:
            return place
    raise CohortError(
        f"the shared place of this cohort is neither {root.parent / was.name} nor {was}",
        where=str(root / "cohort.yaml"),
        mend="move it beside the cohort folder, or write as shared where it is",
    )


def write_opener(place: Path) -> None:
    """Write the command with which learners open the course, with this very program.

    Their accounts cannot keep the library compiled, so that is done here, for all to read.
    """
    library = Path(twoshaft.__file__).parent
    if library.stat().st_uid == system.account():  # else it is as whoever owns it has it
        compileall.compile_dir(library, quiet=2)
        for folder in library.rglob("__pycache__"):
            folder.chmod(FOR_ALL_FOLDER)
    text = _OPENER.format(python=shlex.quote(sys.executable))
    files.write_whole(place / OPENER, text, mode=FOR_ALL_FOLDER)


def close_keys(content: Path) -> list[str]:
    """Close the folders that hold answers, of a source that other accounts can read.

    Returns
    -------
    list of str
        Names of those that were closed now.

    Raises
    ------
    CohortError
        When they belong to another account.
    """
    closed = []
    for name in _KEYS:
        folder = content / name
        if folder.is_dir() and stat.S_IMODE(folder.stat().st_mode) & 0o077:
            try:
                folder.chmod(CLOSED)
            except PermissionError:
                raise CohortError(
                    f"learners' accounts can read the answers in {folder}, and it is not yours",
                    mend="give the course's folder to the instructor's account",
                ) from None
            closed.append(name)
    return closed


def _folders(place: Path, cohort: str) -> None:
    _folder(place / "workplace", FOR_ALL_FOLDER)
    _folder(place / "exchange", _EXCHANGE_MODE)
    for name, mode in _COURSE_MODES.items():
        _folder(place / "exchange" / cohort / name, mode)


def _folder(path: Path, mode: int) -> None:
    path.mkdir(parents=True, exist_ok=True)
    system.make_closed(path, mode)


def _mark(cohort: str, salt: str) -> str:
    return hashlib.sha256(f"{cohort}\n{salt}".encode()).hexdigest()[:16]


def _check_accounts(place: Path, owner: int | None) -> int:
    """See that other accounts can get to the place and the program; a group with nobody else."""
    if not system.has_rights():
        raise CohortError(
            "accounts of their own need the rights of Linux or macOS",
            mend="name no shared place, and let all work in one account",
        )
    if not place.parent.is_dir():
        raise CohortError(
            f"there is no folder {place.parent}", mend="make it first, so that all can go there"
        )
    python = Path(sys.executable)
    for wanted in (place, python, python.resolve(), Path(twoshaft.__file__), Path(psutil.__file__)):
        closed = [one for one in wanted.parents if not _is(one, stat.S_IXOTH)]
        if wanted.is_file() and not _is(wanted, stat.S_IROTH):
            closed.append(wanted)
        if closed:
            raise CohortError(
                f"other accounts cannot get to {wanted}, since {closed[-1]} is closed to them",
                mend="put the course and the shared place where all can go, as below /srv",
            )
    return _own_group(owner)


def _is(path: Path, right: int) -> bool:
    return bool(path.stat().st_mode & right)


def _own_group(owner: int | None) -> int:
    """A group of an account, or of this one, in which nobody else is."""
    import grp
    import pwd

    me = pwd.getpwuid(system.account() if owner is None else owner).pw_name
    first = {person.pw_name: person.pw_gid for person in pwd.getpwall()}
    mine = (os.getegid(), *os.getgroups()) if owner is None else os.getgrouplist(me, first[me])
    for group in dict.fromkeys(mine):
        others = {name for name, its in first.items() if its == group}
        if others | set(grp.getgrgid(group).gr_mem) <= {me}:
            return group
    raise CohortError(
        f"the account {me} is in no group that it has for itself, by which alone it could read "
        "learners' folders",
        mend="ask who looks after this machine for such a group",
    )
