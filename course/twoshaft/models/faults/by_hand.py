"""Checks that hand and eye make on levers and gears: the shift and gear-train models."""

from __future__ import annotations

import math
from functools import lru_cache

from twoshaft.models.faults.built import AsBuilt
from twoshaft.models.faults.outcome import Sign
from twoshaft.models.geartrain import Count, count_turns, gap_after_wear, speed_drive_turns
from twoshaft.models.geartrain.turning import Counted
from twoshaft.models.shift import HandProof, mechanism, prove_by_hand
from twoshaft.units.quantities import Q
from twoshaft.units.sections.geartrain import GearTrain
from twoshaft.units.sections.shift import Shift

_GRID_MM = 1.0
"""Half as fine as the rig's grid and sixteen times quicker; a test holds that both agree."""


def proof(shift: Shift) -> HandProof:
    """The test by hand of a mechanism, kept with its section.

    Examples
    --------
    >>> proof(unit.shift).sound
    True
    """
    return prove_by_hand(mechanism(shift, _GRID_MM))


def gears_go_in(check, built: AsBuilt) -> list[Sign]:
    """Gears that the lever does not engage.

    Examples
    --------
    >>> from twoshaft.models.faults import as_built
    >>> worn = unit.faults.misbuild_by_id("finger-peg-worn")
    >>> gears_go_in(unit.faults.check_by_id("try-gears"), as_built(unit, [worn]))
    [Sign(key='cannot-reverse', words='reverse cannot be engaged')]
    """
    return [
        Sign(f"cannot-{gear}", f"{gear} cannot be engaged") for gear in proof(built.shift).cannot
    ]


def gears_held(check, built: AsBuilt) -> list[Sign]:
    """Gears that nothing holds.

    Examples
    --------
    >>> from twoshaft.models.faults import as_built
    >>> no_ball = unit.faults.misbuild_by_id("ball-left-out")
    >>> [sign.words for sign in gears_held(None, as_built(unit, [no_ball]))]
    ['nothing holds fourth once it is in', 'nothing holds third once it is in']
    """
    return [
        Sign(f"not-held-{gear}", f"nothing holds {gear} once it is in")
        for gear in proof(built.shift).not_held
    ]


def two_at_once(check, built: AsBuilt) -> list[Sign]:
    """Sets of gears that can be engaged at once.

    Examples
    --------
    >>> from twoshaft.models.faults import as_built
    >>> no_pins = unit.faults.misbuild_by_id("interlocks-left-out")
    >>> two_at_once(None, as_built(unit, [no_pins]))[0].words
    'fifth and first can be engaged at once'
    """
    return [
        Sign(f"at-once-{'-'.join(gears)}", f"{' and '.join(gears)} can be engaged at once")
        for gears in proof(built.shift).at_once
    ]


def lockout(check, built: AsBuilt) -> list[Sign]:
    """Direct shifts that are not stopped as they must be.

    Examples
    --------
    >>> from twoshaft.models.faults import as_built
    >>> no_spring = unit.faults.misbuild_by_id("spring-left-out")
    >>> [sign.words for sign in lockout(None, as_built(unit, [no_spring]))]
    ['the direct shift from fifth to reverse is stopped only sometimes']
    """
    says = {
        "fails": "is not stopped",
        "unreliable": "is stopped only sometimes",
        "not tried": "could not be tried",
    }
    return [
        Sign(
            f"lockout-{lock.verdict.replace(' ', '-')}-{lock.earlier}-{lock.later}",
            f"the direct shift from {lock.earlier} to {lock.later} {says[lock.verdict]}",
        )
        for lock in proof(built.shift).locks
        if lock.verdict != "holds"
    ]


def turns(check, built: AsBuilt) -> list[Sign]:
    """Count every gear that the lever engages, and compare with the unit as it should be.

    Examples
    --------
    >>> from twoshaft.models.faults import as_built
    >>> swapped = unit.faults.misbuild_by_id("third-wheel-swapped")
    >>> check = unit.faults.check_by_id("count-turns")
    >>> [sign.words for sign in turns(check, as_built(unit, [swapped]))]
    ['third counts too few turns']
    """
    right, found = built.unit.gear_train, []
    step = right.least_count_turns
    cannot = () if built.shift_if_any is None else proof(built.shift).cannot
    for gear in right.gears:
        if gear.id in cannot:
            found.append(Sign(f"uncounted-{gear.id}", f"{gear.id} cannot be counted"))
            continue
        if not drives(built, gear.id):
            words = f"the lever is home in {gear.id}, but {gear.id} does not drive"
            found.append(Sign(f"no-drive-{gear.id}", words))
            continue
        count = _count(built.train, gear.id, check.output_turns, check.counted)
        wanted = _count(right, gear.id, check.output_turns, check.counted)
        if count.same_way != wanted.same_way:
            found.append(Sign(f"other-way-{gear.id}", f"{gear.id} turns the other way round"))
        elif abs(abs(count.seen) - abs(wanted.seen)) >= 2 * step - 1e-9:
            more = abs(count.seen) > abs(wanted.seen)
            way, word = ("more", "too many") if more else ("fewer", "too few")
            found.append(Sign(f"{way}-turns-{gear.id}", f"{gear.id} counts {word} turns"))
    return found


@lru_cache(maxsize=1024)
def _count(train: GearTrain, gear: str, output_turns: float, counted: Counted) -> Count:
    return count_turns(train, gear, output_turns, counted)


def drives(built: AsBuilt, gear: str) -> bool:
    """Whether the sleeve reaches the gear's teeth: a hub turned round stands further away.

    Examples
    --------
    >>> from twoshaft.models.faults import as_built
    >>> turned = unit.faults.misbuild_by_id("fifth-hub-turned")
    >>> drives(as_built(unit, [turned]), "fifth"), drives(as_built(unit, [turned]), "fourth")
    (False, True)
    """
    away_mm = sum(change.away_mm for change in built.hubs if change.away_from == gear)
    if not away_mm:
        return True
    rail = next(r for r in built.shift.rails if gear in (r.low, r.high))
    body = next(b for b in built.shift.passive if b.id == rail.body)
    way_mm = body.range_mm[1] if gear == rail.high else -body.range_mm[0]
    return way_mm >= rail.engaged_mm + away_mm


def speed_drive(check, built: AsBuilt) -> list[Sign]:
    """Turns of the speed pinion for turns of the wheels.

    Examples
    --------
    >>> from twoshaft.models.faults import as_built
    >>> swapped = unit.faults.misbuild_by_id("speed-pinion-swapped")
    >>> check = unit.faults.check_by_id("count-speed-drive")
    >>> [sign.words for sign in speed_drive(check, as_built(unit, [swapped]))]
    ['the speed pinion counts too few turns']
    """
    right = built.unit.gear_train
    circumference = 2 * math.pi * right.rolling_radius_mm
    way = Q(check.wheel_turns * circumference, "mm")
    step = right.least_count_turns
    seen, wanted = (
        round(speed_drive_turns(train, way).m_as("turn") / step) * step
        for train in (built.train, right)
    )
    if abs(seen - wanted) < 2 * step - 1e-9:
        return []
    way_off, word = ("more", "too many") if seen > wanted else ("fewer", "too few")
    return [Sign(f"{way_off}-turns-speed-pinion", f"the speed pinion counts {word} turns")]


def ring_gap(check, built: AsBuilt) -> list[Sign]:
    """Ring gap under the feeler gauge.

    Examples
    --------
    >>> from twoshaft.models.faults import as_built
    >>> worn = unit.faults.misbuild_by_id("fifth-ring-worn")
    >>> check = unit.faults.check_by_id("feel-ring-gap")
    >>> [sign.words for sign in ring_gap(check, as_built(unit, [worn]))]
    ['the ring gap of fifth is small']
    """
    synchroniser = next(s for s in built.train.synchronisers if s.id == check.synchroniser)
    worn_mm = sum(
        change.wear_mm or 0.0 for change in built.hubs if change.synchroniser == synchroniser.id
    )
    gap = gap_after_wear(
        Q(synchroniser.ring_gap_new_mm, "mm"),
        Q(worn_mm, "mm"),
        Q(synchroniser.half_angle_deg, "degree"),
    )
    step = check.resolution_mm
    read_mm = round(gap.m_as("mm") / step) * step
    if read_mm >= synchroniser.ring_gap_least_mm - step / 2:
        return []
    return [Sign("ring-gap-small", f"the ring gap of {' and '.join(synchroniser.gears)} is small")]
