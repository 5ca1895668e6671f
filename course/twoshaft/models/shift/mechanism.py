"""The mechanism on a grid: where each passive body can be, and where a move of the hand puts it."""

from __future__ import annotations

import math
from array import array
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from functools import cached_property

import numpy as np

from twoshaft.errors import OutOfRangeError
from twoshaft.models.shift.bodies import TOUCH_MM, overlaps
from twoshaft.units.kept import kept
from twoshaft.units.sections.shift import Axis, Body, Drive, Follows, Passive, Rail, Shift

MOVES = ((1, 0), (-1, 0), (0, 1), (0, -1))  # travel, turn
UP, DOWN = (0, 0, 1), (0, 0, -1)
"""The third way of the hand: what it lifts is down or up; on the way nothing may be above it."""
TABLES = 16
"""For so many surroundings of each passive body its tables are kept."""
MANY = 24
"""From so many states on, their steps are looked up together."""
PUSH_RATIO = 2
"""Most that a contact moves a passive body for each step of the hand.

A flat ramp pushes sideways less than the hand moves; a steep one jams by friction long before a
ratio of 2 (a wedge of 63 degrees). From memory of wedge mechanics, no source.
"""

State = tuple[int, ...]
"""Travel index, turn index, the index of every passive body; where there is a lift, 1 when up."""


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
    free : tuple of ndarray of bool, shape (lift, travel, turn, places)
        Where every passive body overlaps nothing that the hand carries; lift has one level, or
        three: down, up, and on the way.
    light : tuple of array
        Where each step of a hand that does not push firmly leaves every passive body.
    following : tuple of array
        The same for a firm hand.

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
    light: tuple[array[int], ...] = field(repr=False)
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

    @cached_property
    def _grid(self) -> tuple[int, int, tuple[int, ...]]:
        """Cells of one level of the lift (0 without one), cells across, entries a cell by body."""
        wide = len(self.turn_mm)
        level = len(self.travel_mm) * wide if self.lifts else 0
        return level, wide, tuple(len(places) * len(MOVES) for places in self.places_mm)

    @cached_property
    def lifts(self) -> bool:
        """Whether the hand can lift something."""
        return self.shift.lift_mm > 0

    @cached_property
    def firm(self) -> bool:
        """Whether something gives way to a firm push alone."""
        return self.light is not self.following

    def up(self, state: State) -> bool:
        """Whether something is lifted."""
        return self.lifts and state[-1] == 1

    def starts(self) -> tuple[State, ...]:
        """States to begin from: the hand at its start, bodies at rest.

        A body with a spring or notches has one place of rest; one without rests anywhere, and
        every such place is a start.
        """
        i = int(np.argmin(abs(self.travel_mm - self.shift.start_mm[0])))
        j = int(np.argmin(abs(self.turn_mm - self.shift.start_mm[1])))
        found: list[tuple[int, ...]] = [()]
        for body, places, free in zip(self.shift.passive, self.places_mm, self.free, strict=True):
            at_rest = np.flatnonzero(free[0, i, j])
            if not at_rest.size:
                return ()
            rest = _rest(body, places, at_rest)
            found = [(*done, int(k)) for done in found for k in rest]
        end = (0,) if self.lifts else ()
        return tuple((i, j, *rest, *end) for rest in found)

    def next_states(self, state: State, *, firm: bool = True, lifting: bool = True) -> list[State]:
        """Every state that one step of the hand can lead to.

        Parameters
        ----------
        state : State
        firm : bool
            Whether the hand may push firmly.
        lifting : bool
            Whether it may lift and let down.
        """
        i, j = state[0], state[1]
        end = state[2 + len(self.places_mm) :]
        found = []
        for (di, dj), places in zip(MOVES, self.pushed(state, firm=firm), strict=True):
            if -1 in places:
                continue
            for p, q, fits in self.interlocks:
                if not fits[places[p]][places[q]]:
                    break
            else:
                found.append((i + di, j + dj, *places, *end))
        if lifting and end and (other := self.lifted(state)):
            found.append(other)
        return found

    def steps(
        self, states: Sequence[State], *, firm: bool = True, lifting: bool = True
    ) -> Iterator[tuple[State, State]]:
        """Every step of the hand from some states, as the state before and the one after.

        What several of them lead to may be told once, from the first of them.

        Parameters
        ----------
        states : sequence of State
        firm, lifting : bool
            As in :meth:`next_states`, which gives them one by one, in the same order.
        """
        if len(states) < MANY:
            for state in states:
                for found in self.next_states(state, firm=firm, lifting=lifting):
                    yield state, found
            return
        at = np.array(states, dtype=np.int64)
        level, wide, strides = self._grid
        cell = at[:, 0] * wide + at[:, 1] + (at[:, -1] * level if level else 0)
        moves = np.arange(len(MOVES))
        columns = [at[:, :1] + [di for di, _ in MOVES], at[:, 1:2] + [dj for _, dj in MOVES]]
        goes = np.ones((len(states), len(MOVES)), dtype=bool)
        tables = self._firm_flat if firm else self._light_flat
        for n, (table, stride) in enumerate(zip(tables, strides, strict=True), 2):
            columns.append(table[(cell * stride + at[:, n] * len(MOVES))[:, None] + moves])
            goes &= columns[-1] >= 0
        for p, q, fits in self.interlocks:
            goes &= np.array(fits, dtype=bool)[columns[2 + p], columns[2 + q]]
        if level:
            columns.append(np.broadcast_to(at[:, -1:], goes.shape))
        after = np.stack(columns, axis=-1)
        if level and lifting:
            to, goes_up = 1 - at[:, -1], np.ones(len(states), dtype=bool)
            for n, free in enumerate(self.free, 2):
                i, j, place = at[:, 0], at[:, 1], at[:, n]
                goes_up &= free[2, i, j, place] & free[to, i, j, place]
            lifted = np.column_stack([at[:, :-1], to])
            after = np.concatenate([after, lifted[:, None]], axis=1)
            goes = np.column_stack([goes, goes_up])
        numbers, reached = np.nonzero(goes)[0], after[goes]
        once = np.sort(np.unique(reached @ self._radix, return_index=True)[1])
        yield from zip(
            map(states.__getitem__, numbers[once].tolist()),
            map(tuple, reached[once].tolist()),
            strict=True,
        )

    @cached_property
    def _radix(self) -> np.ndarray:
        """What makes one whole number of a state, exactly, however large."""
        counts = [len(self.turn_mm), *map(len, self.places_mm), *([2] if self.lifts else [])]
        sizes = [math.prod(counts[n:]) for n in range(len(counts) + 1)]
        return np.array(sizes, dtype=np.int64 if sizes[0] * len(self.travel_mm) < 2**62 else object)

    @cached_property
    def _firm_flat(self) -> list[np.ndarray]:
        return [np.frombuffer(table, dtype=np.int16) for table in self.following]

    @cached_property
    def _light_flat(self) -> list[np.ndarray]:
        return [np.frombuffer(table, dtype=np.int16) for table in self.light]

    def lifted(self, state: State) -> State | None:
        """The state with what is lifted let down, or lifted; None where something is in the way."""
        to = 1 - state[-1]
        i, j = state[0], state[1]
        stopped = any(
            not (free[2, i, j, place] and free[to, i, j, place])
            for free, place in zip(self.free, state[2:], strict=False)
        )
        return None if stopped else (*state[:-1], to)

    def walls(self, i: int, j: int, level: int) -> tuple[str, ...]:
        """Ids of fixed bodies that the hand would run into at a place; level 2 is on the way up."""
        lift = ((0.0, 0.0), (self.shift.lift_mm,) * 2, (0.0, self.shift.lift_mm))[level]
        at = np.array(self.travel_mm[i]), np.array(self.turn_mm[j])
        return tuple(
            still.id
            for still in self.shift.bodies
            if still.follows is Follows.FIXED
            and _run_into(still, self.shift.bodies, *at, lift).any()
        )

    def pushed(self, state: State, *, firm: bool = True) -> Iterator[tuple[int, ...]]:
        """Where each step of :data:`MOVES` leaves the passive bodies, -1 where one is stopped."""
        level, wide, strides = self._grid
        cell = state[0] * wide + state[1] + (state[-1] * level if level else 0)
        tables = self.following if firm else self.light
        by_body = []
        for table, stride, place in zip(tables, strides, state[2:], strict=False):
            at = cell * stride + place * 4
            by_body.append(table[at : at + 4])
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
    tables, firm = [], {}
    for n, body in enumerate(shift.passive):
        near = tuple(other for other in shift.bodies if other.layer == body.layer)
        still = shift.bodies if fixed else ()
        pushes = 0 if body.gives_at_n > shift.hand_n else PUSH_RATIO
        at = (body, near, still, travel, turn, shift.lift_mm, step_mm)
        tables.append(_tables(*at, pushes))
        if shift.hand_n < body.gives_at_n <= (shift.firm_n or 0):
            firm[n] = _tables(*at, PUSH_RATIO)[2]
    places, free, light = zip(*tables, strict=True)
    following = tuple(firm.get(n, table) for n, table in enumerate(light)) if firm else light
    return Mechanism(
        shift, step_mm, _grid(travel, step_mm), _grid(turn, step_mm), places, free, light,
        following, _interlocks(shift, places),
    )  # fmt: skip


@kept(most=TABLES)
def _tables(
    body: Passive,
    near: tuple[Body, ...],
    bodies: tuple[Body, ...],
    travel_mm: tuple[float, float],
    turn_mm: tuple[float, float],
    lift_mm: float,
    step_mm: float,
    pushes: int,
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
    lift_mm : float
        How far it lifts.
    step_mm : float
    pushes : int
        Most that a contact moves the body for each step of the hand.
    """
    travel, turn, place = (_grid(mm, step_mm) for mm in (travel_mm, turn_mm, body.range_mm))
    levels, following = [], []
    for lift in ((0.0, 0.0), (lift_mm, lift_mm), (0.0, lift_mm)) if lift_mm else ((0.0, 0.0),):
        free = _free(near, body, travel, turn, place, lift)
        free &= ~_stopped(bodies, travel, turn, lift)[:, :, None]
        levels.append(free)
        if lift[0] == lift[1]:
            moved = np.stack([_following(body, place, free, m, pushes) for m in MOVES], axis=-1)
            following.append(moved.astype(np.int16).tobytes())
    # Flat: nested lists cost more to make than the tables to work out.
    return place, np.stack(levels), array("h", b"".join(following))


def _heights_meet(one: Body, other: Body | Passive, lift: tuple[float, float]) -> bool:
    """Whether two bodies stand at one height, while what is lifted is so far up."""
    (low, high), (bottom, top) = _height(one, lift), _height(other, lift)
    return low < top - TOUCH_MM and bottom < high - TOUCH_MM


def _height(body: Body | Passive, lift: tuple[float, float]) -> tuple[float, float]:
    """From where to where a body stands, or sweeps on its way up."""
    if body.height_mm is None:
        return -math.inf, math.inf
    low, high = body.height_mm
    up = isinstance(body, Body) and body.lifts
    return (low + lift[0], high + lift[1]) if up else (low, high)


def _grid(limits: tuple[float, float], step_mm: float) -> np.ndarray:
    low, high = limits
    return low + step_mm * np.arange(round((high - low) / step_mm) + 1)


def _place_of(follows: Follows, travel: np.ndarray, turn: np.ndarray):
    zero = np.zeros(())
    x = travel if follows in (Follows.HAND, Follows.TRAVEL) else zero
    y = turn if follows in (Follows.HAND, Follows.TURN) else zero
    return x, y


def _free(near: tuple[Body, ...], body: Passive, travel, turn, place, lift) -> np.ndarray:
    x, y, q = travel[:, None, None], turn[None, :, None], place[None, None, :]
    own_x, own_y = (q, 0.0) if body.axis is Axis.TRAVEL else (0.0, q)
    hit = np.zeros((len(travel), len(turn), len(place)), dtype=bool)
    for other in near:
        if not _heights_meet(other, body, lift):
            continue
        at_x, at_y = _place_of(other.follows, x, y)
        hit |= overlaps(body.pieces, other.pieces, at_x - own_x, at_y - own_y)
    return ~hit


def _stopped(bodies: tuple[Body, ...], travel, turn, lift) -> np.ndarray:
    """Where something that the hand carries runs into something fixed."""
    hit = np.zeros((len(travel), len(turn)), dtype=bool)
    for still in (b for b in bodies if b.follows is Follows.FIXED):
        hit |= _run_into(still, bodies, travel[:, None], turn[None, :], lift)
    return hit


def _run_into(still: Body, bodies: tuple[Body, ...], x, y, lift) -> np.ndarray:
    """Where something that the hand carries runs into one fixed body."""
    hit = np.zeros(np.broadcast(x, y).shape, dtype=bool)
    for other in (b for b in bodies if b.follows is not Follows.FIXED):
        if still.layer == other.layer and _heights_meet(still, other, lift):
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


def _following(body: Passive, place, free, move, pushes: int) -> np.ndarray:
    """Where a step of the hand leaves the body: by hand cell and place, -1 where it is stopped."""
    there = np.zeros_like(free)
    (di, dj), (n, m) = move, free.shape[:2]
    src_i, dst_i = slice(max(di, 0), n + min(di, 0)), slice(max(-di, 0), n + min(-di, 0))
    src_j, dst_j = slice(max(dj, 0), m + min(dj, 0)), slice(max(-dj, 0), m + min(-dj, 0))
    there[dst_i, dst_j] = free[src_i, src_j]
    count = free.shape[2]
    number = np.arange(count)
    moved = np.where(there, number, -1)
    for push in range(1, pushes + 1):
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
