"""Calculations of reading faults: a false count, a false pull, what a search costs."""

from twoshaft.practice.calculation import Calculation, Given, Step

FALSE_COUNT = Calculation(
    "count-it-should-be",
    "A fault, or a false count?",
    "One wheel was held and the other turned. How many turns should the input shaft have made?",
    (
        Given("driving", "driving gear", 18, 35, 1, "teeth"),
        Given("driven", "driven gear", 36, 45, 1, "teeth"),
        Given("final", "ratio of the final drive", 3.6, 4.4, 0.05),
        Given("turns", "turns of the wheel", 4, 8, 1),
    ),
    (
        Step("ratio", "Turns of the input for one of the ring gear", "",
             "{driven} ÷ {driving} × {final}", lambda s: s["driven"] / s["driving"] * s["final"],
             {"You divided driving by driven.": lambda s: s["driving"] / s["driven"] * s["final"],
              "The final drive is missing.": lambda s: s["driven"] / s["driving"]}),
        Step("input", "Turns of the input", "", "{ratio} × {turns} ÷ 2",
             lambda s: s["ratio"] * s["turns"] / 2,
             {"With one wheel held the ring gear makes half the turns of the other.":
              lambda s: s["ratio"] * s["turns"]}),
    ),
)  # fmt: skip

FALSE_PULL = Calculation(
    "pull-that-is-left",
    "A fault, or a false pull?",
    "The other shaft turned as well. Its pull alone was read before.",
    (
        Given("shown", "the spring scale shows", 22, 40, 1, "N"),
        Given("alone", "the other shaft alone", 6, 14, 1, "N"),
        Given("radius", "radius of the drum", 30, 60, 5, "mm"),
    ),
    (
        Step("rest", "Pull that is left", "N", "{shown} − {alone}",
             lambda s: s["shown"] - s["alone"],
             {"You added the other shaft.": lambda s: s["shown"] + s["alone"]}, off=0.2),
        Step("torque", "Torque of the bearings", "N·m", "{rest} × {radius} ÷ 1000",
             lambda s: s["rest"] * s["radius"] / 1e3,
             {"You took the diameter of the drum; the cord pulls at its radius.":
              lambda s: s["rest"] * s["radius"] / 500}),
    ),
)  # fmt: skip

SEARCH = Calculation(
    "search-minutes",
    "What a search costs",
    "Three suspects are left. The first check finds one of them, the second tells the other two "
    "apart.",
    (
        Given("first", "first check", 2, 6, 1, "min"),
        Given("second", "second check", 5, 15, 1, "min"),
        Given("share", "share of the suspect that the first check finds, in per cent", 30, 60, 5),
    ),
    (
        Step("both", "Minutes if it is one of the other two", "min", "{first} + {second}",
             lambda s: s["first"] + s["second"],
             {"The first check was made before the second.": lambda s: s["second"]}, off=0.1),
        Step("mean", "Minutes on average", "min",
             "{share} % of {first} and the rest of {both}",
             lambda s: s["share"] / 100 * s["first"] + (1 - s["share"] / 100) * s["both"],
             {"You took the plain average; each time counts by its share.":
              lambda s: (s["first"] + s["both"]) / 2}, off=0.1),
    ),
)  # fmt: skip

CALCULATIONS = (FALSE_COUNT, FALSE_PULL, SEARCH)
