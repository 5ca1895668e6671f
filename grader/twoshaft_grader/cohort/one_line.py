"""Short texts that stand in tables, records and files: a room, a bench, somebody's name."""

from __future__ import annotations

from twoshaft.errors import CohortError

MOST = 80


def one_line(what: str, text: str, *, most: int = MOST) -> str:
    """The text with single spaces between its words.

    Parameters
    ----------
    what : str
        What it is, in a sentence: "the room".
    most : int
        Letters.

    Raises
    ------
    CohortError
        When it is longer, or holds what cannot be printed.
    """
    line = " ".join(text.split())
    if len(line) > most:
        raise CohortError(f"{what} is {len(line)} letters long", mend=f"use {most} at most")
    if not line.isprintable():
        raise CohortError(f"{what} holds a sign that cannot be printed", mend="type it again")
    return line
