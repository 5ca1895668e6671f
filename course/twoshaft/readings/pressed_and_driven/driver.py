"""Where the driver bears: rings with their fits, and a driver on the wrong or the right ring."""

from __future__ import annotations

from twoshaft.models.fit import Fit, Ring, Zone, tight_rings
from twoshaft.readings.pressed_and_driven.lot import Lot, Version

# What is done, and which mates are there; invented practice bearings.
FAMILIES = (
    (
        ("case-alone", "The bearing goes into its case; the shaft comes later", (Ring.OUTER,)),
        ("shaft-alone", "The bearing goes on its shaft; the case comes later", (Ring.INNER,)),
    ),
    (
        ("case-tight", "The shaft stands in the case; the bearing goes over the one and into "
         "the other", (Ring.OUTER, Ring.INNER)),
        ("shaft-tight", "The case lies over the shaft; the bearing goes into the one and over "
         "the other", (Ring.OUTER, Ring.INNER)),
    ),
    (
        ("both-tight", "The shaft stands in the case; the bearing goes over the one and into "
         "the other", (Ring.OUTER, Ring.INNER)),
        ("both-loose", "The shaft stands in the case; the bearing goes over the one and into "
         "the other", (Ring.OUTER, Ring.INNER)),
    ),
)  # fmt: skip
TIGHT = {
    "case-alone": (Ring.OUTER,),
    "shaft-alone": (Ring.INNER,),
    "case-tight": (Ring.OUTER,),
    "shaft-tight": (Ring.INNER,),
    "both-tight": (Ring.OUTER, Ring.INNER),
    "both-loose": (),
}
PLACES = [
    ["outer", "On the outer ring only"],
    ["inner", "On the inner ring only"],
    ["both", "On both rings at once, with a flat plate or stepped sleeve"],
    ["none", "On neither: it goes in by hand, both seats have play"],
    ["cage", "On the cage, halfway between the rings"],
    ["shield", "On the dust shield, since it covers both"],
    ["hammered", "On whichever ring is in reach, in small blows all round"],
]
PATHS = [
    ["direct", "From the driver through that ring straight into its tight seat"],
    ["elements", "Through the balls or rollers to the other ring: they dent the raceways"],
    ["cage", "Through the cage, which shares it out"],
    ["halves", "Half through each ring, whichever is driven"],
    ["shaft", "Through the shaft, which gives way first"],
    ["spread", "It spreads evenly in the steel, so nothing is loaded"],
]
HOME: tuple[Version, ...] = (
    (
        "home",
        "How do you know that a ring is home?",
        (
            ("signs", "The force jumps, the sound turns dull, no feeler goes under it anywhere"),
            ("flush", "It is flush with the edge of the bore, to the eye"),
            ("blows", "It has had as many blows as the last one"),
            ("stops", "It stops moving for the first time"),
            ("turns", "The shaft still turns freely"),
            ("oil", "Oil is squeezed out all round"),
        ),
    ),
    (
        "start",
        "How does a ring start into its bore?",
        (
            ("square", "Lead chamfer first, square all round, seat clean and lightly oiled"),
            ("one-side", "One side first, then the other, as a lid goes on a tin"),
            ("dry", "Dry and quickly, so that it has no time to tilt"),
            ("punch", "With a punch at one place until it bites"),
            ("grease", "With the bore packed with grease, so that it floats in"),
            ("ground", "With its edge ground back at one side, so that it finds the bore"),
        ),
    ),
    (
        "support",
        "A bearing goes on a shaft in the press. What stands on the press bed?",
        (
            ("shaft", "The shaft, under its end, so that the force runs through tight seat and "
             "shaft only"),
            ("gear", "The nearest gear on the shaft, since it is wide"),
            ("outer", "The outer ring of the bearing at the other end"),
            ("hand", "Somebody's gloved hand, to keep it upright"),
            ("case", "The case that the shaft will go into"),
            ("synchro", "The synchroniser sleeve, since it is hard"),
        ),
    ),
)  # fmt: skip


def draw(lot: Lot) -> dict:
    """Three bearings to be fitted, one driver at work, and one question.

    ``cases``: what is done, fits (inner and outer ring: least and most interference [um], or
    None where the mate is absent); ``places`` and ``paths`` (key, label); ``shown``: the rings
    ``driven`` and ``tight`` in the drawing; ``home``: a question.
    """
    stream = lot.stream.child("driver")
    cases = []
    for n, family in enumerate(FAMILIES):
        identifier, story, mates = lot.in_turn(f"driver-{n}", family)[0]
        rings = [
            _limits(stream, ring in TIGHT[identifier]) if ring in mates else None
            for ring in (Ring.INNER, Ring.OUTER)
        ]
        cases.append([story, *rings])
    driven = lot.in_turn("driven", list(Ring))[0]
    tight = lot.in_turn("tight", list(Ring))[0]
    return {
        "cases": stream.shuffled(cases),
        "places": stream.shuffled(PLACES),
        "paths": stream.shuffled(PATHS),
        "shown": {"driven": driven.value, "tight": tight.value},
        "home": lot.ask("home", HOME),
    }


def _limits(stream, tight: bool) -> list[int]:
    """Least and most interference [um]: one that grips at times, or never."""
    if tight:
        least = -6 + stream.integer(15)
        return [least, least + 20 + stream.integer(14)]
    most = -1 - stream.integer(6)
    return [most - 18 - stream.integer(14), most]


def fit_of(limits: list[int] | None) -> Fit | None:
    """A fit from its least and most interference [um]; None where the mate is absent."""
    if limits is None:
        return None
    return Fit(Zone("given", 1.0, 0.0, 0.0), Zone("given", 1.0, *map(float, limits)))


def tight_in(case: list) -> frozenset[Ring]:
    """The rings of a case whose seats can grip."""
    return tight_rings(*map(fit_of, case[1:]))
