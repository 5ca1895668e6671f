"""A shaft seal as somebody left it: depths to be read all round, and what was seen."""

from __future__ import annotations

from twoshaft.readings.pressed_and_driven.lot import Lot

MAIN = ("lip", "deep", "proud", "square", "sleeve")
PLACES = 4
FAULTS = [
    ["lip", "The lip looks the wrong way"],
    ["deep", "It sits too deep"],
    ["proud", "It does not sit deep enough"],
    ["square", "It leans more than it may"],
    ["grease", "The lip is dry"],
    ["sleeve", "The lip went over the splines bare"],
    ["spring", "The lip's spring is on the oil's side"],
    ["sealant", "There is no sealant round its rubber-covered edge"],
]
TO_DO = [
    ["new", "Take it out and fit a new one, right in every point"],
    ["further", "Drive it further in, squarely, until its depth is right; see to the lip first"],
    ["turn", "Take it out, turn or straighten it, and drive the same one in again"],
    ["side", "Knock the high side down with a punch"],
    ["leave", "Leave it: the rubber settles in the first drive"],
    ["paste", "Leave it and put sealant round its edge"],
    ["back", "Pull it back a little with a hook under the lip"],
]


def draw(lot: Lot) -> dict:
    """A seal with one main fault, and at times a dry lip as well.

    ``seal`` (id), ``name``, ``lip`` (what it looks at), ``depth_mm`` and ``lean_mm`` as it is,
    ``towards`` (the place that is deepest), ``greased``, ``sleeve_used``, the limits ``low_mm``,
    ``high_mm``, ``tilt_mm``, ``needs_sleeve``, ``faults`` and ``todo`` (key, label).
    """
    stream = lot.stream.child("seal")
    fault = lot.in_turn("seal-fault", MAIN)[0]
    seals = lot.in_turn("seal", lot.fits.seals)
    if fault == "sleeve":
        seals = [seal for seal in seals if seal.sleeve]
        if not seals:
            seals, fault = lot.in_turn("seal", lot.fits.seals), "lip"
    seal = seals[0]
    low, high = seal.depth_mm
    depth = low + (0.2 + 0.6 * stream.uniform(0, 1)) * (high - low)
    lean = stream.uniform(0.25, 0.6) * seal.tilt_mm
    if fault == "deep":
        depth = high + 0.25 + stream.uniform(0, 0.6)
    elif fault == "proud":
        depth = low - 0.25 - stream.uniform(0, 0.5)
    elif fault == "square":
        lean = stream.uniform(1.5, 2.2) * seal.tilt_mm
    other = "air" if seal.lip_towards == "oil" else "oil"
    return {
        "seal": seal.id,
        "name": seal.name,
        "lip": other if fault == "lip" else seal.lip_towards,
        "depth_mm": round(depth, 2),
        "lean_mm": round(lean, 2),
        "towards": stream.integer(PLACES),
        "greased": not seal.grease or stream.integer(2) == 0,
        "sleeve_used": fault != "sleeve",
        "low_mm": low,
        "high_mm": high,
        "tilt_mm": seal.tilt_mm,
        "needs_sleeve": seal.sleeve,
        "faults": stream.shuffled(FAULTS),
        "todo": stream.shuffled(TO_DO),
    }
