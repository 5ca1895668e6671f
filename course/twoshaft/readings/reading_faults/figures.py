"""Counts and pulls: a fault, or a check that was read or made wrongly."""

from __future__ import annotations

from typing import Literal

from twoshaft.models.faults import FALSE_PULLS, AsBuilt, pull
from twoshaft.models.geartrain import count_turns, with_wheel
from twoshaft.models.geartrain.turning import Counted
from twoshaft.readings.lots import TRIES
from twoshaft.readings.reading_faults.given import Cord, Count, MeshTeeth, Named
from twoshaft.readings.reading_faults.lot import Lot, options
from twoshaft.records import Option
from twoshaft.units.sections.faults import SettingChange

CASES = ("right", "held", "wheel")
TURNS = (4.0, 5.0, 6.0, 8.0)
CLEAR_TURNS = 4
"""Steps of the least count that two readings of a count lie apart at least."""
STATES = ("light", "inside", "heavy")
CLEAR_N = 2.5
"""Steps of the scale that a pull keeps from its limits at least."""

SIDES: tuple[Literal["driving", "driven"], ...] = ("driving", "driven")


def draw_count(lot: Lot) -> Count:
    """Turns counted in one gear: rightly, in another way than told, or with another gear fitted."""
    stream, train = lot.stream.child("count"), lot.unit.gear_train
    case, step = lot.in_turn("count case", CASES)[0], train.least_count_turns
    gears = [g for g in train.gears if not g.reverse and len(g.engages) == 1]
    if not gears:
        raise lot.too_small("count")
    gear = lot.in_turn("count", gears)[0]
    mesh = next(m for m in train.meshes if m.id == gear.engages[0])
    final = next(m for m in train.meshes if m.id == train.final_drive)
    both: Counted = "both outputs, averaged"
    held: Counted = "one output, the other held"
    for _ in range(TRIES):
        turns = stream.choice(TURNS)
        right = abs(count_turns(train, gear.id, turns, both).seen)
        half = abs(count_turns(train, gear.id, turns, held).seen)
        if case == "wheel":
            side = stream.choice(SIDES)
            teeth = getattr(mesh, side).teeth + stream.choice((-3, -2, 2, 3))
            other = with_wheel(train, mesh.id, side, teeth)
            seen = abs(count_turns(other, gear.id, turns, both).seen)
        else:
            seen = right if case == "right" else half
        apart = [abs(seen - one) for one in (right, half) if one != seen]
        if min(apart) >= CLEAR_TURNS * step and (case == "wheel") == (len(apart) == 2):
            break
    else:
        raise lot.too_small("count")
    return Count(
        gear=Named(gear.id, gear.name),
        wheels=(
            MeshTeeth(gear.name, mesh.driving.teeth, mesh.driven.teeth),
            MeshTeeth("final drive", final.driving.teeth, final.driven.teeth),
        ),
        turns=turns,
        seen=seen,
        step=step,
        says=options(stream, "count_says"),
    )


def draw_cord(lot: Lot) -> Cord:
    """A pull on the cord of the closed unit in neutral, and one that was taken wrongly."""
    stream, unit = lot.stream.child("cord"), lot.unit
    checks = [(c, c.and_support) for c in unit.faults.checks if c.kind == "cord" and c.and_support]
    if not checks:
        raise lot.too_small("cord")
    (check, second), state = checks[0], lot.in_turn("cord", STATES)[0]
    support = unit.bearings.support_by_id(check.support)
    other = unit.bearings.support_by_id(second)
    clear = CLEAR_N * check.resolution_n
    for _ in range(TRIES):
        off = {
            one.id: round(stream.uniform(-part, part), 2)
            for one, part in ((support, 0.16), (other, 0.03))
        }
        changes = tuple(
            SettingChange(kind="setting", support=one, shim_mm=mm) for one, mm in off.items() if mm
        )
        built = AsBuilt(unit, unit.shift_if_any, unit.gear_train_if_any, settings=changes)
        found = pull(check, built)
        near = min(abs(found.rest_n - found.low_n), abs(found.rest_n - found.high_n))
        if found.verdict == state and near >= clear and found.rest_n >= 2 * clear:
            break
    else:
        raise lot.too_small("cord")
    key = lot.in_turn("false", list(FALSE_PULLS))[0]
    return Cord(
        check=Named(check.id, check.name),
        name=support.name,
        other=other.name,
        shown_n=found.shown_n,
        alone_n=found.alone_n,
        drum_mm=support.cord_radius_mm,
        low_n=round(found.low_n, 1),
        high_n=round(found.high_n, 1),
        doubt_n=found.doubt_n,
        says=options(stream, "cord_says"),
        false=Option(key, FALSE_PULLS[key].words),
        false_says=options(stream, "false_says"),
    )
