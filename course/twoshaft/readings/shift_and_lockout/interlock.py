"""Two gears at once, which rails a gear locks, and what a worn pin leaves free."""

from __future__ import annotations

from twoshaft.models.shift import free_movement, locked_rails, pin_play, without_pin
from twoshaft.readings.keyed import Stream
from twoshaft.readings.shift_and_lockout.given import Interlock, LeftOut, Moved, Named
from twoshaft.readings.shift_and_lockout.lot import BANK, Lot
from twoshaft.records import Option
from twoshaft.units.quantities import Q
from twoshaft.units.sections.shift import Interlock as InterlockPin

CASES = 2
GUARD_MM = 0.12
TRIES = 200


def draw(lot: Lot) -> Interlock:
    """Gears that are in, pins that are not; a pin that was measured, and rails beside it."""
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
    if len(cases) < CASES:
        raise lot.too_small("interlock")
    chosen = lot.next_ones("interlock case", cases, CASES)
    pin = lot.in_turn("interlock pin", list(shift.interlocks))[0]
    wanted = lot.in_turn("interlock verdict", ("keep", "renew"))[0]
    beside = ["missing", "missing", "renew" if wanted == "keep" else "keep"]
    beside[1] = stream.choice(("keep", "renew", "missing"))
    return Interlock(
        does=lot.asked("two_at_once"),
        cases=tuple(LeftOut(gear, Named(out.id, out.name)) for gear, out in chosen),
        rails=tuple(Option(rail.body, names[rail.body]) for rail in shift.rails),
        says=BANK.lists["rail"],
        pin=pin.name,
        **_measured(lot, stream, pin, wanted),
        others=tuple(_moved(stream, kind) for kind in stream.shuffled(beside)),
        verdicts=BANK.lists["interlock_pin"],
    )


def _moved(stream: Stream, kind: str) -> Moved:
    """A rail that moves within its limit, beyond it, or all the way into its gear."""
    limit, gear = round(0.4 + 0.1 * stream.integer(6), 1), round(7 + 0.1 * stream.integer(25), 1)
    free = {
        "keep": limit - 0.1 * (1 + stream.integer(3)),
        "renew": limit + 0.2 + 0.1 * stream.integer(16),
        "missing": gear,
    }[kind]
    return Moved(round(free, 1), limit, gear)


def _measured(lot: Lot, stream: Stream, pin: InterlockPin, wanted: str) -> dict[str, float]:
    """What was measured of a pin that is to be kept or renewed."""
    for _ in range(TRIES):
        notch = round(pin.notch_mm + stream.uniform(-0.2, 0.2), 2)
        gap = round(pin.gap_mm + stream.uniform(-0.1, 0.1), 2)
        play = stream.uniform(0.1, 1.3)
        length = round(notch + gap - play, 2)
        limit = round(stream.uniform(0.4, 0.7), 1)
        ramp = round(2 * (pin.ramp_deg + stream.uniform(-6, 6))) / 2
        found = pin_play(Q(notch, "mm"), Q(gap, "mm"), Q(length, "mm"))
        free = float(free_movement(found, Q(ramp, "deg")).magnitude)
        if abs(free - limit) >= GUARD_MM and ("keep" if free <= limit else "renew") == wanted:
            return {
                "notch_mm": notch,
                "gap_mm": gap,
                "length_mm": length,
                "ramp_deg": ramp,
                "limit_mm": limit,
            }
    raise lot.too_small("interlock")
