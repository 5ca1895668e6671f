"""Calculations of the whole build: shims with room for the uncertainty, a part seen late."""

from twoshaft.practice.calculation import Calculation, Given, Step
from twoshaft.practice.calculations.order_of_work import CLOCK
from twoshaft.practice.calculations.reading_faults import FALSE_COUNT

SHIMS = Calculation(
    "shims-with-room",
    "The shims of your unit, with room",
    "A thicker shim tightens. Both ends come in by the uncertainty of the measurement.",
    (
        Given("gap", "shim that takes up the gap", 0.90, 1.20, 0.01, "mm"),
        Given("low", "least preload wanted", 0.03, 0.05, 0.01, "mm"),
        Given("high", "most preload wanted", 0.10, 0.14, 0.01, "mm"),
        Given("unsure", "uncertainty", 0.01, 0.02, 0.005, "mm"),
    ),
    (
        Step("thin", "The thinnest shim that is safe", "mm", "{gap} + {low} + {unsure}",
             lambda s: s["gap"] + s["low"] + s["unsure"],
             {"The uncertainty is missing.": lambda s: s["gap"] + s["low"],
              "The uncertainty makes the window narrower, so it is added here.":
              lambda s: s["gap"] + s["low"] - s["unsure"]}, off=0.002),
        Step("thick", "The thickest that is safe", "mm", "{gap} + {high} − {unsure}",
             lambda s: s["gap"] + s["high"] - s["unsure"],
             {"The uncertainty is missing.": lambda s: s["gap"] + s["high"],
              "The uncertainty makes the window narrower, so it is taken off here.":
              lambda s: s["gap"] + s["high"] + s["unsure"]}, off=0.002),
    ),
)  # fmt: skip

LATE = Calculation(
    "seen-late",
    "The wrong way round, seen late",
    "What was fitted over the part comes off, the part is turned, and all goes on again.",
    (
        Given("off", "taking off what lies over it", 8, 25, 1, "min"),
        Given("turn", "turning the part", 1, 3, 1, "min"),
        Given("on", "fitting it all again", 15, 45, 1, "min"),
        Given("rate", "one hour of the bench costs", 50, 90, 5),
    ),
    (
        Step("minutes", "Minutes lost", "min", "{off} + {turn} + {on}",
             lambda s: s["off"] + s["turn"] + s["on"],
             {"What came off has to go on again.": lambda s: s["off"] + s["turn"]}, off=0.1),
        Step("cost", "What that costs", "", "{minutes} ÷ 60 × {rate}",
             lambda s: s["minutes"] / 60 * s["rate"],
             {"You took the minutes for hours.": lambda s: s["minutes"] * s["rate"]}, off=0.3),
    ),
)  # fmt: skip

CALCULATIONS = (SHIMS, CLOCK, FALSE_COUNT, LATE)
