"""The start page: sign in, get assignments, open them, hand them in, read feedback."""

from __future__ import annotations

import hashlib
import html
from dataclasses import asdict
from pathlib import Path
from typing import Any

import traitlets

from twoshaft.errors import CourseError
from twoshaft.jobsheet.overview import contents, lacking
from twoshaft.jobsheet.screen import Screen
from twoshaft.jobsheet.signin import SignIn, local_time
from twoshaft.stored.own_work import STATEMENT

UP_TO_DATE = "The list is up to date."
AGAIN = "You can go on and hand in again; the last one counts."
AFTER = (
    "You have feedback on this already, so your instructor decides whether it counts. To show that "
    "you can do it now, ask for another attempt: it comes with fresh readings."
)
ONE_ACCOUNT = (
    "The word keeps your answers in your own folder. It is not a password: all of you work in one "
    "account of this machine, in which anybody could open and change anybody's work."
)
OWN_ACCOUNT = (
    "The word keeps your answers in your own folder, which your own account of this machine keeps "
    "from everybody but your instructor."
)

# Who is signed in stays known while the kernel lives: closing the page signs nobody out.
_signed_in: dict[Path, SignIn] = {}


def start_here(workplace: str | Path | None = None) -> StartPage:
    """Show the start page.

    Parameters
    ----------
    workplace : path, optional
        The workplace; the notebook's folder if not given.
    """
    root = (Path(workplace) if workplace else Path.cwd()).resolve()
    return StartPage(_signed_in.setdefault(root, SignIn(root)))


class StartPage(Screen):
    """The start page of a workplace.

    Parameters
    ----------
    sign_in : SignIn
        Its state.
    """

    screen = "start"

    people: traitlets.List[Any] = traitlets.List().tag(sync=True)
    place = traitlets.Unicode().tag(sync=True)
    me = traitlets.Dict().tag(sync=True)
    entries: traitlets.List[Any] = traitlets.List().tag(sync=True)
    lessons: traitlets.List[Any] = traitlets.List().tag(sync=True)
    modules: traitlets.List[Any] = traitlets.List().tag(sync=True)
    said = traitlets.Unicode().tag(sync=True)
    trouble = traitlets.Unicode().tag(sync=True)
    asking = traitlets.Unicode().tag(sync=True)
    kept = traitlets.Unicode().tag(sync=True)
    look = traitlets.Dict().tag(sync=True)
    statement = traitlets.Unicode(STATEMENT).tag(sync=True)
    turn = traitlets.Int().tag(sync=True)

    def __init__(self, sign_in: SignIn) -> None:
        self._sign_in = sign_in
        # What the browser keeps of a sign-in belongs to this workplace.
        place = hashlib.sha256(str(sign_in.workplace).encode()).hexdigest()[:16]
        super().__init__(place=place)
        self._show()

    def hear(self, message: dict[str, Any]) -> None:
        """Do what was asked for and show what has become of it."""
        doing, name = message.get("type"), str(message.get("name", ""))
        said = asking = ""
        try:
            if doing == "resume":
                self._sign_in.resume(name, str(message.get("ticket", "")))
            elif doing == "sign-in":
                person = self._sign_in.sign_in(name, str(message.get("word", "")))
                self._sign_in.look_for_feedback()
                said = f"Signed in. You are working as {person.name} ({person.id})."
            elif doing == "sign-out":
                self._sign_in.sign_out()
                said = "Signed out. Choose your name."
            elif doing == "get":
                said = self._sign_in.get(name)
            elif doing == "hand-in" and message.get("own") is not True:
                asking = name
            elif doing == "hand-in":
                receipt = self._sign_in.hand_in(name)
                answers = "1 answer" if receipt.answers == 1 else f"{receipt.answers} answers"
                lacks = self._lacking(name)
                # A count of answers beside one of what is missing would not add up: some are there
                # in part, or cannot be read.
                said = (
                    f"Handed in {local_time(receipt.handed_in)}"
                    f"{f'; {lacks}' if lacks else f' with {answers}'}. "
                    f"Receipt {receipt.code}. {AFTER if self._told(name) else AGAIN}"
                )
            elif doing == "look":
                self._sign_in.look_for_feedback()
                quietly = bool(message.get("quietly"))
                said = self.said if quietly else UP_TO_DATE
                asking = self.asking if quietly else ""
        except CourseError as error:
            self._show(trouble=_as_text(error))
            return
        self._show(said=said, asking=asking)

    def _lacking(self, name: str) -> str:
        """What an assignment lacks, in words; empty if nothing, or nobody knows it."""
        return next((lacking(one) for one in self._sign_in.entries() if one.name == name), "")

    def _told(self, name: str) -> bool:
        """Whether there is feedback on an assignment."""
        return any(one.name == name and one.feedback for one in self._sign_in.entries())

    def _show(self, *, said: str = "", trouble: str = "", asking: str = "") -> None:
        try:
            self._sign_in.arrive()
            people = [[p.id, f"{p.family_name}, {p.given_name} ({p.id})"] for p in self._people()]
            found = self._sign_in.entries()
            entries = [asdict(entry) for entry in found]
            modules = [asdict(line) for line in contents(self._sign_in, found)]
            kept = ONE_ACCOUNT if self._sign_in.one_account() else OWN_ACCOUNT
        except CourseError as error:
            people, entries, modules, trouble = [], [], [], trouble or _as_text(error)
            kept = ""
        person = self._sign_in.me
        with self.hold_sync():
            self.people, self.entries, self.modules = people, entries, modules
            ticket = self._sign_in.ticket
            self.me = {"id": person.id, "name": person.name, "ticket": ticket} if person else {}
            self.lessons = [list(lesson) for lesson in self._sign_in.lessons()]
            self.said, self.trouble, self.asking, self.kept = said, trouble, asking, kept
            self.look = self._sign_in.look()
            self.turn += 1  # the page waits for it, even where nothing else has changed
        self.renew_copy()

    def _people(self) -> Any:
        return self._sign_in.people()

    def plain_copy(self) -> str:
        """Who is signed in and the list of assignments, without controls."""
        if not self.me:
            return "<p>Nobody is signed in.</p>"
        rows = "".join(
            f"<li>{html.escape(e['title'])}: {html.escape(e['detail'])}</li>" for e in self.entries
        )
        return f"<p>Working as {html.escape(self.me['name'])}.</p><ul>{rows}</ul>"


def _as_text(error: CourseError) -> str:
    text = error.sentence
    return text if error.where else text[:1].upper() + text[1:]
