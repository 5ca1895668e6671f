"""A staked shaft nut: how often it holds the drag, and when a nut is spent."""

from __future__ import annotations

from twoshaft.readings.lots import TRIES
from twoshaft.readings.staked import VERDICTS, draw_staked, nuts_of
from twoshaft.readings.threaded_joints.lot import Lot

TO_DO = [
    ["leave", "Leave it: it holds as often as it must, and the tab is whole"],
    ["deeper", "Punch the tab deeper, and measure it again"],
    ["renew", "Fit a new nut, tighten it, and stake that"],
    ["tighter", "Give the nut more torque, which makes up for the stake"],
    ["other-slot", "Turn the nut on to the next slot and stake it there as well"],
    ["flatten", "Punch the collar flat again and stake it at the same place"],
    ["locker", "Run locking compound in from outside and leave the tab as it is"],
]
# Which of them cost a nut stands with the solution, not here.
CAUSES = [
    ["undone", "It was staked, and was undone again for another check"],
    ["cracked", "Its tab shows a crack under the glass"],
    ["sheared", "Its tab was cut when the nut was undone without lifting it"],
    ["turned", "It was turned on after it had been staked, and the tab is torn"],
    ["shallow", "Its tab is whole, but not yet punched in deep enough"],
    ["left", "It has a left-hand thread, and its fellow a right-hand one"],
    ["oiled", "Its thread was oiled, as the manual asks, before it was tightened"],
    ["clean", "It is new, and was run down once by hand before the lock was set"],
    ["dull", "Its face is dull where the socket has rubbed"],
]
SHOWN = 7


def draw_stake(lot: Lot) -> dict:
    """A nut that was staked: what ``draw_staked`` gives, ``todo`` and ``causes`` to tick."""
    stream = lot.stream.child("stake")
    verdict = lot.in_turn("stake-verdict", VERDICTS)[0]
    for nut in lot.in_turn("stake", nuts_of(lot.unit)):
        for _ in range(TRIES):
            given = draw_staked(nut, stream, verdict)
            if given is not None:
                return given | {
                    "todo": stream.shuffled(TO_DO),
                    "causes": stream.shuffled(lot.next_ones("causes", CAUSES, SHOWN)),
                }
    raise lot.too_small("stake")
