"""What a gear-train section gets wrong, found by running the model."""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import combinations, permutations

from twoshaft.errors import OutOfRangeError
from twoshaft.models.geartrain.centres import centre_distances, centre_fit
from twoshaft.models.geartrain.motion import freedom, ratio
from twoshaft.units.findings import Finding
from twoshaft.units.quantities import Q
from twoshaft.units.sections.geartrain import GearTrain, Mesh
from twoshaft.units.unit import Unit

SHIFT_SUM = (-0.6, 1.2)
"""Sum of profile shifts that gears of this kind are cut with: common practice, no source."""


def audit_gear_train(unit: Unit) -> tuple[Finding, ...]:
    """Check that gears fit their shafts, drive the right way and lock where they must.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of Finding
        Empty when nothing is wrong or the unit has no gear train.

    Examples
    --------
    >>> audit_gear_train(unit)
    ()
    """
    train = unit.gear_train_if_any
    if train is None:
        return ()
    found = []

    def say(section: str, entry: str, what: str, mend: str) -> None:
        found.append(Finding(unit.where("gear_train", section, entry), what, mend))

    for mesh in train.meshes:
        shafts = {mesh.driving.shaft, mesh.driven.shaft}
        if mesh.module_mm is None:
            continue
        for distance in (d for d in train.distances if set(d.between) == shafts):
            teeth = (mesh.driving.teeth, mesh.driven.teeth)
            try:
                fit = centre_fit(
                    teeth,
                    Q(mesh.module_mm, "mm"),
                    Q(distance.mm, "mm"),
                    Q(mesh.helix_deg, "degree"),
                )
            except OutOfRangeError:
                low = high = None
            else:
                low, high = SHIFT_SUM
                if low <= fit.shift_sum <= high:
                    continue
            say("meshes", mesh.id, f"gears of {teeth[0]} and {teeth[1]} teeth do not fit shafts "
                f"{distance.mm:g} mm apart", "change teeth, module or helix angle")  # fmt: skip
    for one, other in _apart(train):
        say("meshes", other.id, f"{one.id} and {other.id} lie on the same two shafts, and no "
            "distance of the shafts fits the teeth of both", "change teeth, module or helix angle "
            "of one of them")  # fmt: skip
    for far, idler, ends, mesh in _out_of_reach(train):
        say("meshes", mesh.id, f"no place of {idler} suits its gears: {' and '.join(ends)} lie "
            f"{far} for their teeth", f"change teeth or module, or the distance of "
            f"{' and '.join(ends)}")  # fmt: skip
    forward = None
    for gear in train.gears:
        try:
            turned = ratio(train, gear.id)
        except OutOfRangeError:
            say("gears", gear.id, f"gear {gear.id} does not turn the differential",
                "engage the meshes that lead to it")  # fmt: skip
            continue
        if not gear.reverse:
            forward = turned if forward is None else forward
        if forward is not None and ((turned > 0) != (forward > 0)) != gear.reverse:
            way = "the same way as" if gear.reverse else "the other way round than"
            say("gears", gear.id, f"gear {gear.id} turns the wheels {way} the forward gears",
                "count its meshes: each one turns the direction round")  # fmt: skip
    lock = [
        (a.id, b.id)
        for i, a in enumerate(train.gears)
        for b in train.gears[i + 1 :]
        if train.input in freedom(train, (a.id, b.id)).free
    ]
    for a, b in lock:
        say("gears", b, f"gears {a} and {b} have equal ratios and do not lock the shafts together",
            "change the teeth of one of them")  # fmt: skip
    for synchroniser in train.synchronisers:
        if synchroniser.ring_gap_least_mm >= synchroniser.ring_gap_new_mm:
            say("synchronisers", synchroniser.id, "the least ring gap is not below the new one",
                "give a smaller least gap")  # fmt: skip
        engaged = [
            mesh for gear in train.gears if gear.id in synchroniser.gears for mesh in gear.engages
        ]
        if len({mesh.loose for mesh in train.meshes if mesh.id in engaged and mesh.loose}) > 1:
            say("synchronisers", synchroniser.id, "one sleeve cannot serve "
                f"{' and '.join(synchroniser.gears)}: their loose gears turn on different shafts",
                "give each a synchroniser, or put the loose gears on one shaft")  # fmt: skip
    return tuple(found)


def _out_of_reach(train: GearTrain) -> Iterator[tuple[str, str, tuple[str, ...], Mesh]]:
    """Idlers whose other two shafts are too far apart or too near, with one of their meshes."""
    spans = _spans(train)
    on_the_way = (train.input, train.driven_from, train.turned_last)
    for idler in (shaft for shaft in train.shafts if shaft not in on_the_way):
        meshes = {
            other: mesh
            for mesh in train.meshes
            for shaft, other in permutations((mesh.driving.shaft, mesh.driven.shaft))
            if shaft == idler
        }
        for ends in combinations(sorted(meshes), 2):
            pairs = [frozenset((idler, end)) for end in ends] + [frozenset(ends)]
            if not set(pairs) <= set(spans):
                continue
            (low, high), (other_low, other_high), (least, most) = (spans[pair] for pair in pairs)
            if least > high + other_high:
                yield "too far apart", idler, ends, meshes[ends[1]]
            elif most < max(low - other_high, other_low - high):
                yield "too near each other", idler, ends, meshes[ends[1]]


def _spans(train: GearTrain) -> dict[frozenset[str], tuple[float, float]]:
    """Least and most distance of shafts that are listed, or whose teeth and module are known."""
    found = {frozenset(distance.between): (distance.mm,) * 2 for distance in train.distances}
    for mesh in train.meshes:
        shafts = frozenset((mesh.driving.shaft, mesh.driven.shaft))
        if mesh.module_mm is not None and shafts not in found:
            teeth = (mesh.driving.teeth, mesh.driven.teeth)
            helix_rad = math.radians(mesh.helix_deg)
            found[shafts] = centre_distances(teeth, mesh.module_mm, helix_rad, SHIFT_SUM)
    return found


def _apart(train: GearTrain) -> Iterator[tuple[Mesh, Mesh]]:
    """Pairs of meshes on the same two shafts that no distance fits, where none is given."""
    listed = {frozenset(distance.between) for distance in train.distances}
    seen: dict[frozenset[str], list[tuple[Mesh, tuple[float, float]]]] = {}
    for mesh in train.meshes:
        shafts = frozenset((mesh.driving.shaft, mesh.driven.shaft))
        if mesh.module_mm is None or shafts in listed:
            continue
        teeth = (mesh.driving.teeth, mesh.driven.teeth)
        helix_rad = math.radians(mesh.helix_deg)
        low, high = centre_distances(teeth, mesh.module_mm, helix_rad, SHIFT_SUM)
        for one, (least, most) in seen.setdefault(shafts, []):
            if least > high or low > most:
                yield one, mesh
                break
        seen[shafts].append((mesh, (low, high)))
