"""What misbuilds do, and where they are."""

from __future__ import annotations

from twoshaft.models.shape import Built, listed_misbuilds
from twoshaft.models.shift import KINDS
from twoshaft.readings.scenes import near_scene
from twoshaft.readings.shift_and_lockout.given import Suspected, Symptoms
from twoshaft.readings.shift_and_lockout.lot import Lot
from twoshaft.records import Option
from twoshaft.units.sections.faults import ShiftChange
from twoshaft.units.unit import Unit

ASKED, PLACES = 3, 2


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
    return Symptoms(misbuilds=lot.named(chosen), kinds=tuple(kinds), where=_where(lot))


def drawn_faults(unit: Unit) -> tuple[Built, ...]:
    """Assembly faults of the shift mechanism that a section shows."""
    listed = unit.faults.misbuilds if unit.has("faults") else ()
    ours = {one.id for one in listed
            if any(isinstance(change, ShiftChange) for change in one.changes)}  # fmt: skip
    return tuple(one for one in listed_misbuilds(unit) if one.how and one.id in ours)


def _where(lot: Lot) -> Suspected | None:
    """Assembly faults of one part each, all in one section; None where too few are drawn."""
    faults = [one for one in drawn_faults(lot.unit) if len(one.parts) == 1]
    for view in dict.fromkeys(one.view for one in lot.in_turn("where", faults)):
        shown = lot.in_turn(f"where {view}", [one for one in faults if one.view == view])
        first = {one.parts[0]: one for one in reversed(shown)}  # a part has one letter
        some = [one for one in shown if first[one.parts[0]] is one][:PLACES]
        wanted = [one.parts[0] for one in some]
        if len(wanted) == PLACES:
            near = near_scene(lot.unit, lot.stream.child("where"), view, wanted)
            if near is not None:
                return Suspected(near, tuple(Option(one.id, one.name) for one in some))
    return None
