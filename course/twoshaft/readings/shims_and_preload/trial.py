"""A trial fit under the dial indicator: read the float, work out the shim, and check again."""

from __future__ import annotations

from twoshaft.models.shape import outer_rings, shim_and_ring, thin_rings, views_of_parts
from twoshaft.models.shim import Stack
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.scenes import Hand, hand_scene
from twoshaft.readings.shims_and_preload.given import Trial
from twoshaft.readings.shims_and_preload.lot import BANK, Lot, quantities, read_lengths, sign_of
from twoshaft.units.quantities import Q

FLOATS_MM = (0.14, 0.36)
READINGS = 4


def draw(lot: Lot) -> Trial:
    """A support with a trial shim in it."""
    support, stream = lot.second, lot.stream.child("trial")
    sizes = lot.bearings.shim_set_by_id(support.shim_set).thicknesses_mm
    for _ in range(TRIES):
        lengths = read_lengths(support, stream)
        stack = Stack.from_support(support, quantities(lengths))
        fits = [
            mm
            for mm in sizes
            if FLOATS_MM[0] <= -stack.interference(Q(mm, "mm")).m_as("mm") <= FLOATS_MM[1]
        ]
        if fits:
            break
    else:
        raise lot.too_small("trial")
    return Trial(
        support=support.id,
        name=support.name,
        trial_mm=stream.choice(fits),
        lengths=lengths,
        low_mm=support.target.low_mm,
        high_mm=support.target.high_mm,
        thicker="tightens" if sign_of(support) > 0 else "loosens",
        before=lot.scenes_asked("before", BANK, READINGS, lambda: _figures(stream)),
        into=_into(lot, stream),
    )


def _figures(stream: Stream) -> dict[str, object]:
    """Turns of the shaft, a plunger's travel and a float [mm], a few, and an angle [°]."""
    hundredths = 12 + stream.integer(20)
    return {
        "turns": 20 + stream.integer(20),
        "press": 1 + stream.integer(3),
        "float": f"{hundredths / 100:.2f}",
        "few": 2 + stream.integer(4),
        "lean": 20 + 5 * stream.integer(6),
    }


def _into(lot: Lot, stream: Stream) -> Hand | None:
    """The shim of a pair, the ring on it and another ring, to be put in; None where not drawn."""
    rings = [ring.parts[0] for ring in outer_rings(lot.unit)]
    taken = [*rings, *(thin.parts[0] for thin in thin_rings(lot.unit))]
    for support in lot.in_turn("into", lot.bearings.supports):
        pair = shim_and_ring(lot.unit, support.id)
        others = stream.shuffled([ring for ring in rings if ring not in (pair or ())])
        for view in views_of_parts(lot.unit).get(pair[0], ()) if pair else ():
            hand = stream.shuffled([*(pair or ()), *others[:1]])
            found = hand_scene(lot.unit, stream, view, hand, taken)
            if found is not None:
                return found
    return None
