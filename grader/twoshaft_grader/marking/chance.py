"""What guessing would earn, and the line above which a task's marks count.

A task's marks begin where guessing ends: the share earned on its fields counts above the lowest
line that leaves a random answer 4 % on average. Where even that cannot be had (one choice of
four), only a wholly right answer counts; the build adds up what the module leaves to chance and
refuses more than 5 %.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache
from math import comb

from twoshaft.jobsheet.fields import Choice, Choices, Field, Order
from twoshaft_grader.marking.compare import choices_share, judge, right_keys
from twoshaft_grader.marking.reference import Reference

TASK_CHANCE = 0.04
"""What a random answer to a task may earn on average, where its fields allow a line."""
MODULE_CHANCE = 0.05
"""What random answers to a whole module may earn on average."""
ORDER_CHANCE = 0.05
"""What a random order may earn on average, by the order model."""

Spread = tuple[tuple[float, float], ...]
"""Shares that a random answer can earn, with their probabilities."""


def field_spread(asked: Field, reference: Reference) -> Spread:
    """What a random answer to one field earns.

    Every option is equally likely, every tick is a coin; a random order earns at most 5 % on
    average by the order model, taken at its worst (all or nothing). A count is guessed among the
    first ten, or among as many as it is; any other number is not guessed.

    Parameters
    ----------
    asked : Field
    reference : Reference

    Returns
    -------
    tuple of (float, float)
        Share and probability, lowest share first.
    """
    spread: dict[float, float] = {}
    if isinstance(asked, Choice):
        for key, _ in asked.options:
            _add(spread, judge(asked, reference, key).share, 1 / len(asked.options))
    elif isinstance(asked, Choices):
        right = len(right_keys(reference))
        wrong = len(asked.options) - right
        for hits in range(right + 1):
            for extras in range(wrong + 1):
                ways = comb(right, hits) * comb(wrong, extras)
                share = choices_share(hits, extras, right, wrong)
                _add(spread, share, ways / 2 ** (right + wrong))
    elif isinstance(asked, Order):
        spread = {0.0: 1 - ORDER_CHANCE, 1.0: ORDER_CHANCE}
    elif isinstance(reference.value, int):
        hit = 1 / max(10, abs(reference.value))
        spread = {0.0: 1 - hit, 1.0: hit}
    else:
        spread = {0.0: 1.0}
    return tuple(sorted(spread.items()))


def task_spread(parts: Iterable[tuple[float, Spread]]) -> Spread:
    """What a random answer to a task earns before its line, from weights and spreads."""
    parts = tuple(parts)
    total = sum(weight for weight, _ in parts)
    whole = {0.0: 1.0}
    for weight, spread in parts:
        added: dict[float, float] = {}
        for share, chance in whole.items():
            for more, likely in spread:
                _add(added, round(share + more * weight / total, 9), chance * likely)
        whole = added
    return tuple(sorted(whole.items()))


def above_line(share: float, line: float) -> float:
    """Return the part of the marks that a share earns above the line, 0 to 1.

    Examples
    --------
    >>> above_line(0.75, 0.5), above_line(0.4, 0.5), above_line(1.0, 0.5)
    (0.5, 0.0, 1.0)
    """
    return min(1.0, max(0.0, (share - line) / (1 - line)))


def mean_above(spread: Spread, line: float) -> float:
    """Return what a random answer earns on average with the line drawn."""
    return sum(above_line(share, line) * chance for share, chance in spread)


@lru_cache(maxsize=1024)
def guess_line(spread: Spread, target: float = TASK_CHANCE) -> float:
    """Return the lowest line that leaves a random answer ``target`` on average.

    Where no line does, the highest share short of all.
    """
    if mean_above(spread, 0.0) <= target + 1e-12:
        return 0.0
    low, high = 0.0, max((share for share, _ in spread if share < 1 - 1e-6), default=0.0)
    if mean_above(spread, high) >= target:
        return high
    for _ in range(50):
        middle = (low + high) / 2
        low, high = (middle, high) if mean_above(spread, middle) > target else (low, middle)
    return high


@dataclass(frozen=True)
class TaskChance:
    """What is left to chance in a task.

    Attributes
    ----------
    line : float
        The share above which points count.
    mean : float
        What a random answer then earns on average, at most.
    """

    line: float
    mean: float


def task_chance(parts: Iterable[tuple[Field, Reference]]) -> TaskChance:
    """Draw the line of a task.

    An order has its own line in the order model, so its part of the task keeps what that leaves.

    Parameters
    ----------
    parts : iterable of (Field, Reference)
        The task's fields.

    Returns
    -------
    TaskChance
    """
    parts = tuple(parts)
    total = sum(reference.weight for _, reference in parts)
    orders = sum(reference.weight for asked, reference in parts if isinstance(asked, Order))
    target = TASK_CHANCE + (ORDER_CHANCE - TASK_CHANCE) * orders / total
    spread = task_spread((reference.weight, field_spread(a, reference)) for a, reference in parts)
    line = guess_line(spread, target)
    return TaskChance(line, mean_above(spread, line))


def _add(spread: dict[float, float], share: float, chance: float) -> None:
    spread[share] = spread.get(share, 0.0) + chance
