"""At the bench: a shim that works the wrong way, and what could hurt somebody."""

from __future__ import annotations

from twoshaft.readings.shims_and_preload.lot import Lot

WRONG_WAY = [
    ["float-grew", "You fitted a thicker shim to take up end play. The dial now shows more."],
    ["cord-fell", "You fitted a shim to raise the preload. The cord now pulls less, with the same "
     "parts turning and the rollers home."],
    ["cord-rose", "You fitted a shim to lower the preload. The cord now pulls nearly twice as "
     "much, with the same parts turning."],
    ["none-left", "You fitted a shim to open up a little end play. Now the pointer does not move "
     "at all."],
]  # fmt: skip
STEPS = [
    ["stop", "Stop: the sign is wrong. Take it apart, work it out again, fit, seat and measure"],
    ["more", "Go on in the same direction with a still larger change, until it comes round"],
    ["run", "Run it a minute by power; a new shim beds in"],
    ["tighten", "Tighten the plate bolts a little more and measure once again"],
    ["note", "Note the reading and close the unit; the sum was right"],
    ["warm", "Warm the case; the reading will turn round when it is hot"],
    ["swap", "Leave the shim and swap the two bearings from side to side"],
]
CAUTIONS = {
    "air": [
        "A bearing has been washed and must be dry before it is fitted.",
        [
            ["drain", "Hold both rings still, and let it drain and dry on a clean cloth"],
            ["spin", "Spin it with the air gun until it is dry"],
            ["near", "Spin it with the air gun, but only with gloves on"],
            ["slow", "Spin it with the air gun at low pressure"],
            ["finger", "Blow it out while a finger is through the bore"],
        ],
    ],
    "hot": [
        "An inner ring comes out of the oven and must go on the shaft.",
        [
            ["gloves", "Heat gloves on, path clear, say that it is hot, and set it down only where "
             "it is marked as hot"],
            ["spit", "Touch it quickly with a fingertip to feel whether it is hot enough"],
            ["cloth", "Carry it in an oily cloth, so that it is oiled at once"],
            ["bench", "Put it on the bench to cool where the others work, and fit it later"],
            ["flame", "Go over it once more with a flame, since it cools on the way"],
        ],
    ],
    "press": [
        "A ring goes on under the press and starts to tilt.",
        [
            ["let-off", "Hands away, take the load off, set it square, begin again, guard shut"],
            ["hand", "Hold it straight by hand and press on"],
            ["tap", "Tap it straight with a hammer while the ram holds it"],
            ["force", "Press on; it straightens itself when it goes in"],
            ["look", "Open the guard and look from the side while a friend presses"],
        ],
    ],
    "cord": [
        "The cord slips in your hand when you pull the gear round.",
        [
            ["loop", "Tie a loop or hook the scale on, and keep fingers and sleeves clear of the "
             "gears"],
            ["wrap", "Wrap it round your hand and pull"],
            ["wrist", "Wrap it round your glove, since the glove protects you"],
            ["guide", "Guide it onto the drum with a finger while it turns"],
            ["power", "Let somebody turn the shaft by power while you hold the cord"],
        ],
    ],
}  # fmt: skip


def draw(lot: Lot) -> dict:
    """A situation with a wrong sign, and two with a danger.

    ``wrong_way`` (text), ``steps`` (key, label), ``cautions``: two of id, text and options.
    """
    stream = lot.stream.child("bench")
    ids = lot.in_turn("cautions", sorted(CAUTIONS))[:2]
    return {
        "wrong_way": lot.in_turn("wrong-way", WRONG_WAY)[0][1],
        "steps": stream.shuffled(STEPS),
        "cautions": [[id, CAUTIONS[id][0], stream.shuffled(CAUTIONS[id][1])] for id in ids],
    }
