"""Counts and pulls: a fault, or a check that was read or made wrongly."""

from __future__ import annotations

import math
from typing import Literal

from twoshaft.models.faults import AsBuilt, pull
from twoshaft.models.geartrain import count_turns, ratio, ways_of_counting, with_wheel
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.reading_faults.given import Cord, Count, Counted, MeshTeeth, Named, Read
from twoshaft.readings.reading_faults.lot import BANK, Lot
from twoshaft.units.sections.geartrain import GearTrain

CASES = ("right", "held", "wheel")
COUNTS = 4
TURNS = (4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 12.0)
CLEAR_TURNS = 4
"""Steps of the least count that two readings of a count lie apart at least."""
CLEAR_RATIO = 1.05
"""A train that is nearly direct would have the ratio and its inverse look alike."""
STATES = ("light", "inside", "heavy", "again")
CLEAR_N = 1.0
"""What a pull keeps at least from an edge at which another answer begins."""
PULLS = 4
TAKEN = 4

SIDES: tuple[Literal["driving", "driven"], ...] = ("driving", "driven")


def draw_count(lot: Lot) -> Count:
    """Turns counted in one gear: as told, in another way, or with another wheel fitted."""
    stream, train = lot.stream.child("count"), lot.unit.gear_train
    step = train.least_count_turns
    gears = [g for g in train.gears if not g.reverse and len(g.engages) == 1]
    if not gears:
        raise lot.too_small("count")
    gear = lot.in_turn("count", gears)[0]
    mesh = next(m for m in train.meshes if m.id == gear.engages[0])
    pairs = [(mesh, gear.name)]
    pairs += [(m, "final drive") for m in train.meshes if m.id == train.final_drive]
    known = [case for case in CASES if case != "held" or train.differential]
    for _ in range(TRIES):
        own, wheels = train, []
        for one, words in pairs:
            teeth = [getattr(one, side).teeth - 2 + stream.integer(5) for side in SIDES]
            for side, many in zip(SIDES, teeth, strict=True):
                own = with_wheel(own, one.id, side, many)
            wheels.append(MeshTeeth(words, *teeth))
        cases = [*known, stream.choice(known), *known][:COUNTS]
        turns = stream.shuffled(TURNS)[: COUNTS + 1]
        counts = [
            _counted(stream, own, gear.id, mesh.id, case, told)
            for case, told in zip(stream.shuffled(cases), turns[1:], strict=True)
        ]
        total = abs(float(ratio(own, gear.id)))
        if all(counts) and max(total, 1 / total) > CLEAR_RATIO:
            break
    else:
        raise lot.too_small("count")
    return Count(
        gear=Named(gear.id, gear.name),
        wheels=tuple(wheels),
        turns=turns[0],
        step=step,
        counts=tuple(
            Counted(f"count-{n}", told, seen)
            for n, (told, seen) in enumerate(zip(turns[1:], counts, strict=True), 1)
        ),
        says=tuple(one for one in BANK.lists["count_says"] if one.id in known),
    )


def _counted(
    stream: Stream, train: GearTrain, gear: str, mesh: str, case: str, turns: float
) -> float:
    """Turns of the input shaft that somebody counts; 0 where two cases would look alike."""
    both, *held = ways_of_counting(train)[::-1]
    right, *half = (abs(count_turns(train, gear, turns, way).seen) for way in (both, *held))
    seen = {"right": right, "held": half[0] if half else None}.get(case)
    if seen is None:
        side = stream.choice(SIDES)
        one = next(m for m in train.meshes if m.id == mesh)
        teeth = getattr(one, side).teeth + stream.choice((-3, -2, 2, 3))
        seen = abs(count_turns(with_wheel(train, mesh, side, teeth), gear, turns, both).seen)
    apart = [
        *(abs(right - one) for one in half),
        *(abs(seen - one) for one in (right, *half) if case == "wheel"),
    ]
    return seen if min(apart, default=math.inf) >= CLEAR_TURNS * train.least_count_turns else 0.0


def draw_cord(lot: Lot) -> Cord:
    """Pulls on the cord of a closed unit in neutral, and pulls taken in one way or another."""
    stream, unit = lot.stream.child("cord"), lot.unit
    checks = [(c, c.and_support) for c in unit.faults.checks if c.kind == "cord" and c.and_support]
    if not checks:
        raise lot.too_small("cord")
    check, second = checks[0]
    support = unit.bearings.support_by_id(check.support)
    found = pull(check, AsBuilt(unit, unit.shift_if_any, unit.gear_train_if_any))
    drum = round(support.cord_radius_mm * stream.uniform(0.7, 1.3))
    share = support.cord_radius_mm / drum
    low, high, doubt = round(found.low_n * share, 1), round(found.high_n * share, 1), found.doubt_n
    own = lot.in_turn("cord", STATES)[0]
    states = [own, *stream.shuffled([one for one in STATES if one != own])][: PULLS - 1]
    readings = []
    for n, state in enumerate([*states, stream.choice(STATES)], 1):
        for _ in range(TRIES):
            alone = round(found.alone_n * share * stream.uniform(0.8, 1.2))
            rest = round(stream.uniform(max(low - 4 * doubt - 4, 3.0), high + 4 * doubt + 4))
            if _judged(rest, low, high, doubt) == state:
                break
        else:
            raise lot.too_small("cord")
        readings.append(Read(f"pull-{n}", float(alone + rest), float(alone)))
    return Cord(
        name=support.name,
        other=unit.bearings.support_by_id(second).name,
        drum_mm=drum,
        low_n=low,
        high_n=high,
        doubt_n=doubt,
        readings=tuple(readings),
        says=BANK.lists["cord_says"],
        taken=lot.scenes_asked("taken", BANK, TAKEN, lambda: _figures(stream)),
    )


def _judged(rest: float, low: float, high: float, doubt: float) -> str:
    """What a pull says; nothing where it lies near an edge at which another answer begins."""
    edges = [limit + side * doubt for limit in (low, high) for side in (-1, 1)]
    if min(abs(rest - edge) for edge in edges) < CLEAR_N / 2:
        return ""
    if any(abs(rest - limit) < doubt for limit in (low, high)):
        return "again"
    return "light" if rest < low else "heavy" if rest > high else "inside"


def _figures(stream: Stream) -> dict[str, int]:
    """A pull and a small one [N], and two radii of a drum [mm]."""
    small = 30 + 5 * stream.integer(5)
    return {
        "pull": 20 + stream.integer(40),
        "few": 3 + stream.integer(7),
        "small": small,
        "big": small + 10 + 5 * stream.integer(5),
    }
