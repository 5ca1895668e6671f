"""Figures of a task that learners may replace with their own, as its module declares them.

A module declares in its ``BENCH`` which figures of which task can be replaced. What follows from
them (rows of a table, options, doubts) is worked out again by the same models as in the draw.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any, Literal, Self

from twoshaft.units.unit import Unit

Kind = Literal["reading", "manual limit"]


@dataclass(frozen=True)
class Figure:
    """A given figure that can be replaced.

    Attributes
    ----------
    name : str
        Within its task: small letters, figures, hyphens.
    prompt : str
        What it is, in plain words.
    unit : str
        Unit in which it stands there; empty for a count.
    low, high : float
        Plausible range, both ends included.
    kind : {"reading", "manual limit"}
    whole : bool
        Whether only whole numbers make sense.
    drawn : float or str, optional
        What was drawn in its place; None where nothing of the kind was.
    options : tuple of (str, str)
        Keys and words of what is chosen instead of typed, as the state of a thread; the key is
        put in. Empty for a number.
    """

    name: str
    prompt: str
    unit: str
    low: float = 0.0
    high: float = 0.0
    kind: Kind = "reading"
    whole: bool = False
    options: tuple[tuple[str, str], ...] = ()
    drawn: float | str | None = None

    @classmethod
    def chosen(
        cls, name: str, prompt: str, options: Iterable[Iterable[str]], drawn: str | None = None
    ) -> Self:
        """What is chosen from (key, words) pairs."""
        pairs = tuple((str(key), str(words)) for key, words in options)
        return cls(name, prompt, "", options=pairs, drawn=drawn)

    def fault(self, value: float | str) -> str:
        """Say what is wrong with a value; empty if it is plausible."""
        if self.options:
            known = value in dict(self.options)
            return "" if known else f"“{self.prompt}” is chosen from the list"
        if not isinstance(value, int | float):
            return f"“{self.prompt}” is a number"
        if not math.isfinite(value) or not self.low <= value <= self.high:
            unit = f" {self.unit}" if self.unit else ""
            return f"“{self.prompt}” is plausible from {self.low:g} to {self.high:g}{unit}"
        if self.whole and value != round(value):
            return f"“{self.prompt}” is a whole number"
        return ""


@dataclass(frozen=True)
class BenchTask:
    """How one task takes figures of one's own.

    Attributes
    ----------
    figures : callable
        From the unit and the task's record to its figures, in the order asked.
    renew : callable
        From the unit, the task's record and the figures by name to the record with them and all
        that follows from them. Raises CourseError when nothing can be decided on them.
    also : tuple of str
        Other tasks of the sheet that go on with the same figures.
    """

    figures: Callable[[Unit, Any], tuple[Figure, ...]]
    renew: Callable[..., Any]
    also: tuple[str, ...] = ()
