"""A shaft seal as somebody left it: depths to be read all round, and what was seen."""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.pressed_and_driven.given import Seal
from twoshaft.readings.pressed_and_driven.lot import BANK, Lot
from twoshaft.units.sections.fits import Seal as SealFit

MAIN = ("lip", "depth", "square", "sleeve")
FAULTS, PLACES, OTHERS = 2, 4, 4


def draw(lot: Lot) -> Seal:
    """A seal with one or two main faults, and at times a dry lip as well."""
    stream = lot.stream.child("seal")
    faults = lot.next_ones("seal-fault", MAIN, FAULTS)[: 1 + stream.integer(FAULTS)]
    seals = lot.in_turn("seal", lot.fits.seals)
    if "sleeve" in faults:
        splined = [seal for seal in seals if seal.sleeve]
        seals, faults = (splined, faults) if splined else (seals, ["lip"])
    seal = seals[0]
    low, high = seal.depth_mm
    depth = low + (0.2 + 0.6 * stream.uniform(0, 1)) * (high - low)
    lean = stream.uniform(0.25, 0.6) * seal.tilt_mm
    if "depth" in faults:
        off = 0.25 + stream.uniform(0, 0.5)
        depth = high + off if stream.integer(2) else low - off
    if "square" in faults:
        lean = stream.uniform(1.5, 2.2) * seal.tilt_mm
    other = "air" if seal.lip_towards == "oil" else "oil"
    return Seal(
        seal=seal.id,
        name=seal.name,
        lip=other if "lip" in faults else seal.lip_towards,
        depth_mm=round(depth, 2),
        lean_mm=round(lean, 2),
        towards=stream.integer(PLACES),
        greased=not seal.grease or stream.integer(2) == 0,
        sleeve_used="sleeve" not in faults,
        low_mm=low,
        high_mm=high,
        tilt_mm=seal.tilt_mm,
        needs_sleeve=seal.sleeve,
        faults=tuple(stream.shuffled(BANK.lists["faults"])),
        others=lot.scenes_asked("seals", BANK, OTHERS, lambda: _seen(seal, stream)),
    )


def _seen(seal: SealFit, stream: Stream) -> dict[str, str]:
    """Depths and leans of another seal [mm], and where its lip belongs or not."""
    low, high = seal.depth_mm
    other = "air" if seal.lip_towards == "oil" else "oil"
    mm = {
        "ok": low + stream.uniform(0.15, 0.85) * (high - low),
        "proud": low - 0.2 - stream.uniform(0, 0.6),
        "deep": high + 0.2 + stream.uniform(0, 0.6),
        "little": stream.uniform(0.1, 0.6) * seal.tilt_mm,
        "near": stream.uniform(0.7, 0.9) * seal.tilt_mm,
        "much": stream.uniform(1.4, 2.4) * seal.tilt_mm,
    }
    return {name: f"{one:.2f}" for name, one in mm.items()} | {
        "to": seal.lip_towards,
        "away": other,
    }
