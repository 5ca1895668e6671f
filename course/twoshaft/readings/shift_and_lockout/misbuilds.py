"""What misbuilds do."""

from __future__ import annotations

from twoshaft.models.shift import KINDS
from twoshaft.readings.shift_and_lockout.given import Symptoms
from twoshaft.readings.shift_and_lockout.lot import Lot
from twoshaft.records import Option

ASKED = 3


def draw_symptoms(lot: Lot) -> Symptoms:
    """Three misbuilds, no two with the same symptom."""
    stream = lot.stream.child("symptoms")
    chosen: list[str] = []
    seen = set()
    for id in lot.in_turn("symptoms", lot.bench.misbuild_ids):
        if lot.bench.kinds(id) not in seen and len(chosen) < ASKED:
            seen.add(lot.bench.kinds(id))
            chosen.append(id)
    if len(chosen) < ASKED:
        raise lot.too_small("symptoms")
    kinds = stream.shuffled([Option(*kind) for kind in KINDS.items()])
    return Symptoms(misbuilds=lot.named(chosen), kinds=tuple(kinds))
