"""Keep a cohort: everything of it in one file, also while others work in it.

Marks are taken first and the gradebook last, by the database's own copying: what counts as marked
in the back-up is so in its gradebook too. What a run was at meanwhile is finished by the same
command after restoring, as after a cut.
"""

from __future__ import annotations

import contextlib
import errno
import hashlib
import os
import sqlite3
import stat
import time
import zipfile
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import IO

import twoshaft
from twoshaft import system
from twoshaft.errors import CohortError
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.database import FILE as GRADEBOOK
from twoshaft_grader.cohort.database import Database
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.gradebook_move import copy_gradebook
from twoshaft_grader.cohort.not_done import NotDone
from twoshaft_grader.stored.back_up import (
    BACK_UPS,
    MANIFEST,
    BackUpLine,
    KeptFile,
    KeptFolder,
    Manifest,
)

COHORT, SHARED = "cohort", "shared"
LARGEST = 100_000_000
"""Bytes of a file where learners write; more is no work of theirs."""
MADE_AGAIN = ("kept", "settings")
"""Folders of the cohort that are made anew where they are missing; keys of a server are in one."""
_FIRST = ("marks", "submitted", "collected")
_CHUNK = 2**20
_NO_ROOM = {errno.ENOSPC, errno.EDQUOT, errno.EFBIG}
# What SQLite says where the disk of the copy takes no more (its manual, "Result and Error Codes").
_COPY_IS_FULL = {sqlite3.SQLITE_FULL, sqlite3.SQLITE_IOERR_WRITE}
LONGEST_WAIT_S = 20.0
"""For a gradebook that is in use: our choice."""


@dataclass(frozen=True)
class BackedUp:
    """What was written, and what was left out and why."""

    file: Path
    count: int
    left: tuple[NotDone, ...]


@dataclass
class _Archive:
    zip: zipfile.ZipFile
    files: dict[str, KeptFile] = field(default_factory=dict)
    folders: dict[str, KeptFolder] = field(default_factory=dict)
    left: list[NotDone] = field(default_factory=list)


def back_up(cohort: Cohort, target: Path) -> BackedUp:
    """Write a cohort, with its shared place and every learner's folder, into one file.

    Raises
    ------
    CohortError
        When the file is there already or lies inside the cohort, or the gradebook cannot be read.
    OSError
        When the disk is full or the place is read-only.
    """
    target = target.expanduser().resolve()
    if os.path.lexists(target):
        raise CohortError(f"{target} is there already", mend="give the name of a new file")
    for place in (cohort.root, cohort.shared):
        if place in target.parents:
            raise CohortError(
                f"{target} lies inside what it is to keep", mend="name a place outside the cohort"
            )
    aside = target.with_name(f".{target.name}.part")
    files.remove(aside)
    copy = target.with_name(f".{target.name}.gradebook.part")
    try:
        with _named(target), open(aside, "xb", opener=_privately) as stream:
            with zipfile.ZipFile(stream, "w", zipfile.ZIP_DEFLATED, allowZip64=True) as made:
                archive = _Archive(made)
                _take(archive, cohort)
                keep_gradebook(cohort, copy)
                _add(archive, copy, f"{COHORT}/{GRADEBOOK}")
                manifest = Manifest(
                    cohort=cohort.id,
                    name=cohort.name,
                    made=stamp(now()),
                    course_version=twoshaft.__version__,
                    own_accounts=cohort.own_accounts,
                    files=archive.files,
                    folders=archive.folders,
                    accounts=_names(archive.folders.values()),
                )
                made.writestr(MANIFEST.file, MANIFEST.text(manifest))
            stream.flush()
            os.fsync(stream.fileno())
        # A line of one that is not there says nothing; one that is there must have its line.
        BACK_UPS.append(cohort.log("back-ups"), BackUpLine(at=stamp(now()), file=str(target)))
        system.replace(aside, target)
    finally:
        files.remove(aside)
        files.remove(copy)
    return BackedUp(target, len(archive.files), tuple(archive.left))


@contextlib.contextmanager
def _named(target: Path) -> Iterator[None]:
    """Name the back-up where its disk takes no more: the system names nothing then."""
    try:
        yield
    except OSError as error:
        if error.errno in _NO_ROOM:
            raise OSError(error.errno, error.strerror, str(target)) from None
        raise


def back_ups_of(cohort: Cohort) -> list[Path]:
    """Back-ups of the cohort that still lie where they were put."""
    paths = dict.fromkeys(Path(line.file) for line in BACK_UPS.read(cohort.log("back-ups")))
    return [path for path in paths if path.is_file()]


def _names(folders: Iterable[KeptFolder]) -> dict[str, str]:
    numbers = sorted({folder.account for folder in folders})
    return {str(number): system.account_name(number) for number in numbers}


def _privately(path: str, flags: int) -> int:
    return os.open(path, flags | getattr(os, "O_BINARY", 0), 0o600)


def _take(archive: _Archive, cohort: Cohort) -> None:
    places = [(cohort.root, COHORT)]
    if cohort.shared != cohort.root:
        places.append((cohort.shared, SHARED))
    for root, name in places:
        top = sorted(entry.name for entry in os.scandir(root))
        for one in sorted(top, key=lambda name: (name not in _FIRST, name)):
            ours = root == cohort.root
            if ours and (one in MADE_AGAIN or one.startswith(GRADEBOOK)):
                continue
            learners = not ours or one in ("workplace", "exchange")  # a folder of format 1
            for path, place in _below(archive, root / one, f"{name}/{one}"):
                _try(archive, path, place, learners)


def _below(archive: _Archive, path: Path, place: str) -> Iterator[tuple[Path, str]]:
    """Files at and below a path; folders are noted, links passed over: they are made again."""
    try:
        about = os.lstat(path)
        if stat.S_ISLNK(about.st_mode):
            return
        if not stat.S_ISDIR(about.st_mode):
            yield path, place
            return
        names = sorted(os.listdir(path))
    except FileNotFoundError:
        return  # taken away meanwhile
    except OSError as error:
        archive.left.append(NotDone(place, f"{(error.strerror or 'cannot be read').lower()}."))
        return
    archive.folders[place] = KeptFolder(
        mode=stat.S_IMODE(about.st_mode),
        written=about.st_mtime,
        account=about.st_uid,
        group=about.st_gid,
    )
    for name in names:
        if not name.isprintable() or "\\" in name:
            archive.left.append(NotDone(f"{place}/{ascii(name)[:60]}", "no name for a file."))
        elif not name.endswith((".part", ".lock")):
            yield from _below(archive, path / name, f"{place}/{name}")


def _try(archive: _Archive, path: Path, place: str, learners: bool) -> None:
    try:
        about = os.lstat(path)
        if not stat.S_ISREG(about.st_mode):
            archive.left.append(NotDone(place, "not an ordinary file."))
        elif learners and about.st_size > LARGEST:
            archive.left.append(NotDone(place, f"more than {LARGEST // 1_000_000} MB."))
        else:
            _add(archive, path, place)
    except FileNotFoundError:
        return
    except PermissionError as error:
        archive.left.append(NotDone(place, f"{(error.strerror or 'cannot be read').lower()}."))


def _add(archive: _Archive, path: Path, place: str) -> None:
    flags = getattr(os, "O_NOFOLLOW", 0) | getattr(os, "O_NONBLOCK", 0)
    with open(path, "rb", opener=lambda name, more: os.open(name, more | flags)) as stream:
        about = os.fstat(stream.fileno())
        if not stat.S_ISREG(about.st_mode):
            archive.left.append(NotDone(place, "put in another's place meanwhile."))
            return
        with archive.zip.open(_entry(place), "w", force_zip64=True) as into:
            digest, size = _pour(stream, into, about.st_size)
    archive.files[place] = KeptFile(
        size=size, sha256=digest, mode=stat.S_IMODE(about.st_mode), written=about.st_mtime
    )


def _entry(place: str) -> zipfile.ZipInfo:
    entry = zipfile.ZipInfo(place)
    entry.compress_type = zipfile.ZIP_DEFLATED
    entry.external_attr = 0o600 << 16
    return entry


def _pour(source: IO[bytes], into: IO[bytes], most: int) -> tuple[str, int]:
    """Copy what the file held when it was opened; what is appended meanwhile is left."""
    digest, size = hashlib.sha256(), 0
    while size < most and (chunk := source.read(min(_CHUNK, most - size))):
        digest.update(chunk)
        into.write(chunk)
        size += len(chunk)
    return digest.hexdigest(), size


def keep_gradebook(cohort: Cohort, copy: Path) -> None:
    """Copy a gradebook as it is at one moment, whoever works with it, into a file.

    Raises
    ------
    CohortError
        When another program does not let it go, it is damaged, or its server does not answer.
    OSError
        When the disk of the copy is full.
    """
    files.remove(copy)
    os.close(os.open(copy, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600))
    if cohort.database.on_server:
        there = Database(f"sqlite:///{copy}", str(copy))
        copy_gradebook(cohort.database, there, alone=False)
    else:
        _copy_file(cohort.root / GRADEBOOK, copy)


def _copy_file(book: Path, copy: Path) -> None:
    until = time.monotonic() + LONGEST_WAIT_S

    def not_for_ever(status: int, remaining: int, total: int) -> None:
        if status == sqlite3.SQLITE_BUSY and time.monotonic() > until:
            raise CohortError(
                "another program has the gradebook", where=str(book), mend="let that end first"
            )

    try:
        place = f"{book.as_uri()}?mode=rw"  # what a cut left there is undone first
        with (
            contextlib.closing(sqlite3.connect(place, uri=True)) as of,
            contextlib.closing(sqlite3.connect(copy)) as to,
        ):
            of.backup(to, progress=not_for_ever)
    except sqlite3.DatabaseError as error:
        if getattr(error, "sqlite_errorcode", None) in _COPY_IS_FULL:
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC), str(copy)) from None
        raise CohortError(
            f"the gradebook cannot be read ({error})", where=str(book), mend="correct it first"
        ) from None
