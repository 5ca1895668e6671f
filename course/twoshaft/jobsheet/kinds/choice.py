"""One of several options as an answer."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from twoshaft.errors import AnswerError
from twoshaft.jobsheet.kinds.field import kind
from twoshaft.jobsheet.kinds.listed import Optioned


@kind("choice")
@dataclass(frozen=True)
class Choice(Optioned):
    """One of several options; its key is stored."""

    def read(self, stored: Any) -> str:
        """The chosen key."""
        if self.is_blank(stored):
            raise AnswerError("not answered yet")
        return self.known([stored])[0]

    def store(self, value: Any) -> str:
        """The key, checked."""
        return self.read(value)

    def words(self, stored: Any) -> str:
        """The chosen label."""
        return "" if self.is_blank(stored) else self.label(stored)
