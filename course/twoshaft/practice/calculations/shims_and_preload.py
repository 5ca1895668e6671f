"""Calculations of shims: a stack, a trial fit, a cord, heat."""

import math

from twoshaft.models import fit, shim
from twoshaft.practice.calculation import Calculation, Figures, Given, Step
from twoshaft.units.sections.bearings import Arrangement, ShimPlace

STEEL_PER_K = fit.STEEL.expansion_per_k
ALUMINIUM_PER_K = fit.CAST_ALUMINIUM.expansion_per_k


def _root(s: Figures) -> float:
    return math.hypot(s["case"], s["shaft"], s["bearings"])


STACK = Calculation(
    "stack",
    "From the stack to the shim",
    "The case holds the outer rings from outside, and the shim lies behind one of them.",
    (
        Given("case", "case between the ring seats", 121.00, 121.40, 0.01, "mm"),
        Given("carrier", "carrier between its shoulders", 84.90, 85.20, 0.01, "mm"),
        Given("left", "stand of the left bearing", 17.40, 17.50, 0.01, "mm"),
        Given("right", "stand of the right bearing", 17.40, 17.50, 0.01, "mm"),
        Given("low", "least preload wanted", 0.03, 0.06, 0.01, "mm"),
        Given("high", "most preload wanted", 0.09, 0.13, 0.01, "mm"),
    ),
    (
        Step("gap", "The shim that takes up the gap", "mm",
             "{case} − {carrier} − {left} − {right}",
             lambda s: s["case"] - s["carrier"] - s["left"] - s["right"],
             {"One bearing is missing.": lambda s: s["case"] - s["carrier"] - s["left"]},
             off=0.004),
        Step("thin", "The thinnest shim that meets the target", "mm", "{gap} + {low}",
             lambda s: s["gap"] + s["low"],
             {"A thicker shim tightens here, so preload is added.": lambda s: s["gap"] - s["low"],
              "That is the thickest.": lambda s: s["gap"] + s["high"]}, off=0.004),
        Step("thick", "The thickest", "mm", "{gap} + {high}", lambda s: s["gap"] + s["high"],
             {"A thicker shim tightens here, so preload is added.": lambda s: s["gap"] - s["high"]},
             off=0.004),
    ),
)  # fmt: skip

CHANGED = Calculation(
    "shim-changed",
    "Another shim",
    "The case holds the outer rings from outside: a thicker shim tightens.",
    (
        Given("before", "preload before", 0.02, 0.08, 0.01, "mm"),
        Given("old", "shim taken out", 1.00, 1.20, 0.05, "mm"),
        Given("new", "shim put in", 1.25, 1.40, 0.05, "mm"),
    ),
    (
        Step("change", "The shim is thicker by", "mm", "{new} − {old}",
             lambda s: s["new"] - s["old"], off=0.004),
        Step("after", "Preload after", "mm", "{before} + {change}",
             lambda s: s["before"] + s["change"],
             {"A thicker shim tightens here; you loosened it.":
              lambda s: s["before"] - s["change"]}, off=0.004),
    ),
)  # fmt: skip

TRIAL = Calculation(
    "trial-fit",
    "A trial fit",
    "A trial shim is in, the rollers are turned home, and a thicker shim tightens.",
    (
        Given("push", "dial while you push", 0.20, 0.40, 0.01, "mm"),
        Given("pull", "dial while you pull", 0.52, 0.80, 0.01, "mm"),
        Given("shim", "trial shim", 0.90, 1.20, 0.05, "mm"),
        Given("preload", "preload wanted", 0.05, 0.10, 0.01, "mm"),
    ),
    (
        Step("float", "The end float", "mm", "{pull} − {push}", lambda s: s["pull"] - s["push"],
             {"You added the readings.": lambda s: s["pull"] + s["push"],
              "That is one reading; the difference counts.": lambda s: s["pull"]}, off=0.004),
        Step("wanted", "The shim for the preload", "mm", "{shim} + {float} + {preload}",
             lambda s: shim.shim_from_float.plain(Arrangement.OUTER_TOGETHER,
                                                  ShimPlace.BEHIND_OUTER, s["shim"], s["float"],
                                                  s["preload"]),
             {"The preload is missing.": lambda s: s["shim"] + s["float"],
              "The preload is added, not taken off.":
              lambda s: s["shim"] + s["float"] - s["preload"],
              "The trial shim is missing.": lambda s: s["float"] + s["preload"]}, off=0.004),
    ),
)  # fmt: skip

WORTH = Calculation(
    "stack-uncertainty",
    "What the measurement is worth",
    "Three lengths go into a shim. Square each uncertainty, add, take the root, then double.",
    (
        Given("case", "the case", 6, 14, 1, "µm"),
        Given("shaft", "the carrier", 4, 10, 1, "µm"),
        Given("bearings", "the bearings", 4, 9, 1, "µm"),
    ),
    (
        Step("all", "All together", "µm", "root of (({case})² + ({shaft})² + ({bearings})²)", _root,
             {"You added them plainly; they partly even out.":
              lambda s: s["case"] + s["shaft"] + s["bearings"],
              "The root is missing.": lambda s: _root(s) ** 2}),
        Step("twice", "Good for 95 times in 100", "µm", "2 × {all}", lambda s: 2 * s["all"],
             {"You did not double it.": lambda s: s["all"]}),
    ),
)  # fmt: skip

CORD = Calculation(
    "cord",
    "Judge it by the cord",
    "The cord runs on a drum. The seals alone were pulled before.",
    (
        Given("pull", "pull while it turns", 20, 45, 1, "N"),
        Given("radius", "radius of the drum", 30, 60, 5, "mm"),
        Given("seals", "the seals alone", 0.10, 0.30, 0.05, "N·m"),
        Given("thousand", "torque of the bearings with 1000 N of preload", 0.6, 1.2, 0.05, "N·m"),
    ),
    (
        Step("torque", "The torque", "N·m", "{pull} × {radius} ÷ 1000",
             lambda s: s["pull"] * s["radius"] / 1e3,
             {"You used twice the radius; the torque is pull times radius.":
              lambda s: s["pull"] * s["radius"] / 500}),
        Step("bearings", "Of the bearings alone", "N·m", "{torque} − {seals}",
             lambda s: s["torque"] - s["seals"],
             {"You added the seals; they come off.": lambda s: s["torque"] + s["seals"],
              "The seals were left in.": lambda s: s["torque"]}),
        Step("preload", "Preload behind it", "N", "{bearings} ÷ {thousand} × 1000",
             lambda s: s["bearings"] / s["thousand"] * 1000,
             {"You divided the other way.": lambda s: s["thousand"] / s["bearings"] * 1000}),
    ),
)  # fmt: skip

WARM = Calculation(
    "cold-to-warm",
    "From cold to warm",
    "The aluminium case grows 21.5 µm for each metre and degree, the steel shaft 11.5 µm. The case "
    "holds the outer rings from outside, so it takes preload away as it grows.",
    (
        Given("span", "span between the bearings", 0.10, 0.25, 0.01, "m"),
        Given("rise", "warmer by", 40, 70, 5, "K"),
        Given("cold", "preload when cold", 60, 120, 5, "µm"),
    ),
    (
        Step("case", "The case grows by", "µm", "21.5 × {span} × {rise}",
             lambda s: ALUMINIUM_PER_K * 1e6 * s["span"] * s["rise"],
             {"That is the growth of steel.":
              lambda s: STEEL_PER_K * 1e6 * s["span"] * s["rise"]}),
        Step("shaft", "The shaft grows by", "µm", "11.5 × {span} × {rise}",
             lambda s: STEEL_PER_K * 1e6 * s["span"] * s["rise"],
             {"That is the growth of aluminium.":
              lambda s: ALUMINIUM_PER_K * 1e6 * s["span"] * s["rise"]}),
        Step("warm", "Preload when warm; below zero is end play", "µm",
             "{cold} − ({case} − {shaft})",
             lambda s: s["cold"] - (s["case"] - s["shaft"]),
             {"The case takes preload away; you added it.":
              lambda s: s["cold"] + (s["case"] - s["shaft"]),
              "The shaft grows as well.": lambda s: s["cold"] - s["case"]}, off=2),
    ),
)  # fmt: skip

LIFE = Calculation(
    "life-compared",
    "Life at two settings",
    "A table gives the life of a pair of bearings at each setting.",
    (
        Given("first", "life at the first setting", 9000, 16000, 100, "h"),
        Given("second", "life at the second setting", 3000, 8000, 100, "h"),
    ),
    (
        Step("times", "How many times as long", "", "{first} ÷ {second}",
             lambda s: s["first"] / s["second"],
             {"Turned round: divide the first by the second.":
              lambda s: s["second"] / s["first"]}),
        Step("lost", "Share of its life that the second setting costs", "%",
             "(1 − 1 ÷ {times}) × 100", lambda s: (1 - 1 / s["times"]) * 100,
             {"This is what is left, not what is lost.": lambda s: 100 / s["times"]}, off=0.6),
    ),
)  # fmt: skip

CALCULATIONS = (STACK, CHANGED, TRIAL, WORTH, CORD, WARM, LIFE)
