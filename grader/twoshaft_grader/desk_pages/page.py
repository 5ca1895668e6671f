"""What every page of the desk is, and what it works with."""

from __future__ import annotations

import time
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import ClassVar

from twoshaft_grader.cohort.assessors import assessors_of
from twoshaft_grader.cohort.folder import Cohort, open_cohort
from twoshaft_grader.desk_pages.parts import Field, Part, Values

OFTEN_S = 0.2
"""Progress is told no more often."""


class Desk:
    """The cohort that staff sit at, and who sits there.

    Parameters
    ----------
    root : Path
        The cohort folder.
    by : str
        A name for the trail; empty: the account's.
    """

    def __init__(self, root: Path, by: str = "") -> None:
        self.root, self.by = root, by

    @property
    def cohort(self) -> Cohort:
        """The cohort as it stands in its folder now."""
        return open_cohort(self.root)


class Work:
    """How far something has come.

    Parameters
    ----------
    tell : callable
        Is told what is done, how many steps of it, and of how many (0: nobody knows).
    """

    def __init__(self, tell: Callable[[str, int, int], None] = lambda *_: None) -> None:
        self._tell, self._told = tell, 0.0
        self._doing, self._done, self._of = "", 0, 0

    def begin(self, doing: str, of: int = 0) -> None:
        """Something of so many steps begins."""
        self._doing, self._done, self._of = doing, 0, of
        self._tell(doing, 0, of)

    def step(self) -> None:
        """A step is done."""
        self._done += 1
        if time.monotonic() - self._told > OFTEN_S:
            self._told = time.monotonic()
            self._tell(self._doing, self._done, self._of)


class Page:
    """A page of the desk.

    Attributes
    ----------
    id, title : str
    every_s : int
        It is drawn anew so often while somebody looks at it; 0: when something was done.
    """

    id: ClassVar[str]
    title: ClassVar[str]
    every_s: ClassVar[int] = 0

    def __init__(self, desk: Desk) -> None:
        self.desk = desk

    def assessor(self, name: str) -> Field:
        """A field for somebody on the register of assessors."""
        on = [one for one in assessors_of(self.desk.cohort) if not one.until]
        options = (("", "Choose"), *((one.id, f"{one.name} ({one.id})") for one in on))
        hint = "" if on else "nobody is on the register: see Observe at the bench"
        return Field(name, "Assessor", "choice", options=options, hint=hint)

    def show(self) -> Sequence[Part]:
        """What stands on it now."""
        raise NotImplementedError

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says; returns what is said of it, in a sentence."""
        raise NotImplementedError
