"""The force of a detent, and what of it reaches the hand."""

from __future__ import annotations

from twoshaft.models.shift import detent_force
from twoshaft.readings.keyed import Stream
from twoshaft.readings.shift_and_lockout.given import Detent, Lever, Named, Pulls
from twoshaft.readings.shift_and_lockout.lot import BANK, Lot
from twoshaft.units.quantities import Q

GUARD = 0.06
"""Least distance from a limit, as a part of it: far beyond the rounding of the answer."""
SPREAD = 0.25
TRIES = 200


def draw_detent(lot: Lot) -> Detent:
    """A spring as measured on the bench, each verdict in turn, clear of the limits."""
    if not lot.shift.detents:
        raise lot.too_small("detent")
    stream = lot.stream.child("detent")
    detent = lot.in_turn("detent rail", lot.shift.detents)[0]
    wanted = lot.in_turn("detent verdict", ("fit", "weak", "strong"))[0]
    names = {body.id: body.name for body in lot.shift.passive}
    for _ in range(TRIES):
        rate = round(detent.spring_rate_n_per_mm * stream.uniform(0.9, 1.15), 1)
        ramp = round(2 * (detent.ramp_deg + stream.uniform(-5, 5))) / 2
        depth = round(detent.notch_depth_mm * stream.uniform(0.9, 1.1), 1)
        nominal = _leaving(detent.spring_force_n, ramp, detent.friction)
        limits = round(nominal * (1 - SPREAD)), round(nominal * (1 + SPREAD))
        free = round(stream.uniform(24, 30), 1)
        pressed = detent.spring_force_n * stream.uniform(0.5, 1.6) / rate
        fitted = round(free - pressed, 1)
        force = _leaving(rate * (free - fitted), ramp, detent.friction)
        near = min(abs(force - limit) / limit for limit in limits)
        verdict = "weak" if force < limits[0] else "strong" if force > limits[1] else "fit"
        if verdict == wanted and near >= GUARD and free - fitted > 2:
            return Detent(
                rail=Named(detent.rail, names[detent.rail]),
                rate_n_per_mm=rate,
                free_mm=free,
                fitted_mm=fitted,
                ramp_deg=ramp,
                friction=detent.friction,
                depth_mm=depth,
                limits_n=limits,
                others=_others(stream, wanted),
                verdicts=BANK.lists["spring"],
            )
    raise lot.too_small("detent")


def _others(stream: Stream, own: str) -> tuple[Pulls, ...]:
    """Rails of which one was pulled unevenly, and two are not as the learner's own spring is."""
    kinds = [one.id for one in BANK.lists["spring"] if one.id not in (own, "again")]
    return tuple(_pulls(stream, kind) for kind in stream.shuffled(["again", *kinds]))


def _pulls(stream: Stream, kind: str) -> Pulls:
    """Three pulls near each other, inside or beside their limits; or one of them far off."""
    low = 24 + stream.integer(30)
    high = low + 14 + stream.integer(10)
    middle = {
        "fit": low + 4 + stream.integer(high - low - 7),
        "weak": low - 4 - stream.integer(6),
        "strong": high + 4 + stream.integer(9),
        "again": low + 3 + stream.integer(4),
    }[kind]
    pulls = [middle, middle + 1, middle + stream.choice((-1, 2))]
    if kind == "again":
        pulls[2] = high + 6 + stream.integer(12)
    return Pulls(tuple(stream.shuffled(pulls)), (low, high))


def draw_lever(lot: Lot) -> Lever:
    """The way from the rail to the hand."""
    stream = lot.stream.child("lever")
    radius = round(lot.shift.finger_radius_mm + stream.uniform(-4, 4), 1)
    return Lever(
        rail_n=float(40 + stream.integer(41)),
        radius_mm=radius,
        lever_mm=float(90 + 5 * stream.integer(9)),
        way_mm=round(6.5 + stream.integer(16) / 10, 1),
    )


def _leaving(spring_n: float, ramp_deg: float, friction: float) -> float:
    return float(detent_force(Q(spring_n, "N"), Q(ramp_deg, "deg"), friction).to_start.magnitude)
