"""Which misbuilds, and which two of them, explain what the checks showed."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations

from twoshaft.models.faults import explain
from twoshaft.readings.lots import TRIES
from twoshaft.readings.reading_faults.given import Explain, Failed, Two
from twoshaft.readings.reading_faults.lot import BANK, Lot

SUSPECTS = 6
PASSED = 4
UNITS = 4


def draw_explain(lot: Lot) -> Explain:
    """A record of some checks, of which at least one failed, and misbuilds near it."""
    stream = lot.stream.child("explain")
    if len(lot.told) < SUSPECTS:
        raise lot.too_small("explain")
    wrong = lot.in_turn("explain", lot.told)[0]
    same = next((group for group in lot.alike if wrong in group), (wrong,))
    near = [one for one in lot.told if one not in same and lot.kinds(one) & lot.kinds(wrong)]
    rest = [one for one in lot.told if one not in same and one not in near]
    others = [*stream.shuffled(near), *stream.shuffled(rest)][: SUSPECTS - len(same)]
    bad = lot.failed(wrong)
    shown = dict.fromkeys(check for one in others for check in lot.failed(one))
    passed = stream.shuffled([check for check in shown if check not in bad])[:PASSED]
    record = lot.record((wrong,), [c for c in lot.table.checks if c in bad or c in passed])
    suspects = lot.lettered(stream.shuffled([*same, *others]))
    return Explain(record=record, suspects=suspects, answers=BANK.lists["can"])


def draw_two(lot: Lot) -> Two:
    """Units with one thing wrong or two, and one in which two of some suspects are."""
    stream = lot.stream.child("two")
    if not lot.alike or not lot.pairs:
        raise lot.too_small("two")
    pools: dict[str, Sequence[tuple[str, ...]]] = {
        "one": [(one,) for one in lot.apart],
        "several": [group[:1] for group in lot.alike],
        "two": lot.pairs,
    }
    kinds = [*pools, stream.choice(list(pools))]
    sets = [stream.choice(pools[kind]) for kind in stream.shuffled(kinds)]
    units = [
        Failed(letter, lot.record(one, lot.failed(*one)))
        for letter, one in zip("KLMN", sets, strict=True)
    ]
    for pair in lot.in_turn("two pair", lot.pairs)[:TRIES]:
        failed = lot.failed(*pair)
        rest = [one for one in stream.shuffled(lot.told) if one not in pair]
        near = [one for one in rest if set(lot.failed(one)) & set(failed)][:3]
        others = [*near, *(one for one in rest if one not in near)][: SUSPECTS - 2]
        record = lot.record(pair, lot.table.checks)
        offered = set(combinations([m for m in lot.told if m in (*pair, *others)], 2))
        found = explain(lot.unit, {row.check: row.key for row in record})
        if len(offered & set(found.doubles)) == 1:
            break
    else:
        raise lot.too_small("two")
    return Two(
        units=tuple(units),
        how=BANK.lists["how"],
        record=tuple(row for row in record if row.check in failed),
        suspects=lot.lettered(stream.shuffled([*pair, *others])),
    )
