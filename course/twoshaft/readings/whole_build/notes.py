"""What is written down and signed, and what is done with a finding: common practice, no source."""

from __future__ import annotations

from twoshaft.readings.whole_build.lot import Lot

LINES = [
    ["measured", "Each measured length, with the tool that read it"],
    ["shims", "The thickness of every shim that was fitted"],
    ["torques", "Setting, wrench and adapter of each group that was tightened"],
    ["new", "Which parts went in new"],
    ["proof", "Each move of the lockout's proof and what was felt"],
    ["found", "What was found wrong, and what was done about it"],
    ["batch", "Which sealant was used, and when the face was closed"],
    ["undone", "What was taken out again, and why"],
]
IDLE = [
    ["guess", "A length that nobody measured, taken from the last unit"],
    ["round", "The torque that the card asks for, whatever was set"],
    ["ahead", "Checks that will surely pass, ticked before they are made"],
    ["tidy", "A clean copy with the failed readings left out"],
    ["colleague", "A colleague's name for a check that you made yourself"],
]
SCENES = {
    "once": [
        "In the last proof the direct shift was stopped nine times, and went through once.",
        "tag",
    ],
    "unsigned": [
        "The record has no line for the torque of one group, and the case is closed over it.",
        "again",
    ],
    "spare": ["The unit is filled, and one small pin lies on the bench that nobody can place.",
              "tag"],
    "loose": [
        "The case bolts were run in by hand before the break; nobody remembers the wrench's click.",
        "again",
    ],
    "felt": [
        "A colleague felt a gear slip out of its place once while counting turns, and went on.",
        "tag",
    ],
}  # fmt: skip
DO = [
    ["tag", "Tag the unit as not to be fitted, write it down, find the cause, and check anew"],
    ["again", "Do that work again so that it can be seen and written down, then go on"],
    ["sign", "Sign: everything else was as it should be"],
    ["later", "Fit it, and look at it at the first service"],
    ["erase", "Leave it out of the record, so that nobody worries"],
    ["verbal", "Tell the next shift, and write nothing down"],
]
SIGNS = [
    ["self", "Whoever made the check, after it was made, with the date"],
    ["boss", "The foreman, for all checks together, at the end of the week"],
    ["builder", "Whoever built most of the unit, before the checks begin"],
    ["anyone", "Anyone who is near, since a signature is a matter of form"],
    ["nobody", "Nobody, if all checks have passed"],
]


def draw(lot: Lot) -> dict:
    """``lines`` and ``signs`` to choose from; ``scene`` (key, words) and ``do``."""
    stream = lot.stream.child("notes")
    key = lot.in_turn("scene", list(SCENES))[0]
    lines = [*lot.in_turn("lines", LINES)[:4], *lot.in_turn("idle", IDLE)[:3]]
    return {
        "lines": stream.shuffled(lines),
        "signs": stream.shuffled(SIGNS),
        "scene": [key, SCENES[key][0]],
        "do": stream.shuffled(DO),
    }
