"""What stands in the way of handing a module out, and who needs a further attempt."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from twoshaft.errors import CourseError
from twoshaft_grader.cohort.assign import assignments_of, cohort_unit, is_out, unit_is_own
from twoshaft_grader.cohort.clock import now
from twoshaft_grader.cohort.content import Content
from twoshaft_grader.cohort.extensions import due_for
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.marks import MARKED, read_mark
from twoshaft_grader.cohort.roster import Learner


@dataclass(frozen=True)
class Obstacle:
    """One thing that stands in the way, in a sentence; ``stops`` if nothing can be handed out."""

    text: str
    stops: bool = False


def in_the_way(
    cohort: Cohort,
    content: Content,
    module: str,
    *,
    attempt: int,
    due: datetime | None,
    learners: list[Learner],
) -> list[Obstacle]:
    """What stands in the way of handing a module out; nothing is written.

    The module is tried on the cohort's unit with these learners' readings, as handing out does.

    Raises
    ------
    CohortError
        When the module does not exist.
    """
    solution = content.solution(module)
    found: list[Obstacle] = []
    if not learners:
        found.append(Obstacle("Nobody is chosen.", stops=True))
    if is_out(cohort, f"{module}-{attempt}"):
        found.append(Obstacle(f"{module}-{attempt} is handed out already.", stops=True))
    try:
        lacking = _lacking_on_unit(cohort, solution, module, attempt, learners)
        found += [Obstacle(f"{line[0].upper()}{line[1:]}") for line in lacking]
    except CourseError as error:
        found.append(Obstacle(f"The unit cannot carry it: {error.sentence}", stops=True))
    if due and due <= now():
        found.append(Obstacle(f"The due date, {due:%Y-%m-%d %H:%M}, has passed."))
    out = {one.module for one in assignments_of(cohort)}
    if attempt == 1:
        modules = list(content.modules)
        earlier = [one for one in modules[: modules.index(module)] if one not in out]
        if earlier:
            words = "comes" if len(earlier) == 1 else "come"
            names = ", ".join(earlier)
            found.append(Obstacle(f"Not handed out yet, and {words} before it: {names}."))
    else:
        found += _before_a_resit(cohort, module, attempt, learners)
    return found


def _lacking_on_unit(
    cohort: Cohort, solution: Path, module: str, attempt: int, learners: list[Learner]
) -> tuple[str, ...]:
    from twoshaft.models.audit import sound_unit
    from twoshaft_grader.cohort.fit import fit, lacking_lines

    unit = sound_unit(cohort.unit_source) if unit_is_own(cohort) else cohort_unit(cohort)
    ids = [one.id for one in learners] or ["trial"]
    tried = max(attempt, 1)
    return lacking_lines(
        fit(solution, module, unit, ids, salt=cohort.salt, attempt=tried, work_out=1)
    )


def _before_a_resit(
    cohort: Cohort, module: str, attempt: int, learners: list[Learner]
) -> list[Obstacle]:
    if not is_out(cohort, f"{module}-{attempt - 1}"):
        return [Obstacle(f"Attempt {attempt - 1} was not handed out.")]
    needing = {one.id for one, _ in who_needs(cohort, module)}
    spared = [one.id for one in learners if one.id not in needing]
    return [Obstacle(f"Need no further attempt: {', '.join(spared)}.")] if spared else []


def who_needs(cohort: Cohort, module: str) -> list[tuple[Learner, str]]:
    """Who needs a further attempt at a module, and why: not yet enough in the latest they had, or
    not handed in when it was due.

    Raises
    ------
    CohortError
        When a stored file is damaged.
    """
    from twoshaft_grader.cohort.intake import roster_of

    mine = [one for one in assignments_of(cohort) if one.module == module]
    found = []
    for person in roster_of(cohort):
        had = [one for one in mine if one.is_for(person.id)]
        if not had:
            continue
        last = max(had, key=lambda one: one.attempt)
        mark = read_mark(cohort.mark_file(person.id, last.name))
        if mark and mark.state == MARKED and mark.sheet:
            if not mark.sheet.met:
                found.append((person, f"not yet enough in attempt {last.attempt}"))
        elif mark:
            found.append((person, f"attempt {last.attempt} cannot be read"))
        elif not cohort.submitted(person.id, last.name).is_dir():
            due = due_for(cohort, last, person.id)
            if due and due < now():
                found.append((person, f"attempt {last.attempt} was not handed in"))
    return found
