"""The pin of the finger: is it home?"""

from __future__ import annotations

from twoshaft.models.shift import other_end
from twoshaft.readings.shift_and_lockout.given import Pin
from twoshaft.readings.shift_and_lockout.lot import BANK, Lot, options
from twoshaft.units.quantities import Q

LEAST_MM = 0.5
GUARD_MM = 0.15
TRIES = 200


def draw(lot: Lot) -> Pin:
    """A pin as measured, each verdict in turn, clear of what is asked of its ends."""
    stream = lot.stream.child("pin")
    wanted = lot.in_turn("pin verdict", [one.id for one in BANK.lists["finger_pin"]])[0]
    for _ in range(TRIES):
        pin = float(20 + 2 * stream.integer(5))
        hub = round(pin + stream.uniform(1.8, 3.0), 1)
        struck = round(stream.uniform(0.0, hub - pin), 2)
        far = float(other_end(Q(hub, "mm"), Q(pin, "mm"), Q(struck, "mm")).magnitude)
        if min(abs(struck - LEAST_MM), abs(far - LEAST_MM)) < GUARD_MM:
            continue
        if verdict(struck, far, LEAST_MM) == wanted:
            return Pin(
                hub_mm=hub,
                pin_mm=pin,
                struck_mm=struck,
                least_mm=LEAST_MM,
                verdicts=options(stream, "finger_pin"),
            )
    raise lot.too_small("pin")


def verdict(struck_mm: float, far_mm: float, least_mm: float) -> str:
    """Which verdict two ends ask for."""
    if struck_mm < least_mm:
        return "further"
    return "back" if far_mm < least_mm else "home"
