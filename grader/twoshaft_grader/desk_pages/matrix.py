"""The page *Matrix*: where everybody stands with every outcome, and the evidence behind a cell."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.modules import COURSE
from twoshaft.outcomes import Observation
from twoshaft_grader.cohort.assign import assignments_of
from twoshaft_grader.cohort.decisions import changes_of
from twoshaft_grader.desk.figures import figure
from twoshaft_grader.desk_pages.page import Desk, Page, Work
from twoshaft_grader.desk_pages.parts import (
    Act,
    Cell,
    Field,
    Form,
    Link,
    Part,
    Row,
    Say,
    Table,
    Values,
)
from twoshaft_grader.records.hand_over import write_matrix
from twoshaft_grader.records.matrix import SHAPES, Matrix, matrix_of

_PAGE = "exports/matrix.html"


class MatrixPage(Page):
    """A cell for each learner and outcome; Enter on it shows what stands behind it."""

    id, title = "matrix", "Matrix"

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._module, self._cell = "", ("", "")

    def show(self) -> Sequence[Part]:
        """The matrix of a module's outcomes, or the evidence behind one cell."""
        cohort = self.desk.cohort
        out = dict.fromkeys(one.module for one in assignments_of(cohort))
        modules = [one for one in COURSE if one in out] or list(COURSE)
        self._module = self._module or modules[0]
        wanted = [] if self._module == "all" else [self._module]
        matrix, left = matrix_of(cohort, modules=wanted)
        if self._cell in matrix.cells:
            return self._evidence(matrix, *self._cell)
        options = (*((one, COURSE[one].title) for one in COURSE), ("all", "all modules"))
        parts: list[Part] = [
            Form(
                "",
                (Field("module", "Outcomes of", "choice", self._module, options),),
                (Act("turn", "Show these"), Act("page", "Make one page with all evidence")),
            ),
            _table(matrix),
        ]
        if matrix.not_asked:
            names = "; ".join(one.statement.rstrip(".") for one in matrix.not_asked)
            parts.insert(
                1,
                Say(f"Not asked, since the unit on the bench has nothing that shows it: {names}."),
            )
        if (cohort.root / _PAGE).exists():
            parts.insert(1, Link("Open the page with all evidence", _PAGE))
        if left:
            rows = tuple(Row(one.learner, (one.learner, one.why)) for one in left)
            parts.append(Table("not-told", "Could not be told", ("id", "why"), rows))
        return parts

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        if act == "turn":
            self._module = values.need("module", "the module")
            work.begin("working it out")
            return ""
        if act == "cell":
            learner, _, outcome = values.of.partition(" ")
            self._cell = (learner, outcome)
            work.begin("looking")
            return ""
        if act == "back":
            self._cell = ("", "")
            return ""
        work.begin("making the page")
        cohort = self.desk.cohort
        write_matrix(cohort, page=cohort.root / _PAGE, by=self.desk.by)
        return "The page is made: open it below. It holds names; it is for assessors."

    def _evidence(self, matrix: Matrix, learner: str, outcome: str) -> Sequence[Part]:
        cell = matrix.cells[learner, outcome]
        person = next(one for one in matrix.learners if one.id == learner)
        about = next(one for one in matrix.outcomes if one.id == outcome)
        attempts = tuple(
            Row(
                f"{one.module}-{one.attempt}",
                (
                    f"{one.module}-{one.attempt}", one.state, figure(one.mark),
                    figure(one.maximum), one.must_pass_right, one.enough, one.evidence,
                    str(one.saved_before or ""), one.note,
                ),
            )
            for one in cell.attempts
        )  # fmt: skip
        answers = tuple(
            Row(
                str(number),
                (one.assignment, one.prompt, one.answer, one.verdict, one.why),
            )
            for number, one in enumerate(cell.answers)
        )
        names = {f"{one.module}-{one.attempt}" for one in cell.attempts}
        changes = tuple(
            Row(
                str(number),
                (
                    one.at[:10], one.assignment, one.task, figure(one.before), figure(one.after),
                    one.by, one.why,
                ),
            )
            for number, one in enumerate(changes_of(self.desk.cohort))
            if one.learner == learner and one.assignment in names
        )  # fmt: skip
        pages = [
            Link(f"Feedback on {name}", matrix.feedback[learner, name])
            for name in sorted(names)
            if (learner, name) in matrix.feedback
        ]
        missing = f" Still missing: {cell.missing}." if cell.missing else ""
        return (
            Form("", (), (Act("back", "Back to the matrix", first=True),)),
            Say(f"{person.name} ({person.id}): {matrix.heading(outcome)}", "head"),
            Say(f"{about.statement}."),
            Say(f"{cell.words}.{missing}"),
            Table(
                "attempts", "Attempts",
                (
                    "attempt", "state", "mark", "of", "must-pass right", "enough", "evidence",
                    "answers saved before", "note",
                ),
                attempts, numbers=(2, 3), empty="None.",
            ),
            Table(
                "answers", "Answers",
                ("attempt", "question", "answer", "verdict", "reference and reason"),
                answers, empty="None.",
            ),
            *pages,
            Table(
                "seen", "Observed",
                ("day", "by", "was", "kind", "criteria", "note", ""),
                tuple(_seen(number, one) for number, one in enumerate(cell.seen)), empty="Nothing.",
            ),
            Table(
                "changes", "Changed by hand in these attempts",
                ("day", "attempt", "what", "from", "to", "by", "why"),
                changes, numbers=(3, 4), empty="Nothing.",
            ),
        )  # fmt: skip


def _seen(number: int, one: Observation) -> Row:
    gone = f"taken back by {one.taken_back.by}: {one.taken_back.why}" if one.taken_back else ""
    criteria = ", ".join(f"{id}: {what}" for id, what in one.criteria)
    was = Cell("met", "✓") if one.met else Cell("not yet", "○")
    return Row(str(number), (one.day, one.by, was, str(one.kind), criteria, one.note, gone))


def _table(matrix: Matrix) -> Table:
    rows = tuple(
        Row(
            person.id,
            (
                person.id,
                person.name,
                person.group,
                *(
                    Cell(
                        matrix.cells[person.id, one.id].state,
                        SHAPES[matrix.cells[person.id, one.id].state],
                        act="cell",
                        of=f"{person.id} {one.id}",
                        label=f"{person.name}, {one.id}: {matrix.cells[person.id, one.id].state}",
                    )
                    for one in matrix.outcomes
                ),
            ),
        )
        for person in matrix.learners
    )
    headings = ("id", "name", "group", *(matrix.heading(one.id) for one in matrix.outcomes))
    return Table("matrix", "Where everybody stands; press a state for its evidence", headings, rows)
