"""Calculations of the gear train: a path, a count, a washer, a ring, road speed."""

import math

from twoshaft.models import geartrain
from twoshaft.practice.calculation import Calculation, Given, Step

PATH = Calculation(
    "along-the-path",
    "Along the path",
    "Driven divided by driving, one mesh after the other, multiplied.",
    (
        Given("driving", "driving gear", 11, 35, 1, "teeth"),
        Given("driven", "driven gear", 36, 48, 1, "teeth"),
        Given("pinion", "pinion of the final drive", 15, 19, 1, "teeth"),
        Given("ring", "ring gear", 60, 75, 1, "teeth"),
    ),
    (
        Step("own", "Ratio of the gear", "", "{driven} ÷ {driving}",
             lambda s: s["driven"] / s["driving"],
             {"You divided driving by driven.": lambda s: s["driving"] / s["driven"]}),
        Step("all", "Turns of the input for one of the ring gear", "", "{own} × {ring} ÷ {pinion}",
             lambda s: s["own"] * s["ring"] / s["pinion"],
             {"You added the two ratios.": lambda s: s["own"] + s["ring"] / s["pinion"],
              "The final drive is missing.": lambda s: s["own"],
              "The final drive is turned round.": lambda s: s["own"] * s["pinion"] / s["ring"]}),
    ),
)  # fmt: skip

COUNT = Calculation(
    "turns-to-count",
    "Turns to count",
    "A gear is engaged, one wheel is held, and the other is turned.",
    (
        Given("ratio", "turns of the input for one of the ring gear", 3, 14, 0.05),
        Given("turns", "turns of the wheel", 2, 6, 1),
    ),
    (
        Step("ring", "Turns of the ring gear", "", "{turns} ÷ 2", lambda s: s["turns"] / 2,
             {"With one wheel held, the ring gear makes half the turns of the other.":
              lambda s: s["turns"], "That is twice; it is half.": lambda s: 2 * s["turns"]}),
        Step("input", "Turns of the input", "", "{ratio} × {ring}",
             lambda s: s["ratio"] * s["ring"],
             {"You divided by the ratio.": lambda s: s["ring"] / s["ratio"]}),
    ),
)  # fmt: skip

APART = Calculation(
    "turns-that-tell",
    "What a count cannot tell",
    "Two counts can be told apart if they lie two least counts apart.",
    (
        Given("one", "input turns for one of the wheel, one gear", 2.0, 2.6, 0.05),
        Given("other", "and the other gear", 1.6, 1.9, 0.05),
        Given("least", "least count", 0.25, 0.5, 0.25, "turn"),
    ),
    (
        Step("apart", "They differ for each turn of the wheel by", "", "{one} − {other}",
             lambda s: s["one"] - s["other"], off=0.004),
        Step("turns", "Turns of the wheel that tell them apart", "",
             "2 × {least} ÷ {apart}, rounded up",
             lambda s: math.ceil(2 * s["least"] / s["apart"] - 1e-9),
             {"You took one least count; two are needed, since both counts may be off.":
              lambda s: math.ceil(s["least"] / s["apart"] - 1e-9)}, off=0.01),
    ),
)  # fmt: skip

SPEED_DRIVE = Calculation(
    "speed-drive",
    "The speed drive",
    "The gear on the differential drives the pinion of the speed sensor.",
    (
        Given("turns", "turns of the differential", 10, 30, 1),
        Given("driving", "gear on the differential", 20, 30, 1, "teeth"),
        Given("driven", "pinion of the sensor", 12, 19, 1, "teeth"),
        Given("less", "turns missing in the count", 1, 4, 0.5),
        Given("road", "road speed", 40, 100, 5, "km/h"),
    ),
    (
        Step("pinion", "Turns of the pinion", "", "{turns} × {driving} ÷ {driven}",
             lambda s: s["turns"] * s["driving"] / s["driven"],
             {"You divided driven by driving; a smaller pinion turns faster.":
              lambda s: s["turns"] * s["driven"] / s["driving"]}),
        Step("shows", "What the speedometer shows, going by the count", "km/h",
             "{road} × ({pinion} − {less}) ÷ {pinion}",
             lambda s: s["road"] * (s["pinion"] - s["less"]) / s["pinion"],
             {"This is off the other way: a pinion that turns less shows less.":
              lambda s: s["road"] * s["pinion"] / (s["pinion"] - s["less"]),
              "This is the true speed.": lambda s: s["road"]}),
    ),
)  # fmt: skip

OTHER = Calculation(
    "other-wheel",
    "The other wheel",
    "The ring gear makes the mean of what both wheels make. Backward is minus.",
    (
        Given("case", "turns of the ring gear", -1.5, 1.5, 0.25, "turns"),
        Given("left", "turns of the left wheel", 2, 5, 0.25, "turns"),
    ),
    (
        Step("right", "Turns of the right wheel", "turns", "2 × {case} − {left}",
             lambda s: 2 * s["case"] - s["left"],
             {"Both wheels together make twice what the ring gear makes.":
              lambda s: s["case"] - s["left"]}, off=0.01),
    ),
)  # fmt: skip

WASHER = Calculation(
    "side-gear-washer",
    "Play of a side gear",
    "A washer that is 0.1 mm thicker takes 0.1 mm of play away.",
    (
        Given("play", "play read", 0.20, 0.40, 0.01, "mm"),
        Given("fitted", "washer fitted", 0.80, 0.95, 0.05, "mm"),
        Given("wanted", "play wanted", 0.08, 0.12, 0.01, "mm"),
    ),
    (
        Step("less", "Play to take away", "mm", "{play} − {wanted}",
             lambda s: s["play"] - s["wanted"], off=0.004),
        Step("washer", "The washer that does it", "mm", "{fitted} + {less}",
             lambda s: s["fitted"] + s["less"],
             {"A thinner washer gives more play.": lambda s: s["fitted"] - s["less"],
              "The play that is wanted stays.": lambda s: s["fitted"] + s["play"]}, off=0.004),
    ),
)  # fmt: skip

RING = Calculation(
    "synchroniser-ring",
    "What a ring has lost, and can do",
    "Wear = gap lost × sine of the half angle. Torque = force × friction × mean radius ÷ sine of "
    "the half angle.",
    (
        Given("new", "gap when new", 1.0, 1.4, 0.05, "mm"),
        Given("now", "gap now", 0.4, 0.9, 0.05, "mm"),
        Given("half", "half angle of the cone", 6, 8, 0.5, "°"),
        Given("force", "force on the ring", 300, 600, 50, "N"),
        Given("friction", "friction", 0.08, 0.12, 0.01),
        Given("other", "friction with another oil", 0.05, 0.07, 0.005),
        Given("across", "mean diameter", 50, 70, 2, "mm"),
    ),
    (
        Step("lost", "Gap lost", "mm", "{new} − {now}", lambda s: s["new"] - s["now"], off=0.01),
        Step("wear", "Wear of the cone", "mm", "{lost} × sin({half})",
             lambda s: geartrain.wear_from_gap.plain(s["new"], s["new"] - s["lost"],
                                                     math.radians(s["half"])),
             {"You divided by the sine.": lambda s: s["lost"] / math.sin(math.radians(s["half"]))},
             off=0.002),
        Step("torque", "Torque of the cone", "N·m",
             "{force} × {friction} × {across} ÷ 2 ÷ 1000 ÷ sin({half})",
             lambda s: geartrain.cone_torque.plain(s["force"], s["friction"], s["across"] / 1e3,
                                                   math.radians(s["half"])),
             {"You took the diameter; the torque needs the radius.":
              lambda s: s["force"] * s["friction"] * s["across"] / 1e3
              / math.sin(math.radians(s["half"])),
              "The sine is missing.": lambda s: s["force"] * s["friction"] * s["across"] / 2e3}),
        Step("times", "How many times as long the change of speed takes with the other oil", "",
             "{friction} ÷ {other}", lambda s: s["friction"] / s["other"],
             {"Less torque takes longer, not shorter; turn it over.":
              lambda s: s["other"] / s["friction"],
              "This is how much longer; the question is how many times as long.":
              lambda s: s["friction"] / s["other"] - 1}),
    ),
)  # fmt: skip

ROAD = Calculation(
    "road-speed",
    "Road speed",
    "One turn of the wheel is 2π times the rolling radius.",
    (
        Given("engine", "turns of the input in a minute", 2000, 4000, 100),
        Given("ratio", "input turns for one of the ring gear", 3, 12, 0.1),
        Given("radius", "rolling radius", 0.28, 0.34, 0.01, "m"),
    ),
    (
        Step("wheel", "Turns of the wheel in a minute", "", "{engine} ÷ {ratio}",
             lambda s: s["engine"] / s["ratio"],
             {"You multiplied by the ratio.": lambda s: s["engine"] * s["ratio"]}),
        Step("speed", "Road speed", "km/h", "{wheel} × 2π × {radius} × 60 ÷ 1000",
             lambda s: s["wheel"] * 2 * math.pi * s["radius"] * 60 / 1e3,
             {"You took the radius for the diameter.":
              lambda s: s["wheel"] * math.pi * s["radius"] * 60 / 1e3}),
    ),
)  # fmt: skip

CALCULATIONS = (PATH, COUNT, APART, WASHER, RING, ROAD, SPEED_DRIVE, OTHER)
