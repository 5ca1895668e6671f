"""Search of the states that the hand can reach, with the shortest hand movement to each."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np

from twoshaft.models.shift.mechanism import Mechanism, State


@dataclass(frozen=True, eq=False)
class Reach:
    """What can be reached.

    Attributes
    ----------
    mechanism : Mechanism
    came_from : dict of State to State or None
        Every reached state and the one before it.
    first : dict of frozenset of str to State
        For every set of engaged gears, the first state reached with it; the empty set is neutral.

    Examples
    --------
    >>> from twoshaft.models.shift import mechanism
    >>> found = reach(mechanism(unit.shift))
    >>> sorted(sorted(gears) for gears in found.first if gears)
    [['fifth'], ['first'], ['fourth'], ['reverse'], ['second'], ['third']]
    >>> found.path(found.first[frozenset({"first"})]).tolist()
    [[0.0, 0.0], [-7.0, 0.0], [-7.0, 5.5]]
    """

    mechanism: Mechanism
    came_from: dict[State, State | None]
    first: dict[frozenset[str], State]

    def path(self, state: State) -> np.ndarray:
        """Hand movement to a state: corners as rows of (travel, turn) in mm."""
        states: list[State] = []
        at: State | None = state
        while at is not None:
            states.append(at)
            at = self.came_from[at]
        places = [(s[0], s[1]) for s in reversed(states)]
        corners = [places[0]]
        for a, b, c in zip(places, places[1:], places[2:], strict=False):
            if (b[0] - a[0], b[1] - a[1]) != (c[0] - b[0], c[1] - b[1]):
                corners.append(b)
        if len(places) > 1:
            corners.append(places[-1])
        grid = self.mechanism
        return np.array([(grid.travel_mm[i], grid.turn_mm[j]) for i, j in corners])

    def with_gear(self, gear: str) -> list[State]:
        """Every reached state in which exactly this gear is engaged."""
        wanted = frozenset([gear])
        engaged = {}
        for state in self.came_from:
            if state[2:] not in engaged:  # many places of the hand share these of the rails
                engaged[state[2:]] = self.mechanism.engaged(state) == wanted
        return [state for state in self.came_from if engaged[state[2:]]]


def reach(
    machine: Mechanism,
    starts: Iterable[State] | None = None,
    *,
    within_mm: tuple[float, float] | None = None,
    until: str | None = None,
    firm: bool = True,
    lifting: bool = True,
) -> Reach:
    """Find all that the hand can reach.

    Parameters
    ----------
    machine : Mechanism
    starts : iterable of State, optional
        States to begin from; the mechanism at rest when left out.
    within_mm : (float, float), optional
        Travel that the hand may not leave [mm]: a gate.
    until : str, optional
        Stop as soon as this gear is engaged.
    firm, lifting : bool
        Whether the hand may push firmly, and lift.

    Returns
    -------
    Reach

    Examples
    --------
    >>> from twoshaft.models.shift import mechanism
    >>> found = reach(mechanism(unit.shift), within_mm=(-2, 2))  # the hand stays in one gate
    >>> sorted(sorted(gears) for gears in found.first if gears)
    [['fourth'], ['third']]
    """
    level = list(machine.starts() if starts is None else starts)
    low, high = (-np.inf, np.inf) if within_mm is None else within_mm
    allowed = [low - 1e-9 <= x <= high + 1e-9 for x in machine.travel_mm]
    came_from: dict[State, State | None] = dict.fromkeys(level)
    first: dict[frozenset[str], State] = {}
    seen_places: dict[tuple[int, ...], frozenset[str]] = {}
    while level:  # all that is equally many steps away, in the order in which it was reached
        found = False
        for number, state in enumerate(level):
            gears = seen_places.get(state[2:])
            if gears is None:
                gears = seen_places[state[2:]] = machine.engaged(state)
            if gears not in first:
                first[gears] = state
                if until is not None and until in gears:
                    level, found = level[:number], True
                    break
        fresh = []
        for before, after in machine.steps(level, firm=firm, lifting=lifting):
            if after not in came_from and allowed[after[0]]:
                came_from[after] = before
                fresh.append(after)
        level = [] if found else fresh
    return Reach(machine, came_from, first)
