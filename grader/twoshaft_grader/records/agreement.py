"""How far two lists of answers agree beyond chance.

The index is the generalized binomial test of van der Linden and Sotaridona (2006, Journal of
Educational and Behavioral Statistics 31(3) 283-304): the chance that two people who work apart
agree on as many answers or more, when each answer has a chance of its own to agree. Here that
chance comes from what everybody else of the group answered.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

FAR = 2.0
"""Pairs nearer than so many standard deviations to what chance gives are not worked out; none of
them can be told (one of twenty pairs and more lies farther out by chance alone)."""
ROWS = 64
"""So many people are compared with everybody at a time."""


@dataclass(frozen=True)
class Pair:
    """Two who agree.

    Attributes
    ----------
    one, other : int
        Which lists, by number.
    asked : int
        Answers that can tell something: both gave one, and not both are right.
    same : int
        How many of them are the same.
    expected : float
        How many would be by chance.
    chance : float
        How likely so many or more are by chance, 0 to 1.
    """

    one: int
    other: int
    asked: int
    same: int
    expected: float
    chance: float


def at_least(matches: int, chances: Sequence[float] | np.ndarray) -> float:
    """The chance of so many matches or more, of independent ones with these chances.

    Parameters
    ----------
    matches : int
    chances : sequence of float
        Of every single match, 0 to 1.

    Examples
    --------
    >>> round(at_least(5, [0.9, 0.8, 0.6, 0.5, 0.4, 0.3]), 5)
    0.17784
    """
    spread = np.ones(1)
    for chance in chances:
        spread = np.convolve(spread, (1 - chance, chance))
    return float(min(1.0, spread[matches:].sum()))


def pairs_alike(
    answers: Sequence[Mapping[str, str]], right: Sequence[frozenset[str]]
) -> list[Pair]:
    """Pairs that agree more than chance gives, the least likely first.

    What both have right is left out: knowing is no reason to talk. The chance of a match is that
    of two answers drawn from all others' to the same question: high where many err alike, and,
    with few others, too high rather than too low.

    Parameters
    ----------
    answers : sequence of mappings of str to str
        Of each person, what was answered to each question; open ones are not in it.
    right : sequence of frozenset of str
        Of each person, the questions that are right.
    """
    questions = [_Question.of(answers, right, name) for name in sorted(set().union(*answers))]
    found = []
    for first in range(0, len(answers), ROWS):  # all at once would take the square of their number
        rows = slice(first, first + ROWS)
        asked, same, expected, variance = np.zeros((4, len(answers[rows]), len(answers)))
        for question in questions:
            tells, equal, chance = question.matches(rows)
            asked += tells
            same += equal
            expected += chance
            variance += chance * (1 - chance)
        far = np.triu((same - expected) > FAR * np.sqrt(variance), first + 1)
        chances = np.array([question.matches(rows)[2][far] for question in questions])
        found += [
            Pair(
                first + int(row),
                int(other),
                int(asked[row, other]),
                int(same[row, other]),
                float(expected[row, other]),
                at_least(int(same[row, other]), of_pair),
            )
            for row, other, of_pair in zip(*np.nonzero(far), chances.T, strict=True)
        ]
    return sorted(found, key=lambda pair: pair.chance)


@dataclass(frozen=True)
class _Question:
    """Of each person which answer was given, by number, -1 for none; how many gave the same one;
    who has it right."""

    code: np.ndarray
    own: np.ndarray
    knows: np.ndarray
    squares: int
    others: int

    @classmethod
    def of(
        cls, answers: Sequence[Mapping[str, str]], right: Sequence[frozenset[str]], name: str
    ) -> _Question:
        numbers: dict[str, int] = {}
        code = np.array(
            [numbers.setdefault(a[name], len(numbers)) if name in a else -1 for a in answers]
        )
        often = np.bincount(code[code >= 0], minlength=1)
        return cls(
            code,
            np.where(code >= 0, often[code], 0),
            np.array([name in one for one in right]),
            int((often**2).sum()),
            max(int((code >= 0).sum()) - 2, 1),
        )

    def matches(self, rows: slice) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """Of some people against everybody: whether the question tells something, whether the
        answers are the same, and the chance that they would be."""
        code, knows, own = (one[rows, None] for one in (self.code, self.knows, self.own))
        tells = (code >= 0) & (self.code >= 0) & ~(knows & self.knows)
        equal = code == self.code
        # The squares of how often each answer was given, without the answers of these two.
        squares = self.squares - (2 * own - 1) - (2 * self.own - 1) + 2 * equal
        chance = np.clip(squares / self.others**2, 1 / (self.others + 1), 1)
        return tells, tells & equal, np.where(tells, chance, 0.0)
