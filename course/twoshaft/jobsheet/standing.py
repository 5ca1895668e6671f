"""What the learner's own folder holds of marks given back and of outcomes."""

from __future__ import annotations

from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from twoshaft.errors import SheetError
from twoshaft.jobsheet.workplace import read_table

STANDING = "standing.json"


@dataclass(frozen=True)
class OwnStanding:
    """Marks by assignment and outcomes by id, as the instructor's program wrote them.

    ``notice`` says in a sentence why there are none.
    """

    marks: dict[str, dict[str, Any]] = field(default_factory=dict)
    outcomes: dict[str, dict[str, Any]] = field(default_factory=dict)
    notice: str = ""


def read_standing(own: Path, learner: str) -> OwnStanding:
    """Read the standing in a learner's folder; nothing where it is missing or somebody else's."""
    try:
        data = read_table(own / STANDING)
    except SheetError as error:
        return OwnStanding(notice=error.sentence)
    if data is None:
        return OwnStanding()
    if data.get("learner") != learner:
        return OwnStanding(
            notice=f"{STANDING}: it is not yours, so nothing of it is shown; ask your instructor."
        )
    return OwnStanding(_tables(data.get("marks")), _tables(data.get("outcomes")))


def _tables(value: Any) -> dict[str, dict[str, Any]]:
    entries = value.items() if isinstance(value, dict) else ()
    return {key: entry for key, entry in entries if isinstance(entry, dict)}
