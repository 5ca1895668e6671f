"""Hand tests to plan, and records of hand tests to read."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations

from twoshaft.models.shift import (
    explains,
    gate_plan,
    lockout_reading,
    read_record,
    say_felt,
    way_in,
    write_record,
)
from twoshaft.models.shift.handwork import (
    FIRM,
    HIGH,
    LET_GO,
    LIFT,
    LOW,
    LOWER,
    NEUTRAL,
    Done,
    say_gears,
)
from twoshaft.models.shift.symptoms import NOTHING
from twoshaft.readings.keyed import Stream
from twoshaft.readings.shift_and_lockout.given import (
    Explain,
    Gate,
    HandRecord,
    Lockout,
    OneTest,
    Reveal,
    Written,
)
from twoshaft.readings.shift_and_lockout.lot import BANK, Bench, Lot, options
from twoshaft.records import labels
from twoshaft.units.kept import kept

Part = tuple[str, list[str]]
"""Moves that are written down together: title and codes."""
OPTIONS = 7
READ = 3
MOST_RIGHT = 4
LEAST_WRONG = 3


def draw_gate(lot: Lot) -> Gate:
    """Which way round the gate is."""
    return Gate(mirror=lot.mirror, moves=lot.bench.moves, plan=gate_plan(lot.bench.own))


def record(lot: Lot, made: Sequence[Done], parts: Sequence[Part] = ()) -> HandRecord:
    """A record of a hand test.

    Parameters
    ----------
    made : sequence of Done
        What was done and felt.
    parts : sequence of Part
        How the moves are written down together; each on its own line by default.
    """
    if not parts:
        label = labels(lot.bench.moves)
        words = [Written(label[one.code], say_felt(one.felt[0])) for one in made]
        return HandRecord(write_record(made), tuple(words))
    words, at = [], 0
    for title, moves in parts:
        words.append(Written(title, _outcome(made[at : at + len(moves)])))
        at += len(moves)
    return HandRecord(write_record(made), tuple(words))


def _outcome(made: Sequence[Done]) -> str:
    """What moves that belong together brought about, in words."""
    said = []
    for one in made:
        felt = one.felt[0]
        if one.code.removeprefix(FIRM) in (HIGH, LOW):
            said.append("stopped" if felt.stopped else say_gears(felt.gears))
        elif one.code == LET_GO and felt.gears:
            said.append("it stays" if felt.held else "nothing holds it")
        elif felt.stopped:
            said.append("stopped on the way back" if one.code == NEUTRAL else "stopped")
        elif len(made) == 1:
            said.append(say_felt(felt))
    return "stopped both ways" if said == ["stopped", "stopped"] else "; ".join(said)


@kept()
def _proofs(bench: Bench) -> dict[str, list[tuple[Done, ...]]]:
    """Records of the lockout's proof, sound and with each misbuild, by what they say."""
    moves, direct, block = bench.proof, bench.direct, bench.shift.must_block[0]
    found: dict[str, list[tuple[Done, ...]]] = {}
    cases: list[tuple[list[str], Sequence[str]]] = [([], moves), ([], direct)]
    cases += [([m], moves) for m in bench.misbuild_ids]
    for wrong, done in cases:
        made = bench.made(wrong, done)
        reading = lockout_reading(bench.own, made, block.earlier, block.later)
        if reading == "fails":  # whoever sees it go through stops there
            made = made[: len(direct)]
        found.setdefault(reading, []).append(made)
    return found


def draw_lockout(lot: Lot) -> Lockout:
    """The direct shift to be proven, and records of such proofs to be read."""
    stream, block = lot.stream.child("lockout"), lot.shift.must_block[0]
    by_reading = _proofs(lot.bench)
    readings = [one.id for one in BANK.lists["lockout_says"] if one.id in by_reading]
    # All readings but one, and one of them twice: no answer does for every record.
    shown = lot.in_turn("lockout reading", readings)[:READ]
    shown = stream.shuffled([*shown, stream.choice(shown)])
    return Lockout(
        earlier=block.earlier,
        later=block.later,
        records=tuple(record(lot, stream.choice(by_reading[one])) for one in shown),
        readings=options(stream, "lockout_says"),
    )


def draw_reveal(lot: Lot) -> Reveal:
    """A misbuild to be shown by hand, by another test than the direct shift."""
    bench = lot.bench
    direct = _as_felt(bench.made([], bench.direct))
    # The direct shift is asked for already; here another test is wanted.
    pool = [
        id
        for id in bench.misbuild_ids
        if bench.kinds(id) != {NOTHING} and explains(bench.fitted(id), direct)
    ]
    if not pool:
        raise lot.too_small("reveal")
    (chosen,) = lot.named([lot.in_turn("reveal", pool)[0]])
    return Reveal(misbuild=chosen)


@kept()
def standard_tests(bench: Bench) -> dict[str, tuple[str, list[Part]]]:
    """The tests of a full hand test: name, and parts.

    Each gate is left before its other gear is tried, so that the lockout lets it in.
    """
    shift = bench.own
    label = labels(bench.moves)
    between = [code for code in label if code.startswith("at:") and "+" in code]
    through = [
        (gear, way := way_in(shift, gear), [LOWER] if LIFT in way else [])
        for turn in (HIGH, LOW)
        for rail in sorted(shift.rails, key=lambda rail: rail.gate)
        if (gear := rail.high if turn == HIGH else rail.low)
    ]
    tests: dict[str, tuple[str, list[Part]]] = {
        "gears": (
            "every gear, one after the other",
            [(f"{_big(g)}: in, and back", [*way, NEUTRAL, *back]) for g, way, back in through],
        ),
        "let-go": (
            "let go in every gear",
            [
                (f"{_big(g)}: in, let go and shake, and back", [*way, LET_GO, NEUTRAL, *back])
                for g, way, back in through
            ],
        ),
        "between": (
            "between two gate planes, turned both ways",
            [
                (
                    f"{label[code]}; turn one way, then the other",
                    [code, HIGH, NEUTRAL, LOW, NEUTRAL],
                )
                for code in between
            ],
        ),
    }
    for block in bench.shift.must_block[:1]:
        tests["direct"] = (
            f"from {block.earlier} straight towards {block.later}",
            [(label[code], [code]) for code in bench.direct],
        )
    return tests


def _big(name: str) -> str:
    return name[:1].upper() + name[1:]


def _moves(parts: Sequence[Part]) -> list[str]:
    return [code for _, moves in parts for code in moves]


@kept()
def _telling_tests(bench: Bench) -> dict[str, tuple[tuple[Done, ...], list[Part]]]:
    """Parts of the hand test after which some misbuilds can still be there and some cannot."""
    tests, some = standard_tests(bench), {}
    for names in (names for n in (1, 2, 3) for names in combinations(tests, n)):
        parts = [part for name in names for part in tests[name][1]]
        made = bench.made([], _moves(parts))
        right, wrong = _fitting(bench, made)
        if right and len(wrong) >= LEAST_WRONG:
            some["; ".join(tests[name][0] for name in names)] = made, parts
    return some


def draw_one_test(lot: Lot) -> OneTest:
    """A part of the hand test that passed, and what may still be wrong."""
    stream, some = lot.stream.child("one_test"), _telling_tests(lot.bench)
    if not some:
        raise lot.too_small("one_test")
    name = lot.in_turn("one_test", list(some))[0]
    made, parts = some[name]
    offered = lot.offered(_options(lot, stream, made))
    return OneTest(name=name, record=record(lot, made, parts), options=offered)


def draw_explain(lot: Lot) -> Explain:
    """The record of a full hand test of a unit in which one thing is wrong."""
    stream, bench = lot.stream.child("explain"), lot.bench
    label, proof, tests = labels(bench.moves), bench.proof, standard_tests(bench)
    told = [m for m in bench.misbuild_ids if bench.kinds(m) != {NOTHING}]
    for wrong in lot.in_turn("explain", told):
        # Whoever sees the direct shift go through stops there.
        straight = bench.kinds(wrong) & {"direct-passes", "direct-sometimes"}
        last = bench.direct if straight else proof
        parts = [*tests["let-go"][1], *tests["between"][1], *((label[c], [c]) for c in last)]
        made = bench.made([wrong], _moves(parts))
        offered = _options(lot, stream, made, wrong)
        if offered:
            return Explain(record=record(lot, made, parts), options=lot.offered(offered))
    raise lot.too_small("explain")


def _fitting(bench: Bench, made: Sequence[Done]) -> tuple[list[str], list[str]]:
    """Misbuilds that can behave as was made, and those that cannot."""
    work = _as_felt(made)
    right = [id for id in bench.misbuild_ids if explains(bench.fitted(id), work)]
    return right, [id for id in bench.misbuild_ids if id not in right]


def _options(lot: Lot, stream: Stream, made: Sequence[Done], first: str | None = None) -> list[str]:
    """Misbuilds to choose from: some that fit what was felt, some that do not."""
    right, wrong = (stream.shuffled(ids) for ids in _fitting(lot.bench, made))
    if first is not None:
        right = [first, *(id for id in right if id != first)]
    right = right[:MOST_RIGHT]
    wrong = wrong[: OPTIONS - len(right)]
    if not right or len(wrong) < LEAST_WRONG:
        return []
    return stream.shuffled([*right, *wrong])


def _as_felt(made: Sequence[Done]) -> tuple[Done, ...]:
    """The record of what was made: each move with the one way that it turned out."""
    return read_record(write_record(made))
