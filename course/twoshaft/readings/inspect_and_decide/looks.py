"""Pictures of damage with marks at a learner's own size and place."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.models.inspect import FLANK, NAMES, RACE, marks_of
from twoshaft.readings.inspect_and_decide.given import (
    Dogs,
    DogTeeth,
    Look,
    Looks,
    Mark,
    WornPart,
)
from twoshaft.readings.inspect_and_decide.lot import BANK, Lot
from twoshaft.readings.keyed import Stream
from twoshaft.records import Option

PICTURES, ASKED, TEETH = 6, 4, 4
LETTERS = "ABCDEF"
PITTED = "macropitting"
STEP_MM = 0.05
WORN = {
    "use": {
        "sleeve": ("points", 0.2, 0.35), "hub": ("notch", 0.05, 0.1), "key": ("ridge", 0.1, 0.3),
        "fork": ("pads", 0.2, 0.7), "spring": ("length", 0.0, 0.3),
    },
    "renew": {
        "sleeve": ("points", 0.7, 1.1), "hub": ("notch", 0.35, 0.6), "key": ("ridge", 0.8, 1.1),
        "fork": ("pads", 1.4, 1.9), "spring": ("length", 1.8, 3.0),
    },
    "find": {
        "key": ("end", 0.6, 1.1), "fork": ("pad", 0.9, 1.9), "spring": ("coil", 1.0, 1.0),
    },
}  # fmt: skip
"""What wears on a part by what becomes of it, and between which sizes [mm]."""
WORN_NAMES = {
    "sleeve": "the teeth of a sleeve",
    "hub": "the splines of a hub",
    "key": "a key of a hub",
    "fork": "the two pads of a fork",
    "spring": "a detent spring",
}
"""What is seen in a picture."""
PLACES_MM = {"sleeve": 1.0, "hub": 1.0, "key": 6.0, "fork": 6.0, "spring": 12.0}
"""How far along its scale each part may begin [mm]."""


def draw_races(lot: Lot) -> Looks:
    """Tracks of bearings."""
    kinds = lot.stream.child("races").shuffled(RACE)[:PICTURES]
    return _looks(lot, "races", kinds, kinds)


def draw_flanks(lot: Lot) -> Looks:
    """Teeth of gears; one of them is always pitted, since its pit is measured."""
    others = [one for one in FLANK if one != PITTED]
    kinds = [PITTED, *lot.stream.child("flanks").shuffled(others)[: PICTURES - 1]]
    return _looks(lot, "flanks", kinds, kinds[1:])


def _looks(lot: Lot, name: str, kinds: Sequence[str], asked: Sequence[str]) -> Looks:
    stream = lot.stream.child(f"{name} looks")
    shown = stream.shuffled(kinds)
    return Looks(
        pictures=tuple(
            _look(stream, letter, kind) for letter, kind in zip(LETTERS, shown, strict=True)
        ),
        names=tuple(Option(one, NAMES[one]) for one in stream.shuffled(asked)[:ASKED]),
        letters=tuple(
            Option(one, f"Picture {one}") for one in sorted(stream.shuffled(LETTERS)[:ASKED])
        ),
        causes=BANK.lists[f"{name}_causes"],
    )


def _look(stream: Stream, letter: str, kind: str) -> Look:
    size, at = round(stream.uniform(2.4, 4.4), 1), round(stream.uniform(18, 42), 1)
    marks = marks_of(kind, size, at, 1 + stream.integer(100_000))
    return Look(
        letter,
        tuple(
            Mark(one.shape, *map(float, (one.x_mm, one.y_mm, one.long_mm, one.wide_mm)))
            for one in marks
        ),
    )


def draw_dogs(lot: Lot) -> DogTeeth:
    """Dog teeth of four gears: sharp, blunt, too near to say, or with a corner gone."""
    stream = lot.stream.child("dogs")
    ways = ["use", stream.choice(["blunt", "broken"]), "again"]
    ways.append(stream.choice(["use", "blunt", "broken", "again"]))
    dogs = lot.section.needed_dogs()
    limit, unsure = dogs.flat_most_mm, dogs.unsure_mm
    gears = []
    for letter, way in zip(LETTERS, stream.shuffled(ways), strict=False):
        widest = {
            "use": limit - unsure - stream.uniform(0.05, 0.2),
            "broken": limit - unsure - stream.uniform(0.05, 0.2),
            "blunt": limit + unsure + stream.uniform(0.1, 0.5),
            "again": limit + unsure * stream.uniform(-0.6, 0.6),
        }[way]
        flats = [widest, *(widest * stream.uniform(0.4, 0.8) for _ in range(TEETH - 1))]
        chips = [0.0] * TEETH
        if way == "broken":
            chips[stream.integer(TEETH)] = round(stream.uniform(1, 2), 1)
        gears.append(
            Dogs(
                letter,
                tuple(round(one / STEP_MM) * STEP_MM for one in stream.shuffled(flats)),
                tuple(chips),
                tuple(round(stream.integer(6) / 5 + 0.2, 1) for _ in range(TEETH)),
            )
        )
    gears = [
        Dogs(one.letter, tuple(round(v, 2) for v in one.flats_mm), one.chips_mm, one.begins_mm)
        for one in gears
    ]
    return DogTeeth(gears=tuple(gears), answers=BANK.lists["dogs_do"])


def draw_worn(stream: Stream) -> tuple[WornPart, ...]:
    """Worn parts of the shift beside a scale: each way at least once, no part twice."""
    ways = stream.shuffled(["use", "renew", "find", stream.choice(["use", "renew", "find"])])
    left, found = list(PLACES_MM), {}
    # What leaves the fewest parts to choose from comes first.
    for place in sorted(range(len(ways)), key=lambda k: len(WORN[ways[k]])):
        part = stream.choice([one for one in left if one in WORN[ways[place]]])
        left.remove(part)
        wears, least, most = WORN[ways[place]][part]
        wear = round(stream.uniform(least, most) / STEP_MM) * STEP_MM
        at = round(1 + stream.uniform(0, PLACES_MM[part]), 1)
        found[place] = WornPart(LETTERS[place], part, wears, round(wear, 2), at)
    return tuple(found[place] for place in sorted(found))
