"""Calculations of the shift mechanism: a detent, the lever, an interlock pin, a pin's other end."""

import math

from twoshaft.models import shift
from twoshaft.practice.calculation import Calculation, Figures, Given, Step
from twoshaft.units.quantities import Q


def _along(force: float, s: Figures) -> float:
    return force * math.tan(math.radians(s["flank"]) + math.atan(s["friction"]))


DETENT = Calculation(
    "detent",
    "The force of a detent",
    "Force along the rail = spring force × tan(flank angle + friction angle). The friction angle "
    "is the angle whose tangent is the friction coefficient.",
    (
        Given("spring", "spring with the ball home", 30, 70, 5, "N"),
        Given("rate", "rate of the spring", 4, 9, 1, "N/mm"),
        Given("depth", "depth of the notch", 1.5, 3.0, 0.5, "mm"),
        Given("flank", "flank", 25, 45, 5, "°"),
        Given("friction", "friction", 0.08, 0.14, 0.02),
    ),
    (
        Step("leave", "To leave the notch", "N", "{spring} × tan({flank} + angle of {friction})",
             lambda s: _along(s["spring"], s),
             {"The friction is missing.":
              lambda s: s["spring"] * math.tan(math.radians(s["flank"])),
              "You took the sine in place of the tangent.":
              lambda s: s["spring"]
              * math.sin(math.radians(s["flank"]) + math.atan(s["friction"]))}),
        Step("pressed", "The spring at the crest", "N", "{spring} + {rate} × {depth}",
             lambda s: s["spring"] + s["rate"] * s["depth"],
             {"The spring is pressed together by the whole depth.":
              lambda s: s["spring"] + s["rate"]}),
        Step("crest", "At the crest", "N", "{pressed} × tan({flank} + angle of {friction})",
             lambda s: _along(s["pressed"], s),
             {"The friction is missing.":
              lambda s: s["pressed"] * math.tan(math.radians(s["flank"]))}),
    ),
)  # fmt: skip

LEVER = Calculation(
    "rail-to-hand",
    "From the rail to the hand",
    "The finger pushes the rail, the lever turns the shaft.",
    (
        Given("force", "force along the rail", 40, 90, 5, "N"),
        Given("finger", "radius of the finger", 20, 35, 1, "mm"),
        Given("lever", "length of the lever", 80, 160, 10, "mm"),
        Given("travel", "travel of the rail", 6, 9, 0.5, "mm"),
    ),
    (
        Step("torque", "Torque of the shaft", "N·m", "{force} × {finger} ÷ 1000",
             lambda s: s["force"] * s["finger"] / 1e3,
             {"You took the lever; the rail pushes at the tip of the finger.":
              lambda s: s["force"] * s["lever"] / 1e3}),
        Step("hand", "Force of the hand", "N", "{torque} ÷ {lever} × 1000",
             lambda s: s["torque"] / s["lever"] * 1e3,
             {"You divided by the radius of the finger.":
              lambda s: s["torque"] / s["finger"] * 1e3}),
        Step("angle", "The shaft turns by", "°", "{travel} ÷ {finger} × 57.3",
             lambda s: math.degrees(s["travel"] / s["finger"]),
             {"You took the lever; the rail moves the finger.":
              lambda s: math.degrees(s["travel"] / s["lever"])}),
    ),
)  # fmt: skip

INTERLOCK = Calculation(
    "interlock-pin",
    "A worn interlock pin",
    "Play = notch depth + gap − pin length, free movement = play ÷ tan(flank).",
    (
        Given("notch", "depth of the notch", 2.0, 3.0, 0.1, "mm"),
        Given("gap", "gap between the rails", 8.6, 9.4, 0.1, "mm"),
        Given("worn", "length of the worn pin", 10.0, 10.4, 0.1, "mm"),
        Given("flank", "flank", 35, 50, 5, "°"),
    ),
    (
        Step("play", "The play", "mm", "{notch} + {gap} − {worn}",
             lambda s: shift.pin_play(Q(s["notch"], "mm"), Q(s["gap"], "mm"),
                                      Q(s["worn"], "mm")).magnitude,
             {"You left the notch out.": lambda s: s["gap"] - s["worn"]}, off=0.04),
        Step("free", "Free movement of the rail", "mm", "{play} ÷ tan({flank})",
             lambda s: s["play"] / math.tan(math.radians(s["flank"])),
             {"You multiplied by the tangent.":
              lambda s: s["play"] * math.tan(math.radians(s["flank"]))}, off=0.03),
    ),
)  # fmt: skip

PIN_END = Calculation(
    "pin-other-end",
    "Is the pin home?",
    "The struck end of a spring pin lies below the surface of the hub. How deep is the other end?",
    (
        Given("hub", "diameter of the hub", 24, 30, 0.5, "mm"),
        Given("pin", "length of the pin", 20, 23, 0.5, "mm"),
        Given("deep", "struck end lies below by", 0.4, 3.0, 0.1, "mm"),
    ),
    (
        Step("other", "The other end lies below by; below zero it stands proud", "mm",
             "{hub} − {pin} − {deep}", lambda s: s["hub"] - s["pin"] - s["deep"],
             {"The struck end was not taken off.": lambda s: s["hub"] - s["pin"],
              "You halved what is left.": lambda s: (s["hub"] - s["pin"]) / 2}, off=0.06),
    ),
)  # fmt: skip

CALCULATIONS = (DETENT, LEVER, INTERLOCK, PIN_END)
