"""Work of the hand in words: moves as short codes, and what each brings about on the mechanism.

A move says what the hand wants, as "slide to the gate of fifth and reverse". Where it ends is
found by going through :meth:`Mechanism.next_states` one step at a time; stopped on the straight
way, the hand feels around within the gate, as a hand does.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Any

import numpy as np

from twoshaft.errors import OutOfRangeError
from twoshaft.models.shift.direct import gate_of, rail_of
from twoshaft.models.shift.mechanism import MOVES, Mechanism, State, mechanism
from twoshaft.models.shift.misbuild import with_misbuilds
from twoshaft.models.shift.proof import held
from twoshaft.units.kept import kept
from twoshaft.units.sections.shift import Axis, Body, Drive, Interlock, Passive, Shift

HIGH, LOW, NEUTRAL, LET_GO = "turn:high", "turn:low", "neutral", "let-go"
LIFT, LOWER = "lift", "lower"
FIRM = "firm:"
"""What the code of a slide or turn begins with that is made with a firm push."""
SLACK_MM = 2.0
"""How far the hand gives way in turn while it slides from gate to gate."""
FEEL_MM = 1.0
"""How far the hand feels around when it turns between two gates."""
MOST_BRANCHES = 64


@dataclass(frozen=True)
class Move:
    """One move of the hand: its code, its words, where it aims (None: stays as it is) [mm].

    Examples
    --------
    >>> [move.label for move in hand_moves(unit.shift)][-2:]
    ['Turn back to neutral', 'Let go of the lever and shake the shaft']
    """

    code: str
    label: str
    travel_mm: float | None = None
    turn_mm: float | None = None


@dataclass(frozen=True)
class Felt:
    """What the hand feels at the end of a move.

    Attributes
    ----------
    stopped : bool
        Whether it did not get where it wanted.
    gears : frozenset of str
        Gears engaged now.
    held : bool or None
        After letting go: whether everything engaged stays; None for other moves.

    Examples
    --------
    >>> follow(fitted(unit.shift), ["at:gate-first-second", "turn:high"])[-1].felt
    (Felt(stopped=False, gears=frozenset({'first'}), held=None),)
    """

    stopped: bool
    gears: frozenset[str]
    held: bool | None = None


@dataclass(frozen=True)
class Done:
    """One move that was made.

    Attributes
    ----------
    code : str
    felt : tuple of Felt
        Every way that it can turn out; more than one where a part without its spring may have
        lain in several places.
    place_mm : (float, float)
        Where the hand ended, travel and turn.
    blocked_by : tuple of str
        Ids of bodies and pins that stopped it.

    Examples
    --------
    >>> done = follow(fitted(unit.shift), ["turn:high", "at:gate-first-second"])[-1]
    >>> done.felt[0].stopped, done.place_mm, done.blocked_by
    (True, (-3.0, 6.0), ('rail-first-second',))
    """

    code: str
    felt: tuple[Felt, ...]
    place_mm: tuple[float, float]
    blocked_by: tuple[str, ...] = ()


@dataclass(frozen=True)
class Line:
    """A line of a record: a move, and the one way that it turned out, as :class:`Felt` has it.

    Examples
    --------
    >>> write_record(follow(fitted(unit.shift), ["turn:high"]))
    (Line(move='turn:high', stopped=False, gears=('third',), held=None, place_mm=(0.0, 8.0)),)
    """

    move: str
    stopped: bool
    gears: tuple[str, ...]
    held: bool | None
    place_mm: tuple[float, float]


def hand_moves(shift: Shift) -> tuple[Move, ...]:
    """Every move that a hand test is made of, in the order in which a form lists them.

    Examples
    --------
    >>> [move.code for move in hand_moves(unit.shift)][:2]
    ['at:gate-first-second', 'at:gate-third-fourth']
    """
    gates = sorted(shift.gates, key=lambda gate: gate.at_mm)
    moves = [Move(f"at:{g.id}", f"Slide to the {_small(g.name)}", g.at_mm, None) for g in gates]
    for a, b in pairwise(gates):
        label = f"Slide half-way from {_of_gate(shift, a.id)} to {_of_gate(shift, b.id)}"
        moves.append(Move(f"at:{a.id}+{b.id}", label, (a.at_mm + b.at_mm) / 2, None))
    turns = []
    for code, end in ((HIGH, shift.turn_mm[1]), (LOW, shift.turn_mm[0])):
        towards = " – ".join(_gears_at(shift, code)) or "the side without gears"
        turns.append(Move(code, f"Turn towards {towards}", None, end))
    moves += turns
    if shift.firm_n is not None:
        moves += [
            Move(f"{FIRM}at:{g.id}", f"Push firmly to the {_small(g.name)}", g.at_mm, None)
            for g in gates
        ]
        moves += [
            Move(FIRM + one.code, f"{one.label}, pushing firmly", None, one.turn_mm)
            for one in turns
        ]
    if shift.lift_mm:
        moves.append(Move(LIFT, f"Lift {shift.lift_name}"))
        moves.append(Move(LOWER, f"Let {shift.lift_name} down"))
    moves.append(Move(NEUTRAL, "Turn back to neutral", None, shift.start_mm[1]))
    moves.append(Move(LET_GO, "Let go of the lever and shake the shaft"))
    return tuple(moves)


def _gears_at(shift: Shift, code: str) -> tuple[str, ...]:
    """Gears at one end of the rails, in the order of the gates."""
    at = {gate.id: gate.at_mm for gate in shift.gates}
    rails = sorted(shift.rails, key=lambda rail: at[rail.gate])
    return tuple(g for rail in rails if (g := rail.high if code == HIGH else rail.low))


def gate_plan(shift: Shift) -> dict[str, Any]:
    """The gate as a picture needs it: gates, gears, and where each move aims [mm].

    Examples
    --------
    >>> plan = gate_plan(unit.shift)
    >>> plan["gears"][:2]
    [['first', -10.0, 9.0], ['second', -10.0, -9.0]]
    >>> plan["aims"]["turn:high"]
    [None, 9.0]
    """
    at = {gate.id: gate.at_mm for gate in shift.gates}
    low, high = shift.turn_mm
    gears = [
        [gear, at[rail.gate], turn]
        for rail in shift.rails
        for gear, turn in ((rail.high, high), (rail.low, low))
        if gear
    ]
    aims = {move.code: [move.travel_mm, move.turn_mm] for move in hand_moves(shift)}
    turn_mm = list(shift.turn_mm)
    return {"gates": sorted(at.values()), "turn_mm": turn_mm, "gears": gears, "aims": aims}


def write_record(made: Sequence[Done]) -> tuple[Line, ...]:
    """What was done and felt as it is written down, each move with the first way it turned out.

    Examples
    --------
    >>> record = write_record(follow(fitted(unit.shift), ["turn:low", "let-go"]))
    >>> [(line.move, line.gears, line.held) for line in record]
    [('turn:low', ('fourth',), None), ('let-go', ('fourth',), True)]
    """
    lines = []
    for one in made:
        felt = one.felt[0]
        gears = tuple(sorted(felt.gears))
        lines.append(Line(one.code, felt.stopped, gears, felt.held, one.place_mm))
    return tuple(lines)


def read_record(record: Iterable[Line]) -> tuple[Done, ...]:
    """The work of the hand from a record of it.

    Examples
    --------
    >>> made = follow(fitted(unit.shift), ["turn:low"])
    >>> read_record(write_record(made)) == made
    True
    """
    return tuple(
        Done(line.move, (Felt(line.stopped, frozenset(line.gears), line.held),), line.place_mm)
        for line in record
    )


def _of_gate(shift: Shift, gate: str) -> str:
    """A gate by its gears."""
    rails = [rail for rail in shift.rails if rail.gate == gate]
    return " – ".join(g for rail in rails for g in (rail.high, rail.low) if g)


def turn_towards(shift: Shift, gear: str) -> str:
    """Code of the turn that a gear needs.

    Examples
    --------
    >>> turn_towards(unit.shift, "fifth"), turn_towards(unit.shift, "reverse")
    ('turn:high', 'turn:low')
    """
    return HIGH if rail_of(shift, gear).high == gear else LOW


def step(
    machine: Mechanism, state: State, move: tuple[int, int], *, firm: bool = False
) -> State | None:
    """One step of the hand; None where it is stopped.

    Examples
    --------
    >>> machine = fitted(unit.shift)
    >>> state = machine.starts()[0]
    >>> state[:2], step(machine, state, (0, 1))[:2]
    ((26, 18), (26, 19))
    """
    target = (state[0] + move[0], state[1] + move[1])
    after = machine.next_states(state, firm=firm, lifting=False)
    return next((s for s in after if s[:2] == target), None)


def blocked_by(
    machine: Mechanism, state: State, move: tuple[int, int], *, firm: bool = False
) -> tuple[str, ...]:
    """Ids of what stops a step of the hand: bodies in the way, pins that hold a rail.

    Empty when nothing stops it, or only the end of the hand's own way does.

    Examples
    --------
    >>> machine = fitted(unit.shift)
    >>> in_third, _ = pull(machine, machine.starts()[0], (0.0, 8.0))
    >>> stopped, _ = pull(machine, in_third, (-10.0, 8.0))
    >>> blocked_by(machine, stopped, (-1, 0))
    ('rail-first-second',)
    """
    if step(machine, state, move, firm=firm) is not None:
        return ()
    i, j = state[0] + move[0], state[1] + move[1]
    if not (0 <= i < len(machine.travel_mm) and 0 <= j < len(machine.turn_mm)):
        return ()
    if walls := machine.walls(i, j, int(machine.up(state))):
        return walls
    after = list(machine.pushed(state, firm=firm))[MOVES.index(move)]
    bodies = [b.id for b, to in zip(machine.shift.passive, after, strict=True) if to == -1]
    if bodies:
        return tuple(bodies)
    return tuple(
        pin.id
        for pin, (p, q, fits) in zip(machine.shift.interlocks, machine.interlocks, strict=True)
        if not fits[after[p]][after[q]]
    )


def pull(
    machine: Mechanism, state: State, to_mm: tuple[float, float], *, firm: bool = False
) -> tuple[State, bool]:
    """Pull the hand straight towards a place; where it is stopped it slides along.

    Parameters
    ----------
    machine : Mechanism
    state : State
    to_mm : (float, float)
        Travel and turn wanted [mm].
    firm : bool
        Whether it pushes firmly.

    Returns
    -------
    State
        Where the hand ends.
    bool
        Whether it got there.

    Examples
    --------
    >>> machine = fitted(unit.shift)
    >>> state, there = pull(machine, machine.starts()[0], (0.0, unit.shift.turn_mm[1]))
    >>> sorted(machine.engaged(state)), there
    (['third'], False)
    """
    goal = _cell(machine, to_mm)
    while True:
        di, dj = goal[0] - state[0], goal[1] - state[1]
        wanted = [(int(np.sign(di)), 0)] if di else []
        if dj:
            wanted.insert(0 if abs(dj) >= abs(di) else 1, (0, int(np.sign(dj))))
        after = next((s for move in wanted if (s := step(machine, state, move, firm=firm))), None)
        if after is None:
            return state, not wanted
        state = after


def follow(machine: Mechanism, moves: Sequence[str]) -> tuple[Done, ...]:
    """Make a list of moves on a mechanism, from rest.

    Parameters
    ----------
    machine : Mechanism
    moves : sequence of str
        Codes from :func:`hand_moves`.

    Returns
    -------
    tuple of Done
        One for each move.

    Raises
    ------
    OutOfRangeError
        A code that is no move of this mechanism.

    Examples
    --------
    >>> made = follow(fitted(unit.shift), ["at:gate-fifth-reverse", "turn:high", "turn:low"])
    >>> [say_felt(one.felt[0]) for one in made]
    ['it goes; no gear is in', 'it goes; fifth is in', 'it is stopped; no gear is in']
    """
    states = machine.starts()
    done = []
    for code in moves:
        states, one = make_move(machine, states, code)
        done.append(one)
    return tuple(done)


@kept(most=4096)
def make_move(
    machine: Mechanism, states: tuple[State, ...], code: str
) -> tuple[tuple[State, ...], Done]:
    """Make one move from every state that the mechanism may be in.

    Parameters
    ----------
    machine : Mechanism
    states : tuple of State
    code : str
        A code from :func:`hand_moves`.

    Returns
    -------
    tuple of State
        The states that it may be in afterwards.
    Done

    Examples
    --------
    >>> machine = fitted(unit.shift)
    >>> states, done = make_move(machine, machine.starts(), "turn:high")
    >>> say_felt(done.felt[0])
    'it goes; third is in'
    """
    known = {move.code: move for move in hand_moves(machine.shift)}
    if code not in known:
        raise OutOfRangeError("move", code, ", ".join(known), "the unit file")
    move = known[code]
    after: dict[State, None] = {}
    felt: dict[Felt, None] = {}
    blocked: tuple[str, ...] = ()
    for state in states:
        end, stopped = _made(machine, state, move)
        gears = machine.engaged(end)
        stays = all(held(machine, end, gear) for gear in gears) if code == LET_GO else None
        after[end] = None
        felt[Felt(stopped, gears, stays)] = None
        if stopped and not blocked:
            blocked = _stopped_by(machine, end, move)
    ends = tuple(after)[:MOST_BRANCHES]
    last = ends[-1]
    place = (float(machine.travel_mm[last[0]]), float(machine.turn_mm[last[1]]))
    return ends, Done(code, tuple(felt), place, blocked)


def _stopped_by(machine: Mechanism, state: State, move: Move) -> tuple[str, ...]:
    """Ids of what stops a move at its end."""
    if move.code in (LIFT, LOWER):
        i, j = state[:2]
        return () if not machine.lifts else machine.walls(i, j, 2)
    firm = move.code.startswith(FIRM)
    return blocked_by(machine, state, _way(machine, state, move), firm=firm)


def _small(name: str) -> str:
    return name[:1].lower() + name[1:]


def _cell(machine: Mechanism, place_mm: tuple[float, float]) -> tuple[int, int]:
    travel_mm, turn_mm = place_mm
    return (
        int(np.argmin(abs(machine.travel_mm - travel_mm))),
        int(np.argmin(abs(machine.turn_mm - turn_mm))),
    )


def _way(machine: Mechanism, state: State, move: Move) -> tuple[int, int]:
    """The step that the hand still wants at the end of a move."""
    if move.travel_mm is not None:
        return (1 if move.travel_mm > machine.travel_mm[state[0]] else -1, 0)
    return (0, 1 if move.turn_mm > machine.turn_mm[state[1]] else -1)


def _made(machine: Mechanism, state: State, move: Move) -> tuple[State, bool]:
    """Where one move ends, and whether it was stopped."""
    if move.code == LET_GO:
        return state, False
    if move.code in (LIFT, LOWER):
        wanted_up = move.code == LIFT
        end = state if machine.up(state) == wanted_up else machine.lifted(state) or state
        return end, machine.up(end) != wanted_up
    firm = move.code.startswith(FIRM)
    if move.travel_mm is not None:
        return _slid(machine, state, move.travel_mm, firm)
    turn_mm = move.turn_mm or 0.0
    if move.code == NEUTRAL:
        end = _turned(machine, state, turn_mm, lambda s: not machine.engaged(s), firm)
        return end, bool(machine.engaged(end))
    wanted = frozenset(_gears_at(machine.shift, move.code.removeprefix(FIRM)))
    end = _turned(machine, state, turn_mm, lambda s: bool(wanted & machine.engaged(s)), firm)
    return end, not (wanted & machine.engaged(end))


def _slid(machine: Mechanism, state: State, travel_mm: float, firm: bool) -> tuple[State, bool]:
    """Slide as far as it goes; where it is stopped, give way a little in turn."""
    goal = _cell(machine, (travel_mm, 0.0))[0]
    middle = _cell(machine, machine.shift.start_mm)[1]
    slack = round(SLACK_MM / machine.step_mm)
    to_mm = (travel_mm, float(machine.turn_mm[state[1]]))
    end, there = pull(machine, state, to_mm, firm=firm)
    gears = machine.engaged(state)
    if not there:
        low, high = sorted((goal, state[0]))
        seen = _search(
            machine,
            state,
            lambda s: (
                low <= s[0] <= high
                and abs(s[1] - state[1]) <= slack
                and machine.engaged(s) == gears
            ),
            firm=firm,
        )
        end = min(seen, key=lambda s: (abs(s[0] - goal), abs(s[1] - middle)))
    if not gears and abs(end[1] - middle) <= slack:
        here = float(machine.travel_mm[end[0]])
        end = pull(machine, end, (here, machine.shift.start_mm[1]))[0]
    return end, end[0] != goal


def _turned(machine: Mechanism, state: State, turn_mm: float, got: Callable, firm: bool) -> State:
    """Turn as far as it goes; where the straight way is stopped, feel around in the gate."""
    goal = (float(machine.travel_mm[state[0]]), turn_mm)
    straight, there = pull(machine, state, goal, firm=firm)
    if there or got(straight):
        return straight
    low, high = _near(machine, state)
    seen = _search(machine, state, lambda s: low <= machine.travel_mm[s[0]] <= high, got, firm=firm)
    target = _cell(machine, goal)[1]
    best = min(seen, key=lambda s: (not got(s), abs(s[1] - target)))
    return pull(machine, best, (float(machine.travel_mm[best[0]]), turn_mm), firm=firm)[0]


def _near(machine: Mechanism, state: State) -> tuple[float, float]:
    """Travel within which the hand feels around: its gate, or a little way between two [mm]."""
    at = float(machine.travel_mm[state[0]])
    for gate in machine.shift.gates:
        if abs(at - gate.at_mm) <= gate.half_width_mm + 1e-9:
            return gate.at_mm - gate.half_width_mm - 1e-9, gate.at_mm + gate.half_width_mm + 1e-9
    return at - FEEL_MM, at + FEEL_MM


def _search(
    machine: Mechanism,
    state: State,
    allowed: Callable,
    until: Callable | None = None,
    *,
    firm: bool,
) -> list[State]:
    """States that can be reached through allowed ones, nearest first; stops once one will do."""
    seen = {state: None}
    queue = deque([state])
    while queue:
        at = queue.popleft()
        for after in machine.next_states(at, firm=firm, lifting=False):
            if after not in seen and allowed(after):
                seen[after] = None
                if until is not None and until(after):
                    return list(seen)
                queue.append(after)
    return list(seen)


def say_gears(gears: Iterable[str]) -> str:
    """Which gears are in, in words.

    >>> say_gears([]), say_gears(["fifth"]), say_gears({"third", "first"})
    ('no gear is in', 'fifth is in', 'first and third are in at once')
    """
    gears = sorted(gears)
    if not gears:
        return "no gear is in"
    return f"{gears[0]} is in" if len(gears) == 1 else f"{' and '.join(gears)} are in at once"


def say_felt(felt: Felt) -> str:
    """What the hand feels, in words.

    Examples
    --------
    >>> say_felt(Felt(stopped=True, gears=frozenset({"third"})))
    'it is stopped; third is in'
    >>> say_felt(Felt(stopped=False, gears=frozenset({"third"}), held=False))
    'third is in; nothing holds it: the rail slides as it likes'
    """
    if felt.held is not None:
        if not felt.gears:
            return "nothing moves; no gear is in"
        stays = "it stays" if felt.held else "nothing holds it: the rail slides as it likes"
        return f"{say_gears(felt.gears)}; {stays}"
    return f"{'it is stopped' if felt.stopped else 'it goes'}; {say_gears(felt.gears)}"


def say_blocked(shift: Shift, ids: Iterable[str]) -> str:
    """What stopped the hand, by name; empty if only the end of its way did.

    Examples
    --------
    >>> say_blocked(unit.shift, ["interlock-front"])
    'the interlock pin between the first two rails'
    """
    bodies: tuple[Body | Passive | Interlock, ...] = (
        *shift.bodies, *shift.passive, *shift.interlocks,
    )  # fmt: skip
    names = {body.id: _small(body.name) for body in bodies}
    return " and ".join(f"the {names[id]}" for id in ids)


def in_gate(shift: Shift, gear: str, travel_mm: float) -> bool:
    """Whether the hand is in the gate of a gear.

    Examples
    --------
    >>> in_gate(unit.shift, "third", 0.5), in_gate(unit.shift, "third", 10.0)
    (True, False)
    """
    gate = gate_of(shift, gear)
    return abs(travel_mm - gate.at_mm) <= gate.half_width_mm + 1e-9


def passive_places(machine: Mechanism, state: State) -> dict[str, float]:
    """Place of every passive body [mm].

    Examples
    --------
    >>> machine = fitted(unit.shift)
    >>> passive_places(machine, machine.starts()[0])["lockout-plate"]
    0.0
    """
    return {
        body.id: float(places[index])
        for body, places, index in zip(
            machine.shift.passive, machine.places_mm, state[2:], strict=False
        )
    }


def fitted(shift: Shift, misbuilds: Iterable[str] = (), mirror: Iterable[str] = ()) -> Mechanism:
    """A mechanism as it was put together: with some misbuilds, its gate perhaps mirrored.

    Parameters
    ----------
    shift : Shift
        As it should be.
    misbuilds : iterable of str
        Ids of misbuilds.
    mirror : iterable of str
        Axes of the gate that are reversed, "travel" and "turn".

    Examples
    --------
    >>> machine = fitted(unit.shift, ["lockout-plate-missing"], mirror=["turn"])
    >>> made = follow(machine, ["at:gate-fifth-reverse", "turn:low"])
    >>> [say_felt(one.felt[0]) for one in made]
    ['it goes; no gear is in', 'it goes; fifth is in']
    """
    return _fitted(shift, tuple(misbuilds), tuple(mirror))


@kept(64)
def _fitted(shift: Shift, misbuilds: tuple[str, ...], mirror: tuple[str, ...]) -> Mechanism:
    return mechanism(mirrored(with_misbuilds(shift, misbuilds), *mirror))


def mirrored(shift: Shift, *axes: Axis | str) -> Shift:
    """The same mechanism with its gate the other way round, as a linkage of the other hand.

    Parameters
    ----------
    shift : Shift
    *axes : Axis
        What is reversed: travel, turn, or both. Misbuilds are kept as they are, so put them in
        before.

    Examples
    --------
    >>> [gate.id for gate in mirrored(unit.shift, "travel").gates]
    ['gate-fifth-reverse', 'gate-third-fourth', 'gate-first-second']
    """
    for axis in axes:
        shift = _mirrored(shift, Axis(axis))
    return shift


@kept()
def _mirrored(shift: Shift, axis: Axis) -> Shift:
    travel = axis is Axis.TRAVEL
    sx, sy = _signs(axis)
    update: dict[str, Any] = {
        "bodies": tuple(
            body.model_copy(update={"pieces": _mirrored_pieces(body, axis)})
            for body in shift.bodies
        ),
        "passive": tuple(_mirrored_body(body, axis) for body in shift.passive),
        "start_mm": (sx * shift.start_mm[0], sy * shift.start_mm[1]),
    }
    if travel:
        update["travel_mm"] = _over(shift.travel_mm)
        update["gates"] = tuple(
            g.model_copy(update={"at_mm": -g.at_mm}) for g in reversed(shift.gates)
        )
    else:
        update["turn_mm"] = _over(shift.turn_mm)
        update["rails"] = tuple(
            r.model_copy(update={"low": r.high, "high": r.low}) for r in shift.rails
        )
    return shift.model_copy(update=update)


@kept()
def _mirrored_body(body: Passive, axis: Axis) -> Passive:
    """One object for each body and axis: what is worked out of it is shared by mechanisms."""
    update: dict[str, Any] = {"pieces": _mirrored_pieces(body, axis)}
    if body.axis is axis:
        swap = {Drive.LOW: Drive.HIGH, Drive.HIGH: Drive.LOW}
        update["range_mm"] = _over(body.range_mm)
        update["notches_mm"] = tuple(-notch for notch in reversed(body.notches_mm))
        update["drive"] = swap.get(body.drive, body.drive)
    return body.model_copy(update=update)


def _mirrored_pieces(
    body: Body | Passive, axis: Axis
) -> tuple[tuple[tuple[float, float], ...], ...]:
    sx, sy = _signs(axis)
    return tuple(tuple((sx * x, sy * y) for x, y in piece) for piece in body.pieces)


def _signs(axis: Axis) -> tuple[int, int]:
    return (-1, 1) if axis is Axis.TRAVEL else (1, -1)


def _over(limits: tuple[float, float]) -> tuple[float, float]:
    return (-limits[1], -limits[0])
