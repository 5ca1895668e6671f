"""The page *Take in, mark, give back*."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import psutil

from twoshaft_grader.cohort.assign import Assigned, assignments_of, read_assigned
from twoshaft_grader.cohort.bring_in import bring_in
from twoshaft_grader.cohort.collect import Collected, collect
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.give_back import give_back
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marking_run import (
    AS_BEFORE,
    NOT_DONE,
    Done,
    mark_assignment,
    marked_apart,
)
from twoshaft_grader.cohort.marks import MARKED, UNREADABLE
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.desk.figures import figure
from twoshaft_grader.desk_pages.page import Desk, Page, Work
from twoshaft_grader.desk_pages.parts import Act, Cell, Field, Form, Part, Row, Say, Table, Values
from twoshaft_grader.records.alike import alike
from twoshaft_grader.records.progress import Stage, Standing, progress

SHAPES = {
    Stage.NOT_FETCHED: "\u25cb",
    Stage.NOT_BEGUN: "\u25cb",
    Stage.UNDER_WAY: "\u25d4",
    Stage.HANDED_IN: "\u25d1",
    Stage.COLLECTED: "\u25d5",
    Stage.UNREADABLE: "\u25b2",
    Stage.NOT_YET: "\u25cf",
    Stage.ENOUGH: "\u2713",
    Stage.DAMAGED: "\u25b2",
}
_STICKS = ("/media/", "/run/media/", "/mnt/", "/Volumes/")


class TakeIn(Page):
    """Take in what was handed in, mark it, give it back; who stands where, as it changes."""

    id, title, every_s = "take-in", "Take in, mark, give back", 5

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._trouble: list[Row] = []
        self._alike: list[Row] = []

    def show(self) -> Sequence[Part]:
        """Everybody's state, what can be done, and what could not be."""
        cohort = self.desk.cohort
        out = assignments_of(cohort)
        if not out:
            return (Say("Nothing is handed out yet: begin on the page Hand out."),)
        sticks = memory_sticks()
        parts: list[Part] = [
            Form(
                "",
                (
                    Field(
                        "what", "Assignment", "choice",
                        options=(("", "all"), *((one.name, one.name) for one in out)),
                    ),
                    Field("again", "Mark unchanged work too", "tick"),
                ),
                (
                    Act("all", "Take in, mark and give back", first=True),
                    Act("collect", "Only take in"),
                    Act("mark", "Only mark"),
                    Act("give-back", "Only give back"),
                ),
            ),
            _states(progress(cohort, out)),
            Form(
                "Take in from a zip, a folder or a memory stick",
                (
                    Field("zip", "Zip", "file"),
                    Field(
                        "stick", "Memory stick", "choice",
                        options=(("", "none" if sticks else "none found"), *sticks),
                    ),
                    Field("folder", "Or a folder", hint="its whole path"),
                ),
                (Act("bring-in", "Take in from there"),),
                hint="Whose a job sheet is, and of what, it says itself.",
            ),
        ]  # fmt: skip
        if self._trouble:
            table = Table(
                "not-done", "What to look at", ("id or place", "assignment", "why", ""),
                tuple(self._trouble),
            )  # fmt: skip
            parts.insert(1, table)
        if self._alike:
            table = Table(
                "alike", "Agree more than chance allows: ask both", ("assignment", "what agrees"),
                tuple(self._alike),
            )  # fmt: skip
            parts.insert(1, table)
        return parts

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        cohort, by = self.desk.cohort, self.desk.by
        people = roster_of(cohort)
        self._trouble, self._alike = [], []
        if act == "take":
            name, _, learner = values.of.partition(" ")
            assigned = read_assigned(cohort, name)
            return self._collect(cohort, [assigned], people, work, take=(learner,))
        if act == "bring-in":
            brought = bring_in(cohort, self._place(values), people, by=by)
            self._trouble = [
                Row(str(number), (one.learner, "", one.why, ""))
                for number, one in enumerate(brought.left)
            ]
            names = dict.fromkeys(name for _, name in brought.taken)
            mine = [read_assigned(cohort, name) for name in names]
            told = self._collect(cohort, mine, people, work) if mine else ""
            count, known = len(brought.taken), len(brought.known)
            return f"{count} hand-ins found, {known} known already. {told}".strip()
        name = values.text("what")
        wanted = [read_assigned(cohort, name)] if name else assignments_of(cohort)
        said = []
        if act in ("all", "collect"):
            said.append(self._collect(cohort, wanted, people, work))
        if act in ("all", "mark"):
            said.append(self._mark(cohort, wanted, people, work, again=values.tick("again")))
        if act in ("all", "give-back"):
            said.append(self._give_back(cohort, wanted, people, work))
        return " ".join(said)

    def _place(self, values: Values) -> Path:
        if named := values.text("folder") or values.text("stick"):
            return Path(named)
        return values.file("zip")

    def _collect(
        self,
        cohort: Cohort,
        wanted: list[Assigned],
        people: list[Learner],
        work: Work,
        take: tuple[str, ...] = (),
    ) -> str:
        work.begin("taking in", len(wanted))
        new = newer = 0
        for assigned in wanted:
            result = collect(cohort, assigned, assigned.among(people), take=take, by=self.desk.by)
            self._tell_collected(result)
            new, newer = new + len(result.new), newer + len(result.newer)
            work.step()
        return f"Taken in: {new} new, {newer} newer."

    def _tell_collected(self, result: Collected) -> None:
        name = result.assignment
        for one in result.asked:
            take = Cell(
                "Take it all the same", act="take", of=f"{name} {one.learner}",
                label=f"Take it all the same: {one.learner}, {name}",
            )  # fmt: skip
            self._not_done(one.learner, name, f"kept, and not taken: {one.why}", take)
        for one in (*result.left, *result.later):
            self._not_done(one.learner, name, one.why)
        for id in result.strangers:
            self._not_done(id, name, "is not on the roster, and left in the exchange.")
        for id in result.restored:
            self._not_done(id, name, "was not as collected, and was put back.")
        for id in result.placed:
            self._not_done(id, name, "was placed by hand, so there is no time of handing in.")

    def _mark(
        self,
        cohort: Cohort,
        wanted: list[Assigned],
        people: list[Learner],
        work: Work,
        *,
        again: bool,
    ) -> str:
        done: list[Done] = []
        for assigned in wanted:
            mine = assigned.among(people)
            work.begin(f"marking {assigned.name}", len(mine))
            found = mark_assignment(
                cohort, assigned, mine, again=again, marked=marked_apart, step=work.step,
                by=self.desk.by,
            )  # fmt: skip
            for one in found:
                if one.state in (UNREADABLE, NOT_DONE):
                    self._not_done(one.learner, assigned.name, f"{one.state}: {one.reason}")
            if any(one.state == MARKED for one in found):
                self._alike += [
                    Row(f"{assigned.name} {number}", (assigned.name, one.sentence))
                    for number, one in enumerate(alike(cohort, assigned, mine)[0])
                ]
            done += found
        marked, before = (sum(d.state == state for d in done) for state in (MARKED, AS_BEFORE))
        told = f"Marked: {marked}, as before: {before}."
        pairs = len(self._alike)
        some = f"{pairs} {'pair' if pairs == 1 else 'pairs'} of sheets"
        return f"{told} {some} to ask about, below." if pairs else told

    def _give_back(
        self, cohort: Cohort, wanted: list[Assigned], people: list[Learner], work: Work
    ) -> str:
        count = 0
        for assigned in wanted:
            mine = assigned.among(people)
            work.begin(f"giving back {assigned.name}", len(mine))
            given = give_back(cohort, assigned, mine, step=work.step, by=self.desk.by)
            for one in given.left:
                self._not_done(one.learner, assigned.name, one.why)
            for id in given.mark_first:
                self._not_done(id, assigned.name, "has newer work: mark it first.")
            count += len(given.returned)
        return f"Feedback given back: {count}."

    def _not_done(self, who: str, name: str, why: str, cell: Cell | str = "") -> None:
        key = f"{len(self._trouble)}"
        self._trouble.append(Row(key, (who[:60], name, why, cell)))


def memory_sticks() -> tuple[tuple[str, str], ...]:
    """Memory sticks and other disks that were put in, as choices."""
    found = []
    for one in psutil.disk_partitions(all=False):
        if one.mountpoint.startswith(_STICKS) or "removable" in one.opts:
            found.append((one.mountpoint, Path(one.mountpoint).name or one.mountpoint))
    return tuple(found)


def _states(standings: list[Standing]) -> Table:
    rows = tuple(
        Row(
            f"{one.assignment} {one.learner.id}",
            (
                one.learner.id,
                one.learner.name,
                one.learner.group,
                one.assignment,
                Cell(one.trouble or one.stage, SHAPES[one.stage]),
                f"{one.answered}/{one.asked}",
                figure(one.points),
                figure(one.maximum),
                "late" if one.late else "",
                "yes" if one.given_back else "",
            ),
        )
        for one in standings
    )
    heading = (
        "id", "name", "group", "assignment", "state", "answered", "points", "of", "late",
        "given back",
    )  # fmt: skip
    return Table("states", "Where everybody stands", heading, rows, numbers=(5, 6, 7))
