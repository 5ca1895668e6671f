"""Moderation: some work is marked a second time by somebody who does not see the first mark.

The sample follows a stated rule and a seed, so anybody can draw it again. The second mark is
entered blind, and how far the two agree is told with Cohen's kappa.
"""

from __future__ import annotations

import math
import random
from collections.abc import Collection, Iterable
from dataclasses import dataclass, replace
from itertools import groupby

from twoshaft.errors import CohortError
from twoshaft_grader.cohort import backbone
from twoshaft_grader.cohort.assessors import assessor_named
from twoshaft_grader.cohort.assign import assignments_of
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marks import StoredMark, read_mark
from twoshaft_grader.cohort.scores import TaskScore, task_scores
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import alone
from twoshaft_grader.marking.result import SheetMark, TaskMark
from twoshaft_grader.records.hand_changes import NO_NAME, change_log
from twoshaft_grader.records.two_marks import BANDS, Band, Kappa, band, counts, kappa
from twoshaft_grader.stored.moderation import MODERATION, Moderation, Picked, SecondMark

BORDER = 0.1
"""An outcome's points within this part of its maximum of what is enough are borderline (our own
choice)."""
LEAST = 1
"""So many of every module and of every marker at least."""


@dataclass(frozen=True)
class _Task:
    """A marked task that can be picked."""

    learner: str
    assignment: str
    task: str
    marker: str
    border: bool

    @property
    def key(self) -> tuple[str, str, str]:
        return self.assignment, self.learner, self.task


@dataclass(frozen=True)
class Both:
    """A task with both its marks."""

    second: SecondMark
    first: float
    maximum: float
    stale: bool

    @property
    def bands(self) -> tuple[Band, Band]:
        """The bands of the first and the second mark."""
        return band(self.first, self.maximum), band(self.second.points, self.maximum)

    @property
    def differs(self) -> bool:
        """Whether the two would not come to the same."""
        return self.bands[0] != self.bands[1] or self.first != self.second.points


@dataclass(frozen=True)
class Agreement:
    """What two rounds of marking agree on.

    Attributes
    ----------
    both : tuple of Both
        Tasks marked twice; those whose work was marked again since are ``stale`` and not counted.
    open : tuple of Picked
        Not marked a second time yet.
    plain, linear, quadratic : Kappa or None
        Of the bands; None where nothing can be said.
    """

    both: tuple[Both, ...]
    open: tuple[Picked, ...]
    plain: Kappa | None
    linear: Kappa | None
    quadratic: Kappa | None

    @property
    def counted(self) -> tuple[Both, ...]:
        """Those that count."""
        return tuple(one for one in self.both if not one.stale)

    @property
    def differences(self) -> tuple[Both, ...]:
        """Those to decide about."""
        return tuple(one for one in self.counted if one.differs)


def draw_sample(
    cohort: Cohort, *, share: float, seed: str, by: str, again: bool = False
) -> Moderation:
    """Draw what is marked a second time.

    Every task of a borderline outcome, then by lot up to the share of all marked tasks, with at
    least :data:`LEAST` of every module and of every marker.

    Parameters
    ----------
    share : float
        Part of all marked tasks, 0 to 1.
    seed : str
        Any text; the same one draws the same sample of the same marks.
    again : bool
        Draw anew though there is a sample; second marks that were entered for it are given up.

    Raises
    ------
    CohortError
        When nothing is marked, a sample is there, or share or seed will not do.
    """
    by = assessor_named(cohort, by)
    if not 0 < share <= 1:
        raise CohortError(f"a share of {share:g} will not do", mend="give 0.1 for a tenth")
    if not seed.strip():
        raise CohortError("a sample is drawn with a seed", mend="give any text as the seed")
    with alone(cohort, "moderation", "the sample, or second marks"):
        before = MODERATION.read_if_any(cohort.root / MODERATION.file)
        if before and before.marks and not again:
            raise CohortError(
                f"a sample is drawn already, and {len(before.marks)} of its tasks have a second "
                "mark",
                mend="go on with it, or draw anew and give them up",
            )
        tasks = _marked_tasks(cohort)
        if not tasks:
            raise CohortError("nothing is marked yet", mend="mark it first")
        rule = (
            f"every task of an outcome within {100 * BORDER:g} % of what is enough, then by lot up "
            f"to {100 * share:g} % of {len(tasks)} marked tasks, with at least {LEAST} of every "
            "module and of every marker"
        )
        with act(cohort.root, "draw a sample", f"seed {seed}", by=by, why=rule) as told:
            drawn = Moderation(
                rule=rule, seed=seed, drawn_at=stamp(now()), drawn_by=by,
                sample=tuple(_sample(tasks, share, seed)),
            )  # fmt: skip
            MODERATION.write(cohort.root / MODERATION.file, drawn)
            told.after = f"{len(drawn.sample)} tasks"
    return drawn


def _sample(tasks: list[_Task], share: float, seed: str) -> list[Picked]:
    order = sorted(tasks, key=lambda one: one.key)
    random.Random(seed).shuffle(order)
    picked: dict[tuple[str, str, str], Picked] = {}

    def pick(some: Iterable[_Task], because: str) -> None:
        for one in some:
            picked.setdefault(one.key, Picked(
                learner=one.learner, assignment=one.assignment, task=one.task, because=because
            ))  # fmt: skip

    pick((one for one in order if one.border), "borderline")
    for what, of in (("module", lambda one: one.assignment), ("marker", lambda one: one.marker)):
        for name, group in groupby(sorted(order, key=of), key=of):
            mine = list(group)
            missing = LEAST - sum(one.key in picked for one in mine)
            pick(
                [one for one in mine if one.key not in picked][: max(0, missing)], f"{what} {name}"
            )
    wanted = math.ceil(share * len(tasks)) - len(picked)
    pick([one for one in order if one.key not in picked][: max(0, wanted)], "by lot")
    return [picked[key] for key in sorted(picked)]


def _marked_tasks(cohort: Cohort) -> list[_Task]:
    log = change_log(cohort)
    found = []
    with backbone.gradebook(cohort) as book:
        for assigned in assignments_of(cohort):
            scores = task_scores(book, assigned)
            for person in roster_of(cohort):
                mark = read_mark(cohort.mark_file(person.id, assigned.name))
                if mark is None or mark.sheet is None:
                    continue
                near = {
                    one.id
                    for one in mark.sheet.outcomes
                    if abs(one.points - one.needed * one.maximum) <= BORDER * one.maximum
                }
                for task in mark.sheet.tasks:
                    score = scores.get(person.id, {}).get(task.id)
                    by_hand = log.get((assigned.name, person.id, task.id))
                    marker = (by_hand.by if by_hand else NO_NAME) if _by_hand(score) else "marking"
                    border = any(field.outcome in near for field in task.fields)
                    found.append(_Task(person.id, assigned.name, task.id, marker, border))
    return found


def _by_hand(score: TaskScore | None) -> bool:
    return score is not None and score.by_hand


def the_sample(cohort: Cohort) -> Moderation:
    """The sample that was drawn.

    Raises
    ------
    CohortError
        When there is none.
    """
    found = MODERATION.read_if_any(cohort.root / MODERATION.file)
    if found is None:
        raise CohortError("no sample is drawn yet", mend="draw one")
    return found


def work_to_mark(cohort: Cohort, picked: Picked) -> TaskMark:
    """A task as it was answered, without any mark: verdicts, points and sentences are left out.

    Raises
    ------
    CohortError
        When its mark is gone.
    """
    mark = _mark_of(cohort, picked.assignment, picked.learner)
    task = _task_of(mark.sheet, picked.task)
    if task is None:
        raise CohortError(f"{picked.learner} has no task {picked.task} any more", mend="draw again")
    return task


def enter_second_mark(
    cohort: Cohort,
    learner: str,
    assignment: str,
    task: str,
    points: float,
    *,
    by: str,
    note: str = "",
) -> SecondMark:
    """Enter a second mark; the first is not shown, and one that stands is not written over.

    Raises
    ------
    CohortError
        When the task is not in the sample, the same person marked it first, it has a second mark,
        or the points are outside the task's.
    """
    by = assessor_named(cohort, by)
    with alone(cohort, "moderation", "the sample, or second marks"):
        drawn = the_sample(cohort)
        key = (learner, assignment, task)
        if key not in {(one.learner, one.assignment, one.task) for one in drawn.sample}:
            raise CohortError(
                f"{task} of {learner} in {assignment} is not in the sample",
                mend="look at the list of what is",
            )
        for one in drawn.marks:
            if (one.learner, one.assignment, one.task) == key:
                raise CohortError(
                    f"it has a second mark, by {one.by} on {one.at[:10]}",
                    mend="what is wrong with it is decided with the differences",
                )
        mark = _mark_of(cohort, assignment, learner)
        asked = _task_of(mark.sheet, task)
        if asked is None or not 0 <= points <= asked.maximum:
            most = asked.maximum if asked else 0
            raise CohortError(
                f"{points:g} points for a task of {most:g}", mend=f"give 0 to {most:g}"
            )
        change = change_log(cohort).get((assignment, learner, task))
        if change and change.by == by:
            raise CohortError(f"{by} gave the first mark", mend="let somebody else give the second")
        second = SecondMark(
            learner=learner, assignment=assignment, task=task, points=points, by=by,
            at=stamp(now()), submission=mark.submission, note=note.strip(),
        )  # fmt: skip
        what = f"{learner} {assignment} {task}"
        with act(cohort.root, "enter a second mark", what, by=by, why=note) as told:
            kept = replace(drawn, marks=(*drawn.marks, second))
            MODERATION.write(cohort.root / MODERATION.file, kept)
            told.after = f"{points:g} of {asked.maximum:g}"
    return second


def agreement(cohort: Cohort, assignments: Collection[str] = ()) -> Agreement:
    """How far first and second marks agree.

    Parameters
    ----------
    assignments : collection of str
        Only these; empty means all.

    Raises
    ------
    CohortError
        When no sample is drawn.
    """
    drawn = the_sample(cohort)
    done = {(one.learner, one.assignment, one.task) for one in drawn.marks}
    both = []
    with backbone.gradebook(cohort) as book:
        scores = {a.name: task_scores(book, a) for a in assignments_of(cohort)}
        for second in drawn.marks:
            if assignments and second.assignment not in assignments:
                continue
            mark = _mark_of(cohort, second.assignment, second.learner)
            task = _task_of(mark.sheet, second.task)
            if task is None:
                continue
            score = scores.get(second.assignment, {}).get(second.learner, {}).get(second.task)
            given = score.score if score is not None and score.by_hand else task.points
            both.append(Both(second, given, task.maximum, mark.submission != second.submission))
    counted = [one.bands for one in both if not one.stale]
    first = [BANDS.index(pair[0]) for pair in counted]
    again = [BANDS.index(pair[1]) for pair in counted]
    table = counts(first, again, len(BANDS))
    still = tuple(
        one for one in drawn.sample if (one.learner, one.assignment, one.task) not in done
        and (not assignments or one.assignment in assignments)
    )  # fmt: skip
    return Agreement(
        tuple(both), still, kappa(table), kappa(table, "linear"), kappa(table, "quadratic")
    )


def _mark_of(cohort: Cohort, assignment: str, learner: str) -> StoredMark:
    mark = read_mark(cohort.mark_file(learner, assignment))
    if mark is None or mark.sheet is None:
        raise CohortError(f"{learner} has no mark in {assignment} any more", mend="mark it again")
    return mark


def _task_of(sheet: SheetMark | None, id: str) -> TaskMark | None:
    return next((task for task in sheet.tasks if task.id == id), None) if sheet else None
