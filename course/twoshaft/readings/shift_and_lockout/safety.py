"""What to do before a detent plug is undone."""

from __future__ import annotations

from twoshaft.readings.shift_and_lockout.lot import Lot

RIGHT = [
    ["eyes", "Put on eye protection"],
    ["line", "Keep your face out of the line of the plug"],
    ["rag", "Hold a rag over the plug while it comes off its last thread"],
    ["fingers", "Tell the other person to take their fingers out of forks and gears"],
    ["hand", "Turn the plug out with a hand tool, slowly, until the spring is slack"],
]
WRONG = [
    ["air", "Blow into the bore with compressed air so that ball and spring come out"],
    ["gun", "Run the plug out with an impact driver, to be quick"],
    ["look", "Look into the bore to see the ball come"],
    ["lever", "Work the lever to push the ball out"],
    ["gloves", "Wear gloves in place of eye protection, since the ball is caught by hand"],
]


def draw(lot: Lot) -> dict:
    """``options`` to tick: three that belong there and three that do not."""
    stream = lot.stream.child("safe")
    right = [RIGHT[0], *lot.in_turn("safe right", RIGHT[1:])[:2]]
    wrong = lot.in_turn("safe wrong", WRONG)[:3]
    return {"options": stream.shuffled([*right, *wrong])}
