"""From tasks to outcomes: what each task gives to each outcome, also after a change by hand."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace

from twoshaft_grader.marking.result import OutcomeMark, SheetMark, TaskMark

PASS_SHARE = 0.6
"""Part of an outcome's points that is enough: our own choice, the same for every outcome."""


@dataclass(frozen=True)
class Part:
    """What one task gives to one outcome.

    Attributes
    ----------
    task, outcome : str
        Ids.
    points, maximum : float
        The outcome's part of the task's points.
    must_pass : bool
        Whether one of the fields behind it is a must-pass item.
    failed : tuple of str
        Names of the must-pass fields that are not passed.
    """

    task: str
    outcome: str
    points: float
    maximum: float
    must_pass: bool
    failed: tuple[str, ...]

    @property
    def passed(self) -> bool:
        """Whether every must-pass item behind it is passed."""
        return not self.failed


def task_parts(task: TaskMark) -> list[Part]:
    """Split a task among its outcomes: points as its fields earned them, maximum by weight."""
    weights = sum(field.weight for field in task.fields)
    earned = sum(field.weight * field.share for field in task.fields)
    parts = []
    for outcome in dict.fromkeys(field.outcome for field in task.fields):
        mine = [field for field in task.fields if field.outcome == outcome]
        got = sum(field.weight * field.share for field in mine)
        parts.append(
            Part(
                task=task.id,
                outcome=outcome,
                points=task.points * got / earned if earned else 0.0,
                maximum=task.maximum * sum(field.weight for field in mine) / weights,
                must_pass=any(field.must_pass for field in mine),
                failed=tuple(field.name for field in mine if not field.passed),
            )
        )
    return parts


def sheet_parts(mark: SheetMark) -> list[Part]:
    """Split all tasks of a sheet among their outcomes."""
    return [part for task in mark.tasks for part in task_parts(task)]


def changed_parts(task: TaskMark, points: float) -> list[Part]:
    """Split a task among its outcomes after its points were changed by hand."""
    parts = task_parts(task)
    spread = share_out([(part.points, part.maximum) for part in parts], points)
    return [replace(part, points=new) for part, new in zip(parts, spread, strict=True)]


def share_out(parts: Sequence[tuple[float, float]], total: float) -> list[float]:
    """Spread a changed total over its parts.

    A person changes a task's score as one figure. What was added goes to the parts in proportion
    to what each lacks, what was taken off in proportion to what each had; what goes beyond the
    maximum in proportion to the maxima.

    Parameters
    ----------
    parts : sequence of (points, maximum)
        As marked.
    total : float
        The score after the change.

    Returns
    -------
    list of float
        New points of each part; their sum is ``total``.

    Examples
    --------
    >>> share_out([(2.0, 4.0), (1.0, 2.0)], 6.0), share_out([(2.0, 4.0), (1.0, 2.0)], 1.5)
    ([4.0, 2.0], [1.0, 0.5])
    """
    had, most = sum(p for p, _ in parts), sum(m for _, m in parts)
    if total > most or total < 0:
        return [m + (total - most) * m / most if total > 0 else total * m / most for _, m in parts]
    if total >= had:
        room = most - had
        return [p + (total - had) * (m - p) / room if room else p for p, m in parts]
    return [p * total / had for p, _ in parts]


def outcome_marks(parts: Iterable[Part]) -> tuple[OutcomeMark, ...]:
    """Add parts up to outcomes, in the order they come in."""
    by_outcome: dict[str, list[Part]] = {}
    for part in parts:
        by_outcome.setdefault(part.outcome, []).append(part)
    marks = []
    for id, mine in by_outcome.items():
        points, maximum = sum(p.points for p in mine), sum(p.maximum for p in mine)
        failed = tuple(name for part in mine for name in part.failed)
        marks.append(
            OutcomeMark(
                id=id,
                points=round(points, 2),
                maximum=round(maximum, 2),
                must_pass_failed=failed,
                met=not failed and points >= PASS_SHARE * maximum - 1e-9,
            )
        )
    return tuple(marks)


def with_points(mark: SheetMark, points: Mapping[str, float]) -> SheetMark:
    """Return a mark with the points of some tasks changed by hand, and the outcomes that follow.

    Parameters
    ----------
    mark : SheetMark
    points : mapping of str to float
        New points by task id.

    Returns
    -------
    SheetMark
    """
    if not points:
        return mark
    parts = [
        part
        for task in mark.tasks
        for part in (
            changed_parts(task, points[task.id]) if task.id in points else task_parts(task)
        )
    ]
    tasks = tuple(replace(t, points=points.get(t.id, t.points)) for t in mark.tasks)
    return replace(mark, tasks=tasks, outcomes=outcome_marks(parts))
