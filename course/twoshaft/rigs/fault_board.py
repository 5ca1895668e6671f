"""Fault board: tick what the checks showed; see what explains it and what to check next."""

from __future__ import annotations

from html import escape
from typing import Any

import traitlets

from twoshaft.errors import CourseError
from twoshaft.jobsheet.screen import Screen, script, styles
from twoshaft.models.faults import PASSES, Diagnosis, outcome_table
from twoshaft.units.unit import Unit

RIGS = "twoshaft.rigs"
PAIRS_SHOWN = 6


class FaultBoard(Screen):
    """All checks of a unit with what each can show, and the misbuilds that are left.

    Parameters
    ----------
    unit : Unit
        A unit with a section faults.
    observed : dict of str to str, optional
        Keys of outcomes by check, at first.
    """

    _esm = script("renderFaultBoard", (RIGS, "fault_board.js"))
    _css = styles((RIGS, "rigs.css"), (RIGS, "faults.css"))

    plan = traitlets.Dict().tag(sync=True)
    view = traitlets.Dict().tag(sync=True)

    def __init__(self, unit: Unit, observed: dict[str, str] | None = None) -> None:
        self.unit = unit
        self.search = Diagnosis(unit)
        for check, key in (observed or {}).items():
            self.search = self.search.observe(check, key)
        self._names = {one.id: one.name for one in unit.faults.misbuilds}
        super().__init__(plan={"checks": self._checks()}, view=self._view(None))

    def _checks(self) -> list[list[Any]]:
        """Each check with its minutes and with what single misbuilds can show in it."""
        table, found = outcome_table(self.unit), []
        for check in self.unit.faults.checks:
            shows = {PASSES: "As it should be"}
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
            self.search = Diagnosis(self.unit)
        elif kind == "observe":
            check, shown = message.get("check"), message.get("shown")
            known = {one[0]: [key for key, _ in one[3]] for one in self.plan["checks"]}
            if check not in known or shown not in ("", *known[check]):
                raise CourseError(
                    f"check {check!r} does not show {shown!r}", mend="choose from the list"
                )
            kept = {c: key for c, key in self.search.observed.items() if c != check}
            self.search = Diagnosis(self.unit, {**kept, check: shown} if shown else kept)
        else:
            return
        self.view = self._view(message.get("turn"))

    @property
    def finding(self) -> str:
        """What the observations leave, as a sentence."""
        found, seen = self.search.explanations, self.search.observed
        if not seen:
            return "No check is made yet: anything can be in the unit."
        if not found.sets:
            return "Nothing here explains all of that, not even two at once. Make the checks again."
        best = self.search.next_checks
        after = (
            f" Best next: {self._check(best[0].check)} ({best[0].minutes:g} min)."
            if best
            else " No check can tell more."
        )
        if all(key == PASSES for key in seen.values()):
            return f"Nothing wrong was seen yet.{after}"
        singles = len(found.singles)
        if not singles:
            pairs = len(found.doubles)
            word = "one pair does" if pairs == 1 else f"{pairs} pairs do"
            return f"No misbuild alone explains it; {word}.{after}"
        word = "One misbuild explains it" if singles == 1 else f"{singles} misbuilds explain it"
        return f"{word} alone.{after}"

    def _check(self, check: str) -> str:
        name = self.unit.faults.check_by_id(check).name
        return name[:1].lower() + name[1:]

    @property
    def minutes(self) -> float:
        """Time of the checks made [min]."""
        return sum(self.unit.faults.check_by_id(one).minutes for one in self.search.observed)

    def _view(self, turn: Any) -> dict[str, Any]:
        found, singles = self.search.explanations, []
        if not all(key == PASSES for key in self.search.observed.values()):
            least = [one for one in found.least if one]
            singles = [
                [
                    "; and ".join(self._names[m] for m in one),
                    _share(found.chances[found.sets.index(one)]),
                ]
                for one in least
                if len(one) == 1 or not found.singles
            ]
        more = max(0, len(singles) - PAIRS_SHOWN)
        ranked = [
            [one.check, f"{one.bits:.2f}", f"{one.bits_per_minute:.3f}"]
            for one in self.search.next_checks
        ]
        return {
            "turn": turn,
            "observed": dict(self.search.observed),
            "finding": self.finding,
            "spent": f"Spent on checks so far: {self.minutes:g} min.",
            "left": singles[:PAIRS_SHOWN],
            "more": f"and {more} more pairs, each less likely" if more else "",
            "ranked": ranked,
        }

    def plain_copy(self) -> str:
        """What was observed and what is left, as HTML."""
        shows = {one[0]: dict(map(tuple, one[3])) for one in self.plan["checks"]}
        seen = "".join(
            f"<li>{escape(self.unit.faults.check_by_id(check).name)}: "
            f"{escape(shows[check].get(key, key))}</li>"
            for check, key in self.search.observed.items()
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
