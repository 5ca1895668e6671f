"""``adjustments.json`` in a learner's folder: what was arranged for them, and how pages look."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from twoshaft.errors import SheetError
from twoshaft.stored.definition import LearnersFile, Words

COLOURS = ("cream", "blue", "rose")
"""Grounds that pages can have in the place of the theme's."""


@dataclass(frozen=True, kw_only=True)
class OwnAdjustment:
    """What was arranged for one learner.

    Parameters
    ----------
    more_days : int
        So many days later than everybody's is each date.
    reader : bool
        Whether somebody reads to them.
    large_print : bool
    colour : str
        One of ``COLOURS``; empty: the theme's own.
    """

    more_days: int = 0
    reader: bool = False
    large_print: bool = False
    colour: Words = ""

    @property
    def look(self) -> dict[str, str]:
        """What the browser is told of how pages are to look."""
        return {
            "print": "large" if self.large_print else "",
            "colour": self.colour if self.colour in COLOURS else "",
        }


OWN_ADJUSTMENT: LearnersFile[OwnAdjustment] = LearnersFile(
    file="adjustments.json", record=OwnAdjustment, fault="it holds no adjustments"
)


def own_adjustment(own: Path) -> OwnAdjustment:
    """What was arranged for the learner whose folder this is; nothing where nothing can be read."""
    try:
        return OWN_ADJUSTMENT.read(own / OWN_ADJUSTMENT.file) or OwnAdjustment()
    except SheetError:
        return OwnAdjustment()
