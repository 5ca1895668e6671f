"""A shelf that is half empty: one shim does, or only a gamble is left, or none reaches."""

from __future__ import annotations

from twoshaft.models.shim import target_interference
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.shims_and_preload.given import Shelf
from twoshaft.readings.shims_and_preload.lot import (
    BANK,
    Lot,
    measured,
    read_lengths,
    verdicts,
    window_of,
)
from twoshaft.records import Option

KINDS = ("safe", "meets", "misses")
SIZES = 5
IDEAS = 4


def draw(lot: Lot) -> Shelf:
    """Another support with the few shims that are left on the shelf today."""
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
    keys = {f"shim-{mm:.2f}".replace(".", ""): mm for mm in left}
    return Shelf(
        support=support.id,
        name=support.name,
        rows=measured(support, lengths),
        lengths=lengths,
        kind="end play" if support.target.kind == "end-play" else "preload",
        low_mm=support.target.low_mm,
        high_mm=support.target.high_mm,
        doubt_mm=window[2],
        shims=(
            *(Option(key, f"{mm:.2f} mm") for key, mm in keys.items()),
            *BANK.lists["none_fits"],
        ),
        totals=keys,
        may=lot.scenes_asked("may", BANK, IDEAS, lambda: _sizes(stream)),
    )


def _sizes(stream: Stream) -> dict[str, object]:
    """A shim and two that make it up [mm], and a few hundredths or thousandths."""
    one, two = 20 + stream.integer(30), 60 + stream.integer(60)
    return {
        "mm": f"{(one + two) / 100:.2f}",
        "one": f"{one / 100:.2f}",
        "two": f"{two / 100:.2f}",
        "few": 2 + stream.integer(5),
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
