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
    names = sorted({name for one in answers for name in one})
    asked, same, expected, variance = np.zeros((4, len(answers), len(answers)))
    for name in names:
        tells, equal, chance = _matches(answers, right, name)
        asked += tells
        same += equal
        expected += chance
        variance += chance * (1 - chance)
    far = np.triu((same - expected) > FAR * np.sqrt(variance), 1)
    chances = np.array([_matches(answers, right, name)[2][far] for name in names])
    found = [
        Pair(
            int(one),
            int(other),
            int(asked[one, other]),
            int(same[one, other]),
            float(expected[one, other]),
            at_least(int(same[one, other]), of_pair),
        )
        for one, other, of_pair in zip(*np.nonzero(far), chances.T, strict=True)
    ]
    return sorted(found, key=lambda pair: pair.chance)


def _matches(
    answers: Sequence[Mapping[str, str]], right: Sequence[frozenset[str]], name: str
) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """For every two people: whether a question tells something, is the same, would be by chance."""
    numbers: dict[str, int] = {}
    code = np.array(
        [numbers.setdefault(a[name], len(numbers)) if name in a else -1 for a in answers]
    )
    knows = np.array([name in one for one in right])
    tells = (code >= 0)[:, None] & (code >= 0) & ~(knows[:, None] & knows)
    equal = code[:, None] == code
    often = np.bincount(code[code >= 0], minlength=1)
    own = np.where(code >= 0, often[code], 0)
    # The squares of how often each answer was given, without the answers of these two.
    squares = (often**2).sum() - (2 * own[:, None] - 1) - (2 * own - 1) + 2 * equal
    others = max(int((code >= 0).sum()) - 2, 1)
    chance = np.where(tells, np.clip(squares / others**2, 1 / (others + 1), 1), 0.0)
    return tells, tells & equal, chance
