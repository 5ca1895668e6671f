"""A pair that was measured, the force it should take, and the force that the press shows."""

from __future__ import annotations

from twoshaft.models.fit import Pressed, press_force, pressure
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.pressed_and_driven.given import Gauge, Press
from twoshaft.readings.pressed_and_driven.lot import BANK, Lot
from twoshaft.units.quantities import Q

LEAST_UM = 10.0
VERDICTS = {"as-expected": (1.12, 1.68), "too-hard": (2.6, 3.2), "too-easy": (0.42, 0.6)}
"""Friction at the press, in parts of the lower one that is expected: clear of both ends."""
OTHERS = 3
SHOWN = {"as-expected": (0.95, 1.05), "too-hard": (1.25, 1.7), "too-easy": (0.45, 0.75)}
"""What other gauges show, in parts of the force at that end: clear of the workshop's tenth."""
MOST_FRICTION, LEAST_FRICTION = 0.4, 0.02


def draw(lot: Lot) -> Press:
    """A press fit of the unit, measured."""
    stream = lot.stream.child("press")
    verdict = lot.in_turn("press-verdict", list(VERDICTS))[0]
    for pressed in lot.in_turn("press", lot.pressed):
        for _ in range(TRIES):
            given = _measured(pressed, stream, verdict)
            if given is not None:
                return given
    raise lot.too_small("press")


def _measured(pressed: Pressed, stream: Stream, verdict: str) -> Press | None:
    entry, fit = pressed.entry, pressed.fit
    hole_um = round(stream.uniform(fit.hole.lower_um, fit.hole.upper_um))
    shaft_um = round(stream.uniform(fit.shaft.lower_um, fit.shaft.upper_um))
    if shaft_um - hole_um < LEAST_UM:
        return None
    share = stream.uniform(*VERDICTS[verdict])
    low, high = entry.friction
    reach = high / low
    if verdict == "as-expected":
        share = 1 + (share - 1) * (reach - 1) / 0.875
    elif verdict == "too-hard":
        share *= reach / 1.875
    true = round(low * share, 4)
    grip = Q(float(shaft_um - hole_um), "um")
    whole = press_force(grip, pressed.pair, Q(entry.length_mm, "mm"), high).m_as("kN")
    if not LEAST_FRICTION <= true <= MOST_FRICTION or whole > (entry.press_kn or 0.0) / 2:
        return None
    return Press(
        press=entry.id,
        name=entry.name,
        size_mm=entry.size_mm,
        length_mm=entry.length_mm,
        hole_mm=round(entry.size_mm + hole_um / 1e3, 3),
        shaft_mm=round(entry.size_mm + shaft_um / 1e3, 3),
        mpa_per_um=float(f"{(pressure(grip, pressed.pair) / grip).m_as('MPa/um'):.3g}"),
        friction=(low, high),
        true_friction=true,
        todo=BANK.lists["press_todo"],
        others=tuple(_gauge(stream) for _ in range(OTHERS)),
    )


def _gauge(stream: Stream) -> Gauge:
    """Another ring in the press: what was worked out, and what the gauge shows."""
    low = 3 + 0.5 * stream.integer(30)
    high = round(low * stream.uniform(1.6, 2.1), 1)
    verdict = stream.choice(list(SHOWN))
    least, most = SHOWN[verdict]
    if verdict == "as-expected":
        shown = stream.uniform(least * low, most * high)
    else:
        shown = (high if verdict == "too-hard" else low) * stream.uniform(least, most)
    return Gauge(low, high, round(shown, 1))
