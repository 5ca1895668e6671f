"""Hand tests to plan, and records of hand tests to read."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.models.shift import (
    explains,
    hand_moves,
    lockout_reading,
    read_record,
    say_felt,
    write_record,
)
from twoshaft.models.shift.handtest import lockout_moves
from twoshaft.models.shift.handwork import HIGH, LET_GO, LOW, NEUTRAL, Done
from twoshaft.models.shift.symptoms import NOTHING
from twoshaft.readings.shift_and_lockout.lot import Lot

READINGS = [
    ["proven", "The lockout is proven"],
    ["fails", "The lockout fails: the direct shift goes through"],
    ["half", "Not proven yet: whether reverse can be had at all has not been tried"],
    ["no-gear", "Not proven: the later gear cannot be had at all, so the stop shows nothing"],
]
OPTIONS = 7
MOST_RIGHT = 3


def gate_plan(lot: Lot) -> dict:
    """The gate as a picture needs it: gates, gears, and where each move aims [mm]."""
    shift = lot.own
    at = {gate.id: gate.at_mm for gate in shift.gates}
    ends = {True: shift.turn_mm[1], False: shift.turn_mm[0]}
    return {
        "gates": sorted(at.values()),
        "turn_mm": list(shift.turn_mm),
        "gears": [
            [gear, at[rail.gate], ends[is_high]]
            for rail in shift.rails
            for gear, is_high in ((rail.high, True), (rail.low, False))
            if gear
        ],
        "aims": {m.code: [m.travel_mm, m.turn_mm] for m in hand_moves(shift)},
    }


def draw_gate(lot: Lot) -> dict:
    """Which way round the gate is: ``mirror`` (axes), ``moves`` and ``plan``."""
    return {"mirror": list(lot.mirror), "moves": lot.moves, "plan": gate_plan(lot)}


def record(lot: Lot, made: Sequence[Done]) -> dict:
    """A record of a hand test: ``lines`` as plain data, and the same in ``words``."""
    words = dict(lot.moves)
    lines = [[words[one.code], say_felt(one.felt[0])] for one in made]
    return {"lines": write_record(made), "words": lines}


def draw_lockout(lot: Lot) -> dict:
    """The direct shift to be proven, and a record of such a proof to be read.

    ``earlier``, ``later``, ``record``, ``readings`` to choose from.
    """
    stream, block = lot.stream.child("lockout"), lot.shift.must_block[0]
    moves = lockout_moves(lot.own, block.earlier, block.later)
    direct = moves[:3]
    by_reading: dict[str, list[tuple[str, ...]]] = {}
    cases = [([], moves), ([], direct)] + [([m], moves) for m in lot.misbuild_ids]
    for wrong, done in cases:
        reading = lockout_reading(lot.own, lot.made(wrong, done), block.earlier, block.later)
        by_reading.setdefault(reading, []).append((wrong, done))
    reading = lot.in_turn("lockout reading", [key for key, _ in READINGS if key in by_reading])[0]
    wrong, done = stream.choice(by_reading[reading])
    return {
        "earlier": block.earlier,
        "later": block.later,
        "record": record(lot, lot.made(wrong, done)),
        "readings": stream.shuffled(READINGS),
    }


def draw_reveal(lot: Lot) -> dict:
    """A misbuild to be shown by hand, by another test than the direct shift: ``misbuild``."""
    block = lot.shift.must_block[0]
    proof = lockout_moves(lot.own, block.earlier, block.later)
    direct = _as_felt(lot.made([], proof[:3]))
    # The direct shift is asked for already; here another test is wanted.
    pool = [
        id
        for id in lot.misbuild_ids
        if lot.kinds(id) != {NOTHING} and explains(lot.fitted(id), direct)
    ]
    if not pool:
        raise lot.too_plain("reveal")
    (chosen,) = lot.named([lot.in_turn("reveal", pool)[0]])
    return {"misbuild": chosen}


def standard_tests(lot: Lot) -> dict[str, tuple[str, list[str]]]:
    """The tests of a full hand test: name, and moves."""
    shift, block = lot.own, lot.shift.must_block[0]
    gates = [move.code for move in hand_moves(shift) if move.code.startswith("at:")]
    single, between = [c for c in gates if "+" not in c], [c for c in gates if "+" in c]
    through = [(gate, turn) for gate in single for turn in (HIGH, LOW)]
    return {
        "gears": (
            "Every gear, one after the other",
            [code for gate, turn in through for code in (gate, turn, NEUTRAL)],
        ),
        "let-go": (
            "Let go in every gear",
            [code for gate, turn in through for code in (gate, turn, LET_GO, NEUTRAL)],
        ),
        "between": (
            "Between two gates, turned both ways",
            [code for gate in between for code in (gate, HIGH, NEUTRAL, LOW, NEUTRAL)],
        ),
        "direct": (
            f"From {block.earlier} straight towards {block.later}",
            list(lockout_moves(shift, block.earlier, block.later)[:3]),
        ),
    }


def draw_one_test(lot: Lot) -> dict:
    """A test that passed, and what may still be wrong.

    ``name`` of the test, ``record``, ``options`` of misbuilds.
    """
    stream, tests = lot.stream.child("one_test"), standard_tests(lot)
    for name in lot.in_turn("one_test", list(tests)):
        title, moves = tests[name]
        made = lot.made([], moves)
        options = _options(lot, stream, made)
        if options:
            return {"name": title, "record": record(lot, made), "options": lot.named(options)}
    raise lot.too_plain("one_test")


def draw_explain(lot: Lot) -> dict:
    """The record of a full hand test of a unit in which one thing is wrong.

    ``record``, ``options`` of misbuilds.
    """
    stream, tests = lot.stream.child("explain"), standard_tests(lot)
    block = lot.shift.must_block[0]
    moves = [
        *tests["let-go"][1],
        *tests["between"][1],
        *lockout_moves(lot.own, block.earlier, block.later),
    ]
    told = [m for m in lot.misbuild_ids if lot.kinds(m) != {NOTHING}]
    for wrong in lot.in_turn("explain", told):
        made = lot.made([wrong], moves)
        options = _options(lot, stream, made, wrong)
        if options:
            return {"record": record(lot, made), "options": lot.named(options)}
    raise lot.too_plain("explain")


def _options(lot: Lot, stream, made, first: str | None = None) -> list[str]:
    """Misbuilds to choose from: some that fit what was felt, some that do not."""
    right, wrong = [], []
    for id in stream.shuffled(lot.misbuild_ids):
        fits = explains(lot.fitted(id), _as_felt(made))
        (right if fits else wrong).append(id)
    right = right[:MOST_RIGHT]
    if first is not None and first not in right:
        right = [first, *right[: MOST_RIGHT - 1]]
    wrong = wrong[: OPTIONS - len(right)]
    if not right or len(wrong) < 3:
        return []
    return stream.shuffled([*right, *wrong])


def _as_felt(made: Sequence[Done]) -> tuple[Done, ...]:
    """The record of what was made: each move with the one way that it turned out."""
    return read_record(write_record(made))
