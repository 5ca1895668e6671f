"""Sheets of invented learners, which the proofs share: each is drawn and worked out once."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from pathlib import Path
from typing import Any

from twoshaft import DEFAULT_UNIT
from twoshaft.jobsheet import Answer, SheetData
from twoshaft.readings import issue_record
from twoshaft.units import Unit, load_unit
from twoshaft_grader.marking.kinds import Pick, judge_of
from twoshaft_grader.marking.reference import Answered, Solution, load_solution, run_clean

EARLIER = 12
"""Learners of earlier years, in their first to third attempt; those of today are in their first."""


@dataclass(frozen=True)
class Sheet:
    """One learner's sheet.

    Attributes
    ----------
    issued : mapping
        What was issued.
    clean : Answered
        What is asked, and what is right.
    """

    issued: Mapping[str, Any]
    clean: Answered

    @classmethod
    def of(cls, solution: Solution, unit: Unit, learner: str, attempt: int = 1) -> Sheet:
        """Draw and work out what somebody is asked."""
        issued = issue_record(
            solution.module, unit, salt="ignorance", learner=learner, attempt=attempt
        )
        return cls(issued, run_clean(solution, issued, unit))

    @cached_property
    def right(self) -> dict[str, Any]:
        """A full-mark answer to every field, as it is stored."""
        return {
            name: judge_of(self.clean.fields[name]).solve(self.clean.fields[name], one.value)
            for name, one in self.clean.references.items()
        }

    def picks(self, name: str) -> tuple[Pick, ...]:
        """What a field lets one pick out of options; nothing for other kinds of answer."""
        asked = self.clean.fields[name]
        return judge_of(asked).picks(asked, self.clean.references[name])

    def right_texts(self) -> Iterator[tuple[str, str]]:
        """What is asked and the text of an option that is right, for all of them."""
        for name in self.clean.references:
            for pick in self.picks(name):
                yield from ((pick.about, pick.options[key]) for key in sorted(pick.right))

    def filled(self, answers: Mapping[str, Any]) -> SheetData:
        """The sheet as handed in, with stored answers by field; None is none."""
        return SheetData(
            learner=self.issued["learner"],
            module=self.issued["module"],
            attempt=self.issued["attempt"],
            answers={n: Answer(value, 1) for n, value in answers.items() if value is not None},
        )


@dataclass(frozen=True)
class Sheets:
    """Sheets of one module on one unit, drawn as they are asked for, and kept."""

    solution: Solution
    unit: Unit
    _earlier: list[Sheet] = field(default_factory=list)
    _today: list[Sheet] = field(default_factory=list)

    @property
    def earlier(self) -> list[Sheet]:
        """Those of :data:`EARLIER` learners of earlier years."""
        while len(self._earlier) < EARLIER:
            at = len(self._earlier)
            self._earlier.append(self._drawn(f"earlier-{at}", at % 3 + 1))
        return self._earlier

    def today(self, learners: int) -> Iterator[Sheet]:
        """Those of some of today's learners."""
        for at in range(learners):
            if at == len(self._today):
                self._today.append(self._drawn(f"learner-{at}", 1))
            yield self._today[at]

    @property
    def known(self) -> tuple[Sheet, ...]:
        """All that were drawn so far."""
        return (*self._earlier, *self._today)

    def variants(self, number: int) -> Iterator[Sheet]:
        """So many sheets: those that are known, then more, which are not kept."""
        yield from self.known[:number]
        for at in range(number - len(self.known)):
            yield self._drawn(f"variant-{at}", at % 3 + 1)

    def _drawn(self, learner: str, attempt: int) -> Sheet:
        return Sheet.of(self.solution, self.unit, learner, attempt)


def sheets_of(root: Path, only: Sequence[str] = ()) -> Iterator[Sheets]:
    """Sheets of built solutions on the default unit, module by module.

    Parameters
    ----------
    root : pathlib.Path
        The root of the project.
    only : sequence of str
        Beginnings of the files' names; every solution if there are none.
    """
    unit = load_unit(DEFAULT_UNIT)
    for path in sorted((root / "solutions").glob("*.ipynb")):
        if not only or path.name.startswith(tuple(only)):
            yield Sheets(load_solution(path), unit)
