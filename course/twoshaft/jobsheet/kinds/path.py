"""A movement of the hand as an answer: a list of moves, each stored as a short code."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from twoshaft.errors import AnswerError
from twoshaft.jobsheet.kinds.field import Pairs, kind
from twoshaft.jobsheet.kinds.listed import Listed, tidy_pairs

MOST_MOVES = 12


@kind("path")
@dataclass(frozen=True)
class HandPath(Listed):
    """Moves of the hand, in the order in which they are made; a move may come again.

    Parameters
    ----------
    moves : pairs of code and label
        The moves there are.
    plan : mapping
        The gate to draw: ``gates`` (travel of each), ``turn_mm`` (its ends), ``gears`` (id,
        travel, turn) and ``aims`` (travel and turn that each move aims at, None: stays).
    most : int
        Most moves that an answer may have.
    """

    moves: Pairs = ()
    plan: Mapping[str, Any] | None = None
    most: int = MOST_MOVES

    def __post_init__(self) -> None:
        super().__post_init__()
        object.__setattr__(self, "moves", tidy_pairs(self.moves, self.name))

    def listed(self) -> Pairs:
        """The moves."""
        return self.moves

    def read(self, stored: Any) -> tuple[str, ...]:
        """The codes of the moves."""
        if self.is_blank(stored):
            raise AnswerError("not answered yet")
        if not isinstance(stored, list | tuple) or not all(isinstance(c, str) for c in stored):
            raise AnswerError(
                "read something that is not a list of moves", mend="give a list of codes"
            )
        if len(stored) > self.most:
            raise AnswerError(
                f"read {len(stored)} moves; {self.most} are the most here",
                mend="leave out what shows nothing",
            )
        strange = next((code for code in stored if code not in self.labels()), None)
        if strange is not None:
            raise AnswerError(
                f"read “{strange[:40]}”, which is no move here", mend="use the moves of the list"
            )
        return tuple(stored)

    def store(self, value: Any) -> list[str]:
        """The codes as a list, checked; an empty list takes everything back."""
        return list(self.read(value)) if value else []

    def words(self, stored: Any) -> str:
        """The moves, numbered."""
        if self.is_blank(stored) or not isinstance(stored, list | tuple):
            return ""
        return "; ".join(f"{n}. {self.label(code)}" for n, code in enumerate(stored, 1))

    def told(self) -> dict[str, Any]:
        """The moves, the gate to draw, and how many moves there may be."""
        return {"moves": [list(p) for p in self.moves], "plan": self.plan, "most": self.most}
