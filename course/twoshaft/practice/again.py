"""Which questions of earlier lessons come back, and when."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Mapping, Sequence
from datetime import UTC, datetime

from twoshaft.stored.practice import Try

GAPS_DAYS = (2.0, 7.0, 28.0)
"""Days until a question is asked again: after an answer that was not right, after one right answer,
and after two or more right answers in a row.

The best gap is 20 to 40 % of the time until something is needed if that is a week, and 5 to 10 % if
it is a year (Cepeda, Vul, Rohrer, Wixted and Pashler 2008, Psychological Science 19, 1095–1102):
2 of 7 days, 28 of 365. Widening gaps keep more in mind on the way than equal ones (Kang, Lindsey,
Mozer and Pashler 2014, Psychonomic Bulletin & Review 21). The middle gap is our choice.
"""

RULE = (
    f"A question comes back after {GAPS_DAYS[0]:g} days if your answer was not right, after "
    f"{GAPS_DAYS[1]:g} days if it was right, and after {GAPS_DAYS[2]:g} days if it was right twice "
    "(widening gaps, after Cepeda et al. 2008 and Kang et al. 2014). Nothing here is marked."
)
"""The same in words for learners."""

_NEVER_ASKED = 1.0


def overdue(tries: Sequence[Try], now: datetime) -> float:
    """How far a question is due: 1 where its gap has just passed, less before.

    Parameters
    ----------
    tries : sequence of Try
        What was said to it, oldest first.
    now : datetime
        With its time zone.

    Returns
    -------
    float
        Time since the last try divided by the gap; 1 where it was never asked.
    """
    if not tries:
        return _NEVER_ASKED
    row = 0
    for one in reversed(tries):
        if not one.right:
            break
        row += 1
    gap = GAPS_DAYS[min(row, len(GAPS_DAYS) - 1)]
    return (now - _moment(tries[-1].at, now)).total_seconds() / 86_400 / gap


def choose(
    keys: Iterable[str], tries: Mapping[str, Sequence[Try]], now: datetime, count: int
) -> tuple[str, ...]:
    """Questions to ask now, the most overdue first, from as many modules as there are.

    Parameters
    ----------
    keys : iterable of str
        ``module/question`` of all that can be asked.
    tries : mapping
        What was said to them.
    now : datetime
        With its time zone. Questions that are equally due take turns from day to day.
    count : int
        How many at most.
    """
    day = now.astimezone(UTC).date().isoformat()

    def rank(key: str) -> tuple[float, str]:
        mixed = hashlib.sha256(f"{day} {key}".encode()).hexdigest()
        return -overdue(tries.get(key, ()), now), mixed

    ranked = sorted(keys, key=rank)
    modules: list[str] = []
    chosen: list[str] = []

    def turn(key: str) -> tuple[bool, bool, int]:
        said = tries.get(key, ())
        due = overdue(said, now) >= 1
        wrong = due and bool(said) and not said[-1].right
        # What was wrong comes first, whatever its module.
        return not wrong, not due, 0 if wrong else modules.count(_module(key))

    while ranked and len(chosen) < count:
        best = min(ranked, key=turn)  # of equal ones the first, which is the most overdue
        ranked.remove(best)
        chosen.append(best)
        modules.append(_module(best))
    return tuple(chosen)


def _module(key: str) -> str:
    return key.partition("/")[0]


def _moment(text: str, now: datetime) -> datetime:
    try:
        return datetime.strptime(text, "%Y-%m-%dT%H:%M:%SZ").replace(tzinfo=UTC)
    except ValueError:
        return now
