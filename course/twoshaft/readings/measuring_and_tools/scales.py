"""A micrometer and a depth gauge, each with a zero that is off."""

from __future__ import annotations

from twoshaft.readings.measuring_and_tools.lot import Lot

PARTS = (
    "Locating dowel, diameter",
    "Detent plunger, diameter",
    "Distance sleeve, length",
    "Selector pin, diameter",
    "Bearing roller, diameter",
)
DEPTHS = (
    "Bearing ring below the case face",
    "Seal seat below the housing face",
    "Snap-ring groove below the shaft end",
    "Bottom of a blind hole below the face",
)
ZERO_DO = [
    ["keep", "Wipe the faces, check again; if it stays, take the zero reading off every reading "
     "until the tool is set"],
    ["force", "Turn harder at zero until it shows 0"],
    ["ignore", "Leave it out: it is smaller than a tenth of a millimetre"],
    ["half", "Take half of it off, since it may come from either face"],
    ["bend", "Tap the anvil over until it shows 0"],
    ["add", "Add the zero reading with its sign to every reading"],
]  # fmt: skip
EYE = [
    ["square", "Square to the scale, since the vernier lies a little above the main scale"],
    ["side", "From the side, so that the lines throw a shadow"],
    ["near", "As near as possible; the direction does not matter"],
    ["both", "First from the left, then from the right, and take the larger"],
    ["far", "From arm's length, so that the lines run together"],
]
FIRST_HALF, LAST_HALF = 6, 44
"""Thimble lines between which sleeve and thimble cannot be mistaken for each other."""


def draw_micrometer(lot: Lot) -> dict:
    """A part and a micrometer: ``part``, ``part_mm``, ``zero_mm`` (what is really there), ``do``.

    Every learner's reading has the half-millimetre line open.
    """
    stream = lot.stream.child("micrometer")
    zero = stream.choice((-0.04, -0.03, -0.02, 0.02, 0.03, 0.04))
    line = FIRST_HALF + stream.integer(LAST_HALF - FIRST_HALF)
    shown = 4 + stream.integer(17) + 0.5 + line / 100
    return {
        "part": lot.in_turn("part", PARTS)[0],
        "part_mm": round(shown - zero, 2),
        "zero_mm": zero,
        "do": stream.shuffled(ZERO_DO),
    }


def draw_depth(lot: Lot) -> dict:
    """A depth and its gauge: ``name``, ``depth_mm``, ``zero_mm``, ``eye`` at first, ``look``."""
    stream = lot.stream.child("depth")
    zero = stream.choice((-0.2, -0.1, 0.1, 0.2))
    twentieths = 5 + stream.integer(10)
    shown = 8 + stream.integer(30) + twentieths / 20
    return {
        "name": lot.in_turn("depth", DEPTHS)[0],
        "depth_mm": round(shown - zero, 2),
        "zero_mm": zero,
        "eye": stream.choice(("left", "right")),
        "look": stream.shuffled(EYE),
    }
