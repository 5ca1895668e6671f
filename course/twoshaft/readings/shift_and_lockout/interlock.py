"""Which rails a gear locks, and what a worn pin leaves free."""

from __future__ import annotations

from twoshaft.models.shift import free_movement, locked_rails, pin_play, without_pin
from twoshaft.readings.keyed import Stream
from twoshaft.readings.shift_and_lockout.given import Interlock, Named
from twoshaft.readings.shift_and_lockout.lot import BANK, Lot, options
from twoshaft.records import Option
from twoshaft.units.quantities import Q
from twoshaft.units.sections.shift import Interlock as InterlockPin

GUARD_MM = 0.12
TRIES = 200


def draw(lot: Lot) -> Interlock:
    """A gear that is in, a pin that is not, and a pin that was measured."""
    stream, shift = lot.stream.child("interlock"), lot.shift
    names = {body.id: body.name for body in shift.passive}
    cases = []
    for pin in shift.interlocks:
        left = without_pin(shift, pin.id)
        for rail in shift.rails:
            for gear in (rail.low, rail.high):
                # Some rails still locked, some free: neither "all" nor "none" is the answer.
                if gear and 0 < len(locked_rails(left, gear)) < len(shift.rails) - 1:
                    cases.append((gear, pin))
    if not cases:
        raise lot.too_small("interlock")
    gear, missing = lot.in_turn("interlock case", cases)[0]
    pin = lot.in_turn("interlock pin", [p for p in shift.interlocks if p is not missing])[0]
    wanted = lot.in_turn("interlock verdict", [one.id for one in BANK.lists["interlock_pin"]])[0]
    rails = stream.shuffled([Option(rail.body, names[rail.body]) for rail in shift.rails])
    return Interlock(
        gear=gear,
        missing=Named(missing.id, missing.name),
        rails=tuple(rails),
        pin=pin.name,
        **_measured(lot, stream, pin, wanted),
        verdicts=options(stream, "interlock_pin"),
        reasons=options(stream, "two_at_once"),
    )


def _measured(lot: Lot, stream: Stream, pin: InterlockPin, wanted: str) -> dict[str, float]:
    """What was measured of a pin that is to be kept or renewed."""
    for _ in range(TRIES):
        notch = round(pin.notch_mm + stream.uniform(-0.2, 0.2), 2)
        gap = round(pin.gap_mm + stream.uniform(-0.1, 0.1), 2)
        play = stream.uniform(0.1, 1.3)
        length = round(notch + gap - play, 2)
        limit = round(stream.uniform(0.4, 0.7), 1)
        found = pin_play(Q(notch, "mm"), Q(gap, "mm"), Q(length, "mm"))
        free = float(free_movement(found, Q(pin.ramp_deg, "deg")).magnitude)
        if abs(free - limit) >= GUARD_MM and ("keep" if free <= limit else "renew") == wanted:
            return {
                "notch_mm": notch,
                "gap_mm": gap,
                "length_mm": length,
                "ramp_deg": pin.ramp_deg,
                "limit_mm": limit,
            }
    raise lot.too_small("interlock")
