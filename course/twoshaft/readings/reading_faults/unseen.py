"""Misbuilds that no check tells apart, and those that none shows."""

from __future__ import annotations

from itertools import combinations

from twoshaft.readings.reading_faults.lot import Lot, small

PAIRS = 6
STRIP = [
    ["shift", "Take the selector out and look at spring, plate and pin, one after the other"],
    ["setting", "Take the ring out, measure the shim, and look under the ring at its seat"],
    ["joint", "Slacken the bolts and look at threads and faces"],
    ["train", "Take the gear off and count its teeth"],
]
SURE = [
    ["shift", "Count the small parts into their bores aloud while they can be seen, and sign"],
    ["joint", "Wipe threads and bolts dry before the first one is started, and sign"],
    ["order", "Tick the step off on the record while its part can still be seen"],
    ["cold", "Make all final checks a second time with the unit warm"],
    ["drive", "Drive it gently at first and listen"],
    ["paint", "Mark every case bolt with paint after the click"],
]


def draw_alike(lot: Lot) -> dict:
    """Pairs of misbuilds, one of which no check tells apart: ``pairs`` and ``strip``.

    A pair's key is the two ids joined by a plus.
    """
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
    names = dict(map(tuple, lot.named(lot.told)))
    texts = [["+".join(p), f"{names[p[0]]}; or: {small(names[p[1]])}"] for p in pairs]
    return {"pairs": stream.shuffled(texts), "strip": stream.shuffled(STRIP)}


def draw_silent(lot: Lot) -> dict:
    """Misbuilds, one of which no check shows: ``options`` and ``sure``."""
    stream = lot.stream.child("silent")
    if not lot.silent or len(lot.told) < 5:
        raise lot.too_small("silent")
    right = lot.in_turn("silent", lot.silent)[0]
    others = lot.next_ones("silent others", lot.told, 5)
    return {
        "options": lot.named(stream.shuffled([right, *others])),
        "sure": stream.shuffled(SURE),
    }
