"""A trial fit under the dial indicator: read the float, work out the shim, and check again."""

from __future__ import annotations

from twoshaft.models.shim import Stack
from twoshaft.readings.lots import TRIES
from twoshaft.readings.shims_and_preload.lot import Lot, quantities, read_lengths, sign_of
from twoshaft.units.quantities import Q

FLOATS_MM = (0.14, 0.36)
BEFORE_RIGHT = [
    ["turn", "Turn the shaft under hand load until the reading stays the same"],
    ["press", "Press the plunger in by more than the float"],
    ["line-up", "Line the plunger up with the shaft's axis"],
    ["bolts", "Tighten the plate or cover as in the finished unit"],
    ["push", "Push and pull with the same hand load each time"],
]
BEFORE_WRONG = [
    ["zero", "Turn the dial's face until the pointer stands exactly on 0"],
    ["touch", "Let the plunger just touch, so that it does not push the shaft"],
    ["warm", "Warm the case to running temperature"],
    ["final", "Fit the thickest shim of the set first"],
    ["untouched", "Leave the rings as they were fitted; turning would disturb them"],
    ["air", "Blow the bearings round with compressed air to settle them"],
]
NEXT = [
    ["check", "Turn the rollers home, measure again, and pull the cord before it is closed"],
    ["close", "Close the unit; the sum was done twice"],
    ["mark", "Write the shim on the build sheet as measured; the sum stands for the reading"],
    ["run", "Run the unit by power for a minute and feel whether the case gets hot"],
    ["next", "Take the next thicker shim at once, to be on the safe side"],
    ["dial", "Read the dial only: if the pointer does not move, the preload is right"],
]


def draw(lot: Lot) -> dict:
    """A support with a trial shim in it.

    ``support``, ``name``, ``trial_mm``, ``lengths`` [mm] by term (what is really there; the dial
    shows what follows), target ``low_mm`` and ``high_mm``, ``thicker`` (what a thicker shim does,
    in words), ``before`` and ``next`` (key, label).
    """
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
    right = 3 + stream.integer(2)
    before = [
        *stream.shuffled(BEFORE_RIGHT)[:right],
        *stream.shuffled(BEFORE_WRONG)[: 7 - right],
    ]
    return {
        "support": support.id,
        "name": support.name,
        "trial_mm": stream.choice(fits),
        "lengths": lengths,
        "low_mm": support.target.low_mm,
        "high_mm": support.target.high_mm,
        "thicker": "tightens" if sign_of(support) > 0 else "loosens",
        "before": stream.shuffled(before),
        "next": stream.shuffled(NEXT),
    }
