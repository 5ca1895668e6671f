"""Give a module to the cohort: source, release, readings and due date."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

import twoshaft
from twoshaft.errors import CohortError
from twoshaft.stored.assignment import UNIT, Assignment, mark_of
from twoshaft.stored.job_sheet import FILE as SHEET
from twoshaft.stored.writing import FOR_ALL
from twoshaft_grader.cohort import backbone, files
from twoshaft_grader.cohort.clock import stamp
from twoshaft_grader.cohort.content import Content
from twoshaft_grader.cohort.due import gradebook_time
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import roster_alone
from twoshaft_grader.stored.assignment import ASSIGNMENT
from twoshaft_grader.stored.issued import write_issued

if TYPE_CHECKING:
    from twoshaft.units import Unit


@dataclass(frozen=True)
class Assigned:
    """A module as given to the cohort; what ``assignment.json`` says."""

    name: str
    module: str
    attempt: int
    unit: str
    unit_version: str
    unit_digest: str
    course_version: str
    due: datetime | None
    notebook: str
    bench_readings: bool = False
    fields: int = 0
    """How many answers it asks for; 0 where it was handed out before this was noted."""
    left_out: tuple[str, ...] = ()
    """Tasks that nobody is given, since the unit has nothing for them."""
    no_evidence: tuple[str, ...] = ()
    """Outcomes of the module that no task is evidence for any more."""
    lacking: tuple[str, ...] = ()
    """What staff are told of that, once, when it is handed out; one sentence each."""
    code_outcome: str = ""
    """Of a notebook of the instructor's own, marked by running code: the outcome it is about."""
    only: tuple[str, ...] = ()
    """For whom it is, as ``assignment.json`` has it; empty: everybody."""

    def is_for(self, learner: str) -> bool:
        """Whether a learner is to have it."""
        return not self.only or mark_of(self.name, learner) in self.only

    def among(self, learners: Iterable[Learner]) -> list[Learner]:
        """Those who are to have it."""
        return [one for one in learners if self.is_for(one.id)]

    @property
    def notebook_id(self) -> str:
        """The notebook's name without its ending, as nbgrader calls it."""
        return Path(self.notebook).stem

    @property
    def answers_in(self) -> str:
        """The file of a hand-in that holds the answers."""
        return self.notebook if self.code_outcome else SHEET


def cohort_unit(cohort: Cohort) -> Unit:
    """The unit on the cohort's bench."""
    from twoshaft.units import load_unit

    return load_unit(cohort.unit_source)


def assign(
    cohort: Cohort,
    content: Content,
    module: str,
    *,
    attempt: int,
    due: datetime | None,
    learners: list[Learner],
    bench_readings: bool = False,
    some: bool = False,
    by: str = "",
) -> Assigned:
    """Hand a module out to the cohort; a run that was cut short is finished by the same call.

    With ``some`` it is for these learners alone; without, for whoever joins later too.

    With ``bench_readings`` learners may put figures from the real bench, and limits from the
    maker's manual, in the place of drawn ones.

    Raises
    ------
    CohortError
        When the attempt is out already, nobody is on the roster, or the module does not exist.
    UnitFileError
        When there is something to mend in the college's own unit file, or the module needs more
        of the unit than the file says. Nothing is handed out then.
    """
    with act(cohort.root, "assign", f"{module}-{attempt}", by=by) as told, roster_alone(cohort):
        until = f"due {stamp(due)}" if due else "without a due date"
        told.after = f"{until}, to {_to(learners) if some else len(learners)}"
        return _assign(cohort, content, module, attempt, due, learners, bench_readings, some)


def _assign(
    cohort: Cohort,
    content: Content,
    module: str,
    attempt: int,
    due: datetime | None,
    learners: list[Learner],
    bench_readings: bool,
    some: bool,
) -> Assigned:
    # What reads an assignment only, as progress does, goes without models, readings and marking.
    from twoshaft.models.audit import sound_unit
    from twoshaft.models.order import OrderTask, chance_r0
    from twoshaft.units import load_unit
    from twoshaft.units.whole_file import shipped_digest, whole_text
    from twoshaft_grader.cohort.fit import fit, lacking_lines
    from twoshaft_grader.cohort.order_levels import order_levels
    from twoshaft_grader.cohort.workplace import copy_lessons

    solution = content.solution(module)
    name = f"{module}-{attempt}"
    if attempt < 1:
        raise CohortError("attempts count from 1", mend="write 1 or more")
    if not learners:
        raise CohortError("nobody is on the roster yet", mend="take a roster in first")
    if is_out(cohort, name):
        raise CohortError(
            f"{name} is handed out already",
            mend=f"for a resit with fresh readings hand attempt {attempt + 1} out; "
            "for another due date change the date",
        )
    unit = sound_unit(cohort.unit_source) if unit_is_own(cohort) else cohort_unit(cohort)
    # Everybody's readings are drawn first: a unit that lacks something shows it before anything
    # is written.
    with order_levels(cohort):
        ids = [learner.id for learner in learners]
        fits = fit(solution, module, unit, ids, salt=cohort.salt, attempt=attempt, work_out=1)
        for reference in fits.worked[0].references.values():
            if isinstance(reference.value, OrderTask):
                chance_r0(reference.value)  # kept for the marking
        copy_lessons(cohort, content)
        source = cohort.source(name)
        source.mkdir(parents=True, exist_ok=True)
        files.write_whole(source / solution.name, fits.text.encode())
        # Whatever becomes of the unit, the cohort's or the course's: this work keeps it as it is.
        files.write_whole(source / UNIT, whole_text(cohort.unit_source))
        load_unit(source / UNIT)
        about = Assignment(
            name=name,
            cohort=cohort.id,
            salt=cohort.salt,
            module=module,
            attempt=attempt,
            unit=unit.identity.id,
            unit_version=str(unit.identity.version),
            unit_digest="" if unit_is_own(cohort) else shipped_digest(unit.identity.id),
            course_version=twoshaft.__version__,
            due=due.isoformat() if due else "",
            fields=fits.fields,
            bench_readings=bench_readings,
            left_out=fits.left_out,
            no_evidence=fits.no_evidence,
            only=_marks(name, learners) if some else (),
        )
        ASSIGNMENT.write(source / ASSIGNMENT.file, about)
        assigned = read_assigned(cohort, name)
        for learner, record in zip(learners, fits.records, strict=True):
            # Nobody has it yet: what an earlier try left may be of another unit.
            path = cohort.issued(learner.id, name)
            write_issued(path, record, bench_readings=bench_readings)
    api = backbone.desk_api(cohort)
    backbone.run(cohort, f"making the apprentices' copy of {name}", api.generate_assignment, name)
    with backbone.gradebook(cohort) as book:
        book.update_or_create_assignment(name, duedate=gradebook_time(due) if due else None)
    backbone.run(cohort, f"handing out {name}", api.release_assignment, name)
    return replace(assigned, lacking=lacking_lines(fits))


def is_out(cohort: Cohort, name: str) -> bool:
    """Whether an assignment is handed out: the last step of assigning is done."""
    return cohort.outbound(name).exists()


def assigned_unit(cohort: Cohort, assigned: Assigned) -> Unit:
    """The unit that an assignment was made with."""
    from twoshaft.units import load_unit

    return load_unit(unit_of_assigned(cohort, assigned))


def unit_of_assigned(cohort: Cohort, assigned: Assigned) -> str | Path:
    """What to load the unit from that an assignment was made with."""
    from twoshaft.jobsheet.bench_unit import assigned_unit_source

    folder = cohort.source(assigned.name)
    return assigned_unit_source(folder, assigned.unit, assigned.unit_digest)


def unit_is_own(cohort: Cohort) -> bool:
    """Whether the cohort has a unit file of its own."""
    return Path(cohort.unit_source).is_file()


def issue(cohort: Cohort, assigned: Assigned, learner: Learner, unit: Unit) -> bool:
    """Store the readings of one learner; what is stored already stays. True if stored now."""
    path = cohort.issued(learner.id, assigned.name)
    if assigned.code_outcome or path.exists():
        return False
    from twoshaft.readings import issue_record

    record = issue_record(
        assigned.module,
        unit,
        salt=cohort.salt,
        learner=learner.id,
        attempt=assigned.attempt,
        left_out=assigned.left_out,
    )
    write_issued(path, record, bench_readings=assigned.bench_readings)
    return True


def issue_to_all(cohort: Cohort, learners: list[Learner]) -> int:
    """Store readings for everybody who has none yet: people who joined late. Returns how many."""
    count = 0
    for assigned in assignments_of(cohort):
        missing = [
            one
            for one in assigned.among(learners)
            if not cohort.issued(one.id, assigned.name).exists()
        ]
        if missing and not assigned.code_outcome:
            unit = assigned_unit(cohort, assigned)
            count += sum(issue(cohort, assigned, one, unit) for one in missing)
    return count


def hand_out_to(
    cohort: Cohort, assigned: Assigned, learners: list[Learner], *, by: str = ""
) -> Assigned:
    """Hand what some have out to more learners.

    Raises
    ------
    CohortError
        When everybody has it, or all of these.
    """
    with act(cohort.root, "assign to more", assigned.name, by=by) as told, roster_alone(cohort):
        assigned = read_assigned(cohort, assigned.name)  # as whoever was first has left it
        more = [one for one in learners if not assigned.is_for(one.id)]
        if not more:
            whom = "these learners have" if assigned.only else "everybody has"
            raise CohortError(f"{whom} {assigned.name} already", mend="choose others")
        told.after = _to(more)
        if not assigned.code_outcome:
            unit = assigned_unit(cohort, assigned)
            for learner in more:
                issue(cohort, assigned, learner, unit)
        only = (*assigned.only, *_marks(assigned.name, more))
        _retell(cohort, assigned.name, only=only)
    return read_assigned(cohort, assigned.name)


def _marks(name: str, learners: list[Learner]) -> tuple[str, ...]:
    return tuple(sorted(mark_of(name, one.id) for one in learners))


def _to(learners: list[Learner]) -> str:
    return ", ".join(one.id for one in learners)


def _retell(cohort: Cohort, name: str, **new: Any) -> None:
    """Change what ``assignment.json`` says, wherever it lies; last where we read it, so that a run
    cut short is taken for not done.
    """
    out = cohort.outbound(name)
    for folder in (out, cohort.root / "release" / name, cohort.source(name)):
        about = ASSIGNMENT.read_if_any(path := folder / ASSIGNMENT.file)
        if about:
            mode = FOR_ALL if folder == out else None
            ASSIGNMENT.write(path, replace(about, **new), mode=mode)


def change_due(
    cohort: Cohort, name: str, due: datetime, *, by: str = "", why: str = ""
) -> Assigned:
    """Give an assignment another due date, in the gradebook and in what is handed out.

    Raises
    ------
    CohortError
        When there is no such assignment.
    """
    with (
        act(cohort.root, "change the due date", name, by=by, why=why) as told,
        roster_alone(cohort),
    ):
        before = read_assigned(cohort, name).due
        told.before, told.after = stamp(before) if before else "", stamp(due)
        _change_due(cohort, name, due)
    return read_assigned(cohort, name)


def _change_due(cohort: Cohort, name: str, due: datetime) -> None:
    _retell(cohort, name, due=due.isoformat())
    with backbone.gradebook(cohort) as book:
        book.update_or_create_assignment(name, duedate=gradebook_time(due))


def read_assigned(cohort: Cohort, name: str) -> Assigned:
    """Read an assignment of the cohort.

    Raises
    ------
    CohortError
        When there is no such assignment, or its files are damaged.
    """
    source = cohort.source(name)
    if not source.is_dir():
        known = ", ".join(path.name for path in sorted(cohort.source("").glob("*"))) or "none yet"
        raise CohortError(
            f'nothing is assigned under the name "{name}"', mend=f"choose one of these: {known}"
        )
    path = source / ASSIGNMENT.file
    about = ASSIGNMENT.of(files.read_json(path, mend="assign the module again"), str(path))
    notebooks = sorted(source.glob("*.ipynb"))
    if len(notebooks) != 1:
        raise CohortError(
            f"{len(notebooks)} notebooks where one belongs",
            where=str(source),
            mend="keep the one that the assign command put there",
        )
    try:
        due = datetime.fromisoformat(about.due) if about.due else None
    except ValueError:
        raise CohortError(
            "an entry is missing or cannot be read (due)",
            where=str(path),
            mend=ASSIGNMENT.mend,
        ) from None
    return Assigned(
        name=name,
        module=about.module,
        attempt=about.attempt,
        unit=about.unit,
        unit_version=about.unit_version,
        unit_digest=about.unit_digest,
        course_version=about.course_version,
        due=due,
        notebook=notebooks[0].name,
        bench_readings=about.bench_readings,
        fields=about.fields,
        left_out=about.left_out,
        no_evidence=about.no_evidence,
        code_outcome=about.code_outcome,
        only=about.only,
    )


def assignments_of(cohort: Cohort) -> list[Assigned]:
    """Everything that was handed out, by module and attempt."""
    found = [
        read_assigned(cohort, path.name)
        for path in sorted((cohort.root / "source").glob("*"))
        if (path / ASSIGNMENT.file).is_file() and is_out(cohort, path.name)
    ]
    return sorted(found, key=lambda a: (a.notebook, a.module, a.attempt))
