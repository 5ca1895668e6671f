"""Measure whether what learners are given is equally hard, whoever gets which variant.

Somebody of a given skill gets each step of the work right with that chance, and answers at random
where a step fails. A step is a line of a list, a tick, a step of an order, a move of the hand, the
working of one figure (or as many as ``ref(…, steps=…)`` says). What such a learner earns on average
is worked out for each variant, without any luck of theirs in it; how far these means spread over
the variants is how much the draw decides of a mark.

A random sheet of guesses is a sheet too: the line that is taken off against guessing belongs to it,
and is taken off each task as if each could pay.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from statistics import pstdev

from twoshaft_grader.marking.kinds import judge_of
from twoshaft_grader.marking.reference import Solution
from twoshaft_grader.marking.task import field_points, sheet_line
from twoshaft_grader.notebooks.sheets import Sheet, Sheets, sheets_of

SKILLS = (0.5, 0.7, 0.9)
"""Chances to get a step right: a beginner's, a learner's on the way, one's who is nearly there."""
MOST = 0.05
"""The most that the means may spread (standard deviation), as a part of a task's points."""
VARIANTS = 200
"""How many variants are measured where time matters little."""
IN_BUILD = 32
"""How many the build tries: as many as other proofs have drawn by then."""
WHOLE = "the whole module"


@dataclass(frozen=True)
class Spread:
    """How far the mean marks of equally skilled learners spread over variants.

    Attributes
    ----------
    task : str
        The task, or :data:`WHOLE`.
    skill : float
        The skill of :data:`SKILLS` with which it spreads most.
    deviation : float
        Standard deviation of the means, as a part of the points.
    low, high : float
        Least and most mean, as parts of the points.
    field : str
        The field whose share of the task's points spreads most; empty for the whole module.
    """

    task: str
    skill: float
    deviation: float
    low: float
    high: float
    field: str = ""

    @property
    def holds(self) -> bool:
        """Whether it spreads less than it may."""
        return self.deviation < MOST


def measure(solution: Solution, sheets: Iterable[Sheet]) -> list[Spread]:
    """Measure each task, and the whole module.

    Parameters
    ----------
    solution : Solution
    sheets : iterable of Sheet
        A variant each.

    Returns
    -------
    list of Spread
        The module, then its tasks in their order.
    """
    variants = [_Variant.of(solution, sheet) for sheet in sheets]
    found = [_spread(WHOLE, [one.whole(solution.points) for one in variants])]
    for task in solution.points:
        names = dict.fromkeys(name for one in variants for name in one.parts[task])
        parts = {name: [one.parts[task].get(name, _NOTHING) for one in variants] for name in names}
        moved = {name: _spread(name, means).deviation for name, means in parts.items()}
        means = [one.task(task) for one in variants]
        found.append(_spread(task, means, max(moved, key=lambda name: moved[name])))
    return found


_Means = Sequence[float]  # a mean for each of SKILLS
_NOTHING = (0.0,) * len(SKILLS)


def _spread(task: str, variants: Sequence[_Means], field: str = "") -> Spread:
    """The worst of the skills."""
    skill, means = max(
        zip(SKILLS, zip(*variants, strict=True), strict=True), key=lambda pair: pstdev(pair[1])
    )
    return Spread(task, skill, pstdev(means), min(means), max(means), field)


@dataclass(frozen=True)
class _Variant:
    """What learners earn of one sheet on average.

    Attributes
    ----------
    parts : dict of str to dict of str to means
        Of each task's points the part that each field brings, before the line.
    line : float
        The line that is taken off.
    """

    parts: dict[str, dict[str, _Means]]
    line: float

    @classmethod
    def of(cls, solution: Solution, sheet: Sheet) -> _Variant:
        clean = sheet.clean
        points = field_points(solution, clean, clean.fields)
        parts: dict[str, dict[str, _Means]] = {}
        for task, names in clean.tasks.items():
            parts[task] = {}
            for name in names:
                asked, reference = clean.fields[name], clean.references[name]
                part = points[name] / solution.points[task]
                parts[task][name] = [
                    part * judge_of(asked).mean_share(asked, reference, skill**reference.steps)
                    for skill in SKILLS
                ]
        return cls(parts, sheet_line(solution, clean, points))

    def task(self, task: str) -> _Means:
        """What is earned of a task's points."""
        earned = (sum(means) for means in zip(*self.parts[task].values(), strict=True))
        return [max(0.0, (one - self.line) / (1 - self.line)) for one in earned]

    def whole(self, points: dict[str, float]) -> _Means:
        """What is earned of all points."""
        total = sum(points.values())
        tasks = [[points[task] / total * one for one in self.task(task)] for task in self.parts]
        return [sum(means) for means in zip(*tasks, strict=True)]


def findings(sheets: Sheets) -> Iterator[str]:
    """Tasks that are not equally hard for all, in modules where all are; the proof asks."""
    for one in measure(sheets.solution, sheets.variants(IN_BUILD)):
        if not one.holds:
            most = f", {one.field} most" if one.field else ""
            yield (
                f"{one.task} is harder for some than for others{most}: who gets "
                f"{100 * one.skill:g} % of the steps right earns {100 * one.low:.0f} to "
                f"{100 * one.high:.0f} % by the variant alone, with a standard deviation of "
                f"{100 * one.deviation:.1f} %."
            )


def tables(root: Path, only: Sequence[str] = (), variants: int = VARIANTS) -> Iterator[str]:
    """Measure built solutions on the default unit; one table a module.

    Parameters
    ----------
    root : pathlib.Path
        The root of the project.
    only : sequence of str
        Beginnings of the files' names; every solution if there are none.
    variants : int
        How many variants of each task.

    Yields
    ------
    str
        Lines of: standard deviation, least and most mean mark in per cent, the skill with which
        it spreads most, the field that moves most; a star where it spreads more than it may.
    """
    for sheets in sheets_of(root, only):
        lines = [f"{sheets.solution.module:24}{'spread':>8}{'from':>7}{'to':>5}{'skill':>7}"]
        for one in measure(sheets.solution, sheets.variants(variants)):
            figures = f"{100 * one.deviation:8.1f}{100 * one.low:7.0f}{100 * one.high:5.0f}"
            star = "" if one.holds else " *"
            lines.append(f"  {one.task:22}{figures}{one.skill:7.1f}  {one.field}{star}".rstrip())
        yield "\n".join(lines) + "\n"
