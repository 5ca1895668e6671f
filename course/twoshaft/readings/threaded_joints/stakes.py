"""A staked shaft nut: how often it holds the drag."""

from __future__ import annotations

from twoshaft.readings.lots import TRIES
from twoshaft.readings.staked import VERDICTS, draw_staked, nuts_of
from twoshaft.readings.threaded_joints.given import Stake
from twoshaft.readings.threaded_joints.lot import Lot
from twoshaft.readings.threaded_joints.questions import BANK
from twoshaft.records import extended


def draw_stake(lot: Lot) -> Stake:
    """A nut that was staked, and what may be done with it."""
    stream = lot.stream.child("stake")
    verdict = lot.in_turn("stake-verdict", VERDICTS)[0]
    for nut in lot.in_turn("stake", nuts_of(lot.unit)):
        for _ in range(TRIES):
            tab = draw_staked(nut, stream, verdict)
            if tab is not None:
                return extended(Stake, tab, todo=tuple(stream.shuffled(BANK.lists["todo"])))
    raise lot.too_small("stake")
