"""A setting over an adapter, and turns to be counted."""

from __future__ import annotations

from twoshaft.models.joint import setting_with_adapter, torque_at_bolt
from twoshaft.readings.lots import TRIES
from twoshaft.readings.whole_build.given import Adapter, MeshTeeth, Named, Turns, Wrench
from twoshaft.readings.whole_build.lot import Lot
from twoshaft.units.quantities import Q

REACHES_MM = (40, 45, 50, 60, 65, 70, 80)
ANGLES_DEG = (0, 30, 45, 60, 90)
"""At resits another angle comes; at 90 degrees nothing changes, which has to be seen."""


def draw_adapter(lot: Lot) -> Adapter:
    """A fastener that only an adapter reaches, and a wrench."""
    stream, section = lot.stream.child("adapter"), lot.unit.fasteners
    groups = [group for group in section.groups if group.wrench]
    angle = lot.in_turn("angle", ANGLES_DEG)[0]
    for _ in range(TRIES):
        group = stream.choice(groups)
        wrench = next(w for w in section.wrenches if w.id == group.wrench)
        reach = stream.choice(REACHES_MM)
        low, aim, high = group.torque_nm
        asked = round(aim * (0.85 + 0.3 * stream.uniform(0, 1)) * 2) / 2
        lengths = (Q(wrench.length_mm, "mm"), Q(reach, "mm"), Q(angle, "degree"))
        setting = setting_with_adapter(Q(asked, "N*m"), *lengths).m_as("N*m")
        half = round((high - low) / 2, 2)
        over = torque_at_bolt(Q(asked, "N*m"), *lengths).m_as("N*m") - asked
        if abs(abs(over) - half) < 0.2 * half or reach >= wrench.length_mm / 2:
            continue
        if wrench.low_nm * 1.2 < setting < wrench.high_nm:
            return Adapter(
                name=group.name,
                torque_nm=asked,
                half_nm=half,
                wrench=Wrench(wrench.id, wrench.name, wrench.length_mm),
                step_nm=wrench.step_nm,
                reach_mm=reach,
                angle_deg=angle,
            )
    raise lot.too_small("adapter")


def draw_turns(lot: Lot) -> Turns:
    """A gear to be counted by the turns of one wheel, the other held."""
    stream, train = lot.stream.child("turns"), lot.unit.gear_train
    single = [gear for gear in train.gears if len(gear.engages) == 1]
    if not single:
        raise lot.too_small("turns")
    gear = lot.in_turn("turns", single)[0]
    meshes = {mesh.id: mesh for mesh in train.meshes}
    mesh, final = meshes[gear.engages[0]], meshes[train.final_drive]
    return Turns(
        gear=Named(gear.id, gear.name),
        wheels=(
            MeshTeeth("wheels of the gear", mesh.driving.teeth, mesh.driven.teeth),
            MeshTeeth("final drive", final.driving.teeth, final.driven.teeth),
        ),
        turns=2 + stream.integer(7),
        counted="one output, the other held",
        step=train.least_count_turns,
    )
