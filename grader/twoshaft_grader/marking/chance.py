"""What guessing would earn, and the line above which a sheet's points count.

Questions with few options let a guess earn points. The line is the part of the points, among the
fields that were answered, above which points count: the lowest that leaves a sheet of guesses 4.5 %
of all points on average. It looks at the whole sheet at once, where luck evens out, so it is low. A
blank costs nothing. Every task pays for its own answers that are not right; only what a task cannot
pay comes off the others, first off those that are not wholly right.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

import numpy as np

from twoshaft.jobsheet.kinds import Field
from twoshaft_grader.marking.kinds import Reference, Spread, judge_of

GUESSED = 0.045
"""What a sheet of guesses may earn on average; under 5 % with room for what is only estimated."""
STEPS = 2000
EXACT = 1e-9  # points


def field_spread(asked: Field, reference: Reference) -> Spread:
    """What a random answer to one field earns.

    Parameters
    ----------
    asked : Field
    reference : Reference

    Returns
    -------
    tuple of (float, float)
        Share and probability, lowest share first.
    """
    return judge_of(asked).spread(asked, reference)


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
        A part of the points of the fields answered, 0 where guesses earn little enough.
    """
    parts = tuple(parts)
    answered = sum(points for points, _ in parts)
    if not answered:
        return 0.0
    target = GUESSED * maximum / answered
    chances = sheet_spread(parts)
    shares = np.linspace(0.0, 1.0, STEPS + 1)
    if chances @ shares <= target:
        return 0.0
    low, high = 0.0, 1.0 - 1.0 / STEPS
    for _ in range(40):
        middle = (low + high) / 2
        mean = chances @ np.maximum(0.0, (shares - middle) / (1.0 - middle))
        low, high = (middle, high) if mean > target else (low, middle)
    return float(high)


def sheet_spread(parts: Iterable[tuple[float, Spread]]) -> np.ndarray:
    """Return the probabilities that guesses earn 0, 1, …, :data:`STEPS` of STEPS of the parts.

    Parameters
    ----------
    parts
        As in :func:`guess_line`.

    Returns
    -------
    numpy.ndarray, shape (STEPS + 1,)
        What lies between two steps is split so that the mean is kept.
    """
    parts = tuple(parts)
    whole = sum(points for points, _ in parts)
    chances = np.zeros(STEPS + 1)
    chances[0] = 1.0
    for points, spread in parts:
        added = np.zeros_like(chances)
        for share, chance in spread:
            place = min(STEPS, share * points / whole * STEPS)
            low = int(place)
            for step, part in ((low, 1 - (place - low)), (low + 1, place - low)):
                if part > 0:
                    added[step:] += chance * part * chances[: STEPS + 1 - step]
        chances = added
    return chances


def count_from(line: float, earned: Sequence[float], answered: Sequence[float]) -> list[float]:
    """Take off what lies below the line.

    Parameters
    ----------
    line : float
        The sheet's line.
    earned, answered : sequence of float
        Of each task: points as its fields earn them, and the most that the fields answered give.

    Returns
    -------
    list of float
        Points of each task that count. Their sum is ``(earned - line * answered) / (1 - line)``
        of the whole sheet, never below nothing.

    Examples
    --------
    >>> count_from(0.2, [10.0, 6.0], [10.0, 10.0])
    [10.0, 5.0]
    >>> count_from(0.2, [10.0, 6.0, 0.0], [10.0, 10.0, 4.0])
    [10.0, 4.0, 0.0]
    >>> count_from(0.2, [10.0, 6.0, 0.0], [10.0, 10.0, 0.0])  # the third was left blank
    [10.0, 5.0, 0.0]
    """
    price = line / (1 - line)
    due = [price * (a - e) for e, a in zip(earned, answered, strict=True)]
    counted = [max(0.0, e - d) for e, d in zip(earned, due, strict=True)]
    rest = sum(max(0.0, d - e) for e, d in zip(earned, due, strict=True))
    for wholly in (False, True):
        mine = [i for i, d in enumerate(due) if (d <= EXACT) == wholly]
        left = sum(counted[i] for i in mine)
        taken = min(rest, left)
        for i in mine:
            counted[i] -= counted[i] * taken / left if left else 0.0
        rest -= taken
    return counted
