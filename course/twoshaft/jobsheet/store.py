"""Keep a job sheet in its file: whole or not at all, field by field, by several windows at once."""

from __future__ import annotations

import contextlib
import os
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from twoshaft import system
from twoshaft.errors import SheetError
from twoshaft.jobsheet.locking import locked
from twoshaft.stored.job_sheet import (
    HISTORY,
    Answer,
    SheetData,
    check_value,
    read_sheet,
    sheet_text,
)
from twoshaft.stored.writing import write_file


@dataclass(frozen=True)
class Saved:
    """What became of an answer that was saved.

    Parameters
    ----------
    revision : int
        The field's new revision.
    saved : str
        When, ISO 8601 in UTC.
    replaced : object
        Another window's answer that this one replaced; None if there was none.
    notice : str
        One sentence if something else happened that the learner should know, else empty.
    """

    revision: int
    saved: str
    replaced: Any = None
    notice: str = ""


class Store:
    """A job sheet's file.

    Parameters
    ----------
    path : path or None
        The file, usually ``jobsheet.json`` beside the notebook. None keeps the answers only as
        long as the notebook runs.
    fresh : SheetData
        Whose sheet it is; written into a new file and into every later one.
    read_only : bool
        Read, never write, never rename.

    Notes
    -----
    Every save reads the file again under a lock, changes the one field and replaces the file, so
    two windows, two kernels or a restart lose nothing. A file that cannot be read is set aside
    under a name with the time, and the sheet starts again from what this window knows.
    """

    def __init__(self, path: Path | None, fresh: SheetData, *, read_only: bool = False) -> None:
        self.path, self.read_only = Path(path) if path else None, read_only
        self.notice = ""
        self._fresh = replace(fresh, answers={}, bench={})
        self._known: SheetData = self._fresh
        self._stamp: tuple[int, int, int] | None = None
        if read_only:
            self.refresh()
        else:
            try:
                with self._locked():
                    self._read_or_set_aside()
            except SheetError as error:
                self.notice = error.sentence

    @property
    def data(self) -> SheetData:
        """The sheet as last read or saved."""
        return self._known

    def describe(self, **facts: Any) -> None:
        """Facts about the sheet to be written with the next save, as ``given_digest``."""
        self._fresh = replace(self._fresh, **facts)

    def refresh(self) -> tuple[str, ...]:
        """Look at the file again.

        Returns
        -------
        tuple of str
            Names of the fields that another window has changed since; ``bench`` stands for any
            figure from the bench.
        """
        stamp = _stamp(self.path)
        if self.path is None or stamp is None or stamp == self._stamp:
            return ()
        try:
            found = read_sheet(self.path)
        except SheetError as error:
            # Set aside only while saving, under the lock; a reader changes nothing.
            self.notice = error.sentence
            return ()
        before, self._known, self._stamp = self._known, found, stamp
        names = list(_newer(found.answers, before.answers))
        return tuple([*names, "bench"] if any(_newer(found.bench, before.bench)) else names)

    def save(self, name: str, value: Any, *, base: int | None = None, bench: bool = False) -> Saved:
        """Save one field.

        Parameters
        ----------
        name : str
            The field.
        value : str, number, list of str or None
            As stored.
        base : int, optional
            The revision that this answer was made from. If the file has a later one with another
            value, that value is reported as replaced (and kept in the history).
        bench : bool
            Whether it is a figure from the bench, which is kept apart from the answers.

        Raises
        ------
        SheetError
            If nothing can be saved here. The answer is then still known to this window.
        """
        value = check_value(value, f"field {name}")
        if self.read_only:
            raise SheetError("this job sheet is open for reading only")
        with self._locked():
            notice = self._read_or_set_aside()
            part = "bench" if bench else "answers"
            known = getattr(self._known, part)
            old = known.get(name, Answer())
            base = old.revision if base is None else base
            if old.value == value and old.revision:
                return Saved(old.revision, old.saved, notice=notice)
            replaced = old.value if old.revision != base else None
            past = (*old.history, (old.value, old.saved))[-HISTORY:] if old.revision else ()
            new = Answer(value, old.revision + 1, _now(), past)
            both = {"answers": self._known.answers, "bench": self._known.bench}
            data = replace(
                self._fresh,
                given_digest=self._fresh.given_digest or self._known.given_digest,
                **both | {part: {**known, name: new}},
            )
            self._known = data
            self._write(data)
        return Saved(new.revision, new.saved, replaced, notice)

    def _read_or_set_aside(self) -> str:
        """Read the file; a damaged one is renamed. Returns the sentence that says so."""
        stamp, path = _stamp(self.path), self.path
        if path is None or stamp is None or stamp == self._stamp:
            return ""
        try:
            found = read_sheet(path)
        except SheetError as error:
            return self._set_aside(path, error)
        if found.learner and self._fresh.learner and found.learner != self._fresh.learner:
            raise SheetError(
                f"this job sheet belongs to {found.learner}, and {self._fresh.learner} works here",
                where=path.name,
                mend="open your own from start-here; nothing has been changed",
            )
        self._known, self._stamp, self.notice = found, stamp, ""
        return ""

    def _set_aside(self, path: Path, error: SheetError) -> str:
        when = datetime.now().strftime("%Y-%m-%dT%H%M%S")
        aside = path.with_name(f"{path.stem}.damaged-{when}{path.suffix}")
        number = 1
        while aside.exists():
            number += 1
            aside = aside.with_name(f"{path.stem}.damaged-{when}-{number}{path.suffix}")
        try:
            system.rename(path, aside)
        except OSError:
            raise error from None
        self._stamp = None
        kept = len(self._known.answers)
        then = (
            f"goes on with the {kept} answer{'s' if kept > 1 else ''} known here"
            if kept
            else "starts empty"
        )
        self.notice = (
            f"The saved job sheet could not be read ({error.what}); "
            f"it was set aside as {aside.name}, and this sheet {then}."
        )
        return self.notice

    def _write(self, data: SheetData) -> None:
        if self.path is None:
            return
        try:
            write_file(self.path, sheet_text(data), mode=None)
        except OSError as error:
            raise SheetError(
                f"nothing could be saved ({(error.strerror or 'no reason given').lower()})",
                where=self.path.name,
                mend="make room or ask for write access; this window still holds your answers",
            ) from None
        self._stamp = _stamp(self.path)

    def _locked(self) -> contextlib.AbstractContextManager[None]:
        return contextlib.nullcontext() if self.path is None else locked(self.path, "job sheet")


def _newer(found: dict[str, Answer], before: dict[str, Answer]) -> Iterator[str]:
    """Names of what has another revision than before."""
    for name, answer in found.items():
        if answer.revision != before.get(name, Answer()).revision:
            yield name


def _stamp(path: Path | None) -> tuple[int, int, int] | None:
    if path is None:
        return None
    try:
        status = os.stat(path)
    except OSError:
        return None
    return status.st_mtime_ns, status.st_size, status.st_ino


def _now() -> str:
    return datetime.now(UTC).strftime("%Y-%m-%dT%H:%M:%SZ")
