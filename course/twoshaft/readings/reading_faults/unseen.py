"""Misbuilds that no check tells apart, and those that none shows."""

from __future__ import annotations

from itertools import combinations

from twoshaft.readings.reading_faults.given import Alike, Silent
from twoshaft.readings.reading_faults.lot import Lot, options, small
from twoshaft.records import Option, labels

PAIRS = 6


def draw_alike(lot: Lot) -> Alike:
    """Pairs of misbuilds, one of which no check tells apart."""
    stream = lot.stream.child("alike")
    groups = lot.in_turn("alike", lot.alike)
    if not groups or len(lot.told) < PAIRS:
        raise lot.too_small("alike")
    right = stream.choice(list(combinations(groups[0], 2)))
    same = [set(group) for group in lot.alike]
    wrong = [
        pair for pair in combinations(lot.told, 2) if not any(set(pair) <= group for group in same)
    ]
    near = [pair for pair in wrong if lot.kinds(pair[0]) & lot.kinds(pair[1])]
    close = stream.shuffled([pair for pair in near if set(pair) & set(right)])
    shown = [*close, *stream.shuffled([p for p in near if p not in close]), *stream.shuffled(wrong)]
    pairs = [right, *dict.fromkeys(shown)][:PAIRS]
    names = labels(lot.named(lot.told))
    texts = [Option("+".join(p), f"{names[p[0]]}; or: {small(names[p[1]])}") for p in pairs]
    return Alike(pairs=tuple(stream.shuffled(texts)), strip=options(stream, "strip"))


def draw_silent(lot: Lot) -> Silent:
    """Misbuilds, one of which no check shows."""
    stream = lot.stream.child("silent")
    if not lot.silent or len(lot.told) < 5:
        raise lot.too_small("silent")
    right = lot.in_turn("silent", lot.silent)[0]
    others = lot.next_ones("silent others", lot.told, 5)
    return Silent(
        options=lot.named(stream.shuffled([right, *others])),
        sure=options(stream, "sure"),
    )
