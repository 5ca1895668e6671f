"""The page *Corrected unit*: what it would change, and whom it touches, before it is taken."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.errors import CohortError
from twoshaft_grader.cohort.assign import assignments_of, cohort_unit
from twoshaft_grader.cohort.content import find_content
from twoshaft_grader.cohort.corrected_unit import Correction, read_correction, take_correction
from twoshaft_grader.desk_pages.page import Desk, Page, Work
from twoshaft_grader.desk_pages.parts import Act, Field, Form, Part, Row, Say, Table, Values


class CorrectedUnit(Page):
    """Read a corrected unit file, see what it changes, take it or leave it."""

    id, title = "unit", "Corrected unit"

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._read: Correction | None = None

    def show(self) -> Sequence[Part]:
        """The unit on the bench; or what a corrected one would change."""
        if self._read:
            return self._what_would_change(self._read)
        cohort = self.desk.cohort
        identity = cohort_unit(cohort).identity
        rows = tuple(
            Row(one.name, (one.name, one.unit, one.unit_version)) for one in assignments_of(cohort)
        )
        return (
            Say(f"On the bench: {identity.name}, version {identity.version}."),
            Form(
                "Take in a corrected unit",
                (Field("file", "File", "file", hint="a unit file, with a version of its own"),),
                (Act("read", "Show what would change", first=True),),
                hint="Nothing is written before you have seen it.",
            ),
            Table(
                "units-out", "Handed out, each with the unit that it keeps",
                ("assignment", "unit", "version"), rows, empty="Nothing.",
            ),
        )  # fmt: skip

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        cohort = self.desk.cohort
        if act == "read":
            work.begin("trying what is handed out on both units", len(assignments_of(cohort)))
            content = find_content(cohort.content, base=cohort.root)
            self._read = read_correction(cohort, values.file("file"), content, step=work.step)
            return "Nothing is written yet. This is what would change."
        if act == "leave":
            self._read = None
            return "The unit stays as it was."
        if self._read is None:
            raise CohortError("no corrected unit was read", mend="choose its file")
        why = values.need("why", "the reason")
        work.begin("taking the corrected unit")
        take_correction(cohort, self._read, by=self.desk.by, why=why)
        told = f"{self._read.new} is taken: lessons, and what is handed out from now on, follow it."
        self._read = None
        return told

    def _what_would_change(self, read: Correction) -> Sequence[Part]:
        changes = tuple(
            Row(str(number), (one.about, one.what, one.before, one.after))
            for number, one in enumerate(read.changes)
        )
        touched = tuple(
            Row(
                one.assignment,
                (
                    one.assignment, one.unit_version, str(len(one.learners)),
                    str(len(one.handed_in)), str(len(one.marked)), one.fresh,
                ),
            )
            for one in read.touched
        )  # fmt: skip
        whom = tuple(
            Row(
                f"{one.assignment} {id}",
                (
                    id, one.assignment,
                    "marked" if id in one.marked
                    else "handed in" if id in one.handed_in else "handed out",
                ),
            )
            for one in read.touched
            if one.fresh != "as before"
            for id in one.learners
        )  # fmt: skip
        keep = Act("leave", "Leave everything as it is")
        acts = (Act("take", "Take the corrected unit", first=True), keep)
        return (
            Say(f"On the bench: {read.old}. Corrected: {read.new}."),
            Table(
                "unit-changes", "What would change", ("about", "what", "from", "to"), changes,
                empty="Nothing differs.",
            ),
            Table(
                "touched", "What is handed out keeps its unit; a fresh attempt takes the new one",
                (
                    "assignment", "keeps version", "learners", "handed in", "marked",
                    "a fresh attempt",
                ),
                touched, numbers=(2, 3, 4), empty="Nothing is handed out.",
            ),
            Table(
                "whom", "Whom it touches: they have work of a module that changes",
                ("id", "assignment", "state"), whom, empty="Nobody.",
            ),
            Form(
                "",
                (Field("why", "What was wrong in the unit"),) if changes else (),
                acts if changes else (keep,),
            ),
        )  # fmt: skip
