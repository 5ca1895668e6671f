"""What guessing would earn, and the line above which a sheet's points count.

Questions with few options let a guess earn points. The line is the part of all points above which
a sheet's points count: the lowest that leaves a sheet of guesses 4.5 % on average. It looks at the
fields that were answered and can be guessed, over the whole sheet at once, where luck evens out;
so it is low, and a blank costs nothing. What it takes off is taken from the tasks that are not
wholly right; only what is left after that comes off the others.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import comb

import numpy as np

from twoshaft.jobsheet.fields import Choice, Choices, Field, Order
from twoshaft_grader.marking.compare import choices_share, judge, right_keys
from twoshaft_grader.marking.reference import Reference

GUESSED = 0.045
"""What a sheet of guesses may earn on average; under 5 % with room for what is only estimated."""
ORDER_GUESSED = ((0.0, 0.8), (0.25, 0.2))
"""What a random order earns: 5 % on average by the order model, in a few small parts."""
STEPS = 2000

Spread = tuple[tuple[float, float], ...]
"""Shares that a random answer can earn, with their probabilities."""


def field_spread(asked: Field, reference: Reference) -> Spread:
    """What a random answer to one field earns.

    Every option is equally likely and every tick is a coin. A count is guessed among the first
    ten, or among as many as it is; any other number is not guessed.

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
        return ORDER_GUESSED
    elif isinstance(reference.value, int):
        hit = 1 / max(10, abs(reference.value))
        spread = {0.0: 1 - hit, 1.0: hit}
    else:
        spread = {0.0: 1.0}
    return tuple(sorted(spread.items()))


def guess_line(parts: Iterable[tuple[float, Spread]], maximum: float) -> float:
    """Return the line of a sheet: the lowest that leaves guesses :data:`GUESSED` on average.

    Parameters
    ----------
    parts : iterable of (points, spread)
        Of each field that was answered: the most it can earn, and what a guess earns of it.
    maximum : float
        Points of the whole sheet.

    Returns
    -------
    float
        A part of ``maximum``, 0 where guesses earn little enough without a line.
    """
    chances = sheet_spread(parts, maximum)
    shares = np.linspace(0.0, 1.0, STEPS + 1)
    if chances @ shares <= GUESSED:
        return 0.0
    low, high = 0.0, 1.0 - 1.0 / STEPS
    for _ in range(40):
        middle = (low + high) / 2
        mean = chances @ np.maximum(0.0, (shares - middle) / (1.0 - middle))
        low, high = (middle, high) if mean > GUESSED else (low, middle)
    return float(high)


def sheet_spread(parts: Iterable[tuple[float, Spread]], maximum: float) -> np.ndarray:
    """Return the probabilities that guesses earn 0, 1, …, :data:`STEPS` of STEPS of a sheet.

    Parameters
    ----------
    parts, maximum
        As in :func:`guess_line`.

    Returns
    -------
    numpy.ndarray, shape (STEPS + 1,)
        What lies between two steps is split so that the mean is kept.
    """
    chances = np.zeros(STEPS + 1)
    chances[0] = 1.0
    for points, spread in parts:
        added = np.zeros_like(chances)
        for share, chance in spread:
            place = min(STEPS, share * points / maximum * STEPS)
            low = int(place)
            for step, part in ((low, 1 - (place - low)), (low + 1, place - low)):
                if part > 0:
                    added[step:] += chance * part * chances[: STEPS + 1 - step]
        chances = added
    return chances


def above_line(share: float, line: float) -> float:
    """Return the part of the points that a share earns above the line, 0 to 1.

    Examples
    --------
    >>> above_line(0.75, 0.5), above_line(0.4, 0.5), above_line(1.0, 0.5)
    (0.5, 0.0, 1.0)
    """
    return min(1.0, max(0.0, (share - line) / (1 - line)))


def count_from(line: float, earned: Sequence[float], maxima: Sequence[float]) -> list[float]:
    """Take off what lies below the line: first from tasks that are not wholly right.

    Parameters
    ----------
    line : float
        The sheet's line.
    earned, maxima : sequence of float
        Points of each task as its fields earn them, and the most it gives.

    Returns
    -------
    list of float
        Points of each task that count; their sum is what the line leaves of the whole.

    Examples
    --------
    >>> count_from(0.1, [10.0, 5.0], [10.0, 10.0])  # 75 % counts as 72.2 %
    [10.0, 4.444444444444445]
    >>> count_from(0.1, [10.0, 10.0], [10.0, 10.0])
    [10.0, 10.0]
    """
    whole = sum(maxima)
    off = sum(earned) - whole * above_line(sum(earned) / whole, line)
    partly = [p if p < m * (1 - 1e-9) else 0.0 for p, m in zip(earned, maxima, strict=True)]
    first = min(off, sum(partly))
    rest = off - first
    fully = [p - q for p, q in zip(earned, partly, strict=True)]
    return [
        (q * (1 - first / sum(partly)) if q else 0.0) + (f * (1 - rest / sum(fully)) if f else 0.0)
        for q, f in zip(partly, fully, strict=True)
    ]


def _add(spread: dict[float, float], share: float, chance: float) -> None:
    spread[share] = spread.get(share, 0.0) + chance
