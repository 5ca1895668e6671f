"""The pin of the finger: is it home?"""

from __future__ import annotations

from twoshaft.models.shift import other_end
from twoshaft.readings.shift_and_lockout.lot import Lot
from twoshaft.units.quantities import Q

LEAST_MM = 0.5
VERDICTS = [
    ["home", "Home: below the surface at both ends"],
    ["further", "Not home: drive it further in"],
    ["back", "Too far in: drive it back from the other side"],
]
GUARD_MM = 0.15
TRIES = 200


def draw(lot: Lot) -> dict:
    """A pin as measured: ``hub_mm``, ``pin_mm``, ``struck_mm``, ``least_mm``, ``verdicts``."""
    stream = lot.stream.child("pin")
    wanted = lot.in_turn("pin verdict", [key for key, _ in VERDICTS])[0]
    for _ in range(TRIES):
        pin = float(20 + 2 * stream.integer(5))
        hub = round(pin + stream.uniform(1.8, 3.0), 1)
        struck = round(stream.uniform(0.0, hub - pin), 2)
        far = float(other_end(Q(hub, "mm"), Q(pin, "mm"), Q(struck, "mm")).magnitude)
        if min(abs(struck - LEAST_MM), abs(far - LEAST_MM)) < GUARD_MM:
            continue
        if verdict(struck, far, LEAST_MM) == wanted:
            return {
                "hub_mm": hub,
                "pin_mm": pin,
                "struck_mm": struck,
                "least_mm": LEAST_MM,
                "verdicts": stream.shuffled(VERDICTS),
            }
    raise lot.too_small("pin")


def verdict(struck_mm: float, far_mm: float, least_mm: float) -> str:
    """Which verdict two ends ask for."""
    if struck_mm < least_mm:
        return "further"
    return "back" if far_mm < least_mm else "home"
