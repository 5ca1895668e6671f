"""A copy of a cohort for study: answers, marks and readings, and nobody's name.

Ids are drawn anew in no order, every time is moved by one secret number of days, and what people
typed beyond a readable answer stays behind: notes, reasons, comments, feedback, logs. The copy is a
cohort folder like any other, with equal marks.
"""

from __future__ import annotations

import contextlib
import os
import re
import secrets
import sqlite3
from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from twoshaft import system
from twoshaft.errors import CohortError, SheetError
from twoshaft.jobsheet.receipts import sheet_digest
from twoshaft.stored.assignment import UNIT
from twoshaft.stored.given import ISSUED
from twoshaft.stored.job_sheet import FILE as SHEET
from twoshaft.stored.job_sheet import Answer, SheetData, read_sheet, sheet_text
from twoshaft_grader.cohort import backbone, files
from twoshaft_grader.cohort.adjustments import adjustments_of
from twoshaft_grader.cohort.arrival import hand_in_time
from twoshaft_grader.cohort.assign import Assigned, assignments_of
from twoshaft_grader.cohort.back_up import keep_gradebook
from twoshaft_grader.cohort.clock import stamp
from twoshaft_grader.cohort.database import FILE as GRADEBOOK
from twoshaft_grader.cohort.folder import Cohort, make_cohort, open_cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marks import StoredMark, read_mark, write_mark
from twoshaft_grader.cohort.not_done import NotDone, going_on
from twoshaft_grader.cohort.observations import FOLDER as OBSERVED
from twoshaft_grader.cohort.observations import observations_of
from twoshaft_grader.cohort.roster import Learner, roster_text
from twoshaft_grader.cohort.standing import returned_file
from twoshaft_grader.cohort.supervised import sittings_of, watched_by
from twoshaft_grader.cohort.trail import forget
from twoshaft_grader.cohort.turn import turn
from twoshaft_grader.marking.result import BenchUse, FieldMark, SheetMark, Verdict
from twoshaft_grader.stored.adjustments import ADJUSTMENTS, Adjustment
from twoshaft_grader.stored.assignment import ASSIGNMENT
from twoshaft_grader.stored.cohort import FILE as COHORT_FILE
from twoshaft_grader.stored.cohort import read_cohort, write_cohort
from twoshaft_grader.stored.extensions import EXTENSIONS
from twoshaft_grader.stored.handed_in import TIMESTAMP
from twoshaft_grader.stored.issued import read_issued
from twoshaft_grader.stored.lines import CHANGES, Change
from twoshaft_grader.stored.observations import OBSERVATIONS, Observations
from twoshaft_grader.stored.returned import RETURNED
from twoshaft_grader.stored.sittings import SITTINGS, Sittings

ID, NAME = "study", "Cohort for study"
STAFF, SUPERVISOR = "staff", "a supervisor"
_DAYS = range(400, 4000)
# A figure with its unit, as somebody reads it from a gauge; anything else typed there is words.
_FIGURE = re.compile(r"[-+]?[0-9][0-9.,/ ]*[ ]?[A-Za-zµ°%*/·^²³]{0,8}")


@dataclass(frozen=True)
class Anonymous:
    """The copy, and who could not be taken into it and why."""

    cohort: Cohort
    learners: int
    left: tuple[NotDone, ...]


@dataclass(frozen=True)
class _Veil:
    """What stands for whom, and by how much times are moved."""

    people: dict[str, Learner]
    by: timedelta
    known: re.Pattern[str]

    def less(self, value: Any) -> Any:
        """An answer, or a part of one, without what holds somebody's name or id."""
        if isinstance(value, list):
            return [self.less(one) for one in value]
        return "" if isinstance(value, str) and self.known.search(value) else value

    def id(self, learner: str) -> str:
        return self.people[learner].id

    def time(self, text: str) -> str:
        """An ISO 8601 time, moved; empty where it is none."""
        try:
            moment = datetime.fromisoformat(text)
        except ValueError:
            return ""
        moved = moment - self.by
        return stamp(moved) if text.endswith("Z") else moved.isoformat()


def anonymous(cohort: Cohort, target: Path) -> Anonymous:
    """Make a cohort folder that says of nobody who they are.

    Raises
    ------
    CohortError
        When the folder is in use, or another run is under way.
    """
    target = target.expanduser().resolve()
    place = target.with_name(f"{target.name}-shared")
    for folder in (target, place):
        if os.path.lexists(folder):
            raise CohortError(f"{folder} is there already", mend="give the name of a new folder")
    aside = target.with_name(f".{target.name}.part")
    asides = (aside, aside.with_name(f"{aside.name}-shared"))
    try:
        for one in asides:
            files.remove(one)
        with turn(cohort):
            made, count, left = _copy(cohort, aside)
        entries = read_cohort(aside / COHORT_FILE)
        write_cohort(aside / COHORT_FILE, replace(entries, shared=str(place)))
        system.rename(made.shared, place)
        system.rename(aside, target)
    finally:
        for one in asides:
            files.remove(one)
    return Anonymous(open_cohort(target), count, tuple(left))


def _copy(cohort: Cohort, aside: Path) -> tuple[Cohort, int, list[NotDone]]:
    learners = roster_of(cohort)
    veil = _veil(learners)
    made = make_cohort(
        aside, id=ID, name=NAME, unit=cohort.unit_source, timezone="UTC", content=cohort.content
    )
    left: list[NotDone] = []
    everybody = sorted(veil.people.values(), key=lambda one: one.id)
    files.write_whole(made.roster_file, roster_text(everybody))
    if cohort.rules.exists():
        files.write_whole(made.rules, cohort.rules.read_bytes())
    for assigned in assignments_of(cohort):
        _handed_out(cohort, made, assigned, veil)
        for learner in learners:
            with going_on(learner.id, left):
                _work_of(cohort, made, assigned, learner.id, veil)
    for learner in learners:
        with going_on(learner.id, left):
            _observed(cohort, made, learner.id, veil)
    _extensions(cohort, made, veil)
    _adjustments(cohort, made, veil)
    _sittings(cohort, made, veil)
    _changes(cohort, made, veil)
    _gradebook(cohort, made, veil)
    forget(made.root)  # it says who made the copy, and when
    return made, len(learners), left


def _veil(learners: list[Learner]) -> _Veil:
    draw = secrets.SystemRandom()
    numbers = draw.sample(range(1, len(learners) + 1), len(learners))
    groups = sorted({one.group for one in learners if one.group})
    draw.shuffle(groups)
    people = {
        one.id: Learner(
            f"person-{number:03}", "Person", f"{number:03}",
            f"group {groups.index(one.group) + 1}" if one.group else "",
        )
        for one, number in zip(learners, numbers, strict=True)
    }  # fmt: skip
    said = {text for one in learners for text in (one.id, one.family_name, one.given_name)}
    known = re.compile(
        rf"(?<!\w)(?:{'|'.join(re.escape(text) for text in sorted(said))})(?!\w)", re.IGNORECASE
    )
    return _Veil(people, timedelta(days=draw.choice(_DAYS)), known)


def _handed_out(cohort: Cohort, made: Cohort, assigned: Assigned, veil: _Veil) -> None:
    """An assignment as it was handed out, without the date and the name of who watches."""
    name = assigned.name
    about = ASSIGNMENT.read(cohort.source(name) / ASSIGNMENT.file)
    about = replace(
        about,
        cohort=made.id,
        salt=made.salt,
        due=veil.time(about.due),
        supervised_by=SUPERVISOR if about.supervised_by else "",
    )
    pairs = (
        (cohort.source(name), made.source(name)),
        (cohort.root / "release" / name, made.root / "release" / name),
        (cohort.root / "release" / name, made.outbound(name)),
    )
    for of, to in pairs:
        for path in (*sorted(of.glob("*.ipynb")), of / UNIT):
            if path.is_file():
                files.write_whole(to / path.name, path.read_bytes())
        ASSIGNMENT.write(to / ASSIGNMENT.file, about)


def _work_of(cohort: Cohort, made: Cohort, assigned: Assigned, learner: str, veil: _Veil) -> None:
    name, id = assigned.name, veil.id(learner)
    issued = cohort.issued(learner, name)
    if issued.exists():
        record = ISSUED.of(read_issued(issued), str(issued))
        files.write_whole(made.issued(id, name), ISSUED.text(replace(record, learner=id)))
    if (told := RETURNED.read_if_any(returned_file(cohort, name, learner))) is not None:
        told = replace(
            told,
            learner=id,
            given_back=veil.time(told.given_back),
            supervised_by=SUPERVISOR if told.supervised_by else "",
            decided={},
        )
        RETURNED.write(returned_file(made, name, id), told)
    mark = read_mark(cohort.mark_file(learner, name))
    if mark is None or mark.sheet is None:
        return
    sheet = _sheet_mark(mark.sheet, id, veil)
    folder = made.submitted(id, name)
    kept = not mark.earlier and _submitted(cohort, made, mark, sheet, veil)
    write_mark(
        made.mark_file(id, name),
        StoredMark(
            learner=id,
            assignment=name,
            state=mark.state,
            submission=files.folder_digest(folder) if kept else "",
            handed_in=veil.time(mark.handed_in),
            marked_at=veil.time(mark.marked_at),
            marked_by=mark.marked_by,
            sheet_sha256=sheet_digest(folder / SHEET) if kept else "",
            earlier=mark.earlier,
            sheet=sheet,
        ),
    )


def _sheet_mark(sheet: SheetMark, id: str, veil: _Veil) -> SheetMark:
    tasks = tuple(
        replace(task, fields=tuple(_field(one, veil) for one in task.fields))
        for task in sheet.tasks
    )
    bench = tuple(map(_bench, sheet.bench))
    return replace(sheet, learner=id, tasks=tasks, bench=bench, notes=())


def _field(field: FieldMark, veil: _Veil) -> FieldMark:
    """A field's mark; of what could not be read, nothing of what stood there."""
    if field.verdict != Verdict.UNREADABLE:
        return replace(field, answer=veil.less(field.answer))
    return replace(field, answer="", sentences=(), details=())


def _bench(use: BenchUse) -> BenchUse:
    figures = tuple((prompt, _figure(value), "") for prompt, value, _ in use.figures)
    return replace(use, figures=figures, page="", read_by="")


def _figure(value: object) -> str:
    return value if isinstance(value, str) and _FIGURE.fullmatch(value) else ""


def _submitted(
    cohort: Cohort, made: Cohort, mark: StoredMark, marked: SheetMark, veil: _Veil
) -> bool:
    """The marked job sheet, with readable answers alone."""
    folder = cohort.submitted(mark.learner, mark.assignment)
    if not folder.is_dir() or files.folder_digest(folder) != mark.submission:
        return False
    try:
        sheet = read_sheet(folder / SHEET)
    except SheetError:
        return False
    readable = {one.name for one in marked.fields if one.verdict != Verdict.UNREADABLE}
    plain = SheetData(
        learner=marked.learner,
        module=marked.module,
        attempt=marked.attempt,
        cohort=made.id,
        course_version=marked.course_version,
        unit_id=marked.unit,
        unit_version=marked.unit_version,
        given_digest=sheet.given_digest,
        answers={
            name: Answer(veil.less(answer.value), answer.revision, veil.time(answer.saved))
            for name, answer in sheet.answers.items()
            if name in readable
        },
    )
    target = made.submitted(marked.learner, mark.assignment)
    files.write_whole(target / SHEET, sheet_text(plain))
    if moment := hand_in_time(cohort, mark.learner, mark.assignment):
        files.write_whole(target / TIMESTAMP, f"{moment - veil.by:%Y-%m-%d %H:%M:%S.%f} UTC")
    return True


def _adjustments(cohort: Cohort, made: Cohort, veil: _Veil) -> None:
    """More time alone, since dates follow from it; the rest and the reasons say who it is."""
    kept = {
        veil.id(id): Adjustment(more_days=one.more_days, by=STAFF, at=veil.time(one.at), why="")
        for id, one in adjustments_of(cohort).items()
        if id in veil.people and one.more_days
    }
    if kept:
        ADJUSTMENTS.write(made.root / ADJUSTMENTS.file, kept)


def _sittings(cohort: Cohort, made: Cohort, veil: _Veil) -> None:
    """Supervised attempts, each of the answers as they stand in the copy."""
    kept = []
    for one in sittings_of(cohort):
        here = [id for id in one.learners if id in veil.people]
        sheets = {}
        for id in here:
            was = read_mark(cohort.mark_file(id, one.assignment))
            now = read_mark(made.mark_file(veil.id(id), one.assignment))
            if now and watched_by([one], one.assignment, id, was).by:
                sheets[veil.id(id)] = now.sheet_sha256
        before = {veil.id(id): one.before[id] for id in here if id in one.before}
        kept.append(
            replace(
                one, room="", note="", learners=tuple(map(veil.id, here)), waiting={},
                saved={}, handed_in=sheets, before=before, opened_at=veil.time(one.opened_at),
                opened_by=SUPERVISOR,
                closed_at=veil.time(one.closed_at), closed_by=SUPERVISOR if one.closed_by else "",
            )
        )  # fmt: skip
    if kept:
        SITTINGS.write(made.root / SITTINGS.file, Sittings(tuple(kept)))


def _observed(cohort: Cohort, made: Cohort, learner: str, veil: _Veil) -> None:
    seen = [
        replace(
            one,
            by=STAFF,
            note="",
            at=veil.time(one.at),
            seen_on=veil.time(one.seen_on)[:10],
            bench="",
            unit="",
            confirmed=veil.time(one.confirmed)[:10],
        )
        for one in observations_of(cohort, learner)
    ]
    if seen:
        id = veil.id(learner)
        OBSERVATIONS.write(made.root / OBSERVED / f"{id}.json", Observations(id, tuple(seen)))


def _extensions(cohort: Cohort, made: Cohort, veil: _Veil) -> None:
    known = EXTENSIONS.read_if_any(cohort.root / EXTENSIONS.file) or {}
    moved = {
        name: {veil.id(one): veil.time(due) for one, due in dates.items() if one in veil.people}
        for name, dates in known.items()
    }
    EXTENSIONS.write(made.root / EXTENSIONS.file, moved)


def _changes(cohort: Cohort, made: Cohort, veil: _Veil) -> None:
    lines = [
        replace(
            line,
            learner=veil.id(line.learner),
            at=veil.time(line.at),
            by=STAFF,
            why="",
            submission=_same_work(cohort, made, line, veil),
        )
        for line in CHANGES.read(cohort.log("changes"))
        if line.learner in veil.people
    ]
    CHANGES.append(made.log("changes"), *lines)


def _same_work(cohort: Cohort, made: Cohort, line: Change, veil: _Veil) -> str:
    """Digest of the copied work that a decision was made on; empty where it was other work."""
    mark = read_mark(cohort.mark_file(line.learner, line.assignment))
    copied = read_mark(made.mark_file(veil.id(line.learner), line.assignment))
    same = mark and copied and line.submission and mark.submission == line.submission
    return copied.submission if same and copied else ""


def _gradebook(cohort: Cohort, made: Cohort, veil: _Veil) -> None:
    """The gradebook with its scores, and none of its names, comments and times."""
    book = made.root / GRADEBOOK
    keep_gradebook(cohort, book)
    with backbone.gradebook(made) as opened:
        for student in opened.students:
            if student.id not in veil.people:
                opened.remove_student(student.id)
    with contextlib.closing(sqlite3.connect(book)) as data:
        _rename(data, veil)
        data.execute("UPDATE comment SET auto_comment = NULL, manual_comment = NULL")
        data.execute("DELETE FROM course WHERE id <> ?", (made.id,))  # opening it made its own
        data.execute("UPDATE assignment SET course_id = ?", (made.id,))
        for table, column in (("submitted_assignment", "timestamp"), ("assignment", "duedate")):
            found = data.execute(f"SELECT id, {column} FROM {table}").fetchall()
            data.executemany(
                f"UPDATE {table} SET {column} = ? WHERE id = ?",
                [(_moved(when, veil), id) for id, when in found],
            )
        data.commit()
        data.execute("VACUUM")  # what was written over lies in the file until then


def _rename(data: sqlite3.Connection, veil: _Veil) -> None:
    # By way of ids that nobody has: one that was drawn may be another's own.
    steps: Iterable[dict[str, str]] = (
        {id: f"~{one.id}" for id, one in veil.people.items()},
        {f"~{one.id}": one.id for one in veil.people.values()},
    )
    for step in steps:
        pairs = [(new, old) for old, new in step.items()]
        data.executemany("UPDATE student SET id = ? WHERE id = ?", pairs)
        data.executemany(
            "UPDATE submitted_assignment SET student_id = ? WHERE student_id = ?", pairs
        )
    names = [(one.given_name, one.family_name, one.id) for one in veil.people.values()]
    data.executemany("UPDATE student SET first_name = ?, last_name = ? WHERE id = ?", names)
    data.execute("UPDATE student SET email = NULL, lms_user_id = NULL")


def _moved(when: str | None, veil: _Veil) -> str | None:
    """A time as the database keeps it."""
    if not when:
        return None
    moment = datetime.fromisoformat(when).replace(tzinfo=UTC) - veil.by
    return f"{moment:%Y-%m-%d %H:%M:%S.%f}"
