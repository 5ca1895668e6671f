"""A micrometer and a depth gauge, each with a zero that is off."""

from __future__ import annotations

from twoshaft.readings.keyed import Stream
from twoshaft.readings.measuring_and_tools.given import Depth, DepthSet, Micrometer
from twoshaft.readings.measuring_and_tools.lot import BANK, Lot
from twoshaft.readings.scenes import LETTERS

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
SCENES = 4
WRONG = ((), ("eye",), ("set",), *3 * (("eye", "set"),))
UNSET = ("chip", "lifted", "short", "rounding")
"""What is wrong with each of the pictures of a depth gauge, and in which ways."""
FIRST_HALF, LAST_HALF = 6, 44
"""Thimble lines between which sleeve and thimble cannot be mistaken for each other."""


def draw_micrometer(lot: Lot) -> Micrometer:
    """A part and a micrometer. Every learner's reading has the half-millimetre line open."""
    stream = lot.stream.child("micrometer")
    zero = stream.choice((-0.04, -0.03, -0.02, 0.02, 0.03, 0.04))
    line = FIRST_HALF + stream.integer(LAST_HALF - FIRST_HALF)
    shown = 4 + stream.integer(17) + 0.5 + line / 100
    return Micrometer(
        part=lot.in_turn("part", PARTS)[0],
        part_mm=round(shown - zero, 2),
        zero_mm=zero,
        zeros=lot.scenes_asked("zeros", BANK, SCENES, lambda: _zeros(stream)),
    )


def _zeros(stream: Stream) -> dict[str, object]:
    """A tool's number, its zero reading and others, a block and what is read on it [mm]."""
    zero = stream.choice((-1, 1)) * (2 + stream.integer(6)) / 100
    block = 5 * (1 + stream.integer(4))
    return {
        "no": 1 + stream.integer(60),
        "zero": f"{zero:+.2f}",
        "second": f"{zero + stream.choice((-3, -2, 2, 3)) / 100:+.2f}",
        "third": f"{zero + stream.choice((-5, -4, 4, 5)) / 100:+.2f}",
        "block": block,
        "right": f"{block + zero:.2f}",
        "other": f"{block + zero + stream.choice((-6, -5, -4, 4, 5, 6)) / 100:.2f}",
    }


def draw_depth(lot: Lot) -> Depth:
    """A depth and its gauge."""
    stream = lot.stream.child("depth")
    zero = stream.choice((-0.2, -0.1, 0.1, 0.2))
    twentieths = 5 + stream.integer(10)
    shown = 8 + stream.integer(30) + twentieths / 20
    return Depth(
        name=lot.in_turn("depth", DEPTHS)[0],
        depth_mm=round(shown - zero, 2),
        zero_mm=zero,
        eye=stream.choice(("left", "right")),
        looks=tuple(
            _seen(stream, letter, "eye" in wrong, "set" in wrong)
            for letter, wrong in zip(LETTERS, stream.shuffled(WRONG), strict=False)
        ),
        asked=tuple(stream.shuffled(BANK.lists["looks"])),
    )


def _seen(stream: Stream, letter: str, aside: bool, unset: bool) -> DepthSet:
    """A gauge that is right, or wrong in where the eye is or in how foot and rod stand."""
    curve, left, right, short = 3.0 + 0.5 * stream.integer(4), 0.0, 0.0, 0.0
    wall = curve + 3 + stream.integer(6)
    how = stream.choice(UNSET) if unset else ""
    off = (10 + stream.integer(8)) / 10
    if how == "chip":
        left, right = (off, 0.0) if stream.integer(2) else (0.0, off)
    elif how == "lifted":
        left = right = off
    elif how == "short":
        short = off
    elif how == "rounding":
        wall = 1 + 0.5 * stream.integer(2)
    eye = 22 + stream.integer(14) if aside else stream.integer(3)
    return DepthSet(letter, left, right, short, wall, curve, stream.choice((-1, 1)) * eye)
