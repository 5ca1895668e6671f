"""A shaft seal as somebody left it: depths to be read all round, and what was seen."""

from __future__ import annotations

from twoshaft.readings.pressed_and_driven.given import Seal
from twoshaft.readings.pressed_and_driven.lot import BANK, Lot

MAIN = ("lip", "deep", "proud", "square", "sleeve")
PLACES = 4


def draw(lot: Lot) -> Seal:
    """A seal with one main fault, and at times a dry lip as well."""
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
    return Seal(
        seal=seal.id,
        name=seal.name,
        lip=other if fault == "lip" else seal.lip_towards,
        depth_mm=round(depth, 2),
        lean_mm=round(lean, 2),
        towards=stream.integer(PLACES),
        greased=not seal.grease or stream.integer(2) == 0,
        sleeve_used=fault != "sleeve",
        low_mm=low,
        high_mm=high,
        tilt_mm=seal.tilt_mm,
        needs_sleeve=seal.sleeve,
        faults=tuple(stream.shuffled(BANK.lists["faults"])),
        todo=tuple(stream.shuffled(BANK.lists["seal_todo"])),
    )
