"""Tables on the terminal: plain words, figures to the right."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import tzinfo
from typing import TYPE_CHECKING, Any

from rich.box import SIMPLE
from rich.table import Table
from rich.text import Text

from twoshaft.outcomes import Observation, State
from twoshaft_grader.cohort.clock import as_read, wall_clock
from twoshaft_grader.cohort.not_done import NotDone
from twoshaft_grader.cohort.observations import Listed
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.desk.figures import estimate, figure
from twoshaft_grader.desk.shown import shown
from twoshaft_grader.records.progress import Standing
from twoshaft_grader.stored.appeals import Appeal
from twoshaft_grader.stored.trail import Act

if TYPE_CHECKING:
    from twoshaft_grader.cohort.marking_run import Done
    from twoshaft_grader.records.how_it_goes import HowItGoes
    from twoshaft_grader.records.matrix import Matrix
    from twoshaft_grader.records.moderation import Both
    from twoshaft_grader.stored.moderation import Moderation


def marks_table(title: str, learners: list[Learner], done: list[Done]) -> Table:
    """What a marking run did, one line for each learner."""
    table = _table(title)
    for heading in ("id", "name", "what"):
        table.add_column(heading, no_wrap=heading == "id")
    for heading in ("points", "of"):
        table.add_column(heading, justify="right")
    table.add_column("enough")
    for learner, one in zip(learners, done, strict=True):
        enough = "" if one.met is None else "yes" if one.met else "not yet"
        table.add_row(
            learner.id,
            learner.name,
            one.state,
            figure(one.points),
            figure(one.maximum),
            enough,
        )
    return table


def progress_table(title: str, standings: list[Standing]) -> Table:
    """Where everybody stands with one assignment, one line for each learner."""
    table = _table(title)
    for heading in ("id", "name", "group", "stage"):
        table.add_column(heading, no_wrap=heading == "id")
    for heading in ("answered", "unreadable", "points", "of"):
        table.add_column(heading, justify="right")
    for heading in ("late", "given back", "observed"):
        table.add_column(heading)
    for one in standings:
        table.add_row(
            one.learner.id,
            one.learner.name,
            one.learner.group,
            one.stage,
            f"{one.answered}/{one.asked}" if one.answered or one.unread else "",
            str(one.unread or ""),
            figure(one.points),
            figure(one.maximum),
            "late" if one.late else "",
            "yes" if one.given_back else "",
            _observed(one),
        )
    return table


def observations_table(title: str, listed: list[Listed], zone: tzinfo) -> Table:
    """What was observed, one line each, oldest first."""
    table = _table(title)
    headings = ("no.", "seen on", "id", "name", "outcome", "was", "kind", "seen by", "note", "")
    for heading in headings:
        table.add_column(heading, no_wrap=heading in ("no.", "seen on", "id", "outcome"))
    for one in listed:
        seen = one.seen
        table.add_row(
            str(one.number),
            seen.seen_on or wall_clock(seen.at, zone),
            one.learner.id,
            one.learner.name,
            seen.outcome,
            State.MET if seen.met else State.NOT_YET,
            "prior learning" if seen.prior else seen.kind,
            seen.by,
            _form(seen),
            _fate(one),
        )
    return table


def _fate(one: Listed) -> str:
    if gone := one.seen.taken_back:
        return f"taken back by {gone.by}: {gone.why}"
    return "" if one.last else "observed again later"


def _form(seen: Observation) -> str:
    """What the form says beside outcome and assessor."""
    parts = [
        seen.note,
        f"bench {seen.bench}" if seen.bench else "",
        seen.unit,
        ", ".join(f"{id}: {what}" for id, what in seen.criteria),
        f"confirmed {seen.confirmed}" if seen.confirmed else "",
    ]
    return "; ".join(part for part in parts if part)


def trail_table(title: str, acts: Sequence[Act], zone: tzinfo) -> Table:
    """What was done at the desk, one line each, oldest first."""
    table = _table(title)
    for heading in ("no.", "when", "by", "did", "what", "from", "to", "why", ""):
        table.add_column(heading, no_wrap=heading in ("no.", "when"))
    for one in acts:
        by = one.by if one.by == one.account else f"{one.by} ({one.account})"
        table.add_row(
            str(one.number), wall_clock(one.at, zone), by, one.did, one.what,
            as_read(one.before, zone), as_read(one.after, zone), one.why, one.ended,
        )  # fmt: skip
    return table


def appeals_table(title: str, appeals: Sequence[Appeal], zone: tzinfo) -> Table:
    """Appeals, one line each."""
    table = _table(title)
    for heading in ("no.", "when", "id", "assignment", "about", "why", "ruling", "by", "reason"):
        table.add_column(heading, no_wrap=heading in ("no.", "when", "id"))
    for one in appeals:
        table.add_row(
            str(one.number), wall_clock(one.at, zone), one.learner, one.assignment,
            one.about or "the whole mark", one.why, one.ruling or "open", one.ruled_by, one.reason,
        )  # fmt: skip
    return table


def not_done_table(title: str, left: Sequence[NotDone]) -> Table:
    """Who could not be done, and why, one line each."""
    table = _table(title)
    table.add_column("id", overflow="fold")
    table.add_column("why", overflow="fold")
    for one in left:
        table.add_row(one.learner[:60], one.why)
    return table


def _observed(one: Standing) -> str:
    counts = ((one.seen_met, State.MET), (one.seen_not_yet, State.NOT_YET))
    return ", ".join(f"{count} {word}" for count, word in counts if count)


class _Plain(Table):
    """A table whose cells are text and nothing else: no marks of the table's own language."""

    def add_row(self, *cells: object, **how: Any) -> None:
        super().add_row(*(Text(shown(str(cell))) for cell in cells), **how)


def _table(title: str) -> Table:
    return _Plain(title=Text(shown(title)), title_justify="left", box=SIMPLE, pad_edge=False)


def sample_table(title: str, drawn: Moderation) -> Table:
    """What is marked a second time; no mark is shown."""
    done = {(one.learner, one.assignment, one.task): one.by for one in drawn.marks}
    table = _table(title)
    for heading in ("id", "assignment", "task", "picked as", "second mark by"):
        table.add_column(heading, no_wrap=heading == "id")
    for one in drawn.sample:
        by = done.get((one.learner, one.assignment, one.task), "")
        table.add_row(one.learner, one.assignment, one.task, one.because, by)
    return table


def differences_table(title: str, found: Sequence[Both]) -> Table:
    """Tasks whose two marks differ."""
    table = _table(title)
    for heading in ("id", "assignment", "task", "second by", "note"):
        table.add_column(heading, no_wrap=heading == "id")
    for heading in ("first", "second", "of"):
        table.add_column(heading, justify="right")
    for one in found:
        second = one.second
        table.add_row(
            second.learner, second.assignment, second.task, second.by, second.note,
            figure(one.first), figure(second.points), figure(one.maximum),
        )  # fmt: skip
    return table


def matrix_table(matrix: Matrix, person: Learner) -> Table:
    """Where one learner stands, one line for each outcome of which there is something."""
    table = _table(f"{person.id} {person.name}")
    for heading in ("outcome", "state", "attempts enough", "observed", "missing"):
        table.add_column(heading, no_wrap=heading == "state")
    for one in matrix.outcomes:
        cell = matrix.cells[person.id, one.id]
        if not cell.attempts and not cell.seen:
            continue
        enough = [f"{r.module}-{r.attempt}" for r in cell.attempts if r.enough == "yes"]
        seen = [f"{o.day} {o.by}" for o in cell.seen if not o.taken_back]
        table.add_row(
            matrix.heading(one.id), cell.words, ", ".join(enough), ", ".join(seen), cell.missing
        )
    return table


def tasks_table(title: str, found: HowItGoes) -> Table:
    """Facility, discrimination and reliability of each task, and of the module."""
    table = _table(title)
    table.add_column("task")
    for heading in ("part right", "discrimination", "reliability"):
        table.add_column(heading, justify="right")
    table.add_column("")
    for one in found.tasks:
        table.add_row(
            one.title, f"{100 * one.item.facility:.0f} %", estimate(one.item.discrimination, found),
            estimate(one.reliability, found), one.remark,
        )  # fmt: skip
    return table
