"""Checks of the learner's own unit: each shows what it shows when it is made, and no more."""

from __future__ import annotations

from html import escape
from typing import Any

import traitlets

from twoshaft.errors import CourseError
from twoshaft.jobsheet.screen import Screen
from twoshaft.models.faults import PASSES
from twoshaft.readings.reading_faults.given import Own


class OwnChecks(Screen):
    """A unit on which checks are made one by one.

    Parameters
    ----------
    own : Own
        What each check shows of the unit, and its time.
    """

    screen = "own_checks"

    plan = traitlets.Dict().tag(sync=True)
    view = traitlets.Dict().tag(sync=True)

    def __init__(self, own: Own) -> None:
        self._shown = {row.check: (row.name, row.key == PASSES, row.words) for row in own.record}
        self._minutes = dict(own.minutes)
        self.made: list[str] = []
        checks = [[c, row[0], self._minutes[c]] for c, row in self._shown.items()]
        super().__init__(plan={"checks": checks}, view=self._view(None))

    def hear(self, message: dict[str, Any]) -> None:
        """Make one check; a check made before stays as it was."""
        if message.get("type") != "make":
            return
        check = str(message.get("check"))
        if check not in self._shown:
            raise CourseError(f"{check!r} is no check of this unit", mend="choose one that is")
        if check not in self.made:
            self.made.append(check)
        self.view = self._view(message.get("turn"))

    @property
    def minutes(self) -> float:
        """Time of the checks made [min]."""
        return sum(self._minutes[check] for check in self.made)

    @property
    def finding(self) -> str:
        """How many checks were made and failed, and the last one, as a sentence."""
        if not self.made:
            return "No check is made yet."
        failed = sum(not self._shown[check][1] for check in self.made)
        name, _, words = self._shown[self.made[-1]]
        made = f"{len(self.made)} of {len(self._shown)} checks made, {failed} not passed"
        return f"{name}: {words} {made}, {self.minutes:g} min."

    def _view(self, turn: Any) -> dict[str, Any]:
        shown = {c: [*self._shown[c][1:]] for c in self.made}
        return {"turn": turn, "finding": self.finding, "shown": shown}

    def plain_copy(self) -> str:
        """The checks made and what they showed, as HTML."""
        rows = "".join(
            f"<li>{escape(self._shown[c][0])}: {escape(self._shown[c][2])}</li>" for c in self.made
        )
        return f"<p><b>{escape(self.finding)}</b></p><ul>{rows}</ul>"


def own_checks(own: Own) -> OwnChecks:
    """The learner's own unit, ready to be checked.

    Parameters
    ----------
    own : Own
        As drawn for the task.

    Returns
    -------
    OwnChecks
        Something a notebook displays.
    """
    return OwnChecks(own)
