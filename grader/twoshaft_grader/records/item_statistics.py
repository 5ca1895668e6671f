"""How hard tasks are, how well they tell learners apart, and how far a mark can be relied on.

Facility is the mean part of the points; discrimination the correlation of an item with the rest of
its sheet (the item itself left out), with Fisher's interval by scipy; reliability Cronbach's alpha
(1951), which for right and wrong is KR-20, with the interval of Feldt, Woodruff and Salih (1987,
Applied Psychological Measurement 11, 93-103).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

FEWEST = 4
"""Of fewer learners nothing is said: an interval would be no narrower than all that is possible."""
CONFIDENCE = 0.95
EASY, HARD, WEAK = 0.9, 0.2, 0.2
"""Facility wanted between HARD and EASY, discrimination of WEAK at least (rules of thumb, from
memory, no source)."""


@dataclass(frozen=True)
class Estimate:
    """A figure with its interval (95 %)."""

    value: float
    low: float
    high: float


@dataclass(frozen=True)
class Item:
    """What is known of one item.

    Attributes
    ----------
    facility : float
        Mean part of its points, 0 to 1.
    discrimination : Estimate or None
        None where everybody has the same, or there are too few.
    """

    facility: float
    discrimination: Estimate | None


def items_of(scores: Sequence[Sequence[float]], most: Sequence[float]) -> list[Item]:
    """Facility and discrimination of each item.

    Parameters
    ----------
    scores : sequence of sequences of float
        Points: a row for each learner, a column for each item.
    most : sequence of float
        Most points of each item.

    Examples
    --------
    >>> [one.facility for one in items_of([[1, 0], [1, 1], [1, 2], [1, 1]], [1, 2])]
    [1.0, 0.5]
    """
    table = np.asarray(scores, float).reshape(len(scores), len(most))
    total = table.sum(axis=1)
    return [
        Item(
            float(np.mean(column) / best) if len(column) and best else 0.0,
            _correlation(column, total - column),
        )
        for column, best in zip(table.T, most, strict=True)
    ]


def _correlation(one: np.ndarray, other: np.ndarray) -> Estimate | None:
    from scipy import stats  # takes long to load, and only this command asks for it

    if len(one) < FEWEST or np.ptp(one) < 1e-12 or np.ptp(other) < 1e-12:
        return None
    found = stats.pearsonr(one, other)
    low, high = found.confidence_interval(CONFIDENCE)
    return Estimate(float(found.statistic), float(low), float(high))


def reliability(scores: Sequence[Sequence[float]]) -> Estimate | None:
    """Cronbach's alpha with its interval; None where it says nothing.

    Parameters
    ----------
    scores : sequence of sequences of float
        Points: a row for each learner, a column for each item.

    Returns
    -------
    Estimate or None
        None of fewer than two items or :data:`FEWEST` learners, or where all have the same total.
    """
    from scipy import stats

    table = np.asarray(scores, float)
    if table.ndim != 2 or len(table) < FEWEST or table.shape[1] < 2:
        return None
    learners, items = table.shape
    of_total = float(np.var(table.sum(axis=1), ddof=1))
    if of_total < 1e-12:
        return None
    alpha = items / (items - 1) * (1 - float(np.var(table, axis=0, ddof=1).sum()) / of_total)
    free = learners - 1, (learners - 1) * (items - 1)
    tail = (1 - CONFIDENCE) / 2
    low, high = (1 - (1 - alpha) * float(stats.f.ppf(part, *free)) for part in (1 - tail, tail))
    return Estimate(alpha, low, high) if math.isfinite(alpha) else None
