"""Which rails a gear locks, and what a worn pin leaves free."""

from __future__ import annotations

from twoshaft.models.shift import free_movement, locked_rails, pin_play, without_pin
from twoshaft.readings.shift_and_lockout.lot import Lot
from twoshaft.units.quantities import Q

VERDICTS = [
    ["keep", "It still holds the rail closely enough: use it"],
    ["renew", "It leaves the rail too much way: fit a new pin"],
]
REASONS = [
    ["lock", "The shafts would have to turn at two speeds: they lock solid, and the wheels too"],
    ["noise", "The gears of both would rattle against each other and wear out early"],
    ["oil", "The second gear would throw the oil off the first"],
    ["slow", "The unit would only run in the slower of the two gears"],
    ["clutch", "The clutch would slip, since it would have to drive two gears"],
]
GUARD_MM = 0.12
TRIES = 200


def draw(lot: Lot) -> dict:
    """A gear that is in, a pin that is not, and a pin that was measured.

    ``gear``, ``missing`` (pin id, name), ``rails`` (id, name), ``pin`` (name), ``notch_mm``,
    ``gap_mm``, ``length_mm``, ``ramp_deg``, ``limit_mm`` of free movement, ``verdicts``,
    ``reasons``.
    """
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
    wanted = lot.in_turn("interlock verdict", [key for key, _ in VERDICTS])[0]
    return {
        "gear": gear,
        "missing": [missing.id, missing.name],
        "rails": stream.shuffled([[rail.body, names[rail.body]] for rail in shift.rails]),
        "pin": pin.name,
        **_measured(lot, stream, pin, wanted),
        "verdicts": stream.shuffled(VERDICTS),
        "reasons": stream.shuffled(REASONS),
    }


def _measured(lot: Lot, stream, pin, wanted: str) -> dict:
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
