"""The mechanism on a grid: where each passive body can be, and where a move of the hand puts it."""

from __future__ import annotations

import math
from array import array
from collections.abc import Iterator
from dataclasses import dataclass, field
from functools import cached_property

import numpy as np

from twoshaft.errors import OutOfRangeError
from twoshaft.models.shift.bodies import overlaps
from twoshaft.units.kept import kept
from twoshaft.units.sections.shift import Axis, Body, Drive, Follows, Passive, Rail, Shift

MOVES = ((1, 0), (-1, 0), (0, 1), (0, -1))  # travel, turn
TABLES = 16
"""For so many surroundings of each passive body its tables are kept."""
PUSH_RATIO = 2
"""Most that a contact moves a passive body for each step of the hand.

A flat ramp pushes sideways less than the hand moves; a steep one jams by friction long before a
ratio of 2 (a wedge of 63 degrees). From memory of wedge mechanics, no source.
"""

State = tuple[int, ...]
"""Travel index, turn index, then the index of every passive body."""


@dataclass(frozen=True, eq=False)
class Mechanism:
    """A selector mechanism, ready to be searched. Make one with :func:`mechanism`.

    Attributes
    ----------
    shift : Shift
        The section it was made from.
    step_mm : float
        Grid step.
    travel_mm, turn_mm : ndarray
        Grid of the hand.
    places_mm : tuple of ndarray
        Grid of every passive body.
    free : tuple of ndarray of bool, shape (travel, turn, places)
        Where every passive body overlaps nothing that the hand carries.

    Examples
    --------
    >>> machine = mechanism(unit.shift)
    >>> [len(places) for places in machine.places_mm], len(machine.starts())
    ([29, 29, 29, 21], 1)
    >>> machine.engaged(machine.starts()[0])
    frozenset()
    """

    shift: Shift
    step_mm: float
    travel_mm: np.ndarray
    turn_mm: np.ndarray
    places_mm: tuple[np.ndarray, ...]
    free: tuple[np.ndarray, ...]
    following: tuple[array[int], ...] = field(repr=False)
    interlocks: tuple[tuple[int, int, list], ...] = field(repr=False)

    def engaged(self, state: State) -> frozenset[str]:
        """Gears that a state has engaged."""
        gears = set()
        for rail, index in self._rail_index:
            place = self.places_mm[index][state[2 + index]]
            if place >= rail.engaged_mm - 1e-9 and rail.high:
                gears.add(rail.high)
            elif place <= -rail.engaged_mm + 1e-9 and rail.low:
                gears.add(rail.low)
        return frozenset(gears)

    @cached_property
    def _rail_index(self) -> list[tuple[Rail, int]]:
        ids = [body.id for body in self.shift.passive]
        return [(rail, ids.index(rail.body)) for rail in self.shift.rails]

    def starts(self) -> tuple[State, ...]:
        """States to begin from: the hand at its start, bodies at rest.

        A body with a spring or notches has one place of rest; one without rests anywhere, and
        every such place is a start.
        """
        i = int(np.argmin(abs(self.travel_mm - self.shift.start_mm[0])))
        j = int(np.argmin(abs(self.turn_mm - self.shift.start_mm[1])))
        found: list[tuple[int, ...]] = [()]
        for body, places, free in zip(self.shift.passive, self.places_mm, self.free, strict=True):
            at_rest = np.flatnonzero(free[i, j])
            if not at_rest.size:
                return ()
            rest = _rest(body, places, at_rest)
            found = [(*done, int(k)) for done in found for k in rest]
        return tuple((i, j, *rest) for rest in found)

    def next_states(self, state: State) -> list[State]:
        """Every state that one step of the hand can lead to."""
        i, j = state[0], state[1]
        found = []
        for (di, dj), places in zip(MOVES, self.pushed(state), strict=True):
            if -1 in places:
                continue
            for p, q, fits in self.interlocks:
                if not fits[places[p]][places[q]]:
                    break
            else:
                found.append((i + di, j + dj, *places))
        return found

    def pushed(self, state: State) -> Iterator[tuple[int, ...]]:
        """Where each step of :data:`MOVES` leaves the passive bodies, -1 where one is stopped."""
        cell = state[0] * len(self.turn_mm) + state[1]
        by_body = []
        for table, places, place in zip(self.following, self.places_mm, state[2:], strict=True):
            at = (cell * len(places) + place) * len(MOVES)
            by_body.append(table[at : at + len(MOVES)])
        return zip(*by_body, strict=True)


def mechanism(shift: Shift, step_mm: float = 0.5) -> Mechanism:
    """Put a shift section on a grid; kept with the section.

    Parameters
    ----------
    shift : Shift
    step_mm : float
        Grid step [mm]; a halved step must give the same reach.

    Raises
    ------
    OutOfRangeError
        A step that is not between 0.05 and 2 mm.

    Examples
    --------
    >>> machine = mechanism(unit.shift, step_mm=1.0)
    >>> float(machine.travel_mm[0]), float(machine.travel_mm[-1])
    (-13.0, 13.0)
    """
    if not 0.05 <= step_mm <= 2:
        raise OutOfRangeError("grid step", f"{step_mm} mm", "0.05 to 2 mm", "this model")
    return _on_grid(shift, step_mm)


@kept()
def _on_grid(shift: Shift, step_mm: float) -> Mechanism:
    travel, turn = shift.travel_mm, shift.turn_mm
    fixed = any(body.follows is Follows.FIXED for body in shift.bodies)
    tables = []
    for body in shift.passive:
        near = tuple(other for other in shift.bodies if other.layer == body.layer)
        still = shift.bodies if fixed else ()
        tables.append(_tables(body, near, still, travel, turn, step_mm))
    places, free, following = zip(*tables, strict=True)
    return Mechanism(
        shift, step_mm, _grid(travel, step_mm), _grid(turn, step_mm), places, free, following,
        _interlocks(shift, places),
    )  # fmt: skip


@kept(most=TABLES)
def _tables(
    body: Passive,
    near: tuple[Body, ...],
    bodies: tuple[Body, ...],
    travel_mm: tuple[float, float],
    turn_mm: tuple[float, float],
    step_mm: float,
) -> tuple[np.ndarray, np.ndarray, array[int]]:
    """Where a passive body can be, where it is free, and where each step of the hand leaves it.

    Most misbuilds leave most bodies as they are: mechanisms share these tables, half a megabyte.

    Parameters
    ----------
    body : Passive
    near : tuple of Body
        What lies in its layer.
    bodies : tuple of Body
        Every body, where some are fixed and stop the hand; else none.
    travel_mm, turn_mm : (float, float)
        From where to where the hand goes.
    step_mm : float
    """
    travel, turn, place = (_grid(mm, step_mm) for mm in (travel_mm, turn_mm, body.range_mm))
    free = _free(near, body, travel, turn, place)
    free &= ~_stopped(bodies, travel, turn)[:, :, None]
    moved = np.stack([_following(body, place, free, move) for move in MOVES], axis=-1)
    # Flat: nested lists cost more to make than the tables to work out.
    return place, free, array("h", moved.astype(np.int16).tobytes())


def _grid(limits: tuple[float, float], step_mm: float) -> np.ndarray:
    low, high = limits
    return low + step_mm * np.arange(round((high - low) / step_mm) + 1)


def _place_of(follows: Follows, travel: np.ndarray, turn: np.ndarray):
    zero = np.zeros(())
    x = travel if follows in (Follows.HAND, Follows.TRAVEL) else zero
    y = turn if follows in (Follows.HAND, Follows.TURN) else zero
    return x, y


def _free(near: tuple[Body, ...], body: Passive, travel, turn, place) -> np.ndarray:
    x, y, q = travel[:, None, None], turn[None, :, None], place[None, None, :]
    own_x, own_y = (q, 0.0) if body.axis is Axis.TRAVEL else (0.0, q)
    hit = np.zeros((len(travel), len(turn), len(place)), dtype=bool)
    for other in near:
        at_x, at_y = _place_of(other.follows, x, y)
        hit |= overlaps(body.pieces, other.pieces, at_x - own_x, at_y - own_y)
    return ~hit


def _stopped(bodies: tuple[Body, ...], travel, turn) -> np.ndarray:
    """Where something that the hand carries runs into something fixed."""
    x, y = travel[:, None], turn[None, :]
    hit = np.zeros((len(travel), len(turn)), dtype=bool)
    for still in (b for b in bodies if b.follows is Follows.FIXED):
        for other in (b for b in bodies if b.follows is not Follows.FIXED):
            if still.layer == other.layer:
                hit |= overlaps(still.pieces, other.pieces, *_place_of(other.follows, x, y))
    return hit


def _interlocks(shift: Shift, places) -> tuple[tuple[int, int, list], ...]:
    """For every pin, the two rails' numbers and whether it fits, by their places."""
    ids = [body.id for body in shift.passive]
    result = []
    for pin in shift.interlocks:
        a, b = (ids.index(rail) for rail in pin.rails)
        flank = math.tan(math.radians(pin.ramp_deg))
        room_a, room_b = (
            np.maximum(0.0, pin.notch_mm - flank * abs(places[index])) for index in (a, b)
        )
        fits = room_a[:, None] + room_b[None, :] + pin.gap_mm >= pin.length_mm - 1e-9
        result.append((a, b, fits.tolist()))
    return tuple(result)


def _following(body: Passive, place, free, move) -> np.ndarray:
    """Where a step of the hand leaves the body: by hand cell and place, -1 where it is stopped."""
    there = np.zeros_like(free)
    (di, dj), (n, m) = move, free.shape[:2]
    src_i, dst_i = slice(max(di, 0), n + min(di, 0)), slice(max(-di, 0), n + min(-di, 0))
    src_j, dst_j = slice(max(dj, 0), m + min(dj, 0)), slice(max(-dj, 0), m + min(-dj, 0))
    there[dst_i, dst_j] = free[src_i, src_j]
    count = free.shape[2]
    number = np.arange(count)
    moved = np.where(there, number, -1)
    for push in range(1, PUSH_RATIO + 1):
        for sign in (1, -1):
            target = number + sign * push
            valid = (target >= 0) & (target < count)
            reachable = np.zeros_like(there)
            reachable[:, :, valid] = there[:, :, target[valid]]
            moved = np.where((moved < 0) & reachable, target, moved)
    moved[~free] = -1
    settled = _settled(body, place, there)
    i, j = np.indices(moved.shape[:2])[:]
    return np.where(moved < 0, -1, settled[i[..., None], j[..., None], np.maximum(moved, 0)])


def _settled(body: Passive, place, free) -> np.ndarray:
    """Where the drive takes the body from every free place, without passing a blocked one."""
    count = len(place)
    settled = np.broadcast_to(np.arange(count), free.shape).copy()
    if body.drive is Drive.STAYS:
        return settled
    if body.drive in (Drive.LOW, Drive.HIGH):
        order = range(1, count) if body.drive is Drive.LOW else range(count - 2, -1, -1)
        back = -1 if body.drive is Drive.LOW else 1
        for k in order:
            settled[:, :, k] = np.where(
                free[:, :, k] & free[:, :, k + back], settled[:, :, k + back], k
            )
        return settled
    for k in range(count):
        home = _home(body, place, k)
        step = int(np.sign(home - k))
        going = np.ones(free.shape[:2], dtype=bool)
        for at in range(k, home, step or 1):
            going &= free[:, :, at + step]
            settled[:, :, k] = np.where(going, at + step, settled[:, :, k])
    return settled


def _home(body: Passive, place: np.ndarray, k: int) -> int:
    """The notch that pulls from place k; k itself where none does."""
    nearest = min(body.notches_mm, key=lambda notch: abs(notch - place[k]))
    if abs(nearest - place[k]) > body.snap_mm + 1e-9:
        return k
    return int(np.argmin(abs(place - nearest)))


def _rest(body: Passive, place: np.ndarray, free_places: np.ndarray):
    if body.drive is Drive.LOW:
        return [free_places[0]]
    if body.drive is Drive.HIGH:
        return [free_places[-1]]
    if body.drive is Drive.NOTCHES:
        middle = min(body.notches_mm, key=abs)
        return [min(free_places, key=lambda k: abs(place[k] - middle))]
    if body.axis is Axis.TURN:  # a rail without its ball is begun in neutral, as it is fitted
        return [min(free_places, key=lambda k: abs(place[k]))]
    return list(free_places)
