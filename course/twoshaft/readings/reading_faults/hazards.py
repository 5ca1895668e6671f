"""What nobody does with a unit that can hurt somebody."""

from __future__ import annotations

from twoshaft.readings.reading_faults.given import Named, Stop
from twoshaft.readings.reading_faults.lot import BANK, Lot, options, say

DANGEROUS = ("lockout", "two-at-once", "gears-held")
"""Kinds of check of which a failed one takes the unit out of use at once: common practice, no
source."""


def draw(lot: Lot) -> Stop:
    """A check that failed, and what to do, why, and what never."""
    stream, faults = lot.stream.child("stop"), lot.unit.faults
    cases = {}
    for check in faults.checks:
        if check.kind in DANGEROUS:
            for one in lot.told:
                shown = lot.table.outcome((one,), check.id)
                if not shown.passes:
                    cases[check.id, shown.key] = check, shown
    if not cases:
        raise lot.too_small("stop")
    check, shown = lot.in_turn("stop", list(cases.values()))[0]
    never, may = (lot.in_turn(name, BANK.lists[name])[:3] for name in ("never", "may"))
    return Stop(
        check=Named(check.id, check.name),
        kind=check.kind,
        shown=say(shown),
        do=options(stream, "do"),
        why=options(stream, "why"),
        never=tuple(stream.shuffled([*never, *may])),
    )
