"""The page *Hand over*: what goes to the records office and the assessor."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.not_done import NotDone
from twoshaft_grader.desk_pages.page import Desk, Page, Work
from twoshaft_grader.desk_pages.parts import Act, Field, Form, Link, Part, Row, Say, Table, Values
from twoshaft_grader.records.evidence import write_evidence
from twoshaft_grader.records.export import export_cohort
from twoshaft_grader.records.hand_over import write_oneroster, write_records, write_workbook
from twoshaft_grader.records.oneroster import Place


class HandOver(Page):
    """Marks, workbook, OneRoster gradebook, records on paper and sealed evidence."""

    id, title = "hand-over", "Hand over"

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._written: list[Path] = []
        self._left: list[NotDone] = []

    def show(self) -> Sequence[Part]:
        """What can be written, and what was written now."""
        people = roster_of(self.desk.cohort)
        one = (("", "everybody"), *((p.id, f"{p.name} ({p.id})") for p in people))
        parts: list[Part] = [
            Form(
                "For the records office",
                (),
                (Act("csv", "Marks as CSV", first=True), Act("workbook", "Workbook (XLSX)")),
            ),
            Form(
                "For a records system: OneRoster 1.2 gradebook",
                (
                    Field("class", "The class's id there", hint="empty: the cohort's"),
                    Field("school", "The school's id there", hint="empty: the cohort's"),
                    Field("session", "The term's id there", hint="empty: the cohort's"),
                ),
                (Act("oneroster", "Write the gradebook"),),
            ),
            Form(
                "On paper",
                (Field("record-of", "Record of", "choice", options=one),),
                (Act("records", "Write the records (PDF)"),),
            ),
            Form(
                "Sealed evidence, for an assessor",
                (
                    Field("evidence-of", "Of", "choice", options=one),
                    Field("evidence-to", "A new folder", hint="its whole path"),
                ),
                (Act("evidence", "Seal it"),),
                hint="Names and solutions are in it: for assessors alone.",
            ),
        ]
        root = self.desk.cohort.root
        for path in self._written:
            inside = path.is_relative_to(root) and path.is_file()
            place = path.relative_to(root).as_posix() if inside else ""
            parts.append(Link(f"Open {path.name}", place) if inside else Say(f"In {path}"))
        if self._left:
            rows = tuple(Row(one.learner, (one.learner, one.why)) for one in self._left)
            parts.append(Table("left-out", "Left out", ("id", "why"), rows))
        return parts

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        cohort, by = self.desk.cohort, self.desk.by
        self._written, self._left = [], []
        work.begin("writing")
        if act == "csv":
            path, count, self._left = export_cohort(
                cohort, None, learners=[], assignments=[], by=by
            )
            said = f"{count} rows are written."
        elif act == "workbook":
            path, self._left = write_workbook(cohort, by=by)
            said = "The workbook is written."
        elif act == "oneroster":
            ids = (values.text(name) or cohort.id for name in ("class", "school", "session"))
            path, self._left = write_oneroster(cohort, place=Place(*ids), by=by)
            said = "The gradebook is written."
        elif act == "records":
            wanted = [one] if (one := values.text("record-of")) else []
            self._written, self._left = write_records(cohort, learners=wanted, by=by)
            count = len(self._written)
            return "1 record is written." if count == 1 else f"{count} records are written."
        else:
            path = Path(values.need("evidence-to", "the folder")).expanduser()
            wanted = [one] if (one := values.text("evidence-of")) else []
            seal, count, self._left = write_evidence(cohort, path, learners=wanted, by=by)
            said = f"{count} sheets are sealed. Keep the seal apart from them: {seal}"
        self._written = [path]
        return said
