"""Calculations of a film: from bead to film, and the clock."""

import math

from twoshaft.models import film
from twoshaft.practice.calculation import Calculation, Given, Step

BEAD = Calculation(
    "bead-to-film",
    "From bead to film",
    "A bead keeps its volume when it is pressed flat. Half of what is left over goes inwards and "
    "lies there as a half round.",
    (
        Given("bead", "diameter of the bead", 1.4, 2.8, 0.1, "mm"),
        Given("width", "pressed to a width of", 10, 16, 1, "mm"),
        Given("gap", "largest gap", 0.04, 0.08, 0.01, "mm"),
    ),
    (
        Step("film", "The film", "mm", "0.785 × {bead} × {bead} ÷ {width}",
             lambda s: film.bead_to_film.plain(s["bead"], s["width"]),
             {"You took the diameter for the radius.":
              lambda s: math.pi * s["bead"] ** 2 / s["width"],
              "You left out the square.": lambda s: math.pi * s["bead"] / 4 / s["width"]}),
        Step("over", "Left over on 100 mm", "mm³", "({film} − {gap}) × {width} × 100",
             lambda s: film.surplus.plain(s["film"], s["gap"], s["width"], 100.0),
             {"The gap was not taken off.": lambda s: s["film"] * s["width"] * 100}, off=0.6),
        Step("lump", "Radius of the half round inside", "mm",
             "square root of ({over} ÷ 2 ÷ 100 ÷ 1.57)",
             lambda s: film.half_round.plain(s["over"] / 2, 100.0),
             {"Half of it goes outwards.": lambda s: film.half_round.plain(s["over"], 100.0)}),
    ),
)  # fmt: skip

OPEN_TIME = Calculation(
    "open-time",
    "Against the clock",
    "The sealant may lie open for so many minutes from the moment that the first of it was laid.",
    (
        Given("open", "open time", 15, 30, 1, "min"),
        Given("laying", "laying the film", 5, 9, 1, "min"),
        Given("setting", "setting the case down", 2, 4, 1, "min"),
    ),
    (
        Step("age", "Age of the first stretch when the face is closed", "min",
             "{laying} + {setting}", lambda s: s["laying"] + s["setting"],
             {"The first stretch was laid at the beginning of the laying.":
              lambda s: s["setting"]}, off=0.1),
        Step("left", "Left of its open time", "min", "{open} − {age}",
             lambda s: s["open"] - s["age"], off=0.1),
    ),
)  # fmt: skip

CURING = Calculation(
    "curing",
    "Closed, and then?",
    "The face was closed some hours ago. Oil may go in when the sealant has cured.",
    (
        Given("cure", "cures in", 12, 36, 1, "h"),
        Given("closed", "closed for", 2, 11, 1, "h"),
    ),
    (
        Step("wait", "Hours still to wait", "h", "{cure} − {closed}",
             lambda s: s["cure"] - s["closed"],
             {"That is the whole time; part of it has passed.": lambda s: s["cure"],
              "You added the hours that have passed.": lambda s: s["cure"] + s["closed"]},
             off=0.1),
    ),
)  # fmt: skip

CALCULATIONS = (BEAD, OPEN_TIME, CURING)
