"""What marking gives: marks of fields, tasks and outcomes, as plain data."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Verdict(StrEnum):
    """What became of one answer, in a word or two."""

    RIGHT = "right"
    CARRIED = "right on your own figures"
    PARTLY = "partly right"
    WRONG = "not right"
    UNANSWERED = "not answered"
    UNREADABLE = "could not be read"


@dataclass(frozen=True)
class FieldMark:
    """The mark of one field.

    Attributes
    ----------
    name, task, kind, prompt : str
        Which field, and what was asked.
    answer : str
        What was answered, in words; empty if nothing.
    verdict : Verdict
    share, weight : float
        Part of the field's marks earned, 0 to 1; its weight within the task.
    sentences : tuple of str
        What and why, two at most.
    details : tuple of str
        Rules that were broken.
    cost : str
        What it would have cost at the bench.
    outcome : str
        Outcome id.
    must_pass : bool
        Whether the field is a must-pass item.
    passed : bool
        Whether it is passed; judged on the clean pass alone.
    carried : bool
        Whether the mark was earned on the learner's own earlier figures.
    lesson : str
        Where to read.
    shows : tuple of str
        Criteria of the outcome that the field shows.
    picture : str
        The right place, or what is in the way, as SVG; empty where there is none.
    """

    name: str
    task: str
    kind: str
    prompt: str
    answer: str
    verdict: Verdict
    share: float
    weight: float
    sentences: tuple[str, ...]
    details: tuple[str, ...]
    cost: str
    outcome: str
    must_pass: bool
    passed: bool
    carried: bool
    lesson: str
    shows: tuple[str, ...] = ()
    picture: str = ""


@dataclass(frozen=True)
class BenchUse:
    """Figures from the real bench that stood in the place of issued ones.

    Attributes
    ----------
    task : str
        The task they were typed for.
    tasks : tuple of str
        All tasks that were marked on them.
    figures : tuple of (str, str, str)
        Prompt, value in words, and where it comes from.
    page : str
        Page of the maker's manual; empty where no limit was asked for.
    read_by : str
        Who read them, as typed.
    """

    task: str
    tasks: tuple[str, ...]
    figures: tuple[tuple[str, str, str], ...]
    page: str
    read_by: str

    @property
    def sentence(self) -> str:
        """The figures by where they come from, and who read them, as one line."""
        told = []
        for origin in dict.fromkeys(origin for _, _, origin in self.figures):
            mine = [
                f"{prompt}: {value}" for prompt, value, where in self.figures if where == origin
            ]
            told.append(f"{origin[:1].upper()}{origin[1:]}: {'; '.join(mine)}.")
        return f"{' '.join(told)} Read by {self.read_by}."


@dataclass(frozen=True)
class TaskMark:
    """The mark of one task.

    Attributes
    ----------
    id, title : str
    points, maximum : float
        What counts, and the most there is.
    earned : float
        Points as the fields earn them, before the sheet's line for guessing.
    fields : tuple of FieldMark
    """

    id: str
    title: str
    points: float
    maximum: float
    earned: float
    fields: tuple[FieldMark, ...]


@dataclass(frozen=True)
class CriterionMark:
    """What one sheet shows of one criterion of an outcome.

    Attributes
    ----------
    id : str
    points, maximum : float
        Points of the fields that show it; a field that shows two counts for both.
    enough : bool
        Whether that is enough by the rules.
    """

    id: str
    points: float
    maximum: float
    enough: bool


@dataclass(frozen=True)
class OutcomeMark:
    """What one sheet shows of one outcome.

    Attributes
    ----------
    id : str
    points, maximum : float
        The outcome's part of the tasks' points.
    must_pass_failed : tuple of str
        Fields whose must-pass was not passed.
    met : bool
        Whether the sheet is enough by the rules: points, each criterion, and every must-pass.
    criteria : tuple of CriterionMark
        Those that a field shows.
    needed, needed_each : float
        The rules: the part of the outcome's points that is enough, and of each criterion's.
    """

    id: str
    points: float
    maximum: float
    must_pass_failed: tuple[str, ...]
    met: bool
    criteria: tuple[CriterionMark, ...] = ()
    needed: float = 0.6
    needed_each: float = 0.0

    @property
    def short_of_points(self) -> bool:
        """Whether nothing but points is wanting."""
        sound = not self.must_pass_failed and all(one.enough for one in self.criteria)
        return sound and not self.met


@dataclass(frozen=True)
class SheetMark:
    """The mark of one job sheet.

    Attributes
    ----------
    learner, module, attempt : str, str, int
        As issued.
    title : str
        The module's title.
    course_version, unit, unit_version : str
        As issued.
    line : float
        The part of the points of the fields answered above which points count; guessing
        reaches it.
    tasks : tuple of TaskMark
    outcomes : tuple of OutcomeMark
    notes : tuple of str
        For staff: what was ignored, and what does not fit together.
    solution_digest : str
        SHA-256 of the solution notebook.
    bench : tuple of BenchUse
        The tasks that were done, and marked, on figures from the real bench.
    """

    learner: str
    module: str
    attempt: int
    title: str
    course_version: str
    unit: str
    unit_version: str
    line: float
    tasks: tuple[TaskMark, ...]
    outcomes: tuple[OutcomeMark, ...]
    notes: tuple[str, ...]
    solution_digest: str
    bench: tuple[BenchUse, ...] = ()

    @property
    def points(self) -> float:
        """Points of all tasks."""
        return round(sum(task.points for task in self.tasks), 2)

    @property
    def maximum(self) -> float:
        """Most points that there are."""
        return sum(task.maximum for task in self.tasks)

    @property
    def met(self) -> bool:
        """Whether every outcome of the module is met."""
        return all(outcome.met for outcome in self.outcomes)

    @property
    def fields(self) -> tuple[FieldMark, ...]:
        """All fields in the sheet's order."""
        return tuple(field for task in self.tasks for field in task.fields)

    def task(self, id: str) -> TaskMark:
        """Return one task's mark; KeyError when there is no such task."""
        return {task.id: task for task in self.tasks}[id]

    def bench_of(self, task: str) -> BenchUse | None:
        """The figures from the bench that a task was marked on, if any."""
        return next((use for use in self.bench if task in use.tasks), None)


def differences(before: SheetMark, after: SheetMark) -> str:
    """What differs between two marks of the same work, in words; empty where nothing does."""
    said = []
    if abs(before.points - after.points) > 0.005:
        said.append(f"from {before.points:g} to {after.points:g} points")
    old = {one.id: one for one in before.tasks}
    for task in after.tasks:
        was = old.get(task.id)
        if was is not None and abs(was.points - task.points) > 0.005:
            said.append(f"{task.title}: {was.points:g} to {task.points:g}")
    passed = {one.name: one.passed for one in before.fields if one.must_pass}
    for field in after.fields:
        if field.must_pass and passed.get(field.name, field.passed) != field.passed:
            said.append(f"must-pass “{field.prompt}”: {_enough(not field.passed)} to "
                        f"{_enough(field.passed)}")  # fmt: skip
    met = {one.id: one.met for one in before.outcomes}
    for outcome in after.outcomes:
        if met.get(outcome.id, outcome.met) != outcome.met:
            said.append(f"{outcome.id}: {_enough(not outcome.met)} to {_enough(outcome.met)}")
    return "; ".join(said)


def _enough(holds: bool) -> str:
    return "enough" if holds else "not yet"
