"""The page *Moderation*: a sample, second marks entered blind, and how far the two agree."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from twoshaft.errors import CohortError
from twoshaft_grader.desk.figures import figure, kappa_words
from twoshaft_grader.desk_pages.page import Desk, Page, Work
from twoshaft_grader.desk_pages.parts import Act, Cell, Field, Form, Part, Row, Say, Table, Values
from twoshaft_grader.records.moderation import (
    Agreement,
    agreement,
    draw_sample,
    enter_second_mark,
    the_sample,
    work_to_mark,
)
from twoshaft_grader.stored.moderation import Moderation, Picked

if TYPE_CHECKING:
    pass


class ModerationPage(Page):
    """Draw a sample, mark a task of it a second time without seeing the first, compare."""

    id, title = "moderation", "Moderation"

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._task: Picked | None = None
        self._compared = False

    def show(self) -> Sequence[Part]:
        """The sample, the task that is marked now, or how far the marks agree."""
        if self._task:
            return self._second(self._task)
        try:
            drawn = the_sample(self.desk.cohort)
        except CohortError:
            return (Say("No sample is drawn yet."), self._draw("Draw a sample", again=False))
        rule = f"Drawn on {drawn.drawn_at[:10]} by {drawn.drawn_by}, seed {drawn.seed}: "
        parts: list[Part] = [
            Say(f"{rule}{drawn.rule}."),
            _sample(drawn),
            Form("", (), (Act("compare", "Compare first and second marks", first=True),)),
        ]
        if self._compared:
            parts += _agreement(agreement(self.desk.cohort))
        return [*parts, self._draw("Draw anew", again=True)]

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        cohort = self.desk.cohort
        if act in ("draw", "draw-again"):
            seed, by = values.need("seed", "the seed"), values.need("draw-by", "the assessor")
            share = values.number("share", "part in %") / 100
            work.begin("drawing")
            drawn = draw_sample(cohort, share=share, seed=seed, by=by, again=act == "draw-again")
            self._compared = False
            return f"{len(drawn.sample)} tasks are drawn."
        if act == "mark":
            key = values.of
            self._task = next(one for one in the_sample(cohort).sample if _key(one) == key)
            return ""
        if act == "leave":
            self._task = None
            return "Nothing is entered."
        if act == "enter":
            if self._task is None:
                raise CohortError("no task is open", mend="choose one in the table")
            one, points = self._task, values.number("points", "number of points")
            enter_second_mark(
                cohort, one.learner, one.assignment, one.task, points,
                by=values.need("by", "the assessor"), note=values.text("note"),
            )  # fmt: skip
            self._task = None
            return f"The second mark of {one.task} of {one.learner} is kept."
        work.begin("comparing")
        self._compared = True
        return ""

    def _draw(self, title: str, *, again: bool) -> Form:
        sure = "Second marks that were entered for the sample are given up. Draw anew?"
        act = Act("draw-again", title, sure=sure) if again else Act("draw", title, first=True)
        return Form(
            title,
            (
                Field("seed", "Seed", hint="any text; the same draws the same again"),
                Field("share", "Part of all marked tasks, in %", value="10"),
                self.assessor("draw-by"),
            ),
            (act,),
        )

    def _second(self, picked: Picked) -> Sequence[Part]:
        task = work_to_mark(self.desk.cohort, picked)
        rows = tuple(
            Row(str(number), (one.prompt, one.answer or "no answer"))
            for number, one in enumerate(task.fields)
        )
        return (
            Say(f"{picked.learner}, {picked.assignment}: {task.title}", "head"),
            Table("work", "What was asked and answered", ("question", "answer"), rows),
            Form(
                "Second mark, without knowing the first",
                (
                    Field("points", f"Points, of {task.maximum:g}"),
                    self.assessor("by"),
                    Field("note", "What spoke for it", "long"),
                ),
                (Act("enter", "Keep it", first=True), Act("leave", "Leave it")),
            ),
        )


def _key(one: Picked) -> str:
    return f"{one.learner} {one.assignment} {one.task}"


def _sample(drawn: Moderation) -> Table:
    done = {(one.learner, one.assignment, one.task): one.by for one in drawn.marks}
    rows = []
    for one in drawn.sample:
        by = done.get((one.learner, one.assignment, one.task), "")
        label = f"Mark {one.task} of {one.learner} a second time"
        mark = by or Cell("mark it", act="mark", of=_key(one), label=label)
        rows.append(Row(_key(one), (one.learner, one.assignment, one.task, one.because, mark)))
    heading = ("id", "assignment", "task", "picked as", "second mark by")
    return Table("sample", "To be marked a second time", heading, tuple(rows))


def _agreement(found: Agreement) -> list[Part]:
    count, stale = len(found.counted), len(found.both) - len(found.counted)
    said = f"{count} tasks have two marks; {len(found.open)} wait for the second."
    again = f" {stale} are of work that was handed in again since, and are not counted."
    kappas = (
        ("Cohen's kappa", found.plain),
        ("weighted, linear", found.linear),
        ("weighted, quadratic", found.quadratic),
    )
    differences = tuple(
        Row(
            f"{one.second.learner} {one.second.assignment} {one.second.task}",
            (
                one.second.learner, one.second.assignment, one.second.task, one.second.by,
                figure(one.first), figure(one.second.points), figure(one.maximum),
                one.second.note,
            ),
        )
        for one in found.differences
    )  # fmt: skip
    heading = ("id", "assignment", "task", "second by", "first", "second", "of", "note")
    return [
        Say(f"{said}{again if stale else ''}"),
        Table(
            "agreement", "Agreement, in bands: nothing, less than enough, enough (60 %), all",
            ("measure", "value, with its 95 % interval"),
            tuple(Row(words, (words, kappa_words(one, count))) for words, one in kappas),
        ),
        Table(
            "differences", "Differences, to decide", heading, differences, numbers=(4, 5, 6),
            empty="None.",
        ),
    ]  # fmt: skip
