"""The page *Supervised attempt*: open one for those in the room, and close it."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft_grader.cohort.assign import assignments_of, read_assigned
from twoshaft_grader.cohort.clock import wall_clock
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.not_done import NotDone
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.supervised import (
    BEFORE,
    close_sitting,
    counted,
    open_sitting,
    sittings_of,
)
from twoshaft_grader.desk_pages.page import Desk, Page, Work
from twoshaft_grader.desk_pages.parts import Act, Cell, Field, Form, Part, Row, Say, Table, Values
from twoshaft_grader.stored.sittings import Sitting


class Supervised(Page):
    """Open a supervised attempt for named learners in a room, and close it."""

    id, title = "supervised", "Supervised attempt"

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._left: tuple[NotDone, ...] = ()

    def show(self) -> Sequence[Part]:
        """Those that are open, those that were, and opening one."""
        cohort = self.desk.cohort
        people, out = roster_of(cohort), assignments_of(cohort)
        if not people or not out:
            return (Say("Nothing is handed out yet: begin on the page Hand out."),)
        sittings = sittings_of(cohort)
        still = [one for one in sittings if not one.closed_at]
        parts: list[Part] = [
            Say(
                "Only what is handed in between opening and closing counts as supervised, and of "
                "it no outcome with an answer that was saved before."
            ),
            self._table(sittings),
        ]
        if still:
            which = tuple((str(o.number), f"{o.number}: {o.assignment}, {o.room}") for o in still)
            parts.append(
                Form(
                    "Close a supervised attempt",
                    (
                        Field("number", "Attempt", "choice", options=which),
                        self.assessor("close-by"),
                        Field("note", "What happened that is to be known", "long"),
                    ),
                    (Act("close", "Close it", first=True),),
                )
            )
        if self._left:
            rows = tuple(Row(one.learner, (one.learner, one.why)) for one in self._left)
            parts.append(Table("nothing", "Nothing of theirs counts", ("id", "why"), rows))
        return [*parts, *self._opening(people, tuple(one.name for one in out), not still)]

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        cohort = self.desk.cohort
        if act == "close":
            number = int(values.need("number", "the attempt"))
            by, note = values.need("close-by", "the assessor"), values.text("note")
            done = close_sitting(cohort, number, by=by, note=note)
            self._left = done.left
            handed = ", ".join(done.sitting.handed_in) or "nobody"
            said = f"Supervised attempt {number} is closed. Handed in: {handed}."
            before = done.sitting.before
            return (
                f"{said} Saved before it was opened: {counted(before)}. {BEFORE}"
                if before
                else said
            )
        name, room = values.need("name", "the assignment"), values.need("room", "the room")
        by, ids = values.need("open-by", "the assessor"), values.some("present")
        one = open_sitting(cohort, read_assigned(cohort, name), ids, room=room, by=by)
        self._left = ()
        said = f"Supervised attempt {one.number} is open in {room} for {', '.join(ids)}."
        return f"{said} Saved already: {counted(one.saved)}. {BEFORE}" if one.saved else said

    def _opening(
        self, people: list[Learner], out: tuple[str, ...], first: bool
    ) -> tuple[Part, ...]:
        return (
            Table(
                "present", "Who is in the room, to tick", ("id", "name", "group"),
                tuple(Row(one.id, (one.id, one.name, one.group)) for one in people), pick=True,
            ),
            Form(
                "Open a supervised attempt",
                (
                    Field(
                        "name", "Assignment", "choice", options=tuple((one, one) for one in out)
                    ),
                    Field("room", "Room"),
                    self.assessor("open-by"),
                ),
                (Act("open", "Open it for the ticked learners", first=first),),
            ),
        )  # fmt: skip

    def _table(self, sittings: Sequence[Sitting]) -> Table:
        def when(text: str) -> str:
            zone = self.desk.cohort.zone
            return wall_clock(text, zone)

        rows = tuple(
            Row(
                str(one.number),
                (
                    str(one.number), one.assignment, one.room,
                    Cell("closed", "●") if one.closed_at else Cell("open", "○"),
                    f"{when(one.opened_at)} by {one.opened_by}",
                    f"{when(one.closed_at)} by {one.closed_by}" if one.closed_at else "",
                    ", ".join(one.learners), ", ".join(one.handed_in), counted(one.before),
                    one.note,
                ),
            )
            for one in reversed(sittings)
        )  # fmt: skip
        heading = (
            "no.", "assignment", "room", "state", "opened", "closed", "learners", "handed in",
            "saved before", "note",
        )  # fmt: skip
        return Table("sittings", "Supervised attempts", heading, rows, numbers=(0,), empty="None.")
