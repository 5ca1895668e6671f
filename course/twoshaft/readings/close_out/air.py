"""A blocked breather, and the leak test."""

from __future__ import annotations

from twoshaft.models.closeout import GUARD, leak_rate, pressure_in, uncertainty_of_loss
from twoshaft.models.closeout.air import ZERO_K
from twoshaft.models.shape import keys_of, places_seen, section_of, solids_of
from twoshaft.readings.close_out.given import Breather, Closed, Foam, Leak, Tested
from twoshaft.readings.close_out.lot import BANK, Lot
from twoshaft.readings.keyed import Stream
from twoshaft.readings.scenes import near_scene
from twoshaft.records import Option
from twoshaft.units.sections.shapes import RingSolid, Rod, Solid

FOAMS = 2
"""How many parts that keep the oil in are pointed at."""
CLEAR = 0.2
"""So far from a seal's limit a pressure keeps, as a share: no rounding decides."""


def draw_breather(lot: Lot) -> Breather:
    """An own unit that warms with its breather blocked, and others, without their oil."""
    stream = lot.stream.child("breather")
    ways = ["holds", "out", "in", stream.choice(["holds", "out", "in"])]
    outside = float(985 + stream.integer(46))
    return Breather(
        closed_c=float(10 + stream.integer(16)),
        hot_c=float(75 + stream.integer(26)),
        outside_mbar=outside,
        others=tuple(
            _closed(stream, letter, way, outside)
            for letter, way in zip("abcd", stream.shuffled(ways), strict=True)
        ),
        answers=BANK.lists["breather_does"],
    )


def _closed(stream: Stream, id: str, way: str, outside: float) -> Closed:
    while True:
        seal = float(100 + 10 * stream.integer(21))
        one, other = (float(5 + stream.integer(105)) for _ in range(2))
        over = pressure_in.plain(outside, one, other, 1, 0)
        fits = {
            "holds": 0.2 * seal < over < (1 - CLEAR) * seal,
            "out": (1 + CLEAR) * seal < over < 2 * seal,
            "in": over < -60,
        }[way]
        if fits:
            return Closed(id, one, other, seal)


def draw_leak(lot: Lot) -> Leak:
    """The test of an own unit whose air changes its temperature, and leaks of other units."""
    stream, test = lot.stream.child("leak"), lot.section.needed_leak_test()
    litres = round(lot.section.breather.air_litre + lot.filling.capacity_litre, 2)
    outside = float(985 + stream.integer(46))
    start_c = (150 + stream.integer(80)) / 10
    warmer = (6 + stream.integer(12)) / 10 * (1 if stream.integer(2) else -1)
    start = round(test.pressure_mbar * stream.uniform(0.94, 1.0), 1)
    leak = test.leak_most_ml_per_min * stream.uniform(0.4, 1.8)
    lost = leak * test.minutes * outside / litres / 1000
    end = (outside + start - lost) * (start_c + warmer + ZERO_K) / (start_c + ZERO_K) - outside
    u = leak_rate.plain(
        uncertainty_of_loss.plain(test.gauge_mbar, test.thermometer_k, outside + start, start_c),
        litres, test.minutes, outside,
    )  # fmt: skip
    ways = ["tight", "leaks", "again", stream.choice(["tight", "leaks", "again"])]
    return Leak(
        outside_mbar=outside,
        start_mbar=start,
        end_mbar=round(end, 1),
        start_c=start_c,
        end_c=round(start_c + warmer, 1),
        litres=litres,
        minutes=float(test.minutes),
        most=float(test.leak_most_ml_per_min),
        u=round(u, 2),
        others=tuple(
            _tested(stream, letter, way)
            for letter, way in zip("abcd", stream.shuffled(ways), strict=True)
        ),
        answers=BANK.lists["leak_do"],
        foam=_foam(lot, stream.child("foam")),
    )


def _foam(lot: Lot, stream: Stream) -> Foam | None:
    """Parts that keep the oil in, all in one section; None where too few are drawn."""
    unit = lot.unit
    for view in section_of(unit).views if section_of(unit).own else ():
        seen = places_seen(unit, view.id)
        tight = [
            key
            for key in keys_of(unit, view.id)
            if key in seen and any(_tight(one.solid) for one in solids_of(unit, view.id, key))
        ]
        names = {key: solids_of(unit, view.id, key)[0].name for key in tight}
        apart = [key for key in tight if [*names.values()].count(names[key]) == 1]
        if len(apart) < FOAMS + 1:
            continue
        wanted = lot.in_turn(f"foam {view.id}", apart)[:FOAMS]
        near = near_scene(unit, stream, view.id, wanted)
        if near is not None:
            return Foam(near, tuple(Option(key, names[key]) for key in wanted))
    return None


def _tight(solid: Solid) -> bool:
    """Whether a solid keeps the oil in."""
    if isinstance(solid, RingSolid):
        return solid.form in ("seal", "o-ring", "gasket")
    return isinstance(solid, Rod) and solid.form == "plug"


def _tested(stream: Stream, id: str, way: str) -> Tested:
    most, u = float(5 + stream.integer(12)), (3 + stream.integer(10)) / 10
    inside = {
        "tight": stream.uniform(1.25, 2),
        "leaks": -stream.uniform(1.25, 2),
        "again": stream.uniform(-0.7, 0.7),
    }[way]
    return Tested(id, round(most - inside * GUARD * u, 1), most, u)
