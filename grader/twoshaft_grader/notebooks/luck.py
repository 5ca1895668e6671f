"""Prove that no outcome rests on luck: what who answers at random reaches of each.

An outcome may not rest on one figure or one choice alone, and who answers all its fields at random
may reach enough of it in at most :data:`MOST` of the cases, of each of its criteria in at most
:data:`MOST_CRITERION`. The line against guessing is left out, so luck is rather less than told.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from math import ceil, prod

from twoshaft.outcomes import load_rules
from twoshaft_grader.marking.chance import STEPS, field_spread, sheet_spread
from twoshaft_grader.marking.kinds import Reference, Spread
from twoshaft_grader.marking.reference import Answered

MOST = 0.05
"""How often luck may reach enough of an outcome: our own choice, as what guesses may earn."""
MOST_CRITERION = 0.2001
"""How often luck may reach enough of one criterion, by itself: one in five, our own choice (a bit
more, since a choice of five options is just that)."""
SINGLE = frozenset({"number", "choice"})
"""Kinds of answer that are one thing, right or wrong."""


def findings(
    clean: Answered, points: Mapping[str, float], outcomes: Iterable[str]
) -> Iterator[str]:
    """What of an outcome is left to luck, a sentence each.

    Parameters
    ----------
    clean : Answered
        A sheet, and what is right.
    points : mapping of str to float
        The points of each field.
    outcomes : iterable of str
        Ids of the module's outcomes.
    """
    rules = load_rules()
    for outcome in outcomes:
        behind = [one for one in clean.references.values() if one.outcome == outcome]
        if not behind:
            continue  # another proof tells
        if len(behind) == 1 and clean.fields[behind[0].name].kind in SINGLE:
            yield f"{outcome} rests on {behind[0].name} alone, which is one answer."
        enough = rules.of(outcome)
        worth = {one.name: _worth(clean, points, one) for one in behind}
        chances = {
            criterion: reaches(
                [worth[one.name] for one in behind if criterion in one.shows],
                enough.each_criterion,
            )
            for criterion in dict.fromkeys(id for one in behind for id in one.shows)
        }
        # What is enough asks for the sum and for every criterion: the hardest bounds it.
        luck = min([reaches(worth.values(), enough.points), *chances.values()])
        if luck > MOST:
            yield f"luck reaches {outcome} in {100 * luck:.0f} of 100 cases."
        for criterion, chance in chances.items():
            if chance > MOST_CRITERION:
                yield f"luck reaches {criterion} of {outcome} in {100 * chance:.0f} of 100 cases."


Worth = tuple[float, Spread, bool]
"""Points of a field, what a guess earns of it, and whether it decides."""


def reaches(worths: Iterable[Worth], needed: float) -> float:
    """How often guesses reach a part of the points of some fields, each deciding one right.

    Parameters
    ----------
    worths : iterable of (points, spread, deciding)
    needed : float
        The part of their points.

    Returns
    -------
    float
        0 to 1.

    Examples
    --------
    >>> coin = ((0.0, 0.5), (1.0, 0.5))
    >>> reaches([(1.0, coin, False), (1.0, coin, False)], 0.5), reaches([(1.0, coin, True)], 0.0)
    (0.75, 0.5)
    """
    worths = [*worths]
    sure = sum(points for points, _, deciding in worths if deciding)
    right = prod(_full(spread) for _, spread, deciding in worths if deciding)
    open_ = [(points, spread) for points, spread, deciding in worths if not deciding]
    left = sum(points for points, _ in open_)
    wanted = needed * (sure + left) - sure
    if wanted <= 0 or not open_:
        return right
    # A share between two steps is split: what lies on the bound counts as reached.
    below = sheet_spread(open_)[: max(0, ceil(wanted / left * STEPS) - len(open_))]
    return right * (1 - float(below.sum()))


def _worth(clean: Answered, points: Mapping[str, float], one: Reference) -> Worth:
    return points[one.name], field_spread(clean.fields[one.name], one), one.must_pass


def _full(spread: Spread) -> float:
    return sum(chance for share, chance in spread if share >= 1)
