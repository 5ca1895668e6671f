"""What holds parts in place: the stake of a nut, and circlips."""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.pressed_and_driven.given import Locks, Tab
from twoshaft.readings.pressed_and_driven.lot import BANK, Lot
from twoshaft.readings.staked import VERDICTS, draw_staked, nuts_of
from twoshaft.records import extended

OTHERS, CLIPS = 3, 4
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
                    clips=lot.scenes_asked("clips", BANK, CLIPS, lambda: _sides(stream)),
                )
    raise lot.too_small("locks")


def _tab(stream: Stream) -> Tab:
    """A tab that holds or not; one that is cracked or undone holds by the figures."""
    drag, margin = round(stream.uniform(3, 14), 1), 2 + stream.integer(2)
    state = stream.choice(STATES)
    times = stream.choice(list(TIMES)) if state == "whole" else "holds"
    return Tab(round(drag * margin * stream.uniform(*TIMES[times]), 1), drag, margin, state)


def _sides(stream: Stream) -> dict[str, object]:
    """A diameter and a gap [mm], and the two sides in either order."""
    this, that = stream.shuffled(("left", "right"))
    return {
        "d": 14 + stream.integer(50),
        "gap": f"{0.4 + 0.1 * stream.integer(12):.1f}",
        "this": this,
        "that": that,
    }
