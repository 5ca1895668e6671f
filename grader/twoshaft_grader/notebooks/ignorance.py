"""Measure what somebody earns who knows nothing of the work, but how tests are made.

Each way of not knowing answers the sheets of some invented learners. None may get more than its
:class:`Most`. Options are read as people read them: by their words.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from random import Random
from statistics import mean
from typing import Any

from twoshaft.outcomes import load_outcomes
from twoshaft_grader.marking.kinds import Pick, judge_of
from twoshaft_grader.marking.task import mark_sheet
from twoshaft_grader.notebooks.sheets import Sheet, Sheets, sheets_of

HANDED_DOWN, COPIED = "the list handed down", "a friend's sheet"


@dataclass(frozen=True)
class Most:
    """The most that a way of not knowing may get: limits, each a part of one (our own choice).

    Attributes
    ----------
    earned : float
        Of a module's points, on average.
    passed : float
        How often it passes a must-pass outcome.
    right : float
        How often it has a must-pass item right.
    """

    earned: float = 0.05
    passed: float = 0.05
    right: float = 1.0


MOST = {HANDED_DOWN: Most(0.10, 0.10, 0.10), COPIED: Most(0.15, 0.0)}
"""Where a way may get another :class:`Most` than the usual one."""

_HEDGES = {
    *("or", "if", "unless", "until", "only", "usually", "may", "might", "can", "could", "should"),
    *("both", "either", "depending", "depends", "perhaps", "mostly", "nearly", "about", "enough"),
    *("first", "then", "before", "after"),
}
_LITTLE = {
    *("a", "an", "and", "are", "as", "at", "be", "by", "for", "from", "has", "have", "in", "is"),
    *("it", "its", "no", "not", "of", "on", "or", "so", "that", "the", "them", "then", "there"),
    *("they", "this", "to", "was", "what", "when", "where", "which", "who", "why", "will"),
    *("with", "you", "your"),
}


@dataclass(frozen=True)
class Ignorance:
    """What one way of not knowing gets from a module.

    Attributes
    ----------
    how : str
        The way, in words.
    earned : float
        Mean part of the points, 0 to 1.
    passed : float
        How often a must-pass outcome was enough, of all there were.
    right : float
        How often a must-pass item that offers options was passed.
    """

    how: str
    earned: float
    passed: float
    right: float

    @property
    def holds(self) -> bool:
        """Whether it gets no more than it may."""
        return self.holds_points and self.holds_must_pass

    @property
    def holds_points(self) -> bool:
        """Whether it earns less than it may."""
        return self.earned < self.most.earned

    @property
    def holds_must_pass(self) -> bool:
        """Whether it passes no more of what must be passed than it may."""
        return self.passed <= self.most.passed and self.right <= self.most.right

    @property
    def most(self) -> Most:
        """What it may get."""
        return MOST.get(self.how, Most())


def measure(sheets: Sheets, learners: int = 20) -> list[Ignorance]:
    """Try every way of not knowing on some learners' sheets.

    Parameters
    ----------
    sheets : Sheets
        Of the module.
    learners : int
        How many of today's learners.

    Returns
    -------
    list of Ignorance
        One for each way.
    """
    solution = sheets.solution
    must_pass = {id for id, outcome in load_outcomes(module=solution.module).items()
                 if outcome.must_pass}  # fmt: skip
    handed_down = Counter(pair for one in sheets.earlier for pair in one.right_texts())
    ways = dict(_ways(handed_down, sheets.earlier))
    got = {how: _Got() for how in ways}
    for sheet in sheets.today(learners):  # every way on one sheet: it is worked out once
        for how, answer in ways.items():
            filled = sheet.filled({name: answer(sheet, name) for name in sheet.clean.references})
            mark = mark_sheet(filled, sheet.issued, solution, unit=sheets.unit, explain=False)
            got[how].earned.append(mark.points / mark.maximum)
            got[how].passed.extend(one.met for one in mark.outcomes if one.id in must_pass)
            got[how].right.extend(
                one.passed for one in mark.fields if one.must_pass and sheet.picks(one.name)
            )
    return [
        Ignorance(how, mean(one.earned), mean(one.passed or [False]), mean(one.right or [False]))
        for how, one in got.items()
    ]


@dataclass(frozen=True)
class _Got:
    """What one way got, sheet by sheet: parts of the points; each outcome, and each item."""

    earned: list[float] = field(default_factory=list)
    passed: list[bool] = field(default_factory=list)
    right: list[bool] = field(default_factory=list)


def findings(sheets: Sheets) -> Iterator[str]:
    """Ways of not knowing that get more than they may, a sentence each."""
    for one in measure(sheets):
        if not one.holds_points:
            yield (
                f"{one.how} earns {100 * one.earned:.1f} % of the points without knowing the "
                f"work; it must stay below {100 * one.most.earned:g} %."
            )
        if not one.holds_must_pass:
            yield (
                f"{one.how} passes {100 * one.passed:.1f} % of the must-pass outcomes and has "
                f"{100 * one.right:.1f} % of the must-pass items right."
            )


def tables(root: Path, only: Sequence[str] = ()) -> Iterator[str]:
    """Measure built solutions on the default unit; one table a module.

    Parameters
    ----------
    root : pathlib.Path
        The root of the project.
    only : sequence of str
        Beginnings of the files' names; every solution if there are none.

    Yields
    ------
    str
        Lines of: part of the points, must-pass outcomes passed, must-pass choices right, in
        per cent; a star where it is more than it may be.
    """
    for sheets in sheets_of(root, only):
        lines = [f"{sheets.solution.module:24}{'points':>9}{'must-pass':>11}{'choices':>9}"]
        for one in measure(sheets):
            shares = (one.earned, one.passed, one.right)
            figures = [f"{100 * share:.1f}" for share in shares]
            star = "" if one.holds else " *"
            lines.append(f"  {one.how:22}{figures[0]:>9}{figures[1]:>11}{figures[2]:>9}{star}")
        yield "\n".join(lines) + "\n"


Way = Callable[[Sheet, str], Any]
"""Gives the stored answer to a field of a sheet, None where it gives none."""


def _ways(handed_down: Counter[tuple[str, str]], friends: list[Sheet]) -> Iterator[tuple[str, Way]]:
    yield "at random", _random
    yield "the longest", _best(lambda pick, text: len(text))
    yield "the shortest", _best(lambda pick, text: -len(text))
    yield "the first", _best(lambda pick, text: 0)
    yield "the most hedged", _best(lambda pick, text: _hedges(text))
    yield "words of the question", _best(lambda pick, text: _echo(pick.about, text))
    yield "tick everything", _everything
    yield "tick nothing", lambda sheet, name: None
    yield HANDED_DOWN, _handed_down(handed_down)
    yield COPIED, _copied(friends[0])


def _random(sheet: Sheet, name: str) -> Any:
    asked = sheet.clean.fields[name]
    seed = f"{sheet.issued['learner']} {name}"
    return judge_of(asked).guess(asked, sheet.clean.references[name], Random(seed))


def _picking(keys: Callable[[Pick], Sequence[str]]) -> Way:
    """Picks in every field that offers options; nothing elsewhere."""

    def answer(sheet: Sheet, name: str) -> Any:
        picks = sheet.picks(name)
        if not picks:
            return None
        asked = sheet.clean.fields[name]
        return judge_of(asked).picked(asked, [keys(pick) for pick in picks])

    return answer


def _best(worth: Callable[[Pick, str], float]) -> Way:
    """The option that is worth most; where several are asked for, all above the middle."""

    def keys(pick: Pick) -> Sequence[str]:
        worths = {key: worth(pick, text) for key, text in pick.options.items()}
        if not pick.several:
            return [max(worths, key=lambda key: worths[key])]
        middle = mean(worths.values())
        return [key for key, one in worths.items() if one > middle] or [next(iter(worths))]

    return _picking(keys)


_everything = _picking(lambda pick: [*pick.options] if pick.several else [])


def _words(text: str) -> set[str]:
    return set(re.findall(r"[a-z]{3,}", text.lower())) - _LITTLE


def _hedges(text: str) -> int:
    return sum(word in _HEDGES for word in re.findall(r"[a-z]+", text.lower()))


def _echo(about: str, text: str) -> float:
    words = _words(text)
    return len(words & _words(about)) / (len(words) or 1)


def _handed_down(known: Counter[tuple[str, str]]) -> Way:
    """What was right for the same question, or else for any other, most often."""
    anywhere: Counter[str] = Counter()
    for (_, text), times in known.items():
        anywhere[text] += times

    def keys(pick: Pick) -> Sequence[str]:
        here = {key: known[pick.about, text] for key, text in pick.options.items()}
        seen = here if any(here.values()) else {k: anywhere[t] for k, t in pick.options.items()}
        seen = {key: times for key, times in seen.items() if times}
        if not seen:
            return []
        return [*seen] if pick.several else [max(seen, key=lambda key: seen[key])]

    return _picking(keys)


def _copied(friend: Sheet) -> Way:
    """All that stood on a friend's full sheet: options by their words, the rest as it stood."""

    def answer(sheet: Sheet, name: str) -> Any:
        if not sheet.picks(name):
            return friend.right.get(name)
        if name not in friend.clean.references:
            return None
        theirs = {
            pick.about: {pick.options[key] for key in pick.right} for pick in friend.picks(name)
        }
        same = _picking(
            lambda pick: [k for k, t in pick.options.items() if t in theirs.get(pick.about, ())]
        )
        return same(sheet, name)

    return answer
