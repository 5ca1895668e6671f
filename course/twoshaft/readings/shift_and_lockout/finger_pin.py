"""The pin of the finger: is it home?"""

from __future__ import annotations

from twoshaft.models.shift import other_end
from twoshaft.readings.keyed import Stream
from twoshaft.readings.shift_and_lockout.given import Ends, Pin
from twoshaft.readings.shift_and_lockout.lot import BANK, Lot
from twoshaft.units.quantities import Q

LEAST_MM = 0.5
GUARD_MM = 0.15
TRIES = 200


def draw(lot: Lot) -> Pin:
    """A pin as measured, each verdict in turn, clear of what is asked of its ends."""
    stream = lot.stream.child("pin")
    kinds = [one.id for one in BANK.lists["finger_pin"]]
    wanted = lot.in_turn("pin verdict", kinds[:3])[0]
    beside = [kind for kind in kinds if kind != wanted]
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
                others=tuple(_ends(stream, kind) for kind in stream.shuffled(beside)),
                verdicts=BANK.lists["finger_pin"],
            )
    raise lot.too_small("pin")


def _ends(stream: Stream, kind: str) -> Ends:
    """The ends of another pin that ask for this verdict, clear of what is asked of them."""
    for _ in range(10 * TRIES):
        least = round(0.4 + 0.1 * stream.integer(5), 1)
        struck, far = (round(stream.uniform(0.0, 2.2), 2) for _ in range(2))
        near = min(abs(struck - least), abs(far - least), abs(struck + far - 2 * least))
        if near >= GUARD_MM and verdict(struck, far, least) == kind:
            return Ends(struck, far, least)
    raise AssertionError(f"no ends of a pin ask for {kind}")


def verdict(struck_mm: float, far_mm: float, least_mm: float) -> str:
    """Which verdict two ends ask for."""
    if struck_mm + far_mm < 2 * least_mm:
        return "shorter"
    if struck_mm < least_mm:
        return "further"
    return "back" if far_mm < least_mm else "home"
