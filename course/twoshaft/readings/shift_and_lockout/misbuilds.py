"""What misbuilds do, and the one that no hand test shows."""

from __future__ import annotations

from twoshaft.models.shift import KINDS
from twoshaft.models.shift.symptoms import NOTHING
from twoshaft.readings.shift_and_lockout.lot import Lot

ASKED = 3
MEASURES = [
    ["count", "Count the pins into their bore while it can be seen, and sign for it"],
    ["harder", "Push the lever harder between the gates"],
    ["turn", "Turn the shafts by hand in every gear and count turns"],
    ["drive", "Drive the vehicle gently first and listen"],
    ["repeat", "Do the whole hand test a second time"],
]
WHY_UNSEEN = [
    ["reach", "The finger is too narrow to push the two rails that it keeps apart at once"],
    ["spring", "Its spring holds it in place while the test is made"],
    ["oil", "The oil takes up the play until the unit is warm"],
    ["lockout", "The lockout plate does the same work while it is sound"],
]


def draw_symptoms(lot: Lot) -> dict:
    """Three misbuilds, no two with the same symptom: ``misbuilds`` (id, name), ``kinds``."""
    stream = lot.stream.child("symptoms")
    chosen: list[str] = []
    seen = set()
    for id in lot.in_turn("symptoms", lot.misbuild_ids):
        if lot.kinds(id) not in seen and len(chosen) < ASKED:
            seen.add(lot.kinds(id))
            chosen.append(id)
    if len(chosen) < ASKED:
        raise lot.too_small("symptoms")
    kinds = [[kind, words] for kind, words in KINDS.items()]
    return {"misbuilds": lot.named(chosen), "kinds": stream.shuffled(kinds)}


def draw_unseen(lot: Lot) -> dict:
    """Misbuilds of which the hand test shows all but one: ``options``, ``measures``, ``why``."""
    stream = lot.stream.child("unseen")
    hidden = [m for m in lot.misbuild_ids if lot.kinds(m) == {NOTHING}]
    shown = [m for m in lot.misbuild_ids if lot.kinds(m) != {NOTHING}]
    if not hidden or len(shown) < 4:
        raise lot.too_small("unseen")
    options = [lot.in_turn("unseen", hidden)[0], *lot.in_turn("unseen others", shown)[:5]]
    return {
        "options": lot.named(stream.shuffled(options)),
        "why": stream.shuffled(WHY_UNSEEN),
        "measures": stream.shuffled(MEASURES),
    }
