"""What the rules of a unit make certain, and what they leave to be chosen.

`certain_bonds` are pairs that hold in every correct order; `choices` are the either-or's that
need searching (`any of`, `not during`, holds with several givers or enders). Steps are
operations with `together` groups contracted.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from twoshaft.units.unit import Unit


@dataclass(frozen=True, slots=True)
class Bond:
    """Step ``earlier`` comes before step ``later``, because of ``reason``.

    ``section`` and ``entry`` name the rule, hold, clock or wait in the unit file.
    """

    earlier: str
    later: str
    section: str
    entry: str
    reason: str


@dataclass(frozen=True, slots=True)
class Choice:
    """One of ``alternatives`` must hold; each is a set of bonds that hold at once."""

    section: str
    entry: str
    reason: str
    alternatives: tuple[tuple[Bond, ...], ...]


def step_of(unit: Unit) -> dict[str, str]:
    """The step that each operation belongs to: its `together` group, or itself."""
    steps = {operation.id: operation.id for operation in unit.operations}
    for group in unit.together:
        steps.update((operation, group.id) for operation in group.operations)
    return steps


def certain_bonds(unit: Unit) -> tuple[Bond, ...]:
    """Every pair that one rule, hold, clock or wait alone makes certain."""
    steps = step_of(unit)
    return tuple(
        Bond(steps[earlier], steps[later], section, entry, reason)
        for earlier, later, section, entry, reason in _certain(unit)
        if earlier in steps and later in steps
    )


def _certain(unit: Unit) -> Iterator[tuple[str, str, str, str, str]]:
    for rule in unit.rules:
        if rule.earlier is not None:
            yield rule.earlier, rule.later, "rules", rule.id, rule.reason
    for hold in unit.holds:
        if len(hold.given_by) == len(hold.ended_by) == 1:
            giver, ender = hold.given_by[0], hold.ended_by[0]
            yield giver, ender, "holds", hold.id, hold.reason
            for needing in hold.needed_by:
                # an operation may end the hold by using it up
                if needing not in (giver, ender):
                    yield giver, needing, "holds", hold.id, hold.reason
                    yield needing, ender, "holds", hold.id, hold.reason
    for clock in unit.clocks:
        yield clock.starts, clock.ends, "clocks", clock.id, clock.reason
    for wait in unit.waits:
        yield wait.starts, wait.ends, "waits", wait.id, wait.reason


def choices(unit: Unit) -> tuple[Choice, ...]:
    """Everything that a search has to decide, in the order of the file."""
    steps = step_of(unit)
    holds = {hold.id: hold for hold in unit.holds}
    found: list[Choice] = []

    def add(section: str, entry: str, reason: str, *alternatives: list[tuple[str, str]]) -> None:
        made = tuple(
            tuple(Bond(steps[a], steps[b], section, entry, reason) for a, b in pairs)
            for pairs in alternatives
        )
        found.append(Choice(section, entry, reason, made))

    for rule in unit.rules:
        if rule.any_of:
            pairs = [[(earlier, rule.later)] for earlier in rule.any_of]
            add("rules", rule.id, rule.reason, *pairs)
        elif rule.not_during is not None:
            hold = holds[rule.not_during]
            # off for `later` = for every giver: not yet given, or ended in between
            for giver in hold.given_by:
                ended = [[(giver, ender), (ender, rule.later)] for ender in hold.ended_by]
                add("rules", rule.id, rule.reason, [(rule.later, giver)], *ended)
    for hold in unit.holds:
        if len(hold.given_by) == len(hold.ended_by) == 1:
            continue
        for needing in hold.needed_by:
            # on for `needing` = some giver comes before it with no ender in between
            alternatives: list[list[tuple[str, str]]] = []
            for giver in hold.given_by:
                ways: list[list[tuple[str, str]]] = [[(giver, needing)]]
                for ender in hold.ended_by:
                    if ender in (giver, needing):
                        continue
                    ways = [
                        [*way, pair] for way in ways for pair in ((ender, giver), (needing, ender))
                    ]
                alternatives += ways
            add("holds", hold.id, hold.reason, *alternatives)
    return tuple(found)


def search_size(unit: Unit) -> int:
    """How many yes-or-no decisions the search has to make.

    A choice of k counts k - 1, so the orders to try are at most 2 to this power.
    """
    return sum(len(choice.alternatives) - 1 for choice in choices(unit))
