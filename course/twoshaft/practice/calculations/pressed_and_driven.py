"""Calculations of pressed and driven parts: a fit, a force, heat, a seal, pins."""

import math

from twoshaft.models import fit
from twoshaft.practice.calculation import Calculation, Figures, Given, Step

STEEL_PER_K = fit.STEEL.expansion_per_k
ALUMINIUM_PER_K = fit.CAST_ALUMINIUM.expansion_per_k


def _depths(s: Figures) -> list[float]:
    return [s[f"d{n}"] for n in range(1, 5)]


FIT = Calculation(
    "read-a-fit",
    "Read a fit",
    "Limits are counted in µm from the nominal size. Interference is shaft less hole.",
    (
        Given("hl", "hole, lower limit", 0, 8, 1, "µm"),
        Given("hu", "hole, upper limit", 16, 30, 1, "µm"),
        Given("sl", "shaft, lower limit", 2, 20, 1, "µm"),
        Given("su", "shaft, upper limit", 24, 45, 1, "µm"),
    ),
    (
        Step("most", "Most interference", "µm", "{su} − {hl}", lambda s: s["su"] - s["hl"],
             {"The tightest pair is the largest shaft in the smallest hole.":
              lambda s: s["su"] - s["hu"]}, off=0.4),
        Step("least", "Least interference; below zero is play", "µm", "{sl} − {hu}",
             lambda s: s["sl"] - s["hu"],
             {"The loosest pair is the smallest shaft in the largest hole.":
              lambda s: s["sl"] - s["hl"]}, off=0.4),
    ),
)  # fmt: skip

PRESS = Calculation(
    "press-force",
    "The force to expect",
    "Force = π × diameter × length × pressure × friction.",
    (
        Given("across", "diameter of the seat", 25, 60, 5, "mm"),
        Given("length", "length of the seat", 12, 24, 1, "mm"),
        Given("pressure", "pressure in the seat", 10, 40, 2, "MPa"),
        Given("friction", "friction, oiled", 0.06, 0.12, 0.01),
    ),
    (
        Step("area", "Area of the seat", "mm²", "π × {across} × {length}",
             lambda s: math.pi * s["across"] * s["length"],
             {"You took the radius for the diameter.":
              lambda s: math.pi * s["across"] / 2 * s["length"],
              "π is missing.": lambda s: s["across"] * s["length"]}),
        Step("force", "Force of the press", "kN", "{area} × {pressure} × {friction} ÷ 1000",
             lambda s: s["area"] * s["pressure"] * s["friction"] / 1e3,
             {"The friction is missing.": lambda s: s["area"] * s["pressure"] / 1e3}),
    ),
)  # fmt: skip

HEAT = Calculation(
    "warm-to",
    "How warm",
    "An aluminium case grows 0.0215 mm for each metre and degree. Add 25 degrees, which it loses "
    "on its way to the seat.",
    (
        Given("grip", "interference of the pair", 20, 60, 5, "µm"),
        Given("across", "diameter", 40, 80, 5, "mm"),
        Given("room", "room", 15, 25, 1, "°C"),
    ),
    (
        Step("rise", "Rise that just frees it", "K", "{grip} ÷ ({across} × 0.0215)",
             lambda s: s["grip"] / (s["across"] * 1e3) / ALUMINIUM_PER_K,
             {"You took the growth of steel.":
              lambda s: s["grip"] / (s["across"] * 1e3) / STEEL_PER_K,
              "You took the radius.":
              lambda s: 2 * s["grip"] / (s["across"] * 1e3) / ALUMINIUM_PER_K},
             of="temperature difference"),
        Step("to", "Warm it to", "°C", "{room} + {rise} + 25",
             lambda s: fit.warm_to_assemble.plain(
                 s["rise"] * ALUMINIUM_PER_K * s["across"] * 1e3, s["across"] * 1e3,
                 ALUMINIUM_PER_K, 500.0, room_c=s["room"]).heat_to_c,
             {"The room is missing.": lambda s: s["rise"] + 25,
              "The 25 degrees for cooling are missing.": lambda s: s["rise"] + s["room"]}, off=0.8),
    ),
)  # fmt: skip

PLAY = Calculation(
    "play-when-warm",
    "The play while it is warm",
    "A steel gear grows 0.0115 mm for each metre and degree.",
    (
        Given("across", "diameter", 30, 60, 5, "mm"),
        Given("rise", "warmer by", 70, 95, 5, "K"),
        Given("grip", "interference when cold", 8, 20, 1, "µm"),
    ),
    (
        Step("growth", "It grows by", "µm", "{across} × {rise} × 0.0115",
             lambda s: fit.growth.plain(s["across"] / 1e3, STEEL_PER_K, s["rise"]),
             {"You took the growth of aluminium.":
              lambda s: fit.growth.plain(s["across"] / 1e3, ALUMINIUM_PER_K, s["rise"])}),
        Step("play", "Play while it is warm", "µm", "{growth} − {grip}",
             lambda s: s["growth"] - s["grip"],
             {"You added the interference.": lambda s: s["growth"] + s["grip"]}, off=0.6),
    ),
)  # fmt: skip

SEAL = Calculation(
    "seal-read",
    "A seal that somebody fitted",
    "Four depths were read over a bridge that lies across the face.",
    (
        *(Given(f"d{n}", f"reading {n}", 16.0, 16.6, 0.05, "mm") for n in range(1, 5)),
        Given("bridge", "thickness of the bridge", 9, 12, 0.5, "mm"),
    ),
    (
        Step("depth", "Depth of the seal", "mm",
             "mean of {d1}, {d2}, {d3} and {d4}, less {bridge}",
             lambda s: sum(_depths(s)) / 4 - s["bridge"],
             {"The bridge was not taken off.": lambda s: sum(_depths(s)) / 4}, off=0.02),
        Step("lean", "Its lean", "mm", "deepest less shallowest",
             lambda s: fit.tilt.plain(_depths(s)),
             {"That is half of it.": lambda s: fit.tilt.plain(_depths(s)) / 2}, off=0.006),
    ),
)  # fmt: skip

PIN = Calculation(
    "spring-pin",
    "A spring pin",
    "The lever multiplies the force of the hand.",
    (
        Given("hand", "hand at the knob", 150, 300, 10, "N"),
        Given("ratio", "lever, so many to one", 6, 10, 1),
        Given("shear", "the pin bears in double shear", 9, 24, 1, "kN"),
    ),
    (
        Step("force", "Force on the pin", "kN", "{hand} × {ratio} ÷ 1000",
             lambda s: s["hand"] * s["ratio"] / 1e3,
             {"You divided by the lever in place of multiplying.":
              lambda s: s["hand"] / s["ratio"] / 1e3}),
        Step("times", "How many times the force it bears", "", "{shear} ÷ {force}",
             lambda s: s["shear"] / s["force"],
             {"You divided the force by what the pin bears.": lambda s: s["force"] / s["shear"]}),
        Step("single", "And in single shear", "", "{times} ÷ 2", lambda s: s["times"] / 2,
             {"In single shear there is one plane, so it bears half.": lambda s: s["times"]}),
    ),
)  # fmt: skip

TAPER = Calculation(
    "taper-pin",
    "A taper pin",
    "Taper 1 in 50: 50 mm of length are 1 mm of diameter. The pin's size is that of its small end.",
    (
        Given("small", "small end of the pin", 5, 8, 1, "mm"),
        Given("length", "length of the pin", 25, 40, 5, "mm"),
        Given("less", "the hole is narrower than the large end by", 0.05, 0.15, 0.01, "mm"),
    ),
    (
        Step("large", "Large end of the pin", "mm", "{small} + {length} ÷ 50",
             lambda s: fit.TaperPin(s["small"] / 1e3, s["length"] / 1e3).large.m_as("mm"),
             {"You took the taper off; the other end is the large one.":
              lambda s: s["small"] - s["length"] / 50}, off=0.01),
        Step("proud", "It stands proud by", "mm", "{less} × 50", lambda s: s["less"] * 50,
             {"You divided by 50 in place of multiplying.": lambda s: s["less"] / 50}),
    ),
)  # fmt: skip

STAKE = Calculation(
    "stake",
    "What a stake holds",
    "A tab is sheared off or crushed, whichever takes less torque.",
    (
        Given("shear", "torque that shears the tab", 30, 60, 1, "N·m"),
        Given("crush", "torque that crushes it, for each mm of depth", 14, 40, 1, "N·m"),
        Given("depth", "depth of the tab in its slot", 0.8, 2.0, 0.1, "mm"),
        Given("drag", "drag that tries to turn the nut", 4, 12, 1, "N·m"),
    ),
    (
        Step("deep", "Torque that crushes this tab", "N·m", "{crush} × {depth}",
             lambda s: s["crush"] * s["depth"]),
        Step("holds", "Torque that the stake holds", "N·m", "the smaller of {shear} and {deep}",
             lambda s: fit.Stake(s["shear"], s["deep"]).holds.m_as("N*m"),
             {"It gives way at the smaller of the two.": lambda s: max(s["shear"], s["deep"]),
              "The two do not add: the first to give way ends it.":
              lambda s: s["shear"] + s["deep"]}),
        Step("times", "How many times the drag", "", "{holds} ÷ {drag}",
             lambda s: s["holds"] / s["drag"],
             {"You divided the drag by what the stake holds.": lambda s: s["drag"] / s["holds"]}),
    ),
)  # fmt: skip

CALCULATIONS = (FIT, PRESS, HEAT, PLAY, SEAL, PIN, TAPER, STAKE)
