"""Mark again after a solution was corrected: whose marks would change is known before, and what
they were is kept.

The solution that an assignment was handed out with stands in its source. A corrected one takes its
place only if it asks the same; the one before goes to ``solutions-before``.
"""

from __future__ import annotations

import tempfile
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from twoshaft.errors import CohortError
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.assessors import assessor_named
from twoshaft_grader.cohort.assign import Assigned, assigned_unit
from twoshaft_grader.cohort.content import Content
from twoshaft_grader.cohort.fit import Fit, fit
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.marking_run import (
    NOT_DONE,
    UNREADABLE,
    Marking,
    mark_alone,
    mark_here,
    mend_audit,
    work_of,
)
from twoshaft_grader.cohort.marks import MARKED, read_mark
from twoshaft_grader.cohort.not_done import NotDone
from twoshaft_grader.cohort.one_sheet import Result
from twoshaft_grader.cohort.order_levels import order_levels
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import turn
from twoshaft_grader.marking.reference import load_solution
from twoshaft_grader.marking.result import SheetMark, differences

BEFORE = "solutions-before"


@dataclass(frozen=True)
class Changed:
    """A mark that would change: from what to what, in points and in words."""

    learner: str
    before: float
    after: float
    words: str


@dataclass(frozen=True)
class WouldRemark:
    """What marking again would do.

    Attributes
    ----------
    another : bool
        Whether the solution is another than the one that is in use.
    changed : tuple of Changed
    same : tuple of str
        Ids of those whose mark stays.
    left : tuple of NotDone
        Who could not be marked, and why.
    """

    another: bool
    changed: tuple[Changed, ...]
    same: tuple[str, ...]
    left: tuple[NotDone, ...]


@dataclass(frozen=True)
class Remarked:
    """Ids of those who have another mark now, and who could not be marked, and why."""

    moved: tuple[str, ...]
    left: tuple[NotDone, ...]


def would_remark(
    cohort: Cohort,
    assigned: Assigned,
    content: Content,
    learners: Iterable[Learner],
    *,
    marked: Marking = mark_here,
    step: Callable[[], None] = lambda: None,
) -> WouldRemark:
    """Whose marks would change; nothing is written.

    Raises
    ------
    CohortError
        When the assignment has no solution of the course's, or the corrected one asks something
        else.
    """
    fits = _corrected(cohort, assigned, content)
    known = {}
    for learner in learners:
        mark = read_mark(cohort.mark_file(learner.id, assigned.name))
        folder = cohort.submitted(learner.id, assigned.name)
        if mark and mark.sheet and mark.state == MARKED and folder.is_dir():
            known[learner.id] = mark.sheet
    changed, same, left = [], [], []
    with _notebook(fits, assigned) as notebook, order_levels(cohort):
        works = [work_of(cohort, assigned, learner, notebook) for learner in known]
        for result in marked(works):
            if result.sheet is None:
                left.append(NotDone(result.learner, result.trouble))
            elif words := differences(known[result.learner], result.sheet):
                before, after = known[result.learner].points, result.sheet.points
                changed.append(Changed(result.learner, before, after, words))
            else:
                same.append(result.learner)
            step()
    return WouldRemark(_is_another(cohort, assigned, fits), tuple(changed), tuple(same),
                       tuple(left))  # fmt: skip


def remark(
    cohort: Cohort,
    assigned: Assigned,
    content: Content,
    learners: Iterable[Learner],
    *,
    by: str,
    why: str,
    marked: Marking = mark_here,
    step: Callable[[], None] = lambda: None,
) -> Remarked:
    """Put the corrected solution in the place of the one before, and mark again with it.

    A run that was cut short is finished by the same call.

    Parameters
    ----------
    by : str
        Somebody on the register of assessors.
    why : str
        What was wrong; the learner reads it.

    Returns
    -------
    Remarked

    Raises
    ------
    CohortError
        As :func:`would_remark`; when the assessor is not registered, the reason is missing, or
        another run is under way.
    """
    by = assessor_named(cohort, by, needed=True)
    if not (why := why.strip()):
        raise CohortError("the reason is missing", mend="say what was wrong in the solution")
    people = list(learners)
    with (
        act(cohort.root, "re-mark", assigned.name, by=by, why=why) as told,
        turn(cohort),
        order_levels(cohort),
    ):
        fits = _corrected(cohort, assigned, content)
        was = _sheets(cohort, assigned, people)
        # All is worked out before anything is written.
        with _notebook(fits, assigned) as notebook:
            works = [work_of(cohort, assigned, id, notebook) for id in was]
            found = {}
            for one in marked(works):
                found[one.learner] = one
                step()
        if _is_another(cohort, assigned, fits):
            file = cohort.source(assigned.name) / assigned.notebook
            digest = load_solution(file).digest
            kept = cohort.root / BEFORE / f"{assigned.name}-{digest[:12]}.ipynb"
            files.write_whole(kept, file.read_bytes())
            files.write_whole(file, fits.text.encode())
        # A run that was cut short has done some already, and may not have logged all of it.
        mend_audit(cohort, assigned, people)
        waiting = [one for one in people if one.id in was and _is_new(was[one.id], found[one.id])]
        done = mark_alone(
            cohort, assigned, waiting, again=True, by=by, why=why, step=lambda: None,
            marked=lambda works: (found[work.learner] for work in works),
        )  # fmt: skip
        now = _sheets(cohort, assigned, people)
        moved = [id for id in was if differences(was[id], now[id])]
        told.before = ", ".join(f"{id} {was[id].points:g}" for id in moved)
        told.after = ", ".join(f"{id} {now[id].points:g}" for id in moved) or "no other mark"
        left = [
            NotDone(one.learner, one.reason) for one in done if one.state in (NOT_DONE, UNREADABLE)
        ]
        if left:
            told.after += f"; not done: {', '.join(one.learner for one in left)}"
    return Remarked(tuple(moved), tuple(left))


def _is_new(was: SheetMark, found: Result) -> bool:
    sheet = found.sheet
    return (
        sheet is None
        or was.solution_digest != sheet.solution_digest
        or bool(differences(was, sheet))
    )


def _sheets(cohort: Cohort, assigned: Assigned, people: list[Learner]) -> dict[str, SheetMark]:
    """Marks of the work that is there now; what could not be read keeps its state."""
    marks = {one.id: read_mark(cohort.mark_file(one.id, assigned.name)) for one in people}
    there = {id for id in marks if cohort.submitted(id, assigned.name).is_dir()}
    return {
        id: one.sheet
        for id, one in marks.items()
        if id in there and one and one.sheet and one.state == MARKED
    }


def _corrected(cohort: Cohort, assigned: Assigned, content: Content) -> Fit:
    """The course's solution as it is now, on the unit that the assignment keeps."""
    if assigned.code_outcome:
        raise CohortError(
            f"{assigned.name} is marked by running code",
            mend="hand the corrected notebook out as a further attempt",
        )
    unit = assigned_unit(cohort, assigned)
    found = sorted(path.stem for path in (cohort.root / "issued" / assigned.name).glob("*.json"))
    fits = fit(
        content.solution(assigned.module), assigned.module, unit, found, salt=cohort.salt,
        attempt=assigned.attempt, work_out=1,
    )  # fmt: skip
    old = load_solution(cohort.source(assigned.name) / assigned.notebook)
    fields = {field.name for field in _fields_asked(cohort, assigned, found)}
    asked = set(fits.worked[0].fields)
    if (fields and fields != asked) or old.points != fits.solution.points:
        other = ", ".join(sorted(fields ^ asked)) or "other points"
        raise CohortError(
            f"the corrected solution asks something else than {assigned.name} did ({other[:160]})",
            mend="hand the module out as a further attempt",
        )
    return fits


def _fields_asked(cohort: Cohort, assigned: Assigned, learners: list[str]) -> tuple:
    """The fields that the marks of the assignment are of; none where nobody is marked."""
    for learner in learners:
        mark = read_mark(cohort.mark_file(learner, assigned.name))
        if mark and mark.sheet:
            return tuple(mark.sheet.fields)
    return ()


def _is_another(cohort: Cohort, assigned: Assigned, fits: Fit) -> bool:
    file = cohort.source(assigned.name) / assigned.notebook
    return file.read_bytes() != fits.text.encode()


@contextmanager
def _notebook(fits: Fit, assigned: Assigned) -> Iterator[Path]:
    with tempfile.TemporaryDirectory(prefix="twoshaft-remark-") as folder:
        path = Path(folder) / assigned.notebook
        files.write_whole(path, fits.text.encode(), sync=False)
        yield path
