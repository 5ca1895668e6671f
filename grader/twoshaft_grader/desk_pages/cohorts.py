"""The page *Cohorts*: make one with its unit, and go to the desk of another."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from twoshaft import DEFAULT_UNIT
from twoshaft.errors import CohortError
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.founding import cohorts_in, folder_called, found
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.shared import OPENER
from twoshaft_grader.desk.jupyter import desk_address
from twoshaft_grader.desk_pages.own_unit import unit_named, units_here
from twoshaft_grader.desk_pages.page import Desk, Page, Work
from twoshaft_grader.desk_pages.parts import Act, Cell, Field, Form, Link, Part, Row, Table, Values


class Cohorts(Page):
    """See which cohorts there are, make another, open the desk of one."""

    id, title = "cohorts", "Cohorts"

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._opened: tuple[str, str] = ("", "")

    def show(self) -> Sequence[Part]:
        """The cohorts nearby, a way to the desk that was opened, and making one."""
        mine = self.desk.cohort
        rows = tuple(
            Row(
                str(one.root),
                (
                    one.name, one.college, one.unit, _size(one), str(one.root),
                    Cell("this desk", "●") if one.root == mine.root
                    else Cell("Open its desk", act="open", of=str(one.root),
                              label=f"Open the desk of {one.name}"),
                ),
            )
            for one in self._there()
        )  # fmt: skip
        opened, address = self._opened
        return (
            *((Link(f"Go to the desk of {opened}", address, ""),) if address else ()),
            Table(
                "cohorts", "Cohorts", ("name", "college", "unit", "learners", "folder", ""), rows,
                numbers=(3,),
            ),
            Form(
                "Make a cohort",
                (
                    Field("name", "Name", hint="as Evening group"),
                    Field("college", "College"),
                    Field("unit", "Unit on the bench", "choice", DEFAULT_UNIT,
                          units_here(self.desk.root)),
                    Field("unit-file", "Or a unit file of your own", "file",
                          hint="it is looked over first, and kept in the cohort's folder"),
                    Field("folder", "Folder", hint="a new one; empty: after the name, beside this"),
                    Field("timezone", "Time zone", hint="as Europe/Dublin; empty: this machine's"),
                    Field("shared", "Shared place", hint="only where learners have accounts of "
                          "their own, as /srv/evening-group; else leave it empty"),
                ),
                (Act("make", "Make the cohort", first=True),),
                hint="Then open its desk, and take a roster in on the page Group.",
            ),
        )  # fmt: skip

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        if act == "open":
            one = next((one for one in self._there() if str(one.root) == values.of), None)
            if one is None:
                raise CohortError("this cohort is not there any more", mend="look again")
            work.begin("opening its desk")
            self._opened = one.name, desk_address(one)
            return f"The desk of {one.name} is ready: press the line at the top."
        name = values.need("name", "the name")
        place = values.text("folder")
        folder = Path(place).expanduser() if place else folder_called(name, self.desk.root.parent)
        if not folder.is_absolute():
            folder = self.desk.root.parent / folder
        shared = values.text("shared")
        work.begin("looking the unit over, and making the cohort")
        made = found(
            folder, name=name, college=values.text("college"), timezone=values.text("timezone"),
            unit=str(values.file("unit-file")) if values.has_file("unit-file")
            else unit_named(self.desk.root, values.need("unit", "the unit")),
            shared=Path(shared) if shared else None, by=self.desk.by,
        )  # fmt: skip
        cohort = made.cohort
        told = [f"{cohort.name} is made in {cohort.root}, which opens to your account alone."]
        if made.closed:
            closed = f"{', '.join(made.closed)} of {made.content}"
            told.append(f"Closed to other accounts, since answers are in it: {closed}.")
        if made.content:
            told.append(f"Learners open the course with {cohort.shared / OPENER}.")
        else:
            told.append(f"What learners use is in {cohort.shared}: all work in your account.")
        return " ".join((*told, "Next: open its desk."))

    def _there(self) -> list[Cohort]:
        return cohorts_in(dict.fromkeys((self.desk.root.parent, Path.home())))


def _size(cohort: Cohort) -> str:
    try:
        return str(len(roster_of(cohort)))
    except CohortError:
        return "?"
