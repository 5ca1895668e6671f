"""The proof by hand: every gear, no two at once, and the direct shifts that must be stopped."""

from __future__ import annotations

from dataclasses import dataclass
from functools import partial
from typing import Literal

import numpy as np

from twoshaft.models.shift.direct import gate_of, span_mm
from twoshaft.models.shift.mechanism import Mechanism, State, mechanism
from twoshaft.models.shift.misbuild import with_misbuilds
from twoshaft.models.shift.search import Reach, reach
from twoshaft.units.kept import kept
from twoshaft.units.sections.shift import Drive, MustBlock, Shift

Verdict = Literal["holds", "fails", "unreliable", "not tried"]


@dataclass(frozen=True, eq=False)
class Lock:
    """Whether a direct shift is stopped.

    Attributes
    ----------
    earlier, later : str
        The gears.
    verdict : {"holds", "fails", "unreliable", "not tried"}
        *unreliable*: stopped from some positions of rest only, which is a fault; *not tried*:
        the earlier gear cannot be engaged.
    way_mm : ndarray or None
        Hand movement of the direct shift where it is possible.

    Examples
    --------
    >>> lock = prove_by_hand(mechanism(unit.shift)).locks[0]
    >>> lock.earlier, lock.later, lock.verdict
    ('fifth', 'reverse', 'holds')
    """

    earlier: str
    later: str
    verdict: Verdict
    way_mm: np.ndarray | None


@dataclass(frozen=True, eq=False)
class HandProof:
    """What the test by hand shows.

    Attributes
    ----------
    ways_mm : dict of str to ndarray
        Shortest hand movement from rest to every gear that can be engaged.
    cannot : tuple of str
        Gears that cannot be engaged.
    not_held : tuple of str
        Gears that nothing holds once they are engaged.
    at_once : tuple of tuple of str
        Sets of gears that can be engaged at once; sets that hold a smaller one are left out.
    locks : tuple of Lock
        One for each direct shift that the unit says must be stopped.

    Examples
    --------
    >>> proof = prove_by_hand(mechanism(unit.shift))
    >>> proof.sound, proof.sentences
    (True, ('The direct shift from fifth to reverse is stopped.',))
    >>> proof.ways_mm["first"].tolist()
    [[0.0, 0.0], [-7.0, 0.0], [-7.0, 5.5]]
    """

    ways_mm: dict[str, np.ndarray]
    cannot: tuple[str, ...]
    not_held: tuple[str, ...]
    at_once: tuple[tuple[str, ...], ...]
    locks: tuple[Lock, ...]

    @property
    def sound(self) -> bool:
        """Whether the mechanism passes."""
        held = all(lock.verdict == "holds" for lock in self.locks)
        return held and not (self.cannot or self.not_held or self.at_once)

    @property
    def sentences(self) -> tuple[str, ...]:
        """The findings, one sentence each."""
        found = [f"{_sentence_start(gear)} cannot be engaged." for gear in self.cannot]
        found += [f"Nothing holds {gear} once it is engaged." for gear in self.not_held]
        found += [
            _sentence_start(f"{' and '.join(s)} can be engaged at once.") for s in self.at_once
        ]
        says = {
            "holds": "the direct shift from {} to {} is stopped",
            "fails": "the direct shift from {} to {} is not stopped",
            "unreliable": "the direct shift from {} to {} is stopped only sometimes",
            "not tried": "the direct shift from {} to {} could not be tried",
        }
        found += [
            _sentence_start(says[lock.verdict].format(lock.earlier, lock.later)) + "."
            for lock in self.locks
        ]
        return tuple(found)


def _sentence_start(text: str) -> str:
    return text[:1].upper() + text[1:]


def prove_by_hand(machine: Mechanism) -> HandProof:
    """Try every gear and every direct shift that must be stopped; kept with the section.

    Parameters
    ----------
    machine : Mechanism

    Returns
    -------
    HandProof

    Examples
    --------
    >>> proof = prove_by_hand(mechanism(with_misbuilds(unit.shift, ["lockout-plate-missing"])))
    >>> proof.sound, proof.sentences
    (False, ('The direct shift from fifth to reverse is not stopped.',))
    """
    return _prove(machine.shift, machine.step_mm)


@kept()
def proof_with(shift: Shift, misbuild: str) -> HandProof:
    """The proof by hand of a mechanism with one misbuild in it; kept with the section.

    What is found holds whichever way round the gate is.

    Examples
    --------
    >>> proof_with(unit.shift, "detent-ball-missing").not_held
    ('fourth', 'third')
    """
    return prove_by_hand(mechanism(with_misbuilds(shift, [misbuild])))


@kept()
def _prove(shift: Shift, step_mm: float) -> HandProof:
    machine = mechanism(shift, step_mm)
    found = reach(machine)
    gears = [gear for rail in machine.shift.rails for gear in rail.gears]
    ways = {
        gear: found.path(found.first[frozenset([gear])])
        for gear in gears
        if frozenset([gear]) in found.first
    }
    return HandProof(
        ways_mm=ways,
        cannot=tuple(gear for gear in gears if gear not in ways),
        not_held=tuple(
            gear for gear in ways if not held(machine, found.first[frozenset([gear])], gear)
        ),
        at_once=_fewest(s for s in found.first if len(s) > 1),
        locks=tuple(_lock(machine, found, block) for block in machine.shift.must_block),
    )


def _fewest(sets) -> tuple[tuple[str, ...], ...]:
    """The sets that hold no smaller one, in order."""
    sets = list(sets)
    return tuple(sorted(tuple(sorted(s)) for s in sets if not any(other < s for other in sets)))


def held(machine: Mechanism, state: State, gear: str) -> bool:
    """Whether a drive keeps the rail where a gear is engaged.

    Parameters
    ----------
    machine : Mechanism
    state : State
        One with the gear engaged.
    gear : str

    Examples
    --------
    >>> machine = mechanism(unit.shift)
    >>> held(machine, reach(machine).first[frozenset({"third"})], "third")
    True
    """
    rail = next(r for r in machine.shift.rails if gear in (r.low, r.high))
    index = [body.id for body in machine.shift.passive].index(rail.body)
    body = machine.shift.passive[index]
    place = machine.places_mm[index][state[2 + index]]
    return body.drive is Drive.NOTCHES and any(
        abs(notch - place) <= max(body.snap_mm, machine.step_mm) for notch in body.notches_mm
    )


def lock_with(machine: Mechanism, block: MustBlock) -> Lock:
    """Try one direct shift; whether the unit says that it must be stopped or not.

    Parameters
    ----------
    machine : Mechanism
    block : MustBlock

    Examples
    --------
    >>> from twoshaft.units.sections.shift import MustBlock
    >>> lock_with(mechanism(unit.shift), MustBlock(earlier="first", later="second")).verdict
    'fails'
    """
    return _lock(machine, reach(machine), block)


def _lock(machine: Mechanism, found: Reach, block: MustBlock) -> Lock:
    earlier, later = block.earlier, block.later
    gears = {gear for rail in machine.shift.rails for gear in rail.gears}
    if earlier not in gears or later not in gears:  # a misbuild has left a rail out
        return Lock(earlier, later, "not tried", None)
    gate, within = gate_of(machine.shift, earlier), span_mm(machine.shift, block)
    starts = [
        state
        for state in found.with_gear(earlier)
        if abs(machine.travel_mm[state[0]] - gate.at_mm) <= gate.half_width_mm
        and (block.lifted or not machine.up(state))
    ]
    if not starts:
        return Lock(earlier, later, "not tried", None)
    search = partial(
        reach, machine, within_mm=within, until=later, firm=block.firm, lifting=block.lifted
    )
    group = search(starts)
    direct = _engaged(group, later)
    if direct is None:
        return Lock(earlier, later, "holds", None)
    rests = {state[2:]: state for state in starts}.values()  # one hand place for every rest
    stopped = any(_engaged(search([s]), later) is None for s in rests)
    return Lock(earlier, later, "unreliable" if stopped else "fails", group.path(direct))


def _engaged(found: Reach, gear: str) -> State | None:
    return next((state for gears, state in found.first.items() if gear in gears), None)
