"""The shift mechanism: what the hand can and cannot do, found on the real geometry.

The hand moves travel and turn only. Rails and the lockout plate are passive: pushed by contact,
moved by their springs. So a state is where the hand is and where every passive body is; moves
are directed, and the lockout's memory of where the hand has been appears by itself.
"""

from twoshaft.models.shift.detent import DetentForce, detent_force
from twoshaft.models.shift.handtest import (
    HandTest,
    Trial,
    explains,
    lockout_test,
    telling_test,
    try_out,
)
from twoshaft.models.shift.handwork import (
    Felt,
    Move,
    fitted,
    follow,
    hand_moves,
    mirrored,
    say_felt,
)
from twoshaft.models.shift.interlock import free_movement, locked_rails, pin_play
from twoshaft.models.shift.lever import hand_force, other_end, shaft_torque, turn_angle
from twoshaft.models.shift.mechanism import Mechanism, State, mechanism
from twoshaft.models.shift.misbuild import with_misbuilds
from twoshaft.models.shift.proof import HandProof, Lock, prove_by_hand
from twoshaft.models.shift.search import Reach, reach
from twoshaft.models.shift.symptoms import KINDS, symptoms

__all__ = [
    "KINDS",
    "DetentForce",
    "Felt",
    "HandProof",
    "HandTest",
    "Lock",
    "Mechanism",
    "Move",
    "Reach",
    "State",
    "Trial",
    "detent_force",
    "explains",
    "fitted",
    "follow",
    "free_movement",
    "hand_force",
    "hand_moves",
    "locked_rails",
    "lockout_test",
    "mechanism",
    "mirrored",
    "other_end",
    "pin_play",
    "prove_by_hand",
    "reach",
    "say_felt",
    "shaft_torque",
    "symptoms",
    "telling_test",
    "try_out",
    "turn_angle",
    "with_misbuilds",
]
