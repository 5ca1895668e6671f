"""Get assignments, hand work in and get feedback, through nbgrader's exchange.

Handing in is not marking: nothing here knows an answer.
"""

from __future__ import annotations

import contextlib
import logging
import os
import shutil
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from twoshaft import system
from twoshaft.errors import CohortError, SheetError
from twoshaft.jobsheet.own_folder import is_apart, make_for_staff_too
from twoshaft.jobsheet.receipts import add_receipt, receipt_code, sheet_digest
from twoshaft.stored.assignment import ASSIGNMENT, Assignment
from twoshaft.stored.job_sheet import FILE as SHEET
from twoshaft.stored.job_sheet import read_sheet
from twoshaft.stored.own_work import OWN_WORK, STATEMENT, OwnWork
from twoshaft.stored.person import Person
from twoshaft.stored.receipts import Receipt
from twoshaft.stored.workplace import WORKPLACE
from twoshaft.stored.writing import write_file

# Kept per learner, since several share one account: what nbgrader needs to find feedback again.
CACHE = ".handed-in"
_IGNORED = [".*", "*.pyc", "__pycache__", "feedback", "*.part"]


@dataclass(frozen=True)
class Counter:
    """Where a workplace gets its assignments and hands work in.

    Parameters
    ----------
    root : Path
        The workplace.
    course_id : str
        nbgrader's name of the course.
    exchange : Path
        nbgrader's exchange.
    """

    root: Path
    course_id: str
    exchange: Path

    @property
    def outbound(self) -> Path:
        """Where released assignments wait."""
        return self.exchange / self.course_id / "outbound"

    def offered(self) -> dict[str, Path]:
        """Released assignments by name."""
        try:
            folders = sorted(path for path in self.outbound.iterdir() if path.is_dir())
        except OSError:
            return {}
        return {path.name: path for path in folders}

    def offered_to(self, learner: str) -> dict[str, Path]:
        """Released assignments that a learner is to have, by name."""
        offered = self.offered()
        about = {name: offered_assignment(path) for name, path in offered.items()}
        return {
            name: path
            for name, path in offered.items()
            if (one := about[name]) is None or one.is_for(learner)
        }


def find_counter(workplace: Path) -> Counter | None:
    """What ``workplace.json`` says; None if the workplace has no exchange.

    Raises
    ------
    SheetError
        If the file cannot be used.
    """
    about = WORKPLACE.read(workplace / WORKPLACE.file)
    if about is None or not about.exchange:
        return None
    course = about.course_id or about.cohort
    if not course:
        raise SheetError(
            "course_id or exchange is missing", where=WORKPLACE.file, mend="ask your instructor"
        )
    # A relative path moves with the folder it lies in.
    return Counter(workplace, course, (workplace / about.exchange).resolve())


def fetch(counter: Counter, person: Person, assignment: str) -> Path:
    """Get an assignment, or the files of it that have gone missing.

    Returns
    -------
    Path
        The assignment's folder.

    Raises
    ------
    CohortError
        If it is not offered, or cannot be copied.
    """
    from twoshaft.jobsheet.plain_exchange import fetch_assignment

    _known(counter, assignment)
    if assignment not in counter.offered_to(person.id):
        raise CohortError(f"{assignment} is not for you", mend="ask your instructor")
    with _nbgrader(counter, person, assignment, f"{assignment} could not be fetched") as parts:
        if is_apart(counter.root / person.id):
            for folder in (assignment, f"{assignment}/feedback"):
                make_for_staff_too(counter.root / person.id / folder)
        fetch_assignment()(**parts, replace_missing_files=True).start()
    return counter.root / person.id / assignment


def hand_in(
    counter: Counter, person: Person, assignment: str, *, own_work: bool = False
) -> Receipt:
    """Hand an assignment in. It can be handed in again; the last one counts.

    Parameters
    ----------
    own_work : bool
        Whether the learner states that the work is their own; the statement goes with it.

    Returns
    -------
    Receipt
        Also kept in the learner's ``receipts.json``.

    Raises
    ------
    CohortError
        If a notebook was renamed or is missing, there is no answer yet, or nothing can be copied.
    """
    from twoshaft.jobsheet.plain_exchange import submit as submitting

    released = _known(counter, assignment)
    folder = counter.root / person.id / assignment
    _check_notebooks(released, folder)
    about = offered_assignment(released)
    own_code = about is not None and bool(about.code_outcome)
    answers = 0 if own_code else _check_sheet(folder, person)
    _state_own_work(folder, person, assignment, answers_in(released), own_work)
    with _nbgrader(counter, person, assignment, f"{assignment} could not be handed in") as parts:
        submit = submitting()(**parts)
        submit.start()
        arrived = Path(submit.inbound_path) / submit.assignment_filename
        if is_apart(counter.root / person.id):
            _open_to_staff(Path(submit.cache_path))
    digest = sheet_digest(arrived / answers_in(released))
    if not digest:
        raise CohortError(
            f"{assignment} was handed in without its answers", mend="hand it in again"
        )
    now = datetime.now(UTC).strftime("%Y-%m-%dT%H:%M:%SZ")
    receipt = Receipt(assignment, receipt_code(digest), digest, now, answers)
    add_receipt(counter.root / person.id, receipt)
    return receipt


def _state_own_work(
    folder: Path, person: Person, assignment: str, answers: str, own_work: bool
) -> None:
    """Put the statement beside the answers, or take an earlier one away."""
    place = folder / OWN_WORK.file
    if not own_work:
        place.unlink(missing_ok=True)
        return
    now = datetime.now(UTC).strftime("%Y-%m-%dT%H:%M:%SZ")
    about = OwnWork(
        learner=person.id, assignment=assignment, statement=STATEMENT, stated=now,
        sheet=sheet_digest(folder / answers),
    )  # fmt: skip
    try:
        OWN_WORK.write(place, about)
    except OSError as error:
        raise CohortError(
            f"the statement could not be written ({error.strerror})", mend="ask your instructor"
        ) from None


def _open_to_staff(cache: Path) -> None:
    """Give what nbgrader wrote into its copies the group of the folder around them, the staff's: a
    folder that it has copied gives its group to nothing new, and only a file made elsewhere has it.
    """
    group = cache.stat().st_gid
    for path in cache.glob("*/*"):
        if path.is_file() and path.stat().st_gid != group:
            write_file(made := cache / f"{path.name}.part", path.read_bytes(), mode=0o640)
            system.replace(made, path)


def fetch_feedback(counter: Counter, person: Person, assignment: str) -> tuple[Path, ...]:
    """Get feedback pages that wait in the exchange; those already here are found as well.

    Returns
    -------
    tuple of Path
        The pages, newest first.
    """
    from twoshaft.jobsheet.plain_exchange import fetch_feedback_pages

    folder = counter.root / person.id / assignment
    waiting = counter.exchange / counter.course_id / "feedback"
    if waiting.is_dir() and (counter.root / person.id / CACHE).is_dir():
        what = f"the feedback on {assignment} could not be fetched"
        with _nbgrader(counter, person, assignment, what) as parts:
            fetch_feedback_pages()(**parts).start()
    return feedback_pages(folder)


def feedback_pages(folder: Path) -> tuple[Path, ...]:
    """Feedback pages in an assignment's folder, newest first."""
    pages = [page for page in (folder / "feedback").rglob("*.html") if page.is_file()]
    return tuple(sorted(pages, key=lambda page: (page.stat().st_mtime, str(page)), reverse=True))


def answers_in(released: Path) -> str:
    """The file of a released assignment in which a learner's answers stand: the job sheet, or the
    notebook where its cells are run.
    """
    about = offered_assignment(released)
    if about is None or not about.code_outcome:
        return SHEET
    return next((path.name for path in sorted(released.glob("*.ipynb"))), SHEET)


def missing_notebooks(released: Path, folder: Path) -> tuple[str, ...]:
    """Names of released notebooks that are not in the folder."""
    names = sorted(path.name for path in released.glob("*.ipynb"))
    return tuple(name for name in names if not (folder / name).is_file())


def offered_assignment(released: Path) -> Assignment | None:
    """What a released assignment says of itself; None if it says nothing that can be used."""
    try:
        return ASSIGNMENT.read(released / ASSIGNMENT.file)
    except SheetError:
        return None


def _known(counter: Counter, assignment: str) -> Path:
    offered = counter.offered()
    if assignment not in offered:
        raise CohortError(
            f"there is no assignment “{assignment}” that you can get now",
            mend="look at the list again, or ask your instructor",
        )
    return offered[assignment]


def _check_notebooks(released: Path, folder: Path) -> None:
    if not folder.is_dir():
        raise CohortError(f"{folder.name} has not been fetched", mend="get it first")
    lost = missing_notebooks(released, folder)
    if not lost:
        return
    known = {path.name for path in released.glob("*.ipynb")}
    others = sorted(path.name for path in folder.glob("*.ipynb") if path.name not in known)
    if others:
        raise CohortError(
            f"{lost[0]} is not there; it may have been renamed to {others[0]}",
            mend=f"rename it back to {lost[0]} and hand in again; your answers are safe",
        )
    raise CohortError(
        f"{lost[0]} is not there", mend="get the assignment again; your answers are safe"
    )


def _check_sheet(folder: Path, person: Person) -> int:
    if not (folder / SHEET).exists():
        raise CohortError(
            "nothing to hand in yet: no answer is saved", mend="answer something first"
        )
    try:
        sheet = read_sheet(folder / SHEET)
    except SheetError as error:
        raise CohortError(
            f"the job sheet cannot be read ({error.what})",
            mend="open the notebook, which sets the damaged file aside, and look at your answers",
        ) from None
    if sheet.learner != person.id:
        raise CohortError(
            f"the job sheet in this folder belongs to {sheet.learner or 'nobody'}",
            mend="ask your instructor",
        )
    return sum(answer.value not in (None, "", []) for answer in sheet.answers.values())


@contextlib.contextmanager
def _nbgrader(
    counter: Counter, person: Person, assignment: str, trouble: str
) -> Iterator[dict[str, Any]]:
    """nbgrader's objects for one learner; what it says goes into our sentence, not to a screen."""
    from nbgrader.auth import Authenticator
    from nbgrader.coursedir import CourseDirectory
    from nbgrader.exchange import ExchangeError
    from traitlets.config import Config

    own = counter.root / person.id
    config = Config()
    config.CourseDirectory.course_id = counter.course_id
    config.CourseDirectory.assignment_id = assignment
    config.CourseDirectory.student_id = person.id
    config.CourseDirectory.root = str(own)
    config.CourseDirectory.ignore = _IGNORED
    config.Exchange.root = str(counter.exchange)
    config.Exchange.assignment_dir = str(own)
    config.Exchange.cache = str(own / CACHE)
    config.Exchange.timezone = "UTC"
    log = logging.getLogger("twoshaft.handin")
    log.propagate = False
    log.handlers = [logging.NullHandler()]
    course = CourseDirectory(config=config, log=log)
    parts = {
        "coursedir": course,
        "authenticator": Authenticator(config=config, log=log),
        "config": config,
        "log": log,
    }
    try:
        yield parts
    except ExchangeError as error:
        raise CohortError(f"{trouble} ({error})", mend="ask your instructor") from None
    except (OSError, shutil.Error, RuntimeError) as error:
        number = getattr(error, "errno", None)
        reason = os.strerror(number) if number else str(error)[:120]
        raise CohortError(f"{trouble} ({reason.lower()})", mend="ask your instructor") from None
