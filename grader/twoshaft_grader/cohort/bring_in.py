"""Take hand-ins from a folder, a zip, a memory stick or the learners' folders of a hub: into the
exchange, from where they are collected as any other.

What is looked for is a job sheet; whose it is and of what, it says itself, and nothing in it or
beside it is trusted further than a hand-in through the exchange. The time of handing in is that of
taking in: what a stick says of times, anybody can have written.
"""

from __future__ import annotations

import errno
import os
import secrets
import stat
import tempfile
import zipfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from twoshaft import system
from twoshaft.errors import CohortError
from twoshaft.stored.job_sheet import FILE as SHEET
from twoshaft.stored.job_sheet import read_sheet
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.arrival import arrivals
from twoshaft_grader.cohort.assign import Assigned, assignments_of
from twoshaft_grader.cohort.clock import now
from twoshaft_grader.cohort.copy_in import copy_in
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.not_done import NotDone, going_on
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.zips import opened_zip
from twoshaft_grader.stored.handed_in import TIMESTAMP

LARGEST, MOST, DEEPEST, LONGEST = 1_000_000_000, 50_000, 12, 240
"""Bytes and names that are looked at, folders within folders, letters of a name in a zip: our
choice, no source."""
_CHUNK = 1 << 20
_OF_THE_SYSTEM = {"lost+found", "System Volume Information"}
"""Folders that a system closes on a stick; no hand-in is in them."""


@dataclass(frozen=True)
class BroughtIn:
    """What was found.

    Attributes
    ----------
    taken, known : tuple of (str, str)
        Learner and assignment: of hand-ins that wait in the exchange now, and of those that were
        there before, answer for answer.
    left : tuple of NotDone
        Places where something was found that could not be taken, and why.
    """

    taken: tuple[tuple[str, str], ...]
    known: tuple[tuple[str, str], ...]
    left: tuple[NotDone, ...]


def bring_in(cohort: Cohort, place: Path, learners: list[Learner], *, by: str = "") -> BroughtIn:
    """Take every hand-in that a folder or zip holds; what cannot be taken holds up nothing else.

    Raises
    ------
    CohortError
        When the place is not there, is no zip, or holds no hand-in at all.
    """
    place = place.expanduser()
    with act(cohort.root, "take in from a folder", str(place), by=by) as told, _opened(place) as at:
        found = _Found(cohort, learners)
        for folder in _sheets_below(at, found.left):
            shown = folder.relative_to(at).as_posix()
            with going_on(shown if shown != "." else place.name, found.left):
                found.take(folder)
        if not (found.taken or found.known or found.left):
            raise CohortError(
                "no hand-in is in it", where=str(place),
                mend=f"name a folder or zip that holds a learner's {SHEET}",
            )  # fmt: skip
        told.after = ", ".join(f"{learner} {name}" for learner, name in found.taken)
    return BroughtIn(tuple(found.taken), tuple(found.known), tuple(found.left))


class _Found:
    """What has been found so far."""

    def __init__(self, cohort: Cohort, learners: list[Learner]) -> None:
        self.cohort = cohort
        self.ids = {one.id for one in learners}
        self.out = {(one.module, one.attempt): one for one in assignments_of(cohort)}
        self.taken: list[tuple[str, str]] = []
        self.known: list[tuple[str, str]] = []
        self.left: list[NotDone] = []

    def take(self, folder: Path) -> None:
        """Take one hand-in.

        Raises
        ------
        CourseError
            When its sheet cannot be read, or it is of nobody here.
        """
        sheet = read_sheet(folder / SHEET)
        if sheet.learner not in self.ids:
            raise CohortError(f'nobody on the roster has the id "{sheet.learner[:60]}"')
        assigned = self.out.get((sheet.module, sheet.attempt))
        if assigned is None or not assigned.is_for(sheet.learner):
            raise CohortError(
                f"{sheet.module[:60]}-{sheet.attempt} is not handed out to {sheet.learner}"
            )
        mine = (sheet.learner, assigned.name)
        if self._there_already(folder, *mine):
            self.known.append(mine)
            return
        self._put(folder, sheet.learner, assigned)
        self.taken.append(mine)

    def _there_already(self, folder: Path, learner: str, name: str) -> bool:
        answers = (folder / SHEET).read_bytes()
        waiting = [self.cohort.inbound / one.name for one in arrivals(self.cohort, name)
                   if one.learner == learner]  # fmt: skip
        collected = self.cohort.collected(learner, name)
        kept = [path for path in collected.glob("*") if path.is_dir()]
        return any(
            (path / SHEET).is_file() and (path / SHEET).read_bytes() == answers
            for path in (*waiting, *kept)
        )

    def _put(self, folder: Path, learner: str, assigned: Assigned) -> None:
        form = "%Y-%m-%d %Hh%Mm%S.%fs UTC" if system.WINDOWS else "%Y-%m-%d %H:%M:%S.%f UTC"
        when = now().strftime(form)  # a name of a folder, which takes no colon there
        target = self.cohort.inbound / f"{learner}+{assigned.name}+{when}+{secrets.token_hex(4)}"
        aside = target.with_name(f".{learner}.{secrets.token_hex(4)}.part")
        try:
            copy_in(folder, aside, without=frozenset((TIMESTAMP,)))
            if not any(aside.glob("*.ipynb")):  # a stick may hold the answers alone
                released = self.cohort.outbound(assigned.name) / assigned.notebook
                files.write_whole(aside / assigned.notebook, released.read_bytes(), sync=False)
            files.write_whole(aside / TIMESTAMP, when)
            files.move_into_place(aside, target)
        finally:
            files.remove(aside)


def _sheets_below(root: Path, left: list[NotDone]) -> Iterator[Path]:
    """Folders with a job sheet, without following a link; those that are closed to us are told."""
    waiting, seen = [(root, 0)], 0
    while waiting:
        folder, deep = waiting.pop()
        try:
            with os.scandir(folder) as entries:
                inside = sorted(entries, key=lambda one: one.name)
        except OSError as error:
            if folder.name not in _OF_THE_SYSTEM:
                shown = folder.relative_to(root).as_posix()
                where = shown if shown != "." else root.name
                left.append(NotDone(where, f"{(error.strerror or 'cannot be read').lower()}."))
            continue
        seen += len(inside)
        if seen > MOST or deep > DEEPEST:
            raise CohortError(
                f"there are more than {MOST} files and folders", where=str(root),
                mend="name the folder that holds the hand-ins",
            )  # fmt: skip
        if any(one.name == SHEET and one.is_file(follow_symlinks=False) for one in inside):
            yield folder
            continue
        waiting += [
            (Path(one.path), deep + 1)
            for one in reversed(inside)
            if one.is_dir(follow_symlinks=False) and not one.name.startswith(".")
        ]


# A file and a folder of one name, and a name that is too long for the disk.
_NO_PLACE = {errno.EEXIST, errno.ENOTDIR, errno.EISDIR, errno.ENAMETOOLONG}


@contextmanager
def _opened(place: Path) -> Iterator[Path]:
    """The folder; a zip unpacked aside for as long as it is looked at."""
    if place.is_dir():
        yield place
        return
    if not place.is_file():
        raise CohortError("it is not there", where=str(place), mend="check its name")
    with tempfile.TemporaryDirectory(prefix="twoshaft-zip-") as aside:
        try:
            with opened_zip(place) as zipped:
                _unpack(zipped, Path(aside), str(place))
        except zipfile.BadZipFile as error:
            raise CohortError(
                f"it cannot be read as a zip ({str(error)[:80]})", where=str(place),
                mend="pack it anew, without a password",
            ) from None  # fmt: skip
        yield Path(aside)


def _unpack(zipped: zipfile.ZipFile, target: Path, where: str) -> None:
    """Unpack plain files with plain names, never more than the zip says of each."""
    entries = [one for one in zipped.infolist() if not one.is_dir()]
    size = sum(one.file_size for one in entries)
    if len(entries) > MOST:
        raise CohortError(f"it holds {len(entries)} files", where=where, mend="pack the hand-ins")
    if size > LARGEST:
        raise CohortError(
            f"it would hold {size / 1e9:.0f} GB unpacked", where=where, mend="pack the hand-ins"
        )
    for one in entries:
        name = one.filename
        parts = name.split("/")
        kind = stat.S_IFMT(one.external_attr >> 16)
        odd = any(part in ("", ".", "..") for part in parts) or "\\" in name or ":" in name
        if odd or not name.isprintable() or len(name) > LONGEST or len(parts) > DEEPEST:
            raise CohortError(
                f"{ascii(name)[:60]} is no name of a plain file below it", where=where,
                mend="take it out, and ask whose zip this is",
            )  # fmt: skip
        if kind not in (0, stat.S_IFREG):
            raise CohortError(
                f"{name[:60]} is a link, not a file", where=where, mend="pack the files themselves"
            )
        if parts[-1] != SHEET and not name.endswith((".ipynb", ".txt", ".json")):
            continue  # nothing that a hand-in needs
        data, left = bytearray(), one.file_size
        with zipped.open(one) as stream:
            while chunk := stream.read(min(_CHUNK, left + 1)):
                left -= len(chunk)
                if left < 0:
                    raise zipfile.BadZipFile(f"{name[:60]} holds more than it says")
                data += chunk
        try:
            files.write_whole(target / name, bytes(data), sync=False)
        except OSError as error:
            if error.errno not in _NO_PLACE:
                raise
            raise zipfile.BadZipFile(
                f"no file can be called {name[:30]} beside the others"
            ) from None
