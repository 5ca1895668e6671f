"""Turns to be counted."""

from __future__ import annotations

from twoshaft.readings.whole_build.given import MeshTeeth, Named, Turns
from twoshaft.readings.whole_build.lot import Lot


def draw_turns(lot: Lot) -> Turns:
    """A gear to be counted by the turns of one wheel, the other held."""
    stream, train = lot.stream.child("turns"), lot.unit.gear_train
    single = [gear for gear in train.gears if len(gear.engages) == 1]
    if not single:
        raise lot.too_small("turns")
    gear = lot.in_turn("turns", single)[0]
    meshes = {mesh.id: mesh for mesh in train.meshes}
    mesh, final = meshes[gear.engages[0]], train.final_mesh
    if final is None:
        raise lot.too_small("turns")
    return Turns(
        gear=Named(gear.id, gear.name),
        wheels=(
            MeshTeeth("gear pair", mesh.driving.teeth, mesh.driven.teeth),
            MeshTeeth("final drive", final.driving.teeth, final.driven.teeth),
        ),
        turns=2 + stream.integer(7),
        counted="one output, the other held",
        step=train.least_count_turns,
    )
