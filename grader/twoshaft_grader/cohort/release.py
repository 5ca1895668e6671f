"""Hand out through nbgrader's exchange: an assignment whole or not at all, and for all to read."""

from __future__ import annotations

import os
import shutil
from pathlib import Path

from nbgrader.exchange.default import ExchangeReleaseAssignment, ExchangeReleaseFeedback

from twoshaft import system
from twoshaft.jobsheet.plain_exchange import WithoutRights
from twoshaft.stored.writing import FOR_ALL
from twoshaft_grader.cohort import files


class WholeRelease(ExchangeReleaseAssignment):
    """nbgrader's release, copied aside and renamed when it is whole."""

    dest_path: str

    def copy_files(self) -> None:
        """Copy the assignment to its place in the exchange."""
        target = Path(self.dest_path)
        aside = target.with_name(f".{target.name}.part")
        shutil.rmtree(aside, ignore_errors=True)  # what a run that was cut short left
        if os.path.lexists(target) and not self.force:
            self.fail(f"{target.name} is handed out already")
        self.dest_path = str(aside)
        super().copy_files()
        files.move_into_place(aside, target)


class ReadableFeedback(ExchangeReleaseFeedback):
    """nbgrader's release of pages, which keep their names to themselves: only these are secret."""

    dest_path: str

    def copy_files(self) -> None:
        """Copy the pages to the exchange."""
        super().copy_files()
        for page in Path(self.dest_path).glob("*.html"):
            system.make_closed(page, FOR_ALL)


class PlainRelease(WithoutRights, WholeRelease):
    """The same where the stock exchange refuses."""


class PlainFeedback(WithoutRights, ReadableFeedback):
    """The same where the stock exchange refuses."""


def feedback_release() -> type[ReadableFeedback]:
    """The class that releases feedback here."""
    return PlainFeedback if system.WINDOWS else ReadableFeedback


def exchange_classes() -> dict[str, str]:
    """What nbgrader's factory of exchanges is to make here: its setting, and the class's name."""
    ours, learners = __name__, WithoutRights.__module__
    if not system.WINDOWS:
        return {
            "release_assignment": f"{ours}.{WholeRelease.__name__}",
            "release_feedback": f"{ours}.{ReadableFeedback.__name__}",
        }
    return {
        "release_assignment": f"{ours}.{PlainRelease.__name__}",
        "release_feedback": f"{ours}.{PlainFeedback.__name__}",
        "fetch_assignment": f"{learners}.FetchAssignment",
        "fetch_feedback": f"{learners}.FetchFeedback",
        "submit": f"{learners}.Submit",
        "list": f"{learners}.List",
        "collect": f"{learners}.Collect",
    }
