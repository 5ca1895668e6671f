"""Where the driver bears: rings with their fits, and a driver on the wrong or the right ring."""

from __future__ import annotations

from twoshaft.models.fit import Fit, Ring, Zone, tight_rings
from twoshaft.readings.keyed import Stream
from twoshaft.readings.pressed_and_driven.given import Case, Driver, Grip, Shown
from twoshaft.readings.pressed_and_driven.lot import BANK, Lot

# What is done, and which mates are there; invented practice bearings.
KINDS = (
    ("case-alone", "The bearing goes into its case; the shaft comes later", (Ring.OUTER,)),
    ("shaft-alone", "The bearing goes on its shaft; the case comes later", (Ring.INNER,)),
    ("case-tight", "The shaft stands in the case; the bearing goes over the one and into "
     "the other", (Ring.OUTER, Ring.INNER)),
    ("shaft-tight", "The case lies over the shaft; the bearing goes into the one and over "
     "the other", (Ring.OUTER, Ring.INNER)),
    ("both-tight", "The shaft stands in the case; the bearing goes over the one and into "
     "the other", (Ring.OUTER, Ring.INNER)),
    ("both-loose", "The case lies over the shaft; the bearing goes into the one and over "
     "the other", (Ring.OUTER, Ring.INNER)),
)  # fmt: skip
CASES, SET_UPS, RINGS = 4, 3, 4
TIGHT = {
    "case-alone": (Ring.OUTER,),
    "shaft-alone": (Ring.INNER,),
    "case-tight": (Ring.OUTER,),
    "shaft-tight": (Ring.INNER,),
    "both-tight": (Ring.OUTER, Ring.INNER),
    "both-loose": (),
}


def draw(lot: Lot) -> Driver:
    """Some bearings to be fitted, a driver at work, set-ups, and rings on their way."""
    stream = lot.stream.child("driver")
    cases = []
    for identifier, story, mates in lot.next_ones("driver", KINDS, CASES):
        inner, outer = (
            _limits(stream, ring in TIGHT[identifier]) if ring in mates else None
            for ring in (Ring.INNER, Ring.OUTER)
        )
        cases.append(Case(story, inner, outer))
    driven = lot.in_turn("driven", list(Ring))[0]
    tight = lot.in_turn("tight", list(Ring))[0]
    return Driver(
        cases=tuple(stream.shuffled(cases)),
        places=BANK.lists["places"],
        shown=Shown(driven.value, tight.value),
        paths=lot.scenes_asked("paths", BANK, SET_UPS, lambda: _figures(stream)),
        home=lot.scenes_asked("home", BANK, RINGS, lambda: _figures(stream)),
    )


def _figures(stream: Stream) -> dict[str, object]:
    """A diameter [mm], forces [kN], a number of blows, a feeler and how far it is off [mm]."""
    low = 3 + stream.integer(12)
    off = 0.6 + 0.1 * stream.integer(14)
    return {
        "d": 18 + stream.integer(45),
        "kn": low,
        "more_kn": 2 * low + stream.integer(9),
        "blows": 5 + stream.integer(9),
        "feeler": stream.choice(("0.03", "0.04", "0.05", "0.06")),
        "off": f"{off:.1f}",
        "further": f"{off + 0.5 + 0.1 * stream.integer(9):.1f}",
    }


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
