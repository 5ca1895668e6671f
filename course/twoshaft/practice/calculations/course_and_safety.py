"""Calculations of the first module: figures on another scale, and a lift."""

from twoshaft.models.lifting import (
    height_multiplier,
    reach_multiplier,
    travel_multiplier,
    twist_multiplier,
)
from twoshaft.practice.calculation import Calculation, Given, Step

ANOTHER_SCALE = Calculation(
    "another-scale",
    "The same torque on another scale",
    "An old card gives a torque in lbf·ft. The wrench shows N·m. One lbf·ft is 1.356 N·m.",
    (Given("card", "torque on the card", 8, 40, 1, "lbf·ft"),),
    (
        Step(
            "torque", "Torque in N·m", "N·m", "{card} × 1.356", lambda s: s["card"] * 1.3558,
            {
                "You divided by 1.356 in place of multiplying.": lambda s: s["card"] / 1.3558,
                "You took the figure as N·m; it is in lbf·ft.": lambda s: s["card"],
            },
        ),
    ),
)  # fmt: skip

LENGTH = Calculation(
    "inches",
    "A length on another scale",
    "An old drawing gives a length in inches. One inch is 25.4 mm.",
    (Given("inch", "length on the drawing", 0.030, 0.090, 0.001, "in"),),
    (
        Step("length", "Length in mm", "mm", "{inch} × 25.4", lambda s: s["inch"] * 25.4,
             {"You divided by 25.4 in place of multiplying.": lambda s: s["inch"] / 25.4}),
    ),
)  # fmt: skip

ANGLE = Calculation(
    "turns-to-degrees",
    "An angle on another scale",
    "The card gives an angle in turns. One turn is 360°.",
    (Given("turns", "angle on the card", 0.25, 2.5, 0.25, "turn"),),
    (
        Step("angle", "Angle in degrees", "°", "{turns} × 360", lambda s: s["turns"] * 360,
             {"You took a turn for 90°.": lambda s: s["turns"] * 90,
              "You took a turn for 180°.": lambda s: s["turns"] * 180}),
    ),
)  # fmt: skip

LIFT = Calculation(
    "lift",
    "May it be lifted by hand?",
    "The limit begins with 23 kg. Each multiplier takes off its share: reach 25 ÷ H, height "
    "1 − 0.003 × the distance from 75 cm, travel 0.82 + 4.5 ÷ D, twist 1 − 0.0032 × A. It is "
    "one lift now and then, with good handles.",
    (
        Given("load", "load", 8, 20, 1, "kg"),
        Given("reach", "reach H", 30, 55, 5, "cm"),
        Given("height", "height of the hands", 20, 60, 5, "cm"),
        Given("travel", "travel D", 30, 80, 10, "cm"),
        Given("twist", "twist A", 10, 60, 10, "°"),
    ),
    (
        Step("r", "Multiplier of the reach", "", "25 ÷ {reach}",
             lambda s: reach_multiplier.plain(s["reach"]),
             {"You turned the division round.": lambda s: s["reach"] / 25}),
        Step("h", "Multiplier of the height", "", "1 − 0.003 × (75 − {height})",
             lambda s: height_multiplier.plain(s["height"]),
             {"You took the height itself, not its distance from 75 cm.":
              lambda s: 1 - 0.003 * s["height"]}, off=0.004),
        Step("d", "Multiplier of the travel", "", "0.82 + 4.5 ÷ {travel}",
             lambda s: travel_multiplier.plain(s["travel"]), off=0.004),
        Step("a", "Multiplier of the twist", "", "1 − 0.0032 × {twist}",
             lambda s: twist_multiplier.plain(s["twist"]), off=0.004),
        Step("limit", "The limit", "kg", "23 kg × {r} × {h} × {d} × {a}",
             lambda s: 23 * s["r"] * s["h"] * s["d"] * s["a"],
             {"The twist is missing.": lambda s: 23 * s["r"] * s["h"] * s["d"],
              "The travel is missing.": lambda s: 23 * s["r"] * s["h"] * s["a"]}, off=0.15),
        Step("index", "The index", "", "{load} ÷ {limit}", lambda s: s["load"] / s["limit"],
             {"You divided the limit by the load.": lambda s: s["limit"] / s["load"]}),
    ),
)  # fmt: skip

CALCULATIONS = (ANOTHER_SCALE, LENGTH, ANGLE, LIFT)
