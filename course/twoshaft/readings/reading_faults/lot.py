"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property
from itertools import combinations

from twoshaft.models.faults import Table, indistinguishable, outcome_table
from twoshaft.models.faults.built import touches
from twoshaft.questions import bank_of
from twoshaft.readings.lots import Lot as CommonLot
from twoshaft.readings.reading_faults.given import Lettered, Shown
from twoshaft.units.kept import kept
from twoshaft.units.unit import Unit

BANK = bank_of("reading-faults")
LETTERS = "ABCDEFGH"
"""What misbuilds and steps are called on one sheet: others on the next, so that a letter says
nothing of the thing."""


class Lot(CommonLot):
    """One learner's draw."""

    NEEDS = ("faults", "gear_train", "bearings", "shift")
    LACKS = "has too few assembly faults or checks for the task"
    MEND = "describe more of them in its section faults, or leave this module out"

    @cached_property
    def table(self) -> Table:
        """What every misbuild shows in every check."""
        return outcome_table(self.unit)

    @cached_property
    def silent(self) -> list[str]:
        """Misbuilds that no check shows."""
        groups = indistinguishable(self.unit)
        return [one for group in groups if group.silent for one in group.misbuilds]

    @cached_property
    def alike(self) -> list[tuple[str, ...]]:
        """Groups of misbuilds that show, and show the same."""
        return [group.misbuilds for group in indistinguishable(self.unit) if not group.silent]

    @cached_property
    def told(self) -> list[str]:
        """Misbuilds that some check shows, in the unit's order."""
        return [one.id for one in self.unit.faults.misbuilds if one.id not in self.silent]

    @cached_property
    def apart(self) -> list[str]:
        """Misbuilds that the checks tell from every other."""
        grouped = {one for group in self.alike for one in group}
        return [one for one in self.told if one not in grouped]

    @cached_property
    def pairs(self) -> list[tuple[str, str]]:
        """Two misbuilds that show in checks of their own; no single one shows the same."""
        return list(_pairs(self.unit, tuple(self.apart)))

    def key(self, misbuild: str, check: str) -> str:
        """What a check shows of one misbuild, as a key."""
        return self.table.outcome((misbuild,), check).key

    def failed(self, *misbuilds: str) -> list[str]:
        """Checks that some misbuilds together do not pass, in the unit's order."""
        chosen = tuple(misbuilds)
        return [c for c in self.table.checks if not self.table.outcome(chosen, c).passes]

    def kinds(self, misbuild: str) -> frozenset[str]:
        """What a misbuild touches."""
        return touches(self.unit, self.unit.faults.misbuild_by_id(misbuild))

    def lettered(self, misbuilds: Sequence[str]) -> tuple[Lettered, ...]:
        """Misbuilds with letters, in the order in which they are given."""
        names = [self.unit.faults.misbuild_by_id(one).name for one in misbuilds]
        return tuple(
            Lettered(one, letter, name)
            for one, letter, name in zip(misbuilds, LETTERS, names, strict=False)
        )

    def minutes(self, check: str) -> float:
        """Time of a check [min]."""
        return self.unit.faults.check_by_id(check).minutes

    def record(self, misbuilds: Sequence[str], checks: Sequence[str]) -> tuple[Shown, ...]:
        """What each check shows of some misbuilds together."""
        rows = []
        for check in checks:
            shown = self.table.outcome(tuple(misbuilds), check)
            name = self.unit.faults.check_by_id(check).name
            rows.append(Shown(check, name, shown.key, say(shown)))
        return tuple(rows)


@kept()
def _pairs(unit: Unit, apart: tuple[str, ...]) -> tuple[tuple[str, str], ...]:
    table = outcome_table(unit)
    alone = table.codes[[row for row, chosen in enumerate(table.sets) if len(chosen) == 1]]
    passes = table.codes[table.row(())]
    failed = {one: table.codes[table.row((one,))] != passes for one in apart}
    known = set(table.sets)
    return tuple(
        pair
        for pair in combinations(apart, 2)
        if pair in known
        and not (failed[pair[0]] & failed[pair[1]]).any()
        and not (alone == table.codes[table.row(pair)]).all(axis=1).any()
    )


def say(outcome) -> str:
    """What a check shows, in words short enough for a table."""
    if len(outcome.signs) > 3:
        return f"{outcome.signs[0].words.capitalize()}; and {len(outcome.signs) - 1} more like it."
    return outcome.sentence


def small(name: str) -> str:
    """A name as it stands inside a sentence."""
    return name[:1].lower() + name[1:]
