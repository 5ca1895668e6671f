"""The shift mechanism: what the hand can and cannot do, found on the real geometry.

The hand moves travel and turn only. Rails and the lockout plate are passive: pushed by contact,
moved by their springs. So a state is where the hand is and where every passive body is; moves
are directed, and the lockout's memory of where the hand has been appears by itself.
"""

from twoshaft.models.shift.detent import DetentForce, detent_force
from twoshaft.models.shift.mechanism import Mechanism, State, mechanism
from twoshaft.models.shift.misbuild import with_misbuilds
from twoshaft.models.shift.proof import HandProof, Lock, prove_by_hand
from twoshaft.models.shift.search import Reach, reach

__all__ = [
    "DetentForce",
    "HandProof",
    "Lock",
    "Mechanism",
    "Reach",
    "State",
    "detent_force",
    "mechanism",
    "prove_by_hand",
    "reach",
    "with_misbuilds",
]
