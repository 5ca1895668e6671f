"""What nobody does with a unit that can hurt somebody."""

from __future__ import annotations

from twoshaft.readings.reading_faults.lot import Lot, say

DANGEROUS = ("lockout", "two-at-once", "gears-held")
"""Kinds of check of which a failed one takes the unit out of use at once: common practice, no
source."""
DO = [
    ["tag", "Tag it as not to be fitted, find the fault, mend it, and make the check again"],
    ["careful", "Fit it, and tell the driver to shift with care until there is time"],
    ["again", "Make the check until it passes once, and sign for that one"],
    ["drive", "Fit it and drive round the yard, to learn more about the fault"],
    ["spare", "Put it back on the shelf as a spare, without a note"],
    ["force", "Work the lever hard for a while, so that the parts find their place"],
]
WHY = {
    "lockout": "A direct shift into reverse on the road can lock the wheels",
    "two-at-once": "Two gears at once lock the shafts, and the wheels with them",
    "gears-held": "A gear that jumps out leaves the driver without drive or braking of the engine",
}
OTHER_WHY = [
    ["noise", "The noise would bring the customer back"],
    ["oil", "The oil would have to be changed sooner"],
    ["paper", "The record would be incomplete"],
]
NEVER = [
    ["road", "Drive it on the road, to see whether the fault comes back"],
    ["sign", "Sign for the check because the others passed"],
    ["sometimes", "Count a check that passes only sometimes as passed"],
    ["alone", "Leave it on the bench without a note for the next shift"],
    ["engine", "Run it on the engine to hear where the noise is"],
]
MAY = [
    ["hand", "Turn it slowly by hand with fingers clear of the gears"],
    ["repeat", "Make the same check a second time to be sure of what it shows"],
    ["open", "Open it, once its oil is drained, to look at what is suspected"],
    ["ask", "Ask somebody else to make the check without telling what you found"],
    ["note", "Write down what was seen before anything is taken apart"],
]


def draw(lot: Lot) -> dict:
    """A check that failed: ``check``, ``shown``; ``do``, ``why`` and ``never`` to choose from."""
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
    why = [*([kind, WHY[kind]] for kind in DANGEROUS), *OTHER_WHY]
    never = [*lot.in_turn("never", NEVER)[:3], *lot.in_turn("may", MAY)[:3]]
    return {
        "check": [check.id, check.name],
        "kind": check.kind,
        "shown": say(shown),
        "do": stream.shuffled(DO),
        "why": stream.shuffled(why),
        "never": stream.shuffled(never),
    }
