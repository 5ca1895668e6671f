"""At the bench: what could hurt somebody while parts are pressed, warmed and driven."""

from __future__ import annotations

from twoshaft.readings.pressed_and_driven.lot import Lot

ASKED = 3
CAUTIONS = {
    "tilt": [
        "Under the press a ring begins to tilt, and the gauge climbs.",
        [
            ["let-off", "Hands away, take the load off, set it square, guard shut, begin again"],
            ["hold", "Hold it straight by hand and press on"],
            ["tap", "Tap it straight while the ram holds it"],
            ["more", "Press on; it rights itself as it goes in"],
            ["peer", "Open the guard and look along the ram while somebody pumps"],
        ],
    ],
    "strike": [
        "A hardened pin must be driven out, and it sits tight.",
        [
            ["soft", "Eye protection on, a pin punch that fits, a brass or soft-faced hammer"],
            ["hard", "The heaviest hardened hammer, straight on the pin"],
            ["squint", "Strike it bare-eyed, but look away at the blow"],
            ["drill", "Use a twist drill as a punch; it is hard and has the right size"],
            ["mushroom", "Any punch will do, its spread head gives a better aim"],
        ],
    ],
    "clip": [
        "A circlip must come off a shaft, and it is stiff.",
        [
            ["shield", "Eye protection on, pliers that fit, a hand or cloth over the clip"],
            ["pry", "Pry it with two screwdrivers and duck"],
            ["face", "Bend close over it, so that you see when it moves"],
            ["bystander", "Let a friend hold the other end with bare fingers"],
            ["blow-off", "Knock it round with a chisel until it jumps off"],
        ],
    ],
    "hot": [
        "A ring comes out of the oven and must go on the shaft.",
        [
            ["gloves", "Heat gloves on, path clear, say that it is hot, and set it down only where "
             "it is marked as hot"],
            ["finger", "Touch it quickly with a wet fingertip to feel whether it is hot enough"],
            ["cloth", "Carry it in an oily cloth, so that it is oiled at once"],
            ["bench", "Lay it on the bench among the others for a moment, to find the driver"],
            ["cleaner", "Cool it a little with brake cleaner, since it came out too hot"],
        ],
    ],
    "cold": [
        "A shaft was cooled in dry ice and must go into its hub.",
        [
            ["dry-gloves", "Dry cold-proof gloves, eye protection and fresh air; tongs for the "
             "shaft"],
            ["bare", "Bare hands, but quickly"],
            ["wet", "Wet gloves, which keep the cold off"],
            ["closed", "In a small closed room, so that it stays cold"],
            ["pocket", "The rest of the ice goes into a bottle with its cap on"],
        ],
    ],
    "air": [
        "A bearing has been washed and must be dry before it goes on.",
        [
            ["drain", "Hold both rings still, and let it drain and dry on a clean cloth"],
            ["spin", "Spin it with the air gun until it is dry"],
            ["slow", "Spin it with the air gun at low pressure"],
            ["near", "Spin it with the air gun, with gloves on"],
            ["flame", "Hold it over the heater until the solvent has burnt off"],
        ],
    ],
}  # fmt: skip


def draw(lot: Lot) -> dict:
    """Three ``cautions``: id, text and options."""
    stream = lot.stream.child("bench")
    ids = lot.next_ones("cautions", sorted(CAUTIONS), ASKED)
    return {"cautions": [[id, CAUTIONS[id][0], stream.shuffled(CAUTIONS[id][1])] for id in ids]}
