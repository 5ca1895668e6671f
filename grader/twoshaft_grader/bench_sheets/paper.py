"""The papers that a sheet is printed on."""

from __future__ import annotations

from enum import StrEnum

from twoshaft.errors import CourseError


class Paper(StrEnum):
    """A paper size."""

    A4 = "a4"
    LETTER = "letter"

    @property
    def typst(self) -> str:
        """Its name in Typst."""
        return {"a4": "a4", "letter": "us-letter"}[self.value]

    @property
    def css(self) -> str:
        """Its name in CSS paged media."""
        return {"a4": "A4", "letter": "letter"}[self.value]


def paper_named(name: str) -> Paper:
    """The paper of a name.

    Raises
    ------
    CourseError
        When there is none of this name.
    """
    try:
        return Paper(name.lower())
    except ValueError:
        known = " or ".join(Paper)
        raise CourseError(f"there is no paper {name!r}", mend=f"use {known}") from None
