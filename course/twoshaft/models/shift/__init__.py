"""The shift mechanism: what the hand can and cannot do, found on the real geometry.

The hand moves travel and turn, and may lift a collar. Rails and the lockout plate are passive:
pushed by contact, moved by their springs. So a state is where the hand is and where every passive
body is; moves are directed, and a lockout's memory of where the hand has been appears by itself.
"""

from twoshaft.models.shift.detent import DetentForce, detent_force
from twoshaft.models.shift.direct import block_of, gates_of, rail_of
from twoshaft.models.shift.handtest import (
    LEFT,
    SHOWN,
    TRIED,
    HandTest,
    Trial,
    direct_moves,
    explains,
    lockout_moves,
    lockout_reading,
    lockout_test,
    opening,
    say_opening,
    stopped_also,
    telling_test,
    try_out,
    way_in,
)
from twoshaft.models.shift.handwork import (
    Felt,
    Line,
    Move,
    fitted,
    follow,
    gate_plan,
    hand_moves,
    mirrored,
    read_record,
    say_felt,
    write_record,
)
from twoshaft.models.shift.interlock import free_movement, locked_rails, pin_play, without_pin
from twoshaft.models.shift.lever import hand_force, other_end, shaft_torque, turn_angle
from twoshaft.models.shift.lockout import Stopped, name_of, what_stops
from twoshaft.models.shift.mechanism import Mechanism, State, mechanism
from twoshaft.models.shift.misbuild import with_misbuilds
from twoshaft.models.shift.proof import HandProof, Lock, proof_with, prove_by_hand
from twoshaft.models.shift.search import Reach, reach
from twoshaft.models.shift.symptoms import KINDS, NOTHING, symptoms

__all__ = [
    "KINDS",
    "LEFT",
    "NOTHING",
    "SHOWN",
    "TRIED",
    "DetentForce",
    "Felt",
    "HandProof",
    "HandTest",
    "Line",
    "Lock",
    "Mechanism",
    "Move",
    "Reach",
    "State",
    "Stopped",
    "Trial",
    "block_of",
    "detent_force",
    "direct_moves",
    "explains",
    "fitted",
    "follow",
    "free_movement",
    "gate_plan",
    "gates_of",
    "hand_force",
    "hand_moves",
    "locked_rails",
    "lockout_moves",
    "lockout_reading",
    "lockout_test",
    "mechanism",
    "mirrored",
    "name_of",
    "opening",
    "other_end",
    "pin_play",
    "proof_with",
    "prove_by_hand",
    "rail_of",
    "reach",
    "read_record",
    "say_felt",
    "say_opening",
    "shaft_torque",
    "stopped_also",
    "symptoms",
    "telling_test",
    "try_out",
    "turn_angle",
    "way_in",
    "what_stops",
    "with_misbuilds",
    "without_pin",
    "write_record",
]
