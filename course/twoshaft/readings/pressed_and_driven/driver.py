"""Where the driver bears: rings with their fits, and a driver on the wrong or the right ring."""

from __future__ import annotations

from twoshaft.models.fit import Fit, Ring, Zone, tight_rings
from twoshaft.readings.keyed import Stream
from twoshaft.readings.pressed_and_driven.given import Case, Driver, Grip, Shown
from twoshaft.readings.pressed_and_driven.lot import BANK, Lot

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


def draw(lot: Lot) -> Driver:
    """Three bearings to be fitted, one driver at work, and one question."""
    stream = lot.stream.child("driver")
    cases = []
    for n, family in enumerate(FAMILIES):
        identifier, story, mates = lot.in_turn(f"driver-{n}", family)[0]
        rings = [
            _limits(stream, ring in TIGHT[identifier]) if ring in mates else None
            for ring in (Ring.INNER, Ring.OUTER)
        ]
        cases.append(Case(story, *rings))
    driven = lot.in_turn("driven", list(Ring))[0]
    tight = lot.in_turn("tight", list(Ring))[0]
    return Driver(
        cases=tuple(stream.shuffled(cases)),
        places=tuple(stream.shuffled(BANK.lists["places"])),
        paths=tuple(stream.shuffled(BANK.lists["paths"])),
        shown=Shown(driven.value, tight.value),
        home=lot.ask("home", BANK),
    )


def _limits(stream: Stream, tight: bool) -> Grip:
    """A seat that grips at times, or never."""
    if tight:
        least = -6 + stream.integer(15)
        return Grip(least, least + 20 + stream.integer(14))
    most = -1 - stream.integer(6)
    return Grip(most - 18 - stream.integer(14), most)


def fit_of(grip: Grip | None) -> Fit | None:
    """A fit with that interference; None where the mate is absent."""
    if grip is None:
        return None
    limits = float(grip.least_um), float(grip.most_um)
    return Fit(Zone("given", 1.0, 0.0, 0.0), Zone("given", 1.0, *limits))


def tight_in(case: Case) -> frozenset[Ring]:
    """The rings of a case whose seats can grip."""
    return tight_rings(fit_of(case.inner), fit_of(case.outer))
