"""One answer for each line of a list, out of the same few, as an answer."""

from __future__ import annotations

import html
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from twoshaft.errors import AnswerError
from twoshaft.jobsheet.kinds.field import Field, Pairs, kind
from twoshaft.jobsheet.kinds.listed import tidy_pairs


@kind("each")
@dataclass(frozen=True)
class Each(Field):
    """One answer for each line; stored as ``line=answer`` texts, in the order of the lines.

    Parameters
    ----------
    lines : pairs of key and text
        What is asked about: parts, places, cases.
    options : pairs of key and text
        The answers that every line offers.
    """

    lines: Pairs = ()
    options: Pairs = ()

    def __post_init__(self) -> None:
        super().__post_init__()
        for part in ("lines", "options"):
            object.__setattr__(self, part, tidy_pairs(getattr(self, part), self.name))

    def read(self, stored: Any) -> dict[str, str]:
        """The answer of each line that has one, by the line's key."""
        if self.is_blank(stored):
            raise AnswerError("not answered yet")
        if not isinstance(stored, list | tuple) or not all(isinstance(one, str) for one in stored):
            raise AnswerError(
                "read something that is not a list of answers", mend="give line=answer texts"
            )
        if len(stored) > len(self.lines):
            raise AnswerError(f"read {len(stored)} answers for {len(self.lines)} lines")
        lines, options = dict(self.lines), dict(self.options)
        found: dict[str, str] = {}
        for one in stored:
            line, _, option = one.partition("=")
            if line not in lines or option not in options or line in found:
                raise AnswerError(
                    f"read “{one[:40]}”, which is no answer to one of the lines",
                    mend="use the keys of lines and answers, a line once",
                )
            found[line] = option
        return {line: found[line] for line in lines if line in found}

    def store(self, value: Any) -> list[str]:
        """Answers by line, checked, as they are stored; an empty mapping takes all back."""
        if not isinstance(value, Mapping):
            raise AnswerError(
                "read something that is not a mapping", mend="give the answer of each line"
            )
        stored = [f"{line}={value[line]}" for line in value]
        return [f"{line}={option}" for line, option in self.read(stored).items()] if value else []

    def shortfall(self, stored: Any) -> str:
        """How many lines have no answer yet."""
        if said := super().shortfall(stored):
            return said
        open_ = len(self.lines) - len(self.read(stored))
        return f"{open_} of {len(self.lines)} lines not answered yet" if open_ else ""

    def said(self, stored: Any) -> list[tuple[str, str]]:
        """Text of each line that has an answer, and of the answer; what cannot be read as it is."""
        if self.is_blank(stored):
            return []
        try:
            answers = self.read(stored)
        except AnswerError:
            return [("cannot be read", str(stored)[:200])]
        lines, options = dict(self.lines), dict(self.options)
        return [(lines[line], options[option]) for line, option in answers.items()]

    def words(self, stored: Any) -> str:
        """Each line with its answer."""
        return "; ".join(f"{line}: {option}" for line, option in self.said(stored))

    def paper(self, stored: Any) -> str:
        """Each line with its answer, one under the other."""
        rows = (
            f"<li>{html.escape(line)}: <b>{html.escape(option)}</b></li>"
            for line, option in self.said(stored)
        )
        listed = "".join(rows)
        return f"<ul>{listed}</ul>" if listed else ""

    def told(self) -> dict[str, Any]:
        """The lines, and the answers that each offers."""
        return {
            "lines": [list(pair) for pair in self.lines],
            "options": [list(pair) for pair in self.options],
        }
