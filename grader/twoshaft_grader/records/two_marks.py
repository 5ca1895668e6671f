"""How far two markers agree: Cohen's kappa, as it is and weighted, with its interval.

Kappa by statsmodels (Cohen 1960; weighted: Cohen 1968, Psychological Bulletin 70, 213-220; standard
errors: Fleiss, Cohen and Everitt 1969).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

import numpy as np


class Band(StrEnum):
    """How much of a task's points somebody gave, in steps that two people can agree on."""

    NOTHING = "nothing"
    SOME = "less than enough"
    ENOUGH = "enough"
    ALL = "all"


BANDS = tuple(Band)


def band(points: float, maximum: float, enough: float = 0.6) -> Band:
    """The band of a task's points.

    Parameters
    ----------
    enough : float
        The part of the points from which they are enough.

    Examples
    --------
    >>> [band(points, 4).value for points in (0, 1, 2.4, 4)]
    ['nothing', 'less than enough', 'enough', 'all']
    """
    if points <= 1e-9:
        return Band.NOTHING
    if points >= maximum - 1e-9:
        return Band.ALL
    return Band.ENOUGH if points >= enough * maximum - 1e-9 else Band.SOME


@dataclass(frozen=True)
class Kappa:
    """Agreement beyond chance: 1 is all, 0 what chance gives; with its interval (95 %)."""

    value: float
    low: float
    high: float


def counts(one: Sequence[int], other: Sequence[int], kinds: int) -> np.ndarray:
    """How often each pair of judgements was given; rows are the first marker's."""
    table = np.zeros((kinds, kinds))
    np.add.at(table, (list(one), list(other)), 1)
    return table


def kappa(table: Sequence[Sequence[float]] | np.ndarray, weights: str = "") -> Kappa | None:
    """Cohen's kappa of a square table of counts.

    Parameters
    ----------
    weights : str
        Empty: every difference counts alike; ``linear`` or ``quadratic``: the farther apart, the
        more.

    Returns
    -------
    Kappa or None
        None where both gave one and the same judgement throughout, so that nothing can be said.
    """
    from statsmodels.stats.inter_rater import cohens_kappa  # loads pandas: a second

    table = np.asarray(table, float)
    used = (table.sum(axis=0) + table.sum(axis=1)) > 0
    if used.sum() < 2:
        return None
    kind = {"": None, "linear": "linear", "quadratic": "quadratic"}[weights]
    found = cohens_kappa(table, wt=kind)
    return Kappa(float(found.kappa), float(found.kappa_low), float(min(found.kappa_upp, 1.0)))
