"""Choose the sealant for three joints."""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.sealant_film.lot import Lot
from twoshaft.units.sections.faces import Sealant, SealantKind

KINDS = ("close", "wide", "flexes", "hopeless", "slow")
RIGID = ("two machined housings, both thick", "a cast end cover on a machined case",
         "two cast case halves with machined faces")  # fmt: skip
FLEXING = ("a pressed-steel cover on a cast case", "a thin sheet cover on a machined case")
OPTIONS = [
    ["anaerobic", "The anaerobic one: rigid metal, and both gap and time allow it"],
    ["moisture-gap", "The moisture-curing one: the gap is too wide for the other"],
    ["moisture-flexes", "The moisture-curing one: this joint flexes, and the other would break"],
    ["moisture-time", "The moisture-curing one: the work takes too long for the other"],
    ["neither-gap", "Neither: the gap is too wide for both; true the face or renew the part first"],
    ["neither-time", "Neither yet: the work takes too long for both; prepare more beforehand"],
]


def draw_joints(lot: Lot) -> dict:
    """Three joints, each with ``what``, ``gap_mm``, ``minutes`` and ``rigid``; ``options``."""
    stream = lot.stream.child("joints")
    slow = lot.sealant(SealantKind.ANAEROBIC)
    quick = lot.sealant(SealantKind.MOISTURE)
    joints = [_joint(kind, stream, slow, quick) for kind in lot.next_ones("joints", KINDS, 3)]
    return {
        "joints": stream.shuffled(joints),
        "options": OPTIONS,
        "sealants": [slow.id, quick.id],
    }


def _joint(kind: str, stream: Stream, slow: Sealant, quick: Sealant) -> dict:
    """A joint for which one sealant, or none, is right, well clear of every limit."""
    narrow, wide = slow.largest_gap_mm, quick.largest_gap_mm
    short, long = quick.open_minutes, slow.open_minutes
    gap = {
        "close": (0.2 * narrow, 0.75 * narrow),
        "wide": (1.4 * narrow, 0.8 * wide),
        "flexes": (0.3 * narrow, 0.75 * narrow),
        "hopeless": (1.2 * wide, 1.8 * wide),
        "slow": (0.2 * narrow, 0.75 * narrow),
    }[kind]
    minutes = {"slow": (1.15 * long, 1.6 * long)}.get(kind, (0.35 * short, 0.8 * short))
    return {
        "what": stream.choice(FLEXING if kind == "flexes" else RIGID),
        "gap_mm": round(stream.uniform(*gap), 2),
        "minutes": round(stream.uniform(*minutes)),
        "rigid": kind != "flexes",
    }
