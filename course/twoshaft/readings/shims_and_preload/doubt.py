"""What a measurement is worth: several doubts, all together, and what they do to a choice."""

from __future__ import annotations

import math

from twoshaft.readings.lots import TRIES
from twoshaft.readings.shims_and_preload.given import Doubt, Source
from twoshaft.readings.shims_and_preload.lot import BANK, Lot
from twoshaft.records import Option

COUNT = 4
CANDIDATES = 5


def draw(lot: Lot) -> Doubt:
    """Doubts of one measured shim, and shims at several distances from the edge of the target."""
    stream = lot.stream.child("doubt")
    for _ in range(TRIES):
        named = stream.shuffled(BANK.lists["sources"])[:COUNT]
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
    return Doubt(
        sources=tuple(Source(one.id, one.text, um) for one, um in zip(named, sizes, strict=True)),
        shims=tuple(
            Option(f"shim-{k}", f"shim {name}: {mm:.3f} mm inside the nearer edge")
            for k, (name, mm) in enumerate(zip("ABCDE", inside, strict=True), 1)
        ),
        inside_mm={f"shim-{k}": mm for k, mm in enumerate(inside, 1)},
    )
