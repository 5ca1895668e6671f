"""The feedback page: what was answered, what it was worth, why, and what it would have cost.

It shows what the mark holds and nothing more, so no key and no whole order is in it. One file,
nothing loaded from elsewhere.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from twoshaft.modules import COURSE
from twoshaft.outcomes import (
    Attempt,
    Observation,
    Outcome,
    evidence_of,
    load_outcomes,
    stand,
)
from twoshaft.plots.style import css_variables, dark_where_asked
from twoshaft_grader.marking.outcomes import NONE, Decisions, with_points
from twoshaft_grader.marking.pages import fill
from twoshaft_grader.marking.result import FieldMark, SheetMark, Verdict

SHAPES = {
    Verdict.RIGHT: "✓",
    Verdict.CARRIED: "✓",
    Verdict.PARTLY: "◐",
    Verdict.WRONG: "✗",
    Verdict.UNANSWERED: "–",
    Verdict.UNREADABLE: "?",
}
"""A shape for each verdict, beside its word."""

FOLDED = 180
"""An answer longer than this many characters is folded away."""

_TITLES = {module.name: module.title for module in COURSE.values()}


@dataclass(frozen=True)
class Handed:
    """What the page says about the hand-in; leave empty what is not known.

    Attributes
    ----------
    learner : str
        Name of the learner.
    college, cohort : str
    handed_in, due : str
        As they are to be shown, ISO date and 24-hour clock.
    late : bool
    receipt : str
        The receipt that the learner was shown.
    supervised_by : str
        Who watched the work; empty for open-book work.
    saved_before : mapping of str to int
        By outcome, how many answers were saved before the supervised attempt was opened.
    observed : mapping of str to tuple of Observation
        What was seen of the learner, by outcome.
    changed : tuple of str
        How the mark of this work was changed by marking again, a sentence each.
    look : mapping of str to str
        How the page is to look for this learner: print and colour.
    own_work : str
        When the learner stated that the work is their own; empty where they did not.
    numbers : mapping of str to str
        The college's own numbers of outcomes, by id.
    """

    learner: str = ""
    college: str = ""
    cohort: str = ""
    handed_in: str = ""
    due: str = ""
    late: bool = False
    receipt: str = ""
    supervised_by: str = ""
    saved_before: Mapping[str, int] = field(default_factory=dict)
    observed: Mapping[str, tuple[Observation, ...]] = field(default_factory=dict)
    changed: tuple[str, ...] = ()
    look: Mapping[str, str] = field(default_factory=dict)
    own_work: str = ""
    numbers: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True)
class StaffMark:
    """What staff gave by hand for a task: points, where changed, and a comment."""

    points: float | None = None
    comment: str = ""


def feedback_page(
    mark: SheetMark,
    handed: Handed | None = None,
    *,
    outcomes: Mapping[str, Outcome] | None = None,
    staff: Mapping[str, StaffMark] | None = None,
    decided: Decisions = NONE,
    next_step: str = "",
) -> str:
    """Return the feedback page of one sheet as HTML.

    Parameters
    ----------
    mark : SheetMark
    handed : Handed, optional
        About the hand-in.
    outcomes : mapping of str to Outcome, optional
        Outcomes by id; by default those that ship. They say what is needed beyond this sheet.
    staff : mapping of str to StaffMark, optional
        What staff gave by hand, by task id.
    decided : Decisions
        What an assessor decided of must-pass items and outcomes.
    next_step : str, optional
        What to do next; worked out from the mark where empty.

    Returns
    -------
    str
        A whole page. Everything that was typed is escaped.
    """
    handed, staff = handed or Handed(learner=mark.learner), staff or {}
    outcomes = load_outcomes() if outcomes is None else outcomes
    was = {task.id: task.points for task in mark.tasks}
    mark = with_points(
        mark,
        {id: given.points for id, given in staff.items() if id in was and given.points is not None},
        decided,
    )
    still = {
        outcome.id: needed
        for outcome in mark.outcomes
        if outcome.met and (needed := _still_needed(outcomes.get(outcome.id), handed))
    }
    return fill(
        "feedback.html.j2",
        mark=mark,
        was=was,
        handed=handed,
        outcomes=outcomes,
        still=still,
        result="○ not yet" if not mark.met else "◐ enough" if still else "✓ met",
        staff=staff,
        decided=decided,
        blank={
            task.id: list({f.lesson: f for f in task.fields if f.lesson}.values())
            for task in mark.tasks
            if all(field.verdict == Verdict.UNANSWERED for field in task.fields)
        },
        next_step=next_step or what_next(mark, still.values()),
        shapes=SHAPES,
        kinds={verdict: kind_of(verdict) for verdict in Verdict},
        folded=FOLDED,
        style=css_variables() + dark_where_asked(),
        where_to_read=where_to_read,
        address=address_of,
        lesson=next((address_of(f, "") for t in mark.tasks for f in t.fields if f.lesson), ""),
        off=sum(task.earned - was[task.id] for task in mark.tasks),
    )


def _still_needed(outcome: Outcome | None, handed: Handed) -> str:
    """What an outcome needs beyond this sheet, empty if nothing."""
    if outcome is None:
        return ""
    watched = "" if handed.saved_before.get(outcome.id) else handed.supervised_by
    attempt = Attempt(True, evidence_of(watched))
    return stand(outcome.evidence, [attempt], handed.observed.get(outcome.id, ())).missing


def kind_of(verdict: Verdict) -> str:
    """Return the style class of a verdict: good, warn or bad."""
    if verdict in (Verdict.RIGHT, Verdict.CARRIED):
        return "good"
    return "warn" if verdict == Verdict.PARTLY else "bad"


def where_to_read(field: FieldMark) -> str:
    """Return the place in the lessons that a field names, in words.

    The field's ``lesson`` is a notebook and a heading, as ``02-order-of-work#what-buries-what``; a
    lesson of the course is called by its title, one of a college's own by its notebook.
    """
    notebook, _, heading = field.lesson.partition("#")
    lesson = f"lesson “{_TITLES.get(notebook, notebook)}”"
    return f"{lesson}, under “{heading.replace('-', ' ')}”" if heading else lesson


def address_of(field: FieldMark, place: str | None = None) -> str:
    """Return where that place is, under the workplace: a path with its heading behind a ``#``."""
    notebook, _, heading = field.lesson.partition("#")
    heading = heading if place is None else place
    return f"lessons/{notebook}.ipynb" + (f"#{heading}" if heading else "")


def what_next(mark: SheetMark, still: Iterable[str] = ()) -> str:
    """Return the next step that a mark calls for, in a sentence or two.

    ``still`` says what its outcomes need beyond this sheet.
    """
    if mark.met:
        needed = " and ".join(dict.fromkeys(still))
        ask = f"Part of it is still {needed}: ask your instructor when. " if needed else ""
        return f"{ask}Go on with the next module."
    weakest = sorted(mark.fields, key=lambda field: (field.passed, field.share))
    places = dict.fromkeys(where_to_read(f) for f in weakest if f.lesson and f.share < 1)
    steps = []
    if any(outcome.must_pass_failed for outcome in mark.outcomes):
        steps.append("A must-pass item is not passed yet.")
    steps += [f"Read {place}." for place in list(places)[:1]]
    steps.append("Ask your instructor for another attempt; it comes with a fresh task.")
    return " ".join(steps)
