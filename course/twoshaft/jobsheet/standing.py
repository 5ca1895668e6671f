"""What a learner is told of their marks given back and of their outcomes."""

from __future__ import annotations

from pathlib import Path

from twoshaft.errors import SheetError
from twoshaft.stored.standing import STANDING, OwnStanding


def read_standing(own: Path, learner: str) -> OwnStanding:
    """The standing in a learner's folder; nothing where it is missing, damaged or another's."""
    try:
        found = STANDING.read(own / STANDING.file)
    except SheetError:
        found = None
    return found if found and found.learner == learner else OwnStanding(learner)
