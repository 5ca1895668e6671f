"""What a measurement is worth: several doubts, all together, and what they do to a choice."""

from __future__ import annotations

import math

from twoshaft.readings.lots import TRIES
from twoshaft.readings.shims_and_preload.lot import Lot
from twoshaft.units.quantities import Q

SOURCES = [
    ["depth", "steps and error of the depth gauge"],
    ["outside", "steps and error of the outside micrometer"],
    ["height", "steps and error of the height gauge"],
    ["hand", "repeatability of your hand"],
    ["warmth", "case a few degrees warmer than the gauge"],
    ["burr", "dirt and burrs under the gauge, after cleaning"],
]
COUNT = 4
CANDIDATES = 5


def draw(lot: Lot) -> dict:
    """Doubts of one measured shim, and shims at several distances from the edge of the target.

    ``sources`` (key, name, standard doubt [um]), ``shims`` (key, label) with ``inside_mm``: how
    far each lies inside the nearer edge.
    """
    stream = lot.stream.child("doubt")
    for _ in range(TRIES):
        named = stream.shuffled(SOURCES)[:COUNT]
        sizes = [round(1.5 + stream.uniform(0, 7), 1) for _ in named]
        second, largest = sorted(sizes)[-2:]
        combined = math.hypot(*sizes)
        if largest < 1.3 * second or not 5 <= combined <= 11:
            continue
        expanded_mm = 2 * combined / 1000
        inside = [round(stream.uniform(0.2, 2.0) * expanded_mm, 3) for _ in range(CANDIDATES)]
        clear = all(abs(mm - expanded_mm) > 0.2 * expanded_mm for mm in inside)
        safe = sum(mm > expanded_mm for mm in inside)
        if clear and 2 <= safe <= 3 and len(set(inside)) == CANDIDATES:
            break
    else:
        raise lot.too_small("doubt")
    return {
        "sources": [[*name, um] for name, um in zip(named, sizes, strict=True)],
        "shims": [
            [f"shim-{k}", f"shim {name}: {Q(mm, 'mm').m_as('mm'):.3f} mm inside the nearer edge"]
            for k, (name, mm) in enumerate(zip("ABCDE", inside, strict=True), 1)
        ],
        "inside_mm": {f"shim-{k}": mm for k, mm in enumerate(inside, 1)},
    }
