"""A calculation to practise: fresh readings, its steps, and what a wrong figure looks like.

Nothing here comes from what a learner was issued, and nothing is handed to it: readings are drawn
anew each time, and what is right is worked out from them.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from random import Random

import numpy as np

Figures = Mapping[str, float]
Work = Callable[[Figures], float]

NEAR = 0.015
"""How far a figure may be off for rounding, as a share."""


@dataclass(frozen=True)
class Given:
    """A reading: drawn evenly between two ends.

    Parameters
    ----------
    name : str
        By which steps know it.
    words : str
        What it is.
    low, high, step : float
        The ends, and the step of the tool.
    unit : str
        Empty for a plain number.
    """

    name: str
    words: str
    low: float
    high: float
    step: float
    unit: str = ""

    def drawn(self, random: Random) -> float:
        """A reading."""
        count = round((self.high - self.low) / self.step)
        return self.low + self.step * random.randint(0, count)

    def said(self, value: float) -> str:
        """The reading as a person writes it."""
        decimals = next(
            n for n in range(6) if abs(self.step * 10**n - round(self.step * 10**n)) < 1e-6
        )
        return f"{value:.{decimals}f} {self.unit}".strip()


@dataclass(frozen=True)
class Step:
    """A step of a calculation.

    Parameters
    ----------
    name : str
        By which later steps know its figure.
    ask : str
        What is asked for.
    unit : str
        Empty for a plain number.
    how : str
        The formula, with readings and earlier figures as ``{name}``.
    work : callable
        The figure in that unit, from readings and earlier figures.
    slips : mapping of str to callable
        What was done instead, as a sentence, and the figure that it leads to.
    off : float
        How far the figure may be off, in its unit, where a share of it is no measure.
    of : str
        Kind of quantity where the unit's spelling has several.
    """

    name: str
    ask: str
    unit: str
    how: str
    work: Work
    slips: Mapping[str, Work] = field(default_factory=dict)
    off: float = 0.0
    of: str = ""

    def said(self, value: float) -> str:
        """A figure as a person writes it."""
        text = f"{value:.0f}" if abs(value) >= 1000 else f"{value:.4g}"
        if self.off:
            decimals = max(0, math.ceil(-math.log10(self.off) - 1e-9))
            text = f"{value:.{decimals}f}"
        if "." in text and "e" not in text:
            text = text.rstrip("0").rstrip(".")
        return f"{text} {self.unit}".strip()

    def near(self, one: float, other: float) -> bool:
        """Whether two figures are the same but for rounding."""
        return abs(one - other) <= (self.off or NEAR * abs(other)) + 1e-9


@dataclass(frozen=True)
class Calculation:
    """A calculation.

    Parameters
    ----------
    name, title : str
        For the course, and for people.
    story : str
        What is to be found out.
    given : tuple of Given
    steps : tuple of Step
    """

    name: str
    title: str
    story: str
    given: tuple[Given, ...]
    steps: tuple[Step, ...]

    def draw(self, random: Random) -> Drawn:
        """Fresh readings."""
        return Drawn(self, {one.name: one.drawn(random) for one in self.given})


@dataclass(frozen=True)
class Drawn:
    """A calculation with its readings."""

    of: Calculation
    readings: Figures

    def facts(self) -> list[tuple[str, str]]:
        """What is given, in words."""
        return [(one.words, one.said(self.readings[one.name])) for one in self.of.given]

    def right(self) -> dict[str, float]:
        """The figure of every step."""
        return self._worked({})

    def line(self, step: Step, figures: Figures) -> str:
        """How a step is worked out, with its figures; dots for those that are not there."""
        words = {one.name: one.said(self.readings[one.name]) for one in self.of.given}
        for one in self.of.steps:
            words[one.name] = one.said(figures[one.name]) if one.name in figures else "…"
        return f"{step.how.format_map(words)} = {words[step.name]}"

    def verdict(self, step: Step, answers: Figures) -> tuple[str, str]:
        """What one's own figure is: ``right``, ``follows`` or ``other``, and what it looks like.

        Parameters
        ----------
        step : Step
            Which.
        answers : mapping of str to float
            One's own figures by step, in the steps' units.
        """
        said = answers[step.name]
        right = self.right()
        if step.near(said, right[step.name]):
            return "right", ""
        earlier = {name: value for name, value in answers.items() if name != step.name}
        own = self._worked(earlier)
        if step.near(said, own[step.name]):
            return "follows", ""
        for figures in (own, right):
            for sentence, work in step.slips.items():
                wrong = _follows(work, {**self.readings, **figures})
                if step.near(said, wrong):
                    return "other", sentence
        for factor in (10, 100, 1000):
            shifted = (said * factor, said / factor)
            if any(step.near(figure, right[step.name]) for figure in shifted):
                return "other", f"The point stands in the wrong place, by a factor of {factor}."
        if step.near(-said, right[step.name]):
            return "other", "The sign is reversed."
        return "other", ""

    def _worked(self, own: Figures) -> dict[str, float]:
        """Every step's figure; where one has a figure of one's own, later steps go on with that."""
        known, worked = dict(self.readings), {}
        for step in self.of.steps:
            worked[step.name] = _follows(step.work, known) if own else step.work(known)
            known[step.name] = own.get(step.name, worked[step.name])
        return worked


def _follows(work: Work, figures: Figures) -> float:
    """What a step comes to with figures of one's own; not a number, which is near none, where
    nothing follows from them, as from a torque of zero."""
    try:
        with np.errstate(all="ignore"):
            return work(figures)
    except (ArithmeticError, ValueError):
        return math.nan
