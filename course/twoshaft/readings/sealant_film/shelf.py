"""Choose the sealant for some joints."""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.sealant_film.given import Joint, Joints
from twoshaft.readings.sealant_film.lot import Lot
from twoshaft.readings.sealant_film.questions import BANK
from twoshaft.units.sections.faces import Sealant, SealantKind

ASKED = 4
KINDS = ("close", "wide", "flexes", "hopeless", "slow")
RIGID = ("two machined housings, both thick", "a cast end cover on a machined case",
         "two cast case halves with machined faces")  # fmt: skip
FLEXING = ("a pressed-steel cover on a cast case", "a thin sheet cover on a machined case")


def draw_joints(lot: Lot) -> Joints:
    """Some joints, each of another kind."""
    stream = lot.stream.child("joints")
    slow = lot.sealant(SealantKind.ANAEROBIC)
    quick = lot.sealant(SealantKind.MOISTURE)
    joints = [_joint(kind, stream, slow, quick) for kind in lot.next_ones("joints", KINDS, ASKED)]
    return Joints(
        joints=tuple(stream.shuffled(joints)),
        options=BANK.lists["which"],
        sealants=(slow.id, quick.id),
    )


def _joint(kind: str, stream: Stream, slow: Sealant, quick: Sealant) -> Joint:
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
    return Joint(
        what=stream.choice(FLEXING if kind == "flexes" else RIGID),
        gap_mm=round(stream.uniform(*gap), 2),
        minutes=round(stream.uniform(*minutes)),
        rigid=kind != "flexes",
    )
