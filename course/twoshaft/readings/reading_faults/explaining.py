"""Which misbuilds, and which pairs of them, explain what the checks showed."""

from __future__ import annotations

from itertools import combinations

from twoshaft.models.faults import explain
from twoshaft.readings.lots import TRIES
from twoshaft.readings.reading_faults.given import Explain, Met, Two
from twoshaft.readings.reading_faults.lot import Lot, options, small
from twoshaft.records import Option, labels

OPTIONS = 7
PASSED = 4
PAIRS = 6
RIGHTS = (2, 3)


def draw_explain(lot: Lot) -> Explain:
    """A record of some checks, all passed but perhaps one.

    Two or three of the options explain all of it.
    """
    stream = lot.stream.child("explain")
    groups = [group for group in lot.alike if len(group) in RIGHTS]
    if not groups:
        raise lot.too_small("explain")
    group = lot.in_turn("explain", groups)[0]
    rights = list(group)
    bad = lot.failed(group[0])
    near = [
        one
        for one in lot.told
        if one not in group and any(lot.kinds(one) & lot.kinds(right) for right in rights)
    ]
    rest = [one for one in lot.told if one not in group and one not in near]
    others = [*stream.shuffled(near), *stream.shuffled(rest)][: OPTIONS - len(rights)]
    shown = [check for one in others for check in lot.failed(one)]
    passed = [c for c in dict.fromkeys(shown) if c not in bad]
    passed = stream.shuffled(passed)[:PASSED]
    checks = [c for c in lot.table.checks if c in bad or c in passed]
    record = lot.record((group[0],), checks)
    return Explain(record=record, options=lot.named(stream.shuffled([*rights, *others])))


def draw_two(lot: Lot) -> Two:
    """A record that only one of the pairs explains."""
    stream = lot.stream.child("two")
    firsts = lot.in_turn("two", lot.apart)
    for n in range(TRIES):
        one = firsts[n % len(firsts)]
        other = stream.choice(lot.apart)
        pair = tuple(m for m in lot.told if m in (one, other))
        if len(pair) < 2 or pair not in lot.table.sets:
            continue
        failed = lot.failed(*pair)
        mine = [set(lot.failed(m)) for m in pair]
        if len(failed) < 2 or mine[0] & mine[1]:
            continue
        passed = stream.shuffled([c for c in lot.table.checks if c not in failed])[:PASSED]
        checks = [c for c in lot.table.checks if c in failed or c in passed]
        record = lot.record(pair, checks)
        fitting = explain(lot.unit, {row.check: row.key for row in record})
        if fitting.singles or pair not in fitting.doubles:
            continue
        near = [p for p in _pairs(lot) if set(p) & set(pair) and p not in fitting.doubles]
        shown = [pair, *stream.shuffled(near)[: PAIRS - 1]]
        if len(shown) == PAIRS:
            break
    else:
        raise lot.too_small("two")
    names = labels(lot.named(lot.told))
    pairs = [Option("+".join(p), f"{names[p[0]]}; and {small(names[p[1]])}") for p in shown]
    again = [m for m in stream.shuffled(list(names)) if m not in pair]
    asked = tuple(m for m in lot.told if m in again[:2])
    return Two(
        record=record,
        pairs=tuple(stream.shuffled(pairs)),
        why=options(stream, "why_two"),
        often=tuple(Met(m, names[m], lot.often(m)) for m in asked),
    )


def _pairs(lot: Lot) -> list[tuple[str, str]]:
    known = set(lot.table.sets)
    return [pair for pair in combinations(lot.told, 2) if pair in known]
