"""Checks of units that can hurt somebody, and of units that cannot."""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.reading_faults.given import Stop
from twoshaft.readings.reading_faults.lot import BANK, Lot, say, small
from twoshaft.records import Option

DANGEROUS = ("lockout", "two-at-once", "gears-held")
"""Kinds of check of which a failed one takes the unit out of use at once: common practice, no
source."""
CASES = 4
FOUND = 3


def draw(lot: Lot) -> Stop:
    """Checks as they were made, and what was found: on the learner's unit and on others."""
    stream, faults = lot.stream.child("stop"), lot.unit.faults
    failed = {}
    for check in faults.checks:
        if check.kind in DANGEROUS:
            for one in lot.told:
                shown = lot.table.outcome((one,), check.id)
                if not shown.passes:
                    failed[check.id, shown.key] = check, shown
    if not failed:
        raise lot.too_small("stop")
    check, shown = lot.in_turn("stop", list(failed.values()))[0]
    own = Option(check.kind, f"{check.name}: {say(shown)}")
    gears = [gear.name for gear in lot.unit.gear_train.gears if not gear.reverse]
    return Stop(
        cases=lot.scenes("cases", BANK, CASES, lambda: _figures(stream, gears)),
        do=BANK.lists["do"],
        found=(own, *lot.scenes("found", BANK, FOUND, lambda: _figures(stream, gears))),
        road=BANK.lists["road"],
    )


def _figures(stream: Stream, gears: list[str]) -> dict[str, str | int]:
    """A gear, tries of a check (few of many), times [s] or lengths [mm], and a pull [N]."""
    gear = stream.choice(gears)
    return {
        "Gear": gear,
        "gear": small(gear),
        "few": 2 + stream.integer(4),
        "many": 8 + stream.integer(13),
        "short": 3 + stream.integer(5),
        "long": 15 + 5 * stream.integer(7),
        "pull": 45 + stream.integer(36),
    }
