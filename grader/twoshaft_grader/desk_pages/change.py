"""The page *Change and appeal*: marks changed and decided by a registered assessor, and appeals."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft_grader.cohort.appeals import appeals_of, enter_appeal, rule_on
from twoshaft_grader.cohort.assign import Assigned, assignments_of, read_assigned
from twoshaft_grader.cohort.clock import wall_clock
from twoshaft_grader.cohort.decisions import changes_of, decide
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.desk.figures import figure
from twoshaft_grader.desk_pages.page import Desk, Page, Work
from twoshaft_grader.desk_pages.parts import Act, Cell, Field, Form, Part, Row, Say, Table, Values
from twoshaft_grader.records.hand_changes import change_mark

_SHAPES = {"": "○", "upheld": "✓", "not upheld": "●"}


class ChangeAndAppeal(Page):
    """Choose a marked sheet; change a task, decide of an item or outcome, enter an appeal."""

    id, title = "change", "Change and appeal"

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._sheet: tuple[str, str] = ("", "")

    def show(self) -> Sequence[Part]:
        """A choice of sheet, what it earned, the changes and the appeals."""
        cohort = self.desk.cohort
        people, out = roster_of(cohort), assignments_of(cohort)
        if not people or not out:
            return (Say("Nothing is handed out yet: begin on the page Hand out."),)
        learner, name = self._sheet
        parts: list[Part] = [
            Form(
                "Whose, and of what",
                (
                    Field(
                        "learner", "Learner", "choice", learner,
                        (("", "Choose"), *((o.id, f"{o.name} ({o.id})") for o in people)),
                    ),
                    Field(
                        "name", "Assignment", "choice", name,
                        tuple((one.name, one.name) for one in out),
                    ),
                ),
                (Act("open", "Show what it earned", first=True),),
            )
        ]  # fmt: skip
        if learner and name in {one.name for one in out}:
            parts += self._sheet_parts(read_assigned(cohort, name), learner)
        appeals = appeals_of(cohort)
        zone = cohort.zone
        parts.append(
            Table(
                "appeals", "Appeals",
                ("no.", "when", "id", "assignment", "about", "why", "ruling", "by", "reason"),
                tuple(
                    Row(
                        str(one.number),
                        (
                            str(one.number),
                            wall_clock(one.at, zone),
                            one.learner, one.assignment, one.about or "the whole mark", one.why,
                            Cell(one.ruling or "open", _SHAPES[one.ruling or ""]),
                            one.ruled_by, one.reason,
                        ),
                    )
                    for one in appeals
                ),
                numbers=(0,), empty="There is none.",
            )
        )  # fmt: skip
        if still_open := [one for one in appeals if not one.ruling]:
            which = ((str(o.number), f"{o.number}: {o.learner} {o.assignment}") for o in still_open)
            ruling = (("", "Choose"), ("upheld", "upheld"), ("not", "not upheld"))
            parts.append(
                Form(
                    "Rule on an appeal",
                    (
                        Field("appeal", "Appeal", "choice", options=tuple(which)),
                        Field("ruling", "Ruling", "choice", options=ruling),
                        self.assessor("rule-by"),
                        Field("rule-why", "Reason"),
                    ),
                    (Act("rule", "Rule"),),
                    hint="Another mark that follows is changed above.",
                )
            )
        parts.append(self._changes())
        return parts

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        cohort = self.desk.cohort
        if act == "open":
            self._sheet = (
                values.need("learner", "the learner"),
                values.need("name", "the assignment"),
            )
            return ""
        if act == "rule":
            ruling = values.need("ruling", "the ruling")
            number = int(values.need("appeal", "the appeal"))
            by, why = values.need("rule-by", "the assessor"), values.need("rule-why", "the reason")
            one = rule_on(cohort, number, upheld=ruling == "upheld", by=by, why=why)
            return f"Appeal {number} of {one.learner} is {one.ruling}, ruled by {one.ruled_by}."
        learner, name = self._sheet
        assigned = read_assigned(cohort, name)
        if act == "change":
            task = values.need("task", "the task")
            points = values.number("points", "number of points")
            by, why = values.need("by", "the assessor"), values.need("why", "the reason")
            before, most = change_mark(cohort, assigned, learner, task, points, by=by, why=why)
            return f"{task} of {learner}: {before:g} is now {points:g} of {most:g}."
        if act == "decide":
            about, word = values.need("about", "what it is about"), values.need("holds", "the word")
            by = values.need("decide-by", "the assessor")
            why = values.need("decide-why", "the reason")
            decide(cohort, assigned, learner, about, holds=word == "enough", by=by, why=why)
            told = "enough" if word == "enough" else "not yet"
            return f"{about} of {learner} is {told}. The learner sees it when {name} is given back."
        one = enter_appeal(
            cohort, assigned, learner, about=values.text("appeal-about"),
            why=values.need("appeal-why", "the learner's reason"), by=self.desk.by,
        )  # fmt: skip
        return f"Appeal {one.number} of {learner} against {name} is open."

    def _sheet_parts(self, assigned: Assigned, learner: str) -> list[Part]:
        mark = read_mark(self.desk.cohort.mark_file(learner, assigned.name))
        if mark is None or mark.sheet is None:
            return [Say(f"{learner} has no mark in {assigned.name}.")]
        sheet = mark.sheet
        items = [one for one in sheet.fields if one.must_pass]
        about = tuple(
            (
                *((o.id, f"outcome {o.id}: {_word(o.met)}") for o in sheet.outcomes),
                *((i.name, f"must-pass: {i.prompt[:60]}, {_word(i.passed)}") for i in items),
            )
        )
        tasks = tuple((t.id, f"{t.title} ({figure(t.points)})") for t in sheet.tasks)
        return [
            Table(
                "tasks", f"{learner}, {assigned.name}: as the marking gave it",
                ("task", "points", "of"),
                tuple(
                    Row(t.id, (t.title, figure(t.points), figure(t.maximum))) for t in sheet.tasks
                ),
                numbers=(1, 2),
            ),
            Form(
                "Change the points of a task",
                (
                    Field("task", "Task", "choice", options=tasks),
                    Field("points", "New points"),
                    self.assessor("by"),
                    Field("why", "Reason"),
                ),
                (Act("change", "Change"),),
            ),
            Form(
                "Decide in the place of the marking",
                (
                    Field("about", "About", "choice", options=(("", "Choose"), *about)),
                    Field(
                        "holds", "It is", "choice",
                        options=(("", "Choose"), ("enough", "enough"), ("not-yet", "not yet")),
                    ),
                    self.assessor("decide-by"),
                    Field("decide-why", "Reason"),
                ),
                (Act("decide", "Decide"),),
            ),
            Form(
                "Enter an appeal",
                (
                    Field(
                        "appeal-about", "Against", "choice",
                        options=(("", "the whole mark"), *about, *tasks),
                    ),
                    Field("appeal-why", "The learner's reason"),
                ),
                (Act("appeal", "Enter the appeal"),),
            ),
        ]  # fmt: skip

    def _changes(self) -> Table:
        rows = tuple(
            Row(
                str(number),
                (
                    one.at[:10], one.learner, one.assignment, one.task, one.kind,
                    figure(one.before), figure(one.after), one.by, one.why,
                ),
            )
            for number, one in enumerate(changes_of(self.desk.cohort))
        )  # fmt: skip
        heading = ("day", "id", "assignment", "about", "kind", "from", "to", "by", "why")
        return Table("changes", "Changed by hand", heading, rows, numbers=(5, 6), empty="Nothing.")


def _word(holds: bool) -> str:
    return "enough" if holds else "not yet"
