"""What somebody meant who misspelt a name."""

from __future__ import annotations

from collections.abc import Iterable
from difflib import get_close_matches

_MOST_LISTED = 8


def meant(name: str, known: Iterable[str]) -> str:
    """What to do about a name that is not known: the nearest one, or those there are."""
    listed = sorted(known)
    near = get_close_matches(name, listed, n=1)
    if near:
        return f"did you mean '{near[0]}'?"
    if not listed:
        return "add it, or correct the id"
    more = " …" if len(listed) > _MOST_LISTED else ""
    return f"choose one of {', '.join(listed[:_MOST_LISTED])}{more}"
