"""The matrix: learner by outcome, the state in word and shape, and the evidence behind it."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, replace
from pathlib import Path

from twoshaft.outcomes import (
    Attempt,
    Evidence,
    Observation,
    Outcome,
    State,
    counting,
    load_outcomes,
    load_rules,
    stand,
)
from twoshaft_grader.cohort import backbone
from twoshaft_grader.cohort.assign import assignments_of
from twoshaft_grader.cohort.clock import as_read
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.cohort.not_done import NotDone, going_on
from twoshaft_grader.cohort.observations import by_outcome, every_observation_of
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.records.cells import csv_of
from twoshaft_grader.records.rows import NOT_HANDED_IN, NOT_MARKED, OBSERVED_ONLY, Row, outcome_rows

NOTHING = "nothing yet"
NOT_ASKED = "not asked"
SHAPES = {State.MET: "✓", State.ENOUGH: "◐", State.NOT_YET: "○", NOTHING: "·", NOT_ASKED: "–"}
"""A shape for each state, beside its word."""


@dataclass(frozen=True)
class Answered:
    """One answer behind a cell: what was asked, what was answered, what became of it and why."""

    assignment: str
    prompt: str
    answer: str
    verdict: str
    why: str


@dataclass(frozen=True)
class Cell:
    """Where one learner stands with one outcome, and by what.

    Attributes
    ----------
    state : str
        A :class:`State`, :data:`NOTHING`, or :data:`NOT_ASKED`.
    missing : str
        What is still missing, in words.
    attempts : tuple of Row
        As exported, with changes by hand.
    seen : tuple of Observation
        Oldest first, with those that were taken back.
    answers : tuple of Answered
    """

    state: str
    missing: str
    attempts: tuple[Row, ...]
    seen: tuple[Observation, ...]
    answers: tuple[Answered, ...]

    @property
    def words(self) -> str:
        """Shape and word."""
        return f"{SHAPES[self.state]} {self.state}"


@dataclass(frozen=True)
class Matrix:
    """Everybody's standing.

    Attributes
    ----------
    outcomes : tuple of Outcome
    numbers : dict of str to str
        The college's own number of an outcome, where it has one.
    learners : tuple of Learner
    cells : dict of (str, str) to Cell
        By learner's and outcome's id.
    feedback : dict of (str, str) to str
        Feedback pages by learner and assignment, relative to the cohort folder.
    not_asked : tuple of Outcome
        Those that no task which was handed out is evidence for, since the unit has nothing for it.
    """

    outcomes: tuple[Outcome, ...]
    numbers: dict[str, str]
    learners: tuple[Learner, ...]
    cells: dict[tuple[str, str], Cell]
    feedback: dict[tuple[str, str], str]
    not_asked: tuple[Outcome, ...] = ()

    def heading(self, outcome: str) -> str:
        """What heads an outcome's column: the college's number, where it has one, and our id."""
        number = self.numbers.get(outcome, "")
        return f"{number} {outcome}".strip()


def matrix_of(cohort: Cohort, *, modules: Collection[str] = ()) -> tuple[Matrix, list[NotDone]]:
    """The matrix of a cohort, and of whom there is none since a stored file is damaged.

    Parameters
    ----------
    modules : collection of str
        Only outcomes to which one of these gives evidence; empty means all.

    Raises
    ------
    CourseError
        When a stored file of the whole cohort is damaged.
    """
    rules = load_rules(cohort.rules)
    outcomes = {
        id: one
        for id, one in rules.asked(load_outcomes()).items()
        if not modules or set(modules) & set(one.modules)
    }
    not_asked = tuple(outcomes[id] for id in _not_asked(cohort) if id in outcomes)
    with backbone.gradebook(cohort) as book:
        rows, left = outcome_rows(cohort, book)
    damaged = {one.learner for one in left}
    people = tuple(one for one in roster_of(cohort) if one.id not in damaged)
    mine: dict[tuple[str, str], list[Row]] = {}
    for row in rows:
        mine.setdefault((row.learner, row.outcome), []).append(row)
    cells: dict[tuple[str, str], Cell] = {}
    pages: dict[tuple[str, str], str] = {}
    for person in people:
        with going_on(person.id, left):
            seen = by_outcome(every_observation_of(cohort, person.id))
            answers = _answers(cohort, person.id, rows)
            for id, outcome in outcomes.items():
                own = [r for r in mine.get((person.id, id), ()) if r.state != OBSERVED_ONLY]
                cells[person.id, id] = _cell(
                    outcome, own, seen.get(id, ()), tuple(answers.get(id, ())),
                    bench_alone=rules.of(id).bench_alone, latest=rules.latest,
                )  # fmt: skip
                if outcome in not_asked and cells[person.id, id].state == NOTHING:
                    cells[person.id, id] = replace(cells[person.id, id], state=NOT_ASKED)
            for page in sorted((cohort.root / "feedback" / person.id).glob("*/*.html")):
                pages[person.id, page.parent.name] = page.relative_to(cohort.root).as_posix()
    known = {person for person, _ in cells}
    people = tuple(one for one in people if one.id in known)
    every = tuple(outcomes.values())
    return Matrix(every, dict(rules.numbers), people, cells, pages, not_asked), left


def _not_asked(cohort: Cohort) -> list[str]:
    """Outcomes of what was handed out that none of it is evidence for."""
    out = [one for one in assignments_of(cohort) if not one.code_outcome]
    lost = dict.fromkeys(id for one in out for id in one.no_evidence)
    modules = {id: one.modules for id, one in load_outcomes().items()}
    return [
        id
        for id in lost
        if all(id in one.no_evidence for one in out if one.module in modules.get(id, ()))
    ]


def _cell(
    outcome: Outcome,
    rows: list[Row],
    seen: tuple[Observation, ...],
    answers: tuple[Answered, ...],
    *,
    bench_alone: bool,
    latest: bool,
) -> Cell:
    attempts = counting(
        (
            (row.module, row.attempt, Attempt(row.enough == "yes", Evidence(row.evidence)))
            for row in rows
            if row.state not in (NOT_HANDED_IN, NOT_MARKED)
        ),
        latest=latest,
    )
    standing = stand(outcome.evidence, attempts, seen, bench_alone=bench_alone)
    stands = any(one.taken_back is None for one in seen)
    state = standing.state if attempts or stands else NOTHING
    return Cell(str(state), standing.missing, tuple(rows), seen, answers)


def _answers(cohort: Cohort, learner: str, rows: list[Row]) -> dict[str, list[Answered]]:
    """What was answered, by outcome."""
    found: dict[str, list[Answered]] = {}
    names = dict.fromkeys(f"{r.module}-{r.attempt}" for r in rows if r.learner == learner)
    for name in names:
        mark = read_mark(cohort.mark_file(learner, name))
        for one in mark.sheet.fields if mark and mark.sheet else ():
            found.setdefault(one.outcome, []).append(
                Answered(name, one.prompt, one.answer, str(one.verdict), " ".join(one.sentences))
            )
    return found


def matrix_csv(matrix: Matrix) -> str:
    """The matrix as CSV: a line for each learner, a column for each outcome."""
    heading = ["learner", "family name", "given name", "group"]
    return csv_of(
        [*heading, *(matrix.heading(one.id) for one in matrix.outcomes)],
        (
            [
                person.id, person.family_name, person.given_name, person.group,
                *(matrix.cells[person.id, one.id].state for one in matrix.outcomes),
            ]
            for person in matrix.learners
        ),
    )  # fmt: skip


def matrix_page(matrix: Matrix, cohort: Cohort, place: Path) -> str:
    """The matrix as one HTML page: each cell leads to the evidence behind it.

    Parameters
    ----------
    place : Path
        The file that it is written to, so that feedback pages are found from there.
    """
    from twoshaft.plots.style import css_variables
    from twoshaft_grader.records.pages import fill

    up = "../" * len(place.relative_to(cohort.root).parts[1:]) if _inside(place, cohort) else ""
    base = up if _inside(place, cohort) else f"{cohort.root.as_uri()}/"
    return fill(
        "matrix.html.j2",
        matrix=matrix,
        cohort=cohort,
        base=base,
        style=css_variables(),
        nothing=NOTHING,
        as_read=as_read,
    )


def _inside(place: Path, cohort: Cohort) -> bool:
    return cohort.root in place.parents
