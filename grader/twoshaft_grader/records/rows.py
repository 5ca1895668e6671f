"""One row for each learner, module, attempt and outcome."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import dataclass, field, fields
from datetime import datetime
from typing import Any

from nbgrader.api import Gradebook

from twoshaft.errors import CohortError
from twoshaft.outcomes import (
    Attempt,
    Evidence,
    Observation,
    Outcome,
    Rules,
    State,
    evidence_of,
    load_outcomes,
    load_rules,
    stand,
)
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.adjustments import adjustments_of, in_words
from twoshaft_grader.cohort.arrival import hand_in_time
from twoshaft_grader.cohort.assign import Assigned, assignments_of
from twoshaft_grader.cohort.clock import stamp
from twoshaft_grader.cohort.collect import check_collected
from twoshaft_grader.cohort.decisions import changes_of, decisions_in
from twoshaft_grader.cohort.extensions import due_for
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marking_run import blank_sheet
from twoshaft_grader.cohort.marks import StoredMark, read_mark
from twoshaft_grader.cohort.not_done import NotDone, going_on
from twoshaft_grader.cohort.observations import by_outcome, observations_of
from twoshaft_grader.cohort.own_work import own_work_of
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.scores import TaskScore, task_scores
from twoshaft_grader.cohort.supervised import Watched, sittings_of, watched_by
from twoshaft_grader.marking.outcomes import (
    Decision,
    Decisions,
    Part,
    as_decided,
    judged_again,
    share_out,
    sheet_parts,
    with_passed,
)
from twoshaft_grader.marking.result import SheetMark
from twoshaft_grader.records.hand_changes import (
    NO_NAME,
    change_log,
)
from twoshaft_grader.stored.lines import Change

NOT_HANDED_IN, NOT_MARKED = "not handed in", "handed in, not marked"
OBSERVED_ONLY = "observed, not handed out"
INVENTED = "the people are invented, for demonstration"


@dataclass(frozen=True)
class Row:
    """One line of the export; the names of the attributes head its columns."""

    cohort: str
    learner: str
    family_name: str
    given_name: str
    group: str
    module: str
    attempt: int
    outcome: str
    statement: str
    state: str
    mark: float
    maximum: float
    must_pass: str
    must_pass_right: str
    enough: str
    evidence: str
    supervised_by: str
    evidence_needed: str
    observed: str
    observed_kind: str
    observed_by: str
    observed_at: str
    observed_note: str
    met: str
    due: str
    handed_in: str
    late_minutes: int | str
    submission_sha256: str
    receipt: str
    unit: str
    unit_version: str
    course_version: str
    marked_at: str
    marked_by: str
    changed_by: str
    bench_readings: str
    note: str
    own_work_stated: str
    adjustments: str
    saved_before: int | str
    college_number: str


@dataclass
class _Standing:
    """The parts of a sheet as they stand after any change by hand."""

    sheet: SheetMark
    parts: list[Part]
    decided: Decisions
    notes: dict[str, list[str]] = field(default_factory=dict)
    authors: dict[str, str] = field(default_factory=dict)

    def note(self, task: str, text: str) -> None:
        """Add a note on a task; "" is the whole sheet."""
        self.notes.setdefault(task, []).append(text)


def outcome_rows(
    cohort: Cohort,
    book: Gradebook,
    *,
    learners: Collection[str] = (),
    assignments: Collection[str] = (),
) -> tuple[list[Row], list[NotDone]]:
    """All rows, in the order of learner id, module, attempt and the job sheet's outcomes; and of
    whom there are none since a stored file is damaged.

    Parameters
    ----------
    learners, assignments : collection of str
        Only these; empty means all.

    Raises
    ------
    CourseError
        When a stored file of the whole cohort is damaged.
    """
    wanted = [a for a in assignments_of(cohort) if not assignments or a.name in assignments]
    people = [p for p in roster_of(cohort) if not learners or p.id in learners]
    changes = change_log(cohort)
    log, sittings = changes_of(cohort), sittings_of(cohort)
    scores = {a.name: task_scores(book, a) for a in wanted}
    rules = load_rules(cohort.rules)
    outcomes = rules.asked(load_outcomes())
    blank: dict[str, SheetMark] = {}
    rows: list[Row] = []
    left: list[NotDone] = []
    for person in people:
        with going_on(person.id, left):
            seen = by_outcome(observations_of(cohort, person.id))
            mine: list[Row] = []
            for assigned in wanted:
                mark = read_mark(cohort.mark_file(person.id, assigned.name))
                if mark is None and not assigned.is_for(person.id):
                    continue
                sheet = mark.sheet if mark else None
                if sheet is None:  # what can be earned is the same for everybody
                    if assigned.name not in blank:
                        blank[assigned.name] = blank_sheet(cohort, assigned, person.id)
                    sheet = blank[assigned.name]
                decided = decisions_in(
                    log, assigned.name, person.id, mark.submission if mark else ""
                )
                sheet = with_passed(sheet, decided.fields)
                standing = _Standing(sheet, sheet_parts(sheet), decided)
                if cohort.invented:
                    standing.note("", INVENTED)
                if mark:
                    _tell_of_earlier(standing, log, mark)
                given = scores[assigned.name].get(person.id, {})
                _apply_changes(standing, assigned, person, mark, given, changes)
                watched = watched_by(sittings, assigned.name, person.id, mark)
                mine += _rows(
                    cohort, person, assigned, mark, standing, outcomes, seen, rules, watched
                )
            if not assignments:
                told = {row.outcome for row in mine}
                mine += [
                    _observed_row(cohort, person, outcomes[id], seen[id], rules)
                    for id in outcomes
                    if id in seen and id not in told
                ]
            rows += mine
    return rows, left


def _apply_changes(
    standing: _Standing,
    assigned: Assigned,
    person: Learner,
    mark: StoredMark | None,
    scores: dict[str, TaskScore],
    changes: dict[tuple[str, str, str], Change],
) -> None:
    """Put the scores that a person gave in the place of the marking's, and say so."""
    for task, score in scores.items():
        places = [i for i, part in enumerate(standing.parts) if part.task == task]
        marked = sum(standing.parts[i].points for i in places)
        if score.by_hand and places:
            _share_out(standing, places, score.score)
            logged = changes.get((assigned.name, person.id, task))
            if logged is not None and (logged.after != score.manual or score.extra):
                logged = None  # somebody has changed it again without saying so
            standing.authors[task] = logged.by if logged else NO_NAME
            why = logged.why if logged else score.comment or "no reason given"
            standing.note(
                task, f"{task} changed by hand from {marked:.4g} to {score.score:.4g}: {why}"
            )
            if len(places) > 1:
                standing.note(task, "the change is spread over the task's outcomes")
            if score.look_again:
                standing.note(task, "changed before the latest work was marked, look again")
        elif mark is not None and mark.sheet is not None and _differs(score, marked):
            standing.note(
                task,
                f"the gradebook has {score.auto:.4g} for {task}, the job sheet earns {marked:.4g}",
            )


def _tell_of_earlier(standing: _Standing, log: Iterable[Change], mark: StoredMark) -> None:
    """Say what was decided on work that was marked before this."""
    for line in log:
        mine = (line.assignment, line.learner) == (mark.assignment, mark.learner)
        if line.kind != "points" and mine and line.submission != mark.submission:
            standing.note(
                "", f"{line.by} decided of {line.task} on work handed in before, look again"
            )


def _decisions(standing: _Standing, outcome: str) -> list[tuple[str, Decision]]:
    """What was decided of an outcome, and of its must-pass items, each with its name."""
    fields = [f.name for f in standing.sheet.fields if f.outcome == outcome]
    known = standing.decided
    return [
        *((name, known.fields[name]) for name in fields if name in known.fields),
        *((id, one) for id, one in known.outcomes.items() if id == outcome),
    ]


def _share_out(standing: _Standing, places: list[int], total: float) -> None:
    parts = [standing.parts[i] for i in places]
    for i, new in zip(
        places, share_out([(p.points, p.maximum) for p in parts], total), strict=True
    ):
        standing.parts[i] = standing.parts[i].moved(new)


def _differs(score: TaskScore, marked: float) -> bool:
    return score.auto is not None and abs(score.auto - marked) > 0.005


def _rows(
    cohort: Cohort,
    person: Learner,
    assigned: Assigned,
    mark: StoredMark | None,
    standing: _Standing,
    outcomes: dict[str, Outcome],
    seen: dict[str, tuple[Observation, ...]],
    rules: Rules,
    watched: Watched,
) -> list[Row]:
    folder = cohort.submitted(person.id, assigned.name)
    if mark is None:
        state = NOT_MARKED if folder.is_dir() else NOT_HANDED_IN
    else:
        state = mark.state
        for note in [mark.reason, *(mark.sheet.notes if mark.sheet else ())]:
            if note:
                standing.note("", note.rstrip("."))
        for one in mark.changed:
            standing.note("", one.sentence.rstrip("."))
        if mark.earlier:
            standing.note("", "the mark is of the work handed in before")
        if not folder.is_dir():
            standing.note("", "the marked work is no longer in submitted/")
        elif note := _other_work(cohort, person.id, assigned.name, mark):
            standing.note("", note)
    sheet = mark.sheet if mark else None
    due = due_for(cohort, assigned, person.id)
    arranged = adjustments_of(cohort).get(person.id)
    adjusted = in_words(arranged) if arranged else ""
    handed_in, late = _times(cohort, person.id, due, assigned, mark)
    rows = []
    for outcome in dict.fromkeys(part.outcome for part in standing.parts):
        mine = [part for part in standing.parts if part.outcome == outcome]
        tasks = list(dict.fromkeys(part.task for part in mine))
        must = [part for part in mine if part.must_pass]
        (judged,) = as_decided(judged_again(standing.sheet, mine), standing.decided.outcomes)
        safe = not judged.must_pass_failed
        by_hand = _decisions(standing, outcome)
        known = outcomes.get(outcome)
        needed = known.evidence if known else Evidence.OPEN_BOOK
        required = bool(must) or bool(known and known.must_pass)
        changed = [standing.authors[t] for t in tasks if t in standing.authors]
        changed += [one.by for _, one in by_hand]
        changed += [one.by for one in mark.changed] if mark else []
        evidence = evidence_of(watched.of(outcome))
        attempt = Attempt(mark is not None and judged.met, evidence)
        told = stand(
            needed, [attempt], seen.get(outcome, ()), bench_alone=rules.of(outcome).bench_alone
        )
        said = [text for task in ("", *tasks) for text in standing.notes.get(task, ())]
        said += [f"{about}: {one.sentence}" for about, one in by_hand]
        rows.append(
            Row(
                cohort=cohort.id,
                learner=person.id,
                family_name=person.family_name,
                given_name=person.given_name,
                group=person.group,
                module=assigned.module,
                attempt=assigned.attempt,
                outcome=outcome,
                statement=known.statement if known else "",
                state=state,
                mark=sum(part.points for part in mine),
                maximum=sum(part.maximum for part in mine),
                must_pass=_yes(required),
                must_pass_right=_yes(safe if must else judged.met) if required else "",
                enough=_yes(judged.met),
                evidence=evidence,
                supervised_by=watched.of(outcome),
                evidence_needed=needed,
                **_observed(seen.get(outcome, ())),
                met=_yes(told.state == State.MET),
                due=stamp(due) if due else "",
                handed_in=handed_in,
                late_minutes=late,
                submission_sha256=mark.sheet_sha256 if mark else "",
                receipt=mark.receipt if mark else "",
                unit=sheet.unit if sheet else assigned.unit,
                unit_version=sheet.unit_version if sheet else assigned.unit_version,
                course_version=sheet.course_version if sheet else assigned.course_version,
                marked_at=mark.marked_at if mark else "",
                marked_by=mark.marked_by if mark else "",
                changed_by="; ".join(dict.fromkeys(changed)),
                bench_readings="; ".join(t for t in tasks if sheet and sheet.bench_of(t)),
                note="; ".join(dict.fromkeys(said)),
                own_work_stated=own_work_of(cohort, assigned, person.id) if mark else "",
                adjustments=adjusted,
                saved_before=watched.before.get(outcome, 0) if watched.by else "",
                college_number=rules.number(outcome),
            )
        )
    return rows


def _other_work(cohort: Cohort, learner: str, assignment: str, mark: StoredMark) -> str:
    """How the work in ``submitted/`` is not what the mark is of; empty where it is."""
    try:
        digest = files.folder_digest(cohort.submitted(learner, assignment))
        if digest == mark.submission:
            return ""
        check_collected(cohort, learner, assignment, digest)
    except CohortError as error:
        return error.what
    return "newer work is collected and not marked yet"


def _observed(seen: tuple[Observation, ...]) -> dict[str, str]:
    """The columns of the last observation of an outcome, empty where there is none."""
    last = seen[-1] if seen else None
    return {
        "observed": (State.MET if last.met else State.NOT_YET) if last else "",
        "observed_kind": last.kind if last else "",
        "observed_by": last.by if last else "",
        "observed_at": last.at if last else "",
        "observed_note": _note(last) if last else "",
    }


def _note(seen: Observation) -> str:
    """The note of an observation, with what else the form says."""
    said = [
        "prior learning" if seen.prior else "",
        f"seen on {seen.day}" if seen.seen_on else "",
        f"bench {seen.bench}" if seen.bench else "",
        seen.unit,
        seen.note,
        f"confirmed by the learner on {seen.confirmed}" if seen.confirmed else "",
    ]
    return "; ".join(part for part in said if part)


def _observed_row(
    cohort: Cohort,
    person: Learner,
    outcome: Outcome,
    seen: tuple[Observation, ...],
    rules: Rules,
) -> Row:
    """A row for what was observed of an outcome that nothing handed out asks for."""
    plain: dict[str, Any] = {field.name: "" for field in fields(Row)}
    return Row(
        **plain
        | {
            "cohort": cohort.id,
            "learner": person.id,
            "family_name": person.family_name,
            "given_name": person.given_name,
            "group": person.group,
            "module": outcome.modules[0],
            "attempt": 0,
            "outcome": outcome.id,
            "statement": outcome.statement,
            "state": OBSERVED_ONLY,
            "mark": 0.0,
            "maximum": 0.0,
            "enough": _yes(False),
            "evidence_needed": outcome.evidence,
            "college_number": rules.number(outcome.id),
            "met": _yes(
                stand(
                    outcome.evidence, (), seen, bench_alone=rules.of(outcome.id).bench_alone
                ).state
                == State.MET
            ),
        }
        | _observed(seen)
    )


def _yes(answer: bool) -> str:
    return "yes" if answer else "no"


def _times(
    cohort: Cohort, learner: str, due: datetime | None, assigned: Assigned, mark: StoredMark | None
) -> tuple[str, int | str]:
    """When the work was handed in, and how late in whole minutes; empty where nobody knows."""
    known = mark.handed_in if mark else ""
    moment = datetime.fromisoformat(known) if known else None
    moment = moment or hand_in_time(cohort, learner, assigned.name)
    if moment is None:
        return "", ""
    late = (moment - due).total_seconds() / 60 if due else 0
    return stamp(moment), max(0, int(late))
