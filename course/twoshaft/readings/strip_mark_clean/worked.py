"""What is worked out of readings: an end float and its shim, a backlash, limits."""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.strip_mark_clean.given import Read, Worked
from twoshaft.readings.strip_mark_clean.lot import BANK, Lot

LINES = 4
WHAT = ("End float", "Backlash", "Play", "End float of a gear")


def draw(lot: Lot) -> Worked:
    """Own dial readings, and readings of other units."""
    stream = lot.stream.child("worked")
    wanted = round(0.04 + 0.01 * stream.integer(7), 2)
    play = round(wanted + 0.06 + 0.01 * stream.integer(20), 2)
    pushed = round(0.3 + 0.01 * stream.integer(60), 2)
    pitch = 30 + 2 * stream.integer(16)
    arm = pitch + 20 + 5 * stream.integer(14)
    travel = (0.08 + 0.01 * stream.integer(14)) * arm / pitch
    kinds = [*("inside", "outside", "again"), stream.choice(["inside", "outside", "again"])]
    return Worked(
        pushed_mm=pushed,
        pulled_mm=round(pushed + play, 2),
        fitted_mm=round(0.9 + 0.05 * stream.integer(16), 2),
        wanted_mm=wanted,
        places_mm=tuple(round(travel + 0.01 * (stream.integer(5) - 2), 2) for _ in range(4)),
        arm_mm=float(arm),
        pitch_mm=float(pitch),
        others=tuple(
            _read(stream, letter, what, kind)
            for letter, what, kind in zip(
                "abcd", stream.shuffled(WHAT), stream.shuffled(kinds), strict=True
            )
        ),
        verdicts=BANK.lists["verdicts"],
    )


def _read(stream: Stream, id: str, what: str, kind: str) -> Read:
    low = 5 + stream.integer(8)
    high = low + 14 + stream.integer(8)
    unsure = 1 + stream.integer(2)
    beyond = {
        "inside": -(unsure + 2 + stream.integer(3)),
        "outside": unsure + 2 + stream.integer(5),
        "again": (1 if stream.integer(2) else -1) * stream.integer(unsure),
    }[kind]
    hundredths = high + beyond if stream.integer(2) else max(1, low - beyond)
    if kind == "outside" and hundredths >= low - unsure and hundredths <= low:
        hundredths = high + beyond
    return Read(id, what, hundredths / 100, low / 100, high / 100, unsure / 100)
