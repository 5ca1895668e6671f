"""What holds parts in place: the stake of a nut, and circlips."""

from __future__ import annotations

from twoshaft.readings.lots import TRIES
from twoshaft.readings.pressed_and_driven.lot import Lot
from twoshaft.readings.staked import VERDICTS, draw_staked, nuts_of
from twoshaft.records import to_json

TO_DO = [
    ["leave", "Leave it: it holds with room to spare and the tab is whole"],
    ["deeper", "Punch the same tab deeper and measure again"],
    ["renew", "Fit a new nut and stake that"],
    ["second", "Undo the nut a little, so that the tab meets the slot's edge, and stake again"],
    ["compound", "Leave it and run locking compound into the thread from outside"],
    ["torque", "Pull the nut to a higher torque, so that the stake matters less"],
    ["punch-flat", "Punch the collar flat again and stake it a second time at the same place"],
]
RIGHT = [
    ["away", "Its sharp edge faces away from the part that pushes on it"],
    ["no-more", "It is opened no further than it takes to slip it on"],
    ["all-round", "It lies in its groove all round, and you turn it to see"],
    ["over", "One that was stretched too far goes into the bin"],
    ["eyes", "Eye protection is on while it is fitted or released"],
    ["fitting", "The pliers' tips fit its holes, and a hand shields it"],
]
WRONG = [
    ["towards", "Its sharp edge faces the part that pushes on it"],
    ["wide", "It is opened wide, so that it scrapes nothing on its way"],
    ["gap-force", "Its gap stands where the part pushes hardest"],
    ["bent", "One that was stretched is squeezed back until it grips"],
    ["screwdriver", "Two screwdrivers do, if you are quick"],
    ["half", "If half of it is in the groove, the rest follows in use"],
    ["glue", "A drop of compound holds one that does not quite reach its groove"],
]
TICKS = 8
PUSHED = ("left", "right")
EDGES = [
    ["left", "To the left"],
    ["right", "To the right"],
    ["inwards", "Inwards, to the shaft's axis"],
    ["both", "Both edges must be sharp"],
    ["rounded", "Nowhere: its edges must be filed round"],
    ["no-matter", "To either side: the groove is the same"],
]


def draw(lot: Lot) -> dict:
    """A nut that was staked, and circlips.

    What ``draw_staked`` gives of the nut, and ``todo``; ``ticks`` about circlips; ``pushed``
    (which way a part pushes) and ``edges``.
    """
    stream = lot.stream.child("locks")
    verdict = lot.in_turn("stake-verdict", VERDICTS)[0]
    for nut in lot.in_turn("stake", nuts_of(lot.unit)):
        for _ in range(TRIES):
            given = draw_staked(nut, stream, verdict)
            if given is not None:
                break
        else:
            continue
        right = 3 + stream.integer(2)
        ticks = [*stream.shuffled(RIGHT)[:right], *stream.shuffled(WRONG)[: TICKS - right]]
        return to_json(given) | {
            "todo": stream.shuffled(TO_DO),
            "ticks": stream.shuffled(ticks),
            "pushed": lot.in_turn("pushed", PUSHED)[0],
            "edges": stream.shuffled(EDGES),
        }
    raise lot.too_small("locks")
