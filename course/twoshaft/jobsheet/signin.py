"""Who works here, and what they have to do: the state behind the start page."""

from __future__ import annotations

import contextlib
import hashlib
import hmac
import os
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

from twoshaft.errors import CohortError, SheetError
from twoshaft.jobsheet import handin
from twoshaft.jobsheet.gaps import Gaps, TaskGap, find_gaps
from twoshaft.jobsheet.own_folder import enter, is_apart
from twoshaft.jobsheet.people import Listed, read_people, word_fits
from twoshaft.jobsheet.receipts import read_receipts, sheet_digest
from twoshaft.stored.adjustments import own_adjustment
from twoshaft.stored.assignment import ASSIGNMENT, Assignment
from twoshaft.stored.extensions import OWN_EXTENSIONS
from twoshaft.stored.job_sheet import FILE as SHEET
from twoshaft.stored.person import Person
from twoshaft.stored.receipts import Receipt

_SAME_HAND_IN = timedelta(minutes=1)
"""From the time that a hand-in bears to that of its receipt, at most: our choice."""
HUB_NAME = "JUPYTERHUB_USER"
"""Names the environment variable in which a JupyterHub says who signed in to it."""


@dataclass(frozen=True)
class Entry:
    """One assignment of the learner, as the start page lists it.

    Parameters
    ----------
    name, title : str
        As nbgrader and as a person calls it.
    due : str
        Local date and time, empty if there is none.
    overdue : bool
        Whether that time is past.
    state : str
        ``to get``, ``open``, ``handed in``, ``changed since`` or ``feedback``.
    detail : str
        The state in words.
    left : int or None
        Answers that are still to be given; None if nobody knows.
    unread : int
        Answers that are there and cannot be read.
    gaps : tuple of TaskGap
        What is missing or cannot be read, by task, as far as known.
    notebooks : tuple of str
        Paths under the workplace.
    feedback : tuple of str
        Pages under the workplace, newest first.
    can_get, can_hand_in : bool
        What can be done now.
    receipt : Receipt or None
        Of the last hand-in.
    no_evidence : tuple of str
        Outcomes that none of its tasks shows, since the unit has nothing for them.
    """

    name: str
    title: str
    due: str
    overdue: bool
    state: str
    detail: str
    left: int | None = None
    unread: int = 0
    gaps: tuple[TaskGap, ...] = ()
    notebooks: tuple[str, ...] = ()
    feedback: tuple[str, ...] = ()
    can_get: bool = False
    can_hand_in: bool = False
    receipt: Receipt | None = None
    no_evidence: tuple[str, ...] = ()


class SignIn:
    """Sign-in on a machine that several learners share, or on a college's JupyterHub.

    Parameters
    ----------
    workplace : path
        The folder with ``people.json`` and ``workplace.json``.

    Notes
    -----
    The word guards against working in somebody else's folder by mistake, and against nothing
    more: whoever works in the same account of the machine can open every learner's folder. On a
    JupyterHub it is not asked for: the hub knows who works, and the account keeps others out.
    """

    def __init__(self, workplace: str | Path) -> None:
        self.workplace = Path(workplace).absolute()
        self.me: Person | None = None
        self.ticket = ""
        self._hub_name = os.environ.get(HUB_NAME, "")

    def people(self) -> tuple[Person, ...]:
        """Who can sign in here; nobody where a hub does that. SheetError if there is no list."""
        listed = read_people(self.workplace)
        return () if self._hub_name else tuple(one.person for one in listed)

    def arrive(self) -> None:
        """Know whom a hub has signed in already; nothing where there is no hub.

        Raises
        ------
        SheetError
            If that name is not on the list, or the folder is another account's.
        """
        if not self._hub_name or self.me is not None:
            return
        person = listed_as(self.workplace, self._hub_name)
        enter(self.workplace / person.id, person)
        self.me = person

    def sign_in(self, learner: str, word: str) -> Person:
        """Sign in.

        Raises
        ------
        SheetError
            If the learner is not on the list, the word is another one, or their folder is missing.
        """
        self._not_on_a_hub()
        listed = self._listed(learner)
        if not word.strip():
            raise SheetError("no sign-in word was typed", mend="type the word on your slip")
        if not word_fits(word, listed.word_check):
            raise SheetError(
                f"that is not the word on the slip of {listed.person.name}",
                mend="check the name and the word, or ask your instructor for a new slip",
            )
        enter(self.workplace / listed.person.id, listed.person, word)
        self.me, self.ticket = listed.person, _ticket(listed)
        return self.me

    def resume(self, learner: str, ticket: str) -> None:
        """Sign in again who was signed in before this kernel began; else nobody is.

        The ticket is what the browser's window was given on signing in, and no more of a
        protection than the word.
        """
        if self.me is not None or self._hub_name:
            return
        for listed in read_people(self.workplace):
            fits = hmac.compare_digest(ticket.encode(), _ticket(listed).encode())
            if listed.person.id == learner and fits:
                with contextlib.suppress(SheetError):
                    enter(self.workplace / learner, listed.person)
                    self.me, self.ticket = listed.person, ticket

    def sign_out(self) -> None:
        """Nobody works here."""
        self._not_on_a_hub()
        self.me, self.ticket = None, ""

    def entries(self) -> tuple[Entry, ...]:
        """The learner's assignments, by due date."""
        if self.me is None:
            return ()
        counter = handin.find_counter(self.workplace)
        offered = counter.offered_to(self.me.id) if counter else {}
        own = self.workplace / self.me.id
        fetched = {path.parent.name for path in own.glob(f"*/{ASSIGNMENT.file}")}
        receipts = {receipt.assignment: receipt for receipt in read_receipts(own)}
        found = [
            self._entry(name, offered.get(name), own / name, receipts.get(name))
            for name in sorted(offered.keys() | fetched)
        ]
        return tuple(sorted(found, key=lambda entry: (entry.due or "9999", entry.name)))

    def get(self, assignment: str) -> str:
        """Fetch an assignment. Returns a sentence."""
        counter, me = self._working()
        handin.fetch(counter, me, assignment)
        return f"{title_of(assignment)} is here. Open it and answer; it is saved as you go."

    def hand_in(self, assignment: str) -> Receipt:
        """Hand an assignment in, which the learner states to be their own. Returns the receipt."""
        counter, me = self._working()
        return handin.hand_in(counter, me, assignment, own_work=True)

    def look(self) -> dict[str, str]:
        """How the learner's pages are to look; nothing where nothing is arranged."""
        return own_adjustment(self.workplace / self.me.id).look if self.me else {}

    def look_for_feedback(self) -> None:
        """Fetch feedback that waits in the exchange for what was handed in."""
        if self.me is None or (counter := handin.find_counter(self.workplace)) is None:
            return
        for receipt in {r.assignment: r for r in read_receipts(self.workplace / self.me.id)}:
            handin.fetch_feedback(counter, self.me, receipt)

    def one_account(self) -> bool:
        """Whether all learners work in one account of the machine."""
        return not any(
            is_apart(self.workplace / one.person.id) for one in read_people(self.workplace)
        )

    def lessons(self) -> tuple[tuple[str, str], ...]:
        """Lessons as (path under the workplace, title)."""
        pages = sorted((self.workplace / "lessons").glob("*.ipynb"))
        return tuple((f"lessons/{page.name}", title_of(page.stem)) for page in pages)

    def _listed(self, learner: str) -> Listed:
        for listed in read_people(self.workplace):
            if listed.person.id == learner:
                return listed
        raise SheetError("nobody was chosen", mend="choose your name from the list")

    def _not_on_a_hub(self) -> None:
        if self._hub_name:
            raise SheetError(
                "your college's server says who works here",
                mend="sign out of the server to let somebody else work",
            )

    def _working(self) -> tuple[handin.Counter, Person]:
        if self.me is None:
            raise SheetError("nobody is signed in", mend="choose your name and type your word")
        counter = handin.find_counter(self.workplace)
        if counter is None:
            raise CohortError("this workplace hands nothing in", mend="ask your instructor")
        return counter, self.me

    def _entry(
        self, name: str, released: Path | None, folder: Path, receipt: Receipt | None
    ) -> Entry:
        about = _about(folder) or (handin.offered_assignment(released) if released else None)
        more = own_adjustment(folder.parent).more_days
        due, overdue = _due(about, _extension(folder.parent, name), more)
        here = folder.is_dir()
        lost = handin.missing_notebooks(released, folder) if released else ()
        pages = handin.feedback_pages(folder) if here else ()
        found = find_gaps(folder)
        asked = about.fields if about else 0
        answers = handin.answers_in(released) if released else SHEET
        told = _answered(found, asked) if answers == SHEET else "open the notebook and write in it"
        state, detail = _state(folder / answers, here, receipt, pages, overdue, told)
        if here and lost:
            detail = f"{lost[0]} is missing or has another name; rename it back or get it again"
        return Entry(
            name=name,
            title=title_of(name),
            due=due,
            overdue=overdue,
            state=state,
            detail=detail,
            left=_left(found, asked),
            unread=found.unread if found else 0,
            gaps=found.tasks if found else (),
            notebooks=self._paths(sorted(folder.glob("*.ipynb"))) if here else (),
            feedback=self._paths(pages),
            can_get=released is not None and (not here or bool(lost)),
            can_hand_in=released is not None and (folder / answers).exists() and not lost,
            receipt=receipt,
            no_evidence=about.no_evidence if about else (),
        )

    def _paths(self, paths: list[Path] | tuple[Path, ...]) -> tuple[str, ...]:
        return tuple(path.relative_to(self.workplace).as_posix() for path in paths)


def listed_as(workplace: Path, name: str) -> Person:
    """Who is on a workplace's list under a name; capitals make no difference.

    Raises
    ------
    SheetError
        If nobody is.
    """
    for listed in read_people(workplace):
        if listed.person.id.casefold() == name.casefold():
            return listed.person
    raise SheetError(
        f"the name “{name}”, with which you signed in to this server, is not on the roster",
        mend="ask your instructor",
    )


def title_of(name: str) -> str:
    """A file's or assignment's name as a person says it.

    >>> title_of("order-of-work-1"), title_of("02-order-of-work")
    ('Order of work, attempt 1', '02 Order of work')
    """
    words = name.split("-")
    number = words.pop(0) + " " if words[0].isdecimal() and len(words) > 1 else ""
    attempt = f", attempt {words.pop()}" if len(words) > 1 and words[-1].isdecimal() else ""
    return f"{number}{' '.join(words).capitalize()}{attempt}"


def local_time(iso: str) -> str:
    """A moment as local date and time, ``2026-12-01 16:00``; as it is if it is no moment."""
    try:
        return datetime.fromisoformat(iso).astimezone().strftime("%Y-%m-%d %H:%M")
    except ValueError:
        return iso


def _about(folder: Path) -> Assignment | None:
    try:
        return ASSIGNMENT.read(folder / ASSIGNMENT.file)
    except SheetError:
        return None


def _extension(own: Path, assignment: str) -> str:
    """A later due date that the instructor gave this learner; empty if there is none."""
    try:
        return (OWN_EXTENSIONS.read(own / OWN_EXTENSIONS.file) or {}).get(assignment, "")
    except SheetError:
        return ""


def _due(about: Assignment | None, later: str = "", more_days: int = 0) -> tuple[str, bool]:
    if about is None or not about.due:
        return "", False
    try:
        moment = datetime.fromisoformat(about.due).astimezone() + timedelta(days=more_days)
        if later:
            moment = max(moment, datetime.fromisoformat(later).astimezone())
    except (ValueError, OverflowError):
        return about.due, False
    return moment.strftime("%Y-%m-%d %H:%M"), moment < datetime.now(UTC)


def _state(
    answers: Path,
    here: bool,
    receipt: Receipt | None,
    feedback: tuple[Path, ...],
    overdue: bool,
    answered: str,
) -> tuple[str, str]:
    late = "; the due date has passed" if overdue else ""
    if not here:
        return "to get", f"not here yet{late}"
    if feedback and not (receipt and _earlier(feedback[0], receipt)):
        when = f"handed in {local_time(receipt.handed_in)}; " if receipt else ""
        return "feedback", f"{when}your feedback is here"
    if receipt is None:
        return "open", f"{answered}; not handed in{late}"
    handed_in = f"handed in {local_time(receipt.handed_in)}, receipt {receipt.code}"
    if sheet_digest(answers) != receipt.sha256:
        return "changed since", f"{answered}; {handed_in}; hand in again to send the changes"
    return "handed in", f"{answered}; {handed_in}"


def _earlier(page: Path, receipt: Receipt) -> bool:
    """Whether a feedback page is older than the last hand-in."""
    try:
        handed_in = datetime.fromisoformat(receipt.handed_in)
        if page.stat().st_mtime >= handed_in.timestamp():
            return False
    except (OSError, ValueError):
        return False
    # Its folder says which hand-in it is of: one of this one is none of before, whatever a clock
    # that was put back says.
    figures = "".join(filter(str.isdigit, page.parent.name))[:14]
    try:
        of = datetime.strptime(figures, "%Y%m%d%H%M%S").replace(tzinfo=UTC)
        return abs(of - handed_in) > _SAME_HAND_IN
    except (ValueError, TypeError):
        return True


def _answered(found: Gaps | None, asked: int) -> str:
    """How much is answered; ``asked`` is 0 if nobody knows."""
    if found is None:
        return "the job sheet cannot be read; open the notebook to repair it"
    count = found.answered
    if not count and not found.unread:
        return f"none of {asked} answered" if asked else "no answer saved yet"
    if asked:
        said = f"{min(count, asked)} of {asked} answered"
    else:
        said = f"{count} {'answer' if count == 1 else 'answers'} saved"
    unread = f", {found.unread} cannot be read" if found.unread else ""
    return f"{said}{unread}{f', last {local_time(found.last)}' if found.last else ''}"


def _left(found: Gaps | None, asked: int) -> int | None:
    """How many answers are still to be given; None if nobody knows."""
    if found is None or not (asked or found.tasks):
        return None
    if asked:
        return max(asked - found.answered - found.unread, 0)
    return sum(gap.missing for gap in found.tasks)


def _ticket(listed: Listed) -> str:
    """What shows that somebody signed in with the word they have now."""
    known = f"signed in\n{listed.person.id}\n{listed.word_check}"
    return hashlib.sha256(known.encode()).hexdigest()
