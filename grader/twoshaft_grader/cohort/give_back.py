"""Return feedback: into nbgrader's feedback folders and exchange, and into the workplace."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from pathlib import Path

from twoshaft.errors import CohortError
from twoshaft.outcomes import Outcome, load_outcomes, load_rules
from twoshaft.stored.hostile import read_bytes
from twoshaft.stored.writing import write_inside
from twoshaft_grader.cohort import backbone, files
from twoshaft_grader.cohort.adjustments import adjustments_of
from twoshaft_grader.cohort.arrival import hand_in_time
from twoshaft_grader.cohort.assign import Assigned
from twoshaft_grader.cohort.copy_in import LONGEST_NAME
from twoshaft_grader.cohort.decisions import decisions_of
from twoshaft_grader.cohort.extensions import due_for
from twoshaft_grader.cohort.first_come import is_theirs
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.marks import UNREADABLE, StoredMark, read_mark
from twoshaft_grader.cohort.not_done import NotDone, going_on
from twoshaft_grader.cohort.observations import by_outcome, observations_of
from twoshaft_grader.cohort.own_work import own_work_of
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.scores import TaskScore, task_scores
from twoshaft_grader.cohort.standing import keep_returned, write_standing
from twoshaft_grader.cohort.supervised import Watched, sittings_of, watched_by
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import turn
from twoshaft_grader.marking.feedback import Handed, StaffMark, feedback_page
from twoshaft_grader.marking.outcomes import Decisions, with_points
from twoshaft_grader.marking.result import SheetMark
from twoshaft_grader.stored.handed_in import TIMESTAMP

# nbgrader finds the way back to a learner by this; without it there is no way back.
SECRET_FILE, _LONGEST_SECRET = "submission_secret.txt", 256

_HAND_IN_AGAIN = (
    "Your job sheet arrived, but it could not be read. Open the notebook, look at your answers "
    "and hand in again, or ask your instructor."
)


@dataclass(frozen=True)
class GivenBack:
    """Learner ids: whose feedback was returned, and whose newer work has yet to be marked; and
    who could not be done, and why.
    """

    returned: tuple[str, ...]
    mark_first: tuple[str, ...]
    left: tuple[NotDone, ...] = ()


def give_back(
    cohort: Cohort,
    assigned: Assigned,
    learners: Iterable[Learner],
    *,
    step: Callable[[], None] = lambda: None,
    by: str = "",
) -> GivenBack:
    """Write and release the feedback pages of an assignment; doing it again renews them.

    A page stands in ``feedback/<learner>/<assignment>/``, from where nbgrader releases it, and
    in the learner's own copy in the workplace.

    Raises
    ------
    CohortError
        When another run is under way, or the gradebook cannot be used.
    OSError
        When the disk is full or the place is read-only.
    """
    with act(cohort.root, "give back", assigned.name, by=by) as told, turn(cohort):
        given = _give_back(cohort, assigned, learners, step)
        told.after = ", ".join(given.returned)
    return given


def _give_back(
    cohort: Cohort, assigned: Assigned, learners: Iterable[Learner], step: Callable[[], None]
) -> GivenBack:
    returned: list[str] = []
    mark_first: list[str] = []
    no_way_back: list[str] = []
    left: list[NotDone] = []
    with backbone.gradebook(cohort) as book:
        given, outcomes = (
            task_scores(book, assigned),
            load_rules(cohort.rules).asked(load_outcomes()),
        )
        sittings = sittings_of(cohort)
        for learner in learners:
            with going_on(learner.id, left):
                mark = read_mark(cohort.mark_file(learner.id, assigned.name))
                folder = cohort.submitted(learner.id, assigned.name)
                if mark is not None and mark.sheet is not None and folder.is_dir():
                    if files.folder_digest(folder) != mark.submission:
                        mark_first.append(learner.id)
                    else:
                        scores = given.get(learner.id, {})
                        decided = decisions_of(cohort, assigned.name, learner.id, mark.submission)
                        watched = watched_by(sittings, assigned.name, learner.id, mark)
                        page = _page(
                            cohort, assigned, learner, mark, mark.sheet, scores, decided, outcomes,
                            watched,
                        )  # fmt: skip
                        if not _put(cohort, assigned, learner, page):
                            no_way_back.append(learner.id)
                        told = _as_given(mark.sheet, scores, decided)
                        keep_returned(cohort, assigned, learner.id, told, decided, watched=watched)
                        write_standing(cohort, learner.id, outcomes)
                        returned.append(learner.id)
            step()
    if going := sorted(set(returned) - set(no_way_back)):
        left += _release(cohort, assigned, going)
    return GivenBack(tuple(returned), tuple(mark_first), tuple(left))


def _page(
    cohort: Cohort,
    assigned: Assigned,
    learner: Learner,
    mark: StoredMark,
    sheet: SheetMark,
    scores: Mapping[str, TaskScore],
    decided: Decisions,
    outcomes: Mapping[str, Outcome],
    watched: Watched,
) -> str:
    moment = hand_in_time(cohort, learner.id, assigned.name)
    due = due_for(cohort, assigned, learner.id)
    arranged = adjustments_of(cohort).get(learner.id)
    handed = Handed(
        learner=learner.name,
        college=cohort.college,
        cohort=cohort.name,
        handed_in=f"{moment.astimezone(cohort.zone):%Y-%m-%d %H:%M}" if moment else "",
        due=f"{due.astimezone(cohort.zone):%Y-%m-%d %H:%M}" if due else "",
        late=bool(moment and due and moment > due),
        receipt=mark.receipt,
        supervised_by=watched.by,
        saved_before=watched.before,
        observed=by_outcome(observations_of(cohort, learner.id)),
        changed=tuple(one.sentence for one in mark.changed),
        look=arranged.look if arranged else {},
        own_work=own_work_of(cohort, assigned, learner.id),
        numbers=dict(load_rules(cohort.rules).numbers),
    )
    staff = {
        task: StaffMark(score.score if score.by_hand else None, score.comment)
        for task, score in scores.items()
        if score.by_hand or score.comment
    }
    return feedback_page(
        sheet,
        handed,
        outcomes=outcomes,
        staff=staff,
        decided=decided,
        next_step=_next_step(mark),
    )


def _as_given(sheet: SheetMark, scores: Mapping[str, TaskScore], decided: Decisions) -> SheetMark:
    """The mark with what a person gave and decided in the place of the marking's."""
    known = {task.id for task in sheet.tasks}
    by_hand = {t: s.score for t, s in scores.items() if s.by_hand and t in known}
    return with_points(sheet, by_hand, decided)


def _next_step(mark: StoredMark) -> str:
    if mark.state != UNREADABLE:
        return ""
    about = " This page is about what you handed in before." if mark.earlier else ""
    return _HAND_IN_AGAIN + about


def _put(cohort: Cohort, assigned: Assigned, learner: Learner, page: str) -> bool:
    """Write a learner's pages; whether nbgrader can find the way back to them."""
    submitted = cohort.submitted(learner.id, assigned.name)
    target = cohort.feedback(learner.id, assigned.name)
    # nbgrader looks for a page under the name that the notebook was handed in with.
    handed_in = {path.stem for path in submitted.glob("*.ipynb") if _plain(path)}
    for name in sorted({assigned.notebook_id} | handed_in):
        files.write_whole(target / f"{name}.html", page, sync=False)
    moment = hand_in_time(cohort, learner.id, assigned.name)
    when = read_bytes(submitted / TIMESTAMP).decode("ascii").strip() if moment else ""
    secret = _secret(submitted / SECRET_FILE)
    # Another account's folder gets what nbgrader finds no way back for; the rest is fetched there.
    if not (cohort.own_accounts and when and secret):
        _put_in_workplace(cohort, assigned, learner, page, when)
    for name, text in ((TIMESTAMP, when), (SECRET_FILE, secret)):
        if text:
            files.write_whole(target / name, text, sync=False)
    return bool(when and secret)


def _plain(path: Path) -> bool:
    """Whether a notebook is a file with a name that a page can have."""
    named = path.name.isprintable() and len(os.fsencode(path.name)) <= LONGEST_NAME
    return named and path.is_file() and not path.is_symlink()


def _secret(path: Path) -> str:
    """What nbgrader's hand-in wrote to find the way back by; empty if it is no such thing."""
    try:
        text = read_bytes(path, _LONGEST_SECRET).decode("ascii")
    except (OSError, ValueError):
        return ""
    return text if len(text) <= _LONGEST_SECRET and text.isalnum() else ""


def _put_in_workplace(
    cohort: Cohort, assigned: Assigned, learner: Learner, page: str, when: str
) -> None:
    """Write the page where fetching it from the exchange would, so that there is one of it."""
    if not is_theirs(cohort, learner.id) or not cohort.place(learner.id, assigned.name).is_dir():
        return
    # A time names a folder here: nothing in it may lead out of this one.
    folders = [when] if when and not set(when) & set("/\\") and not when.startswith(".") else []
    parts = (learner.id, assigned.name, "feedback", *folders, f"{assigned.notebook_id}.html")
    write_inside(cohort.work, "/".join(parts), page, sync=False)


def _release(cohort: Cohort, assigned: Assigned, learners: list[str]) -> list[NotDone]:
    """Let nbgrader release the pages; who is in its way is left out and told."""
    doing = f"releasing feedback on {assigned.name}"
    there = {path.parent.name for path in (cohort.root / "feedback").glob(f"*/{assigned.name}")}
    left_out = sorted(there - set(learners))
    try:
        backbone.run(cohort, doing, backbone.release_pages, cohort, assigned.name, but=left_out)
        return []
    except CohortError:
        pass  # one bad folder stops nbgrader's whole run: go on learner by learner
    left: list[NotDone] = []
    for learner in learners:
        with going_on(learner, left):
            backbone.run(
                cohort,
                f"{doing} to {learner}",
                backbone.release_pages,
                cohort,
                assigned.name,
                learner=learner,
            )
    return left
