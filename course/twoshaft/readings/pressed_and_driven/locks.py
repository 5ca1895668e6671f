"""What holds parts in place: the stake of a nut, and circlips."""

from __future__ import annotations

from twoshaft.readings.lots import TRIES
from twoshaft.readings.pressed_and_driven.given import Locks
from twoshaft.readings.pressed_and_driven.lot import BANK, Lot
from twoshaft.readings.staked import VERDICTS, draw_staked, nuts_of
from twoshaft.records import extended

TICKS = 8
PUSHED = ("left", "right")


def draw(lot: Lot) -> Locks:
    """A nut that was staked, and circlips."""
    stream = lot.stream.child("locks")
    verdict = lot.in_turn("stake-verdict", VERDICTS)[0]
    for nut in lot.in_turn("stake", nuts_of(lot.unit)):
        for _ in range(TRIES):
            tab = draw_staked(nut, stream, verdict)
            if tab is not None:
                break
        else:
            continue
        some = 3 + stream.integer(2)
        clips, more = (stream.shuffled(BANK.lists[name]) for name in ("clips", "more_clips"))
        ticks = [*clips[:some], *more[: TICKS - some]]
        return extended(
            Locks,
            tab,
            todo=tuple(stream.shuffled(BANK.lists["locks_todo"])),
            ticks=tuple(stream.shuffled(ticks)),
            pushed=lot.in_turn("pushed", PUSHED)[0],
            edges=tuple(stream.shuffled(BANK.lists["edges"])),
        )
    raise lot.too_small("locks")
