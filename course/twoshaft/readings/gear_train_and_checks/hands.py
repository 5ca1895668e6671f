"""Turning gears, locking and lifting: what to do in a situation. Every act has its own key."""

from __future__ import annotations

from twoshaft.readings.gear_train_and_checks.lot import Lot, options

SCENES = 2
POOL: dict[str, tuple[str, dict[str, str]]] = {
    "colleague": (
        "A colleague wipes the open gear train while you stand at the input shaft, ready to "
        "count turns.",
        {
            "hands-out": "Have them take their hands out, see both, say that you turn, then turn",
            "slowly": "Turn slowly, so that they feel it coming",
            "call": "Call out and turn at once",
            "parting": "Let them go on at the side where the teeth part",
        },
    ),
    "drill": (
        "First gear takes many turns of the input shaft to count. A battery drill with a socket "
        "that fits lies on the bench.",
        {
            "by-hand": "Turn with the turning tool, by hand",
            "low-speed": "Use the drill at its lowest speed",
            "two-people": "Use the drill while a colleague holds the case",
            "impact": "Nudge the shaft on with short bursts of the impact wrench",
        },
    ),
    "rag": (
        "Two gears are engaged and a colleague pulls on a shaft nut. A rag hangs from the left "
        "drive flange, close to the case.",
        {
            "stop-pull": "Have the pull stopped, then take the rag away",
            "locked": "Take the rag away at once; the train is locked",
            "leave": "Leave the rag; it cannot be drawn in while the train is locked",
            "other-wheel": "Turn the right wheel a little, so that the rag comes free",
        },
    ),
    "hoist": (
        "The closed unit has to come off its stand and into running position. The hoist is in "
        "use next door.",
        {
            "wait": "Wait for the hoist and lift by the eye or the bracket",
            "alone": "Lift it down alone, close to the body",
            "by-shaft": "Lift it with a colleague, one of you at the input shaft",
            "rope": "Put a rope round the gate cover and lift it with a bar",
        },
    ),
    "gloves": (
        "You want to turn the open gear train and try each sleeve. You wear loose gloves and "
        "long sleeves.",
        {
            "bare": "Take the gloves off and roll the sleeves up; move a sleeve only at standstill",
            "keep": "Keep the gloves on; they protect the fingers",
            "one-hand": "Turn with one hand and feel the moving sleeves with the other",
            "tape": "Tape the gloves to the sleeves and turn",
        },
    ),
    "air": (
        "Shafts and bearings come out of the washer. Somebody reaches for the air line to spin "
        "a shaft dry.",
        {
            "drain": "Let them drain, oil the bearings, and turn by hand",
            "low-air": "Use the air at low pressure",
            "short": "Use the air in short bursts only",
            "goggles": "Put on eye protection and use the air",
        },
    ),
}


def draw(lot: Lot) -> dict:
    """Two situations, each with four acts."""
    stream = lot.stream.child("hands")
    picked = lot.in_turn("hands", list(POOL))[:SCENES]
    return {
        "scenes": [
            {"scene": key, "text": POOL[key][0], "acts": options(stream, POOL[key][1])}
            for key in picked
        ]
    }
