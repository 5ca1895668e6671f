"""Any number of options as an answer."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from twoshaft.errors import AnswerError
from twoshaft.jobsheet.kinds.field import kind
from twoshaft.jobsheet.kinds.listed import Optioned


@kind("choices")
@dataclass(frozen=True)
class Choices(Optioned):
    """Any number of options; their keys are stored in the order of the options."""

    def read(self, stored: Any) -> tuple[str, ...]:
        """The chosen keys in the order of the options, none twice."""
        if self.is_blank(stored):
            raise AnswerError("not answered yet")
        chosen = set(self.known(stored))
        return tuple(key for key, _ in self.options if key in chosen)

    def store(self, value: Any) -> list[str]:
        """The keys, checked; an empty list unticks everything."""
        if not isinstance(value, list | tuple | set | frozenset):
            raise AnswerError(
                "read something that is not a list of keys", mend="give a list of keys"
            )
        return list(self.read(sorted(value, key=str))) if value else []

    def words(self, stored: Any) -> str:
        """The chosen labels."""
        if self.is_blank(stored) or not isinstance(stored, list | tuple):
            return ""
        return "; ".join(self.label(key) for key in stored)
