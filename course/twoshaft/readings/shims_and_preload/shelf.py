"""A shelf that is half empty: one shim does, or only a gamble is left, or none reaches."""

from __future__ import annotations

from twoshaft.models.shim import target_interference
from twoshaft.readings.lots import TRIES
from twoshaft.readings.shims_and_preload.lot import (
    Lot,
    measured,
    read_lengths,
    verdicts,
    window_of,
)

KINDS = ("safe", "meets", "misses")
SIZES = 5
MAY = [
    ["order", "Get the missing size from stores and leave the unit open until it is there"],
    ["again", "Measure the stack again, with a finer tool or more readings"],
    ["clean", "Clean and deburr the seats, measure again, and see what shim is needed then"],
    ["manual", "Look in the maker's manual for further sizes or another shim set"],
]
MUST_NOT = [
    ["file", "Rub a thicker shim down on emery cloth"],
    ["foil", "Pack a thinner shim out with brass foil"],
    ["three", "Stack three thin shims where one is meant"],
    ["nut", "Take the nearest shim and make up for it with the torque of the bolts"],
    ["film", "Put sealant behind the nearest shim to fill the rest"],
    ["old", "Put the old shim back, since the unit ran with it"],
    ["run-in", "Take the next tighter one; it will run itself loose"],
]


def draw(lot: Lot) -> dict:
    """Another support with the few shims that are left on the shelf today.

    ``support``, ``name``, ``rows``, ``lengths``, ``kind`` of the target with ``low_mm`` and
    ``high_mm``, ``doubt_mm``, ``shims`` (key, label, and two more answers), ``totals`` [mm], and
    ``offers`` (key, label): ideas of which some may be followed.
    """
    support, stream = lot.against, lot.stream.child("shelf")
    wanted = lot.in_turn("shelf", KINDS)[0]
    low, high = target_interference(support)
    sizes = lot.bearings.shim_set_by_id(support.shim_set).thicknesses_mm
    for _ in range(TRIES):
        lengths = read_lengths(support, stream)
        window = window_of(support, lengths, low, high)
        left = _left(sizes, window, wanted, stream)
        if left is not None:
            break
    else:
        raise lot.too_small("shelf")
    may = stream.shuffled(MAY)[: 2 + stream.integer(2)]
    offers = stream.shuffled([*may, *stream.shuffled(MUST_NOT)[: 7 - len(may)]])
    keys = {f"shim-{mm:.2f}".replace(".", ""): mm for mm in left}
    return {
        "support": support.id,
        "name": support.name,
        "rows": measured(support, lengths),
        "lengths": lengths,
        "kind": "end play" if support.target.kind == "end-play" else "preload",
        "low_mm": support.target.low_mm,
        "high_mm": support.target.high_mm,
        "doubt_mm": window[2],
        "shims": [
            *[[key, f"{mm:.2f} mm"] for key, mm in keys.items()],
            ["again", "None is safe; one meets it on paper only: measure again, finer, first"],
            ["none", "None of these meets the target, not even on paper: get another size"],
        ],
        "totals": keys,
        "offers": offers,
    }


def _left(sizes, window, wanted, stream):
    """A few neighbouring shims of the set whose best one is of the wanted kind."""
    judged = {mm: verdicts([mm], window, clear_of_limits=True) for mm in sizes}
    by_size = {mm: verdict[0] for mm, verdict in judged.items() if verdict}
    rank = KINDS.index(wanted)
    usable = [mm for mm in by_size if KINDS.index(by_size[mm]) >= rank]
    best = [mm for mm in usable if by_size[mm] == wanted]
    if not best or len(usable) < SIZES:
        return None
    middle = (window[0] + window[1]) / 2
    near = sorted(usable, key=lambda mm: (abs(mm - middle), mm))[: SIZES + 2]
    first = near[0]
    if by_size[first] != wanted:
        return None
    return sorted([first, *stream.shuffled(near[1:])[: SIZES - 1]])
