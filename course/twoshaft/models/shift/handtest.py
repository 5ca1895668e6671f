"""Whether a list of moves proves what it should: replayed on the mechanism, never looked up."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Literal

from twoshaft.models.shift.handwork import (
    Done,
    follow,
    hand_moves,
    in_gate,
    make_move,
    rail_of,
    turn_towards,
)
from twoshaft.models.shift.mechanism import Mechanism, State
from twoshaft.units.kept import kept
from twoshaft.units.sections.shift import Shift

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
        A direct shift that must be tried, and then shown to be possible by leaving the gate.
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
        leaving the gate), "shown" (every misbuild told from the sound mechanism).
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
        Mechanisms in which it is not, which the proof must show.

    Examples
    --------
    >>> from twoshaft.models.shift import fitted
    >>> worn = fitted(unit.shift, ["finger-peg-worn"])
    >>> test = lockout_test(fitted(unit.shift), "fifth", "reverse", [worn])
    >>> try_out(test, test.model).share
    1.0
    """
    model = lockout_moves(sound.shift, earlier, later)
    return HandTest(sound, tuple(faulty), (earlier, later), model)


def lockout_moves(shift: Shift, earlier: str, later: str) -> tuple[str, ...]:
    """The proof of a lockout: the direct shift in three moves, then round by the next gate.

    Examples
    --------
    >>> lockout_moves(unit.shift, "fifth", "reverse")[:3]
    ('at:gate-fifth-reverse', 'turn:high', 'turn:low')
    >>> lockout_moves(unit.shift, "fifth", "reverse")[3:]
    ('at:gate-third-fourth', 'at:gate-fifth-reverse', 'turn:low')
    """
    gate = rail_of(shift, earlier).gate
    out, back = _nearest_gate(shift, gate), f"at:{gate}"
    there, on = turn_towards(shift, earlier), turn_towards(shift, later)
    return (back, there, on, f"at:{out}", back, on)


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
        *half*: stopped, but the later gear was not tried after leaving the gate; *no-gear*: it
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
    if had_by_leaving(shift, work, at, earlier, later):
        return "proven"
    rest, left = work[at + 1 :], False
    for one in rest:
        left |= not in_gate(shift, earlier, one.place_mm[0])
        back = in_gate(shift, earlier, one.place_mm[0])
        if left and back and one.code == turn_towards(shift, later):
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
        done[LEFT] = at is not None and had_by_leaving(test.sound.shift, work, at, *test.direct)
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
    in_it = False
    for number, one in enumerate(work):
        gears = _gears(one)
        if in_it and one.code == turn_towards(shift, later):
            return number
        if gears == {earlier}:
            in_it = True
        elif not in_gate(shift, earlier, one.place_mm[0]):
            in_it = False
    return None


def had_by_leaving(
    shift: Shift, work: Sequence[Done], tried: int, earlier: str, later: str
) -> bool:
    """Whether the later gear is engaged after the gate was left, without the earlier again.

    Examples
    --------
    >>> from twoshaft.models.shift import fitted
    >>> work = follow(fitted(unit.shift), lockout_moves(unit.shift, "fifth", "reverse"))
    >>> had_by_leaving(unit.shift, work, 2, "fifth", "reverse")
    True
    """
    left = False
    for one in work[tried + 1 :]:
        if not in_gate(shift, earlier, one.place_mm[0]):
            left = True
        elif earlier in _gears(one):
            left = False
        elif left and _gears(one) == {later}:
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


def _nearest_gate(shift: Shift, gate: str) -> str:
    at = {g.id: g.at_mm for g in shift.gates}
    return min((g for g in at if g != gate), key=lambda g: abs(at[g] - at[gate]))


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
    replayed = follow(machine, [one.code for one in work])
    return all(set(one.felt) <= set(can.felt) for one, can in zip(work, replayed, strict=True))
