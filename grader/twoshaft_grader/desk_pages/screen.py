"""The desk's frame: pages, who sits there, the line that says what was done, progress, exports."""

from __future__ import annotations

import html
import os
import re
import threading
from collections.abc import Callable
from pathlib import Path
from typing import Any

import traitlets

from twoshaft.errors import CourseError
from twoshaft.jobsheet.screen import Screen
from twoshaft_grader.cohort.folder import find_cohort
from twoshaft_grader.cohort.trail import account
from twoshaft_grader.desk.errors import sentence_of
from twoshaft_grader.desk_pages.chosen_files import ChosenFiles
from twoshaft_grader.desk_pages.page import Desk, Page, Work
from twoshaft_grader.desk_pages.pages import OPENS, PAGES
from twoshaft_grader.desk_pages.parts import Table, Values, as_data
from twoshaft_grader.records.cells import csv_of
from twoshaft_grader.records.rows import INVENTED

BUSY = "Something is under way; wait until it has ended."
TURNED = "nothing was done: another window of this desk has turned the page"
AGAIN = "then do the same again, which goes on where this ended"
_WORD = re.compile(r"[a-z]+[ ,:]")
LOOK_S = 20
"""So long what ends by itself soon, a look or a page that is turned, is waited for."""
REPORT = "tell the course's authors what you did"


def open_desk(root: str | Path | None = None) -> DeskScreen:
    """Show the desk of the cohort that this folder stands in, or of the one that is named."""
    os.umask(0o077)  # as the commands do
    return DeskScreen(find_cohort(Path(root) if root else Path.cwd()).root)


class DeskScreen(Screen):
    """The desk.

    What takes time is done in a thread of its own, one at a time, so that the page goes on.

    Parameters
    ----------
    root : Path
        The cohort folder.
    """

    screen = "desk"

    cohort = traitlets.Dict().tag(sync=True)
    pages: traitlets.List[Any] = traitlets.List().tag(sync=True)
    page = traitlets.Unicode().tag(sync=True)
    parts: traitlets.List[Any] = traitlets.List().tag(sync=True)
    every = traitlets.Int().tag(sync=True)
    by = traitlets.Unicode().tag(sync=True)
    said = traitlets.Unicode().tag(sync=True)
    trouble = traitlets.Unicode().tag(sync=True)
    busy = traitlets.Dict().tag(sync=True)
    cleared = traitlets.Int().tag(sync=True)
    turn = traitlets.Int().tag(sync=True)

    def __init__(self, root: Path) -> None:
        self._desk = Desk(root, account())
        self._pages: dict[str, Page] = {page.id: page(self._desk) for page in PAGES}
        self._tables: dict[str, Table] = {}
        self._files = ChosenFiles()
        self._thread: threading.Thread | None = None
        self._hands = threading.Lock()
        self._ends_soon = False
        about = self._desk.cohort
        super().__init__(
            cohort={
                "name": about.name,
                "college": about.college,
                "invented": f"{INVENTED[:1].upper()}{INVENTED[1:]}." if about.invented else "",
            },
            pages=[[one.id, one.title] for one in self._pages.values()],
            page=OPENS.id,
            by=self._desk.by,
        )
        self._start(lambda _: "", "looking")

    def hear(self, message: dict[str, Any]) -> None:
        """Do what was asked for; all but small things in a thread."""
        doing = message.get("type")
        if doing == "file":
            self._files.take_piece(message)
        elif doing == "export":
            self._export(str(message.get("table", "")))
        elif doing == "by":
            self._desk.by = " ".join(str(message.get("name", "")).split())[:80] or account()
            self.by = self._desk.by
        elif doing == "look":
            self._start(lambda _: self.said, "", quietly=True)
        elif doing == "page" and message.get("name") in self._pages:
            name = str(message["name"])
            self._start(lambda _: self._turn_to(name), "looking")
        elif doing == "do":
            values = Values(
                _table_of(message.get("typed")),
                _table_of(message.get("ticked")),
                self._files.all(),
                str(message.get("of", "")),
            )
            page, act = str(message.get("page") or self.page), str(message.get("act", ""))
            self._start(lambda work: self._do(page, act, values, work), "working", clear=True)

    def wait(self) -> None:
        """Wait until what is under way has ended."""
        if self._thread:
            self._thread.join()

    def plain_copy(self) -> str:
        """The page's tables, without controls."""
        about = f"<p>{html.escape(self.cohort['name'])}: {html.escape(self.said)}</p>"
        return about + "".join(_plain(table) for table in self._tables.values())

    def _turn_to(self, name: str) -> str:
        self.page = name
        return ""

    def _do(self, page: str, act: str, values: Values, work: Work) -> str:
        if page != self.page:  # another window of this desk turned to another one
            raise CourseError(TURNED, mend="do it again on its own page")
        return self._pages[page].do(act, values, work)

    def _start(
        self, call: Callable[[Work], str], doing: str, *, clear: bool = False, quietly: bool = False
    ) -> None:
        """Call something in a thread, then show the page as it is after it."""
        # A look, a page, or what is done but for showing it: what is pressed waits for these.
        wait_s = LOOK_S if self._ends_soon and not quietly else 0
        if not self._hands.acquire(blocking=wait_s > 0, timeout=wait_s or -1):
            if not quietly:
                self.tell_trouble(BUSY)
            return
        self._ends_soon = not clear
        if doing:
            self._tell(doing, 0, 0)
        self._thread = threading.Thread(
            target=self._work, args=(call, clear, quietly), daemon=True, name="twoshaft-desk"
        )
        self._thread.start()

    def _work(self, call: Callable[[Work], str], clear: bool, quietly: bool) -> None:
        try:
            said = trouble = ""
            try:
                said = call(Work(self._tell))
            except Exception as error:
                trouble = _told(error)
            try:
                parts = list(self._pages[self.page].show())
            except Exception as error:
                parts, trouble = [], trouble or _told(error)
            trouble = self._files.named(trouble)
            self._tables = {part.id: part for part in parts if isinstance(part, Table)}
            data = as_data(parts)
            if quietly and data == self.parts:
                return
            self._ends_soon = True
            with self.hold_sync():
                self.parts, self.every = data, self._pages[self.page].every_s
                self.said, self.trouble = said, trouble or (self.trouble if quietly else "")
                self.busy = {}
                self.cleared += clear and not trouble
                self.turn += 1  # the page waits for it, even where nothing else has changed
            self.renew_copy()
        finally:
            if clear and not trouble:
                self._files.forget()
            self._hands.release()

    def _tell(self, doing: str, done: int, of: int) -> None:
        self.busy = {"doing": doing, "done": done, "of": of}

    def _export(self, id: str) -> None:
        """Send a table as CSV, which the browser saves."""
        table = self._tables.get(id)
        if table is None:
            return
        rows = table.texts()
        if self.cohort["invented"]:
            rows = [[*row, INVENTED] for row in rows]
        heading = [*table.columns, *(["people"] if self.cohort["invented"] else [])]
        self.send({"type": "save", "name": f"{id}.csv", "text": csv_of(heading, rows)})


def _told(error: Exception) -> str:
    text = sentence_of(error, again=AGAIN, report=REPORT)
    # An id or a file's name keeps its letters.
    return f"{text[:1].upper()}{text[1:]}" if _WORD.match(text) else text


def _table_of(value: Any) -> dict[str, Any]:
    return value if isinstance(value, dict) else {}


def _plain(table: Table) -> str:
    head = "".join(
        f'<th scope="col">{html.escape(one)}</th>' if one else "<td></td>" for one in table.columns
    )
    rows = "".join(
        f'<tr><th scope="row">{html.escape(first)}</th>'
        + "".join(f"<td>{html.escape(one)}</td>" for one in others)
        + "</tr>"
        for first, *others in table.texts()
    )
    return (
        f"<table><caption>{html.escape(table.title)}</caption><tr>{head}</tr>{rows}</table>"
        if table.rows
        else f"<p>{html.escape(table.title)}: {html.escape(table.empty)}</p>"
    )
