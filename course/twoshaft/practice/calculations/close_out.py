"""Calculations of closing out: a ring that slides, filling, level, breather, leak test."""

from math import radians, sin, tan

from twoshaft.models import closeout
from twoshaft.models.geartrain import cone_torque, synchronising_time
from twoshaft.practice.calculation import Calculation, Given, Step

EXPANSION = 0.00072
OUTSIDE = 1013.0

RING = Calculation(
    "ring-slides",
    "How far does a ring slide?",
    "A cone of 70 mm mean diameter and 6.5° half angle brings 0.012 kg·m² to speed. The drag of "
    "the oil is left out.",
    (
        Given("force", "axial force on the ring", 400, 800, 20, "N"),
        Given("friction", "friction at the cone", 0.06, 0.12, 0.005),
        Given("speed", "difference of speed", 100, 220, 5, "rad/s"),
    ),
    (
        Step("torque", "Torque of the cone", "N·m",
             "{force} × {friction} × 0.070 ÷ (2 × sin 6.5°)",
             lambda s: cone_torque.plain(s["force"], s["friction"], 0.07, radians(6.5)),
             {"The force acts at the radius: half the diameter.":
              lambda s: s["force"] * s["friction"] * 0.07 / sin(radians(6.5))}),
        Step("time", "Time until both sides turn alike", "s", "0.012 × {speed} ÷ {torque}",
             lambda s: synchronising_time.plain(0.012, s["speed"], s["torque"])),
        Step("path", "Distance that it slides", "mm", "{speed} ÷ 2 × {time} × 70 ÷ 2",
             lambda s: s["speed"] / 2 * s["time"] * 35,
             {"On average the speed is half of what it is at the start.":
              lambda s: s["speed"] * s["time"] * 35}),
    ),
)  # fmt: skip

FILL = Calculation(
    "filling",
    "How many litres from the can?",
    "The filling is stated at 20 °C. Oil grows by 0.00072 for each kelvin.",
    (
        Given("filling", "right filling at 20 °C", 1.6, 2.8, 0.1, "l"),
        Given("can", "oil in the can", 0, 38, 2, "°C"),
    ),
    (
        Step("grown", "How many times as much room the oil takes", "", "1 + 0.00072 × ({can} − 20)",
             lambda s: 1 + EXPANSION * (s["can"] - 20),
             {"Count the kelvins from 20 °C, not from zero.":
              lambda s: 1 + EXPANSION * s["can"]}, off=0.0006),
        Step("litres", "Litres from the can", "l", "{filling} × {grown}",
             lambda s: s["filling"] * s["grown"], off=0.004),
    ),
)  # fmt: skip

LEVEL = Calculation(
    "level",
    "What does a level mean?",
    "A millimetre of level holds 0.03 l. The plug lies 150 mm from the middle of the oil.",
    (
        Given("below", "oil found below the edge, level and cold", 6, 20, 1, "mm"),
        Given("slope", "slope of another floor", 1, 5, 0.5, "degrees"),
    ),
    (
        Step("short", "Litres missing", "l", "{below} × 0.03", lambda s: s["below"] * 0.03),
        Step("off", "The slope alone shifts the level by", "mm", "150 × tan {slope}",
             lambda s: closeout.level_error.plain(150, radians(s["slope"])),
             {"A degree is not a per cent: take the tangent.": lambda s: 1.5 * s["slope"],
              "Take the tangent of degrees, not of radians.":
              lambda s: 150 * tan(s["slope"])}),
    ),
)  # fmt: skip

BREATHER = Calculation(
    "blocked-breather",
    "Pressure behind a blocked breather",
    "The pressure outside is 1013 mbar. Add 273 to a temperature in °C. There are 2 l of oil, "
    "which grow by 0.00072 for each kelvin, and 4 l of air.",
    (
        Given("cold", "temperature when it blocked", 10, 25, 1, "°C"),
        Given("hot", "temperature on the road", 75, 105, 1, "°C"),
    ),
    (
        Step("grown", "The oil grows by", "l", "2 × 0.00072 × ({hot} − {cold})",
             lambda s: 2 * EXPANSION * (s["hot"] - s["cold"]),
             {"This takes the litres of air.":
              lambda s: 4 * EXPANSION * (s["hot"] - s["cold"])}),
        Step("inside", "Pressure inside, from vacuum", "mbar",
             "1013 × ({hot} + 273) ÷ ({cold} + 273) × 4 ÷ (4 − {grown})",
             lambda s: OUTSIDE * (s["hot"] + 273) / (s["cold"] + 273) * 4 / (4 - s["grown"]),
             {"Oil that grows leaves less room for the air.":
              lambda s: OUTSIDE * (s["hot"] + 273) / (s["cold"] + 273) * 4 / (4 + s["grown"]),
              "Count temperatures from absolute zero.":
              lambda s: OUTSIDE * s["hot"] / s["cold"] * 4 / (4 - s["grown"])}, off=2),
        Step("over", "Pressure above that outside", "mbar", "{inside} − 1013",
             lambda s: s["inside"] - OUTSIDE, off=2.5),
    ),
)  # fmt: skip

LEAK = Calculation(
    "leak-test",
    "From the gauge to the leak",
    "The test lasts 5 minutes, with 1013 mbar outside. Add 273 to a temperature in °C.",
    (
        Given("start", "gauge at the start", 140, 155, 1, "mbar"),
        Given("fall", "fall of the gauge", 6.5, 12, 0.5, "mbar"),
        Given("at", "air at the start", 16, 22, 1, "°C"),
        Given("cooler", "the air cools by", 0.2, 1.4, 0.1, "K"),
        Given("litres", "air in the unit", 5, 7, 0.1, "l"),
    ),
    (
        Step("kelvin", "One kelvin changes the pressure by", "mbar",
             "({start} + 1013) ÷ ({at} + 273)",
             lambda s: (s["start"] + OUTSIDE) / (s["at"] + 273),
             {"Count the pressure from vacuum.": lambda s: s["start"] / (s["at"] + 273),
              "Count the temperature from absolute zero.":
              lambda s: (s["start"] + OUTSIDE) / s["at"]}),
        Step("lost", "Pressure lost at one temperature", "mbar", "{fall} − {cooler} × {kelvin}",
             lambda s: s["fall"] - s["cooler"] * s["kelvin"],
             {"The other way: cooler air makes the gauge fall without any leak.":
              lambda s: s["fall"] + s["cooler"] * s["kelvin"]}, off=0.1),
        Step("leak", "Leak, as air at the pressure outside", "mL/min",
             "1000 × {litres} × {lost} ÷ (5 × 1013)",
             lambda s: closeout.leak_rate.plain(s["lost"], s["litres"], 5, OUTSIDE),
             {"This is what left in the whole time; divide by the minutes.":
              lambda s: 1000 * s["litres"] * s["lost"] / OUTSIDE}, off=0.12, of="flow"),
    ),
)  # fmt: skip

CALCULATIONS = (RING, FILL, LEVEL, BREATHER, LEAK)
