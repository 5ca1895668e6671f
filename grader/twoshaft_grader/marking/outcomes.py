"""From tasks to outcomes: what each task gives to each outcome, also after a change by hand."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace

from twoshaft.outcomes import Rules, load_rules
from twoshaft_grader.marking.result import (
    CriterionMark,
    FieldMark,
    OutcomeMark,
    SheetMark,
    TaskMark,
)

_ROUNDING = 1e-9


@dataclass(frozen=True)
class Decision:
    """What an assessor decided in the place of the marking.

    Attributes
    ----------
    holds : bool
        Whether the must-pass item is passed, or the outcome enough.
    by, at, why : str
        Who, when (ISO 8601 in UTC), and the reason.
    """

    holds: bool
    by: str
    at: str
    why: str

    @property
    def sentence(self) -> str:
        """Who decided what, when and why."""
        what = "enough" if self.holds else "not yet"
        return f"Decided by {self.by} on {self.at[:10]}: {what}. {self.why}"


@dataclass(frozen=True)
class Decisions:
    """Decisions on one sheet: on must-pass items by field, on whole outcomes by id."""

    fields: Mapping[str, Decision] = field(default_factory=dict)
    outcomes: Mapping[str, Decision] = field(default_factory=dict)


NONE = Decisions()


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
    criteria : mapping of str to (float, float)
        Points and maximum of each criterion that its fields show.
    """

    task: str
    outcome: str
    points: float
    maximum: float
    must_pass: bool
    failed: tuple[str, ...]
    criteria: Mapping[str, tuple[float, float]]

    @property
    def passed(self) -> bool:
        """Whether every must-pass item behind it is passed."""
        return not self.failed

    def moved(self, points: float) -> Part:
        """The part with other points; its criteria move with it."""
        criteria = {}
        for id, (own, most) in self.criteria.items():
            rest = self.points - own, self.maximum - most
            criteria[id] = share_out([(own, most), rest], points)[0], most
        return replace(self, points=points, criteria=criteria)


def task_parts(task: TaskMark) -> list[Part]:
    """Split a task among its outcomes: points as its fields earned them, maximum by weight."""
    weights = sum(one.weight for one in task.fields)
    earned = sum(one.weight * one.share for one in task.fields)

    def worth(fields: Iterable[FieldMark]) -> tuple[float, float]:
        mine = list(fields)
        got = sum(field.weight * field.share for field in mine)
        most = sum(field.weight for field in mine)
        return task.points * got / earned if earned else 0.0, task.maximum * most / weights

    parts = []
    for outcome in dict.fromkeys(one.outcome for one in task.fields):
        mine = [one for one in task.fields if one.outcome == outcome]
        points, maximum = worth(mine)
        parts.append(
            Part(
                task=task.id,
                outcome=outcome,
                points=points,
                maximum=maximum,
                must_pass=any(field.must_pass for field in mine),
                failed=tuple(field.name for field in mine if not field.passed),
                criteria={
                    id: worth(field for field in mine if id in field.shows)
                    for id in dict.fromkeys(id for field in mine for id in field.shows)
                },
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
    return [part.moved(new) for part, new in zip(parts, spread, strict=True)]


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


def outcome_marks(parts: Iterable[Part], rules: Rules | None = None) -> tuple[OutcomeMark, ...]:
    """Add parts up to outcomes, in the order they come in, and say whether they are enough.

    ``rules`` are those that ship where none are given.
    """
    rules = rules or load_rules()
    return tuple(
        _outcome_mark(id, mine, rules.of(id).points, rules.of(id).each_criterion)
        for id, mine in _by_outcome(parts).items()
    )


def _by_outcome(parts: Iterable[Part]) -> dict[str, list[Part]]:
    found: dict[str, list[Part]] = {}
    for part in parts:
        found.setdefault(part.outcome, []).append(part)
    return found


def _outcome_mark(id: str, mine: Sequence[Part], needed: float, needed_each: float) -> OutcomeMark:
    points, maximum = sum(p.points for p in mine), sum(p.maximum for p in mine)
    failed = tuple(name for part in mine for name in part.failed)
    criteria = []
    for criterion in dict.fromkeys(id for part in mine for id in part.criteria):
        worths = [part.criteria[criterion] for part in mine if criterion in part.criteria]
        own, most = sum(p for p, _ in worths), sum(m for _, m in worths)
        enough = own >= needed_each * most - _ROUNDING
        criteria.append(CriterionMark(criterion, round(own, 2), round(most, 2), enough))
    enough = points >= needed * maximum - _ROUNDING and all(one.enough for one in criteria)
    return OutcomeMark(
        id=id,
        points=round(points, 2),
        maximum=round(maximum, 2),
        must_pass_failed=failed,
        met=enough and not failed,
        criteria=tuple(criteria),
        needed=needed,
        needed_each=needed_each,
    )


def judged_again(mark: SheetMark, parts: Iterable[Part]) -> tuple[OutcomeMark, ...]:
    """Outcomes of a mark whose parts were changed, by the rules that it was made with."""
    rules = {one.id: (one.needed, one.needed_each) for one in mark.outcomes}
    return tuple(_outcome_mark(id, mine, *rules[id]) for id, mine in _by_outcome(parts).items())


def with_passed(mark: SheetMark, decided: Mapping[str, Decision]) -> SheetMark:
    """Return a mark whose must-pass items are passed as decided; its outcomes stay as they are."""

    def passed(one: FieldMark) -> FieldMark:
        known = decided.get(one.name)
        return replace(one, passed=known.holds) if known and one.must_pass else one

    tasks = (replace(task, fields=tuple(passed(f) for f in task.fields)) for task in mark.tasks)
    return replace(mark, tasks=tuple(tasks)) if decided else mark


def decisions_on(mark: SheetMark, outcome: str, decided: Decisions) -> list[Decision]:
    """What was decided of an outcome: of its must-pass items, then of itself."""
    fields = [one.name for one in mark.fields if one.outcome == outcome]
    own = [decided.fields[name] for name in fields if name in decided.fields]
    return own + [one for id, one in decided.outcomes.items() if id == outcome]


def as_decided(marks: Iterable[OutcomeMark], decided: Mapping[str, Decision]) -> list[OutcomeMark]:
    """Return outcomes that are enough or not as decided."""
    return [replace(o, met=decided[o.id].holds) if o.id in decided else o for o in marks]


def with_points(
    mark: SheetMark, points: Mapping[str, float], decided: Decisions = NONE
) -> SheetMark:
    """Return a mark with the points of some tasks changed by hand, and the outcomes that follow.

    Parameters
    ----------
    mark : SheetMark
    points : mapping of str to float
        New points by task id.
    decided : Decisions
        What was decided of must-pass items and outcomes, above the points.

    Returns
    -------
    SheetMark
    """
    if not points and decided == NONE:
        return mark
    mark = with_passed(mark, decided.fields)
    parts = [
        part
        for task in mark.tasks
        for part in (
            changed_parts(task, points[task.id]) if task.id in points else task_parts(task)
        )
    ]
    tasks = tuple(replace(t, points=points.get(t.id, t.points)) for t in mark.tasks)
    outcomes = as_decided(judged_again(mark, parts), decided.outcomes)
    return replace(mark, tasks=tasks, outcomes=tuple(outcomes))
