"""What guessing would earn, and the line above which a sheet's points count.

Questions with few options let a guess earn points. The line is the part of the points, among the
fields that were answered, above which points count: the lowest that leaves a sheet of guesses 4.5 %
of all points on average. It looks at the whole sheet at once, where luck evens out, so it is low. A
blank costs nothing. Every task pays for its own answers that are not right; only what a task cannot
pay comes off the others, first off those that are not wholly right.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import comb

import numpy as np

from twoshaft.jobsheet.fields import Choice, Choices, Field, Film, Order
from twoshaft.jobsheet.hand_path import HandPath
from twoshaft.units.quantities import Q
from twoshaft_grader.marking.compare import allowed, choices_share, judge, right_keys
from twoshaft_grader.marking.reference import Reference

GUESSED = 0.045
"""What a sheet of guesses may earn on average; under 5 % with room for what is only estimated."""
PATH_GUESSED = ((0.0, 0.82), (1.0, 0.18))
"""What moves made at random show: the most of any misbuild in 5 moves, tried out."""
PROOF_GUESSED = ((0.0, 0.97), (0.7, 0.03))
"""What moves made at random prove of a lockout in 10 moves, tried out."""
ORDER_GUESSED = ((0.0, 0.8), (0.25, 0.2))
"""What a random order earns: 5 % on average by the order model, in a few small parts."""
FILM_GUESSED = ((0.0, 0.78), (0.1, 0.2), (1.0, 0.02))
"""What sealant laid at random earns: one size everywhere, or another on each stretch, tried out."""
STEPS = 2000
EXACT = 1e-9  # points

Spread = tuple[tuple[float, float], ...]
"""Shares that a random answer can earn, with their probabilities."""


def field_spread(asked: Field, reference: Reference) -> Spread:
    """What a random answer to one field earns.

    Every option is equally likely and every tick is a coin. A count is guessed among the first
    ten, or among as many as it is; any other number up to twice the right one.

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
    elif isinstance(asked, HandPath):
        return PATH_GUESSED if reference.value.direct is None else PROOF_GUESSED
    elif isinstance(asked, Film):
        return FILM_GUESSED
    elif isinstance(reference.value, int):
        hit = 1 / max(10, abs(reference.value))
        spread = {0.0: 1 - hit, 1.0: hit}
    else:
        spread = _figure_spread(reference)
    return tuple(sorted(spread.items()))


def _figure_spread(reference: Reference) -> dict[float, float]:
    """What a figure earns that is guessed anywhere up to twice the right one.

    The right one counts twice, since an answer may agree with either pass.
    """
    right = _quantity(reference.value)
    size = abs(float(right.magnitude))
    spread = {0.0: 1.0}
    wanted = [(right, 1.0), (right, 1.0)]
    wanted += [
        (_quantity(slip.value).to(right.units), slip.share)
        for slip in reference.slips
        if slip.share and isinstance(slip.value, Q | int | float)
    ]
    for value, share in wanted:
        hit = min(spread[0.0], allowed(value, reference.tolerance) / size) if size else 0.0
        if hit and abs(float(value.magnitude)) <= 2 * size:
            _add(spread, share, hit)
            spread[0.0] -= hit
    return spread


def _quantity(value: Q | float) -> Q:
    return value if isinstance(value, Q) else Q(value, "dimensionless")


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


def _add(spread: dict[float, float], share: float, chance: float) -> None:
    spread[share] = spread.get(share, 0.0) + chance
