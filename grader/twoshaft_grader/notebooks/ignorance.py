"""Measure what somebody earns who knows nothing of the work, but how tests are made.

Each way of not knowing answers the sheets of some invented learners. None should earn more than
:data:`MOST_EARNED`, nor pass a must-pass outcome more often than :data:`MOST_PASSED`. Options are
read as people read them: by their words.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from random import Random
from statistics import mean
from typing import Any

from twoshaft import DEFAULT_UNIT
from twoshaft.jobsheet import Answer, SheetData
from twoshaft.jobsheet.kinds.listed import Listed
from twoshaft.outcomes import load_outcomes
from twoshaft.readings import issue_record
from twoshaft.units import Unit, load_unit
from twoshaft_grader.marking.kinds import judge_of
from twoshaft_grader.marking.kinds.keys import KeysJudge, right_keys
from twoshaft_grader.marking.reference import Answered, Solution, load_solution, run_clean, solve
from twoshaft_grader.marking.task import mark_sheet

MOST_EARNED = 0.05
"""The largest part of a module's points that not knowing may earn on average."""
MOST_PASSED = 0.05
"""How often not knowing may pass a must-pass outcome."""
EARLIER = 12
"""Learners whose right answers were handed down."""

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
        return self.earned < MOST_EARNED and self.passed <= MOST_PASSED


def measure(solution: Solution, unit: Unit, learners: int = 20) -> list[Ignorance]:
    """Try every way of not knowing on some learners' sheets.

    Parameters
    ----------
    solution : Solution
    unit : Unit
    learners : int
        How many sheets.

    Returns
    -------
    list of Ignorance
        One for each way.
    """
    must_pass = {id for id, outcome in load_outcomes(module=solution.module).items()
                 if outcome.must_pass}  # fmt: skip
    earlier = [
        _Sheet.of(solution, unit, f"earlier-{number}", number % 3 + 1) for number in range(EARLIER)
    ]
    sheets = [_Sheet.of(solution, unit, f"learner-{number}", 1) for number in range(learners)]
    handed_down = Counter(text for one in earlier for text in one.right_texts())
    found = []
    for how, answer in _ways(handed_down, earlier):
        marks, passed, right = [], [], []
        for sheet in sheets:
            mark = mark_sheet(sheet.filled(answer), sheet.issued, solution, unit=unit)
            marks.append(mark.points / mark.maximum)
            passed += [one.met for one in mark.outcomes if one.id in must_pass]
            right += [
                one.passed for one in mark.fields if one.must_pass and sheet.options(one.name)
            ]
        found.append(Ignorance(how, mean(marks), mean(passed or [False]), mean(right or [False])))
    return found


def tables(root: Path) -> Iterator[str]:
    """Measure every built solution on the default unit; one table a module.

    Parameters
    ----------
    root : pathlib.Path
        The root of the project.

    Yields
    ------
    str
        Lines of: part of the points, must-pass outcomes passed, must-pass choices right, in
        per cent; a star where it is more than it may be.
    """
    unit = load_unit(DEFAULT_UNIT)
    for path in sorted((root / "solutions").glob("*.ipynb")):
        solution = load_solution(path)
        lines = [f"{solution.module:24}{'points':>9}{'must-pass':>11}{'choices':>9}"]
        for one in measure(solution, unit):
            shares = (one.earned, one.passed, one.right)
            figures = [f"{100 * share:.1f}" for share in shares]
            star = "" if one.holds else " *"
            lines.append(f"  {one.how:22}{figures[0]:>9}{figures[1]:>11}{figures[2]:>9}{star}")
        yield "\n".join(lines) + "\n"


Way = Callable[["_Sheet", str], Any]
"""Gives the stored answer to a field of a sheet, None where it gives none."""


@dataclass(frozen=True)
class _Sheet:
    """One learner's sheet, and what would be right on it."""

    issued: Mapping[str, Any]
    clean: Answered
    right: Mapping[str, Any]

    @classmethod
    def of(cls, solution: Solution, unit: Unit, learner: str, attempt: int) -> _Sheet:
        issued = issue_record(
            solution.module, unit, salt="ignorance", learner=learner, attempt=attempt
        )
        clean = run_clean(solution, issued, unit)
        return cls(issued, clean, solve(solution, issued, unit))

    def options(self, name: str) -> dict[str, str]:
        """Texts of what a field offers, by key; empty for other kinds of answer."""
        asked = self.clean.fields[name]
        if isinstance(asked, Listed) and isinstance(judge_of(asked), KeysJudge):
            return dict(asked.labels())
        return {}

    def right_texts(self) -> Iterator[str]:
        """Texts of all options that are right."""
        for name, reference in self.clean.references.items():
            options = self.options(name)
            if options:
                yield from (options[key] for key in right_keys(reference))

    def filled(self, answer: Way) -> SheetData:
        """The sheet as somebody fills it in."""
        given = {name: answer(self, name) for name in self.clean.references}
        return SheetData(
            learner=self.issued["learner"],
            module=self.issued["module"],
            attempt=self.issued["attempt"],
            answers={n: Answer(value, 1) for n, value in given.items() if value is not None},
        )


def _ways(handed_down: Counter[str], friends: list[_Sheet]) -> Iterator[tuple[str, Way]]:
    yield "at random", _random
    yield "the longest", _best(lambda sheet, name, text: len(text))
    yield "the shortest", _best(lambda sheet, name, text: -len(text))
    yield "the first", _best(lambda sheet, name, text: 0)
    yield "the most hedged", _best(lambda sheet, name, text: _hedges(text))
    yield "words of the question", _best(_echo)
    yield "tick everything", _everything
    yield "tick nothing", lambda sheet, name: None
    yield "the list handed down", _handed_down(handed_down)
    yield "a friend's sheet", _copied(friends[0])


def _random(sheet: _Sheet, name: str) -> Any:
    asked = sheet.clean.fields[name]
    seed = f"{sheet.issued['learner']} {name}"
    return judge_of(asked).guess(asked, sheet.clean.references[name], Random(seed))


def _several(sheet: _Sheet, name: str) -> bool:
    return isinstance(sheet.right[name], list)


def _best(worth: Callable[[_Sheet, str, str], float]) -> Way:
    """The option that is worth most; where several are asked for, all above the middle."""

    def answer(sheet: _Sheet, name: str) -> Any:
        options = sheet.options(name)
        if not options:
            return None
        worths = {key: worth(sheet, name, text) for key, text in options.items()}
        if not _several(sheet, name):
            return max(worths, key=lambda key: worths[key])
        middle = mean(worths.values())
        return [key for key, one in worths.items() if one > middle] or [next(iter(worths))]

    return answer


def _everything(sheet: _Sheet, name: str) -> Any:
    options = sheet.options(name)
    return [*options] if options and _several(sheet, name) else None


def _words(text: str) -> set[str]:
    return set(re.findall(r"[a-z]{3,}", text.lower())) - _LITTLE


def _hedges(text: str) -> int:
    return sum(word in _HEDGES for word in re.findall(r"[a-z]+", text.lower()))


def _echo(sheet: _Sheet, name: str, text: str) -> float:
    words = _words(text)
    return len(words & _words(sheet.clean.fields[name].prompt)) / (len(words) or 1)


def _handed_down(known: Counter[str]) -> Way:
    def answer(sheet: _Sheet, name: str) -> Any:
        options = sheet.options(name)
        seen = {key: known[text] for key, text in options.items() if known[text]}
        if not seen:
            return None
        return [*seen] if _several(sheet, name) else max(seen, key=lambda key: seen[key])

    return answer


def _copied(friend: _Sheet) -> Way:
    """All that stood on a friend's full sheet: options by their words, the rest as it stood."""

    def answer(sheet: _Sheet, name: str) -> Any:
        value = friend.right.get(name)
        options = sheet.options(name)
        if not options or value is None:
            return value
        theirs = friend.options(name)
        texts = {theirs[key] for key in (value if isinstance(value, list) else [value])}
        same = [key for key, text in options.items() if text in texts]
        if _several(sheet, name):
            return same or None
        return same[0] if same else None

    return answer
