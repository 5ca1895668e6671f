"""Readings against limits: guard bands, and what errors cost."""

from __future__ import annotations

from twoshaft.models.inspect import guard_band, mean_uncertainty, ways_cost
from twoshaft.readings.inspect_and_decide.given import Case, Cost, Guard, Held
from twoshaft.readings.inspect_and_decide.lot import BANK, Lot
from twoshaft.readings.keyed import Stream
from twoshaft.units.sections.inspect import WearLimit

READINGS = 4
WAYS = ("use", "renew", "again")
INSIDE = (0.5, 1.0, 1.5, 2.0)
"""How many standard uncertainties an own reading lies inside its limit, in the task on cost."""
CHEAPER = 1.25
"""So many times dearer is the next best way, at least."""


def draw_guard(lot: Lot) -> Guard:
    """Own readings of one part, and means of others."""
    stream, limits = lot.stream.child("guard"), lot.section.limits
    (own,) = lot.next_ones("guard", limits, 1)
    places = _places(own)
    mean = own.limit_mm + (own.new_mm - own.limit_mm) * stream.uniform(0.1, 0.5)
    ways = stream.shuffled([*WAYS, stream.choice(WAYS)])
    return Guard(
        what=own.name,
        readings_mm=tuple(
            round(mean + own.tool_mm * stream.uniform(-1.5, 1.5), places) for _ in range(READINGS)
        ),
        limit_mm=own.limit_mm,
        tool_mm=own.tool_mm,
        least=own.limit_mm < own.new_mm,
        others=tuple(
            _held(stream, letter, stream.choice(limits), way)
            for letter, way in zip("abcd", ways, strict=True)
        ),
        answers=BANK.lists["guard_do"],
    )


def _places(one: WearLimit) -> int:
    return 3 if one.tool_mm < 0.01 else 2


def _held(stream: Stream, id: str, one: WearLimit, way: str) -> Held:
    u = round(mean_uncertainty.plain(one.tool_mm, 1 + stream.integer(READINGS)), 3)
    band = guard_band.plain(u)
    inside = {
        "use": stream.uniform(1.25, 2.2),
        "renew": -stream.uniform(1.25, 2.2),
        "again": stream.uniform(-0.75, 0.75),
    }[way] * band
    least = one.limit_mm < one.new_mm
    mean = one.limit_mm + (inside if least else -inside)
    return Held(id, one.name, round(mean, 3), one.limit_mm, u, least)


def draw_cost(lot: Lot) -> Cost:
    """A reading near its limit, and cases of which each has one cheapest way."""
    stream, costs = lot.stream.child("cost"), lot.section.costs
    u = (10 + stream.integer(15)) / 1000
    limit = (20 + stream.integer(60)) / 20
    ways = stream.shuffled([*WAYS, stream.choice(WAYS)])
    return Cost(
        mean_mm=round(limit + stream.choice(INSIDE) * u, 4),
        limit_mm=limit,
        u_mm=u,
        renew_h=round(costs.renew_hours * stream.uniform(0.6, 1.4), 1),
        again_h=float(round(costs.again_hours * stream.uniform(0.7, 1.4))),
        cases=tuple(_case(stream, letter, way) for letter, way in zip("abcd", ways, strict=True)),
        answers=BANK.lists["cost_do"],
    )


def _case(stream: Stream, id: str, way: str) -> Case:
    while True:
        case = Case(
            id,
            float(1 + stream.integer(60)),
            round(stream.uniform(0.5, 4), 1),
            float(6 + stream.integer(16)),
            round(stream.uniform(0.2, 2), 1),
        )
        costs = ways_cost(case.bad_percent / 100, case.renew_h, case.again_h, case.look_h)
        best, second, _ = sorted(costs.items(), key=lambda one: one[1])
        if best[0] == way and second[1] >= CHEAPER * best[1]:
            return case
