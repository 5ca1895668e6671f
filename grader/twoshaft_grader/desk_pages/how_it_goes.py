"""The page *How it goes*: who is stuck, what is hard and often wrong, in one assignment."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.assign import assignments_of, read_assigned
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.desk.figures import estimate, reliability_words
from twoshaft_grader.desk_pages.page import Desk, Page, Work
from twoshaft_grader.desk_pages.parts import Act, Field, Form, Link, Part, Row, Say, Table, Values
from twoshaft_grader.records.how_it_goes import HowItGoes, class_page, how_it_goes

_PAGES = "class-pages"


class HowItGoesPage(Page):
    """How an assignment goes, as tables, and on one page for class."""

    id, title = "how-it-goes", "How it goes"

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._name = ""

    def show(self) -> Sequence[Part]:
        """A choice of assignment, and what is known of the one that was chosen."""
        cohort = self.desk.cohort
        out = assignments_of(cohort)
        if not out:
            return (Say("Nothing is handed out yet: begin on the page Hand out."),)
        if self._name not in [one.name for one in out]:
            self._name = ""
        choice = Form(
            "",
            (
                Field(
                    "what", "Assignment", "choice", self._name,
                    tuple((one.name, one.name) for one in out),
                ),
            ),
            (Act("look", "Show how it goes", first=True),),
        )  # fmt: skip
        if not self._name:
            return (choice,)
        found = how_it_goes(cohort, read_assigned(cohort, self._name))
        names = {one.id: one.name for one in roster_of(cohort)}
        page = f"{_PAGES}/{self._name}.html"
        there = (cohort.root / page).exists()
        return (
            choice,
            Say(found.title, "head"),
            *_tables(found, names),
            Form("", (), (Act("page", "Make a page for class, without names"),)),
            *((Link("Open the page for class", page),) if there else ()),
        )

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        cohort = self.desk.cohort
        if act == "look":
            assigned = read_assigned(cohort, values.need("what", "the assignment"))
            work.begin("working it out")
            self._name = assigned.name
            return ""
        work.begin("making the page")
        found = how_it_goes(cohort, read_assigned(cohort, self._name))
        files.write_whole(cohort.root / _PAGES / f"{self._name}.html", class_page(found, cohort))
        return "The page for class is made; open and print it below."


def _tables(found: HowItGoes, names: dict[str, str]) -> list[Part]:
    stages = tuple(Row(stage, (stage, str(count))) for stage, count in found.stages.items())
    stuck = tuple(Row(id, (id, names.get(id, ""), why)) for id, why in found.stuck)
    tasks = tuple(
        Row(
            one.id,
            (
                one.title, f"{100 * one.item.facility:.0f} %",
                estimate(one.item.discrimination, found), estimate(one.reliability, found),
                one.remark,
            ),
        )
        for one in found.tasks
    )  # fmt: skip
    wrong = tuple(
        Row(
            str(number),
            (
                one.prompt, one.task, str(one.wrong), str(one.answered), one.slip,
                str(one.slips or ""),
            ),
        )
        for number, one in enumerate(found.wrong)
    )  # fmt: skip
    misplaced = tuple(Row(step, (step, str(count))) for step, count in found.misplaced)
    left = tuple(Row(one.learner, (one.learner, one.why)) for one in found.left)
    parts: list[Part] = [
        Table("stages", "Who stands where", ("state", "learners"), stages, numbers=(1,)),
        Table("stuck", "Who is stuck", ("id", "name", "on what"), stuck, empty="Nobody."),
        Table(
            "tasks", f"Tasks, of {found.marked} marked sheets",
            ("task", "part right", "tells strong from weak (discrimination)", "reliability", ""),
            tasks, numbers=(1, 2, 3), empty="Nothing is marked yet.",
        ),
    ]  # fmt: skip
    if tasks:
        parts += [
            Say(reliability_words(found)),
            Table(
                "often-wrong", "Most often wrong",
                ("question", "task", "wrong", "of", "mistake most often recognised", "times"),
                wrong, numbers=(2, 3, 5), empty="Nothing.",
            ),
            Table(
                "misplaced", "Steps most often out of place", ("step", "times"), misplaced,
                numbers=(1,), empty="None.",
            ),
        ]  # fmt: skip
    if left:
        parts.append(Table("not-told", "Could not be told", ("id", "why"), left))
    return parts
