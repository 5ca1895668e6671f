"""Errors that a person can act on.

    CourseError
    ├── UnitFileError     a unit file cannot be used
    ├── OutOfRangeError   a quantity outside a model's validity
    ├── AnswerError       an answer that cannot be read
    ├── SheetError        a job sheet that cannot be read or saved
    └── CohortError       a roster, cohort folder or submission that cannot be used

Each carries its facts as fields and builds its one sentence from them.
"""

from __future__ import annotations

from typing import Any


class CourseError(Exception):
    """Something a person gave cannot be used.

    Parameters
    ----------
    what : str
        What is wrong, in plain words.
    where : str, optional
        File and place, as ``file.yaml, line 12``.
    mend : str, optional
        What to do about it.
    """

    def __init__(self, what: str, *, where: str = "", mend: str = "") -> None:
        self.what, self.where, self.mend = what.rstrip("."), where, mend.rstrip(".")
        super().__init__(self.sentence)

    @property
    def sentence(self) -> str:
        """The facts as one sentence."""
        text = f"{self.where}: {self.what}" if self.where else self.what
        if self.mend.endswith("?"):
            return f"{text}; {self.mend}"
        return f"{text}; {self.mend}." if self.mend else f"{text}."

    def _render_traceback_(self) -> list[str]:
        # A notebook shows the sentence alone: the lines of code that led to it help nobody there.
        return [self.sentence]


class UnitFileError(CourseError):
    """A unit file cannot be used as it is.

    ``findings`` holds everything that was found, one by one; the message has a line for each.
    """

    def __init__(
        self, what: str, *, where: str = "", mend: str = "", findings: tuple[Any, ...] = ()
    ) -> None:
        super().__init__(what, where=where, mend=mend)
        self.findings = findings
        if findings:
            self.args = ("\n".join(finding.sentence for finding in findings),)


class AnswerError(CourseError):
    """An answer cannot be read; nothing is guessed."""


class SheetError(CourseError):
    """A job sheet cannot be read or saved."""


class CohortError(CourseError):
    """A roster, cohort folder or submission cannot be used."""


class OutOfRangeError(CourseError, ValueError):
    """A quantity lies outside the validity of a model.

    Parameters
    ----------
    quantity, value : str
        The quantity's name and the value given, with its unit.
    allowed : str
        The range, with its unit.
    source : str
        Where the range comes from.
    """

    def __init__(self, quantity: str, value: str, allowed: str, source: str) -> None:
        self.quantity, self.value, self.allowed, self.source = quantity, value, allowed, source
        super().__init__(
            f"{quantity} is {value}, outside {allowed} ({source})",
            mend=f"give a {quantity} within {allowed}",
        )
