"""Whose practice it is, and keeping it.

On a machine of one's own the practice lies beside the lessons' folder. In a workplace it lies in
the learner's own folder: who works there is known from the college's server, from the account, or,
where all share one, from what the browser's window kept on signing in. Until somebody is known it
lasts as long as the notebook runs.
"""

from __future__ import annotations

import contextlib
import hashlib
import os
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from twoshaft import system
from twoshaft.errors import CourseError
from twoshaft.jobsheet.locking import locked
from twoshaft.jobsheet.own_folder import is_apart
from twoshaft.jobsheet.people import read_people
from twoshaft.jobsheet.signin import SignIn
from twoshaft.jobsheet.workplace import find_place
from twoshaft.stored.practice import KEPT_TRIES, PRACTICE, Practice, Try
from twoshaft.stored.workplace import WORKPLACE


class Keep:
    """A learner's practice.

    Parameters
    ----------
    folder : path, optional
        The lesson's folder; the working folder if not given.
    """

    def __init__(self, folder: str | Path | None = None) -> None:
        place = find_place(folder)
        self._listeners: list[Callable[[], None]] = []
        self._sign_in: SignIn | None = None
        self._path: Path | None = None
        self._practice = Practice()
        self.notice = ""
        self._settled = False
        root = place.folder.absolute().parent
        if place.shared:
            self._sign_in = SignIn(root)
            with contextlib.suppress(CourseError):
                self._find_account()
            self._settled = bool(self.whose)
            self._enter()
        else:
            kept = root if (root / WORKPLACE.file).exists() else place.folder
            self._use(kept / PRACTICE.file)

    @property
    def place(self) -> str:
        """What the browser keeps a sign-in of this workplace under; empty where nobody signs in."""
        if self._sign_in is None:
            return ""
        return hashlib.sha256(str(self._sign_in.workplace.resolve()).encode()).hexdigest()[:16]

    @property
    def whose(self) -> str:
        """The learner's id; empty where it is nobody's in particular."""
        me = self._sign_in.me if self._sign_in else None
        return me.id if me else ""

    @property
    def kept(self) -> bool:
        """Whether it is still there when the notebook has been closed."""
        return self._path is not None

    def tries(self, key: str) -> tuple[Try, ...]:
        """What was said to a question, oldest first."""
        return self._practice.tries.get(key, ())

    def known(self) -> dict[str, tuple[Try, ...]]:
        """All tries by question."""
        return dict(self._practice.tries)

    def note(self, key: str, value: Any, right: bool) -> None:
        """Keep a try."""
        now = datetime.now(UTC).strftime("%Y-%m-%dT%H:%M:%SZ")
        one = Try(value, right, now)
        try:
            with locked(self._path, "practice") if self._path else contextlib.nullcontext():
                self._read()
                self._add(key, one)
                if self._path is not None:
                    PRACTICE.write(self._path, self._practice, sync=False)
            self.notice = ""
        except (CourseError, OSError) as error:
            said = error.sentence if isinstance(error, CourseError) else str(error.strerror)
            self.notice = f"What you said is not kept: {said}"
            if one not in self.tries(key):
                self._add(key, one)

    def _add(self, key: str, one: Try) -> None:
        tries = self._practice.tries
        self._practice = Practice({**tries, key: (*tries.get(key, ()), one)[-KEPT_TRIES:]})

    def seen_by(self, learner: str, ticket: str) -> None:
        """Know who works here from what the browser's window kept on signing in; else nobody."""
        if self._sign_in is None or self._settled or learner == self.whose:
            return
        self._sign_in = SignIn(self._sign_in.workplace)
        with contextlib.suppress(CourseError):
            self._sign_in.resume(learner, ticket)
        self._enter()
        for listener in tuple(self._listeners):
            listener()

    def on_change(self, listener: Callable[[], None]) -> None:
        """Call when somebody else's practice has taken the place of this one."""
        self._listeners.append(listener)

    def _find_account(self) -> None:
        """Whoever a college's server or the account itself says works here."""
        assert self._sign_in is not None
        self._sign_in.arrive()
        if self._sign_in.me is not None:
            return
        for listed in read_people(self._sign_in.workplace):
            own = self._sign_in.workplace / listed.person.id
            if not is_apart(own):
                continue
            with contextlib.suppress(OSError):
                if os.lstat(os.path.realpath(own)).st_uid == system.account():
                    self._sign_in.me = listed.person
                    return

    def _enter(self) -> None:
        assert self._sign_in is not None
        if self.whose:
            self._use(self._sign_in.workplace / self.whose / PRACTICE.file)
        else:
            self._path, self._practice = None, Practice()

    def _use(self, path: Path) -> None:
        self._path, self._practice = path, Practice()
        try:
            self._read()
        except CourseError as error:
            self.notice = error.sentence

    def _read(self) -> None:
        if self._path is not None:
            self._practice = PRACTICE.read(self._path) or Practice()
