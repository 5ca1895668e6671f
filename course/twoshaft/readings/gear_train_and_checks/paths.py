"""Ratios along a path, and turns to count."""

from __future__ import annotations

from twoshaft.readings.gear_train_and_checks.given import Chain, Count, MeshTeeth, Named, Path
from twoshaft.readings.gear_train_and_checks.lot import BANK, Lot
from twoshaft.readings.keyed import Stream
from twoshaft.units.sections.geartrain import GearTrain, Mesh

CHAINS = 5


def draw_path(lot: Lot) -> Path:
    """A forward gear and reverse: the wheels along each path; other rows of wheels."""
    stream = lot.stream.child("path")
    gear = lot.in_turn("gears", lot.forward)[0]
    reverse = next(gear for gear in lot.train.gears if gear.reverse)
    back = reverse_meshes(lot.train, reverse.engages)
    if len(back) != 2:
        raise lot.too_small("path")
    return Path(
        gear=Named(gear.id, gear.name),
        reverse=Named(reverse.id, reverse.name),
        wheels=(
            *(_row(f"{gear.name}, mesh", lot.mesh(mesh)) for mesh in gear.engages),
            *final_row(lot.train),
        ),
        back=(
            _row("Input shaft to idler", back[0]),
            _row("Idler to output shaft", back[1]),
        ),
        chains=_chains(stream),
        ways=BANK.lists["ways"],
    )


def draw_count(lot: Lot) -> Count:
    """Another gear, the turns of a held count, and what two free wheels made."""
    stream = lot.stream.child("count")
    gear = lot.in_turn("gears", lot.forward)[1]
    left = 1.25 + 0.25 * stream.integer(4)
    return Count(
        gear=Named(gear.id, gear.name),
        wheels=(
            *(_row(f"{gear.name}, mesh", lot.mesh(mesh)) for mesh in gear.engages),
            *final_row(lot.train),
        ),
        held_turns=2 + stream.integer(4),
        left_turns=left,
        right_turns=left + 0.5 + 0.25 * stream.integer(6),
    )


def _chains(stream: Stream) -> tuple[Chain, ...]:
    """Rows of two to five wheels, as many of one length as of another by chance alone."""
    lengths = [2 + stream.integer(4) for _ in range(CHAINS)]
    return tuple(
        Chain(f"row-{number}", tuple(15 + stream.integer(40) for _ in range(length)))
        for number, length in enumerate(lengths, 1)
    )


def _row(words: str, mesh: Mesh) -> MeshTeeth:
    return MeshTeeth(words, mesh.driving.teeth, mesh.driven.teeth)


def final_row(train: GearTrain) -> tuple[MeshTeeth, ...]:
    """The final drive as a row of the table; none where the unit has none."""
    return (_row("Final drive", train.final_mesh),) if train.final_mesh else ()


def reverse_meshes(train: GearTrain, engages: tuple[str, ...]) -> list[Mesh]:
    """The meshes of reverse, from the input shaft on, without the final drive."""
    first = next(mesh for mesh in train.meshes if mesh.id == engages[0])
    return [first] + [
        mesh
        for mesh in train.meshes
        if mesh.driving.shaft == first.driven.shaft and mesh.loose is None
    ]
