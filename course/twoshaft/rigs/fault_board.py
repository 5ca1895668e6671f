"""Fault board: tick what the checks showed; see what explains it and what to check next."""

from __future__ import annotations

from html import escape
from typing import Any

import traitlets

from twoshaft.errors import CourseError
from twoshaft.jobsheet.screen import Screen
from twoshaft.models.faults import (
    PASSES,
    Diagnosis,
    Explanations,
    NextCheck,
    explain,
    next_check,
    outcome_table,
)
from twoshaft.models.faults.table import Misbuilds
from twoshaft.units.unit import Unit

NOT_NOTED = "something"
"""A check that did not pass, of which nobody wrote down what it showed."""
SHOWN = 6
"""Explanations listed at most, likeliest first."""


class FaultBoard(Screen):
    """All checks of a unit with what each can show, and the misbuilds that are left.

    Parameters
    ----------
    unit : Unit
        A unit with a section faults.
    observed : dict of str to str, optional
        Keys of outcomes by check, at first.
    """

    screen = "fault_board"

    plan = traitlets.Dict().tag(sync=True)
    view = traitlets.Dict().tag(sync=True)

    def __init__(self, unit: Unit, observed: dict[str, str] | None = None) -> None:
        self.unit = unit
        self.search = Diagnosis(unit)
        self.vague: tuple[str, ...] = ()
        for check, key in (observed or {}).items():
            self.search = self.search.observe(check, key)
        self._names = {one.id: one.name for one in unit.faults.misbuilds}
        super().__init__(plan={"checks": self._checks()}, view=self._view(None))

    def _checks(self) -> list[list[Any]]:
        """Each check with its minutes and with what single misbuilds can show in it."""
        table, found = outcome_table(self.unit), []
        for check in self.unit.faults.checks:
            shows = {PASSES: "As it should be", NOT_NOTED: "Not passed, nobody noted what"}
            for one in self._names:
                outcome = table.outcome((one,), check.id)
                shows.setdefault(outcome.key, _short(outcome))
            for key in (self.search.observed.get(check.id),):
                if key is not None and key not in shows:
                    known = {one.key: one for one in table.outcomes[table.column(check.id)]}
                    shows[key] = _short(known[key])
            found.append([check.id, check.name, check.minutes, list(map(list, shows.items()))])
        return found

    def hear(self, message: dict[str, Any]) -> None:
        """Take down what a check showed, take it back, or begin anew."""
        kind = message.get("type")
        if kind == "clear":
            self.search, self.vague = Diagnosis(self.unit), ()
        elif kind == "observe":
            check, shown = str(message.get("check")), str(message.get("shown"))
            known = {one[0]: [key for key, _ in one[3]] for one in self.plan["checks"]}
            if check not in known or shown not in ("", *known[check]):
                raise CourseError(
                    f"check {check!r} does not show {shown!r}", mend="choose from the list"
                )
            kept = {c: key for c, key in self.search.observed.items() if c != check}
            noted = shown and shown != NOT_NOTED
            self.search = Diagnosis(self.unit, {**kept, check: shown} if noted else kept)
            self.vague = tuple(one for one in self.vague if one != check)
            self.vague += (check,) if shown == NOT_NOTED else ()
        else:
            return
        self.view = self._view(message.get("turn"))

    @property
    def _explanations(self) -> Explanations:
        """All that explains what was noted, and that some checks did not pass."""
        table = outcome_table(self.unit)
        among = None
        if self.vague:
            among = [
                one
                for one in table.sets
                if not any(table.outcome(one, check).passes for check in self.vague)
            ]
        return explain(self.unit, self.search.observed, among=among)

    @property
    def left(self) -> list[tuple[Misbuilds, float]]:
        """Explanations with as few misbuilds as possible, each with its share among them.

        Nothing while no check has failed: then a unit without misbuild explains it.
        """
        found = self._explanations
        fewest = min((len(one) for one in found.sets), default=0)
        if not fewest:
            return []
        few = [one for one in found.sets if len(one) == fewest]
        shown = explain(self.unit, self.search.observed, among=few)
        return list(zip(shown.sets, shown.chances, strict=True))

    @property
    def ranked(self) -> tuple[NextCheck, ...]:
        """Checks that tell something about what is left, best first."""
        among = [one for one, _ in self.left] or None
        return next_check(self.unit, self.search.observed, among=among)

    @property
    def finding(self) -> str:
        """What the observations leave, as a sentence."""
        found, left, ranked = self._explanations, self.left, self.ranked
        if not found.sets:
            return "Nothing here explains all of that, not even two at once. Make the checks again."
        best = ""
        if ranked:
            best = f" Best next: {self._check(ranked[0].check)} ({ranked[0].minutes:g} min)."
        if not self._seen:
            return f"No check is made yet: anything can be in the unit.{best}"
        if not left:
            return f"Nothing wrong was seen yet.{best}"
        pair = len(left[0][0]) == 2
        if len(left) == 1:
            start = "No assembly fault alone explains it; one pair does." if pair else ""
            return start or "One assembly fault explains it."
        start = (
            f"No assembly fault alone explains it; {len(left)} pairs do."
            if pair
            else f"{len(left)} assembly faults explain it, each alone."
        )
        return f"{start}{best or ' No check tells them apart: only taking apart shows which.'}"

    @property
    def _seen(self) -> dict[str, str]:
        """What each check showed, noted or not."""
        return {**self.search.observed, **dict.fromkeys(self.vague, NOT_NOTED)}

    def _check(self, check: str) -> str:
        name = self.unit.faults.check_by_id(check).name
        return name[:1].lower() + name[1:]

    @property
    def minutes(self) -> float:
        """Time of the checks made [min]."""
        return sum(self.unit.faults.check_by_id(one).minutes for one in self._seen)

    def _view(self, turn: Any) -> dict[str, Any]:
        left = [
            ["; and ".join(self._names[m] for m in one), _share(chance)]
            for one, chance in self.left
        ]
        more = max(0, len(left) - SHOWN)
        ranked = [
            [one.check, f"{one.bits:.2f}", f"{one.bits_per_minute:.3f}"] for one in self.ranked
        ]
        return {
            "turn": turn,
            "observed": self._seen,
            "finding": self.finding,
            "spent": f"Spent on checks so far: {self.minutes:g} min.",
            "left": left[:SHOWN],
            "more": f"and {more} more, each less likely" if more else "",
            "ranked": ranked,
        }

    def plain_copy(self) -> str:
        """What was observed and what is left, as HTML."""
        shows = {one[0]: dict(map(tuple, one[3])) for one in self.plan["checks"]}
        seen = "".join(
            f"<li>{escape(self.unit.faults.check_by_id(check).name)}: "
            f"{escape(shows[check].get(key, key))}</li>"
            for check, key in self._seen.items()
        )
        left = "".join(f"<li>{escape(name)} ({share})</li>" for name, share in self.view["left"])
        return (
            f"<p><b>{escape(self.finding)}</b> {escape(self.view['spent'])}</p>"
            f"<p>Observed:</p><ul>{seen}</ul><p>Explained by:</p><ul>{left}</ul>"
        )


def _short(outcome) -> str:
    """An outcome in a few words."""
    if len(outcome.signs) > 3:
        return f"{outcome.signs[0].words.capitalize()}, and {len(outcome.signs) - 1} more like it"
    return outcome.sentence.rstrip(".")


def _share(chance: float) -> str:
    return f"{chance:.0%}" if chance >= 0.005 else "under 1%"


def fault_board_rig(unit: Unit, observed: dict[str, str] | None = None) -> FaultBoard:
    """A fault board to try observations on.

    Parameters
    ----------
    unit : Unit
        The unit on the bench.
    observed : dict of str to str, optional
        Keys of outcomes by check, at first.

    Returns
    -------
    FaultBoard
        Something a notebook displays.

    Raises
    ------
    OutOfRangeError
        A check that the unit does not have, or an outcome that it cannot show.
    UnitFileError
        A unit without a faults section.
    """
    return FaultBoard(unit, observed)
