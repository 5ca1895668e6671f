"""Whether a list of moves proves what it should: replayed on the mechanism, never looked up."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from typing import Literal

from twoshaft.models.shift.direct import block_of, gate_of, gates_of, span_mm
from twoshaft.models.shift.handwork import (
    FIRM,
    LIFT,
    LOWER,
    NEUTRAL,
    Done,
    follow,
    hand_moves,
    make_move,
    turn_towards,
)
from twoshaft.models.shift.mechanism import Mechanism, State, mechanism
from twoshaft.units.kept import kept
from twoshaft.units.sections.shift import MustBlock, Shift

TRIED, LEFT, SHOWN = "tried", "left", "shown"
WEIGHTS = {TRIED: 0.5, LEFT: 0.3, SHOWN: 0.2}


@dataclass(frozen=True, eq=False)
class HandTest:
    """What a hand test has to do.

    Attributes
    ----------
    sound : Mechanism
        The mechanism put together rightly.
    faulty : tuple of Mechanism
        Mechanisms with a misbuild each, which the test must tell from the sound one.
    direct : (str, str) or None
        A direct shift that must be tried, and then shown to be possible by what lets it in.
    model : tuple of str
        Moves that do it all, the fewest.

    Examples
    --------
    >>> from twoshaft.models.shift import fitted
    >>> lockout_test(fitted(unit.shift), "fifth", "reverse").model[:3]
    ('at:gate-fifth-reverse', 'turn:high', 'turn:low')
    """

    sound: Mechanism
    faulty: tuple[Mechanism, ...]
    direct: tuple[str, str] | None
    model: tuple[str, ...] = field(repr=False)


@dataclass(frozen=True)
class Trial:
    """What a list of moves did.

    Attributes
    ----------
    done : dict of str to bool
        By what had to be done: "tried" (the direct shift), "left" (the later gear had after
        what lets it in, as leaving the gate), "shown" (every misbuild told from the sound
        mechanism).
    share : float
        Part of what had to be done, 0 to 1.
    shows : tuple of float
        For each faulty mechanism, the part of its ways to behave that the moves tell from the
        sound one.

    Examples
    --------
    >>> from twoshaft.models.shift import fitted
    >>> test = lockout_test(fitted(unit.shift), "fifth", "reverse")
    >>> try_out(test, test.model[:3])  # tried, but never out of the gate and back
    Trial(done={'tried': True, 'left': False}, share=0.625, shows=())
    """

    done: dict[str, bool]
    share: float
    shows: tuple[float, ...]


def lockout_test(
    sound: Mechanism, earlier: str, later: str, faulty: Sequence[Mechanism] = ()
) -> HandTest:
    """The proof by hand of a lockout.

    Parameters
    ----------
    sound : Mechanism
    earlier, later : str
        The direct shift that must be stopped.
    faulty : sequence of Mechanism
        Mechanisms in which it is not, which the proof must show. Where another lockout stops the
        same shift, the fewest moves cannot tell such a one: it is left out.

    Examples
    --------
    >>> from twoshaft.models.shift import fitted
    >>> worn = fitted(unit.shift, ["finger-peg-worn"])
    >>> test = lockout_test(fitted(unit.shift), "fifth", "reverse", [worn])
    >>> try_out(test, test.model).share
    1.0
    """
    model = lockout_moves(sound.shift, earlier, later)
    told = tuple(one for one in faulty if _told(sound, one, model))
    return HandTest(sound, told, (earlier, later), model)


@kept(most=64)
def _told(sound: Mechanism, faulty: Mechanism, moves: tuple[str, ...]) -> bool:
    """Whether moves surely tell a faulty mechanism."""
    return tells(follow(sound, moves), follow(faulty, moves)) == 1


Opening = Literal["leave", "lift", "firm", "lift-firm", "leave-lift"]
OPENED: dict[Opening, str] = {
    "leave": "once the lever has left the gate plane and come back",
    "lift": "with {lift} lifted",
    "firm": "with a firm push",
    "lift-firm": "with {lift} lifted and a firm push",
    "leave-lift": "once the lever has left the gate plane and come back with {lift} lifted",
}
"""How the later gear is had after all, in words."""


def direct_moves(shift: Shift, earlier: str, later: str) -> tuple[str, ...]:
    """The direct shift: three moves within a gate, five and more across gates.

    Where it must be stopped with something lifted too, it is lifted: what else stops the shift
    would hide the other lockout.

    Examples
    --------
    >>> direct_moves(unit.shift, "fifth", "reverse")
    ('at:gate-fifth-reverse', 'turn:high', 'turn:low')
    >>> direct_moves(unit.shift, "second", "third")[2:]
    ('neutral', 'at:gate-third-fourth', 'turn:high')
    """
    gates = gates_of(shift, block_of(shift, earlier, later))
    there, on = turn_towards(shift, earlier), turn_towards(shift, later)
    over = [f"at:{gate.id}" for gate in gates[1:]]
    up = [LIFT] if block_of(shift, earlier, later).lifted else []
    return (f"at:{gates[0].id}", there, *([NEUTRAL, *over] if over else []), *up, on)


def lockout_moves(shift: Shift, earlier: str, later: str) -> tuple[str, ...]:
    """The proof of a lockout: the direct shift, then what lets the later gear in.

    Examples
    --------
    >>> lockout_moves(unit.shift, "fifth", "reverse")[:3]
    ('at:gate-fifth-reverse', 'turn:high', 'turn:low')
    >>> lockout_moves(unit.shift, "fifth", "reverse")[3:]
    ('at:gate-third-fourth', 'at:gate-fifth-reverse', 'turn:low')
    """
    direct = direct_moves(shift, earlier, later)
    return (*direct, *_opened(shift, earlier, later)[1])


def opening(shift: Shift, earlier: str, later: str) -> Opening:
    """How the later gear is had after the direct shift was stopped.

    Examples
    --------
    >>> opening(unit.shift, "fifth", "reverse")
    'leave'
    """
    return _opened(shift, earlier, later)[0]


def say_opening(shift: Shift, earlier: str, later: str) -> str:
    """How the later gear is had, in words.

    Examples
    --------
    >>> say_opening(unit.shift, "fifth", "reverse")
    'once the lever has left the gate plane and come back'
    """
    return OPENED[opening(shift, earlier, later)].format(lift=shift.lift_name)


def stopped_also(shift: Shift, earlier: str, later: str) -> str:
    """How else the direct shift must be stopped, in words; empty where in no other way.

    Examples
    --------
    >>> stopped_also(unit.shift, "fifth", "reverse")
    ''
    """
    block = block_of(shift, earlier, later)
    ways = [f"with {shift.lift_name} lifted"] if block.lifted else []
    ways += ["against a firm push"] if block.firm else []
    return f", {' and '.join(ways)} too" if ways else ""


@kept()
def _opened(shift: Shift, earlier: str, later: str) -> tuple[Opening, tuple[str, ...]]:
    """The first way that lets the later gear in on the mechanism itself, and its moves."""
    block = block_of(shift, earlier, later)
    known = {move.code for move in hand_moves(shift)}
    ways = [way for way in _ways_on(shift, block) if known.issuperset(way[1])]
    direct = direct_moves(shift, earlier, later)
    down = (LOWER,) if block.lifted else ()

    def lets_in(moves: tuple[str, ...]) -> bool:
        return later in _gears(follow(mechanism(shift), (*direct, *down, *moves))[-1])

    # With one way there is nothing to try.
    how, moves = next((way for way in ways[:-1] if lets_in(way[1])), ways[-1])
    # What is lifted already stays up.
    return how, (tuple(code for code in moves if code != LIFT) if block.lifted else moves)


def _ways_on(shift: Shift, block: MustBlock) -> Iterator[tuple[Opening, tuple[str, ...]]]:
    """What may let the later gear in, the shortest first."""
    gates = gates_of(shift, block)
    across, on = len(gates) > 1, turn_towards(shift, block.later)
    to = (f"at:{gates[-1].id}",) if across else ()
    back = (NEUTRAL,) if across else ()
    if not block.lifted:
        yield "lift", (NEUTRAL, LIFT, *to, on)
    firmly = (*(f"{FIRM}{code}" for code in to), on if across else f"{FIRM}{on}")
    if not block.firm:
        yield "firm", (*back, *firmly)
    if not (block.lifted or block.firm):
        yield "lift-firm", (NEUTRAL, LIFT, *firmly)
    low, high = span_mm(shift, block)
    out = [gate for gate in shift.gates if not low <= gate.at_mm <= high]
    last = gates[-1]
    round_by = [min(out, key=lambda gate: abs(gate.at_mm - last.at_mm))] if out else []
    round_to = (*(f"at:{gate.id}" for gate in round_by), f"at:{last.id}", on)
    yield "leave", (*back, *round_to)
    yield "leave-lift", (NEUTRAL, LIFT, *round_to)


class _Try:
    """Where a record of moves stands in a proof: reads on move by move.

    Attributes
    ----------
    in_it : bool
        The earlier gear was had, and the way of the direct shift was not left since.
    aimed : bool
        The lever was pushed towards the gate of the later gear since.
    opened : bool
        What lets the later gear in was done since.
    """

    def __init__(self, shift: Shift, earlier: str, later: str) -> None:
        self.block = block_of(shift, earlier, later)
        self.low, self.high = span_mm(shift, self.block)
        gates = gates_of(shift, self.block)
        self.across, self.gate = len(gates) > 1, gates[-1]
        self.on = turn_towards(shift, later)
        self.in_it = self.aimed = self.opened = self.up = False

    def outside(self, one: Done) -> bool:
        """Whether the hand has left the way of the direct shift."""
        return not self.low - 1e-9 <= one.place_mm[0] <= self.high + 1e-9

    def at_gate(self, one: Done) -> bool:
        """Whether the hand is in the gate of the later gear."""
        return abs(one.place_mm[0] - self.gate.at_mm) <= self.gate.half_width_mm + 1e-9

    def is_direct(self, one: Done) -> bool:
        """Whether this move, made next, tries the direct shift."""
        aimed = self.aimed or not self.across
        return self.in_it and aimed and not self.helped(one) and one.code == self.on

    def helped(self, one: Done) -> bool:
        """Whether a move is made with something lifted or with a firm push that opens."""
        return (self.up and not self.block.lifted) or (
            one.code.startswith(FIRM) and not self.block.firm
        )

    def pushes_on(self, one: Done) -> bool:
        """Whether a move pushes towards the later gear."""
        return one.code.removeprefix(FIRM) == self.on

    def read(self, one: Done) -> None:
        """Read a move."""
        if one.code in (LIFT, LOWER) and not one.felt[0].stopped:
            self.up = one.code == LIFT
        if self.outside(one) or self.helped(one):
            self.opened = True
        elif self.block.earlier in _gears(one):
            self.opened = False
        if _gears(one) == {self.block.earlier}:
            self.in_it, self.aimed = True, False
        elif self.outside(one):
            self.in_it = False
        if one.code == f"at:{self.gate.id}":
            self.aimed = True


@kept()
def way_in(shift: Shift, gear: str) -> tuple[str, ...]:
    """The fewest moves of the hand from rest into a gear: lifted or pushed firmly where it must be.

    Examples
    --------
    >>> way_in(unit.shift, "reverse")
    ('at:gate-fifth-reverse', 'turn:low')
    """
    to, on = f"at:{gate_of(shift, gear).id}", turn_towards(shift, gear)
    ways = [
        (to, on), (f"{FIRM}{to}", on), (to, f"{FIRM}{on}"), (LIFT, to, on),
        (to, LIFT, on), (LIFT, f"{FIRM}{to}", on), (LIFT, to, f"{FIRM}{on}"),
    ]  # fmt: skip
    known = {move.code for move in hand_moves(shift)}
    ways = [way for way in ways if known.issuperset(way)]
    for way in ways if len(ways) > 1 else ():
        if gear in _gears(follow(mechanism(shift), way)[-1]):
            return way
    return ways[0]


Reading = Literal["proven", "fails", "half", "no-gear", "not tried"]


def lockout_reading(shift: Shift, work: Sequence[Done], earlier: str, later: str) -> Reading:
    """What a record of moves says about a lockout.

    Parameters
    ----------
    shift : Shift
        The mechanism as it should be.
    work : sequence of Done
        What was done and felt.
    earlier, later : str
        The direct shift that must be stopped.

    Returns
    -------
    {"proven", "fails", "half", "no-gear", "not tried"}
        *half*: stopped, but what lets the later gear in (leaving the gate, lifting, a firm push)
        was not tried; *no-gear*: it
        was tried and cannot be had, so that the stop shows nothing.

    Examples
    --------
    >>> from twoshaft.models.shift import fitted
    >>> moves = lockout_moves(unit.shift, "fifth", "reverse")
    >>> lockout_reading(unit.shift, follow(fitted(unit.shift), moves), "fifth", "reverse")
    'proven'
    >>> lockout_reading(unit.shift, follow(fitted(unit.shift), moves[:3]), "fifth", "reverse")
    'half'
    """
    at = direct_tried(shift, work, earlier, later)
    if at is None:
        return "not tried"
    if any(later in felt.gears for felt in work[at].felt):
        return "fails"
    if had_after_all(shift, work, at, earlier, later):
        return "proven"
    tried, opened = _Try(shift, earlier, later), False
    for one in work[at + 1 :]:
        tried.read(one)
        opened |= tried.opened
        if opened and tried.at_gate(one) and tried.pushes_on(one):
            return "no-gear"
    return "half"


def telling_test(sound: Mechanism, faulty: Mechanism) -> HandTest | None:
    """The shortest hand test that tells a faulty mechanism from a sound one; None: there is none.

    Searched move by move over both mechanisms side by side, up to :data:`DEEPEST` moves.

    Examples
    --------
    >>> from twoshaft.models.shift import fitted
    >>> telling_test(fitted(unit.shift), fitted(unit.shift, ["detent-ball-missing"])).model
    ('turn:high', 'let-go')
    """
    model = shortest_telling(sound, faulty)
    return None if model is None else HandTest(sound, (faulty,), None, model)


DEEPEST = 4
Ends = tuple[State, ...]


@kept(most=64)
def shortest_telling(
    sound: Mechanism, faulty: Mechanism, deepest: int = DEEPEST
) -> tuple[str, ...] | None:
    """The fewest moves after which the two mechanisms surely feel different, or None.

    Examples
    --------
    >>> from twoshaft.models.shift import fitted
    >>> shortest_telling(fitted(unit.shift), fitted(unit.shift)) is None  # alike in every way
    True
    """
    codes = [move.code for move in hand_moves(sound.shift)]
    layer: list[tuple[tuple[str, ...], Ends, Ends]] = [((), sound.starts(), faulty.starts())]
    seen = {(layer[0][1], layer[0][2])}
    for _ in range(deepest):
        coming = []
        for moves, here, there in layer:
            for code in codes:
                ends, one = make_move(sound, here, code)
                other_ends, other = make_move(faulty, there, code)
                if not set(one.felt) & set(other.felt):
                    return (*moves, code)
                if (ends, other_ends) not in seen:
                    seen.add((ends, other_ends))
                    coming.append(((*moves, code), ends, other_ends))
        layer = coming
    return None


def try_out(test: HandTest, moves: Sequence[str]) -> Trial:
    """Make the moves and see what they do.

    Parameters
    ----------
    test : HandTest
    moves : sequence of str
        Codes of :func:`twoshaft.models.shift.handwork.hand_moves`.

    Examples
    --------
    >>> from twoshaft.models.shift import fitted
    >>> test = telling_test(fitted(unit.shift), fitted(unit.shift, ["interlock-pins-missing"]))
    >>> try_out(test, test.model).share, try_out(test, ["turn:high"]).share
    (1.0, 0.0)
    """
    work = follow(test.sound, moves)
    shows = tuple(tells(work, follow(faulty, moves)) for faulty in test.faulty)
    done = {}
    if test.direct is not None:
        at = direct_tried(test.sound.shift, work, *test.direct)
        done[TRIED] = at is not None
        done[LEFT] = at is not None and had_after_all(test.sound.shift, work, at, *test.direct)
    if test.faulty:
        done[SHOWN] = all(shown == 1 for shown in shows)
    total = sum(WEIGHTS[what] for what in done)
    share = sum(WEIGHTS[what] for what, is_done in done.items() if is_done) / total
    if test.direct is None:
        share = min(shows)
    return Trial(done, share, shows)


def direct_tried(shift: Shift, work: Sequence[Done], earlier: str, later: str) -> int | None:
    """Place of the move that tries the direct shift, None where no move does.

    Examples
    --------
    >>> from twoshaft.models.shift import fitted
    >>> work = follow(fitted(unit.shift), lockout_moves(unit.shift, "fifth", "reverse"))
    >>> direct_tried(unit.shift, work, "fifth", "reverse")
    2
    """
    tried = _Try(shift, earlier, later)
    for number, one in enumerate(work):
        if tried.is_direct(one):
            return number
        tried.read(one)
    return None


def had_after_all(shift: Shift, work: Sequence[Done], tried: int, earlier: str, later: str) -> bool:
    """Whether the later gear is engaged after what opens was done, without the earlier again.

    What opens is leaving the way of the direct shift, lifting, or a firm push; not what the unit
    file says must be stopped as well.

    Examples
    --------
    >>> from twoshaft.models.shift import fitted
    >>> work = follow(fitted(unit.shift), lockout_moves(unit.shift, "fifth", "reverse"))
    >>> had_after_all(unit.shift, work, 2, "fifth", "reverse")
    True
    """
    state = _Try(shift, earlier, later)
    for one in work[tried + 1 :]:
        state.read(one)
        if state.opened and not state.outside(one) and _gears(one) == {later}:
            return True
    return False


def tells(sound: Sequence[Done], faulty: Sequence[Done]) -> float:
    """How surely two records of the same moves feel different, 0 to 1.

    1 when some move can turn out in no way that it can on the other; else the largest part of
    the faulty one's ways that the sound one does not have.

    Examples
    --------
    >>> from twoshaft.models.shift import fitted
    >>> moves = ["turn:high", "let-go"]
    >>> loose = fitted(unit.shift, ["detent-ball-missing"])
    >>> tells(follow(fitted(unit.shift), moves), follow(loose, moves))
    1.0
    """
    best = 0.0
    for one, other in zip(sound, faulty, strict=True):
        new = [felt for felt in other.felt if felt not in one.felt]
        best = max(best, len(new) / len(other.felt))
    return best


def _gears(one: Done) -> set[str]:
    return set().union(*(felt.gears for felt in one.felt))


def explains(machine: Mechanism, work: Sequence[Done]) -> bool:
    """Whether a mechanism can behave as a record says.

    Parameters
    ----------
    machine : Mechanism
    work : sequence of Done
        What was done, with the one way that each move turned out.

    Examples
    --------
    >>> from twoshaft.models.shift import fitted
    >>> worn = fitted(unit.shift, ["finger-peg-worn"])
    >>> work = follow(worn, lockout_moves(unit.shift, "fifth", "reverse"))
    >>> explains(worn, work), explains(fitted(unit.shift), work)
    (True, False)
    """
    states = machine.starts()
    for one in work:
        states, can = make_move(machine, states, one.code)
        if not set(one.felt) <= set(can.felt):
            return False
    return True
