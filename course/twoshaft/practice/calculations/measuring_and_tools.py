"""Calculations of measuring: readings of three gauges, spread, a pull, an adapter, uncertainty."""

import math
from statistics import mean, stdev

from twoshaft.models import gauges, joint
from twoshaft.practice.calculation import Calculation, Figures, Given, Step


def _readings(s: Figures) -> list[float]:
    return [s[f"r{n}"] for n in range(1, 7)]


def _root(s: Figures) -> float:
    return math.hypot(s["tool"], s["spread"], s["shown"])


MICROMETER = Calculation(
    "micrometer",
    "A micrometer",
    "Read sleeve and thimble, then take the zero reading off.",
    (
        Given("sleeve", "last whole millimetre on the sleeve", 8, 22, 1, "mm"),
        Given("half", "lines below the datum that show past it (0 or 1)", 0, 1, 1),
        Given("thimble", "thimble line on the datum", 3, 47, 1),
        Given("zero", "zero reading", -0.03, -0.01, 0.01, "mm"),
    ),
    (
        Step("reading", "The reading", "mm", "{sleeve} + {half} × 0.50 + {thimble} × 0.01",
             lambda s: s["sleeve"] + 0.5 * s["half"] + 0.01 * s["thimble"],
             {"The half turn is missing.": lambda s: s["sleeve"] + 0.01 * s["thimble"],
              "A half turn was added that the sleeve does not show.":
              lambda s: s["sleeve"] + 0.5 + 0.01 * s["thimble"]}, off=0.004),
        Step("size", "The size", "mm", "{reading} − ({zero})",
             lambda s: gauges.corrected.plain(s["reading"], s["zero"]),
             {"You added the zero reading; it is taken off.": lambda s: s["reading"] + s["zero"],
              "The zero reading was left out.": lambda s: s["reading"]}, off=0.004),
    ),
)  # fmt: skip

DEPTH = Calculation(
    "depth-gauge",
    "A depth gauge",
    "Its vernier reads in steps of 0.05 mm. On the surface plate it shows its zero reading.",
    (
        Given("main", "main scale", 12, 40, 1, "mm"),
        Given("line", "vernier line that meets a main line", 2, 18, 1),
        Given("zero", "zero reading", 0.05, 0.15, 0.05, "mm"),
    ),
    (
        Step("reading", "The reading", "mm", "{main} + {line} × 0.05",
             lambda s: s["main"] + 0.05 * s["line"],
             {"You counted each vernier line as a tenth.": lambda s: s["main"] + 0.1 * s["line"],
              "You counted each vernier line as a hundredth.":
              lambda s: s["main"] + 0.01 * s["line"]}, off=0.01),
        Step("depth", "The depth", "mm", "{reading} − {zero}",
             lambda s: gauges.corrected.plain(s["reading"], s["zero"]),
             {"You added the zero reading; it is taken off.": lambda s: s["reading"] + s["zero"],
              "The zero reading was left out.": lambda s: s["reading"]}, off=0.01),
    ),
)  # fmt: skip

SPREAD = Calculation(
    "six-readings",
    "Six readings",
    "Work out the mean and the standard deviation of one set.",
    tuple(Given(f"r{n}", f"reading {n}", 24.95, 25.05, 0.01, "mm") for n in range(1, 7)),
    (
        Step("mean", "The mean", "mm", "sum of {r1}, {r2}, {r3}, {r4}, {r5} and {r6}, divided by 6",
             lambda s: mean(_readings(s)), off=0.001),
        Step("sd", "The standard deviation", "mm",
             "root of (squares of the distances from {mean}, added up, divided by 5)",
             lambda s: stdev(_readings(s)),
             {"You divided by 6; of six readings one less counts.":
              lambda s: stdev(_readings(s)) * math.sqrt(5 / 6),
              "The root is missing.": lambda s: stdev(_readings(s)) ** 2}),
    ),
)  # fmt: skip

DIAL = Calculation(
    "shaft-under-dial",
    "A shaft under the dial",
    "The plunger is square and pressed in. The shaft was turned once.",
    (
        Given("high", "largest reading", 0.50, 0.80, 0.01, "mm"),
        Given("low", "smallest reading", 0.20, 0.44, 0.01, "mm"),
    ),
    (
        Step("total", "The total reading", "mm", "{high} − {low}", lambda s: s["high"] - s["low"],
             {"You added the two readings.": lambda s: s["high"] + s["low"]}, off=0.004),
        Step("centre", "How far the surface runs out of centre", "mm", "{total} ÷ 2",
             lambda s: gauges.eccentricity.plain(s["total"]),
             {"That is the total; the distance from the centre is half of it.":
              lambda s: s["total"]}, off=0.004),
    ),
)  # fmt: skip

PULL = Calculation(
    "pull-on-cord",
    "A pull on a cord",
    "The cord leaves the drum along its rim.",
    (
        Given("pull", "pull while it turns", 8, 40, 1, "N"),
        Given("across", "diameter of the drum", 50, 120, 10, "mm"),
    ),
    (
        Step("torque", "The torque", "N·m", "{pull} × {across} ÷ 2 ÷ 1000",
             lambda s: s["pull"] * s["across"] / 2000,
             {"You took the diameter; the torque needs the radius.":
              lambda s: s["pull"] * s["across"] / 1000}),
    ),
)  # fmt: skip

ADAPTER = Calculation(
    "wrench-with-adapter",
    "A torque wrench with an adapter",
    "The adapter stands straight on and makes the lever longer. The wrench may be 4 % off.",
    (
        Given("torque", "torque at the bolt", 15, 60, 5, "N·m"),
        Given("wrench", "wrench, from drive to grip", 280, 420, 10, "mm"),
        Given("adapter", "adapter", 40, 90, 5, "mm"),
    ),
    (
        Step("setting", "Set the wrench to", "N·m", "{torque} × {wrench} ÷ ({wrench} + {adapter})",
             lambda s: joint.setting_with_adapter.plain(s["torque"], s["wrench"] / 1e3,
                                                        s["adapter"] / 1e3, 0.0),
             {"You set more; the longer lever needs less.":
              lambda s: s["torque"] * (s["wrench"] + s["adapter"]) / s["wrench"],
              "The adapter was left out.": lambda s: s["torque"],
              "You took the adapter off the wrench in place of adding it.":
              lambda s: s["torque"] * s["wrench"] / (s["wrench"] - s["adapter"])}),
        Step("least", "The least that the bolt then gets", "N·m", "{torque} × 0.96",
             lambda s: s["torque"] * 0.96,
             {"That is 4 % of the setting; the bolt gets more, because of the adapter.":
              lambda s: s["setting"] * 0.96, "That is the most.": lambda s: s["torque"] * 1.04}),
    ),
)  # fmt: skip

UNCERTAINTY = Calculation(
    "uncertainty",
    "What a reading is worth",
    "Three things blur one reading. Square each, add, take the root, then double.",
    (
        Given("tool", "the tool, from its certificate", 0.003, 0.009, 0.001, "mm"),
        Given("spread", "the spread of the mean", 0.002, 0.008, 0.001, "mm"),
        Given("shown", "the step of the tool", 0.002, 0.004, 0.001, "mm"),
    ),
    (
        Step("all", "All together", "mm", "root of (({tool})² + ({spread})² + ({shown})²)", _root,
             {"You added them plainly; they partly even out.":
              lambda s: s["tool"] + s["spread"] + s["shown"],
              "The root is missing.": lambda s: _root(s) ** 2}),
        Step("twice", "The uncertainty, for 95 times in 100", "mm", "2 × {all}",
             lambda s: 2 * s["all"], {"You did not double it.": lambda s: s["all"]}),
    ),
)  # fmt: skip

CALCULATIONS = (MICROMETER, DEPTH, SPREAD, DIAL, PULL, ADAPTER, UNCERTAINTY)
