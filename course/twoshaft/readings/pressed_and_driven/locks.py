"""What holds parts in place: the stake of a nut, and circlips."""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.pressed_and_driven.given import Clip, Locks, Tab
from twoshaft.readings.pressed_and_driven.lot import BANK, Lot
from twoshaft.readings.staked import VERDICTS, draw_staked, nuts_of
from twoshaft.records import extended

OTHERS = 3
LETTERS = "ABCDEF"
BOTH = ("edge", "seat")
LEFT = ((), ("edge",), ("seat",), BOTH, BOTH, BOTH)
"""What is wrong with the circlips."""
TIMES = {"holds": (1.12, 1.8), "gives": (0.4, 0.88)}
"""What other tabs hold, in parts of what they must."""
STATES = ("whole",) * 4 + ("cracked", "undone")


def draw(lot: Lot) -> Locks:
    """A nut that was staked, other nuts, and circlips."""
    stream = lot.stream.child("locks")
    verdict = lot.in_turn("stake-verdict", VERDICTS)[0]
    for nut in lot.in_turn("stake", nuts_of(lot.unit)):
        for _ in range(TRIES):
            tab = draw_staked(nut, stream, verdict)
            if tab is not None:
                return extended(
                    Locks,
                    tab,
                    todo=BANK.lists["locks_todo"],
                    others=tuple(_tab(stream) for _ in range(OTHERS)),
                    clips=_clips(stream),
                    asked=tuple(stream.shuffled(BANK.lists["clips"])),
                )
    raise lot.too_small("locks")


def _tab(stream: Stream) -> Tab:
    """A tab that holds or not; one that is cracked or undone holds by the figures."""
    drag, margin = round(stream.uniform(3, 14), 1), 2 + stream.integer(2)
    state = stream.choice(STATES)
    times = stream.choice(list(TIMES)) if state == "whole" else "holds"
    return Tab(round(drag * margin * stream.uniform(*TIMES[times]), 1), drag, margin, state)


def _clips(stream: Stream) -> tuple[Clip, ...]:
    """Circlips as somebody left them: one right, one wrong in each way, the others in both."""
    return tuple(
        _clip(stream, letter, "edge" in wrong, "seat" in wrong)
        for letter, wrong in zip(LETTERS, stream.shuffled(LEFT), strict=True)
    )


def _clip(stream: Stream, letter: str, edge: bool, seat: bool) -> Clip:
    bore, left = (stream.choice((True, False)) for _ in range(2))
    off = round(0.5 + 0.1 * stream.integer(8), 1)
    return Clip(letter, bore, left, left != edge, off if seat else 0.0)
