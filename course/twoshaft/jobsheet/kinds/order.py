"""Steps in an order as an answer."""

from __future__ import annotations

import html
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from twoshaft.errors import AnswerError
from twoshaft.jobsheet.kinds.field import Pairs, kind
from twoshaft.jobsheet.kinds.listed import Listed, tidy_pairs


@kind("order")
@dataclass(frozen=True)
class Order(Listed):
    """Steps to be put in order; the keys are stored in that order.

    Parameters
    ----------
    steps : pairs of key and label
        In the order shown at the start.
    stages : mapping, optional
        Words for the stage that each key belongs to, to group a long list.
    most_moves : int
        How many steps may be moved at most; 0 where it does not matter.
    """

    steps: Pairs = ()
    stages: Mapping[str, str] | None = None
    most_moves: int = 0

    def __post_init__(self) -> None:
        super().__post_init__()
        object.__setattr__(self, "steps", tidy_pairs(self.steps, self.name))

    def listed(self) -> Pairs:
        """The steps."""
        return self.steps

    def read(self, stored: Any) -> tuple[str, ...]:
        """The keys in the order given. Steps left out or doubled are for marking to weigh."""
        if self.is_blank(stored):
            raise AnswerError("not answered yet")
        return self.known(stored)

    def store(self, value: Any) -> list[str]:
        """The keys as a list, checked."""
        if isinstance(value, str):
            raise AnswerError("read one text, not a list of steps", mend="give a list of keys")
        return list(self.read(list(value)))

    def shortfall(self, stored: Any) -> str:
        """As for every field, and steps left out or doubled."""
        text = super().shortfall(stored)
        if text:
            return text
        labels, given = self.labels(), list(stored)
        lost = [labels[key] for key in labels if key not in given]
        doubled = [labels[key] for key in labels if given.count(key) > 1]
        if lost:
            return f"{len(lost)} of {len(labels)} steps left out, the first is “{lost[0]}”"
        return f"“{doubled[0]}” stands in the list more than once" if doubled else ""

    def words(self, stored: Any) -> str:
        """The labels, numbered."""
        if self.is_blank(stored) or not isinstance(stored, list | tuple):
            return ""
        return "; ".join(f"{n}. {self.label(key)}" for n, key in enumerate(stored, 1))

    def told(self) -> dict[str, Any]:
        """The steps as shown at the start."""
        return {"steps": [list(pair) for pair in self.steps]}

    def paper(self, stored: Any) -> str:
        """The steps as a numbered list."""
        if not isinstance(stored, list | tuple):
            return super().paper(stored)
        return f"<ol>{''.join(f'<li>{html.escape(self.label(key))}</li>' for key in stored)}</ol>"
