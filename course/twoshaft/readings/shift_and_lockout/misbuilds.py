"""What misbuilds do, and the one that no hand test shows."""

from __future__ import annotations

from twoshaft.models.shift import KINDS
from twoshaft.models.shift.symptoms import NOTHING
from twoshaft.readings.shift_and_lockout.given import Symptoms, Unseen
from twoshaft.readings.shift_and_lockout.lot import Lot, options
from twoshaft.records import Option

ASKED = 3


def draw_symptoms(lot: Lot) -> Symptoms:
    """Three misbuilds, no two with the same symptom."""
    stream = lot.stream.child("symptoms")
    chosen: list[str] = []
    seen = set()
    for id in lot.in_turn("symptoms", lot.misbuild_ids):
        if lot.kinds(id) not in seen and len(chosen) < ASKED:
            seen.add(lot.kinds(id))
            chosen.append(id)
    if len(chosen) < ASKED:
        raise lot.too_small("symptoms")
    kinds = stream.shuffled([Option(*kind) for kind in KINDS.items()])
    return Symptoms(misbuilds=lot.named(chosen), kinds=tuple(kinds))


def draw_unseen(lot: Lot) -> Unseen:
    """Misbuilds of which the hand test shows all but one."""
    stream = lot.stream.child("unseen")
    hidden = [m for m in lot.misbuild_ids if lot.kinds(m) == {NOTHING}]
    shown = [m for m in lot.misbuild_ids if lot.kinds(m) != {NOTHING}]
    if not hidden or len(shown) < 4:
        raise lot.too_small("unseen")
    offered = [lot.in_turn("unseen", hidden)[0], *lot.in_turn("unseen others", shown)[:5]]
    return Unseen(
        options=lot.offered(stream.shuffled(offered)),
        why=options(stream, "why_unseen"),
        measures=options(stream, "sure"),
    )
