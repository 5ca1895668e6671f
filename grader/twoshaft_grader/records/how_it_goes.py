"""How a module goes: who stands where, what is hard, what is often wrong, and by which slip."""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import dataclass

from twoshaft.outcomes import load_outcomes
from twoshaft_grader.cohort.assign import Assigned
from twoshaft_grader.cohort.clock import now
from twoshaft_grader.cohort.extensions import due_for
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marks import MARKED, read_mark
from twoshaft_grader.cohort.not_done import NotDone, going_on
from twoshaft_grader.marking.kinds.order import step_to_look_at
from twoshaft_grader.marking.result import FieldMark, SheetMark, Verdict
from twoshaft_grader.records.item_statistics import (
    EASY,
    FEWEST,
    HARD,
    WEAK,
    Estimate,
    Item,
    items_of,
    reliability,
)
from twoshaft_grader.records.progress import Stage, progress

MOST = 5
"""So many of what is most often wrong are told."""
_FIGURE = re.compile(r"[-+]?\d[\d.,]*")
_WRONG = {Verdict.WRONG, Verdict.PARTLY, Verdict.UNREADABLE}


@dataclass(frozen=True)
class TaskFacts:
    """What is known of one task: its item, and how far its own fields hang together."""

    id: str
    title: str
    item: Item
    reliability: Estimate | None

    @property
    def remark(self) -> str:
        """What stands out, in words."""
        said = []
        if self.item.facility > EASY:
            said.append("easy")
        if self.item.facility < HARD:
            said.append("hard")
        known = self.item.discrimination
        if known and known.value < WEAK:
            said.append("does not tell strong from weak")
        return ", ".join(said)


@dataclass(frozen=True)
class WrongField:
    """A field that is often wrong, and the slip most often recognised in it."""

    prompt: str
    task: str
    wrong: int
    answered: int
    slip: str
    slips: int


@dataclass(frozen=True)
class HowItGoes:
    """All of one assignment.

    Attributes
    ----------
    name, title : str
    stages : dict of str to int
        How many stand where.
    stuck : tuple of (str, str)
        Learner id, and on what.
    marked : int
        How many sheets the figures are of.
    tasks : tuple of TaskFacts
    reliability : Estimate or None
        Of the whole module, its tasks as items.
    wrong : tuple of WrongField
        The most often wrong first.
    misplaced : tuple of (str, int)
        Steps most often misplaced, and how often.
    left : tuple of NotDone
        Of whom nothing can be told.
    fewest : int
        Of fewer marked sheets nothing is estimated.
    """

    name: str
    title: str
    stages: dict[str, int]
    stuck: tuple[tuple[str, str], ...]
    marked: int
    tasks: tuple[TaskFacts, ...]
    reliability: Estimate | None
    wrong: tuple[WrongField, ...]
    misplaced: tuple[tuple[str, int], ...]
    left: tuple[NotDone, ...]
    fewest: int = FEWEST

    @property
    def too_few(self) -> bool:
        """Whether so few are marked that no estimate would say anything."""
        return self.marked < self.fewest


def how_it_goes(cohort: Cohort, assigned: Assigned) -> HowItGoes:
    """Tell how an assignment goes; marks as the marking gave them, without changes by hand.

    Raises
    ------
    CourseError
        When a stored file of the whole cohort is damaged.
    """
    left: list[NotDone] = []
    sheets: list[SheetMark] = []
    stuck: list[tuple[str, str]] = []
    standings = progress(cohort, [assigned])
    by_id = {one.learner.id: one for one in standings}
    for person in assigned.among(roster_of(cohort)):
        with going_on(person.id, left):
            mark = read_mark(cohort.mark_file(person.id, assigned.name))
            sheet = mark.sheet if mark and mark.state == MARKED else None
            if sheet:
                sheets.append(sheet)
            due = due_for(cohort, assigned, person.id)
            late = due is not None and due < now()
            if why := _stuck(by_id[person.id].stage, sheet, late):
                stuck.append((person.id, why))
    return HowItGoes(
        name=assigned.name,
        title=sheets[0].title if sheets else assigned.module.replace("-", " ").capitalize(),
        stages=dict(Counter(str(one.stage) for one in standings)),
        stuck=tuple(stuck),
        marked=len(sheets),
        tasks=_tasks(sheets),
        reliability=reliability([[task.points for task in sheet.tasks] for sheet in sheets]),
        wrong=_wrong(sheets),
        misplaced=_misplaced(sheets),
        left=tuple(left),
    )


def _stuck(stage: Stage, sheet: SheetMark | None, late: bool) -> str:
    """On what somebody is stuck; empty where they are not."""
    if stage in (Stage.UNREADABLE, Stage.DAMAGED):
        return stage
    if stage in (Stage.NOT_FETCHED, Stage.NOT_BEGUN, Stage.UNDER_WAY):
        return f"{stage}, and the due date has passed" if late else ""
    if sheet is None or sheet.met:
        return ""
    known = load_outcomes()
    said = [
        known[one.id].statement if one.id in known else one.id
        for one in sheet.outcomes
        if not one.met
    ]
    return f"not yet: {'; '.join(said)}"


def _tasks(sheets: list[SheetMark]) -> tuple[TaskFacts, ...]:
    if not sheets:
        return ()
    tasks = sheets[0].tasks
    scores = [[sheet.task(task.id).points for task in tasks] for sheet in sheets]
    items = items_of(scores, [task.maximum for task in tasks])
    return tuple(
        TaskFacts(
            task.id,
            task.title,
            item,
            reliability([[f.weight * f.share for f in s.task(task.id).fields] for s in sheets]),
        )
        for task, item in zip(tasks, items, strict=True)
    )


def _wrong(sheets: list[SheetMark]) -> tuple[WrongField, ...]:
    by_name: dict[str, list[FieldMark]] = {}
    for sheet in sheets:
        for field in sheet.fields:
            if field.verdict != Verdict.UNANSWERED:
                by_name.setdefault(field.name, []).append(field)
    found = []
    for answered in by_name.values():
        wrong = [field for field in answered if field.verdict in _WRONG]
        if not wrong:
            continue
        # Everybody has figures of their own: what is said alike but for them is one slip.
        said = [field.sentences[0] for field in wrong if field.sentences]
        kinds = Counter(_FIGURE.sub("…", sentence) for sentence in said)
        slip, often = kinds.most_common(1)[0] if kinds else ("", 0)
        found.append(
            WrongField(wrong[0].prompt, wrong[0].task, len(wrong), len(answered), slip, often)
        )
    return tuple(sorted(found, key=lambda one: -one.wrong)[:MOST])


def _misplaced(sheets: list[SheetMark]) -> tuple[tuple[str, int], ...]:
    steps = Counter(
        step
        for sheet in sheets
        for field in sheet.fields
        if (step := step_to_look_at(field.sentences))
    )
    return tuple(steps.most_common(MOST))


def class_page(found: HowItGoes, cohort: Cohort) -> str:
    """One page to take into class: what to talk about, and nobody's name."""
    from twoshaft.plots.style import css_variables
    from twoshaft_grader.records.pages import fill

    return fill("class.html.j2", found=found, cohort=cohort, style=css_variables())
