"""A lift to judge: as hard for everybody, and clear of the limit."""

from __future__ import annotations

from typing import Any

from twoshaft.models import lifting
from twoshaft.readings.course_and_safety.lot import Lot

CLEAR_BELOW, CLEAR_ABOVE = 0.85, 1.18
"""Between these indices a reading error of a few centimetres could turn the decision."""
HIGHEST_INDEX = 2.6
CLEARLY_BEST = 1.06
"""The best change raises the limit by so much more than the second best."""
DECISIONS = (
    ("alone", "One person lifts it by hand, smoothly"),
    ("aid", "Bring the hoist or the lift table"),
    ("two", "Two people lift it by hand, without working it out again"),
    ("quick", "One person lifts it quickly, so that it is soon over"),
)
REASONS = (
    ("below", "The lifting index is not above 1"),
    ("above", "The lifting index is above 1"),
    ("light", "It weighs less than 23 kg"),
    ("feel", "How heavy it feels when you try"),
    ("posture", "Whether you bend your knees and keep your back straight"),
    ("habit", "Whether it went well the last time"),
)
CHANGES = (
    ("closer", "Hold it closer: hands 25 cm from the ankles"),
    ("raise", "Begin higher: hands 75 cm above the floor, the same way up"),
    ("shorter", "A shorter way: 25 cm up"),
    ("face", "Turn the feet: no twist of the body"),
    ("fast", "Do it faster"),
    ("belt", "Wear a back belt"),
)
LOADS = ("main case half", "clutch housing half", "output shaft with its gears", "differential")


def draw_lift(lot: Lot) -> dict:
    """What is lifted, in kg, cm and degrees, ``rows`` that say it, and what can be chosen."""
    stream = lot.stream.child("lift")
    (load,) = lot.next_ones("loads", LOADS, 1)
    # Alike many have to leave the load on the floor as may lift it; a resit changes which.
    best = stream.choice(("closer", "raise", "face"))
    heavy = (lot.learner_stream.child("heavy").integer(2) + lot.attempt) % 2 == 1
    while True:
        given: dict[str, Any] = {
            "load": load,
            "mass_kg": round(stream.uniform(7.0, 20.0), 1),
            "reach_cm": 28 + stream.integer(23),
            "height_cm": 10 + 5 * stream.integer(12),
            "travel_cm": 30 + 5 * stream.integer(12),
            "twist_deg": 10 + 5 * stream.integer(17),
            "per_minute": 0.2,
            "grip": stream.choice(("fair", "poor")),
        }
        if given["height_cm"] + given["travel_cm"] > 140:
            continue
        index = given["mass_kg"] / lifting.plain_limit_kg(given)
        right_side = CLEAR_ABOVE < index < HIGHEST_INDEX if heavy else 0.5 < index < CLEAR_BELOW
        if right_side and _best(given) == best:
            return {
                **given,
                "rows": _rows(given),
                "decisions": stream.shuffled([list(pair) for pair in DECISIONS]),
                "reasons": stream.shuffled([list(pair) for pair in REASONS]),
                "changes": stream.shuffled([list(pair) for pair in CHANGES]),
            }


def _rows(given: dict) -> list[list[str]]:
    """The lift as a table: what was measured, and its figure."""
    parts = lifting.Lift.measured(given).multipliers()
    return [
        ["Load", f"{given['mass_kg']:g} kg"],
        ["H, from the middle between the ankles to the hands", f"{given['reach_cm']} cm"],
        ["V, hands above the floor at the start", f"{given['height_cm']} cm"],
        ["D, way up of the hands", f"{given['travel_cm']} cm"],
        ["A, twist of the body", f"{given['twist_deg']}°"],
        ["Frequency multiplier, once in five minutes", f"{parts['frequency']:.2f}"],
        [f"Grip multiplier, grip {given['grip']}", f"{parts['grip']:.2f}"],
    ]


def changes(given: dict) -> dict[str, dict]:
    """The lift as it would be after each change that can be chosen.

    Parameters
    ----------
    given : dict
        What :func:`draw_lift` gives.

    Returns
    -------
    dict of str to dict
        The same figures, one of them changed, by the change's key.
    """
    return {
        "closer": {**given, "reach_cm": lifting.EASIEST_REACH_CM},
        "raise": {**given, "height_cm": lifting.EASIEST_HEIGHT_CM},
        "shorter": {**given, "travel_cm": lifting.SHORTEST_TRAVEL_CM},
        "face": {**given, "twist_deg": 0},
    }


def _best(given: dict) -> str:
    """The change that is clearly the best, also for who leaves the grip as it was; else empty."""
    grip = lifting.Lift.measured(given).multipliers()["grip"]
    by_model = {k: lifting.plain_limit_kg(changed) for k, changed in changes(given).items()}
    by_hand = {k: lifting.plain_limit_kg(changed, grip) for k, changed in changes(given).items()}
    for limits in (by_model, by_hand):
        first, second, *_ = sorted(limits.values(), reverse=True)
        if first < CLEARLY_BEST * second:
            return ""
    best = max(by_model, key=lambda change: by_model[change])
    return best if best == max(by_hand, key=lambda change: by_hand[change]) else ""
