"""nbgrader's exchange without rights of Unix: the same folders, used where the stock one refuses.

Whoever reaches the exchange's folder reaches all in it: on Windows all work in one account, or the
folder's own rights are set by who looks after the machine. Times stand in names of folders, and no
colon may there: ``2026-11-29 12h50m33.123456s UTC``, which nbgrader and collecting read as any.
"""

from __future__ import annotations

import os
from typing import Any

from nbgrader.exchange import abc, default
from traitlets import Unicode

from twoshaft import system


class WithoutRights(default.Exchange):
    """What the stock classes ask of Unix, done without it."""

    timestamp_format = Unicode("%Y-%m-%d %Hh%Mm%S.%fs %Z").tag(config=True)

    def start(self) -> Any:
        """Do what is asked; the stock class refuses on Windows."""
        return abc.Exchange.start(self)

    def ensure_root(self) -> None:
        """See that the exchange is there."""
        if not os.path.isdir(self.root):
            self.fail(f"there is no folder {self.root}")

    def ensure_directory(self, path: str, mode: int) -> None:
        """Make a folder, whoever owns the one around it."""
        os.makedirs(path, exist_ok=True)

    def set_perms(self, dest: str, fileperms: int, dirperms: int) -> None:
        """Leave rights to the folder around it."""


class FetchAssignment(WithoutRights, default.ExchangeFetchAssignment):
    """Get an assignment."""


class FetchFeedback(WithoutRights, default.ExchangeFetchFeedback):
    """Get feedback."""


class Submit(WithoutRights, default.ExchangeSubmit):
    """Hand in."""


class List(WithoutRights, default.ExchangeList):
    """List what there is."""


class Collect(WithoutRights, default.ExchangeCollect):
    """Collect."""


def fetch_assignment() -> type[default.ExchangeFetchAssignment]:
    """The class that gets assignments here."""
    return FetchAssignment if system.WINDOWS else default.ExchangeFetchAssignment


def fetch_feedback_pages() -> type[default.ExchangeFetchFeedback]:
    """The class that gets feedback here."""
    return FetchFeedback if system.WINDOWS else default.ExchangeFetchFeedback


def submit() -> type[default.ExchangeSubmit]:
    """The class that hands in here."""
    return Submit if system.WINDOWS else default.ExchangeSubmit
